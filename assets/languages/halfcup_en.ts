<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>halfcup::touch::ShakeController</name>
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
    <message numerus="yes">
        <source>%n wash(es) written to %1</source>
        <translation>
            <numerusform>%n wash written to %1</numerusform>
            <numerusform>%n washes written to %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>halfcup::touch::WashController</name>
    <message numerus="yes">
        <source>Position within %1, from %n fix(es)</source>
        <translation>
            <numerusform>Position within %1, from %n fix</numerusform>
            <numerusform>Position within %1, from %n fixes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Words</name>
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
    <name>halfcup::touch::YardsController</name>
    <message numerus="yes">
        <source>%n colony(ies): %1</source>
        <translation>
            <numerusform>%n colony: %1</numerusform>
            <numerusform>%n colonies: %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n colony(ies)</source>
        <translation>
            <numerusform>%n colony</numerusform>
            <numerusform>%n colonies</numerusform>
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
