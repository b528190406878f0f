<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>AnswerPage</name>
    <message>
        <source>Count these bees</source>
        <translation>Contar estas abejas</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>This colony</source>
        <translation>Esta colonia</translation>
    </message>
    <message>
        <source>What to treat with</source>
        <translation>Con qué tratar</translation>
    </message>
    <message>
        <source>Where this comes from</source>
        <translation>De dónde sale esto</translation>
    </message>
</context>
<context>
    <name>BackupPage</name>
    <message>
        <source>Backups on this phone</source>
        <translation>Copias en este teléfono</translation>
    </message>
    <message>
        <source>Choose one that lies elsewhere</source>
        <translation>Elegir una que está en otro sitio</translation>
    </message>
    <message>
        <source>It holds the exact places of your hives. Give it to nobody.</source>
        <translation>Contiene el lugar exacto de tus colmenas. No se la des a nadie.</translation>
    </message>
    <message>
        <source>Keep safe</source>
        <translation>Poner a salvo</translation>
    </message>
    <message>
        <source>Make a backup</source>
        <translation>Hacer una copia</translation>
    </message>
    <message>
        <source>one file, checked</source>
        <translation>un archivo, comprobado</translation>
    </message>
</context>
<context>
    <name>BackupSheets</name>
    <message>
        <source>Leave all as it is</source>
        <translation>Dejar todo como está</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarla</translation>
    </message>
    <message>
        <source>Put it back</source>
        <translation>Restaurar</translation>
    </message>
    <message>
        <source>Put this one back</source>
        <translation>Restaurar esta</translation>
    </message>
    <message>
        <source>Put this one back?</source>
        <translation>¿Restaurar esta?</translation>
    </message>
</context>
<context>
    <name>BoardCellsStep</name>
    <message>
        <source>A part of its cells</source>
        <translation>Una parte de las celdas</translation>
    </message>
    <message>
        <source>Cells on the whole board</source>
        <translation>Celdas de toda la lámina</translation>
    </message>
    <message>
        <source>Cells you count</source>
        <translation>Celdas que cuentas</translation>
    </message>
</context>
<context>
    <name>CheckPage</name>
    <message>
        <source>Where this comes from</source>
        <translation>De dónde sale esto</translation>
    </message>
</context>
<context>
    <name>ChoiceOutlook</name>
    <message>
        <source>Later</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>Sooner</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>¿Y si…?</translation>
    </message>
</context>
<context>
    <name>ChoicePage</name>
    <message>
        <source>Record this treatment</source>
        <translation>Anotar este tratamiento</translation>
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
        <translation>sustancia activa</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>bees counted</source>
        <translation>abejas contadas</translation>
    </message>
    <message>
        <source>brood</source>
        <translation>cría</translation>
    </message>
    <message>
        <source>cells counted</source>
        <translation>celdas contadas</translation>
    </message>
    <message>
        <source>cells opened</source>
        <translation>celdas abiertas</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>colonia</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>done by</source>
        <translation>aplicado por</translation>
    </message>
    <message>
        <source>end</source>
        <translation>fin</translation>
    </message>
    <message>
        <source>expiry</source>
        <translation>caducidad</translation>
    </message>
    <message>
        <source>first day</source>
        <translation>primer día</translation>
    </message>
    <message>
        <source>first visit</source>
        <translation>primera visita</translation>
    </message>
    <message>
        <source>first wash from</source>
        <translation>primer lavado desde</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>fondo</translation>
    </message>
    <message>
        <source>frames of bees</source>
        <translation>cuadros de abejas</translation>
    </message>
    <message>
        <source>jar</source>
        <translation>frasco</translation>
    </message>
    <message>
        <source>label</source>
        <translation>número o nombre</translation>
    </message>
    <message>
        <source>last day</source>
        <translation>último día</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>latitud</translation>
    </message>
    <message>
        <source>longitude</source>
        <translation>longitud</translation>
    </message>
    <message>
        <source>metres east on the plan</source>
        <translation>metros al este en el plano</translation>
    </message>
    <message>
        <source>metres north on the plan</source>
        <translation>metros al norte en el plano</translation>
    </message>
    <message>
        <source>mites</source>
        <translation>ácaros</translation>
    </message>
    <message>
        <source>mites of the second rinse</source>
        <translation>ácaros del segundo enjuague</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>one that is not known here</source>
        <translation>uno que aquí no se conoce</translation>
    </message>
    <message>
        <source>other colony</source>
        <translation>otra colonia</translation>
    </message>
    <message>
        <source>other yard</source>
        <translation>otro apiario</translation>
    </message>
    <message>
        <source>own line</source>
        <translation>umbral propio</translation>
    </message>
    <message>
        <source>prescriber</source>
        <translation>recetado por</translation>
    </message>
    <message>
        <source>product</source>
        <translation>producto</translation>
    </message>
    <message>
        <source>quantity</source>
        <translation>cantidad</translation>
    </message>
    <message>
        <source>queen</source>
        <translation>reina</translation>
    </message>
    <message>
        <source>reach in metres</source>
        <translation>alcance en metros</translation>
    </message>
    <message>
        <source>receipt</source>
        <translation>comprobante</translation>
    </message>
    <message>
        <source>region of the lines</source>
        <translation>región de los umbrales</translation>
    </message>
    <message>
        <source>registration number</source>
        <translation>número de registro</translation>
    </message>
    <message>
        <source>removal due</source>
        <translation>fecha de retirada</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>eliminado</translation>
    </message>
    <message>
        <source>scoop in ml</source>
        <translation>medida en ml</translation>
    </message>
    <message>
        <source>supplier</source>
        <translation>proveedor</translation>
    </message>
    <message>
        <source>taken out on</source>
        <translation>retirado el</translation>
    </message>
    <message>
        <source>the same as</source>
        <translation>lo mismo que</translation>
    </message>
    <message>
        <source>treat line</source>
        <translation>umbral de tratamiento</translation>
    </message>
    <message>
        <source>turn date</source>
        <translation>fecha límite</translation>
    </message>
    <message>
        <source>what happened</source>
        <translation>qué pasó</translation>
    </message>
    <message>
        <source>withdrawal days</source>
        <translation>días de espera</translation>
    </message>
    <message>
        <source>yard</source>
        <translation>apiario</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
</context>
<context>
    <name>ColonyEntries</name>
    <message>
        <source>%1 per 100 on %2</source>
        <comment>a load and a date</comment>
        <translation>%1 por 100 el %2</translation>
    </message>
    <message>
        <source>Colony %1. %2. %3</source>
        <comment>read aloud: label, standing, what is due</comment>
        <translation>Colonia %1. %2. %3</translation>
    </message>
    <message>
        <source>Colony %1. %2. %3. %4</source>
        <comment>read aloud: label, standing, load, what is due</comment>
        <translation>Colonia %1. %2. %3. %4</translation>
    </message>
    <message>
        <source>In the tray: jar %1</source>
        <translation>En la bandeja: frasco %1</translation>
    </message>
    <message>
        <source>Not washed this year</source>
        <translation>Sin lavado este año</translation>
    </message>
</context>
<context>
    <name>ColonyFoot</name>
    <message>
        <source>Change its number or name</source>
        <translation>Cambiar número o nombre</translation>
    </message>
    <message>
        <source>What changed</source>
        <translation>Qué cambió</translation>
    </message>
</context>
<context>
    <name>ColonyHead</name>
    <message>
        <source>Count another way</source>
        <translation>Contar de otra forma</translation>
    </message>
    <message>
        <source>No wash, no treatment and nothing else is written down yet.</source>
        <translation>Aún no hay anotado ningún lavado, tratamiento ni nada más.</translation>
    </message>
    <message>
        <source>Something happened</source>
        <translation>Pasó algo</translation>
    </message>
    <message>
        <source>Treat</source>
        <translation>Tratar</translation>
    </message>
</context>
<context>
    <name>ColonyLoads</name>
    <message>
        <source>All years</source>
        <translation>Todos los años</translation>
    </message>
    <message>
        <source>Earlier wash</source>
        <translation>Lavado anterior</translation>
    </message>
    <message>
        <source>Last season</source>
        <translation>Última temporada</translation>
    </message>
    <message>
        <source>Later wash</source>
        <translation>Lavado siguiente</translation>
    </message>
</context>
<context>
    <name>ColonyName</name>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>Dejarlo como está</translation>
    </message>
    <message>
        <source>Number or name</source>
        <translation>Número o nombre</translation>
    </message>
    <message>
        <source>The number or the name by which you know this colony.</source>
        <translation>El número o el nombre con que conoces esta colonia.</translation>
    </message>
    <message>
        <source>What is on the hive?</source>
        <translation>¿Qué hay escrito en la colmena?</translation>
    </message>
</context>
<context>
    <name>ColonyPage</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>On a day</source>
        <translation>En una fecha</translation>
    </message>
</context>
<context>
    <name>ColonyStep</name>
    <message>
        <source>Colony %1</source>
        <translation>Colonia %1</translation>
    </message>
    <message>
        <source>No colony to count</source>
        <translation>Ninguna colonia que contar</translation>
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
        <translation>Panal de cien celdas: llenas, %1; a medias, %2 más; y más de lo que cabe en el panal.</translation>
    </message>
    <message>
        <source>Comb of a hundred cells: %1 filled, %2 more half filled.</source>
        <translation>Panal de cien celdas: llenas, %1; a medias, %2 más.</translation>
    </message>
    <message>
        <source>and more than the comb holds</source>
        <translation>y más de lo que cabe en el panal</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>al menos</translation>
    </message>
    <message>
        <source>perhaps</source>
        <translation>quizás</translation>
    </message>
</context>
<context>
    <name>ComparePage</name>
    <message>
        <source>Colonies compared</source>
        <translation>Colonias comparadas</translation>
    </message>
</context>
<context>
    <name>CompareWords</name>
    <message>
        <source>Hide the words</source>
        <translation>Ocultar las palabras</translation>
    </message>
    <message>
        <source>The same in words</source>
        <translation>Lo mismo en palabras</translation>
    </message>
</context>
<context>
    <name>CountBar</name>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>None found</source>
        <translation>Ninguno</translation>
    </message>
    <message>
        <source>Type it</source>
        <translation>Escribirlo</translation>
    </message>
    <message>
        <source>Undo last</source>
        <translation>Quitar último</translation>
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
        <translation>El peso se basa en la cifra del manual para una abeja, así que no cuenta como medida tuya.</translation>
    </message>
    <message>
        <source>Bees in the jar</source>
        <translation>Abejas en el frasco</translation>
    </message>
    <message>
        <source>Count these bees</source>
        <translation>Contar estas abejas</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Contadas</translation>
    </message>
    <message>
        <source>Grams, without the jar</source>
        <translation>Gramos, sin el frasco</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Cómo</translation>
    </message>
    <message>
        <source>Is that right?</source>
        <translation>¿Es correcto?</translation>
    </message>
    <message>
        <source>It counts for all your later scoops of this size, and this wash is judged anew with it.</source>
        <translation>Vale para todas tus medidas futuras de este tamaño, y este lavado se juzga de nuevo con ella.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>No, go back</source>
        <translation>No, volver</translation>
    </message>
    <message>
        <source>One bee more</source>
        <translation>Una abeja más</translation>
    </message>
    <message>
        <source>Ten bees more</source>
        <translation>Diez abejas más</translation>
    </message>
    <message>
        <source>The bees are</source>
        <translation>Las abejas están</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Pesadas</translation>
    </message>
    <message>
        <source>Yes, keep it</source>
        <translation>Sí, guardar</translation>
    </message>
</context>
<context>
    <name>CountFace</name>
    <message>
        <source>On wet glass, two touches of one point at once count as one.</source>
        <translation>Con la pantalla mojada, dos toques a la vez en un punto cuentan como uno.</translation>
    </message>
    <message>
        <source>or press a volume key</source>
        <translation>o pulsa una tecla de volumen</translation>
    </message>
</context>
<context>
    <name>CountStep</name>
    <message>
        <source>Go on counting</source>
        <translation>Seguir contando</translation>
    </message>
    <message>
        <source>None found</source>
        <translation>Ninguno</translation>
    </message>
    <message>
        <source>None found?</source>
        <translation>¿Ninguno?</translation>
    </message>
</context>
<context>
    <name>DayField</name>
    <message>
        <source>%1: a day earlier</source>
        <translation>%1: un día antes</translation>
    </message>
    <message>
        <source>%1: a day later</source>
        <translation>%1: un día después</translation>
    </message>
    <message>
        <source>+ 1 day</source>
        <translation>+ 1 día</translation>
    </message>
    <message>
        <source>− 1 day</source>
        <translation>− 1 día</translation>
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
        <translation>Un día antes</translation>
    </message>
    <message>
        <source>A day later</source>
        <translation>Un día después</translation>
    </message>
    <message>
        <source>Another day</source>
        <translation>Otro día</translation>
    </message>
    <message>
        <source>Such as 3 May, or 2026-05-03</source>
        <translation>Por ejemplo, 3 de mayo o 2026-05-03</translation>
    </message>
</context>
<context>
    <name>EventDetails</name>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>One less</source>
        <translation>Uno menos</translation>
    </message>
    <message>
        <source>One more</source>
        <translation>Uno más</translation>
    </message>
</context>
<context>
    <name>EventPage</name>
    <message>
        <source>Is that so?</source>
        <translation>¿Es así?</translation>
    </message>
    <message>
        <source>It counts no more for this colony. The history keeps that it was written down.</source>
        <translation>Deja de contar para esta colonia. El historial conserva que se anotó.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>Dejarlo como está</translation>
    </message>
    <message>
        <source>No, go back</source>
        <translation>No, volver</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Take it back?</source>
        <translation>¿Deshacer?</translation>
    </message>
    <message>
        <source>Yes, keep it</source>
        <translation>Sí, guardar</translation>
    </message>
</context>
<context>
    <name>EventWords</name>
    <message>
        <source>%1 has not come yet. Keep it on the day it happens.</source>
        <translation>El %1 aún no ha llegado. Guárdalo el día en que pase.</translation>
    </message>
    <message>
        <source>A colony cannot be put into itself. Touch another one.</source>
        <translation>Una colonia no se puede unir a sí misma. Toca otra.</translation>
    </message>
    <message>
        <source>By your records colony %1 has its supers on already.</source>
        <translation>Según tus registros, la colonia %1 ya tiene alzas.</translation>
    </message>
    <message>
        <source>By your records colony %1 has no supers on.</source>
        <translation>Según tus registros, la colonia %1 no tiene alzas.</translation>
    </message>
    <message>
        <source>By your records colony %1 was gone before %2.</source>
        <translation>Según tus registros, la colonia %1 ya no existía antes del %2.</translation>
    </message>
    <message>
        <source>Colony %1 ends with this. It leaves the lists of what is due; all its records stay.</source>
        <translation>La colonia %1 termina con esto. Sale de las listas de pendientes; todos sus registros quedan.</translation>
    </message>
    <message>
        <source>Colony %1 is dead? It leaves the lists of what is due; all its records stay.</source>
        <translation>¿La colonia %1 está muerta? Sale de las listas de pendientes; todos sus registros quedan.</translation>
    </message>
    <message>
        <source>Colony %1: %2 is in the hive until %3, and its withdrawal is not written down. Supers only where the label allows them.</source>
        <translation>Colonia %1: %2 está en la colmena hasta el %3, y su tiempo de espera no está anotado. Alzas solo si la etiqueta las permite.</translation>
    </message>
    <message>
        <source>Colony %1: %2 is in the hive, and honey may not be taken before %3. Supers only where the label allows them.</source>
        <translation>Colonia %1: %2 está en la colmena, y no se puede sacar miel antes del %3. Alzas solo si la etiqueta las permite.</translation>
    </message>
    <message>
        <source>Colony %1: honey may not be taken before %2, after %3. Supers that go on now can spoil honey.</source>
        <translation>Colonia %1: no se puede sacar miel antes del %2, por %3. Poner alzas ahora puede echar a perder la miel.</translation>
    </message>
    <message>
        <source>Frames covered with bees: from 0 to %1.</source>
        <translation>Cuadros cubiertos de abejas: de 0 a %1.</translation>
    </message>
    <message>
        <source>It stands in %1 already on that day. Touch another yard, or go back.</source>
        <translation>Ese día ya está en %1. Toca otro apiario, o vuelve.</translation>
    </message>
    <message>
        <source>There is no such day. Type it like 18 May 2026.</source>
        <translation>Ese día no existe. Escríbelo así: 18 de mayo de 2026.</translation>
    </message>
    <message>
        <source>Touch the colony it was put into.</source>
        <translation>Toca la colonia a la que se unió.</translation>
    </message>
    <message>
        <source>Touch the yard it was moved to.</source>
        <translation>Toca el apiario al que se trasladó.</translation>
    </message>
    <message>
        <source>Touch what you saw.</source>
        <translation>Toca lo que viste.</translation>
    </message>
    <message>
        <source>Type how many frames are covered with bees.</source>
        <translation>Escribe cuántos cuadros están cubiertos de abejas.</translation>
    </message>
</context>
<context>
    <name>ExportFile</name>
    <message>
        <source>%1 cannot be written. Nothing was written.</source>
        <translation>No se puede escribir en %1. No se escribió nada.</translation>
    </message>
    <message>
        <source>%1 cannot be written: the folder is read-only. Nothing was written.</source>
        <translation>No se puede escribir %1: la carpeta es de solo lectura. No se escribió nada.</translation>
    </message>
    <message>
        <source>%1 could not be written. Your records are safe.</source>
        <translation>No se pudo escribir %1. Tus registros están a salvo.</translation>
    </message>
    <message>
        <source>%1 is a folder, not a file. Nothing was written.</source>
        <translation>%1 es una carpeta, no un archivo. No se escribió nada.</translation>
    </message>
    <message>
        <source>%1, handed to the browser</source>
        <comment>a file's name</comment>
        <translation>%1, entregado al navegador</translation>
    </message>
    <message>
        <source>The folder for %1 is not there. Nothing was written.</source>
        <translation>La carpeta para %1 no está. No se escribió nada.</translation>
    </message>
    <message>
        <source>The storage is full. %1 was not written; your records are safe.</source>
        <translation>El almacenamiento está lleno. %1 no se escribió; tus registros están a salvo.</translation>
    </message>
    <message>
        <source>This phone has no place for files to hand on.</source>
        <translation>Este teléfono no tiene sitio para archivos que compartir.</translation>
    </message>
</context>
<context>
    <name>ExportPage</name>
    <message>
        <source>1,5; semicolons</source>
        <translation>1,5; punto y coma</translation>
    </message>
    <message>
        <source>1.5, commas</source>
        <translation>1.5, comas</translation>
    </message>
    <message>
        <source>Blurred</source>
        <translation>Aproximado</translation>
    </message>
    <message>
        <source>Exact, this time</source>
        <translation>Exacto, esta vez</translation>
    </message>
    <message>
        <source>For people</source>
        <translation>Para personas</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Omitir</translation>
    </message>
    <message>
        <source>Spreadsheet expects</source>
        <translation>La hoja de cálculo usa</translation>
    </message>
    <message>
        <source>Where your hives stand</source>
        <translation>Dónde están tus colmenas</translation>
    </message>
</context>
<context>
    <name>FirstStartPage</name>
    <message>
        <source>Understood, go on</source>
        <translation>Entendido, seguir</translation>
    </message>
</context>
<context>
    <name>FolderPage</name>
    <message>
        <source>Each phone puts what it records into a file of its own in this folder, and reads the files of the others. Let any program that keeps folders alike carry it from phone to phone.</source>
        <translation>Cada teléfono deja lo que anota en un archivo propio de esta carpeta y lee los de los demás. Deja que la lleve de teléfono a teléfono cualquier programa que sincronice carpetas.</translation>
    </message>
    <message>
        <source>Exchange folder</source>
        <translation>Carpeta de intercambio</translation>
    </message>
    <message>
        <source>Exchange now</source>
        <translation>Intercambiar ahora</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Carpeta</translation>
    </message>
    <message>
        <source>It holds the exact places of your hives. Whoever reads the folder knows them.</source>
        <translation>Contiene el lugar exacto de tus colmenas. Quien lea la carpeta lo sabrá.</translation>
    </message>
    <message>
        <source>It is made where there is none.</source>
        <translation>Se crea si no existe.</translation>
    </message>
    <message>
        <source>Stop using this folder</source>
        <translation>Dejar de usarla</translation>
    </message>
    <message>
        <source>To use another one, stop using this first.</source>
        <translation>Para usar otra, deja primero de usar esta.</translation>
    </message>
    <message>
        <source>Use this folder</source>
        <translation>Usar esta carpeta</translation>
    </message>
    <message>
        <source>from now on, whenever the app is opened</source>
        <translation>desde ahora, cada vez que se abra la aplicación</translation>
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
        <translation>Elegir un archivo</translation>
    </message>
    <message>
        <source>Choose another file</source>
        <translation>Elegir otro archivo</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Buscar otra vez</translation>
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
        <translation>% de error</translation>
    </message>
    <message>
        <source>% isopropyl alcohol</source>
        <translation>% de alcohol isopropílico</translation>
    </message>
    <message>
        <source>0.017 to 0.021 per day.</source>
        <translation>De 0,017 a 0,021 al día.</translation>
    </message>
    <message>
        <source>0.4 +/- 9.5 %.</source>
        <translation>0,4 +/- 9,5 %.</translation>
    </message>
    <message>
        <source>0.99 to the power of 100</source>
        <translation>0,99 elevado a 100</translation>
    </message>
    <message>
        <source>0.99 to the power of 300</source>
        <translation>0,99 elevado a 300</translation>
    </message>
    <message>
        <source>100 (x - y) / x, x living untreated, y living treated</source>
        <translation>100 (x - y) / x; x: vivos sin tratar, y: vivos tratados</translation>
    </message>
    <message>
        <source>100 [1 - (Ta/Tb)(Cb/Ca)], T treated, C control, b before, a after</source>
        <translation>100 [1 - (Ta/Tb)(Cb/Ca)]; T: tratadas, C: control, b: antes, a: después</translation>
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
        <translation>15 agosto</translation>
    </message>
    <message>
        <source>150 leaves: 70 38 17 10 9 3 2 1 with 0 to 7 mites.</source>
        <translation>150 hojas: 70 38 17 10 9 3 2 1 con 0 a 7 ácaros.</translation>
    </message>
    <message>
        <source>18.3 g per hundred bees, from 175 samples. Not the mass of live bees.</source>
        <translation>18,3 g por cien abejas, de 175 muestras. No es el peso de abejas vivas.</translation>
    </message>
    <message>
        <source>2,313 of 2,343 mites in 114 samples.</source>
        <translation>2313 de 2343 ácaros en 114 muestras.</translation>
    </message>
    <message>
        <source>3.38 bees per ml.</source>
        <translation>3,38 abejas por ml.</translation>
    </message>
    <message>
        <source>300 bees divided by the volume of a half cup</source>
        <translation>300 abejas divididas entre el volumen de media taza</translation>
    </message>
    <message>
        <source>43 mites on 310 bees</source>
        <translation>43 ácaros en 310 abejas</translation>
    </message>
    <message>
        <source>5 mites in a half cup</source>
        <translation>5 ácaros en media taza</translation>
    </message>
    <message>
        <source>50 % follows from the rule of doubling; 70 % and more is often said.</source>
        <translation>El 50 % se sigue de la regla de la duplicación; a menudo se dice 70 % y más.</translation>
    </message>
    <message>
        <source>50 to 85 F. The first three days matter most.</source>
        <translation>De 50 a 85 °F. Los tres primeros días son los que más importan.</translation>
    </message>
    <message>
        <source>76.5 +/- 7.1 %, on cardboard.</source>
        <translation>76,5 +/- 7,1 %, en cartón.</translation>
    </message>
    <message>
        <source>9 mites in a half cup</source>
        <translation>9 ácaros en media taza</translation>
    </message>
    <message>
        <source>92.9 +/- 5.5 %.</source>
        <translation>92,9 +/- 5,5 %.</translation>
    </message>
    <message>
        <source>A bee drained after an alcohol wash</source>
        <translation>Una abeja escurrida tras un lavado con alcohol</translation>
    </message>
    <message>
        <source>A bee in these rates</source>
        <translation>Una abeja en estas tasas</translation>
    </message>
    <message>
        <source>A caged queen or a nucleus made up, some three weeks until the last brood has hatched, then a treatment that fits a broodless colony.</source>
        <translation>Una reina enjaulada o un núcleo formado, unas tres semanas hasta que nazca la última cría, y luego un tratamiento apto para una colonia sin cría.</translation>
    </message>
    <message>
        <source>A careful keeper's own line</source>
        <translation>El umbral propio de un apicultor prudente</translation>
    </message>
    <message>
        <source>A colony and its mites through the year</source>
        <translation>Una colonia y sus ácaros a lo largo del año</translation>
    </message>
    <message>
        <source>A drone frame, cut out once capped and before the drones hatch (14 to 15 days capped), again and again in the drone season.</source>
        <translation>Un cuadro de zánganos, cortado cuando está operculado y antes de que nazcan (14 a 15 días operculado), una y otra vez en la época de zánganos.</translation>
    </message>
    <message>
        <source>A floor of mesh, with the board out but for counts.</source>
        <translation>Un fondo de malla, con la lámina fuera salvo para contar.</translation>
    </message>
    <message>
        <source>A live worker on the wash scale</source>
        <translation>Una obrera viva en la balanza del lavado</translation>
    </message>
    <message>
        <source>A mated queen of such stock, and a colony that accepts her.</source>
        <translation>Una reina fecundada de esa estirpe, y una colonia que la acepte.</translation>
    </message>
    <message>
        <source>A mature worker</source>
        <translation>Una obrera madura</translation>
    </message>
    <message>
        <source>A measure slows mites down; by itself it seldom brings a load that is over the line under it again.</source>
        <translation>Un manejo frena a los ácaros; por sí solo, rara vez vuelve a bajar del umbral una carga que lo supera.</translation>
    </message>
    <message>
        <source>A monoamine-oxidase inhibitor: keep off skin and eyes.</source>
        <translation>Inhibe la monoaminooxidasa: que no toque la piel ni los ojos.</translation>
    </message>
    <message>
        <source>A nerve poison for people too: gloves, and do what the label says.</source>
        <translation>Veneno para los nervios también de las personas: guantes, y haz lo que diga la etiqueta.</translation>
    </message>
    <message>
        <source>A sugar roll against a wash of the same bees</source>
        <translation>Prueba del azúcar frente a un lavado de las mismas abejas</translation>
    </message>
    <message>
        <source>A tenth from scoop to scoop and 7 % common to all scoops of one hand.</source>
        <translation>Una décima parte de medida a medida y un 7 % común a todas las de una mano.</translation>
    </message>
    <message>
        <source>A tenth of the mean.</source>
        <translation>Una décima parte de la media.</translation>
    </message>
    <message>
        <source>A worker full of honey</source>
        <translation>Una obrera llena de miel</translation>
    </message>
    <message>
        <source>A worker just emerged</source>
        <translation>Una obrera recién nacida</translation>
    </message>
    <message>
        <source>Abbott 1925, J Econ Entomol 18:265</source>
        <translation>Abbott 1925, J Econ Entomol 18:265</translation>
    </message>
    <message>
        <source>About four weeks.</source>
        <translation>Unas cuatro semanas.</translation>
    </message>
    <message>
        <source>About six weeks.</source>
        <translation>Unas seis semanas.</translation>
    </message>
    <message>
        <source>About; so a frame without brood makes the load look too low.</source>
        <translation>Aproximado; por eso un cuadro sin cría hace parecer la carga demasiado baja.</translation>
    </message>
    <message>
        <source>About; the entrance stays fully open.</source>
        <translation>Aproximado; la piquera queda abierta del todo.</translation>
    </message>
    <message>
        <source>Above this load no line means anything</source>
        <translation>Por encima de esta carga ningún umbral dice nada</translation>
    </message>
    <message>
        <source>Above this share: treat.</source>
        <translation>Por encima de esta parte: tratar.</translation>
    </message>
    <message>
        <source>Active substance</source>
        <translation>Sustancia activa</translation>
    </message>
    <message>
        <source>Active substances</source>
        <translation>Sustancias activas</translation>
    </message>
    <message>
        <source>Adult bees of one frame of a brood box.</source>
        <translation>Abejas adultas de un cuadro de la cámara de cría.</translation>
    </message>
    <message>
        <source>Adult bees, middle of April</source>
        <translation>Abejas adultas, mediados de abril</translation>
    </message>
    <message>
        <source>Adult bees, middle of August</source>
        <translation>Abejas adultas, mediados de agosto</translation>
    </message>
    <message>
        <source>Adult bees, middle of December</source>
        <translation>Abejas adultas, mediados de diciembre</translation>
    </message>
    <message>
        <source>Adult bees, middle of February</source>
        <translation>Abejas adultas, mediados de febrero</translation>
    </message>
    <message>
        <source>Adult bees, middle of January</source>
        <translation>Abejas adultas, mediados de enero</translation>
    </message>
    <message>
        <source>Adult bees, middle of July</source>
        <translation>Abejas adultas, mediados de julio</translation>
    </message>
    <message>
        <source>Adult bees, middle of June</source>
        <translation>Abejas adultas, mediados de junio</translation>
    </message>
    <message>
        <source>Adult bees, middle of March</source>
        <translation>Abejas adultas, mediados de marzo</translation>
    </message>
    <message>
        <source>Adult bees, middle of May</source>
        <translation>Abejas adultas, mediados de mayo</translation>
    </message>
    <message>
        <source>Adult bees, middle of November</source>
        <translation>Abejas adultas, mediados de noviembre</translation>
    </message>
    <message>
        <source>Adult bees, middle of October</source>
        <translation>Abejas adultas, mediados de octubre</translation>
    </message>
    <message>
        <source>Adult bees, middle of September</source>
        <translation>Abejas adultas, mediados de septiembre</translation>
    </message>
    <message>
        <source>After Calatayud &amp; Verdu 1993 and Martin 1998</source>
        <translation>After Calatayud &amp; Verdu 1993 and Martin 1998</translation>
    </message>
    <message>
        <source>Agency pages on satellite positioning</source>
        <translation>Páginas de organismos sobre posición por satélite</translation>
    </message>
    <message>
        <source>Agrees with counted washes of Aurell et al. 2025: a tenth a scoop.</source>
        <translation>Concuerda con los lavados contados de Aurell et al. 2025: una décima parte por medida.</translation>
    </message>
    <message>
        <source>Alberta</source>
        <translation>Alberta</translation>
    </message>
    <message>
        <source>Alberta, fall</source>
        <translation>Alberta, otoño</translation>
    </message>
    <message>
        <source>Alberta, spring</source>
        <translation>Alberta, primavera</translation>
    </message>
    <message>
        <source>Alcohol</source>
        <translation>Alcohol</translation>
    </message>
    <message>
        <source>Alcohol by hand, one minute, first rinse</source>
        <translation>Alcohol a mano, un minuto, primer enjuague</translation>
    </message>
    <message>
        <source>Alcohol for the wash</source>
        <translation>Alcohol para el lavado</translation>
    </message>
    <message>
        <source>Amitraz</source>
        <translation>Amitraz</translation>
    </message>
    <message>
        <source>Aurell et al. 2024, J Insect Sci (data CC-BY-4.0)</source>
        <translation>Aurell et al. 2024, J Insect Sci (data CC-BY-4.0)</translation>
    </message>
    <message>
        <source>Aurell et al. 2025, J Econ Entomol, doi 10.1093/jee/toaf126 (data CC-BY-4.0)</source>
        <translation>Aurell et al. 2025, J Econ Entomol, doi 10.1093/jee/toaf126 (data CC-BY-4.0)</translation>
    </message>
    <message>
        <source>Bavaria</source>
        <translation>Baviera</translation>
    </message>
    <message>
        <source>Bavaria, July: treat at once</source>
        <translation>Baviera, julio: tratar enseguida</translation>
    </message>
    <message>
        <source>Bavaria, July: treat soon</source>
        <translation>Baviera, julio: tratar pronto</translation>
    </message>
    <message>
        <source>Bees counted in washes of one study</source>
        <translation>Abejas contadas en lavados de un estudio</translation>
    </message>
    <message>
        <source>Bees for one colony</source>
        <translation>Abejas para una colonia</translation>
    </message>
    <message>
        <source>Bees have to move about.</source>
        <translation>Las abejas tienen que moverse.</translation>
    </message>
    <message>
        <source>Bees in a half cup, highest published figure</source>
        <translation>Abejas en media taza, la cifra publicada más alta</translation>
    </message>
    <message>
        <source>Bees in a half cup, the trade's figure</source>
        <translation>Abejas en media taza, la cifra del oficio</translation>
    </message>
    <message>
        <source>Bees in later washes of the same study</source>
        <translation>Abejas en lavados posteriores del mismo estudio</translation>
    </message>
    <message>
        <source>Bees in one US fluid ounce, after tapping</source>
        <translation>Abejas en una onza líquida de EE. UU., tras golpear</translation>
    </message>
    <message>
        <source>Bees in the scoop</source>
        <translation>Abejas en la medida</translation>
    </message>
    <message>
        <source>Bees on a deep frame, average</source>
        <translation>Abejas en un cuadro hondo, media</translation>
    </message>
    <message>
        <source>Bees on a deep frame, full</source>
        <translation>Abejas en un cuadro hondo, lleno</translation>
    </message>
    <message>
        <source>Bees on a deep frame, one layer</source>
        <translation>Abejas en un cuadro hondo, una capa</translation>
    </message>
    <message>
        <source>Bees per ml by the trade's figure</source>
        <translation>Abejas por ml con la cifra del oficio</translation>
    </message>
    <message>
        <source>Bees per ml, settled by rapping</source>
        <translation>Abejas por ml, asentadas a golpes</translation>
    </message>
    <message>
        <source>Bees settled by rapping the cup: volume of 300</source>
        <translation>Abejas asentadas a golpes: volumen de 300</translation>
    </message>
    <message>
        <source>Bees that find and clear infested brood slow the mites down from the next generation on.</source>
        <translation>Las abejas que hallan y limpian la cría infestada frenan a los ácaros desde la generación siguiente.</translation>
    </message>
    <message>
        <source>Below the 92.9 +/- 5.5 % of Macedo, Wu &amp; Ellis 2002.</source>
        <translation>Por debajo del 92,9 +/- 5,5 % de Macedo, Wu &amp; Ellis 2002.</translation>
    </message>
    <message>
        <source>Below the published 92.9 %, because figures from memory are lower.</source>
        <translation>Por debajo del 92,9 % publicado, porque las cifras de memoria son más bajas.</translation>
    </message>
    <message>
        <source>Berry et al. 2022</source>
        <translation>Berry et al. 2022</translation>
    </message>
    <message>
        <source>Between both ends lie 90 %.</source>
        <translation>Entre los dos extremos está el 90 %.</translation>
    </message>
    <message>
        <source>Between figures from memory; a second rinse of your own replaces it.</source>
        <translation>Entre cifras de memoria; un segundo enjuague tuyo la sustituye.</translation>
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
        <translation>Parada de cría</translation>
    </message>
    <message>
        <source>Burgett &amp; Burikam 1985, J Econ Entomol 78:1154-1156</source>
        <translation>Burgett &amp; Burikam 1985, J Econ Entomol 78:1154-1156</translation>
    </message>
    <message>
        <source>Burns easily: no lit smoker, no flame and no cigarette beside an open jar.</source>
        <translation>Arde con facilidad: ni ahumador encendido, ni llama, ni cigarrillo junto a un frasco abierto.</translation>
    </message>
    <message>
        <source>Burns skin and eyes: acid-proof gloves and goggles, also when taking the carriers out.</source>
        <translation>Quema la piel y los ojos: guantes a prueba de ácidos y gafas, también al sacar los soportes.</translation>
    </message>
    <message>
        <source>Burns skin, eyes and lungs, as vapour and as dust: acid-proof gloves, goggles and the respirator the label asks for.</source>
        <translation>Quema la piel, los ojos y los pulmones, como vapor y como polvo: guantes a prueba de ácidos, gafas y la mascarilla respiratoria que pida la etiqueta.</translation>
    </message>
    <message>
        <source>Burns skin, eyes and lungs, its vapour too: acid-proof gloves, goggles and the respirator the label asks for.</source>
        <translation>Quema la piel, los ojos y los pulmones, también su vapor: guantes a prueba de ácidos, gafas y la mascarilla respiratoria que pida la etiqueta.</translation>
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
        <translation>Celdas de zángano operculadas, mediados de abril</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of August</source>
        <translation>Celdas de zángano operculadas, mediados de agosto</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of December</source>
        <translation>Celdas de zángano operculadas, mediados de diciembre</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of February</source>
        <translation>Celdas de zángano operculadas, mediados de febrero</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of January</source>
        <translation>Celdas de zángano operculadas, mediados de enero</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of July</source>
        <translation>Celdas de zángano operculadas, mediados de julio</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of June</source>
        <translation>Celdas de zángano operculadas, mediados de junio</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of March</source>
        <translation>Celdas de zángano operculadas, mediados de marzo</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of May</source>
        <translation>Celdas de zángano operculadas, mediados de mayo</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of November</source>
        <translation>Celdas de zángano operculadas, mediados de noviembre</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of October</source>
        <translation>Celdas de zángano operculadas, mediados de octubre</translation>
    </message>
    <message>
        <source>Capped drone cells, middle of September</source>
        <translation>Celdas de zángano operculadas, mediados de septiembre</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of April</source>
        <translation>Celdas de obrera operculadas, mediados de abril</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of August</source>
        <translation>Celdas de obrera operculadas, mediados de agosto</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of December</source>
        <translation>Celdas de obrera operculadas, mediados de diciembre</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of February</source>
        <translation>Celdas de obrera operculadas, mediados de febrero</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of January</source>
        <translation>Celdas de obrera operculadas, mediados de enero</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of July</source>
        <translation>Celdas de obrera operculadas, mediados de julio</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of June</source>
        <translation>Celdas de obrera operculadas, mediados de junio</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of March</source>
        <translation>Celdas de obrera operculadas, mediados de marzo</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of May</source>
        <translation>Celdas de obrera operculadas, mediados de mayo</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of November</source>
        <translation>Celdas de obrera operculadas, mediados de noviembre</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of October</source>
        <translation>Celdas de obrera operculadas, mediados de octubre</translation>
    </message>
    <message>
        <source>Capped worker cells, middle of September</source>
        <translation>Celdas de obrera operculadas, mediados de septiembre</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Precaución</translation>
    </message>
    <message>
        <source>Chance of being over above which a load is over a line</source>
        <translation>Probabilidad por encima de la cual una carga supera un umbral</translation>
    </message>
    <message>
        <source>Chance of being over from which a load is close to a line</source>
        <translation>Probabilidad desde la que una carga está cerca de un umbral</translation>
    </message>
    <message>
        <source>Choice of the Halfcup project</source>
        <translation>Elección del proyecto Halfcup</translation>
    </message>
    <message>
        <source>Choice of the Halfcup project, usual figures of a northern temperate colony</source>
        <translation>Elección del proyecto Halfcup, cifras habituales de una colonia de la zona templada del norte</translation>
    </message>
    <message>
        <source>Choices in the arithmetic</source>
        <translation>Elecciones del cálculo</translation>
    </message>
    <message>
        <source>Colonies died at</source>
        <translation>Murieron colonias a</translation>
    </message>
    <message>
        <source>Colonies for one yard</source>
        <translation>Colonias para un apiario</translation>
    </message>
    <message>
        <source>Colours told apart by the colour-blind</source>
        <translation>Colores que distinguen las personas daltónicas</translation>
    </message>
    <message>
        <source>Contrast of #0072B2 on white</source>
        <translation>Contraste de #0072B2 sobre blanco</translation>
    </message>
    <message>
        <source>Contrast of #595959 on white</source>
        <translation>Contraste de #595959 sobre blanco</translation>
    </message>
    <message>
        <source>Contrast of #767676 on white</source>
        <translation>Contraste de #767676 sobre blanco</translation>
    </message>
    <message>
        <source>Contrast of text, at least</source>
        <translation>Contraste del texto, al menos</translation>
    </message>
    <message>
        <source>Correction by untreated colonies, counts before and after</source>
        <translation>Corrección con colonias sin tratar, recuentos antes y después</translation>
    </message>
    <message>
        <source>Correction by untreated colonies, one count each</source>
        <translation>Corrección con colonias sin tratar, un recuento cada una</translation>
    </message>
    <message>
        <source>Coumaphos</source>
        <translation>Cumafós</translation>
    </message>
    <message>
        <source>Counted washes of Aurell et al. 2025 give 0.103.</source>
        <translation>Los lavados contados de Aurell et al. 2025 dan 0,103.</translation>
    </message>
    <message>
        <source>Counting a third of a board's cells</source>
        <translation>Contar un tercio de las celdas de una lámina</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Duración</translation>
    </message>
    <message>
        <source>Course of a German chamber of agriculture</source>
        <translation>Curso de una cámara agraria alemana</translation>
    </message>
    <message>
        <source>Covers 88 to 130 mg a bee by age and food.</source>
        <translation>Abarca de 88 a 130 mg por abeja según edad y alimento.</translation>
    </message>
    <message>
        <source>Currie &amp; Gatien 2006, Can Entomol 138:238-252</source>
        <translation>Currie &amp; Gatien 2006, Can Entomol 138:238-252</translation>
    </message>
    <message>
        <source>Daily highs at their best</source>
        <translation>Máximas diarias más favorables</translation>
    </message>
    <message>
        <source>Daily highs, limits</source>
        <translation>Máximas diarias, límites</translation>
    </message>
    <message>
        <source>Days after the end of a treatment for a wash that judges it</source>
        <translation>Días tras el final de un tratamiento para el lavado que lo juzga</translation>
    </message>
    <message>
        <source>Days run before the start so that ages settle</source>
        <translation>Días calculados antes del inicio para que las edades se asienten</translation>
    </message>
    <message>
        <source>Days they may lie apart</source>
        <translation>Días que pueden separarlos</translation>
    </message>
    <message>
        <source>Days to double at 0.021 per day</source>
        <translation>Días para duplicarse a 0,021 al día</translation>
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
        <translation>Obtenido en el campo como 15 a 38 ácaros por 300 abejas con éter, que halla menos que un lavado.</translation>
    </message>
    <message>
        <source>Deviation of a colony from the season's course</source>
        <translation>Desviación de una colonia respecto al curso de la temporada</translation>
    </message>
    <message>
        <source>Did the treatment work</source>
        <translation>¿Funcionó el tratamiento?</translation>
    </message>
    <message>
        <source>Dietemann et al. 2013 print 14.3, which is a slip.</source>
        <translation>Dietemann et al. 2013 imprimen 14,3, que es una errata.</translation>
    </message>
    <message>
        <source>Dietemann et al. 2013, J Apic Res 52(1), section 4.2.3.1.1, after Lee et al. 2010</source>
        <translation>Dietemann et al. 2013, J Apic Res 52(1), section 4.2.3.1.1, after Lee et al. 2010</translation>
    </message>
    <message>
        <source>Do not use the class used last again; where there is no class number, do not use the same substance again</source>
        <translation>No repitas la clase usada la última vez; si no hay número de clase, no repitas la misma sustancia</translation>
    </message>
    <message>
        <source>Doubling about every month</source>
        <translation>Se duplican cada mes, más o menos</translation>
    </message>
    <message>
        <source>Drone brood removal</source>
        <translation>Retirar cría de zángano</translation>
    </message>
    <message>
        <source>Drone brood under its capping</source>
        <translation>Cría de zángano bajo su opérculo</translation>
    </message>
    <message>
        <source>E69F00 56B4E9 009E73 F0E442 0072B2 D55E00 CC79A7 000000</source>
        <translation>E69F00 56B4E9 009E73 F0E442 0072B2 D55E00 CC79A7 000000</translation>
    </message>
    <message>
        <source>EMA/CVMP/EWP/459883/2008, quoted in Dietemann et al. 2013, section 4.5.4</source>
        <translation>EMA/CVMP/EWP/459883/2008, quoted in Dietemann et al. 2013, section 4.5.4</translation>
    </message>
    <message>
        <source>Eats skin and eyes, its vapour hurts the lungs: acid-proof gloves, goggles, respirator by label.</source>
        <translation>Corroe la piel y los ojos, y su vapor daña los pulmones: guantes a prueba de ácidos, gafas y mascarilla respiratoria según la etiqueta.</translation>
    </message>
    <message>
        <source>Eats skin and eyes, vapour and dust hurt the lungs: acid-proof gloves, goggles, respirator by label.</source>
        <translation>Corroe la piel y los ojos; su vapor y su polvo dañan los pulmones: guantes a prueba de ácidos, gafas y mascarilla respiratoria según la etiqueta.</translation>
    </message>
    <message>
        <source>Economic threshold; colonies lost more often the more months they spent above it.</source>
        <translation>Umbral económico; cuantos más meses por encima, más colonias se perdieron.</translation>
    </message>
    <message>
        <source>Every month, beginning when colonies can first be opened.</source>
        <translation>Cada mes, desde que se pueden abrir las colonias.</translation>
    </message>
    <message>
        <source>Exact Poisson 95 % limits of 25</source>
        <translation>Límites exactos de Poisson del 95 % de 25</translation>
    </message>
    <message>
        <source>Exact Poisson 95 % limits of 5</source>
        <translation>Límites exactos de Poisson del 95 % de 5</translation>
    </message>
    <message>
        <source>Exact Poisson 95 % limits of 9</source>
        <translation>Límites exactos de Poisson del 95 % de 9</translation>
    </message>
    <message>
        <source>Exact Poisson 95 % upper limit of 0</source>
        <translation>Límite superior exacto de Poisson del 95 % de 0</translation>
    </message>
    <message>
        <source>Exact Poisson 99 % limits of 25</source>
        <translation>Límites exactos de Poisson del 99 % de 25</translation>
    </message>
    <message>
        <source>Example: 50 living untreated, 2 treated</source>
        <translation>Ejemplo: 50 vivos sin tratar, 2 tratados</translation>
    </message>
    <message>
        <source>Example: treated 30 then 6, untreated 28 then 26</source>
        <translation>Ejemplo: tratadas 30 y luego 6, sin tratar 28 y luego 26</translation>
    </message>
    <message>
        <source>Example: treated 50 then 5, untreated 40 then 60</source>
        <translation>Ejemplo: tratadas 50 y luego 5, sin tratar 40 y luego 60</translation>
    </message>
    <message>
        <source>Far worse under trees than the phone reports: its accuracy is kept with every position.</source>
        <translation>Bajo árboles, mucho peor de lo que dice el teléfono: con cada posición se guarda su precisión.</translation>
    </message>
    <message>
        <source>Fast growth in the season's picture</source>
        <translation>Crecimiento rápido en la imagen de la temporada</translation>
    </message>
    <message>
        <source>Fewer bees than this may leave the answer open</source>
        <translation>Con menos abejas que estas el resultado puede quedar abierto</translation>
    </message>
    <message>
        <source>Fewer bees than this say little</source>
        <translation>Con menos abejas que estas se sabe poco</translation>
    </message>
    <message>
        <source>Fewer mites than this before a treatment say little about what it did</source>
        <translation>Con menos ácaros que estos antes de tratar se sabe poco de lo que hizo</translation>
    </message>
    <message>
        <source>Fewest bees in the colony</source>
        <translation>Mínimo de abejas en la colonia</translation>
    </message>
    <message>
        <source>Field trials in the United States</source>
        <translation>Ensayos de campo en Estados Unidos</translation>
    </message>
    <message>
        <source>First days whose highs matter most</source>
        <translation>Primeros días cuyas máximas importan más</translation>
    </message>
    <message>
        <source>Fitted to near-replicate washes of 65 colonies: 6.9. Extra spread of 38 % of the load.</source>
        <translation>Ajustada a lavados casi repetidos de 65 colonias: 6,9. Dispersión añadida del 38 % de la carga.</translation>
    </message>
    <message>
        <source>Five mites in a half cup of 300 bees, rounded.</source>
        <translation>Cinco ácaros en media taza de 300 abejas, redondeado.</translation>
    </message>
    <message>
        <source>Flumethrin</source>
        <translation>Flumetrina</translation>
    </message>
    <message>
        <source>Follows from the definition of the US gallon (231 cubic inches, 3785.411784 ml): one half of a sixteenth</source>
        <translation>Se sigue de la definición del galón de EE. UU. (231 pulgadas cúbicas, 3785,411784 ml): la mitad de un dieciseisavo</translation>
    </message>
    <message>
        <source>For a young colony, over 5 a day already means treat.</source>
        <translation>En una colonia joven, más de 5 al día ya es tratar.</translation>
    </message>
    <message>
        <source>Formic acid</source>
        <translation>Ácido fórmico</translation>
    </message>
    <message>
        <source>Formic acid, pads or strips</source>
        <translation>Ácido fórmico, almohadillas o tiras</translation>
    </message>
    <message>
        <source>Formula of WCAG 2.2</source>
        <translation>Fórmula de WCAG 2.2</translation>
    </message>
    <message>
        <source>Four weeks and more.</source>
        <translation>Cuatro semanas y más.</translation>
    </message>
    <message>
        <source>Fries, Camazine &amp; Sneyd 1994; Martin 1998</source>
        <translation>Fries, Camazine &amp; Sneyd 1994; Martin 1998</translation>
    </message>
    <message>
        <source>From 0.25 to 3 per 100 after winter and spring treatments, Florida</source>
        <translation>De 0,25 a 3 por 100 tras tratar en invierno y primavera, Florida</translation>
    </message>
    <message>
        <source>From mites on adults to adults plus capped brood</source>
        <translation>De los ácaros en adultas a adultas más cría operculada</translation>
    </message>
    <message>
        <source>From none to outright failure, yard by yard.</source>
        <translation>De ninguna a fracaso total, según el apiario.</translation>
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
        <translation>Química general; decide qué parte de ácaros cuenta como eficaz</translation>
    </message>
    <message>
        <source>General usage</source>
        <translation>Uso general</translation>
    </message>
    <message>
        <source>German wash scale; course of a german chamber of agriculture</source>
        <translation>Balanza de lavado alemana; curso de una cámara agraria alemana</translation>
    </message>
    <message>
        <source>Germany, July: below this no acute risk, above it watch</source>
        <translation>Alemania, julio: por debajo, sin riesgo agudo; por encima, vigilar</translation>
    </message>
    <message>
        <source>Germany, July: treat at once</source>
        <translation>Alemania, julio: tratar enseguida</translation>
    </message>
    <message>
        <source>Germany, July: young colony</source>
        <translation>Alemania, julio: colonia joven</translation>
    </message>
    <message>
        <source>Gregorc &amp; Planinc 2001, Apidologie 32:333-340</source>
        <translation>Gregorc &amp; Planinc 2001, Apidologie 32:333-340</translation>
    </message>
    <message>
        <source>Growth of the load without brood</source>
        <translation>Crecimiento de la carga sin cría</translation>
    </message>
    <message>
        <source>Growth with brood</source>
        <translation>Crecimiento con cría</translation>
    </message>
    <message>
        <source>Guidance of the province of Alberta</source>
        <translation>Guía de la provincia de Alberta</translation>
    </message>
    <message>
        <source>Guidance of the province of Ontario</source>
        <translation>Guía de la provincia de Ontario</translation>
    </message>
    <message>
        <source>Guidance quoted in a second source</source>
        <translation>Guía citada en una segunda fuente</translation>
    </message>
    <message>
        <source>Half a US cup</source>
        <translation>Media taza de EE. UU.</translation>
    </message>
    <message>
        <source>Half a year</source>
        <translation>Medio año</translation>
    </message>
    <message>
        <source>Half to double. Colonies differ more than that when they collapse or throw out brood.</source>
        <translation>De la mitad al doble. Las colonias difieren más cuando se hunden o sacan cría.</translation>
    </message>
    <message>
        <source>Hands, eyes and files</source>
        <translation>Manos, ojos y archivos</translation>
    </message>
    <message>
        <source>Hazards</source>
        <translation>Peligros</translation>
    </message>
    <message>
        <source>Hazards to people</source>
        <translation>Peligros para las personas</translation>
    </message>
    <message>
        <source>Henderson &amp; Tilton 1955, J Econ Entomol 48:157</source>
        <translation>Henderson &amp; Tilton 1955, J Econ Entomol 48:157</translation>
    </message>
    <message>
        <source>Hohenheim apiculture</source>
        <translation>Apicultura de Hohenheim</translation>
    </message>
    <message>
        <source>Hop beta acids</source>
        <translation>Beta-ácidos del lúpulo</translation>
    </message>
    <message>
        <source>How far an outlook is shown</source>
        <translation>Hasta dónde se muestra una previsión</translation>
    </message>
    <message>
        <source>How far measures go</source>
        <translation>Hasta dónde llegan los manejos</translation>
    </message>
    <message>
        <source>How far the factors for natural fall may be off, up or down</source>
        <translation>Cuánto pueden fallar los factores de la caída natural, arriba o abajo</translation>
    </message>
    <message>
        <source>How fast mites grow, and where they are</source>
        <translation>Cómo crecen los ácaros y dónde están</translation>
    </message>
    <message>
        <source>How much jars of one colony differ (gamma shape)</source>
        <translation>Cuánto difieren los frascos de una colonia (forma de la gamma)</translation>
    </message>
    <message>
        <source>How much resistance weighs</source>
        <translation>Cuánto pesa la resistencia</translation>
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
        <translation>Clasificación IRAC de modos de acción</translation>
    </message>
    <message>
        <source>In the published ratio to the worker rate</source>
        <translation>En la proporción publicada respecto a la tasa de obrera</translation>
    </message>
    <message>
        <source>In two rounds.</source>
        <translation>En dos tandas.</translation>
    </message>
    <message>
        <source>Inhibits monoamine oxidase (ask a doctor if you take medicines that do); keep off skin and eyes.</source>
        <translation>Inhibe la monoaminooxidasa (pregunta a un médico si tomas medicamentos que lo hacen); que no toque la piel ni los ojos.</translation>
    </message>
    <message>
        <source>Irritates skin and eyes.</source>
        <translation>Irrita la piel y los ojos.</translation>
    </message>
    <message>
        <source>Irritates skin and eyes: gloves, and wash hands before touching the face.</source>
        <translation>Irrita la piel y los ojos: guantes, y lavarse las manos antes de tocarse la cara.</translation>
    </message>
    <message>
        <source>It taints honey.</source>
        <translation>Da sabor a la miel.</translation>
    </message>
    <message>
        <source>Keep off skin and eyes: gloves, and see the label.</source>
        <translation>Que no toque la piel ni los ojos: guantes, y mira la etiqueta.</translation>
    </message>
    <message>
        <source>Key for a hand in mittens, at least</source>
        <translation>Tecla para una mano con manoplas, al menos</translation>
    </message>
    <message>
        <source>Kills under cappings</source>
        <translation>Mata bajo opérculo</translation>
    </message>
    <message>
        <source>Kind of substance</source>
        <translation>Clase de sustancia</translation>
    </message>
    <message>
        <source>Kulhanek et al. 2021, PLoS ONE 16:e0245490; also Front Ecol Evol 2023, 11:1102457</source>
        <translation>Kulhanek et al. 2021, PLoS ONE 16:e0245490; also Front Ecol Evol 2023, 11:1102457</translation>
    </message>
    <message>
        <source>Label of one product</source>
        <translation>Etiqueta de un producto</translation>
    </message>
    <message>
        <source>Least spread between jars</source>
        <translation>Dispersión mínima entre frascos</translation>
    </message>
    <message>
        <source>Least squared spread between colonies</source>
        <translation>Dispersión mínima al cuadrado entre colonias</translation>
    </message>
    <message>
        <source>Lee, Moon, Burkness, Hutchison &amp; Spivak 2010, J Econ Entomol 103:1039-1050</source>
        <translation>Lee, Moon, Burkness, Hutchison &amp; Spivak 2010, J Econ Entomol 103:1039-1050</translation>
    </message>
    <message>
        <source>Lee, Moon, Burkness, Hutchison &amp; Spivak 2010, J Econ Entomol 103:1039-1050; the upper figure is from memory</source>
        <translation>Lee, Moon, Burkness, Hutchison &amp; Spivak 2010, J Econ Entomol 103:1039-1050; la cifra superior es de memoria</translation>
    </message>
    <message>
        <source>Left too long, the frame breeds mites instead of taking them out.</source>
        <translation>Si se deja demasiado tiempo, el cuadro cría ácaros en vez de sacarlos.</translation>
    </message>
    <message>
        <source>Less than three; over 0.028 per day.</source>
        <translation>Menos de tres; más de 0,028 al día.</translation>
    </message>
    <message>
        <source>Light in direct sun</source>
        <translation>Luz a pleno sol</translation>
    </message>
    <message>
        <source>Lighting tables</source>
        <translation>Tablas de iluminación</translation>
    </message>
    <message>
        <source>Lines a load is held against</source>
        <translation>Umbrales con que se compara una carga</translation>
    </message>
    <message>
        <source>Lines for boards and drone brood</source>
        <translation>Umbrales para láminas y cría de zángano</translation>
    </message>
    <message>
        <source>Lines of a calendar file fold at</source>
        <translation>Las líneas de un archivo de calendario se pliegan a los</translation>
    </message>
    <message>
        <source>Load at which the season's picture ends, the colony likely failing</source>
        <translation>Carga en que acaba la imagen de la temporada; la colonia probablemente fracasa</translation>
    </message>
    <message>
        <source>Load in the brood nest against the honey area</source>
        <translation>Carga en el nido de cría frente a la zona de miel</translation>
    </message>
    <message>
        <source>Longer work in the brood nest means more stings: veil and gloves, and help within call for anyone who reacts to them.</source>
        <translation>Más trabajo en el nido de cría son más picaduras: velo y guantes, y ayuda cerca para quien reaccione a ellas.</translation>
    </message>
    <message>
        <source>Lower end of the range shown</source>
        <translation>Extremo inferior del margen mostrado</translation>
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
        <translation>Manitoba, finales del verano</translation>
    </message>
    <message>
        <source>Manitoba, spring</source>
        <translation>Manitoba, primavera</translation>
    </message>
    <message>
        <source>Martin 1998; scale computed</source>
        <translation>Martin 1998; escala calculada</translation>
    </message>
    <message>
        <source>Measures without a substance</source>
        <translation>Manejos sin sustancia</translation>
    </message>
    <message>
        <source>Mesh the mites are shaken through</source>
        <translation>Malla por la que se sacuden los ácaros</translation>
    </message>
    <message>
        <source>Mississippi</source>
        <translation>Misisipi</translation>
    </message>
    <message>
        <source>Mississippi State University Extension</source>
        <translation>Extensión de la Universidad Estatal de Misisipi</translation>
    </message>
    <message>
        <source>Mississippi, February</source>
        <translation>Misisipi, febrero</translation>
    </message>
    <message>
        <source>Mitchell 1970, Am Bee J 110</source>
        <translation>Mitchell 1970, Am Bee J 110</translation>
    </message>
    <message>
        <source>Mites breed in drone cells far more often than in worker cells; capped drone brood taken out takes its mites along.</source>
        <translation>Los ácaros crían en celdas de zángano mucho más que en las de obrera; la cría de zángano operculada que se saca se lleva sus ácaros.</translation>
    </message>
    <message>
        <source>Mites carried in by bees</source>
        <translation>Ácaros traídos por abejas</translation>
    </message>
    <message>
        <source>Mites dying in summer</source>
        <translation>Ácaros que mueren en verano</translation>
    </message>
    <message>
        <source>Mites dying in winter</source>
        <translation>Ácaros que mueren en invierno</translation>
    </message>
    <message>
        <source>Mites entering drone cells, published rate</source>
        <translation>Ácaros que entran en celdas de zángano, tasa publicada</translation>
    </message>
    <message>
        <source>Mites entering drone cells, used</source>
        <translation>Ácaros que entran en celdas de zángano, usado</translation>
    </message>
    <message>
        <source>Mites entering worker cells, published rate</source>
        <translation>Ácaros que entran en celdas de obrera, tasa publicada</translation>
    </message>
    <message>
        <source>Mites entering worker cells, used</source>
        <translation>Ácaros que entran en celdas de obrera, usado</translation>
    </message>
    <message>
        <source>Mites in the colony from natural fall, March, April, September, October</source>
        <translation>Ácaros en la colonia según la caída natural, marzo, abril, septiembre, octubre</translation>
    </message>
    <message>
        <source>Mites in the colony from natural fall, May to August</source>
        <translation>Ácaros en la colonia según la caída natural, de mayo a agosto</translation>
    </message>
    <message>
        <source>Mites in the colony from natural fall, November to February</source>
        <translation>Ácaros en la colonia según la caída natural, de noviembre a febrero</translation>
    </message>
    <message>
        <source>Mites killed</source>
        <translation>Ácaros muertos</translation>
    </message>
    <message>
        <source>Mites killed with capped brood</source>
        <translation>Ácaros muertos con cría operculada</translation>
    </message>
    <message>
        <source>Mites leaving a drone cell for one that entered</source>
        <translation>Ácaros que salen de una celda de zángano por cada uno que entró</translation>
    </message>
    <message>
        <source>Mites leaving a worker cell for one that entered</source>
        <translation>Ácaros que salen de una celda de obrera por cada uno que entró</translation>
    </message>
    <message>
        <source>Mites lose 0.002 and bees 0.003 to 0.005 a day (from memory).</source>
        <translation>Los ácaros pierden 0,002 y las abejas de 0,003 a 0,005 al día (de memoria).</translation>
    </message>
    <message>
        <source>Mites low by, northern temperate zone</source>
        <translation>Pocos ácaros para el día (zona templada del norte)</translation>
    </message>
    <message>
        <source>Mites on adult bees in September, with brood</source>
        <translation>Ácaros sobre abejas adultas en septiembre, con cría</translation>
    </message>
    <message>
        <source>Mites on the bees that a count finds</source>
        <translation>Ácaros de las abejas que halla un recuento</translation>
    </message>
    <message>
        <source>Mites that fall off drop out of the hive, and the fall can be counted on a board beneath.</source>
        <translation>Los ácaros que se sueltan caen fuera de la colmena, y la caída se puede contar en una lámina debajo.</translation>
    </message>
    <message>
        <source>Mode of action</source>
        <translation>Modo de acción</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>National Bee Unit, United Kingdom after Martin 1998; limits: Branco, Kidd &amp; Pickard 2006, Apidologie 37:452-461</source>
        <translation>National Bee Unit, Reino Unido, según Martin 1998; límites: Branco, Kidd &amp; Pickard 2006, Apidologie 37:452-461</translation>
    </message>
    <message>
        <source>National Bee Unit, United Kingdom, after Martin 1998</source>
        <translation>National Bee Unit, Reino Unido, según Martin 1998</translation>
    </message>
    <message>
        <source>Netherlands</source>
        <translation>Países Bajos</translation>
    </message>
    <message>
        <source>New queens are sometimes lost; the load falls late, over months.</source>
        <translation>A veces se pierden reinas nuevas; la carga baja tarde, en meses.</translation>
    </message>
    <message>
        <source>Newcombe 1998, Stat Med 17:857-872</source>
        <translation>Newcombe 1998, Stat Med 17:857-872</translation>
    </message>
    <message>
        <source>Nine mites in a half cup of 300 bees. It has no correction for mites a wash misses.</source>
        <translation>Nueve ácaros en media taza de 300 abejas. Sin corrección por los ácaros que escapan al lavado.</translation>
    </message>
    <message>
        <source>Nine mites read with 250 bees in the scoop</source>
        <translation>Nueve ácaros leídos con 250 abejas en la medida</translation>
    </message>
    <message>
        <source>Nine mites read with 300 bees in the scoop</source>
        <translation>Nueve ácaros leídos con 300 abejas en la medida</translation>
    </message>
    <message>
        <source>Nine mites read with 350 bees in the scoop</source>
        <translation>Nueve ácaros leídos con 350 abejas en la medida</translation>
    </message>
    <message>
        <source>Nine mites read with 400 bees in the scoop</source>
        <translation>Nueve ácaros leídos con 400 abejas en la medida</translation>
    </message>
    <message>
        <source>No mite on 50 bees still leaves 9 % chance of more than 3 per 100.</source>
        <translation>Ningún ácaro en 50 abejas deja aún un 9 % de probabilidad de más de 3 por 100.</translation>
    </message>
    <message>
        <source>Not less than a minute.</source>
        <translation>No menos de un minuto.</translation>
    </message>
    <message>
        <source>Nothing found in 100 bees at a true 1 per 100</source>
        <translation>Nada hallado en 100 abejas con 1 por 100 real</translation>
    </message>
    <message>
        <source>Nothing found in 300 bees at a true 1 per 100</source>
        <translation>Nada hallado en 300 abejas con 1 por 100 real</translation>
    </message>
    <message>
        <source>Of three tried, the one whose ranges held best for colonies growing 0 to 0.04 per day.</source>
        <translation>De tres probadas, la de mejores márgenes para colonias que crecen de 0 a 0,04 al día.</translation>
    </message>
    <message>
        <source>Okabe &amp; Ito, color universal design</source>
        <translation>Okabe &amp; Ito, color universal design</translation>
    </message>
    <message>
        <source>Once, while there is no brood.</source>
        <translation>Una vez, mientras no hay cría.</translation>
    </message>
    <message>
        <source>One brood cycle of the mites under cappings.</source>
        <translation>Un ciclo de cría de los ácaros bajo opérculo.</translation>
    </message>
    <message>
        <source>One sample of 300 bees in each, however many stand there.</source>
        <translation>Una muestra de 300 abejas en cada una, haya las que haya.</translation>
    </message>
    <message>
        <source>Only with brood, and not in a colony that is collapsing.</source>
        <translation>Solo con cría, y no en una colonia que se hunde.</translation>
    </message>
    <message>
        <source>Only without brood</source>
        <translation>Solo sin cría</translation>
    </message>
    <message>
        <source>Ontario</source>
        <translation>Ontario</translation>
    </message>
    <message>
        <source>Ontario, August</source>
        <translation>Ontario, agosto</translation>
    </message>
    <message>
        <source>Ontario, May</source>
        <translation>Ontario, mayo</translation>
    </message>
    <message>
        <source>Order in GeoJSON</source>
        <translation>Orden en GeoJSON</translation>
    </message>
    <message>
        <source>Ostiguy &amp; Sammataro 2000, Apidologie 31</source>
        <translation>Ostiguy &amp; Sammataro 2000, Apidologie 31</translation>
    </message>
    <message>
        <source>Over 90 %.</source>
        <translation>Más del 90 %.</translation>
    </message>
    <message>
        <source>Own choice: widespread resistance makes it a choice with care, patchy resistance is said</source>
        <translation>Elección propia: una resistencia extendida exige cuidado; una dispersa solo se dice</translation>
    </message>
    <message>
        <source>Oxalic acid</source>
        <translation>Ácido oxálico</translation>
    </message>
    <message>
        <source>Oxalic acid, long-lasting carriers</source>
        <translation>Ácido oxálico, soportes de larga duración</translation>
    </message>
    <message>
        <source>Oxalic acid, trickled or sublimated</source>
        <translation>Ácido oxálico, goteado o sublimado</translation>
    </message>
    <message>
        <source>Posada-Florez et al. 2022, Insects</source>
        <translation>Posada-Florez et al. 2022, Insects</translation>
    </message>
    <message>
        <source>Position of a phone in the open, 95 %</source>
        <translation>Posición de un teléfono a cielo abierto, 95 %</translation>
    </message>
    <message>
        <source>Powdered sugar for a roll</source>
        <translation>Azúcar en polvo para la prueba</translation>
    </message>
    <message>
        <source>Powdered sugar in a jar</source>
        <translation>Azúcar en polvo en un frasco</translation>
    </message>
    <message>
        <source>Product labels</source>
        <translation>Etiquetas de productos</translation>
    </message>
    <message>
        <source>Product labels and reviews, not read again</source>
        <translation>Etiquetas de productos y revisiones, sin volver a leer</translation>
    </message>
    <message>
        <source>Published statistics the program is tested against</source>
        <translation>Estadísticas publicadas con que se prueba el programa</translation>
    </message>
    <message>
        <source>Published; source to be found again</source>
        <translation>Publicado; fuente por volver a hallar</translation>
    </message>
    <message>
        <source>Puts 17 % of the mites on the bees of 47 September colonies where 29 % were seen.</source>
        <translation>Pone el 17 % de los ácaros sobre las abejas de 47 colonias de septiembre donde se vio el 29 %.</translation>
    </message>
    <message>
        <source>Puts 30 % of the mites on the bees there; 29 % were seen.</source>
        <translation>Pone allí el 30 % de los ácaros sobre las abejas; se vio el 29 %.</translation>
    </message>
    <message>
        <source>Queens lost above</source>
        <translation>Pérdida de reinas por encima de</translation>
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
        <translation>Proporción respecto a las celdas de zángano de memoria; escala fijada para que todos los ácaros crezcan 0,021 al día de mayo a agosto.</translation>
    </message>
    <message>
        <source>Reaches mites on adult bees only.</source>
        <translation>Solo alcanza los ácaros sobre abejas adultas.</translation>
    </message>
    <message>
        <source>Reaches the 29 % seen in September colonies of Aurell et al. 2024.</source>
        <translation>Llega al 29 % visto en colonias de septiembre de Aurell et al. 2024.</translation>
    </message>
    <message>
        <source>Records the law asks for</source>
        <translation>Registros que pide la ley</translation>
    </message>
    <message>
        <source>Red mites on apple leaves, mean</source>
        <translation>Ácaros rojos en hojas de manzano, media</translation>
    </message>
    <message>
        <source>Registration</source>
        <translation>Registro</translation>
    </message>
    <message>
        <source>Regulation (EU) 2019/6, Article 108</source>
        <translation>Reglamento (UE) 2019/6, artículo 108</translation>
    </message>
    <message>
        <source>Requeening with hygienic stock</source>
        <translation>Reina nueva de estirpe higiénica</translation>
    </message>
    <message>
        <source>Resistance</source>
        <translation>Resistencia</translation>
    </message>
    <message>
        <source>Rest after rolling in sugar</source>
        <translation>Reposo tras rodar en azúcar</translation>
    </message>
    <message>
        <source>Reviews, not read again</source>
        <translation>Revisiones, sin volver a leer</translation>
    </message>
    <message>
        <source>Rinkevich 2020, PLoS ONE</source>
        <translation>Rinkevich 2020, PLoS ONE</translation>
    </message>
    <message>
        <source>Rotation</source>
        <translation>Rotación</translation>
    </message>
    <message>
        <source>Sabahi et al. 2017, Apidologie</source>
        <translation>Sabahi et al. 2017, Apidologie</translation>
    </message>
    <message>
        <source>Safety data sheets, not read again</source>
        <translation>Fichas de seguridad, sin volver a leer</translation>
    </message>
    <message>
        <source>Same class as tau-fluvalinate (IRAC 3A)</source>
        <translation>Misma clase que el tau-fluvalinato (IRAC 3A)</translation>
    </message>
    <message>
        <source>Same class as tau-fluvalinate, to which resistance is widespread.</source>
        <translation>Misma clase que el tau-fluvalinato, con resistencia extendida.</translation>
    </message>
    <message>
        <source>Screened floor</source>
        <translation>Fondo de malla</translation>
    </message>
    <message>
        <source>Set against the September colonies of Aurell et al. 2024, J Insect Sci (data CC-BY-4.0)</source>
        <translation>Contrastado con las colonias de septiembre de Aurell et al. 2024, J Insect Sci (datos CC-BY-4.0)</translation>
    </message>
    <message>
        <source>Set so that all mites grow 0.011 per day from May to August</source>
        <translation>Fijado para que todos los ácaros crezcan 0,011 al día de mayo a agosto</translation>
    </message>
    <message>
        <source>Set so that all mites grow 0.031 per day from May to August</source>
        <translation>Fijado para que todos los ácaros crezcan 0,031 al día de mayo a agosto</translation>
    </message>
    <message>
        <source>Seven days was read on a label; the longer ones are from memory. Differs by product.</source>
        <translation>Siete días se leyó en una etiqueta; los más largos son de memoria. Cambia según el producto.</translation>
    </message>
    <message>
        <source>Several labels allow it; others, and other countries, do not.</source>
        <translation>Varias etiquetas lo permiten; otras, y otros países, no.</translation>
    </message>
    <message>
        <source>Shaking a wash</source>
        <translation>Agitar un lavado</translation>
    </message>
    <message>
        <source>Share a sugar roll finds, for the full load</source>
        <translation>Parte que halla la prueba del azúcar, para la carga total</translation>
    </message>
    <message>
        <source>Share a wash finds, for the full load</source>
        <translation>Parte que halla un lavado, para la carga total</translation>
    </message>
    <message>
        <source>Share of all mites that sits on adult bees</source>
        <translation>Parte de todos los ácaros que está sobre abejas adultas</translation>
    </message>
    <message>
        <source>Share of opened drone cells with mites</source>
        <translation>Parte de celdas de zángano abiertas con ácaros</translation>
    </message>
    <message>
        <source>Share of the mites under cappings while there is brood</source>
        <translation>Parte de los ácaros bajo opérculo mientras hay cría</translation>
    </message>
    <message>
        <source>Share to be killed, other substances</source>
        <translation>Parte que debe morir, otras sustancias</translation>
    </message>
    <message>
        <source>Share to be killed, synthetic substances</source>
        <translation>Parte que debe morir, sustancias sintéticas</translation>
    </message>
    <message>
        <source>Slow growth in the season's picture</source>
        <translation>Crecimiento lento en la imagen de la temporada</translation>
    </message>
    <message>
        <source>South-east of the United States</source>
        <translation>Sudeste de Estados Unidos</translation>
    </message>
    <message>
        <source>South-east of the United States, August</source>
        <translation>Sudeste de Estados Unidos, agosto</translation>
    </message>
    <message>
        <source>South-east of the United States, August, board left overnight</source>
        <translation>Sudeste de Estados Unidos, agosto, lámina de una noche</translation>
    </message>
    <message>
        <source>Southern hemisphere: later by</source>
        <translation>Hemisferio sur: más tarde en</translation>
    </message>
    <message>
        <source>Spread between colonies of a yard, for chances and sample sizes</source>
        <translation>Dispersión entre colonias de un apiario, para probabilidades y tamaños de muestra</translation>
    </message>
    <message>
        <source>Spread between colonies of a yard, for the yard's mean</source>
        <translation>Dispersión entre colonias de un apiario, para la media del apiario</translation>
    </message>
    <message>
        <source>Spread between jars before any duplicate jars</source>
        <translation>Dispersión entre frascos antes de tener repetidos</translation>
    </message>
    <message>
        <source>Spread from scoop to scoop of one hand</source>
        <translation>Dispersión de medida a medida de una mano</translation>
    </message>
    <message>
        <source>Spread of growth between colonies</source>
        <translation>Dispersión del crecimiento entre colonias</translation>
    </message>
    <message>
        <source>Spread of one colony's growth about its yard's</source>
        <translation>Dispersión del crecimiento de una colonia en torno al de su apiario</translation>
    </message>
    <message>
        <source>Spread of one scoop before you counted any</source>
        <translation>Dispersión de una medida antes de contar ninguna</translation>
    </message>
    <message>
        <source>Spread of the bees in a scoop nobody counted</source>
        <translation>Dispersión de las abejas en una medida sin contar</translation>
    </message>
    <message>
        <source>Spread of yards' growth about the usual one</source>
        <translation>Dispersión del crecimiento de los apiarios en torno al habitual</translation>
    </message>
    <message>
        <source>Square root of 0.0048; does not shrink with more washes.</source>
        <translation>Raíz cuadrada de 0,0048; no baja con más lavados.</translation>
    </message>
    <message>
        <source>Standard deviation 12 over 47 colonies; the other 71 % sat under cappings.</source>
        <translation>Desviación estándar 12 en 47 colonias; el otro 71 % estaba bajo opérculo.</translation>
    </message>
    <message>
        <source>Standard deviation 32, from 176 samples.</source>
        <translation>Desviación estándar 32, de 176 muestras.</translation>
    </message>
    <message>
        <source>Standard deviation, 1.5 g per hundred bees.</source>
        <translation>Desviación estándar, 1,5 g por cien abejas.</translation>
    </message>
    <message>
        <source>Standard error 0.0038 over 17 colonies; the range is 1.96 of it either side.</source>
        <translation>Error estándar 0,0038 en 17 colonias; el margen es 1,96 veces ese error a cada lado.</translation>
    </message>
    <message>
        <source>Sticky and irritating to skin and eyes: gloves, and see the label.</source>
        <translation>Pegajoso e irritante para la piel y los ojos: guantes, y mira la etiqueta.</translation>
    </message>
    <message>
        <source>Still there when the bees hatch.</source>
        <translation>Sigue ahí cuando nacen las abejas.</translation>
    </message>
    <message>
        <source>Stings</source>
        <translation>Picaduras</translation>
    </message>
    <message>
        <source>Sublimated again and again with brood</source>
        <translation>Sublimado una y otra vez con cría</translation>
    </message>
    <message>
        <source>Swiss guidance, quoted in a second source</source>
        <translation>Guía suiza, citada en una segunda fuente</translation>
    </message>
    <message>
        <source>Switzerland, June: emergency treatment</source>
        <translation>Suiza, junio: tratamiento de urgencia</translation>
    </message>
    <message>
        <source>Taking the sample</source>
        <translation>Tomar la muestra</translation>
    </message>
    <message>
        <source>Tau-fluvalinate</source>
        <translation>Tau-fluvalinato</translation>
    </message>
    <message>
        <source>Ten grams of bees are about a hundred.</source>
        <translation>Diez gramos de abejas son unas cien.</translation>
    </message>
    <message>
        <source>Textbooks</source>
        <translation>Libros de texto</translation>
    </message>
    <message>
        <source>The authors ask each keeper to check it with bees of their own.</source>
        <translation>Los autores piden que cada apicultor lo compruebe con sus abejas.</translation>
    </message>
    <message>
        <source>The authors say themselves that no research stands behind it.</source>
        <translation>Los propios autores dicen que no hay investigación que lo respalde.</translation>
    </message>
    <message>
        <source>The long-lived bees of winter begin to be raised then; count the course of a treatment back from it.</source>
        <translation>Entonces empiezan a criarse las abejas longevas del invierno; cuenta hacia atrás desde ahí la duración de un tratamiento.</translation>
    </message>
    <message>
        <source>The natural logarithm of 2, divided by 30 days.</source>
        <translation>El logaritmo natural de 2 dividido entre 30 días.</translation>
    </message>
    <message>
        <source>The part of it common to all scoops of one hand</source>
        <translation>La parte común a todas las medidas de una mano</translation>
    </message>
    <message>
        <source>The queen can be lost; the colony raises no bees meanwhile: not in the weeks in which winter bees are raised.</source>
        <translation>La reina se puede perder; mientras tanto la colonia no cría abejas: no en las semanas en que se crían las abejas de invierno.</translation>
    </message>
    <message>
        <source>The rule of doubling turned round.</source>
        <translation>La regla de la duplicación, al revés.</translation>
    </message>
    <message>
        <source>The same after summer and autumn treatments</source>
        <translation>Lo mismo tras tratar en verano y otoño</translation>
    </message>
    <message>
        <source>The same guidance gives 30 mites a day on a board.</source>
        <translation>La misma guía da 30 ácaros al día en una lámina.</translation>
    </message>
    <message>
        <source>The same team's scoops moved by a tenth within months: own counts are the cure.</source>
        <translation>Las medidas del mismo equipo variaron una décima parte en meses: el remedio es contar las propias.</translation>
    </message>
    <message>
        <source>The same, k by moments</source>
        <translation>Lo mismo, k por momentos</translation>
    </message>
    <message>
        <source>The same, negative binomial k by maximum likelihood</source>
        <translation>Lo mismo, k binomial negativa por máxima verosimilitud</translation>
    </message>
    <message>
        <source>The same, to do research</source>
        <translation>Lo mismo, para investigar</translation>
    </message>
    <message>
        <source>The same, variance</source>
        <translation>Lo mismo, varianza</translation>
    </message>
    <message>
        <source>The same: its spread</source>
        <translation>Lo mismo: su dispersión</translation>
    </message>
    <message>
        <source>The same: spread from sample to sample</source>
        <translation>Lo mismo: dispersión de una muestra a otra</translation>
    </message>
    <message>
        <source>The same: spread from wash to wash</source>
        <translation>Lo mismo: dispersión de un lavado a otro</translation>
    </message>
    <message>
        <source>The same: spread the app uses for a part of a board</source>
        <translation>Lo mismo: dispersión que usa la aplicación para una parte de la lámina</translation>
    </message>
    <message>
        <source>The trade's rule</source>
        <translation>La regla del oficio</translation>
    </message>
    <message>
        <source>The turn date</source>
        <translation>La fecha límite</translation>
    </message>
    <message>
        <source>Three washes against five</source>
        <translation>Tres lavados frente a cinco</translation>
    </message>
    <message>
        <source>Thymol</source>
        <translation>Timol</translation>
    </message>
    <message>
        <source>Time from one wash to the next in the bee season</source>
        <translation>Tiempo de un lavado al siguiente en la temporada</translation>
    </message>
    <message>
        <source>To be kept for</source>
        <translation>Conservar durante</translation>
    </message>
    <message>
        <source>To be written down in the European Union</source>
        <translation>Lo que hay que anotar en la Unión Europea</translation>
    </message>
    <message>
        <source>Touch target, at least</source>
        <translation>Zona que se toca, al menos</translation>
    </message>
    <message>
        <source>Two other agencies' figures give 338 to 400; count a few scoops of your own.</source>
        <translation>Las cifras de otros dos organismos dan de 338 a 400; cuenta algunas medidas tuyas.</translation>
    </message>
    <message>
        <source>Two to three times as many in a month</source>
        <translation>De dos a tres veces más en un mes</translation>
    </message>
    <message>
        <source>Two to three times in a month.</source>
        <translation>De dos a tres veces en un mes.</translation>
    </message>
    <message>
        <source>USDA-ARS guidance, quoted by a beekeepers' association</source>
        <translation>Guía del USDA-ARS, citada por una asociación de apicultores</translation>
    </message>
    <message>
        <source>United Kingdom, August</source>
        <translation>Reino Unido, agosto</translation>
    </message>
    <message>
        <source>United Kingdom, July</source>
        <translation>Reino Unido, julio</translation>
    </message>
    <message>
        <source>United Kingdom, June</source>
        <translation>Reino Unido, junio</translation>
    </message>
    <message>
        <source>United Kingdom, May</source>
        <translation>Reino Unido, mayo</translation>
    </message>
    <message>
        <source>United Kingdom, September</source>
        <translation>Reino Unido, septiembre</translation>
    </message>
    <message>
        <source>United Kingdom, winter</source>
        <translation>Reino Unido, invierno</translation>
    </message>
    <message>
        <source>United States</source>
        <translation>Estados Unidos</translation>
    </message>
    <message>
        <source>United States federal guidance</source>
        <translation>Guía federal de Estados Unidos</translation>
    </message>
    <message>
        <source>United States federal guidance, board</source>
        <translation>Guía federal de Estados Unidos, lámina</translation>
    </message>
    <message>
        <source>United States, federal guidance</source>
        <translation>Estados Unidos, guía federal</translation>
    </message>
    <message>
        <source>University of Minnesota, poster 155</source>
        <translation>Universidad de Minnesota, póster 155</translation>
    </message>
    <message>
        <source>Untreated colonies in Alabama, March to July</source>
        <translation>Colonias sin tratar en Alabama, de marzo a julio</translation>
    </message>
    <message>
        <source>Upper end of the range shown</source>
        <translation>Extremo superior del margen mostrado</translation>
    </message>
    <message>
        <source>Upper over lower end above which it is left open</source>
        <translation>Extremo superior entre inferior desde el que queda abierto</translation>
    </message>
    <message>
        <source>WCAG 2.2, success criterion 1.4.6</source>
        <translation>WCAG 2.2, criterio 1.4.6</translation>
    </message>
    <message>
        <source>WCAG 2.2, success criterion 2.5.5</source>
        <translation>WCAG 2.2, criterio 2.5.5</translation>
    </message>
    <message>
        <source>WOAH, draft on registration of apiaries, quoted</source>
        <translation>OMSA, borrador sobre registro de apiarios, citado</translation>
    </message>
    <message>
        <source>Wanted precision of a yard's mean, to manage bees</source>
        <translation>Precisión deseada de la media del apiario, para manejar abejas</translation>
    </message>
    <message>
        <source>Wash after the end of a treatment</source>
        <translation>Lavado tras el final de un tratamiento</translation>
    </message>
    <message>
        <source>Washes that make a chance informed by the yard worth showing</source>
        <translation>Lavados para que valga mostrar una probabilidad según el apiario</translation>
    </message>
    <message>
        <source>Water in a shaker, one minute, fewer than 250 bees</source>
        <translation>Agua en un agitador, un minuto, menos de 250 abejas</translation>
    </message>
    <message>
        <source>Weak below 15; above 30 too strong for the bees.</source>
        <translation>Débil por debajo de 15; por encima de 30, demasiado fuerte para las abejas.</translation>
    </message>
    <message>
        <source>Weighed drained bees: spread between hands that drain</source>
        <translation>Abejas escurridas pesadas: dispersión entre manos que escurren</translation>
    </message>
    <message>
        <source>Weighed live bees: spread common to all weighings</source>
        <translation>Abejas vivas pesadas: dispersión común a todas las pesadas</translation>
    </message>
    <message>
        <source>Weighed live bees: spread of one weighing</source>
        <translation>Abejas vivas pesadas: dispersión de una pesada</translation>
    </message>
    <message>
        <source>Weight of that spread</source>
        <translation>Peso de esa dispersión</translation>
    </message>
    <message>
        <source>Weight of the book's figure against your own counted scoops</source>
        <translation>Peso de la cifra del manual frente a tus medidas contadas</translation>
    </message>
    <message>
        <source>Weight of the book's spread where colonies show their own</source>
        <translation>Peso de la dispersión del manual cuando las colonias muestran la suya</translation>
    </message>
    <message>
        <source>What a second rinse adds</source>
        <translation>Lo que añade un segundo enjuague</translation>
    </message>
    <message>
        <source>What beekeepers do; no published source</source>
        <translation>Lo que hacen los apicultores; sin fuente publicada</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Qué hace</translation>
    </message>
    <message>
        <source>What it needs</source>
        <translation>Qué necesita</translation>
    </message>
    <message>
        <source>Where mites are still susceptible.</source>
        <translation>Donde los ácaros aún son sensibles.</translation>
    </message>
    <message>
        <source>Wider; picked because its ranges held the truth more often in simulated yards.</source>
        <translation>Más amplia; elegida porque sus márgenes contuvieron más a menudo la verdad en apiarios simulados.</translation>
    </message>
    <message>
        <source>Widespread.</source>
        <translation>Extendida.</translation>
    </message>
    <message>
        <source>Wilson 95 % limits of 0 in 20</source>
        <translation>Límites de Wilson del 95 % de 0 en 20</translation>
    </message>
    <message>
        <source>Wilson 95 % limits of 1 in 29</source>
        <translation>Límites de Wilson del 95 % de 1 en 29</translation>
    </message>
    <message>
        <source>Wilson 95 % limits of 15 in 148</source>
        <translation>Límites de Wilson del 95 % de 15 en 148</translation>
    </message>
    <message>
        <source>Wilson 95 % limits of 81 in 263</source>
        <translation>Límites de Wilson del 95 % de 81 en 263</translation>
    </message>
    <message>
        <source>Winter screen wash and soapy water are used as well; that is common practice without a source.</source>
        <translation>También se usan líquido limpiaparabrisas de invierno y agua jabonosa; es práctica común sin fuente.</translation>
    </message>
    <message>
        <source>With supers on</source>
        <translation>Con alzas</translation>
    </message>
    <message>
        <source>Without brood.</source>
        <translation>Sin cría.</translation>
    </message>
    <message>
        <source>Without capped brood all mites sit on bees, where a treatment that acts on bees alone reaches them.</source>
        <translation>Sin cría operculada, todos los ácaros están en las abejas, donde los alcanza un tratamiento que solo actúa sobre ellas.</translation>
    </message>
    <message>
        <source>Wording of extension services</source>
        <translation>Así lo dicen los servicios de extensión</translation>
    </message>
    <message>
        <source>Worker brood under its capping</source>
        <translation>Cría de obrera bajo su opérculo</translation>
    </message>
    <message>
        <source>Worth keeping besides</source>
        <translation>Conviene guardar además</translation>
    </message>
    <message>
        <source>Wrong verdicts accepted by the stop-early rule, either way</source>
        <translation>Fallos aceptados por la regla de parar antes, a cada lado</translation>
    </message>
    <message>
        <source>Yours to change.</source>
        <translation>Puedes cambiarlo.</translation>
    </message>
    <message>
        <source>amitraz</source>
        <translation>amitraz</translation>
    </message>
    <message>
        <source>batch number and expiry date</source>
        <translation>número de lote y fecha de caducidad</translation>
    </message>
    <message>
        <source>bees</source>
        <translation>abejas</translation>
    </message>
    <message>
        <source>bees per ml</source>
        <translation>abejas por ml</translation>
    </message>
    <message>
        <source>by label</source>
        <translation>según la etiqueta</translation>
    </message>
    <message>
        <source>cells</source>
        <translation>celdas</translation>
    </message>
    <message>
        <source>chance</source>
        <translation>probabilidad</translation>
    </message>
    <message>
        <source>colonies</source>
        <translation>colonias</translation>
    </message>
    <message>
        <source>colonies stayed above the line</source>
        <translation>las colonias siguieron por encima del umbral</translation>
    </message>
    <message>
        <source>colonies treated</source>
        <translation>colonias tratadas</translation>
    </message>
    <message>
        <source>cool weather, bees in a cluster or nearly</source>
        <translation>tiempo fresco, abejas en racimo o casi</translation>
    </message>
    <message>
        <source>coumaphos</source>
        <translation>cumafós</translation>
    </message>
    <message>
        <source>count</source>
        <translation>recuento</translation>
    </message>
    <message>
        <source>day of the year</source>
        <translation>día del año</translation>
    </message>
    <message>
        <source>days</source>
        <translation>días</translation>
    </message>
    <message>
        <source>degrees C</source>
        <translation>grados C</translation>
    </message>
    <message>
        <source>degrees of freedom</source>
        <translation>grados de libertad</translation>
    </message>
    <message>
        <source>first day</source>
        <translation>primer día</translation>
    </message>
    <message>
        <source>flumethrin</source>
        <translation>flumetrina</translation>
    </message>
    <message>
        <source>formic acid</source>
        <translation>ácido fórmico</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>hop beta acids</source>
        <translation>beta-ácidos del lúpulo</translation>
    </message>
    <message>
        <source>how long the treatment lasts</source>
        <translation>cuánto dura el tratamiento</translation>
    </message>
    <message>
        <source>in autumn at times more than are bred in the colony</source>
        <translation>en otoño, a veces más de los que se crían en la colonia</translation>
    </message>
    <message>
        <source>ln 2 / 0.021</source>
        <translation>ln 2 / 0,021</translation>
    </message>
    <message>
        <source>longitude first</source>
        <translation>primero la longitud</translation>
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
        <translation>minutos</translation>
    </message>
    <message>
        <source>mites</source>
        <translation>ácaros</translation>
    </message>
    <message>
        <source>mites a day</source>
        <translation>ácaros al día</translation>
    </message>
    <message>
        <source>mites a leaf</source>
        <translation>ácaros por hoja</translation>
    </message>
    <message>
        <source>mites a leaf, squared</source>
        <translation>ácaros por hoja, al cuadrado</translation>
    </message>
    <message>
        <source>mites in the colony for one a day on the board</source>
        <translation>ácaros en la colonia por cada uno al día en la lámina</translation>
    </message>
    <message>
        <source>mites per 100 bees</source>
        <translation>ácaros por 100 abejas</translation>
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
        <translation>meses</translation>
    </message>
    <message>
        <source>name of the product</source>
        <translation>nombre del producto</translation>
    </message>
    <message>
        <source>natural</source>
        <translation>natural</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>no, long contact</source>
        <translation>no, contacto largo</translation>
    </message>
    <message>
        <source>octets</source>
        <translation>octetos</translation>
    </message>
    <message>
        <source>of all mites</source>
        <translation>de todos los ácaros</translation>
    </message>
    <message>
        <source>of ln(bees)</source>
        <translation>de ln(abejas)</translation>
    </message>
    <message>
        <source>of the count</source>
        <translation>del recuento</translation>
    </message>
    <message>
        <source>of the mean</source>
        <translation>de la media</translation>
    </message>
    <message>
        <source>of the mites on the bees</source>
        <translation>de los ácaros de las abejas</translation>
    </message>
    <message>
        <source>of the squared load</source>
        <translation>de la carga al cuadrado</translation>
    </message>
    <message>
        <source>of the squared mean</source>
        <translation>de la media al cuadrado</translation>
    </message>
    <message>
        <source>of what a wash finds</source>
        <translation>de lo que halla un lavado</translation>
    </message>
    <message>
        <source>openings per inch</source>
        <translation>aberturas por pulgada</translation>
    </message>
    <message>
        <source>owner, address, position, average number of colonies at each site</source>
        <translation>titular, dirección, posición, número medio de colonias en cada lugar</translation>
    </message>
    <message>
        <source>oxalic acid</source>
        <translation>ácido oxálico</translation>
    </message>
    <message>
        <source>per cell capped a day and gram of bees</source>
        <translation>por celda operculada al día y gramo de abejas</translation>
    </message>
    <message>
        <source>per day</source>
        <translation>al día</translation>
    </message>
    <message>
        <source>prescriber, where there is one</source>
        <translation>quién lo recetó, si hay receta</translation>
    </message>
    <message>
        <source>probability</source>
        <translation>probabilidad</translation>
    </message>
    <message>
        <source>proof of purchase</source>
        <translation>comprobante de compra</translation>
    </message>
    <message>
        <source>proportion</source>
        <translation>proporción</translation>
    </message>
    <message>
        <source>quantity</source>
        <translation>cantidad</translation>
    </message>
    <message>
        <source>said</source>
        <translation>se dice</translation>
    </message>
    <message>
        <source>scoops</source>
        <translation>medidas</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>segundos</translation>
    </message>
    <message>
        <source>shape</source>
        <translation>forma</translation>
    </message>
    <message>
        <source>standard error over mean</source>
        <translation>error estándar entre media</translation>
    </message>
    <message>
        <source>supplier's name and address</source>
        <translation>nombre y dirección del proveedor</translation>
    </message>
    <message>
        <source>synthetic</source>
        <translation>sintética</translation>
    </message>
    <message>
        <source>tablespoons</source>
        <translation>cucharadas</translation>
    </message>
    <message>
        <source>tau-fluvalinate</source>
        <translation>tau-fluvalinato</translation>
    </message>
    <message>
        <source>thymol</source>
        <translation>timol</translation>
    </message>
    <message>
        <source>times</source>
        <translation>veces</translation>
    </message>
    <message>
        <source>times the usual</source>
        <translation>veces lo habitual</translation>
    </message>
    <message>
        <source>to 1</source>
        <translation>a 1</translation>
    </message>
    <message>
        <source>treated in August, colonies were better in December than treated in June or October</source>
        <translation>tratadas en agosto, las colonias estaban mejor en diciembre que las tratadas en junio u octubre</translation>
    </message>
    <message>
        <source>treating from mid-July into August did better than treating in September</source>
        <translation>tratar de mediados de julio a agosto fue mejor que en septiembre</translation>
    </message>
    <message>
        <source>van Dooremalen et al. 2012, PLoS ONE 7:e36285</source>
        <translation>van Dooremalen et al. 2012, PLoS ONE 7:e36285</translation>
    </message>
    <message>
        <source>washes</source>
        <translation>lavados</translation>
    </message>
    <message>
        <source>with care</source>
        <translation>con cuidado</translation>
    </message>
    <message>
        <source>withdrawal period, also where it is zero</source>
        <translation>tiempo de espera, también si es cero</translation>
    </message>
    <message>
        <source>words</source>
        <translation>palabras</translation>
    </message>
    <message>
        <source>years</source>
        <translation>años</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
</context>
<context>
    <name>HereChoices</name>
    <message>
        <source>Look again</source>
        <translation>Buscar otra vez</translation>
    </message>
    <message>
        <source>Make a yard here</source>
        <translation>Crear un apiario aquí</translation>
    </message>
    <message>
        <source>New yard</source>
        <translation>Apiario nuevo</translation>
    </message>
    <message>
        <source>Or pick one of your yards</source>
        <translation>O elige uno de tus apiarios</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Compartir</translation>
    </message>
    <message>
        <source>Yards</source>
        <translation>Apiarios</translation>
    </message>
    <message>
        <source>asks for the position once more</source>
        <translation>pide la posición otra vez</translation>
    </message>
</context>
<context>
    <name>HereColonies</name>
    <message>
        <source>Compare the colonies</source>
        <translation>Comparar las colonias</translation>
    </message>
    <message>
        <source>No colony is kept in this yard yet.</source>
        <translation>Aún no hay colonias en este apiario.</translation>
    </message>
    <message>
        <source>Open the tray</source>
        <translation>Abrir la bandeja</translation>
    </message>
    <message>
        <source>side by side, the highest load first</source>
        <translation>una tras otra, la carga más alta primero</translation>
    </message>
</context>
<context>
    <name>HereFrame</name>
    <message>
        <source>Setup</source>
        <translation>Ajustes</translation>
    </message>
</context>
<context>
    <name>HereRound</name>
    <message>
        <source>Yard round</source>
        <translation>Ronda del apiario</translation>
    </message>
    <message>
        <source>wash some colonies, know the whole yard</source>
        <translation>mide algunas colonias y conoce todo el apiario</translation>
    </message>
</context>
<context>
    <name>HereWelcome</name>
    <message>
        <source>Begin with a yard: a name, and the colonies that stand in it. Halfcup knows it again by its place.</source>
        <translation>Empieza con un apiario: un nombre y las colonias que hay en él. Halfcup lo reconoce por su lugar.</translation>
    </message>
    <message>
        <source>Load the demo</source>
        <translation>Cargar la demo</translation>
    </message>
    <message>
        <source>Make a yard here</source>
        <translation>Crear un apiario aquí</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Compartir</translation>
    </message>
    <message>
        <source>The demo brings two invented yards over one season. They are marked as demo wherever they appear.</source>
        <translation>La demo trae dos apiarios inventados durante una temporada. Llevan la marca de demo en todas partes.</translation>
    </message>
    <message>
        <source>Wash half a cup of bees, count the mites, and know what the count means.</source>
        <translation>Lava media taza de abejas, cuenta los ácaros y entiende qué significa la cuenta.</translation>
    </message>
</context>
<context>
    <name>HereYard</name>
    <message>
        <source>Add colonies</source>
        <translation>Añadir colonias</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Temporada</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Compartir</translation>
    </message>
    <message>
        <source>Yards</source>
        <translation>Apiarios</translation>
    </message>
</context>
<context>
    <name>HistoryPage</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Bring it back</source>
        <translation>Recuperarlo</translation>
    </message>
    <message>
        <source>It was removed and is in no list now. Nothing of it was thrown away.</source>
        <translation>Se eliminó y ya no está en ninguna lista. No se tiró nada.</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>Dejarlo como está</translation>
    </message>
    <message>
        <source>Newest first. Touch an earlier value to put it back.</source>
        <translation>Lo último, primero. Toca un valor anterior para reponerlo.</translation>
    </message>
    <message>
        <source>Nothing was changed since it was written down.</source>
        <translation>No ha cambiado nada desde que se anotó.</translation>
    </message>
    <message>
        <source>Put this back</source>
        <translation>Reponer este</translation>
    </message>
    <message>
        <source>Put this back?</source>
        <translation>¿Reponer este?</translation>
    </message>
    <message>
        <source>What changed</source>
        <translation>Qué cambió</translation>
    </message>
</context>
<context>
    <name>HistoryWords</name>
    <message>
        <source>%1 m east, %2 m north</source>
        <translation>%1 m al este, %2 m al norte</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Place on the plan</source>
        <translation>Lugar en el plano</translation>
    </message>
    <message>
        <source>The whole record</source>
        <translation>Todo el registro</translation>
    </message>
    <message>
        <source>in the lists</source>
        <translation>en las listas</translation>
    </message>
    <message>
        <source>no place</source>
        <translation>sin lugar</translation>
    </message>
    <message>
        <source>none, it stands by itself</source>
        <translation>ninguno, va por su cuenta</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>sin preguntar</translation>
    </message>
    <message>
        <source>not put there</source>
        <translation>sin colocar en él</translation>
    </message>
    <message>
        <source>not seen</source>
        <translation>no vista</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>eliminado</translation>
    </message>
    <message>
        <source>seen and safe</source>
        <translation>vista y a salvo</translation>
    </message>
</context>
<context>
    <name>ImportColumns</name>
    <message>
        <source>For all rows. A name that is not there yet makes a new yard.</source>
        <translation>Para todas las filas. Un nombre que aún no existe crea un apiario.</translation>
    </message>
    <message>
        <source>In which yard were these washes?</source>
        <translation>¿En qué apiario fueron estos lavados?</translation>
    </message>
    <message>
        <source>Name of the yard</source>
        <translation>Nombre del apiario</translation>
    </message>
</context>
<context>
    <name>ImportPage</name>
    <message>
        <source>Leave it as it is</source>
        <translation>Dejarlo como está</translation>
    </message>
    <message>
        <source>Which column holds it?</source>
        <translation>¿Qué columna lo contiene?</translation>
    </message>
</context>
<context>
    <name>ImportPreview</name>
    <message>
        <source>In question</source>
        <translation>Dudosas</translation>
    </message>
    <message>
        <source>Refused</source>
        <translation>Rechazadas</translation>
    </message>
    <message>
        <source>Taken for granted</source>
        <translation>Dado por supuesto</translation>
    </message>
    <message>
        <source>The first of them</source>
        <translation>Los primeros</translation>
    </message>
</context>
<context>
    <name>Importing</name>
    <message>
        <source>%1: %2 on %3, %4</source>
        <comment>day, mites, bees, method</comment>
        <translation>%1: %2 en %3, %4</translation>
    </message>
    <message>
        <source>%1: %2 per 100 (%3)</source>
        <comment>standing, load, its range</comment>
        <translation>%1: %2 por 100 (%3)</translation>
    </message>
    <message>
        <source>Column %1, without a name</source>
        <translation>Columna %1, sin nombre</translation>
    </message>
    <message>
        <source>for example %1</source>
        <translation>por ejemplo, %1</translation>
    </message>
</context>
<context>
    <name>JarLabel</name>
    <message>
        <source>Into the tray</source>
        <translation>A la bandeja</translation>
    </message>
    <message>
        <source>Number or name</source>
        <translation>Número o nombre</translation>
    </message>
    <message>
        <source>Wash it now</source>
        <translation>Lavar ahora</translation>
    </message>
    <message>
        <source>What is on the jar?</source>
        <translation>¿Qué hay escrito en el frasco?</translation>
    </message>
    <message>
        <source>Write it on the lid. The time and place of the scoop stay with it.</source>
        <translation>Escríbelo en la tapa. La hora y el lugar de la muestra quedan con él.</translation>
    </message>
</context>
<context>
    <name>LayBoardStep</name>
    <message>
        <source>A board counts only what falls through a screen. Under a solid floor the count would mean nothing.</source>
        <translation>La lámina solo cuenta lo que cae por una malla. Con fondo cerrado, el recuento no diría nada.</translation>
    </message>
    <message>
        <source>It is screened now</source>
        <translation>Ahora es de malla</translation>
    </message>
    <message>
        <source>It lies there already</source>
        <translation>Ya está colocada</translation>
    </message>
    <message>
        <source>Its floor is screened</source>
        <translation>Su fondo es de malla</translation>
    </message>
    <message>
        <source>Its floor is solid: leave</source>
        <translation>Fondo cerrado: salir</translation>
    </message>
    <message>
        <source>written down with today's date</source>
        <translation>se anota con la fecha de hoy</translation>
    </message>
</context>
<context>
    <name>LoadLegend</name>
    <message numerus="yes">
        <source>%n wash(es) since %1.</source>
        <translation>
            <numerusform>%n lavado desde el %1.</numerusform>
            <numerusform>%n lavados desde el %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>A wash that found none: the load may be up to the stroke</source>
        <translation>Un lavado sin ácaros: la carga puede llegar hasta la raya</translation>
    </message>
    <message>
        <source>A wash, and the range that holds the true load 9 times in 10</source>
        <translation>Un lavado, y el margen que contiene la carga real 9 de cada 10 veces</translation>
    </message>
    <message>
        <source>Counted another way, and none found: up to the stroke</source>
        <translation>Contado de otra forma, y ninguno: hasta la raya</translation>
    </message>
    <message>
        <source>Counted another way, as by a sugar roll</source>
        <translation>Contado de otra forma, como la prueba del azúcar</translation>
    </message>
    <message>
        <source>If nothing is done, about %1 on %2, between %3 and %4.</source>
        <translation>Sin hacer nada: cerca de %1 el %2, entre %3 y %4.</translation>
    </message>
    <message>
        <source>If nothing is done, at most about %1 on %2.</source>
        <translation>Sin hacer nada: como máximo cerca de %1 el %2.</translation>
    </message>
    <message>
        <source>Last treated from %1 to %2.</source>
        <translation>Último tratamiento: del %1 al %2.</translation>
    </message>
    <message>
        <source>Last treated from %1 to %2: %3.</source>
        <translation>Último tratamiento, del %1 al %2: %3.</translation>
    </message>
    <message>
        <source>No wash yet.</source>
        <translation>Aún sin lavado.</translation>
    </message>
    <message>
        <source>Something happened, and there was no room for its mark</source>
        <translation>Hubo un suceso y no cabía su marca</translation>
    </message>
    <message>
        <source>The highest load was %1 mites per 100 bees, on %2.</source>
        <translation>La carga más alta fue de %1 ácaros por 100 abejas, el %2.</translation>
    </message>
    <message>
        <source>The last wash, on %1, found none: at most %2 mites per 100 bees.</source>
        <translation>El último lavado, del %1, no halló ninguno: como máximo %2 ácaros por 100 abejas.</translation>
    </message>
    <message>
        <source>The last wash, on %1: %2 mites per 100 bees, between %3 and %4.</source>
        <translation>El último lavado, del %1: %2 ácaros por 100 abejas, entre %3 y %4.</translation>
    </message>
    <message>
        <source>The load ahead if nothing is done, and its range</source>
        <translation>La carga prevista sin hacer nada, y su margen</translation>
    </message>
    <message>
        <source>The treat line is %1.</source>
        <translation>El umbral de tratamiento es %1.</translation>
    </message>
    <message>
        <source>The treat line, as it was then</source>
        <translation>El umbral de tratamiento de entonces</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Treated, from the first day to the last</source>
        <translation>En tratamiento, del primer día al último</translation>
    </message>
    <message>
        <source>Your own line, as it was then</source>
        <translation>Tu umbral propio de entonces</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <comment>date format, as in 18 May 2026</comment>
        <translation>d 'de' MMMM 'de' yyyy</translation>
    </message>
</context>
<context>
    <name>LoadMarks</name>
    <message>
        <source>Dead</source>
        <translation>Muerta</translation>
    </message>
    <message>
        <source>Moved to another yard</source>
        <translation>Trasladada a otro apiario</translation>
    </message>
    <message>
        <source>New queen</source>
        <translation>Reina nueva</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>División</translation>
    </message>
    <message>
        <source>Supers off</source>
        <translation>Alzas quitadas</translation>
    </message>
    <message>
        <source>Supers on</source>
        <translation>Alzas puestas</translation>
    </message>
    <message>
        <source>Swarmed</source>
        <translation>Enjambró</translation>
    </message>
    <message>
        <source>Two colonies put together</source>
        <translation>Dos colonias unidas</translation>
    </message>
</context>
<context>
    <name>LoadWords</name>
    <message>
        <source>%1 to %2</source>
        <comment>years</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Mites per 100 bees</source>
        <translation>Ácaros por 100 abejas</translation>
    </message>
    <message>
        <source>Mites per 100 bees, uneven scale</source>
        <translation>Ácaros por 100 abejas, escala desigual</translation>
    </message>
    <message>
        <source>No wash yet.</source>
        <translation>Aún sin lavado.</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Treat line</source>
        <translation>Umbral de tratamiento</translation>
    </message>
    <message>
        <source>Your own line</source>
        <translation>Tu umbral propio</translation>
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
        <translation>Ocultar los signos</translation>
    </message>
    <message>
        <source>What the marks mean</source>
        <translation>Qué significan los signos</translation>
    </message>
</context>
<context>
    <name>MessageSheet</name>
    <message>
        <source>Please read</source>
        <translation>Léelo, por favor</translation>
    </message>
    <message>
        <source>Understood</source>
        <translation>Entendido</translation>
    </message>
</context>
<context>
    <name>Method</name>
    <message>
        <source>Alcohol burns. No lit smoker, flame or cigarette near the jar.</source>
        <translation>El alcohol arde. Ni ahumador encendido, ni llama, ni cigarrillo cerca del frasco.</translation>
    </message>
    <message>
        <source>All drone cells you opened, with mites and without. Open a hundred or more, in several places.</source>
        <translation>Todas las celdas de zángano que abriste, con ácaros y sin ellos. Abre cien o más, en varios sitios.</translation>
    </message>
    <message>
        <source>All white: let them rest</source>
        <translation>Todas blancas: a reposar</translation>
    </message>
    <message>
        <source>Board laid: keep the time</source>
        <translation>Colocada: medir el tiempo</translation>
    </message>
    <message>
        <source>Board pulled</source>
        <translation>Lámina retirada</translation>
    </message>
    <message>
        <source>Board under colony %1</source>
        <translation>Lámina: colonia %1</translation>
    </message>
    <message>
        <source>Close the jar with the mesh. Sieve two tablespoons of powdered sugar through it.
Roll the jar until every bee is white.</source>
        <translation>Cierra el frasco con la malla. Tamiza por ella dos cucharadas de azúcar en polvo.
Haz rodar el frasco hasta que todas las abejas queden blancas.</translation>
    </message>
    <message>
        <source>Count cells with mites</source>
        <translation>Contar celdas con ácaros</translation>
    </message>
    <message>
        <source>Count the mites</source>
        <translation>Contar los ácaros</translation>
    </message>
    <message>
        <source>Count the whole board, or the same share in every part of it.</source>
        <translation>Cuenta toda la lámina, o la misma proporción en cada parte de ella.</translation>
    </message>
    <message>
        <source>Dry weather only: damp sugar clumps, holds mites and harms bees. Do not breathe the dust.</source>
        <translation>Solo con tiempo seco: el azúcar húmedo hace grumos, retiene ácaros y daña a las abejas. No respires el polvo.</translation>
    </message>
    <message>
        <source>Find her and set her frame aside before you scoop.</source>
        <translation>Búscala y aparta su cuadro antes de tomar la muestra.</translation>
    </message>
    <message>
        <source>Grease the board or use a sticky one: a dry board loses mites to ants and wind.
Slide it under the screen so that it covers the whole floor. No gap for bees.</source>
        <translation>Engrasa la lámina o usa una adhesiva: en una seca, hormigas y viento se llevan ácaros.
Métela bajo la malla de modo que cubra todo el fondo. Sin hueco para las abejas.</translation>
    </message>
    <message>
        <source>Half a cup of bees in alcohol. The bees die; the surest count.</source>
        <translation>Media taza de abejas en alcohol. Las abejas mueren; es el recuento más seguro.</translation>
    </message>
    <message>
        <source>Half a cup of bees in powdered sugar. They live; the roll finds fewer mites than a wash, and the answer is wider.</source>
        <translation>Media taza de abejas en azúcar en polvo. Viven; halla menos ácaros que un lavado, y el margen es más amplio.</translation>
    </message>
    <message>
        <source>Hold the jar against the light and look at the bottom once more. None found is kept as a count of 0.</source>
        <translation>Pon el frasco a contraluz y mira el fondo una vez más. Si no hay ninguno, se guarda un recuento de 0.</translation>
    </message>
    <message>
        <source>Hold the jar against the light, look under the foam and at the bottom once more. None found is kept as a count of 0.</source>
        <translation>Pon el frasco a contraluz, mira bajo la espuma y el fondo una vez más. Si no hay ninguno, se guarda un recuento de 0.</translation>
    </message>
    <message>
        <source>How many cells in all?</source>
        <translation>¿Cuántas celdas en total?</translation>
    </message>
    <message>
        <source>How much of the board?</source>
        <translation>¿Cuánto de la lámina?</translation>
    </message>
    <message>
        <source>Lay the board</source>
        <translation>Colocar la lámina</translation>
    </message>
    <message>
        <source>Let it settle</source>
        <translation>Dejar reposar</translation>
    </message>
    <message>
        <source>Let the foam go</source>
        <translation>Dejar bajar la espuma</translation>
    </message>
    <message>
        <source>Let them rest</source>
        <translation>Dejarlas reposar</translation>
    </message>
    <message>
        <source>Lid on: start the shake</source>
        <translation>Tapado: empezar a agitar</translation>
    </message>
    <message>
        <source>Look into the cells and at the pale pupae once more. None found is kept as a count of 0.</source>
        <translation>Mira una vez más las celdas y las pupas claras. Si no hay ninguno, se guarda un recuento de 0.</translation>
    </message>
    <message>
        <source>Mesh down over a white plate: shake hard, like a salt cellar.</source>
        <translation>Malla abajo, sobre un plato blanco: sacude fuerte, como un salero.</translation>
    </message>
    <message>
        <source>Mites that fall through a screened floor, by the day. No bee is touched; weak evidence beside a wash.</source>
        <translation>Ácaros que caen por un fondo de malla, por día. No se toca ninguna abeja; dice poco al lado de un lavado.</translation>
    </message>
    <message>
        <source>One to three days are best. Pull it level, out of the wind.</source>
        <translation>Lo mejor, de uno a tres días. Sácala en horizontal, a resguardo del viento.</translation>
    </message>
    <message>
        <source>Open drone brood of colony %1</source>
        <translation>Abrir celdas: colonia %1</translation>
    </message>
    <message>
        <source>Opened brood dies. Take capped drone cells with pink to purple eyes.</source>
        <translation>La cría que se abre muere. Toma celdas de zángano operculadas, con pupas de ojos rosados a morados.</translation>
    </message>
    <message>
        <source>Pour and close</source>
        <translation>Verter y cerrar</translation>
    </message>
    <message>
        <source>Pour fresh alcohol over the same bees, shake again and count what still falls.</source>
        <translation>Vierte alcohol limpio sobre las mismas abejas, agita otra vez y cuenta lo que aún caiga.</translation>
    </message>
    <message>
        <source>Pour fresh soapy water over the same bees, shake again and count what still falls.</source>
        <translation>Vierte agua jabonosa limpia sobre las mismas abejas, agita otra vez y cuenta lo que aún caiga.</translation>
    </message>
    <message>
        <source>Pour in alcohol until all the bees are well covered.
Close the lid and see that it is tight.</source>
        <translation>Vierte alcohol hasta que cubra bien todas las abejas.
Cierra la tapa y comprueba que ajusta bien.</translation>
    </message>
    <message>
        <source>Pour in water with a squirt of washing-up liquid until all the bees are well covered.
Close the lid and see that it is tight.</source>
        <translation>Vierte agua con un chorrito de lavavajillas hasta que cubra bien todas las abejas.
Cierra la tapa y comprueba que ajusta bien.</translation>
    </message>
    <message>
        <source>Pull the board</source>
        <translation>Retirar la lámina</translation>
    </message>
    <message>
        <source>Rested. Turn the jar over a white plate.</source>
        <translation>Ya reposó. Vuelca el frasco sobre un plato blanco.</translation>
    </message>
    <message>
        <source>Rinse once more?</source>
        <translation>¿Otro enjuague?</translation>
    </message>
    <message>
        <source>Scoop the bees</source>
        <translation>Tomar la muestra</translation>
    </message>
    <message>
        <source>See that she is not on the frame you open.</source>
        <translation>Comprueba que no esté en el cuadro que abres.</translation>
    </message>
    <message>
        <source>Settled. Look from below.</source>
        <translation>Ya reposó. Mira desde abajo.</translation>
    </message>
    <message>
        <source>Shake</source>
        <translation>Agitar</translation>
    </message>
    <message>
        <source>Shake out</source>
        <translation>Sacudir</translation>
    </message>
    <message>
        <source>Shake the sugar out</source>
        <translation>Sacudir el azúcar</translation>
    </message>
    <message>
        <source>Spray the plate with water so that the sugar melts, and look once more. None found is kept as a count of 0.</source>
        <translation>Rocía el plato con agua para que el azúcar se disuelva y mira una vez más. Si no hay ninguno, se guarda un recuento de 0.</translation>
    </message>
    <message>
        <source>Stand the jar in the shade. The mites lose their hold.</source>
        <translation>Deja el frasco a la sombra. Los ácaros se sueltan.</translation>
    </message>
    <message>
        <source>Stand the jar still. Foam hides mites; a little cold water on top clears it.</source>
        <translation>Deja el frasco quieto. La espuma tapa los ácaros; un poco de agua fría por encima la quita.</translation>
    </message>
    <message>
        <source>Stand the jar still. The mites sink.</source>
        <translation>Deja el frasco quieto. Los ácaros se hunden.</translation>
    </message>
    <message>
        <source>Stung and short of breath, dizzy or swelling? Stop and call for help.</source>
        <translation>¿Picaduras y falta de aire, mareo o hinchazón? Déjalo todo y pide ayuda.</translation>
    </message>
    <message>
        <source>Sugar the bees</source>
        <translation>Azucarar las abejas</translation>
    </message>
    <message>
        <source>Sugar-roll colony %1</source>
        <translation>Azúcar: colonia %1</translation>
    </message>
    <message>
        <source>The bees go back alive, but sugar and shaking would harm a queen: leave her out.</source>
        <translation>Las abejas vuelven vivas, pero el azúcar y el agitado dañarían a una reina: déjala fuera.</translation>
    </message>
    <message>
        <source>The file says that it is UTF-16, but its text is broken. Save it again as CSV in UTF-8.</source>
        <translation>El archivo dice que es UTF-16, pero su texto está roto. Guárdalo otra vez como CSV en UTF-8.</translation>
    </message>
    <message>
        <source>The same with washing-up liquid in water. The bees die; nothing that burns.</source>
        <translation>Lo mismo con lavavajillas en agua. Las abejas mueren; no hay nada que arda.</translation>
    </message>
    <message>
        <source>The share of drone cells with mites. Only while there is capped drone brood; no load can be read from it.</source>
        <translation>La proporción de celdas de zángano con ácaros. Solo mientras hay cría de zángano operculada; de aquí no sale una carga.</translation>
    </message>
    <message>
        <source>The washed bees die. Look twice that the queen is not among them.</source>
        <translation>Las abejas lavadas mueren. Mira dos veces que la reina no esté entre ellas.</translation>
    </message>
    <message>
        <source>The whole board</source>
        <translation>Toda la lámina</translation>
    </message>
    <message>
        <source>Tilt the board in the light and go along its lines once more. None found is kept as a count of 0.</source>
        <translation>Inclina la lámina a la luz y recorre sus líneas una vez más. Si no hay ninguno, se guarda un recuento de 0.</translation>
    </message>
    <message>
        <source>Time. Set the jar down.</source>
        <translation>Tiempo cumplido. Deja el frasco.</translation>
    </message>
    <message>
        <source>Touch anywhere for each mite</source>
        <translation>Toca donde sea por cada ácaro</translation>
    </message>
    <message>
        <source>Touch for each cell with a mite</source>
        <translation>Toca por cada celda con ácaro</translation>
    </message>
    <message>
        <source>Turn the jar over and over, not too gently.</source>
        <translation>Dale vueltas al frasco una y otra vez, con cierta fuerza.</translation>
    </message>
    <message>
        <source>Turn the jar over and over. Swirl more than you beat: less foam.</source>
        <translation>Dale vueltas al frasco una y otra vez. Más remolino que golpe: menos espuma.</translation>
    </message>
    <message>
        <source>Wash colony %1</source>
        <translation>Lavado: colonia %1</translation>
    </message>
    <message>
        <source>Where is the queen?</source>
        <translation>¿Dónde está la reina?</translation>
    </message>
    <message>
        <source>Which colony?</source>
        <translation>¿Qué colonia?</translation>
    </message>
    <message>
        <source>alcohol</source>
        <translation>alcohol</translation>
    </message>
    <message>
        <source>alcohol wash</source>
        <translation>lavado con alcohol</translation>
    </message>
    <message>
        <source>drone brood opened</source>
        <translation>celdas de zángano abiertas</translation>
    </message>
    <message>
        <source>powdered sugar</source>
        <translation>azúcar en polvo</translation>
    </message>
    <message>
        <source>powdered-sugar roll</source>
        <translation>prueba del azúcar</translation>
    </message>
    <message>
        <source>soapy water</source>
        <translation>agua jabonosa</translation>
    </message>
    <message>
        <source>soapy-water wash</source>
        <translation>lavado con agua jabonosa</translation>
    </message>
    <message>
        <source>sticky board</source>
        <translation>lámina adhesiva</translation>
    </message>
</context>
<context>
    <name>MethodsPage</name>
    <message>
        <source>How to count?</source>
        <translation>¿Cómo contar?</translation>
    </message>
</context>
<context>
    <name>NumberPad</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
</context>
<context>
    <name>NumberPadFigure</name>
    <message>
        <source>Nothing typed yet</source>
        <translation>Aún sin escribir</translation>
    </message>
</context>
<context>
    <name>NumberPadKeys</name>
    <message>
        <source>Delete</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>OnDayPage</name>
    <message>
        <source>A day earlier</source>
        <translation>Un día antes</translation>
    </message>
    <message>
        <source>A day later</source>
        <translation>Un día después</translation>
    </message>
    <message>
        <source>Another day</source>
        <translation>Otro día</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Show this day</source>
        <translation>Ver este día</translation>
    </message>
    <message>
        <source>Such as 1 July, or 2026-07-01</source>
        <translation>Por ejemplo, 1 de julio o 2026-07-01</translation>
    </message>
    <message>
        <source>Which day?</source>
        <translation>¿Qué día?</translation>
    </message>
</context>
<context>
    <name>OpenedCellsStep</name>
    <message>
        <source>Cells opened in all</source>
        <translation>Celdas abiertas en total</translation>
    </message>
    <message>
        <source>Type the cells opened</source>
        <translation>Escribir celdas abiertas</translation>
    </message>
    <message>
        <source>With mites: %1</source>
        <translation>Con ácaros: %1</translation>
    </message>
</context>
<context>
    <name>OtherAnswerPage</name>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Wash this colony</source>
        <translation>Lavado de esta colonia</translation>
    </message>
    <message>
        <source>Where this comes from</source>
        <translation>De dónde sale esto</translation>
    </message>
</context>
<context>
    <name>OtherAnswerWords</name>
    <message>
        <source>%1 mites a day</source>
        <translation>%1 ácaros al día</translation>
    </message>
    <message>
        <source>%1 of 100 drone cells</source>
        <translation>%1 de cada 100 celdas de zángano</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a range</comment>
        <translation>%1 a %2</translation>
    </message>
</context>
<context>
    <name>OutlookWords</name>
    <message>
        <source>If nothing is done, and its range</source>
        <translation>Sin hacer nada, y su margen</translation>
    </message>
    <message>
        <source>Mid-autumn</source>
        <translation>Mitad de otoño</translation>
    </message>
    <message>
        <source>Mites per 100 bees</source>
        <translation>Ácaros por 100 abejas</translation>
    </message>
    <message>
        <source>No outlook.</source>
        <translation>Sin previsión.</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Turn date</source>
        <translation>Fecha límite</translation>
    </message>
    <message>
        <source>With the treatment, and its range</source>
        <translation>Con el tratamiento, y su margen</translation>
    </message>
    <message>
        <source>Your treat line</source>
        <translation>Tu umbral de tratamiento</translation>
    </message>
</context>
<context>
    <name>OwnScoopsPage</name>
    <message>
        <source>After a wash, touch “Count these bees” under the answer. Five scoops tell your hand from another.</source>
        <translation>Después de un lavado, toca «Contar estas abejas» debajo del resultado. Cinco medidas distinguen tu mano de otra.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>It no longer counts for your figure. The history keeps it, and the wash it belongs to stays as it is.</source>
        <translation>Deja de contar para tu cifra. El historial la conserva, y su lavado queda como está.</translation>
    </message>
    <message>
        <source>Leave it in</source>
        <translation>Mantenerla</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Omitirla</translation>
    </message>
    <message>
        <source>Leave this scoop out?</source>
        <translation>¿Omitir esta medida?</translation>
    </message>
    <message>
        <source>What others count</source>
        <translation>Lo que cuentan otros</translation>
    </message>
    <message>
        <source>Your scoops</source>
        <translation>Tus medidas</translation>
    </message>
</context>
<context>
    <name>PageHeader</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
</context>
<context>
    <name>PageText</name>
    <message>
        <source>*(A wide table is left out here; it is on the page that comes with the program.)*
</source>
        <translation>*(Aquí falta una tabla ancha; está en la página que viene con el programa.)*
</translation>
    </message>
</context>
<context>
    <name>Phrase</name>
    <message>
        <source>"%1" is no temperature. Type them in a row: 24 26 27.</source>
        <translation>«%1» no es una temperatura. Escríbelas seguidas: 24 26 27.</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 is no temperature of a day with bees: %2 to %3.</source>
        <translation>%1 no es temperatura de un día con abejas: de %2 a %3.</translation>
    </message>
    <message>
        <source>%1 per 100</source>
        <translation>%1 por 100</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>A course of %1 runs until %2.</source>
        <translation>Hay uno de %1 en curso hasta el %2.</translation>
    </message>
    <message>
        <source>A course of %1 that is written down begins on %2, while this one runs.</source>
        <translation>Un tratamiento anotado de %1 empieza el %2, mientras este está en curso.</translation>
    </message>
    <message>
        <source>A course of it runs until %1.</source>
        <translation>Ya hay uno en curso hasta el %1.</translation>
    </message>
    <message>
        <source>A forecast of more than %1 is no forecast.</source>
        <translation>Un pronóstico de más de %1 no es un pronóstico.</translation>
    </message>
    <message>
        <source>A forecast wants at least %1.</source>
        <translation>Un pronóstico pide al menos %1.</translation>
    </message>
    <message>
        <source>A treatment that is written down ends before it begins.</source>
        <translation>Un tratamiento anotado termina antes de empezar.</translation>
    </message>
    <message>
        <source>All mites come onto the bees, where a treatment reaches them.</source>
        <translation>Todos los ácaros pasan a las abejas, donde un tratamiento los alcanza.</translation>
    </message>
    <message>
        <source>Also kills mites under cappings.</source>
        <translation>Mata también los ácaros bajo opérculo.</translation>
    </message>
    <message>
        <source>Another class than last time, which was %1.</source>
        <translation>Otra clase que la última vez, que fue %1.</translation>
    </message>
    <message>
        <source>By itself it seldom brings a load that is over the line under it again.</source>
        <translation>Por sí solo, rara vez vuelve a bajar del umbral una carga que lo supera.</translation>
    </message>
    <message>
        <source>Can't tell: anything from %1 of the mites killed. The mark is %2.</source>
        <translation>No se sabe: ácaros muertos, de %1. El mínimo es el %2.</translation>
    </message>
    <message>
        <source>Can't tell: no treated colony was washed from %1 to %2 after its end.</source>
        <translation>No se sabe: ninguna colonia tratada tuvo un lavado de %1 a %2 después de terminar.</translation>
    </message>
    <message>
        <source>Can't tell: no treated colony was washed in the %1 before it.</source>
        <translation>No se sabe: ninguna colonia tratada tuvo un lavado en los %1 anteriores.</translation>
    </message>
    <message>
        <source>Compared with untreated colonies of the same yard: %1.</source>
        <translation>Comparado con colonias sin tratar del mismo apiario: %1.</translation>
    </message>
    <message>
        <source>Do not use this class again here until an adviser has looked at it. If the load is over your line, treat with another class.</source>
        <translation>No vuelvas a usar aquí esta clase hasta que lo vea un asesor. Si la carga supera tu umbral, trata con otra clase.</translation>
    </message>
    <message>
        <source>Does not reach under cappings, and there is capped brood.</source>
        <translation>No llega bajo opérculo, y hay cría operculada.</translation>
    </message>
    <message>
        <source>Does not reach under cappings: with brood it killed %1 of the mites.</source>
        <translation>No llega bajo opérculo: con cría mató %1 de los ácaros.</translation>
    </message>
    <message>
        <source>Does not reach under cappings; whether there is capped brood now is not known.</source>
        <translation>No llega bajo opérculo; no se sabe si ahora hay cría operculada.</translation>
    </message>
    <message>
        <source>Drones are being raised now.</source>
        <translation>Ahora se crían zánganos.</translation>
    </message>
    <message>
        <source>Due in %2: %1</source>
        <translation>En %2: %1</translation>
    </message>
    <message>
        <source>Due today: %1</source>
        <translation>Hoy: %1</translation>
    </message>
    <message>
        <source>Due: %1, %2 late</source>
        <translation>Pendiente: %1, %2 de retraso</translation>
    </message>
    <message>
        <source>Even its shortest course ends %1 after the turn date, %2.</source>
        <translation>Hasta su duración más corta termina %1 después de la fecha límite, el %2.</translation>
    </message>
    <message>
        <source>Even with it: over what colonies survive as a rule by the turn date, %2.</source>
        <translation>Incluso con él: más de lo que suelen soportar las colonias en la fecha límite, el %2.</translation>
    </message>
    <message>
        <source>Fewer than %1 mites were found before it: the range is wide.</source>
        <translation>Antes se hallaron menos de %1 ácaros: el margen es amplio.</translation>
    </message>
    <message>
        <source>Grows about %1 a day. Likelier than not over %2 from about %3 on, if nothing is done.</source>
        <translation>Crece cerca del %1 al día. Lo más probable es que supere %2 hacia el %3, si no se hace nada.</translation>
    </message>
    <message>
        <source>Grows about %1 a day. Over %2 already, with a chance of %3.</source>
        <translation>Crece cerca del %1 al día. Ya supera %2, con una probabilidad del %3.</translation>
    </message>
    <message>
        <source>Grows about %1 a day. Over %2 within 60 days of the last wash with a chance of %3.</source>
        <translation>Crece cerca del %1 al día. Superará %2 en los 60 días siguientes al último lavado con una probabilidad del %3.</translation>
    </message>
    <message>
        <source>Growth is assumed, about %1 a day. Likelier than not over %2 from about %3 on, if nothing is done.</source>
        <translation>Crecimiento supuesto, cerca del %1 al día. Lo más probable es que supere %2 hacia el %3, si no se hace nada.</translation>
    </message>
    <message>
        <source>Growth is assumed, about %1 a day. Over %2 already, with a chance of %3.</source>
        <translation>Crecimiento supuesto, cerca del %1 al día. Ya supera %2, con una probabilidad del %3.</translation>
    </message>
    <message>
        <source>Growth is assumed, about %1 a day. Over %2 within 60 days of the last wash with a chance of %3.</source>
        <translation>Crecimiento supuesto, cerca del %1 al día. Superará %2 en los 60 días siguientes al último lavado con una probabilidad del %3.</translation>
    </message>
    <message>
        <source>Helps later generations, not this one.</source>
        <translation>Ayuda a generaciones futuras, no a esta.</translation>
    </message>
    <message>
        <source>Honey may be taken again after: %1</source>
        <translation>Se puede volver a sacar miel después de: %1</translation>
    </message>
    <message>
        <source>If nothing is done: about %1 on %2 (%3).</source>
        <translation>Sin hacer nada: cerca de %1 el %2 (%3).</translation>
    </message>
    <message>
        <source>If nothing is done: about %1 on the turn date, %2 (%3), and %4 on %5 (%6).</source>
        <translation>Sin hacer nada: cerca de %1 en la fecha límite, el %2 (%3), y %4 el %5 (%6).</translation>
    </message>
    <message>
        <source>If nothing is done: about %1 on the turn date, %2 (%3), and over what colonies survive as a rule by %5.</source>
        <translation>Sin hacer nada: cerca de %1 en la fecha límite, el %2 (%3), y más de lo que suelen soportar las colonias el %5.</translation>
    </message>
    <message>
        <source>If nothing is done: over what colonies survive as a rule by the turn date, %2.</source>
        <translation>Sin hacer nada: más de lo que suelen soportar las colonias en la fecha límite, el %2.</translation>
    </message>
    <message>
        <source>It did not reach the mark: about %1 of the mites killed (%2). The mark is %3.</source>
        <translation>No llegó al mínimo: murió cerca del %1 de los ácaros (%2). El mínimo es el %3.</translation>
    </message>
    <message>
        <source>It has a screened floor already.</source>
        <translation>Ya tiene fondo de malla.</translation>
    </message>
    <message>
        <source>It points to resistance: about %1 of the mites killed (%2). The mark is %3.</source>
        <translation>Apunta a resistencia: murió cerca del %1 de los ácaros (%2). El mínimo es el %3.</translation>
    </message>
    <message>
        <source>It worked (about %1 killed), and then the load rose faster than mites breed: it points to mites carried in.</source>
        <translation>Funcionó (murió cerca del %1), y luego la carga subió más rápido de lo que crían los ácaros: apunta a ácaros llegados de fuera.</translation>
    </message>
    <message>
        <source>It worked: about %1 of the mites killed (%2). The mark is %3.</source>
        <translation>Funcionó: murió cerca del %1 de los ácaros (%2). El mínimo es el %3.</translation>
    </message>
    <message>
        <source>It worked: no mites found after it, at least %1 killed. The mark is %2.</source>
        <translation>Funcionó: después no se hallaron ácaros; murió al menos el %1. El mínimo es el %2.</translation>
    </message>
    <message>
        <source>Its shortest course ends on %1, in time for the turn date.</source>
        <translation>Su duración más corta termina el %1, a tiempo para la fecha límite.</translation>
    </message>
    <message>
        <source>Last day of: %1</source>
        <translation>Último día de: %1</translation>
    </message>
    <message>
        <source>Look for colonies breaking down or being robbed near by, and wash every two weeks until it stays low.</source>
        <translation>Busca cerca colonias que se hunden o sufren pillaje, y haz un lavado cada dos semanas hasta que siga baja.</translation>
    </message>
    <message>
        <source>Mites that resist it: %1</source>
        <translation>Ácaros que lo resisten: %1</translation>
    </message>
    <message>
        <source>Next time take another class, so that mites do not get used to this one.</source>
        <translation>La próxima vez usa otra clase, para que los ácaros no se acostumbren a esta.</translation>
    </message>
    <message>
        <source>No capped brood: all mites are on bees.</source>
        <translation>Sin cría operculada: todos los ácaros están en las abejas.</translation>
    </message>
    <message>
        <source>No capped brood: all mites are on bees. Killed then: %1.</source>
        <translation>Sin cría operculada: todos los ácaros están en las abejas. Mató entonces: %1.</translation>
    </message>
    <message>
        <source>No colony has that many bees.</source>
        <translation>Ninguna colonia tiene tantas abejas.</translation>
    </message>
    <message>
        <source>No drones are raised now.</source>
        <translation>Ahora no se crían zánganos.</translation>
    </message>
    <message>
        <source>No mites were found in the untreated colonies in one of the washes: they tell little.</source>
        <translation>En las colonias sin tratar no se hallaron ácaros en uno de los lavados: dicen poco.</translation>
    </message>
    <message>
        <source>No outlook: no published figure says how many mites this takes away.</source>
        <translation>Sin previsión: ninguna cifra publicada dice cuántos ácaros quita.</translation>
    </message>
    <message>
        <source>No outlook: the handbook has no figure for what %1 kills.</source>
        <translation>Sin previsión: el manual no tiene cifra de lo que mata %1.</translation>
    </message>
    <message>
        <source>No untreated colony to compare with: corrected by assumed growth.</source>
        <translation>Ninguna colonia sin tratar para comparar: corregido con un crecimiento supuesto.</translation>
    </message>
    <message>
        <source>None found since: at most %1 on %2, and over %3 within 30 days with a chance of %4.</source>
        <translation>No se halló ninguno desde entonces: como máximo %1 el %2, y superará %3 en 30 días con una probabilidad del %4.</translation>
    </message>
    <message>
        <source>Not known yet: wash from %1 on, best on %2.</source>
        <translation>Aún no se sabe: haz un lavado desde el %1, mejor el %2.</translation>
    </message>
    <message>
        <source>Not said in mites per 100 bees: how strong the colony is was not written down lately. Tell its frames of bees, and the next board can say it.</source>
        <translation>No se da en ácaros por 100 abejas: hace tiempo que no se anota la fuerza de la colonia. Anota sus cuadros de abejas, y la próxima lámina podrá darlo.</translation>
    </message>
    <message>
        <source>Not said in mites per 100 bees: there was no capped brood, and the factors hold only with brood.</source>
        <translation>No se da en ácaros por 100 abejas: no había cría operculada, y los factores solo valen con cría.</translation>
    </message>
    <message>
        <source>Not said in mites per 100 bees: whether there is capped brood is not written down, and the factors hold only with brood.</source>
        <translation>No se da en ácaros por 100 abejas: no está anotado si hay cría operculada, y los factores solo valen con cría.</translation>
    </message>
    <message>
        <source>Not under cappings, but still there when the bees hatch.</source>
        <translation>No bajo opérculo, pero sigue ahí cuando nacen las abejas.</translation>
    </message>
    <message>
        <source>Not under cappings, but the course outlasts the capped brood.</source>
        <translation>No bajo opérculo, pero dura más que la cría operculada.</translation>
    </message>
    <message>
        <source>Not while supers are on.</source>
        <translation>No mientras haya alzas.</translation>
    </message>
    <message>
        <source>Not with supers on; whether they are is not written down.</source>
        <translation>No con alzas; no está anotado si las hay.</translation>
    </message>
    <message>
        <source>Nothing can be foretold.</source>
        <translation>No se puede prever nada.</translation>
    </message>
    <message>
        <source>Same class as last time (%1, %2).</source>
        <translation>La misma clase que la última vez (%1, %2).</translation>
    </message>
    <message>
        <source>Same substance as last time (%1; no class number).</source>
        <translation>La misma sustancia que la última vez (%1; sin número de clase).</translation>
    </message>
    <message>
        <source>Strong enough: at least about %1 bees.</source>
        <translation>Bastante fuerte: al menos unas %1 abejas.</translation>
    </message>
    <message>
        <source>Supers are off.</source>
        <translation>Sin alzas.</translation>
    </message>
    <message>
        <source>Supers are off; they stay off until the label allows them again.</source>
        <translation>Sin alzas; no se ponen hasta que la etiqueta lo permita.</translation>
    </message>
    <message>
        <source>Supers are on: only where the label allows it.</source>
        <translation>Hay alzas puestas: solo si la etiqueta lo permite.</translation>
    </message>
    <message>
        <source>Supers may be on.</source>
        <translation>Puede haber alzas.</translation>
    </message>
    <message>
        <source>Take out: %1</source>
        <translation>Retirar: %1</translation>
    </message>
    <message>
        <source>That is too long for a forecast.</source>
        <translation>Es demasiado largo para un pronóstico.</translation>
    </message>
    <message>
        <source>The first %1 fit; later too cold: %2 on %3, the limit is %4.</source>
        <translation>Valen los primeros %1; después, demasiado frío: %2 el %3; el límite es %4.</translation>
    </message>
    <message>
        <source>The first %1 fit; later too hot: %2 on %3, the limit is %4.</source>
        <translation>Valen los primeros %1; después, demasiado calor: %2 el %3; el límite es %4.</translation>
    </message>
    <message>
        <source>The first %1 have to be within its limits; the forecast has %2.</source>
        <translation>Los primeros %1 tienen que estar dentro de sus límites; el pronóstico cubre %2.</translation>
    </message>
    <message>
        <source>The floor is solid.</source>
        <translation>El fondo es cerrado.</translation>
    </message>
    <message>
        <source>The forecast highs are within its limits.</source>
        <translation>Las máximas previstas están dentro de sus límites.</translation>
    </message>
    <message>
        <source>The label in your hand and your local law outrank this. Check that the product is registered where you are: this program does not know.</source>
        <translation>La etiqueta que tienes en la mano y la ley de tu lugar están por encima de esto. Comprueba que el producto esté registrado donde estás: este programa no lo sabe.</translation>
    </message>
    <message>
        <source>The low of a day lies above its high: %1 over %2.</source>
        <translation>La mínima de un día está por encima de su máxima: %1 sobre %2.</translation>
    </message>
    <message>
        <source>The turn date lies before the day asked for.</source>
        <translation>La fecha límite es anterior al día indicado.</translation>
    </message>
    <message>
        <source>There are %1 highs and %2 lows: one of each a day is wanted.</source>
        <translation>Hay %1 máximas y %2 mínimas: hace falta una de cada por día.</translation>
    </message>
    <message>
        <source>There is no brood already.</source>
        <translation>Ya no hay cría.</translation>
    </message>
    <message>
        <source>There is no such day.</source>
        <translation>Ese día no existe.</translation>
    </message>
    <message>
        <source>Too cold: %1 on %2, the limit is %3.</source>
        <translation>Demasiado frío: %1 el %2; el límite es %3.</translation>
    </message>
    <message>
        <source>Too few bees: about %1, at least about %2 are wanted.</source>
        <translation>Muy pocas abejas: unas %1; hacen falta al menos unas %2.</translation>
    </message>
    <message>
        <source>Too hot: %1 on %2, the limit is %3.</source>
        <translation>Demasiado calor: %1 el %2; el límite es %3.</translation>
    </message>
    <message>
        <source>Turn date: mites low by now</source>
        <translation>Fecha límite: pocos ácaros para hoy</translation>
    </message>
    <message>
        <source>Wants at least about %1 bees; the colony's strength now is not known.</source>
        <translation>Pide al menos unas %1 abejas; no se sabe la fuerza de la colonia ahora.</translation>
    </message>
    <message>
        <source>Wants daily highs from %1 to %2; there is no forecast to go by.</source>
        <translation>Pide máximas diarias de %1 a %2; no hay pronóstico en que basarse.</translation>
    </message>
    <message>
        <source>Wants daily highs over %1; there is no forecast to go by.</source>
        <translation>Pide máximas diarias de más de %1; no hay pronóstico en que basarse.</translation>
    </message>
    <message>
        <source>Wants daily highs under %1; there is no forecast to go by.</source>
        <translation>Pide máximas diarias de menos de %1; no hay pronóstico en que basarse.</translation>
    </message>
    <message>
        <source>Was it given as the label says, and warm or cool enough? If the load is over your line, treat again, with another substance.</source>
        <translation>¿Se dio como dice la etiqueta, y con la temperatura adecuada? Si la carga supera tu umbral, trata otra vez, con otra sustancia.</translation>
    </message>
    <message>
        <source>Wash all the same after its end: what counts is the load that is left.</source>
        <translation>Haz igualmente un lavado al terminar: lo que cuenta es la carga que queda.</translation>
    </message>
    <message>
        <source>Wash now: what counts is the load that is left.</source>
        <translation>Haz un lavado ahora: lo que cuenta es la carga que queda.</translation>
    </message>
    <message>
        <source>Wash the colonies that were washed before it, and untreated ones where there are any.</source>
        <translation>Haz un lavado en las colonias que lo tuvieron antes, y en otras sin tratar si las hay.</translation>
    </message>
    <message>
        <source>Wash: %1</source>
        <translation>Pendiente: %1</translation>
    </message>
    <message>
        <source>Wash: did it work? %1</source>
        <translation>Lavado: ¿funcionó? %1</translation>
    </message>
    <message>
        <source>Washed in different ways before and after: the range is wider for it.</source>
        <translation>Lavado de formas distintas antes y después: por eso el margen es más amplio.</translation>
    </message>
    <message>
        <source>Washed sooner than %1 after its end: mites under cappings are not in it yet. Wash once more.</source>
        <translation>Lavado a menos de %1 del final: los ácaros bajo opérculo aún no entran en él. Haz otro.</translation>
    </message>
    <message>
        <source>Weather: %1.</source>
        <translation>Tiempo: %1.</translation>
    </message>
    <message>
        <source>What counts now is the load itself: go by the last wash. Next time two jars a colony before and after tell more.</source>
        <translation>Lo que cuenta ahora es la carga: guíate por el último lavado. La próxima vez, dos frascos por colonia antes y después dicen más.</translation>
    </message>
    <message>
        <source>What was given on %1 is not counted in: the handbook has no figure for what it kills.</source>
        <translation>No se cuenta lo que se dio el %1: el manual no tiene cifra de lo que mata.</translation>
    </message>
    <message>
        <source>Whether there is brood now is not known.</source>
        <translation>No se sabe si ahora hay cría.</translation>
    </message>
    <message>
        <source>Which floor it has is not written down.</source>
        <translation>No está anotado qué fondo tiene.</translation>
    </message>
    <message>
        <source>Winter bees are raised now: they would be missing.</source>
        <translation>Ahora se crían las abejas de invierno: faltarían.</translation>
    </message>
    <message>
        <source>With it: about %1 on %2 (%3).</source>
        <translation>Con él: cerca de %1 el %2 (%3).</translation>
    </message>
    <message>
        <source>With it: about %1 on the turn date, %2 (%3), and %4 on %5 (%6).</source>
        <translation>Con él: cerca de %1 en la fecha límite, el %2 (%3), y %4 el %5 (%6).</translation>
    </message>
    <message>
        <source>With it: about %1 on the turn date, %2 (%3), but over what colonies survive as a rule by %5.</source>
        <translation>Con él: cerca de %1 en la fecha límite, el %2 (%3), pero más de lo que suelen soportar las colonias el %5.</translation>
    </message>
    <message>
        <source>With supers on only where the label allows it.</source>
        <translation>Con alzas, solo si la etiqueta lo permite.</translation>
    </message>
    <message>
        <source>Works best from %1 to %2; %3 on %4.</source>
        <translation>Funciona mejor de %1 a %2; %3 el %4.</translation>
    </message>
    <message>
        <source>did the treatment work?</source>
        <translation>¿funcionó el tratamiento?</translation>
    </message>
    <message>
        <source>first wash of the year</source>
        <translation>primer lavado del año</translation>
    </message>
    <message>
        <source>monthly wash</source>
        <translation>lavado mensual</translation>
    </message>
    <message>
        <source>wash again, the last could not tell</source>
        <translation>repetir, el último no lo aclaró</translation>
    </message>
    <message>
        <source>wash before the turn date</source>
        <translation>lavado antes de la fecha límite</translation>
    </message>
</context>
<context>
    <name>PictureWords</name>
    <message>
        <source>Can't tell yet</source>
        <translation>Aún no se sabe</translation>
    </message>
    <message>
        <source>Close to your line</source>
        <translation>Cerca de tu umbral</translation>
    </message>
    <message>
        <source>Over your line</source>
        <translation>Supera tu umbral</translation>
    </message>
    <message>
        <source>Under your line</source>
        <translation>Bajo tu umbral</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <comment>date format without year, as in 18 May</comment>
        <translation>d 'de' MMMM</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>menos de %1</translation>
    </message>
</context>
<context>
    <name>PlanDone</name>
    <message>
        <source>Look at what changed</source>
        <translation>Mirar qué cambió</translation>
    </message>
</context>
<context>
    <name>PlanPage</name>
    <message>
        <source>%1 is large. This takes a moment.</source>
        <translation>%1 es grande. Tarda un momento.</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Take it back?</source>
        <translation>¿Deshacer?</translation>
    </message>
</context>
<context>
    <name>PlanWords</name>
    <message>
        <source>%1 cannot be read: it is a folder, this user may not read it, or its storage fails. Nothing was changed.</source>
        <translation>No se puede leer %1: es una carpeta, este usuario no tiene permiso o falla el almacenamiento. No se cambió nada.</translation>
    </message>
    <message>
        <source>%1 is empty. Ask for it again. Nothing was changed.</source>
        <translation>%1 está vacío. Pídelo otra vez. No se cambió nada.</translation>
    </message>
    <message>
        <source>%1 is larger than any file of Halfcup. It was not read, and nothing was changed.</source>
        <translation>%1 es más grande que cualquier archivo de Halfcup. No se leyó, y no se cambió nada.</translation>
    </message>
    <message>
        <source>%1 is not a file that Halfcup wrote for another phone. Nothing was changed.</source>
        <translation>%1 no es un archivo que Halfcup escribiera para otro teléfono. No se cambió nada.</translation>
    </message>
    <message>
        <source>%1 is not there any more. Nothing was changed.</source>
        <translation>%1 ya no está. No se cambió nada.</translation>
    </message>
    <message>
        <source>%1 was written for a newer Halfcup. Update this phone, then take it in. Nothing was changed.</source>
        <translation>%1 se escribió para un Halfcup más nuevo. Actualiza este teléfono y luego impórtalo. No se cambió nada.</translation>
    </message>
    <message>
        <source>%1, colony %2</source>
        <comment>what it is, of which colony</comment>
        <translation>%1, colonia %2</translation>
    </message>
    <message>
        <source>%1: yours %2, theirs %3.</source>
        <comment>a field and its values</comment>
        <translation>%1: aquí %2, allí %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n colony(ies)</source>
        <translation>
            <numerusform>%n colonia</numerusform>
            <numerusform>%n colonias</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n counted scoop(s)</source>
        <translation>
            <numerusform>%n medida contada</numerusform>
            <numerusform>%n medidas contadas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n event(s)</source>
        <translation>
            <numerusform>%n suceso</numerusform>
            <numerusform>%n sucesos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more are not listed one by one.</source>
        <translation>
            <numerusform>%n más no aparece uno por uno.</numerusform>
            <numerusform>%n más no aparecen uno por uno.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more line(s) are damaged and were left out.</source>
        <translation>
            <numerusform>%n línea más está dañada y se omitió.</numerusform>
            <numerusform>%n líneas más están dañadas y se omitieron.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) new or changed. Nothing of yours is lost.</source>
        <translation>
            <numerusform>%n registro nuevo o cambiado. No se pierde nada tuyo.</numerusform>
            <numerusform>%n registros nuevos o cambiados. No se pierde nada tuyo.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) of a kind that this version does not know: a newer Halfcup wrote them. They are kept and passed on.</source>
        <translation>
            <numerusform>%n registro de una clase que esta versión no conoce: lo escribió un Halfcup más nuevo. Se guarda y se pasa a otros.</numerusform>
            <numerusform>%n registros de una clase que esta versión no conoce: los escribió un Halfcup más nuevo. Se guardan y se pasan a otros.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) wait for what they belong to. They show as soon as a file brings it.</source>
        <translation>
            <numerusform>%n registro espera a aquello de lo que forma parte. Aparece en cuanto un archivo lo traiga.</numerusform>
            <numerusform>%n registros esperan a aquello de lo que forman parte. Aparecen en cuanto un archivo lo traiga.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n treated colony(ies)</source>
        <translation>
            <numerusform>%n colonia tratada</numerusform>
            <numerusform>%n colonias tratadas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n treatment(s)</source>
        <translation>
            <numerusform>%n tratamiento</numerusform>
            <numerusform>%n tratamientos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es)</source>
        <translation>
            <numerusform>%n lavado</numerusform>
            <numerusform>%n lavados</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n yard round(s)</source>
        <translation>
            <numerusform>%n ronda del apiario</numerusform>
            <numerusform>%n rondas del apiario</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n yard(s)</source>
        <translation>
            <numerusform>%n apiario</numerusform>
            <numerusform>%n apiarios</numerusform>
        </translation>
    </message>
    <message>
        <source>, </source>
        <comment>between the parts of a line</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>A colony</source>
        <translation>Una colonia</translation>
    </message>
    <message>
        <source>A counted scoop</source>
        <translation>Una medida contada</translation>
    </message>
    <message>
        <source>A treatment</source>
        <translation>Un tratamiento</translation>
    </message>
    <message>
        <source>A treatment given</source>
        <translation>Un tratamiento aplicado</translation>
    </message>
    <message>
        <source>A wash</source>
        <translation>Un lavado</translation>
    </message>
    <message>
        <source>A yard</source>
        <translation>Un apiario</translation>
    </message>
    <message>
        <source>A yard round</source>
        <translation>Una ronda del apiario</translation>
    </message>
    <message>
        <source>An event</source>
        <translation>Un suceso</translation>
    </message>
    <message>
        <source>Changed on both phones</source>
        <translation>Cambiado en ambos teléfonos</translation>
    </message>
    <message>
        <source>Changed there</source>
        <translation>Cambiado allí</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Colonia %1</translation>
    </message>
    <message>
        <source>Known here already</source>
        <translation>Ya conocido aquí</translation>
    </message>
    <message>
        <source>Line %1 brings more of one record than any has and was left out.</source>
        <translation>La línea %1 trae más datos de un registro de los que puede haber y se omitió.</translation>
    </message>
    <message>
        <source>Line %1 calls a record by another kind than it has here and was left out.</source>
        <translation>La línea %1 da a un registro otra clase que la que tiene aquí y se omitió.</translation>
    </message>
    <message>
        <source>Line %1 has a count that cannot be and was left out.</source>
        <translation>La línea %1 tiene un recuento imposible y se omitió.</translation>
    </message>
    <message>
        <source>Line %1 has a time that cannot be and was left out.</source>
        <translation>La línea %1 tiene una hora imposible y se omitió.</translation>
    </message>
    <message>
        <source>Line %1 has a value that cannot be (%2) and was left out.</source>
        <translation>La línea %1 tiene un valor imposible (%2) y se omitió.</translation>
    </message>
    <message>
        <source>Line %1 has an id that is none and was left out.</source>
        <translation>La línea %1 tiene un identificador que no vale y se omitió.</translation>
    </message>
    <message>
        <source>Line %1 is damaged and was left out.</source>
        <translation>La línea %1 está dañada y se omitió.</translation>
    </message>
    <message>
        <source>Line %1 is nested too deep and was left out.</source>
        <translation>La línea %1 tiene demasiados niveles y se omitió.</translation>
    </message>
    <message>
        <source>Line %1 is too long and was left out.</source>
        <translation>La línea %1 es demasiado larga y se omitió.</translation>
    </message>
    <message>
        <source>Lines are missing from the middle of the file.</source>
        <translation>Faltan líneas en medio del archivo.</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Nuevo</translation>
    </message>
    <message>
        <source>Nothing in it is new: all of it is here already.</source>
        <translation>No trae nada nuevo: todo está ya aquí.</translation>
    </message>
    <message>
        <source>Removed there</source>
        <translation>Eliminado allí</translation>
    </message>
    <message>
        <source>Some of the file is for a newer Halfcup alone and was passed over.</source>
        <translation>Una parte del archivo es solo para un Halfcup más nuevo y se pasó por alto.</translation>
    </message>
    <message>
        <source>The file was cut: its end is missing.</source>
        <translation>El archivo está cortado: falta el final.</translation>
    </message>
    <message>
        <source>The later value counts. The other one stays in the record's history.</source>
        <translation>Vale el valor más reciente. El otro queda en el historial del registro.</translation>
    </message>
    <message>
        <source>Theirs is the later one and is kept: %1.</source>
        <translation>El de allí es más reciente y se guarda: %1.</translation>
    </message>
    <message>
        <source>They leave the lists here too. The history keeps them.</source>
        <translation>Salen también de las listas de aquí. El historial los conserva.</translation>
    </message>
    <message>
        <source>Treatment: %1</source>
        <translation>Tratamiento: %1</translation>
    </message>
    <message>
        <source>What is whole can be taken in now. Ask for the file again: the good copy completes it.</source>
        <translation>Lo que está entero se puede importar ahora. Pide el archivo otra vez: la copia buena lo completa.</translation>
    </message>
    <message>
        <source>Which phone wrote it, and when, is not readable.</source>
        <translation>No se puede leer qué teléfono lo escribió ni cuándo.</translation>
    </message>
    <message>
        <source>Written by %1 on %2 at %3, by its clock.</source>
        <comment>a phone, a day, a time</comment>
        <translation>Escrito por %1 el %2 a las %3, según su reloj.</translation>
    </message>
    <message>
        <source>Written by %1.</source>
        <translation>Escrito por %1.</translation>
    </message>
    <message>
        <source>Yard %1</source>
        <translation>Apiario %1</translation>
    </message>
    <message>
        <source>Yours is the later one and stays: %1.</source>
        <translation>El de aquí es más reciente y se queda: %1.</translation>
    </message>
    <message numerus="yes">
        <source>and %n other field(s)</source>
        <translation>
            <numerusform>y %n campo más</numerusform>
            <numerusform>y %n campos más</numerusform>
        </translation>
    </message>
    <message>
        <source>phone %1</source>
        <comment>by its mark</comment>
        <translation>el teléfono %1</translation>
    </message>
    <message>
        <source>this phone</source>
        <translation>este teléfono</translation>
    </message>
    <message>
        <source>waits for its colony</source>
        <translation>espera a su colonia</translation>
    </message>
</context>
<context>
    <name>PositionWords</name>
    <message>
        <source>Looking for the position</source>
        <translation>Buscando la posición</translation>
    </message>
    <message>
        <source>No position yet. The wash goes on without.</source>
        <translation>Aún sin posición. El lavado sigue sin ella.</translation>
    </message>
    <message>
        <source>No position: it is not allowed on this phone. The wash goes on without.</source>
        <translation>Sin posición: no está permitida en este teléfono. El lavado sigue sin ella.</translation>
    </message>
    <message>
        <source>No position: no fix came in time. The wash goes on without.</source>
        <translation>Sin posición: no llegó ninguna lectura a tiempo. El lavado sigue sin ella.</translation>
    </message>
    <message>
        <source>No position: this phone has no receiver. The wash goes on without.</source>
        <translation>Sin posición: este teléfono no tiene receptor. El lavado sigue sin ella.</translation>
    </message>
    <message>
        <source>Position within %1 so far</source>
        <translation>Posición con precisión de %1 por ahora</translation>
    </message>
    <message>
        <source>Position within %1, but it moved: check that you stood still.</source>
        <translation>Posición con precisión de %1, pero se movió: comprueba que no caminabas.</translation>
    </message>
    <message numerus="yes">
        <source>Position within %1, from %n fix(es)</source>
        <translation>
            <numerusform>Posición con precisión de %1, de %n lectura</numerusform>
            <numerusform>Posición con precisión de %1, de %n lecturas</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PourStep</name>
    <message>
        <source>Back into the tray</source>
        <translation>Volver a la bandeja</translation>
    </message>
    <message>
        <source>Wash it later</source>
        <translation>Lavar más tarde</translation>
    </message>
</context>
<context>
    <name>PullBoardStep</name>
    <message>
        <source>Hours under the colony</source>
        <translation>Horas bajo la colonia</translation>
    </message>
    <message>
        <source>Type the hours</source>
        <translation>Escribir las horas</translation>
    </message>
</context>
<context>
    <name>Record</name>
    <message>
        <source>Write down the first day.</source>
        <translation>Anota el primer día.</translation>
    </message>
    <message>
        <source>Write down the last day; for what is given once it is the first.</source>
        <translation>Anota el último día; si se da una sola vez, es el primero.</translation>
    </message>
</context>
<context>
    <name>Report</name>
    <message>
        <source>%1 (%2) mites a day</source>
        <translation>%1 (%2) ácaros al día</translation>
    </message>
    <message>
        <source>%1 (%2) of 100 drone cells</source>
        <translation>%1 (%2) de cada 100 celdas de zángano</translation>
    </message>
    <message>
        <source>%1 (dead, %2)</source>
        <comment>colony, day</comment>
        <translation>%1 (muerta, %2)</translation>
    </message>
    <message>
        <source>%1 (invented)</source>
        <translation>%1 (inventado)</translation>
    </message>
    <message>
        <source>%1 (put into another, %2)</source>
        <comment>colony, day</comment>
        <translation>%1 (unida a otra, %2)</translation>
    </message>
    <message>
        <source>%1 days; honey from %2</source>
        <translation>%1 días; miel desde el %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a range</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1 to %2: %3</source>
        <comment>first and last day, the product</comment>
        <translation>%1 a %2: %3</translation>
    </message>
    <message>
        <source>%1, %2 to %3 of %4</source>
        <comment>a list, part of it</comment>
        <translation>%1, %2 a %3 de %4</translation>
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
            <numerusform>%1: %n colonia.</numerusform>
            <numerusform>%1: %n colonias.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: held against the lines as counted.</source>
        <translation>%1: comparado con los umbrales tal como se contó.</translation>
    </message>
    <message>
        <source>%1: taken to find %2 of what an alcohol wash finds; allowed for in the load.</source>
        <translation>%1: se supone que halla %2 de lo que halla un lavado con alcohol; la carga ya lo tiene en cuenta.</translation>
    </message>
    <message>
        <source>%1: the last wash of each colony, mites per 100 bees with the 90 % range</source>
        <comment>yard</comment>
        <translation>%1: el último lavado de cada colonia, ácaros por 100 abejas con el margen del 90 %</translation>
    </message>
    <message>
        <source>%1: the last wash of each colony, mites per 100 bees with the 90 % range. Colonies %2 to %3 of %4, the highest loads first</source>
        <comment>yard</comment>
        <translation>%1: el último lavado de cada colonia, ácaros por 100 abejas con el margen del 90 %. Colonias %2 a %3 de %4, las cargas más altas primero</translation>
    </message>
    <message>
        <source>%1: twelve months from %2</source>
        <comment>yard, day</comment>
        <translation>%1: doce meses desde el %2</translation>
    </message>
    <message>
        <source>%1: where the hives stand, north up</source>
        <comment>yard</comment>
        <translation>%1: dónde están las colmenas, norte arriba</translation>
    </message>
    <message numerus="yes">
        <source>%n mite(s) found: %1 per 100 bees. %2</source>
        <comment>load and range; the comb in words</comment>
        <translation>
            <numerusform>%n ácaro encontrado: %1 por 100 abejas. %2</numerusform>
            <numerusform>%n ácaros encontrados: %1 por 100 abejas. %2</numerusform>
        </translation>
    </message>
    <message>
        <source>; </source>
        <comment>between labels</comment>
        <translation>; </translation>
    </message>
    <message>
        <source>Above each: its first and last day, and the product as named on its label.</source>
        <translation>Encima de cada uno: el primer y el último día, y el producto como figura en su etiqueta.</translation>
    </message>
    <message>
        <source>All yards</source>
        <translation>Todos los apiarios</translation>
    </message>
    <message>
        <source>At the last wash</source>
        <translation>En el último lavado</translation>
    </message>
    <message>
        <source>At their last washes</source>
        <translation>En sus últimos lavados</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Bees</source>
        <translation>Abejas</translation>
    </message>
    <message>
        <source>Bees in half a cup, where they were not counted: %1.</source>
        <translation>Abejas en media taza, si no se contaron: %1.</translation>
    </message>
    <message>
        <source>Boards and drone brood</source>
        <translation>Láminas y cría de zángano</translation>
    </message>
    <message>
        <source>Chance over the line</source>
        <translation>Probabilidad de superarlo</translation>
    </message>
    <message>
        <source>Colonies kept</source>
        <translation>Colonias presentes</translation>
    </message>
    <message>
        <source>Colonies treated</source>
        <translation>Colonias tratadas</translation>
    </message>
    <message>
        <source>Colony</source>
        <translation>Colonia</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Colonia %1</translation>
    </message>
    <message>
        <source>Colony %1, %2</source>
        <comment>label, yard</comment>
        <translation>Colonia %1, %2</translation>
    </message>
    <message>
        <source>DEMO: holds invented data</source>
        <translation>DEMO: contiene datos inventados</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Difference between jars of one colony, the reason why the range is wide: %1.</source>
        <translation>Diferencia entre frascos de una misma colonia, la razón de que el margen sea amplio: %1.</translation>
    </message>
    <message>
        <source>Done by</source>
        <translation>Aplicado por</translation>
    </message>
    <message>
        <source>Expiry</source>
        <translation>Caducidad</translation>
    </message>
    <message>
        <source>Figure (90 % range)</source>
        <translation>Cifra (margen del 90 %)</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Primero</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Hallado</translation>
    </message>
    <message>
        <source>How it was counted, and sources</source>
        <translation>Cómo se contó, y fuentes</translation>
    </message>
    <message>
        <source>Last</source>
        <translation>Último</translation>
    </message>
    <message>
        <source>Last wash</source>
        <translation>Último lavado</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Umbral</translation>
    </message>
    <message>
        <source>Line, same unit</source>
        <translation>Umbral, misma unidad</translation>
    </message>
    <message>
        <source>Lines that held</source>
        <translation>Umbrales aplicados</translation>
    </message>
    <message>
        <source>Load over time</source>
        <translation>Carga a lo largo del tiempo</translation>
    </message>
    <message>
        <source>Load over time, colony by colony</source>
        <translation>Carga a lo largo del tiempo, colonia por colonia</translation>
    </message>
    <message>
        <source>Load per 100 bees (90 % range)</source>
        <translation>Carga por 100 abejas (margen del 90 %)</translation>
    </message>
    <message>
        <source>Load: mites per 100 adult bees as a wash finds them, first rinse, nothing added for mites a wash misses. The range holds the true load of the colony's adult bees in about nine of ten washes. "Over your line": the figure is at the line or over it, or the chance is above 50 %; "close": 20 to 50 %; "under": below 20 %; "can't tell yet": too few bees, or too wide a range. None found is not none there.</source>
        <translation>Carga: ácaros por 100 abejas adultas tal como los halla un lavado, primer enjuague, sin añadir nada por los que se escapan. El margen contiene la carga real de las abejas adultas de la colonia en unos nueve de cada diez lavados. «Supera tu umbral»: la cifra llega al umbral o lo pasa, o la probabilidad es mayor del 50 %; «cerca»: del 20 al 50 %; «bajo»: menos del 20 %; «aún no se sabe»: muy pocas abejas o un margen demasiado amplio. No hallar ninguno no es que no haya.</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Método</translation>
    </message>
    <message>
        <source>Mite washes</source>
        <translation>Lavados de ácaros</translation>
    </message>
    <message>
        <source>Mites</source>
        <translation>Ácaros</translation>
    </message>
    <message>
        <source>Mites per 100 bees</source>
        <translation>Ácaros por 100 abejas</translation>
    </message>
    <message>
        <source>Mites per 100 bees, with the 90 % range of each wash</source>
        <translation>Ácaros por 100 abejas, con el margen del 90 % de cada lavado</translation>
    </message>
    <message>
        <source>No colony was washed in this period.</source>
        <translation>En este período no se hizo ningún lavado.</translation>
    </message>
    <message>
        <source>No longer kept</source>
        <translation>Ya no existen</translation>
    </message>
    <message>
        <source>No treatment was written down for this period.</source>
        <translation>Para este período no se anotó ningún tratamiento.</translation>
    </message>
    <message>
        <source>Not washed</source>
        <translation>Sin lavar</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Nothing else was written down for this period.</source>
        <translation>Para este período no se anotó nada más.</translation>
    </message>
    <message>
        <source>Of the %1 colonies that were washed, the %2 with the highest loads at their last wash. All washes are in the table.</source>
        <translation>De las %1 colonias lavadas, las %2 con las cargas más altas en su último lavado. Todos los lavados están en la tabla.</translation>
    </message>
    <message>
        <source>Period</source>
        <translation>Período</translation>
    </message>
    <message>
        <source>Position (WGS 84)</source>
        <translation>Posición (WGS 84)</translation>
    </message>
    <message>
        <source>Prescribed by</source>
        <translation>Recetado por</translation>
    </message>
    <message>
        <source>Proof of purchase</source>
        <translation>Comprobante de compra</translation>
    </message>
    <message>
        <source>Quantity, all colonies</source>
        <translation>Cantidad, todas las colonias</translation>
    </message>
    <message>
        <source>Registration number</source>
        <translation>Número de registro</translation>
    </message>
    <message>
        <source>Substance or measure</source>
        <translation>Sustancia o medida</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Proveedor</translation>
    </message>
    <message>
        <source>Taken out of the hive</source>
        <translation>Retirado de la colmena</translation>
    </message>
    <message>
        <source>The last wash</source>
        <translation>El último lavado</translation>
    </message>
    <message>
        <source>The last wash as a comb of a hundred cells, %1</source>
        <translation>El último lavado como un panal de cien celdas, %1</translation>
    </message>
    <message>
        <source>The last wash of each colony</source>
        <translation>El último lavado de cada colonia</translation>
    </message>
    <message>
        <source>The yard in pictures</source>
        <translation>El apiario en imágenes</translation>
    </message>
    <message>
        <source>The yards in pictures</source>
        <translation>Los apiarios en imágenes</translation>
    </message>
    <message>
        <source>There is no yard.</source>
        <translation>No hay ningún apiario.</translation>
    </message>
    <message>
        <source>These are no loads: they are in terms of their own.</source>
        <translation>No son cargas: van en sus propias unidades.</translation>
    </message>
    <message>
        <source>These are the keeper's own records, as they were typed. The label of the product, the law where the hives stand, and the vet or inspector outrank anything said here. A withdrawal that is not written down is not one of no days.</source>
        <translation>Estos son los registros del propio apicultor, tal como los escribió. La etiqueta del producto, la ley del lugar donde están las colmenas y el veterinario o inspector están por encima de lo que aquí se diga. Un tiempo de espera sin anotar no es un tiempo de cero días.</translation>
    </message>
    <message>
        <source>Treatments</source>
        <translation>Tratamientos</translation>
    </message>
    <message>
        <source>Varroa record</source>
        <translation>Registro de varroa</translation>
    </message>
    <message>
        <source>Varroa record. %1. Written on %2 with Halfcup.</source>
        <translation>Registro de varroa. %1. Escrito el %2 con Halfcup.</translation>
    </message>
    <message>
        <source>Washes</source>
        <translation>Lavados</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Qué pasó</translation>
    </message>
    <message>
        <source>What is to be written down in the European Union: %1. Other countries ask for other things.</source>
        <translation>Lo que hay que anotar en la Unión Europea: %1. Otros países piden otras cosas.</translation>
    </message>
    <message>
        <source>What it means</source>
        <translation>Qué significa</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation>De dónde sale</translation>
    </message>
    <message>
        <source>Withdrawal</source>
        <translation>Tiempo de espera</translation>
    </message>
    <message>
        <source>Yard</source>
        <translation>Apiario</translation>
    </message>
    <message>
        <source>Yard %1</source>
        <translation>Apiario %1</translation>
    </message>
    <message>
        <source>Yard %1 (invented)</source>
        <translation>Apiario %1 (inventado)</translation>
    </message>
    <message>
        <source>due on %1; not written down as taken out</source>
        <translation>retirada prevista el %1; no está anotado que se retirara</translation>
    </message>
    <message>
        <source>latitude %1, longitude %2</source>
        <translation>latitud %1, longitud %2</translation>
    </message>
    <message>
        <source>none</source>
        <translation>no hay</translation>
    </message>
    <message>
        <source>not washed</source>
        <comment>a colony, in this period</comment>
        <translation>sin lavar</translation>
    </message>
    <message>
        <source>not written down</source>
        <translation>sin anotar</translation>
    </message>
    <message>
        <source>not written down; that is not none</source>
        <translation>sin anotar; eso no es lo mismo que cero</translation>
    </message>
    <message>
        <source>nothing stays in the hive</source>
        <translation>no queda nada en la colmena</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>página %1 de %2</translation>
    </message>
    <message>
        <source>taken out on %1</source>
        <translation>retirado el %1</translation>
    </message>
    <message>
        <source>typed by the keeper</source>
        <translation>escrito por el apicultor</translation>
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
        <translation>Carta</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Report of</source>
        <translation>Informe de</translation>
    </message>
    <message>
        <source>Years</source>
        <translation>Años</translation>
    </message>
</context>
<context>
    <name>ReportText</name>
    <message>
        <source>%1 (demo)</source>
        <comment>an invented colony</comment>
        <translation>%1 (demo)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>colony, yard</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>all records until %1</source>
        <translation>todos los registros hasta el %1</translation>
    </message>
    <message>
        <source>none</source>
        <translation>no hay</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>a colony</comment>
        <translation>desconocida</translation>
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
        <translation>%1 cuadros de abejas</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a range of loads</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>what happened, a note</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1; own %2</source>
        <comment>treat line, own line</comment>
        <translation>%1; propio %2</translation>
    </message>
    <message>
        <source>1 frame of bees</source>
        <translation>1 cuadro de abejas</translation>
    </message>
    <message>
        <source>Brood seen: %1</source>
        <translation>Cría vista: %1</translation>
    </message>
    <message>
        <source>Can't tell yet</source>
        <translation>Aún no se sabe</translation>
    </message>
    <message>
        <source>Close to your line</source>
        <translation>Cerca de tu umbral</translation>
    </message>
    <message>
        <source>Dead</source>
        <translation>Muerta</translation>
    </message>
    <message>
        <source>Moved</source>
        <translation>Trasladada</translation>
    </message>
    <message>
        <source>Moved to %1</source>
        <translation>Trasladada a %1</translation>
    </message>
    <message>
        <source>New queen</source>
        <translation>Reina nueva</translation>
    </message>
    <message>
        <source>No answer</source>
        <translation>Sin resultado</translation>
    </message>
    <message>
        <source>Over your line</source>
        <translation>Supera tu umbral</translation>
    </message>
    <message>
        <source>Put into another colony</source>
        <translation>Unida a otra colonia</translation>
    </message>
    <message>
        <source>Put into colony %1; this one ends</source>
        <translation>Unida a la colonia %1; esta termina</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>División</translation>
    </message>
    <message>
        <source>Split: colony %1 was made from it</source>
        <translation>División: de ella salió la colonia %1</translation>
    </message>
    <message>
        <source>Stands on: %1</source>
        <translation>Está sobre: %1</translation>
    </message>
    <message>
        <source>Strength: %1</source>
        <translation>Fuerza: %1</translation>
    </message>
    <message>
        <source>Supers off</source>
        <translation>Alzas quitadas</translation>
    </message>
    <message>
        <source>Supers on</source>
        <translation>Alzas puestas</translation>
    </message>
    <message>
        <source>Swarmed</source>
        <translation>Enjambró</translation>
    </message>
    <message>
        <source>Under your line</source>
        <translation>Bajo tu umbral</translation>
    </message>
    <message>
        <source>brood not known</source>
        <translation>cría sin dato</translation>
    </message>
    <message>
        <source>capped brood</source>
        <translation>cría operculada</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>práctica común</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>calculado</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <comment>date format, as in 18 May 2026</comment>
        <translation>d MMM yyyy</translation>
    </message>
    <message>
        <source>floor not known</source>
        <translation>fondo sin dato</translation>
    </message>
    <message>
        <source>no brood</source>
        <translation>sin cría</translation>
    </message>
    <message>
        <source>open brood only</source>
        <translation>solo cría abierta</translation>
    </message>
    <message>
        <source>over 99 %</source>
        <comment>a chance</comment>
        <translation>más del 99 %</translation>
    </message>
    <message>
        <source>own choice of this program</source>
        <translation>elección propia de este programa</translation>
    </message>
    <message>
        <source>published</source>
        <translation>publicado</translation>
    </message>
    <message>
        <source>published, not read again</source>
        <translation>publicado, sin volver a leer</translation>
    </message>
    <message>
        <source>quoted in a second source</source>
        <translation>citado en una segunda fuente</translation>
    </message>
    <message>
        <source>screened floor</source>
        <translation>fondo de malla</translation>
    </message>
    <message>
        <source>solid floor</source>
        <translation>fondo cerrado</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>menos de %1</translation>
    </message>
    <message>
        <source>under 1 %</source>
        <comment>a chance</comment>
        <translation>menos del 1 %</translation>
    </message>
</context>
<context>
    <name>Restoring</name>
    <message>
        <source>%1 What was kept before is safe as %2, in the list of backups.</source>
        <comment>sentence, file</comment>
        <translation>%1 Lo que había antes está a salvo como %2, en la lista de copias.</translation>
    </message>
    <message>
        <source>%1 cannot be read: this user has no permission.</source>
        <translation>No se puede leer %1: este usuario no tiene permiso.</translation>
    </message>
    <message>
        <source>%1 holds the records that are open now.</source>
        <translation>%1 contiene los registros que están abiertos ahora.</translation>
    </message>
    <message>
        <source>%1 is a folder, not a backup.</source>
        <translation>%1 es una carpeta, no una copia de seguridad.</translation>
    </message>
    <message>
        <source>%1 is damaged: it is not as it was written. Take another copy of it, or an earlier backup.</source>
        <translation>%1 está dañado: no está como se escribió. Usa otra copia, o una anterior.</translation>
    </message>
    <message>
        <source>%1 is empty. Take another copy of it, if there is one.</source>
        <translation>%1 está vacío. Usa otra copia, si la hay.</translation>
    </message>
    <message>
        <source>%1 is no backup of Halfcup.</source>
        <translation>%1 no es una copia de seguridad de Halfcup.</translation>
    </message>
    <message>
        <source>%1 is no longer there.</source>
        <translation>%1 ya no está.</translation>
    </message>
    <message numerus="yes">
        <source>%1 was put back: %n wash(es) are in your records now.</source>
        <translation>
            <numerusform>%1 se restauró: tus registros tienen ahora %n lavado.</numerusform>
            <numerusform>%1 se restauró: tus registros tienen ahora %n lavados.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 was written by a newer Halfcup. Install the newer version, then put it back.</source>
        <translation>%1 se escribió con un Halfcup más nuevo. Instala la versión nueva y luego restáuralo.</translation>
    </message>
    <message>
        <source>The backup was not put back, and your records are as they were. %1</source>
        <comment>why</comment>
        <translation>La copia no se restauró, y tus registros están como estaban. %1</translation>
    </message>
    <message>
        <source>The end of %1 is missing: it was not copied in full, or is still being copied. Copy it again.</source>
        <translation>Falta el final de %1: no se copió entero, o aún se está copiando. Cópialo de nuevo.</translation>
    </message>
    <message>
        <source>What is kept now could not be copied aside first.</source>
        <translation>No se pudo apartar primero una copia de lo que hay ahora.</translation>
    </message>
</context>
<context>
    <name>RoundGoing</name>
    <message>
        <source>End the round</source>
        <translation>Terminar la ronda</translation>
    </message>
    <message>
        <source>Still to wash, in this order</source>
        <translation>Faltan, en este orden</translation>
    </message>
</context>
<context>
    <name>RoundPage</name>
    <message>
        <source>End the round</source>
        <translation>Terminar la ronda</translation>
    </message>
    <message>
        <source>End the round?</source>
        <translation>¿Terminar la ronda?</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>The answer is not clear yet. What is washed stays; the yard's figure will have a wide range.</source>
        <translation>El resultado aún no es claro. Los lavados hechos quedan; la cifra del apiario tendrá un margen amplio.</translation>
    </message>
    <message>
        <source>Yard round</source>
        <translation>Ronda del apiario</translation>
    </message>
</context>
<context>
    <name>RoundPlan</name>
    <message>
        <source>Earlier rounds</source>
        <translation>Rondas anteriores</translation>
    </message>
    <message>
        <source>How many?</source>
        <translation>¿Cuántas?</translation>
    </message>
</context>
<context>
    <name>RoundWashed</name>
    <message>
        <source>Washed</source>
        <translation>Con lavado</translation>
    </message>
</context>
<context>
    <name>SafetyStep</name>
    <message>
        <source>Queen not seen</source>
        <translation>Reina no vista</translation>
    </message>
    <message>
        <source>Queen seen and safe</source>
        <translation>Reina vista y a salvo</translation>
    </message>
</context>
<context>
    <name>SamePage</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Leave them as one</source>
        <translation>Dejarlos como uno</translation>
    </message>
    <message>
        <source>Made on two phones, and joined. Touch one to separate it again.</source>
        <translation>Creados en dos teléfonos y unidos. Toca uno para separarlo otra vez.</translation>
    </message>
    <message>
        <source>No, two</source>
        <translation>No, son dos</translation>
    </message>
    <message>
        <source>Separate again</source>
        <translation>Separar otra vez</translation>
    </message>
    <message>
        <source>Separate again?</source>
        <translation>¿Separar otra vez?</translation>
    </message>
    <message>
        <source>Shown as one</source>
        <translation>Mostrados como uno</translation>
    </message>
    <message>
        <source>There is nothing to ask about.</source>
        <translation>No hay nada que preguntar.</translation>
    </message>
    <message>
        <source>Where they are one, it shows the washes, treatments and notes of both. They can be separated again.</source>
        <translation>Si son uno, muestra los lavados, tratamientos y notas de ambos. Se pueden volver a separar.</translation>
    </message>
    <message>
        <source>Yes, the same</source>
        <translation>Sí, es lo mismo</translation>
    </message>
</context>
<context>
    <name>ScoopEdit</name>
    <message>
        <source>How the bees lie</source>
        <translation>Cómo están las abejas</translation>
    </message>
    <message>
        <source>Loose</source>
        <translation>Sueltas</translation>
    </message>
    <message>
        <source>Rapped to settle</source>
        <translation>Asentadas a golpes</translation>
    </message>
    <message>
        <source>The scoop</source>
        <translation>La medida</translation>
    </message>
    <message>
        <source>Type millilitres</source>
        <translation>Escribir mililitros</translation>
    </message>
    <message>
        <source>Type the bees</source>
        <translation>Escribir las abejas</translation>
    </message>
    <message>
        <source>Use this scoop</source>
        <translation>Usar esta medida</translation>
    </message>
    <message>
        <source>as they were scooped</source>
        <translation>como se tomaron</translation>
    </message>
    <message>
        <source>struck on the palm until they lie close</source>
        <translation>se golpea en la palma hasta que se juntan</translation>
    </message>
</context>
<context>
    <name>ScoopStep</name>
    <message>
        <source>Bees in this jar</source>
        <translation>Abejas en este frasco</translation>
    </message>
    <message>
        <source>Change the scoop</source>
        <translation>Cambiar la medida</translation>
    </message>
    <message>
        <source>Scoop in millilitres</source>
        <translation>Medida en mililitros</translation>
    </message>
    <message>
        <source>Scooped</source>
        <translation>Muestra tomada</translation>
    </message>
    <message>
        <source>Where this comes from</source>
        <translation>De dónde sale esto</translation>
    </message>
    <message>
        <source>time and place are kept now</source>
        <translation>se guardan ahora hora y lugar</translation>
    </message>
</context>
<context>
    <name>ScrollHint</name>
    <message>
        <source>↑ more above</source>
        <translation>↑ más arriba</translation>
    </message>
    <message>
        <source>↓ more below</source>
        <translation>↓ más abajo</translation>
    </message>
</context>
<context>
    <name>SeasonPage</name>
    <message>
        <source>Keep them safe</source>
        <translation>Ponlos a salvo</translation>
    </message>
    <message>
        <source>Nothing is due in the year ahead. Make a yard and its colonies first.</source>
        <translation>No hay nada pendiente en el año por delante. Crea primero un apiario y sus colonias.</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Temporada</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Compartir</translation>
    </message>
    <message>
        <source>Write the calendar</source>
        <translation>Crear el calendario</translation>
    </message>
    <message>
        <source>iCalendar, with alarms</source>
        <translation>iCalendar, con avisos</translation>
    </message>
</context>
<context>
    <name>SeasonStripWords</name>
    <message>
        <source>Brood</source>
        <translation>Cría</translation>
    </message>
    <message>
        <source>Capped brood from %1 to %2.</source>
        <translation>Cría operculada del %1 al %2.</translation>
    </message>
    <message>
        <source>Capped brood seen</source>
        <translation>Cría operculada vista</translation>
    </message>
    <message>
        <source>No capped brood from %1 to %2.</source>
        <translation>Sin cría operculada del %1 al %2.</translation>
    </message>
    <message>
        <source>No capped brood seen</source>
        <translation>Sin cría operculada</translation>
    </message>
    <message>
        <source>Nothing is recorded yet.</source>
        <translation>Aún no hay nada anotado.</translation>
    </message>
    <message>
        <source>Supers</source>
        <translation>Alzas</translation>
    </message>
    <message>
        <source>Supers on from %1 to %2.</source>
        <translation>Alzas puestas del %1 al %2.</translation>
    </message>
    <message>
        <source>Supers on, for the nectar flow</source>
        <translation>Alzas puestas, para la mielada</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Today is %1.</source>
        <comment>day</comment>
        <translation>Hoy es %1.</translation>
    </message>
    <message>
        <source>Treated</source>
        <translation>Tratado</translation>
    </message>
    <message>
        <source>Treated from %1 to %2.</source>
        <translation>Tratado del %1 al %2.</translation>
    </message>
    <message>
        <source>Treatment, from its first to its last day</source>
        <translation>Tratamiento, del primer al último día</translation>
    </message>
    <message>
        <source>Turn date %1.</source>
        <comment>day</comment>
        <translation>Fecha límite %1.</translation>
    </message>
    <message>
        <source>Turn date: mites must be low by then</source>
        <translation>Fecha límite: para entonces debe haber pocos ácaros</translation>
    </message>
    <message>
        <source>Twelve months from %1 %2.</source>
        <comment>month, year</comment>
        <translation>Doce meses desde %1 de %2.</translation>
    </message>
    <message>
        <source>Wash due</source>
        <translation>Lavado pendiente</translation>
    </message>
    <message>
        <source>Washed</source>
        <translation>Lavado hecho</translation>
    </message>
    <message numerus="yes">
        <source>Washed on %n day(s).</source>
        <translation>
            <numerusform>Lavados en %n día.</numerusform>
            <numerusform>Lavados en %n días.</numerusform>
        </translation>
    </message>
    <message>
        <source>Washes</source>
        <translation>Lavados</translation>
    </message>
    <message numerus="yes">
        <source>Washes due on %n day(s).</source>
        <translation>
            <numerusform>Lavados pendientes en %n día.</numerusform>
            <numerusform>Lavados pendientes en %n días.</numerusform>
        </translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>turn date %1</source>
        <comment>day</comment>
        <translation>fecha límite %1</translation>
    </message>
</context>
<context>
    <name>SecondRinseStep</name>
    <message>
        <source>Count a second rinse</source>
        <translation>Contar un 2.º enjuague</translation>
    </message>
    <message>
        <source>Count the second rinse</source>
        <translation>Contar segundo enjuague</translation>
    </message>
    <message>
        <source>Go on counting</source>
        <translation>Seguir contando</translation>
    </message>
    <message>
        <source>It shows how many mites the first rinse left on the bees. You need it now and then, not at every wash.</source>
        <translation>Muestra cuántos ácaros dejó el primer enjuague en las abejas. Hace falta de vez en cuando, no en cada lavado.</translation>
    </message>
    <message>
        <source>None found</source>
        <translation>Ninguno</translation>
    </message>
    <message>
        <source>Not rinsed</source>
        <translation>Sin enjuagar</translation>
    </message>
    <message>
        <source>Nothing in the second rinse?</source>
        <translation>¿Nada en el segundo enjuague?</translation>
    </message>
    <message>
        <source>Show the answer</source>
        <translation>Ver el resultado</translation>
    </message>
    <message>
        <source>Then it is kept as a second rinse with 0 mites.</source>
        <translation>Entonces se guarda como segundo enjuague con 0 ácaros.</translation>
    </message>
    <message>
        <source>without a second rinse</source>
        <translation>sin segundo enjuague</translation>
    </message>
</context>
<context>
    <name>SetupPage</name>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Dusk</source>
        <translation>Atardecer</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Large</source>
        <translation>Grande</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Mayor</translation>
    </message>
    <message>
        <source>Larger still</source>
        <translation>Aún mayor</translation>
    </message>
    <message>
        <source>Left hand</source>
        <translation>Mano izquierda</translation>
    </message>
    <message>
        <source>Lengths and temperatures</source>
        <translation>Longitudes y temperaturas</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Luz</translation>
    </message>
    <message>
        <source>Longer</source>
        <translation>Más largo</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>No</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>Phone held in</source>
        <translation>Teléfono en la</translation>
    </message>
    <message>
        <source>Right hand</source>
        <translation>Mano derecha</translation>
    </message>
    <message>
        <source>Setup</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Shorter</source>
        <translation>Más corto</translation>
    </message>
    <message>
        <source>Size of letters: %1</source>
        <translation>Tamaño de letra: %1</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Menor</translation>
    </message>
    <message>
        <source>Sounds of the timer</source>
        <translation>Sonidos del cronómetro</translation>
    </message>
    <message>
        <source>Time to shake: %1</source>
        <translation>Tiempo de agitado: %1</translation>
    </message>
    <message>
        <source>Voice: half time, ten seconds, every fifth mite</source>
        <translation>Voz: mitad del tiempo, diez segundos, cada cinco ácaros</translation>
    </message>
    <message>
        <source>What you touch</source>
        <translation>Lo que tocas</translation>
    </message>
    <message>
        <source>Where the figures come from</source>
        <translation>De dónde salen las cifras</translation>
    </message>
    <message>
        <source>Your counted scoops</source>
        <translation>Tus medidas contadas</translation>
    </message>
    <message>
        <source>Your usual scoop</source>
        <translation>Tu medida habitual</translation>
    </message>
    <message>
        <source>Your usual way to count</source>
        <translation>Tu método habitual</translation>
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
        <translation>Origen de las posiciones</translation>
    </message>
    <message>
        <source>Use this source</source>
        <translation>Usar este origen</translation>
    </message>
</context>
<context>
    <name>ShakeStep</name>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pausa</translation>
    </message>
    <message>
        <source>Sound is off</source>
        <translation>Sin sonido</translation>
    </message>
    <message>
        <source>Sound is on</source>
        <translation>Con sonido</translation>
    </message>
</context>
<context>
    <name>SharePage</name>
    <message>
        <source>A table of earlier washes</source>
        <translation>Una tabla de lavados previos</translation>
    </message>
    <message>
        <source>Exchange folder</source>
        <translation>Carpeta de intercambio</translation>
    </message>
    <message>
        <source>For people</source>
        <translation>Para personas</translation>
    </message>
    <message>
        <source>Keep safe</source>
        <translation>Poner a salvo</translation>
    </message>
    <message>
        <source>Last taken in</source>
        <translation>Última importación</translation>
    </message>
    <message>
        <source>Load the demo</source>
        <translation>Cargar la demo</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Compartir</translation>
    </message>
    <message>
        <source>Show it in its folder</source>
        <translation>Ver en su carpeta</translation>
    </message>
    <message>
        <source>Take in a file</source>
        <translation>Importar un archivo</translation>
    </message>
    <message>
        <source>Write everything for another phone</source>
        <translation>Todo para otro teléfono</translation>
    </message>
    <message>
        <source>from another phone; you see first what it brings</source>
        <translation>de otro teléfono; antes ves qué trae</translation>
    </message>
    <message>
        <source>tables, a map, a calendar, a report</source>
        <translation>tablas, un mapa, un calendario, un informe</translation>
    </message>
    <message>
        <source>take it in from a spreadsheet</source>
        <translation>importarla de una hoja de cálculo</translation>
    </message>
    <message>
        <source>two invented yards to try things on</source>
        <translation>dos apiarios inventados para probar</translation>
    </message>
    <message>
        <source>whoever gets it knows where your hives stand</source>
        <translation>quien lo reciba sabrá dónde están tus colmenas</translation>
    </message>
</context>
<context>
    <name>SituationHive</name>
    <message>
        <source>Brood</source>
        <translation>Cría</translation>
    </message>
    <message>
        <source>Floor</source>
        <translation>Fondo</translation>
    </message>
    <message>
        <source>Frames covered with bees</source>
        <translation>Cuadros cubiertos de abejas</translation>
    </message>
    <message>
        <source>Supers</source>
        <translation>Alzas</translation>
    </message>
</context>
<context>
    <name>SituationPage</name>
    <message>
        <source>Daily highs</source>
        <translation>Máximas diarias</translation>
    </message>
    <message>
        <source>Forecast in</source>
        <translation>Pronóstico en</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Nightly lows</source>
        <translation>Mínimas nocturnas</translation>
    </message>
    <message>
        <source>One for each high, or none.</source>
        <translation>Una por cada máxima, o ninguna.</translation>
    </message>
    <message>
        <source>What is so now</source>
        <translation>Cómo está ahora</translation>
    </message>
    <message>
        <source>and see what fits</source>
        <translation>y ver qué conviene</translation>
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
        <translation>Colonia %1, sin tratar: %2 ácaros por 100 abejas antes, %3 después.</translation>
    </message>
    <message>
        <source>Colony %1: %2 mites per 100 bees before, %3 after.</source>
        <translation>Colonia %1: %2 ácaros por 100 abejas antes, %3 después.</translation>
    </message>
    <message>
        <source>High loads are drawn closer together.</source>
        <translation>Las cargas altas van más juntas.</translation>
    </message>
    <message>
        <source>No colony was washed both before and after it.</source>
        <translation>Ninguna colonia tiene lavado antes y después.</translation>
    </message>
    <message>
        <source>None found</source>
        <translation>Ninguno</translation>
    </message>
    <message>
        <source>Range in 9 of 10 cases</source>
        <translation>Margen en 9 de cada 10 casos</translation>
    </message>
    <message>
        <source>Treat line</source>
        <translation>Umbral de tratamiento</translation>
    </message>
    <message>
        <source>Treated colony</source>
        <translation>Colonia tratada</translation>
    </message>
    <message>
        <source>Untreated colony</source>
        <translation>Colonia sin tratar</translation>
    </message>
    <message>
        <source>after</source>
        <translation>después</translation>
    </message>
    <message>
        <source>before</source>
        <translation>antes</translation>
    </message>
    <message>
        <source>treat line %1</source>
        <translation>umbral %1</translation>
    </message>
</context>
<context>
    <name>SourceSetting</name>
    <message>
        <source>The position source "%1" cannot be used: %2 It can be "default", "none", "nmea:file:PATH", "nmea:tcp://HOST:PORT", "nmea:serial:/dev/NAME" or "gpsd://HOST:PORT".</source>
        <translation>El origen de posiciones «%1» no se puede usar: %2 Puede ser "default", "none", "nmea:file:PATH", "nmea:tcp://HOST:PORT", "nmea:serial:/dev/NAME" o "gpsd://HOST:PORT".</translation>
    </message>
    <message>
        <source>it is not one of the known forms.</source>
        <translation>no es ninguna de las formas conocidas.</translation>
    </message>
    <message>
        <source>it needs a host and a port between 1 and 65535.</source>
        <translation>necesita un host y un puerto entre 1 y 65535.</translation>
    </message>
    <message>
        <source>it needs a host, and a port between 1 and 65535 if any.</source>
        <translation>necesita un host y, si lleva puerto, uno entre 1 y 65535.</translation>
    </message>
    <message>
        <source>the name of the file is missing.</source>
        <translation>falta el nombre del archivo.</translation>
    </message>
    <message>
        <source>the name of the serial line is missing.</source>
        <translation>falta el nombre del puerto serie.</translation>
    </message>
    <message>
        <source>the speed behind "baud=" is no number of bits a second.</source>
        <translation>la velocidad detrás de "baud=" no es un número de bits por segundo.</translation>
    </message>
</context>
<context>
    <name>SourcesPage</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>Where this comes from</source>
        <translation>De dónde sale esto</translation>
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
        <translation>%1 cuadros de abejas</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>brood and day</comment>
        <translation>%1 el %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>first and last day</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between parts of a state</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>1 frame of bees</source>
        <translation>1 cuadro de abejas</translation>
    </message>
    <message>
        <source>Brood seen</source>
        <translation>Cría vista</translation>
    </message>
    <message>
        <source>Brood seen: %1</source>
        <translation>Cría vista: %1</translation>
    </message>
    <message>
        <source>Colony %1 was put into this one</source>
        <translation>Se le unió la colonia %1</translation>
    </message>
    <message>
        <source>Dead</source>
        <translation>Muerta</translation>
    </message>
    <message>
        <source>Floor</source>
        <translation>Fondo</translation>
    </message>
    <message>
        <source>Honey may be taken from %1.</source>
        <translation>Se puede sacar miel desde el %1.</translation>
    </message>
    <message>
        <source>Merged into another</source>
        <translation>Unida a otra</translation>
    </message>
    <message>
        <source>Moved</source>
        <translation>Trasladada</translation>
    </message>
    <message>
        <source>Moved to %1</source>
        <translation>Trasladada a %1</translation>
    </message>
    <message>
        <source>New queen</source>
        <translation>Reina nueva</translation>
    </message>
    <message>
        <source>New queen: %1</source>
        <translation>Reina nueva: %1</translation>
    </message>
    <message>
        <source>No treatment in the records holds the honey.</source>
        <translation>Ningún tratamiento de los registros retiene la miel.</translation>
    </message>
    <message>
        <source>Not before %1, and perhaps later: the withdrawal of a treatment is not written down. The label says it.</source>
        <translation>No antes del %1, y quizás más tarde: el tiempo de espera de un tratamiento no está anotado. Lo dice la etiqueta.</translation>
    </message>
    <message>
        <source>Not known: the withdrawal of an earlier treatment is not written down. The label says it.</source>
        <translation>No se sabe: el tiempo de espera de un tratamiento anterior no está anotado. Lo dice la etiqueta.</translation>
    </message>
    <message>
        <source>Nothing is written down of its state yet.</source>
        <translation>Aún no hay nada anotado de su estado.</translation>
    </message>
    <message>
        <source>Put into colony %1; this one ends</source>
        <translation>Unida a la colonia %1; esta termina</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>División</translation>
    </message>
    <message>
        <source>Split: colony %1 was made from it</source>
        <translation>División: de ella salió la colonia %1</translation>
    </message>
    <message>
        <source>Stands on: %1</source>
        <translation>Está sobre: %1</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Fuerza</translation>
    </message>
    <message>
        <source>Strength: %1</source>
        <translation>Fuerza: %1</translation>
    </message>
    <message>
        <source>Supers off</source>
        <translation>Alzas quitadas</translation>
    </message>
    <message>
        <source>Supers on</source>
        <translation>Alzas puestas</translation>
    </message>
    <message>
        <source>Swarmed</source>
        <translation>Enjambró</translation>
    </message>
    <message>
        <source>another yard</source>
        <translation>otro apiario</translation>
    </message>
    <message>
        <source>begins on %1</source>
        <translation>empieza el %1</translation>
    </message>
    <message>
        <source>brood not known</source>
        <translation>cría sin dato</translation>
    </message>
    <message>
        <source>capped brood</source>
        <translation>cría operculada</translation>
    </message>
    <message>
        <source>dead since %1</source>
        <translation>muerta desde el %1</translation>
    </message>
    <message>
        <source>floor not known</source>
        <translation>fondo sin dato</translation>
    </message>
    <message>
        <source>honey from %1</source>
        <translation>miel desde el %1</translation>
    </message>
    <message>
        <source>no brood</source>
        <translation>sin cría</translation>
    </message>
    <message>
        <source>open brood only</source>
        <translation>solo cría abierta</translation>
    </message>
    <message>
        <source>over</source>
        <translation>terminado</translation>
    </message>
    <message>
        <source>put into another colony on %1</source>
        <translation>unida a otra colonia el %1</translation>
    </message>
    <message>
        <source>queen: %1</source>
        <translation>reina: %1</translation>
    </message>
    <message>
        <source>running</source>
        <translation>en curso</translation>
    </message>
    <message>
        <source>screened floor</source>
        <translation>fondo de malla</translation>
    </message>
    <message>
        <source>solid floor</source>
        <translation>fondo cerrado</translation>
    </message>
    <message>
        <source>supers off since %1</source>
        <translation>sin alzas desde el %1</translation>
    </message>
    <message>
        <source>supers on since %1</source>
        <translation>con alzas desde el %1</translation>
    </message>
    <message>
        <source>withdrawal not written down</source>
        <translation>tiempo de espera sin anotar</translation>
    </message>
</context>
<context>
    <name>StoryEntries</name>
    <message>
        <source>%1 per 100, %2</source>
        <comment>a load and its range</comment>
        <translation>%1 por 100, %2</translation>
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
        <translation>%1, lote %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>method, figure</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1; the handbook's line is %2</source>
        <comment>range, line</comment>
        <translation>%1; el umbral del manual es %2</translation>
    </message>
    <message>
        <source>Abandoned</source>
        <translation>Abandonado</translation>
    </message>
    <message>
        <source>Not finished</source>
        <translation>Sin terminar</translation>
    </message>
    <message>
        <source>This date is still to come: the phone's clock was wrong, then or now. Until then nothing is reckoned from it.</source>
        <translation>Esta fecha aún no ha llegado: el reloj del teléfono iba mal, entonces o ahora. Hasta ese día no se calcula nada con ella.</translation>
    </message>
    <message>
        <source>left at: %1</source>
        <translation>se dejó en: %1</translation>
    </message>
    <message>
        <source>waits at: %1</source>
        <translation>espera en: %1</translation>
    </message>
</context>
<context>
    <name>Table</name>
    <message>
        <source>"%1" can be read in two ways. Which comes first, the day or the month?</source>
        <translation>«%1» se puede leer de dos formas. ¿Qué va primero, el día o el mes?</translation>
    </message>
    <message>
        <source>"%1" is not a day.</source>
        <translation>«%1» no es un día.</translation>
    </message>
    <message>
        <source>"%1" is not a time of day.</source>
        <translation>«%1» no es una hora.</translation>
    </message>
    <message>
        <source>%1 "%2" is not a number.</source>
        <translation>%1 «%2»: no es un número.</translation>
    </message>
    <message>
        <source>%1 "%2" is not a whole number.</source>
        <translation>%1 «%2»: no es un número entero.</translation>
    </message>
    <message>
        <source>%1 "%2" is too large: at most %3.</source>
        <translation>%1 «%2»: demasiado; como máximo %3.</translation>
    </message>
    <message>
        <source>%1 "%2" is too small: at least %3.</source>
        <translation>%1 «%2»: demasiado poco; al menos %3.</translation>
    </message>
    <message>
        <source>%1 "%2" may be a thousand times more or not: write it without a mark.</source>
        <translation>%1 «%2»: puede ser mil veces más o no; escríbelo sin separador.</translation>
    </message>
    <message>
        <source>%1 is no file.</source>
        <translation>%1 no es un archivo.</translation>
    </message>
    <message>
        <source>%1 is not there any more.</source>
        <translation>%1 ya no está.</translation>
    </message>
    <message>
        <source>%1 may not be read.</source>
        <translation>%1 no se puede leer: falta permiso.</translation>
    </message>
    <message>
        <source>%1 mites on %2 bees: are the two swapped?</source>
        <translation>%1 ácaros en %2 abejas: ¿están cambiados?</translation>
    </message>
    <message>
        <source>%1 per 100 of %2 bees are %3 mites, which is no whole number: give the mites.</source>
        <translation>%1 por 100 de %2 abejas son %3 ácaros, que no es un número entero: da los ácaros.</translation>
    </message>
    <message>
        <source>Bees are taken from the scoop, as they fell in, by the book.</source>
        <translation>Las abejas se calculan de la medida, tal como cayeron, según el manual.</translation>
    </message>
    <message>
        <source>Bees washed</source>
        <translation>Abejas lavadas</translation>
    </message>
    <message>
        <source>Colony</source>
        <translation>Colonia</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Id of the wash</source>
        <translation>Identificador del lavado</translation>
    </message>
    <message>
        <source>Invented (demo)</source>
        <translation>Inventado (demo)</translation>
    </message>
    <message>
        <source>Line %1 has a zero byte, which no text has. This is not a table, or it is damaged.</source>
        <translation>La línea %1 contiene un byte cero, que no hay en ningún texto. Esto no es una tabla, o está dañada.</translation>
    </message>
    <message>
        <source>Line %1, which has to name the columns, cannot be read: there is a quotation mark too many or too few.</source>
        <translation>La línea %1, que debe dar nombre a las columnas, no se puede leer: sobran o faltan unas comillas.</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Método</translation>
    </message>
    <message>
        <source>Mites counted</source>
        <translation>Ácaros contados</translation>
    </message>
    <message>
        <source>Mites of a second rinse</source>
        <translation>Ácaros de un segundo enjuague</translation>
    </message>
    <message>
        <source>Mites per 100 bees</source>
        <translation>Ácaros por 100 abejas</translation>
    </message>
    <message>
        <source>Mites per 100 bees say how many were counted only beside the number of bees. Which column holds the bees?</source>
        <translation>Los ácaros por 100 abejas solo dicen cuántos se contaron junto al número de abejas. ¿Qué columna contiene las abejas?</translation>
    </message>
    <message>
        <source>No column holds the bees: each wash is taken as half a cup, by the book.</source>
        <translation>Ninguna columna contiene las abejas: cada lavado se toma como media taza, según el manual.</translation>
    </message>
    <message>
        <source>No column names the method: all are taken as alcohol washes.</source>
        <translation>Ninguna columna da el método: todos se toman como lavados con alcohol.</translation>
    </message>
    <message>
        <source>No column names the yard. In which yard were these washes?</source>
        <translation>Ninguna columna da el nombre del apiario. ¿En qué apiario fueron estos lavados?</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Scoop in cups</source>
        <translation>Medida en tazas</translation>
    </message>
    <message>
        <source>Scoop in ml</source>
        <translation>Medida en ml</translation>
    </message>
    <message>
        <source>Some days are written day first, others month first ("%1"). Which is right? The others will be refused.</source>
        <translation>Unos días llevan el día primero y otros el mes («%1»). ¿Qué es lo correcto? Los otros se rechazarán.</translation>
    </message>
    <message>
        <source>Spread of the bees</source>
        <translation>Dispersión de las abejas</translation>
    </message>
    <message>
        <source>The file is larger than 64 MB. Cut it into several.</source>
        <translation>El archivo pasa de 64 MB. Divídelo en varios.</translation>
    </message>
    <message>
        <source>The file is not written in UTF-8: it is read as Windows-1252. Look whether letters with accents are right.</source>
        <translation>El archivo no está en UTF-8: se lee como Windows-1252. Mira si las letras con acento están bien.</translation>
    </message>
    <message>
        <source>The first row has a day in it, not names. Put a row above it that names the columns: day, colony, mites.</source>
        <translation>La primera fila contiene un día, no nombres. Pon encima una fila que dé nombre a las columnas: día, colonia, ácaros.</translation>
    </message>
    <message>
        <source>The name of the yard is longer than 60 letters.</source>
        <translation>El nombre del apiario pasa de 60 letras.</translation>
    </message>
    <message>
        <source>The table has %1 columns. So many belong to something else than washes; %2 is the most.</source>
        <translation>La tabla tiene %1 columnas. Tantas son de otra cosa, no de lavados; el máximo es %2.</translation>
    </message>
    <message>
        <source>The table has more than 100,000 rows. Cut it into several.</source>
        <translation>La tabla pasa de cien mil filas. Divídela en varias.</translation>
    </message>
    <message>
        <source>There is nothing in this file.</source>
        <translation>En este archivo no hay nada.</translation>
    </message>
    <message>
        <source>This app wrote this table. To bring records to another phone, an exchange file is better: it keeps the place, the shake and each touch of the count.</source>
        <translation>Esta aplicación escribió esta tabla. Para llevar registros a otro teléfono es mejor un archivo de intercambio: conserva el lugar, el agitado y cada toque del recuento.</translation>
    </message>
    <message>
        <source>This is a spreadsheet's own file. Save it there as CSV (text), and take that file.</source>
        <translation>Este es un archivo propio de una hoja de cálculo. Guárdalo allí como CSV (texto) y usa ese archivo.</translation>
    </message>
    <message>
        <source>Time of day</source>
        <translation>Hora</translation>
    </message>
    <message>
        <source>Where no time of day is given, it is noon. The table says no time zone: day and clock are kept as they are written.</source>
        <translation>Si no hay hora, se toma el mediodía. La tabla no indica zona horaria: día y hora quedan como están escritos.</translation>
    </message>
    <message>
        <source>Which column holds the day?</source>
        <translation>¿Qué columna contiene el día?</translation>
    </message>
    <message>
        <source>Which column holds the mites?</source>
        <translation>¿Qué columna contiene los ácaros?</translation>
    </message>
    <message>
        <source>Which column names the colony?</source>
        <translation>¿Qué columna da el nombre de la colonia?</translation>
    </message>
    <message>
        <source>Yard</source>
        <translation>Apiario</translation>
    </message>
    <message>
        <source>a quotation mark is opened and not closed.</source>
        <translation>se abren unas comillas y no se cierran.</translation>
    </message>
    <message>
        <source>a sticky board or drone brood gives no load: only washes and rolls are taken in.</source>
        <translation>una lámina adhesiva o la cría de zángano no dan una carga: solo se admiten lavados y pruebas del azúcar.</translation>
    </message>
    <message>
        <source>a wash of this colony with the same count on this day is here already.</source>
        <translation>aquí ya hay un lavado de esta colonia con el mismo recuento ese día.</translation>
    </message>
    <message>
        <source>cell %1 is longer than a million letters.</source>
        <translation>la celda %1 pasa de un millón de letras.</translation>
    </message>
    <message>
        <source>it is marked as invented (demo).</source>
        <translation>está marcado como inventado (demo).</translation>
    </message>
    <message>
        <source>mites per 100 bees say how many were counted only beside the number of bees.</source>
        <translation>los ácaros por 100 abejas solo dicen cuántos se contaron junto al número de abejas.</translation>
    </message>
    <message>
        <source>no bees are given: taken as half a cup.</source>
        <translation>no se dan las abejas: se toma como media taza.</translation>
    </message>
    <message>
        <source>no count of mites is given.</source>
        <translation>no se da el recuento de ácaros.</translation>
    </message>
    <message>
        <source>no method is given: taken as an alcohol wash.</source>
        <translation>no se da el método: se toma como lavado con alcohol.</translation>
    </message>
    <message>
        <source>so many mites are in no jar: at most 10000.</source>
        <translation>tantos ácaros no hay en ningún frasco: como máximo 10000.</translation>
    </message>
    <message>
        <source>the day %1 is before %2.</source>
        <translation>el día %1 es anterior a %2.</translation>
    </message>
    <message>
        <source>the day %1 is still to come.</source>
        <translation>el día %1 aún no ha llegado.</translation>
    </message>
    <message>
        <source>the label of the colony is longer than 60 letters.</source>
        <translation>el nombre de la colonia pasa de 60 letras.</translation>
    </message>
    <message>
        <source>the method "%1" is not known here: alcohol wash, soapy wash or sugar roll.</source>
        <translation>aquí no se conoce el método «%1»: lavado con alcohol, lavado con agua jabonosa o prueba del azúcar.</translation>
    </message>
    <message>
        <source>the name of the yard is longer than 60 letters.</source>
        <translation>el nombre del apiario pasa de 60 letras.</translation>
    </message>
    <message>
        <source>the note is longer than 2,000 letters: the rest of it is left off.</source>
        <translation>la nota pasa de 2000 letras: el resto se omite.</translation>
    </message>
    <message>
        <source>the row of names has %2 cells, this one %1.</source>
        <translation>la fila de nombres tiene %2 celdas, esta %1.</translation>
    </message>
    <message>
        <source>the same as a row above: a second jar, or written twice?</source>
        <translation>lo mismo que una fila anterior: ¿un segundo frasco, o escrito dos veces?</translation>
    </message>
    <message>
        <source>there is a quotation mark inside a cell that does not begin with one.</source>
        <translation>hay comillas dentro de una celda que no empieza por comillas.</translation>
    </message>
    <message>
        <source>there is no colony.</source>
        <translation>no hay colonia.</translation>
    </message>
    <message>
        <source>there is no day.</source>
        <translation>no hay día.</translation>
    </message>
    <message>
        <source>there is no yard.</source>
        <translation>no hay apiario.</translation>
    </message>
    <message>
        <source>there is text behind a closed quotation mark.</source>
        <translation>hay texto detrás de unas comillas ya cerradas.</translation>
    </message>
    <message>
        <source>this wash stands in the table already.</source>
        <translation>este lavado ya está en la tabla.</translation>
    </message>
    <message>
        <source>two colonies here are both called "%1": rename one first.</source>
        <translation>aquí dos colonias se llaman «%1»: cambia antes el nombre de una.</translation>
    </message>
    <message>
        <source>two yards here are both called "%1": rename one first.</source>
        <translation>aquí dos apiarios se llaman «%1»: cambia antes el nombre de uno.</translation>
    </message>
</context>
<context>
    <name>TrayPage</name>
    <message>
        <source>A jar comes here when you scoop now and wash later: after the scoop, touch Wash it later.</source>
        <translation>Aquí llega un frasco cuando tomas la muestra ahora y la lavas después: tras tomarla, toca «Lavar más tarde».</translation>
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
            <numerusform>%n lámina puesta</numerusform>
            <numerusform>%n láminas puestas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n jar(s) wait</source>
        <translation>
            <numerusform>%n frasco espera</numerusform>
            <numerusform>%n frascos esperan</numerusform>
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
            <numerusform>%1, %n colonia</numerusform>
            <numerusform>%1, %n colonias</numerusform>
        </translation>
    </message>
    <message>
        <source>Colony %1, %2</source>
        <comment>colony, yard</comment>
        <translation>Colonia %1, %2</translation>
    </message>
    <message>
        <source>From %1: %2, %3, %4</source>
        <comment>day, supers, brood, forecast</comment>
        <translation>Desde el %1: %2, %3, %4</translation>
    </message>
    <message>
        <source>brood not known</source>
        <translation>cría sin dato</translation>
    </message>
    <message>
        <source>capped brood</source>
        <translation>cría operculada</translation>
    </message>
    <message>
        <source>highs from %1 to %2</source>
        <translation>máximas de %1 a %2</translation>
    </message>
    <message>
        <source>no brood</source>
        <translation>sin cría</translation>
    </message>
    <message>
        <source>no forecast yet</source>
        <translation>aún sin pronóstico</translation>
    </message>
    <message>
        <source>open brood only</source>
        <translation>solo cría abierta</translation>
    </message>
    <message>
        <source>supers not known</source>
        <translation>alzas sin dato</translation>
    </message>
    <message>
        <source>supers off</source>
        <translation>sin alzas</translation>
    </message>
    <message>
        <source>supers on</source>
        <translation>con alzas</translation>
    </message>
</context>
<context>
    <name>TreatPage</name>
    <message>
        <source>What is so now</source>
        <translation>Cómo está ahora</translation>
    </message>
    <message>
        <source>What to treat with</source>
        <translation>Con qué tratar</translation>
    </message>
    <message>
        <source>Whole yard</source>
        <translation>Todo el apiario</translation>
    </message>
    <message>
        <source>type the forecast; supers, brood</source>
        <translation>escribe el pronóstico; alzas, cría</translation>
    </message>
    <message>
        <source>weather, supers, brood</source>
        <translation>tiempo, alzas, cría</translation>
    </message>
</context>
<context>
    <name>TreatmentColonies</name>
    <message>
        <source>All of them</source>
        <translation>Todas</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Which colonies get it?</source>
        <translation>¿Qué colonias lo reciben?</translation>
    </message>
</context>
<context>
    <name>TreatmentForm</name>
    <message>
        <source>Active substance</source>
        <translation>Sustancia activa</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Done by</source>
        <translation>Aplicado por</translation>
    </message>
    <message>
        <source>Expiry of the product</source>
        <translation>Caducidad del producto</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Primer día</translation>
    </message>
    <message>
        <source>From the label; 0 where it says none.</source>
        <translation>Según la etiqueta; 0 si dice que no hay.</translation>
    </message>
    <message>
        <source>It cannot be taken out before the first day.</source>
        <translation>No se puede retirar antes del primer día.</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Último día</translation>
    </message>
    <message>
        <source>Leave it empty where nothing stays in the hive.</source>
        <translation>Déjalo vacío si no queda nada en la colmena.</translation>
    </message>
    <message>
        <source>More for the record</source>
        <translation>Más para el registro</translation>
    </message>
    <message>
        <source>No active substance is named.</source>
        <translation>No se nombra ninguna sustancia activa.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>One of the days does not exist.</source>
        <translation>Uno de los días no existe.</translation>
    </message>
    <message>
        <source>Pick the colonies that get it.</source>
        <translation>Elige las colonias que lo reciben.</translation>
    </message>
    <message>
        <source>Prescribed by</source>
        <translation>Recetado por</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Producto</translation>
    </message>
    <message>
        <source>Proof of purchase</source>
        <translation>Comprobante de compra</translation>
    </message>
    <message>
        <source>Quantity, all colonies together</source>
        <translation>Cantidad, todas las colonias juntas</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Proveedor</translation>
    </message>
    <message>
        <source>Taken out on</source>
        <translation>Retirado el</translation>
    </message>
    <message numerus="yes">
        <source>The course is longer than %n day(s).</source>
        <translation>
            <numerusform>La duración pasa de %n día.</numerusform>
            <numerusform>La duración pasa de %n días.</numerusform>
        </translation>
    </message>
    <message>
        <source>The first day is more than a year away.</source>
        <translation>Falta más de un año para el primer día.</translation>
    </message>
    <message>
        <source>The last day lies before the first.</source>
        <translation>El último día es anterior al primero.</translation>
    </message>
    <message>
        <source>The product has expired before the first day.</source>
        <translation>El producto caducó antes del primer día.</translation>
    </message>
    <message numerus="yes">
        <source>The withdrawal can be %n day(s) at the most.</source>
        <translation>
            <numerusform>El tiempo de espera puede ser de %n día como máximo.</numerusform>
            <numerusform>El tiempo de espera puede ser de %n días como máximo.</numerusform>
        </translation>
    </message>
    <message>
        <source>The withdrawal cannot be less than 0 days.</source>
        <translation>El tiempo de espera no puede ser menor que 0 días.</translation>
    </message>
    <message>
        <source>To be taken out on</source>
        <translation>Por retirar el</translation>
    </message>
    <message>
        <source>Withdrawal for honey, days</source>
        <translation>Tiempo de espera (miel), días</translation>
    </message>
    <message>
        <source>Write down the product as its label names it.</source>
        <translation>Anota el producto como lo llama su etiqueta.</translation>
    </message>
    <message>
        <source>as its label names it</source>
        <translation>como lo llama su etiqueta</translation>
    </message>
    <message>
        <source>as the label names it</source>
        <translation>como la llama la etiqueta</translation>
    </message>
    <message>
        <source>name and address</source>
        <translation>nombre y dirección</translation>
    </message>
    <message>
        <source>number of the receipt, or where it is kept</source>
        <translation>número del recibo, o dónde se guarda</translation>
    </message>
    <message>
        <source>where it was prescribed</source>
        <translation>si se recetó</translation>
    </message>
    <message>
        <source>with its unit; how much to give stands on the label</source>
        <translation>con su unidad; la dosis está en la etiqueta</translation>
    </message>
</context>
<context>
    <name>TreatmentPage</name>
    <message>
        <source>Change</source>
        <translation>Cambiar</translation>
    </message>
    <message>
        <source>Did it work?</source>
        <translation>¿Funcionó?</translation>
    </message>
    <message>
        <source>Keep this record</source>
        <translation>Guardar este registro</translation>
    </message>
    <message>
        <source>Taken out today</source>
        <translation>Retirado hoy</translation>
    </message>
</context>
<context>
    <name>TreatmentQuestions</name>
    <message>
        <source>Colony %1 has %2 already, from %3 to %4.</source>
        <translation>La colonia %1 ya tiene %2, del %3 al %4.</translation>
    </message>
    <message>
        <source>Supers are on within the course or the withdrawal (colony %1). Their honey is not for eating.</source>
        <translation>Hay alzas puestas durante el tratamiento o el tiempo de espera (colonia %1). Su miel no es para comer.</translation>
    </message>
    <message>
        <source>Supers are on within the course or the withdrawal (colony %1): only where the label allows it.</source>
        <translation>Hay alzas puestas durante el tratamiento o el tiempo de espera (colonia %1): solo si la etiqueta lo permite.</translation>
    </message>
    <message>
        <source>The course runs past the turn date, %1: the bees that overwinter are raised while mites are still there.</source>
        <translation>El tratamiento pasa de la fecha límite, el %1: las abejas que van a invernar se crían mientras aún hay ácaros.</translation>
    </message>
    <message>
        <source>The withdrawal is not written down, so nobody can say from when on honey may be taken. It stands on the label; write 0 where it says none.</source>
        <translation>El tiempo de espera no está anotado, así que nadie puede decir desde cuándo se puede sacar miel. Está en la etiqueta; escribe 0 si dice que no hay.</translation>
    </message>
</context>
<context>
    <name>TreatmentRecord</name>
    <message>
        <source>Did it work?</source>
        <translation>¿Funcionó?</translation>
    </message>
    <message>
        <source>Remove this record</source>
        <translation>Eliminar este registro</translation>
    </message>
</context>
<context>
    <name>TreatmentSheets</name>
    <message>
        <source>Go back and change it</source>
        <translation>Volver y cambiarlo</translation>
    </message>
    <message>
        <source>Go on writing</source>
        <translation>Seguir escribiendo</translation>
    </message>
    <message>
        <source>It leaves the lists. The history keeps it.</source>
        <translation>Sale de las listas. El historial lo conserva.</translation>
    </message>
    <message>
        <source>Keep it all the same</source>
        <translation>Guardarlo igualmente</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>Leave without keeping</source>
        <translation>Salir sin guardar</translation>
    </message>
    <message>
        <source>Leave without keeping?</source>
        <translation>¿Salir sin guardar?</translation>
    </message>
    <message>
        <source>Please look again</source>
        <translation>Míralo otra vez, por favor</translation>
    </message>
    <message>
        <source>Remove it</source>
        <translation>Eliminarlo</translation>
    </message>
    <message>
        <source>Remove this record?</source>
        <translation>¿Eliminar este registro?</translation>
    </message>
    <message>
        <source>What you wrote down here is not kept yet.</source>
        <translation>Lo que escribiste aquí aún no está guardado.</translation>
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
        <translation>Dejar todo como está</translation>
    </message>
    <message>
        <source>Or put a backup back</source>
        <translation>O restaurar una copia</translation>
    </message>
    <message>
        <source>Put it back</source>
        <translation>Restaurar</translation>
    </message>
    <message>
        <source>Put this one back?</source>
        <translation>¿Restaurar esta?</translation>
    </message>
    <message>
        <source>Save what can be read</source>
        <translation>Salvar lo que se pueda leer</translation>
    </message>
</context>
<context>
    <name>TypedDates</name>
    <message>
        <source>%1: "%2" is no date. Type it like 18 May 2026 or 2026-05-18.</source>
        <translation>%1: «%2» no es una fecha. Escríbela así: 18 de mayo de 2026 o 2026-05-18.</translation>
    </message>
    <message>
        <source>%1: "%2" is no day of the year. Type it like 15 August.</source>
        <translation>%1: «%2» no es un día del año. Escríbelo así: 15 agosto.</translation>
    </message>
    <message>
        <source>%1: %2 has no %3 %4. It is no leap year.</source>
        <comment>what, year, day, month</comment>
        <translation>%1: %2 no tiene %3 de %4. No es bisiesto.</translation>
    </message>
    <message>
        <source>%1: %2 has no day %3.</source>
        <comment>what, month, day</comment>
        <translation>%1: %2 no tiene día %3.</translation>
    </message>
    <message>
        <source>%1: the year %2 is too far away.</source>
        <translation>%1: el año %2 queda demasiado lejos.</translation>
    </message>
    <message>
        <source>%1: there is no day %2 of month %3.</source>
        <translation>%1: no hay día %2 del mes %3.</translation>
    </message>
</context>
<context>
    <name>WashStep</name>
    <message>
        <source>Abandon</source>
        <translation>Abandonar</translation>
    </message>
    <message>
        <source>Abandon this count</source>
        <translation>Abandonar este recuento</translation>
    </message>
    <message>
        <source>Abandon this count?</source>
        <translation>¿Abandonar este recuento?</translation>
    </message>
    <message>
        <source>All you have done is kept. You can go on where you left, also after the phone was off.</source>
        <translation>Todo lo que hiciste está guardado. Puedes seguir donde lo dejaste, también después de apagar el teléfono.</translation>
    </message>
    <message>
        <source>Go on with the count</source>
        <translation>Seguir con el recuento</translation>
    </message>
    <message>
        <source>It is kept as abandoned.</source>
        <translation>Se guarda como abandonado.</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Salir</translation>
    </message>
    <message>
        <source>Leave this count?</source>
        <translation>¿Salir de este recuento?</translation>
    </message>
    <message>
        <source>Leave, keep it</source>
        <translation>Salir y conservarlo</translation>
    </message>
    <message>
        <source>Stay here</source>
        <translation>Seguir aquí</translation>
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
        <translation>%1 puede ser %2 como máximo. No se cambió nada.</translation>
    </message>
    <message>
        <source>%1 cannot be less than 0.</source>
        <translation>%1 no puede ser menor que 0.</translation>
    </message>
    <message>
        <source>%1 ft</source>
        <comment>feet</comment>
        <translation>%1 ft</translation>
    </message>
    <message>
        <source>%1 is already taken here. Choose another.</source>
        <translation>%1 ya se usa aquí. Elige algo distinto.</translation>
    </message>
    <message>
        <source>%1 is empty. Type it, or leave the page as it was.</source>
        <translation>%1: no hay nada escrito. Complétalo, o deja la página como estaba.</translation>
    </message>
    <message>
        <source>%1 is not a Halfcup database. It was left as it is. Move it aside, or start with another file.</source>
        <translation>%1 no es una base de datos de Halfcup. Se dejó como estaba. Apártala, o empieza con otro archivo.</translation>
    </message>
    <message>
        <source>%1 is too long: %2 letters fit on a label.</source>
        <translation>%1 no cabe: en una etiqueta entran %2 letras.</translation>
    </message>
    <message>
        <source>%1 km</source>
        <translation>%1 km</translation>
    </message>
    <message>
        <source>%1 lies in the future. Look at the phone's date.</source>
        <translation>%1 queda en el futuro. Mira la fecha del teléfono.</translation>
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
        <translation>%1 debe ser %2 como mínimo. No se cambió nada.</translation>
    </message>
    <message>
        <source>%1 must be a number, such as %2.</source>
        <translation>%1 debe ser un número, por ejemplo %2.</translation>
    </message>
    <message>
        <source>%1 must be a whole number.</source>
        <translation>%1 debe ser un número entero.</translation>
    </message>
    <message>
        <source>%1 must be more than 0. Nothing was changed.</source>
        <translation>%1 debe ser mayor que 0. No se cambió nada.</translation>
    </message>
    <message>
        <source>%1 s</source>
        <comment>seconds</comment>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a range of loads</comment>
        <translation>%1 a %2</translation>
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
        <translation>%1, precisión de %2</translation>
    </message>
    <message numerus="yes">
        <source>%n cell(s)</source>
        <translation>
            <numerusform>%n celda</numerusform>
            <numerusform>%n celdas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n día</numerusform>
            <numerusform>%n días</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n mite(s)</source>
        <translation>
            <numerusform>%n ácaro</numerusform>
            <numerusform>%n ácaros</numerusform>
        </translation>
    </message>
    <message>
        <source>Another program is using your records. This was not written. Close the other program, then do it again.</source>
        <translation>Otro programa está usando tus registros. Esto no se escribió. Cierra el otro programa y repítelo.</translation>
    </message>
    <message>
        <source>Can't tell yet</source>
        <translation>Aún no se sabe</translation>
    </message>
    <message>
        <source>Close to your line</source>
        <translation>Cerca de tu umbral</translation>
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
        <translation>Aún sin lavado</translation>
    </message>
    <message>
        <source>Over your line</source>
        <translation>Supera tu umbral</translation>
    </message>
    <message>
        <source>S</source>
        <comment>south</comment>
        <translation>S</translation>
    </message>
    <message>
        <source>The database %1 is damaged. It was left as it is. Keep a copy of it before anything else is tried.</source>
        <translation>La base de datos %1 está dañada. Se dejó como estaba. Guarda una copia antes de intentar nada más.</translation>
    </message>
    <message>
        <source>The folder for your records is not there: %1. Nothing was written. Put the folder back, or start with another.</source>
        <translation>La carpeta de tus registros no está: %1. No se escribió nada. Vuelve a poner la carpeta, o empieza con otra.</translation>
    </message>
    <message>
        <source>The phone's storage is full. This was not written; everything before it is safe. Make room, then do it again.</source>
        <translation>El almacenamiento del teléfono está lleno. Esto no se escribió; todo lo anterior está a salvo. Haz sitio y repítelo.</translation>
    </message>
    <message>
        <source>Under your line</source>
        <translation>Bajo tu umbral</translation>
    </message>
    <message>
        <source>W</source>
        <comment>west</comment>
        <translation>O</translation>
    </message>
    <message>
        <source>Your records cannot be written here: %1 is read-only, or this user may not write there. What is in it is unchanged.</source>
        <translation>Aquí no se pueden escribir tus registros: %1 es de solo lectura, o este usuario no puede escribir ahí. Lo que contiene no ha cambiado.</translation>
    </message>
    <message>
        <source>Your records could not be written. Everything before this is safe. Try it again; if it stays, start the app anew.</source>
        <translation>No se pudieron escribir tus registros. Todo lo anterior está a salvo. Inténtalo otra vez; si sigue igual, reinicia la aplicación.</translation>
    </message>
    <message>
        <source>Your records must be brought to a new form, and the copy that is made first could not be written. Nothing was changed. Make room in %1, then start again.</source>
        <translation>Hay que pasar tus registros a una forma nueva, y la copia que se hace primero no se pudo escribir. No se cambió nada. Haz sitio en %1 y empieza de nuevo.</translation>
    </message>
    <message>
        <source>Your records were written by a newer Halfcup. They are safe and unchanged; this version cannot read them. Install the newer version again.</source>
        <translation>Tus registros se escribieron con un Halfcup más nuevo. Están a salvo y sin cambios; esta versión no puede leerlos. Instala otra vez la versión nueva.</translation>
    </message>
    <message>
        <source>a third of a cup</source>
        <translation>un tercio de taza</translation>
    </message>
    <message>
        <source>about %1 bees</source>
        <translation>unas %1 abejas</translation>
    </message>
    <message>
        <source>another method (%1)</source>
        <translation>otro método (%1)</translation>
    </message>
    <message>
        <source>close the jar</source>
        <translation>cerrar el frasco</translation>
    </message>
    <message>
        <source>count</source>
        <translation>contar</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <comment>date format without year, as in 18 May</comment>
        <translation>d 'de' MMMM</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <comment>date format, as in 18 May 2026</comment>
        <translation>d 'de' MMMM 'de' yyyy</translation>
    </message>
    <message>
        <source>find the queen</source>
        <translation>buscar la reina</translation>
    </message>
    <message>
        <source>half a cup</source>
        <translation>media taza</translation>
    </message>
    <message>
        <source>how many cells opened</source>
        <translation>cuántas celdas abiertas</translation>
    </message>
    <message>
        <source>how much of the board</source>
        <translation>cuánto de la lámina</translation>
    </message>
    <message>
        <source>lay the board</source>
        <translation>colocar la lámina</translation>
    </message>
    <message>
        <source>let it settle</source>
        <translation>dejar reposar</translation>
    </message>
    <message>
        <source>over 99 %</source>
        <comment>a chance</comment>
        <translation>más del 99 %</translation>
    </message>
    <message>
        <source>pick the colony</source>
        <translation>elegir la colonia</translation>
    </message>
    <message>
        <source>pull the board</source>
        <translation>retirar la lámina</translation>
    </message>
    <message>
        <source>scoop</source>
        <translation>tomar la muestra</translation>
    </message>
    <message>
        <source>second rinse</source>
        <translation>segundo enjuague</translation>
    </message>
    <message>
        <source>shake</source>
        <translation>agitar</translation>
    </message>
    <message>
        <source>the answer</source>
        <translation>el resultado</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>menos de %1</translation>
    </message>
    <message>
        <source>under 1 %</source>
        <comment>a chance</comment>
        <translation>menos del 1 %</translation>
    </message>
</context>
<context>
    <name>YardColonies</name>
    <message>
        <source>A run of numbers such as 1-8, or what is on the hives: 4, B12</source>
        <translation>Una serie de números, como 1-8, o lo que lleven escrito las colmenas: 4, B12</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>Add colonies</source>
        <translation>Añadir colonias</translation>
    </message>
    <message>
        <source>Colonies</source>
        <translation>Colonias</translation>
    </message>
    <message>
        <source>Plan of the yard</source>
        <translation>Plano del apiario</translation>
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
            <numerusform>%n colonia sin lavado.</numerusform>
            <numerusform>%n colonias sin lavado.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n colony(ies), the highest load first.</source>
        <translation>
            <numerusform>%n colonia, la carga más alta primero.</numerusform>
            <numerusform>%n colonias, la carga más alta primero.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them is (are) over the line.</source>
        <translation>
            <numerusform>%n de ellas está por encima del umbral.</numerusform>
            <numerusform>%n de ellas están por encima del umbral.</numerusform>
        </translation>
    </message>
    <message>
        <source>Colony %1: %2 per 100 bees, %3 to %4 in 9 of 10 cases.</source>
        <translation>Colonia %1: %2 por 100 abejas; en 9 de cada 10 casos, de %3 a %4.</translation>
    </message>
    <message>
        <source>Colony %1: none found, up to %2 per 100 bees.</source>
        <translation>Colonia %1: ninguno, hasta %2 por 100 abejas.</translation>
    </message>
    <message>
        <source>Colony %1: not washed.</source>
        <translation>Colonia %1: sin lavado.</translation>
    </message>
    <message>
        <source>Latest wash, with the range of 9 in 10 cases</source>
        <translation>Último lavado, con el margen en 9 de cada 10 casos</translation>
    </message>
    <message>
        <source>Mites per 100 bees</source>
        <translation>Ácaros por 100 abejas</translation>
    </message>
    <message>
        <source>No colony is kept in this yard yet.</source>
        <translation>Aún no hay colonias en este apiario.</translation>
    </message>
    <message numerus="yes">
        <source>No wash yet in %n colony(ies).</source>
        <translation>
            <numerusform>Aún sin lavado en %n colonia.</numerusform>
            <numerusform>Aún sin lavado en %n colonias.</numerusform>
        </translation>
    </message>
    <message>
        <source>None found; the load can be up to the stroke</source>
        <translation>Ninguno; la carga puede llegar hasta la raya</translation>
    </message>
    <message>
        <source>None of them is over its line.</source>
        <translation>Ninguna está por encima de su umbral.</translation>
    </message>
    <message>
        <source>Not washed</source>
        <translation>Sin lavado</translation>
    </message>
    <message>
        <source>Own line</source>
        <translation>Umbral propio</translation>
    </message>
    <message>
        <source>Treat line</source>
        <translation>Umbral de tratamiento</translation>
    </message>
    <message numerus="yes">
        <source>Washed %n day(s) ago.</source>
        <translation>
            <numerusform>Lavado hace %n día.</numerusform>
            <numerusform>Lavado hace %n días.</numerusform>
        </translation>
    </message>
    <message>
        <source>not washed</source>
        <translation>sin lavado</translation>
    </message>
    <message>
        <source>own line %1</source>
        <translation>propio %1</translation>
    </message>
    <message>
        <source>treat line %1</source>
        <translation>umbral %1</translation>
    </message>
    <message numerus="yes">
        <source>washed %n day(s) ago</source>
        <translation>
            <numerusform>lavado hace %n día</numerusform>
            <numerusform>lavado hace %n días</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>YardEditPage</name>
    <message>
        <source>A new yard</source>
        <translation>Un apiario nuevo</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Keep this yard</source>
        <translation>Guardar este apiario</translation>
    </message>
    <message>
        <source>Leave it empty where you have none.</source>
        <translation>Déjalo vacío si no tienes.</translation>
    </message>
    <message>
        <source>Lines through the year</source>
        <translation>Umbrales durante el año</translation>
    </message>
    <message>
        <source>Name of the yard</source>
        <translation>Nombre del apiario</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Treat line, mites per 100 bees</source>
        <translation>Umbral de tratamiento, ácaros por 100 abejas</translation>
    </message>
    <message>
        <source>Use this place</source>
        <translation>Usar este lugar</translation>
    </message>
    <message>
        <source>What changed</source>
        <translation>Qué cambió</translation>
    </message>
    <message>
        <source>Your own, stricter line</source>
        <translation>Tu umbral propio, más estricto</translation>
    </message>
    <message>
        <source>then add its colonies</source>
        <translation>y luego añade sus colonias</translation>
    </message>
</context>
<context>
    <name>YardForAll</name>
    <message>
        <source>For all its colonies</source>
        <translation>Para todas sus colonias</translation>
    </message>
    <message>
        <source>On a day</source>
        <translation>En una fecha</translation>
    </message>
    <message>
        <source>On a day, all colonies</source>
        <translation>En una fecha, todas las colonias</translation>
    </message>
    <message>
        <source>Supers off</source>
        <translation>Alzas quitadas</translation>
    </message>
    <message>
        <source>Supers off, all colonies</source>
        <translation>Alzas quitadas, todas las colonias</translation>
    </message>
    <message>
        <source>Supers on</source>
        <translation>Alzas puestas</translation>
    </message>
    <message>
        <source>Supers on, all colonies</source>
        <translation>Alzas puestas, todas las colonias</translation>
    </message>
    <message>
        <source>Treat</source>
        <translation>Tratar</translation>
    </message>
    <message>
        <source>Treat all colonies</source>
        <translation>Tratar todas las colonias</translation>
    </message>
</context>
<context>
    <name>YardLinesPage</name>
    <message>
        <source>A wash keeps the line it was judged by.</source>
        <translation>Un lavado conserva el umbral con que se juzgó.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Lines through the year</source>
        <translation>Umbrales durante el año</translation>
    </message>
    <message>
        <source>Lines until now</source>
        <translation>Umbrales hasta ahora</translation>
    </message>
    <message>
        <source>Treat line</source>
        <translation>Umbral de tratamiento</translation>
    </message>
    <message>
        <source>Whose figures to follow</source>
        <translation>De quién tomar las cifras</translation>
    </message>
</context>
<context>
    <name>YardPlanPage</name>
    <message>
        <source>By steps</source>
        <translation>Por pasos</translation>
    </message>
    <message>
        <source>Move hives</source>
        <translation>Mover colmenas</translation>
    </message>
    <message>
        <source>Plan of the yard</source>
        <translation>Plano del apiario</translation>
    </message>
</context>
<context>
    <name>YardPlanSteps</name>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Next hive</source>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Previous hive</source>
        <translation>Anterior</translation>
    </message>
    <message>
        <source>Take its place off the plan</source>
        <translation>Quitar su lugar del plano</translation>
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
        <translation>Aún no se sabe: %1.</translation>
    </message>
    <message>
        <source>Close to the line: %1.</source>
        <comment>labels of hives</comment>
        <translation>Cerca del umbral: %1.</translation>
    </message>
    <message>
        <source>N</source>
        <comment>north, beside an arrow on a plan</comment>
        <translation>N</translation>
    </message>
    <message>
        <source>No hive has its place yet.</source>
        <translation>Ninguna colmena tiene lugar aún.</translation>
    </message>
    <message>
        <source>No hive in this yard yet.</source>
        <translation>Aún sin colmenas en este apiario.</translation>
    </message>
    <message>
        <source>Not on the plan:</source>
        <translation>Fuera del plano:</translation>
    </message>
    <message>
        <source>Not on the plan: %1.</source>
        <comment>labels of hives</comment>
        <translation>Fuera del plano: %1.</translation>
    </message>
    <message>
        <source>Not washed: %1.</source>
        <comment>labels of hives</comment>
        <translation>Sin lavado: %1.</translation>
    </message>
    <message>
        <source>Over the line: %1.</source>
        <comment>labels of hives</comment>
        <translation>Por encima del umbral: %1.</translation>
    </message>
    <message>
        <source>Plan of the yard, north up: %1 from west to east, %2 from south to north.</source>
        <translation>Plano del apiario, norte arriba: %1 de oeste a este, %2 de sur a norte.</translation>
    </message>
    <message>
        <source>Plan of the yard: no hive has its place yet.</source>
        <translation>Plano del apiario: ninguna colmena tiene lugar aún.</translation>
    </message>
    <message>
        <source>Plan of the yard: no hive in it yet.</source>
        <translation>Plano del apiario: aún sin colmenas.</translation>
    </message>
    <message>
        <source>Under the line: %1.</source>
        <comment>labels of hives</comment>
        <translation>Bajo el umbral: %1.</translation>
    </message>
    <message>
        <source>can't tell</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>can't tell yet</source>
        <translation>aún no se sabe</translation>
    </message>
    <message>
        <source>close</source>
        <comment>to the line</comment>
        <translation>cerca</translation>
    </message>
    <message>
        <source>close to the line</source>
        <translation>cerca del umbral</translation>
    </message>
    <message>
        <source>from positions of its washes</source>
        <translation>por la posición de sus lavados</translation>
    </message>
    <message>
        <source>not washed</source>
        <translation>sin lavado</translation>
    </message>
    <message>
        <source>over</source>
        <comment>the line</comment>
        <translation>supera</translation>
    </message>
    <message>
        <source>over the line</source>
        <translation>supera el umbral</translation>
    </message>
    <message>
        <source>under</source>
        <comment>the line</comment>
        <translation>bajo</translation>
    </message>
    <message>
        <source>under the line</source>
        <translation>bajo el umbral</translation>
    </message>
    <message>
        <source>where you put it</source>
        <translation>donde la pusiste</translation>
    </message>
</context>
<context>
    <name>YardRow</name>
    <message>
        <source>Change</source>
        <translation>Cambiar</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>Cambiar %1</translation>
    </message>
</context>
<context>
    <name>YardYear</name>
    <message>
        <source>First wash of the year from</source>
        <translation>Primer lavado del año desde</translation>
    </message>
    <message>
        <source>Turn date</source>
        <translation>Fecha límite</translation>
    </message>
</context>
<context>
    <name>YardsPage</name>
    <message>
        <source>Make a yard here</source>
        <translation>Crear un apiario aquí</translation>
    </message>
    <message>
        <source>What is shown as one</source>
        <translation>Lo que se muestra como uno</translation>
    </message>
    <message>
        <source>Yards</source>
        <translation>Apiarios</translation>
    </message>
    <message>
        <source>made on two phones; look at them</source>
        <translation>creados en dos teléfonos; míralos</translation>
    </message>
</context>
<context>
    <name>halfcup::place::FileFeed</name>
    <message>
        <source>%1 is not a file, so it cannot be played as a recording.</source>
        <translation>%1 no es un archivo, así que no se puede reproducir como grabación.</translation>
    </message>
    <message>
        <source>The file %1 cannot be read. It is tried again.</source>
        <translation>No se puede leer el archivo %1. Se intenta otra vez.</translation>
    </message>
    <message>
        <source>There is no file %1. It is looked for again.</source>
        <translation>No existe el archivo %1. Se vuelve a buscar.</translation>
    </message>
</context>
<context>
    <name>halfcup::place::NoFeed</name>
    <message>
        <source>This build of the program knows no serial lines.</source>
        <translation>Esta versión del programa no conoce puertos serie.</translation>
    </message>
</context>
<context>
    <name>halfcup::place::QtPositionSource</name>
    <message>
        <source>Positions are switched off in the setup.</source>
        <translation>Las posiciones están apagadas en los ajustes.</translation>
    </message>
    <message>
        <source>The position service has ended. It is tried again.</source>
        <translation>El servicio de posición terminó. Se intenta otra vez.</translation>
    </message>
    <message>
        <source>The receiver has not found its place yet. It needs a clear view of the sky.</source>
        <translation>El receptor aún no ha hallado su lugar. Necesita cielo despejado a la vista.</translation>
    </message>
    <message>
        <source>The recording %1 is over.</source>
        <translation>La grabación %1 terminó.</translation>
    </message>
    <message>
        <source>This device does not tell the program where it is: the position service is missing, or it is not allowed.</source>
        <translation>Este dispositivo no dice al programa dónde está: falta el servicio de posición, o no está permitido.</translation>
    </message>
    <message>
        <source>This device has not found its place yet. It needs a clear view of the sky.</source>
        <translation>Este dispositivo aún no ha hallado su lugar. Necesita cielo despejado a la vista.</translation>
    </message>
    <message>
        <source>This device has nothing that tells positions.</source>
        <translation>Este dispositivo no tiene nada que dé posiciones.</translation>
    </message>
</context>
<context>
    <name>halfcup::place::SerialFeed</name>
    <message>
        <source>The serial line %1 is lost. It is tried again.</source>
        <translation>Se perdió el puerto serie %1. Se intenta otra vez.</translation>
    </message>
    <message>
        <source>The serial line %1 may not be opened: another program has it, or this user has no right to it. It is tried again.</source>
        <translation>No se puede abrir el puerto serie %1: lo tiene otro programa, o este usuario no tiene permiso. Se intenta otra vez.</translation>
    </message>
    <message>
        <source>There is no serial line %1. It is looked for again.</source>
        <translation>No existe el puerto serie %1. Se vuelve a buscar.</translation>
    </message>
</context>
<context>
    <name>halfcup::place::TcpFeed</name>
    <message>
        <source>%1 does not answer.</source>
        <translation>%1 no responde.</translation>
    </message>
    <message>
        <source>%1 has been silent for half a minute.</source>
        <translation>%1 lleva medio minuto en silencio.</translation>
    </message>
    <message>
        <source>%1 has closed the connection.</source>
        <translation>%1 cerró la conexión.</translation>
    </message>
    <message>
        <source>It is tried again.</source>
        <translation>Se intenta otra vez.</translation>
    </message>
    <message>
        <source>Nothing answers at %1.</source>
        <translation>Nada responde en %1.</translation>
    </message>
    <message>
        <source>The connection to %1 is lost.</source>
        <translation>Se perdió la conexión con %1.</translation>
    </message>
    <message>
        <source>The host of %1 is not known on this network.</source>
        <translation>El host de %1 no se conoce en esta red.</translation>
    </message>
</context>
<context>
    <name>halfcup::place::WebPositionSource</name>
    <message>
        <source>A browser cannot reach the receiver that is named in the setup.</source>
        <translation>Un navegador no puede llegar al receptor que se nombra en los ajustes.</translation>
    </message>
    <message>
        <source>Positions are switched off in the setup.</source>
        <translation>Las posiciones están apagadas en los ajustes.</translation>
    </message>
    <message>
        <source>The browser does not tell this page where it is: allow it in the settings of the page.</source>
        <translation>El navegador no dice a esta página dónde está: permítelo en los ajustes de la página.</translation>
    </message>
    <message>
        <source>This device has not found its place yet. It needs a clear view of the sky.</source>
        <translation>Este dispositivo aún no ha hallado su lugar. Necesita cielo despejado a la vista.</translation>
    </message>
    <message>
        <source>This device has nothing that tells positions.</source>
        <translation>Este dispositivo no tiene nada que dé posiciones.</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::AnswerController</name>
    <message>
        <source>%1 mites per 100 bees</source>
        <translation>%1 ácaros por 100 abejas</translation>
    </message>
    <message>
        <source>%1 more</source>
        <comment>mites</comment>
        <translation>%1 más</translation>
    </message>
    <message>
        <source>%1 on %2: %3 per 100, before recovery</source>
        <translation>%1 en %2: %3 por 100, sin corregir</translation>
    </message>
    <message>
        <source>%1 per 100 (%2 to %3)</source>
        <translation>%1 por 100 (%2 a %3)</translation>
    </message>
    <message>
        <source>90 % range</source>
        <translation>Margen del 90 %</translation>
    </message>
    <message>
        <source>About %1 mites on every 100 bees. It could be anything from %2.</source>
        <translation>Unos %1 ácaros por cada 100 abejas. Puede ser cualquier valor, de %2.</translation>
    </message>
    <message>
        <source>As counted</source>
        <translation>Tal como se contó</translation>
    </message>
    <message>
        <source>Bees in the jar</source>
        <translation>Abejas en el frasco</translation>
    </message>
    <message>
        <source>Chance that the true load is over %1: %2</source>
        <translation>Probabilidad de que la carga real supere %1: %2</translation>
    </message>
    <message>
        <source>Colony %1, %2 · %3 in %4</source>
        <comment>colony, yard, mites, scoop</comment>
        <translation>Colonia %1, %2 · %3 en %4</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Método</translation>
    </message>
    <message>
        <source>None found is not none there: at a true load of 1 in 100, about %1 of 100 such jars hold no mite. While there is brood, most mites sit under cappings.</source>
        <translation>No hallar ninguno no es que no haya: con una carga real de 1 por 100, unos %1 de cada 100 frascos así salen sin ácaros. Mientras hay cría, la mayoría está bajo opérculo.</translation>
    </message>
    <message>
        <source>None found. The load can still be anything from %1 mites on every 100 bees.</source>
        <translation>No se halló ninguno. La carga aún puede ser cualquiera, de %1 ácaros por cada 100 abejas.</translation>
    </message>
    <message>
        <source>Nothing to do now. Wash again in a month.</source>
        <translation>Nada que hacer ahora. Haz otro lavado en un mes.</translation>
    </message>
    <message>
        <source>One jar from one frame on one day; the mites under cappings; mites carried in later.</source>
        <translation>Un frasco de un cuadro en un día; los ácaros bajo opérculo; los que lleguen después.</translation>
    </message>
    <message>
        <source>Own line %1: %2 (%3)</source>
        <comment>line, standing, chance</comment>
        <translation>Umbral propio %1: %2 (%3)</translation>
    </message>
    <message>
        <source>Recovery</source>
        <translation>Recuperación</translation>
    </message>
    <message>
        <source>Scooped on %1 at %2, %3 from %4. Is this the right colony?</source>
        <translation>Muestra del %1 a las %2, a %3 de %4. ¿Es esta la colonia?</translation>
    </message>
    <message>
        <source>Scooped on %1 at %2, no position</source>
        <translation>Muestra del %1 a las %2, sin posición</translation>
    </message>
    <message>
        <source>Scooped on %1 at %2, within %3</source>
        <translation>Muestra del %1 a las %2, precisión de %3</translation>
    </message>
    <message>
        <source>Second rinse</source>
        <translation>Segundo enjuague</translation>
    </message>
    <message>
        <source>Shaken</source>
        <translation>Agitado</translation>
    </message>
    <message>
        <source>The yard's answer</source>
        <translation>Resultado del apiario</translation>
    </message>
    <message>
        <source>Time to treat. Which substance fits depends on the weather, supers and brood: the product's label and your local law decide. Ask your bee inspector or vet where you are unsure.</source>
        <translation>Es hora de tratar. Qué sustancia conviene depende del tiempo, las alzas y la cría: deciden la etiqueta del producto y la ley de tu lugar. Si dudas, pregunta a tu inspector apícola o a tu veterinario.</translation>
    </message>
    <message>
        <source>Too few bees to say. Wash half a cup again within a week.</source>
        <translation>Muy pocas abejas para decirlo. Haz otro lavado de media taza antes de una semana.</translation>
    </message>
    <message>
        <source>Treat line %1: %2 (%3)</source>
        <comment>line, standing, chance</comment>
        <translation>Umbral de tratamiento %1: %2 (%3)</translation>
    </message>
    <message>
        <source>Wash again within two weeks, or treat if the season leaves no time to wait.</source>
        <translation>Repite el lavado antes de dos semanas, o trata si la temporada no deja tiempo para esperar.</translation>
    </message>
    <message>
        <source>Wash colony %1 next</source>
        <translation>Lavado: colonia %1</translation>
    </message>
    <message>
        <source>Wash jar %1 next</source>
        <translation>Lavado: frasco %1</translation>
    </message>
    <message>
        <source>What this leaves out</source>
        <translation>Lo que esto no incluye</translation>
    </message>
    <message>
        <source>With all mites it misses</source>
        <translation>Con todos los que se escapan</translation>
    </message>
    <message>
        <source>With the mites a wash misses</source>
        <translation>Con los que escapan al lavado</translation>
    </message>
    <message>
        <source>Your line is %1, or %2 in %3.</source>
        <translation>Tu umbral es %1, o %2 en %3.</translation>
    </message>
    <message>
        <source>Your own line is %1, or %2 in %3.</source>
        <translation>Tu umbral propio es %1, o %2 en %3.</translation>
    </message>
    <message>
        <source>about %1 (%2)</source>
        <translation>unas %1 (%2)</translation>
    </message>
    <message>
        <source>about %1, the phone's clocks disagreed</source>
        <translation>unos %1; los relojes del teléfono no coincidieron</translation>
    </message>
    <message>
        <source>finds about %1 % of what a wash finds, give or take %2</source>
        <translation>halla cerca del %1 % de lo que halla un lavado, más o menos %2</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::App</name>
    <message>
        <source>%1 is none of the files that Halfcup takes in: .halfcup from another phone, .csv or .txt with a table of washes. Nothing was changed.</source>
        <translation>%1 no es de los archivos que admite Halfcup: .halfcup de otro teléfono, .csv o .txt con una tabla de lavados. No se cambió nada.</translation>
    </message>
    <message numerus="yes">
        <source>%n files were opened at once. Open them one after the other, so that you see what is in each.</source>
        <translation>
            <numerusform>Se abrió %n archivo a la vez. Ábrelos uno tras otro, para ver qué trae cada uno.</numerusform>
            <numerusform>Se abrieron %n archivos a la vez. Ábrelos uno tras otro, para ver qué trae cada uno.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::BackupController</name>
    <message>
        <source>%1 What is kept now is not thrown away: it stays beside them as a copy, in the list of backups. Your settings stay. What another phone has taken over comes back when you merge with it. The app starts anew.</source>
        <comment>sentence</comment>
        <translation>%1 Lo que hay ahora no se tira: queda al lado como copia, en la lista de copias. Tus ajustes se quedan. Lo que otro teléfono ya haya recibido vuelve cuando reúnas los registros con él. La aplicación arranca de nuevo.</translation>
    </message>
    <message>
        <source>%1 cannot be written. No backup was made.</source>
        <translation>No se puede escribir en %1. No se hizo la copia.</translation>
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
            <numerusform>%n colonia</numerusform>
            <numerusform>%n colonias</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n treatment(s)</source>
        <translation>
            <numerusform>%n tratamiento</numerusform>
            <numerusform>%n tratamientos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es)</source>
        <translation>
            <numerusform>%n lavado</numerusform>
            <numerusform>%n lavados</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es) in no backup yet</source>
        <translation>
            <numerusform>%n lavado aún sin copia de seguridad</numerusform>
            <numerusform>%n lavados aún sin copia de seguridad</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n yard(s)</source>
        <translation>
            <numerusform>%n apiario</numerusform>
            <numerusform>%n apiarios</numerusform>
        </translation>
    </message>
    <message>
        <source>A backup</source>
        <translation>Una copia de seguridad</translation>
    </message>
    <message>
        <source>A backup is one file with all you keep. A browser may throw away what it keeps: when the phone is full, when its data are cleared, in a private window always. Keep the file outside it.</source>
        <translation>Una copia de seguridad es un archivo con todo lo que guardas. Un navegador puede borrar lo que guarda: si el teléfono está lleno, si se borran sus datos, y siempre en una ventana privada. Guarda el archivo fuera de él.</translation>
    </message>
    <message>
        <source>A backup is one file with all you keep. Copy it off this phone: a phone can fall into the honey.</source>
        <translation>Una copia de seguridad es un archivo con todo lo que guardas. Sácala de este teléfono: un teléfono puede caer en la miel.</translation>
    </message>
    <message>
        <source>A plain database: its form is sound; there is no check sum in it.</source>
        <translation>Una base de datos simple: su forma es correcta; no lleva suma de control.</translation>
    </message>
    <message>
        <source>Every row was checked: it is as it was written.</source>
        <translation>Se comprobó cada fila: está como se escribió.</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Archivo</translation>
    </message>
    <message>
        <source>In it</source>
        <translation>Contiene</translation>
    </message>
    <message>
        <source>In this backup</source>
        <translation>En esta copia</translation>
    </message>
    <message>
        <source>It cannot be used</source>
        <translation>No se puede usar</translation>
    </message>
    <message>
        <source>It is no longer at %1. Good, if you moved it to a safe place.</source>
        <translation>Ya no está en %1. Bien, si la llevaste a un lugar seguro.</translation>
    </message>
    <message>
        <source>Last backup: %1</source>
        <comment>day and time</comment>
        <translation>Última copia: %1</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Hecha</translation>
    </message>
    <message>
        <source>Newest wash</source>
        <translation>Último lavado</translation>
    </message>
    <message>
        <source>No backup yet</source>
        <translation>Aún no hay copia</translation>
    </message>
    <message>
        <source>The backup was written but did not pass its check, so it was thrown away. Try it again, or into another place.</source>
        <translation>La copia se escribió, pero no pasó la comprobación y se borró. Inténtalo de nuevo, o en otro sitio.</translation>
    </message>
    <message>
        <source>This phone has no place for files to hand on.</source>
        <translation>Este teléfono no tiene sitio para archivos que compartir.</translation>
    </message>
    <message numerus="yes">
        <source>Written and checked: %n wash(es), %1, %2</source>
        <comment>size, path</comment>
        <translation>
            <numerusform>Escrita y comprobada: %n lavado, %1, %2</numerusform>
            <numerusform>Escrita y comprobada: %n lavados, %1, %2</numerusform>
        </translation>
    </message>
    <message>
        <source>Your records become what is in %1.</source>
        <translation>Tus registros pasan a ser los de %1.</translation>
    </message>
    <message>
        <source>Your records become what they were on %1.</source>
        <translation>Tus registros vuelven a ser los del %1.</translation>
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
        <translation>apartada al restaurar una copia</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::BoardController</name>
    <message>
        <source>%1 %2 h under the colony.</source>
        <comment>the sentence before, hours</comment>
        <translation>%1 %2 h bajo la colonia.</translation>
    </message>
    <message>
        <source>%1 h, as you typed</source>
        <translation>%1 h, como escribiste</translation>
    </message>
    <message>
        <source>By the clock it lay for less than an hour, too short for a count. If that is wrong, type the hours; else leave it and pull it later.</source>
        <translation>Según el reloj, estuvo menos de una hora: muy poco para un recuento. Si no es así, escribe las horas; si lo es, déjala y retírala más tarde.</translation>
    </message>
    <message>
        <source>By the clock it lay for more than two weeks: ants, wax and wind have been at it. If that is wrong, type the hours; else lay a fresh board.</source>
        <translation>Según el reloj, estuvo más de dos semanas: ya pasaron hormigas, cera y viento. Si no es así, escribe las horas; si lo es, coloca una lámina nueva.</translation>
    </message>
    <message>
        <source>By the phone's clock the board was pulled before it was laid: the clock was changed. How many hours did it lie?</source>
        <translation>Según el reloj del teléfono, la lámina se retiró antes de colocarla: se cambió el reloj. ¿Cuántas horas estuvo?</translation>
    </message>
    <message>
        <source>Floor: %1 since %2</source>
        <translation>Fondo: %1 desde el %2</translation>
    </message>
    <message>
        <source>Floor: not written down</source>
        <translation>Fondo: sin anotar</translation>
    </message>
    <message>
        <source>How many hours did it lie under the colony?</source>
        <translation>¿Cuántas horas estuvo bajo la colonia?</translation>
    </message>
    <message>
        <source>Laid on %1 at %2.</source>
        <translation>Colocada el %1 a las %2.</translation>
    </message>
    <message>
        <source>No cell counted is no count. Count some cells, or the whole board.</source>
        <translation>Sin celdas contadas no hay recuento. Cuenta algunas, o toda la lámina.</translation>
    </message>
    <message>
        <source>The number of cells</source>
        <translation>El número de celdas</translation>
    </message>
    <message>
        <source>The number of hours</source>
        <translation>El número de horas</translation>
    </message>
    <message>
        <source>When it was laid is not written down.</source>
        <translation>No está anotado cuándo se colocó.</translation>
    </message>
    <message>
        <source>You count %1 cells: the board has so many at the least.</source>
        <translation>Cuentas %1 celdas: la lámina tiene al menos esas.</translation>
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
        <translation>10 días después de terminar</translation>
    </message>
    <message>
        <source>Best on</source>
        <translation>Mejor día</translation>
    </message>
    <message>
        <source>Can't tell</source>
        <translation>No se sabe</translation>
    </message>
    <message>
        <source>Chance that it reached the mark</source>
        <translation>Probabilidad de que llegara al mínimo</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>It did not reach the mark</source>
        <translation>No llegó al mínimo</translation>
    </message>
    <message>
        <source>It points to resistance</source>
        <translation>Apunta a resistencia</translation>
    </message>
    <message>
        <source>It worked</source>
        <translation>Funcionó</translation>
    </message>
    <message>
        <source>Killed</source>
        <translation>Muertos</translation>
    </message>
    <message>
        <source>Mites were carried in</source>
        <translation>Llegaron ácaros de fuera</translation>
    </message>
    <message>
        <source>Not known yet</source>
        <translation>Aún no se sabe</translation>
    </message>
    <message>
        <source>The mark</source>
        <translation>El mínimo</translation>
    </message>
    <message>
        <source>Treated colonies washed before and after</source>
        <translation>Colonias tratadas con lavado antes y después</translation>
    </message>
    <message>
        <source>Untreated ones to compare with</source>
        <translation>Colonias sin tratar para comparar</translation>
    </message>
    <message>
        <source>Wash colony %1</source>
        <translation>Lavado: colonia %1</translation>
    </message>
    <message>
        <source>Wash from</source>
        <translation>Lavado desde</translation>
    </message>
    <message>
        <source>about %1, in 9 of 10 cases %2 to %3</source>
        <translation>cerca del %1; en 9 de cada 10 casos, del %2 al %3</translation>
    </message>
    <message>
        <source>one brood cycle after its end</source>
        <translation>un ciclo de cría después de terminar</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ChoiceController</name>
    <message>
        <source>A usual colony's season, from one wash on; mites carried in are left out. The bands are the range: of the wash, of growth and of what the treatment was seen to kill.</source>
        <translation>La temporada de una colonia normal a partir de un lavado; no cuenta los ácaros que llegan de fuera. Las franjas son el margen: del lavado, del crecimiento y de lo que se ha visto matar al tratamiento.</translation>
    </message>
    <message>
        <source>Begun %1 later, on %2</source>
        <translation>Si empieza %1 después, el %2</translation>
    </message>
    <message>
        <source>Begun on %1</source>
        <translation>Si empieza el %1</translation>
    </message>
    <message>
        <source>Course: %1 to %2, by the label. Begun on %3, it would end by %4, or %5.</source>
        <comment>days, days, day, day, day</comment>
        <translation>Duración: de %1 a %2, según la etiqueta. Si empieza el %3, terminaría el %4 o el %5.</translation>
    </message>
    <message>
        <source>Course: %1, by the label. Begun on %2, it would end by %3.</source>
        <translation>Duración: %1, según la etiqueta. Si empieza el %2, terminaría el %3.</translation>
    </message>
    <message>
        <source>From the wash of %1, colony %2, the highest of them: %3 per 100.</source>
        <translation>Del lavado del %1, colonia %2, la más alta: %3 por 100.</translation>
    </message>
    <message>
        <source>From the wash of %1: %2 per 100.</source>
        <translation>Del lavado del %1: %2 por 100.</translation>
    </message>
    <message>
        <source>Given once. Begun on %1, it ends that day.</source>
        <translation>Se da una vez. Si empieza el %1, termina ese día.</translation>
    </message>
    <message>
        <source>Honey: no super comes on, and no honey is taken, before the label's withdrawal is over.</source>
        <translation>Miel: no se pone ningún alza ni se saca miel hasta que pase el tiempo de espera de la etiqueta.</translation>
    </message>
    <message>
        <source>No outlook: not washed in the last %1.</source>
        <translation>Sin previsión: ningún lavado en los últimos %1.</translation>
    </message>
    <message>
        <source>The label in your hand and your local law outrank this app. How much to give stands on the label.</source>
        <translation>La etiqueta que tienes en la mano y la ley de tu lugar están por encima de esta aplicación. La dosis está en la etiqueta.</translation>
    </message>
    <message>
        <source>a choice of this app</source>
        <translation>elección de esta aplicación</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ColonyController</name>
    <message>
        <source>Boards and drone brood count other things than a wash: hold each against its own kind.</source>
        <translation>La lámina y la cría de zángano no cuentan lo mismo que un lavado: compara cada una con las de su clase.</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Colonia %1</translation>
    </message>
    <message>
        <source>Counted by several methods: their loads are made alike as far as is known, and differ more than loads of one method.</source>
        <translation>Contado con varios métodos: sus cargas se igualan hasta donde se sabe, y difieren más que las de un solo método.</translation>
    </message>
    <message>
        <source>The label</source>
        <translation>El número o nombre</translation>
    </message>
    <message>
        <source>Wash this colony</source>
        <translation>Lavado de esta colonia</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::CountController</name>
    <message>
        <source>Cells with mites</source>
        <translation>Celdas con ácaros</translation>
    </message>
    <message>
        <source>Count one cell</source>
        <translation>Contar una celda</translation>
    </message>
    <message>
        <source>Count one mite</source>
        <translation>Contar un ácaro</translation>
    </message>
    <message>
        <source>Mites counted</source>
        <translation>Ácaros contados</translation>
    </message>
    <message>
        <source>No cell opened is no count. Open some, or leave this count.</source>
        <translation>Sin celdas abiertas no hay recuento. Abre algunas, o deja este recuento.</translation>
    </message>
    <message>
        <source>The count</source>
        <translation>El recuento</translation>
    </message>
    <message>
        <source>The number of cells</source>
        <translation>El número de celdas</translation>
    </message>
    <message numerus="yes">
        <source>You counted %n cell(s) with mites: so many at the least were opened.</source>
        <translation>
            <numerusform>Contaste %n celda con ácaros: al menos esa se abrió.</numerusform>
            <numerusform>Contaste %n celdas con ácaros: al menos esas se abrieron.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::EventController</name>
    <message numerus="yes">
        <source>%1, %n colony(ies)</source>
        <comment>yard and how many</comment>
        <translation>
            <numerusform>%1, %n colonia</numerusform>
            <numerusform>%1, %n colonias</numerusform>
        </translation>
    </message>
    <message>
        <source>Both sides covered is one frame.</source>
        <translation>Un cuadro es uno cubierto por ambos lados.</translation>
    </message>
    <message>
        <source>By your records no colony has supers on.</source>
        <translation>Según tus registros, ninguna colonia tiene alzas.</translation>
    </message>
    <message>
        <source>By your records the supers are on all colonies already.</source>
        <translation>Según tus registros, todas las colonias ya tienen alzas.</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Colonia %1</translation>
    </message>
    <message>
        <source>Colony %1, %2</source>
        <comment>label, yard</comment>
        <translation>Colonia %1, %2</translation>
    </message>
    <message>
        <source>Frames covered with bees</source>
        <translation>Cuadros cubiertos de abejas</translation>
    </message>
    <message>
        <source>Into which colony?</source>
        <translation>¿A qué colonia?</translation>
    </message>
    <message>
        <source>It is made in this yard. Leave it empty where it went elsewhere.</source>
        <translation>Se crea en este apiario. Déjalo vacío si se fue a otro sitio.</translation>
    </message>
    <message>
        <source>Number of the new colony</source>
        <translation>Número de la colonia nueva</translation>
    </message>
    <message>
        <source>Stock of the queen</source>
        <translation>Origen de la reina</translation>
    </message>
    <message>
        <source>The day</source>
        <translation>El día</translation>
    </message>
    <message>
        <source>The number of frames</source>
        <translation>El número de cuadros</translation>
    </message>
    <message>
        <source>The number of the new colony</source>
        <translation>El número de la colonia nueva</translation>
    </message>
    <message>
        <source>There is a colony %1 in this yard already. Choose another number.</source>
        <translation>En este apiario ya hay una colonia %1. Elige otro número.</translation>
    </message>
    <message>
        <source>There is no other colony in this yard.</source>
        <translation>No hay otra colonia en este apiario.</translation>
    </message>
    <message>
        <source>There is no other yard yet. Make one first.</source>
        <translation>Aún no hay otro apiario. Crea uno primero.</translation>
    </message>
    <message>
        <source>To which yard?</source>
        <translation>¿A qué apiario?</translation>
    </message>
    <message>
        <source>Today, %1</source>
        <translation>Hoy, %1</translation>
    </message>
    <message>
        <source>What did you see?</source>
        <translation>¿Qué viste?</translation>
    </message>
    <message>
        <source>What happened?</source>
        <translation>¿Qué pasó?</translation>
    </message>
    <message>
        <source>Where she comes from, or nothing.</source>
        <translation>De dónde viene, o nada.</translation>
    </message>
    <message>
        <source>Which floor?</source>
        <translation>¿Qué fondo?</translation>
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
            <numerusform>%n fecha</numerusform>
            <numerusform>%n fechas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n place(s)</source>
        <translation>
            <numerusform>%n lugar</numerusform>
            <numerusform>%n lugares</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s), one a treatment and colony</source>
        <translation>
            <numerusform>%n fila, una por tratamiento y colonia</numerusform>
            <numerusform>%n filas, una por tratamiento y colonia</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n touch(es) of counting</source>
        <translation>
            <numerusform>%n toque de recuento</numerusform>
            <numerusform>%n toques de recuento</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es)</source>
        <translation>
            <numerusform>%n lavado</numerusform>
            <numerusform>%n lavados</numerusform>
        </translation>
    </message>
    <message>
        <source>All yards</source>
        <translation>Todos</translation>
    </message>
    <message>
        <source>All years</source>
        <translation>Todos los años</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>Calendario</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Colonia %1</translation>
    </message>
    <message>
        <source>Counts</source>
        <translation>Recuentos</translation>
    </message>
    <message>
        <source>Last season</source>
        <translation>La anterior</translation>
    </message>
    <message>
        <source>Map</source>
        <translation>Mapa</translation>
    </message>
    <message>
        <source>One colony</source>
        <translation>Una colonia</translation>
    </message>
    <message>
        <source>One yard</source>
        <translation>Un apiario</translation>
    </message>
    <message>
        <source>Positions are blurred to about 1 km.</source>
        <translation>Las posiciones se redondean a cerca de 1 km.</translation>
    </message>
    <message>
        <source>Positions go out exact. Whoever gets the file knows where your hives stand.</source>
        <translation>Las posiciones salen exactas. Quien reciba el archivo sabrá dónde están tus colmenas.</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Informe</translation>
    </message>
    <message numerus="yes">
        <source>Report of %n page(s)</source>
        <translation>
            <numerusform>Informe de %n página</numerusform>
            <numerusform>Informe de %n páginas</numerusform>
        </translation>
    </message>
    <message>
        <source>The report has no positions.</source>
        <translation>El informe no lleva posiciones.</translation>
    </message>
    <message>
        <source>This season</source>
        <translation>Esta temporada</translation>
    </message>
    <message>
        <source>Treatments</source>
        <translation>Tratamientos</translation>
    </message>
    <message>
        <source>Washes</source>
        <translation>Lavados</translation>
    </message>
    <message>
        <source>Write the calendar</source>
        <translation>Crear el calendario</translation>
    </message>
    <message>
        <source>Write the counts</source>
        <translation>Crear la de recuentos</translation>
    </message>
    <message>
        <source>Write the map</source>
        <translation>Crear el mapa</translation>
    </message>
    <message>
        <source>Write the report</source>
        <translation>Crear el informe</translation>
    </message>
    <message>
        <source>Write the treatments</source>
        <translation>Crear la de tratamientos</translation>
    </message>
    <message>
        <source>Write the washes</source>
        <translation>Crear la tabla de lavados</translation>
    </message>
    <message>
        <source>a table (CSV), a row a touch</source>
        <translation>una tabla (CSV), una fila por toque</translation>
    </message>
    <message>
        <source>a table (CSV), a row a wash</source>
        <translation>una tabla (CSV), una fila por lavado</translation>
    </message>
    <message>
        <source>a table (CSV), all the law asks for</source>
        <translation>una tabla (CSV), todo lo que pide la ley</translation>
    </message>
    <message>
        <source>all yards</source>
        <translation>todos los apiarios</translation>
    </message>
    <message>
        <source>for the inspector or the vet (PDF)</source>
        <translation>para la inspección o el veterinario (PDF)</translation>
    </message>
    <message>
        <source>halfcup-counts-%1.csv</source>
        <comment>file name</comment>
        <translation>halfcup-recuentos-%1.csv</translation>
    </message>
    <message>
        <source>halfcup-map-%1.geojson</source>
        <comment>file name</comment>
        <translation>halfcup-mapa-%1.geojson</translation>
    </message>
    <message>
        <source>halfcup-report-%1-%2.pdf</source>
        <comment>file name: subject, day</comment>
        <translation>halfcup-informe-%1-%2.pdf</translation>
    </message>
    <message>
        <source>halfcup-season-%1.ics</source>
        <comment>file name</comment>
        <translation>halfcup-temporada-%1.ics</translation>
    </message>
    <message>
        <source>halfcup-treatments-%1.csv</source>
        <comment>file name</comment>
        <translation>halfcup-tratamientos-%1.csv</translation>
    </message>
    <message>
        <source>halfcup-washes-%1.csv</source>
        <comment>file name</comment>
        <translation>halfcup-lavados-%1.csv</translation>
    </message>
    <message>
        <source>the year ahead (iCalendar)</source>
        <translation>el año por delante (iCalendar)</translation>
    </message>
    <message>
        <source>yards and washes (GeoJSON)</source>
        <translation>apiarios y lavados (GeoJSON)</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::FolderController</name>
    <message>
        <source>%1 is a file. A folder is needed.</source>
        <translation>%1 es un archivo. Hace falta una carpeta.</translation>
    </message>
    <message>
        <source>%1 is damaged. What is intact in it was taken; a good copy completes it.</source>
        <translation>%1 está dañado. Se tomó lo que está intacto; una copia buena lo completa.</translation>
    </message>
    <message>
        <source>%1 is still on its way.</source>
        <translation>%1 aún está en camino.</translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) came in, new or changed.</source>
        <translation>
            <numerusform>Llegó %n registro, nuevo o cambiado.</numerusform>
            <numerusform>Llegaron %n registros, nuevos o cambiados.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) changed on both phones: the later value was kept.</source>
        <translation>
            <numerusform>%n registro cambió en ambos teléfonos: quedó el valor más reciente.</numerusform>
            <numerusform>%n registros cambiaron en ambos teléfonos: quedó el valor más reciente.</numerusform>
        </translation>
    </message>
    <message>
        <source>Halfcup exchange</source>
        <comment>name of a folder</comment>
        <translation>Intercambio Halfcup</translation>
    </message>
    <message>
        <source>Last exchanged at %1.</source>
        <translation>Último intercambio: %1.</translation>
    </message>
    <message>
        <source>Not looked into since the start.</source>
        <translation>Sin revisar desde el inicio.</translation>
    </message>
    <message>
        <source>Not used yet.</source>
        <translation>Aún sin usar.</translation>
    </message>
    <message>
        <source>Nothing can be written into %1.</source>
        <translation>No se puede escribir en %1.</translation>
    </message>
    <message>
        <source>Nothing new came in.</source>
        <translation>No llegó nada nuevo.</translation>
    </message>
    <message>
        <source>Paused, because you took back what came last. "Exchange now" takes it in again.</source>
        <translation>En pausa, porque deshiciste lo último que llegó. «Intercambiar ahora» lo vuelve a importar.</translation>
    </message>
    <message>
        <source>The folder %1 cannot be read. Nothing was exchanged; your records are safe.</source>
        <translation>No se puede leer la carpeta %1. No se intercambió nada; tus registros están a salvo.</translation>
    </message>
    <message>
        <source>There is no folder %1, and it could not be made.</source>
        <translation>No existe la carpeta %1, y no se pudo crear.</translation>
    </message>
    <message>
        <source>What you recorded is in the folder for the others.</source>
        <translation>Lo que anotaste está en la carpeta para los demás.</translation>
    </message>
    <message>
        <source>Write the whole way to the folder, beginning with /.</source>
        <translation>Escribe la ruta completa de la carpeta, empezando por /.</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::HereController</name>
    <message>
        <source>%1 from here</source>
        <translation>a %1 de aquí</translation>
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
        <translation>Colonia %1 espera en: %2</translation>
    </message>
    <message>
        <source>End the round</source>
        <translation>Terminar la ronda</translation>
    </message>
    <message>
        <source>Go on with the wash</source>
        <translation>Seguir el lavado</translation>
    </message>
    <message>
        <source>Looking for the position</source>
        <translation>Buscando la posición</translation>
    </message>
    <message>
        <source>No position</source>
        <translation>Sin posición</translation>
    </message>
    <message>
        <source>No yard here</source>
        <translation>Aquí no hay apiario</translation>
    </message>
    <message>
        <source>No yard yet</source>
        <translation>Aún no hay apiario</translation>
    </message>
    <message>
        <source>Picked by you</source>
        <translation>Elegido por ti</translation>
    </message>
    <message>
        <source>Position known within %1</source>
        <translation>Posición con precisión de %1</translation>
    </message>
    <message>
        <source>Round: %1 of %2 washed</source>
        <translation>Ronda: %1 de %2 lavados</translation>
    </message>
    <message>
        <source>Wash the jars</source>
        <translation>Hacer los lavados</translation>
    </message>
    <message>
        <source>Which yard is this?</source>
        <translation>¿Qué apiario es?</translation>
    </message>
    <message>
        <source>You are here, within %1</source>
        <translation>Estás aquí, precisión de %1</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::HistoryController</name>
    <message>
        <source>%1 at %2, %3</source>
        <comment>day, time, phone</comment>
        <translation>%1 a las %2, %3</translation>
    </message>
    <message>
        <source>%1 is put back: %2.</source>
        <comment>field, value</comment>
        <translation>%1 vuelve a: %2.</translation>
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
        <translation>%1: %2. Lo que hay ahora queda en esta lista.</translation>
    </message>
    <message>
        <source>Another colony of this yard is called %1 now. Give that one another name first.</source>
        <translation>Otra colonia de este apiario se llama ahora %1. Dale antes otro nombre.</translation>
    </message>
    <message>
        <source>Colony %1, %2</source>
        <comment>colony, yard</comment>
        <translation>Colonia %1, %2</translation>
    </message>
    <message>
        <source>It is back in the lists.</source>
        <translation>Está otra vez en las listas.</translation>
    </message>
    <message>
        <source>another phone, %1</source>
        <translation>otro teléfono, %1</translation>
    </message>
    <message>
        <source>as it is now</source>
        <translation>como está ahora</translation>
    </message>
    <message>
        <source>colony %1</source>
        <translation>colonia %1</translation>
    </message>
    <message>
        <source>no phone</source>
        <translation>ningún teléfono</translation>
    </message>
    <message>
        <source>so it is now</source>
        <translation>así está ahora</translation>
    </message>
    <message>
        <source>this phone</source>
        <translation>este teléfono</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ImportController</name>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 y %n más</numerusform>
            <numerusform>%1 y %n más</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new colony(ies)</source>
        <translation>
            <numerusform>%n colonia nueva</numerusform>
            <numerusform>%n colonias nuevas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new yard(s)</source>
        <translation>
            <numerusform>%n apiario nuevo</numerusform>
            <numerusform>%n apiarios nuevos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) in question</source>
        <translation>
            <numerusform>%n fila dudosa</numerusform>
            <numerusform>%n filas dudosas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) refused</source>
        <translation>
            <numerusform>%n fila rechazada</numerusform>
            <numerusform>%n filas rechazadas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es) here already</source>
        <translation>
            <numerusform>%n lavado que ya está aquí</numerusform>
            <numerusform>%n lavados que ya están aquí</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es) kept. Taking the same table in again adds nothing.</source>
        <translation>
            <numerusform>%n lavado guardado. Importar la misma tabla otra vez no añade nada.</numerusform>
            <numerusform>%n lavados guardados. Importar la misma tabla otra vez no añade nada.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es) to keep</source>
        <translation>
            <numerusform>%n lavado por guardar</numerusform>
            <numerusform>%n lavados por guardar</numerusform>
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
        <translation>Una tabla de lavados previos</translation>
    </message>
    <message>
        <source>A table of washes, saved as CSV or text by any spreadsheet. Its first row names the columns.</source>
        <translation>Una tabla de lavados, guardada como CSV o texto con cualquier hoja de cálculo. La primera fila da nombre a las columnas.</translation>
    </message>
    <message>
        <source>Choose a table of washes, saved as CSV or text by any spreadsheet. Its first row names the columns.</source>
        <translation>Elige una tabla de lavados, guardada como CSV o texto en cualquier hoja de cálculo. Su primera fila nombra las columnas.</translation>
    </message>
    <message>
        <source>Colony %1, %2</source>
        <comment>colony, yard</comment>
        <translation>Colonia %1, %2</translation>
    </message>
    <message>
        <source>Day first</source>
        <translation>Día primero</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Earlier washes</source>
        <translation>Lavados anteriores</translation>
    </message>
    <message>
        <source>First say what becomes of the rows in question: keep them, or leave them out.</source>
        <translation>Di primero qué hacer con las filas dudosas: guardarlas u omitirlas.</translation>
    </message>
    <message>
        <source>From a table: %1</source>
        <comment>a file's name</comment>
        <translation>De una tabla: %1</translation>
    </message>
    <message numerus="yes">
        <source>Keep %n wash(es)</source>
        <translation>
            <numerusform>Guardar %n lavado</numerusform>
            <numerusform>Guardar %n lavados</numerusform>
        </translation>
    </message>
    <message>
        <source>Keep them</source>
        <translation>Guardarlas</translation>
    </message>
    <message>
        <source>Leave them out</source>
        <translation>Omitirlas</translation>
    </message>
    <message>
        <source>Line %1</source>
        <comment>line of the file</comment>
        <translation>Línea %1</translation>
    </message>
    <message>
        <source>Line %1, colony %2</source>
        <comment>line of the file</comment>
        <translation>Línea %1, colonia %2</translation>
    </message>
    <message>
        <source>Look at the washes</source>
        <translation>Ver los lavados</translation>
    </message>
    <message>
        <source>Month first</source>
        <translation>Mes primero</translation>
    </message>
    <message>
        <source>No column</source>
        <translation>Ninguna columna</translation>
    </message>
    <message>
        <source>No table was found. Save it as CSV and put it into one of these folders: %1.</source>
        <translation>No se halló ninguna tabla. Guárdala como CSV y ponla en una de estas carpetas: %1.</translation>
    </message>
    <message>
        <source>They stay in the table; nothing of them is kept.</source>
        <translation>Quedan en la tabla; no se guarda nada de ellas.</translation>
    </message>
    <message>
        <source>This would be kept</source>
        <translation>Se guardaría esto</translation>
    </message>
    <message>
        <source>Which column is what?</source>
        <translation>¿Qué es cada columna?</translation>
    </message>
    <message numerus="yes">
        <source>and %n more row(s)</source>
        <translation>
            <numerusform>y %n fila más</numerusform>
            <numerusform>y %n filas más</numerusform>
        </translation>
    </message>
    <message>
        <source>no column</source>
        <translation>ninguna columna</translation>
    </message>
    <message>
        <source>none on this phone</source>
        <translation>ninguna en este teléfono</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::LinesController</name>
    <message>
        <source>%1 all year</source>
        <translation>%1 todo el año</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <comment>line, month</comment>
        <translation>%1 desde %2</translation>
    </message>
    <message>
        <source>%1 in %2; the yard's own line in other months</source>
        <translation>%1 en %2; en otros meses, el umbral del apiario</translation>
    </message>
    <message>
        <source>%1 per 100</source>
        <translation>%1 por 100</translation>
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
        <translation>Por temporada: %1</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>Desde el %1</translation>
    </message>
    <message>
        <source>From another version: %1</source>
        <translation>De otra versión: %1</translation>
    </message>
    <message>
        <source>No own line</source>
        <translation>Sin umbral propio</translation>
    </message>
    <message>
        <source>One line all year</source>
        <translation>Un umbral todo el año</translation>
    </message>
    <message>
        <source>Own line %1</source>
        <translation>Umbral propio %1</translation>
    </message>
    <message>
        <source>Set by you.</source>
        <translation>Fijado por ti.</translation>
    </message>
    <message>
        <source>This version has no figures for it. The yard's own line holds.</source>
        <translation>Esta versión no tiene cifras para ello. Vale el umbral del apiario.</translation>
    </message>
    <message>
        <source>Today %1</source>
        <translation>Hoy %1</translation>
    </message>
    <message>
        <source>Treat line %1</source>
        <translation>Umbral de tratamiento %1</translation>
    </message>
    <message>
        <source>Your own line: %1</source>
        <translation>Tu umbral propio: %1</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::LoadChartController</name>
    <message>
        <source>%1: %2 per 100, between %3 and %4. %5.</source>
        <comment>day, load, lower end, upper end, method</comment>
        <translation>%1: %2 por 100, entre %3 y %4. %5.</translation>
    </message>
    <message>
        <source>%1: none found, at most %2 per 100. %3.</source>
        <comment>day, load, method</comment>
        <translation>%1: ninguno, como máximo %2 por 100. %3.</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::MethodsController</name>
    <message>
        <source>Colony %1, %2</source>
        <comment>colony, yard</comment>
        <translation>Colonia %1, %2</translation>
    </message>
    <message>
        <source>your usual one</source>
        <translation>tu método habitual</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::OnDayController</name>
    <message>
        <source>%1 has not come yet. Nobody can say what will be so.</source>
        <translation>El %1 aún no ha llegado. Nadie puede decir qué habrá.</translation>
    </message>
    <message>
        <source>%1 per 100 on %2</source>
        <comment>a load and a date</comment>
        <translation>%1 por 100 el %2</translation>
    </message>
    <message>
        <source>All colonies</source>
        <translation>Todas las colonias</translation>
    </message>
    <message>
        <source>Batch: %1</source>
        <translation>Lote: %1</translation>
    </message>
    <message>
        <source>Before its records</source>
        <translation>Antes de sus registros</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Colonia %1</translation>
    </message>
    <message>
        <source>Course: %1</source>
        <translation>Duración: %1</translation>
    </message>
    <message>
        <source>Given by: %1</source>
        <translation>Aplicado por: %1</translation>
    </message>
    <message>
        <source>Honey</source>
        <translation>Miel</translation>
    </message>
    <message>
        <source>In the hive</source>
        <translation>En la colmena</translation>
    </message>
    <message>
        <source>In the hive: %1</source>
        <translation>En la colmena: %1</translation>
    </message>
    <message>
        <source>It stood in</source>
        <translation>Estaba en</translation>
    </message>
    <message>
        <source>Its state</source>
        <translation>Su estado</translation>
    </message>
    <message>
        <source>Last wash before</source>
        <translation>Último lavado anterior</translation>
    </message>
    <message>
        <source>No colony</source>
        <translation>Ninguna colonia</translation>
    </message>
    <message>
        <source>No treatment in the hive</source>
        <translation>Ningún tratamiento en la colmena</translation>
    </message>
    <message>
        <source>No treatment.</source>
        <translation>Ningún tratamiento.</translation>
    </message>
    <message>
        <source>None stood here on that day, by your records.</source>
        <translation>Según tus registros, aquí no había ninguna ese día.</translation>
    </message>
    <message>
        <source>None.</source>
        <translation>Ninguno.</translation>
    </message>
    <message>
        <source>Nothing was written down of this colony until after this day.</source>
        <translation>De esta colonia no se anotó nada hasta después de ese día.</translation>
    </message>
    <message>
        <source>On %1</source>
        <translation>El %1</translation>
    </message>
    <message>
        <source>Over, but honey waits</source>
        <translation>Terminó, pero la miel espera</translation>
    </message>
    <message>
        <source>Prescribed by: %1</source>
        <translation>Recetado por: %1</translation>
    </message>
    <message>
        <source>Proof of purchase: %1</source>
        <translation>Comprobante de compra: %1</translation>
    </message>
    <message>
        <source>Quantity, all colonies: %1</source>
        <translation>Cantidad, todas las colonias: %1</translation>
    </message>
    <message>
        <source>Registered as %1</source>
        <translation>Registrado como %1</translation>
    </message>
    <message>
        <source>Supplier: %1</source>
        <translation>Proveedor: %1</translation>
    </message>
    <message>
        <source>Taken out: %1</source>
        <translation>Retirado: %1</translation>
    </message>
    <message>
        <source>The day</source>
        <translation>El día</translation>
    </message>
    <message>
        <source>To be taken out: %1</source>
        <translation>Por retirar: %1</translation>
    </message>
    <message>
        <source>Today, %1</source>
        <translation>Hoy, %1</translation>
    </message>
    <message>
        <source>Type a day, such as 1 July.</source>
        <translation>Escribe un día, por ejemplo 1 de julio.</translation>
    </message>
    <message>
        <source>Use by: %1</source>
        <translation>Caducidad: %1</translation>
    </message>
    <message>
        <source>Withdrawal: %1</source>
        <translation>Tiempo de espera: %1</translation>
    </message>
    <message>
        <source>Withdrawal: not written down</source>
        <translation>Tiempo de espera: sin anotar</translation>
    </message>
    <message>
        <source>not written down</source>
        <translation>sin anotar</translation>
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
        <translation>%1 ácaros al día</translation>
    </message>
    <message>
        <source>%1 mites in the colony for one a day (%2 to %3)</source>
        <translation>%1 ácaros en la colonia por cada uno al día (%2 a %3)</translation>
    </message>
    <message>
        <source>%1 of %2 cells</source>
        <comment>counted, all</comment>
        <translation>%1 de %2 celdas</translation>
    </message>
    <message>
        <source>%1 to %2 mites a day</source>
        <translation>de %1 a %2 ácaros al día</translation>
    </message>
    <message>
        <source>%1 with mites of %2 opened</source>
        <translation>%1 con ácaros de %2 abiertas</translation>
    </message>
    <message>
        <source>A board is weak evidence beside a wash: fall rises when brood hatches, when bees groom or rob, and just after a treatment.</source>
        <translation>Una lámina dice poco al lado de un lavado: la caída sube cuando nace cría, cuando las abejas se acicalan o hay pillaje, y justo después de un tratamiento.</translation>
    </message>
    <message>
        <source>About %1. It could be anything from %2.</source>
        <translation>Cerca de %1. Puede ser cualquier valor, de %2.</translation>
    </message>
    <message>
        <source>As mites per 100 bees, by the season's factor: about %1, anything from %2 to %3.</source>
        <translation>En ácaros por 100 abejas, con el factor de la temporada: cerca de %1, cualquier valor de %2 a %3.</translation>
    </message>
    <message>
        <source>Can't tell yet</source>
        <translation>Aún no se sabe</translation>
    </message>
    <message>
        <source>Chance that the true fall is over %1: %2</source>
        <translation>Probabilidad de que la caída real supere %1: %2</translation>
    </message>
    <message>
        <source>Chance that the true share is over %1: %2</source>
        <translation>Probabilidad de que la proporción real supere %1: %2</translation>
    </message>
    <message>
        <source>Close to the handbook's line</source>
        <translation>Cerca del umbral del manual</translation>
    </message>
    <message>
        <source>Colony %1, %2 · %3</source>
        <comment>colony, yard, method</comment>
        <translation>Colonia %1, %2 · %3</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Contado</translation>
    </message>
    <message>
        <source>Factor of the season</source>
        <translation>Factor de la temporada</translation>
    </message>
    <message>
        <source>It lay for less than a day: fall differs between day and night.</source>
        <translation>Estuvo menos de un día: la caída cambia entre el día y la noche.</translation>
    </message>
    <message>
        <source>Lay the board again for two or three days, or wash half a cup.</source>
        <translation>Coloca la lámina otra vez dos o tres días, o haz un lavado de media taza.</translation>
    </message>
    <message>
        <source>Mites gather in drone brood: its share is far higher than a load, and the two cannot be held against each other.</source>
        <translation>Los ácaros se juntan en la cría de zángano: su proporción es mucho más alta que una carga, y no se pueden comparar.</translation>
    </message>
    <message>
        <source>No load in mites per 100 bees can be read from it: that depends on how much drone brood the colony has.</source>
        <translation>De aquí no sale una carga en ácaros por 100 abejas: depende de cuánta cría de zángano tenga la colonia.</translation>
    </message>
    <message>
        <source>None found. It can still be anything from %1 of 100 drone cells.</source>
        <translation>No se halló ninguno. Aún puede ser cualquier valor, de %1 de cada 100 celdas de zángano.</translation>
    </message>
    <message>
        <source>None found. The fall can still be anything from %1 mites a day.</source>
        <translation>No se halló ninguno. La caída aún puede ser cualquiera, de %1 ácaros al día.</translation>
    </message>
    <message>
        <source>Nothing to do on its word. The next wash stays due as it was.</source>
        <translation>Por esto solo, nada que hacer. El próximo lavado sigue pendiente como estaba.</translation>
    </message>
    <message>
        <source>Of the board</source>
        <translation>De la lámina</translation>
    </message>
    <message>
        <source>Open more cells, or wash half a cup.</source>
        <translation>Abre más celdas, o haz un lavado de media taza.</translation>
    </message>
    <message>
        <source>Over the handbook's line</source>
        <translation>Supera el umbral del manual</translation>
    </message>
    <message>
        <source>Taken on %1 at %2, no position</source>
        <translation>Hecho el %1 a las %2, sin posición</translation>
    </message>
    <message>
        <source>Taken on %1 at %2, within %3</source>
        <translation>Hecho el %1 a las %2, precisión de %3</translation>
    </message>
    <message>
        <source>The fall of this board</source>
        <translation>La caída de esta lámina</translation>
    </message>
    <message>
        <source>The handbook has no line for it in this month.</source>
        <translation>El manual no tiene umbral para esto en este mes.</translation>
    </message>
    <message>
        <source>The share of this brood</source>
        <translation>La proporción de esta cría</translation>
    </message>
    <message>
        <source>Under the handbook's line</source>
        <translation>Bajo el umbral del manual</translation>
    </message>
    <message>
        <source>Wash half a cup before you decide: this count alone should not.</source>
        <translation>Haz un lavado de media taza antes de decidir: este recuento no basta por sí solo.</translation>
    </message>
    <message>
        <source>from memory; the range is our own choice</source>
        <translation>de memoria; el margen es elección nuestra</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::OwnScoopsController</name>
    <message>
        <source>%1 bees</source>
        <translation>%1 abejas</translation>
    </message>
    <message>
        <source>%1 bees in %2 are far from the usual %3. Is that what you counted?</source>
        <translation>%1 abejas en %2 está lejos de las %3 habituales. ¿Es lo que contaste?</translation>
    </message>
    <message numerus="yes">
        <source>%1 bees in %2, from %n counted scoop(s)</source>
        <translation>
            <numerusform>%1 abejas en %2, de %n medida contada</numerusform>
            <numerusform>%1 abejas en %2, de %n medidas contadas</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 g are 100 bees. %2</source>
        <comment>grams, source</comment>
        <translation>%1 g son 100 abejas. %2</translation>
    </message>
    <message>
        <source>%1, counted on %2</source>
        <comment>scoop, day</comment>
        <translation>%1, contada el %2</translation>
    </message>
    <message>
        <source>Alive</source>
        <translation>Vivas</translation>
    </message>
    <message>
        <source>Colony %1 · %2 in %3</source>
        <comment>colony, mites, scoop</comment>
        <translation>Colonia %1 · %2 en %3</translation>
    </message>
    <message>
        <source>Colony %1 · %2, counted on %3</source>
        <comment>colony, scoop, day</comment>
        <translation>Colonia %1 · %2, contada el %3</translation>
    </message>
    <message>
        <source>Drained</source>
        <translation>Escurridas</translation>
    </message>
    <message>
        <source>Drained bees weigh nearly twice what live ones do: say first which they are.</source>
        <translation>Las abejas escurridas pesan casi el doble que las vivas: di primero cómo están.</translation>
    </message>
    <message>
        <source>It was taken to hold about %1 bees.</source>
        <translation>Se supuso que había unas %1 abejas.</translation>
    </message>
    <message>
        <source>Nine of ten scoops hold %1 to %2. The book says %3.</source>
        <translation>Nueve de cada diez medidas tienen de %1 a %2. El manual dice %3.</translation>
    </message>
    <message>
        <source>No scoop counted yet: %1 bees in %2, by the book</source>
        <translation>Aún no hay medidas contadas: %1 abejas en %2, según el manual</translation>
    </message>
    <message>
        <source>Say first whether the bees are drained or alive.</source>
        <translation>Di primero si las abejas están escurridas o vivas.</translation>
    </message>
    <message>
        <source>The mass in grams</source>
        <translation>El peso en gramos</translation>
    </message>
    <message>
        <source>The number of bees</source>
        <translation>El número de abejas</translation>
    </message>
    <message>
        <source>far from the usual, and you stood by it</source>
        <translation>lejos de lo habitual, y lo confirmaste</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::PlanController</name>
    <message numerus="yes">
        <source>%1, %n record(s)</source>
        <comment>a file</comment>
        <translation>
            <numerusform>%1, %n registro</numerusform>
            <numerusform>%1, %n registros</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) taken in. Taking the same file in again changes nothing.</source>
        <translation>
            <numerusform>%n registro importado. Importar el mismo archivo otra vez no cambia nada.</numerusform>
            <numerusform>%n registros importados. Importar el mismo archivo otra vez no cambia nada.</numerusform>
        </translation>
    </message>
    <message>
        <source>, </source>
        <comment>between folders</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>All that %1 brought goes again, and every record is as it was before. Taking the same file in brings it back.</source>
        <translation>Todo lo que trajo %1 se va, y cada registro queda como antes. Importar el mismo archivo lo trae de vuelta.</translation>
    </message>
    <message>
        <source>Choose the file that the other phone handed on. Nothing is kept before you have seen what is in it.</source>
        <translation>Elige el archivo que entregó el otro teléfono. No se guarda nada antes de que veas qué trae.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Files that another phone wrote, newest first. Nothing is kept before you have seen what is in one.</source>
        <translation>Archivos que escribió otro teléfono, el más reciente primero. No se guarda nada antes de que veas qué trae.</translation>
    </message>
    <message>
        <source>It cannot be taken back any more: something that was written down since hangs on it. Nothing was changed.</source>
        <translation>Ya no se puede deshacer: algo que se anotó después depende de ello. No se cambió nada.</translation>
    </message>
    <message>
        <source>It held %1.</source>
        <comment>that phone; 3 yards, 17 colonies, 85 washes</comment>
        <translation>Contenía %1.</translation>
    </message>
    <message>
        <source>No file from another phone was found. Put it into one of these folders: %1.</source>
        <translation>No se halló ningún archivo de otro teléfono. Ponlo en una de estas carpetas: %1.</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Leyendo…</translation>
    </message>
    <message>
        <source>Take in a file</source>
        <translation>Importar un archivo</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Importarlo</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Importado</translation>
    </message>
    <message>
        <source>The copy of your records that is made first could not be written. Nothing was taken in. Make room, then do it again.</source>
        <translation>No se pudo escribir la copia de tus registros que se hace primero. No se importó nada. Haz sitio y repítelo.</translation>
    </message>
    <message>
        <source>The file, or what is kept here, has changed since you looked. This is what it would do now.</source>
        <translation>El archivo, o lo que hay aquí guardado, ha cambiado desde que miraste. Esto es lo que haría ahora.</translation>
    </message>
    <message>
        <source>What %1 brought was taken back. Taking the file in again brings it back.</source>
        <translation>Se deshizo lo que trajo %1. Importar otra vez el archivo lo trae de vuelta.</translation>
    </message>
    <message>
        <source>What it brings</source>
        <translation>Lo que trae</translation>
    </message>
    <message>
        <source>none on this phone</source>
        <translation>ninguna en este teléfono</translation>
    </message>
    <message>
        <source>on %1 at %2</source>
        <comment>a day, a time</comment>
        <translation>el %1 a las %2</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>deshecho</translation>
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
            <numerusform>%n dato no se pudo leer y está perdido; puede haber más.</numerusform>
            <numerusform>%n datos no se pudieron leer y están perdidos; puede haber más.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n yard(s) or colony(ies) lost their name and stand there without it.</source>
        <translation>
            <numerusform>%n colmenar o colonia perdió su nombre y aparece sin él.</numerusform>
            <numerusform>%n colmenares o colonias perdieron su nombre y aparecen sin él.</numerusform>
        </translation>
    </message>
    <message>
        <source>Close Halfcup</source>
        <translation>Cerrar Halfcup</translation>
    </message>
    <message>
        <source>Halfcup can be started again</source>
        <translation>Halfcup puede iniciarse de nuevo</translation>
    </message>
    <message>
        <source>Halfcup cannot open its records</source>
        <translation>Halfcup no puede abrir sus registros</translation>
    </message>
    <message>
        <source>No record of Halfcup can be read in it. It was left as it is.</source>
        <translation>No se puede leer en él ningún registro de Halfcup. Se dejó como está.</translation>
    </message>
    <message>
        <source>Nothing is known to be missing.</source>
        <translation>Que se sepa, no falta nada.</translation>
    </message>
    <message numerus="yes">
        <source>Of %n record(s) too little was read to show them; a merge with another phone may complete them.</source>
        <translation>
            <numerusform>De %n registro se leyó demasiado poco para mostrarlo; una fusión con otro teléfono puede completarlo.</numerusform>
            <numerusform>De %n registros se leyó demasiado poco para mostrarlos; una fusión con otro teléfono puede completarlos.</numerusform>
        </translation>
    </message>
    <message>
        <source>Part of the file could not be read. Nothing is known to be missing, but look through your records.</source>
        <translation>No se pudo leer parte del archivo. Que se sepa, no falta nada, pero repasa tus registros.</translation>
    </message>
    <message>
        <source>Put %1 back? Your records become what is in it. What lies there now is not thrown away: it stays beside them.</source>
        <translation>¿Restaurar %1? Tus registros pasan a ser lo que contiene. Lo que hay ahora no se tira: queda al lado.</translation>
    </message>
    <message>
        <source>Saved: %1.</source>
        <comment>yards, colonies, washes, treatments</comment>
        <translation>Salvado: %1.</translation>
    </message>
    <message>
        <source>Start Halfcup</source>
        <translation>Iniciar Halfcup</translation>
    </message>
    <message>
        <source>Start again</source>
        <translation>Volver a iniciar</translation>
    </message>
    <message>
        <source>The damaged file is kept as %1.</source>
        <translation>El archivo dañado se conserva como %1.</translation>
    </message>
    <message>
        <source>Yard whose name is lost</source>
        <translation>Colmenar cuyo nombre se perdió</translation>
    </message>
    <message>
        <source>Your records were written by a newer Halfcup. They are safe and unchanged; this version cannot read them. Start again where there is a network: the newer version comes by itself.</source>
        <translation>Tus registros se escribieron con un Halfcup más nuevo. Están a salvo y sin cambios; esta versión no puede leerlos. Vuelve a iniciar donde haya red: la versión nueva llega sola.</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::RoundController</name>
    <message>
        <source>%1 of %2 colonies</source>
        <translation>%1 de %2 colonias</translation>
    </message>
    <message>
        <source>%1 of %2 washed</source>
        <translation>%1 de %2 lavados</translation>
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
        <translation>%1, elegidas al azar.</translation>
    </message>
    <message>
        <source>%1, picked by you: it holds only if these are like the others.</source>
        <comment>from so many</comment>
        <translation>%1, elegidas por ti: solo vale si se parecen a las demás.</translation>
    </message>
    <message>
        <source>%1.</source>
        <comment>from so many</comment>
        <translation>%1.</translation>
    </message>
    <message>
        <source>About %1 mites on every 100 bees in this yard. It could be anything from %2 to %3.</source>
        <translation>Unos %1 ácaros por cada 100 abejas en este apiario. Puede ser cualquier valor, de %2 a %3.</translation>
    </message>
    <message>
        <source>All %1 colonies</source>
        <translation>Las %1 colonias</translation>
    </message>
    <message>
        <source>All are washed, and neither side of the line is settled. End the round to see how near it is.</source>
        <translation>Todas tienen lavado, y no queda claro a qué lado del umbral está. Termina la ronda para ver cuánto se acerca.</translation>
    </message>
    <message>
        <source>All are washed: the yard is over its line of %1.</source>
        <translation>Todas tienen lavado: el apiario supera su umbral de %1.</translation>
    </message>
    <message>
        <source>All are washed: the yard is under its line of %1.</source>
        <translation>Todas tienen lavado: el apiario está bajo su umbral de %1.</translation>
    </message>
    <message>
        <source>Chance that the yard's load is over %1: %2</source>
        <translation>Probabilidad de que la carga del apiario supere %1: %2</translation>
    </message>
    <message>
        <source>Colonies have to be chosen by chance, or all washed. Picking the strongest makes the figure too high, and no sum can mend that.</source>
        <translation>Las colonias se eligen al azar, o se miden todas. Elegir las más fuertes da una cifra demasiado alta, y ningún cálculo lo arregla.</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Colonia %1</translation>
    </message>
    <message>
        <source>Counted another way than the others, left out: colony %1.</source>
        <translation>Contada de otra forma que las demás, se omite: colonia %1.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>End the round</source>
        <translation>Terminar la ronda</translation>
    </message>
    <message>
        <source>Even all of them, one wash each, leave a wide range at the %1 per 100 last found here.</source>
        <translation>Ni siquiera todas, con un lavado cada una, evitan un margen amplio con %1 por 100 como la última vez aquí.</translation>
    </message>
    <message>
        <source>Far above the others: colony %1. Look at it by itself.</source>
        <comment>one or more labels</comment>
        <translation>Muy por encima de las demás: colonia %1. Mírala aparte.</translation>
    </message>
    <message>
        <source>Figures no wash can have, left out: colony %1.</source>
        <translation>Cifras imposibles en un lavado, se omite: colonia %1.</translation>
    </message>
    <message>
        <source>From %1 of the %2 in this yard</source>
        <translation>De %1 de las %2 de este apiario</translation>
    </message>
    <message>
        <source>No answer</source>
        <translation>Sin resultado</translation>
    </message>
    <message>
        <source>No colony lives in this yard.</source>
        <translation>En este apiario no hay colonias.</translation>
    </message>
    <message>
        <source>No colony was washed in this round.</source>
        <translation>En esta ronda no se hizo ningún lavado.</translation>
    </message>
    <message>
        <source>No longer in this yard, left out: colony %1.</source>
        <translation>Ya no está en este apiario, se omite: colonia %1.</translation>
    </message>
    <message>
        <source>None found. The yard's load can still be anything from 0 to %1 mites on every 100 bees.</source>
        <translation>No se halló ninguno. La carga del apiario aún puede ser cualquiera, de 0 a %1 ácaros por cada 100 abejas.</translation>
    </message>
    <message>
        <source>Not washed: colony %1.</source>
        <translation>Sin lavado: colonia %1.</translation>
    </message>
    <message>
        <source>One colony stands here: its wash is the yard's figure.</source>
        <translation>Aquí hay una colonia: su lavado es la cifra del apiario.</translation>
    </message>
    <message>
        <source>Picked by chance</source>
        <translation>Elegidas al azar</translation>
    </message>
    <message>
        <source>Picked by you</source>
        <translation>Elegidas por ti</translation>
    </message>
    <message>
        <source>Skip this one</source>
        <translation>Saltar esta</translation>
    </message>
    <message>
        <source>Start the round</source>
        <translation>Empezar la ronda</translation>
    </message>
    <message>
        <source>The answer is clear: the yard is over its line of %1. You can stop here, or go on for a narrower range.</source>
        <translation>El resultado es claro: el apiario supera su umbral de %1. Puedes parar aquí, o seguir para estrechar el margen.</translation>
    </message>
    <message>
        <source>The answer is clear: the yard is under its line of %1. You can stop here, or go on for a narrower range.</source>
        <translation>El resultado es claro: el apiario está bajo su umbral de %1. Puedes parar aquí, o seguir para estrechar el margen.</translation>
    </message>
    <message>
        <source>Two colonies stand here: wash both.</source>
        <translation>Aquí hay dos colonias: lavado en las dos.</translation>
    </message>
    <message>
        <source>Wash colony %1 next</source>
        <translation>Lavado: colonia %1</translation>
    </message>
    <message>
        <source>Wash some of the colonies, one after another, and know the yard's own load with its range.</source>
        <translation>Haz un lavado en algunas colonias, una tras otra, y conoce la carga del apiario con su margen.</translation>
    </message>
    <message>
        <source>Wash the jars</source>
        <translation>Hacer los lavados</translation>
    </message>
    <message>
        <source>about %1 per 100</source>
        <translation>cerca de %1 por 100</translation>
    </message>
    <message>
        <source>counted another way than the others: not in the yard's figure</source>
        <translation>contada de otra forma que las demás: no entra en la cifra del apiario</translation>
    </message>
    <message>
        <source>far above the others</source>
        <translation>muy por encima de las demás</translation>
    </message>
    <message>
        <source>figures no wash can have: not in the yard's figure</source>
        <translation>cifras imposibles en un lavado: no entra en la cifra del apiario</translation>
    </message>
    <message>
        <source>for a range of about a quarter either way, at the %1 per 100 last found here</source>
        <translation>para un margen de un cuarto arriba o abajo, con %1 por 100 como la última vez aquí</translation>
    </message>
    <message>
        <source>in the tray: jar %1</source>
        <translation>en la bandeja: frasco %1</translation>
    </message>
    <message>
        <source>no longer in this yard: left out</source>
        <translation>ya no está en este apiario: se omite</translation>
    </message>
    <message>
        <source>the phone draws them</source>
        <translation>las sortea el teléfono</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::SameController</name>
    <message>
        <source>%1 is %2. It will stand by itself again, with what was recorded for it.</source>
        <comment>Yard Ford, shown as By the ford</comment>
        <translation>%1: %2. Volverá a ir por su cuenta, con lo que se le anotó.</translation>
    </message>
    <message>
        <source>%1, from %2 to %3</source>
        <comment>washes, first and last day</comment>
        <translation>%1, del %2 al %3</translation>
    </message>
    <message>
        <source>%1, on %2</source>
        <comment>washes, day</comment>
        <translation>%1, el %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>yard, note</comment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n colony(ies)</source>
        <translation>
            <numerusform>%n colonia</numerusform>
            <numerusform>%n colonias</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pair(s) may be the same</source>
        <translation>
            <numerusform>%n pareja puede ser lo mismo</numerusform>
            <numerusform>%n parejas pueden ser lo mismo</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es)</source>
        <translation>
            <numerusform>%n lavado</numerusform>
            <numerusform>%n lavados</numerusform>
        </translation>
    </message>
    <message>
        <source>Both are now shown as "%1"; nothing was thrown away.</source>
        <translation>Ahora se muestra todo como «%1»; no se tiró nada.</translation>
    </message>
    <message>
        <source>Both have the same name and stand in one yard.</source>
        <translation>Las dos tienen el mismo nombre y están en el mismo apiario.</translation>
    </message>
    <message>
        <source>Both have the same name, and their yards may be one yard that was made twice.</source>
        <translation>Las dos tienen el mismo nombre, y sus apiarios pueden ser uno solo creado dos veces.</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Colonia %1</translation>
    </message>
    <message>
        <source>Same colony?</source>
        <translation>¿La misma colonia?</translation>
    </message>
    <message>
        <source>Same yard?</source>
        <translation>¿El mismo apiario?</translation>
    </message>
    <message>
        <source>Shown as one</source>
        <translation>Mostrados como uno</translation>
    </message>
    <message>
        <source>They are named alike and lie %1 apart.</source>
        <translation>Tienen nombres iguales y están a %1.</translation>
    </message>
    <message>
        <source>They are named alike, but lie %1 apart.</source>
        <translation>Tienen nombres iguales, pero están a %1.</translation>
    </message>
    <message>
        <source>They are named alike. How far they lie apart is not known.</source>
        <translation>Tienen nombres iguales. No se sabe a qué distancia están.</translation>
    </message>
    <message>
        <source>They are two again. What was recorded for each is with it.</source>
        <translation>Vuelven a ser dos. Lo anotado queda con cada parte.</translation>
    </message>
    <message>
        <source>They lie %1 apart.</source>
        <translation>Están a %1.</translation>
    </message>
    <message>
        <source>They stay two. This phone does not ask again.</source>
        <translation>Siguen siendo dos. Este teléfono no vuelve a preguntar.</translation>
    </message>
    <message>
        <source>Yard %1</source>
        <translation>Apiario %1</translation>
    </message>
    <message>
        <source>no wash yet</source>
        <translation>aún sin lavado</translation>
    </message>
    <message>
        <source>shown as %1</source>
        <comment>another yard</comment>
        <translation>se muestra como %1</translation>
    </message>
    <message>
        <source>shown as colony %1</source>
        <translation>se muestra como colonia %1</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ScoopController</name>
    <message>
        <source>The number of bees</source>
        <translation>El número de abejas</translation>
    </message>
    <message>
        <source>The scoop in millilitres</source>
        <translation>La medida en mililitros</translation>
    </message>
    <message>
        <source>about %1 bees, %2 to %3</source>
        <translation>unas %1 abejas, de %2 a %3</translation>
    </message>
    <message>
        <source>by the book</source>
        <translation>según el manual</translation>
    </message>
    <message>
        <source>counted bee by bee</source>
        <translation>contadas una por una</translation>
    </message>
    <message numerus="yes">
        <source>from your %n counted scoop(s)</source>
        <translation>
            <numerusform>de tu %n medida contada</numerusform>
            <numerusform>de tus %n medidas contadas</numerusform>
        </translation>
    </message>
    <message>
        <source>not rapped</source>
        <translation>sin golpear</translation>
    </message>
    <message>
        <source>rapped to settle</source>
        <translation>asentadas a golpes</translation>
    </message>
    <message>
        <source>your own figure for this jar</source>
        <translation>tu propia cifra para este frasco</translation>
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
        <translation>%1 · %2 con retraso</translation>
    </message>
    <message>
        <source>%1, %2 late</source>
        <comment>day, number of days</comment>
        <translation>%1, %2 de retraso</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n colony(ies)</source>
        <translation>
            <numerusform>%1, %n colonia</numerusform>
            <numerusform>%1, %n colonias</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, colonies %2</source>
        <comment>yard, labels</comment>
        <translation>%1, colonias %2</translation>
    </message>
    <message>
        <source>%1, colony %2</source>
        <comment>yard, label</comment>
        <translation>%1, colonia %2</translation>
    </message>
    <message numerus="yes">
        <source>%n date(s) written to %1</source>
        <translation>
            <numerusform>%n fecha escrita en %1</numerusform>
            <numerusform>%n fechas escritas en %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n yard(s)</source>
        <translation>
            <numerusform>%n apiario</numerusform>
            <numerusform>%n apiarios</numerusform>
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
        <translation>Con retraso</translation>
    </message>
    <message>
        <source>Late: it was due on %1.</source>
        <translation>Con retraso: era para el %1.</translation>
    </message>
    <message>
        <source>Running now</source>
        <translation>En curso</translation>
    </message>
    <message>
        <source>halfcup-season-%1.ics</source>
        <comment>file name</comment>
        <translation>halfcup-temporada-%1.ics</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>hasta el %1</translation>
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
        <translation>Como el teléfono</translation>
    </message>
    <message>
        <source>Halfcup %1</source>
        <translation>Halfcup %1</translation>
    </message>
    <message>
        <source>No position is asked for</source>
        <translation>No se pide posición</translation>
    </message>
    <message>
        <source>That is too long for a receiver's address.</source>
        <translation>Es demasiado largo para la dirección de un receptor.</translation>
    </message>
    <message>
        <source>The phone's own receiver</source>
        <translation>El receptor del teléfono</translation>
    </message>
    <message>
        <source>Your records: %1</source>
        <translation>Tus registros: %1</translation>
    </message>
    <message>
        <source>in this browser</source>
        <comment>where the records are</comment>
        <translation>en este navegador</translation>
    </message>
    <message>
        <source>not rapped</source>
        <translation>sin golpear</translation>
    </message>
    <message>
        <source>rapped to settle</source>
        <translation>asentadas a golpes</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ShakeController</name>
    <message>
        <source>%1 shaken will be on the record</source>
        <translation>quedará anotado: %1 agitados</translation>
    </message>
    <message numerus="yes">
        <source>%n second(s) left</source>
        <translation>
            <numerusform>Queda %n segundo</numerusform>
            <numerusform>Quedan %n segundos</numerusform>
        </translation>
    </message>
    <message>
        <source>Half time</source>
        <comment>spoken</comment>
        <translation>Mitad del tiempo</translation>
    </message>
    <message numerus="yes">
        <source>Half time is past. %n second(s) left</source>
        <translation>
            <numerusform>Pasó la mitad. Queda %n segundo</numerusform>
            <numerusform>Pasó la mitad. Quedan %n segundos</numerusform>
        </translation>
    </message>
    <message>
        <source>Half time is past. Keep on.</source>
        <translation>Pasó la mitad. Sigue.</translation>
    </message>
    <message>
        <source>Last ten seconds.</source>
        <translation>Últimos diez segundos.</translation>
    </message>
    <message>
        <source>Paused. The seconds so far are kept.</source>
        <translation>En pausa. Los segundos hechos se guardan.</translation>
    </message>
    <message>
        <source>Ready to shake.</source>
        <translation>Listo para agitar.</translation>
    </message>
    <message>
        <source>Shaking a jar</source>
        <translation>Agitando un frasco</translation>
    </message>
    <message>
        <source>Stop</source>
        <comment>spoken, the time is over</comment>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Stop here</source>
        <translation>Parar aquí</translation>
    </message>
    <message>
        <source>Ten seconds</source>
        <comment>spoken</comment>
        <translation>Diez segundos</translation>
    </message>
    <message>
        <source>The phone's clocks disagree: how long you shook is a guess.</source>
        <translation>Los relojes del teléfono no coinciden: cuánto agitaste es una suposición.</translation>
    </message>
    <message>
        <source>The seconds so far will be on the record</source>
        <translation>Se anotarán los segundos hasta ahora</translation>
    </message>
    <message>
        <source>Time was up %1 ago. Set the jar down.</source>
        <translation>El tiempo acabó hace %1. Deja el frasco.</translation>
    </message>
    <message numerus="yes">
        <source>second(s) left</source>
        <translation>
            <numerusform>segundo restante</numerusform>
            <numerusform>segundos restantes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ShareController</name>
    <message numerus="yes">
        <source>%n wash(es) to hand on</source>
        <translation>
            <numerusform>%n lavado para compartir</numerusform>
            <numerusform>%n lavados para compartir</numerusform>
        </translation>
    </message>
    <message>
        <source>Handed to the browser: %1 (%2).</source>
        <comment>a file, 3 yards and 85 washes</comment>
        <translation>Entregado al navegador: %1 (%2).</translation>
    </message>
    <message>
        <source>The demo is loaded: two invented yards, marked as demo on every page and in every file.</source>
        <translation>La demo está cargada: dos apiarios inventados, marcados como demo en cada página y en cada archivo.</translation>
    </message>
    <message>
        <source>This is phone %1. Another phone names it so when it takes in a file from here.</source>
        <translation>Este es el teléfono %1. Otro teléfono lo llama así cuando importa un archivo de aquí.</translation>
    </message>
    <message>
        <source>Written to %1: %2.</source>
        <comment>a file, 3 yards and 85 washes</comment>
        <translation>Escrito en %1: %2.</translation>
    </message>
    <message>
        <source>halfcup-%1-%2</source>
        <comment>file name: day, time</comment>
        <translation>halfcup-%1-%2</translation>
    </message>
    <message>
        <source>no records yet</source>
        <translation>aún sin registros</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::SituationController</name>
    <message>
        <source>%1 on %2: too long ago to go by</source>
        <comment>frames, day</comment>
        <translation>%1 el %2: hace demasiado para fiarse</translation>
    </message>
    <message>
        <source>%1; look again</source>
        <comment>what is written down</comment>
        <translation>%1; vuelve a mirar</translation>
    </message>
    <message>
        <source>Capped</source>
        <translation>Operculada</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Sin cría</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Quitadas</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Puestas</translation>
    </message>
    <message>
        <source>One for each day from %1 on, 3 to 14 of them: %2</source>
        <translation>Una por cada día desde el %1, de 3 a 14: %2</translation>
    </message>
    <message>
        <source>Open only</source>
        <translation>Solo abierta</translation>
    </message>
    <message>
        <source>Screened</source>
        <translation>De malla</translation>
    </message>
    <message>
        <source>Solid</source>
        <translation>Cerrado</translation>
    </message>
    <message>
        <source>The day</source>
        <translation>El día</translation>
    </message>
    <message>
        <source>The number of frames</source>
        <translation>El número de cuadros</translation>
    </message>
    <message numerus="yes">
        <source>What you change here is written down for all %n colony(ies). The forecast is not kept.</source>
        <translation>
            <numerusform>Lo que cambies aquí se anota para %n colonia. El pronóstico no se guarda.</numerusform>
            <numerusform>Lo que cambies aquí se anota para las %n colonias. El pronóstico no se guarda.</numerusform>
        </translation>
    </message>
    <message>
        <source>What you change here is written down for the colony. The forecast is not kept.</source>
        <translation>Lo que cambies aquí se anota para la colonia. El pronóstico no se guarda.</translation>
    </message>
    <message>
        <source>not written down yet</source>
        <translation>sin anotar aún</translation>
    </message>
    <message>
        <source>written down for %1 of %2 colonies, last on %3</source>
        <translation>anotado en %1 de %2 colonias, la última vez el %3</translation>
    </message>
    <message>
        <source>written down on %1</source>
        <translation>anotado el %1</translation>
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
        <translation>%1 a %2 %3</translation>
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
        <translation>elección de esta aplicación</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>práctica común, sin fuente</translation>
    </message>
    <message>
        <source>computed from the inputs</source>
        <translation>calculado a partir de los datos</translation>
    </message>
    <message>
        <source>from %1 %2</source>
        <comment>open range and unit</comment>
        <translation>desde %1 %2</translation>
    </message>
    <message>
        <source>published</source>
        <translation>publicado</translation>
    </message>
    <message>
        <source>published, figure from memory: check before you rely on it</source>
        <translation>publicado, cifra de memoria: compruébala antes de fiarte</translation>
    </message>
    <message>
        <source>quoted in a second source</source>
        <translation>citado en una segunda fuente</translation>
    </message>
    <message>
        <source>up to %1 %2</source>
        <comment>open range and unit</comment>
        <translation>hasta %1 %2</translation>
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
            <numerusform>%n hora desde la muestra</numerusform>
            <numerusform>%n horas desde la muestra</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hour(s) under the colony</source>
        <translation>
            <numerusform>%n hora bajo la colonia</numerusform>
            <numerusform>%n horas bajo la colonia</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n jar(s) wait already. Wash some of them first.</source>
        <translation>
            <numerusform>Ya espera %n frasco. Haz antes algunos lavados.</numerusform>
            <numerusform>Ya esperan %n frascos. Haz antes algunos lavados.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s) since the scoop</source>
        <translation>
            <numerusform>%n minuto desde la muestra</numerusform>
            <numerusform>%n minutos desde la muestra</numerusform>
        </translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Board under colony %1, %2</source>
        <comment>colony, yard</comment>
        <translation>Lámina bajo la colonia %1, %2</translation>
    </message>
    <message>
        <source>Colony %1, %2</source>
        <comment>colony, yard</comment>
        <translation>Colonia %1, %2</translation>
    </message>
    <message>
        <source>In the tray</source>
        <translation>En la bandeja</translation>
    </message>
    <message>
        <source>Jar %1 is in the tray already, with bees of colony %2. Write another label; %3 is free.</source>
        <translation>El frasco %1 ya está en la bandeja, con abejas de la colonia %2. Escribe otra etiqueta; %3 está libre.</translation>
    </message>
    <message>
        <source>Jar %1. %2. %3. %4</source>
        <comment>read aloud: label, colony, how long, step</comment>
        <translation>Frasco %1. %2. %3. %4</translation>
    </message>
    <message>
        <source>Scoop colony %1 next</source>
        <translation>Tomar muestra: colonia %1</translation>
    </message>
    <message>
        <source>The label</source>
        <translation>La etiqueta</translation>
    </message>
    <message>
        <source>The tray is empty</source>
        <translation>La bandeja está vacía</translation>
    </message>
    <message>
        <source>Wash jar %1</source>
        <translation>Lavado: frasco %1</translation>
    </message>
    <message>
        <source>laid on %1 at %2</source>
        <translation>colocada el %1 a las %2</translation>
    </message>
    <message>
        <source>no position</source>
        <translation>sin posición</translation>
    </message>
    <message>
        <source>position to come</source>
        <translation>posición por llegar</translation>
    </message>
    <message>
        <source>scooped on %1 at %2</source>
        <translation>muestra del %1 a las %2</translation>
    </message>
    <message>
        <source>waits at: %1</source>
        <translation>espera en: %1</translation>
    </message>
    <message>
        <source>within %1</source>
        <translation>precisión de %1</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::TreatController</name>
    <message>
        <source>Another substance</source>
        <translation>Otra sustancia</translation>
    </message>
    <message>
        <source>Not in the handbook</source>
        <translation>No está en el manual</translation>
    </message>
    <message>
        <source>Record what the handbook does not know. Nothing is said of it here: read its label.</source>
        <translation>Anota lo que el manual no conoce. Aquí no se dice nada de ello: lee su etiqueta.</translation>
    </message>
    <message>
        <source>There is no colony here to treat.</source>
        <translation>Aquí no hay colonia que tratar.</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::TreatmentController</name>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation>%1 a %2</translation>
    </message>
    <message numerus="yes">
        <source>%n colony(ies): %1</source>
        <translation>
            <numerusform>%n colonia: %1</numerusform>
            <numerusform>%n colonias: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Another substance</source>
        <translation>Otra sustancia</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Begins on %1</source>
        <translation>Empieza el %1</translation>
    </message>
    <message>
        <source>Colonies</source>
        <translation>Colonias</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Colonia %1</translation>
    </message>
    <message>
        <source>Done by</source>
        <translation>Aplicado por</translation>
    </message>
    <message>
        <source>Ended on %1</source>
        <translation>Terminó el %1</translation>
    </message>
    <message>
        <source>Expiry of the product</source>
        <translation>Caducidad del producto</translation>
    </message>
    <message>
        <source>First and last day</source>
        <translation>Primer y último día</translation>
    </message>
    <message>
        <source>Fits</source>
        <translation>Conviene</translation>
    </message>
    <message>
        <source>Fits with care</source>
        <translation>Con cuidado</translation>
    </message>
    <message>
        <source>Given once: the same day.</source>
        <translation>Se da una vez: el mismo día.</translation>
    </message>
    <message>
        <source>Honey may be taken again from %1 on, if it comes out as planned.</source>
        <translation>Se puede volver a sacar miel desde el %1, si se retira según lo previsto.</translation>
    </message>
    <message>
        <source>Honey may be taken again from %1 on.</source>
        <translation>Se puede volver a sacar miel desde el %1.</translation>
    </message>
    <message>
        <source>How much to give stands on the label. The label and your local law outrank this app.</source>
        <translation>La dosis está en la etiqueta. La etiqueta y la ley de tu lugar están por encima de esta aplicación.</translation>
    </message>
    <message>
        <source>No colony yet</source>
        <translation>Aún ninguna colonia</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Ahora no</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Prescribed by</source>
        <translation>Recetado por</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Producto</translation>
    </message>
    <message>
        <source>Proof of purchase</source>
        <translation>Comprobante de compra</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Removed from the records; the history keeps it.</source>
        <translation>Eliminado de los registros; el historial lo conserva.</translation>
    </message>
    <message>
        <source>Running until %1</source>
        <translation>En curso hasta el %1</translation>
    </message>
    <message>
        <source>Running: take it out on %1</source>
        <translation>En curso: retíralo el %1</translation>
    </message>
    <message>
        <source>Still in: it should have come out on %1</source>
        <translation>Sigue puesto: debía retirarse el %1</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Proveedor</translation>
    </message>
    <message>
        <source>Taken out on</source>
        <translation>Retirado el</translation>
    </message>
    <message>
        <source>Taken out on %1</source>
        <translation>Retirado el %1</translation>
    </message>
    <message>
        <source>The withdrawal is not written down: look at the label before honey is taken.</source>
        <translation>El tiempo de espera no está anotado: mira la etiqueta antes de sacar miel.</translation>
    </message>
    <message>
        <source>To be taken out on</source>
        <translation>Por retirar el</translation>
    </message>
    <message>
        <source>What the app said of it</source>
        <translation>Lo que dijo la aplicación</translation>
    </message>
    <message>
        <source>Withdrawal for honey</source>
        <translation>Tiempo de espera (miel)</translation>
    </message>
    <message>
        <source>by the label</source>
        <translation>según la etiqueta</translation>
    </message>
    <message>
        <source>by the label; usual course: %1</source>
        <translation>según la etiqueta; duración habitual: %1</translation>
    </message>
    <message>
        <source>by the label; usual course: %1 to %2</source>
        <translation>según la etiqueta; duración habitual: de %1 a %2</translation>
    </message>
    <message>
        <source>not written down</source>
        <translation>sin anotar</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::VerdictMark</name>
    <message>
        <source>Fits</source>
        <translation>Conviene</translation>
    </message>
    <message>
        <source>Fits with care</source>
        <translation>Con cuidado</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Ahora no</translation>
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
        <translation>Colonia %1 · %2</translation>
    </message>
    <message>
        <source>It has settled</source>
        <comment>spoken</comment>
        <translation>Ya reposó</translation>
    </message>
    <message>
        <source>Jar %1, colony %2 · %3</source>
        <comment>label, colony, step</comment>
        <translation>Frasco %1, colonia %2 · %3</translation>
    </message>
    <message>
        <source>Queen not seen: look at every bee on the frame before you scoop.</source>
        <translation>Reina no vista: mira cada abeja del cuadro antes de tomar la muestra.</translation>
    </message>
    <message>
        <source>Queen seen and safe.</source>
        <translation>Reina vista y a salvo.</translation>
    </message>
    <message>
        <source>This count was begun with a newer version of the program, by a method that this one does not know. It is kept as it is.</source>
        <translation>Este recuento se empezó con una versión más nueva del programa, con un método que esta no conoce. Se guarda como está.</translation>
    </message>
    <message>
        <source>step %1 of %2</source>
        <translation>paso %1 de %2</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::YardPlanController</name>
    <message>
        <source>%1 That is where it was washed, within %2.</source>
        <comment>where a hive stands, how sure</comment>
        <translation>%1 Ahí se hizo su lavado, precisión de %2.</translation>
    </message>
    <message>
        <source>%1 east</source>
        <comment>a step</comment>
        <translation>%1 al este</translation>
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
        <translation>%1 al norte</translation>
    </message>
    <message>
        <source>%1 south</source>
        <comment>a step</comment>
        <translation>%1 al sur</translation>
    </message>
    <message>
        <source>%1 west</source>
        <comment>a step</comment>
        <translation>%1 al oeste</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>standing, load and its day</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Colonia %1</translation>
    </message>
    <message>
        <source>Colony %1 has its place. Touch the next hive.</source>
        <translation>La colonia %1 ya tiene lugar. Toca la siguiente colmena.</translation>
    </message>
    <message>
        <source>Colony %1 has no place now. Touch the next hive.</source>
        <translation>La colonia %1 queda sin lugar. Toca la siguiente colmena.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>It has no place on the plan yet. The first step starts from the middle.</source>
        <translation>Aún no tiene lugar en el plano. El primer paso parte del centro.</translation>
    </message>
    <message>
        <source>It stands %1 east and %2 north of the yard's middle.</source>
        <translation>Está %1 al este y %2 al norte del centro del apiario.</translation>
    </message>
    <message>
        <source>It stands %1 east and %2 south of the yard's middle.</source>
        <translation>Está %1 al este y %2 al sur del centro del apiario.</translation>
    </message>
    <message>
        <source>It stands %1 west and %2 north of the yard's middle.</source>
        <translation>Está %1 al oeste y %2 al norte del centro del apiario.</translation>
    </message>
    <message>
        <source>It stands %1 west and %2 south of the yard's middle.</source>
        <translation>Está %1 al oeste y %2 al sur del centro del apiario.</translation>
    </message>
    <message>
        <source>Move colony %1</source>
        <translation>Mover la colonia %1</translation>
    </message>
    <message>
        <source>Touch a hive to see how it stands.</source>
        <translation>Toca una colmena para ver cómo está.</translation>
    </message>
    <message>
        <source>Touch a hive, then touch where it stands.</source>
        <translation>Toca una colmena y luego su lugar.</translation>
    </message>
    <message>
        <source>Touch where colony %1 stands.</source>
        <translation>Toca el lugar de la colonia %1.</translation>
    </message>
</context>
<context>
    <name>halfcup::touch::YardsController</name>
    <message>
        <source>%1 comes after %2. Type the smaller number first.</source>
        <translation>%1 va después de %2. Escribe primero el número menor.</translation>
    </message>
    <message numerus="yes">
        <source>%n colony(ies)</source>
        <translation>
            <numerusform>%n colonia</numerusform>
            <numerusform>%n colonias</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n colony(ies): %1</source>
        <translation>
            <numerusform>%n colonia: %1</numerusform>
            <numerusform>%n colonias: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>By season: %1. Today the line is %2 per 100.</source>
        <comment>region, line</comment>
        <translation>Por temporada: %1. Hoy el umbral es %2 por 100.</translation>
    </message>
    <message>
        <source>Mites must be low by then. In the tropics none is taken to be needed; type one where your bees have a winter.</source>
        <translation>Ese día los ácaros deben ser pocos. En los trópicos se supone que no hace falta; escribe una si tus abejas tienen invierno.</translation>
    </message>
    <message>
        <source>Mites must be low by then. Nothing typed: %1, as in the north, because the yard has no position.</source>
        <translation>Ese día los ácaros deben ser pocos. Vacío: %1, como en el norte, porque el apiario no tiene posición.</translation>
    </message>
    <message>
        <source>Mites must be low by then. Nothing typed: %1, half a year after the north.</source>
        <translation>Ese día los ácaros deben ser pocos. Vacío: %1, medio año después que en el norte.</translation>
    </message>
    <message>
        <source>Mites must be low by then. Nothing typed: %1, usual in the north.</source>
        <translation>Ese día los ácaros deben ser pocos. Vacío: %1, lo habitual en el norte.</translation>
    </message>
    <message>
        <source>No colonies yet</source>
        <translation>Aún sin colonias</translation>
    </message>
    <message>
        <source>No position yet</source>
        <translation>Aún sin posición</translation>
    </message>
    <message>
        <source>Save the yard first, then add its colonies.</source>
        <translation>Guarda primero el apiario; luego añade sus colonias.</translation>
    </message>
    <message numerus="yes">
        <source>That would be %n colonies at once. %1 is the most.</source>
        <translation>
            <numerusform>Sería %n colonia a la vez. El máximo es %1.</numerusform>
            <numerusform>Serían %n colonias a la vez. El máximo es %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>The day of the first wash</source>
        <translation>El día del primer lavado</translation>
    </message>
    <message>
        <source>The label</source>
        <translation>El número o nombre</translation>
    </message>
    <message>
        <source>The treat line</source>
        <translation>El umbral de tratamiento</translation>
    </message>
    <message>
        <source>The turn date</source>
        <translation>La fecha límite</translation>
    </message>
    <message>
        <source>The yard's name</source>
        <translation>El nombre del apiario</translation>
    </message>
    <message>
        <source>There is a colony %1 in this yard already. Nothing was added.</source>
        <translation>En este apiario ya hay una colonia %1. No se añadió nada.</translation>
    </message>
    <message>
        <source>When colonies can be opened. Nothing typed: from the first visit of the year, %1.</source>
        <translation>Cuando se pueden abrir las colonias. Vacío: desde la primera visita del año, %1.</translation>
    </message>
    <message>
        <source>When colonies can be opened. Nothing typed: from the first visit of the year, or %1.</source>
        <translation>Cuando se pueden abrir las colonias. Vacío: desde la primera visita del año, o %1.</translation>
    </message>
    <message>
        <source>Your own line</source>
        <translation>Tu umbral propio</translation>
    </message>
    <message>
        <source>no position</source>
        <translation>sin posición</translation>
    </message>
</context>
</TS>
