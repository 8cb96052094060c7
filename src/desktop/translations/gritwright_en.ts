<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>Ageing</name>
    <message numerus="yes">
        <source>Likely not below %1 air within %n season(s).</source>
        <translation>
            <numerusform>Likely not below %1 air within one season.</numerusform>
            <numerusform>Likely not below %1 air within %n seasons.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>FindParts</name>
    <message numerus="yes">
        <source>curve within its limits at %n size(s)</source>
        <translation>
            <numerusform>curve within its limits at one size</numerusform>
            <numerusform>curve within its limits at %n sizes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>curve near its %n point(s)</source>
        <translation>
            <numerusform>curve near its one point</numerusform>
            <numerusform>curve near its %n points</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Air against water: from %1 air with %2 water to %3 air with %4 water; nothing found beats these %n recipe(s) in both.</source>
        <translation>
            <numerusform>Air against water: from %1 air with %2 water to %3 air with %4 water; nothing found beats this one recipe in both.</numerusform>
            <numerusform>Air against water: from %1 air with %2 water to %3 air with %4 water; nothing found beats these %n recipes in both.</numerusform>
        </translation>
    </message>
</context>
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
    <name>GrainTrace</name>
    <message numerus="yes">
        <source>%n tree(s) stand in it</source>
        <translation>
            <numerusform>%n tree stands in it</numerusform>
            <numerusform>%n trees stand in it</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>in %n repotted since some may remain</source>
        <translation>
            <numerusform>in %n repotted since some may remain</numerusform>
            <numerusform>in %n repotted since some may remain</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n stood in it once</source>
        <translation>
            <numerusform>%n stood in it once</numerusform>
            <numerusform>%n stood in it once</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: the grain of %n bag(s) is or may be in its soil.</source>
        <translation>
            <numerusform>%1: the grain of %n bag is or may be in its soil.</numerusform>
            <numerusform>%1: the grain of %n bags is or may be in its soil.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Lots</name>
    <message numerus="yes">
        <source>Unusual for the material: %1 is %2; over %n earlier bag(s) it lay between %3 and %4.</source>
        <translation>
            <numerusform>Unusual for the material: %1 is %2; over %n earlier bag it lay between %3 and %4.</numerusform>
            <numerusform>Unusual for the material: %1 is %2; over %n earlier bags it lay between %3 and %4.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StockText</name>
    <message numerus="yes">
        <source>Tested: %n sieve test(s)</source>
        <translation>
            <numerusform>Tested: %n sieve test</numerusform>
            <numerusform>Tested: %n sieve tests</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Tested: %n sieve test(s), the last on %1</source>
        <translation>
            <numerusform>Tested: %n sieve test, on %1</numerusform>
            <numerusform>Tested: %n sieve tests, the last on %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ImportPage</name>
    <message numerus="yes">
        <source>%n record(s) to take in</source>
        <translation>
            <numerusform>%n record to take in</numerusform>
            <numerusform>%n records to take in</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n here already</source>
        <translation>
            <numerusform>%n here already</numerusform>
            <numerusform>%n here already</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fault(s): mend them in the file and read it again; until then nothing is taken in</source>
        <translation>
            <numerusform>%n fault: mend it in the file and read it again; until then nothing is taken in</numerusform>
            <numerusform>%n faults: mend them in the file and read it again; until then nothing is taken in</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) taken in; one undo takes them back.</source>
        <translation>
            <numerusform>%n record taken in; one undo takes it back.</numerusform>
            <numerusform>%n records taken in; one undo takes them back.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::LotChart</name>
    <message numerus="yes">
        <source>%n lot(s), oldest first; the last, %1: %2.</source>
        <translation>
            <numerusform>One lot, %1: %2.</numerusform>
            <numerusform>%n lots, oldest first; the last, %1: %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A usual range needs %n earlier lot(s).</source>
        <translation>
            <numerusform>A usual range needs %n earlier lot.</numerusform>
            <numerusform>A usual range needs %n earlier lots.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ManualPage</name>
    <message numerus="yes">
        <source>in %n chapter(s)</source>
        <translation>
            <numerusform>in %n chapter</numerusform>
            <numerusform>in %n chapters</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecipesPanel</name>
    <message numerus="yes">
        <source>%n recipe(s), best first.</source>
        <translation>
            <numerusform>One recipe.</numerusform>
            <numerusform>%n recipes, best first.</numerusform>
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
    <name>gritwright::desktop::ScoreView</name>
    <message numerus="yes">
        <source>predicted %1 points too low on average, %2 points root mean square, %n test(s)</source>
        <translation>
            <numerusform>predicted %1 points too low on average, %2 points root mean square, %n test</numerusform>
            <numerusform>predicted %1 points too low on average, %2 points root mean square, %n tests</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>predicted %1 points too high on average, %2 points root mean square, %n test(s)</source>
        <translation>
            <numerusform>predicted %1 points too high on average, %2 points root mean square, %n test</numerusform>
            <numerusform>predicted %1 points too high on average, %2 points root mean square, %n tests</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SickTreesTab</name>
    <message numerus="yes">
        <source>%n tree(s) sick</source>
        <translation>
            <numerusform>%n tree is sick</numerusform>
            <numerusform>%n trees are sick</numerusform>
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
