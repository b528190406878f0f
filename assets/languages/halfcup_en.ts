<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>LoadLegend</name>
    <message numerus="yes">
        <source>%n wash(es) since %1.</source>
        <translation>
            <numerusform>%n wash since %1.</numerusform>
            <numerusform>%n washes since %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PlanWords</name>
    <message numerus="yes">
        <source>%n colony(ies)</source>
        <translation>
            <numerusform>%n colony</numerusform>
            <numerusform>%n colonies</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n counted scoop(s)</source>
        <translation>
            <numerusform>%n counted scoop</numerusform>
            <numerusform>%n counted scoops</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n event(s)</source>
        <translation>
            <numerusform>%n event</numerusform>
            <numerusform>%n events</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more are not listed one by one.</source>
        <translation>
            <numerusform>%n more is not listed.</numerusform>
            <numerusform>%n more are not listed one by one.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more line(s) are damaged and were left out.</source>
        <translation>
            <numerusform>%n more line is damaged and was left out.</numerusform>
            <numerusform>%n more lines are damaged and were left out.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) new or changed. Nothing of yours is lost.</source>
        <translation>
            <numerusform>%n record new or changed. Nothing of yours is lost.</numerusform>
            <numerusform>%n records new or changed. Nothing of yours is lost.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) of a kind that this version does not know: a newer Halfcup wrote them. They are kept and passed on.</source>
        <translation>
            <numerusform>%n record of a kind that this version does not know: a newer Halfcup wrote it. It is kept and passed on.</numerusform>
            <numerusform>%n records of a kind that this version does not know: a newer Halfcup wrote them. They are kept and passed on.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) wait for what they belong to. They show as soon as a file brings it.</source>
        <translation>
            <numerusform>%n record waits for what it belongs to. It shows as soon as a file brings that.</numerusform>
            <numerusform>%n records wait for what they belong to. They show as soon as a file brings it.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n treated colony(ies)</source>
        <translation>
            <numerusform>%n treated colony</numerusform>
            <numerusform>%n treated colonies</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n treatment(s)</source>
        <translation>
            <numerusform>%n treatment</numerusform>
            <numerusform>%n treatments</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es)</source>
        <translation>
            <numerusform>%n wash</numerusform>
            <numerusform>%n washes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n yard round(s)</source>
        <translation>
            <numerusform>%n yard round</numerusform>
            <numerusform>%n yard rounds</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n yard(s)</source>
        <translation>
            <numerusform>%n yard</numerusform>
            <numerusform>%n yards</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n other field(s)</source>
        <translation>
            <numerusform>and %n other field</numerusform>
            <numerusform>and %n other fields</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PositionWords</name>
    <message numerus="yes">
        <source>Position within %1, from %n fix(es)</source>
        <translation>
            <numerusform>Position within %1, from %n fix</numerusform>
            <numerusform>Position within %1, from %n fixes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Report</name>
    <message numerus="yes">
        <source>%1: %n colony(ies).</source>
        <comment>standing</comment>
        <translation>
            <numerusform>%1: %n colony.</numerusform>
            <numerusform>%1: %n colonies.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n mite(s) found: %1 per 100 bees. %2</source>
        <comment>load and range; the comb in words</comment>
        <translation>
            <numerusform>%n mite found: %1 per 100 bees. %2</numerusform>
            <numerusform>%n mites found: %1 per 100 bees. %2</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Restoring</name>
    <message numerus="yes">
        <source>%1 was put back: %n wash(es) are in your records now.</source>
        <translation>
            <numerusform>%1 was put back: %n wash is in your records now.</numerusform>
            <numerusform>%1 was put back: %n washes are in your records now.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SeasonStripWords</name>
    <message numerus="yes">
        <source>Washed on %n day(s).</source>
        <translation>
            <numerusform>Washed on %n day.</numerusform>
            <numerusform>Washed on %n days.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Washes due on %n day(s).</source>
        <translation>
            <numerusform>Washes due on %n day.</numerusform>
            <numerusform>Washes due on %n days.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TrayWords</name>
    <message numerus="yes">
        <source>%n board(s) lie</source>
        <translation>
            <numerusform>%n board lies under its colony</numerusform>
            <numerusform>%n boards lie under their colonies</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n jar(s) wait</source>
        <translation>
            <numerusform>%n jar waits</numerusform>
            <numerusform>%n jars wait</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Treat</name>
    <message numerus="yes">
        <source>%1, %n colony(ies)</source>
        <translation>
            <numerusform>%1, %n colony</numerusform>
            <numerusform>%1, %n colonies</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TreatmentForm</name>
    <message numerus="yes">
        <source>The course is longer than %n day(s).</source>
        <translation>
            <numerusform>The course is longer than %n day.</numerusform>
            <numerusform>The course is longer than %n days.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The withdrawal can be %n day(s) at the most.</source>
        <translation>
            <numerusform>The withdrawal can be %n day at the most.</numerusform>
            <numerusform>The withdrawal can be %n days at the most.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message numerus="yes">
        <source>%n cell(s)</source>
        <translation>
            <numerusform>%n cell</numerusform>
            <numerusform>%n cells</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n mite(s)</source>
        <translation>
            <numerusform>%n mite</numerusform>
            <numerusform>%n mites</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>YardComparisonWords</name>
    <message numerus="yes">
        <source>%n colony(ies) not washed.</source>
        <translation>
            <numerusform>%n colony not washed.</numerusform>
            <numerusform>%n colonies not washed.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n colony(ies), the highest load first.</source>
        <translation>
            <numerusform>%n colony, the highest load first.</numerusform>
            <numerusform>%n colonies, the highest load first.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them is (are) over the line.</source>
        <translation>
            <numerusform>%n of them is over the line.</numerusform>
            <numerusform>%n of them are over the line.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No wash yet in %n colony(ies).</source>
        <translation>
            <numerusform>No wash yet in %n colony.</numerusform>
            <numerusform>No wash yet in %n colonies.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Washed %n day(s) ago.</source>
        <translation>
            <numerusform>Washed %n day ago.</numerusform>
            <numerusform>Washed %n days ago.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>washed %n day(s) ago</source>
        <translation>
            <numerusform>washed %n day ago</numerusform>
            <numerusform>washed %n days ago</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::App</name>
    <message numerus="yes">
        <source>%n files were opened at once. Open them one after the other, so that you see what is in each.</source>
        <translation>
            <numerusform>%n file was opened.</numerusform>
            <numerusform>%n files were opened at once. Open them one after the other, so that you see what is in each.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::BackupController</name>
    <message numerus="yes">
        <source>%n colony(ies)</source>
        <translation>
            <numerusform>%n colony</numerusform>
            <numerusform>%n colonies</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n treatment(s)</source>
        <translation>
            <numerusform>%n treatment</numerusform>
            <numerusform>%n treatments</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es)</source>
        <translation>
            <numerusform>%n wash</numerusform>
            <numerusform>%n washes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es) in no backup yet</source>
        <translation>
            <numerusform>%n wash in no backup yet</numerusform>
            <numerusform>%n washes in no backup yet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n yard(s)</source>
        <translation>
            <numerusform>%n yard</numerusform>
            <numerusform>%n yards</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Written and checked: %n wash(es), %1, %2</source>
        <comment>size, path</comment>
        <translation>
            <numerusform>Written and checked: %n wash, %1, %2</numerusform>
            <numerusform>Written and checked: %n washes, %1, %2</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::CountController</name>
    <message numerus="yes">
        <source>You counted %n cell(s) with mites: so many at the least were opened.</source>
        <translation>
            <numerusform>You counted %n cell with mites: so many at the least were opened.</numerusform>
            <numerusform>You counted %n cells with mites: so many at the least were opened.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::EventController</name>
    <message numerus="yes">
        <source>%1, %n colony(ies)</source>
        <comment>yard and how many</comment>
        <translation>
            <numerusform>%1, %n colony</numerusform>
            <numerusform>%1, %n colonies</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ExportController</name>
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
            <numerusform>%n place</numerusform>
            <numerusform>%n places</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s), one a treatment and colony</source>
        <translation>
            <numerusform>%n row, one a treatment and colony</numerusform>
            <numerusform>%n rows, one a treatment and colony</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n touch(es) of counting</source>
        <translation>
            <numerusform>%n touch of counting</numerusform>
            <numerusform>%n touches of counting</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es)</source>
        <translation>
            <numerusform>%n wash</numerusform>
            <numerusform>%n washes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Report of %n page(s)</source>
        <translation>
            <numerusform>Report of %n page</numerusform>
            <numerusform>Report of %n pages</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::FolderController</name>
    <message numerus="yes">
        <source>%n record(s) came in, new or changed.</source>
        <translation>
            <numerusform>%n record came in, new or changed.</numerusform>
            <numerusform>%n records came in, new or changed.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) changed on both phones: the later value was kept.</source>
        <translation>
            <numerusform>%n record changed on both phones: the later value was kept.</numerusform>
            <numerusform>%n records changed on both phones: the later value was kept.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ImportController</name>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 and %n more</numerusform>
            <numerusform>%1 and %n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new colony(ies)</source>
        <translation>
            <numerusform>%n new colony</numerusform>
            <numerusform>%n new colonies</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new yard(s)</source>
        <translation>
            <numerusform>%n new yard</numerusform>
            <numerusform>%n new yards</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) in question</source>
        <translation>
            <numerusform>%n row in question</numerusform>
            <numerusform>%n rows in question</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) refused</source>
        <translation>
            <numerusform>%n row refused</numerusform>
            <numerusform>%n rows refused</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es) here already</source>
        <translation>
            <numerusform>%n wash here already</numerusform>
            <numerusform>%n washes here already</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es) kept. Taking the same table in again adds nothing.</source>
        <translation>
            <numerusform>%n wash kept. Taking the same table in again adds nothing.</numerusform>
            <numerusform>%n washes kept. Taking the same table in again adds nothing.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es) to keep</source>
        <translation>
            <numerusform>%n wash to keep</numerusform>
            <numerusform>%n washes to keep</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Keep %n wash(es)</source>
        <translation>
            <numerusform>Keep %n wash</numerusform>
            <numerusform>Keep %n washes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more row(s)</source>
        <translation>
            <numerusform>and %n more row</numerusform>
            <numerusform>and %n more rows</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::OwnScoopsController</name>
    <message numerus="yes">
        <source>%1 bees in %2, from %n counted scoop(s)</source>
        <translation>
            <numerusform>%1 bees in %2, from %n counted scoop</numerusform>
            <numerusform>%1 bees in %2, from %n counted scoops</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::PlanController</name>
    <message numerus="yes">
        <source>%1, %n record(s)</source>
        <comment>a file</comment>
        <translation>
            <numerusform>%1, %n record</numerusform>
            <numerusform>%1, %n records</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) taken in. Taking the same file in again changes nothing.</source>
        <translation>
            <numerusform>%n record taken in. Taking the same file in again changes nothing.</numerusform>
            <numerusform>%n records taken in. Taking the same file in again changes nothing.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::RecoveryController</name>
    <message numerus="yes">
        <source>%n entry(ies) could not be read and are lost; there may be more.</source>
        <translation>
            <numerusform>%n entry could not be read and is lost; there may be more.</numerusform>
            <numerusform>%n entries could not be read and are lost; there may be more.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n yard(s) or colony(ies) lost their name and stand there without it.</source>
        <translation>
            <numerusform>%n yard or colony lost its name and stands there without it.</numerusform>
            <numerusform>%n yards or colonies lost their names and stand there without them.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of %n record(s) too little was read to show them; a merge with another phone may complete them.</source>
        <translation>
            <numerusform>Of %n record too little was read to show it; a merge with another phone may complete it.</numerusform>
            <numerusform>Of %n records too little was read to show them; a merge with another phone may complete them.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::SameController</name>
    <message numerus="yes">
        <source>%n colony(ies)</source>
        <translation>
            <numerusform>%n colony</numerusform>
            <numerusform>%n colonies</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pair(s) may be the same</source>
        <translation>
            <numerusform>%n pair may be the same</numerusform>
            <numerusform>%n pairs may be the same</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wash(es)</source>
        <translation>
            <numerusform>%n wash</numerusform>
            <numerusform>%n washes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ScoopController</name>
    <message numerus="yes">
        <source>from your %n counted scoop(s)</source>
        <translation>
            <numerusform>from your %n counted scoop</numerusform>
            <numerusform>from your %n counted scoops</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::SeasonController</name>
    <message numerus="yes">
        <source>%1, %n colony(ies)</source>
        <translation>
            <numerusform>%1, %n colony</numerusform>
            <numerusform>%1, %n colonies</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n date(s) written to %1</source>
        <translation>
            <numerusform>%n date written to %1</numerusform>
            <numerusform>%n dates written to %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n yard(s)</source>
        <translation>
            <numerusform>%n yard</numerusform>
            <numerusform>%n yards</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ShakeController</name>
    <message numerus="yes">
        <source>%n second(s) left</source>
        <translation>
            <numerusform>%n second left</numerusform>
            <numerusform>%n seconds left</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Half time is past. %n second(s) left</source>
        <translation>
            <numerusform>Half time is past. %n second left</numerusform>
            <numerusform>Half time is past. %n seconds left</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>second(s) left</source>
        <translation>
            <numerusform>second left</numerusform>
            <numerusform>seconds left</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::ShareController</name>
    <message numerus="yes">
        <source>%n wash(es) to hand on</source>
        <translation>
            <numerusform>%n wash to hand on</numerusform>
            <numerusform>%n washes to hand on</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::SituationController</name>
    <message numerus="yes">
        <source>What you change here is written down for all %n colony(ies). The forecast is not kept.</source>
        <translation>
            <numerusform>What you change here is written down for the colony. The forecast is not kept.</numerusform>
            <numerusform>What you change here is written down for all %n colonies. The forecast is not kept.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::TrayController</name>
    <message numerus="yes">
        <source>%n hour(s) since the scoop</source>
        <translation>
            <numerusform>%n hour since the scoop</numerusform>
            <numerusform>%n hours since the scoop</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hour(s) under the colony</source>
        <translation>
            <numerusform>%n hour under the colony</numerusform>
            <numerusform>%n hours under the colony</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n jar(s) wait already. Wash some of them first.</source>
        <translation>
            <numerusform>%n jar waits already. Wash it first.</numerusform>
            <numerusform>%n jars wait already. Wash some of them first.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s) since the scoop</source>
        <translation>
            <numerusform>%n minute since the scoop</numerusform>
            <numerusform>%n minutes since the scoop</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::TreatmentController</name>
    <message numerus="yes">
        <source>%n colony(ies): %1</source>
        <translation>
            <numerusform>%n colony: %1</numerusform>
            <numerusform>%n colonies: %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::YardsController</name>
    <message numerus="yes">
        <source>%n colony(ies)</source>
        <translation>
            <numerusform>%n colony</numerusform>
            <numerusform>%n colonies</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n colony(ies): %1</source>
        <translation>
            <numerusform>%n colony: %1</numerusform>
            <numerusform>%n colonies: %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>That would be %n colonies at once. %1 is the most.</source>
        <translation>
            <numerusform>That would be %n colony at once. %1 is the most.</numerusform>
            <numerusform>That would be %n colonies at once. %1 is the most.</numerusform>
        </translation>
    </message>
</context>
</TS>
