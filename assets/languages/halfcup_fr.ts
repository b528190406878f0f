<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>AnswerPage</name>
    <message>
        <source>Count these bees</source>
        <translation>Compter ces abeilles</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>This colony</source>
        <translation>Cette colonie</translation>
    </message>
    <message>
        <source>What to treat with</source>
        <translation>Avec quoi traiter</translation>
    </message>
    <message>
        <source>Where this comes from</source>
        <translation>D’où cela vient</translation>
    </message>
</context>
<context>
    <name>BackupPage</name>
    <message>
        <source>Backups on this phone</source>
        <translation>Sauvegardes sur ce téléphone</translation>
    </message>
    <message>
        <source>Choose one that lies elsewhere</source>
        <translation>Choisir une sauvegarde rangée ailleurs</translation>
    </message>
    <message>
        <source>It holds the exact places of your hives. Give it to nobody.</source>
        <translation>Elle contient l’emplacement exact de vos ruches. Ne la donnez à personne.</translation>
    </message>
    <message>
        <source>Keep safe</source>
        <translation>Sauvegarde</translation>
    </message>
    <message>
        <source>Make a backup</source>
        <translation>Faire une sauvegarde</translation>
    </message>
    <message>
        <source>one file, checked</source>
        <translation>un seul fichier, vérifié</translation>
    </message>
</context>
<context>
    <name>BackupSheets</name>
    <message>
        <source>Leave all as it is</source>
        <translation>Tout laisser tel quel</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Laisser</translation>
    </message>
    <message>
        <source>Put it back</source>
        <translation>Restaurer</translation>
    </message>
    <message>
        <source>Put this one back</source>
        <translation>Restaurer celle-ci</translation>
    </message>
    <message>
        <source>Put this one back?</source>
        <translation>Restaurer celle-ci ?</translation>
    </message>
</context>
<context>
    <name>BoardCellsStep</name>
    <message>
        <source>A part of its cells</source>
        <translation>Une partie des cases</translation>
    </message>
    <message>
        <source>Cells on the whole board</source>
        <translation>Cases sur tout le lange</translation>
    </message>
    <message>
        <source>Cells you count</source>
        <translation>Cases à compter</translation>
    </message>
</context>
<context>
    <name>CheckPage</name>
    <message>
        <source>Where this comes from</source>
        <translation>D’où cela vient</translation>
    </message>
</context>
<context>
    <name>ChoiceOutlook</name>
    <message>
        <source>Later</source>
        <translation>Plus tard</translation>
    </message>
    <message>
        <source>Sooner</source>
        <translation>Plus tôt</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>Et si</translation>
    </message>
</context>
<context>
    <name>ChoicePage</name>
    <message>
        <source>Record this treatment</source>
        <translation>Noter ce traitement</translation>
    </message>
</context>
<context>
    <name>ClashWords</name>
    <message>
        <source>%1, %2</source>
        <comment>day, time of day</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1…</source>
        <comment>a text that goes on</comment>
        <translation>%1…</translation>
    </message>
    <message>
        <source>active substance</source>
        <translation>substance active</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>lot</translation>
    </message>
    <message>
        <source>bees counted</source>
        <translation>abeilles comptées</translation>
    </message>
    <message>
        <source>brood</source>
        <translation>couvain</translation>
    </message>
    <message>
        <source>cells counted</source>
        <translation>cases comptées</translation>
    </message>
    <message>
        <source>cells opened</source>
        <translation>cellules ouvertes</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>colonie</translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>done by</source>
        <translation>fait par</translation>
    </message>
    <message>
        <source>end</source>
        <translation>fin</translation>
    </message>
    <message>
        <source>expiry</source>
        <translation>péremption</translation>
    </message>
    <message>
        <source>first day</source>
        <translation>premier jour</translation>
    </message>
    <message>
        <source>first visit</source>
        <translation>première visite</translation>
    </message>
    <message>
        <source>first wash from</source>
        <translation>premier lavage dès le</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>plancher</translation>
    </message>
    <message>
        <source>frames of bees</source>
        <translation>cadres d’abeilles</translation>
    </message>
    <message>
        <source>jar</source>
        <translation>bocal</translation>
    </message>
    <message>
        <source>label</source>
        <translation>numéro ou nom</translation>
    </message>
    <message>
        <source>last day</source>
        <translation>dernier jour</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>latitude</translation>
    </message>
    <message>
        <source>longitude</source>
        <translation>longitude</translation>
    </message>
    <message>
        <source>metres east on the plan</source>
        <translation>mètres vers l’est sur le plan</translation>
    </message>
    <message>
        <source>metres north on the plan</source>
        <translation>mètres vers le nord sur le plan</translation>
    </message>
    <message>
        <source>mites</source>
        <translation>varroas</translation>
    </message>
    <message>
        <source>mites of the second rinse</source>
        <translation>varroas du second rinçage</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>note</source>
        <translation>remarque</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>one that is not known here</source>
        <translation>inconnu ici</translation>
    </message>
    <message>
        <source>other colony</source>
        <translation>autre colonie</translation>
    </message>
    <message>
        <source>other yard</source>
        <translation>autre rucher</translation>
    </message>
    <message>
        <source>own line</source>
        <translation>seuil personnel</translation>
    </message>
    <message>
        <source>prescriber</source>
        <translation>prescripteur</translation>
    </message>
    <message>
        <source>product</source>
        <translation>produit</translation>
    </message>
    <message>
        <source>quantity</source>
        <translation>quantité</translation>
    </message>
    <message>
        <source>queen</source>
        <translation>reine</translation>
    </message>
    <message>
        <source>reach in metres</source>
        <translation>rayon en mètres</translation>
    </message>
    <message>
        <source>receipt</source>
        <translation>preuve d’achat</translation>
    </message>
    <message>
        <source>region of the lines</source>
        <translation>région des seuils</translation>
    </message>
    <message>
        <source>registration number</source>
        <translation>numéro d’enregistrement</translation>
    </message>
    <message>
        <source>removal due</source>
        <translation>retrait prévu</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>supprimé</translation>
    </message>
    <message>
        <source>scoop in ml</source>
        <translation>mesure en ml</translation>
    </message>
    <message>
        <source>supplier</source>
        <translation>fournisseur</translation>
    </message>
    <message>
        <source>taken out on</source>
        <translation>retiré le</translation>
    </message>
    <message>
        <source>the same as</source>
        <translation>identique à</translation>
    </message>
    <message>
        <source>treat line</source>
        <translation>seuil de traitement</translation>
    </message>
    <message>
        <source>turn date</source>
        <translation>date charnière</translation>
    </message>
    <message>
        <source>what happened</source>
        <translation>ce qui s’est passé</translation>
    </message>
    <message>
        <source>withdrawal days</source>
        <translation>jours d’attente</translation>
    </message>
    <message>
        <source>yard</source>
        <translation>rucher</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
</context>
<context>
    <name>ColonyEntries</name>
    <message>
        <source>%1 per 100 on %2</source>
        <comment>a load and a date</comment>
        <translation>%1 pour 100 le %2</translation>
    </message>
    <message>
        <source>Colony %1. %2. %3</source>
        <comment>read aloud: label, standing, what is due</comment>
        <translation>Colonie %1. %2. %3</translation>
    </message>
    <message>
        <source>Colony %1. %2. %3. %4</source>
        <comment>read aloud: label, standing, load, what is due</comment>
        <translation>Colonie %1. %2. %3. %4</translation>
    </message>
    <message>
        <source>In the tray: jar %1</source>
        <translation>Dans le casier : bocal %1</translation>
    </message>
    <message>
        <source>Not washed this year</source>
        <translation>Aucun lavage cette année</translation>
    </message>
</context>
<context>
    <name>ColonyFoot</name>
    <message>
        <source>Change its number or name</source>
        <translation>Changer son numéro ou son nom</translation>
    </message>
    <message>
        <source>What changed</source>
        <translation>Ce qui a changé</translation>
    </message>
</context>
<context>
    <name>ColonyHead</name>
    <message>
        <source>Count another way</source>
        <translation>Compter autrement</translation>
    </message>
    <message>
        <source>No wash, no treatment and nothing else is written down yet.</source>
        <translation>Aucun lavage, aucun traitement, rien d’autre n’est encore noté.</translation>
    </message>
    <message>
        <source>Something happened</source>
        <translation>Noter un événement</translation>
    </message>
    <message>
        <source>Treat</source>
        <translation>Traiter</translation>
    </message>
</context>
<context>
    <name>ColonyLoads</name>
    <message>
        <source>All years</source>
        <translation>Toutes les années</translation>
    </message>
    <message>
        <source>Earlier wash</source>
        <translation>Lavage d’avant</translation>
    </message>
    <message>
        <source>Last season</source>
        <translation>Dernière saison</translation>
    </message>
    <message>
        <source>Later wash</source>
        <translation>Lavage d’après</translation>
    </message>
</context>
<context>
    <name>ColonyName</name>
    <message>
        <source>Keep</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>Laisser tel quel</translation>
    </message>
    <message>
        <source>Number or name</source>
        <translation>Numéro ou nom</translation>
    </message>
    <message>
        <source>The number or the name by which you know this colony.</source>
        <translation>Le numéro ou le nom par lequel vous connaissez cette colonie.</translation>
    </message>
    <message>
        <source>What is on the hive?</source>
        <translation>Que porte la ruche ?</translation>
    </message>
</context>
<context>
    <name>ColonyPage</name>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>On a day</source>
        <translation>À une date</translation>
    </message>
</context>
<context>
    <name>ColonyStep</name>
    <message>
        <source>Colony %1</source>
        <translation>Colonie %1</translation>
    </message>
    <message>
        <source>No colony to count</source>
        <translation>Aucune colonie à compter</translation>
    </message>
</context>
<context>
    <name>CombView</name>
    <message>
        <source>+ %1</source>
        <comment>the plus in the comb, what it means</comment>
        <translation>+ %1</translation>
    </message>
</context>
<context>
    <name>CombWords</name>
    <message>
        <source>Comb of a hundred cells: %1 filled, %2 more half filled, and more than the comb holds.</source>
        <translation>Rayon de cent cellules. Pleines : %1 ; à moitié pleines : %2 ; et plus que n’en contient le rayon.</translation>
    </message>
    <message>
        <source>Comb of a hundred cells: %1 filled, %2 more half filled.</source>
        <translation>Rayon de cent cellules. Pleines : %1 ; à moitié pleines : %2.</translation>
    </message>
    <message>
        <source>and more than the comb holds</source>
        <translation>et plus que n’en contient le rayon</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>au moins</translation>
    </message>
    <message>
        <source>perhaps</source>
        <translation>peut-être</translation>
    </message>
</context>
<context>
    <name>ComparePage</name>
    <message>
        <source>Colonies compared</source>
        <translation>Colonies comparées</translation>
    </message>
</context>
<context>
    <name>CompareWords</name>
    <message>
        <source>Hide the words</source>
        <translation>Masquer les mots</translation>
    </message>
    <message>
        <source>The same in words</source>
        <translation>La même chose en mots</translation>
    </message>
</context>
<context>
    <name>CountBar</name>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>None found</source>
        <translation>Aucun trouvé</translation>
    </message>
    <message>
        <source>Type it</source>
        <translation>Saisir</translation>
    </message>
    <message>
        <source>Undo last</source>
        <translation>Un de moins</translation>
    </message>
</context>
<context>
    <name>CountBeesPage</name>
    <message>
        <source>+1</source>
        <translation>+1</translation>
    </message>
    <message>
        <source>+10</source>
        <translation>+10</translation>
    </message>
    <message>
        <source>A mass goes by the book's figure for a bee, so it does not count as a scoop of your own.</source>
        <translation>Un poids se calcule avec la valeur du manuel pour une abeille ; il ne compte donc pas comme une mesure à vous.</translation>
    </message>
    <message>
        <source>Bees in the jar</source>
        <translation>Abeilles dans le bocal</translation>
    </message>
    <message>
        <source>Count these bees</source>
        <translation>Compter ces abeilles</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Comptées</translation>
    </message>
    <message>
        <source>Grams, without the jar</source>
        <translation>Grammes, sans le bocal</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Comment</translation>
    </message>
    <message>
        <source>Is that right?</source>
        <translation>Est-ce exact ?</translation>
    </message>
    <message>
        <source>It counts for all your later scoops of this size, and this wash is judged anew with it.</source>
        <translation>Il compte pour toutes vos prochaines mesures de cette taille, et ce lavage est réévalué avec lui.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>No, go back</source>
        <translation>Non, revenir</translation>
    </message>
    <message>
        <source>One bee more</source>
        <translation>Une abeille de plus</translation>
    </message>
    <message>
        <source>Ten bees more</source>
        <translation>Dix abeilles de plus</translation>
    </message>
    <message>
        <source>The bees are</source>
        <translation>Les abeilles sont</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Pesées</translation>
    </message>
    <message>
        <source>Yes, keep it</source>
        <translation>Oui, enregistrer</translation>
    </message>
</context>
<context>
    <name>CountFace</name>
    <message>
        <source>On wet glass, two touches of one point at once count as one.</source>
        <translation>Sur verre mouillé, deux appuis simultanés au même point comptent pour un seul.</translation>
    </message>
    <message>
        <source>or press a volume key</source>
        <translation>ou une touche de volume</translation>
    </message>
</context>
<context>
    <name>CountStep</name>
    <message>
        <source>Go on counting</source>
        <translation>Continuer à compter</translation>
    </message>
    <message>
        <source>None found</source>
        <translation>Aucun trouvé</translation>
    </message>
    <message>
        <source>None found?</source>
        <translation>Aucun trouvé ?</translation>
    </message>
</context>
<context>
    <name>DayField</name>
    <message>
        <source>%1: a day earlier</source>
        <translation>%1 : un jour plus tôt</translation>
    </message>
    <message>
        <source>%1: a day later</source>
        <translation>%1 : un jour plus tard</translation>
    </message>
    <message>
        <source>+ 1 day</source>
        <translation>+ 1 jour</translation>
    </message>
    <message>
        <source>− 1 day</source>
        <translation>− 1 jour</translation>
    </message>
</context>
<context>
    <name>DemoBadge</name>
    <message>
        <source>Demo</source>
        <translation>Démo</translation>
    </message>
</context>
<context>
    <name>EventDay</name>
    <message>
        <source>A day earlier</source>
        <translation>Un jour plus tôt</translation>
    </message>
    <message>
        <source>A day later</source>
        <translation>Un jour plus tard</translation>
    </message>
    <message>
        <source>Another day</source>
        <translation>Un autre jour</translation>
    </message>
    <message>
        <source>Such as 3 May, or 2026-05-03</source>
        <translation>Par exemple 3 mai, ou 2026-05-03</translation>
    </message>
</context>
<context>
    <name>EventDetails</name>
    <message>
        <source>Note</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>One less</source>
        <translation>Un de moins</translation>
    </message>
    <message>
        <source>One more</source>
        <translation>Un de plus</translation>
    </message>
</context>
<context>
    <name>EventPage</name>
    <message>
        <source>Is that so?</source>
        <translation>Est-ce exact ?</translation>
    </message>
    <message>
        <source>It counts no more for this colony. The history keeps that it was written down.</source>
        <translation>Il ne compte plus pour cette colonie. L’historique garde le fait qu’il a été noté.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>Laisser tel quel</translation>
    </message>
    <message>
        <source>No, go back</source>
        <translation>Non, revenir</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Take it back?</source>
        <translation>L’annuler ?</translation>
    </message>
    <message>
        <source>Yes, keep it</source>
        <translation>Oui, enregistrer</translation>
    </message>
</context>
<context>
    <name>EventWords</name>
    <message>
        <source>%1 has not come yet. Keep it on the day it happens.</source>
        <translation>Le %1 n’est pas encore venu. Enregistrez-le le jour où cela arrive.</translation>
    </message>
    <message>
        <source>A colony cannot be put into itself. Touch another one.</source>
        <translation>Une colonie ne peut pas être réunie à elle-même. Touchez-en une autre.</translation>
    </message>
    <message>
        <source>By your records colony %1 has its supers on already.</source>
        <translation>D’après vos données, la colonie %1 a déjà ses hausses.</translation>
    </message>
    <message>
        <source>By your records colony %1 has no supers on.</source>
        <translation>D’après vos données, la colonie %1 n’a pas de hausses.</translation>
    </message>
    <message>
        <source>By your records colony %1 was gone before %2.</source>
        <translation>D’après vos données, la colonie %1 n’existait plus avant le %2.</translation>
    </message>
    <message>
        <source>Colony %1 ends with this. It leaves the lists of what is due; all its records stay.</source>
        <translation>La colonie %1 prend fin ainsi. Elle quitte les listes de ce qui est à faire ; toutes ses données restent.</translation>
    </message>
    <message>
        <source>Colony %1 is dead? It leaves the lists of what is due; all its records stay.</source>
        <translation>La colonie %1 est morte ? Elle quitte les listes de ce qui est à faire ; toutes ses données restent.</translation>
    </message>
    <message>
        <source>Colony %1: %2 is in the hive until %3, and its withdrawal is not written down. Supers only where the label allows them.</source>
        <translation>Colonie %1 : %2 est dans la ruche jusqu’au %3, et son temps d’attente n’est pas noté. Des hausses seulement si l’étiquette les permet.</translation>
    </message>
    <message>
        <source>Colony %1: %2 is in the hive, and honey may not be taken before %3. Supers only where the label allows them.</source>
        <translation>Colonie %1 : %2 est dans la ruche, et le miel ne peut pas être récolté avant le %3. Des hausses seulement si l’étiquette les permet.</translation>
    </message>
    <message>
        <source>Colony %1: honey may not be taken before %2, after %3. Supers that go on now can spoil honey.</source>
        <translation>Colonie %1 : le miel ne peut pas être récolté avant le %2, après %3. Des hausses posées maintenant peuvent donner un miel impropre.</translation>
    </message>
    <message>
        <source>Frames covered with bees: from 0 to %1.</source>
        <translation>Cadres couverts d’abeilles : de 0 à %1.</translation>
    </message>
    <message>
        <source>It stands in %1 already on that day. Touch another yard, or go back.</source>
        <translation>Elle est déjà dans le rucher %1 ce jour-là. Touchez un autre rucher, ou revenez.</translation>
    </message>
    <message>
        <source>There is no such day. Type it like 18 May 2026.</source>
        <translation>Ce jour n’existe pas. Saisissez-le comme 18 mai 2026.</translation>
    </message>
    <message>
        <source>Touch the colony it was put into.</source>
        <translation>Touchez la colonie à laquelle elle a été réunie.</translation>
    </message>
    <message>
        <source>Touch the yard it was moved to.</source>
        <translation>Touchez le rucher où elle a été déplacée.</translation>
    </message>
    <message>
        <source>Touch what you saw.</source>
        <translation>Touchez ce que vous avez vu.</translation>
    </message>
    <message>
        <source>Type how many frames are covered with bees.</source>
        <translation>Saisissez combien de cadres sont couverts d’abeilles.</translation>
    </message>
</context>
<context>
    <name>ExportFile</name>
    <message>
        <source>%1 cannot be written. Nothing was written.</source>
        <translation>Impossible d’écrire %1. Rien n’a été écrit.</translation>
    </message>
    <message>
        <source>%1 cannot be written: the folder is read-only. Nothing was written.</source>
        <translation>Impossible d’écrire %1 : le dossier est en lecture seule. Rien n’a été écrit.</translation>
    </message>
    <message>
        <source>%1 could not be written. Your records are safe.</source>
        <translation>%1 n’a pas pu être écrit. Vos données sont en sécurité.</translation>
    </message>
    <message>
        <source>%1 is a folder, not a file. Nothing was written.</source>
        <translation>%1 est un dossier, pas un fichier. Rien n’a été écrit.</translation>
    </message>
    <message>
        <source>%1, handed to the browser</source>
        <comment>a file's name</comment>
        <translation>%1, remis au navigateur</translation>
    </message>
    <message>
        <source>The folder for %1 is not there. Nothing was written.</source>
        <translation>Le dossier pour %1 n’existe pas. Rien n’a été écrit.</translation>
    </message>
    <message>
        <source>The storage is full. %1 was not written; your records are safe.</source>
        <translation>Le stockage est plein. %1 n’a pas été écrit ; vos données sont en sécurité.</translation>
    </message>
    <message>
        <source>This phone has no place for files to hand on.</source>
        <translation>Ce téléphone n’a pas d’endroit pour les fichiers à transmettre.</translation>
    </message>
</context>
<context>
    <name>ExportPage</name>
    <message>
        <source>1,5; semicolons</source>
        <translation>1,5 ; points-virgules</translation>
    </message>
    <message>
        <source>1.5, commas</source>
        <translation>1.5, virgules</translation>
    </message>
    <message>
        <source>Blurred</source>
        <translation>Flouté</translation>
    </message>
    <message>
        <source>Exact, this time</source>
        <translation>Exact, cette fois</translation>
    </message>
    <message>
        <source>For people</source>
        <translation>Documents</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Omettre</translation>
    </message>
    <message>
        <source>Spreadsheet expects</source>
        <translation>Votre tableur attend</translation>
    </message>
    <message>
        <source>Where your hives stand</source>
        <translation>Où sont vos ruches</translation>
    </message>
</context>
<context>
    <name>FirstStartPage</name>
    <message>
        <source>Understood, go on</source>
        <translation>Compris, continuer</translation>
    </message>
</context>
<context>
    <name>FolderPage</name>
    <message>
        <source>Each phone puts what it records into a file of its own in this folder, and reads the files of the others. Let any program that keeps folders alike carry it from phone to phone.</source>
        <translation>Chaque téléphone met ce qu’il note dans son propre fichier dans ce dossier, et lit les fichiers des autres. N’importe quel programme qui synchronise des dossiers peut le porter d’un téléphone à l’autre.</translation>
    </message>
    <message>
        <source>Exchange folder</source>
        <translation>Dossier d’échange</translation>
    </message>
    <message>
        <source>Exchange now</source>
        <translation>Échanger maintenant</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Dossier</translation>
    </message>
    <message>
        <source>It holds the exact places of your hives. Whoever reads the folder knows them.</source>
        <translation>Il contient l’emplacement exact de vos ruches. Qui lit le dossier le connaît.</translation>
    </message>
    <message>
        <source>It is made where there is none.</source>
        <translation>Il est créé s’il n’existe pas.</translation>
    </message>
    <message>
        <source>Stop using this folder</source>
        <translation>Ne plus utiliser ce dossier</translation>
    </message>
    <message>
        <source>To use another one, stop using this first.</source>
        <translation>Pour en utiliser un autre, cessez d’abord d’utiliser celui-ci.</translation>
    </message>
    <message>
        <source>Use this folder</source>
        <translation>Utiliser ce dossier</translation>
    </message>
    <message>
        <source>from now on, whenever the app is opened</source>
        <translation>désormais, à chaque ouverture de l’appli</translation>
    </message>
</context>
<context>
    <name>FoundFiles</name>
    <message>
        <source>%1, %2</source>
        <comment>day, size</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Choose a file</source>
        <translation>Choisir un fichier</translation>
    </message>
    <message>
        <source>Choose another file</source>
        <translation>Choisir un autre fichier</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Chercher encore</translation>
    </message>
</context>
<context>
    <name>Handbook</name>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>% error</source>
        <translation>% d’erreur</translation>
    </message>
    <message>
        <source>% isopropyl alcohol</source>
        <translation>% d’alcool isopropylique</translation>
    </message>
    <message>
        <source>0.017 to 0.021 per day.</source>
        <translation>0,017 à 0,021 par jour.</translation>
    </message>
    <message>
        <source>0.4 +/- 9.5 %.</source>
        <translation>0,4 ± 9,5 %.</translation>
    </message>
    <message>
        <source>0.99 to the power of 100</source>
        <translation>0,99 puissance 100</translation>
    </message>
    <message>
        <source>0.99 to the power of 300</source>
        <translation>0,99 puissance 300</translation>
    </message>
    <message>
        <source>100 (x - y) / x, x living untreated, y living treated</source>
        <translation>100 (x - y) / x, x vivants non traités, y vivants traités</translation>
    </message>
    <message>
        <source>100 [1 - (Ta/Tb)(Cb/Ca)], T treated, C control, b before, a after</source>
        <translation>100 [1 - (Ta/Tb)(Cb/Ca)], T traité, C témoin, b avant, a après</translation>
    </message>
    <message>
        <source>100 x 43 / 310</source>
        <translation>100 x 43 / 310</translation>
    </message>
    <message>
        <source>100 x 9 / 250</source>
        <translation>100 x 9 / 250</translation>
    </message>
    <message>
        <source>100 x 9 / 300</source>
        <translation>100 x 9 / 300</translation>
    </message>
    <message>
        <source>100 x 9 / 350</source>
        <translation>100 x 9 / 350</translation>
    </message>
    <message>
        <source>100 x 9 / 400</source>
        <translation>100 x 9 / 400</translation>
    </message>
    <message>
        <source>15 August</source>
        <translation>15 août</translation>
    </message>
    <message>
        <source>150 leaves: 70 38 17 10 9 3 2 1 with 0 to 7 mites.</source>
        <translation>150 feuilles : 70 38 17 10 9 3 2 1 portant 0 à 7 acariens.</translation>
    </message>
    <message>
        <source>18.3 g per hundred bees, from 175 samples. Not the mass of live bees.</source>
        <translation>18,3 g pour cent abeilles, d’après 175 prélèvements. Ce n’est pas le poids d’abeilles vivantes.</translation>
    </message>
    <message>
        <source>2,313 of 2,343 mites in 114 samples.</source>
        <translation>2313 varroas sur 2343 dans 114 prélèvements.</translation>
    </message>
    <message>
        <source>3.38 bees per ml.</source>
        <translation>3,38 abeilles par ml.</translation>
    </message>
    <message>
        <source>300 bees divided by the volume of a half cup</source>
        <translation>300 abeilles divisées par le volume d’une demi-tasse</translation>
    </message>
    <message>
        <source>43 mites on 310 bees</source>
        <translation>43 varroas sur 310 abeilles</translation>
    </message>
    <message>
        <source>5 mites in a half cup</source>
        <translation>5 varroas dans une demi-tasse</translation>
    </message>
    <message>
        <source>50 % follows from the rule of doubling; 70 % and more is often said.</source>
        <translation>50 % découle de la règle du double ; on dit souvent 70 % et plus.</translation>
    </message>
    <message>
        <source>50 to 85 F. The first three days matter most.</source>
        <translation>De 50 à 85 °F. Les trois premiers jours comptent le plus.</translation>
    </message>
    <message>
        <source>76.5 +/- 7.1 %, on cardboard.</source>
        <translation>76,5 ± 7,1 %, sur carton.</translation>
    </message>
    <message>
        <source>9 mites in a half cup</source>
        <translation>9 varroas dans une demi-tasse</translation>
    </message>
    <message>
        <source>92.9 +/- 5.5 %.</source>
        <translation>92,9 ± 5,5 %.</translation>
    </message>
    <message>
        <source>A bee drained after an alcohol wash</source>
        <translation>Une abeille égouttée après un lavage à l’alcool</translation>
    </message>
    <message>
        <source>A bee in these rates</source>
        <translation>Une abeille dans ces taux</translation>
    </message>
    <message>
        <source>A caged queen or a nucleus made up, some three weeks until the last brood has hatched, then a treatment that fits a broodless colony.</source>
        <translation>Une reine encagée ou un nucléus formé, environ trois semaines jusqu’à l’éclosion du dernier couvain, puis un traitement qui convient à une colonie sans couvain.</translation>
    </message>
    <message>
        <source>A careful keeper's own line</source>
        <translation>Le seuil d’un apiculteur prudent</translation>
    </message>
    <message>
        <source>A colony and its mites through the year</source>
        <translation>Une colonie et ses varroas au fil de l’année</translation>
    </message>
    <message>
        <source>A drone frame, cut out once capped and before the drones hatch (14 to 15 days capped), again and again in the drone season.</source>
        <translation>Un cadre à mâles, découpé une fois operculé et avant l’éclosion des mâles (14 à 15 jours d’opercule), encore et encore pendant la saison des mâles.</translation>
    </message>
    <message>
        <source>A floor of mesh, with the board out but for counts.</source>
        <translation>Un plancher en grillage, le lange n’étant en place que pour compter.</translation>
    </message>
    <message>
        <source>A live worker on the wash scale</source>
        <translation>Une ouvrière vivante sur la balance de lavage</translation>
    </message>
    <message>
        <source>A mated queen of such stock, and a colony that accepts her.</source>
        <translation>Une reine fécondée d’une telle lignée, et une colonie qui l’accepte.</translation>
    </message>
    <message>
        <source>A mature worker</source>
        <translation>Une ouvrière adulte</translation>
    </message>
    <message>
        <source>A measure slows mites down; by itself it seldom brings a load that is over the line under it again.</source>
        <translation>Une intervention freine les varroas ; seule, elle ramène rarement sous le seuil une charge qui l’a dépassé.</translation>
    </message>
    <message>
        <source>A monoamine-oxidase inhibitor: keep off skin and eyes.</source>
        <translation>Un inhibiteur de la monoamine-oxydase : éviter tout contact avec la peau et les yeux.</translation>
    </message>
    <message>
        <source>A nerve poison for people too: gloves, and do what the label says.</source>
        <translation>Un poison des nerfs pour les humains aussi : gants, et faites ce que dit l’étiquette.</translation>
    </message>
    <message>
        <source>A sugar roll against a wash of the same bees</source>
        <translation>Un test au sucre glace par rapport à un lavage des mêmes abeilles</translation>
    </message>
    <message>
        <source>A tenth from scoop to scoop and 7 % common to all scoops of one hand.</source>
        <translation>Un dixième d’une mesure à l’autre, et 7 % communs à toutes les mesures d’une main.</translation>
    </message>
    <message>
        <source>A tenth of the mean.</source>
        <translation>Un dixième de la moyenne.</translation>
    </message>
    <message>
        <source>A worker full of honey</source>
        <translation>Une ouvrière gorgée de miel</translation>
    </message>
    <message>
        <source>A worker just emerged</source>
        <translation>Une ouvrière à peine éclose</translation>
    </message>
    <message>
        <source>Abbott 1925, J Econ Entomol 18:265</source>
        <translation>Abbott 1925, J Econ Entomol 18:265</translation>
    </message>
    <message>
        <source>About four weeks.</source>
        <translation>Environ quatre semaines.</translation>
    </message>
    <message>
        <source>About six weeks.</source>
        <translation>Environ six semaines.</translation>
    </message>
    <message>
        <source>About; so a frame without brood makes the load look too low.</source>
        <translation>Environ ; un cadre sans couvain fait donc paraître la charge trop basse.</translation>
    </message>
    <message>
        <source>About; the entrance stays fully open.</source>
        <translation>Environ ; l’entrée reste grande ouverte.</translation>
    </message>
    <message>
        <source>Above this load no line means anything</source>
        <translation>Au-dessus de cette charge, aucun seuil n’a de sens</translation>
    </message>
    <message>
        <source>Above this share: treat.</source>
        <translation>Au-dessus de cette part : traiter.</translation>
    </message>
    <message>
        <source>Active substance</source>
        <translation>Substance active</translation>
    </message>
    <message>
        <source>Active substances</source>
        <translation>Substances actives</translation>
    </message>
    <message>
        <source>Adult bees of one frame of a brood box.</source>
        <translation>Abeilles adultes d’un cadre du corps à couvain.</translation>
    </message>
    <message>
        <source>Adult bees, middle of April</source>
        <translation>Abeilles adultes, mi-avril</translation>
    </message>
    <message>
        <source>Adult bees, middle of August</source>
        <translation>Abeilles adultes, mi-août</translation>
    </message>
    <message>
        <source>Adult bees, middle of December</source>
        <translation>Abeilles adultes, mi-décembre</translation>
    </message>
    <message>
        <source>Adult bees, middle of February</source>
        <translation>Abeilles adultes, mi-février</translation>
    </message>
    <message>
        <source>Adult bees, middle of January</source>
        <translation>Abeilles adultes, mi-janvier</translation>
    </message>
    <message>
        <source>Adult bees, middle of July</source>
        <translation>Abeilles adultes, mi-juillet</translation>
    </message>
    <message>
        <source>Adult bees, middle of June</source>
        <translation>Abeilles adultes, mi-juin</translation>
    </message>
    <message>
        <source>Adult bees, middle of March</source>
        <translation>Abeilles adultes, mi-mars</translation>
    </message>
    <message>
        <source>Adult bees, middle of May</source>
        <translation>Abeilles adultes, mi-mai</translation>
    </message>
    <message>
        <source>Adult bees, middle of November</source>
        <translation>Abeilles adultes, mi-novembre</translation>
    </message>
    <message>
        <source>Adult bees, middle of October</source>
        <translation>Abeilles adultes, mi-octobre</translation>
    </message>
    <message>
        <source>Adult bees, middle of September</source>
        <translation>Abeilles adultes, mi-septembre</translation>
    </message>
    <message>
        <source>After Calatayud &amp; Verdu 1993 and Martin 1998</source>
        <translation>D’après Calatayud &amp; Verdu 1993 et Martin 1998</translation>
    </message>
    <message>
        <source>Agency pages on satellite positioning</source>
        <translation>Pages d’organismes publics sur le positionnement par satellite</translation>
    </message>
    <message>
        <source>Agrees with counted washes of Aurell et al. 2025: a tenth a scoop.</source>
        <translation>Concorde avec les lavages comptés d’Aurell et al. 2025 : un dixième par mesure.</translation>
    </message>
    <message>
        <source>Alberta</source>
        <translation>Alberta</translation>
    </message>
    <message>
        <source>Alberta, fall</source>
        <translation>Alberta, automne</translation>
    </message>
    <message>
        <source>Alberta, spring</source>
        <translation>Alberta, printemps</translation>
    </message>
    <message>
        <source>Alcohol</source>
        <translation>Alcool</translation>
    </message>
    <message>
        <source>Alcohol by hand, one minute, first rinse</source>
        <translation>Alcool à la main, une minute, premier rinçage</translation>
    </message>
    <message>
        <source>Alcohol for the wash</source>
        <translation>Alcool pour le lavage</translation>
    </message>
    <message>
        <source>Amitraz</source>
        <translation>Amitraze</translation>
    </message>
    <message>
        <source>Aurell et al. 2024, J Insect Sci (data CC-BY-4.0)</source>
        <translation>Aurell et al. 2024, J Insect Sci (données CC-BY-4.0)</translation>
    </message>
    <message>
        <source>Aurell et al. 2025, J Econ Entomol, doi 10.1093/jee/toaf126 (data CC-BY-4.0)</source>
        <translation>Aurell et al. 2025, J Econ Entomol, doi 10.1093/jee/toaf126 (données CC-BY-4.0)</translation>
    </message>
    <message>
        <source>Bavaria</source>
        <translation>Bavière</translation>
    </message>
    <message>
        <source>Bavaria, July: treat at once</source>
        <translation>Bavière, juillet : traiter tout de suite</translation>
    </message>
    <message>
        <source>Bavaria, July: treat soon</source>
        <translation>Bavière, juillet : traiter bientôt</translation>
    </message>
    <message>
        <source>Bees counted in washes of one study</source>
        <translation>Abeilles comptées dans les lavages d’une étude</translation>
    </message>
    <message>
        <source>Bees for one colony</source>
        <translation>Abeilles pour une colonie</translation>
    </message>
    <message>
        <source>Bees have to move about.</source>
        <translation>Les abeilles doivent circuler.</translation>
    </message>
    <message>
        <source>Bees in a half cup, highest published figure</source>
        <translation>Abeilles dans une demi-tasse, plus haute valeur publiée</translation>
    </message>
    <message>
        <source>Bees in a half cup, the trade's figure</source>
        <translation>Abeilles dans une demi-tasse, valeur du métier</translation>
    </message>
    <message>
        <source>Bees in later washes of the same study</source>
        <translation>Abeilles dans des lavages ultérieurs de la même étude</translation>
    </message>
    <message>
        <source>Bees in one US fluid ounce, after tapping</source>
        <translation>Abeilles dans une once liquide américaine, tassées</translation>
    </message>
    <message>
        <source>Bees in the scoop</source>
        <translation>Abeilles dans la mesure</translation>
    </message>
    <message>
        <source>Bees on a deep frame, average</source>
        <translation>Abeilles sur un cadre de corps (deep), moyenne</translation>
    </message>
    <message>
        <source>Bees on a deep frame, full</source>
        <translation>Abeilles sur un cadre de corps (deep), plein</translation>
    </message>
    <message>
        <source>Bees on a deep frame, one layer</source>
        <translation>Abeilles sur un cadre de corps (deep), une couche</translation>
    </message>
    <message>
        <source>Bees per ml by the trade's figure</source>
        <translation>Abeilles par ml selon la valeur du métier</translation>
    </message>
    <message>
        <source>Bees per ml, settled by rapping</source>
        <translation>Abeilles par ml, tassées</translation>
    </message>
    <message>
        <source>Bees settled by rapping the cup: volume of 300</source>
        <translation>Abeilles tassées en frappant la mesure : volume de 300</translation>
    </message>
    <message>
        <source>Bees that find and clear infested brood slow the mites down from the next generation on.</source>
        <translation>Des abeilles qui repèrent et nettoient le couvain infesté freinent les varroas dès la génération suivante.</translation>
    </message>
    <message>
        <source>Below the 92.9 +/- 5.5 % of Macedo, Wu &amp; Ellis 2002.</source>
        <translation>Au-dessous des 92,9 ± 5,5 % de Macedo, Wu &amp; Ellis 2002.</translation>
    </message>
    <message>
        <source>Below the published 92.9 %, because figures from memory are lower.</source>
        <translation>Au-dessous des 92,9 % publiés, car les valeurs de mémoire sont plus basses.</translation>
    </message>
    <message>
        <source>Berry et al. 2022</source>
        <translation>Berry et al. 2022</translation>
    </message>
    <message>
        <source>Between both ends lie 90 %.</source>
        <translation>Entre les deux bornes : 90 %.</translation>
    </message>
    <message>
        <source>Between figures from memory; a second rinse of your own replaces it.</source>
        <translation>Entre des valeurs de mémoire ; un second rinçage de votre part la remplace.</translation>
    </message>
    <message>
        <source>Bliss &amp; Fisher 1953, Biometrics 9:176-200</source>
        <translation>Bliss &amp; Fisher 1953, Biometrics 9:176-200</translation>
    </message>
    <message>
        <source>Boot et al. 1995; Calis et al. 1999</source>
        <translation>Boot et al. 1995; Calis et al. 1999</translation>
    </message>
    <message>
        <source>Brood break</source>
        <translation>Arrêt de ponte</translation>
    </message>
    <message>
        <source>Burgett &amp; Burikam 1985, J Econ Entomol 78:1154-1156</source>
        <translation>Burgett &amp; Burikam 1985, J Econ Entomol 78:1154-1156</translation>
    </message>
    <message>
        <source>Burns easily: no lit smoker, no flame and no cigarette beside an open jar.</source>
        <translation>S’enflamme facilement : pas d’enfumoir allumé, pas de flamme et pas de cigarette à côté d’un bocal ouvert.</translation>
    </message>
    <message>
        <source>Burns skin and eyes: acid-proof gloves and goggles, also when taking the carriers out.</source>
        <translation>Brûle la peau et les yeux : gants et lunettes résistant aux acides, aussi pour retirer les supports.</translation>
    </message>
    <message>
        <source>Burns skin, eyes and lungs, as vapour and as dust: acid-proof gloves, goggles and the respirator the label asks for.</source>
        <translation>Brûle la peau, les yeux et les poumons, en vapeur comme en poussière : gants et lunettes résistant aux acides, et le masque respiratoire que l’étiquette demande.</translation>
    </message>
    <message>
        <source>Burns skin, eyes and lungs, its vapour too: acid-proof gloves, goggles and the respirator the label asks for.</source>
        <translation>Brûle la peau, les yeux et les poumons, ses vapeurs aussi : gants et lunettes résistant aux acides, et le masque respiratoire que l’étiquette demande.</translation>
    </message>
    <message>
        <source>CSS px</source>
        <translation>px CSS</translation>
    </message>
    <message>
        <source>Calderone &amp; Turcotte 1998, J Econ Entomol 91:851-863</source>
        <translation>Calderone &amp; Turcotte 1998, J Econ Entomol 91:851-863</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of April</source>
        <translation>Cellules de mâles operculées, mi-avril</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of August</source>
        <translation>Cellules de mâles operculées, mi-août</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of December</source>
        <translation>Cellules de mâles operculées, mi-décembre</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of February</source>
        <translation>Cellules de mâles operculées, mi-février</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of January</source>
        <translation>Cellules de mâles operculées, mi-janvier</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of July</source>
        <translation>Cellules de mâles operculées, mi-juillet</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of June</source>
        <translation>Cellules de mâles operculées, mi-juin</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of March</source>
        <translation>Cellules de mâles operculées, mi-mars</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of May</source>
        <translation>Cellules de mâles operculées, mi-mai</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of November</source>
        <translation>Cellules de mâles operculées, mi-novembre</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of October</source>
        <translation>Cellules de mâles operculées, mi-octobre</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of September</source>
        <translation>Cellules de mâles operculées, mi-septembre</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of April</source>
        <translation>Cellules d’ouvrières operculées, mi-avril</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of August</source>
        <translation>Cellules d’ouvrières operculées, mi-août</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of December</source>
        <translation>Cellules d’ouvrières operculées, mi-décembre</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of February</source>
        <translation>Cellules d’ouvrières operculées, mi-février</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of January</source>
        <translation>Cellules d’ouvrières operculées, mi-janvier</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of July</source>
        <translation>Cellules d’ouvrières operculées, mi-juillet</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of June</source>
        <translation>Cellules d’ouvrières operculées, mi-juin</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of March</source>
        <translation>Cellules d’ouvrières operculées, mi-mars</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of May</source>
        <translation>Cellules d’ouvrières operculées, mi-mai</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of November</source>
        <translation>Cellules d’ouvrières operculées, mi-novembre</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of October</source>
        <translation>Cellules d’ouvrières operculées, mi-octobre</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of September</source>
        <translation>Cellules d’ouvrières operculées, mi-septembre</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Précaution</translation>
    </message>
    <message>
        <source>Chance of being over above which a load is over a line</source>
        <translation>Probabilité de dépassement au-dessus de laquelle une charge est au-delà d’un seuil</translation>
    </message>
    <message>
        <source>Chance of being over from which a load is close to a line</source>
        <translation>Probabilité de dépassement à partir de laquelle une charge est près d’un seuil</translation>
    </message>
    <message>
        <source>Choice of the Halfcup project</source>
        <translation>Choix du projet Halfcup</translation>
    </message>
    <message>
        <source>Choice of the Halfcup project, usual figures of a northern temperate colony</source>
        <translation>Choix du projet Halfcup, valeurs habituelles d’une colonie de la zone tempérée nord</translation>
    </message>
    <message>
        <source>Choices in the arithmetic</source>
        <translation>Choix de calcul</translation>
    </message>
    <message>
        <source>Colonies died at</source>
        <translation>Colonies mortes à</translation>
    </message>
    <message>
        <source>Colonies for one yard</source>
        <translation>Colonies pour un rucher</translation>
    </message>
    <message>
        <source>Colours told apart by the colour-blind</source>
        <translation>Couleurs que les daltoniens distinguent</translation>
    </message>
    <message>
        <source>Contrast of #0072B2 on white</source>
        <translation>Contraste de #0072B2 sur blanc</translation>
    </message>
    <message>
        <source>Contrast of #595959 on white</source>
        <translation>Contraste de #595959 sur blanc</translation>
    </message>
    <message>
        <source>Contrast of #767676 on white</source>
        <translation>Contraste de #767676 sur blanc</translation>
    </message>
    <message>
        <source>Contrast of text, at least</source>
        <translation>Contraste du texte, au moins</translation>
    </message>
    <message>
        <source>Correction by untreated colonies, counts before and after</source>
        <translation>Correction par des colonies non traitées, comptages avant et après</translation>
    </message>
    <message>
        <source>Correction by untreated colonies, one count each</source>
        <translation>Correction par des colonies non traitées, un comptage chacune</translation>
    </message>
    <message>
        <source>Coumaphos</source>
        <translation>Coumaphos</translation>
    </message>
    <message>
        <source>Counted washes of Aurell et al. 2025 give 0.103.</source>
        <translation>Les lavages comptés d’Aurell et al. 2025 donnent 0,103.</translation>
    </message>
    <message>
        <source>Counting a third of a board's cells</source>
        <translation>Compter un tiers des cases d’un lange</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Durée du traitement</translation>
    </message>
    <message>
        <source>Course of a German chamber of agriculture</source>
        <translation>Cours d’une chambre d’agriculture allemande</translation>
    </message>
    <message>
        <source>Covers 88 to 130 mg a bee by age and food.</source>
        <translation>Couvre 88 à 130 mg par abeille selon l’âge et la nourriture.</translation>
    </message>
    <message>
        <source>Currie &amp; Gatien 2006, Can Entomol 138:238-252</source>
        <translation>Currie &amp; Gatien 2006, Can Entomol 138:238-252</translation>
    </message>
    <message>
        <source>Daily highs at their best</source>
        <translation>Maximums du jour les plus favorables</translation>
    </message>
    <message>
        <source>Daily highs, limits</source>
        <translation>Maximums du jour, limites</translation>
    </message>
    <message>
        <source>Days after the end of a treatment for a wash that judges it</source>
        <translation>Jours entre la fin d’un traitement et le lavage qui le juge</translation>
    </message>
    <message>
        <source>Days run before the start so that ages settle</source>
        <translation>Jours calculés avant le début pour que les âges se stabilisent</translation>
    </message>
    <message>
        <source>Days they may lie apart</source>
        <translation>Jours d’écart permis entre eux</translation>
    </message>
    <message>
        <source>Days to double at 0.021 per day</source>
        <translation>Jours pour doubler à 0,021 par jour</translation>
    </message>
    <message>
        <source>DeGrandi-Hoffman et al. 2016, Exp Appl Acarol</source>
        <translation>DeGrandi-Hoffman et al. 2016, Exp Appl Acarol</translation>
    </message>
    <message>
        <source>Delaplane &amp; Hood 1997, J Apic Res 36:125-132</source>
        <translation>Delaplane &amp; Hood 1997, J Apic Res 36:125-132</translation>
    </message>
    <message>
        <source>Delaplane &amp; Hood 1999, Apidologie 30:383-395</source>
        <translation>Delaplane &amp; Hood 1999, Apidologie 30:383-395</translation>
    </message>
    <message>
        <source>Derived in the field as 15 to 38 mites per 300 bees, counted by ether roll, which finds fewer than a wash.</source>
        <translation>Tiré d’essais de terrain : 15 à 38 varroas pour 300 abeilles, comptés à l’éther, méthode qui en trouve moins qu’un lavage.</translation>
    </message>
    <message>
        <source>Deviation of a colony from the season's course</source>
        <translation>Écart d’une colonie au cours habituel de la saison</translation>
    </message>
    <message>
        <source>Did the treatment work</source>
        <translation>Efficacité du traitement</translation>
    </message>
    <message>
        <source>Dietemann et al. 2013 print 14.3, which is a slip.</source>
        <translation>Dietemann et al. 2013 impriment 14,3 ; c’est une erreur.</translation>
    </message>
    <message>
        <source>Dietemann et al. 2013, J Apic Res 52(1), section 4.2.3.1.1, after Lee et al. 2010</source>
        <translation>Dietemann et al. 2013, J Apic Res 52(1), section 4.2.3.1.1, d’après Lee et al. 2010</translation>
    </message>
    <message>
        <source>Do not use the class used last again; where there is no class number, do not use the same substance again</source>
        <translation>Ne pas réutiliser la dernière classe employée ; sans numéro de classe, ne pas réutiliser la même substance</translation>
    </message>
    <message>
        <source>Doubling about every month</source>
        <translation>Doublement chaque mois environ</translation>
    </message>
    <message>
        <source>Drone brood removal</source>
        <translation>Retrait du couvain de mâles</translation>
    </message>
    <message>
        <source>Drone brood under its capping</source>
        <translation>Couvain de mâles sous opercule</translation>
    </message>
    <message>
        <source>E69F00 56B4E9 009E73 F0E442 0072B2 D55E00 CC79A7 000000</source>
        <translation>E69F00 56B4E9 009E73 F0E442 0072B2 D55E00 CC79A7 000000</translation>
    </message>
    <message>
        <source>EMA/CVMP/EWP/459883/2008, quoted in Dietemann et al. 2013, section 4.5.4</source>
        <translation>EMA/CVMP/EWP/459883/2008, cité dans Dietemann et al. 2013, section 4.5.4</translation>
    </message>
    <message>
        <source>Eats skin and eyes, its vapour hurts the lungs: acid-proof gloves, goggles, respirator by label.</source>
        <translation>Ronge la peau et les yeux, ses vapeurs blessent les poumons : gants et lunettes résistant aux acides, masque respiratoire selon l’étiquette.</translation>
    </message>
    <message>
        <source>Eats skin and eyes, vapour and dust hurt the lungs: acid-proof gloves, goggles, respirator by label.</source>
        <translation>Ronge la peau et les yeux, vapeurs et poussières blessent les poumons : gants et lunettes résistant aux acides, masque respiratoire selon l’étiquette.</translation>
    </message>
    <message>
        <source>Economic threshold; colonies lost more often the more months they spent above it.</source>
        <translation>Seuil économique ; les colonies se perdaient d’autant plus souvent qu’elles avaient passé de mois au-dessus.</translation>
    </message>
    <message>
        <source>Every month, beginning when colonies can first be opened.</source>
        <translation>Chaque mois, dès que les colonies peuvent être ouvertes.</translation>
    </message>
    <message>
        <source>Exact Poisson 95 % limits of 25</source>
        <translation>Limites exactes de Poisson à 95 % pour 25</translation>
    </message>
    <message>
        <source>Exact Poisson 95 % limits of 5</source>
        <translation>Limites exactes de Poisson à 95 % pour 5</translation>
    </message>
    <message>
        <source>Exact Poisson 95 % limits of 9</source>
        <translation>Limites exactes de Poisson à 95 % pour 9</translation>
    </message>
    <message>
        <source>Exact Poisson 95 % upper limit of 0</source>
        <translation>Limite supérieure exacte de Poisson à 95 % pour 0</translation>
    </message>
    <message>
        <source>Exact Poisson 99 % limits of 25</source>
        <translation>Limites exactes de Poisson à 99 % pour 25</translation>
    </message>
    <message>
        <source>Example: 50 living untreated, 2 treated</source>
        <translation>Exemple : 50 vivants sans traitement, 2 avec</translation>
    </message>
    <message>
        <source>Example: treated 30 then 6, untreated 28 then 26</source>
        <translation>Exemple : traitées 30 puis 6, non traitées 28 puis 26</translation>
    </message>
    <message>
        <source>Example: treated 50 then 5, untreated 40 then 60</source>
        <translation>Exemple : traitées 50 puis 5, non traitées 40 puis 60</translation>
    </message>
    <message>
        <source>Far worse under trees than the phone reports: its accuracy is kept with every position.</source>
        <translation>Sous les arbres, bien pire que le téléphone ne l’annonce : sa précision est gardée avec chaque position.</translation>
    </message>
    <message>
        <source>Fast growth in the season's picture</source>
        <translation>Croissance rapide dans la courbe de la saison</translation>
    </message>
    <message>
        <source>Fewer bees than this may leave the answer open</source>
        <translation>Avec moins d’abeilles, la réponse peut rester ouverte</translation>
    </message>
    <message>
        <source>Fewer bees than this say little</source>
        <translation>Moins d’abeilles disent peu de chose</translation>
    </message>
    <message>
        <source>Fewer mites than this before a treatment say little about what it did</source>
        <translation>Moins de varroas avant un traitement disent peu de chose de son effet</translation>
    </message>
    <message>
        <source>Fewest bees in the colony</source>
        <translation>Nombre minimal d’abeilles dans la colonie</translation>
    </message>
    <message>
        <source>Field trials in the United States</source>
        <translation>Essais de terrain aux États-Unis</translation>
    </message>
    <message>
        <source>First days whose highs matter most</source>
        <translation>Premiers jours, dont les maximums comptent le plus</translation>
    </message>
    <message>
        <source>Fitted to near-replicate washes of 65 colonies: 6.9. Extra spread of 38 % of the load.</source>
        <translation>Ajusté sur des lavages quasi répétés de 65 colonies : 6,9. Dispersion supplémentaire de 38 % de la charge.</translation>
    </message>
    <message>
        <source>Five mites in a half cup of 300 bees, rounded.</source>
        <translation>Cinq varroas dans une demi-tasse de 300 abeilles, arrondi.</translation>
    </message>
    <message>
        <source>Flumethrin</source>
        <translation>Fluméthrine</translation>
    </message>
    <message>
        <source>Follows from the definition of the US gallon (231 cubic inches, 3785.411784 ml): one half of a sixteenth</source>
        <translation>Découle de la définition du gallon américain (231 pouces cubes, 3785,411784 ml) : la moitié d’un seizième</translation>
    </message>
    <message>
        <source>For a young colony, over 5 a day already means treat.</source>
        <translation>Pour une jeune colonie, plus de 5 par jour veut déjà dire traiter.</translation>
    </message>
    <message>
        <source>Formic acid</source>
        <translation>Acide formique</translation>
    </message>
    <message>
        <source>Formic acid, pads or strips</source>
        <translation>Acide formique, plaquettes ou lanières</translation>
    </message>
    <message>
        <source>Formula of WCAG 2.2</source>
        <translation>Formule de WCAG 2.2</translation>
    </message>
    <message>
        <source>Four weeks and more.</source>
        <translation>Quatre semaines et plus.</translation>
    </message>
    <message>
        <source>Fries, Camazine &amp; Sneyd 1994; Martin 1998</source>
        <translation>Fries, Camazine &amp; Sneyd 1994; Martin 1998</translation>
    </message>
    <message>
        <source>From 0.25 to 3 per 100 after winter and spring treatments, Florida</source>
        <translation>De 0,25 à 3 pour 100 après les traitements d’hiver et de printemps, Floride</translation>
    </message>
    <message>
        <source>From mites on adults to adults plus capped brood</source>
        <translation>Des varroas sur adultes à ceux sur adultes et couvain operculé</translation>
    </message>
    <message>
        <source>From none to outright failure, yard by yard.</source>
        <translation>D’aucune à l’échec complet, selon le rucher.</translation>
    </message>
    <message>
        <source>Front Ecol Evol 2023, 11:1102457</source>
        <translation>Front Ecol Evol 2023, 11:1102457</translation>
    </message>
    <message>
        <source>Garwood 1936, Biometrika 28:437-442</source>
        <translation>Garwood 1936, Biometrika 28:437-442</translation>
    </message>
    <message>
        <source>General chemistry; decides which share of mites counts as effective</source>
        <translation>Chimie générale ; décide de la part de varroas tués qui compte comme efficace</translation>
    </message>
    <message>
        <source>General usage</source>
        <translation>Usage général</translation>
    </message>
    <message>
        <source>German wash scale; course of a german chamber of agriculture</source>
        <translation>Balance de lavage allemande ; cours d’une chambre d’agriculture allemande</translation>
    </message>
    <message>
        <source>Germany, July: below this no acute risk, above it watch</source>
        <translation>Allemagne, juillet : au-dessous, pas de risque immédiat ; au-dessus, surveiller</translation>
    </message>
    <message>
        <source>Germany, July: treat at once</source>
        <translation>Allemagne, juillet : traiter tout de suite</translation>
    </message>
    <message>
        <source>Germany, July: young colony</source>
        <translation>Allemagne, juillet : jeune colonie</translation>
    </message>
    <message>
        <source>Gregorc &amp; Planinc 2001, Apidologie 32:333-340</source>
        <translation>Gregorc &amp; Planinc 2001, Apidologie 32:333-340</translation>
    </message>
    <message>
        <source>Growth of the load without brood</source>
        <translation>Croissance de la charge sans couvain</translation>
    </message>
    <message>
        <source>Growth with brood</source>
        <translation>Croissance en présence de couvain</translation>
    </message>
    <message>
        <source>Guidance of the province of Alberta</source>
        <translation>Recommandation de la province de l’Alberta</translation>
    </message>
    <message>
        <source>Guidance of the province of Ontario</source>
        <translation>Recommandation de la province de l’Ontario</translation>
    </message>
    <message>
        <source>Guidance quoted in a second source</source>
        <translation>Recommandation citée par une seconde source</translation>
    </message>
    <message>
        <source>Half a US cup</source>
        <translation>Une demi-tasse américaine</translation>
    </message>
    <message>
        <source>Half a year</source>
        <translation>Une demi-année</translation>
    </message>
    <message>
        <source>Half to double. Colonies differ more than that when they collapse or throw out brood.</source>
        <translation>De la moitié au double. Les colonies diffèrent davantage quand elles s’effondrent ou rejettent du couvain.</translation>
    </message>
    <message>
        <source>Hands, eyes and files</source>
        <translation>Mains, yeux et fichiers</translation>
    </message>
    <message>
        <source>Hazards</source>
        <translation>Dangers</translation>
    </message>
    <message>
        <source>Hazards to people</source>
        <translation>Dangers pour les personnes</translation>
    </message>
    <message>
        <source>Henderson &amp; Tilton 1955, J Econ Entomol 48:157</source>
        <translation>Henderson &amp; Tilton 1955, J Econ Entomol 48:157</translation>
    </message>
    <message>
        <source>Hohenheim apiculture</source>
        <translation>Apiculture de Hohenheim</translation>
    </message>
    <message>
        <source>Hop beta acids</source>
        <translation>Acides bêta du houblon</translation>
    </message>
    <message>
        <source>How far an outlook is shown</source>
        <translation>Durée de la projection affichée</translation>
    </message>
    <message>
        <source>How far measures go</source>
        <translation>Jusqu’où vont les interventions</translation>
    </message>
    <message>
        <source>How far the factors for natural fall may be off, up or down</source>
        <translation>De combien les facteurs de la chute naturelle peuvent se tromper, en plus ou en moins</translation>
    </message>
    <message>
        <source>How fast mites grow, and where they are</source>
        <translation>À quelle vitesse les varroas croissent, et où ils sont</translation>
    </message>
    <message>
        <source>How much jars of one colony differ (gamma shape)</source>
        <translation>De combien diffèrent les bocaux d’une colonie (forme gamma)</translation>
    </message>
    <message>
        <source>How much resistance weighs</source>
        <translation>Poids de la résistance</translation>
    </message>
    <message>
        <source>IRAC 19</source>
        <translation>IRAC 19</translation>
    </message>
    <message>
        <source>IRAC 1B</source>
        <translation>IRAC 1B</translation>
    </message>
    <message>
        <source>IRAC 3A</source>
        <translation>IRAC 3A</translation>
    </message>
    <message>
        <source>IRAC mode of action classification</source>
        <translation>Classification IRAC des modes d’action</translation>
    </message>
    <message>
        <source>In the published ratio to the worker rate</source>
        <translation>Dans le rapport publié au taux des ouvrières</translation>
    </message>
    <message>
        <source>In two rounds.</source>
        <translation>En deux passages.</translation>
    </message>
    <message>
        <source>Inhibits monoamine oxidase (ask a doctor if you take medicines that do); keep off skin and eyes.</source>
        <translation>Inhibe la monoamine-oxydase (demandez à un médecin si vous prenez des médicaments qui l’inhibent) ; éviter tout contact avec la peau et les yeux.</translation>
    </message>
    <message>
        <source>Irritates skin and eyes.</source>
        <translation>Irrite la peau et les yeux.</translation>
    </message>
    <message>
        <source>Irritates skin and eyes: gloves, and wash hands before touching the face.</source>
        <translation>Irrite la peau et les yeux : gants, et se laver les mains avant de se toucher le visage.</translation>
    </message>
    <message>
        <source>It taints honey.</source>
        <translation>Il donne un goût au miel.</translation>
    </message>
    <message>
        <source>Keep off skin and eyes: gloves, and see the label.</source>
        <translation>Éviter tout contact avec la peau et les yeux : gants, et voir l’étiquette.</translation>
    </message>
    <message>
        <source>Key for a hand in mittens, at least</source>
        <translation>Touche pour une main en moufle, au moins</translation>
    </message>
    <message>
        <source>Kills under cappings</source>
        <translation>Tue sous opercules</translation>
    </message>
    <message>
        <source>Kind of substance</source>
        <translation>Genre de substance</translation>
    </message>
    <message>
        <source>Kulhanek et al. 2021, PLoS ONE 16:e0245490; also Front Ecol Evol 2023, 11:1102457</source>
        <translation>Kulhanek et al. 2021, PLoS ONE 16:e0245490 ; aussi Front Ecol Evol 2023, 11:1102457</translation>
    </message>
    <message>
        <source>Label of one product</source>
        <translation>Étiquette d’un seul produit</translation>
    </message>
    <message>
        <source>Least spread between jars</source>
        <translation>Dispersion minimale entre bocaux</translation>
    </message>
    <message>
        <source>Least squared spread between colonies</source>
        <translation>Carré minimal de la dispersion entre colonies</translation>
    </message>
    <message>
        <source>Lee, Moon, Burkness, Hutchison &amp; Spivak 2010, J Econ Entomol 103:1039-1050</source>
        <translation>Lee, Moon, Burkness, Hutchison &amp; Spivak 2010, J Econ Entomol 103:1039-1050</translation>
    </message>
    <message>
        <source>Lee, Moon, Burkness, Hutchison &amp; Spivak 2010, J Econ Entomol 103:1039-1050; the upper figure is from memory</source>
        <translation>Lee, Moon, Burkness, Hutchison &amp; Spivak 2010, J Econ Entomol 103:1039-1050 ; la valeur haute est de mémoire</translation>
    </message>
    <message>
        <source>Left too long, the frame breeds mites instead of taking them out.</source>
        <translation>Laissé trop longtemps, le cadre élève des varroas au lieu de les enlever.</translation>
    </message>
    <message>
        <source>Less than three; over 0.028 per day.</source>
        <translation>Moins de trois ; plus de 0,028 par jour.</translation>
    </message>
    <message>
        <source>Light in direct sun</source>
        <translation>Lumière en plein soleil</translation>
    </message>
    <message>
        <source>Lighting tables</source>
        <translation>Tables d’éclairement</translation>
    </message>
    <message>
        <source>Lines a load is held against</source>
        <translation>Seuils auxquels une charge est comparée</translation>
    </message>
    <message>
        <source>Lines for boards and drone brood</source>
        <translation>Seuils pour langes et couvain de mâles</translation>
    </message>
    <message>
        <source>Lines of a calendar file fold at</source>
        <translation>Les lignes d’un fichier d’agenda sont coupées à</translation>
    </message>
    <message>
        <source>Load at which the season's picture ends, the colony likely failing</source>
        <translation>Charge où s’arrête la courbe de la saison, la colonie étant sans doute en train de s’effondrer</translation>
    </message>
    <message>
        <source>Load in the brood nest against the honey area</source>
        <translation>Charge dans le nid à couvain par rapport à la zone à miel</translation>
    </message>
    <message>
        <source>Longer work in the brood nest means more stings: veil and gloves, and help within call for anyone who reacts to them.</source>
        <translation>Travailler plus longtemps dans le nid à couvain, c’est plus de piqûres : voile et gants, et de l’aide à portée de voix pour qui y réagit.</translation>
    </message>
    <message>
        <source>Lower end of the range shown</source>
        <translation>Borne basse de la fourchette affichée</translation>
    </message>
    <message>
        <source>MIL-STD-1472E</source>
        <translation>MIL-STD-1472E</translation>
    </message>
    <message>
        <source>Macedo, Wu &amp; Ellis 2002, J Apic Res 41:3-7</source>
        <translation>Macedo, Wu &amp; Ellis 2002, J Apic Res 41:3-7</translation>
    </message>
    <message>
        <source>Manitoba</source>
        <translation>Manitoba</translation>
    </message>
    <message>
        <source>Manitoba, late summer</source>
        <translation>Manitoba, fin de l’été</translation>
    </message>
    <message>
        <source>Manitoba, spring</source>
        <translation>Manitoba, printemps</translation>
    </message>
    <message>
        <source>Martin 1998; scale computed</source>
        <translation>Martin 1998 ; échelle calculée</translation>
    </message>
    <message>
        <source>Measures without a substance</source>
        <translation>Interventions sans substance</translation>
    </message>
    <message>
        <source>Mesh the mites are shaken through</source>
        <translation>Grillage à travers lequel on secoue les varroas</translation>
    </message>
    <message>
        <source>Mississippi</source>
        <translation>Mississippi</translation>
    </message>
    <message>
        <source>Mississippi State University Extension</source>
        <translation>Mississippi State University Extension</translation>
    </message>
    <message>
        <source>Mississippi, February</source>
        <translation>Mississippi, février</translation>
    </message>
    <message>
        <source>Mitchell 1970, Am Bee J 110</source>
        <translation>Mitchell 1970, Am Bee J 110</translation>
    </message>
    <message>
        <source>Mites breed in drone cells far more often than in worker cells; capped drone brood taken out takes its mites along.</source>
        <translation>Les varroas se reproduisent bien plus souvent dans les cellules de mâles que dans celles d’ouvrières ; le couvain de mâles operculé que l’on retire emporte ses varroas.</translation>
    </message>
    <message>
        <source>Mites carried in by bees</source>
        <translation>Varroas apportés par les abeilles</translation>
    </message>
    <message>
        <source>Mites dying in summer</source>
        <translation>Varroas qui meurent en été</translation>
    </message>
    <message>
        <source>Mites dying in winter</source>
        <translation>Varroas qui meurent en hiver</translation>
    </message>
    <message>
        <source>Mites entering drone cells, published rate</source>
        <translation>Varroas entrant dans les cellules de mâles, taux publié</translation>
    </message>
    <message>
        <source>Mites entering drone cells, used</source>
        <translation>Varroas entrant dans les cellules de mâles, taux utilisé</translation>
    </message>
    <message>
        <source>Mites entering worker cells, published rate</source>
        <translation>Varroas entrant dans les cellules d’ouvrières, taux publié</translation>
    </message>
    <message>
        <source>Mites entering worker cells, used</source>
        <translation>Varroas entrant dans les cellules d’ouvrières, taux utilisé</translation>
    </message>
    <message>
        <source>Mites in the colony from natural fall, March, April, September, October</source>
        <translation>Varroas dans la colonie d’après la chute naturelle, mars, avril, septembre, octobre</translation>
    </message>
    <message>
        <source>Mites in the colony from natural fall, May to August</source>
        <translation>Varroas dans la colonie d’après la chute naturelle, mai à août</translation>
    </message>
    <message>
        <source>Mites in the colony from natural fall, November to February</source>
        <translation>Varroas dans la colonie d’après la chute naturelle, novembre à février</translation>
    </message>
    <message>
        <source>Mites killed</source>
        <translation>Varroas tués</translation>
    </message>
    <message>
        <source>Mites killed with capped brood</source>
        <translation>Varroas tués en présence de couvain operculé</translation>
    </message>
    <message>
        <source>Mites leaving a drone cell for one that entered</source>
        <translation>Varroas sortant d’une cellule de mâle pour un varroa entré</translation>
    </message>
    <message>
        <source>Mites leaving a worker cell for one that entered</source>
        <translation>Varroas sortant d’une cellule d’ouvrière pour un varroa entré</translation>
    </message>
    <message>
        <source>Mites lose 0.002 and bees 0.003 to 0.005 a day (from memory).</source>
        <translation>Les varroas perdent 0,002 et les abeilles 0,003 à 0,005 par jour (de mémoire).</translation>
    </message>
    <message>
        <source>Mites low by, northern temperate zone</source>
        <translation>Peu de varroas au plus tard le, zone tempérée nord</translation>
    </message>
    <message>
        <source>Mites on adult bees in September, with brood</source>
        <translation>Varroas sur les abeilles adultes en septembre, avec couvain</translation>
    </message>
    <message>
        <source>Mites on the bees that a count finds</source>
        <translation>Ce qu’un comptage trouve des varroas sur les abeilles</translation>
    </message>
    <message>
        <source>Mites that fall off drop out of the hive, and the fall can be counted on a board beneath.</source>
        <translation>Les varroas qui se détachent tombent hors de la ruche, et leur chute peut être comptée sur un lange placé dessous.</translation>
    </message>
    <message>
        <source>Mode of action</source>
        <translation>Mode d’action</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>National Bee Unit, United Kingdom after Martin 1998; limits: Branco, Kidd &amp; Pickard 2006, Apidologie 37:452-461</source>
        <translation>National Bee Unit, Royaume-Uni, d’après Martin 1998 ; limites : Branco, Kidd &amp; Pickard 2006, Apidologie 37:452-461</translation>
    </message>
    <message>
        <source>National Bee Unit, United Kingdom, after Martin 1998</source>
        <translation>National Bee Unit, Royaume-Uni, d’après Martin 1998</translation>
    </message>
    <message>
        <source>Netherlands</source>
        <translation>Pays-Bas</translation>
    </message>
    <message>
        <source>New queens are sometimes lost; the load falls late, over months.</source>
        <translation>De nouvelles reines se perdent parfois ; la charge baisse tard, en quelques mois.</translation>
    </message>
    <message>
        <source>Newcombe 1998, Stat Med 17:857-872</source>
        <translation>Newcombe 1998, Stat Med 17:857-872</translation>
    </message>
    <message>
        <source>Nine mites in a half cup of 300 bees. It has no correction for mites a wash misses.</source>
        <translation>Neuf varroas dans une demi-tasse de 300 abeilles. Sans correction pour les varroas qu’un lavage manque.</translation>
    </message>
    <message>
        <source>Nine mites read with 250 bees in the scoop</source>
        <translation>Neuf varroas, avec 250 abeilles dans la mesure</translation>
    </message>
    <message>
        <source>Nine mites read with 300 bees in the scoop</source>
        <translation>Neuf varroas, avec 300 abeilles dans la mesure</translation>
    </message>
    <message>
        <source>Nine mites read with 350 bees in the scoop</source>
        <translation>Neuf varroas, avec 350 abeilles dans la mesure</translation>
    </message>
    <message>
        <source>Nine mites read with 400 bees in the scoop</source>
        <translation>Neuf varroas, avec 400 abeilles dans la mesure</translation>
    </message>
    <message>
        <source>No mite on 50 bees still leaves 9 % chance of more than 3 per 100.</source>
        <translation>Zéro varroa sur 50 abeilles laisse encore une probabilité de 9 % d’en avoir plus de 3 pour 100.</translation>
    </message>
    <message>
        <source>Not less than a minute.</source>
        <translation>Pas moins d’une minute.</translation>
    </message>
    <message>
        <source>Nothing found in 100 bees at a true 1 per 100</source>
        <translation>Rien trouvé sur 100 abeilles, avec en réalité 1 pour 100</translation>
    </message>
    <message>
        <source>Nothing found in 300 bees at a true 1 per 100</source>
        <translation>Rien trouvé sur 300 abeilles, avec en réalité 1 pour 100</translation>
    </message>
    <message>
        <source>Of three tried, the one whose ranges held best for colonies growing 0 to 0.04 per day.</source>
        <translation>Des trois essayées, celle dont les fourchettes tenaient le mieux pour des colonies où la charge croît de 0 à 0,04 par jour.</translation>
    </message>
    <message>
        <source>Okabe &amp; Ito, color universal design</source>
        <translation>Okabe &amp; Ito, color universal design</translation>
    </message>
    <message>
        <source>Once, while there is no brood.</source>
        <translation>Une fois, en l’absence de couvain.</translation>
    </message>
    <message>
        <source>One brood cycle of the mites under cappings.</source>
        <translation>Un cycle de couvain des varroas sous opercules.</translation>
    </message>
    <message>
        <source>One sample of 300 bees in each, however many stand there.</source>
        <translation>Un prélèvement de 300 abeilles dans chacune, quel que soit leur nombre.</translation>
    </message>
    <message>
        <source>Only with brood, and not in a colony that is collapsing.</source>
        <translation>Seulement avec du couvain, et pas dans une colonie qui s’effondre.</translation>
    </message>
    <message>
        <source>Only without brood</source>
        <translation>Seulement sans couvain</translation>
    </message>
    <message>
        <source>Ontario</source>
        <translation>Ontario</translation>
    </message>
    <message>
        <source>Ontario, August</source>
        <translation>Ontario, août</translation>
    </message>
    <message>
        <source>Ontario, May</source>
        <translation>Ontario, mai</translation>
    </message>
    <message>
        <source>Order in GeoJSON</source>
        <translation>Ordre dans GeoJSON</translation>
    </message>
    <message>
        <source>Ostiguy &amp; Sammataro 2000, Apidologie 31</source>
        <translation>Ostiguy &amp; Sammataro 2000, Apidologie 31</translation>
    </message>
    <message>
        <source>Over 90 %.</source>
        <translation>Plus de 90 %.</translation>
    </message>
    <message>
        <source>Own choice: widespread resistance makes it a choice with care, patchy resistance is said</source>
        <translation>Choix propre à l’appli : une résistance répandue en fait un choix avec précaution, une résistance inégale est signalée</translation>
    </message>
    <message>
        <source>Oxalic acid</source>
        <translation>Acide oxalique</translation>
    </message>
    <message>
        <source>Oxalic acid, long-lasting carriers</source>
        <translation>Acide oxalique, supports à action longue</translation>
    </message>
    <message>
        <source>Oxalic acid, trickled or sublimated</source>
        <translation>Acide oxalique, par dégouttement ou sublimation</translation>
    </message>
    <message>
        <source>Posada-Florez et al. 2022, Insects</source>
        <translation>Posada-Florez et al. 2022, Insects</translation>
    </message>
    <message>
        <source>Position of a phone in the open, 95 %</source>
        <translation>Position d’un téléphone à ciel ouvert, 95 %</translation>
    </message>
    <message>
        <source>Powdered sugar for a roll</source>
        <translation>Sucre glace pour un test</translation>
    </message>
    <message>
        <source>Powdered sugar in a jar</source>
        <translation>Sucre glace dans un bocal</translation>
    </message>
    <message>
        <source>Product labels</source>
        <translation>Étiquettes de produits</translation>
    </message>
    <message>
        <source>Product labels and reviews, not read again</source>
        <translation>Étiquettes de produits et articles de synthèse, non relus</translation>
    </message>
    <message>
        <source>Published statistics the program is tested against</source>
        <translation>Statistiques publiées qui servent à vérifier le programme</translation>
    </message>
    <message>
        <source>Published; source to be found again</source>
        <translation>Publié ; source à retrouver</translation>
    </message>
    <message>
        <source>Puts 17 % of the mites on the bees of 47 September colonies where 29 % were seen.</source>
        <translation>Place 17 % des varroas sur les abeilles de 47 colonies de septembre, où l’on en a vu 29 %.</translation>
    </message>
    <message>
        <source>Puts 30 % of the mites on the bees there; 29 % were seen.</source>
        <translation>Y place 30 % des varroas sur les abeilles ; on en a vu 29 %.</translation>
    </message>
    <message>
        <source>Queens lost above</source>
        <translation>Reines perdues au-dessus de</translation>
    </message>
    <message>
        <source>RFC 5545</source>
        <translation>RFC 5545</translation>
    </message>
    <message>
        <source>RFC 7946</source>
        <translation>RFC 7946</translation>
    </message>
    <message>
        <source>Ratio to drone cells from memory; scale set so that all mites grow 0.021 per day from May to August.</source>
        <translation>Rapport aux cellules de mâles de mémoire ; échelle réglée pour que l’ensemble des varroas croisse de 0,021 par jour de mai à août.</translation>
    </message>
    <message>
        <source>Reaches mites on adult bees only.</source>
        <translation>N’atteint que les varroas sur les abeilles adultes.</translation>
    </message>
    <message>
        <source>Reaches the 29 % seen in September colonies of Aurell et al. 2024.</source>
        <translation>Atteint les 29 % vus dans les colonies de septembre d’Aurell et al. 2024.</translation>
    </message>
    <message>
        <source>Records the law asks for</source>
        <translation>Ce que la loi demande de noter</translation>
    </message>
    <message>
        <source>Red mites on apple leaves, mean</source>
        <translation>Acariens rouges sur feuilles de pommier, moyenne</translation>
    </message>
    <message>
        <source>Registration</source>
        <translation>Enregistrement</translation>
    </message>
    <message>
        <source>Regulation (EU) 2019/6, Article 108</source>
        <translation>Règlement (UE) 2019/6, article 108</translation>
    </message>
    <message>
        <source>Requeening with hygienic stock</source>
        <translation>Remérage avec une lignée hygiénique</translation>
    </message>
    <message>
        <source>Resistance</source>
        <translation>Résistance</translation>
    </message>
    <message>
        <source>Rest after rolling in sugar</source>
        <translation>Repos après le roulage dans le sucre</translation>
    </message>
    <message>
        <source>Reviews, not read again</source>
        <translation>Articles de synthèse, non relus</translation>
    </message>
    <message>
        <source>Rinkevich 2020, PLoS ONE</source>
        <translation>Rinkevich 2020, PLoS ONE</translation>
    </message>
    <message>
        <source>Rotation</source>
        <translation>Alternance</translation>
    </message>
    <message>
        <source>Sabahi et al. 2017, Apidologie</source>
        <translation>Sabahi et al. 2017, Apidologie</translation>
    </message>
    <message>
        <source>Safety data sheets, not read again</source>
        <translation>Fiches de données de sécurité, non relues</translation>
    </message>
    <message>
        <source>Same class as tau-fluvalinate (IRAC 3A)</source>
        <translation>Même classe que le tau-fluvalinate (IRAC 3A)</translation>
    </message>
    <message>
        <source>Same class as tau-fluvalinate, to which resistance is widespread.</source>
        <translation>Même classe que le tau-fluvalinate, auquel la résistance est répandue.</translation>
    </message>
    <message>
        <source>Screened floor</source>
        <translation>Plancher grillagé</translation>
    </message>
    <message>
        <source>Set against the September colonies of Aurell et al. 2024, J Insect Sci (data CC-BY-4.0)</source>
        <translation>Calé sur les colonies de septembre d’Aurell et al. 2024, J Insect Sci (données CC-BY-4.0)</translation>
    </message>
    <message>
        <source>Set so that all mites grow 0.011 per day from May to August</source>
        <translation>Réglé pour que l’ensemble des varroas croisse de 0,011 par jour de mai à août</translation>
    </message>
    <message>
        <source>Set so that all mites grow 0.031 per day from May to August</source>
        <translation>Réglé pour que l’ensemble des varroas croisse de 0,031 par jour de mai à août</translation>
    </message>
    <message>
        <source>Seven days was read on a label; the longer ones are from memory. Differs by product.</source>
        <translation>Sept jours ont été lus sur une étiquette ; les durées plus longues sont de mémoire. Diffère selon le produit.</translation>
    </message>
    <message>
        <source>Several labels allow it; others, and other countries, do not.</source>
        <translation>Plusieurs étiquettes le permettent ; d’autres, et d’autres pays, non.</translation>
    </message>
    <message>
        <source>Shaking a wash</source>
        <translation>Agitation d’un lavage</translation>
    </message>
    <message>
        <source>Share a sugar roll finds, for the full load</source>
        <translation>Part trouvée par un test au sucre glace, pour la charge complète</translation>
    </message>
    <message>
        <source>Share a wash finds, for the full load</source>
        <translation>Part trouvée par un lavage, pour la charge complète</translation>
    </message>
    <message>
        <source>Share of all mites that sits on adult bees</source>
        <translation>Part de tous les varroas qui est sur les abeilles adultes</translation>
    </message>
    <message>
        <source>Share of opened drone cells with mites</source>
        <translation>Part des cellules de mâles ouvertes avec varroas</translation>
    </message>
    <message>
        <source>Share of the mites under cappings while there is brood</source>
        <translation>Part des varroas sous opercules tant qu’il y a du couvain</translation>
    </message>
    <message>
        <source>Share to be killed, other substances</source>
        <translation>Part de varroas à tuer, autres substances</translation>
    </message>
    <message>
        <source>Share to be killed, synthetic substances</source>
        <translation>Part de varroas à tuer, substances synthétiques</translation>
    </message>
    <message>
        <source>Slow growth in the season's picture</source>
        <translation>Croissance lente dans la courbe de la saison</translation>
    </message>
    <message>
        <source>South-east of the United States</source>
        <translation>Sud-est des États-Unis</translation>
    </message>
    <message>
        <source>South-east of the United States, August</source>
        <translation>Sud-est des États-Unis, août</translation>
    </message>
    <message>
        <source>South-east of the United States, August, board left overnight</source>
        <translation>Sud-est des États-Unis, août, lange laissé une nuit</translation>
    </message>
    <message>
        <source>Southern hemisphere: later by</source>
        <translation>Hémisphère sud : plus tard de</translation>
    </message>
    <message>
        <source>Spread between colonies of a yard, for chances and sample sizes</source>
        <translation>Dispersion entre colonies d’un rucher, pour probabilités et nombre de prélèvements</translation>
    </message>
    <message>
        <source>Spread between colonies of a yard, for the yard's mean</source>
        <translation>Dispersion entre colonies d’un rucher, pour la moyenne du rucher</translation>
    </message>
    <message>
        <source>Spread between jars before any duplicate jars</source>
        <translation>Dispersion entre bocaux avant tout second bocal</translation>
    </message>
    <message>
        <source>Spread from scoop to scoop of one hand</source>
        <translation>Dispersion d’une mesure à l’autre d’une même main</translation>
    </message>
    <message>
        <source>Spread of growth between colonies</source>
        <translation>Dispersion de la croissance entre colonies</translation>
    </message>
    <message>
        <source>Spread of one colony's growth about its yard's</source>
        <translation>Dispersion de la croissance d’une colonie autour de celle de son rucher</translation>
    </message>
    <message>
        <source>Spread of one scoop before you counted any</source>
        <translation>Dispersion d’une mesure avant que vous n’en comptiez</translation>
    </message>
    <message>
        <source>Spread of the bees in a scoop nobody counted</source>
        <translation>Dispersion des abeilles dans une mesure que personne n’a comptée</translation>
    </message>
    <message>
        <source>Spread of yards' growth about the usual one</source>
        <translation>Dispersion de la croissance des ruchers autour de l’habituelle</translation>
    </message>
    <message>
        <source>Square root of 0.0048; does not shrink with more washes.</source>
        <translation>Racine carrée de 0,0048 ; ne diminue pas avec plus de lavages.</translation>
    </message>
    <message>
        <source>Standard deviation 12 over 47 colonies; the other 71 % sat under cappings.</source>
        <translation>Écart type 12 sur 47 colonies ; les autres 71 % étaient sous opercules.</translation>
    </message>
    <message>
        <source>Standard deviation 32, from 176 samples.</source>
        <translation>Écart type 32, d’après 176 prélèvements.</translation>
    </message>
    <message>
        <source>Standard deviation, 1.5 g per hundred bees.</source>
        <translation>Écart type, 1,5 g pour cent abeilles.</translation>
    </message>
    <message>
        <source>Standard error 0.0038 over 17 colonies; the range is 1.96 of it either side.</source>
        <translation>Erreur type 0,0038 sur 17 colonies ; la fourchette en fait 1,96 fois de part et d’autre.</translation>
    </message>
    <message>
        <source>Sticky and irritating to skin and eyes: gloves, and see the label.</source>
        <translation>Collant et irritant pour la peau et les yeux : gants, et voir l’étiquette.</translation>
    </message>
    <message>
        <source>Still there when the bees hatch.</source>
        <translation>Encore présent quand les abeilles éclosent.</translation>
    </message>
    <message>
        <source>Stings</source>
        <translation>Piqûres</translation>
    </message>
    <message>
        <source>Sublimated again and again with brood</source>
        <translation>Sublimations répétées en présence de couvain</translation>
    </message>
    <message>
        <source>Swiss guidance, quoted in a second source</source>
        <translation>Recommandation suisse, citée par une seconde source</translation>
    </message>
    <message>
        <source>Switzerland, June: emergency treatment</source>
        <translation>Suisse, juin : traitement d’urgence</translation>
    </message>
    <message>
        <source>Taking the sample</source>
        <translation>Faire le prélèvement</translation>
    </message>
    <message>
        <source>Tau-fluvalinate</source>
        <translation>Tau-fluvalinate</translation>
    </message>
    <message>
        <source>Ten grams of bees are about a hundred.</source>
        <translation>Dix grammes d’abeilles en font environ cent.</translation>
    </message>
    <message>
        <source>Textbooks</source>
        <translation>Ouvrages de référence</translation>
    </message>
    <message>
        <source>The authors ask each keeper to check it with bees of their own.</source>
        <translation>Les auteurs demandent à chaque apiculteur de le vérifier avec ses propres abeilles.</translation>
    </message>
    <message>
        <source>The authors say themselves that no research stands behind it.</source>
        <translation>Les auteurs disent eux-mêmes qu’aucune recherche ne l’appuie.</translation>
    </message>
    <message>
        <source>The long-lived bees of winter begin to be raised then; count the course of a treatment back from it.</source>
        <translation>C’est alors que commence l’élevage des abeilles d’hiver, à longue vie ; comptez la durée d’un traitement à rebours à partir de là.</translation>
    </message>
    <message>
        <source>The natural logarithm of 2, divided by 30 days.</source>
        <translation>Le logarithme naturel de 2, divisé par 30 jours.</translation>
    </message>
    <message>
        <source>The part of it common to all scoops of one hand</source>
        <translation>La part commune à toutes les mesures d’une main</translation>
    </message>
    <message>
        <source>The queen can be lost; the colony raises no bees meanwhile: not in the weeks in which winter bees are raised.</source>
        <translation>La reine peut se perdre ; la colonie n’élève pas d’abeilles entre-temps : pas pendant les semaines où les abeilles d’hiver sont élevées.</translation>
    </message>
    <message>
        <source>The rule of doubling turned round.</source>
        <translation>La règle du double, retournée.</translation>
    </message>
    <message>
        <source>The same after summer and autumn treatments</source>
        <translation>De même après les traitements d’été et d’automne</translation>
    </message>
    <message>
        <source>The same guidance gives 30 mites a day on a board.</source>
        <translation>La même recommandation donne 30 varroas par jour sur un lange.</translation>
    </message>
    <message>
        <source>The same team's scoops moved by a tenth within months: own counts are the cure.</source>
        <translation>Les mesures de la même équipe ont bougé d’un dixième en quelques mois : compter les siennes est le remède.</translation>
    </message>
    <message>
        <source>The same, k by moments</source>
        <translation>De même, k par les moments</translation>
    </message>
    <message>
        <source>The same, negative binomial k by maximum likelihood</source>
        <translation>De même, k de la binomiale négative par maximum de vraisemblance</translation>
    </message>
    <message>
        <source>The same, to do research</source>
        <translation>De même, pour la recherche</translation>
    </message>
    <message>
        <source>The same, variance</source>
        <translation>De même, variance</translation>
    </message>
    <message>
        <source>The same: its spread</source>
        <translation>De même : sa dispersion</translation>
    </message>
    <message>
        <source>The same: spread from sample to sample</source>
        <translation>De même : dispersion d’un prélèvement à l’autre</translation>
    </message>
    <message>
        <source>The same: spread from wash to wash</source>
        <translation>De même : dispersion d’un lavage à l’autre</translation>
    </message>
    <message>
        <source>The same: spread the app uses for a part of a board</source>
        <translation>De même : dispersion utilisée par l’appli pour une partie d’un lange</translation>
    </message>
    <message>
        <source>The trade's rule</source>
        <translation>La règle du métier</translation>
    </message>
    <message>
        <source>The turn date</source>
        <translation>La date charnière</translation>
    </message>
    <message>
        <source>Three washes against five</source>
        <translation>Trois lavages contre cinq</translation>
    </message>
    <message>
        <source>Thymol</source>
        <translation>Thymol</translation>
    </message>
    <message>
        <source>Time from one wash to the next in the bee season</source>
        <translation>Temps entre deux lavages pendant la saison apicole</translation>
    </message>
    <message>
        <source>To be kept for</source>
        <translation>À conserver pendant</translation>
    </message>
    <message>
        <source>To be written down in the European Union</source>
        <translation>À noter dans l’Union européenne</translation>
    </message>
    <message>
        <source>Touch target, at least</source>
        <translation>Cible tactile, au moins</translation>
    </message>
    <message>
        <source>Two other agencies' figures give 338 to 400; count a few scoops of your own.</source>
        <translation>Les valeurs de deux autres organismes donnent 338 à 400 ; comptez quelques mesures à vous.</translation>
    </message>
    <message>
        <source>Two to three times as many in a month</source>
        <translation>Deux à trois fois plus en un mois</translation>
    </message>
    <message>
        <source>Two to three times in a month.</source>
        <translation>Deux à trois fois plus en un mois.</translation>
    </message>
    <message>
        <source>USDA-ARS guidance, quoted by a beekeepers' association</source>
        <translation>Recommandation de l’USDA-ARS, citée par une association d’apiculteurs</translation>
    </message>
    <message>
        <source>United Kingdom, August</source>
        <translation>Royaume-Uni, août</translation>
    </message>
    <message>
        <source>United Kingdom, July</source>
        <translation>Royaume-Uni, juillet</translation>
    </message>
    <message>
        <source>United Kingdom, June</source>
        <translation>Royaume-Uni, juin</translation>
    </message>
    <message>
        <source>United Kingdom, May</source>
        <translation>Royaume-Uni, mai</translation>
    </message>
    <message>
        <source>United Kingdom, September</source>
        <translation>Royaume-Uni, septembre</translation>
    </message>
    <message>
        <source>United Kingdom, winter</source>
        <translation>Royaume-Uni, hiver</translation>
    </message>
    <message>
        <source>United States</source>
        <translation>États-Unis</translation>
    </message>
    <message>
        <source>United States federal guidance</source>
        <translation>Recommandation fédérale des États-Unis</translation>
    </message>
    <message>
        <source>United States federal guidance, board</source>
        <translation>Recommandation fédérale des États-Unis, lange</translation>
    </message>
    <message>
        <source>United States, federal guidance</source>
        <translation>États-Unis, recommandation fédérale</translation>
    </message>
    <message>
        <source>University of Minnesota, poster 155</source>
        <translation>University of Minnesota, affiche 155</translation>
    </message>
    <message>
        <source>Untreated colonies in Alabama, March to July</source>
        <translation>Colonies non traitées en Alabama, mars à juillet</translation>
    </message>
    <message>
        <source>Upper end of the range shown</source>
        <translation>Borne haute de la fourchette affichée</translation>
    </message>
    <message>
        <source>Upper over lower end above which it is left open</source>
        <translation>Rapport de la borne haute à la borne basse au-dessus duquel elle reste ouverte</translation>
    </message>
    <message>
        <source>WCAG 2.2, success criterion 1.4.6</source>
        <translation>WCAG 2.2, critère de succès 1.4.6</translation>
    </message>
    <message>
        <source>WCAG 2.2, success criterion 2.5.5</source>
        <translation>WCAG 2.2, critère de succès 2.5.5</translation>
    </message>
    <message>
        <source>WOAH, draft on registration of apiaries, quoted</source>
        <translation>OMSA, projet de texte sur l’enregistrement des ruchers, cité</translation>
    </message>
    <message>
        <source>Wanted precision of a yard's mean, to manage bees</source>
        <translation>Précision voulue pour la moyenne d’un rucher, pour la conduite des colonies</translation>
    </message>
    <message>
        <source>Wash after the end of a treatment</source>
        <translation>Lavage après la fin d’un traitement</translation>
    </message>
    <message>
        <source>Washes that make a chance informed by the yard worth showing</source>
        <translation>Lavages à partir desquels montrer une probabilité qui tient compte du rucher</translation>
    </message>
    <message>
        <source>Water in a shaker, one minute, fewer than 250 bees</source>
        <translation>Eau dans un agitateur, une minute, moins de 250 abeilles</translation>
    </message>
    <message>
        <source>Weak below 15; above 30 too strong for the bees.</source>
        <translation>Faible au-dessous de 15 ; au-dessus de 30, trop fort pour les abeilles.</translation>
    </message>
    <message>
        <source>Weighed drained bees: spread between hands that drain</source>
        <translation>Abeilles égouttées pesées : dispersion entre les mains qui égouttent</translation>
    </message>
    <message>
        <source>Weighed live bees: spread common to all weighings</source>
        <translation>Abeilles vivantes pesées : dispersion commune à toutes les pesées</translation>
    </message>
    <message>
        <source>Weighed live bees: spread of one weighing</source>
        <translation>Abeilles vivantes pesées : dispersion d’une pesée</translation>
    </message>
    <message>
        <source>Weight of that spread</source>
        <translation>Poids de cette dispersion</translation>
    </message>
    <message>
        <source>Weight of the book's figure against your own counted scoops</source>
        <translation>Poids de la valeur du manuel face à vos mesures comptées</translation>
    </message>
    <message>
        <source>Weight of the book's spread where colonies show their own</source>
        <translation>Poids de la dispersion du manuel quand les colonies montrent la leur</translation>
    </message>
    <message>
        <source>What a second rinse adds</source>
        <translation>Ce qu’ajoute un second rinçage</translation>
    </message>
    <message>
        <source>What beekeepers do; no published source</source>
        <translation>Pratique des apiculteurs ; pas de source publiée</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Ce que cela fait</translation>
    </message>
    <message>
        <source>What it needs</source>
        <translation>Ce qu’il faut</translation>
    </message>
    <message>
        <source>Where mites are still susceptible.</source>
        <translation>Là où les varroas y sont encore sensibles.</translation>
    </message>
    <message>
        <source>Wider; picked because its ranges held the truth more often in simulated yards.</source>
        <translation>Plus large ; choisie parce que ses fourchettes contenaient plus souvent la vraie valeur dans des ruchers simulés.</translation>
    </message>
    <message>
        <source>Widespread.</source>
        <translation>Répandue.</translation>
    </message>
    <message>
        <source>Wilson 95 % limits of 0 in 20</source>
        <translation>Limites de Wilson à 95 % pour 0 sur 20</translation>
    </message>
    <message>
        <source>Wilson 95 % limits of 1 in 29</source>
        <translation>Limites de Wilson à 95 % pour 1 sur 29</translation>
    </message>
    <message>
        <source>Wilson 95 % limits of 15 in 148</source>
        <translation>Limites de Wilson à 95 % pour 15 sur 148</translation>
    </message>
    <message>
        <source>Wilson 95 % limits of 81 in 263</source>
        <translation>Limites de Wilson à 95 % pour 81 sur 263</translation>
    </message>
    <message>
        <source>Winter screen wash and soapy water are used as well; that is common practice without a source.</source>
        <translation>Le lave-glace d’hiver et l’eau savonneuse servent aussi ; c’est une pratique courante, sans source.</translation>
    </message>
    <message>
        <source>With supers on</source>
        <translation>Avec des hausses posées</translation>
    </message>
    <message>
        <source>Without brood.</source>
        <translation>Sans couvain.</translation>
    </message>
    <message>
        <source>Without capped brood all mites sit on bees, where a treatment that acts on bees alone reaches them.</source>
        <translation>Sans couvain operculé, tous les varroas sont sur les abeilles, où un traitement qui n’agit que sur les abeilles les atteint.</translation>
    </message>
    <message>
        <source>Wording of extension services</source>
        <translation>Formulation des services de vulgarisation agricole</translation>
    </message>
    <message>
        <source>Worker brood under its capping</source>
        <translation>Couvain d’ouvrières sous opercule</translation>
    </message>
    <message>
        <source>Worth keeping besides</source>
        <translation>Utile à garder en plus</translation>
    </message>
    <message>
        <source>Wrong verdicts accepted by the stop-early rule, either way</source>
        <translation>Verdicts faux acceptés par la règle d’arrêt anticipé, dans chaque sens</translation>
    </message>
    <message>
        <source>Yours to change.</source>
        <translation>À vous de la modifier.</translation>
    </message>
    <message>
        <source>amitraz</source>
        <translation>amitraze</translation>
    </message>
    <message>
        <source>batch number and expiry date</source>
        <translation>numéro de lot et date de péremption</translation>
    </message>
    <message>
        <source>bees</source>
        <translation>abeilles</translation>
    </message>
    <message>
        <source>bees per ml</source>
        <translation>abeilles par ml</translation>
    </message>
    <message>
        <source>by label</source>
        <translation>selon l’étiquette</translation>
    </message>
    <message>
        <source>cells</source>
        <translation>cellules</translation>
    </message>
    <message>
        <source>chance</source>
        <translation>probabilité</translation>
    </message>
    <message>
        <source>colonies</source>
        <translation>colonies</translation>
    </message>
    <message>
        <source>colonies stayed above the line</source>
        <translation>les colonies sont restées au-dessus du seuil</translation>
    </message>
    <message>
        <source>colonies treated</source>
        <translation>colonies traitées</translation>
    </message>
    <message>
        <source>cool weather, bees in a cluster or nearly</source>
        <translation>temps frais, abeilles en grappe ou presque</translation>
    </message>
    <message>
        <source>coumaphos</source>
        <translation>coumaphos</translation>
    </message>
    <message>
        <source>count</source>
        <translation>compte</translation>
    </message>
    <message>
        <source>day of the year</source>
        <translation>jour de l’année</translation>
    </message>
    <message>
        <source>days</source>
        <translation>jours</translation>
    </message>
    <message>
        <source>degrees C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>degrees of freedom</source>
        <translation>degrés de liberté</translation>
    </message>
    <message>
        <source>first day</source>
        <translation>premier jour</translation>
    </message>
    <message>
        <source>flumethrin</source>
        <translation>fluméthrine</translation>
    </message>
    <message>
        <source>formic acid</source>
        <translation>acide formique</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>hop beta acids</source>
        <translation>acides bêta du houblon</translation>
    </message>
    <message>
        <source>how long the treatment lasts</source>
        <translation>durée du traitement</translation>
    </message>
    <message>
        <source>in autumn at times more than are bred in the colony</source>
        <translation>en automne, parfois plus qu’il n’en naît dans la colonie</translation>
    </message>
    <message>
        <source>ln 2 / 0.021</source>
        <translation>ln 2 / 0,021</translation>
    </message>
    <message>
        <source>longitude first</source>
        <translation>longitude d’abord</translation>
    </message>
    <message>
        <source>lx</source>
        <translation>lx</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>mg</source>
        <translation>mg</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>minutes</translation>
    </message>
    <message>
        <source>mites</source>
        <translation>varroas</translation>
    </message>
    <message>
        <source>mites a day</source>
        <translation>varroas par jour</translation>
    </message>
    <message>
        <source>mites a leaf</source>
        <translation>acariens par feuille</translation>
    </message>
    <message>
        <source>mites a leaf, squared</source>
        <translation>acariens par feuille, au carré</translation>
    </message>
    <message>
        <source>mites in the colony for one a day on the board</source>
        <translation>varroas dans la colonie pour un par jour sur le lange</translation>
    </message>
    <message>
        <source>mites per 100 bees</source>
        <translation>varroas pour 100 abeilles</translation>
    </message>
    <message>
        <source>ml</source>
        <translation>ml</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>months</source>
        <translation>mois</translation>
    </message>
    <message>
        <source>name of the product</source>
        <translation>nom du produit</translation>
    </message>
    <message>
        <source>natural</source>
        <translation>naturelle</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>no, long contact</source>
        <translation>non, contact prolongé</translation>
    </message>
    <message>
        <source>octets</source>
        <translation>octets</translation>
    </message>
    <message>
        <source>of all mites</source>
        <translation>de tous les varroas</translation>
    </message>
    <message>
        <source>of ln(bees)</source>
        <translation>de ln(abeilles)</translation>
    </message>
    <message>
        <source>of the count</source>
        <translation>du compte</translation>
    </message>
    <message>
        <source>of the mean</source>
        <translation>de la moyenne</translation>
    </message>
    <message>
        <source>of the mites on the bees</source>
        <translation>des varroas sur les abeilles</translation>
    </message>
    <message>
        <source>of the squared load</source>
        <translation>du carré de la charge</translation>
    </message>
    <message>
        <source>of the squared mean</source>
        <translation>du carré de la moyenne</translation>
    </message>
    <message>
        <source>of what a wash finds</source>
        <translation>de ce qu’un lavage trouve</translation>
    </message>
    <message>
        <source>openings per inch</source>
        <translation>ouvertures par pouce</translation>
    </message>
    <message>
        <source>owner, address, position, average number of colonies at each site</source>
        <translation>propriétaire, adresse, position, nombre moyen de colonies par emplacement</translation>
    </message>
    <message>
        <source>oxalic acid</source>
        <translation>acide oxalique</translation>
    </message>
    <message>
        <source>per cell capped a day and gram of bees</source>
        <translation>pour une cellule operculée par jour et par gramme d’abeilles</translation>
    </message>
    <message>
        <source>per day</source>
        <translation>par jour</translation>
    </message>
    <message>
        <source>prescriber, where there is one</source>
        <translation>prescripteur, s’il y en a un</translation>
    </message>
    <message>
        <source>probability</source>
        <translation>probabilité</translation>
    </message>
    <message>
        <source>proof of purchase</source>
        <translation>preuve d’achat</translation>
    </message>
    <message>
        <source>proportion</source>
        <translation>proportion</translation>
    </message>
    <message>
        <source>quantity</source>
        <translation>quantité</translation>
    </message>
    <message>
        <source>said</source>
        <translation>signalée</translation>
    </message>
    <message>
        <source>scoops</source>
        <translation>mesures</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>secondes</translation>
    </message>
    <message>
        <source>shape</source>
        <translation>forme</translation>
    </message>
    <message>
        <source>standard error over mean</source>
        <translation>erreur type sur moyenne</translation>
    </message>
    <message>
        <source>supplier's name and address</source>
        <translation>nom et adresse du fournisseur</translation>
    </message>
    <message>
        <source>synthetic</source>
        <translation>synthétique</translation>
    </message>
    <message>
        <source>tablespoons</source>
        <translation>cuillères à soupe</translation>
    </message>
    <message>
        <source>tau-fluvalinate</source>
        <translation>tau-fluvalinate</translation>
    </message>
    <message>
        <source>thymol</source>
        <translation>thymol</translation>
    </message>
    <message>
        <source>times</source>
        <translation>fois</translation>
    </message>
    <message>
        <source>times the usual</source>
        <translation>fois l’habituelle</translation>
    </message>
    <message>
        <source>to 1</source>
        <translation>pour 1</translation>
    </message>
    <message>
        <source>treated in August, colonies were better in December than treated in June or October</source>
        <translation>traitées en août, les colonies étaient meilleures en décembre que traitées en juin ou en octobre</translation>
    </message>
    <message>
        <source>treating from mid-July into August did better than treating in September</source>
        <translation>traiter de la mi-juillet à août a mieux réussi que traiter en septembre</translation>
    </message>
    <message>
        <source>van Dooremalen et al. 2012, PLoS ONE 7:e36285</source>
        <translation>van Dooremalen et al. 2012, PLoS ONE 7:e36285</translation>
    </message>
    <message>
        <source>washes</source>
        <translation>lavages</translation>
    </message>
    <message>
        <source>with care</source>
        <translation>avec précaution</translation>
    </message>
    <message>
        <source>withdrawal period, also where it is zero</source>
        <translation>temps d’attente, même s’il est nul</translation>
    </message>
    <message>
        <source>words</source>
        <translation>mots</translation>
    </message>
    <message>
        <source>years</source>
        <translation>ans</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
</context>
<context>
    <name>HereChoices</name>
    <message>
        <source>Look again</source>
        <translation>Chercher encore</translation>
    </message>
    <message>
        <source>Make a yard here</source>
        <translation>Créer un rucher ici</translation>
    </message>
    <message>
        <source>New yard</source>
        <translation>Nouveau rucher</translation>
    </message>
    <message>
        <source>Or pick one of your yards</source>
        <translation>Ou choisissez un de vos ruchers</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Partager</translation>
    </message>
    <message>
        <source>Yards</source>
        <translation>Ruchers</translation>
    </message>
    <message>
        <source>asks for the position once more</source>
        <translation>redemande la position</translation>
    </message>
</context>
<context>
    <name>HereColonies</name>
    <message>
        <source>Compare the colonies</source>
        <translation>Comparer les colonies</translation>
    </message>
    <message>
        <source>No colony is kept in this yard yet.</source>
        <translation>Pas encore de colonie dans ce rucher.</translation>
    </message>
    <message>
        <source>Open the tray</source>
        <translation>Ouvrir le casier</translation>
    </message>
    <message>
        <source>side by side, the highest load first</source>
        <translation>côte à côte, la charge la plus haute d’abord</translation>
    </message>
</context>
<context>
    <name>HereFrame</name>
    <message>
        <source>Setup</source>
        <translation>Réglages</translation>
    </message>
</context>
<context>
    <name>HereRound</name>
    <message>
        <source>Yard round</source>
        <translation>Tournée</translation>
    </message>
    <message>
        <source>wash some colonies, know the whole yard</source>
        <translation>quelques lavages, et vous connaissez tout le rucher</translation>
    </message>
</context>
<context>
    <name>HereWelcome</name>
    <message>
        <source>Begin with a yard: a name, and the colonies that stand in it. Halfcup knows it again by its place.</source>
        <translation>Commencez par un rucher : un nom, et les colonies qui s’y trouvent. Halfcup le reconnaît à sa position.</translation>
    </message>
    <message>
        <source>Load the demo</source>
        <translation>Charger la démo</translation>
    </message>
    <message>
        <source>Make a yard here</source>
        <translation>Créer un rucher ici</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Partager</translation>
    </message>
    <message>
        <source>The demo brings two invented yards over one season. They are marked as demo wherever they appear.</source>
        <translation>La démo apporte deux ruchers inventés sur une saison. Ils sont marqués démo partout où ils apparaissent.</translation>
    </message>
    <message>
        <source>Wash half a cup of bees, count the mites, and know what the count means.</source>
        <translation>Lavez une demi-tasse d’abeilles, comptez les varroas et sachez ce que le compte veut dire.</translation>
    </message>
</context>
<context>
    <name>HereYard</name>
    <message>
        <source>Add colonies</source>
        <translation>Ajouter des colonies</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Partager</translation>
    </message>
    <message>
        <source>Yards</source>
        <translation>Ruchers</translation>
    </message>
</context>
<context>
    <name>HistoryPage</name>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Bring it back</source>
        <translation>Le rétablir</translation>
    </message>
    <message>
        <source>It was removed and is in no list now. Nothing of it was thrown away.</source>
        <translation>Supprimé, et dans aucune liste à présent. Rien n’en a été jeté.</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>Laisser tel quel</translation>
    </message>
    <message>
        <source>Newest first. Touch an earlier value to put it back.</source>
        <translation>Le plus récent d’abord. Touchez une valeur antérieure pour la rétablir.</translation>
    </message>
    <message>
        <source>Nothing was changed since it was written down.</source>
        <translation>Rien n’a changé depuis que c’est noté.</translation>
    </message>
    <message>
        <source>Put this back</source>
        <translation>Rétablir ceci</translation>
    </message>
    <message>
        <source>Put this back?</source>
        <translation>Rétablir ceci ?</translation>
    </message>
    <message>
        <source>What changed</source>
        <translation>Ce qui a changé</translation>
    </message>
</context>
<context>
    <name>HistoryWords</name>
    <message>
        <source>%1 m east, %2 m north</source>
        <translation>%1 m vers l’est, %2 m vers le nord</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lieu</translation>
    </message>
    <message>
        <source>Place on the plan</source>
        <translation>Place sur le plan</translation>
    </message>
    <message>
        <source>The whole record</source>
        <translation>Toute la fiche</translation>
    </message>
    <message>
        <source>in the lists</source>
        <translation>dans les listes</translation>
    </message>
    <message>
        <source>no place</source>
        <translation>aucun lieu</translation>
    </message>
    <message>
        <source>none, it stands by itself</source>
        <translation>à rien, il reste à part</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>pas demandé</translation>
    </message>
    <message>
        <source>not put there</source>
        <translation>pas placée sur le plan</translation>
    </message>
    <message>
        <source>not seen</source>
        <translation>pas vue</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>supprimé</translation>
    </message>
    <message>
        <source>seen and safe</source>
        <translation>vue et en sécurité</translation>
    </message>
</context>
<context>
    <name>ImportColumns</name>
    <message>
        <source>For all rows. A name that is not there yet makes a new yard.</source>
        <translation>Pour toutes les lignes. Un nom qui n’existe pas encore crée un nouveau rucher.</translation>
    </message>
    <message>
        <source>In which yard were these washes?</source>
        <translation>Dans quel rucher ces lavages ont-ils été faits ?</translation>
    </message>
    <message>
        <source>Name of the yard</source>
        <translation>Nom du rucher</translation>
    </message>
</context>
<context>
    <name>ImportPage</name>
    <message>
        <source>Leave it as it is</source>
        <translation>Laisser tel quel</translation>
    </message>
    <message>
        <source>Which column holds it?</source>
        <translation>Quelle colonne contient cela ?</translation>
    </message>
</context>
<context>
    <name>ImportPreview</name>
    <message>
        <source>In question</source>
        <translation>Douteuses</translation>
    </message>
    <message>
        <source>Refused</source>
        <translation>Refusées</translation>
    </message>
    <message>
        <source>Taken for granted</source>
        <translation>Pris pour acquis</translation>
    </message>
    <message>
        <source>The first of them</source>
        <translation>Les premiers</translation>
    </message>
</context>
<context>
    <name>Importing</name>
    <message>
        <source>%1: %2 on %3, %4</source>
        <comment>day, mites, bees, method</comment>
        <translation>%1 : %2 sur %3, %4</translation>
    </message>
    <message>
        <source>%1: %2 per 100 (%3)</source>
        <comment>standing, load, its range</comment>
        <translation>%1 : %2 pour 100 (%3)</translation>
    </message>
    <message>
        <source>Column %1, without a name</source>
        <translation>Colonne %1, sans nom</translation>
    </message>
    <message>
        <source>for example %1</source>
        <translation>par exemple %1</translation>
    </message>
</context>
<context>
    <name>JarLabel</name>
    <message>
        <source>Into the tray</source>
        <translation>Dans le casier</translation>
    </message>
    <message>
        <source>Number or name</source>
        <translation>Numéro ou nom</translation>
    </message>
    <message>
        <source>Wash it now</source>
        <translation>Lavage maintenant</translation>
    </message>
    <message>
        <source>What is on the jar?</source>
        <translation>Que porte le bocal ?</translation>
    </message>
    <message>
        <source>Write it on the lid. The time and place of the scoop stay with it.</source>
        <translation>Écrivez-le sur le couvercle. L’heure et le lieu du prélèvement lui restent attachés.</translation>
    </message>
</context>
<context>
    <name>LayBoardStep</name>
    <message>
        <source>A board counts only what falls through a screen. Under a solid floor the count would mean nothing.</source>
        <translation>Un lange ne compte que ce qui tombe à travers un grillage. Au-dessus d’un plancher plein, le comptage ne voudrait rien dire.</translation>
    </message>
    <message>
        <source>It is screened now</source>
        <translation>Il est grillagé à présent</translation>
    </message>
    <message>
        <source>It lies there already</source>
        <translation>Il est déjà en place</translation>
    </message>
    <message>
        <source>Its floor is screened</source>
        <translation>Son plancher est grillagé</translation>
    </message>
    <message>
        <source>Its floor is solid: leave</source>
        <translation>Plancher plein : quitter</translation>
    </message>
    <message>
        <source>written down with today's date</source>
        <translation>noté à la date d’aujourd’hui</translation>
    </message>
</context>
<context>
    <name>LoadLegend</name>
    <message numerus="yes">
        <source>%n wash(es) since %1.</source>
        <translation>
            <numerusform>%n lavage depuis le %1.</numerusform>
            <numerusform>%n lavages depuis le %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>A wash that found none: the load may be up to the stroke</source>
        <translation>Lavage, aucun trouvé : la charge peut aller jusqu’au trait</translation>
    </message>
    <message>
        <source>A wash, and the range that holds the true load 9 times in 10</source>
        <translation>Lavage et sa fourchette : la vraie charge y est 9 fois sur 10</translation>
    </message>
    <message>
        <source>Counted another way, and none found: up to the stroke</source>
        <translation>Compté autrement, aucun trouvé : jusqu’au trait</translation>
    </message>
    <message>
        <source>Counted another way, as by a sugar roll</source>
        <translation>Compté autrement, comme au sucre glace</translation>
    </message>
    <message>
        <source>If nothing is done, about %1 on %2, between %3 and %4.</source>
        <translation>Sans rien faire : environ %1 le %2, de %3 à %4.</translation>
    </message>
    <message>
        <source>If nothing is done, at most about %1 on %2.</source>
        <translation>Sans rien faire : au plus environ %1 le %2.</translation>
    </message>
    <message>
        <source>Last treated from %1 to %2.</source>
        <translation>Dernier traitement du %1 au %2.</translation>
    </message>
    <message>
        <source>Last treated from %1 to %2: %3.</source>
        <translation>Dernier traitement du %1 au %2 : %3.</translation>
    </message>
    <message>
        <source>No wash yet.</source>
        <translation>Aucun lavage.</translation>
    </message>
    <message>
        <source>Something happened, and there was no room for its mark</source>
        <translation>Événement, sans place pour son signe</translation>
    </message>
    <message>
        <source>The highest load was %1 mites per 100 bees, on %2.</source>
        <translation>Charge la plus haute : %1 varroas pour 100 abeilles, le %2.</translation>
    </message>
    <message>
        <source>The last wash, on %1, found none: at most %2 mites per 100 bees.</source>
        <translation>Dernier lavage, le %1 : aucun trouvé, au plus %2 varroas pour 100 abeilles.</translation>
    </message>
    <message>
        <source>The last wash, on %1: %2 mites per 100 bees, between %3 and %4.</source>
        <translation>Dernier lavage, le %1 : %2 varroas pour 100 abeilles, de %3 à %4.</translation>
    </message>
    <message>
        <source>The load ahead if nothing is done, and its range</source>
        <translation>Charge à venir sans rien faire, et sa fourchette</translation>
    </message>
    <message>
        <source>The treat line is %1.</source>
        <translation>Le seuil de traitement est %1.</translation>
    </message>
    <message>
        <source>The treat line, as it was then</source>
        <translation>Seuil de traitement d’alors</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Aujourd’hui</translation>
    </message>
    <message>
        <source>Treated, from the first day to the last</source>
        <translation>Traitement, du premier au dernier jour</translation>
    </message>
    <message>
        <source>Your own line, as it was then</source>
        <translation>Votre seuil personnel d’alors</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <comment>date format, as in 18 May 2026</comment>
        <translation>d MMMM yyyy</translation>
    </message>
</context>
<context>
    <name>LoadMarks</name>
    <message>
        <source>Dead</source>
        <translation>Morte</translation>
    </message>
    <message>
        <source>Moved to another yard</source>
        <translation>Déplacée vers un autre rucher</translation>
    </message>
    <message>
        <source>New queen</source>
        <translation>Nouvelle reine</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>Division</translation>
    </message>
    <message>
        <source>Supers off</source>
        <translation>Hausses retirées</translation>
    </message>
    <message>
        <source>Supers on</source>
        <translation>Hausses posées</translation>
    </message>
    <message>
        <source>Swarmed</source>
        <translation>Essaimage</translation>
    </message>
    <message>
        <source>Two colonies put together</source>
        <translation>Deux colonies réunies</translation>
    </message>
</context>
<context>
    <name>LoadWords</name>
    <message>
        <source>%1 to %2</source>
        <comment>years</comment>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>Mites per 100 bees</source>
        <translation>Varroas pour 100 abeilles</translation>
    </message>
    <message>
        <source>Mites per 100 bees, uneven scale</source>
        <translation>Varroas pour 100 abeilles, échelle inégale</translation>
    </message>
    <message>
        <source>No wash yet.</source>
        <translation>Aucun lavage.</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Aujourd’hui</translation>
    </message>
    <message>
        <source>Treat line</source>
        <translation>Seuil de traitement</translation>
    </message>
    <message>
        <source>Your own line</source>
        <translation>Votre seuil personnel</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Halfcup</source>
        <translation>Halfcup</translation>
    </message>
</context>
<context>
    <name>MarksMeaning</name>
    <message>
        <source>Hide what the marks mean</source>
        <translation>Masquer les signes</translation>
    </message>
    <message>
        <source>What the marks mean</source>
        <translation>Que veulent dire les signes</translation>
    </message>
</context>
<context>
    <name>MessageSheet</name>
    <message>
        <source>Please read</source>
        <translation>À lire</translation>
    </message>
    <message>
        <source>Understood</source>
        <translation>Compris</translation>
    </message>
</context>
<context>
    <name>Method</name>
    <message>
        <source>Alcohol burns. No lit smoker, flame or cigarette near the jar.</source>
        <translation>L’alcool brûle. Pas d’enfumoir allumé, de flamme ni de cigarette près du bocal.</translation>
    </message>
    <message>
        <source>All drone cells you opened, with mites and without. Open a hundred or more, in several places.</source>
        <translation>Toutes les cellules de mâles que vous avez ouvertes, avec et sans varroas. Ouvrez-en cent ou plus, à plusieurs endroits.</translation>
    </message>
    <message>
        <source>All white: let them rest</source>
        <translation>Blanches : laisser reposer</translation>
    </message>
    <message>
        <source>Board laid: keep the time</source>
        <translation>Lange posé : noter l’heure</translation>
    </message>
    <message>
        <source>Board pulled</source>
        <translation>Lange retiré</translation>
    </message>
    <message>
        <source>Board under colony %1</source>
        <translation>Lange sous la colonie %1</translation>
    </message>
    <message>
        <source>Close the jar with the mesh. Sieve two tablespoons of powdered sugar through it.
Roll the jar until every bee is white.</source>
        <translation>Fermez le bocal avec le grillage. Tamisez au travers deux cuillères à soupe de sucre glace.
Roulez le bocal jusqu’à ce que chaque abeille soit blanche.</translation>
    </message>
    <message>
        <source>Count cells with mites</source>
        <translation>Compter les cellules infestées</translation>
    </message>
    <message>
        <source>Count the mites</source>
        <translation>Compter les varroas</translation>
    </message>
    <message>
        <source>Count the whole board, or the same share in every part of it.</source>
        <translation>Comptez tout le lange, ou la même part dans chacune de ses parties.</translation>
    </message>
    <message>
        <source>Dry weather only: damp sugar clumps, holds mites and harms bees. Do not breathe the dust.</source>
        <translation>Par temps sec seulement : le sucre humide fait des grumeaux, retient les varroas et nuit aux abeilles. Ne respirez pas la poussière.</translation>
    </message>
    <message>
        <source>Find her and set her frame aside before you scoop.</source>
        <translation>Trouvez-la et mettez son cadre de côté avant de prélever.</translation>
    </message>
    <message>
        <source>Grease the board or use a sticky one: a dry board loses mites to ants and wind.
Slide it under the screen so that it covers the whole floor. No gap for bees.</source>
        <translation>Graissez le lange ou prenez un modèle collant : un lange sec perd des varroas par les fourmis et le vent.
Glissez-le sous le grillage pour qu’il couvre tout le plancher. Aucun passage pour les abeilles.</translation>
    </message>
    <message>
        <source>Half a cup of bees in alcohol. The bees die; the surest count.</source>
        <translation>Une demi-tasse d’abeilles dans l’alcool. Les abeilles meurent ; c’est le comptage le plus sûr.</translation>
    </message>
    <message>
        <source>Half a cup of bees in powdered sugar. They live; the roll finds fewer mites than a wash, and the answer is wider.</source>
        <translation>Une demi-tasse d’abeilles dans le sucre glace. Elles vivent ; le test trouve moins de varroas qu’un lavage, et la réponse est plus large.</translation>
    </message>
    <message>
        <source>Hold the jar against the light and look at the bottom once more. None found is kept as a count of 0.</source>
        <translation>Tenez le bocal contre la lumière et regardez encore une fois le fond. Aucun trouvé est enregistré comme un compte de 0.</translation>
    </message>
    <message>
        <source>Hold the jar against the light, look under the foam and at the bottom once more. None found is kept as a count of 0.</source>
        <translation>Tenez le bocal contre la lumière, regardez encore une fois sous la mousse et au fond. Aucun trouvé est enregistré comme un compte de 0.</translation>
    </message>
    <message>
        <source>How many cells in all?</source>
        <translation>Combien de cellules en tout ?</translation>
    </message>
    <message>
        <source>How much of the board?</source>
        <translation>Quelle part du lange ?</translation>
    </message>
    <message>
        <source>Lay the board</source>
        <translation>Poser le lange</translation>
    </message>
    <message>
        <source>Let it settle</source>
        <translation>Laisser reposer</translation>
    </message>
    <message>
        <source>Let the foam go</source>
        <translation>Laisser tomber la mousse</translation>
    </message>
    <message>
        <source>Let them rest</source>
        <translation>Laisser reposer</translation>
    </message>
    <message>
        <source>Lid on: start the shake</source>
        <translation>Fermé : commencer à agiter</translation>
    </message>
    <message>
        <source>Look into the cells and at the pale pupae once more. None found is kept as a count of 0.</source>
        <translation>Regardez encore une fois dans les cellules et sur les nymphes claires. Aucun trouvé est enregistré comme un compte de 0.</translation>
    </message>
    <message>
        <source>Mesh down over a white plate: shake hard, like a salt cellar.</source>
        <translation>Grillage vers le bas au-dessus d’une assiette blanche : secouez fort, comme une salière.</translation>
    </message>
    <message>
        <source>Mites that fall through a screened floor, by the day. No bee is touched; weak evidence beside a wash.</source>
        <translation>Les varroas qui tombent à travers un plancher grillagé, par jour. Aucune abeille n’est touchée ; un indice faible à côté d’un lavage.</translation>
    </message>
    <message>
        <source>One to three days are best. Pull it level, out of the wind.</source>
        <translation>Un à trois jours, c’est le mieux. Retirez-le bien à plat, à l’abri du vent.</translation>
    </message>
    <message>
        <source>Open drone brood of colony %1</source>
        <translation>Couvain de mâles de la colonie %1</translation>
    </message>
    <message>
        <source>Opened brood dies. Take capped drone cells with pink to purple eyes.</source>
        <translation>Le couvain ouvert meurt. Prenez des cellules de mâles operculées, aux yeux roses à violets.</translation>
    </message>
    <message>
        <source>Pour and close</source>
        <translation>Verser et fermer</translation>
    </message>
    <message>
        <source>Pour fresh alcohol over the same bees, shake again and count what still falls.</source>
        <translation>Versez de l’alcool frais sur les mêmes abeilles, agitez encore et comptez ce qui tombe.</translation>
    </message>
    <message>
        <source>Pour fresh soapy water over the same bees, shake again and count what still falls.</source>
        <translation>Versez de l’eau savonneuse fraîche sur les mêmes abeilles, agitez encore et comptez ce qui tombe.</translation>
    </message>
    <message>
        <source>Pour in alcohol until all the bees are well covered.
Close the lid and see that it is tight.</source>
        <translation>Versez de l’alcool jusqu’à bien couvrir toutes les abeilles.
Fermez le couvercle et vérifiez qu’il est étanche.</translation>
    </message>
    <message>
        <source>Pour in water with a squirt of washing-up liquid until all the bees are well covered.
Close the lid and see that it is tight.</source>
        <translation>Versez de l’eau avec un jet de liquide vaisselle jusqu’à bien couvrir toutes les abeilles.
Fermez le couvercle et vérifiez qu’il est étanche.</translation>
    </message>
    <message>
        <source>Pull the board</source>
        <translation>Retirer le lange</translation>
    </message>
    <message>
        <source>Rested. Turn the jar over a white plate.</source>
        <translation>C’est reposé. Retournez le bocal au-dessus d’une assiette blanche.</translation>
    </message>
    <message>
        <source>Rinse once more?</source>
        <translation>Un autre rinçage ?</translation>
    </message>
    <message>
        <source>Scoop the bees</source>
        <translation>Prélever les abeilles</translation>
    </message>
    <message>
        <source>See that she is not on the frame you open.</source>
        <translation>Assurez-vous qu’elle n’est pas sur le cadre que vous ouvrez.</translation>
    </message>
    <message>
        <source>Settled. Look from below.</source>
        <translation>Reposé. Regardez par-dessous.</translation>
    </message>
    <message>
        <source>Shake</source>
        <translation>Agiter</translation>
    </message>
    <message>
        <source>Shake out</source>
        <translation>Secouer</translation>
    </message>
    <message>
        <source>Shake the sugar out</source>
        <translation>Secouer le sucre</translation>
    </message>
    <message>
        <source>Spray the plate with water so that the sugar melts, and look once more. None found is kept as a count of 0.</source>
        <translation>Vaporisez de l’eau sur l’assiette pour que le sucre fonde, et regardez encore une fois. Aucun trouvé est enregistré comme un compte de 0.</translation>
    </message>
    <message>
        <source>Stand the jar in the shade. The mites lose their hold.</source>
        <translation>Posez le bocal à l’ombre. Les varroas lâchent prise.</translation>
    </message>
    <message>
        <source>Stand the jar still. Foam hides mites; a little cold water on top clears it.</source>
        <translation>Laissez le bocal immobile. La mousse cache les varroas ; un peu d’eau froide par-dessus la dissipe.</translation>
    </message>
    <message>
        <source>Stand the jar still. The mites sink.</source>
        <translation>Laissez le bocal immobile. Les varroas descendent.</translation>
    </message>
    <message>
        <source>Stung and short of breath, dizzy or swelling? Stop and call for help.</source>
        <translation>Piqûre, et souffle court, vertiges ou gonflement ? Arrêtez et appelez les secours.</translation>
    </message>
    <message>
        <source>Sugar the bees</source>
        <translation>Sucrer les abeilles</translation>
    </message>
    <message>
        <source>Sugar-roll colony %1</source>
        <translation>Test au sucre de la colonie %1</translation>
    </message>
    <message>
        <source>The bees go back alive, but sugar and shaking would harm a queen: leave her out.</source>
        <translation>Les abeilles reviennent vivantes, mais le sucre et l’agitation nuiraient à une reine : laissez-la de côté.</translation>
    </message>
    <message>
        <source>The file says that it is UTF-16, but its text is broken. Save it again as CSV in UTF-8.</source>
        <translation>Le fichier dit qu’il est en UTF-16, mais son texte est abîmé. Enregistrez-le à nouveau en CSV, en UTF-8.</translation>
    </message>
    <message>
        <source>The same with washing-up liquid in water. The bees die; nothing that burns.</source>
        <translation>La même chose avec du liquide vaisselle dans l’eau. Les abeilles meurent ; rien qui brûle.</translation>
    </message>
    <message>
        <source>The share of drone cells with mites. Only while there is capped drone brood; no load can be read from it.</source>
        <translation>La part de cellules de mâles avec varroas. Seulement tant qu’il y a du couvain de mâles operculé ; on ne peut pas en tirer de charge.</translation>
    </message>
    <message>
        <source>The washed bees die. Look twice that the queen is not among them.</source>
        <translation>Les abeilles lavées meurent. Regardez deux fois que la reine n’est pas parmi elles.</translation>
    </message>
    <message>
        <source>The whole board</source>
        <translation>Tout le lange</translation>
    </message>
    <message>
        <source>Tilt the board in the light and go along its lines once more. None found is kept as a count of 0.</source>
        <translation>Inclinez le lange à la lumière et parcourez encore une fois ses lignes. Aucun trouvé est enregistré comme un compte de 0.</translation>
    </message>
    <message>
        <source>Time. Set the jar down.</source>
        <translation>Temps écoulé. Posez le bocal.</translation>
    </message>
    <message>
        <source>Touch anywhere for each mite</source>
        <translation>Touchez l’écran à chaque varroa</translation>
    </message>
    <message>
        <source>Touch for each cell with a mite</source>
        <translation>Touchez à chaque cellule avec varroa</translation>
    </message>
    <message>
        <source>Turn the jar over and over, not too gently.</source>
        <translation>Retournez le bocal encore et encore, sans trop de douceur.</translation>
    </message>
    <message>
        <source>Turn the jar over and over. Swirl more than you beat: less foam.</source>
        <translation>Retournez le bocal encore et encore. Faites tourner plus que battre : moins de mousse.</translation>
    </message>
    <message>
        <source>Wash colony %1</source>
        <translation>Lavage de la colonie %1</translation>
    </message>
    <message>
        <source>Where is the queen?</source>
        <translation>Où est la reine ?</translation>
    </message>
    <message>
        <source>Which colony?</source>
        <translation>Quelle colonie ?</translation>
    </message>
    <message>
        <source>alcohol</source>
        <translation>alcool</translation>
    </message>
    <message>
        <source>alcohol wash</source>
        <translation>lavage à l’alcool</translation>
    </message>
    <message>
        <source>drone brood opened</source>
        <translation>couvain de mâles ouvert</translation>
    </message>
    <message>
        <source>powdered sugar</source>
        <translation>sucre glace</translation>
    </message>
    <message>
        <source>powdered-sugar roll</source>
        <translation>test au sucre glace</translation>
    </message>
    <message>
        <source>soapy water</source>
        <translation>eau savonneuse</translation>
    </message>
    <message>
        <source>soapy-water wash</source>
        <translation>lavage à l’eau savonneuse</translation>
    </message>
    <message>
        <source>sticky board</source>
        <translation>lange graissé</translation>
    </message>
</context>
<context>
    <name>MethodsPage</name>
    <message>
        <source>How to count?</source>
        <translation>Comment compter ?</translation>
    </message>
</context>
<context>
    <name>NumberPad</name>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
</context>
<context>
    <name>NumberPadFigure</name>
    <message>
        <source>Nothing typed yet</source>
        <translation>Rien de saisi</translation>
    </message>
</context>
<context>
    <name>NumberPadKeys</name>
    <message>
        <source>Delete</source>
        <translation>Effacer</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Valider</translation>
    </message>
</context>
<context>
    <name>OnDayPage</name>
    <message>
        <source>A day earlier</source>
        <translation>Un jour plus tôt</translation>
    </message>
    <message>
        <source>A day later</source>
        <translation>Un jour plus tard</translation>
    </message>
    <message>
        <source>Another day</source>
        <translation>Un autre jour</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Show this day</source>
        <translation>Voir ce jour</translation>
    </message>
    <message>
        <source>Such as 1 July, or 2026-07-01</source>
        <translation>Par exemple 1 juillet, ou 2026-07-01</translation>
    </message>
    <message>
        <source>Which day?</source>
        <translation>Quel jour ?</translation>
    </message>
</context>
<context>
    <name>OpenedCellsStep</name>
    <message>
        <source>Cells opened in all</source>
        <translation>Cellules ouvertes en tout</translation>
    </message>
    <message>
        <source>Type the cells opened</source>
        <translation>Saisir les cellules ouvertes</translation>
    </message>
    <message>
        <source>With mites: %1</source>
        <translation>Avec varroas : %1</translation>
    </message>
</context>
<context>
    <name>OtherAnswerPage</name>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>Wash this colony</source>
        <translation>Lavage de cette colonie</translation>
    </message>
    <message>
        <source>Where this comes from</source>
        <translation>D’où cela vient</translation>
    </message>
</context>
<context>
    <name>OtherAnswerWords</name>
    <message>
        <source>%1 mites a day</source>
        <translation>%1 varroas par jour</translation>
    </message>
    <message>
        <source>%1 of 100 drone cells</source>
        <translation>%1 cellules de mâles sur 100</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a range</comment>
        <translation>%1 à %2</translation>
    </message>
</context>
<context>
    <name>OutlookWords</name>
    <message>
        <source>If nothing is done, and its range</source>
        <translation>Sans rien faire, et la fourchette</translation>
    </message>
    <message>
        <source>Mid-autumn</source>
        <translation>Mi-automne</translation>
    </message>
    <message>
        <source>Mites per 100 bees</source>
        <translation>Varroas pour 100 abeilles</translation>
    </message>
    <message>
        <source>No outlook.</source>
        <translation>Pas de projection.</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Aujourd’hui</translation>
    </message>
    <message>
        <source>Turn date</source>
        <translation>Date charnière</translation>
    </message>
    <message>
        <source>With the treatment, and its range</source>
        <translation>Avec le traitement, et la fourchette</translation>
    </message>
    <message>
        <source>Your treat line</source>
        <translation>Votre seuil de traitement</translation>
    </message>
</context>
<context>
    <name>OwnScoopsPage</name>
    <message>
        <source>After a wash, touch “Count these bees” under the answer. Five scoops tell your hand from another.</source>
        <translation>Après un lavage, touchez « Compter ces abeilles » sous la réponse. Cinq mesures distinguent votre main d’une autre.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>It no longer counts for your figure. The history keeps it, and the wash it belongs to stays as it is.</source>
        <translation>Elle ne compte plus dans votre valeur. L’historique la garde, et son lavage reste tel quel.</translation>
    </message>
    <message>
        <source>Leave it in</source>
        <translation>La garder</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>L’écarter</translation>
    </message>
    <message>
        <source>Leave this scoop out?</source>
        <translation>Écarter cette mesure ?</translation>
    </message>
    <message>
        <source>What others count</source>
        <translation>Ce que d’autres comptent</translation>
    </message>
    <message>
        <source>Your scoops</source>
        <translation>Vos mesures</translation>
    </message>
</context>
<context>
    <name>PageHeader</name>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
</context>
<context>
    <name>PageText</name>
    <message>
        <source>*(A wide table is left out here; it is on the page that comes with the program.)*
</source>
        <translation>*(Un tableau large est omis ici ; il figure sur la page fournie avec le programme.)*
</translation>
    </message>
</context>
<context>
    <name>Phrase</name>
    <message>
        <source>"%1" is no temperature. Type them in a row: 24 26 27.</source>
        <translation>« %1 » n’est pas une température. Saisissez-les à la suite : 24 26 27.</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 is no temperature of a day with bees: %2 to %3.</source>
        <translation>%1 n’est pas la température d’un jour à abeilles : de %2 à %3.</translation>
    </message>
    <message>
        <source>%1 per 100</source>
        <translation>%1 pour 100</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>A course of %1 runs until %2.</source>
        <translation>Un traitement (%1) est en cours jusqu’au %2.</translation>
    </message>
    <message>
        <source>A course of %1 that is written down begins on %2, while this one runs.</source>
        <translation>Un traitement noté (%1) commence le %2, pendant que celui-ci est en cours.</translation>
    </message>
    <message>
        <source>A course of it runs until %1.</source>
        <translation>Déjà en cours, jusqu’au %1.</translation>
    </message>
    <message>
        <source>A forecast of more than %1 is no forecast.</source>
        <translation>Au-delà de %1, ce ne sont plus des prévisions.</translation>
    </message>
    <message>
        <source>A forecast wants at least %1.</source>
        <translation>Des prévisions doivent couvrir au moins %1.</translation>
    </message>
    <message>
        <source>A treatment that is written down ends before it begins.</source>
        <translation>Un traitement noté finit avant de commencer.</translation>
    </message>
    <message>
        <source>All mites come onto the bees, where a treatment reaches them.</source>
        <translation>Tous les varroas passent sur les abeilles, où un traitement les atteint.</translation>
    </message>
    <message>
        <source>Also kills mites under cappings.</source>
        <translation>Tue aussi les varroas sous opercules.</translation>
    </message>
    <message>
        <source>Another class than last time, which was %1.</source>
        <translation>Autre classe que la dernière fois, qui était : %1.</translation>
    </message>
    <message>
        <source>By itself it seldom brings a load that is over the line under it again.</source>
        <translation>Seul, cela ramène rarement sous le seuil une charge qui l’a dépassé.</translation>
    </message>
    <message>
        <source>Can't tell: anything from %1 of the mites killed. The mark is %2.</source>
        <translation>On ne sait pas : de %1 des varroas tués. L’objectif est de %2.</translation>
    </message>
    <message>
        <source>Can't tell: no treated colony was washed from %1 to %2 after its end.</source>
        <translation>On ne sait pas : aucune colonie traitée n’a eu de lavage entre %1 et %2 après sa fin.</translation>
    </message>
    <message>
        <source>Can't tell: no treated colony was washed in the %1 before it.</source>
        <translation>On ne sait pas : aucune colonie traitée n’a eu de lavage dans les %1 avant.</translation>
    </message>
    <message>
        <source>Compared with untreated colonies of the same yard: %1.</source>
        <translation>Comparé aux colonies non traitées du même rucher : %1.</translation>
    </message>
    <message>
        <source>Do not use this class again here until an adviser has looked at it. If the load is over your line, treat with another class.</source>
        <translation>N’utilisez plus cette classe ici avant qu’un conseiller ait examiné la situation. Si la charge dépasse votre seuil, traitez avec une autre classe.</translation>
    </message>
    <message>
        <source>Does not reach under cappings, and there is capped brood.</source>
        <translation>N’agit pas sous opercules, et il y a du couvain operculé.</translation>
    </message>
    <message>
        <source>Does not reach under cappings: with brood it killed %1 of the mites.</source>
        <translation>N’agit pas sous opercules : en présence de couvain, %1 des varroas ont été tués.</translation>
    </message>
    <message>
        <source>Does not reach under cappings; whether there is capped brood now is not known.</source>
        <translation>N’agit pas sous opercules ; on ne sait pas s’il y a du couvain operculé en ce moment.</translation>
    </message>
    <message>
        <source>Drones are being raised now.</source>
        <translation>Des mâles sont élevés en ce moment.</translation>
    </message>
    <message>
        <source>Due in %2: %1</source>
        <translation>À faire dans %2 : %1</translation>
    </message>
    <message>
        <source>Due today: %1</source>
        <translation>À faire ce jour : %1</translation>
    </message>
    <message>
        <source>Due: %1, %2 late</source>
        <translation>À faire : %1, %2 de retard</translation>
    </message>
    <message>
        <source>Even its shortest course ends %1 after the turn date, %2.</source>
        <translation>Même le plus court finit %1 après la date charnière, le %2.</translation>
    </message>
    <message>
        <source>Even with it: over what colonies survive as a rule by the turn date, %2.</source>
        <translation>Même avec ce choix : au-delà de ce que des colonies supportent en règle générale, d’ici la date charnière, le %2.</translation>
    </message>
    <message>
        <source>Fewer than %1 mites were found before it: the range is wide.</source>
        <translation>Moins de %1 varroas trouvés avant : la fourchette est large.</translation>
    </message>
    <message>
        <source>Grows about %1 a day. Likelier than not over %2 from about %3 on, if nothing is done.</source>
        <translation>Croissance d’environ %1 par jour. Plus d’une chance sur deux de dépasser %2 à partir du %3 environ, si rien n’est fait.</translation>
    </message>
    <message>
        <source>Grows about %1 a day. Over %2 already, with a chance of %3.</source>
        <translation>Croissance d’environ %1 par jour. Déjà au-delà de %2, avec une probabilité de %3.</translation>
    </message>
    <message>
        <source>Grows about %1 a day. Over %2 within 60 days of the last wash with a chance of %3.</source>
        <translation>Croissance d’environ %1 par jour. Au-delà de %2 dans les 60 jours après le dernier lavage avec une probabilité de %3.</translation>
    </message>
    <message>
        <source>Growth is assumed, about %1 a day. Likelier than not over %2 from about %3 on, if nothing is done.</source>
        <translation>Croissance supposée, environ %1 par jour. Plus d’une chance sur deux de dépasser %2 à partir du %3 environ, si rien n’est fait.</translation>
    </message>
    <message>
        <source>Growth is assumed, about %1 a day. Over %2 already, with a chance of %3.</source>
        <translation>Croissance supposée, environ %1 par jour. Déjà au-delà de %2, avec une probabilité de %3.</translation>
    </message>
    <message>
        <source>Growth is assumed, about %1 a day. Over %2 within 60 days of the last wash with a chance of %3.</source>
        <translation>Croissance supposée, environ %1 par jour. Au-delà de %2 dans les 60 jours après le dernier lavage avec une probabilité de %3.</translation>
    </message>
    <message>
        <source>Helps later generations, not this one.</source>
        <translation>Aide les générations suivantes, pas celle-ci.</translation>
    </message>
    <message>
        <source>Honey may be taken again after: %1</source>
        <translation>Le miel peut de nouveau être récolté après : %1</translation>
    </message>
    <message>
        <source>If nothing is done: about %1 on %2 (%3).</source>
        <translation>Sans rien faire : environ %1 le %2 (%3).</translation>
    </message>
    <message>
        <source>If nothing is done: about %1 on the turn date, %2 (%3), and %4 on %5 (%6).</source>
        <translation>Sans rien faire : environ %1 à la date charnière, le %2 (%3), et %4 le %5 (%6).</translation>
    </message>
    <message>
        <source>If nothing is done: about %1 on the turn date, %2 (%3), and over what colonies survive as a rule by %5.</source>
        <translation>Sans rien faire : environ %1 à la date charnière, le %2 (%3), et au-delà de ce que des colonies supportent en règle générale d’ici le %5.</translation>
    </message>
    <message>
        <source>If nothing is done: over what colonies survive as a rule by the turn date, %2.</source>
        <translation>Sans rien faire : au-delà de ce que des colonies supportent en règle générale, d’ici la date charnière, le %2.</translation>
    </message>
    <message>
        <source>It did not reach the mark: about %1 of the mites killed (%2). The mark is %3.</source>
        <translation>Objectif non atteint : environ %1 des varroas tués (%2). L’objectif est de %3.</translation>
    </message>
    <message>
        <source>It has a screened floor already.</source>
        <translation>Elle a déjà un plancher grillagé.</translation>
    </message>
    <message>
        <source>It points to resistance: about %1 of the mites killed (%2). The mark is %3.</source>
        <translation>Signe de résistance : environ %1 des varroas tués (%2). L’objectif est de %3.</translation>
    </message>
    <message>
        <source>It worked (about %1 killed), and then the load rose faster than mites breed: it points to mites carried in.</source>
        <translation>Efficace (environ %1 tués), puis la charge a monté plus vite que les varroas ne se multiplient : signe de varroas apportés.</translation>
    </message>
    <message>
        <source>It worked: about %1 of the mites killed (%2). The mark is %3.</source>
        <translation>Efficace : environ %1 des varroas tués (%2). L’objectif est de %3.</translation>
    </message>
    <message>
        <source>It worked: no mites found after it, at least %1 killed. The mark is %2.</source>
        <translation>Efficace : aucun varroa trouvé après, au moins %1 tués. L’objectif est de %2.</translation>
    </message>
    <message>
        <source>Its shortest course ends on %1, in time for the turn date.</source>
        <translation>Le plus court finit le %1, à temps pour la date charnière.</translation>
    </message>
    <message>
        <source>Last day of: %1</source>
        <translation>Dernier jour : %1</translation>
    </message>
    <message>
        <source>Look for colonies breaking down or being robbed near by, and wash every two weeks until it stays low.</source>
        <translation>Cherchez près de là des colonies qui s’effondrent ou sont pillées, et faites un lavage toutes les deux semaines jusqu’à ce que la charge reste basse.</translation>
    </message>
    <message>
        <source>Mites that resist it: %1</source>
        <translation>Varroas résistants : %1</translation>
    </message>
    <message>
        <source>Next time take another class, so that mites do not get used to this one.</source>
        <translation>La prochaine fois, prenez une autre classe, pour que les varroas ne s’habituent pas à celle-ci.</translation>
    </message>
    <message>
        <source>No capped brood: all mites are on bees.</source>
        <translation>Pas de couvain operculé : tous les varroas sont sur les abeilles.</translation>
    </message>
    <message>
        <source>No capped brood: all mites are on bees. Killed then: %1.</source>
        <translation>Pas de couvain operculé : tous les varroas sont sur les abeilles. Tués dans ce cas : %1.</translation>
    </message>
    <message>
        <source>No colony has that many bees.</source>
        <translation>Aucune colonie n’a autant d’abeilles.</translation>
    </message>
    <message>
        <source>No drones are raised now.</source>
        <translation>Aucun mâle n’est élevé en ce moment.</translation>
    </message>
    <message>
        <source>No mites were found in the untreated colonies in one of the washes: they tell little.</source>
        <translation>Un des lavages n’a trouvé aucun varroa dans les colonies non traitées : elles apprennent peu.</translation>
    </message>
    <message>
        <source>No outlook: no published figure says how many mites this takes away.</source>
        <translation>Pas de projection : aucune valeur publiée ne dit combien de varroas cela enlève.</translation>
    </message>
    <message>
        <source>No outlook: the handbook has no figure for what %1 kills.</source>
        <translation>Pas de projection : le manuel n’a pas de valeur d’efficacité pour : %1.</translation>
    </message>
    <message>
        <source>No untreated colony to compare with: corrected by assumed growth.</source>
        <translation>Pas de colonie non traitée pour comparer : corrigé par une croissance supposée.</translation>
    </message>
    <message>
        <source>None found since: at most %1 on %2, and over %3 within 30 days with a chance of %4.</source>
        <translation>Aucun trouvé depuis : au plus %1 le %2, et au-delà de %3 d’ici 30 jours avec une probabilité de %4.</translation>
    </message>
    <message>
        <source>Not known yet: wash from %1 on, best on %2.</source>
        <translation>Pas encore connu : lavage à partir du %1, au mieux le %2.</translation>
    </message>
    <message>
        <source>Not said in mites per 100 bees: how strong the colony is was not written down lately. Tell its frames of bees, and the next board can say it.</source>
        <translation>Pas donné en varroas pour 100 abeilles : la force de la colonie n’a pas été notée récemment. Indiquez ses cadres d’abeilles, et le prochain lange pourra le dire.</translation>
    </message>
    <message>
        <source>Not said in mites per 100 bees: there was no capped brood, and the factors hold only with brood.</source>
        <translation>Pas donné en varroas pour 100 abeilles : il n’y avait pas de couvain operculé, et les facteurs ne valent qu’avec du couvain.</translation>
    </message>
    <message>
        <source>Not said in mites per 100 bees: whether there is capped brood is not written down, and the factors hold only with brood.</source>
        <translation>Pas donné en varroas pour 100 abeilles : la présence de couvain operculé n’est pas notée, et les facteurs ne valent qu’avec du couvain.</translation>
    </message>
    <message>
        <source>Not under cappings, but still there when the bees hatch.</source>
        <translation>Pas sous opercules, mais encore présent quand les abeilles éclosent.</translation>
    </message>
    <message>
        <source>Not under cappings, but the course outlasts the capped brood.</source>
        <translation>Pas sous opercules, mais le traitement dure plus longtemps que le couvain operculé.</translation>
    </message>
    <message>
        <source>Not while supers are on.</source>
        <translation>Pas tant que des hausses sont posées.</translation>
    </message>
    <message>
        <source>Not with supers on; whether they are is not written down.</source>
        <translation>Pas avec des hausses ; leur présence n’est pas notée.</translation>
    </message>
    <message>
        <source>Nothing can be foretold.</source>
        <translation>Rien ne peut être prédit.</translation>
    </message>
    <message>
        <source>Same class as last time (%1, %2).</source>
        <translation>Même classe que la dernière fois (%1, %2).</translation>
    </message>
    <message>
        <source>Same substance as last time (%1; no class number).</source>
        <translation>Même substance que la dernière fois (%1 ; sans numéro de classe).</translation>
    </message>
    <message>
        <source>Strong enough: at least about %1 bees.</source>
        <translation>Assez forte : au moins environ %1 abeilles.</translation>
    </message>
    <message>
        <source>Supers are off.</source>
        <translation>Les hausses sont retirées.</translation>
    </message>
    <message>
        <source>Supers are off; they stay off until the label allows them again.</source>
        <translation>Les hausses sont retirées ; elles le restent jusqu’à ce que l’étiquette les permette de nouveau.</translation>
    </message>
    <message>
        <source>Supers are on: only where the label allows it.</source>
        <translation>Des hausses sont posées : seulement si l’étiquette le permet.</translation>
    </message>
    <message>
        <source>Supers may be on.</source>
        <translation>Les hausses peuvent rester en place.</translation>
    </message>
    <message>
        <source>Take out: %1</source>
        <translation>À retirer : %1</translation>
    </message>
    <message>
        <source>That is too long for a forecast.</source>
        <translation>C’est trop long pour des prévisions.</translation>
    </message>
    <message>
        <source>The first %1 fit; later too cold: %2 on %3, the limit is %4.</source>
        <translation>Convient d’abord (%1) ; ensuite trop froid : %2 le %3, la limite est %4.</translation>
    </message>
    <message>
        <source>The first %1 fit; later too hot: %2 on %3, the limit is %4.</source>
        <translation>Convient d’abord (%1) ; ensuite trop chaud : %2 le %3, la limite est %4.</translation>
    </message>
    <message>
        <source>The first %1 have to be within its limits; the forecast has %2.</source>
        <translation>Au début, il faut %1 dans ses limites ; les prévisions couvrent %2.</translation>
    </message>
    <message>
        <source>The floor is solid.</source>
        <translation>Le plancher est plein.</translation>
    </message>
    <message>
        <source>The forecast highs are within its limits.</source>
        <translation>Les maximums prévus sont dans ses limites.</translation>
    </message>
    <message>
        <source>The label in your hand and your local law outrank this. Check that the product is registered where you are: this program does not know.</source>
        <translation>L’étiquette que vous avez en main et la loi de votre pays priment sur ceci. Vérifiez que le produit est autorisé chez vous : ce programme ne le sait pas.</translation>
    </message>
    <message>
        <source>The low of a day lies above its high: %1 over %2.</source>
        <translation>Le minimum d’un jour dépasse son maximum : %1 au-dessus de %2.</translation>
    </message>
    <message>
        <source>The turn date lies before the day asked for.</source>
        <translation>La date charnière est avant le jour demandé.</translation>
    </message>
    <message>
        <source>There are %1 highs and %2 lows: one of each a day is wanted.</source>
        <translation>Il y a %1 maximums et %2 minimums : il faut un de chaque par jour.</translation>
    </message>
    <message>
        <source>There is no brood already.</source>
        <translation>Il n’y a déjà pas de couvain.</translation>
    </message>
    <message>
        <source>There is no such day.</source>
        <translation>Ce jour n’existe pas.</translation>
    </message>
    <message>
        <source>Too cold: %1 on %2, the limit is %3.</source>
        <translation>Trop froid : %1 le %2, la limite est %3.</translation>
    </message>
    <message>
        <source>Too few bees: about %1, at least about %2 are wanted.</source>
        <translation>Trop peu d’abeilles : environ %1, il en faut au moins environ %2.</translation>
    </message>
    <message>
        <source>Too hot: %1 on %2, the limit is %3.</source>
        <translation>Trop chaud : %1 le %2, la limite est %3.</translation>
    </message>
    <message>
        <source>Turn date: mites low by now</source>
        <translation>Date charnière : peu de varroas dès maintenant</translation>
    </message>
    <message>
        <source>Wants at least about %1 bees; the colony's strength now is not known.</source>
        <translation>Demande au moins environ %1 abeilles ; la force actuelle de la colonie n’est pas connue.</translation>
    </message>
    <message>
        <source>Wants daily highs from %1 to %2; there is no forecast to go by.</source>
        <translation>Demande des maximums du jour de %1 à %2 ; pas de prévisions pour en juger.</translation>
    </message>
    <message>
        <source>Wants daily highs over %1; there is no forecast to go by.</source>
        <translation>Demande des maximums du jour au-dessus de %1 ; pas de prévisions pour en juger.</translation>
    </message>
    <message>
        <source>Wants daily highs under %1; there is no forecast to go by.</source>
        <translation>Demande des maximums du jour au-dessous de %1 ; pas de prévisions pour en juger.</translation>
    </message>
    <message>
        <source>Was it given as the label says, and warm or cool enough? If the load is over your line, treat again, with another substance.</source>
        <translation>A-t-il été donné comme l’étiquette le dit, et faisait-il assez chaud ou assez frais ? Si la charge dépasse votre seuil, traitez à nouveau, avec une autre substance.</translation>
    </message>
    <message>
        <source>Wash all the same after its end: what counts is the load that is left.</source>
        <translation>Faites quand même un lavage après sa fin : ce qui compte est la charge qui reste.</translation>
    </message>
    <message>
        <source>Wash now: what counts is the load that is left.</source>
        <translation>Faites un lavage maintenant : ce qui compte est la charge qui reste.</translation>
    </message>
    <message>
        <source>Wash the colonies that were washed before it, and untreated ones where there are any.</source>
        <translation>Faites un lavage pour les colonies qui en ont eu un avant, et pour des colonies non traitées s’il y en a.</translation>
    </message>
    <message>
        <source>Wash: %1</source>
        <translation>Lavage : %1</translation>
    </message>
    <message>
        <source>Wash: did it work? %1</source>
        <translation>Lavage : efficace ? %1</translation>
    </message>
    <message>
        <source>Washed in different ways before and after: the range is wider for it.</source>
        <translation>Méthodes différentes avant et après : la fourchette en est plus large.</translation>
    </message>
    <message>
        <source>Washed sooner than %1 after its end: mites under cappings are not in it yet. Wash once more.</source>
        <translation>Lavage moins de %1 après sa fin : les varroas sous opercules n’y sont pas encore. Refaites un lavage.</translation>
    </message>
    <message>
        <source>Weather: %1.</source>
        <translation>Météo : %1.</translation>
    </message>
    <message>
        <source>What counts now is the load itself: go by the last wash. Next time two jars a colony before and after tell more.</source>
        <translation>Ce qui compte maintenant est la charge elle-même : fiez-vous au dernier lavage. La prochaine fois, deux bocaux par colonie avant et après en disent plus.</translation>
    </message>
    <message>
        <source>What was given on %1 is not counted in: the handbook has no figure for what it kills.</source>
        <translation>Ce qui a été donné le %1 n’est pas compté : le manuel n’a pas de valeur pour ce que cela tue.</translation>
    </message>
    <message>
        <source>Whether there is brood now is not known.</source>
        <translation>On ne sait pas s’il y a du couvain en ce moment.</translation>
    </message>
    <message>
        <source>Which floor it has is not written down.</source>
        <translation>Le plancher qu’elle a n’est pas noté.</translation>
    </message>
    <message>
        <source>Winter bees are raised now: they would be missing.</source>
        <translation>Les abeilles d’hiver sont élevées en ce moment : elles manqueraient.</translation>
    </message>
    <message>
        <source>With it: about %1 on %2 (%3).</source>
        <translation>Avec ce choix : environ %1 le %2 (%3).</translation>
    </message>
    <message>
        <source>With it: about %1 on the turn date, %2 (%3), and %4 on %5 (%6).</source>
        <translation>Avec ce choix : environ %1 à la date charnière, le %2 (%3), et %4 le %5 (%6).</translation>
    </message>
    <message>
        <source>With it: about %1 on the turn date, %2 (%3), but over what colonies survive as a rule by %5.</source>
        <translation>Avec ce choix : environ %1 à la date charnière, le %2 (%3), mais au-delà de ce que des colonies supportent en règle générale d’ici le %5.</translation>
    </message>
    <message>
        <source>With supers on only where the label allows it.</source>
        <translation>Avec des hausses, seulement si l’étiquette le permet.</translation>
    </message>
    <message>
        <source>Works best from %1 to %2; %3 on %4.</source>
        <translation>Agit le mieux de %1 à %2 ; %3 le %4.</translation>
    </message>
    <message>
        <source>did the treatment work?</source>
        <translation>le traitement a-t-il été efficace ?</translation>
    </message>
    <message>
        <source>first wash of the year</source>
        <translation>premier lavage de l’année</translation>
    </message>
    <message>
        <source>monthly wash</source>
        <translation>lavage mensuel</translation>
    </message>
    <message>
        <source>wash again, the last could not tell</source>
        <translation>lavage à refaire, le dernier ne tranchait pas</translation>
    </message>
    <message>
        <source>wash before the turn date</source>
        <translation>lavage avant la date charnière</translation>
    </message>
</context>
<context>
    <name>PictureWords</name>
    <message>
        <source>Can't tell yet</source>
        <translation>On ne sait pas encore</translation>
    </message>
    <message>
        <source>Close to your line</source>
        <translation>Près de votre seuil</translation>
    </message>
    <message>
        <source>Over your line</source>
        <translation>Au-delà de votre seuil</translation>
    </message>
    <message>
        <source>Under your line</source>
        <translation>Sous votre seuil</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <comment>date format without year, as in 18 May</comment>
        <translation>d MMMM</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>moins de %1</translation>
    </message>
</context>
<context>
    <name>PlanDone</name>
    <message>
        <source>Look at what changed</source>
        <translation>Voir ce qui a changé</translation>
    </message>
</context>
<context>
    <name>PlanPage</name>
    <message>
        <source>%1 is large. This takes a moment.</source>
        <translation>%1 est volumineux. Cela prend un moment.</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Laisser</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Annuler l’import</translation>
    </message>
    <message>
        <source>Take it back?</source>
        <translation>Annuler l’import ?</translation>
    </message>
</context>
<context>
    <name>PlanWords</name>
    <message>
        <source>%1 cannot be read: it is a folder, this user may not read it, or its storage fails. Nothing was changed.</source>
        <translation>Impossible de lire %1 : c’est un dossier, cet utilisateur n’a pas le droit de le lire, ou son stockage est en panne. Rien n’a été modifié.</translation>
    </message>
    <message>
        <source>%1 is empty. Ask for it again. Nothing was changed.</source>
        <translation>%1 est vide. Redemandez-le. Rien n’a été modifié.</translation>
    </message>
    <message>
        <source>%1 is larger than any file of Halfcup. It was not read, and nothing was changed.</source>
        <translation>%1 est plus grand que tout fichier de Halfcup. Il n’a pas été lu, et rien n’a été modifié.</translation>
    </message>
    <message>
        <source>%1 is not a file that Halfcup wrote for another phone. Nothing was changed.</source>
        <translation>%1 n’est pas un fichier que Halfcup a écrit pour un autre téléphone. Rien n’a été modifié.</translation>
    </message>
    <message>
        <source>%1 is not there any more. Nothing was changed.</source>
        <translation>%1 n’est plus là. Rien n’a été modifié.</translation>
    </message>
    <message>
        <source>%1 was written for a newer Halfcup. Update this phone, then take it in. Nothing was changed.</source>
        <translation>%1 a été écrit pour un Halfcup plus récent. Mettez à jour ce téléphone, puis importez-le. Rien n’a été modifié.</translation>
    </message>
    <message>
        <source>%1, colony %2</source>
        <comment>what it is, of which colony</comment>
        <translation>%1, colonie %2</translation>
    </message>
    <message>
        <source>%1: yours %2, theirs %3.</source>
        <comment>a field and its values</comment>
        <translation>%1 : ici %2, là-bas %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n colony(ies)</source>
        <translation>
            <numerusform>%n colonie</numerusform>
            <numerusform>%n colonies</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n counted scoop(s)</source>
        <translation>
            <numerusform>%n mesure comptée</numerusform>
            <numerusform>%n mesures comptées</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n event(s)</source>
        <translation>
            <numerusform>%n événement</numerusform>
            <numerusform>%n événements</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more are not listed one by one.</source>
        <translation>
            <numerusform>%n autre n’est pas détaillé.</numerusform>
            <numerusform>%n autres ne sont pas détaillés.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more line(s) are damaged and were left out.</source>
        <translation>
            <numerusform>%n autre ligne est endommagée et a été omise.</numerusform>
            <numerusform>%n autres lignes sont endommagées et ont été omises.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) new or changed. Nothing of yours is lost.</source>
        <translation>
            <numerusform>%n donnée nouvelle ou modifiée. Rien de ce que vous avez n’est perdu.</numerusform>
            <numerusform>%n données nouvelles ou modifiées. Rien de ce que vous avez n’est perdu.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) of a kind that this version does not know: a newer Halfcup wrote them. They are kept and passed on.</source>
        <translation>
            <numerusform>%n donnée d’un genre que cette version ne connaît pas : un Halfcup plus récent l’a écrite. Elle est gardée et transmise.</numerusform>
            <numerusform>%n données d’un genre que cette version ne connaît pas : un Halfcup plus récent les a écrites. Elles sont gardées et transmises.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) wait for what they belong to. They show as soon as a file brings it.</source>
        <translation>
            <numerusform>%n donnée attend ce dont elle dépend. Elle s’affiche dès qu’un fichier l’apporte.</numerusform>
            <numerusform>%n données attendent ce dont elles dépendent. Elles s’affichent dès qu’un fichier l’apporte.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n treated colony(ies)</source>
        <translation>
            <numerusform>%n colonie traitée</numerusform>
            <numerusform>%n colonies traitées</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n treatment(s)</source>
        <translation>
            <numerusform>%n traitement</numerusform>
            <numerusform>%n traitements</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es)</source>
        <translation>
            <numerusform>%n lavage</numerusform>
            <numerusform>%n lavages</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n yard round(s)</source>
        <translation>
            <numerusform>%n tournée du rucher</numerusform>
            <numerusform>%n tournées du rucher</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n yard(s)</source>
        <translation>
            <numerusform>%n rucher</numerusform>
            <numerusform>%n ruchers</numerusform>
        </translation>
    </message>
    <message>
        <source>, </source>
        <comment>between the parts of a line</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>A colony</source>
        <translation>Une colonie</translation>
    </message>
    <message>
        <source>A counted scoop</source>
        <translation>Une mesure comptée</translation>
    </message>
    <message>
        <source>A treatment</source>
        <translation>Un traitement</translation>
    </message>
    <message>
        <source>A treatment given</source>
        <translation>Un traitement donné</translation>
    </message>
    <message>
        <source>A wash</source>
        <translation>Un lavage</translation>
    </message>
    <message>
        <source>A yard</source>
        <translation>Un rucher</translation>
    </message>
    <message>
        <source>A yard round</source>
        <translation>Une tournée du rucher</translation>
    </message>
    <message>
        <source>An event</source>
        <translation>Un événement</translation>
    </message>
    <message>
        <source>Changed on both phones</source>
        <translation>Modifié sur les deux téléphones</translation>
    </message>
    <message>
        <source>Changed there</source>
        <translation>Modifié là-bas</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Colonie %1</translation>
    </message>
    <message>
        <source>Known here already</source>
        <translation>Déjà connu ici</translation>
    </message>
    <message>
        <source>Line %1 brings more of one record than any has and was left out.</source>
        <translation>La ligne %1 apporte plus pour une donnée qu’aucune n’en a et a été omise.</translation>
    </message>
    <message>
        <source>Line %1 calls a record by another kind than it has here and was left out.</source>
        <translation>La ligne %1 donne à une donnée un autre genre que celui qu’elle a ici et a été omise.</translation>
    </message>
    <message>
        <source>Line %1 has a count that cannot be and was left out.</source>
        <translation>La ligne %1 a un comptage impossible et a été omise.</translation>
    </message>
    <message>
        <source>Line %1 has a time that cannot be and was left out.</source>
        <translation>La ligne %1 a une heure impossible et a été omise.</translation>
    </message>
    <message>
        <source>Line %1 has a value that cannot be (%2) and was left out.</source>
        <translation>La ligne %1 a une valeur impossible (%2) et a été omise.</translation>
    </message>
    <message>
        <source>Line %1 has an id that is none and was left out.</source>
        <translation>La ligne %1 a un identifiant qui n’en est pas un et a été omise.</translation>
    </message>
    <message>
        <source>Line %1 is damaged and was left out.</source>
        <translation>La ligne %1 est endommagée et a été omise.</translation>
    </message>
    <message>
        <source>Line %1 is nested too deep and was left out.</source>
        <translation>La ligne %1 a trop de niveaux imbriqués et a été omise.</translation>
    </message>
    <message>
        <source>Line %1 is too long and was left out.</source>
        <translation>La ligne %1 est trop longue et a été omise.</translation>
    </message>
    <message>
        <source>Lines are missing from the middle of the file.</source>
        <translation>Des lignes manquent au milieu du fichier.</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Nouveau</translation>
    </message>
    <message>
        <source>Nothing in it is new: all of it is here already.</source>
        <translation>Il n’y a rien de nouveau : tout est déjà ici.</translation>
    </message>
    <message>
        <source>Removed there</source>
        <translation>Supprimé là-bas</translation>
    </message>
    <message>
        <source>Some of the file is for a newer Halfcup alone and was passed over.</source>
        <translation>Une partie du fichier est réservée à un Halfcup plus récent et a été sautée.</translation>
    </message>
    <message>
        <source>The file was cut: its end is missing.</source>
        <translation>Le fichier est coupé : la fin manque.</translation>
    </message>
    <message>
        <source>The later value counts. The other one stays in the record's history.</source>
        <translation>La valeur la plus récente compte. L’autre reste dans l’historique de la donnée.</translation>
    </message>
    <message>
        <source>Theirs is the later one and is kept: %1.</source>
        <translation>L’autre valeur est la plus récente et est gardée : %1.</translation>
    </message>
    <message>
        <source>They leave the lists here too. The history keeps them.</source>
        <translation>Cela quitte les listes ici aussi. L’historique le garde.</translation>
    </message>
    <message>
        <source>Treatment: %1</source>
        <translation>Traitement : %1</translation>
    </message>
    <message>
        <source>What is whole can be taken in now. Ask for the file again: the good copy completes it.</source>
        <translation>Ce qui est entier peut être importé maintenant. Redemandez le fichier : la bonne copie le complétera.</translation>
    </message>
    <message>
        <source>Which phone wrote it, and when, is not readable.</source>
        <translation>Quel téléphone l’a écrit, et quand, n’est pas lisible.</translation>
    </message>
    <message>
        <source>Written by %1 on %2 at %3, by its clock.</source>
        <comment>a phone, a day, a time</comment>
        <translation>Écrit par : %1, le %2 à %3, selon son horloge.</translation>
    </message>
    <message>
        <source>Written by %1.</source>
        <translation>Écrit par : %1.</translation>
    </message>
    <message>
        <source>Yard %1</source>
        <translation>Rucher %1</translation>
    </message>
    <message>
        <source>Yours is the later one and stays: %1.</source>
        <translation>Votre valeur est la plus récente et reste : %1.</translation>
    </message>
    <message numerus="yes">
        <source>and %n other field(s)</source>
        <translation>
            <numerusform>et %n autre champ</numerusform>
            <numerusform>et %n autres champs</numerusform>
        </translation>
    </message>
    <message>
        <source>phone %1</source>
        <comment>by its mark</comment>
        <translation>téléphone %1</translation>
    </message>
    <message>
        <source>this phone</source>
        <translation>ce téléphone</translation>
    </message>
    <message>
        <source>waits for its colony</source>
        <translation>attend sa colonie</translation>
    </message>
</context>
<context>
    <name>PositionWords</name>
    <message>
        <source>Looking for the position</source>
        <translation>Recherche de la position</translation>
    </message>
    <message>
        <source>No position yet. The wash goes on without.</source>
        <translation>Pas encore de position. Le lavage continue sans elle.</translation>
    </message>
    <message>
        <source>No position: it is not allowed on this phone. The wash goes on without.</source>
        <translation>Pas de position : elle n’est pas autorisée sur ce téléphone. Le lavage continue sans elle.</translation>
    </message>
    <message>
        <source>No position: no fix came in time. The wash goes on without.</source>
        <translation>Pas de position : aucun relevé à temps. Le lavage continue sans elle.</translation>
    </message>
    <message>
        <source>No position: this phone has no receiver. The wash goes on without.</source>
        <translation>Pas de position : ce téléphone n’a pas de récepteur. Le lavage continue sans elle.</translation>
    </message>
    <message>
        <source>Position within %1 so far</source>
        <translation>Position à %1 près pour l’instant</translation>
    </message>
    <message>
        <source>Position within %1, but it moved: check that you stood still.</source>
        <translation>Position à %1 près, mais elle a bougé : vérifiez que vous êtes resté immobile.</translation>
    </message>
    <message numerus="yes">
        <source>Position within %1, from %n fix(es)</source>
        <translation>
            <numerusform>Position à %1 près, d’après %n relevé</numerusform>
            <numerusform>Position à %1 près, d’après %n relevés</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PourStep</name>
    <message>
        <source>Back into the tray</source>
        <translation>Retour au casier</translation>
    </message>
    <message>
        <source>Wash it later</source>
        <translation>Lavage plus tard</translation>
    </message>
</context>
<context>
    <name>PullBoardStep</name>
    <message>
        <source>Hours under the colony</source>
        <translation>Heures sous la colonie</translation>
    </message>
    <message>
        <source>Type the hours</source>
        <translation>Saisir les heures</translation>
    </message>
</context>
<context>
    <name>Record</name>
    <message>
        <source>Write down the first day.</source>
        <translation>Notez le premier jour.</translation>
    </message>
    <message>
        <source>Write down the last day; for what is given once it is the first.</source>
        <translation>Notez le dernier jour ; pour ce qui se donne en une fois, c’est le premier.</translation>
    </message>
</context>
<context>
    <name>Report</name>
    <message>
        <source>%1 (%2) mites a day</source>
        <translation>%1 (%2) varroas par jour</translation>
    </message>
    <message>
        <source>%1 (%2) of 100 drone cells</source>
        <translation>%1 (%2) cellules de mâles sur 100</translation>
    </message>
    <message>
        <source>%1 (dead, %2)</source>
        <comment>colony, day</comment>
        <translation>%1 (morte, %2)</translation>
    </message>
    <message>
        <source>%1 (invented)</source>
        <translation>%1 (inventé)</translation>
    </message>
    <message>
        <source>%1 (put into another, %2)</source>
        <comment>colony, day</comment>
        <translation>%1 (réunie à une autre, %2)</translation>
    </message>
    <message>
        <source>%1 days; honey from %2</source>
        <translation>%1 jours ; miel à partir du %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a range</comment>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1 to %2: %3</source>
        <comment>first and last day, the product</comment>
        <translation>%1 au %2 : %3</translation>
    </message>
    <message>
        <source>%1, %2 to %3 of %4</source>
        <comment>a list, part of it</comment>
        <translation>%1, %2 à %3 sur %4</translation>
    </message>
    <message>
        <source>%1. %2 (%3)</source>
        <comment>title, source, how well it is known</comment>
        <translation>%1. %2 (%3)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>the day, the product</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>yard or colony, period</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>standing, colonies</comment>
        <translation>%1 : %2.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n colony(ies).</source>
        <comment>standing</comment>
        <translation>
            <numerusform>%1 : %n colonie.</numerusform>
            <numerusform>%1 : %n colonies.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: held against the lines as counted.</source>
        <translation>%1 : comparé aux seuils tel que compté.</translation>
    </message>
    <message>
        <source>%1: taken to find %2 of what an alcohol wash finds; allowed for in the load.</source>
        <translation>%1 : on admet que cette méthode trouve %2 de ce que trouve un lavage à l’alcool ; la charge en tient compte.</translation>
    </message>
    <message>
        <source>%1: the last wash of each colony, mites per 100 bees with the 90 % range</source>
        <comment>yard</comment>
        <translation>%1 : le dernier lavage de chaque colonie, varroas pour 100 abeilles avec la fourchette à 90 %</translation>
    </message>
    <message>
        <source>%1: the last wash of each colony, mites per 100 bees with the 90 % range. Colonies %2 to %3 of %4, the highest loads first</source>
        <comment>yard</comment>
        <translation>%1 : le dernier lavage de chaque colonie, varroas pour 100 abeilles avec la fourchette à 90 %. Colonies %2 à %3 sur %4, les charges les plus fortes d’abord</translation>
    </message>
    <message>
        <source>%1: twelve months from %2</source>
        <comment>yard, day</comment>
        <translation>%1 : douze mois à partir du %2</translation>
    </message>
    <message>
        <source>%1: where the hives stand, north up</source>
        <comment>yard</comment>
        <translation>%1 : où sont les ruches, le nord en haut</translation>
    </message>
    <message numerus="yes">
        <source>%n mite(s) found: %1 per 100 bees. %2</source>
        <comment>load and range; the comb in words</comment>
        <translation>
            <numerusform>%n varroa trouvé : %1 pour 100 abeilles. %2</numerusform>
            <numerusform>%n varroas trouvés : %1 pour 100 abeilles. %2</numerusform>
        </translation>
    </message>
    <message>
        <source>; </source>
        <comment>between labels</comment>
        <translation>; </translation>
    </message>
    <message>
        <source>Above each: its first and last day, and the product as named on its label.</source>
        <translation>Au-dessus de chacun : le premier et le dernier jour, et le produit tel que nommé sur son étiquette.</translation>
    </message>
    <message>
        <source>All yards</source>
        <translation>Tous les ruchers</translation>
    </message>
    <message>
        <source>At the last wash</source>
        <translation>Au dernier lavage</translation>
    </message>
    <message>
        <source>At their last washes</source>
        <translation>À leurs derniers lavages</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Lot</translation>
    </message>
    <message>
        <source>Bees</source>
        <translation>Abeilles</translation>
    </message>
    <message>
        <source>Bees in half a cup, where they were not counted: %1.</source>
        <translation>Abeilles dans une demi-tasse, là où elles n’ont pas été comptées : %1.</translation>
    </message>
    <message>
        <source>Boards and drone brood</source>
        <translation>Langes et couvain de mâles</translation>
    </message>
    <message>
        <source>Chance over the line</source>
        <translation>Probabilité au-delà</translation>
    </message>
    <message>
        <source>Colonies kept</source>
        <translation>Colonies détenues</translation>
    </message>
    <message>
        <source>Colonies treated</source>
        <translation>Colonies traitées</translation>
    </message>
    <message>
        <source>Colony</source>
        <translation>Colonie</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Colonie %1</translation>
    </message>
    <message>
        <source>Colony %1, %2</source>
        <comment>label, yard</comment>
        <translation>Colonie %1, %2</translation>
    </message>
    <message>
        <source>DEMO: holds invented data</source>
        <translation>DÉMO : contient des données inventées</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Difference between jars of one colony, the reason why the range is wide: %1.</source>
        <translation>Différence entre bocaux d’une même colonie, raison de la largeur de la fourchette : %1.</translation>
    </message>
    <message>
        <source>Done by</source>
        <translation>Fait par</translation>
    </message>
    <message>
        <source>Expiry</source>
        <translation>Péremption</translation>
    </message>
    <message>
        <source>Figure (90 % range)</source>
        <translation>Valeur (fourchette à 90 %)</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Premier</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Trouvé</translation>
    </message>
    <message>
        <source>How it was counted, and sources</source>
        <translation>Méthodes de comptage et sources</translation>
    </message>
    <message>
        <source>Last</source>
        <translation>Dernier</translation>
    </message>
    <message>
        <source>Last wash</source>
        <translation>Dernier lavage</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Seuil</translation>
    </message>
    <message>
        <source>Line, same unit</source>
        <translation>Seuil, même unité</translation>
    </message>
    <message>
        <source>Lines that held</source>
        <translation>Seuils appliqués</translation>
    </message>
    <message>
        <source>Load over time</source>
        <translation>Charge au fil du temps</translation>
    </message>
    <message>
        <source>Load over time, colony by colony</source>
        <translation>Charge au fil du temps, colonie par colonie</translation>
    </message>
    <message>
        <source>Load per 100 bees (90 % range)</source>
        <translation>Charge pour 100 abeilles (fourchette à 90 %)</translation>
    </message>
    <message>
        <source>Load: mites per 100 adult bees as a wash finds them, first rinse, nothing added for mites a wash misses. The range holds the true load of the colony's adult bees in about nine of ten washes. "Over your line": the figure is at the line or over it, or the chance is above 50 %; "close": 20 to 50 %; "under": below 20 %; "can't tell yet": too few bees, or too wide a range. None found is not none there.</source>
        <translation>Charge : varroas pour 100 abeilles adultes tels qu’un lavage les trouve, premier rinçage, rien d’ajouté pour les varroas qu’un lavage manque. La fourchette contient la vraie charge des abeilles adultes de la colonie dans environ neuf lavages sur dix. « Au-delà de votre seuil » : la valeur atteint ou dépasse le seuil, ou la probabilité est supérieure à 50 % ; « près » : de 20 à 50 % ; « sous » : moins de 20 % ; « on ne sait pas encore » : trop peu d’abeilles, ou fourchette trop large. Aucun trouvé ne veut pas dire aucun présent.</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Méthode</translation>
    </message>
    <message>
        <source>Mite washes</source>
        <translation>Lavages</translation>
    </message>
    <message>
        <source>Mites</source>
        <translation>Varroas</translation>
    </message>
    <message>
        <source>Mites per 100 bees</source>
        <translation>Varroas pour 100 abeilles</translation>
    </message>
    <message>
        <source>Mites per 100 bees, with the 90 % range of each wash</source>
        <translation>Varroas pour 100 abeilles, avec la fourchette à 90 % de chaque lavage</translation>
    </message>
    <message>
        <source>No colony was washed in this period.</source>
        <translation>Aucun lavage pendant cette période.</translation>
    </message>
    <message>
        <source>No longer kept</source>
        <translation>N’existent plus</translation>
    </message>
    <message>
        <source>No treatment was written down for this period.</source>
        <translation>Aucun traitement noté pour cette période.</translation>
    </message>
    <message>
        <source>Not washed</source>
        <translation>Pas lavées</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>Nothing else was written down for this period.</source>
        <translation>Rien d’autre n’a été noté pour cette période.</translation>
    </message>
    <message>
        <source>Of the %1 colonies that were washed, the %2 with the highest loads at their last wash. All washes are in the table.</source>
        <translation>Des %1 colonies lavées, les %2 dont la charge était la plus forte au dernier lavage. Tous les lavages sont dans le tableau.</translation>
    </message>
    <message>
        <source>Period</source>
        <translation>Période</translation>
    </message>
    <message>
        <source>Position (WGS 84)</source>
        <translation>Position (WGS 84)</translation>
    </message>
    <message>
        <source>Prescribed by</source>
        <translation>Prescrit par</translation>
    </message>
    <message>
        <source>Proof of purchase</source>
        <translation>Preuve d’achat</translation>
    </message>
    <message>
        <source>Quantity, all colonies</source>
        <translation>Quantité, toutes colonies</translation>
    </message>
    <message>
        <source>Registration number</source>
        <translation>Numéro d’enregistrement</translation>
    </message>
    <message>
        <source>Substance or measure</source>
        <translation>Substance ou mesure</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Fournisseur</translation>
    </message>
    <message>
        <source>Taken out of the hive</source>
        <translation>Retiré de la ruche</translation>
    </message>
    <message>
        <source>The last wash</source>
        <translation>Le dernier lavage</translation>
    </message>
    <message>
        <source>The last wash as a comb of a hundred cells, %1</source>
        <translation>Le dernier lavage comme un rayon de cent cellules, %1</translation>
    </message>
    <message>
        <source>The last wash of each colony</source>
        <translation>Le dernier lavage de chaque colonie</translation>
    </message>
    <message>
        <source>The yard in pictures</source>
        <translation>Le rucher en images</translation>
    </message>
    <message>
        <source>The yards in pictures</source>
        <translation>Les ruchers en images</translation>
    </message>
    <message>
        <source>There is no yard.</source>
        <translation>Il n’y a pas de rucher.</translation>
    </message>
    <message>
        <source>These are no loads: they are in terms of their own.</source>
        <translation>Ce ne sont pas des charges : ils ont leurs propres unités.</translation>
    </message>
    <message>
        <source>These are the keeper's own records, as they were typed. The label of the product, the law where the hives stand, and the vet or inspector outrank anything said here. A withdrawal that is not written down is not one of no days.</source>
        <translation>Ce sont les données de l’apiculteur lui-même, telles que saisies. L’étiquette du produit, la loi du lieu où sont les ruches, et le vétérinaire ou l’inspecteur priment sur tout ce qui est dit ici. Un temps d’attente non noté n’est pas un temps d’attente nul.</translation>
    </message>
    <message>
        <source>Treatments</source>
        <translation>Traitements</translation>
    </message>
    <message>
        <source>Varroa record</source>
        <translation>Registre varroa</translation>
    </message>
    <message>
        <source>Varroa record. %1. Written on %2 with Halfcup.</source>
        <translation>Registre varroa. %1. Écrit le %2 avec Halfcup.</translation>
    </message>
    <message>
        <source>Washes</source>
        <translation>Lavages</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Ce qui s’est passé</translation>
    </message>
    <message>
        <source>What is to be written down in the European Union: %1. Other countries ask for other things.</source>
        <translation>Ce qui doit être noté dans l’Union européenne : %1. D’autres pays demandent autre chose.</translation>
    </message>
    <message>
        <source>What it means</source>
        <translation>Verdict</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation>D’où cela vient</translation>
    </message>
    <message>
        <source>Withdrawal</source>
        <translation>Temps d’attente</translation>
    </message>
    <message>
        <source>Yard</source>
        <translation>Rucher</translation>
    </message>
    <message>
        <source>Yard %1</source>
        <translation>Rucher %1</translation>
    </message>
    <message>
        <source>Yard %1 (invented)</source>
        <translation>Rucher %1 (inventé)</translation>
    </message>
    <message>
        <source>due on %1; not written down as taken out</source>
        <translation>à retirer le %1 ; retrait non noté</translation>
    </message>
    <message>
        <source>latitude %1, longitude %2</source>
        <translation>latitude %1, longitude %2</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucune</translation>
    </message>
    <message>
        <source>not washed</source>
        <comment>a colony, in this period</comment>
        <translation>pas lavée</translation>
    </message>
    <message>
        <source>not written down</source>
        <translation>non noté</translation>
    </message>
    <message>
        <source>not written down; that is not none</source>
        <translation>non noté ; cela ne veut pas dire aucun</translation>
    </message>
    <message>
        <source>nothing stays in the hive</source>
        <translation>rien ne reste dans la ruche</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>page %1 sur %2</translation>
    </message>
    <message>
        <source>taken out on %1</source>
        <translation>retiré le %1</translation>
    </message>
    <message>
        <source>typed by the keeper</source>
        <translation>saisi par l’apiculteur</translation>
    </message>
</context>
<context>
    <name>ReportChoices</name>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Report of</source>
        <translation>Rapport sur</translation>
    </message>
    <message>
        <source>Years</source>
        <translation>Années</translation>
    </message>
</context>
<context>
    <name>ReportText</name>
    <message>
        <source>%1 (demo)</source>
        <comment>an invented colony</comment>
        <translation>%1 (démo)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation>%1 au %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>colony, yard</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>all records until %1</source>
        <translation>toutes les données jusqu’au %1</translation>
    </message>
    <message>
        <source>none</source>
        <translation>néant</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>a colony</comment>
        <translation>inconnue</translation>
    </message>
</context>
<context>
    <name>ReportWords</name>
    <message>
        <source>%1 %</source>
        <comment>a chance</comment>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>a load, its range</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 frames of bees</source>
        <translation>%1 cadres d’abeilles</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a range of loads</comment>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>what happened, a note</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1; own %2</source>
        <comment>treat line, own line</comment>
        <translation>%1 ; propre %2</translation>
    </message>
    <message>
        <source>1 frame of bees</source>
        <translation>1 cadre d’abeilles</translation>
    </message>
    <message>
        <source>Brood seen: %1</source>
        <translation>Couvain observé : %1</translation>
    </message>
    <message>
        <source>Can't tell yet</source>
        <translation>On ne sait pas encore</translation>
    </message>
    <message>
        <source>Close to your line</source>
        <translation>Près de votre seuil</translation>
    </message>
    <message>
        <source>Dead</source>
        <translation>Morte</translation>
    </message>
    <message>
        <source>Moved</source>
        <translation>Déplacée</translation>
    </message>
    <message>
        <source>Moved to %1</source>
        <translation>Déplacée vers : %1</translation>
    </message>
    <message>
        <source>New queen</source>
        <translation>Nouvelle reine</translation>
    </message>
    <message>
        <source>No answer</source>
        <translation>Pas de réponse</translation>
    </message>
    <message>
        <source>Over your line</source>
        <translation>Au-delà de votre seuil</translation>
    </message>
    <message>
        <source>Put into another colony</source>
        <translation>Réunie à une autre colonie</translation>
    </message>
    <message>
        <source>Put into colony %1; this one ends</source>
        <translation>Réunie à la colonie %1 ; celle-ci prend fin</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>Division</translation>
    </message>
    <message>
        <source>Split: colony %1 was made from it</source>
        <translation>Division : la colonie %1 en est issue</translation>
    </message>
    <message>
        <source>Stands on: %1</source>
        <translation>Posée sur : %1</translation>
    </message>
    <message>
        <source>Strength: %1</source>
        <translation>Force : %1</translation>
    </message>
    <message>
        <source>Supers off</source>
        <translation>Hausses retirées</translation>
    </message>
    <message>
        <source>Supers on</source>
        <translation>Hausses posées</translation>
    </message>
    <message>
        <source>Swarmed</source>
        <translation>Essaimage</translation>
    </message>
    <message>
        <source>Under your line</source>
        <translation>Sous votre seuil</translation>
    </message>
    <message>
        <source>brood not known</source>
        <translation>couvain inconnu</translation>
    </message>
    <message>
        <source>capped brood</source>
        <translation>couvain operculé</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>pratique courante</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>calculé</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <comment>date format, as in 18 May 2026</comment>
        <translation>d MMM yyyy</translation>
    </message>
    <message>
        <source>floor not known</source>
        <translation>plancher inconnu</translation>
    </message>
    <message>
        <source>no brood</source>
        <translation>pas de couvain</translation>
    </message>
    <message>
        <source>open brood only</source>
        <translation>couvain ouvert seulement</translation>
    </message>
    <message>
        <source>over 99 %</source>
        <comment>a chance</comment>
        <translation>plus de 99 %</translation>
    </message>
    <message>
        <source>own choice of this program</source>
        <translation>choix propre à ce programme</translation>
    </message>
    <message>
        <source>published</source>
        <translation>publié</translation>
    </message>
    <message>
        <source>published, not read again</source>
        <translation>publié, non relu</translation>
    </message>
    <message>
        <source>quoted in a second source</source>
        <translation>cité dans une seconde source</translation>
    </message>
    <message>
        <source>screened floor</source>
        <translation>plancher grillagé</translation>
    </message>
    <message>
        <source>solid floor</source>
        <translation>plancher plein</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>moins de %1</translation>
    </message>
    <message>
        <source>under 1 %</source>
        <comment>a chance</comment>
        <translation>moins de 1 %</translation>
    </message>
</context>
<context>
    <name>Restoring</name>
    <message>
        <source>%1 What was kept before is safe as %2, in the list of backups.</source>
        <comment>sentence, file</comment>
        <translation>%1 Ce qui était gardé avant est en sécurité sous le nom %2, dans la liste des sauvegardes.</translation>
    </message>
    <message>
        <source>%1 cannot be read: this user has no permission.</source>
        <translation>Impossible de lire %1 : cet utilisateur n’en a pas le droit.</translation>
    </message>
    <message>
        <source>%1 holds the records that are open now.</source>
        <translation>%1 contient les données ouvertes en ce moment.</translation>
    </message>
    <message>
        <source>%1 is a folder, not a backup.</source>
        <translation>%1 est un dossier, pas une sauvegarde.</translation>
    </message>
    <message>
        <source>%1 is damaged: it is not as it was written. Take another copy of it, or an earlier backup.</source>
        <translation>%1 est endommagé : ce n’est plus ce qui avait été écrit. Prenez-en une autre copie, ou une sauvegarde plus ancienne.</translation>
    </message>
    <message>
        <source>%1 is empty. Take another copy of it, if there is one.</source>
        <translation>%1 est vide. Prenez-en une autre copie, s’il y en a une.</translation>
    </message>
    <message>
        <source>%1 is no backup of Halfcup.</source>
        <translation>%1 n’est pas une sauvegarde de Halfcup.</translation>
    </message>
    <message>
        <source>%1 is no longer there.</source>
        <translation>%1 n’est plus là.</translation>
    </message>
    <message numerus="yes">
        <source>%1 was put back: %n wash(es) are in your records now.</source>
        <translation>
            <numerusform>%1 a été restauré : %n lavage est dans vos données à présent.</numerusform>
            <numerusform>%1 a été restauré : %n lavages sont dans vos données à présent.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 was written by a newer Halfcup. Install the newer version, then put it back.</source>
        <translation>%1 a été écrit par un Halfcup plus récent. Installez la version plus récente, puis restaurez la sauvegarde.</translation>
    </message>
    <message>
        <source>The backup was not put back, and your records are as they were. %1</source>
        <comment>why</comment>
        <translation>La sauvegarde n’a pas été restaurée, et vos données sont telles qu’avant. %1</translation>
    </message>
    <message>
        <source>The end of %1 is missing: it was not copied in full, or is still being copied. Copy it again.</source>
        <translation>La fin de %1 manque : la copie n’est pas complète, ou est encore en cours. Copiez à nouveau le fichier.</translation>
    </message>
    <message>
        <source>What is kept now could not be copied aside first.</source>
        <translation>Ce qui est gardé à présent n’a pas pu être d’abord mis de côté.</translation>
    </message>
</context>
<context>
    <name>RoundGoing</name>
    <message>
        <source>End the round</source>
        <translation>Finir la tournée</translation>
    </message>
    <message>
        <source>Still to wash, in this order</source>
        <translation>Lavages restants, dans cet ordre</translation>
    </message>
</context>
<context>
    <name>RoundPage</name>
    <message>
        <source>End the round</source>
        <translation>Finir la tournée</translation>
    </message>
    <message>
        <source>End the round?</source>
        <translation>Finir la tournée ?</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuer</translation>
    </message>
    <message>
        <source>The answer is not clear yet. What is washed stays; the yard's figure will have a wide range.</source>
        <translation>La réponse n’est pas encore claire. Les lavages faits restent ; la valeur du rucher aura une fourchette large.</translation>
    </message>
    <message>
        <source>Yard round</source>
        <translation>Tournée</translation>
    </message>
</context>
<context>
    <name>RoundPlan</name>
    <message>
        <source>Earlier rounds</source>
        <translation>Tournées passées</translation>
    </message>
    <message>
        <source>How many?</source>
        <translation>Combien ?</translation>
    </message>
</context>
<context>
    <name>RoundWashed</name>
    <message>
        <source>Washed</source>
        <translation>Lavages faits</translation>
    </message>
</context>
<context>
    <name>SafetyStep</name>
    <message>
        <source>Queen not seen</source>
        <translation>Reine non vue</translation>
    </message>
    <message>
        <source>Queen seen and safe</source>
        <translation>Reine vue, en sécurité</translation>
    </message>
</context>
<context>
    <name>SamePage</name>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Leave them as one</source>
        <translation>Les laisser réunis</translation>
    </message>
    <message>
        <source>Made on two phones, and joined. Touch one to separate it again.</source>
        <translation>Créés sur deux téléphones, puis fusionnés. Touchez-en un pour le séparer à nouveau.</translation>
    </message>
    <message>
        <source>No, two</source>
        <translation>Non, deux</translation>
    </message>
    <message>
        <source>Separate again</source>
        <translation>Séparer à nouveau</translation>
    </message>
    <message>
        <source>Separate again?</source>
        <translation>Séparer à nouveau ?</translation>
    </message>
    <message>
        <source>Shown as one</source>
        <translation>Affichés en un seul</translation>
    </message>
    <message>
        <source>There is nothing to ask about.</source>
        <translation>Il n’y a rien à demander.</translation>
    </message>
    <message>
        <source>Where they are one, it shows the washes, treatments and notes of both. They can be separated again.</source>
        <translation>S’ils ne font qu’un, celui-ci montre les lavages, traitements et remarques des deux. On peut les séparer à nouveau.</translation>
    </message>
    <message>
        <source>Yes, the same</source>
        <translation>Oui, fusionner</translation>
    </message>
</context>
<context>
    <name>ScoopEdit</name>
    <message>
        <source>How the bees lie</source>
        <translation>Les abeilles y sont</translation>
    </message>
    <message>
        <source>Loose</source>
        <translation>Non tassées</translation>
    </message>
    <message>
        <source>Rapped to settle</source>
        <translation>Tassées</translation>
    </message>
    <message>
        <source>The scoop</source>
        <translation>La mesure</translation>
    </message>
    <message>
        <source>Type millilitres</source>
        <translation>Saisir les ml</translation>
    </message>
    <message>
        <source>Type the bees</source>
        <translation>Saisir les abeilles</translation>
    </message>
    <message>
        <source>Use this scoop</source>
        <translation>Utiliser cette mesure</translation>
    </message>
    <message>
        <source>as they were scooped</source>
        <translation>comme elles ont été prélevées</translation>
    </message>
    <message>
        <source>struck on the palm until they lie close</source>
        <translation>mesure frappée sur la paume jusqu’à ce qu’elles soient serrées</translation>
    </message>
</context>
<context>
    <name>ScoopStep</name>
    <message>
        <source>Bees in this jar</source>
        <translation>Abeilles dans ce bocal</translation>
    </message>
    <message>
        <source>Change the scoop</source>
        <translation>Changer la mesure</translation>
    </message>
    <message>
        <source>Scoop in millilitres</source>
        <translation>Mesure en millilitres</translation>
    </message>
    <message>
        <source>Scooped</source>
        <translation>Prélevé</translation>
    </message>
    <message>
        <source>Where this comes from</source>
        <translation>D’où cela vient</translation>
    </message>
    <message>
        <source>time and place are kept now</source>
        <translation>l’heure et le lieu sont notés maintenant</translation>
    </message>
</context>
<context>
    <name>ScrollHint</name>
    <message>
        <source>↑ more above</source>
        <translation>↑ suite en haut</translation>
    </message>
    <message>
        <source>↓ more below</source>
        <translation>↓ suite en bas</translation>
    </message>
</context>
<context>
    <name>SeasonPage</name>
    <message>
        <source>Keep them safe</source>
        <translation>Les sauvegarder</translation>
    </message>
    <message>
        <source>Nothing is due in the year ahead. Make a yard and its colonies first.</source>
        <translation>Rien à faire dans l’année qui vient. Créez d’abord un rucher et ses colonies.</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Partager</translation>
    </message>
    <message>
        <source>Write the calendar</source>
        <translation>Écrire le calendrier</translation>
    </message>
    <message>
        <source>iCalendar, with alarms</source>
        <translation>iCalendar, avec rappels</translation>
    </message>
</context>
<context>
    <name>SeasonStripWords</name>
    <message>
        <source>Brood</source>
        <translation>Couvain</translation>
    </message>
    <message>
        <source>Capped brood from %1 to %2.</source>
        <translation>Couvain operculé du %1 au %2.</translation>
    </message>
    <message>
        <source>Capped brood seen</source>
        <translation>Couvain operculé vu</translation>
    </message>
    <message>
        <source>No capped brood from %1 to %2.</source>
        <translation>Pas de couvain operculé du %1 au %2.</translation>
    </message>
    <message>
        <source>No capped brood seen</source>
        <translation>Pas de couvain operculé</translation>
    </message>
    <message>
        <source>Nothing is recorded yet.</source>
        <translation>Rien n’est encore noté.</translation>
    </message>
    <message>
        <source>Supers</source>
        <translation>Hausses</translation>
    </message>
    <message>
        <source>Supers on from %1 to %2.</source>
        <translation>Hausses posées du %1 au %2.</translation>
    </message>
    <message>
        <source>Supers on, for the nectar flow</source>
        <translation>Hausses posées, pour la miellée</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Aujourd’hui</translation>
    </message>
    <message>
        <source>Today is %1.</source>
        <comment>day</comment>
        <translation>Nous sommes le %1.</translation>
    </message>
    <message>
        <source>Treated</source>
        <translation>Traité</translation>
    </message>
    <message>
        <source>Treated from %1 to %2.</source>
        <translation>Traité du %1 au %2.</translation>
    </message>
    <message>
        <source>Treatment, from its first to its last day</source>
        <translation>Traitement, du premier au dernier jour</translation>
    </message>
    <message>
        <source>Turn date %1.</source>
        <comment>day</comment>
        <translation>Date charnière %1.</translation>
    </message>
    <message>
        <source>Turn date: mites must be low by then</source>
        <translation>Date charnière : d’ici là, il faut peu de varroas</translation>
    </message>
    <message>
        <source>Twelve months from %1 %2.</source>
        <comment>month, year</comment>
        <translation>Douze mois à partir de %1 %2.</translation>
    </message>
    <message>
        <source>Wash due</source>
        <translation>Lavage à faire</translation>
    </message>
    <message>
        <source>Washed</source>
        <translation>Lavage fait</translation>
    </message>
    <message numerus="yes">
        <source>Washed on %n day(s).</source>
        <translation>
            <numerusform>Lavages sur %n jour.</numerusform>
            <numerusform>Lavages sur %n jours.</numerusform>
        </translation>
    </message>
    <message>
        <source>Washes</source>
        <translation>Lavages</translation>
    </message>
    <message numerus="yes">
        <source>Washes due on %n day(s).</source>
        <translation>
            <numerusform>Lavages à faire sur %n jour.</numerusform>
            <numerusform>Lavages à faire sur %n jours.</numerusform>
        </translation>
    </message>
    <message>
        <source>today</source>
        <translation>aujourd’hui</translation>
    </message>
    <message>
        <source>turn date %1</source>
        <comment>day</comment>
        <translation>date charnière %1</translation>
    </message>
</context>
<context>
    <name>SecondRinseStep</name>
    <message>
        <source>Count a second rinse</source>
        <translation>Compter un second rinçage</translation>
    </message>
    <message>
        <source>Count the second rinse</source>
        <translation>Compter le second rinçage</translation>
    </message>
    <message>
        <source>Go on counting</source>
        <translation>Continuer à compter</translation>
    </message>
    <message>
        <source>It shows how many mites the first rinse left on the bees. You need it now and then, not at every wash.</source>
        <translation>Il montre combien de varroas le premier rinçage a laissés sur les abeilles. Il est utile de temps en temps, pas à chaque lavage.</translation>
    </message>
    <message>
        <source>None found</source>
        <translation>Aucun trouvé</translation>
    </message>
    <message>
        <source>Not rinsed</source>
        <translation>Non rincé</translation>
    </message>
    <message>
        <source>Nothing in the second rinse?</source>
        <translation>Rien au second rinçage ?</translation>
    </message>
    <message>
        <source>Show the answer</source>
        <translation>Voir la réponse</translation>
    </message>
    <message>
        <source>Then it is kept as a second rinse with 0 mites.</source>
        <translation>Il est alors enregistré comme second rinçage avec 0 varroa.</translation>
    </message>
    <message>
        <source>without a second rinse</source>
        <translation>sans second rinçage</translation>
    </message>
</context>
<context>
    <name>SetupPage</name>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>Dusk</source>
        <translation>Pénombre</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
    <message>
        <source>Large</source>
        <translation>Grand</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Plus grand</translation>
    </message>
    <message>
        <source>Larger still</source>
        <translation>Plus grand encore</translation>
    </message>
    <message>
        <source>Left hand</source>
        <translation>Main gauche</translation>
    </message>
    <message>
        <source>Lengths and temperatures</source>
        <translation>Longueurs et températures</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Lumière</translation>
    </message>
    <message>
        <source>Longer</source>
        <translation>Plus long</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Coupés</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Activés</translation>
    </message>
    <message>
        <source>Phone held in</source>
        <translation>Main du téléphone</translation>
    </message>
    <message>
        <source>Right hand</source>
        <translation>Main droite</translation>
    </message>
    <message>
        <source>Setup</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>Shorter</source>
        <translation>Moins long</translation>
    </message>
    <message>
        <source>Size of letters: %1</source>
        <translation>Taille des lettres : %1</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Plus petit</translation>
    </message>
    <message>
        <source>Sounds of the timer</source>
        <translation>Sons du minuteur</translation>
    </message>
    <message>
        <source>Time to shake: %1</source>
        <translation>Durée d’agitation : %1</translation>
    </message>
    <message>
        <source>Voice: half time, ten seconds, every fifth mite</source>
        <translation>Voix : mi-temps, dix secondes, un varroa sur cinq</translation>
    </message>
    <message>
        <source>What you touch</source>
        <translation>Touches et boutons</translation>
    </message>
    <message>
        <source>Where the figures come from</source>
        <translation>D’où viennent les valeurs</translation>
    </message>
    <message>
        <source>Your counted scoops</source>
        <translation>Vos mesures comptées</translation>
    </message>
    <message>
        <source>Your usual scoop</source>
        <translation>Votre mesure habituelle</translation>
    </message>
    <message>
        <source>Your usual way to count</source>
        <translation>Votre méthode habituelle</translation>
    </message>
    <message>
        <source>ft, °F</source>
        <translation>ft, °F</translation>
    </message>
    <message>
        <source>m, °C</source>
        <translation>m, °C</translation>
    </message>
</context>
<context>
    <name>SetupSource</name>
    <message>
        <source>Source of positions</source>
        <translation>Source des positions</translation>
    </message>
    <message>
        <source>Use this source</source>
        <translation>Utiliser cette source</translation>
    </message>
</context>
<context>
    <name>ShakeStep</name>
    <message>
        <source>Go on</source>
        <translation>Continuer</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Sound is off</source>
        <translation>Son coupé</translation>
    </message>
    <message>
        <source>Sound is on</source>
        <translation>Son activé</translation>
    </message>
</context>
<context>
    <name>SharePage</name>
    <message>
        <source>A table of earlier washes</source>
        <translation>Tableau de lavages antérieurs</translation>
    </message>
    <message>
        <source>Exchange folder</source>
        <translation>Dossier d’échange</translation>
    </message>
    <message>
        <source>For people</source>
        <translation>Documents</translation>
    </message>
    <message>
        <source>Keep safe</source>
        <translation>Sauvegarde</translation>
    </message>
    <message>
        <source>Last taken in</source>
        <translation>Dernier import</translation>
    </message>
    <message>
        <source>Load the demo</source>
        <translation>Charger la démo</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Partager</translation>
    </message>
    <message>
        <source>Show it in its folder</source>
        <translation>Montrer dans son dossier</translation>
    </message>
    <message>
        <source>Take in a file</source>
        <translation>Importer un fichier</translation>
    </message>
    <message>
        <source>Write everything for another phone</source>
        <translation>Tout écrire pour un autre téléphone</translation>
    </message>
    <message>
        <source>from another phone; you see first what it brings</source>
        <translation>d’un autre téléphone ; vous voyez d’abord ce qu’il apporte</translation>
    </message>
    <message>
        <source>tables, a map, a calendar, a report</source>
        <translation>tableaux, carte, calendrier, rapport</translation>
    </message>
    <message>
        <source>take it in from a spreadsheet</source>
        <translation>l’importer depuis un tableur</translation>
    </message>
    <message>
        <source>two invented yards to try things on</source>
        <translation>deux ruchers inventés pour essayer</translation>
    </message>
    <message>
        <source>whoever gets it knows where your hives stand</source>
        <translation>qui le reçoit sait où sont vos ruches</translation>
    </message>
</context>
<context>
    <name>SituationHive</name>
    <message>
        <source>Brood</source>
        <translation>Couvain</translation>
    </message>
    <message>
        <source>Floor</source>
        <translation>Plancher</translation>
    </message>
    <message>
        <source>Frames covered with bees</source>
        <translation>Cadres couverts d’abeilles</translation>
    </message>
    <message>
        <source>Supers</source>
        <translation>Hausses</translation>
    </message>
</context>
<context>
    <name>SituationPage</name>
    <message>
        <source>Daily highs</source>
        <translation>Maximums du jour</translation>
    </message>
    <message>
        <source>Forecast in</source>
        <translation>Prévisions en</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Dès le</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Nightly lows</source>
        <translation>Minimums nocturnes</translation>
    </message>
    <message>
        <source>One for each high, or none.</source>
        <translation>Un pour chaque maximum, ou aucun.</translation>
    </message>
    <message>
        <source>What is so now</source>
        <translation>La situation actuelle</translation>
    </message>
    <message>
        <source>and see what fits</source>
        <translation>et voir ce qui convient</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
</context>
<context>
    <name>SlopesWords</name>
    <message>
        <source>%1: %2</source>
        <comment>label of a colony, load</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>Colony %1, not treated: %2 mites per 100 bees before, %3 after.</source>
        <translation>Colonie %1, non traitée : %2 varroas pour 100 abeilles avant, %3 après.</translation>
    </message>
    <message>
        <source>Colony %1: %2 mites per 100 bees before, %3 after.</source>
        <translation>Colonie %1 : %2 varroas pour 100 abeilles avant, %3 après.</translation>
    </message>
    <message>
        <source>High loads are drawn closer together.</source>
        <translation>Les charges hautes sont plus serrées.</translation>
    </message>
    <message>
        <source>No colony was washed both before and after it.</source>
        <translation>Aucune colonie n’a de lavage avant et après.</translation>
    </message>
    <message>
        <source>None found</source>
        <translation>Aucun trouvé</translation>
    </message>
    <message>
        <source>Range in 9 of 10 cases</source>
        <translation>Marge dans 9 cas sur 10</translation>
    </message>
    <message>
        <source>Treat line</source>
        <translation>Seuil de traitement</translation>
    </message>
    <message>
        <source>Treated colony</source>
        <translation>Colonie traitée</translation>
    </message>
    <message>
        <source>Untreated colony</source>
        <translation>Colonie non traitée</translation>
    </message>
    <message>
        <source>after</source>
        <translation>après</translation>
    </message>
    <message>
        <source>before</source>
        <translation>avant</translation>
    </message>
    <message>
        <source>treat line %1</source>
        <translation>seuil %1</translation>
    </message>
</context>
<context>
    <name>SourceSetting</name>
    <message>
        <source>The position source "%1" cannot be used: %2 It can be "default", "none", "nmea:file:PATH", "nmea:tcp://HOST:PORT", "nmea:serial:/dev/NAME" or "gpsd://HOST:PORT".</source>
        <translation>La source de positions « %1 » est inutilisable : %2 Possibles : « default », « none », « nmea:file:PATH », « nmea:tcp://HOST:PORT », « nmea:serial:/dev/NAME » ou « gpsd://HOST:PORT ».</translation>
    </message>
    <message>
        <source>it is not one of the known forms.</source>
        <translation>ce n’est aucune des formes connues.</translation>
    </message>
    <message>
        <source>it needs a host and a port between 1 and 65535.</source>
        <translation>il faut un hôte et un port entre 1 et 65535.</translation>
    </message>
    <message>
        <source>it needs a host, and a port between 1 and 65535 if any.</source>
        <translation>il faut un hôte et, s’il y en a un, un port entre 1 et 65535.</translation>
    </message>
    <message>
        <source>the name of the file is missing.</source>
        <translation>le nom du fichier manque.</translation>
    </message>
    <message>
        <source>the name of the serial line is missing.</source>
        <translation>le nom de la liaison série manque.</translation>
    </message>
    <message>
        <source>the speed behind "baud=" is no number of bits a second.</source>
        <translation>la vitesse après « baud= » n’est pas un nombre de bits par seconde.</translation>
    </message>
</context>
<context>
    <name>SourcesPage</name>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>More</source>
        <translation>En savoir plus</translation>
    </message>
    <message>
        <source>Where this comes from</source>
        <translation>D’où cela vient</translation>
    </message>
</context>
<context>
    <name>Story</name>
    <message>
        <source>%1 (%2)</source>
        <comment>product, active substance</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 frames of bees</source>
        <translation>%1 cadres d’abeilles</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>brood and day</comment>
        <translation>%1 le %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>first and last day</comment>
        <translation>%1 au %2</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between parts of a state</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>1 frame of bees</source>
        <translation>1 cadre d’abeilles</translation>
    </message>
    <message>
        <source>Brood seen</source>
        <translation>Couvain observé</translation>
    </message>
    <message>
        <source>Brood seen: %1</source>
        <translation>Couvain observé : %1</translation>
    </message>
    <message>
        <source>Colony %1 was put into this one</source>
        <translation>La colonie %1 a été réunie à celle-ci</translation>
    </message>
    <message>
        <source>Dead</source>
        <translation>Morte</translation>
    </message>
    <message>
        <source>Floor</source>
        <translation>Plancher</translation>
    </message>
    <message>
        <source>Honey may be taken from %1.</source>
        <translation>Le miel peut être récolté à partir du %1.</translation>
    </message>
    <message>
        <source>Merged into another</source>
        <translation>Réunie à une autre</translation>
    </message>
    <message>
        <source>Moved</source>
        <translation>Déplacée</translation>
    </message>
    <message>
        <source>Moved to %1</source>
        <translation>Déplacée vers : %1</translation>
    </message>
    <message>
        <source>New queen</source>
        <translation>Nouvelle reine</translation>
    </message>
    <message>
        <source>New queen: %1</source>
        <translation>Nouvelle reine : %1</translation>
    </message>
    <message>
        <source>No treatment in the records holds the honey.</source>
        <translation>Aucun traitement noté ne retient le miel.</translation>
    </message>
    <message>
        <source>Not before %1, and perhaps later: the withdrawal of a treatment is not written down. The label says it.</source>
        <translation>Pas avant le %1, et peut-être plus tard : le temps d’attente d’un traitement n’est pas noté. L’étiquette le dit.</translation>
    </message>
    <message>
        <source>Not known: the withdrawal of an earlier treatment is not written down. The label says it.</source>
        <translation>Inconnu : le temps d’attente d’un traitement antérieur n’est pas noté. L’étiquette le dit.</translation>
    </message>
    <message>
        <source>Nothing is written down of its state yet.</source>
        <translation>Rien n’est encore noté sur son état.</translation>
    </message>
    <message>
        <source>Put into colony %1; this one ends</source>
        <translation>Réunie à la colonie %1 ; celle-ci prend fin</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>Division</translation>
    </message>
    <message>
        <source>Split: colony %1 was made from it</source>
        <translation>Division : la colonie %1 en est issue</translation>
    </message>
    <message>
        <source>Stands on: %1</source>
        <translation>Posée sur : %1</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Force</translation>
    </message>
    <message>
        <source>Strength: %1</source>
        <translation>Force : %1</translation>
    </message>
    <message>
        <source>Supers off</source>
        <translation>Hausses retirées</translation>
    </message>
    <message>
        <source>Supers on</source>
        <translation>Hausses posées</translation>
    </message>
    <message>
        <source>Swarmed</source>
        <translation>Essaimage</translation>
    </message>
    <message>
        <source>another yard</source>
        <translation>un autre rucher</translation>
    </message>
    <message>
        <source>begins on %1</source>
        <translation>commence le %1</translation>
    </message>
    <message>
        <source>brood not known</source>
        <translation>couvain inconnu</translation>
    </message>
    <message>
        <source>capped brood</source>
        <translation>couvain operculé</translation>
    </message>
    <message>
        <source>dead since %1</source>
        <translation>morte depuis le %1</translation>
    </message>
    <message>
        <source>floor not known</source>
        <translation>plancher inconnu</translation>
    </message>
    <message>
        <source>honey from %1</source>
        <translation>miel à partir du %1</translation>
    </message>
    <message>
        <source>no brood</source>
        <translation>pas de couvain</translation>
    </message>
    <message>
        <source>open brood only</source>
        <translation>couvain ouvert seulement</translation>
    </message>
    <message>
        <source>over</source>
        <translation>terminé</translation>
    </message>
    <message>
        <source>put into another colony on %1</source>
        <translation>réunie à une autre colonie le %1</translation>
    </message>
    <message>
        <source>queen: %1</source>
        <translation>reine : %1</translation>
    </message>
    <message>
        <source>running</source>
        <translation>en cours</translation>
    </message>
    <message>
        <source>screened floor</source>
        <translation>plancher grillagé</translation>
    </message>
    <message>
        <source>solid floor</source>
        <translation>plancher plein</translation>
    </message>
    <message>
        <source>supers off since %1</source>
        <translation>hausses retirées depuis le %1</translation>
    </message>
    <message>
        <source>supers on since %1</source>
        <translation>hausses posées depuis le %1</translation>
    </message>
    <message>
        <source>withdrawal not written down</source>
        <translation>temps d’attente non noté</translation>
    </message>
</context>
<context>
    <name>StoryEntries</name>
    <message>
        <source>%1 per 100, %2</source>
        <comment>a load and its range</comment>
        <translation>%1 pour 100, %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>date, method</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>does it run, when honey may be taken</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, batch %2</source>
        <comment>course, batch</comment>
        <translation>%1, lot %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>method, figure</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1; the handbook's line is %2</source>
        <comment>range, line</comment>
        <translation>%1 ; le seuil du manuel est %2</translation>
    </message>
    <message>
        <source>Abandoned</source>
        <translation>Abandonné</translation>
    </message>
    <message>
        <source>Not finished</source>
        <translation>Pas terminé</translation>
    </message>
    <message>
        <source>This date is still to come: the phone's clock was wrong, then or now. Until then nothing is reckoned from it.</source>
        <translation>Cette date est encore à venir : l’horloge du téléphone était fausse, alors ou maintenant. D’ici là, rien n’est calculé à partir d’elle.</translation>
    </message>
    <message>
        <source>left at: %1</source>
        <translation>arrêté à : %1</translation>
    </message>
    <message>
        <source>waits at: %1</source>
        <translation>attend : %1</translation>
    </message>
</context>
<context>
    <name>Table</name>
    <message>
        <source>"%1" can be read in two ways. Which comes first, the day or the month?</source>
        <translation>« %1 » se lit de deux façons. Qu’est-ce qui vient d’abord, le jour ou le mois ?</translation>
    </message>
    <message>
        <source>"%1" is not a day.</source>
        <translation>« %1 » n’est pas un jour.</translation>
    </message>
    <message>
        <source>"%1" is not a time of day.</source>
        <translation>« %1 » n’est pas une heure.</translation>
    </message>
    <message>
        <source>%1 "%2" is not a number.</source>
        <translation>%1 « %2 » : ce n’est pas un nombre.</translation>
    </message>
    <message>
        <source>%1 "%2" is not a whole number.</source>
        <translation>%1 « %2 » : ce n’est pas un nombre entier.</translation>
    </message>
    <message>
        <source>%1 "%2" is too large: at most %3.</source>
        <translation>%1 « %2 » : trop grand ; au plus %3.</translation>
    </message>
    <message>
        <source>%1 "%2" is too small: at least %3.</source>
        <translation>%1 « %2 » : trop petit ; au moins %3.</translation>
    </message>
    <message>
        <source>%1 "%2" may be a thousand times more or not: write it without a mark.</source>
        <translation>%1 « %2 » : peut-être mille fois plus, peut-être pas ; écrivez-le sans séparateur.</translation>
    </message>
    <message>
        <source>%1 is no file.</source>
        <translation>%1 n’est pas un fichier.</translation>
    </message>
    <message>
        <source>%1 is not there any more.</source>
        <translation>%1 n’est plus là.</translation>
    </message>
    <message>
        <source>%1 may not be read.</source>
        <translation>%1 ne peut pas être lu.</translation>
    </message>
    <message>
        <source>%1 mites on %2 bees: are the two swapped?</source>
        <translation>%1 varroas sur %2 abeilles : les deux sont-ils inversés ?</translation>
    </message>
    <message>
        <source>%1 per 100 of %2 bees are %3 mites, which is no whole number: give the mites.</source>
        <translation>%1 pour 100 sur %2 abeilles font %3 varroas, ce qui n’est pas un nombre entier : indiquez les varroas.</translation>
    </message>
    <message>
        <source>Bees are taken from the scoop, as they fell in, by the book.</source>
        <translation>Les abeilles sont tirées de la mesure, non tassées, selon le manuel.</translation>
    </message>
    <message>
        <source>Bees washed</source>
        <translation>Abeilles lavées</translation>
    </message>
    <message>
        <source>Colony</source>
        <translation>Colonie</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Id of the wash</source>
        <translation>Identifiant du lavage</translation>
    </message>
    <message>
        <source>Invented (demo)</source>
        <translation>Inventé (démo)</translation>
    </message>
    <message>
        <source>Line %1 has a zero byte, which no text has. This is not a table, or it is damaged.</source>
        <translation>La ligne %1 contient un octet nul, ce qu’aucun texte ne contient. Ce n’est pas un tableau, ou il est endommagé.</translation>
    </message>
    <message>
        <source>Line %1, which has to name the columns, cannot be read: there is a quotation mark too many or too few.</source>
        <translation>La ligne %1, qui doit nommer les colonnes, est illisible : il y a un guillemet de trop ou de moins.</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Méthode</translation>
    </message>
    <message>
        <source>Mites counted</source>
        <translation>Varroas comptés</translation>
    </message>
    <message>
        <source>Mites of a second rinse</source>
        <translation>Varroas d’un second rinçage</translation>
    </message>
    <message>
        <source>Mites per 100 bees</source>
        <translation>Varroas pour 100 abeilles</translation>
    </message>
    <message>
        <source>Mites per 100 bees say how many were counted only beside the number of bees. Which column holds the bees?</source>
        <translation>Les varroas pour 100 abeilles ne disent combien ont été comptés qu’avec le nombre d’abeilles. Quelle colonne contient les abeilles ?</translation>
    </message>
    <message>
        <source>No column holds the bees: each wash is taken as half a cup, by the book.</source>
        <translation>Aucune colonne ne contient les abeilles : chaque lavage est compté comme une demi-tasse, selon le manuel.</translation>
    </message>
    <message>
        <source>No column names the method: all are taken as alcohol washes.</source>
        <translation>Aucune colonne ne nomme la méthode : tous sont pris pour des lavages à l’alcool.</translation>
    </message>
    <message>
        <source>No column names the yard. In which yard were these washes?</source>
        <translation>Aucune colonne ne nomme le rucher. Dans quel rucher ces lavages ont-ils été faits ?</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>Scoop in cups</source>
        <translation>Mesure en tasses</translation>
    </message>
    <message>
        <source>Scoop in ml</source>
        <translation>Mesure en ml</translation>
    </message>
    <message>
        <source>Some days are written day first, others month first ("%1"). Which is right? The others will be refused.</source>
        <translation>Certains jours sont écrits jour d’abord, d’autres mois d’abord (« %1 »). Lequel est juste ? Les autres seront refusés.</translation>
    </message>
    <message>
        <source>Spread of the bees</source>
        <translation>Dispersion des abeilles</translation>
    </message>
    <message>
        <source>The file is larger than 64 MB. Cut it into several.</source>
        <translation>Le fichier dépasse 64 Mo. Découpez-le en plusieurs.</translation>
    </message>
    <message>
        <source>The file is not written in UTF-8: it is read as Windows-1252. Look whether letters with accents are right.</source>
        <translation>Le fichier n’est pas écrit en UTF-8 : il est lu comme du Windows-1252. Vérifiez que les lettres accentuées sont justes.</translation>
    </message>
    <message>
        <source>The first row has a day in it, not names. Put a row above it that names the columns: day, colony, mites.</source>
        <translation>La première ligne contient un jour, pas des noms. Mettez au-dessus une ligne qui nomme les colonnes : jour, colonie, varroas.</translation>
    </message>
    <message>
        <source>The name of the yard is longer than 60 letters.</source>
        <translation>Le nom du rucher dépasse 60 lettres.</translation>
    </message>
    <message>
        <source>The table has %1 columns. So many belong to something else than washes; %2 is the most.</source>
        <translation>Le tableau a %1 colonnes. Un tel nombre ne vient pas de lavages ; %2 au plus.</translation>
    </message>
    <message>
        <source>The table has more than 100,000 rows. Cut it into several.</source>
        <translation>Le tableau dépasse 100 000 lignes. Découpez-le en plusieurs.</translation>
    </message>
    <message>
        <source>There is nothing in this file.</source>
        <translation>Il n’y a rien dans ce fichier.</translation>
    </message>
    <message>
        <source>This app wrote this table. To bring records to another phone, an exchange file is better: it keeps the place, the shake and each touch of the count.</source>
        <translation>Cette appli a écrit ce tableau. Pour porter des données vers un autre téléphone, un fichier d’échange est préférable : il garde le lieu, l’agitation et chaque appui du comptage.</translation>
    </message>
    <message>
        <source>This is a spreadsheet's own file. Save it there as CSV (text), and take that file.</source>
        <translation>C’est le format propre d’un tableur. Enregistrez-le depuis le tableur en CSV (texte), et prenez ce fichier.</translation>
    </message>
    <message>
        <source>Time of day</source>
        <translation>Heure</translation>
    </message>
    <message>
        <source>Where no time of day is given, it is noon. The table says no time zone: day and clock are kept as they are written.</source>
        <translation>Si aucune heure n’est donnée, c’est midi. Le tableau n’indique pas de fuseau horaire : jour et heure sont gardés tels qu’écrits.</translation>
    </message>
    <message>
        <source>Which column holds the day?</source>
        <translation>Quelle colonne contient le jour ?</translation>
    </message>
    <message>
        <source>Which column holds the mites?</source>
        <translation>Quelle colonne contient les varroas ?</translation>
    </message>
    <message>
        <source>Which column names the colony?</source>
        <translation>Quelle colonne nomme la colonie ?</translation>
    </message>
    <message>
        <source>Yard</source>
        <translation>Rucher</translation>
    </message>
    <message>
        <source>a quotation mark is opened and not closed.</source>
        <translation>un guillemet est ouvert et n’est pas fermé.</translation>
    </message>
    <message>
        <source>a sticky board or drone brood gives no load: only washes and rolls are taken in.</source>
        <translation>un lange ou du couvain de mâles ne donne pas de charge : seuls les lavages et les tests au sucre sont importés.</translation>
    </message>
    <message>
        <source>a wash of this colony with the same count on this day is here already.</source>
        <translation>un lavage de cette colonie avec le même compte ce jour-là est déjà ici.</translation>
    </message>
    <message>
        <source>cell %1 is longer than a million letters.</source>
        <translation>la cellule %1 dépasse un million de lettres.</translation>
    </message>
    <message>
        <source>it is marked as invented (demo).</source>
        <translation>il est marqué comme inventé (démo).</translation>
    </message>
    <message>
        <source>mites per 100 bees say how many were counted only beside the number of bees.</source>
        <translation>les varroas pour 100 abeilles ne disent combien ont été comptés qu’avec le nombre d’abeilles.</translation>
    </message>
    <message>
        <source>no bees are given: taken as half a cup.</source>
        <translation>pas de nombre d’abeilles : compté comme une demi-tasse.</translation>
    </message>
    <message>
        <source>no count of mites is given.</source>
        <translation>aucun compte de varroas n’est indiqué.</translation>
    </message>
    <message>
        <source>no method is given: taken as an alcohol wash.</source>
        <translation>aucune méthode indiquée : prise pour un lavage à l’alcool.</translation>
    </message>
    <message>
        <source>so many mites are in no jar: at most 10000.</source>
        <translation>aucun bocal ne contient autant de varroas : au plus 10000.</translation>
    </message>
    <message>
        <source>the day %1 is before %2.</source>
        <translation>le jour %1 est avant le %2.</translation>
    </message>
    <message>
        <source>the day %1 is still to come.</source>
        <translation>le jour %1 est encore à venir.</translation>
    </message>
    <message>
        <source>the label of the colony is longer than 60 letters.</source>
        <translation>le nom de la colonie dépasse 60 lettres.</translation>
    </message>
    <message>
        <source>the method "%1" is not known here: alcohol wash, soapy wash or sugar roll.</source>
        <translation>la méthode « %1 » n’est pas connue ici : lavage à l’alcool, lavage à l’eau savonneuse ou test au sucre glace.</translation>
    </message>
    <message>
        <source>the name of the yard is longer than 60 letters.</source>
        <translation>le nom du rucher dépasse 60 lettres.</translation>
    </message>
    <message>
        <source>the note is longer than 2,000 letters: the rest of it is left off.</source>
        <translation>la remarque dépasse 2000 lettres : la suite est coupée.</translation>
    </message>
    <message>
        <source>the row of names has %2 cells, this one %1.</source>
        <translation>la ligne des noms a %2 cellules, celle-ci %1.</translation>
    </message>
    <message>
        <source>the same as a row above: a second jar, or written twice?</source>
        <translation>la même chose qu’une ligne plus haut : un second bocal, ou noté deux fois ?</translation>
    </message>
    <message>
        <source>there is a quotation mark inside a cell that does not begin with one.</source>
        <translation>il y a un guillemet à l’intérieur d’une cellule qui ne commence pas par un guillemet.</translation>
    </message>
    <message>
        <source>there is no colony.</source>
        <translation>il n’y a pas de colonie.</translation>
    </message>
    <message>
        <source>there is no day.</source>
        <translation>il n’y a pas de jour.</translation>
    </message>
    <message>
        <source>there is no yard.</source>
        <translation>il n’y a pas de rucher.</translation>
    </message>
    <message>
        <source>there is text behind a closed quotation mark.</source>
        <translation>il y a du texte après un guillemet fermant.</translation>
    </message>
    <message>
        <source>this wash stands in the table already.</source>
        <translation>ce lavage est déjà dans le tableau.</translation>
    </message>
    <message>
        <source>two colonies here are both called "%1": rename one first.</source>
        <translation>deux colonies s’appellent ici « %1 » : renommez-en d’abord une.</translation>
    </message>
    <message>
        <source>two yards here are both called "%1": rename one first.</source>
        <translation>deux ruchers s’appellent ici « %1 » : renommez-en d’abord un.</translation>
    </message>
</context>
<context>
    <name>TrayPage</name>
    <message>
        <source>A jar comes here when you scoop now and wash later: after the scoop, touch Wash it later.</source>
        <translation>Un bocal arrive ici quand vous prélevez maintenant et faites le lavage plus tard : après le prélèvement, touchez « Lavage plus tard ».</translation>
    </message>
</context>
<context>
    <name>TrayWords</name>
    <message>
        <source>%1, %2</source>
        <comment>jars, boards</comment>
        <translation>%1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%n board(s) lie</source>
        <translation>
            <numerusform>%n lange en place</numerusform>
            <numerusform>%n langes en place</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n jar(s) wait</source>
        <translation>
            <numerusform>%n bocal attend</numerusform>
            <numerusform>%n bocaux attendent</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Treat</name>
    <message>
        <source>%1 (%2)</source>
        <comment>source and how well it is known</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n colony(ies)</source>
        <translation>
            <numerusform>%1, %n colonie</numerusform>
            <numerusform>%1, %n colonies</numerusform>
        </translation>
    </message>
    <message>
        <source>Colony %1, %2</source>
        <comment>colony, yard</comment>
        <translation>Colonie %1, %2</translation>
    </message>
    <message>
        <source>From %1: %2, %3, %4</source>
        <comment>day, supers, brood, forecast</comment>
        <translation>À partir du %1 : %2, %3, %4</translation>
    </message>
    <message>
        <source>brood not known</source>
        <translation>couvain non noté</translation>
    </message>
    <message>
        <source>capped brood</source>
        <translation>couvain operculé</translation>
    </message>
    <message>
        <source>highs from %1 to %2</source>
        <translation>maximums de %1 à %2</translation>
    </message>
    <message>
        <source>no brood</source>
        <translation>pas de couvain</translation>
    </message>
    <message>
        <source>no forecast yet</source>
        <translation>pas encore de prévisions</translation>
    </message>
    <message>
        <source>open brood only</source>
        <translation>couvain ouvert seulement</translation>
    </message>
    <message>
        <source>supers not known</source>
        <translation>hausses non notées</translation>
    </message>
    <message>
        <source>supers off</source>
        <translation>hausses retirées</translation>
    </message>
    <message>
        <source>supers on</source>
        <translation>hausses posées</translation>
    </message>
</context>
<context>
    <name>TreatPage</name>
    <message>
        <source>What is so now</source>
        <translation>La situation actuelle</translation>
    </message>
    <message>
        <source>What to treat with</source>
        <translation>Avec quoi traiter</translation>
    </message>
    <message>
        <source>Whole yard</source>
        <translation>Tout le rucher</translation>
    </message>
    <message>
        <source>type the forecast; supers, brood</source>
        <translation>saisir les prévisions ; hausses, couvain</translation>
    </message>
    <message>
        <source>weather, supers, brood</source>
        <translation>météo, hausses, couvain</translation>
    </message>
</context>
<context>
    <name>TreatmentColonies</name>
    <message>
        <source>All of them</source>
        <translation>Toutes</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>Which colonies get it?</source>
        <translation>Quelles colonies le reçoivent ?</translation>
    </message>
</context>
<context>
    <name>TreatmentForm</name>
    <message>
        <source>Active substance</source>
        <translation>Substance active</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Lot</translation>
    </message>
    <message>
        <source>Done by</source>
        <translation>Fait par</translation>
    </message>
    <message>
        <source>Expiry of the product</source>
        <translation>Péremption du produit</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Premier jour</translation>
    </message>
    <message>
        <source>From the label; 0 where it says none.</source>
        <translation>Selon l’étiquette ; 0 si elle indique zéro jour.</translation>
    </message>
    <message>
        <source>It cannot be taken out before the first day.</source>
        <translation>Il ne peut pas être retiré avant le premier jour.</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Dernier jour</translation>
    </message>
    <message>
        <source>Leave it empty where nothing stays in the hive.</source>
        <translation>Laissez vide si rien ne reste dans la ruche.</translation>
    </message>
    <message>
        <source>More for the record</source>
        <translation>Compléter la fiche</translation>
    </message>
    <message>
        <source>No active substance is named.</source>
        <translation>Aucune substance active n’est indiquée.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>One of the days does not exist.</source>
        <translation>Un des jours n’existe pas.</translation>
    </message>
    <message>
        <source>Pick the colonies that get it.</source>
        <translation>Choisissez les colonies qui le reçoivent.</translation>
    </message>
    <message>
        <source>Prescribed by</source>
        <translation>Prescrit par</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produit</translation>
    </message>
    <message>
        <source>Proof of purchase</source>
        <translation>Preuve d’achat</translation>
    </message>
    <message>
        <source>Quantity, all colonies together</source>
        <translation>Quantité, toutes colonies ensemble</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Fournisseur</translation>
    </message>
    <message>
        <source>Taken out on</source>
        <translation>Retiré le</translation>
    </message>
    <message numerus="yes">
        <source>The course is longer than %n day(s).</source>
        <translation>
            <numerusform>Le traitement dure plus de %n jour.</numerusform>
            <numerusform>Le traitement dure plus de %n jours.</numerusform>
        </translation>
    </message>
    <message>
        <source>The first day is more than a year away.</source>
        <translation>Le premier jour est dans plus d’un an.</translation>
    </message>
    <message>
        <source>The last day lies before the first.</source>
        <translation>Le dernier jour est avant le premier.</translation>
    </message>
    <message>
        <source>The product has expired before the first day.</source>
        <translation>Le produit est périmé avant le premier jour.</translation>
    </message>
    <message numerus="yes">
        <source>The withdrawal can be %n day(s) at the most.</source>
        <translation>
            <numerusform>Le temps d’attente peut être de %n jour au plus.</numerusform>
            <numerusform>Le temps d’attente peut être de %n jours au plus.</numerusform>
        </translation>
    </message>
    <message>
        <source>The withdrawal cannot be less than 0 days.</source>
        <translation>Le temps d’attente ne peut pas être inférieur à 0 jour.</translation>
    </message>
    <message>
        <source>To be taken out on</source>
        <translation>À retirer le</translation>
    </message>
    <message>
        <source>Withdrawal for honey, days</source>
        <translation>Temps d’attente pour le miel, jours</translation>
    </message>
    <message>
        <source>Write down the product as its label names it.</source>
        <translation>Notez le produit comme son étiquette le nomme.</translation>
    </message>
    <message>
        <source>as its label names it</source>
        <translation>comme l’étiquette le nomme</translation>
    </message>
    <message>
        <source>as the label names it</source>
        <translation>comme l’étiquette la nomme</translation>
    </message>
    <message>
        <source>name and address</source>
        <translation>nom et adresse</translation>
    </message>
    <message>
        <source>number of the receipt, or where it is kept</source>
        <translation>numéro du reçu, ou l’endroit où il est rangé</translation>
    </message>
    <message>
        <source>where it was prescribed</source>
        <translation>s’il a été prescrit</translation>
    </message>
    <message>
        <source>with its unit; how much to give stands on the label</source>
        <translation>avec son unité ; la dose figure sur l’étiquette</translation>
    </message>
</context>
<context>
    <name>TreatmentPage</name>
    <message>
        <source>Change</source>
        <translation>Modifier</translation>
    </message>
    <message>
        <source>Did it work?</source>
        <translation>Efficace ?</translation>
    </message>
    <message>
        <source>Keep this record</source>
        <translation>Enregistrer la fiche</translation>
    </message>
    <message>
        <source>Taken out today</source>
        <translation>Retiré aujourd’hui</translation>
    </message>
</context>
<context>
    <name>TreatmentQuestions</name>
    <message>
        <source>Colony %1 has %2 already, from %3 to %4.</source>
        <translation>La colonie %1 reçoit déjà %2, du %3 au %4.</translation>
    </message>
    <message>
        <source>Supers are on within the course or the withdrawal (colony %1). Their honey is not for eating.</source>
        <translation>Des hausses sont posées pendant le traitement ou le temps d’attente (colonie %1). Leur miel n’est pas à consommer.</translation>
    </message>
    <message>
        <source>Supers are on within the course or the withdrawal (colony %1): only where the label allows it.</source>
        <translation>Des hausses sont posées pendant le traitement ou le temps d’attente (colonie %1) : seulement si l’étiquette le permet.</translation>
    </message>
    <message>
        <source>The course runs past the turn date, %1: the bees that overwinter are raised while mites are still there.</source>
        <translation>Le traitement dépasse la date charnière, le %1 : les abeilles d’hiver sont élevées alors qu’il reste des varroas.</translation>
    </message>
    <message>
        <source>The withdrawal is not written down, so nobody can say from when on honey may be taken. It stands on the label; write 0 where it says none.</source>
        <translation>Le temps d’attente n’est pas noté ; personne ne peut donc dire à partir de quand récolter du miel. Il figure sur l’étiquette ; écrivez 0 si elle indique zéro jour.</translation>
    </message>
</context>
<context>
    <name>TreatmentRecord</name>
    <message>
        <source>Did it work?</source>
        <translation>Efficace ?</translation>
    </message>
    <message>
        <source>Remove this record</source>
        <translation>Supprimer cette fiche</translation>
    </message>
</context>
<context>
    <name>TreatmentSheets</name>
    <message>
        <source>Go back and change it</source>
        <translation>Revenir et corriger</translation>
    </message>
    <message>
        <source>Go on writing</source>
        <translation>Continuer la saisie</translation>
    </message>
    <message>
        <source>It leaves the lists. The history keeps it.</source>
        <translation>Elle quitte les listes. L’historique la garde.</translation>
    </message>
    <message>
        <source>Keep it all the same</source>
        <translation>Enregistrer quand même</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Laisser</translation>
    </message>
    <message>
        <source>Leave without keeping</source>
        <translation>Quitter sans enregistrer</translation>
    </message>
    <message>
        <source>Leave without keeping?</source>
        <translation>Quitter sans enregistrer ?</translation>
    </message>
    <message>
        <source>Please look again</source>
        <translation>À revoir</translation>
    </message>
    <message>
        <source>Remove it</source>
        <translation>Supprimer</translation>
    </message>
    <message>
        <source>Remove this record?</source>
        <translation>Supprimer cette fiche ?</translation>
    </message>
    <message>
        <source>What you wrote down here is not kept yet.</source>
        <translation>Ce que vous avez noté ici n’est pas encore enregistré.</translation>
    </message>
</context>
<context>
    <name>TroubleWindow</name>
    <message>
        <source>Halfcup</source>
        <translation>Halfcup</translation>
    </message>
    <message>
        <source>Leave all as it is</source>
        <translation>Tout laisser tel quel</translation>
    </message>
    <message>
        <source>Or put a backup back</source>
        <translation>Ou restaurer une sauvegarde</translation>
    </message>
    <message>
        <source>Put it back</source>
        <translation>Restaurer</translation>
    </message>
    <message>
        <source>Put this one back?</source>
        <translation>Restaurer celle-ci ?</translation>
    </message>
    <message>
        <source>Save what can be read</source>
        <translation>Sauver ce qui peut être lu</translation>
    </message>
</context>
<context>
    <name>TypedDates</name>
    <message>
        <source>%1: "%2" is no date. Type it like 18 May 2026 or 2026-05-18.</source>
        <translation>%1 : « %2 » n’est pas une date. Saisissez-la comme 18 mai 2026 ou 2026-05-18.</translation>
    </message>
    <message>
        <source>%1: "%2" is no day of the year. Type it like 15 August.</source>
        <translation>%1 : « %2 » n’est pas un jour de l’année. Saisissez-le comme 15 août.</translation>
    </message>
    <message>
        <source>%1: %2 has no %3 %4. It is no leap year.</source>
        <comment>what, year, day, month</comment>
        <translation>%1 : pas de %3 %4 en %2. Ce n’est pas une année bissextile.</translation>
    </message>
    <message>
        <source>%1: %2 has no day %3.</source>
        <comment>what, month, day</comment>
        <translation>%1 : %2 n’a pas de jour %3.</translation>
    </message>
    <message>
        <source>%1: the year %2 is too far away.</source>
        <translation>%1 : l’année %2 est trop éloignée.</translation>
    </message>
    <message>
        <source>%1: there is no day %2 of month %3.</source>
        <translation>%1 : le jour %2 du mois %3 n’existe pas.</translation>
    </message>
</context>
<context>
    <name>WashStep</name>
    <message>
        <source>Abandon</source>
        <translation>Abandonner</translation>
    </message>
    <message>
        <source>Abandon this count</source>
        <translation>Abandonner ce comptage</translation>
    </message>
    <message>
        <source>Abandon this count?</source>
        <translation>Abandonner ce comptage ?</translation>
    </message>
    <message>
        <source>All you have done is kept. You can go on where you left, also after the phone was off.</source>
        <translation>Tout ce que vous avez fait est gardé. Vous pourrez reprendre là où vous étiez, même si le téléphone a été éteint.</translation>
    </message>
    <message>
        <source>Go on with the count</source>
        <translation>Continuer le comptage</translation>
    </message>
    <message>
        <source>It is kept as abandoned.</source>
        <translation>Il est gardé comme abandonné.</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Quitter</translation>
    </message>
    <message>
        <source>Leave this count?</source>
        <translation>Quitter ce comptage ?</translation>
    </message>
    <message>
        <source>Leave, keep it</source>
        <translation>Quitter et garder</translation>
    </message>
    <message>
        <source>Stay here</source>
        <translation>Rester ici</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>%1 %</source>
        <comment>a chance</comment>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 can be %2 at the most. Nothing was changed.</source>
        <translation>%1 : %2 au plus. Rien n’a été modifié.</translation>
    </message>
    <message>
        <source>%1 cannot be less than 0.</source>
        <translation>%1 : pas moins de 0.</translation>
    </message>
    <message>
        <source>%1 ft</source>
        <comment>feet</comment>
        <translation>%1 ft</translation>
    </message>
    <message>
        <source>%1 is already taken here. Choose another.</source>
        <translation>%1 : déjà pris ici. Choisissez autre chose.</translation>
    </message>
    <message>
        <source>%1 is empty. Type it, or leave the page as it was.</source>
        <translation>%1 : rien de saisi. Saisissez quelque chose, ou laissez la page telle quelle.</translation>
    </message>
    <message>
        <source>%1 is not a Halfcup database. It was left as it is. Move it aside, or start with another file.</source>
        <translation>%1 n’est pas une base de données de Halfcup. Rien n’y a été touché. Mettez ce fichier de côté, ou démarrez avec un autre.</translation>
    </message>
    <message>
        <source>%1 is too long: %2 letters fit on a label.</source>
        <translation>%1 : trop long ; %2 lettres tiennent sur une étiquette.</translation>
    </message>
    <message>
        <source>%1 km</source>
        <translation>%1 km</translation>
    </message>
    <message>
        <source>%1 lies in the future. Look at the phone's date.</source>
        <translation>%1 : date à venir. Vérifiez la date du téléphone.</translation>
    </message>
    <message>
        <source>%1 m</source>
        <comment>metres</comment>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>%1 mi</source>
        <comment>miles</comment>
        <translation>%1 mi</translation>
    </message>
    <message>
        <source>%1 ml</source>
        <translation>%1 ml</translation>
    </message>
    <message>
        <source>%1 must be %2 at the least. Nothing was changed.</source>
        <translation>%1 : %2 au moins. Rien n’a été modifié.</translation>
    </message>
    <message>
        <source>%1 must be a number, such as %2.</source>
        <translation>%1 : il faut un nombre, par exemple %2.</translation>
    </message>
    <message>
        <source>%1 must be a whole number.</source>
        <translation>%1 : il faut un nombre entier.</translation>
    </message>
    <message>
        <source>%1 must be more than 0. Nothing was changed.</source>
        <translation>%1 : il faut plus de 0. Rien n’a été modifié.</translation>
    </message>
    <message>
        <source>%1 s</source>
        <comment>seconds</comment>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a range of loads</comment>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1 °C</source>
        <comment>degrees Celsius</comment>
        <translation>%1 °C</translation>
    </message>
    <message>
        <source>%1 °F</source>
        <comment>degrees Fahrenheit</comment>
        <translation>%1 °F</translation>
    </message>
    <message>
        <source>%1, within %2</source>
        <comment>a position and its accuracy</comment>
        <translation>%1, à %2 près</translation>
    </message>
    <message numerus="yes">
        <source>%n cell(s)</source>
        <translation>
            <numerusform>%n cellule</numerusform>
            <numerusform>%n cellules</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n jour</numerusform>
            <numerusform>%n jours</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n mite(s)</source>
        <translation>
            <numerusform>%n varroa</numerusform>
            <numerusform>%n varroas</numerusform>
        </translation>
    </message>
    <message>
        <source>Another program is using your records. This was not written. Close the other program, then do it again.</source>
        <translation>Un autre programme utilise vos données. Ceci n’a pas été écrit. Fermez l’autre programme, puis recommencez.</translation>
    </message>
    <message>
        <source>Can't tell yet</source>
        <translation>On ne sait pas encore</translation>
    </message>
    <message>
        <source>Close to your line</source>
        <translation>Près de votre seuil</translation>
    </message>
    <message>
        <source>E</source>
        <comment>east</comment>
        <translation>E</translation>
    </message>
    <message>
        <source>N</source>
        <comment>north</comment>
        <translation>N</translation>
    </message>
    <message>
        <source>Not washed yet</source>
        <translation>Pas encore de lavage</translation>
    </message>
    <message>
        <source>Over your line</source>
        <translation>Au-delà de votre seuil</translation>
    </message>
    <message>
        <source>S</source>
        <comment>south</comment>
        <translation>S</translation>
    </message>
    <message>
        <source>The database %1 is damaged. It was left as it is. Keep a copy of it before anything else is tried.</source>
        <translation>La base de données %1 est endommagée. Rien n’y a été touché. Gardez-en une copie avant tout autre essai.</translation>
    </message>
    <message>
        <source>The folder for your records is not there: %1. Nothing was written. Put the folder back, or start with another.</source>
        <translation>Le dossier de vos données n’existe pas : %1. Rien n’a été écrit. Remettez le dossier, ou démarrez avec un autre.</translation>
    </message>
    <message>
        <source>The phone's storage is full. This was not written; everything before it is safe. Make room, then do it again.</source>
        <translation>Le stockage du téléphone est plein. Ceci n’a pas été écrit ; tout ce qui précède est en sécurité. Faites de la place, puis recommencez.</translation>
    </message>
    <message>
        <source>Under your line</source>
        <translation>Sous votre seuil</translation>
    </message>
    <message>
        <source>W</source>
        <comment>west</comment>
        <translation>O</translation>
    </message>
    <message>
        <source>Your records cannot be written here: %1 is read-only, or this user may not write there. What is in it is unchanged.</source>
        <translation>Impossible d’écrire vos données ici : %1 est en lecture seule, ou cet utilisateur n’a pas le droit d’y écrire. Son contenu est inchangé.</translation>
    </message>
    <message>
        <source>Your records could not be written. Everything before this is safe. Try it again; if it stays, start the app anew.</source>
        <translation>Vos données n’ont pas pu être écrites. Tout ce qui précède est en sécurité. Réessayez ; si cela persiste, redémarrez l’appli.</translation>
    </message>
    <message>
        <source>Your records must be brought to a new form, and the copy that is made first could not be written. Nothing was changed. Make room in %1, then start again.</source>
        <translation>Vos données doivent passer à une nouvelle forme, et la copie faite avant tout n’a pas pu être écrite. Rien n’a été modifié. Faites de la place dans %1, puis redémarrez.</translation>
    </message>
    <message>
        <source>Your records were written by a newer Halfcup. They are safe and unchanged; this version cannot read them. Install the newer version again.</source>
        <translation>Vos données ont été écrites par un Halfcup plus récent. Elles sont en sécurité et inchangées ; cette version ne peut pas les lire. Réinstallez la version plus récente.</translation>
    </message>
    <message>
        <source>a third of a cup</source>
        <translation>un tiers de tasse</translation>
    </message>
    <message>
        <source>about %1 bees</source>
        <translation>environ %1 abeilles</translation>
    </message>
    <message>
        <source>another method (%1)</source>
        <translation>autre méthode (%1)</translation>
    </message>
    <message>
        <source>close the jar</source>
        <translation>fermer le bocal</translation>
    </message>
    <message>
        <source>count</source>
        <translation>compter</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <comment>date format without year, as in 18 May</comment>
        <translation>d MMMM</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <comment>date format, as in 18 May 2026</comment>
        <translation>d MMMM yyyy</translation>
    </message>
    <message>
        <source>find the queen</source>
        <translation>trouver la reine</translation>
    </message>
    <message>
        <source>half a cup</source>
        <translation>une demi-tasse</translation>
    </message>
    <message>
        <source>how many cells opened</source>
        <translation>nombre de cellules ouvertes</translation>
    </message>
    <message>
        <source>how much of the board</source>
        <translation>part du lange à compter</translation>
    </message>
    <message>
        <source>lay the board</source>
        <translation>poser le lange</translation>
    </message>
    <message>
        <source>let it settle</source>
        <translation>laisser reposer</translation>
    </message>
    <message>
        <source>over 99 %</source>
        <comment>a chance</comment>
        <translation>plus de 99 %</translation>
    </message>
    <message>
        <source>pick the colony</source>
        <translation>choisir la colonie</translation>
    </message>
    <message>
        <source>pull the board</source>
        <translation>retirer le lange</translation>
    </message>
    <message>
        <source>scoop</source>
        <translation>prélever</translation>
    </message>
    <message>
        <source>second rinse</source>
        <translation>second rinçage</translation>
    </message>
    <message>
        <source>shake</source>
        <translation>agiter</translation>
    </message>
    <message>
        <source>the answer</source>
        <translation>la réponse</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>moins de %1</translation>
    </message>
    <message>
        <source>under 1 %</source>
        <comment>a chance</comment>
        <translation>moins de 1 %</translation>
    </message>
</context>
<context>
    <name>YardColonies</name>
    <message>
        <source>A run of numbers such as 1-8, or what is on the hives: 4, B12</source>
        <translation>Une suite de numéros comme 1-8, ou ce que portent les ruches : 4, B12</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Ajouter</translation>
    </message>
    <message>
        <source>Add colonies</source>
        <translation>Ajouter des colonies</translation>
    </message>
    <message>
        <source>Colonies</source>
        <translation>Colonies</translation>
    </message>
    <message>
        <source>Plan of the yard</source>
        <translation>Plan du rucher</translation>
    </message>
</context>
<context>
    <name>YardComparisonWords</name>
    <message>
        <source>%1.</source>
        <comment>a standing as a sentence</comment>
        <translation>%1.</translation>
    </message>
    <message numerus="yes">
        <source>%n colony(ies) not washed.</source>
        <translation>
            <numerusform>%n colonie sans lavage.</numerusform>
            <numerusform>%n colonies sans lavage.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n colony(ies), the highest load first.</source>
        <translation>
            <numerusform>%n colonie, la charge la plus haute d’abord.</numerusform>
            <numerusform>%n colonies, la charge la plus haute d’abord.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them is (are) over the line.</source>
        <translation>
            <numerusform>%n d’entre elles est au-delà du seuil.</numerusform>
            <numerusform>%n d’entre elles sont au-delà du seuil.</numerusform>
        </translation>
    </message>
    <message>
        <source>Colony %1: %2 per 100 bees, %3 to %4 in 9 of 10 cases.</source>
        <translation>Colonie %1 : %2 pour 100 abeilles, dans 9 cas sur 10 %3 à %4.</translation>
    </message>
    <message>
        <source>Colony %1: none found, up to %2 per 100 bees.</source>
        <translation>Colonie %1 : aucun trouvé, jusqu’à %2 pour 100 abeilles.</translation>
    </message>
    <message>
        <source>Colony %1: not washed.</source>
        <translation>Colonie %1 : pas de lavage.</translation>
    </message>
    <message>
        <source>Latest wash, with the range of 9 in 10 cases</source>
        <translation>Dernier lavage, avec la fourchette dans 9 cas sur 10</translation>
    </message>
    <message>
        <source>Mites per 100 bees</source>
        <translation>Varroas pour 100 abeilles</translation>
    </message>
    <message>
        <source>No colony is kept in this yard yet.</source>
        <translation>Pas encore de colonie dans ce rucher.</translation>
    </message>
    <message numerus="yes">
        <source>No wash yet in %n colony(ies).</source>
        <translation>
            <numerusform>Pas encore de lavage dans %n colonie.</numerusform>
            <numerusform>Pas encore de lavage dans %n colonies.</numerusform>
        </translation>
    </message>
    <message>
        <source>None found; the load can be up to the stroke</source>
        <translation>Aucun trouvé ; la charge peut aller jusqu’au trait</translation>
    </message>
    <message>
        <source>None of them is over its line.</source>
        <translation>Aucune n’est au-delà de son seuil.</translation>
    </message>
    <message>
        <source>Not washed</source>
        <translation>Pas de lavage</translation>
    </message>
    <message>
        <source>Own line</source>
        <translation>Seuil personnel</translation>
    </message>
    <message>
        <source>Treat line</source>
        <translation>Seuil de traitement</translation>
    </message>
    <message numerus="yes">
        <source>Washed %n day(s) ago.</source>
        <translation>
            <numerusform>Lavage il y a %n jour.</numerusform>
            <numerusform>Lavage il y a %n jours.</numerusform>
        </translation>
    </message>
    <message>
        <source>not washed</source>
        <translation>pas de lavage</translation>
    </message>
    <message>
        <source>own line %1</source>
        <translation>personnel %1</translation>
    </message>
    <message>
        <source>treat line %1</source>
        <translation>seuil %1</translation>
    </message>
    <message numerus="yes">
        <source>washed %n day(s) ago</source>
        <translation>
            <numerusform>lavage il y a %n jour</numerusform>
            <numerusform>lavage il y a %n jours</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>YardEditPage</name>
    <message>
        <source>A new yard</source>
        <translation>Un nouveau rucher</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>Keep this yard</source>
        <translation>Enregistrer ce rucher</translation>
    </message>
    <message>
        <source>Leave it empty where you have none.</source>
        <translation>Laissez vide si vous n’en avez pas.</translation>
    </message>
    <message>
        <source>Lines through the year</source>
        <translation>Seuils dans l’année</translation>
    </message>
    <message>
        <source>Name of the yard</source>
        <translation>Nom du rucher</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lieu</translation>
    </message>
    <message>
        <source>Treat line, mites per 100 bees</source>
        <translation>Seuil de traitement, varroas pour 100 abeilles</translation>
    </message>
    <message>
        <source>Use this place</source>
        <translation>Prendre ce lieu</translation>
    </message>
    <message>
        <source>What changed</source>
        <translation>Ce qui a changé</translation>
    </message>
    <message>
        <source>Your own, stricter line</source>
        <translation>Votre seuil personnel, plus strict</translation>
    </message>
    <message>
        <source>then add its colonies</source>
        <translation>puis ajouter ses colonies</translation>
    </message>
</context>
<context>
    <name>YardForAll</name>
    <message>
        <source>For all its colonies</source>
        <translation>Pour toutes ses colonies</translation>
    </message>
    <message>
        <source>On a day</source>
        <translation>À une date</translation>
    </message>
    <message>
        <source>On a day, all colonies</source>
        <translation>À une date, toutes les colonies</translation>
    </message>
    <message>
        <source>Supers off</source>
        <translation>Hausses retirées</translation>
    </message>
    <message>
        <source>Supers off, all colonies</source>
        <translation>Hausses retirées, toutes les colonies</translation>
    </message>
    <message>
        <source>Supers on</source>
        <translation>Hausses posées</translation>
    </message>
    <message>
        <source>Supers on, all colonies</source>
        <translation>Hausses posées, toutes les colonies</translation>
    </message>
    <message>
        <source>Treat</source>
        <translation>Traiter</translation>
    </message>
    <message>
        <source>Treat all colonies</source>
        <translation>Traiter toutes les colonies</translation>
    </message>
</context>
<context>
    <name>YardLinesPage</name>
    <message>
        <source>A wash keeps the line it was judged by.</source>
        <translation>Un lavage garde le seuil avec lequel il a été jugé.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>Lines through the year</source>
        <translation>Seuils dans l’année</translation>
    </message>
    <message>
        <source>Lines until now</source>
        <translation>Seuils jusqu’ici</translation>
    </message>
    <message>
        <source>Treat line</source>
        <translation>Seuil de traitement</translation>
    </message>
    <message>
        <source>Whose figures to follow</source>
        <translation>Quelles valeurs suivre</translation>
    </message>
</context>
<context>
    <name>YardPlanPage</name>
    <message>
        <source>By steps</source>
        <translation>Pas à pas</translation>
    </message>
    <message>
        <source>Move hives</source>
        <translation>Placer les ruches</translation>
    </message>
    <message>
        <source>Plan of the yard</source>
        <translation>Plan du rucher</translation>
    </message>
</context>
<context>
    <name>YardPlanSteps</name>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>Next hive</source>
        <translation>Ruche suivante</translation>
    </message>
    <message>
        <source>Previous hive</source>
        <translation>Ruche précédente</translation>
    </message>
    <message>
        <source>Take its place off the plan</source>
        <translation>Retirer du plan</translation>
    </message>
</context>
<context>
    <name>YardPlanWords</name>
    <message>
        <source>%1 ft</source>
        <comment>feet</comment>
        <translation>%1 pi</translation>
    </message>
    <message>
        <source>%1 km</source>
        <translation>%1 km</translation>
    </message>
    <message>
        <source>%1 m</source>
        <comment>metres</comment>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>Can't tell yet: %1.</source>
        <comment>labels of hives</comment>
        <translation>On ne sait pas encore : %1.</translation>
    </message>
    <message>
        <source>Close to the line: %1.</source>
        <comment>labels of hives</comment>
        <translation>Près du seuil : %1.</translation>
    </message>
    <message>
        <source>N</source>
        <comment>north, beside an arrow on a plan</comment>
        <translation>N</translation>
    </message>
    <message>
        <source>No hive has its place yet.</source>
        <translation>Aucune ruche n’est encore placée.</translation>
    </message>
    <message>
        <source>No hive in this yard yet.</source>
        <translation>Pas encore de ruche dans ce rucher.</translation>
    </message>
    <message>
        <source>Not on the plan:</source>
        <translation>Pas sur le plan :</translation>
    </message>
    <message>
        <source>Not on the plan: %1.</source>
        <comment>labels of hives</comment>
        <translation>Pas sur le plan : %1.</translation>
    </message>
    <message>
        <source>Not washed: %1.</source>
        <comment>labels of hives</comment>
        <translation>Sans lavage : %1.</translation>
    </message>
    <message>
        <source>Over the line: %1.</source>
        <comment>labels of hives</comment>
        <translation>Au-delà du seuil : %1.</translation>
    </message>
    <message>
        <source>Plan of the yard, north up: %1 from west to east, %2 from south to north.</source>
        <translation>Plan du rucher, le nord en haut : %1 d’ouest en est, %2 du sud au nord.</translation>
    </message>
    <message>
        <source>Plan of the yard: no hive has its place yet.</source>
        <translation>Plan du rucher : aucune ruche n’est encore placée.</translation>
    </message>
    <message>
        <source>Plan of the yard: no hive in it yet.</source>
        <translation>Plan du rucher : pas encore de ruche.</translation>
    </message>
    <message>
        <source>Under the line: %1.</source>
        <comment>labels of hives</comment>
        <translation>Sous le seuil : %1.</translation>
    </message>
    <message>
        <source>can't tell</source>
        <translation>on ne sait pas</translation>
    </message>
    <message>
        <source>can't tell yet</source>
        <translation>on ne sait pas encore</translation>
    </message>
    <message>
        <source>close</source>
        <comment>to the line</comment>
        <translation>près</translation>
    </message>
    <message>
        <source>close to the line</source>
        <translation>près du seuil</translation>
    </message>
    <message>
        <source>from positions of its washes</source>
        <translation>d’après la position de ses lavages</translation>
    </message>
    <message>
        <source>not washed</source>
        <translation>sans lavage</translation>
    </message>
    <message>
        <source>over</source>
        <comment>the line</comment>
        <translation>au-delà</translation>
    </message>
    <message>
        <source>over the line</source>
        <translation>au-delà du seuil</translation>
    </message>
    <message>
        <source>under</source>
        <comment>the line</comment>
        <translation>sous</translation>
    </message>
    <message>
        <source>under the line</source>
        <translation>sous le seuil</translation>
    </message>
    <message>
        <source>where you put it</source>
        <translation>placée par vous</translation>
    </message>
</context>
<context>
    <name>YardRow</name>
    <message>
        <source>Change</source>
        <translation>Modifier</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>Modifier %1</translation>
    </message>
</context>
<context>
    <name>YardYear</name>
    <message>
        <source>First wash of the year from</source>
        <translation>Premier lavage de l’année dès le</translation>
    </message>
    <message>
        <source>Turn date</source>
        <translation>Date charnière</translation>
    </message>
</context>
<context>
    <name>YardsPage</name>
    <message>
        <source>Make a yard here</source>
        <translation>Créer un rucher ici</translation>
    </message>
    <message>
        <source>What is shown as one</source>
        <translation>Ce qui est affiché en un seul</translation>
    </message>
    <message>
        <source>Yards</source>
        <translation>Ruchers</translation>
    </message>
    <message>
        <source>made on two phones; look at them</source>
        <translation>créés sur deux téléphones ; à vérifier</translation>
    </message>
</context>
<context>
    <name>halfcup::place::FileFeed</name>
    <message>
        <source>%1 is not a file, so it cannot be played as a recording.</source>
        <translation>%1 n’est pas un fichier et ne peut donc pas être lu comme enregistrement.</translation>
    </message>
    <message>
        <source>The file %1 cannot be read. It is tried again.</source>
        <translation>Impossible de lire le fichier %1. Nouvel essai en cours.</translation>
    </message>
    <message>
        <source>There is no file %1. It is looked for again.</source>
        <translation>Il n’y a pas de fichier %1. Il est recherché à nouveau.</translation>
    </message>
</context>
<context>
    <name>halfcup::place::NoFeed</name>
    <message>
        <source>This build of the program knows no serial lines.</source>
        <translation>Cette version du programme ne connaît pas les liaisons série.</translation>
    </message>
</context>
<context>
    <name>halfcup::place::QtPositionSource</name>
    <message>
        <source>Positions are switched off in the setup.</source>
        <translation>Les positions sont désactivées dans les réglages.</translation>
    </message>
    <message>
        <source>The position service has ended. It is tried again.</source>
        <translation>Le service de position s’est arrêté. Nouvel essai en cours.</translation>
    </message>
    <message>
        <source>The receiver has not found its place yet. It needs a clear view of the sky.</source>
        <translation>Le récepteur n’a pas encore trouvé sa position. Il lui faut un ciel dégagé.</translation>
    </message>
    <message>
        <source>The recording %1 is over.</source>
        <translation>L’enregistrement %1 est fini.</translation>
    </message>
    <message>
        <source>This device does not tell the program where it is: the position service is missing, or it is not allowed.</source>
        <translation>Cet appareil ne dit pas au programme où il est : le service de position manque, ou n’est pas autorisé.</translation>
    </message>
    <message>
        <source>This device has not found its place yet. It needs a clear view of the sky.</source>
        <translation>Cet appareil n’a pas encore trouvé sa position. Il lui faut un ciel dégagé.</translation>
    </message>
    <message>
        <source>This device has nothing that tells positions.</source>
        <translation>Cet appareil n’a rien qui donne une position.</translation>
    </message>
</context>
<context>
    <name>halfcup::place::SerialFeed</name>
    <message>
        <source>The serial line %1 is lost. It is tried again.</source>
        <translation>La liaison série %1 est perdue. Nouvel essai en cours.</translation>
    </message>
    <message>
        <source>The serial line %1 may not be opened: another program has it, or this user has no right to it. It is tried again.</source>
        <translation>Impossible d’ouvrir la liaison série %1 : un autre programme l’utilise, ou cet utilisateur n’y a pas droit. Nouvel essai en cours.</translation>
    </message>
    <message>
        <source>There is no serial line %1. It is looked for again.</source>
        <translation>Il n’y a pas de liaison série %1. Elle est recherchée à nouveau.</translation>
    </message>
</context>
<context>
    <name>halfcup::place::TcpFeed</name>
    <message>
        <source>%1 does not answer.</source>
        <translation>%1 ne répond pas.</translation>
    </message>
    <message>
        <source>%1 has been silent for half a minute.</source>
        <translation>%1 est muet depuis une demi-minute.</translation>
    </message>
    <message>
        <source>%1 has closed the connection.</source>
        <translation>%1 a fermé la connexion.</translation>
    </message>
    <message>
        <source>It is tried again.</source>
        <translation>Nouvel essai en cours.</translation>
    </message>
    <message>
        <source>Nothing answers at %1.</source>
        <translation>Rien ne répond à l’adresse %1.</translation>
    </message>
    <message>
        <source>The connection to %1 is lost.</source>
        <translation>La connexion à %1 est perdue.</translation>
    </message>
    <message>
        <source>The host of %1 is not known on this network.</source>
        <translation>L’hôte de %1 n’est pas connu sur ce réseau.</translation>
    </message>
</context>
<context>
    <name>halfcup::place::WebPositionSource</name>
    <message>
        <source>A browser cannot reach the receiver that is named in the setup.</source>
        <translation>Un navigateur ne peut pas atteindre le récepteur nommé dans les réglages.</translation>
    </message>
    <message>
        <source>Positions are switched off in the setup.</source>
        <translation>Les positions sont désactivées dans les réglages.</translation>
    </message>
    <message>
        <source>The browser does not tell this page where it is: allow it in the settings of the page.</source>
        <translation>Le navigateur ne dit pas à cette page où elle se trouve : autorisez-le dans les réglages de la page.</translation>
    </message>
    <message>
        <source>This device has not found its place yet. It needs a clear view of the sky.</source>
        <translation>Cet appareil n’a pas encore trouvé sa position. Il lui faut un ciel dégagé.</translation>
    </message>
    <message>
        <source>This device has nothing that tells positions.</source>
        <translation>Cet appareil n’a rien qui donne une position.</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::AnswerController</name>
    <message>
        <source>%1 mites per 100 bees</source>
        <translation>%1 varroas pour 100 abeilles</translation>
    </message>
    <message>
        <source>%1 more</source>
        <comment>mites</comment>
        <translation>%1 de plus</translation>
    </message>
    <message>
        <source>%1 on %2: %3 per 100, before recovery</source>
        <translation>%1 sur %2 : %3 pour 100, avant correction</translation>
    </message>
    <message>
        <source>%1 per 100 (%2 to %3)</source>
        <translation>%1 pour 100 (%2 à %3)</translation>
    </message>
    <message>
        <source>90 % range</source>
        <translation>Fourchette 90 %</translation>
    </message>
    <message>
        <source>About %1 mites on every 100 bees. It could be anything from %2.</source>
        <translation>Environ %1 varroas pour 100 abeilles. Cela peut aller de %2.</translation>
    </message>
    <message>
        <source>As counted</source>
        <translation>Tel que compté</translation>
    </message>
    <message>
        <source>Bees in the jar</source>
        <translation>Abeilles dans le bocal</translation>
    </message>
    <message>
        <source>Chance that the true load is over %1: %2</source>
        <translation>Probabilité que la vraie charge dépasse %1 : %2</translation>
    </message>
    <message>
        <source>Colony %1, %2 · %3 in %4</source>
        <comment>colony, yard, mites, scoop</comment>
        <translation>Colonie %1, %2 · %3 dans %4</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Méthode</translation>
    </message>
    <message>
        <source>None found is not none there: at a true load of 1 in 100, about %1 of 100 such jars hold no mite. While there is brood, most mites sit under cappings.</source>
        <translation>Aucun trouvé ne veut pas dire aucun présent : à une charge vraie de 1 pour 100, environ %1 bocaux sur 100 ne contiennent aucun varroa. Tant qu’il y a du couvain, la plupart des varroas sont sous opercules.</translation>
    </message>
    <message>
        <source>None found. The load can still be anything from %1 mites on every 100 bees.</source>
        <translation>Aucun trouvé. La charge peut encore aller de %1 varroas pour 100 abeilles.</translation>
    </message>
    <message>
        <source>Nothing to do now. Wash again in a month.</source>
        <translation>Rien à faire pour l’instant. Refaites un lavage dans un mois.</translation>
    </message>
    <message>
        <source>One jar from one frame on one day; the mites under cappings; mites carried in later.</source>
        <translation>Un bocal, d’un cadre, un jour ; les varroas sous opercules ; les varroas apportés plus tard.</translation>
    </message>
    <message>
        <source>Own line %1: %2 (%3)</source>
        <comment>line, standing, chance</comment>
        <translation>Seuil personnel %1 : %2 (%3)</translation>
    </message>
    <message>
        <source>Recovery</source>
        <translation>Récupération</translation>
    </message>
    <message>
        <source>Scooped on %1 at %2, %3 from %4. Is this the right colony?</source>
        <translation>Prélevé le %1 à %2, à %3 du rucher %4. Est-ce la bonne colonie ?</translation>
    </message>
    <message>
        <source>Scooped on %1 at %2, no position</source>
        <translation>Prélevé le %1 à %2, sans position</translation>
    </message>
    <message>
        <source>Scooped on %1 at %2, within %3</source>
        <translation>Prélevé le %1 à %2, à %3 près</translation>
    </message>
    <message>
        <source>Second rinse</source>
        <translation>Second rinçage</translation>
    </message>
    <message>
        <source>Shaken</source>
        <translation>Agitation</translation>
    </message>
    <message>
        <source>The yard's answer</source>
        <translation>La réponse du rucher</translation>
    </message>
    <message>
        <source>Time to treat. Which substance fits depends on the weather, supers and brood: the product's label and your local law decide. Ask your bee inspector or vet where you are unsure.</source>
        <translation>Il est temps de traiter. La substance qui convient dépend de la météo, des hausses et du couvain : l’étiquette du produit et la loi de votre pays décident. En cas de doute, demandez à votre inspecteur apicole ou à votre vétérinaire.</translation>
    </message>
    <message>
        <source>Too few bees to say. Wash half a cup again within a week.</source>
        <translation>Trop peu d’abeilles pour conclure. Refaites un lavage d’une demi-tasse d’ici une semaine.</translation>
    </message>
    <message>
        <source>Treat line %1: %2 (%3)</source>
        <comment>line, standing, chance</comment>
        <translation>Seuil de traitement %1 : %2 (%3)</translation>
    </message>
    <message>
        <source>Wash again within two weeks, or treat if the season leaves no time to wait.</source>
        <translation>Refaites un lavage d’ici deux semaines, ou traitez si la saison ne laisse pas le temps d’attendre.</translation>
    </message>
    <message>
        <source>Wash colony %1 next</source>
        <translation>Colonie suivante : %1</translation>
    </message>
    <message>
        <source>Wash jar %1 next</source>
        <translation>Bocal suivant : %1</translation>
    </message>
    <message>
        <source>What this leaves out</source>
        <translation>Ce que cela ne dit pas</translation>
    </message>
    <message>
        <source>With all mites it misses</source>
        <translation>Avec tous les varroas qui échappent</translation>
    </message>
    <message>
        <source>With the mites a wash misses</source>
        <translation>Avec les varroas qu’un lavage manque</translation>
    </message>
    <message>
        <source>Your line is %1, or %2 in %3.</source>
        <translation>Votre seuil est %1, soit %2 dans %3.</translation>
    </message>
    <message>
        <source>Your own line is %1, or %2 in %3.</source>
        <translation>Votre seuil personnel est %1, soit %2 dans %3.</translation>
    </message>
    <message>
        <source>about %1 (%2)</source>
        <translation>environ %1 (%2)</translation>
    </message>
    <message>
        <source>about %1, the phone's clocks disagreed</source>
        <translation>environ %1, les horloges du téléphone se contredisaient</translation>
    </message>
    <message>
        <source>finds about %1 % of what a wash finds, give or take %2</source>
        <translation>trouve environ %1 % de ce que trouve un lavage, à %2 près</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::App</name>
    <message>
        <source>%1 is none of the files that Halfcup takes in: .halfcup from another phone, .csv or .txt with a table of washes. Nothing was changed.</source>
        <translation>%1 n’est pas un fichier que Halfcup importe : .halfcup d’un autre téléphone, .csv ou .txt avec un tableau de lavages. Rien n’a été modifié.</translation>
    </message>
    <message numerus="yes">
        <source>%n files were opened at once. Open them one after the other, so that you see what is in each.</source>
        <translation>
            <numerusform>%n fichier a été ouvert à la fois. Ouvrez-les l’un après l’autre, pour voir ce que chacun contient.</numerusform>
            <numerusform>%n fichiers ont été ouverts à la fois. Ouvrez-les l’un après l’autre, pour voir ce que chacun contient.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::BackupController</name>
    <message>
        <source>%1 What is kept now is not thrown away: it stays beside them as a copy, in the list of backups. Your settings stay. What another phone has taken over comes back when you merge with it. The app starts anew.</source>
        <comment>sentence</comment>
        <translation>%1 Ce qui est gardé à présent n’est pas jeté : une copie reste à côté, dans la liste des sauvegardes. Vos réglages restent. Ce qu’un autre téléphone a importé revient quand vous fusionnez avec lui. L’appli redémarre.</translation>
    </message>
    <message>
        <source>%1 cannot be written. No backup was made.</source>
        <translation>Impossible d’écrire %1. Aucune sauvegarde n’a été faite.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>day, time of day</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>file name, size</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2, %3, %4</source>
        <comment>yards, colonies, washes, treatments</comment>
        <translation>%1, %2, %3, %4</translation>
    </message>
    <message numerus="yes">
        <source>%n colony(ies)</source>
        <translation>
            <numerusform>%n colonie</numerusform>
            <numerusform>%n colonies</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n treatment(s)</source>
        <translation>
            <numerusform>%n traitement</numerusform>
            <numerusform>%n traitements</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es)</source>
        <translation>
            <numerusform>%n lavage</numerusform>
            <numerusform>%n lavages</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es) in no backup yet</source>
        <translation>
            <numerusform>%n lavage dans aucune sauvegarde</numerusform>
            <numerusform>%n lavages dans aucune sauvegarde</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n yard(s)</source>
        <translation>
            <numerusform>%n rucher</numerusform>
            <numerusform>%n ruchers</numerusform>
        </translation>
    </message>
    <message>
        <source>A backup</source>
        <translation>Une sauvegarde</translation>
    </message>
    <message>
        <source>A backup is one file with all you keep. A browser may throw away what it keeps: when the phone is full, when its data are cleared, in a private window always. Keep the file outside it.</source>
        <translation>Une sauvegarde est un seul fichier avec tout ce que vous gardez. Un navigateur peut effacer ce qu’il garde : quand le téléphone est plein, quand on efface ses données, et toujours dans une fenêtre privée. Gardez le fichier ailleurs.</translation>
    </message>
    <message>
        <source>A backup is one file with all you keep. Copy it off this phone: a phone can fall into the honey.</source>
        <translation>Une sauvegarde est un seul fichier avec tout ce que vous gardez. Copiez-la hors de ce téléphone : un téléphone peut tomber dans le miel.</translation>
    </message>
    <message>
        <source>A plain database: its form is sound; there is no check sum in it.</source>
        <translation>Une simple base de données : sa forme est saine ; elle ne contient pas de somme de contrôle.</translation>
    </message>
    <message>
        <source>Every row was checked: it is as it was written.</source>
        <translation>Chaque ligne a été vérifiée : elle est telle qu’elle a été écrite.</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Fichier</translation>
    </message>
    <message>
        <source>In it</source>
        <translation>Contenu</translation>
    </message>
    <message>
        <source>In this backup</source>
        <translation>Dans cette sauvegarde</translation>
    </message>
    <message>
        <source>It cannot be used</source>
        <translation>Elle est inutilisable</translation>
    </message>
    <message>
        <source>It is no longer at %1. Good, if you moved it to a safe place.</source>
        <translation>Elle n’est plus à cet endroit : %1. Tant mieux si vous l’avez mise en lieu sûr.</translation>
    </message>
    <message>
        <source>Last backup: %1</source>
        <comment>day and time</comment>
        <translation>Dernière sauvegarde : %1</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Faite le</translation>
    </message>
    <message>
        <source>Newest wash</source>
        <translation>Dernier lavage</translation>
    </message>
    <message>
        <source>No backup yet</source>
        <translation>Aucune sauvegarde</translation>
    </message>
    <message>
        <source>The backup was written but did not pass its check, so it was thrown away. Try it again, or into another place.</source>
        <translation>La sauvegarde a été écrite mais n’a pas passé le contrôle ; elle a donc été jetée. Réessayez, ou à un autre endroit.</translation>
    </message>
    <message>
        <source>This phone has no place for files to hand on.</source>
        <translation>Ce téléphone n’a pas d’endroit pour les fichiers à transmettre.</translation>
    </message>
    <message numerus="yes">
        <source>Written and checked: %n wash(es), %1, %2</source>
        <comment>size, path</comment>
        <translation>
            <numerusform>Écrit et vérifié : %n lavage, %1, %2</numerusform>
            <numerusform>Écrit et vérifié : %n lavages, %1, %2</numerusform>
        </translation>
    </message>
    <message>
        <source>Your records become what is in %1.</source>
        <translation>Vos données deviennent ce que contient %1.</translation>
    </message>
    <message>
        <source>Your records become what they were on %1.</source>
        <translation>Vos données redeviennent ce qu’elles étaient le %1.</translation>
    </message>
    <message>
        <source>halfcup-%1</source>
        <comment>file name</comment>
        <translation>halfcup-%1</translation>
    </message>
    <message>
        <source>halfcup-%1-%2</source>
        <comment>file name</comment>
        <translation>halfcup-%1-%2</translation>
    </message>
    <message>
        <source>kept aside when a backup was put back</source>
        <translation>mis de côté lors d’une restauration</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::BoardController</name>
    <message>
        <source>%1 %2 h under the colony.</source>
        <comment>the sentence before, hours</comment>
        <translation>%1 %2 h sous la colonie.</translation>
    </message>
    <message>
        <source>%1 h, as you typed</source>
        <translation>%1 h, saisies par vous</translation>
    </message>
    <message>
        <source>By the clock it lay for less than an hour, too short for a count. If that is wrong, type the hours; else leave it and pull it later.</source>
        <translation>D’après l’horloge, il est en place depuis moins d’une heure, trop peu pour un comptage. Si c’est faux, saisissez les heures ; sinon, laissez-le et retirez-le plus tard.</translation>
    </message>
    <message>
        <source>By the clock it lay for more than two weeks: ants, wax and wind have been at it. If that is wrong, type the hours; else lay a fresh board.</source>
        <translation>D’après l’horloge, il est en place depuis plus de deux semaines : fourmis, cire et vent ont fait leur œuvre. Si c’est faux, saisissez les heures ; sinon, posez un lange neuf.</translation>
    </message>
    <message>
        <source>By the phone's clock the board was pulled before it was laid: the clock was changed. How many hours did it lie?</source>
        <translation>D’après l’horloge du téléphone, le lange a été retiré avant d’être posé : l’horloge a été modifiée. Combien d’heures est-il resté en place ?</translation>
    </message>
    <message>
        <source>Floor: %1 since %2</source>
        <translation>Plancher : %1 depuis le %2</translation>
    </message>
    <message>
        <source>Floor: not written down</source>
        <translation>Plancher : non noté</translation>
    </message>
    <message>
        <source>How many hours did it lie under the colony?</source>
        <translation>Combien d’heures est-il resté sous la colonie ?</translation>
    </message>
    <message>
        <source>Laid on %1 at %2.</source>
        <translation>Posé le %1 à %2.</translation>
    </message>
    <message>
        <source>No cell counted is no count. Count some cells, or the whole board.</source>
        <translation>Sans case comptée, pas de comptage. Comptez quelques cases, ou tout le lange.</translation>
    </message>
    <message>
        <source>The number of cells</source>
        <translation>Le nombre de cases</translation>
    </message>
    <message>
        <source>The number of hours</source>
        <translation>Le nombre d’heures</translation>
    </message>
    <message>
        <source>When it was laid is not written down.</source>
        <translation>L’heure de la pose n’est pas notée.</translation>
    </message>
    <message>
        <source>You count %1 cells: the board has so many at the least.</source>
        <translation>Vous comptez %1 cases : le lange en a au moins autant.</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::CheckController</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>product, yard</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>10 days after its end</source>
        <translation>10 jours après sa fin</translation>
    </message>
    <message>
        <source>Best on</source>
        <translation>Au mieux le</translation>
    </message>
    <message>
        <source>Can't tell</source>
        <translation>On ne sait pas</translation>
    </message>
    <message>
        <source>Chance that it reached the mark</source>
        <translation>Probabilité d’avoir atteint l’objectif</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>It did not reach the mark</source>
        <translation>Objectif non atteint</translation>
    </message>
    <message>
        <source>It points to resistance</source>
        <translation>Signe de résistance</translation>
    </message>
    <message>
        <source>It worked</source>
        <translation>Efficace</translation>
    </message>
    <message>
        <source>Killed</source>
        <translation>Tués</translation>
    </message>
    <message>
        <source>Mites were carried in</source>
        <translation>Varroas apportés</translation>
    </message>
    <message>
        <source>Not known yet</source>
        <translation>Pas encore connu</translation>
    </message>
    <message>
        <source>The mark</source>
        <translation>Objectif</translation>
    </message>
    <message>
        <source>Treated colonies washed before and after</source>
        <translation>Colonies traitées, lavage avant et après</translation>
    </message>
    <message>
        <source>Untreated ones to compare with</source>
        <translation>Non traitées, pour comparer</translation>
    </message>
    <message>
        <source>Wash colony %1</source>
        <translation>Lavage de la colonie %1</translation>
    </message>
    <message>
        <source>Wash from</source>
        <translation>Lavage dès le</translation>
    </message>
    <message>
        <source>about %1, in 9 of 10 cases %2 to %3</source>
        <translation>environ %1, dans 9 cas sur 10 %2 à %3</translation>
    </message>
    <message>
        <source>one brood cycle after its end</source>
        <translation>un cycle de couvain après sa fin</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ChoiceController</name>
    <message>
        <source>A usual colony's season, from one wash on; mites carried in are left out. The bands are the range: of the wash, of growth and of what the treatment was seen to kill.</source>
        <translation>La saison d’une colonie ordinaire, à partir d’un seul lavage ; les varroas apportés ne sont pas comptés. Les bandes sont la fourchette : du lavage, de la croissance et de ce que le traitement a tué dans les essais.</translation>
    </message>
    <message>
        <source>Begun %1 later, on %2</source>
        <translation>Commencé %1 plus tard, le %2</translation>
    </message>
    <message>
        <source>Begun on %1</source>
        <translation>Commencé le %1</translation>
    </message>
    <message>
        <source>Course: %1 to %2, by the label. Begun on %3, it would end by %4, or %5.</source>
        <comment>days, days, day, day, day</comment>
        <translation>Durée : %1 à %2, selon l’étiquette. Commencé le %3, il finirait le %4, ou le %5.</translation>
    </message>
    <message>
        <source>Course: %1, by the label. Begun on %2, it would end by %3.</source>
        <translation>Durée : %1, selon l’étiquette. Commencé le %2, il finirait le %3.</translation>
    </message>
    <message>
        <source>From the wash of %1, colony %2, the highest of them: %3 per 100.</source>
        <translation>D’après le lavage du %1, colonie %2, la plus chargée : %3 pour 100.</translation>
    </message>
    <message>
        <source>From the wash of %1: %2 per 100.</source>
        <translation>D’après le lavage du %1 : %2 pour 100.</translation>
    </message>
    <message>
        <source>Given once. Begun on %1, it ends that day.</source>
        <translation>Donné une fois. Commencé le %1, il finit le jour même.</translation>
    </message>
    <message>
        <source>Honey: no super comes on, and no honey is taken, before the label's withdrawal is over.</source>
        <translation>Miel : on ne pose pas de hausse et on ne récolte pas de miel avant la fin du temps d’attente de l’étiquette.</translation>
    </message>
    <message>
        <source>No outlook: not washed in the last %1.</source>
        <translation>Pas de projection : aucun lavage depuis %1.</translation>
    </message>
    <message>
        <source>The label in your hand and your local law outrank this app. How much to give stands on the label.</source>
        <translation>L’étiquette que vous avez en main et la loi de votre pays priment sur cette appli. La dose figure sur l’étiquette.</translation>
    </message>
    <message>
        <source>a choice of this app</source>
        <translation>un choix propre à l’appli</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ColonyController</name>
    <message>
        <source>Boards and drone brood count other things than a wash: hold each against its own kind.</source>
        <translation>Langes et couvain de mâles comptent autre chose qu’un lavage : comparez chacun à ses pareils.</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Colonie %1</translation>
    </message>
    <message>
        <source>Counted by several methods: their loads are made alike as far as is known, and differ more than loads of one method.</source>
        <translation>Comptés par plusieurs méthodes : leurs charges sont rendues comparables autant qu’on le sait, et diffèrent plus que celles d’une seule méthode.</translation>
    </message>
    <message>
        <source>The label</source>
        <translation>Numéro ou nom</translation>
    </message>
    <message>
        <source>Wash this colony</source>
        <translation>Lavage de cette colonie</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::CountController</name>
    <message>
        <source>Cells with mites</source>
        <translation>Cellules avec varroas</translation>
    </message>
    <message>
        <source>Count one cell</source>
        <translation>Compter une cellule</translation>
    </message>
    <message>
        <source>Count one mite</source>
        <translation>Compter un varroa</translation>
    </message>
    <message>
        <source>Mites counted</source>
        <translation>Varroas comptés</translation>
    </message>
    <message>
        <source>No cell opened is no count. Open some, or leave this count.</source>
        <translation>Sans cellule ouverte, pas de comptage. Ouvrez-en, ou quittez ce comptage.</translation>
    </message>
    <message>
        <source>The count</source>
        <translation>Le comptage</translation>
    </message>
    <message>
        <source>The number of cells</source>
        <translation>Le nombre de cellules</translation>
    </message>
    <message numerus="yes">
        <source>You counted %n cell(s) with mites: so many at the least were opened.</source>
        <translation>
            <numerusform>Vous avez compté %n cellule avec varroas : il y en a au moins autant d’ouvertes.</numerusform>
            <numerusform>Vous avez compté %n cellules avec varroas : il y en a au moins autant d’ouvertes.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::EventController</name>
    <message numerus="yes">
        <source>%1, %n colony(ies)</source>
        <comment>yard and how many</comment>
        <translation>
            <numerusform>%1, %n colonie</numerusform>
            <numerusform>%1, %n colonies</numerusform>
        </translation>
    </message>
    <message>
        <source>Both sides covered is one frame.</source>
        <translation>Les deux faces couvertes font un cadre.</translation>
    </message>
    <message>
        <source>By your records no colony has supers on.</source>
        <translation>D’après vos données, aucune colonie n’a de hausses.</translation>
    </message>
    <message>
        <source>By your records the supers are on all colonies already.</source>
        <translation>D’après vos données, les hausses sont déjà posées sur toutes les colonies.</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Colonie %1</translation>
    </message>
    <message>
        <source>Colony %1, %2</source>
        <comment>label, yard</comment>
        <translation>Colonie %1, %2</translation>
    </message>
    <message>
        <source>Frames covered with bees</source>
        <translation>Cadres couverts d’abeilles</translation>
    </message>
    <message>
        <source>Into which colony?</source>
        <translation>Dans quelle colonie ?</translation>
    </message>
    <message>
        <source>It is made in this yard. Leave it empty where it went elsewhere.</source>
        <translation>Elle est créée dans ce rucher. Laissez vide si elle est partie ailleurs.</translation>
    </message>
    <message>
        <source>Number of the new colony</source>
        <translation>Numéro de la nouvelle colonie</translation>
    </message>
    <message>
        <source>Stock of the queen</source>
        <translation>Origine de la reine</translation>
    </message>
    <message>
        <source>The day</source>
        <translation>Le jour</translation>
    </message>
    <message>
        <source>The number of frames</source>
        <translation>Le nombre de cadres</translation>
    </message>
    <message>
        <source>The number of the new colony</source>
        <translation>Le numéro de la nouvelle colonie</translation>
    </message>
    <message>
        <source>There is a colony %1 in this yard already. Choose another number.</source>
        <translation>Il y a déjà une colonie %1 dans ce rucher. Choisissez un autre numéro.</translation>
    </message>
    <message>
        <source>There is no other colony in this yard.</source>
        <translation>Il n’y a pas d’autre colonie dans ce rucher.</translation>
    </message>
    <message>
        <source>There is no other yard yet. Make one first.</source>
        <translation>Il n’y a pas encore d’autre rucher. Créez-en un d’abord.</translation>
    </message>
    <message>
        <source>To which yard?</source>
        <translation>Vers quel rucher ?</translation>
    </message>
    <message>
        <source>Today, %1</source>
        <translation>Aujourd’hui, %1</translation>
    </message>
    <message>
        <source>What did you see?</source>
        <translation>Qu’avez-vous vu ?</translation>
    </message>
    <message>
        <source>What happened?</source>
        <translation>Que s’est-il passé ?</translation>
    </message>
    <message>
        <source>Where she comes from, or nothing.</source>
        <translation>D’où elle vient, ou rien.</translation>
    </message>
    <message>
        <source>Which floor?</source>
        <translation>Quel plancher ?</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ExportController</name>
    <message>
        <source>%1: %2</source>
        <comment>what, where</comment>
        <translation>%1 : %2</translation>
    </message>
    <message numerus="yes">
        <source>%n date(s)</source>
        <translation>
            <numerusform>%n date</numerusform>
            <numerusform>%n dates</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n place(s)</source>
        <translation>
            <numerusform>%n lieu</numerusform>
            <numerusform>%n lieux</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s), one a treatment and colony</source>
        <translation>
            <numerusform>%n ligne, une par traitement et colonie</numerusform>
            <numerusform>%n lignes, une par traitement et colonie</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n touch(es) of counting</source>
        <translation>
            <numerusform>%n appui de comptage</numerusform>
            <numerusform>%n appuis de comptage</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es)</source>
        <translation>
            <numerusform>%n lavage</numerusform>
            <numerusform>%n lavages</numerusform>
        </translation>
    </message>
    <message>
        <source>All yards</source>
        <translation>Tous les ruchers</translation>
    </message>
    <message>
        <source>All years</source>
        <translation>Toutes les années</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>Calendrier</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Colonie %1</translation>
    </message>
    <message>
        <source>Counts</source>
        <translation>Comptages</translation>
    </message>
    <message>
        <source>Last season</source>
        <translation>Saison passée</translation>
    </message>
    <message>
        <source>Map</source>
        <translation>Carte</translation>
    </message>
    <message>
        <source>One colony</source>
        <translation>Une colonie</translation>
    </message>
    <message>
        <source>One yard</source>
        <translation>Un rucher</translation>
    </message>
    <message>
        <source>Positions are blurred to about 1 km.</source>
        <translation>Les positions sont floutées à environ 1 km.</translation>
    </message>
    <message>
        <source>Positions go out exact. Whoever gets the file knows where your hives stand.</source>
        <translation>Les positions partent exactes. Qui reçoit le fichier sait où sont vos ruches.</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Rapport</translation>
    </message>
    <message numerus="yes">
        <source>Report of %n page(s)</source>
        <translation>
            <numerusform>Rapport de %n page</numerusform>
            <numerusform>Rapport de %n pages</numerusform>
        </translation>
    </message>
    <message>
        <source>The report has no positions.</source>
        <translation>Le rapport ne contient pas de positions.</translation>
    </message>
    <message>
        <source>This season</source>
        <translation>Cette saison</translation>
    </message>
    <message>
        <source>Treatments</source>
        <translation>Traitements</translation>
    </message>
    <message>
        <source>Washes</source>
        <translation>Lavages</translation>
    </message>
    <message>
        <source>Write the calendar</source>
        <translation>Écrire le calendrier</translation>
    </message>
    <message>
        <source>Write the counts</source>
        <translation>Écrire les comptages</translation>
    </message>
    <message>
        <source>Write the map</source>
        <translation>Écrire la carte</translation>
    </message>
    <message>
        <source>Write the report</source>
        <translation>Écrire le rapport</translation>
    </message>
    <message>
        <source>Write the treatments</source>
        <translation>Écrire les traitements</translation>
    </message>
    <message>
        <source>Write the washes</source>
        <translation>Écrire les lavages</translation>
    </message>
    <message>
        <source>a table (CSV), a row a touch</source>
        <translation>un tableau (CSV), une ligne par appui</translation>
    </message>
    <message>
        <source>a table (CSV), a row a wash</source>
        <translation>un tableau (CSV), une ligne par lavage</translation>
    </message>
    <message>
        <source>a table (CSV), all the law asks for</source>
        <translation>un tableau (CSV), tout ce que la loi demande</translation>
    </message>
    <message>
        <source>all yards</source>
        <translation>tous les ruchers</translation>
    </message>
    <message>
        <source>for the inspector or the vet (PDF)</source>
        <translation>pour l’inspecteur ou le vétérinaire (PDF)</translation>
    </message>
    <message>
        <source>halfcup-counts-%1.csv</source>
        <comment>file name</comment>
        <translation>halfcup-comptages-%1.csv</translation>
    </message>
    <message>
        <source>halfcup-map-%1.geojson</source>
        <comment>file name</comment>
        <translation>halfcup-carte-%1.geojson</translation>
    </message>
    <message>
        <source>halfcup-report-%1-%2.pdf</source>
        <comment>file name: subject, day</comment>
        <translation>halfcup-rapport-%1-%2.pdf</translation>
    </message>
    <message>
        <source>halfcup-season-%1.ics</source>
        <comment>file name</comment>
        <translation>halfcup-saison-%1.ics</translation>
    </message>
    <message>
        <source>halfcup-treatments-%1.csv</source>
        <comment>file name</comment>
        <translation>halfcup-traitements-%1.csv</translation>
    </message>
    <message>
        <source>halfcup-washes-%1.csv</source>
        <comment>file name</comment>
        <translation>halfcup-lavages-%1.csv</translation>
    </message>
    <message>
        <source>the year ahead (iCalendar)</source>
        <translation>l’année à venir (iCalendar)</translation>
    </message>
    <message>
        <source>yards and washes (GeoJSON)</source>
        <translation>ruchers et lavages (GeoJSON)</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::FolderController</name>
    <message>
        <source>%1 is a file. A folder is needed.</source>
        <translation>%1 est un fichier. Il faut un dossier.</translation>
    </message>
    <message>
        <source>%1 is damaged. What is intact in it was taken; a good copy completes it.</source>
        <translation>%1 est endommagé. Ce qui y est intact a été importé ; une bonne copie le complétera.</translation>
    </message>
    <message>
        <source>%1 is still on its way.</source>
        <translation>%1 est encore en route.</translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) came in, new or changed.</source>
        <translation>
            <numerusform>%n donnée reçue, nouvelle ou modifiée.</numerusform>
            <numerusform>%n données reçues, nouvelles ou modifiées.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) changed on both phones: the later value was kept.</source>
        <translation>
            <numerusform>%n donnée modifiée sur les deux téléphones : la valeur la plus récente est gardée.</numerusform>
            <numerusform>%n données modifiées sur les deux téléphones : la valeur la plus récente est gardée.</numerusform>
        </translation>
    </message>
    <message>
        <source>Halfcup exchange</source>
        <comment>name of a folder</comment>
        <translation>Halfcup échange</translation>
    </message>
    <message>
        <source>Last exchanged at %1.</source>
        <translation>Dernier échange à %1.</translation>
    </message>
    <message>
        <source>Not looked into since the start.</source>
        <translation>Pas consulté depuis le démarrage.</translation>
    </message>
    <message>
        <source>Not used yet.</source>
        <translation>Pas encore utilisé.</translation>
    </message>
    <message>
        <source>Nothing can be written into %1.</source>
        <translation>Impossible d’écrire dans %1.</translation>
    </message>
    <message>
        <source>Nothing new came in.</source>
        <translation>Rien de nouveau n’est arrivé.</translation>
    </message>
    <message>
        <source>Paused, because you took back what came last. "Exchange now" takes it in again.</source>
        <translation>En pause, car vous avez annulé le dernier import. « Échanger maintenant » le reprend.</translation>
    </message>
    <message>
        <source>The folder %1 cannot be read. Nothing was exchanged; your records are safe.</source>
        <translation>Impossible de lire le dossier %1. Rien n’a été échangé ; vos données sont en sécurité.</translation>
    </message>
    <message>
        <source>There is no folder %1, and it could not be made.</source>
        <translation>Le dossier %1 n’existe pas et n’a pas pu être créé.</translation>
    </message>
    <message>
        <source>What you recorded is in the folder for the others.</source>
        <translation>Ce que vous avez noté est dans le dossier, pour les autres.</translation>
    </message>
    <message>
        <source>Write the whole way to the folder, beginning with /.</source>
        <translation>Écrivez le chemin complet du dossier, en commençant par /.</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::HereController</name>
    <message>
        <source>%1 from here</source>
        <translation>à %1 d’ici</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>place and date</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>the scoop and the method</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Colony %1 waits at: %2</source>
        <translation>La colonie %1 attend : %2</translation>
    </message>
    <message>
        <source>End the round</source>
        <translation>Finir la tournée</translation>
    </message>
    <message>
        <source>Go on with the wash</source>
        <translation>Reprendre le lavage</translation>
    </message>
    <message>
        <source>Looking for the position</source>
        <translation>Recherche de la position</translation>
    </message>
    <message>
        <source>No position</source>
        <translation>Pas de position</translation>
    </message>
    <message>
        <source>No yard here</source>
        <translation>Aucun rucher ici</translation>
    </message>
    <message>
        <source>No yard yet</source>
        <translation>Aucun rucher</translation>
    </message>
    <message>
        <source>Picked by you</source>
        <translation>Choisi par vous</translation>
    </message>
    <message>
        <source>Position known within %1</source>
        <translation>Position connue à %1 près</translation>
    </message>
    <message>
        <source>Round: %1 of %2 washed</source>
        <translation>Tournée : %1 sur %2 lavages faits</translation>
    </message>
    <message>
        <source>Wash the jars</source>
        <translation>Faire les lavages</translation>
    </message>
    <message>
        <source>Which yard is this?</source>
        <translation>Quel rucher est-ce ?</translation>
    </message>
    <message>
        <source>You are here, within %1</source>
        <translation>Vous êtes ici, à %1 près</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::HistoryController</name>
    <message>
        <source>%1 at %2, %3</source>
        <comment>day, time, phone</comment>
        <translation>%1 à %2, %3</translation>
    </message>
    <message>
        <source>%1 is put back: %2.</source>
        <comment>field, value</comment>
        <translation>Rétabli – %1 : %2.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>treatment, its days</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <comment>method, colony, day</comment>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>%1: %2. What stands there now stays in this list.</source>
        <comment>field, value</comment>
        <translation>%1 : %2. Ce qui s’y trouve maintenant reste dans cette liste.</translation>
    </message>
    <message>
        <source>Another colony of this yard is called %1 now. Give that one another name first.</source>
        <translation>Une autre colonie de ce rucher s’appelle maintenant %1. Donnez-lui d’abord un autre nom.</translation>
    </message>
    <message>
        <source>Colony %1, %2</source>
        <comment>colony, yard</comment>
        <translation>Colonie %1, %2</translation>
    </message>
    <message>
        <source>It is back in the lists.</source>
        <translation>De nouveau dans les listes.</translation>
    </message>
    <message>
        <source>another phone, %1</source>
        <translation>un autre téléphone, %1</translation>
    </message>
    <message>
        <source>as it is now</source>
        <translation>comme maintenant</translation>
    </message>
    <message>
        <source>colony %1</source>
        <translation>colonie %1</translation>
    </message>
    <message>
        <source>no phone</source>
        <translation>aucun téléphone</translation>
    </message>
    <message>
        <source>so it is now</source>
        <translation>valeur actuelle</translation>
    </message>
    <message>
        <source>this phone</source>
        <translation>ce téléphone</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ImportController</name>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 et %n autre</numerusform>
            <numerusform>%1 et %n autres</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new colony(ies)</source>
        <translation>
            <numerusform>%n nouvelle colonie</numerusform>
            <numerusform>%n nouvelles colonies</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new yard(s)</source>
        <translation>
            <numerusform>%n nouveau rucher</numerusform>
            <numerusform>%n nouveaux ruchers</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) in question</source>
        <translation>
            <numerusform>%n ligne douteuse</numerusform>
            <numerusform>%n lignes douteuses</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) refused</source>
        <translation>
            <numerusform>%n ligne refusée</numerusform>
            <numerusform>%n lignes refusées</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es) here already</source>
        <translation>
            <numerusform>%n lavage déjà ici</numerusform>
            <numerusform>%n lavages déjà ici</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es) kept. Taking the same table in again adds nothing.</source>
        <translation>
            <numerusform>%n lavage enregistré. Réimporter le même tableau n’ajoute rien.</numerusform>
            <numerusform>%n lavages enregistrés. Réimporter le même tableau n’ajoute rien.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es) to keep</source>
        <translation>
            <numerusform>%n lavage à enregistrer</numerusform>
            <numerusform>%n lavages à enregistrer</numerusform>
        </translation>
    </message>
    <message>
        <source>, </source>
        <comment>between folders</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>, </source>
        <comment>between names</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>A table of earlier washes</source>
        <translation>Tableau de lavages antérieurs</translation>
    </message>
    <message>
        <source>A table of washes, saved as CSV or text by any spreadsheet. Its first row names the columns.</source>
        <translation>Un tableau de lavages, enregistré en CSV ou en texte par n’importe quel tableur. Sa première ligne nomme les colonnes.</translation>
    </message>
    <message>
        <source>Choose a table of washes, saved as CSV or text by any spreadsheet. Its first row names the columns.</source>
        <translation>Choisissez un tableau de lavages, enregistré en CSV ou en texte depuis un tableur. Sa première ligne nomme les colonnes.</translation>
    </message>
    <message>
        <source>Colony %1, %2</source>
        <comment>colony, yard</comment>
        <translation>Colonie %1, %2</translation>
    </message>
    <message>
        <source>Day first</source>
        <translation>Jour d’abord</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>Earlier washes</source>
        <translation>Lavages antérieurs</translation>
    </message>
    <message>
        <source>First say what becomes of the rows in question: keep them, or leave them out.</source>
        <translation>Dites d’abord ce que deviennent les lignes douteuses : les garder, ou les laisser de côté.</translation>
    </message>
    <message>
        <source>From a table: %1</source>
        <comment>a file's name</comment>
        <translation>Tiré d’un tableau : %1</translation>
    </message>
    <message numerus="yes">
        <source>Keep %n wash(es)</source>
        <translation>
            <numerusform>Enregistrer %n lavage</numerusform>
            <numerusform>Enregistrer %n lavages</numerusform>
        </translation>
    </message>
    <message>
        <source>Keep them</source>
        <translation>Les garder</translation>
    </message>
    <message>
        <source>Leave them out</source>
        <translation>Les écarter</translation>
    </message>
    <message>
        <source>Line %1</source>
        <comment>line of the file</comment>
        <translation>Ligne %1</translation>
    </message>
    <message>
        <source>Line %1, colony %2</source>
        <comment>line of the file</comment>
        <translation>Ligne %1, colonie %2</translation>
    </message>
    <message>
        <source>Look at the washes</source>
        <translation>Voir les lavages</translation>
    </message>
    <message>
        <source>Month first</source>
        <translation>Mois d’abord</translation>
    </message>
    <message>
        <source>No column</source>
        <translation>Aucune colonne</translation>
    </message>
    <message>
        <source>No table was found. Save it as CSV and put it into one of these folders: %1.</source>
        <translation>Aucun tableau trouvé. Enregistrez-le en CSV et mettez-le dans un de ces dossiers : %1.</translation>
    </message>
    <message>
        <source>They stay in the table; nothing of them is kept.</source>
        <translation>Elles restent dans le tableau ; rien n’en est gardé.</translation>
    </message>
    <message>
        <source>This would be kept</source>
        <translation>Voici ce qui serait gardé</translation>
    </message>
    <message>
        <source>Which column is what?</source>
        <translation>À quoi sert chaque colonne ?</translation>
    </message>
    <message numerus="yes">
        <source>and %n more row(s)</source>
        <translation>
            <numerusform>et %n autre ligne</numerusform>
            <numerusform>et %n autres lignes</numerusform>
        </translation>
    </message>
    <message>
        <source>no column</source>
        <translation>aucune colonne</translation>
    </message>
    <message>
        <source>none on this phone</source>
        <translation>aucun sur ce téléphone</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::LinesController</name>
    <message>
        <source>%1 all year</source>
        <translation>%1 toute l’année</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <comment>line, month</comment>
        <translation>%1 dès %2</translation>
    </message>
    <message>
        <source>%1 in %2; the yard's own line in other months</source>
        <translation>%1 en %2 ; le seuil propre au rucher les autres mois</translation>
    </message>
    <message>
        <source>%1 per 100</source>
        <translation>%1 pour 100</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a value's title and source</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between lines</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>. </source>
        <comment>between sentences</comment>
        <translation>. </translation>
    </message>
    <message>
        <source>By season: %1</source>
        <translation>Selon la saison : %1</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>À partir du %1</translation>
    </message>
    <message>
        <source>From another version: %1</source>
        <translation>D’une autre version : %1</translation>
    </message>
    <message>
        <source>No own line</source>
        <translation>Pas de seuil personnel</translation>
    </message>
    <message>
        <source>One line all year</source>
        <translation>Un seuil toute l’année</translation>
    </message>
    <message>
        <source>Own line %1</source>
        <translation>Seuil personnel %1</translation>
    </message>
    <message>
        <source>Set by you.</source>
        <translation>Fixé par vous.</translation>
    </message>
    <message>
        <source>This version has no figures for it. The yard's own line holds.</source>
        <translation>Cette version n’a pas de valeurs pour elle. Le seuil propre au rucher s’applique.</translation>
    </message>
    <message>
        <source>Today %1</source>
        <translation>Aujourd’hui %1</translation>
    </message>
    <message>
        <source>Treat line %1</source>
        <translation>Seuil de traitement %1</translation>
    </message>
    <message>
        <source>Your own line: %1</source>
        <translation>Votre seuil personnel : %1</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::LoadChartController</name>
    <message>
        <source>%1: %2 per 100, between %3 and %4. %5.</source>
        <comment>day, load, lower end, upper end, method</comment>
        <translation>%1 : %2 pour 100, de %3 à %4. %5.</translation>
    </message>
    <message>
        <source>%1: none found, at most %2 per 100. %3.</source>
        <comment>day, load, method</comment>
        <translation>%1 : aucun trouvé, au plus %2 pour 100. %3.</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::MethodsController</name>
    <message>
        <source>Colony %1, %2</source>
        <comment>colony, yard</comment>
        <translation>Colonie %1, %2</translation>
    </message>
    <message>
        <source>your usual one</source>
        <translation>votre habituelle</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::OnDayController</name>
    <message>
        <source>%1 has not come yet. Nobody can say what will be so.</source>
        <translation>Le %1 n’est pas encore venu. Personne ne peut dire ce qu’il en sera.</translation>
    </message>
    <message>
        <source>%1 per 100 on %2</source>
        <comment>a load and a date</comment>
        <translation>%1 pour 100 le %2</translation>
    </message>
    <message>
        <source>All colonies</source>
        <translation>Toutes les colonies</translation>
    </message>
    <message>
        <source>Batch: %1</source>
        <translation>Lot : %1</translation>
    </message>
    <message>
        <source>Before its records</source>
        <translation>Avant ses données</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Colonie %1</translation>
    </message>
    <message>
        <source>Course: %1</source>
        <translation>Durée : %1</translation>
    </message>
    <message>
        <source>Given by: %1</source>
        <translation>Donné par : %1</translation>
    </message>
    <message>
        <source>Honey</source>
        <translation>Miel</translation>
    </message>
    <message>
        <source>In the hive</source>
        <translation>Dans la ruche</translation>
    </message>
    <message>
        <source>In the hive: %1</source>
        <translation>Dans la ruche : %1</translation>
    </message>
    <message>
        <source>It stood in</source>
        <translation>Rucher ce jour-là</translation>
    </message>
    <message>
        <source>Its state</source>
        <translation>Son état</translation>
    </message>
    <message>
        <source>Last wash before</source>
        <translation>Dernier lavage avant</translation>
    </message>
    <message>
        <source>No colony</source>
        <translation>Aucune colonie</translation>
    </message>
    <message>
        <source>No treatment in the hive</source>
        <translation>Aucun traitement dans la ruche</translation>
    </message>
    <message>
        <source>No treatment.</source>
        <translation>Aucun traitement.</translation>
    </message>
    <message>
        <source>None stood here on that day, by your records.</source>
        <translation>D’après vos données, aucune n’était là ce jour-là.</translation>
    </message>
    <message>
        <source>None.</source>
        <translation>Aucun.</translation>
    </message>
    <message>
        <source>Nothing was written down of this colony until after this day.</source>
        <translation>Les notes sur cette colonie commencent après ce jour.</translation>
    </message>
    <message>
        <source>On %1</source>
        <translation>Le %1</translation>
    </message>
    <message>
        <source>Over, but honey waits</source>
        <translation>Fini, le miel attend</translation>
    </message>
    <message>
        <source>Prescribed by: %1</source>
        <translation>Prescrit par : %1</translation>
    </message>
    <message>
        <source>Proof of purchase: %1</source>
        <translation>Preuve d’achat : %1</translation>
    </message>
    <message>
        <source>Quantity, all colonies: %1</source>
        <translation>Quantité, toutes colonies : %1</translation>
    </message>
    <message>
        <source>Registered as %1</source>
        <translation>Enregistré sous %1</translation>
    </message>
    <message>
        <source>Supplier: %1</source>
        <translation>Fournisseur : %1</translation>
    </message>
    <message>
        <source>Taken out: %1</source>
        <translation>Retiré : %1</translation>
    </message>
    <message>
        <source>The day</source>
        <translation>Le jour</translation>
    </message>
    <message>
        <source>To be taken out: %1</source>
        <translation>À retirer : %1</translation>
    </message>
    <message>
        <source>Today, %1</source>
        <translation>Aujourd’hui, %1</translation>
    </message>
    <message>
        <source>Type a day, such as 1 July.</source>
        <translation>Saisissez un jour, par exemple 1 juillet.</translation>
    </message>
    <message>
        <source>Use by: %1</source>
        <translation>Péremption : %1</translation>
    </message>
    <message>
        <source>Withdrawal: %1</source>
        <translation>Temps d’attente : %1</translation>
    </message>
    <message>
        <source>Withdrawal: not written down</source>
        <translation>Temps d’attente : non noté</translation>
    </message>
    <message>
        <source>not written down</source>
        <translation>non noté</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::OtherAnswerController</name>
    <message>
        <source>%1 in %2 h</source>
        <comment>mites, hours</comment>
        <translation>%1 en %2 h</translation>
    </message>
    <message>
        <source>%1 mites a day</source>
        <translation>%1 varroas par jour</translation>
    </message>
    <message>
        <source>%1 mites in the colony for one a day (%2 to %3)</source>
        <translation>%1 varroas dans la colonie pour un par jour (%2 à %3)</translation>
    </message>
    <message>
        <source>%1 of %2 cells</source>
        <comment>counted, all</comment>
        <translation>%1 sur %2 cases</translation>
    </message>
    <message>
        <source>%1 to %2 mites a day</source>
        <translation>%1 à %2 varroas par jour</translation>
    </message>
    <message>
        <source>%1 with mites of %2 opened</source>
        <translation>%1 avec varroas sur %2 ouvertes</translation>
    </message>
    <message>
        <source>A board is weak evidence beside a wash: fall rises when brood hatches, when bees groom or rob, and just after a treatment.</source>
        <translation>Un lange est un indice faible à côté d’un lavage : la chute augmente quand le couvain éclôt, quand les abeilles s’épouillent ou pillent, et juste après un traitement.</translation>
    </message>
    <message>
        <source>About %1. It could be anything from %2.</source>
        <translation>Environ %1. Cela peut aller de %2.</translation>
    </message>
    <message>
        <source>As mites per 100 bees, by the season's factor: about %1, anything from %2 to %3.</source>
        <translation>En varroas pour 100 abeilles, par le facteur de la saison : environ %1, de %2 à %3.</translation>
    </message>
    <message>
        <source>Can't tell yet</source>
        <translation>On ne sait pas encore</translation>
    </message>
    <message>
        <source>Chance that the true fall is over %1: %2</source>
        <translation>Probabilité que la vraie chute dépasse %1 : %2</translation>
    </message>
    <message>
        <source>Chance that the true share is over %1: %2</source>
        <translation>Probabilité que la vraie part dépasse %1 : %2</translation>
    </message>
    <message>
        <source>Close to the handbook's line</source>
        <translation>Près du seuil du manuel</translation>
    </message>
    <message>
        <source>Colony %1, %2 · %3</source>
        <comment>colony, yard, method</comment>
        <translation>Colonie %1, %2 · %3</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Compté</translation>
    </message>
    <message>
        <source>Factor of the season</source>
        <translation>Facteur de la saison</translation>
    </message>
    <message>
        <source>It lay for less than a day: fall differs between day and night.</source>
        <translation>Il est resté moins d’un jour : la chute diffère entre le jour et la nuit.</translation>
    </message>
    <message>
        <source>Lay the board again for two or three days, or wash half a cup.</source>
        <translation>Reposez le lange deux ou trois jours, ou lavez une demi-tasse.</translation>
    </message>
    <message>
        <source>Mites gather in drone brood: its share is far higher than a load, and the two cannot be held against each other.</source>
        <translation>Les varroas se concentrent dans le couvain de mâles : sa part est bien plus élevée qu’une charge, et les deux ne se comparent pas.</translation>
    </message>
    <message>
        <source>No load in mites per 100 bees can be read from it: that depends on how much drone brood the colony has.</source>
        <translation>On ne peut pas en tirer de charge en varroas pour 100 abeilles : cela dépend de la quantité de couvain de mâles de la colonie.</translation>
    </message>
    <message>
        <source>None found. It can still be anything from %1 of 100 drone cells.</source>
        <translation>Aucun trouvé. Cela peut encore aller de %1 cellules de mâles sur 100.</translation>
    </message>
    <message>
        <source>None found. The fall can still be anything from %1 mites a day.</source>
        <translation>Aucun trouvé. La chute peut encore aller de %1 varroas par jour.</translation>
    </message>
    <message>
        <source>Nothing to do on its word. The next wash stays due as it was.</source>
        <translation>Rien à faire sur ce seul indice. Le prochain lavage reste prévu comme avant.</translation>
    </message>
    <message>
        <source>Of the board</source>
        <translation>Part du lange</translation>
    </message>
    <message>
        <source>Open more cells, or wash half a cup.</source>
        <translation>Ouvrez plus de cellules, ou lavez une demi-tasse.</translation>
    </message>
    <message>
        <source>Over the handbook's line</source>
        <translation>Au-delà du seuil du manuel</translation>
    </message>
    <message>
        <source>Taken on %1 at %2, no position</source>
        <translation>Fait le %1 à %2, sans position</translation>
    </message>
    <message>
        <source>Taken on %1 at %2, within %3</source>
        <translation>Fait le %1 à %2, à %3 près</translation>
    </message>
    <message>
        <source>The fall of this board</source>
        <translation>La chute sur ce lange</translation>
    </message>
    <message>
        <source>The handbook has no line for it in this month.</source>
        <translation>Le manuel n’a pas de seuil pour cela ce mois-ci.</translation>
    </message>
    <message>
        <source>The share of this brood</source>
        <translation>La part de ce couvain</translation>
    </message>
    <message>
        <source>Under the handbook's line</source>
        <translation>Sous le seuil du manuel</translation>
    </message>
    <message>
        <source>Wash half a cup before you decide: this count alone should not.</source>
        <translation>Lavez une demi-tasse avant de décider : ce comptage seul ne suffit pas.</translation>
    </message>
    <message>
        <source>from memory; the range is our own choice</source>
        <translation>de mémoire ; la fourchette est notre propre choix</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::OwnScoopsController</name>
    <message>
        <source>%1 bees</source>
        <translation>%1 abeilles</translation>
    </message>
    <message>
        <source>%1 bees in %2 are far from the usual %3. Is that what you counted?</source>
        <translation>%1 abeilles dans %2, c’est loin des %3 habituelles. Est-ce bien ce que vous avez compté ?</translation>
    </message>
    <message numerus="yes">
        <source>%1 bees in %2, from %n counted scoop(s)</source>
        <translation>
            <numerusform>%1 abeilles dans %2, d’après %n mesure comptée</numerusform>
            <numerusform>%1 abeilles dans %2, d’après %n mesures comptées</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 g are 100 bees. %2</source>
        <comment>grams, source</comment>
        <translation>%1 g font 100 abeilles. %2</translation>
    </message>
    <message>
        <source>%1, counted on %2</source>
        <comment>scoop, day</comment>
        <translation>%1, comptage du %2</translation>
    </message>
    <message>
        <source>Alive</source>
        <translation>Vivantes</translation>
    </message>
    <message>
        <source>Colony %1 · %2 in %3</source>
        <comment>colony, mites, scoop</comment>
        <translation>Colonie %1 · %2 dans %3</translation>
    </message>
    <message>
        <source>Colony %1 · %2, counted on %3</source>
        <comment>colony, scoop, day</comment>
        <translation>Colonie %1 · %2, comptage du %3</translation>
    </message>
    <message>
        <source>Drained</source>
        <translation>Égouttées</translation>
    </message>
    <message>
        <source>Drained bees weigh nearly twice what live ones do: say first which they are.</source>
        <translation>Des abeilles égouttées pèsent près du double des vivantes : dites d’abord ce qu’elles sont.</translation>
    </message>
    <message>
        <source>It was taken to hold about %1 bees.</source>
        <translation>On comptait sur environ %1 abeilles.</translation>
    </message>
    <message>
        <source>Nine of ten scoops hold %1 to %2. The book says %3.</source>
        <translation>Neuf mesures sur dix contiennent de %1 à %2 abeilles. Le manuel dit %3.</translation>
    </message>
    <message>
        <source>No scoop counted yet: %1 bees in %2, by the book</source>
        <translation>Aucune mesure comptée : %1 abeilles dans %2, selon le manuel</translation>
    </message>
    <message>
        <source>Say first whether the bees are drained or alive.</source>
        <translation>Dites d’abord si les abeilles sont égouttées ou vivantes.</translation>
    </message>
    <message>
        <source>The mass in grams</source>
        <translation>Le poids en grammes</translation>
    </message>
    <message>
        <source>The number of bees</source>
        <translation>Le nombre d’abeilles</translation>
    </message>
    <message>
        <source>far from the usual, and you stood by it</source>
        <translation>loin de l’habituel, et vous l’avez confirmé</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::PlanController</name>
    <message numerus="yes">
        <source>%1, %n record(s)</source>
        <comment>a file</comment>
        <translation>
            <numerusform>%1, %n donnée</numerusform>
            <numerusform>%1, %n données</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) taken in. Taking the same file in again changes nothing.</source>
        <translation>
            <numerusform>%n donnée importée. Réimporter le même fichier ne change rien.</numerusform>
            <numerusform>%n données importées. Réimporter le même fichier ne change rien.</numerusform>
        </translation>
    </message>
    <message>
        <source>, </source>
        <comment>between folders</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>All that %1 brought goes again, and every record is as it was before. Taking the same file in brings it back.</source>
        <translation>Tout ce que %1 a apporté repart, et chaque donnée redevient comme avant. Réimporter le même fichier le ramène.</translation>
    </message>
    <message>
        <source>Choose the file that the other phone handed on. Nothing is kept before you have seen what is in it.</source>
        <translation>Choisissez le fichier remis par l’autre téléphone. Rien n’est enregistré avant que vous ayez vu ce qu’il contient.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>Files that another phone wrote, newest first. Nothing is kept before you have seen what is in one.</source>
        <translation>Fichiers écrits par un autre téléphone, le plus récent d’abord. Rien n’est enregistré avant que vous ayez vu ce qu’il y a dans un fichier.</translation>
    </message>
    <message>
        <source>It cannot be taken back any more: something that was written down since hangs on it. Nothing was changed.</source>
        <translation>On ne peut plus l’annuler : quelque chose qui a été noté depuis en dépend. Rien n’a été modifié.</translation>
    </message>
    <message>
        <source>It held %1.</source>
        <comment>that phone; 3 yards, 17 colonies, 85 washes</comment>
        <translation>Il contenait %1.</translation>
    </message>
    <message>
        <source>No file from another phone was found. Put it into one of these folders: %1.</source>
        <translation>Aucun fichier d’un autre téléphone trouvé. Mettez-le dans un de ces dossiers : %1.</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Lecture…</translation>
    </message>
    <message>
        <source>Take in a file</source>
        <translation>Importer un fichier</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Importer</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Importé</translation>
    </message>
    <message>
        <source>The copy of your records that is made first could not be written. Nothing was taken in. Make room, then do it again.</source>
        <translation>La copie de vos données, faite avant tout, n’a pas pu être écrite. Rien n’a été importé. Faites de la place, puis recommencez.</translation>
    </message>
    <message>
        <source>The file, or what is kept here, has changed since you looked. This is what it would do now.</source>
        <translation>Le fichier, ou ce qui est gardé ici, a changé depuis que vous avez regardé. Voici ce qu’il ferait maintenant.</translation>
    </message>
    <message>
        <source>What %1 brought was taken back. Taking the file in again brings it back.</source>
        <translation>Ce que %1 avait apporté a été annulé. Réimporter le fichier le ramène.</translation>
    </message>
    <message>
        <source>What it brings</source>
        <translation>Ce qu’il apporte</translation>
    </message>
    <message>
        <source>none on this phone</source>
        <translation>aucun sur ce téléphone</translation>
    </message>
    <message>
        <source>on %1 at %2</source>
        <comment>a day, a time</comment>
        <translation>le %1 à %2</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>annulé</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::RecoveryController</name>
    <message>
        <source>%1 %2</source>
        <comment>sentences</comment>
        <translation>%1 %2</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) could not be read and are lost; there may be more.</source>
        <translation>
            <numerusform>%n valeur n’a pas pu être lue et est perdue ; il peut y en avoir plus.</numerusform>
            <numerusform>%n valeurs n’ont pas pu être lues et sont perdues ; il peut y en avoir plus.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n yard(s) or colony(ies) lost their name and stand there without it.</source>
        <translation>
            <numerusform>%n rucher ou colonie a perdu son nom et figure sans lui.</numerusform>
            <numerusform>%n ruchers ou colonies ont perdu leur nom et figurent sans lui.</numerusform>
        </translation>
    </message>
    <message>
        <source>Close Halfcup</source>
        <translation>Fermer Halfcup</translation>
    </message>
    <message>
        <source>Halfcup can be started again</source>
        <translation>Halfcup peut redémarrer</translation>
    </message>
    <message>
        <source>Halfcup cannot open its records</source>
        <translation>Halfcup ne peut pas ouvrir ses données</translation>
    </message>
    <message>
        <source>No record of Halfcup can be read in it. It was left as it is.</source>
        <translation>Aucune donnée de Halfcup ne peut y être lue. Le fichier a été laissé tel quel.</translation>
    </message>
    <message>
        <source>Nothing is known to be missing.</source>
        <translation>Rien ne manque, pour autant qu’on le sache.</translation>
    </message>
    <message numerus="yes">
        <source>Of %n record(s) too little was read to show them; a merge with another phone may complete them.</source>
        <translation>
            <numerusform>De %n fiche, trop peu a été lu pour la montrer ; une fusion avec un autre téléphone peut la compléter.</numerusform>
            <numerusform>De %n fiches, trop peu a été lu pour les montrer ; une fusion avec un autre téléphone peut les compléter.</numerusform>
        </translation>
    </message>
    <message>
        <source>Part of the file could not be read. Nothing is known to be missing, but look through your records.</source>
        <translation>Une partie du fichier n’a pas pu être lue. Rien ne manque, pour autant qu’on le sache, mais parcourez vos données.</translation>
    </message>
    <message>
        <source>Put %1 back? Your records become what is in it. What lies there now is not thrown away: it stays beside them.</source>
        <translation>Restaurer %1 ? Vos données deviennent ce qu’il contient. Ce qui s’y trouve maintenant n’est pas jeté : cela reste à côté.</translation>
    </message>
    <message>
        <source>Saved: %1.</source>
        <comment>yards, colonies, washes, treatments</comment>
        <translation>Sauvé : %1.</translation>
    </message>
    <message>
        <source>Start Halfcup</source>
        <translation>Démarrer Halfcup</translation>
    </message>
    <message>
        <source>Start again</source>
        <translation>Redémarrer</translation>
    </message>
    <message>
        <source>The damaged file is kept as %1.</source>
        <translation>Le fichier endommagé est conservé sous le nom %1.</translation>
    </message>
    <message>
        <source>Yard whose name is lost</source>
        <translation>Rucher dont le nom est perdu</translation>
    </message>
    <message>
        <source>Your records were written by a newer Halfcup. They are safe and unchanged; this version cannot read them. Start again where there is a network: the newer version comes by itself.</source>
        <translation>Vos données ont été écrites par un Halfcup plus récent. Elles sont en sécurité et inchangées ; cette version ne peut pas les lire. Redémarrez là où il y a du réseau : la version plus récente vient d’elle-même.</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::RoundController</name>
    <message>
        <source>%1 of %2 colonies</source>
        <translation>%1 sur %2 colonies</translation>
    </message>
    <message>
        <source>%1 of %2 washed</source>
        <translation>%1 sur %2 lavages faits</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>day, how many were washed</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>load, standing</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1, picked by chance.</source>
        <comment>from so many</comment>
        <translation>%1, tirées au hasard.</translation>
    </message>
    <message>
        <source>%1, picked by you: it holds only if these are like the others.</source>
        <comment>from so many</comment>
        <translation>%1, choisies par vous : cela ne vaut que si elles ressemblent aux autres.</translation>
    </message>
    <message>
        <source>%1.</source>
        <comment>from so many</comment>
        <translation>%1.</translation>
    </message>
    <message>
        <source>About %1 mites on every 100 bees in this yard. It could be anything from %2 to %3.</source>
        <translation>Environ %1 varroas pour 100 abeilles dans ce rucher. Cela peut aller de %2 à %3.</translation>
    </message>
    <message>
        <source>All %1 colonies</source>
        <translation>Les %1 colonies</translation>
    </message>
    <message>
        <source>All are washed, and neither side of the line is settled. End the round to see how near it is.</source>
        <translation>Tous les lavages sont faits, et rien ne tranche d’un côté ou de l’autre du seuil. Finissez la tournée pour voir s’il en est proche.</translation>
    </message>
    <message>
        <source>All are washed: the yard is over its line of %1.</source>
        <translation>Tous les lavages sont faits : le rucher est au-delà de son seuil de %1.</translation>
    </message>
    <message>
        <source>All are washed: the yard is under its line of %1.</source>
        <translation>Tous les lavages sont faits : le rucher est sous son seuil de %1.</translation>
    </message>
    <message>
        <source>Chance that the yard's load is over %1: %2</source>
        <translation>Probabilité que la charge du rucher dépasse %1 : %2</translation>
    </message>
    <message>
        <source>Colonies have to be chosen by chance, or all washed. Picking the strongest makes the figure too high, and no sum can mend that.</source>
        <translation>Les colonies doivent être tirées au hasard, ou toutes faites. Prendre les plus fortes donne une valeur trop haute, et aucun calcul ne peut la corriger.</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Colonie %1</translation>
    </message>
    <message>
        <source>Counted another way than the others, left out: colony %1.</source>
        <translation>Comptée autrement que les autres, laissée de côté : colonie %1.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>End the round</source>
        <translation>Finir la tournée</translation>
    </message>
    <message>
        <source>Even all of them, one wash each, leave a wide range at the %1 per 100 last found here.</source>
        <translation>Même toutes, à un lavage chacune, elles laissent une fourchette large aux %1 pour 100 trouvés ici la dernière fois.</translation>
    </message>
    <message>
        <source>Far above the others: colony %1. Look at it by itself.</source>
        <comment>one or more labels</comment>
        <translation>Loin au-dessus des autres : colonie %1. Examinez-la à part.</translation>
    </message>
    <message>
        <source>Figures no wash can have, left out: colony %1.</source>
        <translation>Chiffres impossibles pour un lavage, laissée de côté : colonie %1.</translation>
    </message>
    <message>
        <source>From %1 of the %2 in this yard</source>
        <translation>D’après %1 sur les %2 colonies de ce rucher</translation>
    </message>
    <message>
        <source>No answer</source>
        <translation>Pas de réponse</translation>
    </message>
    <message>
        <source>No colony lives in this yard.</source>
        <translation>Aucune colonie ne vit dans ce rucher.</translation>
    </message>
    <message>
        <source>No colony was washed in this round.</source>
        <translation>Aucun lavage dans cette tournée.</translation>
    </message>
    <message>
        <source>No longer in this yard, left out: colony %1.</source>
        <translation>N’est plus dans ce rucher, laissée de côté : colonie %1.</translation>
    </message>
    <message>
        <source>None found. The yard's load can still be anything from 0 to %1 mites on every 100 bees.</source>
        <translation>Aucun trouvé. La charge du rucher peut encore aller de 0 à %1 varroas pour 100 abeilles.</translation>
    </message>
    <message>
        <source>Not washed: colony %1.</source>
        <translation>Sans lavage : colonie %1.</translation>
    </message>
    <message>
        <source>One colony stands here: its wash is the yard's figure.</source>
        <translation>Il n’y a qu’une colonie ici : son lavage donne la valeur du rucher.</translation>
    </message>
    <message>
        <source>Picked by chance</source>
        <translation>Au hasard</translation>
    </message>
    <message>
        <source>Picked by you</source>
        <translation>Choisies par vous</translation>
    </message>
    <message>
        <source>Skip this one</source>
        <translation>Passer celle-ci</translation>
    </message>
    <message>
        <source>Start the round</source>
        <translation>Commencer la tournée</translation>
    </message>
    <message>
        <source>The answer is clear: the yard is over its line of %1. You can stop here, or go on for a narrower range.</source>
        <translation>La réponse est claire : le rucher est au-delà de son seuil de %1. Vous pouvez arrêter ici, ou continuer pour une fourchette plus étroite.</translation>
    </message>
    <message>
        <source>The answer is clear: the yard is under its line of %1. You can stop here, or go on for a narrower range.</source>
        <translation>La réponse est claire : le rucher est sous son seuil de %1. Vous pouvez arrêter ici, ou continuer pour une fourchette plus étroite.</translation>
    </message>
    <message>
        <source>Two colonies stand here: wash both.</source>
        <translation>Il y a deux colonies ici : faites un lavage pour chacune.</translation>
    </message>
    <message>
        <source>Wash colony %1 next</source>
        <translation>Colonie suivante : %1</translation>
    </message>
    <message>
        <source>Wash some of the colonies, one after another, and know the yard's own load with its range.</source>
        <translation>Faites un lavage pour quelques colonies, l’une après l’autre, et connaissez la charge du rucher avec sa fourchette.</translation>
    </message>
    <message>
        <source>Wash the jars</source>
        <translation>Faire les lavages</translation>
    </message>
    <message>
        <source>about %1 per 100</source>
        <translation>environ %1 pour 100</translation>
    </message>
    <message>
        <source>counted another way than the others: not in the yard's figure</source>
        <translation>comptée autrement que les autres : pas dans la valeur du rucher</translation>
    </message>
    <message>
        <source>far above the others</source>
        <translation>loin au-dessus des autres</translation>
    </message>
    <message>
        <source>figures no wash can have: not in the yard's figure</source>
        <translation>chiffres impossibles pour un lavage : pas dans la valeur du rucher</translation>
    </message>
    <message>
        <source>for a range of about a quarter either way, at the %1 per 100 last found here</source>
        <translation>pour une fourchette d’environ un quart en plus ou en moins, aux %1 pour 100 trouvés ici la dernière fois</translation>
    </message>
    <message>
        <source>in the tray: jar %1</source>
        <translation>dans le casier : bocal %1</translation>
    </message>
    <message>
        <source>no longer in this yard: left out</source>
        <translation>n’est plus dans ce rucher : laissée de côté</translation>
    </message>
    <message>
        <source>the phone draws them</source>
        <translation>le téléphone les tire au sort</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::SameController</name>
    <message>
        <source>%1 is %2. It will stand by itself again, with what was recorded for it.</source>
        <comment>Yard Ford, shown as By the ford</comment>
        <translation>%1 : %2 à présent. Chacun sera de nouveau à part, avec ce qui a été noté pour lui.</translation>
    </message>
    <message>
        <source>%1, from %2 to %3</source>
        <comment>washes, first and last day</comment>
        <translation>%1, du %2 au %3</translation>
    </message>
    <message>
        <source>%1, on %2</source>
        <comment>washes, day</comment>
        <translation>%1, le %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>yard, note</comment>
        <translation>%1 : %2</translation>
    </message>
    <message numerus="yes">
        <source>%n colony(ies)</source>
        <translation>
            <numerusform>%n colonie</numerusform>
            <numerusform>%n colonies</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pair(s) may be the same</source>
        <translation>
            <numerusform>%n paire est peut-être la même chose</numerusform>
            <numerusform>%n paires sont peut-être la même chose</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es)</source>
        <translation>
            <numerusform>%n lavage</numerusform>
            <numerusform>%n lavages</numerusform>
        </translation>
    </message>
    <message>
        <source>Both are now shown as "%1"; nothing was thrown away.</source>
        <translation>Les deux sont maintenant affichés comme « %1 » ; rien n’a été jeté.</translation>
    </message>
    <message>
        <source>Both have the same name and stand in one yard.</source>
        <translation>Les deux ont le même nom et sont dans le même rucher.</translation>
    </message>
    <message>
        <source>Both have the same name, and their yards may be one yard that was made twice.</source>
        <translation>Les deux ont le même nom, et leurs ruchers sont peut-être un seul rucher créé deux fois.</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Colonie %1</translation>
    </message>
    <message>
        <source>Same colony?</source>
        <translation>Même colonie ?</translation>
    </message>
    <message>
        <source>Same yard?</source>
        <translation>Même rucher ?</translation>
    </message>
    <message>
        <source>Shown as one</source>
        <translation>Affichés en un seul</translation>
    </message>
    <message>
        <source>They are named alike and lie %1 apart.</source>
        <translation>Leurs noms se ressemblent et ils sont à %1 l’un de l’autre.</translation>
    </message>
    <message>
        <source>They are named alike, but lie %1 apart.</source>
        <translation>Leurs noms se ressemblent, mais ils sont à %1 l’un de l’autre.</translation>
    </message>
    <message>
        <source>They are named alike. How far they lie apart is not known.</source>
        <translation>Leurs noms se ressemblent. La distance entre eux n’est pas connue.</translation>
    </message>
    <message>
        <source>They are two again. What was recorded for each is with it.</source>
        <translation>Ils sont de nouveau deux. Ce qui a été noté pour chacun est avec lui.</translation>
    </message>
    <message>
        <source>They lie %1 apart.</source>
        <translation>Ils sont à %1 l’un de l’autre.</translation>
    </message>
    <message>
        <source>They stay two. This phone does not ask again.</source>
        <translation>Ils restent deux. Ce téléphone ne redemandera pas.</translation>
    </message>
    <message>
        <source>Yard %1</source>
        <translation>Rucher %1</translation>
    </message>
    <message>
        <source>no wash yet</source>
        <translation>aucun lavage</translation>
    </message>
    <message>
        <source>shown as %1</source>
        <comment>another yard</comment>
        <translation>affiché comme %1</translation>
    </message>
    <message>
        <source>shown as colony %1</source>
        <translation>affichée comme colonie %1</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ScoopController</name>
    <message>
        <source>The number of bees</source>
        <translation>Le nombre d’abeilles</translation>
    </message>
    <message>
        <source>The scoop in millilitres</source>
        <translation>La mesure en millilitres</translation>
    </message>
    <message>
        <source>about %1 bees, %2 to %3</source>
        <translation>environ %1 abeilles, %2 à %3</translation>
    </message>
    <message>
        <source>by the book</source>
        <translation>selon le manuel</translation>
    </message>
    <message>
        <source>counted bee by bee</source>
        <translation>comptées une à une</translation>
    </message>
    <message numerus="yes">
        <source>from your %n counted scoop(s)</source>
        <translation>
            <numerusform>d’après votre %n mesure comptée</numerusform>
            <numerusform>d’après vos %n mesures comptées</numerusform>
        </translation>
    </message>
    <message>
        <source>not rapped</source>
        <translation>non tassées</translation>
    </message>
    <message>
        <source>rapped to settle</source>
        <translation>tassées</translation>
    </message>
    <message>
        <source>your own figure for this jar</source>
        <translation>votre propre valeur pour ce bocal</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::SeasonController</name>
    <message>
        <source>%1 %2</source>
        <comment>month and year</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>what, where</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 · %2 late</source>
        <comment>yards, number</comment>
        <translation>%1 · %2 en retard</translation>
    </message>
    <message>
        <source>%1, %2 late</source>
        <comment>day, number of days</comment>
        <translation>%1, %2 de retard</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n colony(ies)</source>
        <translation>
            <numerusform>%1, %n colonie</numerusform>
            <numerusform>%1, %n colonies</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, colonies %2</source>
        <comment>yard, labels</comment>
        <translation>%1, colonies %2</translation>
    </message>
    <message>
        <source>%1, colony %2</source>
        <comment>yard, label</comment>
        <translation>%1, colonie %2</translation>
    </message>
    <message numerus="yes">
        <source>%n date(s) written to %1</source>
        <translation>
            <numerusform>%n date écrite dans %1</numerusform>
            <numerusform>%n dates écrites dans %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n yard(s)</source>
        <translation>
            <numerusform>%n rucher</numerusform>
            <numerusform>%n ruchers</numerusform>
        </translation>
    </message>
    <message>
        <source>Demo: %1</source>
        <translation>Démo : %1</translation>
    </message>
    <message>
        <source>Halfcup</source>
        <translation>Halfcup</translation>
    </message>
    <message>
        <source>Late</source>
        <translation>En retard</translation>
    </message>
    <message>
        <source>Late: it was due on %1.</source>
        <translation>En retard : à faire le %1.</translation>
    </message>
    <message>
        <source>Running now</source>
        <translation>En cours</translation>
    </message>
    <message>
        <source>halfcup-season-%1.ics</source>
        <comment>file name</comment>
        <translation>halfcup-saison-%1.ics</translation>
    </message>
    <message>
        <source>today</source>
        <translation>aujourd’hui</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>jusqu’au %1</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::SetupController</name>
    <message>
        <source>%1 %</source>
        <comment>size of letters</comment>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>As the phone has it</source>
        <translation>Comme le téléphone</translation>
    </message>
    <message>
        <source>Halfcup %1</source>
        <translation>Halfcup %1</translation>
    </message>
    <message>
        <source>No position is asked for</source>
        <translation>Aucune position demandée</translation>
    </message>
    <message>
        <source>That is too long for a receiver's address.</source>
        <translation>C’est trop long pour l’adresse d’un récepteur.</translation>
    </message>
    <message>
        <source>The phone's own receiver</source>
        <translation>Le récepteur du téléphone</translation>
    </message>
    <message>
        <source>Your records: %1</source>
        <translation>Vos données : %1</translation>
    </message>
    <message>
        <source>in this browser</source>
        <comment>where the records are</comment>
        <translation>dans ce navigateur</translation>
    </message>
    <message>
        <source>not rapped</source>
        <translation>non tassées</translation>
    </message>
    <message>
        <source>rapped to settle</source>
        <translation>tassées</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ShakeController</name>
    <message>
        <source>%1 shaken will be on the record</source>
        <translation>%1 d’agitation seront notés</translation>
    </message>
    <message numerus="yes">
        <source>%n second(s) left</source>
        <translation>
            <numerusform>Encore %n seconde</numerusform>
            <numerusform>Encore %n secondes</numerusform>
        </translation>
    </message>
    <message>
        <source>Half time</source>
        <comment>spoken</comment>
        <translation>Mi-temps</translation>
    </message>
    <message numerus="yes">
        <source>Half time is past. %n second(s) left</source>
        <translation>
            <numerusform>Mi-temps passée. Encore %n seconde</numerusform>
            <numerusform>Mi-temps passée. Encore %n secondes</numerusform>
        </translation>
    </message>
    <message>
        <source>Half time is past. Keep on.</source>
        <translation>Mi-temps passée. Continuez.</translation>
    </message>
    <message>
        <source>Last ten seconds.</source>
        <translation>Dix dernières secondes.</translation>
    </message>
    <message>
        <source>Paused. The seconds so far are kept.</source>
        <translation>En pause. Les secondes déjà faites sont gardées.</translation>
    </message>
    <message>
        <source>Ready to shake.</source>
        <translation>Prêt à agiter.</translation>
    </message>
    <message>
        <source>Shaking a jar</source>
        <translation>Agitation d’un bocal</translation>
    </message>
    <message>
        <source>Stop</source>
        <comment>spoken, the time is over</comment>
        <translation>Stop</translation>
    </message>
    <message>
        <source>Stop here</source>
        <translation>Arrêter ici</translation>
    </message>
    <message>
        <source>Ten seconds</source>
        <comment>spoken</comment>
        <translation>Dix secondes</translation>
    </message>
    <message>
        <source>The phone's clocks disagree: how long you shook is a guess.</source>
        <translation>Les horloges du téléphone se contredisent : votre temps d’agitation est une supposition.</translation>
    </message>
    <message>
        <source>The seconds so far will be on the record</source>
        <translation>Les secondes faites seront notées</translation>
    </message>
    <message>
        <source>Time was up %1 ago. Set the jar down.</source>
        <translation>Le temps est écoulé depuis %1. Posez le bocal.</translation>
    </message>
    <message numerus="yes">
        <source>second(s) left</source>
        <translation>
            <numerusform>seconde restante</numerusform>
            <numerusform>secondes restantes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ShareController</name>
    <message numerus="yes">
        <source>%n wash(es) to hand on</source>
        <translation>
            <numerusform>%n lavage à transmettre</numerusform>
            <numerusform>%n lavages à transmettre</numerusform>
        </translation>
    </message>
    <message>
        <source>Handed to the browser: %1 (%2).</source>
        <comment>a file, 3 yards and 85 washes</comment>
        <translation>Remis au navigateur : %1 (%2).</translation>
    </message>
    <message>
        <source>The demo is loaded: two invented yards, marked as demo on every page and in every file.</source>
        <translation>La démo est chargée : deux ruchers inventés, marqués démo sur chaque page et dans chaque fichier.</translation>
    </message>
    <message>
        <source>This is phone %1. Another phone names it so when it takes in a file from here.</source>
        <translation>Ceci est le téléphone %1. Un autre téléphone l’appelle ainsi quand il importe un fichier d’ici.</translation>
    </message>
    <message>
        <source>Written to %1: %2.</source>
        <comment>a file, 3 yards and 85 washes</comment>
        <translation>Écrit dans %1 : %2.</translation>
    </message>
    <message>
        <source>halfcup-%1-%2</source>
        <comment>file name: day, time</comment>
        <translation>halfcup-%1-%2</translation>
    </message>
    <message>
        <source>no records yet</source>
        <translation>aucune donnée encore</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::SituationController</name>
    <message>
        <source>%1 on %2: too long ago to go by</source>
        <comment>frames, day</comment>
        <translation>%1 le %2 : trop ancien pour s’y fier</translation>
    </message>
    <message>
        <source>%1; look again</source>
        <comment>what is written down</comment>
        <translation>%1 ; à revoir</translation>
    </message>
    <message>
        <source>Capped</source>
        <translation>Operculé</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Aucun</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Retirées</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Posées</translation>
    </message>
    <message>
        <source>One for each day from %1 on, 3 to 14 of them: %2</source>
        <translation>Une par jour à partir du %1, de 3 à 14 valeurs : %2</translation>
    </message>
    <message>
        <source>Open only</source>
        <translation>Ouvert seul</translation>
    </message>
    <message>
        <source>Screened</source>
        <translation>Grillagé</translation>
    </message>
    <message>
        <source>Solid</source>
        <translation>Plein</translation>
    </message>
    <message>
        <source>The day</source>
        <translation>Le jour</translation>
    </message>
    <message>
        <source>The number of frames</source>
        <translation>Le nombre de cadres</translation>
    </message>
    <message numerus="yes">
        <source>What you change here is written down for all %n colony(ies). The forecast is not kept.</source>
        <translation>
            <numerusform>Ce que vous changez ici est noté pour la colonie (%n). Les prévisions ne sont pas gardées.</numerusform>
            <numerusform>Ce que vous changez ici est noté pour les %n colonies. Les prévisions ne sont pas gardées.</numerusform>
        </translation>
    </message>
    <message>
        <source>What you change here is written down for the colony. The forecast is not kept.</source>
        <translation>Ce que vous changez ici est noté pour la colonie. Les prévisions ne sont pas gardées.</translation>
    </message>
    <message>
        <source>not written down yet</source>
        <translation>pas encore noté</translation>
    </message>
    <message>
        <source>written down for %1 of %2 colonies, last on %3</source>
        <translation>noté pour %1 sur %2 colonies, la dernière fois le %3</translation>
    </message>
    <message>
        <source>written down on %1</source>
        <translation>noté le %1</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::SourcesController</name>
    <message>
        <source>%1 %2</source>
        <comment>figure and unit</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <comment>range and unit</comment>
        <translation>%1 à %2 %3</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>mark, then a note</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what and how much</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>a choice of this app</source>
        <translation>un choix propre à l’appli</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>pratique courante, sans source</translation>
    </message>
    <message>
        <source>computed from the inputs</source>
        <translation>calculé à partir des données</translation>
    </message>
    <message>
        <source>from %1 %2</source>
        <comment>open range and unit</comment>
        <translation>à partir de %1 %2</translation>
    </message>
    <message>
        <source>published</source>
        <translation>publié</translation>
    </message>
    <message>
        <source>published, figure from memory: check before you rely on it</source>
        <translation>publié, valeur de mémoire : à vérifier avant de s’y fier</translation>
    </message>
    <message>
        <source>quoted in a second source</source>
        <translation>cité dans une seconde source</translation>
    </message>
    <message>
        <source>up to %1 %2</source>
        <comment>open range and unit</comment>
        <translation>jusqu’à %1 %2</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::TrayController</name>
    <message>
        <source>%1, %2</source>
        <comment>how long, where</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1. %2.</source>
        <comment>read aloud: board, how long</comment>
        <translation>%1. %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n hour(s) since the scoop</source>
        <translation>
            <numerusform>%n heure depuis le prélèvement</numerusform>
            <numerusform>%n heures depuis le prélèvement</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hour(s) under the colony</source>
        <translation>
            <numerusform>%n heure sous la colonie</numerusform>
            <numerusform>%n heures sous la colonie</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n jar(s) wait already. Wash some of them first.</source>
        <translation>
            <numerusform>%n bocal attend déjà. Faites d’abord quelques lavages.</numerusform>
            <numerusform>%n bocaux attendent déjà. Faites d’abord quelques lavages.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s) since the scoop</source>
        <translation>
            <numerusform>%n minute depuis le prélèvement</numerusform>
            <numerusform>%n minutes depuis le prélèvement</numerusform>
        </translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Board under colony %1, %2</source>
        <comment>colony, yard</comment>
        <translation>Lange sous la colonie %1, %2</translation>
    </message>
    <message>
        <source>Colony %1, %2</source>
        <comment>colony, yard</comment>
        <translation>Colonie %1, %2</translation>
    </message>
    <message>
        <source>In the tray</source>
        <translation>Dans le casier</translation>
    </message>
    <message>
        <source>Jar %1 is in the tray already, with bees of colony %2. Write another label; %3 is free.</source>
        <translation>Le bocal %1 est déjà dans le casier, avec des abeilles de la colonie %2. Prenez un autre numéro ou nom ; %3 est libre.</translation>
    </message>
    <message>
        <source>Jar %1. %2. %3. %4</source>
        <comment>read aloud: label, colony, how long, step</comment>
        <translation>Bocal %1. %2. %3. %4</translation>
    </message>
    <message>
        <source>Scoop colony %1 next</source>
        <translation>Colonie à prélever : %1</translation>
    </message>
    <message>
        <source>The label</source>
        <translation>Numéro ou nom</translation>
    </message>
    <message>
        <source>The tray is empty</source>
        <translation>Le casier est vide</translation>
    </message>
    <message>
        <source>Wash jar %1</source>
        <translation>Lavage du bocal %1</translation>
    </message>
    <message>
        <source>laid on %1 at %2</source>
        <translation>posé le %1 à %2</translation>
    </message>
    <message>
        <source>no position</source>
        <translation>sans position</translation>
    </message>
    <message>
        <source>position to come</source>
        <translation>position à venir</translation>
    </message>
    <message>
        <source>scooped on %1 at %2</source>
        <translation>prélevé le %1 à %2</translation>
    </message>
    <message>
        <source>waits at: %1</source>
        <translation>attend : %1</translation>
    </message>
    <message>
        <source>within %1</source>
        <translation>à %1 près</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::TreatController</name>
    <message>
        <source>Another substance</source>
        <translation>Une autre substance</translation>
    </message>
    <message>
        <source>Not in the handbook</source>
        <translation>Pas dans le manuel</translation>
    </message>
    <message>
        <source>Record what the handbook does not know. Nothing is said of it here: read its label.</source>
        <translation>Notez ce que le manuel ne connaît pas. Rien n’en est dit ici : lisez son étiquette.</translation>
    </message>
    <message>
        <source>There is no colony here to treat.</source>
        <translation>Il n’y a ici aucune colonie à traiter.</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::TreatmentController</name>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation>%1 au %2</translation>
    </message>
    <message numerus="yes">
        <source>%n colony(ies): %1</source>
        <translation>
            <numerusform>%n colonie : %1</numerusform>
            <numerusform>%n colonies : %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Another substance</source>
        <translation>Une autre substance</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Lot</translation>
    </message>
    <message>
        <source>Begins on %1</source>
        <translation>Commence le %1</translation>
    </message>
    <message>
        <source>Colonies</source>
        <translation>Colonies</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Colonie %1</translation>
    </message>
    <message>
        <source>Done by</source>
        <translation>Fait par</translation>
    </message>
    <message>
        <source>Ended on %1</source>
        <translation>Terminé le %1</translation>
    </message>
    <message>
        <source>Expiry of the product</source>
        <translation>Péremption du produit</translation>
    </message>
    <message>
        <source>First and last day</source>
        <translation>Premier et dernier jour</translation>
    </message>
    <message>
        <source>Fits</source>
        <translation>Convient</translation>
    </message>
    <message>
        <source>Fits with care</source>
        <translation>Avec précaution</translation>
    </message>
    <message>
        <source>Given once: the same day.</source>
        <translation>Donné une fois : le même jour.</translation>
    </message>
    <message>
        <source>Honey may be taken again from %1 on, if it comes out as planned.</source>
        <translation>Le miel peut de nouveau être récolté à partir du %1, si le retrait a lieu comme prévu.</translation>
    </message>
    <message>
        <source>Honey may be taken again from %1 on.</source>
        <translation>Le miel peut de nouveau être récolté à partir du %1.</translation>
    </message>
    <message>
        <source>How much to give stands on the label. The label and your local law outrank this app.</source>
        <translation>La dose figure sur l’étiquette. L’étiquette et la loi de votre pays priment sur cette appli.</translation>
    </message>
    <message>
        <source>No colony yet</source>
        <translation>Aucune colonie</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Pas maintenant</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>Prescribed by</source>
        <translation>Prescrit par</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produit</translation>
    </message>
    <message>
        <source>Proof of purchase</source>
        <translation>Preuve d’achat</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Quantité</translation>
    </message>
    <message>
        <source>Removed from the records; the history keeps it.</source>
        <translation>Supprimé des données ; l’historique le garde.</translation>
    </message>
    <message>
        <source>Running until %1</source>
        <translation>En cours jusqu’au %1</translation>
    </message>
    <message>
        <source>Running: take it out on %1</source>
        <translation>En cours : à retirer le %1</translation>
    </message>
    <message>
        <source>Still in: it should have come out on %1</source>
        <translation>Encore en place : il devait être retiré le %1</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Fournisseur</translation>
    </message>
    <message>
        <source>Taken out on</source>
        <translation>Retiré le</translation>
    </message>
    <message>
        <source>Taken out on %1</source>
        <translation>Retiré le %1</translation>
    </message>
    <message>
        <source>The withdrawal is not written down: look at the label before honey is taken.</source>
        <translation>Le temps d’attente n’est pas noté : regardez l’étiquette avant de récolter du miel.</translation>
    </message>
    <message>
        <source>To be taken out on</source>
        <translation>À retirer le</translation>
    </message>
    <message>
        <source>What the app said of it</source>
        <translation>Ce que l’appli en disait</translation>
    </message>
    <message>
        <source>Withdrawal for honey</source>
        <translation>Temps d’attente pour le miel</translation>
    </message>
    <message>
        <source>by the label</source>
        <translation>selon l’étiquette</translation>
    </message>
    <message>
        <source>by the label; usual course: %1</source>
        <translation>selon l’étiquette ; durée habituelle : %1</translation>
    </message>
    <message>
        <source>by the label; usual course: %1 to %2</source>
        <translation>selon l’étiquette ; durée habituelle : %1 à %2</translation>
    </message>
    <message>
        <source>not written down</source>
        <translation>non noté</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::VerdictMark</name>
    <message>
        <source>Fits</source>
        <translation>Convient</translation>
    </message>
    <message>
        <source>Fits with care</source>
        <translation>Avec précaution</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Pas maintenant</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::WashController</name>
    <message>
        <source>%1 · %2</source>
        <comment>method and step</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Colony %1 · %2</source>
        <translation>Colonie %1 · %2</translation>
    </message>
    <message>
        <source>It has settled</source>
        <comment>spoken</comment>
        <translation>C’est décanté</translation>
    </message>
    <message>
        <source>Jar %1, colony %2 · %3</source>
        <comment>label, colony, step</comment>
        <translation>Bocal %1, colonie %2 · %3</translation>
    </message>
    <message>
        <source>Queen not seen: look at every bee on the frame before you scoop.</source>
        <translation>Reine non vue : regardez chaque abeille du cadre avant de prélever.</translation>
    </message>
    <message>
        <source>Queen seen and safe.</source>
        <translation>Reine vue et en sécurité.</translation>
    </message>
    <message>
        <source>This count was begun with a newer version of the program, by a method that this one does not know. It is kept as it is.</source>
        <translation>Ce comptage a été commencé avec une version plus récente du programme, par une méthode que celle-ci ne connaît pas. Il est gardé tel quel.</translation>
    </message>
    <message>
        <source>step %1 of %2</source>
        <translation>étape %1 sur %2</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::YardPlanController</name>
    <message>
        <source>%1 That is where it was washed, within %2.</source>
        <comment>where a hive stands, how sure</comment>
        <translation>%1 C’est le lieu de ses lavages, à %2 près.</translation>
    </message>
    <message>
        <source>%1 east</source>
        <comment>a step</comment>
        <translation>%1 à l’est</translation>
    </message>
    <message>
        <source>%1 ft</source>
        <comment>feet</comment>
        <translation>%1 pi</translation>
    </message>
    <message>
        <source>%1 m</source>
        <comment>metres</comment>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>%1 north</source>
        <comment>a step</comment>
        <translation>%1 au nord</translation>
    </message>
    <message>
        <source>%1 south</source>
        <comment>a step</comment>
        <translation>%1 au sud</translation>
    </message>
    <message>
        <source>%1 west</source>
        <comment>a step</comment>
        <translation>%1 à l’ouest</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>standing, load and its day</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Colonie %1</translation>
    </message>
    <message>
        <source>Colony %1 has its place. Touch the next hive.</source>
        <translation>Colonie %1 placée. Touchez la ruche suivante.</translation>
    </message>
    <message>
        <source>Colony %1 has no place now. Touch the next hive.</source>
        <translation>Colonie %1 retirée du plan. Touchez la ruche suivante.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>It has no place on the plan yet. The first step starts from the middle.</source>
        <translation>Elle n’est pas encore sur le plan. Le premier pas part du milieu.</translation>
    </message>
    <message>
        <source>It stands %1 east and %2 north of the yard's middle.</source>
        <translation>Elle est à %1 à l’est et %2 au nord du milieu du rucher.</translation>
    </message>
    <message>
        <source>It stands %1 east and %2 south of the yard's middle.</source>
        <translation>Elle est à %1 à l’est et %2 au sud du milieu du rucher.</translation>
    </message>
    <message>
        <source>It stands %1 west and %2 north of the yard's middle.</source>
        <translation>Elle est à %1 à l’ouest et %2 au nord du milieu du rucher.</translation>
    </message>
    <message>
        <source>It stands %1 west and %2 south of the yard's middle.</source>
        <translation>Elle est à %1 à l’ouest et %2 au sud du milieu du rucher.</translation>
    </message>
    <message>
        <source>Move colony %1</source>
        <translation>Placer la colonie %1</translation>
    </message>
    <message>
        <source>Touch a hive to see how it stands.</source>
        <translation>Touchez une ruche pour voir où elle en est.</translation>
    </message>
    <message>
        <source>Touch a hive, then touch where it stands.</source>
        <translation>Touchez une ruche, puis l’endroit où elle se trouve.</translation>
    </message>
    <message>
        <source>Touch where colony %1 stands.</source>
        <translation>Touchez la place de la colonie %1.</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::YardsController</name>
    <message>
        <source>%1 comes after %2. Type the smaller number first.</source>
        <translation>%1 vient après %2. Saisissez d’abord le plus petit numéro.</translation>
    </message>
    <message numerus="yes">
        <source>%n colony(ies)</source>
        <translation>
            <numerusform>%n colonie</numerusform>
            <numerusform>%n colonies</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n colony(ies): %1</source>
        <translation>
            <numerusform>%n colonie : %1</numerusform>
            <numerusform>%n colonies : %1</numerusform>
        </translation>
    </message>
    <message>
        <source>By season: %1. Today the line is %2 per 100.</source>
        <comment>region, line</comment>
        <translation>Selon la saison : %1. Aujourd’hui, le seuil est de %2 pour 100.</translation>
    </message>
    <message>
        <source>Mites must be low by then. In the tropics none is taken to be needed; type one where your bees have a winter.</source>
        <translation>Il faut peu de varroas à cette date. Sous les tropiques, aucune n’est supposée nécessaire ; saisissez-en une si vos abeilles ont un hiver.</translation>
    </message>
    <message>
        <source>Mites must be low by then. Nothing typed: %1, as in the north, because the yard has no position.</source>
        <translation>Il faut peu de varroas à cette date. Si rien n’est saisi : %1, comme dans le nord, car le rucher n’a pas de position.</translation>
    </message>
    <message>
        <source>Mites must be low by then. Nothing typed: %1, half a year after the north.</source>
        <translation>Il faut peu de varroas à cette date. Si rien n’est saisi : %1, une demi-année après le nord.</translation>
    </message>
    <message>
        <source>Mites must be low by then. Nothing typed: %1, usual in the north.</source>
        <translation>Il faut peu de varroas à cette date. Si rien n’est saisi : %1, habituel dans le nord.</translation>
    </message>
    <message>
        <source>No colonies yet</source>
        <translation>Pas encore de colonies</translation>
    </message>
    <message>
        <source>No position yet</source>
        <translation>Pas encore de position</translation>
    </message>
    <message>
        <source>Save the yard first, then add its colonies.</source>
        <translation>Enregistrez d’abord le rucher, puis ajoutez ses colonies.</translation>
    </message>
    <message numerus="yes">
        <source>That would be %n colonies at once. %1 is the most.</source>
        <translation>
            <numerusform>Cela ferait %n colonie à la fois. %1 au plus.</numerusform>
            <numerusform>Cela ferait %n colonies à la fois. %1 au plus.</numerusform>
        </translation>
    </message>
    <message>
        <source>The day of the first wash</source>
        <translation>Le jour du premier lavage</translation>
    </message>
    <message>
        <source>The label</source>
        <translation>Numéro ou nom</translation>
    </message>
    <message>
        <source>The treat line</source>
        <translation>Le seuil de traitement</translation>
    </message>
    <message>
        <source>The turn date</source>
        <translation>La date charnière</translation>
    </message>
    <message>
        <source>The yard's name</source>
        <translation>Le nom du rucher</translation>
    </message>
    <message>
        <source>There is a colony %1 in this yard already. Nothing was added.</source>
        <translation>Il y a déjà une colonie %1 dans ce rucher. Rien n’a été ajouté.</translation>
    </message>
    <message>
        <source>When colonies can be opened. Nothing typed: from the first visit of the year, %1.</source>
        <translation>Quand les colonies peuvent être ouvertes. Si rien n’est saisi : à partir de la première visite de l’année, %1.</translation>
    </message>
    <message>
        <source>When colonies can be opened. Nothing typed: from the first visit of the year, or %1.</source>
        <translation>Quand les colonies peuvent être ouvertes. Si rien n’est saisi : à partir de la première visite de l’année, ou du %1.</translation>
    </message>
    <message>
        <source>Your own line</source>
        <translation>Votre seuil personnel</translation>
    </message>
    <message>
        <source>no position</source>
        <translation>sans position</translation>
    </message>
</context>
</TS>
