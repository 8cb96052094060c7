<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>GradingChart</name>
    <message numerus="yes">
        <source>%n faint curve(s) of single samples and earlier bags lie behind.</source>
        <translation>
            <numerusform>%n faint curve of a single sample or an earlier bag lies behind.</numerusform>
            <numerusform>%n faint curves of single samples and earlier bags lie behind.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::LotChart</name>
    <message numerus="yes">
        <source>Dust and usable litres of %n lot(s), oldest first; the last, %1, has %2 dust and %3 usable.</source>
        <translation>
            <numerusform>Dust and usable litres of one lot, %1: %2 dust and %3 usable.</numerusform>
            <numerusform>Dust and usable litres of %n lots, oldest first; the last, %1, has %2 dust and %3 usable.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordPages</name>
    <message numerus="yes">
        <source>Kept %n sieve test(s) with bag %1.</source>
        <translation>
            <numerusform>Kept %n sieve test with bag %1.</numerusform>
            <numerusform>Kept %n sieve tests with bag %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SieveTableModel</name>
    <message numerus="yes">
        <source>Pasted %n row(s).</source>
        <translation>
            <numerusform>Pasted %n row.</numerusform>
            <numerusform>Pasted %n rows.</numerusform>
        </translation>
    </message>
</context>
</TS>
