<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="ja" sourcelanguage="en">
<context>
    <name>Application</name>
    <message>
        <source>Grading, mixes and pots for trees in shallow containers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the demonstration.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write pictures of the window to DIR and end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With --shots: also high contrast, other window and text sizes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record to open instead of the usual one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language of the window: de, en, es, fr or ja.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sieve tests to open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What lies on the bench could not be saved: is the disk full?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BenchState</name>
    <message>
        <source>Component %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Comparison</name>
    <message>
        <source>Nothing to compare yet: keep a mix, or finish the one on the bench.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 holds %2 air and %3 water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 without a pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In one pot, %1 deep: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for plants</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>litre weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D50</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DayGround</name>
    <message>
        <source>is no longer in the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>has no mix yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>has neither a pot nor planned litres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>has a mix that can&apos;t be found</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DayTicking</name>
    <message>
        <source>Repotted %1 with %2 of %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, into %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, plan %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ticked off %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Took the tick of %1 back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tick of %1 taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made %1 of %2, %3 left over, kept as %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left-over of %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Demonstration</name>
    <message>
        <source>demonstration</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Figures</name>
    <message>
        <source>%1 has a fault</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: sieve test not finished</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: litre weight unknown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no component has parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>see the marked fields</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pot&apos;s lengths are not typed yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>see the marked fields of the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a component has no grain density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grain of the mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside the sieves used; nothing is extrapolated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D50, half is finer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D90</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D60/D10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no wanted band is typed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the wanted band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finer than it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mix, worked in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swells on mixing by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shrinks on mixing by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Litre weight, dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Voids between grains</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Voids in grains</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Total porosity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water in grains</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exchange capacity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unknown for a component</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In this pot, %1 deep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air that drains free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water plants can take</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trapped air, apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet zone, height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Volume to the fill line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mix, wet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To measure out for one pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mixed, before filling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not computed: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 parts at %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beta of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 typical</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FindParts</name>
    <message>
        <source>the pot&apos;s lengths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the wanted grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a group of trees, or a wish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an unknown amount, because the figure is not defined</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 meq/L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 a litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finer than %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>share of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>curve within its limits at %n size(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>curve near its %n point(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>exchange capacity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water for plants</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet litre weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; </source>
        <comment>between wishes</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot be had: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot be had together: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The search was stopped: these are the best so far, not proven.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free shares are improved from fixed starts: a better recipe may exist.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 recipes worked out, %2 excluded by bounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Proven best: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not proven best: %1; the best score may be lower by up to %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; no recipe scores less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not proven best: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 between %2 and %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 at least %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 at most %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>parts, name</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>misses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>price/L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>score</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nearest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Misses “%1” by %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Held back by, right at the limit: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Uses up %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not sieved yet: its printed size stands in for its curve.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Holds every wish with room to spare.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The chosen recipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no pot, or a grain density is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air that drains free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water plants can take</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Litre weight, dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a grain density is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shrinks on mixing by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exchange capacity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unknown for a component</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price of a mixed litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a price is not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Score, 0 is best</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No recipe holds every wish that must hold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No recipe was found that holds every wish that must hold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The nearest that can be had is listed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another recipe comes first with “%1” %2 stricter or %3 looser.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another recipe comes first with “%1” %2 stricter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another recipe comes first with “%1” %2 looser.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole parts instead of free shares cost %1 of score.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trade-offs come with the first search: find parts for a pot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Air against water: from %1 air with %2 water to %3 air with %4 water; nothing found beats these %n recipe(s) in both.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Price against fit: from %1 a litre with score %2 to %3 a litre with score %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This search has no trade-off to show: there is no pot, no price or no recipe.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trade-off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air or price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water or score</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air, water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>price, fit</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GradingChart</name>
    <message>
        <source>%1 (so far)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>percent passing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sieve opening, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, sample 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, sample %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>half of %1 is finer than %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has no middle size inside its sieves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grading chart, still empty: no sieve test has a curve yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grading chart, percent passing over grain size: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n faint curve(s) of single samples and earlier bags lie behind.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>sieve</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>JumpTargets</name>
    <message>
        <source>bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fraction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>container</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>repotting day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sheet %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Lots</name>
    <message>
        <source>finer than wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D50</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>usable of a litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air, 6 cm deep</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Unusual for the material: %1 is %2; over %n earlier bag(s) it lay between %3 and %4.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>A jump from the bag before: %1 is %2; bags of this material seldom differ so much from one to the next.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In mix %1 it would turn air from %2 into %3 and water from %4 into %5.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PotLabels</name>
    <message>
        <source>page %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PrintedPages</name>
    <message>
        <source>page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Protocols</name>
    <message>
        <source>what it needs was not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air that drained in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Predicted before any test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water that stayed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled when flooded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight of a litre in the pot, dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the water that stayed was not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fitted k, cm mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fitted grain fill w</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fitted flooded fill f</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pot test %1 of mix %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot test %1 of mix %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>: air %1 measured, %2 predicted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A component of the mix has no grain density: measure it first, then the test can be compared.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These figures make no pot test: look at the volume and the order of the weights.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Still to type: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Litre weight by jug</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What a litre weighs, loose and worked in. It turns parts into masses, and says how much a mix settles.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh the empty jug. Fill it loosely from a scoop held at the rim, heaped, and strike it off level. Weigh.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Empty it, fill and weigh once more: two fills within 3 % are good.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work the grain in with a stick, as in a pot, without adding any. Read the litres at the mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two jugs: one heaped and struck off level, one with the same grain worked in with a stick and standing lower.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grain density by displacement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the grain weighs with its inner pores. With the litre weight it gives the voids between the grains.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soak the grain for 24 h. Dab it dry until its surface no longer shines. Weigh.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh the jug filled with water to the mark. Put the grain in, stir the air out, top up or draw off to the same mark. Weigh.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry the grain at 105 °C or on a warm stove until it no longer gets lighter. Weigh.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two jugs filled with water to the same mark, the right one with soaked grain at the bottom.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water absorption in 24 h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The water that stays inside the grains: it is there between waterings and takes no air.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soak a handful for 24 h. Dab it dry until its surface no longer shines. Weigh.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry the same grain until it no longer gets lighter. Weigh.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grain under water in a dish, then the same grain spread out to dry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crumble test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How fast the grain breaks down, by shaking or by freezing and thawing. It says for how many seasons the mix keeps its air.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take sieved grain of the bag. Shake it in a closed tin, or wet it, freeze it and thaw it, so many rounds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry it and sieve it again on the same sieves. Wear a dust mask.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tin that is shaken, and the stack of sieves that the grain goes through again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Was it sieved long enough?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One more minute of shaking by hand: less than half a percent may still fall through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After the sieve test shake every sieve one more minute over a clean sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh all that fell through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A sieve shaken over a sheet on which a little grain lies.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot test by balance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saturate and drain: the air and water of this mix in a real pot. It corrects the estimates of the mix and shows how far off they were.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soak the mix for a day. Fill the pot and work it in as you would around a tree. Seal the holes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flood slowly from below until a film shines on top. Weigh. Open the holes and let it drain level for half an hour. Weigh.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry everything until it no longer gets lighter. Weigh; the empty pot too. A wet pot is heavy: lift with both hands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pot on a balance three times: flooded to the rim, drained with water left at the bottom, dry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot test by volumes only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same without a balance: water poured in and water caught.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill the pot with dry mix and work it in. Seal the holes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour in measured water slowly until a shiny film stands, and again after a day&apos;s soak. Note all of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the holes over a bowl. After half an hour measure what ran out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A measuring jug pours into a pot, and a bowl below catches what drains.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the litres after working in are not typed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Litre weight, loose, dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worked in, dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>litre weight of bag %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighed a jug of bag %1: %2 loose and dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>settling of mix %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worked in a jug of mix %1: it settles by %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grain density, dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soaked grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water after 24 h, of dry mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grain density of bag %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured the grain of bag %1 by displacement: %2, water after 24 h %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water absorption of bag %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soaked grain of bag %1 for 24 h: it took up %2 of its dry mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sieve this bag first: a crumble test compares with its sieve test.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Broken, of the mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breakages of a grain in a round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Modulus of the fragments</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>crumble test of bag %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crumble test of bag %1: %2 of the mass broke in %3 rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More fell through than was weighed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fell through in one more minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sieving of bag %1 was thorough: %2 fell through in one more minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sieving of bag %1 was not thorough: %2 fell through in one more minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the sieve test with its bag first: this belongs to a sieve test.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thoroughness of sieving bag %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Empty jug</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weighed dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jug with grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>poured loosely, struck off level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled once more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>emptied and poured again; may stay empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The jug holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by weighing it full of water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worked in, it fills</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read at the mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read at the mark; may stay empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moisture of the grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the dry mass; empty: dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soaked, dabbed dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after 24 h under water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jug with water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filled to the mark, no grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jug, water and grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to the same mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dried grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the same grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of shaking, or of freezing and thawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rounds that make a season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>empty: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sieved again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the pan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what went onto the stack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fell through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all sieves together, in one more minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the mix, straight walls</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Litres of mix in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by a water fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>empty: to the pot&apos;s fill line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Empty pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with mesh and wire</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flooded, sealed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slowly from below; may stay empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drained</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>half an hour, level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry, with the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the same mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water poured in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>until a shiny film stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water caught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>half an hour later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep a mix first: a pot test is a test of a mix.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Receive a bag first: what is measured is kept with its bag.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Ranges</name>
    <message>
        <source>5, 50 and 95 of 100 cases: up to %1, %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same verdict in %1 of 100 cases.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Screening</name>
    <message>
        <source>Weighed so far: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighed %1: %2 more than went in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighed %1, lost %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish the sieve test first: the fractions are predicted from it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the openings to screen at; the verdict names none.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Shelf</name>
    <message>
        <source>%1, to buy</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Surroundings</name>
    <message>
        <source>used ground of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mix %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TestSheet</name>
    <message>
        <source>pan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sieve, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stayed on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>passing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sieve test of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sample %1, dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loss %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sieve test</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Verdict</name>
    <message>
        <source> and </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it after screening at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other use, or complain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fraction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from a litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from a bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D50</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>screen at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>usable</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dust in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>good enough</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laboratory figures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the sieves do not reach far enough</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curvature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fineness modulus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean, phi</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sorting, phi</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Skewness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kurtosis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price of a usable litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the sheet belongs to no bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>price or litres of the bag are not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in the wanted band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no wanted grain is typed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the sieves do not reach the ends of the band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No verdict: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the band, by mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coarser</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usable of a litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>VerdictText</name>
    <message>
        <source>see the marked cells and fields</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the sieve test is not finished</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::BagsPage</name>
    <message>
        <source>F&amp;ind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag, material or lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Material</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Material of the bags to receive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Receive bags</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Receive bags of this material</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No bags yet. Choose a material and receive the first ones: the lot, how many, their litres or weight. Grading them is one click from here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bags</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fractions in stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter puts the fraction into the mix.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Grade this bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grade this bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take into stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take into stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meas&amp;ure...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure this bag: litre weight, grain density, water, crumbling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of bag %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as marked on the bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Number of bags</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of this lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Printed size, from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>provisional until the lot is sieved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>printed size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printed size, to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the coarse end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Litres in one b&amp;ag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loose, as printed or measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Weight of one bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as bagged; kg can be typed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bag was weighed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as bagged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air-dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>oven-dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weighing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moist&amp;ure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water per dry mass, as bagged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moisture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Litre weight, &amp;dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured on this lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>litre weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grain densit&amp;y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grain density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price of one &amp;bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in your money</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Currency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>your word for it; after the price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>currency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Received on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a day like 2026-03-14</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>anything worth knowing next year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Received bag %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag %1 stays: tests, mixes or the stock name it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag %1 removed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag %1 taken into stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left: %1 of dry grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of dry grain, not in stock yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left: – (type the weight of a bag, or its litres and the litre weight)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::BandRow</name>
    <message>
        <source>wanted band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wanted grain, from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finest size wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coarsest size wanted</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::CautionBar</name>
    <message>
        <source>Got it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put away the caution: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ComparisonView</name>
    <message>
        <source>Mixes side by side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air %1, water %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mixes compared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop comparing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the bench</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::DayPage</name>
    <message>
        <source>Dust and lifting.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screen damp, outdoors, with a mask; from 16 kg lift with two or use a trolley, less at arm&apos;s length. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No repotting day yet. Make one, then put trees on it: their litres, what to screen, buy and mix, and what is heavy follow by themselves. The season tells which trees are due.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trees of the day in working order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space ticks a tree off; plan, litres, buds, helper and note are written into the table.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the day takes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Litres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screen and buy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lists</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repotting day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make a new repotting day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tree to put on the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put on the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put this tree on the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order of work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>buds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>helper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Work by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How so?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the figures of the day come about</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick off what has litres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick off every tree whose litres were written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day sheet...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch cards...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot labels...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Root plans...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write as PDF: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a day like 2027-03-14</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stands on the sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tub</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no batch is larger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tub</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scoop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>struck off level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scoop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>empty: as learnt, else none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>settling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>empty: as learnt, else 7 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weather, helpers, what to do better</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the plan from the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take pot litres from the tree&apos;s newest root-mass plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take off the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take this tree off the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mix of this tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot of this tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New mix in the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as it lies; empty: all the pot holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If it goes worse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new mix of the worst fall-back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fall-back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept root mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weighed with what clings to it; kg can be typed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept root mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find parts from stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a recipe from what is on the shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The evening before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the morning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What follows from the figures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space ticks, F2 changes a line, Delete takes it away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one more line, then Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One more line: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was made and what is left of a mix: the left-over becomes a tub in stock, and what was spilt teaches the next day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mix that is left over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made in all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return to stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return the left-over to stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trees due by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a day like 2027-06-30</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Season sheet...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the season as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of repotting day %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of tree %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>litres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>repotting day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut wire and mesh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label the old pots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>repotting day %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This day stays: trees were ticked off on it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>repotting day %1 removed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no further tree to put on the day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tree %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tree %1 is done; take its tick back first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tree %1 taken off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tree %1 has no root-mass plan that can be worked out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No open tree has its litres written under “poured in”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tree %1 can&apos;t be ticked off yet: see its note.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done: %1. Undo gives all back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done: %1. By the books %2 is below nothing: count it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write what was made and what is left first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More can&apos;t be left over than was made.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In stock: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2 (%3 of %4 done)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no trees yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all are on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put trees on the day first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To buy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For each tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 to mix; settling %3, spill %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 by what was used: %2, the median of the last %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heaviest: %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Short of grain: see “Screen and buy”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the books %1 is below nothing: count it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 trees done, sheet revision %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>likely: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No tree chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, deleted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No tree is due by then, as far as the record knows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trees that are due and can&apos;t be added up yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the day adds up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>batch cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pot labels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>root plans</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing to print yet: put trees with mix and pot on the day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Root-mass plans</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No tree of the day has a root-mass plan in the record.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::DayRoom</name>
    <message>
        <source>Repotting da&amp;y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+N</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Put the tree on the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the tree o&amp;ff the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+R</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take its plan &amp;from the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+G</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Tick the tree off, or back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+K</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick off &amp;what has litres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+E</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+S</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Remove the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+Shift+Delete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Day sheet as PDF...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Batch cards as PDF...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot &amp;labels as PDF...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Root pla&amp;ns as PDF...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+O</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::DayTreesModel</name>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ticking a tree off takes its grain from the stock and writes its history and the log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the plan to follow; after the work, the one that was followed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>main mix as it lies in the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before settling and spill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to pour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scoops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>litres that were poured in; they teach settling and spill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>poured in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>buds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>helper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::FieldForm</name>
    <message>
        <source>%1 in %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::FigurePanel</name>
    <message>
        <source>How so? Formula, numbers and source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: not computed, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing is known of its range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: no range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, in 90 of 100 cases: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How so: %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::FindPanel</name>
    <message>
        <source>%1 to %2, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wanted grain, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dust, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air in pot, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water in pot, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for plants, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet litre, g/L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>exchange, meq/L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>price of a litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>curve within</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>curve near</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>share of the mass inside the wanted grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>share of the mass that is dust, finer than the size below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>share of the pot that drains free after a flood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>share of the pot that holds water after draining</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>share of the pot whose water plants can take</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mass of a litre, drained</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cation exchange capacity of a litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of a mixed litre, in your own currency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>percent passing between limits at sizes you give</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>percent passing to come near to at sizes you give</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More: wishes, limits and the grain to choose from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Group of trees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wishes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dust is finer than</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>size of dust</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 mm, less in very small pots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mixed litres needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>litres needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one filling: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one filling of the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Components, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>components of a recipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 to 6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whole parts to scoop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>free shares</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recipes in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whole parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts in all, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>parts of a recipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 to 20</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Good in this pot too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>further pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grain to choose from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stock, L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>price/L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>most %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep for this group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start this group with these wishes from now on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>group of trees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wishes for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A container given as a table of areas is read by the command line only, for now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pot %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wish: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 as a candidate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose a group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as typed under Pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose a pot, or type its lengths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no further pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 deep to the fill line, %2; wanted grain and litres below are for this pot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 must hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sizes in mm with percent passing: 4.75 90-100; 2.36 34-50</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sizes in mm with percent passing: 4.75 95; 2.36 42</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stock, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (not sieved)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of it are reserved for a mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See the marked fields under “More”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the share of a candidate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” cannot be had: nothing on the shelf comes near it, and so no mix does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a group first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type its lengths under “By hand”, or choose one of the record.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::GradingChart</name>
    <message>
        <source>Grading chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 passes</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::GrainForm</name>
    <message>
        <source>none: own figures only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Material</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Material</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>material</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (typical)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Litre weight, dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>litre weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grams of one loosely poured litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weigh a litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gr&amp;ain density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grain density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry mass of the grain with its inner pores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soli&amp;d density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>solid density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry mass of the solid without pores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Water after 24 h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water absorption</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water in the soaked, surface-dry grain, of its dry mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Typical figures stand in for what is not measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a material the litre weight must be weighed before the component can go into the mix.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::JumpBox</name>
    <message>
        <source>Go to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag, mix, tree or what to do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>like K-07, or pumice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What fits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing fits</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::LogPage</name>
    <message>
        <source>Log, newest first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F&amp;ind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>any word of the log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;About</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a bag, mix or tree, like K-07</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day, like 2026-03-14</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day, like 2026-04-30</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>like 2026-03-14</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Write down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what you saw or did; with About above it is kept there too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep this line in the log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it is linked to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing called %1; the whole log is shown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is no day like 2026-03-14.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a bag, mix or tree into About to see where its grain went and what stands in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Linked to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fraction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sieve test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pot test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>repotting day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>container</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line in the log</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::LotChart</name>
    <message>
        <source>No lots to compare: type the wanted grain, and grade bags of one material.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n lot(s), oldest first; the last, %1: %2.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A usual range needs %n earlier lot(s).</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>All within what is usual.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outside what is usual: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>usual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dust, size, yield and air from lot to lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unusual</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::MainWindow</name>
    <message>
        <source>Gritwright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record could not be opened, so this page is empty; what lies on the bench is kept all the same. Close other programs that use the file, or open a backup, and start again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bags</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sieving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mixes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pots and trees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repotting day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bench cleared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open sieve tests...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open &amp;container...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+O</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Demonstration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the &amp;picture or its data...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+E</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P&amp;rint the test sheet...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test s&amp;heet as PDF...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+P</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Q</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Z</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Redo:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+Z</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Copy cells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Paste into the stack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;lear cells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New sieve above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Remove sieve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Delete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Component</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Next component</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+PgDown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Previous component</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+PgUp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add a component</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+N</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Remove this component</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+Delete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Further sample of this bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the &amp;last sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Any bag, mix or action...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+K</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Sieve test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;urve of this test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Lot to lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Verdict on the bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;creen this bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curves of the &amp;mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot in s&amp;ection</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Litres &amp;in and out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+7</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mi&amp;xes side by side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+8</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find par&amp;ts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+7</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Recipes found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+8</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trade-&amp;offs of the recipes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+9</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot tests against the p&amp;redictions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+9</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Wanted grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures as &amp;tables</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+T</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Whole curve again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+9</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;US units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+U</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colours of the s&amp;ystem</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;High contrast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Larger te&amp;xt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;maller text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Normal text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Manual: this page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;ontents of the manual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+F1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The &amp;three doors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+F1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show &amp;cautions again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift+F1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;About Gritwright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+F1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About Gritwright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gritwright %1: grading, mixes and pots for trees in shallow containers.

Free software under the GNU General Public License, version 3 or later, without any warranty.
Estimates are general information; where a figure matters, measure it in a pot test.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture (*.png);;Drawing (*.svg);;PDF (*.pdf);;Its data (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be written: is its ending png, svg, pdf or csv, and the folder yours?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test sheet as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sieve test.pdf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gritwright – demonstration, an invented nursery</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Demonstration: everything here is invented and goes when this window is closed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The demonstration can&apos;t be opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>demonstration opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open sieve tests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sieve tests (*.csv *.json);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open container</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Containers (*.json);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was not opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A mix here has up to %1 components; remove one first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A container given as a table of areas is read by the command line only, for now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>container opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottom layer and top dressing of the file are not on this form and were left out.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ManualPage</name>
    <message>
        <source>Search the manual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one word or several</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the work (Esc)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chapters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text of the chapter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in no chapter</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>in %n chapter(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::MeasurePage</name>
    <message>
        <source>Measurement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot of the test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the &amp;pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dust, heat and weight:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry dusty grain outdoors with a mask; let hot dishes cool; lift wet pots with both hands. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep what was measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep what was measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mi&amp;x</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Bag or mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>straight walls: type depth and litres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Complete: keep it, and the estimates use it from now on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is that right?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::MixPage</name>
    <message>
        <source>Mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name of the mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what it is for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep this mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep this mix in the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ways to a mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dust and moss:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet the grain before mixing it, and keep long-fibred moss off your skin and out of your lungs. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot tes&amp;t...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot test: measure air and water of a kept mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot in section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Litres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trade-offs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot tests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures of the mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What would narrow it most?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worked out as soon as the mix stands still.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mind: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::Navigation</name>
    <message>
        <source>Pages</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PartsBar</name>
    <message>
        <source>No mix yet: finish the sieve tests and give them parts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>voids between grains</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>voids in grains</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>solid grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In go %1; out come %2 mixed, of which %3 once settled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, loose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mixed, poured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, settled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Litres in and litres out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In: %1 loose, each by itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Out: %1 mixed; what fills it once settled</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PartsPanel</name>
    <message>
        <source>Components, in parts of loose litres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>parts of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>component %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the sheet of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts of %1, slider</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A mix here has up to %1 components.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Component %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new component</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 removed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PictureTabs</name>
    <message>
        <source>As a table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures as tables</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, as a table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As a picture</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PotDrawing</name>
    <message>
        <source>rim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fill line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pot to scale, from the front and from above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inside %1 by %2 at the rim, %3 by %4 at the floor, %5 deep, filled %6.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pot yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rim %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>floor %1, depth %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from above, %1 wide</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PotForm</name>
    <message>
        <source>Shape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rectangle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>oval</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hexagon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>octagon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drum, lip turned in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rectangle with soft corners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bowl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sha&amp;pe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shape of the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rim, length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rim of the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inside, at the rim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rim, diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rim, across flats</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rim, &amp;width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rim width of the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Middle, diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>middle of the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inside, at half the depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Base, length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>base of the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the rim: straight walls</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Base, diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Base, across flats</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Base, wi&amp;dth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>base width of the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corner e&amp;xponent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corner exponent of the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2 an ellipse, 4 soft corners, 6 nearly square</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dep&amp;th inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depth of the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>floor to rim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F&amp;ill line below rim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fill line of the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice: 0.3 to 1 cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>W&amp;ater fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water fill of the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured; overrides the lengths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mou&amp;nd above it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mound of the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rise in the middle; none if empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sa&amp;ucer water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>saucer of the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>standing water above the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wic&amp;k or ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wick of the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>length below the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ti&amp;lt, degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tilt of the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about the length; level if empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wo&amp;rking in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>settling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lost volume: 0 poured, about 8 worked in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Spill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mix that misses the pot, 5 to 10</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PotSectionView</name>
    <message>
        <source>grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trapped air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air that drains free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pot yet: type its shape and inside lengths.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot in section, filled %1 deep; no mix yet, so no water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot in section, filled %1 deep: the lowest %2 stay wet; water %3 at the floor and %4 at the fill line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot in section; up and down change its depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag the rim, or press Up and Down, to try another depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet zone %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filled %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depth inside %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depth of the pot</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PotsTab</name>
    <message>
        <source>%1 of pot %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pot by number or name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pots yet. Add one and measure its inside: length and width at the rim and at the floor, and the depth.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>free or taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a &amp;pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>given away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as you call it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rectangle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>oval</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hexagon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>octagon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drum, lip turned in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rectangle with soft corners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bowl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>table of areas</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Shape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>broken, sold or given away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whereabouts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rim, length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inside, at the rim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rim, diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rim, across flats</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rim, width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rim width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Middle, diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inside, at half the depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>middle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor, length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the rim: straight walls</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor, diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor, across flats</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor, width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>floor width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corner exponent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2 an ellipse, 4 soft corners, 6 nearly square</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corner exponent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heights and areas</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cm and cm2 from the floor: 0 450; 4 520; 8 600</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Depth inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>floor to rim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corner radius</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sharp corners if empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corner radius</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rounding at the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>radius between floor and wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rounding at the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill line below rim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice: 0.3 to 1 cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fill line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Water fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>poured or weighed to the fill line; overrides the lengths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottom layer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coarse grain on the floor; none if empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bottom layer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top dressing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice: 0.3 to 0.5 cm; none if empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top dressing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own &amp;mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>empty and dry; for lifting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drain holes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how many</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drain holes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height under the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No&amp;te</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>glaze, chips, where it stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture of the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pot to scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pot added</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot %1 stays: a tree&apos;s history or a day names it. Mark it as given away instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pot %1 removed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to the fill line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by its lengths alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water fill against lengths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no water fill was measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>main mix, without layers</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ProtocolDrawing</name>
    <message>
        <source>How it is done: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecipesPanel</name>
    <message>
        <source>Recipes, best first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the search has come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enough</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop searching and show what was found so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recipes %p %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the nearest recipe %p %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>contradictions %p %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep as a mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the chosen recipe as a mix, and lay it on the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep and reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the chosen recipe as a mix, and reserve its grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search again to the end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Still wanted: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A marked field on the left has to be put right first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The inputs changed: what is shown in grey answers the question before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Searching the shelf.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No recipe holds every wish that must hold; the nearest is shown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n recipe(s), best first.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>its grain is kept for this mix in later searches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the litres that are needed are not known</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordBook</name>
    <message>
        <source>Undone: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordForm</name>
    <message>
        <source>%1 in %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordListModel</name>
    <message>
        <source>%1, %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fraction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what happened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>received</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sieve tests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left, dry</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordListSide</name>
    <message>
        <source>F&amp;ind</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordPages</name>
    <message>
        <source>Rec&amp;ord</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Receive bags</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+R</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Grade this bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+G</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Put this grain into the mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+M</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take into stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+T</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measur&amp;e this bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Pot test of a mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re&amp;move this bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+R</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add a tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+T</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a p&amp;ot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+P</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan the root mass of this tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+J</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove this tree, pot or plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+Delete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep the sieve test with its bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+S</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the &amp;fractions of the screening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+K</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the mi&amp;x</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+M</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Write down in the log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F&amp;ind on this page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo in the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+Z</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re&amp;do in the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+Shift+Z</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save a &amp;copy of the record...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+S</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grain of %1 as measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Z</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+Z</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo in the record: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re&amp;do in the record: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fraction %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bin %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>used ground of %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mix %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wishes for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A search for %1 starts with these wishes from now on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sieves of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the material on the Grain tab first: a bag is of some material.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sieve test of bag %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Graded bag %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sieve test is kept with its bag once the pan is typed and no fault is left; until then it stays on the bench.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag %1 has this sieve test already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Kept %n sieve test(s) with bag %1.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Weigh every fraction first, then they can be kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the sieve test with its bag first: fractions come from a bag.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>screening of bag %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screened bag %1. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>screening kept of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The fractions of bag %1 are in stock.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no mix to keep yet: finish the sieve tests and give them parts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the mix a name first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This mix is kept already, as %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mix %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept mix %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept as %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>found mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found mix %1, %2, and reserved its grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found mix %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept as %1 and laid on the bench.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept as %1; the bench holds %2 components, so it was not laid there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mix %1 opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No bag stands behind %1: its sheet is empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save a copy of the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gritwright records (*.gritwright)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A checked copy lies in %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RootPlanDesk</name>
    <message>
        <source>%1 of root-mass plan %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 into %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>root-mass plan of tree %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>place of the tree</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RootPlanTab</name>
    <message>
        <source>&amp;Tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tree to plan for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Begin a plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin a plan for this tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Root-mass plans</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plan by number or name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No plans yet. Choose a tree above and begin one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts of the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Root mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May come off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Species group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gro&amp;up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot it goes into</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Into &amp;pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Form of the root mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as its present pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>upright elliptic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rounded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Root mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Present pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>present pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Root mass, length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left to right, from the old front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Root mass, width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front to back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Root mass, height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>underside to surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Roundness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2 an ellipsoid, 4 a box with soft edges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trunk base, right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the root mass&apos;s middle; empty: middle of its top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trunk base, back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>behind its middle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trunk base, up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over its underside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New mix at the side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wanted; empty: 5 % of the length, 0.5 to 2 cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New mix below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wanted; empty: 15 % of the depth, 0.5 to 1.5 cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn, degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the new front; from right toward back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>may be turned by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>degrees either way, to fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tip, degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0 to 90</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tip toward, degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0 right, 90 back, 180 left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tip at least, degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>empty: it may be set upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trunk base stands right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the pot&apos;s middle; empty: root mass in the middle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trunk base stands back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the pot&apos;s middle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trunk base over floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>empty: at its least height over the soil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trunk base over soil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least; the trunk is never buried</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it is cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>along the pot&apos;s wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>straight, as a saw goes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cut style</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0: nothing, a structural root; empty: not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, combed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depth without a cut; empty: not combed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the root mass; empty: the group&apos;s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Untouched, at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken off, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free pots of the library</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave them out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>try them where this pot is too small</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>free pots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free pots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the cut stopped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut stopped, from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It stopped at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depth from the farthest point, like 3 cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped there: plan the rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear what was stopped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stopped cuts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures of the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the side and above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sho&amp;w plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write into &amp;history</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done: write this plan into the tree&apos;s history</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Print...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print the root-plan sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PD&amp;F...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the root-plan sheet as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Root-plan sheet as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>root plan %1.pdf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lifting, blades, moss.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two people or a trolley for a heavy pot; cut away from the hand; gloves for sphagnum. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If the upper surface stops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>upper cut stops at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trunk base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>untouched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>root mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stopped cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer could not be reached.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>repotting of tree %1 by plan %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written into the history of tree %1; the mix is added on the Trees tab.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no tree yet: add it on the Trees tab.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tree %1 has no species group, so what it bears is not known: choose its group on the Trees tab.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan %1 stays: a tree&apos;s history or a day names it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>root-mass plan %1 removed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, as it was</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: stopped at %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>comb the %1 %2 deep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take %1 off the %2 (now %3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stand the trunk base %1 over the floor, %2 right and %3 back of the middle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>put it back into its old pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan %1: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fits as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plan %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plan %1, in stages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corners %1 of the root mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing limits the fit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What limits the fit: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 longer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 wider</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 deeper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest change of the pot that would fit: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan %1 in figures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stays untouched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new mix, as it lies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>soil line over the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new mix, of the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shoulder over the soil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in one go</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RootPlanView</name>
    <message>
        <source>taken off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept root mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>untouched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bottom layer, dressing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shoulder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>soil surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>old right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>old left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>old back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>old front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>old top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>old bottom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>move the tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turn it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tip it less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sink it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>raise it to the soil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>build a shoulder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take another pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in stages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plan from the side and from above; arrow keys move the tree, Page Up and Page Down raise and sink it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No plan yet: choose a tree and begin one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan %1 goes in stages: %2 comes off now and the tree goes back into its old pot, so there is no picture of the new one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan %1: %2 is taken off, %3 stays untouched, the trunk base stands %4 over the floor and the soil line lies at %5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag the tree in either picture, or use the arrow keys, Page Up and Page Down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>combed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the root mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trunk base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right of the middle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>behind the middle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the trunk, over the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over the soil</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ScoreView</name>
    <message numerus="yes">
        <source>predicted %1 points too low on average, %2 points root mean square, %n test(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>predicted %1 points too high on average, %2 points root mean square, %n test(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>No pot test to compare yet. A pot test of a kept mix shows how far off the estimate of its air was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drained air: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fine, up to %1: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coarse: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pot test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>predicted air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>points off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coarse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot tests: predicted against measured air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fine grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coarse grain</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ScreeningPanel</name>
    <message>
        <source>&amp;Keep these fractions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screen at, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>openings to screen at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the verdict says; or type 6.3 2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry grain screened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grain screened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all that is left of the bag; kg can be typed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fractions, predicted and measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type what each fraction weighed, and its litres, into the last two columns.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep these fractions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lifting:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a full bag is heavy; lift from the knees, or screen it in two halves. General information; qualified advice prevails.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mass of the fraction %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>litres of the fraction %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fraction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>share</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>predicted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>litres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weighed, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh every fraction first</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SectionView</name>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the system</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A change holds from the next start. Every translation is a draft, not yet read by a native grower.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>metric: litres, millimetres, grams</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>US: quarts, inches, ounces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>high contrast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show laboratory figures beside the verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backups folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beside the record; a change holds from the next start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the backups folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sieves you own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One set a line, its openings in mm or by name, apart by blanks: 8 5.6 4 2.8 2 1.4 1. They are offered on the Sieving page, and “which openings?” chooses among them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sets of sieves you own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>openings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a set of sieves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>my sieves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set of sieves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set of sieves %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SheetEditor</name>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag, lot or material</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Sample, dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sample mass of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weighed before sieving; shows the loss</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sample %1, dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mass of sample %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a further sample of the same bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by mass, net</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by gross and tare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by litres, a bag by bucket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the fractions are measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>way of measuring %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sample 1: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sample %1: sum %2, loss %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sample %1: sum %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sum %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing weighed yet: the curve grows as you type.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sum and loss: – (see the marked cells)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; type the sample mass or the pan to see the curve.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the pan to see the curve.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, still in the stack %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured in litres: no mass balance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, loss – (no sample mass)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, gain %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, loss %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SieveTable</name>
    <message>
        <source>Sieve stack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One sieve a row, coarse to fine, the pan last. Type what stayed on; Enter goes to the next pan.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SieveTableModel</name>
    <message>
        <source>pan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sieve %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sieve, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gross, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stayed on, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tare, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>net</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sample 2, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sample 3, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>passing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sieve %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sample %1 on %2 of %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pan mass of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mass on %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing to paste: no rows of numbers on the clipboard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paste into %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Pasted %n row(s).</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>further sample of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sample %1 of %2 removed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new sieve of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sieve %1 of %2 removed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SievingPage</name>
    <message>
        <source>Sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sieves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dust:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sieve dry grain outdoors, wind behind you, with a mask (P2 or N95 at least, P3 or P100 for grit and sand); clean with a damp cloth, not a broom. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is typed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sieve test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot to lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures of the sieve test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What follows for the bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screen this bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none, or choose one to grade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as typed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TradeOffView</name>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What air costs in water, and fit in money</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air that drains free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Score, lower fits better</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>price of a mixed litre</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TreesPage</name>
    <message>
        <source>Pots and trees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Root-mass plans</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TreesTab</name>
    <message>
        <source>thriving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>watch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bottom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>conifer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deciduous conifer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deciduous, developing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deciduous, refined</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>broadleaf evergreen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>acid lover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tropical</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sick tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>freshly collected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>imported</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of tree %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tree by number, name or species</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No trees yet. Add the first: its species and group, then what it was last repotted into.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a t&amp;ree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Root-mass p&amp;lan of this tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Root-mass plan of this tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as you call it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Species</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as far as you know it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>species</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Species group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what the tree bears when it is repotted goes by its group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not chosen yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gro&amp;up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Since the year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sown, struck or collected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trunk &amp;width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the base, over the roots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trunk width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trunk base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trunk base, right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the root mass&apos;s middle, from the old front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trunk base, back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>behind its middle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trunk base, up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over the root mass&apos;s underside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>without ground and pot; for lifting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready when</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as buds swell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>window</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Window opens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>month and day, like 03-01</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Window closes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>month and day, like 04-20</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next repotting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a day like 2027-03-15; by interval if empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>files by reference, apart by ;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a photo...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a photo by its file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No&amp;te</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>anything worth knowing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it did</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the tree did, newest first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day it was seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>like 2026-03-14</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it was</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>looked at for repotting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Da&amp;y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it was</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>colour, buds, water that stands, roots at the hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down what was seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repottings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repottings, newest first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>combed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bare-rooted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>removed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>untouched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day of the repotting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>like 2024-03-14</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot it went into</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mix it stands in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note on the repotting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what was cut, what was found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down a repotting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inspection</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>condition</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>repotting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.webp *.heic);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tree added</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tree %1 stays: plans, days or the log name it. Write down that it is dead instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tree %1 removed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tree %1, %2 years</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tree %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next repotting: %1, as you set it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next repotting by the group&apos;s interval: from %1, by %2 at the latest (common practice; look at it first).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next repotting: – (it has no last repotting, or its group has no interval)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next repotting: – (choose its group and write down the last repotting)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::VerdictPanel</name>
    <message>
        <source>What screening there gives</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which openings? From the sieves of this test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which openings? From the sieves you own</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::WelcomePage</name>
    <message>
        <source>From a weighed sieve sample to a mix in a pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type what stayed on each sieve, blend the bags, set the container: read how much air and water the mix holds in it, and how many litres of each to measure out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the demonstration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An invented nursery in a window of its own: bags, sieve tests, a mix for pines. Closing it throws it away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record a sieving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An empty stack of sieves, ready to type into.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Describe a container</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shape and inside lengths: its volume at once, air and water when there is a mix.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>profiles</name>
    <message>
        <source>very small trees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>small trees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>conifers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>conifers, large or collected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deciduous, developing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deciduous, refined</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deciduous conifers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>evergreen broadleaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>acid lovers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tropicals</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>report</name>
    <message>
        <source>the grain would hold {held_percent} % of its volume in water and has {pores_percent} % of pores: was it dabbed dry on the outside, and is the density right?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the grain took up {percent} % of its dry mass; few kinds of grain do: was it dabbed dry on the outside?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>likely below {percent} % air in season {season} if the crumbs stay among the grain: a hint for the next repotting, an estimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>likely below {percent} % air in season {season} if the crumbs wash down to the floor: a hint for the next repotting, an estimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the new mix already has less than {percent} % air in this pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the years to come are an estimate: frost, watering and repotting habits differ, and roots lower the air further</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how long this grain lasts is not known; it is taken as not breaking. A crumble test would tell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tilt and bottom layer are left out of the years to come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the test and the usual values are far apart, so neither is trusted as far as it claims: the range is {factor} times as wide; repeat the test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no k between 2 and 40 cm mm gives the measured {capacity_percent} % of water; {k_cm_mm} comes nearest: look at the weights, the volume and the grading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the two depths together ask for k {k_cm_mm} and w {grain_fill}, which is more scatter than mix; they were weighed against the usual values instead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>only {percent} % of the voids between grains filled when flooded; was it flooded slowly from below, after a day&apos;s soak?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the flooded weight asks for {percent} % of the voids between grains; look at the volume, the particle density and the dry mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>without the mix only what was measured is told; give &quot;mix&quot; or --mix to learn from it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>without the pot&apos;s shape or depth there is nothing to compare with; give &quot;container&quot;, &quot;depth_cm&quot; or --pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the measured bulk density leaves {voids_percent} % of voids between grains, which grain does not do; the predicted voids were used instead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the grain came out coarser than it went in: was it the same handful, and was nothing lost?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the crumbled grading is {points} points off any even breaking; the figures are rough</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the two sievings have no two sieves in common</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the number of rounds is missing or not above 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a particle density of {density_g_l} g/L is above that of its solid, {solid_g_l} g/L; look at the weights and at the mark on the jug</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a particle density of {density_g_l} g/L is unusual for grain; look at the weights, and was all air let out from between the grains?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the grain displaces no water; look at the three weights</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the dry grain outweighs the soaked grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the soaked grain is lighter than water ({density_g_l} g/L): hold it under with a sieve, or its volume comes out too small</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a mass is missing or not above 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a fraction needs the opening it stayed on, the one it fell through, or both</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{density_g_l} g/L is unusual for grain; look at the weights and at the volume of the jug</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the filled jug weighs no more than the empty one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the grain lost {percent} % of its volume when worked in; 5 to 13 % is usual: was it filled loosely?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the grain fills more after working in than before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the jug would hold {voids_percent} % of voids between grains of {density_g_l} g/L, which loose grain hardly does; look at the volume and at the particle density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the volume is missing or not above 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fineness modulus reads {aperture_mm} mm off the curve, that sieve was not used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fineness modulus is not defined: {percent} % is finer than the finest sieve, {finest_mm} mm, and it asks for {aperture_mm} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} % stayed on the coarsest sieve, {aperture_mm} mm; the fineness modulus counts none of it on coarser ones</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a laboratory figure without a value needs a size outside the sieves used; nothing is extrapolated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by {count} of your pot tests: k {k_cm_mm} cm mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pot tests were made with another mix than this one; what they teach holds for this one only as far as the grain is alike</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air and water are by {count} of your own pot tests of mix {mix}, the last is {test}: k {k_cm_mm} cm mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by {count} of your pot tests ({dates}): k {k_cm_mm} cm mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no rigid grain: the packing model is less certain for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the exchange capacity is not known, so the mix has none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the mix has no components</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the particle density is not known: the mix has mass shares and grading only, no volumes and porosities</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all components have 0 parts; give one of them a part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the skeletal density is not known: total porosity counts only the pores that take up water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} % is finer than {aperture_mm} mm and taken as grain of {size_mm} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the particle density implies a solid of {density_g_l} g/L, outside {low} to {high}: look at it again, or give the skeletal density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the parts add up to {sum}: if they were meant as percent, something is missing or counted twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a settling of {percent} % leaves no voids; the grain alone allows {most_percent} %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a settling of {share} can&apos;t be; expected 0 to below 1, the share of the volume lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the skeletal density of {density_g_l} g/L is outside {low} to {high}: look at it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{sources} sources stand beside {components} components; each component has one, or none has</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a spill of {share} can&apos;t be; expected 0 to below 1, the share of the mix that misses the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the mix swells by {percent} %: it takes more room than its components apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} % is coarser than {aperture_mm} mm and taken to end at {top_mm} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>figures that were not given are typical values of the catalogue, not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weigh a litre of the {component}: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sieve the {component} three times more: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measure the particle density of the {component} by displacement: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fill the pot with water and weigh it: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>make a pot test of the mix: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>see in a jug how far the mix settles: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>soak the {component} for a day and weigh it surface-dry: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} % of air is unusual; was it drained level for half an hour, and is the volume right?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a bulk density of {density_g_l} g/L is unusual; look at the tare and the volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} % of water after draining is unusual; look at the weights and the volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{caught_ml} mL ran out of {poured_ml} mL poured in; count all the water from the dry mix on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a depth of {depth_cm} cm can&apos;t be; expected more than 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a mass of {mass_g} g can&apos;t be negative</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{mass_g} g can&apos;t be: {what} weighed {least_g} g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{caught_ml} mL were caught but only {poured_ml} mL poured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the volume of the mix is not known; give volume_ml, a container in the file, or --pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>neither a flooded nor a drained mass is given; expected one of flooded_g and drained_g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there are no tests; expected one or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} % filled when flooded is unusual; look at the weights and the volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pot is given twice; expected one of container and depth_cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a volume of {volume_ml} mL can&apos;t be negative</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a volume of {volume_ml} mL can&apos;t be; expected more than 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>masses and poured water are mixed; expected one or the other for each test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{higher_g} g is not above {lower_g} g; expected tare, dry, drained, flooded in rising order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no verdict on {from_mm}-{to_mm} mm: the sieves of the test don&apos;t reach both ends</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>litres are taken in proportion to mass; screened grain lies looser, so they come out a little low</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what the screening keeps is {percent} % in the band, {finer_percent} % finer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} % is 1-2 mm: good for very small pots and for top dressing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grain of {size_mm} mm is coarser than the 15 mm the model was made for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above 2 mm ({size_mm} mm here) the estimate is good to 3.5 points at best; a pot test makes it better</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a tenth of the mix is {size_mm} mm or finer; dusty mixes are out of the model&apos;s range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{fines_percent} % is finer than the last sieve; fines wash down and clog, so the air shown is too high</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the sizes leave a gap and the fine part is {fines_percent} %; fine grain fills the voids of the coarse, so the air shown is too high</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bottom layer&apos;s grain is not known; the water is computed as if the mix reached the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the figures describe the new mix after soaking and draining; watering a dry pot from above reaches less (about half the rise), and roots and breakdown lower the air with time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grain of {size_mm} mm holds a wet zone of about one grain or less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>organic, fibrous or soft grain is out of the model&apos;s range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value} can&apos;t be; expected {low} to {high}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the wet zone would reach {perched_cm} cm, above the fill line at {depth_cm} cm: the whole pot stays wet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a table of areas has no outline; tilted, a round one is assumed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the band ends at {to_mm} mm, which is not above {from_mm} mm where it starts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the name {name} is used twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{low} is negative; a catalogue figure is not</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the material has no name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the figure names no source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the range runs from {low} down to {high}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the share {high} is above 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>references.json lists no source called {source}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} is not known for {key}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no figure uses the source {source}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value} lies outside its own range {low} to {high}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the unit is {unit}; expected {expected}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the absorption fills {water_percent} % of the grain, which has {pores_percent} % pores; look at the absorption and both grain densities</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an absorption of {ratio} can&apos;t be; expected 0 or more, kg of water per kg of dry grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the dry bulk density {bulk_g_l} g/L is not below the particle density {particle_g_l} g/L; loose grain has voids</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the dry bulk density {bulk_g_l} g/L is not below the skeletal density {skeletal_g_l} g/L; loose grain has voids</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an exchange capacity of {cec_meq_100g} meq/100 g can&apos;t be; expected 0 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grain of one size has no pan and no top class; leave this out or give a grading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a density of {density_g_l} g/L can&apos;t be; expected more than 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} % moisture can&apos;t be; expected 0 or more, water per dry mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the sieve test {file} can&apos;t be read from here; give the grading itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the grain sizes are missing; give grading, class_mm or sieve_test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an open share of {share} can&apos;t be; expected 0 to 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the particle density {particle_g_l} g/L is above the skeletal density {skeletal_g_l} g/L; the solid alone is at least as dense as the grain with its pores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{parts} parts can&apos;t be; expected 0 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a grain size of {size_mm} mm can&apos;t be; expected more than 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the grain sizes are given in more than one way; give one of grading, class_mm and sieve_test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no material called {name} in the catalogue; nearest: {nearest}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the area is {area_cm2} cm2; it must be above 0 (only the floor may be a point)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the area is {area_cm2} cm2; expected at most a square of ten metres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the corner radius {radius_cm} cm is more than half of the shorter side ({limit_cm} cm)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a corner radius belongs to a rectangular container; the other shapes have none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a soft-cornered rectangle needs its exponent (2 is an ellipse, 4 a rectangle with soft corners)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the exponent is {exponent}; expected at most {limit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the exponent is {exponent}; it must be 1 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the exponent {exponent} differs from {other}; a container has one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fill line lies {freeboard_cm} cm below the rim, but the container is only {depth_cm} cm deep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fillet radius {radius_cm} cm leaves no floor; at most {limit_cm} cm fits here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this shape has no edge between floor and wall for a fillet; a bowl and a table of areas already hold the curve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} drain holes can&apos;t be; expected 0 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bottom layer and top dressing together take {layers_cm} cm of the {filled_cm} cm filled; nothing is left for the mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the length is {length_cm} cm; it can&apos;t be negative</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the length is {length_cm} cm; it must be above 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the length is {length_cm} cm; expected at most {limit_cm} cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the length is {length_cm} cm; expected at least {limit_cm} cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the mass is {mass_kg} kg; it can&apos;t be negative</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a drum needs its diameter at half the depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the profile has no areas; give height_cm and area_cm2 from the floor to the rim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the table of areas ends at {height_cm} cm, below the rim at {depth_cm} cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the table of areas starts at {height_cm} cm; the first row is the floor at 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the height {height_cm} cm follows {before_cm} cm; heights must rise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the table of areas has {rows} rows; at least two are needed, floor and rim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the tilt is {tilt_deg} degrees; expected 0 to 60</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{form} is no form of a mound; expected paraboloid, cone or ellipsoid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{shape} is no shape; expected rectangular, oval, round, hexagonal, octagonal, drum, superellipse, bowl or profile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{axis} is no axis to tilt about; expected length or width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the volume is {volume_ml} mL; it must be above 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the volume is {volume_ml} mL; no container holds that</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with {diameter_cm} cm at half the depth the walls would meet; check the three diameters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the column {column} stands twice in the header</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the header has no column {column}; expected aperture_mm with retained_g, with gross_g and tare_g, or with retained_l</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no header line; expected aperture_mm,retained_g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a quote opened here and is never closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a row follows the pan (line {pan_line}); the pan is the last row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{found} cells stand here; the header has {expected} columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no column called {column}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} is not a day; expected a date like 2026-03-14</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is damaged; it was not changed. Restore the newest good backup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the disk is full; nothing of this change was written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is empty; expected a sieve test, a mix or a container</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is no longer where it was opened; save a copy of what is open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is a folder; name a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another program holds the workbook; try again in a moment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is not there or can&apos;t be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the workbook was written by a newer Gritwright (version {version}, known here: {known}); open it for reading only, or update</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the folder with the reference materials was not found; set GRITWRIGHT_DATA to the folder that holds materials/</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a file is asked for, but its name is empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is no Gritwright workbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file or its folder can&apos;t be written to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is larger than {limit_mb} MB; a sieve test or a mix is a few kilobytes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file made trouble: {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reading stopped half-way; nothing was done with the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>writing failed; nothing of this change was kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the format is {found}; expected {expected}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an opening of {aperture_mm} mm can&apos;t be; give the free opening of the sieve in mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm after {before_mm} mm is out of order; write a grading coarse to fine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the grading has no points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pan size {size_mm} mm has to lie above 0 and not above the finest sieve, {finest_mm} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{coarser_percent} % passes {coarser_mm} mm but {finer_percent} % the finer {finer_mm} mm; passing never falls as the opening grows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} % passing is outside 0 to 100</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>passing ran from {low_percent} to {high_percent} % and was rescaled to 0-100 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the top size {size_mm} mm has to lie above the coarsest sieve, {coarsest_mm} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file ends before its JSON does; a bracket, a quote or a value is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is not JSON from here on: {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brackets are nested deeper than {limit} levels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file holds more than {limit} values; it is no file of this kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the key {key} stands twice; give it once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the key {key} is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no key called {key}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the two results lie {percent} % apart, {usual_percent} % is usual; measure a third time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} has a decimal comma; write a point, or separate the columns by ; or tab</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a number is missing here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} is not a number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} is too large to be a measured value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} is too small to be a measured value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{unit} is no unit known here; leave it out or write one that fits the field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the schema refers to itself without end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no schema called {schema}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this fits none of the allowed forms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} is not one of the allowed values</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value} is beyond the limit {limit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this fits more than one of the allowed forms; exactly one must fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least {least} are needed here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the schema uses {keyword}, which is not checked here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>expected {expected} here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name at least one opening to screen at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{aperture_mm} mm is above the coarsest sieve of the test, {coarsest_mm} mm; how the grain above that is spread is assumed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{aperture_mm} mm is below the finest sieve of the test, {finest_mm} mm, and {percent} % is finer than that: test with a finer sieve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an opening of {aperture_mm} mm can&apos;t be; expected more than 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm is named twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bulk and particle density are not both known: litres rest on a packing density of {packing_density} for one size of grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a sharpness of {sharpness} can&apos;t be; expected more than 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the set has no sieve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm follows {before_mm} mm; sieves run coarse to fine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm follows {above_mm} mm; sieves run from coarse to fine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm stands twice; each sieve counts once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no starting mass was given: the percentages refer to the {mass_g} g recovered, and a loss would not show</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bulk density {bulk_g_l} g/L is above the particle density {particle_g_l} g/L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured in litres: shares of loose volume stand for shares of mass, as if every fraction lay equally dense</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} % crumbs can&apos;t be; expected 0 to 100</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a sieve of {diameter_mm} mm has no sieving area; give the diameter of the frame in mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fractions outweigh the sample by {percent} %; the balance&apos;s resolution explains it, the percentages bear it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} % of the sample was lost while sieving; above 0.3 % a laboratory would repeat the test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} % of the sample was lost while sieving, more than 1 %: look for a spilled or forgotten pan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a mass of {mass_g} g can&apos;t be; expected 0 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the same fraction is given in more than one way; give its mass, its gross and tare, or its litres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>masses and litres are mixed; measure all fractions in one way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pan is missing; the last row holds what fell through the finest sieve, 0 if nothing did</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no sieve; expected at least one row above the pan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing was left on the sieves or in the pan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{mass_g} g lay on the {aperture_mm} mm sieve, which sieves well up to {limit_g} g; sieve in two goes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} % is finer than the finest sieve, {aperture_mm} mm; a finer sieve would show where the dust begins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not defined: {list}; {percent} % passes the coarsest sieve, {aperture_mm} mm, and nothing is extrapolated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not defined: {list}; {percent} % is finer than the finest sieve, {aperture_mm} mm, and nothing is extrapolated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} can&apos;t be the number of a test; expected 1 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a resolution of {mass_g} g can&apos;t be; expected 0 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a sample of {mass_g} g can&apos;t be; expected more than 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{mass_g} g is a small sample for grain of {size_mm} mm; take {least_g} g or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{mass_g} g is a small sample for grain of {size_mm} mm if it is stone; take {least_g} g or more, or give the particle density of light grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fractions add up to {sum_g} g, the sample is {sample_g} g; the balance explains {explained_g} g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the tare of {tare_g} g is above the gross mass of {gross_g} g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there are more than {limit} rows; this is no stack of sieves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} % stayed on the coarsest sieve, {aperture_mm} mm; what needs its size takes it to end at {top_mm} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} is no basis; expected original or recovered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a volume of {volume_l} L can&apos;t be; expected 0 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{washed_g} g after washing is more than the {dry_g} g before it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the mass after washing needs the dry mass before washing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at {aperture_mm} mm the tests run from {least_percent} to {most_percent} % passing; careful repeats stay within {limit_points} points nineteen times of twenty: the samples differ</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the tests share no range of sieves, so they can&apos;t be pooled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no sieve test to pool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a test was measured in litres, so each counts the same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} % of the sample still fell through in one more minute, 0.5 % is the limit: shake on, unless the grain is soft and breaks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this byte is not UTF-8; save the file as UTF-8</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is a NUL byte here; this is not a text file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} bags can&apos;t be; expected 1 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>breakages below 0, or a modulus or rounds in a season not above 0, can&apos;t be</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the price {amount} is negative</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in whole scoops a batch is up to {percent} points off the recipe; a smaller scoop or a larger tub keeps it closer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume_ml} mL can&apos;t be filled in; expected 0 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about {mass_kg} kg when full and wet: lift it by two or use a trolley (general information; safety sheets, local codes and qualified advice prevail)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least {mass_kg} kg when full and wet, not all of it weighed: lift it by two or use a trolley (general information; safety sheets, local codes and qualified advice prevail)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an interval of {years} years can&apos;t be; expected 1 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume_l} L of a layer are not counted as any grain; name its grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a mass of {mass_kg} kg can&apos;t be; expected 0 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the mix was deleted after the day was planned; the day keeps it as it was then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the mix was changed after the day was planned; the day keeps version {version}, the newest is {newest}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the mix {text} is named twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{left_l} L are left of {made_l} L made; nothing was used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no bag size is known, so bags can&apos;t be counted; {raw_l} L of raw grain are needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>neither fill_ml nor a pot says how much mix the tree takes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no settling is given; litres are as poured, and worked in they lie about 8 % lower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no spill is given; 5 to 10 % beside the pot is common</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the day has no trees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} is no month and day; expected the like of 03-15</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>expected a whole number, found {value}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{day} lies outside the tree&apos;s window, {opens} to {closes}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{reserved_l} L of it are promised to other days, so that {short_l} L are short here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the scoop of {scoop_l} L is larger than the tub of {tub_l} L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>settling {percent} %, the median of the last {count} trees filled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{short_l} L of ready grain are short; that is {raw_l} L of raw grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spill {percent} %, the median of the last {count} batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume_l} L on the shelf can&apos;t be; expected 0 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how much of it is left is not known; enough was assumed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the tree {text} stands twice in the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a bag of {bag_l} L was assumed, as is usual for the material</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no yield was measured; {percent} % usable was assumed, where a tenth to a third of a bag is commonly lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} is no species group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the day has no mix called {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the work can&apos;t be ordered by {text}; expected bud, mix, helper or name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the day has no pot called {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} is no time of the day; expected evening or morning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{version} can&apos;t be; expected 1 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>without a root-mass plan all the pot holds was counted, {volume_l} L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>screened grain has no yield; leave one of the two out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a yield of {share} can&apos;t be; expected more than 0 and at most 1.2, litres for each litre screened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an aperture of {aperture_mm} mm can&apos;t be; expected more than 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the band runs from {from_mm} to {to_mm} mm; expected the finer size first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recipes of {value} components can&apos;t be searched; expected 1 to {most}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the search for contradictions was stopped after {seconds} s; the sets shown cannot hold, but there may be smaller ones and more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>here only wishes on gradings and shares of volume are searched for contradictions, three at a time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the wish names more than one figure; make a wish of each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>free shares are improved from a fixed set of starts; a better recipe may exist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value} can&apos;t be; expected 0 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value} can&apos;t be reached; expected {low} to {high}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the limits run from {low} down to {high}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value} L are needed; expected more than 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>expected at least one aperture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is nothing to mix; expected 1 to 40 candidates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the wish names nothing; give one of limits, nearest, band, finer_than_mm, air_filled_porosity, container_capacity, available_in_pot, wet_mass_g_l, cec_meq_l, price_per_l, share</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing is asked for; give a lower limit, an upper limit or both</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{key} is false; leave the wish out or write true</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the space of {recipes} recipes is too large to walk whole; the best score may be lower by up to {gap}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value} is no whole number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the stock of every candidate is 0, so all are excluded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no recipe of whole parts is within the stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} can&apos;t be read; expected a size in mm and percent passing, such as 4.75 90-100, with ; between points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a price of {value} can&apos;t be; expected 0 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a price of 0 as upper limit leaves no scale to measure a miss by; expected more than 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none of the {recipes} recipes scores less; of those that score the same a cheaper or simpler one may exist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>was not tested at {aperture_mm} mm, which a wish reads; its pan or its coarsest class stands in for what is not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no candidate was tested at {aperture_mm} mm; the curves are not extrapolated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a stock of {value} L can&apos;t be; expected 0 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>has no particle density, so the litres it takes are not known; recipes with it count as beyond the stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there are {count} candidates; at most {most} are searched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there are {count} wishes; at most {most} are weighed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a total of {value} parts can&apos;t be searched; expected 1 to {most}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no pot called {pot} among the pots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no candidate has the name or family {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a weight of {weight} can&apos;t be; expected 0 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wish number {wish} cannot hold: every candidate lies beyond its limits on the same side, and so does every mix of them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file can&apos;t be written; look whether the folder is there and has room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another {kind} {id} is here already; nothing was taken in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the {kind} {id} stands twice in this file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>names {text}, which is not in the workbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what this list holds can&apos;t be told from its columns; name it with --kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the entry says nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this must be above 0; leave it out if it is not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a name is missing here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the root-mass plan is empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} names no record; expected kind and id like bag:K-07</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} holds no grain; expected a bag, a bin, a fraction or a batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} is no whole number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the sizes run from {from_mm} mm down to {to_mm} mm; expected the finer first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} is no kind of record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} is not known here; expected one of {expected}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the tree {text} stands twice on this day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>acid lovers bear one of base, sides or surface at a repotting; this plan works more than one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an angle of {angle_deg} degrees can&apos;t be; expected {low_deg} to {high_deg}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the tree was bare-rooted last time; not at every repotting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deciduous conifers stand between: bare-rooted with care, an older tree keeps a core</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>refined trees lose fine twigs when bare-rooted: work edges and base, a sector at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this group is not bare-rooted: keep the core</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how much room the bare roots take is not known; the fill is for the whole pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bare-root tropicals only while they grow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a clearance of {clearance_cm} cm leaves no room; the pot allows less than {limit_cm} cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>freshly collected: trim torn ends only, then leave it for 2-3 years</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>combing {depth_cm} cm deep goes past the middle; at most half the block, {limit_cm} cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>conifers: bottom and one half, never all sides; the other half a year or two later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a conifer is never bare-rooted; comb one half and the bottom, the other half in a later year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a corner would have to be shaved where nothing may come off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the direction {direction} stands twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an exponent of {exponent} can&apos;t be; expected 1 to 100 (2 is an ellipsoid, 4 a box with soft edges)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>only a rounded block has an exponent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the old face {face} stands twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what lies behind this face is not known; the plan takes {depth_cm} cm off it, the next plan is for when that proves impossible</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>imported: leave it until it grows strongly, then go by its own group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{years} years can&apos;t be; expected 1 to 100</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to fit, {percent} % would have to come off in all; more than 70 % is never advised, not in stages either: a larger pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it would fit, but more would come off, or less stay untouched, than the group bears</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the root mass takes more than the pot holds beside it ({volume_ml} mL are left); look at its lengths and at what was displaced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>between the lowest level {lowest_cm} cm and the fill line {highest_cm} cm is no room for a root mass; make layer, clearance or freeboard smaller</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pot chosen is too small; it fits the free pot {pot}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} % comes off; the group bears {limit_percent} %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} % comes off; more than 70 % is never advised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a share of {share} can&apos;t be; expected 0 to 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the root mass stands {rise_cm} cm over the soil: build it up with sphagnum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a shoulder would be steeper than 35 degrees between rim and root mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sick: dead and rotten roots come off, no healthy one; clean tools, throw the old ground away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in one go: this year these cuts and back into the old pot, the rest after {years} years</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in one go: these cuts and back into the old pot, the rest when the tree has recovered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after everything that may be done the root mass still sticks out {excess_cm} cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a table of areas has no outline; a round one is assumed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the least tip {angle_deg} degrees is above the tip {tip_deg} degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a tip of {angle_deg} degrees lays the tree down; look at what becomes the new surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the trunk base can&apos;t be at {length_cm} cm; expected {low_cm} cm to {high_cm} cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the trunk base would be buried where it was placed; it was raised to the soil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the wall turns in: roots fill the belly, and later the tree comes out only by cutting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no group {group}; expected one of {expected}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} % stays untouched; the group wants {limit_percent} %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>neither a due day nor a last repotting with an interval says when it is due; it is not counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no tree is due by {until}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the books have {mass_g} g; count what is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a count needs what was found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>litres need the bulk density they were turned into grams with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>litres of {id} can&apos;t be turned into grams: no bulk density of it is known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>give grams or litres of {id}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{change_g} g does not suit the reason; what goes away is negative</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no tree is marked sick; name the trees to compare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} is no month and day; expected 03-14</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} stands behind {before}; repottings run from the oldest to the newest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the share is {share}; expected 0 to 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today&apos;s backup could not be made ({reason}); what you write is saved all the same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stopped; nothing was written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the workbook was changed elsewhere meanwhile; look at it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the clock of this machine stands before the last entry ({time}); entries keep their order all the same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is the workbook itself; choose another name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the workbook&apos;s file is damaged; restore the newest good backup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{id} may be {text}; write the kind in front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the {kind} {id} exists or existed; an id is never used again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the workbook lies in a network folder: it is saved more slowly there, and only one person should work in it at a time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the workbook lies in a folder that another program copies elsewhere: let the copying finish before it is opened on another machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the lists disagree with the {kind} {id} itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another window has the workbook open, so its way of saving ({mode}) could not be changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the workbook was brought to version {version}; a backup was made before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the workbook was not there and a new one was made, but there are backups of one of that name; restore the newest if it went missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no {kind} {id}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is nothing to redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is nothing to undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file or its folder can&apos;t be written to; the workbook is open for reading only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the workbook is open for reading only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>would be refused today ({reason})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the {kind} {id} can&apos;t be read from the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the {kind} {id} was changed elsewhere meanwhile; look at it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another window was quicker; the last step is now: {label}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(flooded - dry) / volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(flooded - drained) / volume: what drained; trapped air is not in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(drained - dry) / volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(theta_0 - water in the grains) / voids between grains</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the k whose container capacity is the measured one; the water in the grains is known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least (CC - measured)^2/0.02^2 + (ln(k/k0)/0.24)^2 + ((w - w0)/0.15)^2 over k and w</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>k and w that give the capacities measured at two depths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(fill + reserve) / ((1 - settling)(1 - spill)); reserve = the two largest differences to a worse plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>settling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needed x loose share / (1 - shrinkage)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>component</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shrinkage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gives</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ready / yield</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yield</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>raw litres / litres of a bag, rounded up; raw = short / yield</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>material</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet mix + kept root mass + tree + pot + layers; wet mix = fill x (bulk density + 1000 g/L x container capacity)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a part not weighed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out, and the mass is said as at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tub of {mix}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least {mass}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} bags</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repotting day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{title}, sheet revision {revision}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{title}, {day}, sheet revision {revision}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{mix} version {version}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{from} to {to}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{figure} typical</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set out {raw} of {bag} for {component}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screen {raw} of {bag} at {band} for {component}, gives {ready} ({yield})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screen {raw} of {bag} for {component}, gives {ready} ({yield})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{yield}, typical: measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Buy {bags} of {material}, short of {short} ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Buy {bags} of {material} of {volume} (typical), short of {short} ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Buy {bags} of {material} of {volume}, short of {short} ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{line}, price {price}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Buds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Helper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scoops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done: plan, litres, note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Litres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quarts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the pots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mixes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The reserve covers the two trees of each mix that would take most if they go worse. Left over mix goes back to stock as a tub of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To have ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fraction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usable</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Material</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Short of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Buy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To buy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>may be: look at it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trees due by {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wants</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no day yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bags that several days want</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full and wet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{lift}: two people or a trolley</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dust: dry grain can hold respirable silica. Screen batches damp, outdoors with the wind behind, with a mask (P3 or P100 for silica, P2 or N95 at least); clean with a wet cloth or an H-class vacuum, never a broom.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lifting: from about 16 kg use two people or a trolley, less at arm&apos;s length. &quot;At least&quot; means that not all of it was weighed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moss: sphagnum can carry a skin infection (sporotrichosis); gloves protect.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bark and potting media can carry Legionella: wet gently without spray, mask and gloves, open the bag away from the face, wash hands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vermiculite from old or unknown bags: some held asbestos. Leave it closed, do not sieve it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Perlite: wet it before pouring.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>General information; the products&apos; safety sheets, local codes and qualified advice prevail.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pot of {tree}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet the grain, so that it is damp and makes no dust</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut mesh and wire for 1 pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut mesh and wire for {count} pots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set out cutters, hooks, sticks, sealing paste, disinfectant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mix {batches} of {mix}, {litres} in all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mesh over the holes, wire for the tie-down, bottom layer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tie the tree down, work the mix in, leave no hollows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water until the outflow runs clear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Disinfect the tools before the next tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Afterwards: shade, no frost, no fertiliser for 3 to 6 weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} trees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The evening before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the morning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trees in working order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For each tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take care</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{trees} due by {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} scoops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{mix}, batch {number} of {count}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gives {litres} of mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One scoop is {litres}, struck off level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For {trees}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mixed, at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>made ________, left over ________</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plan {plan}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sum of weight (points missed)^2 over soft wishes; points: percent of the mass, 100 x shares, 20 g/L, 5 meq/L, 5 % of a price limit; limits and gradings by root mean square over their apertures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>score, price (unpriced last), fewer components, names, smaller total, larger parts in the order of the names; a recipe is listed if some component differs by 10 points of loose volume from every better one listed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>examined + excluded = all recipes; a recipe is excluded only if a lower bound of its score, or a hard wish, puts it behind the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>100 (start - washed out - recovered) / start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recovered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loss</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ASTM C136-19: more than 0.3 % is not for acceptance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sum of what came off the sieves and the pan / (1 + moisture)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ASTM C566, the form, from memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the starting mass, before washing, or what was recovered and washed out; crumbs taken off; dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ASTM C136-19; crumbs: Folk, Petrology of Sedimentary Rocks, p. 32</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>100 x mass retained / base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>100 (1 - cumulative mass retained / base); cumulative masses are divided, rounded shares never added</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ASTM C136-19: the base is the original dry mass, before washing, unless the test says recovered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>size at a percent passing, linear in log10(size) between the two sieves around it; never extrapolated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>share that stays on an opening a: G = 1 - exp(-ln 2 (x/a)^s), integrated over each class on log size; two cuts in series multiply; the pan passes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>100 x mass of the fraction that is finer than each sieve / mass of the fraction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(mass share / packing density of the fraction) / (1 / packing density of the bag)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>size at a percent passing, linear in log10(size) between the two sieves around it; never extrapolated; the curve of a mix is the sum of its components&apos; curves by mass share</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>passing at the band&apos;s coarse end - passing at its fine end, by mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>passing at the band&apos;s fine end, by mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>openings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept, by mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take: in_band and finer within their limits; take after screening: usable within its limit; else other use or complain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>band, its ends at the sieves of the test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least in_band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>most finer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least usable</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>docs/science/grading.md; the limits are our assumption</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 - passing at the band&apos;s coarse end, by mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loose litres of the fraction that is kept, per loose litre of bag; by mass share where packing is unknown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>price / (litres x usable litres of a litre)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>litres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>usable of a litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>100 (passing at the coarse end - passing at the fine end), read linear in log10(size) between sieves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>share</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sum of cumulative percent retained on 0.150, 0.300, 0.600, 1.18, 2.36, 4.75, 9.5, 19.0, 37.5, 75, 150 mm / 100</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fineness modulus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(f16 + f50 + f84) / 3, phi = -log2(d/mm), percentiles counted from the coarse end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>docs/science/calibration.md, bulk density by jug</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>docs/science/calibration.md, particle density by displacement; the form of ASTM C127, from memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>docs/science/ageing.md, crumble test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>jug</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moisture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(with grain - jug) / (1 + moisture) / volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>worked in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(with grain - jug) / (1 + moisture) / volume worked in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 - volume worked in / loose volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>soaked, dabbed dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>jug with water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>jug with water and grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>soaked / displaced water, displaced = jug with water + soaked - jug with both, 1 g is 1 mL</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry / displaced water, displaced = jug with water + soaked - jug with both, 1 g is 1 mL</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(soaked and dabbed dry - dry) / dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>docs/science/calibration.md, absorption; the form of ASTM C127, from memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>share of the mass that left its class: 1 - e^-breakages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least squares of passing after, by Poisson&apos;s law of breakages and fragments (x/L)^modulus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>miss</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the fragments: finer than x is (x/L)^modulus; the smaller, the dustier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>breakages per round x rounds in a season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rounds in a season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what fell through in one more minute / sample; thorough below 0.5 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fell through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sum of the dry masses / volume of the settled mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(1 - voids between grains) x mean porosity of the grains, 1 - particle/skeletal density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>voids between grains</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>voids between grains + voids in grains</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>between</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(1 - voids between grains) x sum of the water the grains hold: by the water absorption where it is known, else w of the open grain pores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sum over components of mass share x CEC in meq/100 g x 10 x bulk density in kg/L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bulk density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>m_k = v_k rho_b,k; the grading of the mix is blended by these shares</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>parts / sum of parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sum over components of mass share x passing, each curve read linear in log10(size) on its own sieves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E_k / sum E, E_k = mass / particle density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as passing, by envelope share</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the packing density all classes of a component share for which the model gives back the component&apos;s own phi = dry bulk / particle density: V = min over i of (1/phi - G_i)/(1 - F_i - G_i), beta = 1/V</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1/phi = max over i of U_i (linear dominant class with wedging), each component with the one class beta that gives back its own packing density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yu, Zou &amp; Standish 1996; Kwan, Chan &amp; Wong 2013 (from memory); ±1.5 points of voids</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>V = sum E/phi of the parts taken as litres, E = loose litres x dry bulk / particle density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 - V/sum v, with V = sum E/phi</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 - phi/(1 - settling)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sum m / sum (m / particle density)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>particle density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sum m / sum (m / skeletal density)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>skeletal density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height of the fill line over the floor: depth - freeboard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filled depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean of theta(z) over the pot, theta(h) = theta_r + (f phi_v - theta_r) mean_j [1 + (h d&apos;_j/k)^n]^-(1-1/n) + water in grains</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>docs/science/water.md; constants fitted to 29 clean sands of UNSODA 2.0; above 2 mm ±.035 at best, wants a pot test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>capacity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water in grains</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>theta at no suction: f of the voids between grains + water in grains</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>theta at a suction of 10 cm of water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>theta at a suction of 50 cm of water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>De Boodt &amp; Verdonck 1972, from memory; docs/science/water.md</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all open voids, between and in grains, - container capacity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air that drains</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trapped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>container capacity - theta(50)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open voids - theta(0): gas a flood does not reach, and grain pores it does not fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>total air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air that drains free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height over free water up to which the pores stay nine tenths full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>volume of the mix x (bulk density + 1000 g/L x container capacity)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>integral of A(z) from the floor to the fill line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>area at the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>area at the fill line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A(z) of the shape at eleven equal heights from the floor to the fill line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>area halfway up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the water fill overrides the lengths; A(z) is scaled by their ratio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the lengths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>component = mixed litres x share / (1 - shrinkage), mixed litres = fill / ((1 - settling)(1 - spill)), fill = volume + mound - bottom layer - top dressing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bottom layer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top dressing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>floor to fill line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water poured or weighed to the fill line; the area at every height is scaled to it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>integral of the inside area from the floor to the fill line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water fill / volume by the lengths - 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>volume + mound - bottom layer - top dressing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan {plan}, from the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan {plan}, from above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>soil line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>farthest any point of the posed root mass passes the allowed space in a direction, at that point&apos;s height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>share of the root mass still outside after the straight cuts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 - kept/root mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>root mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept points farther than the working depth from all that is removed, deeper than combed, connected to the trunk base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>root mass - kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fill line + mound at the trunk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fill line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pot to the fill line + mound - layers - kept root mass under the soil - trunk and stones</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pot, mound, less layers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept under the soil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trunk and stones</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rise over the soil &lt;= level run to the inner rim x tan 35 degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>old right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>old left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>old back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>old front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>old top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>old bottom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What limits the fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing: the root mass fits as it is posed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Toward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sticks out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After straight cuts {share} of the root mass still stick out at corners.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{length} to the right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{length} to the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{length} to the back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{length} to the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the middle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{one} of the middle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{one} and {other} of the middle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comb the {face} {depth} deep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take {depth} off the {face}, which points {direction}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put the tree back into its old pot; the rest after 1 year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put the tree back into its old pot; the rest after {count} years</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put the tree back into its old pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trunk base {place}, {height} over the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{stand}, turned {angle}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{stand}, tipped {angle} toward {toward} (from the pot&apos;s right to its back)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Build the shoulder with sphagnum, {height} over the soil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan {plan}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Into another free pot: {pot}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Untouched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soil line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mix in the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The upper cut stops at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trunk base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{stop}, then it does not fit: stage it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If the cut from above comes to an end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Root-mass plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Root-mass plan, into its pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Root-mass plan, into {pot}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{title}, root-mass plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To scale: hatched comes off, grey stays</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean tools for each tree. Some part of the root mass stays untouched; what is combed through is disturbed even where soil clings to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Common practice, general information; qualified advice prevails.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
