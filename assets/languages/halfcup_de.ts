<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>AnswerPage</name>
    <message>
        <source>Count these bees</source>
        <translation>Diese Bienen zählen</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>This colony</source>
        <translation>Dieses Volk</translation>
    </message>
    <message>
        <source>What to treat with</source>
        <translation>Womit behandeln</translation>
    </message>
    <message>
        <source>Where this comes from</source>
        <translation>Woher das kommt</translation>
    </message>
</context>
<context>
    <name>BackupPage</name>
    <message>
        <source>Backups on this phone</source>
        <translation>Sicherungen auf diesem Telefon</translation>
    </message>
    <message>
        <source>Choose one that lies elsewhere</source>
        <translation>Eine von anderswo wählen</translation>
    </message>
    <message>
        <source>It holds the exact places of your hives. Give it to nobody.</source>
        <translation>Sie enthält die genauen Standorte der Völker. Niemandem geben.</translation>
    </message>
    <message>
        <source>Keep safe</source>
        <translation>Sichern</translation>
    </message>
    <message>
        <source>Make a backup</source>
        <translation>Sicherung anlegen</translation>
    </message>
    <message>
        <source>one file, checked</source>
        <translation>eine Datei, geprüft</translation>
    </message>
</context>
<context>
    <name>BackupSheets</name>
    <message>
        <source>Leave all as it is</source>
        <translation>Alles so lassen</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>So lassen</translation>
    </message>
    <message>
        <source>Put it back</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>Put this one back</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>Put this one back?</source>
        <translation>Diese wiederherstellen?</translation>
    </message>
</context>
<context>
    <name>BoardCellsStep</name>
    <message>
        <source>A part of its cells</source>
        <translation>Ein Teil der Felder</translation>
    </message>
    <message>
        <source>Cells on the whole board</source>
        <translation>Felder der ganzen Windel</translation>
    </message>
    <message>
        <source>Cells you count</source>
        <translation>Gezählte Felder</translation>
    </message>
</context>
<context>
    <name>CheckPage</name>
    <message>
        <source>Where this comes from</source>
        <translation>Woher das kommt</translation>
    </message>
</context>
<context>
    <name>ChoiceOutlook</name>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>Sooner</source>
        <translation>Früher</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>Was wäre, wenn</translation>
    </message>
</context>
<context>
    <name>ChoicePage</name>
    <message>
        <source>Record this treatment</source>
        <translation>Diese Behandlung notieren</translation>
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
        <translation>Wirkstoff</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>bees counted</source>
        <translation>gezählte Bienen</translation>
    </message>
    <message>
        <source>brood</source>
        <translation>Brut</translation>
    </message>
    <message>
        <source>cells counted</source>
        <translation>gezählte Felder</translation>
    </message>
    <message>
        <source>cells opened</source>
        <translation>geöffnete Zellen</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>Volk</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>done by</source>
        <translation>ausgeführt von</translation>
    </message>
    <message>
        <source>end</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>expiry</source>
        <translation>Verfallsdatum</translation>
    </message>
    <message>
        <source>first day</source>
        <translation>erster Tag</translation>
    </message>
    <message>
        <source>first visit</source>
        <translation>erster Besuch</translation>
    </message>
    <message>
        <source>first wash from</source>
        <translation>erste Waschprobe ab</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>frames of bees</source>
        <translation>besetzte Waben</translation>
    </message>
    <message>
        <source>jar</source>
        <translation>Glas</translation>
    </message>
    <message>
        <source>label</source>
        <translation>Beschriftung</translation>
    </message>
    <message>
        <source>last day</source>
        <translation>letzter Tag</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>longitude</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>metres east on the plan</source>
        <translation>Meter nach Osten im Plan</translation>
    </message>
    <message>
        <source>metres north on the plan</source>
        <translation>Meter nach Norden im Plan</translation>
    </message>
    <message>
        <source>mites</source>
        <translation>Milben</translation>
    </message>
    <message>
        <source>mites of the second rinse</source>
        <translation>Milben der zweiten Spülung</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>one that is not known here</source>
        <translation>hier nicht bekannt</translation>
    </message>
    <message>
        <source>other colony</source>
        <translation>anderes Volk</translation>
    </message>
    <message>
        <source>other yard</source>
        <translation>anderer Stand</translation>
    </message>
    <message>
        <source>own line</source>
        <translation>eigene Schwelle</translation>
    </message>
    <message>
        <source>prescriber</source>
        <translation>verschrieben von</translation>
    </message>
    <message>
        <source>product</source>
        <translation>Produkt</translation>
    </message>
    <message>
        <source>quantity</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>queen</source>
        <translation>Königin</translation>
    </message>
    <message>
        <source>reach in metres</source>
        <translation>Umkreis in Metern</translation>
    </message>
    <message>
        <source>receipt</source>
        <translation>Beleg</translation>
    </message>
    <message>
        <source>region of the lines</source>
        <translation>Region der Schwellen</translation>
    </message>
    <message>
        <source>registration number</source>
        <translation>Registriernummer</translation>
    </message>
    <message>
        <source>removal due</source>
        <translation>Entnahme fällig</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>entfernt</translation>
    </message>
    <message>
        <source>scoop in ml</source>
        <translation>Becher in ml</translation>
    </message>
    <message>
        <source>supplier</source>
        <translation>Bezugsquelle</translation>
    </message>
    <message>
        <source>taken out on</source>
        <translation>entnommen am</translation>
    </message>
    <message>
        <source>the same as</source>
        <translation>dasselbe wie</translation>
    </message>
    <message>
        <source>treat line</source>
        <translation>Behandlungsschwelle</translation>
    </message>
    <message>
        <source>turn date</source>
        <translation>Stichtag</translation>
    </message>
    <message>
        <source>what happened</source>
        <translation>Ereignis</translation>
    </message>
    <message>
        <source>withdrawal days</source>
        <translation>Wartezeit in Tagen</translation>
    </message>
    <message>
        <source>yard</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
</context>
<context>
    <name>ColonyEntries</name>
    <message>
        <source>%1 per 100 on %2</source>
        <comment>a load and a date</comment>
        <translation>%1 je 100 am %2</translation>
    </message>
    <message>
        <source>Colony %1. %2. %3</source>
        <comment>read aloud: label, standing, what is due</comment>
        <translation>Volk %1. %2. %3</translation>
    </message>
    <message>
        <source>Colony %1. %2. %3. %4</source>
        <comment>read aloud: label, standing, load, what is due</comment>
        <translation>Volk %1. %2. %3. %4</translation>
    </message>
    <message>
        <source>In the tray: jar %1</source>
        <translation>In der Kiste: Glas %1</translation>
    </message>
    <message>
        <source>Not washed this year</source>
        <translation>Dieses Jahr ohne Waschprobe</translation>
    </message>
</context>
<context>
    <name>ColonyFoot</name>
    <message>
        <source>Change its number or name</source>
        <translation>Nummer oder Name ändern</translation>
    </message>
    <message>
        <source>What changed</source>
        <translation>Änderungen</translation>
    </message>
</context>
<context>
    <name>ColonyHead</name>
    <message>
        <source>Count another way</source>
        <translation>Anders zählen</translation>
    </message>
    <message>
        <source>No wash, no treatment and nothing else is written down yet.</source>
        <translation>Noch keine Waschprobe, keine Behandlung und nichts anderes notiert.</translation>
    </message>
    <message>
        <source>Something happened</source>
        <translation>Ereignis notieren</translation>
    </message>
    <message>
        <source>Treat</source>
        <translation>Behandeln</translation>
    </message>
</context>
<context>
    <name>ColonyLoads</name>
    <message>
        <source>All years</source>
        <translation>Alle Jahre</translation>
    </message>
    <message>
        <source>Earlier wash</source>
        <translation>Frühere Probe</translation>
    </message>
    <message>
        <source>Last season</source>
        <translation>Vorige Saison</translation>
    </message>
    <message>
        <source>Later wash</source>
        <translation>Spätere Probe</translation>
    </message>
</context>
<context>
    <name>ColonyName</name>
    <message>
        <source>Keep</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>So lassen</translation>
    </message>
    <message>
        <source>Number or name</source>
        <translation>Nummer oder Name</translation>
    </message>
    <message>
        <source>The number or the name by which you know this colony.</source>
        <translation>Nummer oder Name, unter dem du dieses Volk kennst.</translation>
    </message>
    <message>
        <source>What is on the hive?</source>
        <translation>Was steht auf der Beute?</translation>
    </message>
</context>
<context>
    <name>ColonyPage</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>On a day</source>
        <translation>An einem Tag</translation>
    </message>
</context>
<context>
    <name>ColonyStep</name>
    <message>
        <source>Colony %1</source>
        <translation>Volk %1</translation>
    </message>
    <message>
        <source>No colony to count</source>
        <translation>Kein Volk zu zählen</translation>
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
        <translation>Wabe mit hundert Zellen: %1 gefüllt, %2 weitere halb gefüllt, und mehr, als die Wabe fasst.</translation>
    </message>
    <message>
        <source>Comb of a hundred cells: %1 filled, %2 more half filled.</source>
        <translation>Wabe mit hundert Zellen: %1 gefüllt, %2 weitere halb gefüllt.</translation>
    </message>
    <message>
        <source>and more than the comb holds</source>
        <translation>und mehr, als die Wabe fasst</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>mindestens</translation>
    </message>
    <message>
        <source>perhaps</source>
        <translation>vielleicht</translation>
    </message>
</context>
<context>
    <name>ComparePage</name>
    <message>
        <source>Colonies compared</source>
        <translation>Völker im Vergleich</translation>
    </message>
</context>
<context>
    <name>CompareWords</name>
    <message>
        <source>Hide the words</source>
        <translation>Worte zuklappen</translation>
    </message>
    <message>
        <source>The same in words</source>
        <translation>Dasselbe in Worten</translation>
    </message>
</context>
<context>
    <name>CountBar</name>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>None found</source>
        <translation>Keine Milbe</translation>
    </message>
    <message>
        <source>Type it</source>
        <translation>Zahl tippen</translation>
    </message>
    <message>
        <source>Undo last</source>
        <translation>Eins zurück</translation>
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
        <translation>Beim Wiegen gilt das Handbuchgewicht einer Biene; deshalb zählt es nicht als eigener Becher.</translation>
    </message>
    <message>
        <source>Bees in the jar</source>
        <translation>Bienen im Glas</translation>
    </message>
    <message>
        <source>Count these bees</source>
        <translation>Diese Bienen zählen</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Gezählt</translation>
    </message>
    <message>
        <source>Grams, without the jar</source>
        <translation>Gramm, ohne das Glas</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <source>Is that right?</source>
        <translation>Stimmt das?</translation>
    </message>
    <message>
        <source>It counts for all your later scoops of this size, and this wash is judged anew with it.</source>
        <translation>Sie gilt für alle späteren Becher dieser Größe, und diese Waschprobe wird damit neu bewertet.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>No, go back</source>
        <translation>Nein, zurück</translation>
    </message>
    <message>
        <source>One bee more</source>
        <translation>Eine Biene mehr</translation>
    </message>
    <message>
        <source>Ten bees more</source>
        <translation>Zehn Bienen mehr</translation>
    </message>
    <message>
        <source>The bees are</source>
        <translation>Die Bienen sind</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Gewogen</translation>
    </message>
    <message>
        <source>Yes, keep it</source>
        <translation>Ja, speichern</translation>
    </message>
</context>
<context>
    <name>CountFace</name>
    <message>
        <source>On wet glass, two touches of one point at once count as one.</source>
        <translation>Auf nassem Display zählen zwei Berührungen zugleich an einem Punkt als eine.</translation>
    </message>
    <message>
        <source>or press a volume key</source>
        <translation>oder eine Lautstärketaste drücken</translation>
    </message>
</context>
<context>
    <name>CountStep</name>
    <message>
        <source>Go on counting</source>
        <translation>Weiterzählen</translation>
    </message>
    <message>
        <source>None found</source>
        <translation>Keine gefunden</translation>
    </message>
    <message>
        <source>None found?</source>
        <translation>Keine gefunden?</translation>
    </message>
</context>
<context>
    <name>DayField</name>
    <message>
        <source>%1: a day earlier</source>
        <translation>%1: einen Tag früher</translation>
    </message>
    <message>
        <source>%1: a day later</source>
        <translation>%1: einen Tag später</translation>
    </message>
    <message>
        <source>+ 1 day</source>
        <translation>+ 1 Tag</translation>
    </message>
    <message>
        <source>− 1 day</source>
        <translation>− 1 Tag</translation>
    </message>
</context>
<context>
    <name>DemoBadge</name>
    <message>
        <source>Demo</source>
        <translation>Demo</translation>
    </message>
</context>
<context>
    <name>EventDay</name>
    <message>
        <source>A day earlier</source>
        <translation>Einen Tag früher</translation>
    </message>
    <message>
        <source>A day later</source>
        <translation>Einen Tag später</translation>
    </message>
    <message>
        <source>Another day</source>
        <translation>Anderer Tag</translation>
    </message>
    <message>
        <source>Such as 3 May, or 2026-05-03</source>
        <translation>Zum Beispiel 3. Mai oder 2026-05-03</translation>
    </message>
</context>
<context>
    <name>EventDetails</name>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>One less</source>
        <translation>Eine weniger</translation>
    </message>
    <message>
        <source>One more</source>
        <translation>Eine mehr</translation>
    </message>
</context>
<context>
    <name>EventPage</name>
    <message>
        <source>Is that so?</source>
        <translation>Stimmt das?</translation>
    </message>
    <message>
        <source>It counts no more for this colony. The history keeps that it was written down.</source>
        <translation>Für dieses Volk zählt es dann nicht mehr. Der Verlauf bewahrt, dass es notiert war.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>So lassen</translation>
    </message>
    <message>
        <source>No, go back</source>
        <translation>Nein, zurück</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Take it back?</source>
        <translation>Zurücknehmen?</translation>
    </message>
    <message>
        <source>Yes, keep it</source>
        <translation>Ja, speichern</translation>
    </message>
</context>
<context>
    <name>EventWords</name>
    <message>
        <source>%1 has not come yet. Keep it on the day it happens.</source>
        <translation>Der %1 kommt erst noch. An dem Tag speichern, an dem es geschieht.</translation>
    </message>
    <message>
        <source>A colony cannot be put into itself. Touch another one.</source>
        <translation>Ein Volk kann nicht mit sich selbst vereinigt werden. Ein anderes antippen.</translation>
    </message>
    <message>
        <source>By your records colony %1 has its supers on already.</source>
        <translation>Laut Aufzeichnungen hat Volk %1 den Honigraum schon drauf.</translation>
    </message>
    <message>
        <source>By your records colony %1 has no supers on.</source>
        <translation>Laut Aufzeichnungen hat Volk %1 keinen Honigraum drauf.</translation>
    </message>
    <message>
        <source>By your records colony %1 was gone before %2.</source>
        <translation>Laut Aufzeichnungen gab es Volk %1 vor dem %2 schon nicht mehr.</translation>
    </message>
    <message>
        <source>Colony %1 ends with this. It leaves the lists of what is due; all its records stay.</source>
        <translation>Volk %1 endet damit. Es verschwindet aus den Listen des Fälligen; alle Aufzeichnungen bleiben.</translation>
    </message>
    <message>
        <source>Colony %1 is dead? It leaves the lists of what is due; all its records stay.</source>
        <translation>Volk %1 ist tot? Es verschwindet aus den Listen des Fälligen; alle Aufzeichnungen bleiben.</translation>
    </message>
    <message>
        <source>Colony %1: %2 is in the hive until %3, and its withdrawal is not written down. Supers only where the label allows them.</source>
        <translation>Volk %1: %2 ist bis %3 im Volk, und die Wartezeit ist nicht notiert. Honigraum nur, wo die Packungsbeilage es erlaubt.</translation>
    </message>
    <message>
        <source>Colony %1: %2 is in the hive, and honey may not be taken before %3. Supers only where the label allows them.</source>
        <translation>Volk %1: %2 ist im Volk, und vor dem %3 darf kein Honig entnommen werden. Honigraum nur, wo die Packungsbeilage es erlaubt.</translation>
    </message>
    <message>
        <source>Colony %1: honey may not be taken before %2, after %3. Supers that go on now can spoil honey.</source>
        <translation>Volk %1: Vor dem %2 darf kein Honig entnommen werden, nach %3. Ein Honigraum, der jetzt draufkommt, kann Honig verderben.</translation>
    </message>
    <message>
        <source>Frames covered with bees: from 0 to %1.</source>
        <translation>Besetzte Waben: von 0 bis %1.</translation>
    </message>
    <message>
        <source>It stands in %1 already on that day. Touch another yard, or go back.</source>
        <translation>Es steht an dem Tag schon hier: %1. Einen anderen Stand antippen, oder zurück.</translation>
    </message>
    <message>
        <source>There is no such day. Type it like 18 May 2026.</source>
        <translation>Diesen Tag gibt es nicht. Bitte so eingeben: 18. Mai 2026.</translation>
    </message>
    <message>
        <source>Touch the colony it was put into.</source>
        <translation>Das Volk antippen, mit dem vereinigt wurde.</translation>
    </message>
    <message>
        <source>Touch the yard it was moved to.</source>
        <translation>Den Stand antippen, an den umgestellt wurde.</translation>
    </message>
    <message>
        <source>Touch what you saw.</source>
        <translation>Antippen, was zu sehen war.</translation>
    </message>
    <message>
        <source>Type how many frames are covered with bees.</source>
        <translation>Eingeben, wie viele Waben besetzt sind.</translation>
    </message>
</context>
<context>
    <name>ExportFile</name>
    <message>
        <source>%1 cannot be written. Nothing was written.</source>
        <translation>%1 kann nicht geschrieben werden. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>%1 cannot be written: the folder is read-only. Nothing was written.</source>
        <translation>%1 kann nicht geschrieben werden: Der Ordner ist schreibgeschützt. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>%1 could not be written. Your records are safe.</source>
        <translation>%1 konnte nicht geschrieben werden. Die Aufzeichnungen sind sicher.</translation>
    </message>
    <message>
        <source>%1 is a folder, not a file. Nothing was written.</source>
        <translation>%1 ist ein Ordner, keine Datei. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>%1, handed to the browser</source>
        <comment>a file's name</comment>
        <translation>%1, an den Browser übergeben</translation>
    </message>
    <message>
        <source>The folder for %1 is not there. Nothing was written.</source>
        <translation>Der Ordner für %1 ist nicht da. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>The storage is full. %1 was not written; your records are safe.</source>
        <translation>Der Speicher ist voll. %1 wurde nicht geschrieben; die Aufzeichnungen sind sicher.</translation>
    </message>
    <message>
        <source>This phone has no place for files to hand on.</source>
        <translation>Dieses Telefon hat keinen Ort für Dateien zum Weitergeben.</translation>
    </message>
</context>
<context>
    <name>ExportPage</name>
    <message>
        <source>1,5; semicolons</source>
        <translation>1,5; Semikolons</translation>
    </message>
    <message>
        <source>1.5, commas</source>
        <translation>1.5, Kommas</translation>
    </message>
    <message>
        <source>Blurred</source>
        <translation>Verwischt</translation>
    </message>
    <message>
        <source>Exact, this time</source>
        <translation>Diesmal genau</translation>
    </message>
    <message>
        <source>For people</source>
        <translation>Für Menschen</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Weglassen</translation>
    </message>
    <message>
        <source>Spreadsheet expects</source>
        <translation>Tabellenprogramm erwartet</translation>
    </message>
    <message>
        <source>Where your hives stand</source>
        <translation>Wo die Völker stehen</translation>
    </message>
</context>
<context>
    <name>FirstStartPage</name>
    <message>
        <source>Understood, go on</source>
        <translation>Verstanden, weiter</translation>
    </message>
</context>
<context>
    <name>FolderPage</name>
    <message>
        <source>Each phone puts what it records into a file of its own in this folder, and reads the files of the others. Let any program that keeps folders alike carry it from phone to phone.</source>
        <translation>Jedes Telefon schreibt, was es notiert, in eine eigene Datei in diesem Ordner und liest die Dateien der anderen. Ein beliebiges Programm, das Ordner abgleicht, kann ihn von Telefon zu Telefon bringen.</translation>
    </message>
    <message>
        <source>Exchange folder</source>
        <translation>Austauschordner</translation>
    </message>
    <message>
        <source>Exchange now</source>
        <translation>Jetzt austauschen</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Ordner</translation>
    </message>
    <message>
        <source>It holds the exact places of your hives. Whoever reads the folder knows them.</source>
        <translation>Er enthält die genauen Standorte der Völker. Wer den Ordner liest, kennt sie.</translation>
    </message>
    <message>
        <source>It is made where there is none.</source>
        <translation>Er wird angelegt, wenn es ihn nicht gibt.</translation>
    </message>
    <message>
        <source>Stop using this folder</source>
        <translation>Ordner nicht mehr benutzen</translation>
    </message>
    <message>
        <source>To use another one, stop using this first.</source>
        <translation>Für einen anderen Ordner diesen zuerst nicht mehr benutzen.</translation>
    </message>
    <message>
        <source>Use this folder</source>
        <translation>Diesen Ordner benutzen</translation>
    </message>
    <message>
        <source>from now on, whenever the app is opened</source>
        <translation>ab jetzt bei jedem Öffnen der App</translation>
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
        <translation>Datei wählen</translation>
    </message>
    <message>
        <source>Choose another file</source>
        <translation>Andere Datei wählen</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Neu suchen</translation>
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
        <translation>% Fehler</translation>
    </message>
    <message>
        <source>% isopropyl alcohol</source>
        <translation>% Isopropylalkohol</translation>
    </message>
    <message>
        <source>0.017 to 0.021 per day.</source>
        <translation>0,017 bis 0,021 pro Tag.</translation>
    </message>
    <message>
        <source>0.4 +/- 9.5 %.</source>
        <translation>0,4 +/- 9,5 %.</translation>
    </message>
    <message>
        <source>0.99 to the power of 100</source>
        <translation>0,99 hoch 100</translation>
    </message>
    <message>
        <source>0.99 to the power of 300</source>
        <translation>0,99 hoch 300</translation>
    </message>
    <message>
        <source>100 (x - y) / x, x living untreated, y living treated</source>
        <translation>100 (x - y) / x, x lebend unbehandelt, y lebend behandelt</translation>
    </message>
    <message>
        <source>100 [1 - (Ta/Tb)(Cb/Ca)], T treated, C control, b before, a after</source>
        <translation>100 [1 - (Ta/Tb)(Cb/Ca)], T behandelt, C Kontrolle, b davor, a danach</translation>
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
        <translation>15. August</translation>
    </message>
    <message>
        <source>150 leaves: 70 38 17 10 9 3 2 1 with 0 to 7 mites.</source>
        <translation>150 Blätter: 70 38 17 10 9 3 2 1 mit 0 bis 7 Milben.</translation>
    </message>
    <message>
        <source>18.3 g per hundred bees, from 175 samples. Not the mass of live bees.</source>
        <translation>18,3 g je hundert Bienen, aus 175 Proben. Nicht das Gewicht lebender Bienen.</translation>
    </message>
    <message>
        <source>2,313 of 2,343 mites in 114 samples.</source>
        <translation>2.313 von 2.343 Milben in 114 Proben.</translation>
    </message>
    <message>
        <source>3.38 bees per ml.</source>
        <translation>3,38 Bienen je ml.</translation>
    </message>
    <message>
        <source>300 bees divided by the volume of a half cup</source>
        <translation>300 Bienen geteilt durch den Inhalt einer halben Tasse</translation>
    </message>
    <message>
        <source>43 mites on 310 bees</source>
        <translation>43 Milben auf 310 Bienen</translation>
    </message>
    <message>
        <source>5 mites in a half cup</source>
        <translation>5 Milben in einer halben Tasse</translation>
    </message>
    <message>
        <source>50 % follows from the rule of doubling; 70 % and more is often said.</source>
        <translation>50 % folgen aus der Verdopplungsregel; 70 % und mehr werden oft genannt.</translation>
    </message>
    <message>
        <source>50 to 85 F. The first three days matter most.</source>
        <translation>50 bis 85 °F. Die ersten drei Tage zählen am meisten.</translation>
    </message>
    <message>
        <source>76.5 +/- 7.1 %, on cardboard.</source>
        <translation>76,5 +/- 7,1 %, auf Karton.</translation>
    </message>
    <message>
        <source>9 mites in a half cup</source>
        <translation>9 Milben in einer halben Tasse</translation>
    </message>
    <message>
        <source>92.9 +/- 5.5 %.</source>
        <translation>92,9 +/- 5,5 %.</translation>
    </message>
    <message>
        <source>A bee drained after an alcohol wash</source>
        <translation>Eine nach der Waschprobe mit Alkohol abgetropfte Biene</translation>
    </message>
    <message>
        <source>A bee in these rates</source>
        <translation>Eine Biene in diesen Raten</translation>
    </message>
    <message>
        <source>A caged queen or a nucleus made up, some three weeks until the last brood has hatched, then a treatment that fits a broodless colony.</source>
        <translation>Eine gekäfigte Königin oder einen Ableger, etwa drei Wochen, bis die letzte Brut geschlüpft ist, dann eine Behandlung, die zu einem brutfreien Volk passt.</translation>
    </message>
    <message>
        <source>A careful keeper's own line</source>
        <translation>Eigene Schwelle für Vorsichtige</translation>
    </message>
    <message>
        <source>A colony and its mites through the year</source>
        <translation>Ein Volk und seine Milben im Jahreslauf</translation>
    </message>
    <message>
        <source>A drone frame, cut out once capped and before the drones hatch (14 to 15 days capped), again and again in the drone season.</source>
        <translation>Eine Drohnenwabe, ausgeschnitten, wenn sie verdeckelt ist und bevor die Drohnen schlüpfen (14 bis 15 Tage verdeckelt), immer wieder in der Drohnenzeit.</translation>
    </message>
    <message>
        <source>A floor of mesh, with the board out but for counts.</source>
        <translation>Einen Boden aus Gitter; die Windel nur zum Zählen darunter.</translation>
    </message>
    <message>
        <source>A live worker on the wash scale</source>
        <translation>Eine lebende Arbeiterin auf der Waage</translation>
    </message>
    <message>
        <source>A mated queen of such stock, and a colony that accepts her.</source>
        <translation>Eine begattete Königin solcher Herkunft und ein Volk, das sie annimmt.</translation>
    </message>
    <message>
        <source>A mature worker</source>
        <translation>Eine ausgereifte Arbeiterin</translation>
    </message>
    <message>
        <source>A measure slows mites down; by itself it seldom brings a load that is over the line under it again.</source>
        <translation>Eine Maßnahme bremst Milben; für sich allein bringt sie einen Befall über der Schwelle selten wieder darunter.</translation>
    </message>
    <message>
        <source>A monoamine-oxidase inhibitor: keep off skin and eyes.</source>
        <translation>Hemmt die Monoaminoxidase: von Haut und Augen fernhalten.</translation>
    </message>
    <message>
        <source>A nerve poison for people too: gloves, and do what the label says.</source>
        <translation>Auch für Menschen ein Nervengift: Handschuhe, und tun, was die Packungsbeilage sagt.</translation>
    </message>
    <message>
        <source>A sugar roll against a wash of the same bees</source>
        <translation>Eine Puderzuckerprobe gegen eine Waschprobe derselben Bienen</translation>
    </message>
    <message>
        <source>A tenth from scoop to scoop and 7 % common to all scoops of one hand.</source>
        <translation>Ein Zehntel von Becher zu Becher und 7 %, die allen Bechern einer Hand gemeinsam sind.</translation>
    </message>
    <message>
        <source>A tenth of the mean.</source>
        <translation>Ein Zehntel des Mittels.</translation>
    </message>
    <message>
        <source>A worker full of honey</source>
        <translation>Eine Arbeiterin mit voller Honigblase</translation>
    </message>
    <message>
        <source>A worker just emerged</source>
        <translation>Eine frisch geschlüpfte Arbeiterin</translation>
    </message>
    <message>
        <source>Abbott 1925, J Econ Entomol 18:265</source>
        <translation>Abbott 1925, J Econ Entomol 18:265</translation>
    </message>
    <message>
        <source>About four weeks.</source>
        <translation>Etwa vier Wochen.</translation>
    </message>
    <message>
        <source>About six weeks.</source>
        <translation>Etwa sechs Wochen.</translation>
    </message>
    <message>
        <source>About; so a frame without brood makes the load look too low.</source>
        <translation>Etwa; eine Wabe ohne Brut lässt den Befall deshalb zu niedrig aussehen.</translation>
    </message>
    <message>
        <source>About; the entrance stays fully open.</source>
        <translation>Etwa; das Flugloch bleibt ganz offen.</translation>
    </message>
    <message>
        <source>Above this load no line means anything</source>
        <translation>Über diesem Befall bedeutet keine Schwelle mehr etwas</translation>
    </message>
    <message>
        <source>Above this share: treat.</source>
        <translation>Über diesem Anteil: behandeln.</translation>
    </message>
    <message>
        <source>Active substance</source>
        <translation>Wirkstoff</translation>
    </message>
    <message>
        <source>Active substances</source>
        <translation>Wirkstoffe</translation>
    </message>
    <message>
        <source>Adult bees of one frame of a brood box.</source>
        <translation>Erwachsene Bienen von einer Wabe aus dem Brutraum.</translation>
    </message>
    <message>
        <source>Adult bees, middle of April</source>
        <translation>Erwachsene Bienen, Mitte April</translation>
    </message>
    <message>
        <source>Adult bees, middle of August</source>
        <translation>Erwachsene Bienen, Mitte August</translation>
    </message>
    <message>
        <source>Adult bees, middle of December</source>
        <translation>Erwachsene Bienen, Mitte Dezember</translation>
    </message>
    <message>
        <source>Adult bees, middle of February</source>
        <translation>Erwachsene Bienen, Mitte Februar</translation>
    </message>
    <message>
        <source>Adult bees, middle of January</source>
        <translation>Erwachsene Bienen, Mitte Januar</translation>
    </message>
    <message>
        <source>Adult bees, middle of July</source>
        <translation>Erwachsene Bienen, Mitte Juli</translation>
    </message>
    <message>
        <source>Adult bees, middle of June</source>
        <translation>Erwachsene Bienen, Mitte Juni</translation>
    </message>
    <message>
        <source>Adult bees, middle of March</source>
        <translation>Erwachsene Bienen, Mitte März</translation>
    </message>
    <message>
        <source>Adult bees, middle of May</source>
        <translation>Erwachsene Bienen, Mitte Mai</translation>
    </message>
    <message>
        <source>Adult bees, middle of November</source>
        <translation>Erwachsene Bienen, Mitte November</translation>
    </message>
    <message>
        <source>Adult bees, middle of October</source>
        <translation>Erwachsene Bienen, Mitte Oktober</translation>
    </message>
    <message>
        <source>Adult bees, middle of September</source>
        <translation>Erwachsene Bienen, Mitte September</translation>
    </message>
    <message>
        <source>After Calatayud &amp; Verdu 1993 and Martin 1998</source>
        <translation>Nach Calatayud &amp; Verdu 1993 und Martin 1998</translation>
    </message>
    <message>
        <source>Agency pages on satellite positioning</source>
        <translation>Behördenseiten zur Satellitenortung</translation>
    </message>
    <message>
        <source>Agrees with counted washes of Aurell et al. 2025: a tenth a scoop.</source>
        <translation>Stimmt mit gezählten Waschproben von Aurell et al. 2025 überein: ein Zehntel je Becher.</translation>
    </message>
    <message>
        <source>Alberta</source>
        <translation>Alberta</translation>
    </message>
    <message>
        <source>Alberta, fall</source>
        <translation>Alberta, Herbst</translation>
    </message>
    <message>
        <source>Alberta, spring</source>
        <translation>Alberta, Frühjahr</translation>
    </message>
    <message>
        <source>Alcohol</source>
        <translation>Alkohol</translation>
    </message>
    <message>
        <source>Alcohol by hand, one minute, first rinse</source>
        <translation>Alkohol von Hand, eine Minute, erste Spülung</translation>
    </message>
    <message>
        <source>Alcohol for the wash</source>
        <translation>Alkohol für die Waschprobe</translation>
    </message>
    <message>
        <source>Amitraz</source>
        <translation>Amitraz</translation>
    </message>
    <message>
        <source>Aurell et al. 2024, J Insect Sci (data CC-BY-4.0)</source>
        <translation>Aurell et al. 2024, J Insect Sci (Daten CC-BY-4.0)</translation>
    </message>
    <message>
        <source>Aurell et al. 2025, J Econ Entomol, doi 10.1093/jee/toaf126 (data CC-BY-4.0)</source>
        <translation>Aurell et al. 2025, J Econ Entomol, doi 10.1093/jee/toaf126 (Daten CC-BY-4.0)</translation>
    </message>
    <message>
        <source>Bavaria</source>
        <translation>Bayern</translation>
    </message>
    <message>
        <source>Bavaria, July: treat at once</source>
        <translation>Bayern, Juli: sofort behandeln</translation>
    </message>
    <message>
        <source>Bavaria, July: treat soon</source>
        <translation>Bayern, Juli: bald behandeln</translation>
    </message>
    <message>
        <source>Bees counted in washes of one study</source>
        <translation>Gezählte Bienen in Waschproben einer Studie</translation>
    </message>
    <message>
        <source>Bees for one colony</source>
        <translation>Bienen für ein Volk</translation>
    </message>
    <message>
        <source>Bees have to move about.</source>
        <translation>Die Bienen müssen umherlaufen.</translation>
    </message>
    <message>
        <source>Bees in a half cup, highest published figure</source>
        <translation>Bienen in einer halben Tasse, höchste veröffentlichte Zahl</translation>
    </message>
    <message>
        <source>Bees in a half cup, the trade's figure</source>
        <translation>Bienen in einer halben Tasse, Faustzahl</translation>
    </message>
    <message>
        <source>Bees in later washes of the same study</source>
        <translation>Bienen in späteren Waschproben derselben Studie</translation>
    </message>
    <message>
        <source>Bees in one US fluid ounce, after tapping</source>
        <translation>Bienen in einer US-Flüssigunze, nach Klopfen</translation>
    </message>
    <message>
        <source>Bees in the scoop</source>
        <translation>Bienen im Becher</translation>
    </message>
    <message>
        <source>Bees on a deep frame, average</source>
        <translation>Bienen auf einer großen Brutwabe, Mittel</translation>
    </message>
    <message>
        <source>Bees on a deep frame, full</source>
        <translation>Bienen auf einer großen Brutwabe, voll</translation>
    </message>
    <message>
        <source>Bees on a deep frame, one layer</source>
        <translation>Bienen auf einer großen Brutwabe, eine Schicht</translation>
    </message>
    <message>
        <source>Bees per ml by the trade's figure</source>
        <translation>Bienen je ml nach der Faustzahl</translation>
    </message>
    <message>
        <source>Bees per ml, settled by rapping</source>
        <translation>Bienen je ml, festgeklopft</translation>
    </message>
    <message>
        <source>Bees settled by rapping the cup: volume of 300</source>
        <translation>Festgeklopfte Bienen: Rauminhalt von 300</translation>
    </message>
    <message>
        <source>Bees that find and clear infested brood slow the mites down from the next generation on.</source>
        <translation>Bienen, die befallene Brut finden und ausräumen, bremsen die Milben ab der nächsten Generation.</translation>
    </message>
    <message>
        <source>Below the 92.9 +/- 5.5 % of Macedo, Wu &amp; Ellis 2002.</source>
        <translation>Unter den 92,9 +/- 5,5 % von Macedo, Wu &amp; Ellis 2002.</translation>
    </message>
    <message>
        <source>Below the published 92.9 %, because figures from memory are lower.</source>
        <translation>Unter den veröffentlichten 92,9 %, weil Zahlen aus dem Gedächtnis niedriger sind.</translation>
    </message>
    <message>
        <source>Berry et al. 2022</source>
        <translation>Berry et al. 2022</translation>
    </message>
    <message>
        <source>Between both ends lie 90 %.</source>
        <translation>Zwischen beiden Enden liegen 90 %.</translation>
    </message>
    <message>
        <source>Between figures from memory; a second rinse of your own replaces it.</source>
        <translation>Zwischen Zahlen aus dem Gedächtnis; eine eigene zweite Spülung ersetzt sie.</translation>
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
        <translation>Brutpause</translation>
    </message>
    <message>
        <source>Burgett &amp; Burikam 1985, J Econ Entomol 78:1154-1156</source>
        <translation>Burgett &amp; Burikam 1985, J Econ Entomol 78:1154-1156</translation>
    </message>
    <message>
        <source>Burns easily: no lit smoker, no flame and no cigarette beside an open jar.</source>
        <translation>Brennt leicht: kein brennender Smoker, keine Flamme und keine Zigarette neben einem offenen Glas.</translation>
    </message>
    <message>
        <source>Burns skin and eyes: acid-proof gloves and goggles, also when taking the carriers out.</source>
        <translation>Verätzt Haut und Augen: säurefeste Handschuhe und Schutzbrille, auch beim Entnehmen der Träger.</translation>
    </message>
    <message>
        <source>Burns skin, eyes and lungs, as vapour and as dust: acid-proof gloves, goggles and the respirator the label asks for.</source>
        <translation>Verätzt Haut, Augen und Lunge, als Dampf und als Staub: säurefeste Handschuhe, Schutzbrille und die Atemschutzmaske, die die Packungsbeilage verlangt.</translation>
    </message>
    <message>
        <source>Burns skin, eyes and lungs, its vapour too: acid-proof gloves, goggles and the respirator the label asks for.</source>
        <translation>Verätzt Haut, Augen und Lunge, auch als Dampf: säurefeste Handschuhe, Schutzbrille und die Atemschutzmaske, die die Packungsbeilage verlangt.</translation>
    </message>
    <message>
        <source>CSS px</source>
        <translation>CSS px</translation>
    </message>
    <message>
        <source>Calderone &amp; Turcotte 1998, J Econ Entomol 91:851-863</source>
        <translation>Calderone &amp; Turcotte 1998, J Econ Entomol 91:851-863</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of April</source>
        <translation>Verdeckelte Drohnenzellen, Mitte April</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of August</source>
        <translation>Verdeckelte Drohnenzellen, Mitte August</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of December</source>
        <translation>Verdeckelte Drohnenzellen, Mitte Dezember</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of February</source>
        <translation>Verdeckelte Drohnenzellen, Mitte Februar</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of January</source>
        <translation>Verdeckelte Drohnenzellen, Mitte Januar</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of July</source>
        <translation>Verdeckelte Drohnenzellen, Mitte Juli</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of June</source>
        <translation>Verdeckelte Drohnenzellen, Mitte Juni</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of March</source>
        <translation>Verdeckelte Drohnenzellen, Mitte März</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of May</source>
        <translation>Verdeckelte Drohnenzellen, Mitte Mai</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of November</source>
        <translation>Verdeckelte Drohnenzellen, Mitte November</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of October</source>
        <translation>Verdeckelte Drohnenzellen, Mitte Oktober</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of September</source>
        <translation>Verdeckelte Drohnenzellen, Mitte September</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of April</source>
        <translation>Verdeckelte Arbeiterinnenzellen, Mitte April</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of August</source>
        <translation>Verdeckelte Arbeiterinnenzellen, Mitte August</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of December</source>
        <translation>Verdeckelte Arbeiterinnenzellen, Mitte Dezember</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of February</source>
        <translation>Verdeckelte Arbeiterinnenzellen, Mitte Februar</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of January</source>
        <translation>Verdeckelte Arbeiterinnenzellen, Mitte Januar</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of July</source>
        <translation>Verdeckelte Arbeiterinnenzellen, Mitte Juli</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of June</source>
        <translation>Verdeckelte Arbeiterinnenzellen, Mitte Juni</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of March</source>
        <translation>Verdeckelte Arbeiterinnenzellen, Mitte März</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of May</source>
        <translation>Verdeckelte Arbeiterinnenzellen, Mitte Mai</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of November</source>
        <translation>Verdeckelte Arbeiterinnenzellen, Mitte November</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of October</source>
        <translation>Verdeckelte Arbeiterinnenzellen, Mitte Oktober</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of September</source>
        <translation>Verdeckelte Arbeiterinnenzellen, Mitte September</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Chance of being over above which a load is over a line</source>
        <translation>Wahrscheinlichkeit des Überschreitens, über der ein Befall über einer Schwelle ist</translation>
    </message>
    <message>
        <source>Chance of being over from which a load is close to a line</source>
        <translation>Wahrscheinlichkeit des Überschreitens, ab der ein Befall nah an einer Schwelle ist</translation>
    </message>
    <message>
        <source>Choice of the Halfcup project</source>
        <translation>Festlegung des Halfcup-Projekts</translation>
    </message>
    <message>
        <source>Choice of the Halfcup project, usual figures of a northern temperate colony</source>
        <translation>Festlegung des Halfcup-Projekts, übliche Zahlen eines Volks in der nördlichen gemäßigten Zone</translation>
    </message>
    <message>
        <source>Choices in the arithmetic</source>
        <translation>Festlegungen in der Rechnung</translation>
    </message>
    <message>
        <source>Colonies died at</source>
        <translation>Völker starben bei</translation>
    </message>
    <message>
        <source>Colonies for one yard</source>
        <translation>Völker für einen Stand</translation>
    </message>
    <message>
        <source>Colours told apart by the colour-blind</source>
        <translation>Farben, die auch Farbenblinde unterscheiden</translation>
    </message>
    <message>
        <source>Contrast of #0072B2 on white</source>
        <translation>Kontrast von #0072B2 auf Weiß</translation>
    </message>
    <message>
        <source>Contrast of #595959 on white</source>
        <translation>Kontrast von #595959 auf Weiß</translation>
    </message>
    <message>
        <source>Contrast of #767676 on white</source>
        <translation>Kontrast von #767676 auf Weiß</translation>
    </message>
    <message>
        <source>Contrast of text, at least</source>
        <translation>Kontrast von Text, mindestens</translation>
    </message>
    <message>
        <source>Correction by untreated colonies, counts before and after</source>
        <translation>Korrektur durch unbehandelte Völker, Zählungen davor und danach</translation>
    </message>
    <message>
        <source>Correction by untreated colonies, one count each</source>
        <translation>Korrektur durch unbehandelte Völker, je eine Zählung</translation>
    </message>
    <message>
        <source>Coumaphos</source>
        <translation>Coumaphos</translation>
    </message>
    <message>
        <source>Counted washes of Aurell et al. 2025 give 0.103.</source>
        <translation>Gezählte Waschproben von Aurell et al. 2025 ergeben 0,103.</translation>
    </message>
    <message>
        <source>Counting a third of a board's cells</source>
        <translation>Ein Drittel der Felder einer Windel zählen</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Anwendung</translation>
    </message>
    <message>
        <source>Course of a German chamber of agriculture</source>
        <translation>Lehrgang einer deutschen Landwirtschaftskammer</translation>
    </message>
    <message>
        <source>Covers 88 to 130 mg a bee by age and food.</source>
        <translation>Umfasst 88 bis 130 mg je Biene, nach Alter und Futter.</translation>
    </message>
    <message>
        <source>Currie &amp; Gatien 2006, Can Entomol 138:238-252</source>
        <translation>Currie &amp; Gatien 2006, Can Entomol 138:238-252</translation>
    </message>
    <message>
        <source>Daily highs at their best</source>
        <translation>Beste Tageshöchstwerte</translation>
    </message>
    <message>
        <source>Daily highs, limits</source>
        <translation>Tageshöchstwerte, Grenzen</translation>
    </message>
    <message>
        <source>Days after the end of a treatment for a wash that judges it</source>
        <translation>Tage nach dem Ende einer Behandlung bis zur Waschprobe, die sie beurteilt</translation>
    </message>
    <message>
        <source>Days run before the start so that ages settle</source>
        <translation>Tage Vorlauf, damit sich das Alter einpendelt</translation>
    </message>
    <message>
        <source>Days they may lie apart</source>
        <translation>Tage, die sie auseinanderliegen dürfen</translation>
    </message>
    <message>
        <source>Days to double at 0.021 per day</source>
        <translation>Tage bis zur Verdopplung bei 0,021 pro Tag</translation>
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
        <translation>Im Feld ermittelt als 15 bis 38 Milben auf 300 Bienen, gezählt mit Äther, was weniger findet als eine Waschprobe.</translation>
    </message>
    <message>
        <source>Deviation of a colony from the season's course</source>
        <translation>Abweichung eines Volks vom Verlauf der Saison</translation>
    </message>
    <message>
        <source>Did the treatment work</source>
        <translation>Hat die Behandlung gewirkt</translation>
    </message>
    <message>
        <source>Dietemann et al. 2013 print 14.3, which is a slip.</source>
        <translation>Dietemann et al. 2013 drucken 14,3; das ist ein Versehen.</translation>
    </message>
    <message>
        <source>Dietemann et al. 2013, J Apic Res 52(1), section 4.2.3.1.1, after Lee et al. 2010</source>
        <translation>Dietemann et al. 2013, J Apic Res 52(1), Abschnitt 4.2.3.1.1, nach Lee et al. 2010</translation>
    </message>
    <message>
        <source>Do not use the class used last again; where there is no class number, do not use the same substance again</source>
        <translation>Die zuletzt benutzte Klasse nicht wieder nehmen; wo es keine Klassennummer gibt, nicht wieder denselben Wirkstoff</translation>
    </message>
    <message>
        <source>Doubling about every month</source>
        <translation>Verdopplung etwa jeden Monat</translation>
    </message>
    <message>
        <source>Drone brood removal</source>
        <translation>Drohnenbrut entnehmen</translation>
    </message>
    <message>
        <source>Drone brood under its capping</source>
        <translation>Drohnenbrut unter dem Deckel</translation>
    </message>
    <message>
        <source>E69F00 56B4E9 009E73 F0E442 0072B2 D55E00 CC79A7 000000</source>
        <translation>E69F00 56B4E9 009E73 F0E442 0072B2 D55E00 CC79A7 000000</translation>
    </message>
    <message>
        <source>EMA/CVMP/EWP/459883/2008, quoted in Dietemann et al. 2013, section 4.5.4</source>
        <translation>EMA/CVMP/EWP/459883/2008, zitiert in Dietemann et al. 2013, Abschnitt 4.5.4</translation>
    </message>
    <message>
        <source>Eats skin and eyes, its vapour hurts the lungs: acid-proof gloves, goggles, respirator by label.</source>
        <translation>Verätzt Haut und Augen, die Dämpfe schädigen die Lunge: säurefeste Handschuhe, Schutzbrille, Atemschutz laut Packungsbeilage.</translation>
    </message>
    <message>
        <source>Eats skin and eyes, vapour and dust hurt the lungs: acid-proof gloves, goggles, respirator by label.</source>
        <translation>Verätzt Haut und Augen, Dampf und Staub schädigen die Lunge: säurefeste Handschuhe, Schutzbrille, Atemschutz laut Packungsbeilage.</translation>
    </message>
    <message>
        <source>Economic threshold; colonies lost more often the more months they spent above it.</source>
        <translation>Wirtschaftliche Schadschwelle; Völker gingen umso öfter verloren, je mehr Monate sie darüber lagen.</translation>
    </message>
    <message>
        <source>Every month, beginning when colonies can first be opened.</source>
        <translation>Jeden Monat, sobald Völker geöffnet werden können.</translation>
    </message>
    <message>
        <source>Exact Poisson 95 % limits of 25</source>
        <translation>Exakte Poisson-95-%-Grenzen von 25</translation>
    </message>
    <message>
        <source>Exact Poisson 95 % limits of 5</source>
        <translation>Exakte Poisson-95-%-Grenzen von 5</translation>
    </message>
    <message>
        <source>Exact Poisson 95 % limits of 9</source>
        <translation>Exakte Poisson-95-%-Grenzen von 9</translation>
    </message>
    <message>
        <source>Exact Poisson 95 % upper limit of 0</source>
        <translation>Exakte obere Poisson-95-%-Grenze von 0</translation>
    </message>
    <message>
        <source>Exact Poisson 99 % limits of 25</source>
        <translation>Exakte Poisson-99-%-Grenzen von 25</translation>
    </message>
    <message>
        <source>Example: 50 living untreated, 2 treated</source>
        <translation>Beispiel: 50 lebend unbehandelt, 2 behandelt</translation>
    </message>
    <message>
        <source>Example: treated 30 then 6, untreated 28 then 26</source>
        <translation>Beispiel: behandelt 30, dann 6; unbehandelt 28, dann 26</translation>
    </message>
    <message>
        <source>Example: treated 50 then 5, untreated 40 then 60</source>
        <translation>Beispiel: behandelt 50, dann 5; unbehandelt 40, dann 60</translation>
    </message>
    <message>
        <source>Far worse under trees than the phone reports: its accuracy is kept with every position.</source>
        <translation>Unter Bäumen viel schlechter, als das Telefon angibt: Die Genauigkeit wird zu jeder Position gespeichert.</translation>
    </message>
    <message>
        <source>Fast growth in the season's picture</source>
        <translation>Schnelle Zunahme im Bild der Saison</translation>
    </message>
    <message>
        <source>Fewer bees than this may leave the answer open</source>
        <translation>Weniger Bienen als diese können das Ergebnis offenlassen</translation>
    </message>
    <message>
        <source>Fewer bees than this say little</source>
        <translation>Weniger Bienen als diese sagen wenig</translation>
    </message>
    <message>
        <source>Fewer mites than this before a treatment say little about what it did</source>
        <translation>Weniger Milben als diese vor einer Behandlung sagen wenig über ihre Wirkung</translation>
    </message>
    <message>
        <source>Fewest bees in the colony</source>
        <translation>Mindestzahl der Bienen im Volk</translation>
    </message>
    <message>
        <source>Field trials in the United States</source>
        <translation>Feldversuche in den USA</translation>
    </message>
    <message>
        <source>First days whose highs matter most</source>
        <translation>Erste Tage, deren Höchstwerte am meisten zählen</translation>
    </message>
    <message>
        <source>Fitted to near-replicate washes of 65 colonies: 6.9. Extra spread of 38 % of the load.</source>
        <translation>Angepasst an fast gleiche Waschproben von 65 Völkern: 6,9. Zusätzliche Streuung von 38 % des Befalls.</translation>
    </message>
    <message>
        <source>Five mites in a half cup of 300 bees, rounded.</source>
        <translation>Fünf Milben in einer halben Tasse mit 300 Bienen, gerundet.</translation>
    </message>
    <message>
        <source>Flumethrin</source>
        <translation>Flumethrin</translation>
    </message>
    <message>
        <source>Follows from the definition of the US gallon (231 cubic inches, 3785.411784 ml): one half of a sixteenth</source>
        <translation>Folgt aus der Definition der US-Gallone (231 Kubikzoll, 3785,411784 ml): die Hälfte eines Sechzehntels</translation>
    </message>
    <message>
        <source>For a young colony, over 5 a day already means treat.</source>
        <translation>Bei einem Jungvolk heißt schon über 5 pro Tag: behandeln.</translation>
    </message>
    <message>
        <source>Formic acid</source>
        <translation>Ameisensäure</translation>
    </message>
    <message>
        <source>Formic acid, pads or strips</source>
        <translation>Ameisensäure, Pads oder Streifen</translation>
    </message>
    <message>
        <source>Formula of WCAG 2.2</source>
        <translation>Formel aus WCAG 2.2</translation>
    </message>
    <message>
        <source>Four weeks and more.</source>
        <translation>Vier Wochen und mehr.</translation>
    </message>
    <message>
        <source>Fries, Camazine &amp; Sneyd 1994; Martin 1998</source>
        <translation>Fries, Camazine &amp; Sneyd 1994; Martin 1998</translation>
    </message>
    <message>
        <source>From 0.25 to 3 per 100 after winter and spring treatments, Florida</source>
        <translation>Von 0,25 auf 3 je 100 nach Winter- und Frühjahrsbehandlungen, Florida</translation>
    </message>
    <message>
        <source>From mites on adults to adults plus capped brood</source>
        <translation>Von Milben auf erwachsenen Bienen zu erwachsenen plus verdeckelter Brut</translation>
    </message>
    <message>
        <source>From none to outright failure, yard by yard.</source>
        <translation>Von keiner bis zum völligen Versagen, von Stand zu Stand.</translation>
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
        <translation>Allgemeine Chemie; entscheidet, welcher Anteil als wirksam gilt</translation>
    </message>
    <message>
        <source>General usage</source>
        <translation>Allgemeiner Gebrauch</translation>
    </message>
    <message>
        <source>German wash scale; course of a german chamber of agriculture</source>
        <translation>Deutsches Wiegemaß für Auswaschproben; Lehrgang einer deutschen Landwirtschaftskammer</translation>
    </message>
    <message>
        <source>Germany, July: below this no acute risk, above it watch</source>
        <translation>Deutschland, Juli: darunter keine akute Gefahr, darüber beobachten</translation>
    </message>
    <message>
        <source>Germany, July: treat at once</source>
        <translation>Deutschland, Juli: sofort behandeln</translation>
    </message>
    <message>
        <source>Germany, July: young colony</source>
        <translation>Deutschland, Juli: Jungvolk</translation>
    </message>
    <message>
        <source>Gregorc &amp; Planinc 2001, Apidologie 32:333-340</source>
        <translation>Gregorc &amp; Planinc 2001, Apidologie 32:333-340</translation>
    </message>
    <message>
        <source>Growth of the load without brood</source>
        <translation>Zunahme des Befalls ohne Brut</translation>
    </message>
    <message>
        <source>Growth with brood</source>
        <translation>Zunahme mit Brut</translation>
    </message>
    <message>
        <source>Guidance of the province of Alberta</source>
        <translation>Empfehlung der Provinz Alberta</translation>
    </message>
    <message>
        <source>Guidance of the province of Ontario</source>
        <translation>Empfehlung der Provinz Ontario</translation>
    </message>
    <message>
        <source>Guidance quoted in a second source</source>
        <translation>Empfehlung, in zweiter Quelle zitiert</translation>
    </message>
    <message>
        <source>Half a US cup</source>
        <translation>Eine halbe US-Tasse</translation>
    </message>
    <message>
        <source>Half a year</source>
        <translation>Ein halbes Jahr</translation>
    </message>
    <message>
        <source>Half to double. Colonies differ more than that when they collapse or throw out brood.</source>
        <translation>Halb bis doppelt. Völker unterscheiden sich stärker, wenn sie zusammenbrechen oder Brut ausräumen.</translation>
    </message>
    <message>
        <source>Hands, eyes and files</source>
        <translation>Hände, Augen und Dateien</translation>
    </message>
    <message>
        <source>Hazards</source>
        <translation>Gefahren</translation>
    </message>
    <message>
        <source>Hazards to people</source>
        <translation>Gefahren für Menschen</translation>
    </message>
    <message>
        <source>Henderson &amp; Tilton 1955, J Econ Entomol 48:157</source>
        <translation>Henderson &amp; Tilton 1955, J Econ Entomol 48:157</translation>
    </message>
    <message>
        <source>Hohenheim apiculture</source>
        <translation>Bienenkunde Hohenheim</translation>
    </message>
    <message>
        <source>Hop beta acids</source>
        <translation>Hopfen-Betasäuren</translation>
    </message>
    <message>
        <source>How far an outlook is shown</source>
        <translation>Wie weit ein Ausblick gezeigt wird</translation>
    </message>
    <message>
        <source>How far measures go</source>
        <translation>Wie weit Maßnahmen reichen</translation>
    </message>
    <message>
        <source>How far the factors for natural fall may be off, up or down</source>
        <translation>Wie weit die Faktoren für den natürlichen Milbenfall danebenliegen können, nach oben oder unten</translation>
    </message>
    <message>
        <source>How fast mites grow, and where they are</source>
        <translation>Wie schnell Milben zunehmen, und wo sie sind</translation>
    </message>
    <message>
        <source>How much jars of one colony differ (gamma shape)</source>
        <translation>Wie sehr sich Gläser eines Volks unterscheiden (Gamma-Form)</translation>
    </message>
    <message>
        <source>How much resistance weighs</source>
        <translation>Wie schwer Resistenz wiegt</translation>
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
        <translation>IRAC-Klassen der Wirkungsweise</translation>
    </message>
    <message>
        <source>In the published ratio to the worker rate</source>
        <translation>Im veröffentlichten Verhältnis zur Rate bei Arbeiterinnen</translation>
    </message>
    <message>
        <source>In two rounds.</source>
        <translation>In zwei Durchgängen.</translation>
    </message>
    <message>
        <source>Inhibits monoamine oxidase (ask a doctor if you take medicines that do); keep off skin and eyes.</source>
        <translation>Hemmt die Monoaminoxidase (ärztlich nachfragen, wer Arzneimittel nimmt, die das auch tun); von Haut und Augen fernhalten.</translation>
    </message>
    <message>
        <source>Irritates skin and eyes.</source>
        <translation>Reizt Haut und Augen.</translation>
    </message>
    <message>
        <source>Irritates skin and eyes: gloves, and wash hands before touching the face.</source>
        <translation>Reizt Haut und Augen: Handschuhe, und Hände waschen, bevor sie ins Gesicht kommen.</translation>
    </message>
    <message>
        <source>It taints honey.</source>
        <translation>Es verdirbt den Geschmack des Honigs.</translation>
    </message>
    <message>
        <source>Keep off skin and eyes: gloves, and see the label.</source>
        <translation>Von Haut und Augen fernhalten: Handschuhe, und Packungsbeilage beachten.</translation>
    </message>
    <message>
        <source>Key for a hand in mittens, at least</source>
        <translation>Taste für eine Hand in Fäustlingen, mindestens</translation>
    </message>
    <message>
        <source>Kills under cappings</source>
        <translation>Wirkt unter den Deckeln</translation>
    </message>
    <message>
        <source>Kind of substance</source>
        <translation>Art des Wirkstoffs</translation>
    </message>
    <message>
        <source>Kulhanek et al. 2021, PLoS ONE 16:e0245490; also Front Ecol Evol 2023, 11:1102457</source>
        <translation>Kulhanek et al. 2021, PLoS ONE 16:e0245490; auch Front Ecol Evol 2023, 11:1102457</translation>
    </message>
    <message>
        <source>Label of one product</source>
        <translation>Packungsbeilage eines Produkts</translation>
    </message>
    <message>
        <source>Least spread between jars</source>
        <translation>Kleinste Streuung zwischen Gläsern</translation>
    </message>
    <message>
        <source>Least squared spread between colonies</source>
        <translation>Kleinste quadrierte Streuung zwischen Völkern</translation>
    </message>
    <message>
        <source>Lee, Moon, Burkness, Hutchison &amp; Spivak 2010, J Econ Entomol 103:1039-1050</source>
        <translation>Lee, Moon, Burkness, Hutchison &amp; Spivak 2010, J Econ Entomol 103:1039-1050</translation>
    </message>
    <message>
        <source>Lee, Moon, Burkness, Hutchison &amp; Spivak 2010, J Econ Entomol 103:1039-1050; the upper figure is from memory</source>
        <translation>Lee, Moon, Burkness, Hutchison &amp; Spivak 2010, J Econ Entomol 103:1039-1050; die obere Zahl ist aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Left too long, the frame breeds mites instead of taking them out.</source>
        <translation>Zu lange im Volk, züchtet die Wabe Milben, statt sie zu entnehmen.</translation>
    </message>
    <message>
        <source>Less than three; over 0.028 per day.</source>
        <translation>Weniger als drei; über 0,028 pro Tag.</translation>
    </message>
    <message>
        <source>Light in direct sun</source>
        <translation>Licht in praller Sonne</translation>
    </message>
    <message>
        <source>Lighting tables</source>
        <translation>Tabellen zur Beleuchtung</translation>
    </message>
    <message>
        <source>Lines a load is held against</source>
        <translation>Schwellen, gegen die ein Befall gehalten wird</translation>
    </message>
    <message>
        <source>Lines for boards and drone brood</source>
        <translation>Schwellen für Windel und Drohnenbrut</translation>
    </message>
    <message>
        <source>Lines of a calendar file fold at</source>
        <translation>Zeilen einer Kalenderdatei werden umbrochen bei</translation>
    </message>
    <message>
        <source>Load at which the season's picture ends, the colony likely failing</source>
        <translation>Befall, bei dem das Bild der Saison endet, weil das Volk wohl eingeht</translation>
    </message>
    <message>
        <source>Load in the brood nest against the honey area</source>
        <translation>Befall im Brutnest gegen den Honigbereich</translation>
    </message>
    <message>
        <source>Longer work in the brood nest means more stings: veil and gloves, and help within call for anyone who reacts to them.</source>
        <translation>Längere Arbeit im Brutnest heißt mehr Stiche: Schleier und Handschuhe, und Hilfe in Rufweite für alle, die auf Stiche reagieren.</translation>
    </message>
    <message>
        <source>Lower end of the range shown</source>
        <translation>Unteres Ende der gezeigten Spanne</translation>
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
        <translation>Manitoba, Spätsommer</translation>
    </message>
    <message>
        <source>Manitoba, spring</source>
        <translation>Manitoba, Frühjahr</translation>
    </message>
    <message>
        <source>Martin 1998; scale computed</source>
        <translation>Martin 1998; Maß berechnet</translation>
    </message>
    <message>
        <source>Measures without a substance</source>
        <translation>Maßnahmen ohne Wirkstoff</translation>
    </message>
    <message>
        <source>Mesh the mites are shaken through</source>
        <translation>Gitter, durch das die Milben geschüttelt werden</translation>
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
        <translation>Mississippi, Februar</translation>
    </message>
    <message>
        <source>Mitchell 1970, Am Bee J 110</source>
        <translation>Mitchell 1970, Am Bee J 110</translation>
    </message>
    <message>
        <source>Mites breed in drone cells far more often than in worker cells; capped drone brood taken out takes its mites along.</source>
        <translation>Milben vermehren sich in Drohnenzellen viel öfter als in Arbeiterinnenzellen; entnommene verdeckelte Drohnenbrut nimmt ihre Milben mit.</translation>
    </message>
    <message>
        <source>Mites carried in by bees</source>
        <translation>Von Bienen eingeschleppte Milben</translation>
    </message>
    <message>
        <source>Mites dying in summer</source>
        <translation>Im Sommer sterbende Milben</translation>
    </message>
    <message>
        <source>Mites dying in winter</source>
        <translation>Im Winter sterbende Milben</translation>
    </message>
    <message>
        <source>Mites entering drone cells, published rate</source>
        <translation>Milben, die in Drohnenzellen gehen, veröffentlichte Rate</translation>
    </message>
    <message>
        <source>Mites entering drone cells, used</source>
        <translation>Milben, die in Drohnenzellen gehen, verwendet</translation>
    </message>
    <message>
        <source>Mites entering worker cells, published rate</source>
        <translation>Milben, die in Arbeiterinnenzellen gehen, veröffentlichte Rate</translation>
    </message>
    <message>
        <source>Mites entering worker cells, used</source>
        <translation>Milben, die in Arbeiterinnenzellen gehen, verwendet</translation>
    </message>
    <message>
        <source>Mites in the colony from natural fall, March, April, September, October</source>
        <translation>Milben im Volk aus dem natürlichen Milbenfall, März, April, September, Oktober</translation>
    </message>
    <message>
        <source>Mites in the colony from natural fall, May to August</source>
        <translation>Milben im Volk aus dem natürlichen Milbenfall, Mai bis August</translation>
    </message>
    <message>
        <source>Mites in the colony from natural fall, November to February</source>
        <translation>Milben im Volk aus dem natürlichen Milbenfall, November bis Februar</translation>
    </message>
    <message>
        <source>Mites killed</source>
        <translation>Abgetötete Milben</translation>
    </message>
    <message>
        <source>Mites killed with capped brood</source>
        <translation>Abgetötete Milben mit verdeckelter Brut</translation>
    </message>
    <message>
        <source>Mites leaving a drone cell for one that entered</source>
        <translation>Milben, die eine Drohnenzelle verlassen, je eingegangene</translation>
    </message>
    <message>
        <source>Mites leaving a worker cell for one that entered</source>
        <translation>Milben, die eine Arbeiterinnenzelle verlassen, je eingegangene</translation>
    </message>
    <message>
        <source>Mites lose 0.002 and bees 0.003 to 0.005 a day (from memory).</source>
        <translation>Milben verlieren 0,002 und Bienen 0,003 bis 0,005 pro Tag (aus dem Gedächtnis).</translation>
    </message>
    <message>
        <source>Mites low by, northern temperate zone</source>
        <translation>Wenige Milben bis, nördliche gemäßigte Zone</translation>
    </message>
    <message>
        <source>Mites on adult bees in September, with brood</source>
        <translation>Milben auf erwachsenen Bienen im September, mit Brut</translation>
    </message>
    <message>
        <source>Mites on the bees that a count finds</source>
        <translation>Milben auf den Bienen, die eine Zählung findet</translation>
    </message>
    <message>
        <source>Mites that fall off drop out of the hive, and the fall can be counted on a board beneath.</source>
        <translation>Abfallende Milben fallen aus der Beute, und der Milbenfall lässt sich auf einer Windel darunter zählen.</translation>
    </message>
    <message>
        <source>Mode of action</source>
        <translation>Wirkungsweise</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>National Bee Unit, United Kingdom after Martin 1998; limits: Branco, Kidd &amp; Pickard 2006, Apidologie 37:452-461</source>
        <translation>National Bee Unit, Vereinigtes Königreich, nach Martin 1998; Grenzen: Branco, Kidd &amp; Pickard 2006, Apidologie 37:452-461</translation>
    </message>
    <message>
        <source>National Bee Unit, United Kingdom, after Martin 1998</source>
        <translation>National Bee Unit, Vereinigtes Königreich, nach Martin 1998</translation>
    </message>
    <message>
        <source>Netherlands</source>
        <translation>Niederlande</translation>
    </message>
    <message>
        <source>New queens are sometimes lost; the load falls late, over months.</source>
        <translation>Neue Königinnen gehen manchmal verloren; der Befall sinkt spät, über Monate.</translation>
    </message>
    <message>
        <source>Newcombe 1998, Stat Med 17:857-872</source>
        <translation>Newcombe 1998, Stat Med 17:857-872</translation>
    </message>
    <message>
        <source>Nine mites in a half cup of 300 bees. It has no correction for mites a wash misses.</source>
        <translation>Neun Milben in einer halben Tasse mit 300 Bienen. Ohne Korrektur für Milben, die eine Waschprobe übersieht.</translation>
    </message>
    <message>
        <source>Nine mites read with 250 bees in the scoop</source>
        <translation>Neun Milben, gelesen mit 250 Bienen im Becher</translation>
    </message>
    <message>
        <source>Nine mites read with 300 bees in the scoop</source>
        <translation>Neun Milben, gelesen mit 300 Bienen im Becher</translation>
    </message>
    <message>
        <source>Nine mites read with 350 bees in the scoop</source>
        <translation>Neun Milben, gelesen mit 350 Bienen im Becher</translation>
    </message>
    <message>
        <source>Nine mites read with 400 bees in the scoop</source>
        <translation>Neun Milben, gelesen mit 400 Bienen im Becher</translation>
    </message>
    <message>
        <source>No mite on 50 bees still leaves 9 % chance of more than 3 per 100.</source>
        <translation>Keine Milbe auf 50 Bienen lässt immer noch 9 % Wahrscheinlichkeit für mehr als 3 je 100.</translation>
    </message>
    <message>
        <source>Not less than a minute.</source>
        <translation>Nicht weniger als eine Minute.</translation>
    </message>
    <message>
        <source>Nothing found in 100 bees at a true 1 per 100</source>
        <translation>Nichts gefunden in 100 Bienen bei wahren 1 je 100</translation>
    </message>
    <message>
        <source>Nothing found in 300 bees at a true 1 per 100</source>
        <translation>Nichts gefunden in 300 Bienen bei wahren 1 je 100</translation>
    </message>
    <message>
        <source>Of three tried, the one whose ranges held best for colonies growing 0 to 0.04 per day.</source>
        <translation>Von drei versuchten die, deren Spannen für Völker mit 0 bis 0,04 Zunahme pro Tag am besten hielten.</translation>
    </message>
    <message>
        <source>Okabe &amp; Ito, color universal design</source>
        <translation>Okabe &amp; Ito, color universal design</translation>
    </message>
    <message>
        <source>Once, while there is no brood.</source>
        <translation>Einmal, solange keine Brut da ist.</translation>
    </message>
    <message>
        <source>One brood cycle of the mites under cappings.</source>
        <translation>Ein Brutzyklus der Milben unter den Deckeln.</translation>
    </message>
    <message>
        <source>One sample of 300 bees in each, however many stand there.</source>
        <translation>Aus jedem eine Probe von 300 Bienen, wie viele auch dort stehen.</translation>
    </message>
    <message>
        <source>Only with brood, and not in a colony that is collapsing.</source>
        <translation>Nur mit Brut, und nicht in einem zusammenbrechenden Volk.</translation>
    </message>
    <message>
        <source>Only without brood</source>
        <translation>Nur ohne Brut</translation>
    </message>
    <message>
        <source>Ontario</source>
        <translation>Ontario</translation>
    </message>
    <message>
        <source>Ontario, August</source>
        <translation>Ontario, August</translation>
    </message>
    <message>
        <source>Ontario, May</source>
        <translation>Ontario, Mai</translation>
    </message>
    <message>
        <source>Order in GeoJSON</source>
        <translation>Reihenfolge in GeoJSON</translation>
    </message>
    <message>
        <source>Ostiguy &amp; Sammataro 2000, Apidologie 31</source>
        <translation>Ostiguy &amp; Sammataro 2000, Apidologie 31</translation>
    </message>
    <message>
        <source>Over 90 %.</source>
        <translation>Über 90 %.</translation>
    </message>
    <message>
        <source>Own choice: widespread resistance makes it a choice with care, patchy resistance is said</source>
        <translation>Eigene Festlegung: Verbreitete Resistenz macht daraus „mit Vorsicht“, fleckenhafte wird genannt</translation>
    </message>
    <message>
        <source>Oxalic acid</source>
        <translation>Oxalsäure</translation>
    </message>
    <message>
        <source>Oxalic acid, long-lasting carriers</source>
        <translation>Oxalsäure, Langzeitträger</translation>
    </message>
    <message>
        <source>Oxalic acid, trickled or sublimated</source>
        <translation>Oxalsäure, geträufelt oder verdampft</translation>
    </message>
    <message>
        <source>Posada-Florez et al. 2022, Insects</source>
        <translation>Posada-Florez et al. 2022, Insects</translation>
    </message>
    <message>
        <source>Position of a phone in the open, 95 %</source>
        <translation>Position eines Telefons im Freien, 95 %</translation>
    </message>
    <message>
        <source>Powdered sugar for a roll</source>
        <translation>Puderzucker für eine Probe</translation>
    </message>
    <message>
        <source>Powdered sugar in a jar</source>
        <translation>Puderzucker in einem Glas</translation>
    </message>
    <message>
        <source>Product labels</source>
        <translation>Packungsbeilagen</translation>
    </message>
    <message>
        <source>Product labels and reviews, not read again</source>
        <translation>Packungsbeilagen und Übersichtsarbeiten, nicht nachgelesen</translation>
    </message>
    <message>
        <source>Published statistics the program is tested against</source>
        <translation>Veröffentlichte Statistik, gegen die das Programm geprüft ist</translation>
    </message>
    <message>
        <source>Published; source to be found again</source>
        <translation>Veröffentlicht; Quelle noch wiederzufinden</translation>
    </message>
    <message>
        <source>Puts 17 % of the mites on the bees of 47 September colonies where 29 % were seen.</source>
        <translation>Setzt 17 % der Milben auf die Bienen von 47 Septembervölkern, wo 29 % gesehen wurden.</translation>
    </message>
    <message>
        <source>Puts 30 % of the mites on the bees there; 29 % were seen.</source>
        <translation>Setzt dort 30 % der Milben auf die Bienen; gesehen wurden 29 %.</translation>
    </message>
    <message>
        <source>Queens lost above</source>
        <translation>Königinnenverluste über</translation>
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
        <translation>Verhältnis zu Drohnenzellen aus dem Gedächtnis; Maß so gesetzt, dass alle Milben von Mai bis August um 0,021 pro Tag zunehmen.</translation>
    </message>
    <message>
        <source>Reaches mites on adult bees only.</source>
        <translation>Erreicht nur Milben auf erwachsenen Bienen.</translation>
    </message>
    <message>
        <source>Reaches the 29 % seen in September colonies of Aurell et al. 2024.</source>
        <translation>Reicht bis zu den 29 %, die in Septembervölkern von Aurell et al. 2024 gesehen wurden.</translation>
    </message>
    <message>
        <source>Records the law asks for</source>
        <translation>Aufzeichnungen, die das Gesetz verlangt</translation>
    </message>
    <message>
        <source>Red mites on apple leaves, mean</source>
        <translation>Rote Spinnmilben auf Apfelblättern, Mittel</translation>
    </message>
    <message>
        <source>Registration</source>
        <translation>Registrierung</translation>
    </message>
    <message>
        <source>Regulation (EU) 2019/6, Article 108</source>
        <translation>Verordnung (EU) 2019/6, Artikel 108</translation>
    </message>
    <message>
        <source>Requeening with hygienic stock</source>
        <translation>Umweiseln auf hygienische Herkunft</translation>
    </message>
    <message>
        <source>Resistance</source>
        <translation>Resistenz</translation>
    </message>
    <message>
        <source>Rest after rolling in sugar</source>
        <translation>Ruhe nach dem Rollen in Zucker</translation>
    </message>
    <message>
        <source>Reviews, not read again</source>
        <translation>Übersichtsarbeiten, nicht nachgelesen</translation>
    </message>
    <message>
        <source>Rinkevich 2020, PLoS ONE</source>
        <translation>Rinkevich 2020, PLoS ONE</translation>
    </message>
    <message>
        <source>Rotation</source>
        <translation>Wechsel</translation>
    </message>
    <message>
        <source>Sabahi et al. 2017, Apidologie</source>
        <translation>Sabahi et al. 2017, Apidologie</translation>
    </message>
    <message>
        <source>Safety data sheets, not read again</source>
        <translation>Sicherheitsdatenblätter, nicht nachgelesen</translation>
    </message>
    <message>
        <source>Same class as tau-fluvalinate (IRAC 3A)</source>
        <translation>Gleiche Klasse wie Tau-Fluvalinat (IRAC 3A)</translation>
    </message>
    <message>
        <source>Same class as tau-fluvalinate, to which resistance is widespread.</source>
        <translation>Gleiche Klasse wie Tau-Fluvalinat, gegen das Resistenz verbreitet ist.</translation>
    </message>
    <message>
        <source>Screened floor</source>
        <translation>Gitterboden</translation>
    </message>
    <message>
        <source>Set against the September colonies of Aurell et al. 2024, J Insect Sci (data CC-BY-4.0)</source>
        <translation>Abgeglichen mit den Septembervölkern von Aurell et al. 2024, J Insect Sci (Daten CC-BY-4.0)</translation>
    </message>
    <message>
        <source>Set so that all mites grow 0.011 per day from May to August</source>
        <translation>So gesetzt, dass alle Milben von Mai bis August um 0,011 pro Tag zunehmen</translation>
    </message>
    <message>
        <source>Set so that all mites grow 0.031 per day from May to August</source>
        <translation>So gesetzt, dass alle Milben von Mai bis August um 0,031 pro Tag zunehmen</translation>
    </message>
    <message>
        <source>Seven days was read on a label; the longer ones are from memory. Differs by product.</source>
        <translation>Sieben Tage standen in einer Packungsbeilage; die längeren sind aus dem Gedächtnis. Je nach Produkt verschieden.</translation>
    </message>
    <message>
        <source>Several labels allow it; others, and other countries, do not.</source>
        <translation>Mehrere Packungsbeilagen erlauben es; andere, und andere Länder, nicht.</translation>
    </message>
    <message>
        <source>Shaking a wash</source>
        <translation>Schütteln einer Waschprobe</translation>
    </message>
    <message>
        <source>Share a sugar roll finds, for the full load</source>
        <translation>Anteil, den eine Puderzuckerprobe findet, für den vollen Befall</translation>
    </message>
    <message>
        <source>Share a wash finds, for the full load</source>
        <translation>Anteil, den eine Waschprobe findet, für den vollen Befall</translation>
    </message>
    <message>
        <source>Share of all mites that sits on adult bees</source>
        <translation>Anteil aller Milben, der auf erwachsenen Bienen sitzt</translation>
    </message>
    <message>
        <source>Share of opened drone cells with mites</source>
        <translation>Anteil geöffneter Drohnenzellen mit Milben</translation>
    </message>
    <message>
        <source>Share of the mites under cappings while there is brood</source>
        <translation>Anteil der Milben unter den Deckeln, solange Brut da ist</translation>
    </message>
    <message>
        <source>Share to be killed, other substances</source>
        <translation>Abzutötender Anteil, andere Wirkstoffe</translation>
    </message>
    <message>
        <source>Share to be killed, synthetic substances</source>
        <translation>Abzutötender Anteil, synthetische Wirkstoffe</translation>
    </message>
    <message>
        <source>Slow growth in the season's picture</source>
        <translation>Langsame Zunahme im Bild der Saison</translation>
    </message>
    <message>
        <source>South-east of the United States</source>
        <translation>Südosten der USA</translation>
    </message>
    <message>
        <source>South-east of the United States, August</source>
        <translation>Südosten der USA, August</translation>
    </message>
    <message>
        <source>South-east of the United States, August, board left overnight</source>
        <translation>Südosten der USA, August, Windel über Nacht</translation>
    </message>
    <message>
        <source>Southern hemisphere: later by</source>
        <translation>Südhalbkugel: später um</translation>
    </message>
    <message>
        <source>Spread between colonies of a yard, for chances and sample sizes</source>
        <translation>Streuung zwischen Völkern eines Stands, für Wahrscheinlichkeiten und Stichprobengrößen</translation>
    </message>
    <message>
        <source>Spread between colonies of a yard, for the yard's mean</source>
        <translation>Streuung zwischen Völkern eines Stands, für das Mittel des Stands</translation>
    </message>
    <message>
        <source>Spread between jars before any duplicate jars</source>
        <translation>Streuung zwischen Gläsern, solange es keine Doppelgläser gibt</translation>
    </message>
    <message>
        <source>Spread from scoop to scoop of one hand</source>
        <translation>Streuung von Becher zu Becher einer Hand</translation>
    </message>
    <message>
        <source>Spread of growth between colonies</source>
        <translation>Streuung der Zunahme zwischen Völkern</translation>
    </message>
    <message>
        <source>Spread of one colony's growth about its yard's</source>
        <translation>Streuung der Zunahme eines Volks um die seines Stands</translation>
    </message>
    <message>
        <source>Spread of one scoop before you counted any</source>
        <translation>Streuung eines Bechers, bevor einer ausgezählt ist</translation>
    </message>
    <message>
        <source>Spread of the bees in a scoop nobody counted</source>
        <translation>Streuung der Bienen in einem nicht ausgezählten Becher</translation>
    </message>
    <message>
        <source>Spread of yards' growth about the usual one</source>
        <translation>Streuung der Zunahme von Ständen um die übliche</translation>
    </message>
    <message>
        <source>Square root of 0.0048; does not shrink with more washes.</source>
        <translation>Quadratwurzel aus 0,0048; wird mit mehr Waschproben nicht kleiner.</translation>
    </message>
    <message>
        <source>Standard deviation 12 over 47 colonies; the other 71 % sat under cappings.</source>
        <translation>Standardabweichung 12 über 47 Völker; die anderen 71 % saßen unter den Deckeln.</translation>
    </message>
    <message>
        <source>Standard deviation 32, from 176 samples.</source>
        <translation>Standardabweichung 32, aus 176 Proben.</translation>
    </message>
    <message>
        <source>Standard deviation, 1.5 g per hundred bees.</source>
        <translation>Standardabweichung, 1,5 g je hundert Bienen.</translation>
    </message>
    <message>
        <source>Standard error 0.0038 over 17 colonies; the range is 1.96 of it either side.</source>
        <translation>Standardfehler 0,0038 über 17 Völker; die Spanne ist das 1,96-Fache davon nach beiden Seiten.</translation>
    </message>
    <message>
        <source>Sticky and irritating to skin and eyes: gloves, and see the label.</source>
        <translation>Klebrig und reizend für Haut und Augen: Handschuhe, und Packungsbeilage beachten.</translation>
    </message>
    <message>
        <source>Still there when the bees hatch.</source>
        <translation>Noch da, wenn die Bienen schlüpfen.</translation>
    </message>
    <message>
        <source>Stings</source>
        <translation>Stiche</translation>
    </message>
    <message>
        <source>Sublimated again and again with brood</source>
        <translation>Immer wieder verdampft, mit Brut</translation>
    </message>
    <message>
        <source>Swiss guidance, quoted in a second source</source>
        <translation>Schweizer Empfehlung, in zweiter Quelle zitiert</translation>
    </message>
    <message>
        <source>Switzerland, June: emergency treatment</source>
        <translation>Schweiz, Juni: Notbehandlung</translation>
    </message>
    <message>
        <source>Taking the sample</source>
        <translation>Die Probe nehmen</translation>
    </message>
    <message>
        <source>Tau-fluvalinate</source>
        <translation>Tau-Fluvalinat</translation>
    </message>
    <message>
        <source>Ten grams of bees are about a hundred.</source>
        <translation>Zehn Gramm Bienen sind etwa hundert.</translation>
    </message>
    <message>
        <source>Textbooks</source>
        <translation>Lehrbücher</translation>
    </message>
    <message>
        <source>The authors ask each keeper to check it with bees of their own.</source>
        <translation>Die Verfasser bitten, es mit eigenen Bienen zu prüfen.</translation>
    </message>
    <message>
        <source>The authors say themselves that no research stands behind it.</source>
        <translation>Die Verfasser sagen selbst, dass keine Forschung dahintersteht.</translation>
    </message>
    <message>
        <source>The long-lived bees of winter begin to be raised then; count the course of a treatment back from it.</source>
        <translation>Dann beginnt die Aufzucht der langlebigen Winterbienen; von dort die Dauer einer Behandlung zurückrechnen.</translation>
    </message>
    <message>
        <source>The natural logarithm of 2, divided by 30 days.</source>
        <translation>Der natürliche Logarithmus von 2, geteilt durch 30 Tage.</translation>
    </message>
    <message>
        <source>The part of it common to all scoops of one hand</source>
        <translation>Der Teil davon, der allen Bechern einer Hand gemeinsam ist</translation>
    </message>
    <message>
        <source>The queen can be lost; the colony raises no bees meanwhile: not in the weeks in which winter bees are raised.</source>
        <translation>Die Königin kann verloren gehen; das Volk zieht solange keine Bienen auf: nicht in den Wochen, in denen Winterbienen aufgezogen werden.</translation>
    </message>
    <message>
        <source>The rule of doubling turned round.</source>
        <translation>Die Verdopplungsregel umgedreht.</translation>
    </message>
    <message>
        <source>The same after summer and autumn treatments</source>
        <translation>Dasselbe nach Sommer- und Herbstbehandlungen</translation>
    </message>
    <message>
        <source>The same guidance gives 30 mites a day on a board.</source>
        <translation>Dieselbe Empfehlung nennt 30 Milben pro Tag auf einer Windel.</translation>
    </message>
    <message>
        <source>The same team's scoops moved by a tenth within months: own counts are the cure.</source>
        <translation>Die Becher derselben Gruppe verschoben sich binnen Monaten um ein Zehntel: Dagegen hilft eigenes Auszählen.</translation>
    </message>
    <message>
        <source>The same, k by moments</source>
        <translation>Dasselbe, k nach Momenten</translation>
    </message>
    <message>
        <source>The same, negative binomial k by maximum likelihood</source>
        <translation>Dasselbe, negatives Binomial-k nach Maximum-Likelihood</translation>
    </message>
    <message>
        <source>The same, to do research</source>
        <translation>Dasselbe, für die Forschung</translation>
    </message>
    <message>
        <source>The same, variance</source>
        <translation>Dasselbe, Varianz</translation>
    </message>
    <message>
        <source>The same: its spread</source>
        <translation>Dasselbe: seine Streuung</translation>
    </message>
    <message>
        <source>The same: spread from sample to sample</source>
        <translation>Dasselbe: Streuung von Probe zu Probe</translation>
    </message>
    <message>
        <source>The same: spread from wash to wash</source>
        <translation>Dasselbe: Streuung von Waschprobe zu Waschprobe</translation>
    </message>
    <message>
        <source>The same: spread the app uses for a part of a board</source>
        <translation>Dasselbe: Streuung, die die App für einen Teil der Windel nimmt</translation>
    </message>
    <message>
        <source>The trade's rule</source>
        <translation>Die Faustregel</translation>
    </message>
    <message>
        <source>The turn date</source>
        <translation>Der Stichtag</translation>
    </message>
    <message>
        <source>Three washes against five</source>
        <translation>Drei Waschgänge gegen fünf</translation>
    </message>
    <message>
        <source>Thymol</source>
        <translation>Thymol</translation>
    </message>
    <message>
        <source>Time from one wash to the next in the bee season</source>
        <translation>Zeit von einer Waschprobe zur nächsten in der Bienensaison</translation>
    </message>
    <message>
        <source>To be kept for</source>
        <translation>Aufzubewahren</translation>
    </message>
    <message>
        <source>To be written down in the European Union</source>
        <translation>In der Europäischen Union zu notieren</translation>
    </message>
    <message>
        <source>Touch target, at least</source>
        <translation>Tippfläche, mindestens</translation>
    </message>
    <message>
        <source>Two other agencies' figures give 338 to 400; count a few scoops of your own.</source>
        <translation>Zahlen zweier anderer Stellen ergeben 338 bis 400; einige eigene Becher auszählen.</translation>
    </message>
    <message>
        <source>Two to three times as many in a month</source>
        <translation>Zwei- bis dreimal so viele in einem Monat</translation>
    </message>
    <message>
        <source>Two to three times in a month.</source>
        <translation>Zwei- bis dreimal in einem Monat.</translation>
    </message>
    <message>
        <source>USDA-ARS guidance, quoted by a beekeepers' association</source>
        <translation>Empfehlung des USDA-ARS, zitiert von einem Imkerverband</translation>
    </message>
    <message>
        <source>United Kingdom, August</source>
        <translation>Vereinigtes Königreich, August</translation>
    </message>
    <message>
        <source>United Kingdom, July</source>
        <translation>Vereinigtes Königreich, Juli</translation>
    </message>
    <message>
        <source>United Kingdom, June</source>
        <translation>Vereinigtes Königreich, Juni</translation>
    </message>
    <message>
        <source>United Kingdom, May</source>
        <translation>Vereinigtes Königreich, Mai</translation>
    </message>
    <message>
        <source>United Kingdom, September</source>
        <translation>Vereinigtes Königreich, September</translation>
    </message>
    <message>
        <source>United Kingdom, winter</source>
        <translation>Vereinigtes Königreich, Winter</translation>
    </message>
    <message>
        <source>United States</source>
        <translation>Vereinigte Staaten</translation>
    </message>
    <message>
        <source>United States federal guidance</source>
        <translation>Empfehlung einer US-Bundesbehörde</translation>
    </message>
    <message>
        <source>United States federal guidance, board</source>
        <translation>Empfehlung einer US-Bundesbehörde, Windel</translation>
    </message>
    <message>
        <source>United States, federal guidance</source>
        <translation>Vereinigte Staaten, Bundesempfehlung</translation>
    </message>
    <message>
        <source>University of Minnesota, poster 155</source>
        <translation>University of Minnesota, poster 155</translation>
    </message>
    <message>
        <source>Untreated colonies in Alabama, March to July</source>
        <translation>Unbehandelte Völker in Alabama, März bis Juli</translation>
    </message>
    <message>
        <source>Upper end of the range shown</source>
        <translation>Oberes Ende der gezeigten Spanne</translation>
    </message>
    <message>
        <source>Upper over lower end above which it is left open</source>
        <translation>Oberes durch unteres Ende, über dem es offenbleibt</translation>
    </message>
    <message>
        <source>WCAG 2.2, success criterion 1.4.6</source>
        <translation>WCAG 2.2, Erfolgskriterium 1.4.6</translation>
    </message>
    <message>
        <source>WCAG 2.2, success criterion 2.5.5</source>
        <translation>WCAG 2.2, Erfolgskriterium 2.5.5</translation>
    </message>
    <message>
        <source>WOAH, draft on registration of apiaries, quoted</source>
        <translation>WOAH, Entwurf zur Registrierung von Bienenständen, zitiert</translation>
    </message>
    <message>
        <source>Wanted precision of a yard's mean, to manage bees</source>
        <translation>Gewünschte Genauigkeit des Standmittels, für die Imkerei</translation>
    </message>
    <message>
        <source>Wash after the end of a treatment</source>
        <translation>Waschprobe nach dem Ende einer Behandlung</translation>
    </message>
    <message>
        <source>Washes that make a chance informed by the yard worth showing</source>
        <translation>Waschproben, ab denen sich eine Wahrscheinlichkeit aus dem Stand lohnt</translation>
    </message>
    <message>
        <source>Water in a shaker, one minute, fewer than 250 bees</source>
        <translation>Wasser in einem Schüttelgerät, eine Minute, unter 250 Bienen</translation>
    </message>
    <message>
        <source>Weak below 15; above 30 too strong for the bees.</source>
        <translation>Schwach unter 15; über 30 zu stark für die Bienen.</translation>
    </message>
    <message>
        <source>Weighed drained bees: spread between hands that drain</source>
        <translation>Gewogene abgetropfte Bienen: Streuung zwischen Händen, die abtropfen lassen</translation>
    </message>
    <message>
        <source>Weighed live bees: spread common to all weighings</source>
        <translation>Gewogene lebende Bienen: allen Wägungen gemeinsame Streuung</translation>
    </message>
    <message>
        <source>Weighed live bees: spread of one weighing</source>
        <translation>Gewogene lebende Bienen: Streuung einer Wägung</translation>
    </message>
    <message>
        <source>Weight of that spread</source>
        <translation>Gewicht dieser Streuung</translation>
    </message>
    <message>
        <source>Weight of the book's figure against your own counted scoops</source>
        <translation>Gewicht der Handbuchzahl gegen die eigenen ausgezählten Becher</translation>
    </message>
    <message>
        <source>Weight of the book's spread where colonies show their own</source>
        <translation>Gewicht der Handbuchstreuung, wo Völker eine eigene zeigen</translation>
    </message>
    <message>
        <source>What a second rinse adds</source>
        <translation>Was eine zweite Spülung hinzufügt</translation>
    </message>
    <message>
        <source>What beekeepers do; no published source</source>
        <translation>Was man in der Imkerei macht; keine veröffentlichte Quelle</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Was es bewirkt</translation>
    </message>
    <message>
        <source>What it needs</source>
        <translation>Was es braucht</translation>
    </message>
    <message>
        <source>Where mites are still susceptible.</source>
        <translation>Wo Milben noch empfindlich sind.</translation>
    </message>
    <message>
        <source>Wider; picked because its ranges held the truth more often in simulated yards.</source>
        <translation>Weiter; gewählt, weil ihre Spannen an simulierten Ständen die Wahrheit öfter enthielten.</translation>
    </message>
    <message>
        <source>Widespread.</source>
        <translation>Verbreitet.</translation>
    </message>
    <message>
        <source>Wilson 95 % limits of 0 in 20</source>
        <translation>Wilson-95-%-Grenzen von 0 aus 20</translation>
    </message>
    <message>
        <source>Wilson 95 % limits of 1 in 29</source>
        <translation>Wilson-95-%-Grenzen von 1 aus 29</translation>
    </message>
    <message>
        <source>Wilson 95 % limits of 15 in 148</source>
        <translation>Wilson-95-%-Grenzen von 15 aus 148</translation>
    </message>
    <message>
        <source>Wilson 95 % limits of 81 in 263</source>
        <translation>Wilson-95-%-Grenzen von 81 aus 263</translation>
    </message>
    <message>
        <source>Winter screen wash and soapy water are used as well; that is common practice without a source.</source>
        <translation>Auch Winter-Scheibenreiniger und Seifenwasser werden benutzt; das ist übliche Praxis ohne Quelle.</translation>
    </message>
    <message>
        <source>With supers on</source>
        <translation>Mit Honigraum</translation>
    </message>
    <message>
        <source>Without brood.</source>
        <translation>Ohne Brut.</translation>
    </message>
    <message>
        <source>Without capped brood all mites sit on bees, where a treatment that acts on bees alone reaches them.</source>
        <translation>Ohne verdeckelte Brut sitzen alle Milben auf Bienen, wo eine Behandlung sie erreicht, die nur dort wirkt.</translation>
    </message>
    <message>
        <source>Wording of extension services</source>
        <translation>Wortlaut von Beratungsstellen</translation>
    </message>
    <message>
        <source>Worker brood under its capping</source>
        <translation>Arbeiterinnenbrut unter dem Deckel</translation>
    </message>
    <message>
        <source>Worth keeping besides</source>
        <translation>Außerdem aufhebenswert</translation>
    </message>
    <message>
        <source>Wrong verdicts accepted by the stop-early rule, either way</source>
        <translation>Falsche Urteile, die die Regel zum frühen Aufhören in Kauf nimmt, in beide Richtungen</translation>
    </message>
    <message>
        <source>Yours to change.</source>
        <translation>Darf geändert werden.</translation>
    </message>
    <message>
        <source>amitraz</source>
        <translation>Amitraz</translation>
    </message>
    <message>
        <source>batch number and expiry date</source>
        <translation>Chargennummer und Verfallsdatum</translation>
    </message>
    <message>
        <source>bees</source>
        <translation>Bienen</translation>
    </message>
    <message>
        <source>bees per ml</source>
        <translation>Bienen je ml</translation>
    </message>
    <message>
        <source>by label</source>
        <translation>laut Packungsbeilage</translation>
    </message>
    <message>
        <source>cells</source>
        <translation>Zellen</translation>
    </message>
    <message>
        <source>chance</source>
        <translation>Wahrscheinlichkeit</translation>
    </message>
    <message>
        <source>colonies</source>
        <translation>Völker</translation>
    </message>
    <message>
        <source>colonies stayed above the line</source>
        <translation>Völker blieben über der Schwelle</translation>
    </message>
    <message>
        <source>colonies treated</source>
        <translation>behandelte Völker</translation>
    </message>
    <message>
        <source>cool weather, bees in a cluster or nearly</source>
        <translation>kühl, Bienen in der Traube oder fast</translation>
    </message>
    <message>
        <source>coumaphos</source>
        <translation>Coumaphos</translation>
    </message>
    <message>
        <source>count</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>day of the year</source>
        <translation>Tag des Jahres</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>degrees C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>degrees of freedom</source>
        <translation>Freiheitsgrade</translation>
    </message>
    <message>
        <source>first day</source>
        <translation>erster Tag</translation>
    </message>
    <message>
        <source>flumethrin</source>
        <translation>Flumethrin</translation>
    </message>
    <message>
        <source>formic acid</source>
        <translation>Ameisensäure</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>hop beta acids</source>
        <translation>Hopfen-Betasäuren</translation>
    </message>
    <message>
        <source>how long the treatment lasts</source>
        <translation>Dauer der Behandlung</translation>
    </message>
    <message>
        <source>in autumn at times more than are bred in the colony</source>
        <translation>im Herbst manchmal mehr, als im Volk heranwachsen</translation>
    </message>
    <message>
        <source>ln 2 / 0.021</source>
        <translation>ln 2 / 0,021</translation>
    </message>
    <message>
        <source>longitude first</source>
        <translation>Länge zuerst</translation>
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
        <translation>Minuten</translation>
    </message>
    <message>
        <source>mites</source>
        <translation>Milben</translation>
    </message>
    <message>
        <source>mites a day</source>
        <translation>Milben pro Tag</translation>
    </message>
    <message>
        <source>mites a leaf</source>
        <translation>Milben je Blatt</translation>
    </message>
    <message>
        <source>mites a leaf, squared</source>
        <translation>Milben je Blatt, quadriert</translation>
    </message>
    <message>
        <source>mites in the colony for one a day on the board</source>
        <translation>Milben im Volk auf eine pro Tag auf der Windel</translation>
    </message>
    <message>
        <source>mites per 100 bees</source>
        <translation>Milben je 100 Bienen</translation>
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
        <translation>Monate</translation>
    </message>
    <message>
        <source>name of the product</source>
        <translation>Name des Produkts</translation>
    </message>
    <message>
        <source>natural</source>
        <translation>natürlich</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>no, long contact</source>
        <translation>nein, langer Kontakt</translation>
    </message>
    <message>
        <source>octets</source>
        <translation>Oktetten</translation>
    </message>
    <message>
        <source>of all mites</source>
        <translation>aller Milben</translation>
    </message>
    <message>
        <source>of ln(bees)</source>
        <translation>von ln(Bienen)</translation>
    </message>
    <message>
        <source>of the count</source>
        <translation>der Zählung</translation>
    </message>
    <message>
        <source>of the mean</source>
        <translation>des Mittels</translation>
    </message>
    <message>
        <source>of the mites on the bees</source>
        <translation>der Milben auf den Bienen</translation>
    </message>
    <message>
        <source>of the squared load</source>
        <translation>des quadrierten Befalls</translation>
    </message>
    <message>
        <source>of the squared mean</source>
        <translation>des quadrierten Mittels</translation>
    </message>
    <message>
        <source>of what a wash finds</source>
        <translation>dessen, was eine Waschprobe findet</translation>
    </message>
    <message>
        <source>openings per inch</source>
        <translation>Maschen pro Zoll</translation>
    </message>
    <message>
        <source>owner, address, position, average number of colonies at each site</source>
        <translation>Halter, Anschrift, Position, mittlere Zahl der Völker je Standort</translation>
    </message>
    <message>
        <source>oxalic acid</source>
        <translation>Oxalsäure</translation>
    </message>
    <message>
        <source>per cell capped a day and gram of bees</source>
        <translation>je verdeckelter Zelle am Tag und Gramm Bienen</translation>
    </message>
    <message>
        <source>per day</source>
        <translation>pro Tag</translation>
    </message>
    <message>
        <source>prescriber, where there is one</source>
        <translation>verschreibende Person, wo es eine gibt</translation>
    </message>
    <message>
        <source>probability</source>
        <translation>Wahrscheinlichkeit</translation>
    </message>
    <message>
        <source>proof of purchase</source>
        <translation>Kaufbeleg</translation>
    </message>
    <message>
        <source>proportion</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>quantity</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>said</source>
        <translation>genannt</translation>
    </message>
    <message>
        <source>scoops</source>
        <translation>Becher</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>Sekunden</translation>
    </message>
    <message>
        <source>shape</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>standard error over mean</source>
        <translation>Standardfehler durch Mittel</translation>
    </message>
    <message>
        <source>supplier's name and address</source>
        <translation>Name und Anschrift der Bezugsquelle</translation>
    </message>
    <message>
        <source>synthetic</source>
        <translation>synthetisch</translation>
    </message>
    <message>
        <source>tablespoons</source>
        <translation>Esslöffel</translation>
    </message>
    <message>
        <source>tau-fluvalinate</source>
        <translation>Tau-Fluvalinat</translation>
    </message>
    <message>
        <source>thymol</source>
        <translation>Thymol</translation>
    </message>
    <message>
        <source>times</source>
        <translation>mal</translation>
    </message>
    <message>
        <source>times the usual</source>
        <translation>mal die übliche</translation>
    </message>
    <message>
        <source>to 1</source>
        <translation>zu 1</translation>
    </message>
    <message>
        <source>treated in August, colonies were better in December than treated in June or October</source>
        <translation>im August behandelt, standen Völker im Dezember besser da als im Juni oder Oktober behandelt</translation>
    </message>
    <message>
        <source>treating from mid-July into August did better than treating in September</source>
        <translation>Behandeln von Mitte Juli bis in den August war besser als im September</translation>
    </message>
    <message>
        <source>van Dooremalen et al. 2012, PLoS ONE 7:e36285</source>
        <translation>van Dooremalen et al. 2012, PLoS ONE 7:e36285</translation>
    </message>
    <message>
        <source>washes</source>
        <translation>Waschproben</translation>
    </message>
    <message>
        <source>with care</source>
        <translation>mit Vorsicht</translation>
    </message>
    <message>
        <source>withdrawal period, also where it is zero</source>
        <translation>Wartezeit, auch wenn sie null ist</translation>
    </message>
    <message>
        <source>words</source>
        <translation>Worte</translation>
    </message>
    <message>
        <source>years</source>
        <translation>Jahre</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
</context>
<context>
    <name>HereChoices</name>
    <message>
        <source>Look again</source>
        <translation>Neu suchen</translation>
    </message>
    <message>
        <source>Make a yard here</source>
        <translation>Hier einen Stand anlegen</translation>
    </message>
    <message>
        <source>New yard</source>
        <translation>Neuer Stand</translation>
    </message>
    <message>
        <source>Or pick one of your yards</source>
        <translation>Oder einen deiner Stände wählen</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Teilen</translation>
    </message>
    <message>
        <source>Yards</source>
        <translation>Stände</translation>
    </message>
    <message>
        <source>asks for the position once more</source>
        <translation>fragt die Position noch einmal ab</translation>
    </message>
</context>
<context>
    <name>HereColonies</name>
    <message>
        <source>Compare the colonies</source>
        <translation>Völker vergleichen</translation>
    </message>
    <message>
        <source>No colony is kept in this yard yet.</source>
        <translation>An diesem Stand gibt es noch kein Volk.</translation>
    </message>
    <message>
        <source>Open the tray</source>
        <translation>Kiste öffnen</translation>
    </message>
    <message>
        <source>side by side, the highest load first</source>
        <translation>untereinander, der höchste Befall zuerst</translation>
    </message>
</context>
<context>
    <name>HereFrame</name>
    <message>
        <source>Setup</source>
        <translation>Optionen</translation>
    </message>
</context>
<context>
    <name>HereRound</name>
    <message>
        <source>Yard round</source>
        <translation>Standrunde</translation>
    </message>
    <message>
        <source>wash some colonies, know the whole yard</source>
        <translation>einige Völker auswaschen, den ganzen Stand kennen</translation>
    </message>
</context>
<context>
    <name>HereWelcome</name>
    <message>
        <source>Begin with a yard: a name, and the colonies that stand in it. Halfcup knows it again by its place.</source>
        <translation>Am Anfang steht ein Stand: ein Name und die Völker, die dort stehen. Halfcup erkennt ihn an seinem Ort wieder.</translation>
    </message>
    <message>
        <source>Load the demo</source>
        <translation>Demo laden</translation>
    </message>
    <message>
        <source>Make a yard here</source>
        <translation>Hier einen Stand anlegen</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Teilen</translation>
    </message>
    <message>
        <source>The demo brings two invented yards over one season. They are marked as demo wherever they appear.</source>
        <translation>Die Demo bringt zwei erfundene Stände über eine Saison. Sie sind überall als Demo gekennzeichnet.</translation>
    </message>
    <message>
        <source>Wash half a cup of bees, count the mites, and know what the count means.</source>
        <translation>Eine halbe Tasse Bienen auswaschen, die Milben zählen und wissen, was die Zahl bedeutet.</translation>
    </message>
</context>
<context>
    <name>HereYard</name>
    <message>
        <source>Add colonies</source>
        <translation>Völker anlegen</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Teilen</translation>
    </message>
    <message>
        <source>Yards</source>
        <translation>Stände</translation>
    </message>
</context>
<context>
    <name>HistoryPage</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Bring it back</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>It was removed and is in no list now. Nothing of it was thrown away.</source>
        <translation>Es wurde entfernt und steht jetzt in keiner Liste. Nichts davon ging verloren.</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>So lassen</translation>
    </message>
    <message>
        <source>Newest first. Touch an earlier value to put it back.</source>
        <translation>Neueste zuerst. Einen früheren Wert antippen, um ihn wiederherzustellen.</translation>
    </message>
    <message>
        <source>Nothing was changed since it was written down.</source>
        <translation>Seit dem Notieren wurde nichts geändert.</translation>
    </message>
    <message>
        <source>Put this back</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>Put this back?</source>
        <translation>Das wiederherstellen?</translation>
    </message>
    <message>
        <source>What changed</source>
        <translation>Änderungen</translation>
    </message>
</context>
<context>
    <name>HistoryWords</name>
    <message>
        <source>%1 m east, %2 m north</source>
        <translation>%1 m nach Osten, %2 m nach Norden</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Place on the plan</source>
        <translation>Ort im Plan</translation>
    </message>
    <message>
        <source>The whole record</source>
        <translation>Der ganze Eintrag</translation>
    </message>
    <message>
        <source>in the lists</source>
        <translation>in den Listen</translation>
    </message>
    <message>
        <source>no place</source>
        <translation>kein Ort</translation>
    </message>
    <message>
        <source>none, it stands by itself</source>
        <translation>keines, es steht für sich</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>nicht gefragt</translation>
    </message>
    <message>
        <source>not put there</source>
        <translation>nicht dorthin gesetzt</translation>
    </message>
    <message>
        <source>not seen</source>
        <translation>nicht gesehen</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>entfernt</translation>
    </message>
    <message>
        <source>seen and safe</source>
        <translation>gesehen, in Sicherheit</translation>
    </message>
</context>
<context>
    <name>ImportColumns</name>
    <message>
        <source>For all rows. A name that is not there yet makes a new yard.</source>
        <translation>Für alle Zeilen. Ein Name, den es noch nicht gibt, legt einen neuen Stand an.</translation>
    </message>
    <message>
        <source>In which yard were these washes?</source>
        <translation>An welchem Stand waren diese Waschproben?</translation>
    </message>
    <message>
        <source>Name of the yard</source>
        <translation>Name des Stands</translation>
    </message>
</context>
<context>
    <name>ImportPage</name>
    <message>
        <source>Leave it as it is</source>
        <translation>So lassen</translation>
    </message>
    <message>
        <source>Which column holds it?</source>
        <translation>In welcher Spalte steht es?</translation>
    </message>
</context>
<context>
    <name>ImportPreview</name>
    <message>
        <source>In question</source>
        <translation>Fraglich</translation>
    </message>
    <message>
        <source>Refused</source>
        <translation>Abgelehnt</translation>
    </message>
    <message>
        <source>Taken for granted</source>
        <translation>Als gegeben angenommen</translation>
    </message>
    <message>
        <source>The first of them</source>
        <translation>Die ersten davon</translation>
    </message>
</context>
<context>
    <name>Importing</name>
    <message>
        <source>%1: %2 on %3, %4</source>
        <comment>day, mites, bees, method</comment>
        <translation>%1: %2 auf %3, %4</translation>
    </message>
    <message>
        <source>%1: %2 per 100 (%3)</source>
        <comment>standing, load, its range</comment>
        <translation>%1: %2 je 100 (%3)</translation>
    </message>
    <message>
        <source>Column %1, without a name</source>
        <translation>Spalte %1, ohne Namen</translation>
    </message>
    <message>
        <source>for example %1</source>
        <translation>zum Beispiel %1</translation>
    </message>
</context>
<context>
    <name>JarLabel</name>
    <message>
        <source>Into the tray</source>
        <translation>In die Kiste</translation>
    </message>
    <message>
        <source>Number or name</source>
        <translation>Nummer oder Name</translation>
    </message>
    <message>
        <source>Wash it now</source>
        <translation>Jetzt auswaschen</translation>
    </message>
    <message>
        <source>What is on the jar?</source>
        <translation>Was steht auf dem Glas?</translation>
    </message>
    <message>
        <source>Write it on the lid. The time and place of the scoop stay with it.</source>
        <translation>Auf den Deckel schreiben. Zeit und Ort des Schöpfens bleiben dabei.</translation>
    </message>
</context>
<context>
    <name>LayBoardStep</name>
    <message>
        <source>A board counts only what falls through a screen. Under a solid floor the count would mean nothing.</source>
        <translation>Eine Windel zählt nur, was durch ein Gitter fällt. Unter einem geschlossenen Boden sagt die Zahl nichts.</translation>
    </message>
    <message>
        <source>It is screened now</source>
        <translation>Jetzt hat es Gitterboden</translation>
    </message>
    <message>
        <source>It lies there already</source>
        <translation>Sie liegt schon</translation>
    </message>
    <message>
        <source>Its floor is screened</source>
        <translation>Boden ist Gitterboden</translation>
    </message>
    <message>
        <source>Its floor is solid: leave</source>
        <translation>Geschlossener Boden: verlassen</translation>
    </message>
    <message>
        <source>written down with today's date</source>
        <translation>mit heutigem Datum notiert</translation>
    </message>
</context>
<context>
    <name>LoadLegend</name>
    <message numerus="yes">
        <source>%n wash(es) since %1.</source>
        <translation>
            <numerusform>%n Waschprobe seit dem %1.</numerusform>
            <numerusform>%n Waschproben seit dem %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>A wash that found none: the load may be up to the stroke</source>
        <translation>Waschprobe ohne Milben: Der Befall kann bis zum Strich reichen</translation>
    </message>
    <message>
        <source>A wash, and the range that holds the true load 9 times in 10</source>
        <translation>Waschprobe, mit der Spanne des wahren Befalls in 9 von 10 Fällen</translation>
    </message>
    <message>
        <source>Counted another way, and none found: up to the stroke</source>
        <translation>Anders gezählt, keine gefunden: bis zum Strich</translation>
    </message>
    <message>
        <source>Counted another way, as by a sugar roll</source>
        <translation>Anders gezählt, etwa mit Puderzuckerprobe</translation>
    </message>
    <message>
        <source>If nothing is done, about %1 on %2, between %3 and %4.</source>
        <translation>Wenn nichts geschieht: etwa %1 am %2, zwischen %3 und %4.</translation>
    </message>
    <message>
        <source>If nothing is done, at most about %1 on %2.</source>
        <translation>Wenn nichts geschieht: höchstens etwa %1 am %2.</translation>
    </message>
    <message>
        <source>Last treated from %1 to %2.</source>
        <translation>Zuletzt behandelt vom %1 bis %2.</translation>
    </message>
    <message>
        <source>Last treated from %1 to %2: %3.</source>
        <translation>Zuletzt behandelt vom %1 bis %2: %3.</translation>
    </message>
    <message>
        <source>No wash yet.</source>
        <translation>Noch keine Waschprobe.</translation>
    </message>
    <message>
        <source>Something happened, and there was no room for its mark</source>
        <translation>Ereignis, für dessen Zeichen kein Platz war</translation>
    </message>
    <message>
        <source>The highest load was %1 mites per 100 bees, on %2.</source>
        <translation>Höchster Befall: %1 Milben je 100 Bienen, am %2.</translation>
    </message>
    <message>
        <source>The last wash, on %1, found none: at most %2 mites per 100 bees.</source>
        <translation>Letzte Waschprobe am %1, keine gefunden: höchstens %2 Milben je 100 Bienen.</translation>
    </message>
    <message>
        <source>The last wash, on %1: %2 mites per 100 bees, between %3 and %4.</source>
        <translation>Letzte Waschprobe am %1: %2 Milben je 100 Bienen, zwischen %3 und %4.</translation>
    </message>
    <message>
        <source>The load ahead if nothing is done, and its range</source>
        <translation>Künftiger Befall, wenn nichts geschieht, samt Spanne</translation>
    </message>
    <message>
        <source>The treat line is %1.</source>
        <translation>Die Behandlungsschwelle ist %1.</translation>
    </message>
    <message>
        <source>The treat line, as it was then</source>
        <translation>Behandlungsschwelle, wie sie jeweils galt</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Treated, from the first day to the last</source>
        <translation>Behandelt, vom ersten bis zum letzten Tag</translation>
    </message>
    <message>
        <source>Your own line, as it was then</source>
        <translation>Eigene Schwelle, wie sie jeweils galt</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <comment>date format, as in 18 May 2026</comment>
        <translation>d. MMMM yyyy</translation>
    </message>
</context>
<context>
    <name>LoadMarks</name>
    <message>
        <source>Dead</source>
        <translation>Tot</translation>
    </message>
    <message>
        <source>Moved to another yard</source>
        <translation>An anderen Stand umgestellt</translation>
    </message>
    <message>
        <source>New queen</source>
        <translation>Neue Königin</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>Ableger</translation>
    </message>
    <message>
        <source>Supers off</source>
        <translation>Honigraum ab</translation>
    </message>
    <message>
        <source>Supers on</source>
        <translation>Honigraum drauf</translation>
    </message>
    <message>
        <source>Swarmed</source>
        <translation>Geschwärmt</translation>
    </message>
    <message>
        <source>Two colonies put together</source>
        <translation>Zwei Völker vereinigt</translation>
    </message>
</context>
<context>
    <name>LoadWords</name>
    <message>
        <source>%1 to %2</source>
        <comment>years</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Mites per 100 bees</source>
        <translation>Milben je 100 Bienen</translation>
    </message>
    <message>
        <source>Mites per 100 bees, uneven scale</source>
        <translation>Milben je 100 Bienen, ungleiche Skala</translation>
    </message>
    <message>
        <source>No wash yet.</source>
        <translation>Noch keine Waschprobe.</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Treat line</source>
        <translation>Behandlungsschwelle</translation>
    </message>
    <message>
        <source>Your own line</source>
        <translation>Eigene Schwelle</translation>
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
        <translation>Zeichen wieder zuklappen</translation>
    </message>
    <message>
        <source>What the marks mean</source>
        <translation>Was die Zeichen bedeuten</translation>
    </message>
</context>
<context>
    <name>MessageSheet</name>
    <message>
        <source>Please read</source>
        <translation>Bitte lesen</translation>
    </message>
    <message>
        <source>Understood</source>
        <translation>Verstanden</translation>
    </message>
</context>
<context>
    <name>Method</name>
    <message>
        <source>Alcohol burns. No lit smoker, flame or cigarette near the jar.</source>
        <translation>Alkohol brennt. Kein brennender Smoker, keine Flamme und keine Zigarette nahe am Glas.</translation>
    </message>
    <message>
        <source>All drone cells you opened, with mites and without. Open a hundred or more, in several places.</source>
        <translation>Alle geöffneten Drohnenzellen, mit und ohne Milben. Hundert oder mehr öffnen, an mehreren Stellen.</translation>
    </message>
    <message>
        <source>All white: let them rest</source>
        <translation>Alle weiß: ruhen lassen</translation>
    </message>
    <message>
        <source>Board laid: keep the time</source>
        <translation>Liegt: Zeit speichern</translation>
    </message>
    <message>
        <source>Board pulled</source>
        <translation>Windel gezogen</translation>
    </message>
    <message>
        <source>Board under colony %1</source>
        <translation>Windel unter Volk %1</translation>
    </message>
    <message>
        <source>Close the jar with the mesh. Sieve two tablespoons of powdered sugar through it.
Roll the jar until every bee is white.</source>
        <translation>Das Glas mit dem Gitter schließen. Zwei Esslöffel Puderzucker hindurchsieben.
Das Glas rollen, bis jede Biene weiß ist.</translation>
    </message>
    <message>
        <source>Count cells with mites</source>
        <translation>Zellen mit Milben zählen</translation>
    </message>
    <message>
        <source>Count the mites</source>
        <translation>Milben zählen</translation>
    </message>
    <message>
        <source>Count the whole board, or the same share in every part of it.</source>
        <translation>Die ganze Windel zählen, oder in jedem Teil denselben Anteil.</translation>
    </message>
    <message>
        <source>Dry weather only: damp sugar clumps, holds mites and harms bees. Do not breathe the dust.</source>
        <translation>Nur bei trockenem Wetter: Feuchter Zucker klumpt, hält Milben fest und schadet den Bienen. Den Staub nicht einatmen.</translation>
    </message>
    <message>
        <source>Find her and set her frame aside before you scoop.</source>
        <translation>Vor dem Schöpfen die Königin suchen und ihre Wabe beiseitestellen.</translation>
    </message>
    <message>
        <source>Grease the board or use a sticky one: a dry board loses mites to ants and wind.
Slide it under the screen so that it covers the whole floor. No gap for bees.</source>
        <translation>Die Windel einfetten oder eine klebende nehmen: Von einer trockenen holen Ameisen und Wind die Milben.
Unter das Gitter schieben, so dass sie den ganzen Boden bedeckt. Kein Spalt für Bienen.</translation>
    </message>
    <message>
        <source>Half a cup of bees in alcohol. The bees die; the surest count.</source>
        <translation>Eine halbe Tasse Bienen in Alkohol. Die Bienen sterben; die sicherste Zählung.</translation>
    </message>
    <message>
        <source>Half a cup of bees in powdered sugar. They live; the roll finds fewer mites than a wash, and the answer is wider.</source>
        <translation>Eine halbe Tasse Bienen in Puderzucker. Sie überleben; die Probe findet weniger Milben als eine Waschprobe, und das Ergebnis ist ungenauer.</translation>
    </message>
    <message>
        <source>Hold the jar against the light and look at the bottom once more. None found is kept as a count of 0.</source>
        <translation>Das Glas gegen das Licht halten und den Boden noch einmal absuchen. Keine gefunden wird als Zählung von 0 gespeichert.</translation>
    </message>
    <message>
        <source>Hold the jar against the light, look under the foam and at the bottom once more. None found is kept as a count of 0.</source>
        <translation>Das Glas gegen das Licht halten, unter dem Schaum und am Boden noch einmal suchen. Keine gefunden wird als Zählung von 0 gespeichert.</translation>
    </message>
    <message>
        <source>How many cells in all?</source>
        <translation>Wie viele Zellen insgesamt?</translation>
    </message>
    <message>
        <source>How much of the board?</source>
        <translation>Wie viel von der Windel?</translation>
    </message>
    <message>
        <source>Lay the board</source>
        <translation>Windel einschieben</translation>
    </message>
    <message>
        <source>Let it settle</source>
        <translation>Absetzen lassen</translation>
    </message>
    <message>
        <source>Let the foam go</source>
        <translation>Schaum vergehen lassen</translation>
    </message>
    <message>
        <source>Let them rest</source>
        <translation>Ruhen lassen</translation>
    </message>
    <message>
        <source>Lid on: start the shake</source>
        <translation>Deckel zu: Schütteln starten</translation>
    </message>
    <message>
        <source>Look into the cells and at the pale pupae once more. None found is kept as a count of 0.</source>
        <translation>Noch einmal in die Zellen und auf die blassen Puppen sehen. Keine gefunden wird als Zählung von 0 gespeichert.</translation>
    </message>
    <message>
        <source>Mesh down over a white plate: shake hard, like a salt cellar.</source>
        <translation>Gitter nach unten, über einem weißen Teller: kräftig schütteln, wie einen Salzstreuer.</translation>
    </message>
    <message>
        <source>Mites that fall through a screened floor, by the day. No bee is touched; weak evidence beside a wash.</source>
        <translation>Milben, die durch den Gitterboden fallen, pro Tag. Keine Biene wird berührt; ein schwaches Zeugnis neben einer Waschprobe.</translation>
    </message>
    <message>
        <source>One to three days are best. Pull it level, out of the wind.</source>
        <translation>Ein bis drei Tage sind am besten. Waagrecht ziehen, geschützt vor Wind.</translation>
    </message>
    <message>
        <source>Open drone brood of colony %1</source>
        <translation>Drohnenbrut: Volk %1</translation>
    </message>
    <message>
        <source>Opened brood dies. Take capped drone cells with pink to purple eyes.</source>
        <translation>Geöffnete Brut stirbt. Verdeckelte Drohnenzellen mit rosa bis violetten Augen nehmen.</translation>
    </message>
    <message>
        <source>Pour and close</source>
        <translation>Aufgießen, schließen</translation>
    </message>
    <message>
        <source>Pour fresh alcohol over the same bees, shake again and count what still falls.</source>
        <translation>Frischen Alkohol über dieselben Bienen gießen, wieder schütteln und zählen, was noch fällt.</translation>
    </message>
    <message>
        <source>Pour fresh soapy water over the same bees, shake again and count what still falls.</source>
        <translation>Frisches Seifenwasser über dieselben Bienen gießen, wieder schütteln und zählen, was noch fällt.</translation>
    </message>
    <message>
        <source>Pour in alcohol until all the bees are well covered.
Close the lid and see that it is tight.</source>
        <translation>Alkohol eingießen, bis alle Bienen gut bedeckt sind.
Den Deckel schließen und prüfen, dass er dicht ist.</translation>
    </message>
    <message>
        <source>Pour in water with a squirt of washing-up liquid until all the bees are well covered.
Close the lid and see that it is tight.</source>
        <translation>Wasser mit einem Spritzer Spülmittel eingießen, bis alle Bienen gut bedeckt sind.
Den Deckel schließen und prüfen, dass er dicht ist.</translation>
    </message>
    <message>
        <source>Pull the board</source>
        <translation>Windel ziehen</translation>
    </message>
    <message>
        <source>Rested. Turn the jar over a white plate.</source>
        <translation>Ausgeruht. Das Glas über einem weißen Teller umdrehen.</translation>
    </message>
    <message>
        <source>Rinse once more?</source>
        <translation>Noch einmal spülen?</translation>
    </message>
    <message>
        <source>Scoop the bees</source>
        <translation>Bienen schöpfen</translation>
    </message>
    <message>
        <source>See that she is not on the frame you open.</source>
        <translation>Darauf achten, dass sie nicht auf der Wabe ist, die geöffnet wird.</translation>
    </message>
    <message>
        <source>Settled. Look from below.</source>
        <translation>Abgesetzt. Von unten hinsehen.</translation>
    </message>
    <message>
        <source>Shake</source>
        <translation>Schütteln</translation>
    </message>
    <message>
        <source>Shake out</source>
        <translation>Ausschütteln</translation>
    </message>
    <message>
        <source>Shake the sugar out</source>
        <translation>Zucker ausschütteln</translation>
    </message>
    <message>
        <source>Spray the plate with water so that the sugar melts, and look once more. None found is kept as a count of 0.</source>
        <translation>Den Teller mit Wasser besprühen, damit der Zucker schmilzt, und noch einmal hinsehen. Keine gefunden wird als Zählung von 0 gespeichert.</translation>
    </message>
    <message>
        <source>Stand the jar in the shade. The mites lose their hold.</source>
        <translation>Das Glas in den Schatten stellen. Die Milben verlieren den Halt.</translation>
    </message>
    <message>
        <source>Stand the jar still. Foam hides mites; a little cold water on top clears it.</source>
        <translation>Das Glas ruhig stehen lassen. Schaum verdeckt Milben; etwas kaltes Wasser obendrauf löst ihn auf.</translation>
    </message>
    <message>
        <source>Stand the jar still. The mites sink.</source>
        <translation>Das Glas ruhig stehen lassen. Die Milben sinken.</translation>
    </message>
    <message>
        <source>Stung and short of breath, dizzy or swelling? Stop and call for help.</source>
        <translation>Gestochen und Atemnot, Schwindel oder Schwellungen? Aufhören und Hilfe rufen.</translation>
    </message>
    <message>
        <source>Sugar the bees</source>
        <translation>Bienen bepudern</translation>
    </message>
    <message>
        <source>Sugar-roll colony %1</source>
        <translation>Puderzuckerprobe: Volk %1</translation>
    </message>
    <message>
        <source>The bees go back alive, but sugar and shaking would harm a queen: leave her out.</source>
        <translation>Die Bienen kommen lebend zurück, aber Zucker und Schütteln würden der Königin schaden: sie darf nicht dabei sein.</translation>
    </message>
    <message>
        <source>The file says that it is UTF-16, but its text is broken. Save it again as CSV in UTF-8.</source>
        <translation>Die Datei gibt sich als UTF-16 aus, aber ihr Text ist beschädigt. Noch einmal als CSV in UTF-8 speichern.</translation>
    </message>
    <message>
        <source>The same with washing-up liquid in water. The bees die; nothing that burns.</source>
        <translation>Dasselbe mit Spülmittel in Wasser. Die Bienen sterben; nichts, was brennt.</translation>
    </message>
    <message>
        <source>The share of drone cells with mites. Only while there is capped drone brood; no load can be read from it.</source>
        <translation>Der Anteil der Drohnenzellen mit Milben. Nur solange es verdeckelte Drohnenbrut gibt; ein Befall lässt sich daraus nicht ablesen.</translation>
    </message>
    <message>
        <source>The washed bees die. Look twice that the queen is not among them.</source>
        <translation>Die ausgewaschenen Bienen sterben. Zweimal hinsehen, dass die Königin nicht dabei ist.</translation>
    </message>
    <message>
        <source>The whole board</source>
        <translation>Die ganze Windel</translation>
    </message>
    <message>
        <source>Tilt the board in the light and go along its lines once more. None found is kept as a count of 0.</source>
        <translation>Die Windel ins Licht kippen und ihre Linien noch einmal absuchen. Keine gefunden wird als Zählung von 0 gespeichert.</translation>
    </message>
    <message>
        <source>Time. Set the jar down.</source>
        <translation>Zeit um. Glas abstellen.</translation>
    </message>
    <message>
        <source>Touch anywhere for each mite</source>
        <translation>Für jede Milbe irgendwo antippen</translation>
    </message>
    <message>
        <source>Touch for each cell with a mite</source>
        <translation>Für jede Zelle mit Milbe antippen</translation>
    </message>
    <message>
        <source>Turn the jar over and over, not too gently.</source>
        <translation>Das Glas immer wieder kippen, nicht zu sanft.</translation>
    </message>
    <message>
        <source>Turn the jar over and over. Swirl more than you beat: less foam.</source>
        <translation>Das Glas immer wieder kippen. Mehr schwenken als schlagen: weniger Schaum.</translation>
    </message>
    <message>
        <source>Wash colony %1</source>
        <translation>Waschprobe: Volk %1</translation>
    </message>
    <message>
        <source>Where is the queen?</source>
        <translation>Wo ist die Königin?</translation>
    </message>
    <message>
        <source>Which colony?</source>
        <translation>Welches Volk?</translation>
    </message>
    <message>
        <source>alcohol</source>
        <translation>Alkohol</translation>
    </message>
    <message>
        <source>alcohol wash</source>
        <translation>Waschprobe mit Alkohol</translation>
    </message>
    <message>
        <source>drone brood opened</source>
        <translation>Drohnenbrut geöffnet</translation>
    </message>
    <message>
        <source>powdered sugar</source>
        <translation>Puderzucker</translation>
    </message>
    <message>
        <source>powdered-sugar roll</source>
        <translation>Puderzuckerprobe</translation>
    </message>
    <message>
        <source>soapy water</source>
        <translation>Seifenwasser</translation>
    </message>
    <message>
        <source>soapy-water wash</source>
        <translation>Waschprobe mit Seifenwasser</translation>
    </message>
    <message>
        <source>sticky board</source>
        <translation>Windel</translation>
    </message>
</context>
<context>
    <name>MethodsPage</name>
    <message>
        <source>How to count?</source>
        <translation>Wie zählen?</translation>
    </message>
</context>
<context>
    <name>NumberPad</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
</context>
<context>
    <name>NumberPadFigure</name>
    <message>
        <source>Nothing typed yet</source>
        <translation>Noch nichts eingegeben</translation>
    </message>
</context>
<context>
    <name>NumberPadKeys</name>
    <message>
        <source>Delete</source>
        <translation>Eins weg</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>OK</translation>
    </message>
</context>
<context>
    <name>OnDayPage</name>
    <message>
        <source>A day earlier</source>
        <translation>Einen Tag früher</translation>
    </message>
    <message>
        <source>A day later</source>
        <translation>Einen Tag später</translation>
    </message>
    <message>
        <source>Another day</source>
        <translation>Anderer Tag</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Show this day</source>
        <translation>Diesen Tag zeigen</translation>
    </message>
    <message>
        <source>Such as 1 July, or 2026-07-01</source>
        <translation>Zum Beispiel 1. Juli oder 2026-07-01</translation>
    </message>
    <message>
        <source>Which day?</source>
        <translation>Welcher Tag?</translation>
    </message>
</context>
<context>
    <name>OpenedCellsStep</name>
    <message>
        <source>Cells opened in all</source>
        <translation>Geöffnete Zellen insgesamt</translation>
    </message>
    <message>
        <source>Type the cells opened</source>
        <translation>Geöffnete Zellen eingeben</translation>
    </message>
    <message>
        <source>With mites: %1</source>
        <translation>Mit Milben: %1</translation>
    </message>
</context>
<context>
    <name>OtherAnswerPage</name>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Wash this colony</source>
        <translation>Waschprobe nehmen</translation>
    </message>
    <message>
        <source>Where this comes from</source>
        <translation>Woher das kommt</translation>
    </message>
</context>
<context>
    <name>OtherAnswerWords</name>
    <message>
        <source>%1 mites a day</source>
        <translation>%1 Milben pro Tag</translation>
    </message>
    <message>
        <source>%1 of 100 drone cells</source>
        <translation>%1 von 100 Drohnenzellen</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a range</comment>
        <translation>%1 bis %2</translation>
    </message>
</context>
<context>
    <name>OutlookWords</name>
    <message>
        <source>If nothing is done, and its range</source>
        <translation>Wenn nichts geschieht, samt Spanne</translation>
    </message>
    <message>
        <source>Mid-autumn</source>
        <translation>Herbstmitte</translation>
    </message>
    <message>
        <source>Mites per 100 bees</source>
        <translation>Milben je 100 Bienen</translation>
    </message>
    <message>
        <source>No outlook.</source>
        <translation>Kein Ausblick.</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Turn date</source>
        <translation>Stichtag</translation>
    </message>
    <message>
        <source>With the treatment, and its range</source>
        <translation>Mit der Behandlung, samt Spanne</translation>
    </message>
    <message>
        <source>Your treat line</source>
        <translation>Behandlungsschwelle</translation>
    </message>
</context>
<context>
    <name>OwnScoopsPage</name>
    <message>
        <source>After a wash, touch “Count these bees” under the answer. Five scoops tell your hand from another.</source>
        <translation>Nach einer Waschprobe unter dem Ergebnis „Diese Bienen zählen“ antippen. Fünf Becher zeigen, wie deine Hand schöpft.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>It no longer counts for your figure. The history keeps it, and the wash it belongs to stays as it is.</source>
        <translation>Er zählt dann nicht mehr für deine Zahl. Der Verlauf bewahrt ihn, und seine Waschprobe bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>Leave it in</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Weglassen</translation>
    </message>
    <message>
        <source>Leave this scoop out?</source>
        <translation>Diesen Becher weglassen?</translation>
    </message>
    <message>
        <source>What others count</source>
        <translation>Was andere zählen</translation>
    </message>
    <message>
        <source>Your scoops</source>
        <translation>Deine Becher</translation>
    </message>
</context>
<context>
    <name>PageHeader</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
</context>
<context>
    <name>PageText</name>
    <message>
        <source>*(A wide table is left out here; it is on the page that comes with the program.)*
</source>
        <translation>*(Eine breite Tabelle fehlt hier; sie steht auf der Seite, die mit dem Programm kommt.)*
</translation>
    </message>
</context>
<context>
    <name>Phrase</name>
    <message>
        <source>"%1" is no temperature. Type them in a row: 24 26 27.</source>
        <translation>„%1“ ist keine Temperatur. Hintereinander eingeben: 24 26 27.</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 is no temperature of a day with bees: %2 to %3.</source>
        <translation>%1 ist keine Temperatur für einen Tag mit Bienen: %2 bis %3.</translation>
    </message>
    <message>
        <source>%1 per 100</source>
        <translation>%1 je 100</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>A course of %1 runs until %2.</source>
        <translation>Eine Anwendung von %1 läuft bis %2.</translation>
    </message>
    <message>
        <source>A course of %1 that is written down begins on %2, while this one runs.</source>
        <translation>Eine notierte Anwendung von %1 beginnt am %2, während diese läuft.</translation>
    </message>
    <message>
        <source>A course of it runs until %1.</source>
        <translation>Eine Anwendung davon läuft bis %1.</translation>
    </message>
    <message>
        <source>A forecast of more than %1 is no forecast.</source>
        <translation>Mehr als %1 sind keine Vorhersage.</translation>
    </message>
    <message>
        <source>A forecast wants at least %1.</source>
        <translation>Eine Vorhersage braucht mindestens %1.</translation>
    </message>
    <message>
        <source>A treatment that is written down ends before it begins.</source>
        <translation>Eine notierte Behandlung endet, bevor sie beginnt.</translation>
    </message>
    <message>
        <source>All mites come onto the bees, where a treatment reaches them.</source>
        <translation>Alle Milben kommen auf die Bienen, wo eine Behandlung sie erreicht.</translation>
    </message>
    <message>
        <source>Also kills mites under cappings.</source>
        <translation>Tötet auch Milben unter den Deckeln ab.</translation>
    </message>
    <message>
        <source>Another class than last time, which was %1.</source>
        <translation>Andere Wirkstoffklasse als letztes Mal, das war %1.</translation>
    </message>
    <message>
        <source>By itself it seldom brings a load that is over the line under it again.</source>
        <translation>Für sich allein bringt es einen Befall über der Schwelle selten wieder darunter.</translation>
    </message>
    <message>
        <source>Can't tell: anything from %1 of the mites killed. The mark is %2.</source>
        <translation>Unklar: Von den Milben können %1 abgetötet sein. Das Ziel ist %2.</translation>
    </message>
    <message>
        <source>Can't tell: no treated colony was washed from %1 to %2 after its end.</source>
        <translation>Unklar: Kein behandeltes Volk wurde %1 bis %2 nach dem Ende ausgewaschen.</translation>
    </message>
    <message>
        <source>Can't tell: no treated colony was washed in the %1 before it.</source>
        <translation>Unklar: In der Zeit davor (%1) wurde kein behandeltes Volk ausgewaschen.</translation>
    </message>
    <message>
        <source>Compared with untreated colonies of the same yard: %1.</source>
        <translation>Verglichen mit unbehandelten Völkern am selben Stand: %1.</translation>
    </message>
    <message>
        <source>Do not use this class again here until an adviser has looked at it. If the load is over your line, treat with another class.</source>
        <translation>Diese Wirkstoffklasse hier nicht wieder anwenden, bevor eine Fachberatung es angesehen hat. Liegt der Befall über der Schwelle, mit einer anderen Klasse behandeln.</translation>
    </message>
    <message>
        <source>Does not reach under cappings, and there is capped brood.</source>
        <translation>Reicht nicht unter die Deckel, und es gibt verdeckelte Brut.</translation>
    </message>
    <message>
        <source>Does not reach under cappings: with brood it killed %1 of the mites.</source>
        <translation>Reicht nicht unter die Deckel: Mit Brut tötete es %1 der Milben ab.</translation>
    </message>
    <message>
        <source>Does not reach under cappings; whether there is capped brood now is not known.</source>
        <translation>Reicht nicht unter die Deckel; ob es jetzt verdeckelte Brut gibt, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Drones are being raised now.</source>
        <translation>Jetzt werden Drohnen aufgezogen.</translation>
    </message>
    <message>
        <source>Due in %2: %1</source>
        <translation>Noch %2: %1</translation>
    </message>
    <message>
        <source>Due today: %1</source>
        <translation>Heute fällig: %1</translation>
    </message>
    <message>
        <source>Due: %1, %2 late</source>
        <translation>Überfällig (%2): %1</translation>
    </message>
    <message>
        <source>Even its shortest course ends %1 after the turn date, %2.</source>
        <translation>Selbst die kürzeste Anwendung endet %1 nach dem Stichtag, %2.</translation>
    </message>
    <message>
        <source>Even with it: over what colonies survive as a rule by the turn date, %2.</source>
        <translation>Selbst damit: bis zum Stichtag, %2, mehr, als Völker in der Regel überleben.</translation>
    </message>
    <message>
        <source>Fewer than %1 mites were found before it: the range is wide.</source>
        <translation>Davor wurden weniger als %1 Milben gefunden: Die Spanne ist weit.</translation>
    </message>
    <message>
        <source>Grows about %1 a day. Likelier than not over %2 from about %3 on, if nothing is done.</source>
        <translation>Nimmt täglich um etwa %1 zu. Wenn nichts geschieht, wahrscheinlich über %2 ab etwa %3.</translation>
    </message>
    <message>
        <source>Grows about %1 a day. Over %2 already, with a chance of %3.</source>
        <translation>Nimmt täglich um etwa %1 zu. Schon über %2, Wahrscheinlichkeit %3.</translation>
    </message>
    <message>
        <source>Grows about %1 a day. Over %2 within 60 days of the last wash with a chance of %3.</source>
        <translation>Nimmt täglich um etwa %1 zu. Binnen 60 Tagen nach der letzten Waschprobe über %2: Wahrscheinlichkeit %3.</translation>
    </message>
    <message>
        <source>Growth is assumed, about %1 a day. Likelier than not over %2 from about %3 on, if nothing is done.</source>
        <translation>Angenommene Zunahme: etwa %1 pro Tag. Wenn nichts geschieht, wahrscheinlich über %2 ab etwa %3.</translation>
    </message>
    <message>
        <source>Growth is assumed, about %1 a day. Over %2 already, with a chance of %3.</source>
        <translation>Angenommene Zunahme: etwa %1 pro Tag. Schon über %2, Wahrscheinlichkeit %3.</translation>
    </message>
    <message>
        <source>Growth is assumed, about %1 a day. Over %2 within 60 days of the last wash with a chance of %3.</source>
        <translation>Angenommene Zunahme: etwa %1 pro Tag. Binnen 60 Tagen nach der letzten Waschprobe über %2: Wahrscheinlichkeit %3.</translation>
    </message>
    <message>
        <source>Helps later generations, not this one.</source>
        <translation>Hilft späteren Generationen, nicht dieser.</translation>
    </message>
    <message>
        <source>Honey may be taken again after: %1</source>
        <translation>Honig darf wieder entnommen werden nach: %1</translation>
    </message>
    <message>
        <source>If nothing is done: about %1 on %2 (%3).</source>
        <translation>Wenn nichts geschieht: etwa %1 am %2 (%3).</translation>
    </message>
    <message>
        <source>If nothing is done: about %1 on the turn date, %2 (%3), and %4 on %5 (%6).</source>
        <translation>Wenn nichts geschieht: etwa %1 am Stichtag, %2 (%3), und %4 am %5 (%6).</translation>
    </message>
    <message>
        <source>If nothing is done: about %1 on the turn date, %2 (%3), and over what colonies survive as a rule by %5.</source>
        <translation>Wenn nichts geschieht: etwa %1 am Stichtag, %2 (%3), und bis %5 mehr, als Völker in der Regel überleben.</translation>
    </message>
    <message>
        <source>If nothing is done: over what colonies survive as a rule by the turn date, %2.</source>
        <translation>Wenn nichts geschieht: bis zum Stichtag, %2, mehr, als Völker in der Regel überleben.</translation>
    </message>
    <message>
        <source>It did not reach the mark: about %1 of the mites killed (%2). The mark is %3.</source>
        <translation>Das Ziel wurde nicht erreicht: etwa %1 der Milben abgetötet (%2). Das Ziel ist %3.</translation>
    </message>
    <message>
        <source>It has a screened floor already.</source>
        <translation>Es hat schon einen Gitterboden.</translation>
    </message>
    <message>
        <source>It points to resistance: about %1 of the mites killed (%2). The mark is %3.</source>
        <translation>Deutet auf Resistenz: etwa %1 der Milben abgetötet (%2). Das Ziel ist %3.</translation>
    </message>
    <message>
        <source>It worked (about %1 killed), and then the load rose faster than mites breed: it points to mites carried in.</source>
        <translation>Es hat gewirkt (etwa %1 abgetötet), und dann stieg der Befall schneller, als Milben sich vermehren: Das deutet auf eingeschleppte Milben.</translation>
    </message>
    <message>
        <source>It worked: about %1 of the mites killed (%2). The mark is %3.</source>
        <translation>Es hat gewirkt: etwa %1 der Milben abgetötet (%2). Das Ziel ist %3.</translation>
    </message>
    <message>
        <source>It worked: no mites found after it, at least %1 killed. The mark is %2.</source>
        <translation>Es hat gewirkt: danach keine Milben gefunden, mindestens %1 abgetötet. Das Ziel ist %2.</translation>
    </message>
    <message>
        <source>Its shortest course ends on %1, in time for the turn date.</source>
        <translation>Die kürzeste Anwendung endet am %1, rechtzeitig vor dem Stichtag.</translation>
    </message>
    <message>
        <source>Last day of: %1</source>
        <translation>Letzter Tag: %1</translation>
    </message>
    <message>
        <source>Look for colonies breaking down or being robbed near by, and wash every two weeks until it stays low.</source>
        <translation>In der Nähe nach zusammenbrechenden oder ausgeraubten Völkern sehen und alle zwei Wochen auswaschen, bis der Befall niedrig bleibt.</translation>
    </message>
    <message>
        <source>Mites that resist it: %1</source>
        <translation>Milben, die ihm widerstehen: %1</translation>
    </message>
    <message>
        <source>Next time take another class, so that mites do not get used to this one.</source>
        <translation>Nächstes Mal eine andere Wirkstoffklasse nehmen, damit sich die Milben nicht an diese gewöhnen.</translation>
    </message>
    <message>
        <source>No capped brood: all mites are on bees.</source>
        <translation>Keine verdeckelte Brut: Alle Milben sind auf Bienen.</translation>
    </message>
    <message>
        <source>No capped brood: all mites are on bees. Killed then: %1.</source>
        <translation>Keine verdeckelte Brut: Alle Milben sind auf Bienen. Abgetötet werden dann: %1.</translation>
    </message>
    <message>
        <source>No colony has that many bees.</source>
        <translation>So viele Bienen hat kein Volk.</translation>
    </message>
    <message>
        <source>No drones are raised now.</source>
        <translation>Jetzt werden keine Drohnen aufgezogen.</translation>
    </message>
    <message>
        <source>No mites were found in the untreated colonies in one of the washes: they tell little.</source>
        <translation>In den unbehandelten Völkern wurden bei einer der Waschproben keine Milben gefunden: Sie sagen wenig.</translation>
    </message>
    <message>
        <source>No outlook: no published figure says how many mites this takes away.</source>
        <translation>Kein Ausblick: Keine veröffentlichte Zahl sagt, wie viele Milben das wegnimmt.</translation>
    </message>
    <message>
        <source>No outlook: the handbook has no figure for what %1 kills.</source>
        <translation>Kein Ausblick: Das Handbuch hat keine Zahl dafür, was %1 abtötet.</translation>
    </message>
    <message>
        <source>No untreated colony to compare with: corrected by assumed growth.</source>
        <translation>Kein unbehandeltes Volk zum Vergleich: mit angenommener Zunahme korrigiert.</translation>
    </message>
    <message>
        <source>None found since: at most %1 on %2, and over %3 within 30 days with a chance of %4.</source>
        <translation>Seither keine gefunden: höchstens %1 am %2, und binnen 30 Tagen über %3 mit einer Wahrscheinlichkeit von %4.</translation>
    </message>
    <message>
        <source>Not known yet: wash from %1 on, best on %2.</source>
        <translation>Noch nicht bekannt: ab dem %1 auswaschen, am besten am %2.</translation>
    </message>
    <message>
        <source>Not said in mites per 100 bees: how strong the colony is was not written down lately. Tell its frames of bees, and the next board can say it.</source>
        <translation>Nicht in Milben je 100 Bienen: Wie stark das Volk ist, wurde in letzter Zeit nicht notiert. Die besetzten Waben eingeben, dann kann es die nächste Windel sagen.</translation>
    </message>
    <message>
        <source>Not said in mites per 100 bees: there was no capped brood, and the factors hold only with brood.</source>
        <translation>Nicht in Milben je 100 Bienen: Es gab keine verdeckelte Brut, und die Faktoren gelten nur mit Brut.</translation>
    </message>
    <message>
        <source>Not said in mites per 100 bees: whether there is capped brood is not written down, and the factors hold only with brood.</source>
        <translation>Nicht in Milben je 100 Bienen: Ob es verdeckelte Brut gibt, ist nicht notiert, und die Faktoren gelten nur mit Brut.</translation>
    </message>
    <message>
        <source>Not under cappings, but still there when the bees hatch.</source>
        <translation>Nicht unter den Deckeln, aber noch da, wenn die Bienen schlüpfen.</translation>
    </message>
    <message>
        <source>Not under cappings, but the course outlasts the capped brood.</source>
        <translation>Nicht unter den Deckeln, aber die Anwendung dauert länger als die verdeckelte Brut.</translation>
    </message>
    <message>
        <source>Not while supers are on.</source>
        <translation>Nicht, solange der Honigraum drauf ist.</translation>
    </message>
    <message>
        <source>Not with supers on; whether they are is not written down.</source>
        <translation>Nicht mit Honigraum; ob einer drauf ist, ist nicht notiert.</translation>
    </message>
    <message>
        <source>Nothing can be foretold.</source>
        <translation>Nichts lässt sich voraussagen.</translation>
    </message>
    <message>
        <source>Same class as last time (%1, %2).</source>
        <translation>Gleiche Wirkstoffklasse wie letztes Mal (%1, %2).</translation>
    </message>
    <message>
        <source>Same substance as last time (%1; no class number).</source>
        <translation>Gleicher Wirkstoff wie letztes Mal (%1; ohne Klassennummer).</translation>
    </message>
    <message>
        <source>Strong enough: at least about %1 bees.</source>
        <translation>Stark genug: mindestens etwa %1 Bienen.</translation>
    </message>
    <message>
        <source>Supers are off.</source>
        <translation>Honigraum ist ab.</translation>
    </message>
    <message>
        <source>Supers are off; they stay off until the label allows them again.</source>
        <translation>Honigraum ist ab; er bleibt ab, bis die Packungsbeilage ihn wieder erlaubt.</translation>
    </message>
    <message>
        <source>Supers are on: only where the label allows it.</source>
        <translation>Honigraum ist drauf: nur, wo die Packungsbeilage es erlaubt.</translation>
    </message>
    <message>
        <source>Supers may be on.</source>
        <translation>Honigraum darf drauf sein.</translation>
    </message>
    <message>
        <source>Take out: %1</source>
        <translation>Entnehmen: %1</translation>
    </message>
    <message>
        <source>That is too long for a forecast.</source>
        <translation>Das ist zu lang für eine Vorhersage.</translation>
    </message>
    <message>
        <source>The first %1 fit; later too cold: %2 on %3, the limit is %4.</source>
        <translation>Zu Beginn passt es (%1); später zu kalt: %2 am %3, die Grenze ist %4.</translation>
    </message>
    <message>
        <source>The first %1 fit; later too hot: %2 on %3, the limit is %4.</source>
        <translation>Zu Beginn passt es (%1); später zu heiß: %2 am %3, die Grenze ist %4.</translation>
    </message>
    <message>
        <source>The first %1 have to be within its limits; the forecast has %2.</source>
        <translation>Zu Beginn muss es %1 lang innerhalb der Grenzen bleiben; die Vorhersage umfasst %2.</translation>
    </message>
    <message>
        <source>The floor is solid.</source>
        <translation>Der Boden ist geschlossen.</translation>
    </message>
    <message>
        <source>The forecast highs are within its limits.</source>
        <translation>Die vorhergesagten Höchstwerte liegen innerhalb der Grenzen.</translation>
    </message>
    <message>
        <source>The label in your hand and your local law outrank this. Check that the product is registered where you are: this program does not know.</source>
        <translation>Die Packungsbeilage in der Hand und das örtliche Recht gehen dem vor. Prüfen, ob das Produkt im Land zugelassen ist: Dieses Programm weiß es nicht.</translation>
    </message>
    <message>
        <source>The low of a day lies above its high: %1 over %2.</source>
        <translation>Der Tiefstwert eines Tages liegt über seinem Höchstwert: %1 über %2.</translation>
    </message>
    <message>
        <source>The turn date lies before the day asked for.</source>
        <translation>Der Stichtag liegt vor dem gefragten Tag.</translation>
    </message>
    <message>
        <source>There are %1 highs and %2 lows: one of each a day is wanted.</source>
        <translation>Es sind %1 Höchstwerte und %2 Tiefstwerte: Nötig ist je einer pro Tag.</translation>
    </message>
    <message>
        <source>There is no brood already.</source>
        <translation>Es ist schon brutfrei.</translation>
    </message>
    <message>
        <source>There is no such day.</source>
        <translation>Diesen Tag gibt es nicht.</translation>
    </message>
    <message>
        <source>Too cold: %1 on %2, the limit is %3.</source>
        <translation>Zu kalt: %1 am %2, die Grenze ist %3.</translation>
    </message>
    <message>
        <source>Too few bees: about %1, at least about %2 are wanted.</source>
        <translation>Zu wenige Bienen: etwa %1, nötig sind mindestens etwa %2.</translation>
    </message>
    <message>
        <source>Too hot: %1 on %2, the limit is %3.</source>
        <translation>Zu heiß: %1 am %2, die Grenze ist %3.</translation>
    </message>
    <message>
        <source>Turn date: mites low by now</source>
        <translation>Stichtag: ab jetzt wenige Milben</translation>
    </message>
    <message>
        <source>Wants at least about %1 bees; the colony's strength now is not known.</source>
        <translation>Braucht mindestens etwa %1 Bienen; die Volksstärke jetzt ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Wants daily highs from %1 to %2; there is no forecast to go by.</source>
        <translation>Braucht Tageshöchstwerte von %1 bis %2; es gibt keine Vorhersage dazu.</translation>
    </message>
    <message>
        <source>Wants daily highs over %1; there is no forecast to go by.</source>
        <translation>Braucht Tageshöchstwerte über %1; es gibt keine Vorhersage dazu.</translation>
    </message>
    <message>
        <source>Wants daily highs under %1; there is no forecast to go by.</source>
        <translation>Braucht Tageshöchstwerte unter %1; es gibt keine Vorhersage dazu.</translation>
    </message>
    <message>
        <source>Was it given as the label says, and warm or cool enough? If the load is over your line, treat again, with another substance.</source>
        <translation>Wurde es nach Packungsbeilage gegeben, und war es warm oder kühl genug? Liegt der Befall über der Schwelle, noch einmal behandeln, mit einem anderen Wirkstoff.</translation>
    </message>
    <message>
        <source>Wash all the same after its end: what counts is the load that is left.</source>
        <translation>Nach dem Ende trotzdem auswaschen: Es zählt der Befall, der bleibt.</translation>
    </message>
    <message>
        <source>Wash now: what counts is the load that is left.</source>
        <translation>Jetzt auswaschen: Es zählt der Befall, der bleibt.</translation>
    </message>
    <message>
        <source>Wash the colonies that were washed before it, and untreated ones where there are any.</source>
        <translation>Die Völker auswaschen, die auch davor ausgewaschen wurden, und unbehandelte, wo es welche gibt.</translation>
    </message>
    <message>
        <source>Wash: %1</source>
        <translation>Waschprobe: %1</translation>
    </message>
    <message>
        <source>Wash: did it work? %1</source>
        <translation>Waschprobe: Hat es gewirkt? %1</translation>
    </message>
    <message>
        <source>Washed in different ways before and after: the range is wider for it.</source>
        <translation>Davor und danach verschieden ausgewaschen: Die Spanne ist deshalb weiter.</translation>
    </message>
    <message>
        <source>Washed sooner than %1 after its end: mites under cappings are not in it yet. Wash once more.</source>
        <translation>Früher als %1 nach dem Ende ausgewaschen: Milben unter den Deckeln sind noch nicht erfasst. Noch einmal auswaschen.</translation>
    </message>
    <message>
        <source>Weather: %1.</source>
        <translation>Wetter: %1.</translation>
    </message>
    <message>
        <source>What counts now is the load itself: go by the last wash. Next time two jars a colony before and after tell more.</source>
        <translation>Jetzt zählt der Befall selbst: Es gilt die letzte Waschprobe. Nächstes Mal sagen zwei Gläser je Volk davor und danach mehr.</translation>
    </message>
    <message>
        <source>What was given on %1 is not counted in: the handbook has no figure for what it kills.</source>
        <translation>Was am %1 gegeben wurde, ist nicht eingerechnet: Das Handbuch hat keine Zahl dafür, was es abtötet.</translation>
    </message>
    <message>
        <source>Whether there is brood now is not known.</source>
        <translation>Ob es jetzt Brut gibt, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Which floor it has is not written down.</source>
        <translation>Welchen Boden es hat, ist nicht notiert.</translation>
    </message>
    <message>
        <source>Winter bees are raised now: they would be missing.</source>
        <translation>Jetzt werden Winterbienen aufgezogen: Sie würden fehlen.</translation>
    </message>
    <message>
        <source>With it: about %1 on %2 (%3).</source>
        <translation>Damit: etwa %1 am %2 (%3).</translation>
    </message>
    <message>
        <source>With it: about %1 on the turn date, %2 (%3), and %4 on %5 (%6).</source>
        <translation>Damit: etwa %1 am Stichtag, %2 (%3), und %4 am %5 (%6).</translation>
    </message>
    <message>
        <source>With it: about %1 on the turn date, %2 (%3), but over what colonies survive as a rule by %5.</source>
        <translation>Damit: etwa %1 am Stichtag, %2 (%3), aber bis %5 mehr, als Völker in der Regel überleben.</translation>
    </message>
    <message>
        <source>With supers on only where the label allows it.</source>
        <translation>Mit Honigraum nur, wo die Packungsbeilage es erlaubt.</translation>
    </message>
    <message>
        <source>Works best from %1 to %2; %3 on %4.</source>
        <translation>Wirkt am besten von %1 bis %2; am %4 sind es %3.</translation>
    </message>
    <message>
        <source>did the treatment work?</source>
        <translation>hat die Behandlung gewirkt?</translation>
    </message>
    <message>
        <source>first wash of the year</source>
        <translation>erste Waschprobe des Jahres</translation>
    </message>
    <message>
        <source>monthly wash</source>
        <translation>monatliche Waschprobe</translation>
    </message>
    <message>
        <source>wash again, the last could not tell</source>
        <translation>neue Waschprobe, die letzte blieb unklar</translation>
    </message>
    <message>
        <source>wash before the turn date</source>
        <translation>Waschprobe vor dem Stichtag</translation>
    </message>
</context>
<context>
    <name>PictureWords</name>
    <message>
        <source>Can't tell yet</source>
        <translation>Noch unklar</translation>
    </message>
    <message>
        <source>Close to your line</source>
        <translation>Nah an der Schwelle</translation>
    </message>
    <message>
        <source>Over your line</source>
        <translation>Über der Schwelle</translation>
    </message>
    <message>
        <source>Under your line</source>
        <translation>Unter der Schwelle</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <comment>date format without year, as in 18 May</comment>
        <translation>d. MMMM</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>unter %1</translation>
    </message>
</context>
<context>
    <name>PlanDone</name>
    <message>
        <source>Look at what changed</source>
        <translation>Änderungen ansehen</translation>
    </message>
</context>
<context>
    <name>PlanPage</name>
    <message>
        <source>%1 is large. This takes a moment.</source>
        <translation>%1 ist groß. Das dauert einen Moment.</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>So lassen</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Take it back?</source>
        <translation>Zurücknehmen?</translation>
    </message>
</context>
<context>
    <name>PlanWords</name>
    <message>
        <source>%1 cannot be read: it is a folder, this user may not read it, or its storage fails. Nothing was changed.</source>
        <translation>%1 kann nicht gelesen werden: Es ist ein Ordner, das Leserecht fehlt oder der Speicher versagt. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>%1 is empty. Ask for it again. Nothing was changed.</source>
        <translation>%1 ist leer. Um eine neue Datei bitten. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>%1 is larger than any file of Halfcup. It was not read, and nothing was changed.</source>
        <translation>%1 ist größer als jede Datei von Halfcup. Sie wurde nicht gelesen und nichts geändert.</translation>
    </message>
    <message>
        <source>%1 is not a file that Halfcup wrote for another phone. Nothing was changed.</source>
        <translation>%1 ist keine Datei, die Halfcup für ein anderes Telefon geschrieben hat. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>%1 is not there any more. Nothing was changed.</source>
        <translation>%1 ist nicht mehr da. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>%1 was written for a newer Halfcup. Update this phone, then take it in. Nothing was changed.</source>
        <translation>%1 wurde für ein neueres Halfcup geschrieben. Dieses Telefon aktualisieren, dann einlesen. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>%1, colony %2</source>
        <comment>what it is, of which colony</comment>
        <translation>%1, Volk %2</translation>
    </message>
    <message>
        <source>%1: yours %2, theirs %3.</source>
        <comment>a field and its values</comment>
        <translation>%1: hier %2, dort %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n colony(ies)</source>
        <translation>
            <numerusform>%n Volk</numerusform>
            <numerusform>%n Völker</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n counted scoop(s)</source>
        <translation>
            <numerusform>%n ausgezählter Becher</numerusform>
            <numerusform>%n ausgezählte Becher</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n event(s)</source>
        <translation>
            <numerusform>%n Ereignis</numerusform>
            <numerusform>%n Ereignisse</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more are not listed one by one.</source>
        <translation>
            <numerusform>%n weiterer Eintrag ist nicht einzeln aufgeführt.</numerusform>
            <numerusform>%n weitere Einträge sind nicht einzeln aufgeführt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more line(s) are damaged and were left out.</source>
        <translation>
            <numerusform>%n weitere Zeile ist beschädigt und wurde weggelassen.</numerusform>
            <numerusform>%n weitere Zeilen sind beschädigt und wurden weggelassen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) new or changed. Nothing of yours is lost.</source>
        <translation>
            <numerusform>%n Eintrag neu oder geändert. Nichts Eigenes geht verloren.</numerusform>
            <numerusform>%n Einträge neu oder geändert. Nichts Eigenes geht verloren.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) of a kind that this version does not know: a newer Halfcup wrote them. They are kept and passed on.</source>
        <translation>
            <numerusform>%n Eintrag einer Art, die diese Version nicht kennt: Ein neueres Halfcup hat ihn geschrieben. Er wird bewahrt und weitergegeben.</numerusform>
            <numerusform>%n Einträge einer Art, die diese Version nicht kennt: Ein neueres Halfcup hat sie geschrieben. Sie werden bewahrt und weitergegeben.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) wait for what they belong to. They show as soon as a file brings it.</source>
        <translation>
            <numerusform>%n Eintrag wartet auf das, wozu er gehört. Er erscheint, sobald eine Datei es bringt.</numerusform>
            <numerusform>%n Einträge warten auf das, wozu sie gehören. Sie erscheinen, sobald eine Datei es bringt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n treated colony(ies)</source>
        <translation>
            <numerusform>%n behandeltes Volk</numerusform>
            <numerusform>%n behandelte Völker</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n treatment(s)</source>
        <translation>
            <numerusform>%n Behandlung</numerusform>
            <numerusform>%n Behandlungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es)</source>
        <translation>
            <numerusform>%n Waschprobe</numerusform>
            <numerusform>%n Waschproben</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n yard round(s)</source>
        <translation>
            <numerusform>%n Standrunde</numerusform>
            <numerusform>%n Standrunden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n yard(s)</source>
        <translation>
            <numerusform>%n Stand</numerusform>
            <numerusform>%n Stände</numerusform>
        </translation>
    </message>
    <message>
        <source>, </source>
        <comment>between the parts of a line</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>A colony</source>
        <translation>Ein Volk</translation>
    </message>
    <message>
        <source>A counted scoop</source>
        <translation>Ein ausgezählter Becher</translation>
    </message>
    <message>
        <source>A treatment</source>
        <translation>Eine Behandlung</translation>
    </message>
    <message>
        <source>A treatment given</source>
        <translation>Eine gegebene Behandlung</translation>
    </message>
    <message>
        <source>A wash</source>
        <translation>Eine Waschprobe</translation>
    </message>
    <message>
        <source>A yard</source>
        <translation>Ein Stand</translation>
    </message>
    <message>
        <source>A yard round</source>
        <translation>Eine Standrunde</translation>
    </message>
    <message>
        <source>An event</source>
        <translation>Ein Ereignis</translation>
    </message>
    <message>
        <source>Changed on both phones</source>
        <translation>Auf beiden Telefonen geändert</translation>
    </message>
    <message>
        <source>Changed there</source>
        <translation>Dort geändert</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Volk %1</translation>
    </message>
    <message>
        <source>Known here already</source>
        <translation>Hier schon bekannt</translation>
    </message>
    <message>
        <source>Line %1 brings more of one record than any has and was left out.</source>
        <translation>Zeile %1 bringt von einem Eintrag mehr, als irgendeiner hat, und wurde weggelassen.</translation>
    </message>
    <message>
        <source>Line %1 calls a record by another kind than it has here and was left out.</source>
        <translation>Zeile %1 nennt einen Eintrag von anderer Art, als er hier ist, und wurde weggelassen.</translation>
    </message>
    <message>
        <source>Line %1 has a count that cannot be and was left out.</source>
        <translation>Zeile %1 hat eine unmögliche Zählung und wurde weggelassen.</translation>
    </message>
    <message>
        <source>Line %1 has a time that cannot be and was left out.</source>
        <translation>Zeile %1 hat eine unmögliche Zeit und wurde weggelassen.</translation>
    </message>
    <message>
        <source>Line %1 has a value that cannot be (%2) and was left out.</source>
        <translation>Zeile %1 hat einen unmöglichen Wert (%2) und wurde weggelassen.</translation>
    </message>
    <message>
        <source>Line %1 has an id that is none and was left out.</source>
        <translation>Zeile %1 hat eine Kennung, die keine ist, und wurde weggelassen.</translation>
    </message>
    <message>
        <source>Line %1 is damaged and was left out.</source>
        <translation>Zeile %1 ist beschädigt und wurde weggelassen.</translation>
    </message>
    <message>
        <source>Line %1 is nested too deep and was left out.</source>
        <translation>Zeile %1 ist zu tief verschachtelt und wurde weggelassen.</translation>
    </message>
    <message>
        <source>Line %1 is too long and was left out.</source>
        <translation>Zeile %1 ist zu lang und wurde weggelassen.</translation>
    </message>
    <message>
        <source>Lines are missing from the middle of the file.</source>
        <translation>Mitten in der Datei fehlen Zeilen.</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Neu</translation>
    </message>
    <message>
        <source>Nothing in it is new: all of it is here already.</source>
        <translation>Nichts darin ist neu: Alles ist schon hier.</translation>
    </message>
    <message>
        <source>Removed there</source>
        <translation>Dort entfernt</translation>
    </message>
    <message>
        <source>Some of the file is for a newer Halfcup alone and was passed over.</source>
        <translation>Ein Teil der Datei ist nur für ein neueres Halfcup und wurde übergangen.</translation>
    </message>
    <message>
        <source>The file was cut: its end is missing.</source>
        <translation>Die Datei ist abgeschnitten: Ihr Ende fehlt.</translation>
    </message>
    <message>
        <source>The later value counts. The other one stays in the record's history.</source>
        <translation>Der spätere Wert gilt. Der andere bleibt im Verlauf des Eintrags.</translation>
    </message>
    <message>
        <source>Theirs is the later one and is kept: %1.</source>
        <translation>Dort ist der spätere Wert und wird übernommen: %1.</translation>
    </message>
    <message>
        <source>They leave the lists here too. The history keeps them.</source>
        <translation>Sie verschwinden auch hier aus den Listen. Der Verlauf bewahrt sie.</translation>
    </message>
    <message>
        <source>Treatment: %1</source>
        <translation>Behandlung: %1</translation>
    </message>
    <message>
        <source>What is whole can be taken in now. Ask for the file again: the good copy completes it.</source>
        <translation>Was heil ist, kann jetzt eingelesen werden. Noch einmal um die Datei bitten: Die gute Kopie ergänzt es.</translation>
    </message>
    <message>
        <source>Which phone wrote it, and when, is not readable.</source>
        <translation>Welches Telefon sie wann geschrieben hat, ist nicht lesbar.</translation>
    </message>
    <message>
        <source>Written by %1 on %2 at %3, by its clock.</source>
        <comment>a phone, a day, a time</comment>
        <translation>Geschrieben von %1 am %2 um %3, nach dessen Uhr.</translation>
    </message>
    <message>
        <source>Written by %1.</source>
        <translation>Geschrieben von %1.</translation>
    </message>
    <message>
        <source>Yard %1</source>
        <translation>Stand %1</translation>
    </message>
    <message>
        <source>Yours is the later one and stays: %1.</source>
        <translation>Hier ist der spätere Wert und bleibt: %1.</translation>
    </message>
    <message numerus="yes">
        <source>and %n other field(s)</source>
        <translation>
            <numerusform>und %n weiteres Feld</numerusform>
            <numerusform>und %n weitere Felder</numerusform>
        </translation>
    </message>
    <message>
        <source>phone %1</source>
        <comment>by its mark</comment>
        <translation>Telefon %1</translation>
    </message>
    <message>
        <source>this phone</source>
        <translation>diesem Telefon</translation>
    </message>
    <message>
        <source>waits for its colony</source>
        <translation>wartet auf das Volk</translation>
    </message>
</context>
<context>
    <name>PositionWords</name>
    <message>
        <source>Looking for the position</source>
        <translation>Position wird gesucht</translation>
    </message>
    <message>
        <source>No position yet. The wash goes on without.</source>
        <translation>Noch keine Position. Die Waschprobe geht ohne weiter.</translation>
    </message>
    <message>
        <source>No position: it is not allowed on this phone. The wash goes on without.</source>
        <translation>Keine Position: auf diesem Telefon nicht erlaubt. Die Waschprobe geht ohne weiter.</translation>
    </message>
    <message>
        <source>No position: no fix came in time. The wash goes on without.</source>
        <translation>Keine Position: Es kam keine rechtzeitig. Die Waschprobe geht ohne weiter.</translation>
    </message>
    <message>
        <source>No position: this phone has no receiver. The wash goes on without.</source>
        <translation>Keine Position: Dieses Telefon hat keinen Empfänger. Die Waschprobe geht ohne weiter.</translation>
    </message>
    <message>
        <source>Position within %1 so far</source>
        <translation>Position bisher auf %1 genau</translation>
    </message>
    <message>
        <source>Position within %1, but it moved: check that you stood still.</source>
        <translation>Position auf %1 genau, aber sie wanderte: prüfen, ob du stillgestanden hast.</translation>
    </message>
    <message numerus="yes">
        <source>Position within %1, from %n fix(es)</source>
        <translation>
            <numerusform>Position auf %1 genau, aus %n Messung</numerusform>
            <numerusform>Position auf %1 genau, aus %n Messungen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PourStep</name>
    <message>
        <source>Back into the tray</source>
        <translation>Zurück in die Kiste</translation>
    </message>
    <message>
        <source>Wash it later</source>
        <translation>Später auswaschen</translation>
    </message>
</context>
<context>
    <name>PullBoardStep</name>
    <message>
        <source>Hours under the colony</source>
        <translation>Stunden unter dem Volk</translation>
    </message>
    <message>
        <source>Type the hours</source>
        <translation>Stunden eingeben</translation>
    </message>
</context>
<context>
    <name>Record</name>
    <message>
        <source>Write down the first day.</source>
        <translation>Den ersten Tag notieren.</translation>
    </message>
    <message>
        <source>Write down the last day; for what is given once it is the first.</source>
        <translation>Den letzten Tag notieren; bei einmaliger Gabe ist es der erste.</translation>
    </message>
</context>
<context>
    <name>Report</name>
    <message>
        <source>%1 (%2) mites a day</source>
        <translation>%1 (%2) Milben pro Tag</translation>
    </message>
    <message>
        <source>%1 (%2) of 100 drone cells</source>
        <translation>%1 (%2) von 100 Drohnenzellen</translation>
    </message>
    <message>
        <source>%1 (dead, %2)</source>
        <comment>colony, day</comment>
        <translation>%1 (tot, %2)</translation>
    </message>
    <message>
        <source>%1 (invented)</source>
        <translation>%1 (erfunden)</translation>
    </message>
    <message>
        <source>%1 (put into another, %2)</source>
        <comment>colony, day</comment>
        <translation>%1 (vereinigt, %2)</translation>
    </message>
    <message>
        <source>%1 days; honey from %2</source>
        <translation>%1 Tage; Honig ab %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a range</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 to %2: %3</source>
        <comment>first and last day, the product</comment>
        <translation>%1 bis %2: %3</translation>
    </message>
    <message>
        <source>%1, %2 to %3 of %4</source>
        <comment>a list, part of it</comment>
        <translation>%1, %2 bis %3 von %4</translation>
    </message>
    <message>
        <source>%1. %2 (%3)</source>
        <comment>title, source, how well it is known</comment>
        <translation>%1. %2 (%3)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>the day, the product</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>yard or colony, period</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>standing, colonies</comment>
        <translation>%1: %2.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n colony(ies).</source>
        <comment>standing</comment>
        <translation>
            <numerusform>%1: %n Volk.</numerusform>
            <numerusform>%1: %n Völker.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: held against the lines as counted.</source>
        <translation>%1: gegen die Schwellen gehalten wie gezählt.</translation>
    </message>
    <message>
        <source>%1: taken to find %2 of what an alcohol wash finds; allowed for in the load.</source>
        <translation>%1: findet angenommen %2 dessen, was eine Waschprobe mit Alkohol findet; im Befall berücksichtigt.</translation>
    </message>
    <message>
        <source>%1: the last wash of each colony, mites per 100 bees with the 90 % range</source>
        <comment>yard</comment>
        <translation>%1: die letzte Waschprobe jedes Volkes, Milben je 100 Bienen mit der 90-%-Spanne</translation>
    </message>
    <message>
        <source>%1: the last wash of each colony, mites per 100 bees with the 90 % range. Colonies %2 to %3 of %4, the highest loads first</source>
        <comment>yard</comment>
        <translation>%1: die letzte Waschprobe jedes Volkes, Milben je 100 Bienen mit der 90-%-Spanne. Völker %2 bis %3 von %4, der höchste Befall zuerst</translation>
    </message>
    <message>
        <source>%1: twelve months from %2</source>
        <comment>yard, day</comment>
        <translation>%1: zwölf Monate ab %2</translation>
    </message>
    <message>
        <source>%1: where the hives stand, north up</source>
        <comment>yard</comment>
        <translation>%1: wo die Völker stehen, Norden oben</translation>
    </message>
    <message numerus="yes">
        <source>%n mite(s) found: %1 per 100 bees. %2</source>
        <comment>load and range; the comb in words</comment>
        <translation>
            <numerusform>%n Milbe gefunden: %1 je 100 Bienen. %2</numerusform>
            <numerusform>%n Milben gefunden: %1 je 100 Bienen. %2</numerusform>
        </translation>
    </message>
    <message>
        <source>; </source>
        <comment>between labels</comment>
        <translation>; </translation>
    </message>
    <message>
        <source>Above each: its first and last day, and the product as named on its label.</source>
        <translation>Über jeder: erster und letzter Tag und das Mittel, wie es auf dem Etikett heißt.</translation>
    </message>
    <message>
        <source>All yards</source>
        <translation>Alle Stände</translation>
    </message>
    <message>
        <source>At the last wash</source>
        <translation>Bei der letzten Waschprobe</translation>
    </message>
    <message>
        <source>At their last washes</source>
        <translation>Bei der letzten Waschprobe</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Bees</source>
        <translation>Bienen</translation>
    </message>
    <message>
        <source>Bees in half a cup, where they were not counted: %1.</source>
        <translation>Bienen in einer halben Tasse, wo sie nicht gezählt wurden: %1.</translation>
    </message>
    <message>
        <source>Boards and drone brood</source>
        <translation>Windel und Drohnenbrut</translation>
    </message>
    <message>
        <source>Chance over the line</source>
        <translation>Wahrsch. über der Schwelle</translation>
    </message>
    <message>
        <source>Colonies kept</source>
        <translation>Gehaltene Völker</translation>
    </message>
    <message>
        <source>Colonies treated</source>
        <translation>Behandelte Völker</translation>
    </message>
    <message>
        <source>Colony</source>
        <translation>Volk</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Volk %1</translation>
    </message>
    <message>
        <source>Colony %1, %2</source>
        <comment>label, yard</comment>
        <translation>Volk %1, %2</translation>
    </message>
    <message>
        <source>DEMO: holds invented data</source>
        <translation>DEMO: enthält erfundene Daten</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Difference between jars of one colony, the reason why the range is wide: %1.</source>
        <translation>Unterschied zwischen Gläsern eines Volks, der Grund für die weite Spanne: %1.</translation>
    </message>
    <message>
        <source>Done by</source>
        <translation>Ausgeführt von</translation>
    </message>
    <message>
        <source>Expiry</source>
        <translation>Verfallsdatum</translation>
    </message>
    <message>
        <source>Figure (90 % range)</source>
        <translation>Zahl (90-%-Spanne)</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Erste</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Gefunden</translation>
    </message>
    <message>
        <source>How it was counted, and sources</source>
        <translation>Wie gezählt wurde, und Quellen</translation>
    </message>
    <message>
        <source>Last</source>
        <translation>Letzte</translation>
    </message>
    <message>
        <source>Last wash</source>
        <translation>Letzte Waschprobe</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Schwelle</translation>
    </message>
    <message>
        <source>Line, same unit</source>
        <translation>Schwelle, gleiche Einheit</translation>
    </message>
    <message>
        <source>Lines that held</source>
        <translation>Gültige Schwellen</translation>
    </message>
    <message>
        <source>Load over time</source>
        <translation>Befall im Lauf der Zeit</translation>
    </message>
    <message>
        <source>Load over time, colony by colony</source>
        <translation>Befall im Lauf der Zeit, Volk für Volk</translation>
    </message>
    <message>
        <source>Load per 100 bees (90 % range)</source>
        <translation>Befall je 100 Bienen (90-%-Spanne)</translation>
    </message>
    <message>
        <source>Load: mites per 100 adult bees as a wash finds them, first rinse, nothing added for mites a wash misses. The range holds the true load of the colony's adult bees in about nine of ten washes. "Over your line": the figure is at the line or over it, or the chance is above 50 %; "close": 20 to 50 %; "under": below 20 %; "can't tell yet": too few bees, or too wide a range. None found is not none there.</source>
        <translation>Befall: Milben je 100 erwachsene Bienen, wie eine Waschprobe sie findet, erste Spülung, ohne Zuschlag für übersehene Milben. Die Spanne enthält den wahren Befall der erwachsenen Bienen des Volks in etwa neun von zehn Waschproben. „Über der Schwelle“: Die Zahl liegt an der Schwelle oder darüber, oder die Wahrscheinlichkeit liegt über 50 %; „nah“: 20 bis 50 %; „unter“: unter 20 %; „noch unklar“: zu wenige Bienen oder eine zu weite Spanne. Keine gefunden heißt nicht keine da.</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Methode</translation>
    </message>
    <message>
        <source>Mite washes</source>
        <translation>Waschproben</translation>
    </message>
    <message>
        <source>Mites</source>
        <translation>Milben</translation>
    </message>
    <message>
        <source>Mites per 100 bees</source>
        <translation>Milben je 100 Bienen</translation>
    </message>
    <message>
        <source>Mites per 100 bees, with the 90 % range of each wash</source>
        <translation>Milben je 100 Bienen, mit der 90-%-Spanne jeder Waschprobe</translation>
    </message>
    <message>
        <source>No colony was washed in this period.</source>
        <translation>In diesem Zeitraum wurde kein Volk ausgewaschen.</translation>
    </message>
    <message>
        <source>No longer kept</source>
        <translation>Nicht mehr gehalten</translation>
    </message>
    <message>
        <source>No treatment was written down for this period.</source>
        <translation>Für diesen Zeitraum wurde keine Behandlung notiert.</translation>
    </message>
    <message>
        <source>Not washed</source>
        <translation>Ohne Waschprobe</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Nothing else was written down for this period.</source>
        <translation>Für diesen Zeitraum wurde sonst nichts notiert.</translation>
    </message>
    <message>
        <source>Of the %1 colonies that were washed, the %2 with the highest loads at their last wash. All washes are in the table.</source>
        <translation>Von den %1 Völkern mit Waschproben die %2 mit dem höchsten Befall bei der letzten Waschprobe. Alle Waschproben stehen in der Tabelle.</translation>
    </message>
    <message>
        <source>Period</source>
        <translation>Zeitraum</translation>
    </message>
    <message>
        <source>Position (WGS 84)</source>
        <translation>Position (WGS 84)</translation>
    </message>
    <message>
        <source>Prescribed by</source>
        <translation>Verschrieben von</translation>
    </message>
    <message>
        <source>Proof of purchase</source>
        <translation>Kaufbeleg</translation>
    </message>
    <message>
        <source>Quantity, all colonies</source>
        <translation>Menge, alle Völker</translation>
    </message>
    <message>
        <source>Registration number</source>
        <translation>Registriernummer</translation>
    </message>
    <message>
        <source>Substance or measure</source>
        <translation>Wirkstoff oder Maßnahme</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Bezugsquelle</translation>
    </message>
    <message>
        <source>Taken out of the hive</source>
        <translation>Aus dem Volk entnommen</translation>
    </message>
    <message>
        <source>The last wash</source>
        <translation>Die letzte Waschprobe</translation>
    </message>
    <message>
        <source>The last wash as a comb of a hundred cells, %1</source>
        <translation>Die letzte Waschprobe als Wabe mit hundert Zellen, %1</translation>
    </message>
    <message>
        <source>The last wash of each colony</source>
        <translation>Die letzte Waschprobe jedes Volkes</translation>
    </message>
    <message>
        <source>The yard in pictures</source>
        <translation>Der Stand in Bildern</translation>
    </message>
    <message>
        <source>The yards in pictures</source>
        <translation>Die Stände in Bildern</translation>
    </message>
    <message>
        <source>There is no yard.</source>
        <translation>Es gibt keinen Stand.</translation>
    </message>
    <message>
        <source>These are no loads: they are in terms of their own.</source>
        <translation>Das sind keine Befallswerte: Sie gelten nur für sich.</translation>
    </message>
    <message>
        <source>These are the keeper's own records, as they were typed. The label of the product, the law where the hives stand, and the vet or inspector outrank anything said here. A withdrawal that is not written down is not one of no days.</source>
        <translation>Dies sind eigene Aufzeichnungen der Imkerei, so wie sie eingegeben wurden. Packungsbeilage des Produkts, Recht am Standort der Völker und Tierarzt oder Bienensachverständige gehen allem hier Gesagten vor. Eine nicht notierte Wartezeit ist keine von null Tagen.</translation>
    </message>
    <message>
        <source>Treatments</source>
        <translation>Behandlungen</translation>
    </message>
    <message>
        <source>Varroa record</source>
        <translation>Varroa-Bericht</translation>
    </message>
    <message>
        <source>Varroa record. %1. Written on %2 with Halfcup.</source>
        <translation>Varroa-Bericht. %1. Geschrieben am %2 mit Halfcup.</translation>
    </message>
    <message>
        <source>Washes</source>
        <translation>Waschproben</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Ereignis</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschah</translation>
    </message>
    <message>
        <source>What is to be written down in the European Union: %1. Other countries ask for other things.</source>
        <translation>Was in der Europäischen Union zu notieren ist: %1. Andere Länder verlangen anderes.</translation>
    </message>
    <message>
        <source>What it means</source>
        <translation>Was es bedeutet</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation>Woher sie stammt</translation>
    </message>
    <message>
        <source>Withdrawal</source>
        <translation>Wartezeit</translation>
    </message>
    <message>
        <source>Yard</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Yard %1</source>
        <translation>Stand %1</translation>
    </message>
    <message>
        <source>Yard %1 (invented)</source>
        <translation>Stand %1 (erfunden)</translation>
    </message>
    <message>
        <source>due on %1; not written down as taken out</source>
        <translation>fällig am %1; nicht als entnommen notiert</translation>
    </message>
    <message>
        <source>latitude %1, longitude %2</source>
        <translation>Breite %1, Länge %2</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>not washed</source>
        <comment>a colony, in this period</comment>
        <translation>ohne Waschprobe</translation>
    </message>
    <message>
        <source>not written down</source>
        <translation>nicht notiert</translation>
    </message>
    <message>
        <source>not written down; that is not none</source>
        <translation>nicht notiert; das heißt nicht keine</translation>
    </message>
    <message>
        <source>nothing stays in the hive</source>
        <translation>nichts bleibt im Volk</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>taken out on %1</source>
        <translation>entnommen am %1</translation>
    </message>
    <message>
        <source>typed by the keeper</source>
        <translation>selbst eingegeben</translation>
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
        <translation>Bericht über</translation>
    </message>
    <message>
        <source>Years</source>
        <translation>Jahre</translation>
    </message>
</context>
<context>
    <name>ReportText</name>
    <message>
        <source>%1 (demo)</source>
        <comment>an invented colony</comment>
        <translation>%1 (Demo)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>colony, yard</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>all records until %1</source>
        <translation>alle Aufzeichnungen bis %1</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>a colony</comment>
        <translation>nicht bekannt</translation>
    </message>
</context>
<context>
    <name>ReportWords</name>
    <message>
        <source>%1 %</source>
        <comment>a chance</comment>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>a load, its range</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 frames of bees</source>
        <translation>%1 besetzte Waben</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a range of loads</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>what happened, a note</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1; own %2</source>
        <comment>treat line, own line</comment>
        <translation>%1; eigene %2</translation>
    </message>
    <message>
        <source>1 frame of bees</source>
        <translation>1 besetzte Wabe</translation>
    </message>
    <message>
        <source>Brood seen: %1</source>
        <translation>Brut gesehen: %1</translation>
    </message>
    <message>
        <source>Can't tell yet</source>
        <translation>Noch unklar</translation>
    </message>
    <message>
        <source>Close to your line</source>
        <translation>Nah an der Schwelle</translation>
    </message>
    <message>
        <source>Dead</source>
        <translation>Tot</translation>
    </message>
    <message>
        <source>Moved</source>
        <translation>Umgestellt</translation>
    </message>
    <message>
        <source>Moved to %1</source>
        <translation>Umgestellt nach %1</translation>
    </message>
    <message>
        <source>New queen</source>
        <translation>Neue Königin</translation>
    </message>
    <message>
        <source>No answer</source>
        <translation>Kein Ergebnis</translation>
    </message>
    <message>
        <source>Over your line</source>
        <translation>Über der Schwelle</translation>
    </message>
    <message>
        <source>Put into another colony</source>
        <translation>Mit anderem Volk vereinigt</translation>
    </message>
    <message>
        <source>Put into colony %1; this one ends</source>
        <translation>Mit Volk %1 vereinigt; dieses endet</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>Ableger</translation>
    </message>
    <message>
        <source>Split: colony %1 was made from it</source>
        <translation>Ableger: Daraus entstand Volk %1</translation>
    </message>
    <message>
        <source>Stands on: %1</source>
        <translation>Steht auf: %1</translation>
    </message>
    <message>
        <source>Strength: %1</source>
        <translation>Stärke: %1</translation>
    </message>
    <message>
        <source>Supers off</source>
        <translation>Honigraum ab</translation>
    </message>
    <message>
        <source>Supers on</source>
        <translation>Honigraum drauf</translation>
    </message>
    <message>
        <source>Swarmed</source>
        <translation>Geschwärmt</translation>
    </message>
    <message>
        <source>Under your line</source>
        <translation>Unter der Schwelle</translation>
    </message>
    <message>
        <source>brood not known</source>
        <translation>Brut nicht bekannt</translation>
    </message>
    <message>
        <source>capped brood</source>
        <translation>verdeckelte Brut</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>übliche Praxis</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>berechnet</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <comment>date format, as in 18 May 2026</comment>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>floor not known</source>
        <translation>Boden nicht bekannt</translation>
    </message>
    <message>
        <source>no brood</source>
        <translation>keine Brut</translation>
    </message>
    <message>
        <source>open brood only</source>
        <translation>nur offene Brut</translation>
    </message>
    <message>
        <source>over 99 %</source>
        <comment>a chance</comment>
        <translation>über 99 %</translation>
    </message>
    <message>
        <source>own choice of this program</source>
        <translation>Festlegung dieses Programms</translation>
    </message>
    <message>
        <source>published</source>
        <translation>veröffentlicht</translation>
    </message>
    <message>
        <source>published, not read again</source>
        <translation>veröffentlicht, nicht nachgelesen</translation>
    </message>
    <message>
        <source>quoted in a second source</source>
        <translation>in zweiter Quelle zitiert</translation>
    </message>
    <message>
        <source>screened floor</source>
        <translation>Gitterboden</translation>
    </message>
    <message>
        <source>solid floor</source>
        <translation>geschlossener Boden</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>under 1 %</source>
        <comment>a chance</comment>
        <translation>unter 1 %</translation>
    </message>
</context>
<context>
    <name>Restoring</name>
    <message>
        <source>%1 What was kept before is safe as %2, in the list of backups.</source>
        <comment>sentence, file</comment>
        <translation>%1 Was zuvor gespeichert war, liegt sicher als %2 in der Liste der Sicherungen.</translation>
    </message>
    <message>
        <source>%1 cannot be read: this user has no permission.</source>
        <translation>%1 kann nicht gelesen werden: Das Leserecht fehlt.</translation>
    </message>
    <message>
        <source>%1 holds the records that are open now.</source>
        <translation>%1 enthält die Aufzeichnungen, die jetzt offen sind.</translation>
    </message>
    <message>
        <source>%1 is a folder, not a backup.</source>
        <translation>%1 ist ein Ordner, keine Sicherung.</translation>
    </message>
    <message>
        <source>%1 is damaged: it is not as it was written. Take another copy of it, or an earlier backup.</source>
        <translation>%1 ist beschädigt: nicht mehr so, wie es geschrieben wurde. Eine andere Kopie oder eine frühere Sicherung nehmen.</translation>
    </message>
    <message>
        <source>%1 is empty. Take another copy of it, if there is one.</source>
        <translation>%1 ist leer. Eine andere Kopie davon nehmen, falls es eine gibt.</translation>
    </message>
    <message>
        <source>%1 is no backup of Halfcup.</source>
        <translation>%1 ist keine Sicherung von Halfcup.</translation>
    </message>
    <message>
        <source>%1 is no longer there.</source>
        <translation>%1 ist nicht mehr da.</translation>
    </message>
    <message numerus="yes">
        <source>%1 was put back: %n wash(es) are in your records now.</source>
        <translation>
            <numerusform>%1 wurde wiederhergestellt: Jetzt ist %n Waschprobe in den Aufzeichnungen.</numerusform>
            <numerusform>%1 wurde wiederhergestellt: Jetzt sind %n Waschproben in den Aufzeichnungen.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 was written by a newer Halfcup. Install the newer version, then put it back.</source>
        <translation>%1 wurde von einem neueren Halfcup geschrieben. Die neuere Version installieren, dann wiederherstellen.</translation>
    </message>
    <message>
        <source>The backup was not put back, and your records are as they were. %1</source>
        <comment>why</comment>
        <translation>Die Sicherung wurde nicht wiederhergestellt, und die Aufzeichnungen sind wie zuvor. %1</translation>
    </message>
    <message>
        <source>The end of %1 is missing: it was not copied in full, or is still being copied. Copy it again.</source>
        <translation>Das Ende von %1 fehlt: Es wurde nicht ganz kopiert oder wird noch kopiert. Noch einmal kopieren.</translation>
    </message>
    <message>
        <source>What is kept now could not be copied aside first.</source>
        <translation>Das jetzt Gespeicherte konnte nicht zuerst beiseitekopiert werden.</translation>
    </message>
</context>
<context>
    <name>RoundGoing</name>
    <message>
        <source>End the round</source>
        <translation>Runde beenden</translation>
    </message>
    <message>
        <source>Still to wash, in this order</source>
        <translation>Noch auszuwaschen, in dieser Reihenfolge</translation>
    </message>
</context>
<context>
    <name>RoundPage</name>
    <message>
        <source>End the round</source>
        <translation>Runde beenden</translation>
    </message>
    <message>
        <source>End the round?</source>
        <translation>Runde beenden?</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>The answer is not clear yet. What is washed stays; the yard's figure will have a wide range.</source>
        <translation>Das Ergebnis ist noch nicht klar. Was ausgewaschen ist, bleibt; die Zahl des Stands wird eine weite Spanne haben.</translation>
    </message>
    <message>
        <source>Yard round</source>
        <translation>Standrunde</translation>
    </message>
</context>
<context>
    <name>RoundPlan</name>
    <message>
        <source>Earlier rounds</source>
        <translation>Frühere Runden</translation>
    </message>
    <message>
        <source>How many?</source>
        <translation>Wie viele?</translation>
    </message>
</context>
<context>
    <name>RoundWashed</name>
    <message>
        <source>Washed</source>
        <translation>Ausgewaschen</translation>
    </message>
</context>
<context>
    <name>SafetyStep</name>
    <message>
        <source>Queen not seen</source>
        <translation>Königin nicht gesehen</translation>
    </message>
    <message>
        <source>Queen seen and safe</source>
        <translation>Königin gesehen, in Sicherheit</translation>
    </message>
</context>
<context>
    <name>SamePage</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Leave them as one</source>
        <translation>Als eins lassen</translation>
    </message>
    <message>
        <source>Made on two phones, and joined. Touch one to separate it again.</source>
        <translation>Auf zwei Telefonen angelegt und verbunden. Eines antippen, um es wieder zu trennen.</translation>
    </message>
    <message>
        <source>No, two</source>
        <translation>Nein, zwei</translation>
    </message>
    <message>
        <source>Separate again</source>
        <translation>Wieder trennen</translation>
    </message>
    <message>
        <source>Separate again?</source>
        <translation>Wieder trennen?</translation>
    </message>
    <message>
        <source>Shown as one</source>
        <translation>Als eins gezeigt</translation>
    </message>
    <message>
        <source>There is nothing to ask about.</source>
        <translation>Es gibt nichts zu fragen.</translation>
    </message>
    <message>
        <source>Where they are one, it shows the washes, treatments and notes of both. They can be separated again.</source>
        <translation>Wo sie als eins gezeigt sind, stehen Waschproben, Behandlungen und Notizen von beiden beisammen. Sie können wieder getrennt werden.</translation>
    </message>
    <message>
        <source>Yes, the same</source>
        <translation>Ja, dasselbe</translation>
    </message>
</context>
<context>
    <name>ScoopEdit</name>
    <message>
        <source>How the bees lie</source>
        <translation>Wie die Bienen liegen</translation>
    </message>
    <message>
        <source>Loose</source>
        <translation>Locker</translation>
    </message>
    <message>
        <source>Rapped to settle</source>
        <translation>Festgeklopft</translation>
    </message>
    <message>
        <source>The scoop</source>
        <translation>Der Becher</translation>
    </message>
    <message>
        <source>Type millilitres</source>
        <translation>Milliliter eingeben</translation>
    </message>
    <message>
        <source>Type the bees</source>
        <translation>Bienenzahl eingeben</translation>
    </message>
    <message>
        <source>Use this scoop</source>
        <translation>Diesen Becher nehmen</translation>
    </message>
    <message>
        <source>as they were scooped</source>
        <translation>so, wie geschöpft</translation>
    </message>
    <message>
        <source>struck on the palm until they lie close</source>
        <translation>auf der Handfläche aufgestoßen, bis sie dicht liegen</translation>
    </message>
</context>
<context>
    <name>ScoopStep</name>
    <message>
        <source>Bees in this jar</source>
        <translation>Bienen in diesem Glas</translation>
    </message>
    <message>
        <source>Change the scoop</source>
        <translation>Becher ändern</translation>
    </message>
    <message>
        <source>Scoop in millilitres</source>
        <translation>Becher in Millilitern</translation>
    </message>
    <message>
        <source>Scooped</source>
        <translation>Geschöpft</translation>
    </message>
    <message>
        <source>Where this comes from</source>
        <translation>Woher das kommt</translation>
    </message>
    <message>
        <source>time and place are kept now</source>
        <translation>Zeit und Ort werden jetzt gespeichert</translation>
    </message>
</context>
<context>
    <name>ScrollHint</name>
    <message>
        <source>↑ more above</source>
        <translation>↑ oben mehr</translation>
    </message>
    <message>
        <source>↓ more below</source>
        <translation>↓ unten mehr</translation>
    </message>
</context>
<context>
    <name>SeasonPage</name>
    <message>
        <source>Keep them safe</source>
        <translation>Sichern</translation>
    </message>
    <message>
        <source>Nothing is due in the year ahead. Make a yard and its colonies first.</source>
        <translation>Im kommenden Jahr ist nichts fällig. Zuerst einen Stand und seine Völker anlegen.</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Teilen</translation>
    </message>
    <message>
        <source>Write the calendar</source>
        <translation>Kalender schreiben</translation>
    </message>
    <message>
        <source>iCalendar, with alarms</source>
        <translation>iCalendar, mit Erinnerungen</translation>
    </message>
</context>
<context>
    <name>SeasonStripWords</name>
    <message>
        <source>Brood</source>
        <translation>Brut</translation>
    </message>
    <message>
        <source>Capped brood from %1 to %2.</source>
        <translation>Verdeckelte Brut vom %1 bis %2.</translation>
    </message>
    <message>
        <source>Capped brood seen</source>
        <translation>Verdeckelte Brut gesehen</translation>
    </message>
    <message>
        <source>No capped brood from %1 to %2.</source>
        <translation>Keine verdeckelte Brut vom %1 bis %2.</translation>
    </message>
    <message>
        <source>No capped brood seen</source>
        <translation>Keine verdeckelte Brut gesehen</translation>
    </message>
    <message>
        <source>Nothing is recorded yet.</source>
        <translation>Noch nichts notiert.</translation>
    </message>
    <message>
        <source>Supers</source>
        <translation>Honigraum</translation>
    </message>
    <message>
        <source>Supers on from %1 to %2.</source>
        <translation>Honigraum drauf vom %1 bis %2.</translation>
    </message>
    <message>
        <source>Supers on, for the nectar flow</source>
        <translation>Honigraum drauf, für die Tracht</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Today is %1.</source>
        <comment>day</comment>
        <translation>Heute ist der %1.</translation>
    </message>
    <message>
        <source>Treated</source>
        <translation>Behandelt</translation>
    </message>
    <message>
        <source>Treated from %1 to %2.</source>
        <translation>Behandelt vom %1 bis %2.</translation>
    </message>
    <message>
        <source>Treatment, from its first to its last day</source>
        <translation>Behandlung, vom ersten bis zum letzten Tag</translation>
    </message>
    <message>
        <source>Turn date %1.</source>
        <comment>day</comment>
        <translation>Stichtag %1.</translation>
    </message>
    <message>
        <source>Turn date: mites must be low by then</source>
        <translation>Stichtag: bis dahin müssen es wenige Milben sein</translation>
    </message>
    <message>
        <source>Twelve months from %1 %2.</source>
        <comment>month, year</comment>
        <translation>Zwölf Monate ab %1 %2.</translation>
    </message>
    <message>
        <source>Wash due</source>
        <translation>Waschprobe fällig</translation>
    </message>
    <message>
        <source>Washed</source>
        <translation>Ausgewaschen</translation>
    </message>
    <message numerus="yes">
        <source>Washed on %n day(s).</source>
        <translation>
            <numerusform>An %n Tag ausgewaschen.</numerusform>
            <numerusform>An %n Tagen ausgewaschen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Washes</source>
        <translation>Proben</translation>
    </message>
    <message numerus="yes">
        <source>Washes due on %n day(s).</source>
        <translation>
            <numerusform>Waschproben fällig an %n Tag.</numerusform>
            <numerusform>Waschproben fällig an %n Tagen.</numerusform>
        </translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>turn date %1</source>
        <comment>day</comment>
        <translation>Stichtag %1</translation>
    </message>
</context>
<context>
    <name>SecondRinseStep</name>
    <message>
        <source>Count a second rinse</source>
        <translation>Zweite Spülung zählen</translation>
    </message>
    <message>
        <source>Count the second rinse</source>
        <translation>Zweite Spülung zählen</translation>
    </message>
    <message>
        <source>Go on counting</source>
        <translation>Weiterzählen</translation>
    </message>
    <message>
        <source>It shows how many mites the first rinse left on the bees. You need it now and then, not at every wash.</source>
        <translation>Sie zeigt, wie viele Milben die erste Spülung an den Bienen ließ. Nötig ist sie ab und zu, nicht bei jeder Waschprobe.</translation>
    </message>
    <message>
        <source>None found</source>
        <translation>Keine gefunden</translation>
    </message>
    <message>
        <source>Not rinsed</source>
        <translation>Nicht gespült</translation>
    </message>
    <message>
        <source>Nothing in the second rinse?</source>
        <translation>Nichts in der zweiten Spülung?</translation>
    </message>
    <message>
        <source>Show the answer</source>
        <translation>Ergebnis zeigen</translation>
    </message>
    <message>
        <source>Then it is kept as a second rinse with 0 mites.</source>
        <translation>Dann wird sie als zweite Spülung mit 0 Milben gespeichert.</translation>
    </message>
    <message>
        <source>without a second rinse</source>
        <translation>ohne zweite Spülung</translation>
    </message>
</context>
<context>
    <name>SetupPage</name>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Dusk</source>
        <translation>Dämmerung</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Large</source>
        <translation>Groß</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Größer</translation>
    </message>
    <message>
        <source>Larger still</source>
        <translation>Noch größer</translation>
    </message>
    <message>
        <source>Left hand</source>
        <translation>Linke Hand</translation>
    </message>
    <message>
        <source>Lengths and temperatures</source>
        <translation>Längen und Temperaturen</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Licht</translation>
    </message>
    <message>
        <source>Longer</source>
        <translation>Länger</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Aus</translation>
    </message>
    <message>
        <source>On</source>
        <translation>An</translation>
    </message>
    <message>
        <source>Phone held in</source>
        <translation>Haltende Hand</translation>
    </message>
    <message>
        <source>Right hand</source>
        <translation>Rechte Hand</translation>
    </message>
    <message>
        <source>Setup</source>
        <translation>Optionen</translation>
    </message>
    <message>
        <source>Shorter</source>
        <translation>Kürzer</translation>
    </message>
    <message>
        <source>Size of letters: %1</source>
        <translation>Schriftgröße: %1</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Kleiner</translation>
    </message>
    <message>
        <source>Sounds of the timer</source>
        <translation>Töne der Stoppuhr</translation>
    </message>
    <message>
        <source>Time to shake: %1</source>
        <translation>Schütteldauer: %1</translation>
    </message>
    <message>
        <source>Voice: half time, ten seconds, every fifth mite</source>
        <translation>Stimme: Halbzeit, zehn Sekunden, jede fünfte Milbe</translation>
    </message>
    <message>
        <source>What you touch</source>
        <translation>Tippflächen</translation>
    </message>
    <message>
        <source>Where the figures come from</source>
        <translation>Woher die Zahlen kommen</translation>
    </message>
    <message>
        <source>Your counted scoops</source>
        <translation>Ausgezählte Becher</translation>
    </message>
    <message>
        <source>Your usual scoop</source>
        <translation>Üblicher Becher</translation>
    </message>
    <message>
        <source>Your usual way to count</source>
        <translation>Übliche Zählmethode</translation>
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
        <translation>Quelle der Positionen</translation>
    </message>
    <message>
        <source>Use this source</source>
        <translation>Diese Quelle nehmen</translation>
    </message>
</context>
<context>
    <name>ShakeStep</name>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Sound is off</source>
        <translation>Ton ist aus</translation>
    </message>
    <message>
        <source>Sound is on</source>
        <translation>Ton ist an</translation>
    </message>
</context>
<context>
    <name>SharePage</name>
    <message>
        <source>A table of earlier washes</source>
        <translation>Tabelle früherer Waschproben</translation>
    </message>
    <message>
        <source>Exchange folder</source>
        <translation>Austauschordner</translation>
    </message>
    <message>
        <source>For people</source>
        <translation>Für Menschen</translation>
    </message>
    <message>
        <source>Keep safe</source>
        <translation>Sichern</translation>
    </message>
    <message>
        <source>Last taken in</source>
        <translation>Zuletzt eingelesen</translation>
    </message>
    <message>
        <source>Load the demo</source>
        <translation>Demo laden</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Teilen</translation>
    </message>
    <message>
        <source>Show it in its folder</source>
        <translation>Im Ordner zeigen</translation>
    </message>
    <message>
        <source>Take in a file</source>
        <translation>Datei einlesen</translation>
    </message>
    <message>
        <source>Write everything for another phone</source>
        <translation>Alles für ein anderes Telefon schreiben</translation>
    </message>
    <message>
        <source>from another phone; you see first what it brings</source>
        <translation>von einem anderen Telefon; vorher zu sehen, was sie bringt</translation>
    </message>
    <message>
        <source>tables, a map, a calendar, a report</source>
        <translation>Tabellen, Karte, Kalender, Bericht</translation>
    </message>
    <message>
        <source>take it in from a spreadsheet</source>
        <translation>aus einem Tabellenprogramm einlesen</translation>
    </message>
    <message>
        <source>two invented yards to try things on</source>
        <translation>zwei erfundene Stände zum Ausprobieren</translation>
    </message>
    <message>
        <source>whoever gets it knows where your hives stand</source>
        <translation>wer es bekommt, weiß, wo die Völker stehen</translation>
    </message>
</context>
<context>
    <name>SituationHive</name>
    <message>
        <source>Brood</source>
        <translation>Brut</translation>
    </message>
    <message>
        <source>Floor</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>Frames covered with bees</source>
        <translation>Besetzte Waben</translation>
    </message>
    <message>
        <source>Supers</source>
        <translation>Honigraum</translation>
    </message>
</context>
<context>
    <name>SituationPage</name>
    <message>
        <source>Daily highs</source>
        <translation>Tageshöchstwerte</translation>
    </message>
    <message>
        <source>Forecast in</source>
        <translation>Vorhersage in</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Ab</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Nightly lows</source>
        <translation>Nachttiefstwerte</translation>
    </message>
    <message>
        <source>One for each high, or none.</source>
        <translation>Einer zu jedem Höchstwert, oder keiner.</translation>
    </message>
    <message>
        <source>What is so now</source>
        <translation>Wie es jetzt ist</translation>
    </message>
    <message>
        <source>and see what fits</source>
        <translation>und sehen, was passt</translation>
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
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Colony %1, not treated: %2 mites per 100 bees before, %3 after.</source>
        <translation>Volk %1, nicht behandelt: davor %2 Milben je 100 Bienen, danach %3.</translation>
    </message>
    <message>
        <source>Colony %1: %2 mites per 100 bees before, %3 after.</source>
        <translation>Volk %1: davor %2 Milben je 100 Bienen, danach %3.</translation>
    </message>
    <message>
        <source>High loads are drawn closer together.</source>
        <translation>Hoher Befall ist enger gezeichnet.</translation>
    </message>
    <message>
        <source>No colony was washed both before and after it.</source>
        <translation>Kein Volk wurde davor und danach ausgewaschen.</translation>
    </message>
    <message>
        <source>None found</source>
        <translation>Keine gefunden</translation>
    </message>
    <message>
        <source>Range in 9 of 10 cases</source>
        <translation>Spanne in 9 von 10 Fällen</translation>
    </message>
    <message>
        <source>Treat line</source>
        <translation>Behandlungsschwelle</translation>
    </message>
    <message>
        <source>Treated colony</source>
        <translation>Behandeltes Volk</translation>
    </message>
    <message>
        <source>Untreated colony</source>
        <translation>Unbehandeltes Volk</translation>
    </message>
    <message>
        <source>after</source>
        <translation>danach</translation>
    </message>
    <message>
        <source>before</source>
        <translation>davor</translation>
    </message>
    <message>
        <source>treat line %1</source>
        <translation>Schwelle %1</translation>
    </message>
</context>
<context>
    <name>SourceSetting</name>
    <message>
        <source>The position source "%1" cannot be used: %2 It can be "default", "none", "nmea:file:PATH", "nmea:tcp://HOST:PORT", "nmea:serial:/dev/NAME" or "gpsd://HOST:PORT".</source>
        <translation>Die Positionsquelle „%1“ kann nicht benutzt werden: %2 Möglich sind „default“, „none“, „nmea:file:PATH“, „nmea:tcp://HOST:PORT“, „nmea:serial:/dev/NAME“ oder „gpsd://HOST:PORT“.</translation>
    </message>
    <message>
        <source>it is not one of the known forms.</source>
        <translation>es ist keine der bekannten Formen.</translation>
    </message>
    <message>
        <source>it needs a host and a port between 1 and 65535.</source>
        <translation>nötig sind ein Host und ein Port zwischen 1 und 65535.</translation>
    </message>
    <message>
        <source>it needs a host, and a port between 1 and 65535 if any.</source>
        <translation>nötig ist ein Host, und falls ein Port, dann zwischen 1 und 65535.</translation>
    </message>
    <message>
        <source>the name of the file is missing.</source>
        <translation>der Name der Datei fehlt.</translation>
    </message>
    <message>
        <source>the name of the serial line is missing.</source>
        <translation>der Name der seriellen Leitung fehlt.</translation>
    </message>
    <message>
        <source>the speed behind "baud=" is no number of bits a second.</source>
        <translation>die Geschwindigkeit hinter „baud=“ ist keine Zahl von Bits pro Sekunde.</translation>
    </message>
</context>
<context>
    <name>SourcesPage</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Where this comes from</source>
        <translation>Woher das kommt</translation>
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
        <translation>%1 besetzte Waben</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>brood and day</comment>
        <translation>%1 am %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>first and last day</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between parts of a state</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>1 frame of bees</source>
        <translation>1 besetzte Wabe</translation>
    </message>
    <message>
        <source>Brood seen</source>
        <translation>Brut gesehen</translation>
    </message>
    <message>
        <source>Brood seen: %1</source>
        <translation>Brut gesehen: %1</translation>
    </message>
    <message>
        <source>Colony %1 was put into this one</source>
        <translation>Volk %1 wurde mit diesem vereinigt</translation>
    </message>
    <message>
        <source>Dead</source>
        <translation>Tot</translation>
    </message>
    <message>
        <source>Floor</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>Honey may be taken from %1.</source>
        <translation>Honig darf ab dem %1 entnommen werden.</translation>
    </message>
    <message>
        <source>Merged into another</source>
        <translation>Vereinigt</translation>
    </message>
    <message>
        <source>Moved</source>
        <translation>Umgestellt</translation>
    </message>
    <message>
        <source>Moved to %1</source>
        <translation>Umgestellt nach %1</translation>
    </message>
    <message>
        <source>New queen</source>
        <translation>Neue Königin</translation>
    </message>
    <message>
        <source>New queen: %1</source>
        <translation>Neue Königin: %1</translation>
    </message>
    <message>
        <source>No treatment in the records holds the honey.</source>
        <translation>Keine notierte Behandlung sperrt den Honig.</translation>
    </message>
    <message>
        <source>Not before %1, and perhaps later: the withdrawal of a treatment is not written down. The label says it.</source>
        <translation>Nicht vor dem %1, vielleicht später: Die Wartezeit einer Behandlung ist nicht notiert. Sie steht in der Packungsbeilage.</translation>
    </message>
    <message>
        <source>Not known: the withdrawal of an earlier treatment is not written down. The label says it.</source>
        <translation>Nicht bekannt: Die Wartezeit einer früheren Behandlung ist nicht notiert. Sie steht in der Packungsbeilage.</translation>
    </message>
    <message>
        <source>Nothing is written down of its state yet.</source>
        <translation>Über den Zustand ist noch nichts notiert.</translation>
    </message>
    <message>
        <source>Put into colony %1; this one ends</source>
        <translation>Mit Volk %1 vereinigt; dieses endet</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>Ableger</translation>
    </message>
    <message>
        <source>Split: colony %1 was made from it</source>
        <translation>Ableger: Daraus entstand Volk %1</translation>
    </message>
    <message>
        <source>Stands on: %1</source>
        <translation>Steht auf: %1</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Stärke</translation>
    </message>
    <message>
        <source>Strength: %1</source>
        <translation>Stärke: %1</translation>
    </message>
    <message>
        <source>Supers off</source>
        <translation>Honigraum ab</translation>
    </message>
    <message>
        <source>Supers on</source>
        <translation>Honigraum drauf</translation>
    </message>
    <message>
        <source>Swarmed</source>
        <translation>Geschwärmt</translation>
    </message>
    <message>
        <source>another yard</source>
        <translation>anderer Stand</translation>
    </message>
    <message>
        <source>begins on %1</source>
        <translation>beginnt am %1</translation>
    </message>
    <message>
        <source>brood not known</source>
        <translation>Brut nicht bekannt</translation>
    </message>
    <message>
        <source>capped brood</source>
        <translation>verdeckelte Brut</translation>
    </message>
    <message>
        <source>dead since %1</source>
        <translation>tot seit %1</translation>
    </message>
    <message>
        <source>floor not known</source>
        <translation>Boden nicht bekannt</translation>
    </message>
    <message>
        <source>honey from %1</source>
        <translation>Honig ab %1</translation>
    </message>
    <message>
        <source>no brood</source>
        <translation>keine Brut</translation>
    </message>
    <message>
        <source>open brood only</source>
        <translation>nur offene Brut</translation>
    </message>
    <message>
        <source>over</source>
        <translation>vorbei</translation>
    </message>
    <message>
        <source>put into another colony on %1</source>
        <translation>mit einem anderen Volk vereinigt am %1</translation>
    </message>
    <message>
        <source>queen: %1</source>
        <translation>Königin: %1</translation>
    </message>
    <message>
        <source>running</source>
        <translation>läuft</translation>
    </message>
    <message>
        <source>screened floor</source>
        <translation>Gitterboden</translation>
    </message>
    <message>
        <source>solid floor</source>
        <translation>geschlossener Boden</translation>
    </message>
    <message>
        <source>supers off since %1</source>
        <translation>Honigraum ab seit %1</translation>
    </message>
    <message>
        <source>supers on since %1</source>
        <translation>Honigraum drauf seit %1</translation>
    </message>
    <message>
        <source>withdrawal not written down</source>
        <translation>Wartezeit nicht notiert</translation>
    </message>
</context>
<context>
    <name>StoryEntries</name>
    <message>
        <source>%1 per 100, %2</source>
        <comment>a load and its range</comment>
        <translation>%1 je 100, %2</translation>
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
        <translation>%1, Charge %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>method, figure</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1; the handbook's line is %2</source>
        <comment>range, line</comment>
        <translation>%1; die Schwelle im Handbuch ist %2</translation>
    </message>
    <message>
        <source>Abandoned</source>
        <translation>Abgebrochen</translation>
    </message>
    <message>
        <source>Not finished</source>
        <translation>Nicht beendet</translation>
    </message>
    <message>
        <source>This date is still to come: the phone's clock was wrong, then or now. Until then nothing is reckoned from it.</source>
        <translation>Dieser Tag kommt erst noch: die Uhr des Telefons ging falsch, damals oder jetzt. Bis dahin wird nichts daraus berechnet.</translation>
    </message>
    <message>
        <source>left at: %1</source>
        <translation>verlassen bei: %1</translation>
    </message>
    <message>
        <source>waits at: %1</source>
        <translation>wartet bei: %1</translation>
    </message>
</context>
<context>
    <name>Table</name>
    <message>
        <source>"%1" can be read in two ways. Which comes first, the day or the month?</source>
        <translation>„%1“ lässt sich auf zwei Arten lesen. Was kommt zuerst, Tag oder Monat?</translation>
    </message>
    <message>
        <source>"%1" is not a day.</source>
        <translation>„%1“ ist kein Tag.</translation>
    </message>
    <message>
        <source>"%1" is not a time of day.</source>
        <translation>„%1“ ist keine Uhrzeit.</translation>
    </message>
    <message>
        <source>%1 "%2" is not a number.</source>
        <translation>%1 „%2“ ist keine Zahl.</translation>
    </message>
    <message>
        <source>%1 "%2" is not a whole number.</source>
        <translation>%1 „%2“ ist keine ganze Zahl.</translation>
    </message>
    <message>
        <source>%1 "%2" is too large: at most %3.</source>
        <translation>%1 „%2“ ist zu groß: höchstens %3.</translation>
    </message>
    <message>
        <source>%1 "%2" is too small: at least %3.</source>
        <translation>%1 „%2“ ist zu klein: mindestens %3.</translation>
    </message>
    <message>
        <source>%1 "%2" may be a thousand times more or not: write it without a mark.</source>
        <translation>%1 „%2“ kann tausendmal mehr sein oder nicht: ohne Trennzeichen schreiben.</translation>
    </message>
    <message>
        <source>%1 is no file.</source>
        <translation>%1 ist keine Datei.</translation>
    </message>
    <message>
        <source>%1 is not there any more.</source>
        <translation>%1 ist nicht mehr da.</translation>
    </message>
    <message>
        <source>%1 may not be read.</source>
        <translation>%1 darf nicht gelesen werden.</translation>
    </message>
    <message>
        <source>%1 mites on %2 bees: are the two swapped?</source>
        <translation>%1 Milben auf %2 Bienen: Sind die beiden vertauscht?</translation>
    </message>
    <message>
        <source>%1 per 100 of %2 bees are %3 mites, which is no whole number: give the mites.</source>
        <translation>%1 je 100 von %2 Bienen sind %3 Milben, keine ganze Zahl: die Milben angeben.</translation>
    </message>
    <message>
        <source>Bees are taken from the scoop, as they fell in, by the book.</source>
        <translation>Die Bienen werden aus dem Becher berechnet, locker geschöpft, laut Handbuch.</translation>
    </message>
    <message>
        <source>Bees washed</source>
        <translation>Ausgewaschene Bienen</translation>
    </message>
    <message>
        <source>Colony</source>
        <translation>Volk</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Id of the wash</source>
        <translation>Kennung der Waschprobe</translation>
    </message>
    <message>
        <source>Invented (demo)</source>
        <translation>Erfunden (Demo)</translation>
    </message>
    <message>
        <source>Line %1 has a zero byte, which no text has. This is not a table, or it is damaged.</source>
        <translation>Zeile %1 enthält ein Null-Byte, das kein Text hat. Das ist keine Tabelle, oder sie ist beschädigt.</translation>
    </message>
    <message>
        <source>Line %1, which has to name the columns, cannot be read: there is a quotation mark too many or too few.</source>
        <translation>Zeile %1, die die Spalten benennen muss, ist nicht lesbar: Ein Anführungszeichen ist zu viel oder zu wenig.</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Methode</translation>
    </message>
    <message>
        <source>Mites counted</source>
        <translation>Gezählte Milben</translation>
    </message>
    <message>
        <source>Mites of a second rinse</source>
        <translation>Milben der zweiten Spülung</translation>
    </message>
    <message>
        <source>Mites per 100 bees</source>
        <translation>Milben je 100 Bienen</translation>
    </message>
    <message>
        <source>Mites per 100 bees say how many were counted only beside the number of bees. Which column holds the bees?</source>
        <translation>Milben je 100 Bienen sagen nur zusammen mit der Zahl der Bienen, wie viele gezählt wurden. In welcher Spalte stehen die Bienen?</translation>
    </message>
    <message>
        <source>No column holds the bees: each wash is taken as half a cup, by the book.</source>
        <translation>In keiner Spalte stehen die Bienen: Jede Waschprobe wird als halbe Tasse genommen, laut Handbuch.</translation>
    </message>
    <message>
        <source>No column names the method: all are taken as alcohol washes.</source>
        <translation>Keine Spalte benennt die Methode: Alle werden als Waschproben mit Alkohol genommen.</translation>
    </message>
    <message>
        <source>No column names the yard. In which yard were these washes?</source>
        <translation>Keine Spalte benennt den Stand. An welchem Stand waren diese Waschproben?</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Scoop in cups</source>
        <translation>Becher in Tassen</translation>
    </message>
    <message>
        <source>Scoop in ml</source>
        <translation>Becher in ml</translation>
    </message>
    <message>
        <source>Some days are written day first, others month first ("%1"). Which is right? The others will be refused.</source>
        <translation>Bei manchen Daten steht der Tag zuerst, bei anderen der Monat („%1“). Was stimmt? Die übrigen werden abgelehnt.</translation>
    </message>
    <message>
        <source>Spread of the bees</source>
        <translation>Streuung der Bienen</translation>
    </message>
    <message>
        <source>The file is larger than 64 MB. Cut it into several.</source>
        <translation>Die Datei ist größer als 64 MB. In mehrere teilen.</translation>
    </message>
    <message>
        <source>The file is not written in UTF-8: it is read as Windows-1252. Look whether letters with accents are right.</source>
        <translation>Die Datei ist nicht in UTF-8 geschrieben: Sie wird als Windows-1252 gelesen. Prüfen, ob Umlaute und Akzente stimmen.</translation>
    </message>
    <message>
        <source>The first row has a day in it, not names. Put a row above it that names the columns: day, colony, mites.</source>
        <translation>In der ersten Zeile steht ein Tag, keine Namen. Darüber eine Zeile setzen, die die Spalten benennt: Tag, Volk, Milben.</translation>
    </message>
    <message>
        <source>The name of the yard is longer than 60 letters.</source>
        <translation>Der Name des Stands ist länger als 60 Zeichen.</translation>
    </message>
    <message>
        <source>The table has %1 columns. So many belong to something else than washes; %2 is the most.</source>
        <translation>Die Tabelle hat %1 Spalten. So viele gehören zu etwas anderem als Waschproben; höchstens %2.</translation>
    </message>
    <message>
        <source>The table has more than 100,000 rows. Cut it into several.</source>
        <translation>Die Tabelle hat mehr als 100.000 Zeilen. In mehrere teilen.</translation>
    </message>
    <message>
        <source>There is nothing in this file.</source>
        <translation>Diese Datei ist leer.</translation>
    </message>
    <message>
        <source>This app wrote this table. To bring records to another phone, an exchange file is better: it keeps the place, the shake and each touch of the count.</source>
        <translation>Diese App hat diese Tabelle geschrieben. Um Aufzeichnungen auf ein anderes Telefon zu bringen, ist eine Austauschdatei besser: Sie bewahrt den Ort, das Schütteln und jedes Antippen der Zählung.</translation>
    </message>
    <message>
        <source>This is a spreadsheet's own file. Save it there as CSV (text), and take that file.</source>
        <translation>Das ist die eigene Datei eines Tabellenprogramms. Dort als CSV (Text) speichern und diese Datei nehmen.</translation>
    </message>
    <message>
        <source>Time of day</source>
        <translation>Uhrzeit</translation>
    </message>
    <message>
        <source>Where no time of day is given, it is noon. The table says no time zone: day and clock are kept as they are written.</source>
        <translation>Wo keine Uhrzeit steht, gilt Mittag. Die Tabelle nennt keine Zeitzone: Tag und Uhrzeit bleiben, wie sie geschrieben sind.</translation>
    </message>
    <message>
        <source>Which column holds the day?</source>
        <translation>In welcher Spalte steht der Tag?</translation>
    </message>
    <message>
        <source>Which column holds the mites?</source>
        <translation>In welcher Spalte stehen die Milben?</translation>
    </message>
    <message>
        <source>Which column names the colony?</source>
        <translation>Welche Spalte benennt das Volk?</translation>
    </message>
    <message>
        <source>Yard</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>a quotation mark is opened and not closed.</source>
        <translation>ein Anführungszeichen wird geöffnet und nicht geschlossen.</translation>
    </message>
    <message>
        <source>a sticky board or drone brood gives no load: only washes and rolls are taken in.</source>
        <translation>Windel oder Drohnenbrut ergeben keinen Befall: Eingelesen werden nur Waschproben und Puderzuckerproben.</translation>
    </message>
    <message>
        <source>a wash of this colony with the same count on this day is here already.</source>
        <translation>eine Waschprobe dieses Volks mit derselben Zahl an diesem Tag ist schon hier.</translation>
    </message>
    <message>
        <source>cell %1 is longer than a million letters.</source>
        <translation>Zelle %1 ist länger als eine Million Zeichen.</translation>
    </message>
    <message>
        <source>it is marked as invented (demo).</source>
        <translation>sie ist als erfunden (Demo) gekennzeichnet.</translation>
    </message>
    <message>
        <source>mites per 100 bees say how many were counted only beside the number of bees.</source>
        <translation>Milben je 100 Bienen sagen nur zusammen mit der Zahl der Bienen, wie viele gezählt wurden.</translation>
    </message>
    <message>
        <source>no bees are given: taken as half a cup.</source>
        <translation>keine Bienen angegeben: als halbe Tasse genommen.</translation>
    </message>
    <message>
        <source>no count of mites is given.</source>
        <translation>keine Milbenzahl angegeben.</translation>
    </message>
    <message>
        <source>no method is given: taken as an alcohol wash.</source>
        <translation>keine Methode angegeben: als Waschprobe mit Alkohol genommen.</translation>
    </message>
    <message>
        <source>so many mites are in no jar: at most 10000.</source>
        <translation>so viele Milben sind in keinem Glas: höchstens 10000.</translation>
    </message>
    <message>
        <source>the day %1 is before %2.</source>
        <translation>der Tag %1 liegt vor dem %2.</translation>
    </message>
    <message>
        <source>the day %1 is still to come.</source>
        <translation>der Tag %1 kommt erst noch.</translation>
    </message>
    <message>
        <source>the label of the colony is longer than 60 letters.</source>
        <translation>die Beschriftung des Volks ist länger als 60 Zeichen.</translation>
    </message>
    <message>
        <source>the method "%1" is not known here: alcohol wash, soapy wash or sugar roll.</source>
        <translation>die Methode „%1“ ist hier nicht bekannt: Waschprobe mit Alkohol, mit Seifenwasser oder Puderzuckerprobe.</translation>
    </message>
    <message>
        <source>the name of the yard is longer than 60 letters.</source>
        <translation>der Name des Stands ist länger als 60 Zeichen.</translation>
    </message>
    <message>
        <source>the note is longer than 2,000 letters: the rest of it is left off.</source>
        <translation>die Notiz ist länger als 2.000 Zeichen: Der Rest wird weggelassen.</translation>
    </message>
    <message>
        <source>the row of names has %2 cells, this one %1.</source>
        <translation>die Namenszeile hat %2 Zellen, diese %1.</translation>
    </message>
    <message>
        <source>the same as a row above: a second jar, or written twice?</source>
        <translation>dasselbe wie eine Zeile weiter oben: ein zweites Glas oder zweimal geschrieben?</translation>
    </message>
    <message>
        <source>there is a quotation mark inside a cell that does not begin with one.</source>
        <translation>ein Anführungszeichen steht in einer Zelle, die nicht damit beginnt.</translation>
    </message>
    <message>
        <source>there is no colony.</source>
        <translation>das Volk fehlt.</translation>
    </message>
    <message>
        <source>there is no day.</source>
        <translation>der Tag fehlt.</translation>
    </message>
    <message>
        <source>there is no yard.</source>
        <translation>der Stand fehlt.</translation>
    </message>
    <message>
        <source>there is text behind a closed quotation mark.</source>
        <translation>hinter einem schließenden Anführungszeichen steht Text.</translation>
    </message>
    <message>
        <source>this wash stands in the table already.</source>
        <translation>diese Waschprobe steht schon in der Tabelle.</translation>
    </message>
    <message>
        <source>two colonies here are both called "%1": rename one first.</source>
        <translation>zwei Völker hier heißen beide „%1“: zuerst eines umbenennen.</translation>
    </message>
    <message>
        <source>two yards here are both called "%1": rename one first.</source>
        <translation>zwei Stände hier heißen beide „%1“: zuerst einen umbenennen.</translation>
    </message>
</context>
<context>
    <name>TrayPage</name>
    <message>
        <source>A jar comes here when you scoop now and wash later: after the scoop, touch Wash it later.</source>
        <translation>Hierher kommt ein Glas, wenn jetzt geschöpft und später ausgewaschen wird: nach dem Schöpfen „Später auswaschen“ antippen.</translation>
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
            <numerusform>%n Windel liegt</numerusform>
            <numerusform>%n Windeln liegen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n jar(s) wait</source>
        <translation>
            <numerusform>%n Glas wartet</numerusform>
            <numerusform>%n Gläser warten</numerusform>
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
            <numerusform>%1, %n Volk</numerusform>
            <numerusform>%1, %n Völker</numerusform>
        </translation>
    </message>
    <message>
        <source>Colony %1, %2</source>
        <comment>colony, yard</comment>
        <translation>Volk %1, %2</translation>
    </message>
    <message>
        <source>From %1: %2, %3, %4</source>
        <comment>day, supers, brood, forecast</comment>
        <translation>Ab %1: %2, %3, %4</translation>
    </message>
    <message>
        <source>brood not known</source>
        <translation>Brut nicht bekannt</translation>
    </message>
    <message>
        <source>capped brood</source>
        <translation>verdeckelte Brut</translation>
    </message>
    <message>
        <source>highs from %1 to %2</source>
        <translation>Höchstwerte von %1 bis %2</translation>
    </message>
    <message>
        <source>no brood</source>
        <translation>keine Brut</translation>
    </message>
    <message>
        <source>no forecast yet</source>
        <translation>noch keine Vorhersage</translation>
    </message>
    <message>
        <source>open brood only</source>
        <translation>nur offene Brut</translation>
    </message>
    <message>
        <source>supers not known</source>
        <translation>Honigraum nicht bekannt</translation>
    </message>
    <message>
        <source>supers off</source>
        <translation>Honigraum ab</translation>
    </message>
    <message>
        <source>supers on</source>
        <translation>Honigraum drauf</translation>
    </message>
</context>
<context>
    <name>TreatPage</name>
    <message>
        <source>What is so now</source>
        <translation>Wie es jetzt ist</translation>
    </message>
    <message>
        <source>What to treat with</source>
        <translation>Womit behandeln</translation>
    </message>
    <message>
        <source>Whole yard</source>
        <translation>Ganzer Stand</translation>
    </message>
    <message>
        <source>type the forecast; supers, brood</source>
        <translation>Vorhersage eingeben; Honigraum, Brut</translation>
    </message>
    <message>
        <source>weather, supers, brood</source>
        <translation>Wetter, Honigraum, Brut</translation>
    </message>
</context>
<context>
    <name>TreatmentColonies</name>
    <message>
        <source>All of them</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Which colonies get it?</source>
        <translation>Welche Völker bekommen es?</translation>
    </message>
</context>
<context>
    <name>TreatmentForm</name>
    <message>
        <source>Active substance</source>
        <translation>Wirkstoff</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Done by</source>
        <translation>Ausgeführt von</translation>
    </message>
    <message>
        <source>Expiry of the product</source>
        <translation>Verfallsdatum des Produkts</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Erster Tag</translation>
    </message>
    <message>
        <source>From the label; 0 where it says none.</source>
        <translation>Aus der Packungsbeilage; 0, wenn dort keine steht.</translation>
    </message>
    <message>
        <source>It cannot be taken out before the first day.</source>
        <translation>Es kann nicht vor dem ersten Tag entnommen werden.</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Letzter Tag</translation>
    </message>
    <message>
        <source>Leave it empty where nothing stays in the hive.</source>
        <translation>Leer lassen, wenn nichts im Volk bleibt.</translation>
    </message>
    <message>
        <source>More for the record</source>
        <translation>Mehr für die Aufzeichnung</translation>
    </message>
    <message>
        <source>No active substance is named.</source>
        <translation>Kein Wirkstoff ist angegeben.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>One of the days does not exist.</source>
        <translation>Einen der Tage gibt es nicht.</translation>
    </message>
    <message>
        <source>Pick the colonies that get it.</source>
        <translation>Die Völker wählen, die es bekommen.</translation>
    </message>
    <message>
        <source>Prescribed by</source>
        <translation>Verschrieben von</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produkt</translation>
    </message>
    <message>
        <source>Proof of purchase</source>
        <translation>Kaufbeleg</translation>
    </message>
    <message>
        <source>Quantity, all colonies together</source>
        <translation>Menge, alle Völker zusammen</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Bezugsquelle</translation>
    </message>
    <message>
        <source>Taken out on</source>
        <translation>Entnommen am</translation>
    </message>
    <message numerus="yes">
        <source>The course is longer than %n day(s).</source>
        <translation>
            <numerusform>Die Anwendung ist länger als %n Tag.</numerusform>
            <numerusform>Die Anwendung ist länger als %n Tage.</numerusform>
        </translation>
    </message>
    <message>
        <source>The first day is more than a year away.</source>
        <translation>Der erste Tag liegt mehr als ein Jahr entfernt.</translation>
    </message>
    <message>
        <source>The last day lies before the first.</source>
        <translation>Der letzte Tag liegt vor dem ersten.</translation>
    </message>
    <message>
        <source>The product has expired before the first day.</source>
        <translation>Das Produkt ist vor dem ersten Tag abgelaufen.</translation>
    </message>
    <message numerus="yes">
        <source>The withdrawal can be %n day(s) at the most.</source>
        <translation>
            <numerusform>Die Wartezeit kann höchstens %n Tag betragen.</numerusform>
            <numerusform>Die Wartezeit kann höchstens %n Tage betragen.</numerusform>
        </translation>
    </message>
    <message>
        <source>The withdrawal cannot be less than 0 days.</source>
        <translation>Die Wartezeit kann nicht kürzer als 0 Tage sein.</translation>
    </message>
    <message>
        <source>To be taken out on</source>
        <translation>Zu entnehmen am</translation>
    </message>
    <message>
        <source>Withdrawal for honey, days</source>
        <translation>Wartezeit für Honig, Tage</translation>
    </message>
    <message>
        <source>Write down the product as its label names it.</source>
        <translation>Das Produkt notieren, wie es in der Packungsbeilage heißt.</translation>
    </message>
    <message>
        <source>as its label names it</source>
        <translation>Name laut Packungsbeilage</translation>
    </message>
    <message>
        <source>as the label names it</source>
        <translation>laut Packungsbeilage</translation>
    </message>
    <message>
        <source>name and address</source>
        <translation>Name und Anschrift</translation>
    </message>
    <message>
        <source>number of the receipt, or where it is kept</source>
        <translation>Nummer des Belegs, oder wo er liegt</translation>
    </message>
    <message>
        <source>where it was prescribed</source>
        <translation>falls verschrieben</translation>
    </message>
    <message>
        <source>with its unit; how much to give stands on the label</source>
        <translation>mit Einheit; wie viel zu geben ist, steht in der Packungsbeilage</translation>
    </message>
</context>
<context>
    <name>TreatmentPage</name>
    <message>
        <source>Change</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Did it work?</source>
        <translation>Hat es gewirkt?</translation>
    </message>
    <message>
        <source>Keep this record</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Taken out today</source>
        <translation>Heute entnommen</translation>
    </message>
</context>
<context>
    <name>TreatmentQuestions</name>
    <message>
        <source>Colony %1 has %2 already, from %3 to %4.</source>
        <translation>Volk %1 bekommt schon %2, von %3 bis %4.</translation>
    </message>
    <message>
        <source>Supers are on within the course or the withdrawal (colony %1). Their honey is not for eating.</source>
        <translation>In der Anwendung oder Wartezeit ist ein Honigraum drauf (Volk %1). Dessen Honig ist nicht zum Essen.</translation>
    </message>
    <message>
        <source>Supers are on within the course or the withdrawal (colony %1): only where the label allows it.</source>
        <translation>In der Anwendung oder Wartezeit ist ein Honigraum drauf (Volk %1): nur, wo die Packungsbeilage es erlaubt.</translation>
    </message>
    <message>
        <source>The course runs past the turn date, %1: the bees that overwinter are raised while mites are still there.</source>
        <translation>Die Anwendung geht über den Stichtag, %1, hinaus: Die Winterbienen wachsen heran, solange noch Milben da sind.</translation>
    </message>
    <message>
        <source>The withdrawal is not written down, so nobody can say from when on honey may be taken. It stands on the label; write 0 where it says none.</source>
        <translation>Die Wartezeit ist nicht notiert; niemand kann sagen, ab wann Honig entnommen werden darf. Sie steht in der Packungsbeilage; 0 eingeben, wenn dort keine steht.</translation>
    </message>
</context>
<context>
    <name>TreatmentRecord</name>
    <message>
        <source>Did it work?</source>
        <translation>Hat es gewirkt?</translation>
    </message>
    <message>
        <source>Remove this record</source>
        <translation>Eintrag entfernen</translation>
    </message>
</context>
<context>
    <name>TreatmentSheets</name>
    <message>
        <source>Go back and change it</source>
        <translation>Zurück und ändern</translation>
    </message>
    <message>
        <source>Go on writing</source>
        <translation>Weiterschreiben</translation>
    </message>
    <message>
        <source>It leaves the lists. The history keeps it.</source>
        <translation>Er verschwindet aus den Listen. Der Verlauf bewahrt ihn.</translation>
    </message>
    <message>
        <source>Keep it all the same</source>
        <translation>Trotzdem speichern</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>So lassen</translation>
    </message>
    <message>
        <source>Leave without keeping</source>
        <translation>Ohne Speichern verlassen</translation>
    </message>
    <message>
        <source>Leave without keeping?</source>
        <translation>Ohne Speichern verlassen?</translation>
    </message>
    <message>
        <source>Please look again</source>
        <translation>Bitte noch einmal ansehen</translation>
    </message>
    <message>
        <source>Remove it</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove this record?</source>
        <translation>Diesen Eintrag entfernen?</translation>
    </message>
    <message>
        <source>What you wrote down here is not kept yet.</source>
        <translation>Was hier notiert ist, ist noch nicht gespeichert.</translation>
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
        <translation>Alles so lassen</translation>
    </message>
    <message>
        <source>Or put a backup back</source>
        <translation>Oder eine Sicherung wiederherstellen</translation>
    </message>
    <message>
        <source>Put it back</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>Put this one back?</source>
        <translation>Diese wiederherstellen?</translation>
    </message>
    <message>
        <source>Save what can be read</source>
        <translation>Retten, was lesbar ist</translation>
    </message>
</context>
<context>
    <name>TypedDates</name>
    <message>
        <source>%1: "%2" is no date. Type it like 18 May 2026 or 2026-05-18.</source>
        <translation>%1: „%2“ ist kein Datum. Bitte so eingeben: 18. Mai 2026 oder 2026-05-18.</translation>
    </message>
    <message>
        <source>%1: "%2" is no day of the year. Type it like 15 August.</source>
        <translation>%1: „%2“ ist kein Tag des Jahres. Bitte so eingeben: 15. August.</translation>
    </message>
    <message>
        <source>%1: %2 has no %3 %4. It is no leap year.</source>
        <comment>what, year, day, month</comment>
        <translation>%1: %2 hat keinen %3. %4. Es ist kein Schaltjahr.</translation>
    </message>
    <message>
        <source>%1: %2 has no day %3.</source>
        <comment>what, month, day</comment>
        <translation>%1: Der %2 hat keinen Tag %3.</translation>
    </message>
    <message>
        <source>%1: the year %2 is too far away.</source>
        <translation>%1: Das Jahr %2 ist zu weit weg.</translation>
    </message>
    <message>
        <source>%1: there is no day %2 of month %3.</source>
        <translation>%1: Einen Tag %2 im Monat %3 gibt es nicht.</translation>
    </message>
</context>
<context>
    <name>WashStep</name>
    <message>
        <source>Abandon</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Abandon this count</source>
        <translation>Zählung abbrechen</translation>
    </message>
    <message>
        <source>Abandon this count?</source>
        <translation>Diese Zählung abbrechen?</translation>
    </message>
    <message>
        <source>All you have done is kept. You can go on where you left, also after the phone was off.</source>
        <translation>Alles bisher ist gespeichert. Es geht dort weiter, wo du aufgehört hast, auch wenn das Telefon aus war.</translation>
    </message>
    <message>
        <source>Go on with the count</source>
        <translation>Weiterzählen</translation>
    </message>
    <message>
        <source>It is kept as abandoned.</source>
        <translation>Sie wird als abgebrochen gespeichert.</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Gehen</translation>
    </message>
    <message>
        <source>Leave this count?</source>
        <translation>Diese Zählung verlassen?</translation>
    </message>
    <message>
        <source>Leave, keep it</source>
        <translation>Verlassen, behalten</translation>
    </message>
    <message>
        <source>Stay here</source>
        <translation>Hierbleiben</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>%1 %</source>
        <comment>a chance</comment>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 can be %2 at the most. Nothing was changed.</source>
        <translation>%1 kann höchstens %2 sein. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>%1 cannot be less than 0.</source>
        <translation>%1 kann nicht kleiner als 0 sein.</translation>
    </message>
    <message>
        <source>%1 ft</source>
        <comment>feet</comment>
        <translation>%1 ft</translation>
    </message>
    <message>
        <source>%1 is already taken here. Choose another.</source>
        <translation>%1 ist hier schon vergeben. Bitte anders wählen.</translation>
    </message>
    <message>
        <source>%1 is empty. Type it, or leave the page as it was.</source>
        <translation>%1 ist leer. Bitte eingeben, oder die Seite lassen, wie sie war.</translation>
    </message>
    <message>
        <source>%1 is not a Halfcup database. It was left as it is. Move it aside, or start with another file.</source>
        <translation>%1 ist keine Halfcup-Datenbank. Sie blieb, wie sie war. Beiseitelegen, oder mit einer anderen Datei starten.</translation>
    </message>
    <message>
        <source>%1 is too long: %2 letters fit on a label.</source>
        <translation>%1 ist zu lang: %2 Zeichen haben Platz.</translation>
    </message>
    <message>
        <source>%1 km</source>
        <translation>%1 km</translation>
    </message>
    <message>
        <source>%1 lies in the future. Look at the phone's date.</source>
        <translation>%1 liegt in der Zukunft. Das Datum des Telefons prüfen.</translation>
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
        <translation>%1 muss mindestens %2 sein. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>%1 must be a number, such as %2.</source>
        <translation>%1 muss eine Zahl sein, zum Beispiel %2.</translation>
    </message>
    <message>
        <source>%1 must be a whole number.</source>
        <translation>%1 muss eine ganze Zahl sein.</translation>
    </message>
    <message>
        <source>%1 must be more than 0. Nothing was changed.</source>
        <translation>%1 muss größer als 0 sein. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>%1 s</source>
        <comment>seconds</comment>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a range of loads</comment>
        <translation>%1 bis %2</translation>
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
        <translation>%1, auf %2 genau</translation>
    </message>
    <message numerus="yes">
        <source>%n cell(s)</source>
        <translation>
            <numerusform>%n Zelle</numerusform>
            <numerusform>%n Zellen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tage</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n mite(s)</source>
        <translation>
            <numerusform>%n Milbe</numerusform>
            <numerusform>%n Milben</numerusform>
        </translation>
    </message>
    <message>
        <source>Another program is using your records. This was not written. Close the other program, then do it again.</source>
        <translation>Ein anderes Programm benutzt die Aufzeichnungen. Dies wurde nicht geschrieben. Das andere Programm schließen, dann noch einmal.</translation>
    </message>
    <message>
        <source>Can't tell yet</source>
        <translation>Noch unklar</translation>
    </message>
    <message>
        <source>Close to your line</source>
        <translation>Nah an der Schwelle</translation>
    </message>
    <message>
        <source>E</source>
        <comment>east</comment>
        <translation>O</translation>
    </message>
    <message>
        <source>N</source>
        <comment>north</comment>
        <translation>N</translation>
    </message>
    <message>
        <source>Not washed yet</source>
        <translation>Noch keine Waschprobe</translation>
    </message>
    <message>
        <source>Over your line</source>
        <translation>Über der Schwelle</translation>
    </message>
    <message>
        <source>S</source>
        <comment>south</comment>
        <translation>S</translation>
    </message>
    <message>
        <source>The database %1 is damaged. It was left as it is. Keep a copy of it before anything else is tried.</source>
        <translation>Die Datenbank %1 ist beschädigt. Sie blieb, wie sie war. Vor jedem weiteren Versuch eine Kopie davon aufheben.</translation>
    </message>
    <message>
        <source>The folder for your records is not there: %1. Nothing was written. Put the folder back, or start with another.</source>
        <translation>Der Ordner für die Aufzeichnungen ist nicht da: %1. Nichts wurde geschrieben. Den Ordner zurückbringen, oder mit einem anderen starten.</translation>
    </message>
    <message>
        <source>The phone's storage is full. This was not written; everything before it is safe. Make room, then do it again.</source>
        <translation>Der Speicher des Telefons ist voll. Dies wurde nicht geschrieben; alles davor ist sicher. Platz schaffen, dann noch einmal.</translation>
    </message>
    <message>
        <source>Under your line</source>
        <translation>Unter der Schwelle</translation>
    </message>
    <message>
        <source>W</source>
        <comment>west</comment>
        <translation>W</translation>
    </message>
    <message>
        <source>Your records cannot be written here: %1 is read-only, or this user may not write there. What is in it is unchanged.</source>
        <translation>Hier können keine Aufzeichnungen geschrieben werden: %1 ist schreibgeschützt, oder das Schreibrecht fehlt. Was darin steht, ist unverändert.</translation>
    </message>
    <message>
        <source>Your records could not be written. Everything before this is safe. Try it again; if it stays, start the app anew.</source>
        <translation>Die Aufzeichnungen konnten nicht geschrieben werden. Alles davor ist sicher. Noch einmal versuchen; wenn es bleibt, die App neu starten.</translation>
    </message>
    <message>
        <source>Your records must be brought to a new form, and the copy that is made first could not be written. Nothing was changed. Make room in %1, then start again.</source>
        <translation>Die Aufzeichnungen müssen in eine neue Form gebracht werden, und die Kopie, die zuerst gemacht wird, konnte nicht geschrieben werden. Nichts wurde geändert. Platz schaffen in %1, dann neu starten.</translation>
    </message>
    <message>
        <source>Your records were written by a newer Halfcup. They are safe and unchanged; this version cannot read them. Install the newer version again.</source>
        <translation>Die Aufzeichnungen wurden von einem neueren Halfcup geschrieben. Sie sind sicher und unverändert; diese Version kann sie nicht lesen. Die neuere Version wieder installieren.</translation>
    </message>
    <message>
        <source>a third of a cup</source>
        <translation>⅓ Tasse</translation>
    </message>
    <message>
        <source>about %1 bees</source>
        <translation>etwa %1 Bienen</translation>
    </message>
    <message>
        <source>another method (%1)</source>
        <translation>andere Methode (%1)</translation>
    </message>
    <message>
        <source>close the jar</source>
        <translation>Glas schließen</translation>
    </message>
    <message>
        <source>count</source>
        <translation>Zählen</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <comment>date format without year, as in 18 May</comment>
        <translation>d. MMMM</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <comment>date format, as in 18 May 2026</comment>
        <translation>d. MMMM yyyy</translation>
    </message>
    <message>
        <source>find the queen</source>
        <translation>Königin suchen</translation>
    </message>
    <message>
        <source>half a cup</source>
        <translation>½ Tasse</translation>
    </message>
    <message>
        <source>how many cells opened</source>
        <translation>wie viele Zellen geöffnet</translation>
    </message>
    <message>
        <source>how much of the board</source>
        <translation>wie viel von der Windel</translation>
    </message>
    <message>
        <source>lay the board</source>
        <translation>Windel einschieben</translation>
    </message>
    <message>
        <source>let it settle</source>
        <translation>Absetzen lassen</translation>
    </message>
    <message>
        <source>over 99 %</source>
        <comment>a chance</comment>
        <translation>über 99 %</translation>
    </message>
    <message>
        <source>pick the colony</source>
        <translation>Volk wählen</translation>
    </message>
    <message>
        <source>pull the board</source>
        <translation>Windel ziehen</translation>
    </message>
    <message>
        <source>scoop</source>
        <translation>Bienen schöpfen</translation>
    </message>
    <message>
        <source>second rinse</source>
        <translation>zweite Spülung</translation>
    </message>
    <message>
        <source>shake</source>
        <translation>Schütteln</translation>
    </message>
    <message>
        <source>the answer</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>under 1 %</source>
        <comment>a chance</comment>
        <translation>unter 1 %</translation>
    </message>
</context>
<context>
    <name>YardColonies</name>
    <message>
        <source>A run of numbers such as 1-8, or what is on the hives: 4, B12</source>
        <translation>Eine Reihe von Nummern wie 1-8, oder was auf den Beuten steht: 4, B12</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Anlegen</translation>
    </message>
    <message>
        <source>Add colonies</source>
        <translation>Völker anlegen</translation>
    </message>
    <message>
        <source>Colonies</source>
        <translation>Völker</translation>
    </message>
    <message>
        <source>Plan of the yard</source>
        <translation>Plan des Stands</translation>
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
            <numerusform>%n Volk ohne Waschprobe.</numerusform>
            <numerusform>%n Völker ohne Waschprobe.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n colony(ies), the highest load first.</source>
        <translation>
            <numerusform>%n Volk, der höchste Befall zuerst.</numerusform>
            <numerusform>%n Völker, der höchste Befall zuerst.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them is (are) over the line.</source>
        <translation>
            <numerusform>%n davon ist über der Schwelle.</numerusform>
            <numerusform>%n davon sind über der Schwelle.</numerusform>
        </translation>
    </message>
    <message>
        <source>Colony %1: %2 per 100 bees, %3 to %4 in 9 of 10 cases.</source>
        <translation>Volk %1: %2 je 100 Bienen, in 9 von 10 Fällen %3 bis %4.</translation>
    </message>
    <message>
        <source>Colony %1: none found, up to %2 per 100 bees.</source>
        <translation>Volk %1: keine gefunden, bis zu %2 je 100 Bienen.</translation>
    </message>
    <message>
        <source>Colony %1: not washed.</source>
        <translation>Volk %1: keine Waschprobe.</translation>
    </message>
    <message>
        <source>Latest wash, with the range of 9 in 10 cases</source>
        <translation>Letzte Waschprobe, mit der Spanne in 9 von 10 Fällen</translation>
    </message>
    <message>
        <source>Mites per 100 bees</source>
        <translation>Milben je 100 Bienen</translation>
    </message>
    <message>
        <source>No colony is kept in this yard yet.</source>
        <translation>An diesem Stand gibt es noch kein Volk.</translation>
    </message>
    <message numerus="yes">
        <source>No wash yet in %n colony(ies).</source>
        <translation>
            <numerusform>Noch keine Waschprobe in %n Volk.</numerusform>
            <numerusform>Noch keine Waschprobe in %n Völkern.</numerusform>
        </translation>
    </message>
    <message>
        <source>None found; the load can be up to the stroke</source>
        <translation>Keine gefunden; der Befall kann bis zum Strich reichen</translation>
    </message>
    <message>
        <source>None of them is over its line.</source>
        <translation>Keines ist über seiner Schwelle.</translation>
    </message>
    <message>
        <source>Not washed</source>
        <translation>Keine Waschprobe</translation>
    </message>
    <message>
        <source>Own line</source>
        <translation>Eigene Schwelle</translation>
    </message>
    <message>
        <source>Treat line</source>
        <translation>Behandlungsschwelle</translation>
    </message>
    <message numerus="yes">
        <source>Washed %n day(s) ago.</source>
        <translation>
            <numerusform>Waschprobe vor %n Tag.</numerusform>
            <numerusform>Waschprobe vor %n Tagen.</numerusform>
        </translation>
    </message>
    <message>
        <source>not washed</source>
        <translation>keine Waschprobe</translation>
    </message>
    <message>
        <source>own line %1</source>
        <translation>eigene %1</translation>
    </message>
    <message>
        <source>treat line %1</source>
        <translation>Schwelle %1</translation>
    </message>
    <message numerus="yes">
        <source>washed %n day(s) ago</source>
        <translation>
            <numerusform>Probe vor %n Tag</numerusform>
            <numerusform>Probe vor %n Tagen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>YardEditPage</name>
    <message>
        <source>A new yard</source>
        <translation>Ein neuer Stand</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Keep this yard</source>
        <translation>Stand speichern</translation>
    </message>
    <message>
        <source>Leave it empty where you have none.</source>
        <translation>Leer lassen, wenn es keine gibt.</translation>
    </message>
    <message>
        <source>Lines through the year</source>
        <translation>Schwellen im Jahreslauf</translation>
    </message>
    <message>
        <source>Name of the yard</source>
        <translation>Name des Stands</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Treat line, mites per 100 bees</source>
        <translation>Behandlungsschwelle, Milben je 100 Bienen</translation>
    </message>
    <message>
        <source>Use this place</source>
        <translation>Diesen Ort nehmen</translation>
    </message>
    <message>
        <source>What changed</source>
        <translation>Änderungen</translation>
    </message>
    <message>
        <source>Your own, stricter line</source>
        <translation>Eigene, strengere Schwelle</translation>
    </message>
    <message>
        <source>then add its colonies</source>
        <translation>dann seine Völker anlegen</translation>
    </message>
</context>
<context>
    <name>YardForAll</name>
    <message>
        <source>For all its colonies</source>
        <translation>Für alle Völker</translation>
    </message>
    <message>
        <source>On a day</source>
        <translation>An einem Tag</translation>
    </message>
    <message>
        <source>On a day, all colonies</source>
        <translation>An einem Tag, alle Völker</translation>
    </message>
    <message>
        <source>Supers off</source>
        <translation>Honigraum ab</translation>
    </message>
    <message>
        <source>Supers off, all colonies</source>
        <translation>Honigraum ab, alle Völker</translation>
    </message>
    <message>
        <source>Supers on</source>
        <translation>Honigraum drauf</translation>
    </message>
    <message>
        <source>Supers on, all colonies</source>
        <translation>Honigraum drauf, alle Völker</translation>
    </message>
    <message>
        <source>Treat</source>
        <translation>Behandeln</translation>
    </message>
    <message>
        <source>Treat all colonies</source>
        <translation>Alle Völker behandeln</translation>
    </message>
</context>
<context>
    <name>YardLinesPage</name>
    <message>
        <source>A wash keeps the line it was judged by.</source>
        <translation>Eine Waschprobe behält die Schwelle, nach der sie beurteilt wurde.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Lines through the year</source>
        <translation>Schwellen im Jahreslauf</translation>
    </message>
    <message>
        <source>Lines until now</source>
        <translation>Bisherige Schwellen</translation>
    </message>
    <message>
        <source>Treat line</source>
        <translation>Behandlungsschwelle</translation>
    </message>
    <message>
        <source>Whose figures to follow</source>
        <translation>Wessen Zahlen gelten sollen</translation>
    </message>
</context>
<context>
    <name>YardPlanPage</name>
    <message>
        <source>By steps</source>
        <translation>In Schritten</translation>
    </message>
    <message>
        <source>Move hives</source>
        <translation>Beuten setzen</translation>
    </message>
    <message>
        <source>Plan of the yard</source>
        <translation>Plan des Stands</translation>
    </message>
</context>
<context>
    <name>YardPlanSteps</name>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Next hive</source>
        <translation>Nächste Beute</translation>
    </message>
    <message>
        <source>Previous hive</source>
        <translation>Vorige Beute</translation>
    </message>
    <message>
        <source>Take its place off the plan</source>
        <translation>Ort aus dem Plan nehmen</translation>
    </message>
</context>
<context>
    <name>YardPlanWords</name>
    <message>
        <source>%1 ft</source>
        <comment>feet</comment>
        <translation>%1 ft</translation>
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
        <translation>Noch unklar: %1.</translation>
    </message>
    <message>
        <source>Close to the line: %1.</source>
        <comment>labels of hives</comment>
        <translation>Nah an der Schwelle: %1.</translation>
    </message>
    <message>
        <source>N</source>
        <comment>north, beside an arrow on a plan</comment>
        <translation>N</translation>
    </message>
    <message>
        <source>No hive has its place yet.</source>
        <translation>Noch keine Beute im Plan.</translation>
    </message>
    <message>
        <source>No hive in this yard yet.</source>
        <translation>Noch keine Beute am Stand.</translation>
    </message>
    <message>
        <source>Not on the plan:</source>
        <translation>Nicht im Plan:</translation>
    </message>
    <message>
        <source>Not on the plan: %1.</source>
        <comment>labels of hives</comment>
        <translation>Nicht im Plan: %1.</translation>
    </message>
    <message>
        <source>Not washed: %1.</source>
        <comment>labels of hives</comment>
        <translation>Ohne Waschprobe: %1.</translation>
    </message>
    <message>
        <source>Over the line: %1.</source>
        <comment>labels of hives</comment>
        <translation>Über der Schwelle: %1.</translation>
    </message>
    <message>
        <source>Plan of the yard, north up: %1 from west to east, %2 from south to north.</source>
        <translation>Plan des Stands, Norden oben: %1 von West nach Ost, %2 von Süd nach Nord.</translation>
    </message>
    <message>
        <source>Plan of the yard: no hive has its place yet.</source>
        <translation>Plan des Stands: noch keine Beute im Plan.</translation>
    </message>
    <message>
        <source>Plan of the yard: no hive in it yet.</source>
        <translation>Plan des Stands: noch keine Beute am Stand.</translation>
    </message>
    <message>
        <source>Under the line: %1.</source>
        <comment>labels of hives</comment>
        <translation>Unter der Schwelle: %1.</translation>
    </message>
    <message>
        <source>can't tell</source>
        <translation>unklar</translation>
    </message>
    <message>
        <source>can't tell yet</source>
        <translation>noch unklar</translation>
    </message>
    <message>
        <source>close</source>
        <comment>to the line</comment>
        <translation>nah</translation>
    </message>
    <message>
        <source>close to the line</source>
        <translation>nah an der Schwelle</translation>
    </message>
    <message>
        <source>from positions of its washes</source>
        <translation>aus Positionen der Waschproben</translation>
    </message>
    <message>
        <source>not washed</source>
        <translation>ohne Probe</translation>
    </message>
    <message>
        <source>over</source>
        <comment>the line</comment>
        <translation>über</translation>
    </message>
    <message>
        <source>over the line</source>
        <translation>über der Schwelle</translation>
    </message>
    <message>
        <source>under</source>
        <comment>the line</comment>
        <translation>unter</translation>
    </message>
    <message>
        <source>under the line</source>
        <translation>unter der Schwelle</translation>
    </message>
    <message>
        <source>where you put it</source>
        <translation>von Hand gesetzt</translation>
    </message>
</context>
<context>
    <name>YardRow</name>
    <message>
        <source>Change</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>%1 ändern</translation>
    </message>
</context>
<context>
    <name>YardYear</name>
    <message>
        <source>First wash of the year from</source>
        <translation>Erste Waschprobe des Jahres ab</translation>
    </message>
    <message>
        <source>Turn date</source>
        <translation>Stichtag</translation>
    </message>
</context>
<context>
    <name>YardsPage</name>
    <message>
        <source>Make a yard here</source>
        <translation>Hier einen Stand anlegen</translation>
    </message>
    <message>
        <source>What is shown as one</source>
        <translation>Was als eins gezeigt wird</translation>
    </message>
    <message>
        <source>Yards</source>
        <translation>Stände</translation>
    </message>
    <message>
        <source>made on two phones; look at them</source>
        <translation>auf zwei Telefonen angelegt; ansehen</translation>
    </message>
</context>
<context>
    <name>halfcup::place::FileFeed</name>
    <message>
        <source>%1 is not a file, so it cannot be played as a recording.</source>
        <translation>%1 ist keine Datei und kann nicht als Aufzeichnung abgespielt werden.</translation>
    </message>
    <message>
        <source>The file %1 cannot be read. It is tried again.</source>
        <translation>Die Datei %1 kann nicht gelesen werden. Es wird wieder versucht.</translation>
    </message>
    <message>
        <source>There is no file %1. It is looked for again.</source>
        <translation>Eine Datei %1 gibt es nicht. Es wird wieder danach gesucht.</translation>
    </message>
</context>
<context>
    <name>halfcup::place::NoFeed</name>
    <message>
        <source>This build of the program knows no serial lines.</source>
        <translation>Diese Ausgabe des Programms kennt keine seriellen Leitungen.</translation>
    </message>
</context>
<context>
    <name>halfcup::place::QtPositionSource</name>
    <message>
        <source>Positions are switched off in the setup.</source>
        <translation>Positionen sind unter „Optionen“ abgeschaltet.</translation>
    </message>
    <message>
        <source>The position service has ended. It is tried again.</source>
        <translation>Der Ortungsdienst hat sich beendet. Es wird wieder versucht.</translation>
    </message>
    <message>
        <source>The receiver has not found its place yet. It needs a clear view of the sky.</source>
        <translation>Der Empfänger hat seinen Ort noch nicht gefunden. Er braucht freie Sicht zum Himmel.</translation>
    </message>
    <message>
        <source>The recording %1 is over.</source>
        <translation>Die Aufzeichnung %1 ist zu Ende.</translation>
    </message>
    <message>
        <source>This device does not tell the program where it is: the position service is missing, or it is not allowed.</source>
        <translation>Dieses Gerät sagt dem Programm nicht, wo es ist: Der Ortungsdienst fehlt oder ist nicht erlaubt.</translation>
    </message>
    <message>
        <source>This device has not found its place yet. It needs a clear view of the sky.</source>
        <translation>Dieses Gerät hat seinen Ort noch nicht gefunden. Es braucht freie Sicht zum Himmel.</translation>
    </message>
    <message>
        <source>This device has nothing that tells positions.</source>
        <translation>Dieses Gerät hat nichts, was Positionen angibt.</translation>
    </message>
</context>
<context>
    <name>halfcup::place::SerialFeed</name>
    <message>
        <source>The serial line %1 is lost. It is tried again.</source>
        <translation>Die serielle Leitung %1 ist verloren. Es wird wieder versucht.</translation>
    </message>
    <message>
        <source>The serial line %1 may not be opened: another program has it, or this user has no right to it. It is tried again.</source>
        <translation>Die serielle Leitung %1 darf nicht geöffnet werden: Ein anderes Programm hat sie, oder das Recht dazu fehlt. Es wird wieder versucht.</translation>
    </message>
    <message>
        <source>There is no serial line %1. It is looked for again.</source>
        <translation>Eine serielle Leitung %1 gibt es nicht. Es wird wieder danach gesucht.</translation>
    </message>
</context>
<context>
    <name>halfcup::place::TcpFeed</name>
    <message>
        <source>%1 does not answer.</source>
        <translation>%1 antwortet nicht.</translation>
    </message>
    <message>
        <source>%1 has been silent for half a minute.</source>
        <translation>%1 schweigt seit einer halben Minute.</translation>
    </message>
    <message>
        <source>%1 has closed the connection.</source>
        <translation>%1 hat die Verbindung geschlossen.</translation>
    </message>
    <message>
        <source>It is tried again.</source>
        <translation>Es wird wieder versucht.</translation>
    </message>
    <message>
        <source>Nothing answers at %1.</source>
        <translation>Unter %1 antwortet nichts.</translation>
    </message>
    <message>
        <source>The connection to %1 is lost.</source>
        <translation>Die Verbindung zu %1 ist verloren.</translation>
    </message>
    <message>
        <source>The host of %1 is not known on this network.</source>
        <translation>Der Host von %1 ist in diesem Netz nicht bekannt.</translation>
    </message>
</context>
<context>
    <name>halfcup::place::WebPositionSource</name>
    <message>
        <source>A browser cannot reach the receiver that is named in the setup.</source>
        <translation>Ein Browser erreicht den Empfänger nicht, der in den Einstellungen genannt ist.</translation>
    </message>
    <message>
        <source>Positions are switched off in the setup.</source>
        <translation>Positionen sind unter „Optionen“ abgeschaltet.</translation>
    </message>
    <message>
        <source>The browser does not tell this page where it is: allow it in the settings of the page.</source>
        <translation>Der Browser sagt dieser Seite nicht, wo sie ist: Erlaube es in den Einstellungen der Seite.</translation>
    </message>
    <message>
        <source>This device has not found its place yet. It needs a clear view of the sky.</source>
        <translation>Dieses Gerät hat seinen Ort noch nicht gefunden. Es braucht freie Sicht zum Himmel.</translation>
    </message>
    <message>
        <source>This device has nothing that tells positions.</source>
        <translation>Dieses Gerät hat nichts, was Positionen angibt.</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::AnswerController</name>
    <message>
        <source>%1 mites per 100 bees</source>
        <translation>%1 Milben je 100 Bienen</translation>
    </message>
    <message>
        <source>%1 more</source>
        <comment>mites</comment>
        <translation>noch %1</translation>
    </message>
    <message>
        <source>%1 on %2: %3 per 100, before recovery</source>
        <translation>%1 auf %2: %3 je 100, ohne Korrektur</translation>
    </message>
    <message>
        <source>%1 per 100 (%2 to %3)</source>
        <translation>%1 je 100 (%2 bis %3)</translation>
    </message>
    <message>
        <source>90 % range</source>
        <translation>90-%-Spanne</translation>
    </message>
    <message>
        <source>About %1 mites on every 100 bees. It could be anything from %2.</source>
        <translation>Etwa %1 Milben je 100 Bienen. Möglich ist alles von %2.</translation>
    </message>
    <message>
        <source>As counted</source>
        <translation>Wie gezählt</translation>
    </message>
    <message>
        <source>Bees in the jar</source>
        <translation>Bienen im Glas</translation>
    </message>
    <message>
        <source>Chance that the true load is over %1: %2</source>
        <translation>Wahrscheinlichkeit, dass der wahre Befall über %1 liegt: %2</translation>
    </message>
    <message>
        <source>Colony %1, %2 · %3 in %4</source>
        <comment>colony, yard, mites, scoop</comment>
        <translation>Volk %1, %2 · %3 in %4</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Methode</translation>
    </message>
    <message>
        <source>None found is not none there: at a true load of 1 in 100, about %1 of 100 such jars hold no mite. While there is brood, most mites sit under cappings.</source>
        <translation>Keine gefunden heißt nicht keine da: Bei einem wahren Befall von 1 je 100 enthalten etwa %1 von 100 solchen Gläsern keine Milbe. Solange Brut da ist, sitzen die meisten Milben unter den Deckeln.</translation>
    </message>
    <message>
        <source>None found. The load can still be anything from %1 mites on every 100 bees.</source>
        <translation>Keine gefunden. Der Befall kann trotzdem %1 Milben je 100 Bienen betragen.</translation>
    </message>
    <message>
        <source>Nothing to do now. Wash again in a month.</source>
        <translation>Jetzt nichts zu tun. In einem Monat wieder eine Waschprobe.</translation>
    </message>
    <message>
        <source>One jar from one frame on one day; the mites under cappings; mites carried in later.</source>
        <translation>Ein Glas von einer Wabe an einem Tag; die Milben unter den Deckeln; später eingeschleppte Milben.</translation>
    </message>
    <message>
        <source>Own line %1: %2 (%3)</source>
        <comment>line, standing, chance</comment>
        <translation>Eigene Schwelle %1: %2 (%3)</translation>
    </message>
    <message>
        <source>Recovery</source>
        <translation>Ausbeute</translation>
    </message>
    <message>
        <source>Scooped on %1 at %2, %3 from %4. Is this the right colony?</source>
        <translation>Geschöpft am %1 um %2, %3 entfernt von %4. Ist das das richtige Volk?</translation>
    </message>
    <message>
        <source>Scooped on %1 at %2, no position</source>
        <translation>Geschöpft am %1 um %2, ohne Position</translation>
    </message>
    <message>
        <source>Scooped on %1 at %2, within %3</source>
        <translation>Geschöpft am %1 um %2, auf %3 genau</translation>
    </message>
    <message>
        <source>Second rinse</source>
        <translation>Zweite Spülung</translation>
    </message>
    <message>
        <source>Shaken</source>
        <translation>Geschüttelt</translation>
    </message>
    <message>
        <source>The yard's answer</source>
        <translation>Ergebnis des Stands</translation>
    </message>
    <message>
        <source>Time to treat. Which substance fits depends on the weather, supers and brood: the product's label and your local law decide. Ask your bee inspector or vet where you are unsure.</source>
        <translation>Zeit zu behandeln. Welcher Wirkstoff passt, hängt von Wetter, Honigraum und Brut ab: Packungsbeilage und örtliches Recht entscheiden. Im Zweifel die Bienensachverständigen oder eine Tierarztpraxis fragen.</translation>
    </message>
    <message>
        <source>Too few bees to say. Wash half a cup again within a week.</source>
        <translation>Zu wenige Bienen für eine Aussage. Innerhalb einer Woche noch einmal eine halbe Tasse auswaschen.</translation>
    </message>
    <message>
        <source>Treat line %1: %2 (%3)</source>
        <comment>line, standing, chance</comment>
        <translation>Behandlungsschwelle %1: %2 (%3)</translation>
    </message>
    <message>
        <source>Wash again within two weeks, or treat if the season leaves no time to wait.</source>
        <translation>Innerhalb von zwei Wochen noch eine Waschprobe, oder behandeln, wenn die Jahreszeit kein Warten zulässt.</translation>
    </message>
    <message>
        <source>Wash colony %1 next</source>
        <translation>Weiter mit Volk %1</translation>
    </message>
    <message>
        <source>Wash jar %1 next</source>
        <translation>Weiter mit Glas %1</translation>
    </message>
    <message>
        <source>What this leaves out</source>
        <translation>Was hier fehlt</translation>
    </message>
    <message>
        <source>With all mites it misses</source>
        <translation>Mit allen übersehenen Milben</translation>
    </message>
    <message>
        <source>With the mites a wash misses</source>
        <translation>Mit den Milben, die eine Waschprobe übersieht</translation>
    </message>
    <message>
        <source>Your line is %1, or %2 in %3.</source>
        <translation>Die Schwelle ist %1, das sind %2 in %3.</translation>
    </message>
    <message>
        <source>Your own line is %1, or %2 in %3.</source>
        <translation>Die eigene Schwelle ist %1, das sind %2 in %3.</translation>
    </message>
    <message>
        <source>about %1 (%2)</source>
        <translation>etwa %1 (%2)</translation>
    </message>
    <message>
        <source>about %1, the phone's clocks disagreed</source>
        <translation>etwa %1, die Uhren des Telefons waren uneins</translation>
    </message>
    <message>
        <source>finds about %1 % of what a wash finds, give or take %2</source>
        <translation>findet etwa %1 % dessen, was eine Waschprobe findet, plus/minus %2</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::App</name>
    <message>
        <source>%1 is none of the files that Halfcup takes in: .halfcup from another phone, .csv or .txt with a table of washes. Nothing was changed.</source>
        <translation>%1 gehört nicht zu den Dateien, die Halfcup einliest: .halfcup von einem anderen Telefon, .csv oder .txt mit einer Tabelle von Waschproben. Nichts wurde geändert.</translation>
    </message>
    <message numerus="yes">
        <source>%n files were opened at once. Open them one after the other, so that you see what is in each.</source>
        <translation>
            <numerusform>%n Datei wurde auf einmal geöffnet. Bitte einzeln öffnen, damit zu sehen ist, was darin steht.</numerusform>
            <numerusform>%n Dateien wurden auf einmal geöffnet. Bitte einzeln öffnen, damit zu sehen ist, was in jeder steht.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::BackupController</name>
    <message>
        <source>%1 What is kept now is not thrown away: it stays beside them as a copy, in the list of backups. Your settings stay. What another phone has taken over comes back when you merge with it. The app starts anew.</source>
        <comment>sentence</comment>
        <translation>%1 Was jetzt gespeichert ist, geht nicht verloren: Es bleibt daneben als Kopie in der Liste der Sicherungen. Die Einstellungen bleiben. Was ein anderes Telefon übernommen hat, kommt beim Zusammenführen wieder. Die App startet neu.</translation>
    </message>
    <message>
        <source>%1 cannot be written. No backup was made.</source>
        <translation>%1 kann nicht geschrieben werden. Es wurde keine Sicherung angelegt.</translation>
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
            <numerusform>%n Volk</numerusform>
            <numerusform>%n Völker</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n treatment(s)</source>
        <translation>
            <numerusform>%n Behandlung</numerusform>
            <numerusform>%n Behandlungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es)</source>
        <translation>
            <numerusform>%n Waschprobe</numerusform>
            <numerusform>%n Waschproben</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es) in no backup yet</source>
        <translation>
            <numerusform>%n Waschprobe in noch keiner Sicherung</numerusform>
            <numerusform>%n Waschproben in noch keiner Sicherung</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n yard(s)</source>
        <translation>
            <numerusform>%n Stand</numerusform>
            <numerusform>%n Stände</numerusform>
        </translation>
    </message>
    <message>
        <source>A backup</source>
        <translation>Eine Sicherung</translation>
    </message>
    <message>
        <source>A backup is one file with all you keep. A browser may throw away what it keeps: when the phone is full, when its data are cleared, in a private window always. Keep the file outside it.</source>
        <translation>Eine Sicherung ist eine Datei mit allem Gespeicherten. Ein Browser darf löschen, was er speichert: wenn das Telefon voll ist, wenn seine Daten gelöscht werden, in einem privaten Fenster immer. Die Datei außerhalb aufbewahren.</translation>
    </message>
    <message>
        <source>A backup is one file with all you keep. Copy it off this phone: a phone can fall into the honey.</source>
        <translation>Eine Sicherung ist eine Datei mit allem Gespeicherten. Vom Telefon wegkopieren: Ein Telefon kann in den Honig fallen.</translation>
    </message>
    <message>
        <source>A plain database: its form is sound; there is no check sum in it.</source>
        <translation>Eine einfache Datenbank: Ihr Aufbau ist in Ordnung; eine Prüfsumme enthält sie nicht.</translation>
    </message>
    <message>
        <source>Every row was checked: it is as it was written.</source>
        <translation>Jede Zeile wurde geprüft: Sie ist so, wie sie geschrieben wurde.</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>In it</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>In this backup</source>
        <translation>In dieser Sicherung</translation>
    </message>
    <message>
        <source>It cannot be used</source>
        <translation>Nicht verwendbar</translation>
    </message>
    <message>
        <source>It is no longer at %1. Good, if you moved it to a safe place.</source>
        <translation>Sie liegt nicht mehr unter %1. Gut, wenn sie an einen sicheren Ort gebracht wurde.</translation>
    </message>
    <message>
        <source>Last backup: %1</source>
        <comment>day and time</comment>
        <translation>Letzte Sicherung: %1</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Angelegt</translation>
    </message>
    <message>
        <source>Newest wash</source>
        <translation>Neueste Waschprobe</translation>
    </message>
    <message>
        <source>No backup yet</source>
        <translation>Noch keine Sicherung</translation>
    </message>
    <message>
        <source>The backup was written but did not pass its check, so it was thrown away. Try it again, or into another place.</source>
        <translation>Die Sicherung wurde geschrieben, bestand aber die Prüfung nicht und wurde verworfen. Noch einmal versuchen, oder an einem anderen Ort.</translation>
    </message>
    <message>
        <source>This phone has no place for files to hand on.</source>
        <translation>Dieses Telefon hat keinen Ort für Dateien zum Weitergeben.</translation>
    </message>
    <message numerus="yes">
        <source>Written and checked: %n wash(es), %1, %2</source>
        <comment>size, path</comment>
        <translation>
            <numerusform>Geschrieben und geprüft: %n Waschprobe, %1, %2</numerusform>
            <numerusform>Geschrieben und geprüft: %n Waschproben, %1, %2</numerusform>
        </translation>
    </message>
    <message>
        <source>Your records become what is in %1.</source>
        <translation>Die Aufzeichnungen werden ersetzt durch das, was in %1 steht.</translation>
    </message>
    <message>
        <source>Your records become what they were on %1.</source>
        <translation>Die Aufzeichnungen werden wieder so, wie sie am %1 waren.</translation>
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
        <translation>beiseitegelegt, als eine Sicherung wiederhergestellt wurde</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::BoardController</name>
    <message>
        <source>%1 %2 h under the colony.</source>
        <comment>the sentence before, hours</comment>
        <translation>%1 %2 h unter dem Volk.</translation>
    </message>
    <message>
        <source>%1 h, as you typed</source>
        <translation>%1 h, wie eingegeben</translation>
    </message>
    <message>
        <source>By the clock it lay for less than an hour, too short for a count. If that is wrong, type the hours; else leave it and pull it later.</source>
        <translation>Laut Uhr lag sie weniger als eine Stunde, zu kurz für eine Zählung. Wenn das nicht stimmt, die Stunden eingeben; sonst liegen lassen und später ziehen.</translation>
    </message>
    <message>
        <source>By the clock it lay for more than two weeks: ants, wax and wind have been at it. If that is wrong, type the hours; else lay a fresh board.</source>
        <translation>Laut Uhr lag sie mehr als zwei Wochen: Ameisen, Wachs und Wind waren schon daran. Wenn das nicht stimmt, die Stunden eingeben; sonst eine frische Windel einschieben.</translation>
    </message>
    <message>
        <source>By the phone's clock the board was pulled before it was laid: the clock was changed. How many hours did it lie?</source>
        <translation>Laut Uhr des Telefons wurde die Windel gezogen, bevor sie eingeschoben war: Die Uhr wurde verstellt. Wie viele Stunden lag sie?</translation>
    </message>
    <message>
        <source>Floor: %1 since %2</source>
        <translation>Boden: %1 seit %2</translation>
    </message>
    <message>
        <source>Floor: not written down</source>
        <translation>Boden: nicht notiert</translation>
    </message>
    <message>
        <source>How many hours did it lie under the colony?</source>
        <translation>Wie viele Stunden lag sie unter dem Volk?</translation>
    </message>
    <message>
        <source>Laid on %1 at %2.</source>
        <translation>Eingeschoben am %1 um %2.</translation>
    </message>
    <message>
        <source>No cell counted is no count. Count some cells, or the whole board.</source>
        <translation>Kein gezähltes Feld ist keine Zählung. Einige Felder zählen, oder die ganze Windel.</translation>
    </message>
    <message>
        <source>The number of cells</source>
        <translation>Die Zahl der Felder</translation>
    </message>
    <message>
        <source>The number of hours</source>
        <translation>Die Zahl der Stunden</translation>
    </message>
    <message>
        <source>When it was laid is not written down.</source>
        <translation>Wann sie eingeschoben wurde, ist nicht notiert.</translation>
    </message>
    <message>
        <source>You count %1 cells: the board has so many at the least.</source>
        <translation>Gezählt werden %1 Felder: So viele hat die Windel mindestens.</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::CheckController</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>product, yard</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>10 days after its end</source>
        <translation>10 Tage nach dem Ende</translation>
    </message>
    <message>
        <source>Best on</source>
        <translation>Am besten am</translation>
    </message>
    <message>
        <source>Can't tell</source>
        <translation>Unklar</translation>
    </message>
    <message>
        <source>Chance that it reached the mark</source>
        <translation>Wahrscheinlichkeit, dass das Ziel erreicht ist</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>It did not reach the mark</source>
        <translation>Das Ziel wurde nicht erreicht</translation>
    </message>
    <message>
        <source>It points to resistance</source>
        <translation>Deutet auf Resistenz</translation>
    </message>
    <message>
        <source>It worked</source>
        <translation>Es hat gewirkt</translation>
    </message>
    <message>
        <source>Killed</source>
        <translation>Abgetötet</translation>
    </message>
    <message>
        <source>Mites were carried in</source>
        <translation>Milben wurden eingeschleppt</translation>
    </message>
    <message>
        <source>Not known yet</source>
        <translation>Noch nicht bekannt</translation>
    </message>
    <message>
        <source>The mark</source>
        <translation>Das Ziel</translation>
    </message>
    <message>
        <source>Treated colonies washed before and after</source>
        <translation>Behandelte Völker, davor und danach ausgewaschen</translation>
    </message>
    <message>
        <source>Untreated ones to compare with</source>
        <translation>Unbehandelte zum Vergleich</translation>
    </message>
    <message>
        <source>Wash colony %1</source>
        <translation>Waschprobe: Volk %1</translation>
    </message>
    <message>
        <source>Wash from</source>
        <translation>Auswaschen ab</translation>
    </message>
    <message>
        <source>about %1, in 9 of 10 cases %2 to %3</source>
        <translation>etwa %1, in 9 von 10 Fällen %2 bis %3</translation>
    </message>
    <message>
        <source>one brood cycle after its end</source>
        <translation>einen Brutzyklus nach dem Ende</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ChoiceController</name>
    <message>
        <source>A usual colony's season, from one wash on; mites carried in are left out. The bands are the range: of the wash, of growth and of what the treatment was seen to kill.</source>
        <translation>Das Jahr eines üblichen Volks, ab einer Waschprobe; eingeschleppte Milben fehlen. Die Bänder sind die Spanne: der Waschprobe, der Zunahme und dessen, was die Behandlung nachweislich abtötet.</translation>
    </message>
    <message>
        <source>Begun %1 later, on %2</source>
        <translation>Beginn %1 später, am %2</translation>
    </message>
    <message>
        <source>Begun on %1</source>
        <translation>Beginn am %1</translation>
    </message>
    <message>
        <source>Course: %1 to %2, by the label. Begun on %3, it would end by %4, or %5.</source>
        <comment>days, days, day, day, day</comment>
        <translation>Anwendung: %1 bis %2, laut Packungsbeilage. Bei Beginn am %3 wäre sie am %4 zu Ende, oder am %5.</translation>
    </message>
    <message>
        <source>Course: %1, by the label. Begun on %2, it would end by %3.</source>
        <translation>Anwendung: %1, laut Packungsbeilage. Bei Beginn am %2 wäre sie am %3 zu Ende.</translation>
    </message>
    <message>
        <source>From the wash of %1, colony %2, the highest of them: %3 per 100.</source>
        <translation>Aus der Waschprobe vom %1, Volk %2, der höchsten: %3 je 100.</translation>
    </message>
    <message>
        <source>From the wash of %1: %2 per 100.</source>
        <translation>Aus der Waschprobe vom %1: %2 je 100.</translation>
    </message>
    <message>
        <source>Given once. Begun on %1, it ends that day.</source>
        <translation>Einmalige Gabe. Beginnt sie am %1, endet sie am selben Tag.</translation>
    </message>
    <message>
        <source>Honey: no super comes on, and no honey is taken, before the label's withdrawal is over.</source>
        <translation>Honig: Kein Honigraum kommt drauf und kein Honig wird entnommen, bevor die Wartezeit der Packungsbeilage vorbei ist.</translation>
    </message>
    <message>
        <source>No outlook: not washed in the last %1.</source>
        <translation>Kein Ausblick: letzte Waschprobe älter als %1.</translation>
    </message>
    <message>
        <source>The label in your hand and your local law outrank this app. How much to give stands on the label.</source>
        <translation>Die Packungsbeilage in der Hand und das örtliche Recht gehen dieser App vor. Wie viel zu geben ist, steht in der Packungsbeilage.</translation>
    </message>
    <message>
        <source>a choice of this app</source>
        <translation>eine Festlegung dieser App</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ColonyController</name>
    <message>
        <source>Boards and drone brood count other things than a wash: hold each against its own kind.</source>
        <translation>Windel und Drohnenbrut zählen anderes als eine Waschprobe: nur mit ihresgleichen vergleichen.</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Volk %1</translation>
    </message>
    <message>
        <source>Counted by several methods: their loads are made alike as far as is known, and differ more than loads of one method.</source>
        <translation>Mit verschiedenen Methoden gezählt: Die Befallswerte sind so weit wie bekannt angeglichen und weichen mehr voneinander ab als Werte einer einzigen Methode.</translation>
    </message>
    <message>
        <source>The label</source>
        <translation>Die Beschriftung</translation>
    </message>
    <message>
        <source>Wash this colony</source>
        <translation>Waschprobe nehmen</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::CountController</name>
    <message>
        <source>Cells with mites</source>
        <translation>Zellen mit Milben</translation>
    </message>
    <message>
        <source>Count one cell</source>
        <translation>Eine Zelle zählen</translation>
    </message>
    <message>
        <source>Count one mite</source>
        <translation>Eine Milbe zählen</translation>
    </message>
    <message>
        <source>Mites counted</source>
        <translation>Gezählte Milben</translation>
    </message>
    <message>
        <source>No cell opened is no count. Open some, or leave this count.</source>
        <translation>Keine geöffnete Zelle ist keine Zählung. Einige öffnen, oder diese Zählung verlassen.</translation>
    </message>
    <message>
        <source>The count</source>
        <translation>Die Zählung</translation>
    </message>
    <message>
        <source>The number of cells</source>
        <translation>Die Zahl der Zellen</translation>
    </message>
    <message numerus="yes">
        <source>You counted %n cell(s) with mites: so many at the least were opened.</source>
        <translation>
            <numerusform>%n Zelle mit Milben wurde gezählt: So viele wurden mindestens geöffnet.</numerusform>
            <numerusform>%n Zellen mit Milben wurden gezählt: So viele wurden mindestens geöffnet.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::EventController</name>
    <message numerus="yes">
        <source>%1, %n colony(ies)</source>
        <comment>yard and how many</comment>
        <translation>
            <numerusform>%1, %n Volk</numerusform>
            <numerusform>%1, %n Völker</numerusform>
        </translation>
    </message>
    <message>
        <source>Both sides covered is one frame.</source>
        <translation>Beide Seiten besetzt ist eine Wabe.</translation>
    </message>
    <message>
        <source>By your records no colony has supers on.</source>
        <translation>Laut Aufzeichnungen hat kein Volk einen Honigraum drauf.</translation>
    </message>
    <message>
        <source>By your records the supers are on all colonies already.</source>
        <translation>Laut Aufzeichnungen haben alle Völker den Honigraum schon drauf.</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Volk %1</translation>
    </message>
    <message>
        <source>Colony %1, %2</source>
        <comment>label, yard</comment>
        <translation>Volk %1, %2</translation>
    </message>
    <message>
        <source>Frames covered with bees</source>
        <translation>Besetzte Waben</translation>
    </message>
    <message>
        <source>Into which colony?</source>
        <translation>Mit welchem Volk?</translation>
    </message>
    <message>
        <source>It is made in this yard. Leave it empty where it went elsewhere.</source>
        <translation>Es entsteht an diesem Stand. Leer lassen, wenn es anderswohin kam.</translation>
    </message>
    <message>
        <source>Number of the new colony</source>
        <translation>Nummer des neuen Volks</translation>
    </message>
    <message>
        <source>Stock of the queen</source>
        <translation>Herkunft der Königin</translation>
    </message>
    <message>
        <source>The day</source>
        <translation>Der Tag</translation>
    </message>
    <message>
        <source>The number of frames</source>
        <translation>Die Zahl der Waben</translation>
    </message>
    <message>
        <source>The number of the new colony</source>
        <translation>Die Nummer des neuen Volks</translation>
    </message>
    <message>
        <source>There is a colony %1 in this yard already. Choose another number.</source>
        <translation>An diesem Stand gibt es schon ein Volk %1. Bitte eine andere Nummer wählen.</translation>
    </message>
    <message>
        <source>There is no other colony in this yard.</source>
        <translation>An diesem Stand gibt es kein anderes Volk.</translation>
    </message>
    <message>
        <source>There is no other yard yet. Make one first.</source>
        <translation>Es gibt noch keinen anderen Stand. Zuerst einen anlegen.</translation>
    </message>
    <message>
        <source>To which yard?</source>
        <translation>An welchen Stand?</translation>
    </message>
    <message>
        <source>Today, %1</source>
        <translation>Heute, %1</translation>
    </message>
    <message>
        <source>What did you see?</source>
        <translation>Was war zu sehen?</translation>
    </message>
    <message>
        <source>What happened?</source>
        <translation>Was ist geschehen?</translation>
    </message>
    <message>
        <source>Where she comes from, or nothing.</source>
        <translation>Woher sie stammt, oder nichts.</translation>
    </message>
    <message>
        <source>Which floor?</source>
        <translation>Welcher Boden?</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ExportController</name>
    <message>
        <source>%1: %2</source>
        <comment>what, where</comment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n date(s)</source>
        <translation>
            <numerusform>%n Termin</numerusform>
            <numerusform>%n Termine</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n place(s)</source>
        <translation>
            <numerusform>%n Ort</numerusform>
            <numerusform>%n Orte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s), one a treatment and colony</source>
        <translation>
            <numerusform>%n Zeile, eine je Behandlung und Volk</numerusform>
            <numerusform>%n Zeilen, eine je Behandlung und Volk</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n touch(es) of counting</source>
        <translation>
            <numerusform>%n Antippen beim Zählen</numerusform>
            <numerusform>%n Mal angetippt beim Zählen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es)</source>
        <translation>
            <numerusform>%n Waschprobe</numerusform>
            <numerusform>%n Waschproben</numerusform>
        </translation>
    </message>
    <message>
        <source>All yards</source>
        <translation>Alle Stände</translation>
    </message>
    <message>
        <source>All years</source>
        <translation>Alle Jahre</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>Kalender</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Volk %1</translation>
    </message>
    <message>
        <source>Counts</source>
        <translation>Zählungen</translation>
    </message>
    <message>
        <source>Last season</source>
        <translation>Vorige Saison</translation>
    </message>
    <message>
        <source>Map</source>
        <translation>Karte</translation>
    </message>
    <message>
        <source>One colony</source>
        <translation>Ein Volk</translation>
    </message>
    <message>
        <source>One yard</source>
        <translation>Ein Stand</translation>
    </message>
    <message>
        <source>Positions are blurred to about 1 km.</source>
        <translation>Positionen werden auf etwa 1 km verwischt.</translation>
    </message>
    <message>
        <source>Positions go out exact. Whoever gets the file knows where your hives stand.</source>
        <translation>Positionen gehen genau hinaus. Wer die Datei bekommt, weiß, wo die Völker stehen.</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Bericht</translation>
    </message>
    <message numerus="yes">
        <source>Report of %n page(s)</source>
        <translation>
            <numerusform>Bericht mit %n Seite</numerusform>
            <numerusform>Bericht mit %n Seiten</numerusform>
        </translation>
    </message>
    <message>
        <source>The report has no positions.</source>
        <translation>Der Bericht enthält keine Positionen.</translation>
    </message>
    <message>
        <source>This season</source>
        <translation>Diese Saison</translation>
    </message>
    <message>
        <source>Treatments</source>
        <translation>Behandlungen</translation>
    </message>
    <message>
        <source>Washes</source>
        <translation>Waschproben</translation>
    </message>
    <message>
        <source>Write the calendar</source>
        <translation>Kalender schreiben</translation>
    </message>
    <message>
        <source>Write the counts</source>
        <translation>Zählungen schreiben</translation>
    </message>
    <message>
        <source>Write the map</source>
        <translation>Karte schreiben</translation>
    </message>
    <message>
        <source>Write the report</source>
        <translation>Bericht schreiben</translation>
    </message>
    <message>
        <source>Write the treatments</source>
        <translation>Behandlungen schreiben</translation>
    </message>
    <message>
        <source>Write the washes</source>
        <translation>Waschproben schreiben</translation>
    </message>
    <message>
        <source>a table (CSV), a row a touch</source>
        <translation>Tabelle (CSV), eine Zeile je Antippen</translation>
    </message>
    <message>
        <source>a table (CSV), a row a wash</source>
        <translation>Tabelle (CSV), eine Zeile je Waschprobe</translation>
    </message>
    <message>
        <source>a table (CSV), all the law asks for</source>
        <translation>Tabelle (CSV), alles, was das Gesetz verlangt</translation>
    </message>
    <message>
        <source>all yards</source>
        <translation>alle Stände</translation>
    </message>
    <message>
        <source>for the inspector or the vet (PDF)</source>
        <translation>für Bienensachverständige oder Tierarztpraxis (PDF)</translation>
    </message>
    <message>
        <source>halfcup-counts-%1.csv</source>
        <comment>file name</comment>
        <translation>halfcup-zaehlungen-%1.csv</translation>
    </message>
    <message>
        <source>halfcup-map-%1.geojson</source>
        <comment>file name</comment>
        <translation>halfcup-karte-%1.geojson</translation>
    </message>
    <message>
        <source>halfcup-report-%1-%2.pdf</source>
        <comment>file name: subject, day</comment>
        <translation>halfcup-bericht-%1-%2.pdf</translation>
    </message>
    <message>
        <source>halfcup-season-%1.ics</source>
        <comment>file name</comment>
        <translation>halfcup-saison-%1.ics</translation>
    </message>
    <message>
        <source>halfcup-treatments-%1.csv</source>
        <comment>file name</comment>
        <translation>halfcup-behandlungen-%1.csv</translation>
    </message>
    <message>
        <source>halfcup-washes-%1.csv</source>
        <comment>file name</comment>
        <translation>halfcup-waschproben-%1.csv</translation>
    </message>
    <message>
        <source>the year ahead (iCalendar)</source>
        <translation>das kommende Jahr (iCalendar)</translation>
    </message>
    <message>
        <source>yards and washes (GeoJSON)</source>
        <translation>Stände und Waschproben (GeoJSON)</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::FolderController</name>
    <message>
        <source>%1 is a file. A folder is needed.</source>
        <translation>%1 ist eine Datei. Nötig ist ein Ordner.</translation>
    </message>
    <message>
        <source>%1 is damaged. What is intact in it was taken; a good copy completes it.</source>
        <translation>%1 ist beschädigt. Was darin heil ist, wurde übernommen; eine gute Kopie ergänzt es.</translation>
    </message>
    <message>
        <source>%1 is still on its way.</source>
        <translation>%1 ist noch unterwegs.</translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) came in, new or changed.</source>
        <translation>
            <numerusform>%n Eintrag kam herein, neu oder geändert.</numerusform>
            <numerusform>%n Einträge kamen herein, neu oder geändert.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) changed on both phones: the later value was kept.</source>
        <translation>
            <numerusform>%n Eintrag wurde auf beiden Telefonen geändert: Der spätere Wert wurde behalten.</numerusform>
            <numerusform>%n Einträge wurden auf beiden Telefonen geändert: Der spätere Wert wurde behalten.</numerusform>
        </translation>
    </message>
    <message>
        <source>Halfcup exchange</source>
        <comment>name of a folder</comment>
        <translation>Halfcup-Austausch</translation>
    </message>
    <message>
        <source>Last exchanged at %1.</source>
        <translation>Zuletzt ausgetauscht um %1.</translation>
    </message>
    <message>
        <source>Not looked into since the start.</source>
        <translation>Seit dem Start nicht nachgesehen.</translation>
    </message>
    <message>
        <source>Not used yet.</source>
        <translation>Noch nicht benutzt.</translation>
    </message>
    <message>
        <source>Nothing can be written into %1.</source>
        <translation>In %1 kann nichts geschrieben werden.</translation>
    </message>
    <message>
        <source>Nothing new came in.</source>
        <translation>Es kam nichts Neues.</translation>
    </message>
    <message>
        <source>Paused, because you took back what came last. "Exchange now" takes it in again.</source>
        <translation>Angehalten, weil das zuletzt Gekommene zurückgenommen wurde. „Jetzt austauschen“ liest es wieder ein.</translation>
    </message>
    <message>
        <source>The folder %1 cannot be read. Nothing was exchanged; your records are safe.</source>
        <translation>Der Ordner %1 kann nicht gelesen werden. Nichts wurde ausgetauscht; die Aufzeichnungen sind sicher.</translation>
    </message>
    <message>
        <source>There is no folder %1, and it could not be made.</source>
        <translation>Einen Ordner %1 gibt es nicht, und er konnte nicht angelegt werden.</translation>
    </message>
    <message>
        <source>What you recorded is in the folder for the others.</source>
        <translation>Was hier notiert wurde, liegt für die anderen im Ordner.</translation>
    </message>
    <message>
        <source>Write the whole way to the folder, beginning with /.</source>
        <translation>Den ganzen Pfad zum Ordner eingeben, beginnend mit /.</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::HereController</name>
    <message>
        <source>%1 from here</source>
        <translation>%1 von hier</translation>
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
        <translation>Volk %1 wartet bei: %2</translation>
    </message>
    <message>
        <source>End the round</source>
        <translation>Runde beenden</translation>
    </message>
    <message>
        <source>Go on with the wash</source>
        <translation>Waschprobe fortsetzen</translation>
    </message>
    <message>
        <source>Looking for the position</source>
        <translation>Position wird gesucht</translation>
    </message>
    <message>
        <source>No position</source>
        <translation>Keine Position</translation>
    </message>
    <message>
        <source>No yard here</source>
        <translation>Kein Stand hier</translation>
    </message>
    <message>
        <source>No yard yet</source>
        <translation>Noch kein Stand</translation>
    </message>
    <message>
        <source>Picked by you</source>
        <translation>Selbst gewählt</translation>
    </message>
    <message>
        <source>Position known within %1</source>
        <translation>Position auf %1 genau bekannt</translation>
    </message>
    <message>
        <source>Round: %1 of %2 washed</source>
        <translation>Runde: %1 von %2 ausgewaschen</translation>
    </message>
    <message>
        <source>Wash the jars</source>
        <translation>Gläser auswaschen</translation>
    </message>
    <message>
        <source>Which yard is this?</source>
        <translation>Welcher Stand ist das?</translation>
    </message>
    <message>
        <source>You are here, within %1</source>
        <translation>Du bist hier, auf %1 genau</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::HistoryController</name>
    <message>
        <source>%1 at %2, %3</source>
        <comment>day, time, phone</comment>
        <translation>%1 um %2, %3</translation>
    </message>
    <message>
        <source>%1 is put back: %2.</source>
        <comment>field, value</comment>
        <translation>%1 ist wiederhergestellt: %2.</translation>
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
        <translation>%1: %2. Was jetzt dort steht, bleibt in dieser Liste.</translation>
    </message>
    <message>
        <source>Another colony of this yard is called %1 now. Give that one another name first.</source>
        <translation>Ein anderes Volk an diesem Stand heißt jetzt %1. Diesem zuerst einen anderen Namen geben.</translation>
    </message>
    <message>
        <source>Colony %1, %2</source>
        <comment>colony, yard</comment>
        <translation>Volk %1, %2</translation>
    </message>
    <message>
        <source>It is back in the lists.</source>
        <translation>Es ist wieder in den Listen.</translation>
    </message>
    <message>
        <source>another phone, %1</source>
        <translation>anderes Telefon, %1</translation>
    </message>
    <message>
        <source>as it is now</source>
        <translation>wie es jetzt ist</translation>
    </message>
    <message>
        <source>colony %1</source>
        <translation>Volk %1</translation>
    </message>
    <message>
        <source>no phone</source>
        <translation>kein Telefon</translation>
    </message>
    <message>
        <source>so it is now</source>
        <translation>so ist es jetzt</translation>
    </message>
    <message>
        <source>this phone</source>
        <translation>dieses Telefon</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ImportController</name>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 und %n mehr</numerusform>
            <numerusform>%1 und %n mehr</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new colony(ies)</source>
        <translation>
            <numerusform>%n neues Volk</numerusform>
            <numerusform>%n neue Völker</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new yard(s)</source>
        <translation>
            <numerusform>%n neuer Stand</numerusform>
            <numerusform>%n neue Stände</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) in question</source>
        <translation>
            <numerusform>%n fragliche Zeile</numerusform>
            <numerusform>%n fragliche Zeilen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) refused</source>
        <translation>
            <numerusform>%n abgelehnte Zeile</numerusform>
            <numerusform>%n abgelehnte Zeilen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es) here already</source>
        <translation>
            <numerusform>%n Waschprobe schon hier</numerusform>
            <numerusform>%n Waschproben schon hier</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es) kept. Taking the same table in again adds nothing.</source>
        <translation>
            <numerusform>%n Waschprobe gespeichert. Dieselbe Tabelle noch einmal einzulesen fügt nichts hinzu.</numerusform>
            <numerusform>%n Waschproben gespeichert. Dieselbe Tabelle noch einmal einzulesen fügt nichts hinzu.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es) to keep</source>
        <translation>
            <numerusform>%n Waschprobe zu speichern</numerusform>
            <numerusform>%n Waschproben zu speichern</numerusform>
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
        <translation>Tabelle früherer Waschproben</translation>
    </message>
    <message>
        <source>A table of washes, saved as CSV or text by any spreadsheet. Its first row names the columns.</source>
        <translation>Eine Tabelle von Waschproben, von einem beliebigen Tabellenprogramm als CSV oder Text gespeichert. Die erste Zeile benennt die Spalten.</translation>
    </message>
    <message>
        <source>Choose a table of washes, saved as CSV or text by any spreadsheet. Its first row names the columns.</source>
        <translation>Eine Tabelle mit Waschproben wählen, aus einer Tabellenkalkulation als CSV oder Text gespeichert. Die erste Zeile nennt die Spalten.</translation>
    </message>
    <message>
        <source>Colony %1, %2</source>
        <comment>colony, yard</comment>
        <translation>Volk %1, %2</translation>
    </message>
    <message>
        <source>Day first</source>
        <translation>Tag zuerst</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Earlier washes</source>
        <translation>Frühere Waschproben</translation>
    </message>
    <message>
        <source>First say what becomes of the rows in question: keep them, or leave them out.</source>
        <translation>Zuerst angeben, was mit den fraglichen Zeilen geschieht: speichern oder weglassen.</translation>
    </message>
    <message>
        <source>From a table: %1</source>
        <comment>a file's name</comment>
        <translation>Aus einer Tabelle: %1</translation>
    </message>
    <message numerus="yes">
        <source>Keep %n wash(es)</source>
        <translation>
            <numerusform>%n Waschprobe speichern</numerusform>
            <numerusform>%n Waschproben speichern</numerusform>
        </translation>
    </message>
    <message>
        <source>Keep them</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Leave them out</source>
        <translation>Weglassen</translation>
    </message>
    <message>
        <source>Line %1</source>
        <comment>line of the file</comment>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>Line %1, colony %2</source>
        <comment>line of the file</comment>
        <translation>Zeile %1, Volk %2</translation>
    </message>
    <message>
        <source>Look at the washes</source>
        <translation>Waschproben ansehen</translation>
    </message>
    <message>
        <source>Month first</source>
        <translation>Monat zuerst</translation>
    </message>
    <message>
        <source>No column</source>
        <translation>Keine Spalte</translation>
    </message>
    <message>
        <source>No table was found. Save it as CSV and put it into one of these folders: %1.</source>
        <translation>Keine Tabelle gefunden. Als CSV speichern und in einen dieser Ordner legen: %1.</translation>
    </message>
    <message>
        <source>They stay in the table; nothing of them is kept.</source>
        <translation>Sie bleiben in der Tabelle; nichts davon wird gespeichert.</translation>
    </message>
    <message>
        <source>This would be kept</source>
        <translation>Das würde gespeichert</translation>
    </message>
    <message>
        <source>Which column is what?</source>
        <translation>Welche Spalte ist was?</translation>
    </message>
    <message numerus="yes">
        <source>and %n more row(s)</source>
        <translation>
            <numerusform>und %n weitere Zeile</numerusform>
            <numerusform>und %n weitere Zeilen</numerusform>
        </translation>
    </message>
    <message>
        <source>no column</source>
        <translation>keine Spalte</translation>
    </message>
    <message>
        <source>none on this phone</source>
        <translation>keiner auf diesem Telefon</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::LinesController</name>
    <message>
        <source>%1 all year</source>
        <translation>%1 das ganze Jahr</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <comment>line, month</comment>
        <translation>%1 ab %2</translation>
    </message>
    <message>
        <source>%1 in %2; the yard's own line in other months</source>
        <translation>%1 im %2; in anderen Monaten die eigene Schwelle des Stands</translation>
    </message>
    <message>
        <source>%1 per 100</source>
        <translation>%1 je 100</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a value's title and source</comment>
        <translation>%1: %2</translation>
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
        <translation>Nach Jahreszeit: %1</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>Ab %1</translation>
    </message>
    <message>
        <source>From another version: %1</source>
        <translation>Aus einer anderen Version: %1</translation>
    </message>
    <message>
        <source>No own line</source>
        <translation>Ohne eigene Schwelle</translation>
    </message>
    <message>
        <source>One line all year</source>
        <translation>Eine fürs ganze Jahr</translation>
    </message>
    <message>
        <source>Own line %1</source>
        <translation>Eigene Schwelle %1</translation>
    </message>
    <message>
        <source>Set by you.</source>
        <translation>Selbst gesetzt.</translation>
    </message>
    <message>
        <source>This version has no figures for it. The yard's own line holds.</source>
        <translation>Diese Version hat dafür keine Zahlen. Es gilt die Schwelle des Stands.</translation>
    </message>
    <message>
        <source>Today %1</source>
        <translation>Heute %1</translation>
    </message>
    <message>
        <source>Treat line %1</source>
        <translation>Behandlungsschwelle %1</translation>
    </message>
    <message>
        <source>Your own line: %1</source>
        <translation>Eigene Schwelle: %1</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::LoadChartController</name>
    <message>
        <source>%1: %2 per 100, between %3 and %4. %5.</source>
        <comment>day, load, lower end, upper end, method</comment>
        <translation>%1: %2 je 100, zwischen %3 und %4. %5.</translation>
    </message>
    <message>
        <source>%1: none found, at most %2 per 100. %3.</source>
        <comment>day, load, method</comment>
        <translation>%1: keine gefunden, höchstens %2 je 100. %3.</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::MethodsController</name>
    <message>
        <source>Colony %1, %2</source>
        <comment>colony, yard</comment>
        <translation>Volk %1, %2</translation>
    </message>
    <message>
        <source>your usual one</source>
        <translation>die übliche</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::OnDayController</name>
    <message>
        <source>%1 has not come yet. Nobody can say what will be so.</source>
        <translation>Der %1 kommt erst noch. Was dann sein wird, kann niemand sagen.</translation>
    </message>
    <message>
        <source>%1 per 100 on %2</source>
        <comment>a load and a date</comment>
        <translation>%1 je 100 am %2</translation>
    </message>
    <message>
        <source>All colonies</source>
        <translation>Alle Völker</translation>
    </message>
    <message>
        <source>Batch: %1</source>
        <translation>Charge: %1</translation>
    </message>
    <message>
        <source>Before its records</source>
        <translation>Vor den Aufzeichnungen</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Volk %1</translation>
    </message>
    <message>
        <source>Course: %1</source>
        <translation>Anwendung: %1</translation>
    </message>
    <message>
        <source>Given by: %1</source>
        <translation>Ausgeführt von: %1</translation>
    </message>
    <message>
        <source>Honey</source>
        <translation>Honig</translation>
    </message>
    <message>
        <source>In the hive</source>
        <translation>Im Volk</translation>
    </message>
    <message>
        <source>In the hive: %1</source>
        <translation>Im Volk: %1</translation>
    </message>
    <message>
        <source>It stood in</source>
        <translation>Standort</translation>
    </message>
    <message>
        <source>Its state</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Last wash before</source>
        <translation>Letzte Waschprobe davor</translation>
    </message>
    <message>
        <source>No colony</source>
        <translation>Kein Volk</translation>
    </message>
    <message>
        <source>No treatment in the hive</source>
        <translation>Keine Behandlung im Volk</translation>
    </message>
    <message>
        <source>No treatment.</source>
        <translation>Keine Behandlung.</translation>
    </message>
    <message>
        <source>None stood here on that day, by your records.</source>
        <translation>Laut Aufzeichnungen stand an diesem Tag keines hier.</translation>
    </message>
    <message>
        <source>None.</source>
        <translation>Keine.</translation>
    </message>
    <message>
        <source>Nothing was written down of this colony until after this day.</source>
        <translation>Über dieses Volk wurde erst nach diesem Tag etwas notiert.</translation>
    </message>
    <message>
        <source>On %1</source>
        <translation>Am %1</translation>
    </message>
    <message>
        <source>Over, but honey waits</source>
        <translation>Vorbei, aber Honig muss warten</translation>
    </message>
    <message>
        <source>Prescribed by: %1</source>
        <translation>Verschrieben von: %1</translation>
    </message>
    <message>
        <source>Proof of purchase: %1</source>
        <translation>Kaufbeleg: %1</translation>
    </message>
    <message>
        <source>Quantity, all colonies: %1</source>
        <translation>Menge, alle Völker: %1</translation>
    </message>
    <message>
        <source>Registered as %1</source>
        <translation>Registriert als %1</translation>
    </message>
    <message>
        <source>Supplier: %1</source>
        <translation>Bezugsquelle: %1</translation>
    </message>
    <message>
        <source>Taken out: %1</source>
        <translation>Entnommen: %1</translation>
    </message>
    <message>
        <source>The day</source>
        <translation>Der Tag</translation>
    </message>
    <message>
        <source>To be taken out: %1</source>
        <translation>Zu entnehmen: %1</translation>
    </message>
    <message>
        <source>Today, %1</source>
        <translation>Heute, %1</translation>
    </message>
    <message>
        <source>Type a day, such as 1 July.</source>
        <translation>Einen Tag eingeben, zum Beispiel 1. Juli.</translation>
    </message>
    <message>
        <source>Use by: %1</source>
        <translation>Verwendbar bis: %1</translation>
    </message>
    <message>
        <source>Withdrawal: %1</source>
        <translation>Wartezeit: %1</translation>
    </message>
    <message>
        <source>Withdrawal: not written down</source>
        <translation>Wartezeit: nicht notiert</translation>
    </message>
    <message>
        <source>not written down</source>
        <translation>nicht notiert</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::OtherAnswerController</name>
    <message>
        <source>%1 in %2 h</source>
        <comment>mites, hours</comment>
        <translation>%1 in %2 h</translation>
    </message>
    <message>
        <source>%1 mites a day</source>
        <translation>%1 Milben pro Tag</translation>
    </message>
    <message>
        <source>%1 mites in the colony for one a day (%2 to %3)</source>
        <translation>%1 Milben im Volk auf eine pro Tag (%2 bis %3)</translation>
    </message>
    <message>
        <source>%1 of %2 cells</source>
        <comment>counted, all</comment>
        <translation>%1 von %2 Feldern</translation>
    </message>
    <message>
        <source>%1 to %2 mites a day</source>
        <translation>%1 bis %2 Milben pro Tag</translation>
    </message>
    <message>
        <source>%1 with mites of %2 opened</source>
        <translation>%1 mit Milben von %2 geöffneten</translation>
    </message>
    <message>
        <source>A board is weak evidence beside a wash: fall rises when brood hatches, when bees groom or rob, and just after a treatment.</source>
        <translation>Eine Windel ist ein schwaches Zeugnis neben einer Waschprobe: Der Milbenfall steigt, wenn Brut schlüpft, wenn Bienen sich putzen oder räubern und gleich nach einer Behandlung.</translation>
    </message>
    <message>
        <source>About %1. It could be anything from %2.</source>
        <translation>Etwa %1. Möglich ist alles von %2.</translation>
    </message>
    <message>
        <source>As mites per 100 bees, by the season's factor: about %1, anything from %2 to %3.</source>
        <translation>Als Milben je 100 Bienen, mit dem Faktor der Jahreszeit: etwa %1, möglich von %2 bis %3.</translation>
    </message>
    <message>
        <source>Can't tell yet</source>
        <translation>Noch unklar</translation>
    </message>
    <message>
        <source>Chance that the true fall is over %1: %2</source>
        <translation>Wahrscheinlichkeit, dass der wahre Milbenfall über %1 liegt: %2</translation>
    </message>
    <message>
        <source>Chance that the true share is over %1: %2</source>
        <translation>Wahrscheinlichkeit, dass der wahre Anteil über %1 liegt: %2</translation>
    </message>
    <message>
        <source>Close to the handbook's line</source>
        <translation>Nah an der Schwelle im Handbuch</translation>
    </message>
    <message>
        <source>Colony %1, %2 · %3</source>
        <comment>colony, yard, method</comment>
        <translation>Volk %1, %2 · %3</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Gezählt</translation>
    </message>
    <message>
        <source>Factor of the season</source>
        <translation>Faktor der Jahreszeit</translation>
    </message>
    <message>
        <source>It lay for less than a day: fall differs between day and night.</source>
        <translation>Sie lag weniger als einen Tag: Der Milbenfall ist tags und nachts verschieden.</translation>
    </message>
    <message>
        <source>Lay the board again for two or three days, or wash half a cup.</source>
        <translation>Windel noch einmal für zwei, drei Tage einschieben, oder eine halbe Tasse auswaschen.</translation>
    </message>
    <message>
        <source>Mites gather in drone brood: its share is far higher than a load, and the two cannot be held against each other.</source>
        <translation>Milben sammeln sich in Drohnenbrut: Ihr Anteil ist viel höher als ein Befall, und beide lassen sich nicht vergleichen.</translation>
    </message>
    <message>
        <source>No load in mites per 100 bees can be read from it: that depends on how much drone brood the colony has.</source>
        <translation>Ein Befall in Milben je 100 Bienen lässt sich daraus nicht ablesen: Das hängt davon ab, wie viel Drohnenbrut das Volk hat.</translation>
    </message>
    <message>
        <source>None found. It can still be anything from %1 of 100 drone cells.</source>
        <translation>Keine gefunden. Trotzdem können %1 von 100 Drohnenzellen befallen sein.</translation>
    </message>
    <message>
        <source>None found. The fall can still be anything from %1 mites a day.</source>
        <translation>Keine gefunden. Es können trotzdem %1 Milben pro Tag fallen.</translation>
    </message>
    <message>
        <source>Nothing to do on its word. The next wash stays due as it was.</source>
        <translation>Auf diese Zählung hin ist nichts zu tun. Die nächste Waschprobe bleibt fällig wie bisher.</translation>
    </message>
    <message>
        <source>Of the board</source>
        <translation>Von der Windel</translation>
    </message>
    <message>
        <source>Open more cells, or wash half a cup.</source>
        <translation>Mehr Zellen öffnen, oder eine halbe Tasse auswaschen.</translation>
    </message>
    <message>
        <source>Over the handbook's line</source>
        <translation>Über der Schwelle im Handbuch</translation>
    </message>
    <message>
        <source>Taken on %1 at %2, no position</source>
        <translation>Aufgenommen am %1 um %2, ohne Position</translation>
    </message>
    <message>
        <source>Taken on %1 at %2, within %3</source>
        <translation>Aufgenommen am %1 um %2, auf %3 genau</translation>
    </message>
    <message>
        <source>The fall of this board</source>
        <translation>Der Milbenfall dieser Windel</translation>
    </message>
    <message>
        <source>The handbook has no line for it in this month.</source>
        <translation>Das Handbuch hat dafür in diesem Monat keine Schwelle.</translation>
    </message>
    <message>
        <source>The share of this brood</source>
        <translation>Der Anteil dieser Brut</translation>
    </message>
    <message>
        <source>Under the handbook's line</source>
        <translation>Unter der Schwelle im Handbuch</translation>
    </message>
    <message>
        <source>Wash half a cup before you decide: this count alone should not.</source>
        <translation>Vor der Entscheidung eine halbe Tasse auswaschen: Diese Zählung allein genügt nicht.</translation>
    </message>
    <message>
        <source>from memory; the range is our own choice</source>
        <translation>aus dem Gedächtnis; die Spanne ist unsere Festlegung</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::OwnScoopsController</name>
    <message>
        <source>%1 bees</source>
        <translation>%1 Bienen</translation>
    </message>
    <message>
        <source>%1 bees in %2 are far from the usual %3. Is that what you counted?</source>
        <translation>%1 Bienen in %2 sind weit vom Üblichen, %3. Wurde das so gezählt?</translation>
    </message>
    <message numerus="yes">
        <source>%1 bees in %2, from %n counted scoop(s)</source>
        <translation>
            <numerusform>%1 Bienen in %2, aus %n ausgezähltem Becher</numerusform>
            <numerusform>%1 Bienen in %2, aus %n ausgezählten Bechern</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 g are 100 bees. %2</source>
        <comment>grams, source</comment>
        <translation>%1 g sind 100 Bienen. %2</translation>
    </message>
    <message>
        <source>%1, counted on %2</source>
        <comment>scoop, day</comment>
        <translation>%1, gezählt am %2</translation>
    </message>
    <message>
        <source>Alive</source>
        <translation>Lebend</translation>
    </message>
    <message>
        <source>Colony %1 · %2 in %3</source>
        <comment>colony, mites, scoop</comment>
        <translation>Volk %1 · %2 in %3</translation>
    </message>
    <message>
        <source>Colony %1 · %2, counted on %3</source>
        <comment>colony, scoop, day</comment>
        <translation>Volk %1 · %2, gezählt am %3</translation>
    </message>
    <message>
        <source>Drained</source>
        <translation>Abgetropft</translation>
    </message>
    <message>
        <source>Drained bees weigh nearly twice what live ones do: say first which they are.</source>
        <translation>Abgetropfte Bienen wiegen fast doppelt so viel wie lebende: zuerst angeben, welche es sind.</translation>
    </message>
    <message>
        <source>It was taken to hold about %1 bees.</source>
        <translation>Angenommen waren etwa %1 Bienen.</translation>
    </message>
    <message>
        <source>Nine of ten scoops hold %1 to %2. The book says %3.</source>
        <translation>Neun von zehn Bechern fassen %1 bis %2. Das Handbuch sagt %3.</translation>
    </message>
    <message>
        <source>No scoop counted yet: %1 bees in %2, by the book</source>
        <translation>Noch kein Becher ausgezählt: %1 Bienen in %2, laut Handbuch</translation>
    </message>
    <message>
        <source>Say first whether the bees are drained or alive.</source>
        <translation>Zuerst angeben, ob die Bienen abgetropft oder lebend sind.</translation>
    </message>
    <message>
        <source>The mass in grams</source>
        <translation>Das Gewicht in Gramm</translation>
    </message>
    <message>
        <source>The number of bees</source>
        <translation>Die Zahl der Bienen</translation>
    </message>
    <message>
        <source>far from the usual, and you stood by it</source>
        <translation>weit vom Üblichen, und so bestätigt</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::PlanController</name>
    <message numerus="yes">
        <source>%1, %n record(s)</source>
        <comment>a file</comment>
        <translation>
            <numerusform>%1, %n Eintrag</numerusform>
            <numerusform>%1, %n Einträge</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) taken in. Taking the same file in again changes nothing.</source>
        <translation>
            <numerusform>%n Eintrag eingelesen. Dieselbe Datei noch einmal einzulesen ändert nichts.</numerusform>
            <numerusform>%n Einträge eingelesen. Dieselbe Datei noch einmal einzulesen ändert nichts.</numerusform>
        </translation>
    </message>
    <message>
        <source>, </source>
        <comment>between folders</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>All that %1 brought goes again, and every record is as it was before. Taking the same file in brings it back.</source>
        <translation>Alles, was %1 brachte, geht wieder, und jeder Eintrag ist wie zuvor. Dieselbe Datei noch einmal einzulesen bringt es zurück.</translation>
    </message>
    <message>
        <source>Choose the file that the other phone handed on. Nothing is kept before you have seen what is in it.</source>
        <translation>Die Datei wählen, die das andere Telefon weitergegeben hat. Nichts wird gespeichert, bevor zu sehen war, was darin steht.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Files that another phone wrote, newest first. Nothing is kept before you have seen what is in one.</source>
        <translation>Dateien von anderen Telefonen, neueste zuerst. Nichts wird gespeichert, bevor zu sehen war, was darin steht.</translation>
    </message>
    <message>
        <source>It cannot be taken back any more: something that was written down since hangs on it. Nothing was changed.</source>
        <translation>Es kann nicht mehr zurückgenommen werden: Etwas, das seither notiert wurde, hängt daran. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>It held %1.</source>
        <comment>that phone; 3 yards, 17 colonies, 85 washes</comment>
        <translation>Bestand dort: %1.</translation>
    </message>
    <message>
        <source>No file from another phone was found. Put it into one of these folders: %1.</source>
        <translation>Keine Datei von einem anderen Telefon gefunden. In einen dieser Ordner legen: %1.</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Wird gelesen…</translation>
    </message>
    <message>
        <source>Take in a file</source>
        <translation>Datei einlesen</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Einlesen</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Eingelesen</translation>
    </message>
    <message>
        <source>The copy of your records that is made first could not be written. Nothing was taken in. Make room, then do it again.</source>
        <translation>Die Kopie der Aufzeichnungen, die zuerst gemacht wird, konnte nicht geschrieben werden. Nichts wurde eingelesen. Platz schaffen, dann noch einmal.</translation>
    </message>
    <message>
        <source>The file, or what is kept here, has changed since you looked. This is what it would do now.</source>
        <translation>Die Datei oder das hier Gespeicherte hat sich seit dem Ansehen geändert. Das würde sie jetzt bewirken.</translation>
    </message>
    <message>
        <source>What %1 brought was taken back. Taking the file in again brings it back.</source>
        <translation>Was %1 brachte, wurde zurückgenommen. Die Datei noch einmal einzulesen bringt es zurück.</translation>
    </message>
    <message>
        <source>What it brings</source>
        <translation>Was sie bringt</translation>
    </message>
    <message>
        <source>none on this phone</source>
        <translation>keiner auf diesem Telefon</translation>
    </message>
    <message>
        <source>on %1 at %2</source>
        <comment>a day, a time</comment>
        <translation>am %1 um %2</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>zurückgenommen</translation>
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
            <numerusform>%n Angabe war nicht lesbar und ist verloren; es können mehr sein.</numerusform>
            <numerusform>%n Angaben waren nicht lesbar und sind verloren; es können mehr sein.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n yard(s) or colony(ies) lost their name and stand there without it.</source>
        <translation>
            <numerusform>%n Stand oder Volk hat den Namen verloren und steht ohne ihn da.</numerusform>
            <numerusform>%n Stände oder Völker haben den Namen verloren und stehen ohne ihn da.</numerusform>
        </translation>
    </message>
    <message>
        <source>Close Halfcup</source>
        <translation>Halfcup schließen</translation>
    </message>
    <message>
        <source>Halfcup can be started again</source>
        <translation>Halfcup kann wieder gestartet werden</translation>
    </message>
    <message>
        <source>Halfcup cannot open its records</source>
        <translation>Halfcup kann seine Aufzeichnungen nicht öffnen</translation>
    </message>
    <message>
        <source>No record of Halfcup can be read in it. It was left as it is.</source>
        <translation>Darin lässt sich kein Eintrag von Halfcup lesen. Die Datei blieb, wie sie ist.</translation>
    </message>
    <message>
        <source>Nothing is known to be missing.</source>
        <translation>Soweit bekannt, fehlt nichts.</translation>
    </message>
    <message numerus="yes">
        <source>Of %n record(s) too little was read to show them; a merge with another phone may complete them.</source>
        <translation>
            <numerusform>Von %n Eintrag war zu wenig lesbar, um ihn zu zeigen; das Zusammenführen mit einem anderen Telefon kann ihn ergänzen.</numerusform>
            <numerusform>Von %n Einträgen war zu wenig lesbar, um sie zu zeigen; das Zusammenführen mit einem anderen Telefon kann sie ergänzen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Part of the file could not be read. Nothing is known to be missing, but look through your records.</source>
        <translation>Ein Teil der Datei war nicht lesbar. Soweit bekannt, fehlt nichts; sehen Sie Ihre Aufzeichnungen trotzdem durch.</translation>
    </message>
    <message>
        <source>Put %1 back? Your records become what is in it. What lies there now is not thrown away: it stays beside them.</source>
        <translation>%1 wiederherstellen? Ihre Aufzeichnungen werden zu dem, was darin steht. Was jetzt da liegt, wird nicht weggeworfen: Es bleibt daneben erhalten.</translation>
    </message>
    <message>
        <source>Saved: %1.</source>
        <comment>yards, colonies, washes, treatments</comment>
        <translation>Gerettet: %1.</translation>
    </message>
    <message>
        <source>Start Halfcup</source>
        <translation>Halfcup starten</translation>
    </message>
    <message>
        <source>Start again</source>
        <translation>Neu starten</translation>
    </message>
    <message>
        <source>The damaged file is kept as %1.</source>
        <translation>Die beschädigte Datei bleibt als %1 erhalten.</translation>
    </message>
    <message>
        <source>Yard whose name is lost</source>
        <translation>Stand, dessen Name verloren ist</translation>
    </message>
    <message>
        <source>Your records were written by a newer Halfcup. They are safe and unchanged; this version cannot read them. Start again where there is a network: the newer version comes by itself.</source>
        <translation>Die Aufzeichnungen wurden von einem neueren Halfcup geschrieben. Sie sind sicher und unverändert; diese Version kann sie nicht lesen. Wo es ein Netz gibt, neu starten: Die neuere Version kommt von selbst.</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::RoundController</name>
    <message>
        <source>%1 of %2 colonies</source>
        <translation>%1 von %2 Völkern</translation>
    </message>
    <message>
        <source>%1 of %2 washed</source>
        <translation>%1 von %2 ausgewaschen</translation>
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
        <translation>%1, ausgelost.</translation>
    </message>
    <message>
        <source>%1, picked by you: it holds only if these are like the others.</source>
        <comment>from so many</comment>
        <translation>%1, selbst gewählt: gilt nur, wenn diese wie die anderen sind.</translation>
    </message>
    <message>
        <source>%1.</source>
        <comment>from so many</comment>
        <translation>%1.</translation>
    </message>
    <message>
        <source>About %1 mites on every 100 bees in this yard. It could be anything from %2 to %3.</source>
        <translation>Etwa %1 Milben je 100 Bienen an diesem Stand. Möglich ist alles von %2 bis %3.</translation>
    </message>
    <message>
        <source>All %1 colonies</source>
        <translation>Alle %1 Völker</translation>
    </message>
    <message>
        <source>All are washed, and neither side of the line is settled. End the round to see how near it is.</source>
        <translation>Alle sind ausgewaschen, und keine Seite der Schwelle steht fest. Runde beenden, um zu sehen, wie nah der Stand daran ist.</translation>
    </message>
    <message>
        <source>All are washed: the yard is over its line of %1.</source>
        <translation>Alle sind ausgewaschen: Der Stand liegt über seiner Schwelle von %1.</translation>
    </message>
    <message>
        <source>All are washed: the yard is under its line of %1.</source>
        <translation>Alle sind ausgewaschen: Der Stand liegt unter seiner Schwelle von %1.</translation>
    </message>
    <message>
        <source>Chance that the yard's load is over %1: %2</source>
        <translation>Wahrscheinlichkeit, dass der Befall des Stands über %1 liegt: %2</translation>
    </message>
    <message>
        <source>Colonies have to be chosen by chance, or all washed. Picking the strongest makes the figure too high, and no sum can mend that.</source>
        <translation>Die Völker müssen zufällig gewählt oder alle ausgewaschen werden. Die stärksten auszusuchen macht die Zahl zu hoch, und keine Rechnung bringt das in Ordnung.</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Volk %1</translation>
    </message>
    <message>
        <source>Counted another way than the others, left out: colony %1.</source>
        <translation>Anders gezählt als die übrigen, ausgelassen: Volk %1.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>End the round</source>
        <translation>Runde beenden</translation>
    </message>
    <message>
        <source>Even all of them, one wash each, leave a wide range at the %1 per 100 last found here.</source>
        <translation>Selbst alle, mit je einer Waschprobe, lassen bei den zuletzt hier gefundenen %1 je 100 eine weite Spanne.</translation>
    </message>
    <message>
        <source>Far above the others: colony %1. Look at it by itself.</source>
        <comment>one or more labels</comment>
        <translation>Weit über den anderen: Volk %1. Für sich ansehen.</translation>
    </message>
    <message>
        <source>Figures no wash can have, left out: colony %1.</source>
        <translation>Zahlen, die keine Waschprobe haben kann, ausgelassen: Volk %1.</translation>
    </message>
    <message>
        <source>From %1 of the %2 in this yard</source>
        <translation>Aus %1 von %2 an diesem Stand</translation>
    </message>
    <message>
        <source>No answer</source>
        <translation>Kein Ergebnis</translation>
    </message>
    <message>
        <source>No colony lives in this yard.</source>
        <translation>An diesem Stand lebt kein Volk.</translation>
    </message>
    <message>
        <source>No colony was washed in this round.</source>
        <translation>In dieser Runde wurde kein Volk ausgewaschen.</translation>
    </message>
    <message>
        <source>No longer in this yard, left out: colony %1.</source>
        <translation>Nicht mehr an diesem Stand, ausgelassen: Volk %1.</translation>
    </message>
    <message>
        <source>None found. The yard's load can still be anything from 0 to %1 mites on every 100 bees.</source>
        <translation>Keine gefunden. Der Befall des Stands kann trotzdem 0 bis %1 Milben je 100 Bienen betragen.</translation>
    </message>
    <message>
        <source>Not washed: colony %1.</source>
        <translation>Nicht ausgewaschen: Volk %1.</translation>
    </message>
    <message>
        <source>One colony stands here: its wash is the yard's figure.</source>
        <translation>Hier steht ein Volk: Seine Waschprobe ist die Zahl des Stands.</translation>
    </message>
    <message>
        <source>Picked by chance</source>
        <translation>Ausgelost</translation>
    </message>
    <message>
        <source>Picked by you</source>
        <translation>Selbst gewählt</translation>
    </message>
    <message>
        <source>Skip this one</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <source>Start the round</source>
        <translation>Runde beginnen</translation>
    </message>
    <message>
        <source>The answer is clear: the yard is over its line of %1. You can stop here, or go on for a narrower range.</source>
        <translation>Das Ergebnis ist klar: Der Stand liegt über seiner Schwelle von %1. Hier aufhören, oder weitermachen für eine engere Spanne.</translation>
    </message>
    <message>
        <source>The answer is clear: the yard is under its line of %1. You can stop here, or go on for a narrower range.</source>
        <translation>Das Ergebnis ist klar: Der Stand liegt unter seiner Schwelle von %1. Hier aufhören, oder weitermachen für eine engere Spanne.</translation>
    </message>
    <message>
        <source>Two colonies stand here: wash both.</source>
        <translation>Hier stehen zwei Völker: beide auswaschen.</translation>
    </message>
    <message>
        <source>Wash colony %1 next</source>
        <translation>Weiter mit Volk %1</translation>
    </message>
    <message>
        <source>Wash some of the colonies, one after another, and know the yard's own load with its range.</source>
        <translation>Einige Völker nacheinander auswaschen und den Befall des ganzen Stands mit seiner Spanne kennen.</translation>
    </message>
    <message>
        <source>Wash the jars</source>
        <translation>Gläser auswaschen</translation>
    </message>
    <message>
        <source>about %1 per 100</source>
        <translation>etwa %1 je 100</translation>
    </message>
    <message>
        <source>counted another way than the others: not in the yard's figure</source>
        <translation>anders gezählt als die übrigen: nicht in der Zahl des Stands</translation>
    </message>
    <message>
        <source>far above the others</source>
        <translation>weit über den anderen</translation>
    </message>
    <message>
        <source>figures no wash can have: not in the yard's figure</source>
        <translation>Zahlen, die keine Waschprobe haben kann: nicht in der Zahl des Stands</translation>
    </message>
    <message>
        <source>for a range of about a quarter either way, at the %1 per 100 last found here</source>
        <translation>für eine Spanne von etwa einem Viertel nach oben und unten, bei den zuletzt hier gefundenen %1 je 100</translation>
    </message>
    <message>
        <source>in the tray: jar %1</source>
        <translation>in der Kiste: Glas %1</translation>
    </message>
    <message>
        <source>no longer in this yard: left out</source>
        <translation>nicht mehr an diesem Stand: ausgelassen</translation>
    </message>
    <message>
        <source>the phone draws them</source>
        <translation>das Telefon lost</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::SameController</name>
    <message>
        <source>%1 is %2. It will stand by itself again, with what was recorded for it.</source>
        <comment>Yard Ford, shown as By the ford</comment>
        <translation>%1 wird %2. Nach dem Trennen wieder für sich, mit allem, was dafür notiert wurde.</translation>
    </message>
    <message>
        <source>%1, from %2 to %3</source>
        <comment>washes, first and last day</comment>
        <translation>%1, von %2 bis %3</translation>
    </message>
    <message>
        <source>%1, on %2</source>
        <comment>washes, day</comment>
        <translation>%1, am %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>yard, note</comment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n colony(ies)</source>
        <translation>
            <numerusform>%n Volk</numerusform>
            <numerusform>%n Völker</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pair(s) may be the same</source>
        <translation>
            <numerusform>%n Paar ist vielleicht dasselbe</numerusform>
            <numerusform>%n Paare sind vielleicht dasselbe</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es)</source>
        <translation>
            <numerusform>%n Waschprobe</numerusform>
            <numerusform>%n Waschproben</numerusform>
        </translation>
    </message>
    <message>
        <source>Both are now shown as "%1"; nothing was thrown away.</source>
        <translation>Beide werden jetzt als „%1“ gezeigt; nichts ging verloren.</translation>
    </message>
    <message>
        <source>Both have the same name and stand in one yard.</source>
        <translation>Beide haben denselben Namen und stehen an einem Stand.</translation>
    </message>
    <message>
        <source>Both have the same name, and their yards may be one yard that was made twice.</source>
        <translation>Beide haben denselben Namen, und ihre Stände sind vielleicht ein Stand, der zweimal angelegt wurde.</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Volk %1</translation>
    </message>
    <message>
        <source>Same colony?</source>
        <translation>Dasselbe Volk?</translation>
    </message>
    <message>
        <source>Same yard?</source>
        <translation>Derselbe Stand?</translation>
    </message>
    <message>
        <source>Shown as one</source>
        <translation>Als eins gezeigt</translation>
    </message>
    <message>
        <source>They are named alike and lie %1 apart.</source>
        <translation>Sie heißen gleich und liegen %1 auseinander.</translation>
    </message>
    <message>
        <source>They are named alike, but lie %1 apart.</source>
        <translation>Sie heißen gleich, liegen aber %1 auseinander.</translation>
    </message>
    <message>
        <source>They are named alike. How far they lie apart is not known.</source>
        <translation>Sie heißen gleich. Wie weit sie auseinanderliegen, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>They are two again. What was recorded for each is with it.</source>
        <translation>Es sind wieder zwei. Was für jedes notiert wurde, ist dabei.</translation>
    </message>
    <message>
        <source>They lie %1 apart.</source>
        <translation>Sie liegen %1 auseinander.</translation>
    </message>
    <message>
        <source>They stay two. This phone does not ask again.</source>
        <translation>Sie bleiben zwei. Dieses Telefon fragt nicht wieder.</translation>
    </message>
    <message>
        <source>Yard %1</source>
        <translation>Stand %1</translation>
    </message>
    <message>
        <source>no wash yet</source>
        <translation>noch ohne Waschprobe</translation>
    </message>
    <message>
        <source>shown as %1</source>
        <comment>another yard</comment>
        <translation>gezeigt als %1</translation>
    </message>
    <message>
        <source>shown as colony %1</source>
        <translation>gezeigt als Volk %1</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ScoopController</name>
    <message>
        <source>The number of bees</source>
        <translation>Die Zahl der Bienen</translation>
    </message>
    <message>
        <source>The scoop in millilitres</source>
        <translation>Der Becher in Millilitern</translation>
    </message>
    <message>
        <source>about %1 bees, %2 to %3</source>
        <translation>etwa %1 Bienen, %2 bis %3</translation>
    </message>
    <message>
        <source>by the book</source>
        <translation>laut Handbuch</translation>
    </message>
    <message>
        <source>counted bee by bee</source>
        <translation>Biene für Biene gezählt</translation>
    </message>
    <message numerus="yes">
        <source>from your %n counted scoop(s)</source>
        <translation>
            <numerusform>aus deinem %n ausgezählten Becher</numerusform>
            <numerusform>aus deinen %n ausgezählten Bechern</numerusform>
        </translation>
    </message>
    <message>
        <source>not rapped</source>
        <translation>nicht geklopft</translation>
    </message>
    <message>
        <source>rapped to settle</source>
        <translation>festgeklopft</translation>
    </message>
    <message>
        <source>your own figure for this jar</source>
        <translation>eigene Zahl für dieses Glas</translation>
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
        <translation>%1 · %2 überfällig</translation>
    </message>
    <message>
        <source>%1, %2 late</source>
        <comment>day, number of days</comment>
        <translation>%1, %2 überfällig</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n colony(ies)</source>
        <translation>
            <numerusform>%1, %n Volk</numerusform>
            <numerusform>%1, %n Völker</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, colonies %2</source>
        <comment>yard, labels</comment>
        <translation>%1, Völker %2</translation>
    </message>
    <message>
        <source>%1, colony %2</source>
        <comment>yard, label</comment>
        <translation>%1, Volk %2</translation>
    </message>
    <message numerus="yes">
        <source>%n date(s) written to %1</source>
        <translation>
            <numerusform>%n Termin nach %1 geschrieben</numerusform>
            <numerusform>%n Termine nach %1 geschrieben</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n yard(s)</source>
        <translation>
            <numerusform>%n Stand</numerusform>
            <numerusform>%n Stände</numerusform>
        </translation>
    </message>
    <message>
        <source>Demo: %1</source>
        <translation>Demo: %1</translation>
    </message>
    <message>
        <source>Halfcup</source>
        <translation>Halfcup</translation>
    </message>
    <message>
        <source>Late</source>
        <translation>Überfällig</translation>
    </message>
    <message>
        <source>Late: it was due on %1.</source>
        <translation>Überfällig: Es war am %1 fällig.</translation>
    </message>
    <message>
        <source>Running now</source>
        <translation>Läuft gerade</translation>
    </message>
    <message>
        <source>halfcup-season-%1.ics</source>
        <comment>file name</comment>
        <translation>halfcup-saison-%1.ics</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>bis %1</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::SetupController</name>
    <message>
        <source>%1 %</source>
        <comment>size of letters</comment>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>As the phone has it</source>
        <translation>Wie das Telefon</translation>
    </message>
    <message>
        <source>Halfcup %1</source>
        <translation>Halfcup %1</translation>
    </message>
    <message>
        <source>No position is asked for</source>
        <translation>Es wird keine Position abgefragt</translation>
    </message>
    <message>
        <source>That is too long for a receiver's address.</source>
        <translation>Das ist zu lang für die Adresse eines Empfängers.</translation>
    </message>
    <message>
        <source>The phone's own receiver</source>
        <translation>Der Empfänger des Telefons</translation>
    </message>
    <message>
        <source>Your records: %1</source>
        <translation>Aufzeichnungen: %1</translation>
    </message>
    <message>
        <source>in this browser</source>
        <comment>where the records are</comment>
        <translation>in diesem Browser</translation>
    </message>
    <message>
        <source>not rapped</source>
        <translation>nicht geklopft</translation>
    </message>
    <message>
        <source>rapped to settle</source>
        <translation>festgeklopft</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ShakeController</name>
    <message>
        <source>%1 shaken will be on the record</source>
        <translation>%1 Schütteln werden notiert</translation>
    </message>
    <message numerus="yes">
        <source>%n second(s) left</source>
        <translation>
            <numerusform>Noch %n Sekunde</numerusform>
            <numerusform>Noch %n Sekunden</numerusform>
        </translation>
    </message>
    <message>
        <source>Half time</source>
        <comment>spoken</comment>
        <translation>Halbzeit</translation>
    </message>
    <message numerus="yes">
        <source>Half time is past. %n second(s) left</source>
        <translation>
            <numerusform>Halbzeit ist vorbei. Noch %n Sekunde</numerusform>
            <numerusform>Halbzeit ist vorbei. Noch %n Sekunden</numerusform>
        </translation>
    </message>
    <message>
        <source>Half time is past. Keep on.</source>
        <translation>Halbzeit ist vorbei. Weiter so.</translation>
    </message>
    <message>
        <source>Last ten seconds.</source>
        <translation>Letzte zehn Sekunden.</translation>
    </message>
    <message>
        <source>Paused. The seconds so far are kept.</source>
        <translation>Angehalten. Die Sekunden bisher bleiben.</translation>
    </message>
    <message>
        <source>Ready to shake.</source>
        <translation>Bereit zum Schütteln.</translation>
    </message>
    <message>
        <source>Shaking a jar</source>
        <translation>Glas wird geschüttelt</translation>
    </message>
    <message>
        <source>Stop</source>
        <comment>spoken, the time is over</comment>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>Stop here</source>
        <translation>Hier aufhören</translation>
    </message>
    <message>
        <source>Ten seconds</source>
        <comment>spoken</comment>
        <translation>Zehn Sekunden</translation>
    </message>
    <message>
        <source>The phone's clocks disagree: how long you shook is a guess.</source>
        <translation>Die Uhren des Telefons sind uneins: Wie lange geschüttelt wurde, ist geschätzt.</translation>
    </message>
    <message>
        <source>The seconds so far will be on the record</source>
        <translation>Die Zeit bis hier wird notiert</translation>
    </message>
    <message>
        <source>Time was up %1 ago. Set the jar down.</source>
        <translation>Die Zeit ist seit %1 um. Glas abstellen.</translation>
    </message>
    <message numerus="yes">
        <source>second(s) left</source>
        <translation>
            <numerusform>Sekunde übrig</numerusform>
            <numerusform>Sekunden übrig</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ShareController</name>
    <message numerus="yes">
        <source>%n wash(es) to hand on</source>
        <translation>
            <numerusform>%n Waschprobe weiterzugeben</numerusform>
            <numerusform>%n Waschproben weiterzugeben</numerusform>
        </translation>
    </message>
    <message>
        <source>Handed to the browser: %1 (%2).</source>
        <comment>a file, 3 yards and 85 washes</comment>
        <translation>An den Browser übergeben: %1 (%2).</translation>
    </message>
    <message>
        <source>The demo is loaded: two invented yards, marked as demo on every page and in every file.</source>
        <translation>Die Demo ist geladen: zwei erfundene Stände, auf jeder Seite und in jeder Datei als Demo gekennzeichnet.</translation>
    </message>
    <message>
        <source>This is phone %1. Another phone names it so when it takes in a file from here.</source>
        <translation>Dies ist Telefon %1. So nennt es ein anderes Telefon, wenn es eine Datei von hier einliest.</translation>
    </message>
    <message>
        <source>Written to %1: %2.</source>
        <comment>a file, 3 yards and 85 washes</comment>
        <translation>Nach %1 geschrieben: %2.</translation>
    </message>
    <message>
        <source>halfcup-%1-%2</source>
        <comment>file name: day, time</comment>
        <translation>halfcup-%1-%2</translation>
    </message>
    <message>
        <source>no records yet</source>
        <translation>keine Aufzeichnungen</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::SituationController</name>
    <message>
        <source>%1 on %2: too long ago to go by</source>
        <comment>frames, day</comment>
        <translation>%1 am %2: zu lange her, um sich danach zu richten</translation>
    </message>
    <message>
        <source>%1; look again</source>
        <comment>what is written down</comment>
        <translation>%1; nachsehen</translation>
    </message>
    <message>
        <source>Capped</source>
        <translation>Verdeckelt</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Ab</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Drauf</translation>
    </message>
    <message>
        <source>One for each day from %1 on, 3 to 14 of them: %2</source>
        <translation>Einer für jeden Tag ab dem %1, 3 bis 14 Werte: %2</translation>
    </message>
    <message>
        <source>Open only</source>
        <translation>Nur offen</translation>
    </message>
    <message>
        <source>Screened</source>
        <translation>Gitter</translation>
    </message>
    <message>
        <source>Solid</source>
        <translation>Geschlossen</translation>
    </message>
    <message>
        <source>The day</source>
        <translation>Der Tag</translation>
    </message>
    <message>
        <source>The number of frames</source>
        <translation>Die Zahl der Waben</translation>
    </message>
    <message numerus="yes">
        <source>What you change here is written down for all %n colony(ies). The forecast is not kept.</source>
        <translation>
            <numerusform>Was hier geändert wird, wird für %n Volk notiert. Die Vorhersage wird nicht gespeichert.</numerusform>
            <numerusform>Was hier geändert wird, wird für alle %n Völker notiert. Die Vorhersage wird nicht gespeichert.</numerusform>
        </translation>
    </message>
    <message>
        <source>What you change here is written down for the colony. The forecast is not kept.</source>
        <translation>Was hier geändert wird, wird für das Volk notiert. Die Vorhersage wird nicht gespeichert.</translation>
    </message>
    <message>
        <source>not written down yet</source>
        <translation>noch nicht notiert</translation>
    </message>
    <message>
        <source>written down for %1 of %2 colonies, last on %3</source>
        <translation>notiert für %1 von %2 Völkern, zuletzt am %3</translation>
    </message>
    <message>
        <source>written down on %1</source>
        <translation>notiert am %1</translation>
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
        <translation>%1 bis %2 %3</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>mark, then a note</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what and how much</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>a choice of this app</source>
        <translation>eine Festlegung dieser App</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>übliche Praxis, keine Quelle</translation>
    </message>
    <message>
        <source>computed from the inputs</source>
        <translation>aus den Angaben berechnet</translation>
    </message>
    <message>
        <source>from %1 %2</source>
        <comment>open range and unit</comment>
        <translation>ab %1 %2</translation>
    </message>
    <message>
        <source>published</source>
        <translation>veröffentlicht</translation>
    </message>
    <message>
        <source>published, figure from memory: check before you rely on it</source>
        <translation>veröffentlicht, Zahl aus dem Gedächtnis: prüfen, bevor man sich darauf verlässt</translation>
    </message>
    <message>
        <source>quoted in a second source</source>
        <translation>in zweiter Quelle zitiert</translation>
    </message>
    <message>
        <source>up to %1 %2</source>
        <comment>open range and unit</comment>
        <translation>bis zu %1 %2</translation>
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
            <numerusform>vor %n Stunde geschöpft</numerusform>
            <numerusform>vor %n Stunden geschöpft</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hour(s) under the colony</source>
        <translation>
            <numerusform>%n Stunde unter dem Volk</numerusform>
            <numerusform>%n Stunden unter dem Volk</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n jar(s) wait already. Wash some of them first.</source>
        <translation>
            <numerusform>%n Glas wartet schon. Zuerst einige auswaschen.</numerusform>
            <numerusform>%n Gläser warten schon. Zuerst einige auswaschen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s) since the scoop</source>
        <translation>
            <numerusform>vor %n Minute geschöpft</numerusform>
            <numerusform>vor %n Minuten geschöpft</numerusform>
        </translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Board under colony %1, %2</source>
        <comment>colony, yard</comment>
        <translation>Windel unter Volk %1, %2</translation>
    </message>
    <message>
        <source>Colony %1, %2</source>
        <comment>colony, yard</comment>
        <translation>Volk %1, %2</translation>
    </message>
    <message>
        <source>In the tray</source>
        <translation>In der Kiste</translation>
    </message>
    <message>
        <source>Jar %1 is in the tray already, with bees of colony %2. Write another label; %3 is free.</source>
        <translation>Glas %1 ist schon in der Kiste, mit Bienen von Volk %2. Anders beschriften; %3 ist frei.</translation>
    </message>
    <message>
        <source>Jar %1. %2. %3. %4</source>
        <comment>read aloud: label, colony, how long, step</comment>
        <translation>Glas %1. %2. %3. %4</translation>
    </message>
    <message>
        <source>Scoop colony %1 next</source>
        <translation>Nächstes: Volk %1 schöpfen</translation>
    </message>
    <message>
        <source>The label</source>
        <translation>Die Beschriftung</translation>
    </message>
    <message>
        <source>The tray is empty</source>
        <translation>Die Kiste ist leer</translation>
    </message>
    <message>
        <source>Wash jar %1</source>
        <translation>Glas %1 auswaschen</translation>
    </message>
    <message>
        <source>laid on %1 at %2</source>
        <translation>eingeschoben am %1 um %2</translation>
    </message>
    <message>
        <source>no position</source>
        <translation>ohne Position</translation>
    </message>
    <message>
        <source>position to come</source>
        <translation>Position folgt</translation>
    </message>
    <message>
        <source>scooped on %1 at %2</source>
        <translation>geschöpft am %1 um %2</translation>
    </message>
    <message>
        <source>waits at: %1</source>
        <translation>wartet bei: %1</translation>
    </message>
    <message>
        <source>within %1</source>
        <translation>auf %1 genau</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::TreatController</name>
    <message>
        <source>Another substance</source>
        <translation>Anderer Wirkstoff</translation>
    </message>
    <message>
        <source>Not in the handbook</source>
        <translation>Nicht im Handbuch</translation>
    </message>
    <message>
        <source>Record what the handbook does not know. Nothing is said of it here: read its label.</source>
        <translation>Notieren, was das Handbuch nicht kennt. Hier wird dazu nichts gesagt: Packungsbeilage lesen.</translation>
    </message>
    <message>
        <source>There is no colony here to treat.</source>
        <translation>Hier gibt es kein Volk zu behandeln.</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::TreatmentController</name>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message numerus="yes">
        <source>%n colony(ies): %1</source>
        <translation>
            <numerusform>%n Volk: %1</numerusform>
            <numerusform>%n Völker: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Another substance</source>
        <translation>Anderer Wirkstoff</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Begins on %1</source>
        <translation>Beginnt am %1</translation>
    </message>
    <message>
        <source>Colonies</source>
        <translation>Völker</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Volk %1</translation>
    </message>
    <message>
        <source>Done by</source>
        <translation>Ausgeführt von</translation>
    </message>
    <message>
        <source>Ended on %1</source>
        <translation>Beendet am %1</translation>
    </message>
    <message>
        <source>Expiry of the product</source>
        <translation>Verfallsdatum des Produkts</translation>
    </message>
    <message>
        <source>First and last day</source>
        <translation>Erster und letzter Tag</translation>
    </message>
    <message>
        <source>Fits</source>
        <translation>Passt</translation>
    </message>
    <message>
        <source>Fits with care</source>
        <translation>Passt mit Vorsicht</translation>
    </message>
    <message>
        <source>Given once: the same day.</source>
        <translation>Einmalige Gabe: derselbe Tag.</translation>
    </message>
    <message>
        <source>Honey may be taken again from %1 on, if it comes out as planned.</source>
        <translation>Honig darf ab dem %1 wieder entnommen werden, wenn es wie geplant herauskommt.</translation>
    </message>
    <message>
        <source>Honey may be taken again from %1 on.</source>
        <translation>Honig darf ab dem %1 wieder entnommen werden.</translation>
    </message>
    <message>
        <source>How much to give stands on the label. The label and your local law outrank this app.</source>
        <translation>Wie viel zu geben ist, steht in der Packungsbeilage. Packungsbeilage und örtliches Recht gehen dieser App vor.</translation>
    </message>
    <message>
        <source>No colony yet</source>
        <translation>Noch kein Volk</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Jetzt nicht</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Prescribed by</source>
        <translation>Verschrieben von</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produkt</translation>
    </message>
    <message>
        <source>Proof of purchase</source>
        <translation>Kaufbeleg</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Removed from the records; the history keeps it.</source>
        <translation>Aus den Aufzeichnungen entfernt; der Verlauf bewahrt es.</translation>
    </message>
    <message>
        <source>Running until %1</source>
        <translation>Läuft bis %1</translation>
    </message>
    <message>
        <source>Running: take it out on %1</source>
        <translation>Läuft: entnehmen am %1</translation>
    </message>
    <message>
        <source>Still in: it should have come out on %1</source>
        <translation>Noch im Volk: Entnahme war fällig am %1</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Bezugsquelle</translation>
    </message>
    <message>
        <source>Taken out on</source>
        <translation>Entnommen am</translation>
    </message>
    <message>
        <source>Taken out on %1</source>
        <translation>Entnommen am %1</translation>
    </message>
    <message>
        <source>The withdrawal is not written down: look at the label before honey is taken.</source>
        <translation>Die Wartezeit ist nicht notiert: in der Packungsbeilage nachsehen, bevor Honig entnommen wird.</translation>
    </message>
    <message>
        <source>To be taken out on</source>
        <translation>Zu entnehmen am</translation>
    </message>
    <message>
        <source>What the app said of it</source>
        <translation>Was die App dazu sagte</translation>
    </message>
    <message>
        <source>Withdrawal for honey</source>
        <translation>Wartezeit für Honig</translation>
    </message>
    <message>
        <source>by the label</source>
        <translation>laut Packungsbeilage</translation>
    </message>
    <message>
        <source>by the label; usual course: %1</source>
        <translation>laut Packungsbeilage; übliche Anwendung: %1</translation>
    </message>
    <message>
        <source>by the label; usual course: %1 to %2</source>
        <translation>laut Packungsbeilage; übliche Anwendung: %1 bis %2</translation>
    </message>
    <message>
        <source>not written down</source>
        <translation>nicht notiert</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::VerdictMark</name>
    <message>
        <source>Fits</source>
        <translation>Passt</translation>
    </message>
    <message>
        <source>Fits with care</source>
        <translation>Passt mit Vorsicht</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Jetzt nicht</translation>
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
        <translation>Volk %1 · %2</translation>
    </message>
    <message>
        <source>It has settled</source>
        <comment>spoken</comment>
        <translation>Abgesetzt</translation>
    </message>
    <message>
        <source>Jar %1, colony %2 · %3</source>
        <comment>label, colony, step</comment>
        <translation>Glas %1, Volk %2 · %3</translation>
    </message>
    <message>
        <source>Queen not seen: look at every bee on the frame before you scoop.</source>
        <translation>Königin nicht gesehen: vor dem Schöpfen jede Biene auf der Wabe ansehen.</translation>
    </message>
    <message>
        <source>Queen seen and safe.</source>
        <translation>Königin gesehen, in Sicherheit.</translation>
    </message>
    <message>
        <source>This count was begun with a newer version of the program, by a method that this one does not know. It is kept as it is.</source>
        <translation>Diese Zählung wurde mit einer neueren Version des Programms begonnen, mit einer Methode, die diese nicht kennt. Sie wird bewahrt, wie sie ist.</translation>
    </message>
    <message>
        <source>step %1 of %2</source>
        <translation>Schritt %1 von %2</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::YardPlanController</name>
    <message>
        <source>%1 That is where it was washed, within %2.</source>
        <comment>where a hive stands, how sure</comment>
        <translation>%1 Dort wurde es ausgewaschen, auf %2 genau.</translation>
    </message>
    <message>
        <source>%1 east</source>
        <comment>a step</comment>
        <translation>%1 nach Osten</translation>
    </message>
    <message>
        <source>%1 ft</source>
        <comment>feet</comment>
        <translation>%1 ft</translation>
    </message>
    <message>
        <source>%1 m</source>
        <comment>metres</comment>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>%1 north</source>
        <comment>a step</comment>
        <translation>%1 nach Norden</translation>
    </message>
    <message>
        <source>%1 south</source>
        <comment>a step</comment>
        <translation>%1 nach Süden</translation>
    </message>
    <message>
        <source>%1 west</source>
        <comment>a step</comment>
        <translation>%1 nach Westen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>standing, load and its day</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Volk %1</translation>
    </message>
    <message>
        <source>Colony %1 has its place. Touch the next hive.</source>
        <translation>Volk %1 hat seinen Ort. Die nächste Beute antippen.</translation>
    </message>
    <message>
        <source>Colony %1 has no place now. Touch the next hive.</source>
        <translation>Volk %1 hat keinen Ort mehr. Die nächste Beute antippen.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>It has no place on the plan yet. The first step starts from the middle.</source>
        <translation>Es hat noch keinen Ort im Plan. Der erste Schritt beginnt in der Mitte.</translation>
    </message>
    <message>
        <source>It stands %1 east and %2 north of the yard's middle.</source>
        <translation>Es steht %1 östlich und %2 nördlich der Standmitte.</translation>
    </message>
    <message>
        <source>It stands %1 east and %2 south of the yard's middle.</source>
        <translation>Es steht %1 östlich und %2 südlich der Standmitte.</translation>
    </message>
    <message>
        <source>It stands %1 west and %2 north of the yard's middle.</source>
        <translation>Es steht %1 westlich und %2 nördlich der Standmitte.</translation>
    </message>
    <message>
        <source>It stands %1 west and %2 south of the yard's middle.</source>
        <translation>Es steht %1 westlich und %2 südlich der Standmitte.</translation>
    </message>
    <message>
        <source>Move colony %1</source>
        <translation>Volk %1 setzen</translation>
    </message>
    <message>
        <source>Touch a hive to see how it stands.</source>
        <translation>Beute antippen, um den Befall zu sehen.</translation>
    </message>
    <message>
        <source>Touch a hive, then touch where it stands.</source>
        <translation>Beute antippen, dann antippen, wo sie steht.</translation>
    </message>
    <message>
        <source>Touch where colony %1 stands.</source>
        <translation>Antippen, wo Volk %1 steht.</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::YardsController</name>
    <message>
        <source>%1 comes after %2. Type the smaller number first.</source>
        <translation>%1 kommt nach %2. Die kleinere Nummer zuerst eingeben.</translation>
    </message>
    <message numerus="yes">
        <source>%n colony(ies)</source>
        <translation>
            <numerusform>%n Volk</numerusform>
            <numerusform>%n Völker</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n colony(ies): %1</source>
        <translation>
            <numerusform>%n Volk: %1</numerusform>
            <numerusform>%n Völker: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>By season: %1. Today the line is %2 per 100.</source>
        <comment>region, line</comment>
        <translation>Nach Jahreszeit: %1. Heute ist die Schwelle %2 je 100.</translation>
    </message>
    <message>
        <source>Mites must be low by then. In the tropics none is taken to be needed; type one where your bees have a winter.</source>
        <translation>Bis dahin müssen die Milben wenige sein. In den Tropen gilt keiner als nötig; einen eingeben, wo die Bienen einen Winter haben.</translation>
    </message>
    <message>
        <source>Mites must be low by then. Nothing typed: %1, as in the north, because the yard has no position.</source>
        <translation>Bis dahin müssen die Milben wenige sein. Ohne Eingabe: %1, wie im Norden, weil der Stand keine Position hat.</translation>
    </message>
    <message>
        <source>Mites must be low by then. Nothing typed: %1, half a year after the north.</source>
        <translation>Bis dahin müssen die Milben wenige sein. Ohne Eingabe: %1, ein halbes Jahr nach dem Norden.</translation>
    </message>
    <message>
        <source>Mites must be low by then. Nothing typed: %1, usual in the north.</source>
        <translation>Bis dahin müssen die Milben wenige sein. Ohne Eingabe: %1, üblich im Norden.</translation>
    </message>
    <message>
        <source>No colonies yet</source>
        <translation>Noch keine Völker</translation>
    </message>
    <message>
        <source>No position yet</source>
        <translation>Noch keine Position</translation>
    </message>
    <message>
        <source>Save the yard first, then add its colonies.</source>
        <translation>Zuerst den Stand speichern, dann seine Völker anlegen.</translation>
    </message>
    <message numerus="yes">
        <source>That would be %n colonies at once. %1 is the most.</source>
        <translation>
            <numerusform>Das wäre %n Volk auf einmal. Höchstens %1.</numerusform>
            <numerusform>Das wären %n Völker auf einmal. Höchstens %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>The day of the first wash</source>
        <translation>Der Tag der ersten Waschprobe</translation>
    </message>
    <message>
        <source>The label</source>
        <translation>Die Beschriftung</translation>
    </message>
    <message>
        <source>The treat line</source>
        <translation>Die Behandlungsschwelle</translation>
    </message>
    <message>
        <source>The turn date</source>
        <translation>Der Stichtag</translation>
    </message>
    <message>
        <source>The yard's name</source>
        <translation>Der Name des Stands</translation>
    </message>
    <message>
        <source>There is a colony %1 in this yard already. Nothing was added.</source>
        <translation>An diesem Stand gibt es schon ein Volk %1. Nichts wurde angelegt.</translation>
    </message>
    <message>
        <source>When colonies can be opened. Nothing typed: from the first visit of the year, %1.</source>
        <translation>Wenn Völker geöffnet werden können. Ohne Eingabe: ab dem ersten Besuch des Jahres, %1.</translation>
    </message>
    <message>
        <source>When colonies can be opened. Nothing typed: from the first visit of the year, or %1.</source>
        <translation>Wenn Völker geöffnet werden können. Ohne Eingabe: ab dem ersten Besuch des Jahres, oder %1.</translation>
    </message>
    <message>
        <source>Your own line</source>
        <translation>Die eigene Schwelle</translation>
    </message>
    <message>
        <source>no position</source>
        <translation>ohne Position</translation>
    </message>
</context>
</TS>
