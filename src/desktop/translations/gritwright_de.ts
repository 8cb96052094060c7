<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Ageing</name>
    <message numerus="yes">
        <source>Likely not below %1 air within %n season(s).</source>
        <translation>
            <numerusform>Wahrscheinlich nicht unter %1 Luft in %n Saison.</numerusform>
            <numerusform>Wahrscheinlich nicht unter %1 Luft in %n Saisons.</numerusform>
        </translation>
    </message>
    <message>
        <source>Likely below %1 air in season %2: a hint for the next repotting, an estimate.</source>
        <translation>Wahrscheinlich unter %1 Luft in Saison %2: ein Hinweis für das nächste Umtopfen, eine Schätzung.</translation>
    </message>
    <message>
        <source>Likely below %1 air in season %2 if the crumbs stay: a hint for the next repotting, an estimate.</source>
        <translation>Wahrscheinlich unter %1 Luft in Saison %2, wenn die Krümel bleiben: ein Hinweis für das nächste Umtopfen, eine Schätzung.</translation>
    </message>
    <message>
        <source>Likely below %1 air in season %2 if the crumbs wash down: a hint for the next repotting, an estimate.</source>
        <translation>Wahrscheinlich unter %1 Luft in Saison %2, wenn die Krümel hinuntergespült werden: ein Hinweis für das nächste Umtopfen, eine Schätzung.</translation>
    </message>
    <message>
        <source>The years to come need a mix with known grain densities and a pot.</source>
        <translation>Die kommenden Jahre brauchen eine Mischung mit bekannten Korndichten und eine Schale.</translation>
    </message>
    <message>
        <source>The years to come are being worked out.</source>
        <translation>Die kommenden Jahre werden berechnet.</translation>
    </message>
    <message>
        <source>Air in this pot, the middle of the cases: %1 when new; after %2 seasons %3 (%4) if the crumbs stay, %5 (%6) if they wash down. %7</source>
        <translation>Luft in dieser Schale, die Mitte der Fälle: neu %1; nach %2 Saisons %3 (%4), wenn die Krümel bleiben, %5 (%6), wenn sie hinuntergespült werden. %7</translation>
    </message>
    <message>
        <source>By your own crumble test: %1.</source>
        <translation>Nach dem eigenen Zerfallstest: %1.</translation>
    </message>
    <message>
        <source>By the catalogue’s typical durability: %1.</source>
        <translation>Nach der üblichen Haltbarkeit des Katalogs: %1.</translation>
    </message>
    <message>
        <source>season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>air, crumbs stay</source>
        <translation>Luft, Krümel bleiben</translation>
    </message>
    <message>
        <source>90 of 100 cases</source>
        <translation>90 von 100 Fällen</translation>
    </message>
    <message>
        <source>air, crumbs wash down</source>
        <translation>Luft, Krümel gespült</translation>
    </message>
    <message>
        <source>finer than %1</source>
        <translation>feiner als %1</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>The new mix already has less than %1 air in this pot; a coarser mix or a deeper pot has more.</source>
        <translation>Schon die neue Mischung hat in dieser Schale weniger als %1 Luft; eine gröbere Mischung oder eine tiefere Schale hat mehr.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
</context>
<context>
    <name>Application</name>
    <message>
        <source>Grading, mixes and pots for trees in shallow containers</source>
        <translation>Körnung, Mischungen und Schalen für Bäume in flachen Gefäßen</translation>
    </message>
    <message>
        <source>Open the demonstration.</source>
        <translation>Die Vorführung öffnen.</translation>
    </message>
    <message>
        <source>Write pictures of the window to DIR and end.</source>
        <translation>Bilder des Fensters nach DIR schreiben und beenden.</translation>
    </message>
    <message>
        <source>With --shots: also high contrast, other window and text sizes.</source>
        <translation>Mit --shots: auch hoher Kontrast, andere Fenster- und Schriftgrößen.</translation>
    </message>
    <message>
        <source>The record to open instead of the usual one.</source>
        <translation>Die Aufzeichnung, die statt der üblichen geöffnet wird.</translation>
    </message>
    <message>
        <source>Language of the window: de, en, es, fr or ja.</source>
        <translation>Sprache des Fensters: de, en, es, fr oder ja.</translation>
    </message>
    <message>
        <source>A record to open instead of the usual one, or sieve tests.</source>
        <translation>Eine Aufzeichnung statt der üblichen, oder Siebanalysen, die geöffnet werden.</translation>
    </message>
    <message>
        <source>What lies on the bench could not be saved: look whether the disk is full.</source>
        <translation>Was auf dem Arbeitstisch liegt, konnte nicht gespeichert werden: prüfen, ob der Datenträger voll ist.</translation>
    </message>
</context>
<context>
    <name>BagMaterial</name>
    <message>
        <source>material of bag %1</source>
        <translation>Material von Sack %1</translation>
    </message>
</context>
<context>
    <name>BenchState</name>
    <message>
        <source>Component %1</source>
        <translation>Bestandteil %1</translation>
    </message>
    <message>
        <source>Predicted, in percent of the mass; nothing is weighed yet. Sieve it and type what stays on each sieve: then it can be kept and printed as a test.</source>
        <translation>Vorhergesagt, in Prozent der Masse; gewogen ist noch nichts. Absieben und eingeben, was auf jedem Sieb bleibt: Dann kann es aufbewahrt und als Siebanalyse gedruckt werden.</translation>
    </message>
</context>
<context>
    <name>Comparison</name>
    <message>
        <source>Nothing to compare yet: keep a mix, or finish the one on the bench.</source>
        <translation>Noch nichts zu vergleichen: eine Mischung aufbewahren oder die auf dem Arbeitstisch fertigstellen.</translation>
    </message>
    <message>
        <source>%1 holds %2 air and %3 water</source>
        <translation>%1 hält %2 Luft und %3 Wasser</translation>
    </message>
    <message>
        <source>%1 without a pot</source>
        <translation>%1 ohne Schale</translation>
    </message>
    <message>
        <source>In one pot, %1 deep: %2.</source>
        <translation>In einer Schale, %1 tief: %2.</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>Mischung</translation>
    </message>
    <message>
        <source>air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>finer</source>
        <translation>feiner</translation>
    </message>
    <message>
        <source>litre weight</source>
        <translation>Litergewicht</translation>
    </message>
    <message>
        <source>D50</source>
        <translation>D50</translation>
    </message>
    <message>
        <source>90 of 100</source>
        <translation>90 von 100</translation>
    </message>
    <message>
        <source>%1 (by pot test %2)</source>
        <translation>%1 (nach Schalentest %2)</translation>
    </message>
    <message>
        <source>%1 (leaning on pot test %2)</source>
        <translation>%1 (gestützt auf Schalentest %2)</translation>
    </message>
    <message>
        <source>plants can take</source>
        <translation>für Pflanzen</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>gewünscht</translation>
    </message>
    <message>
        <source>pot tests</source>
        <translation>Schalentests</translation>
    </message>
    <message>
        <source>leaning on %1</source>
        <translation>gestützt auf %1</translation>
    </message>
</context>
<context>
    <name>DayCertainty</name>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>mix or loose grain</source>
        <translation>Mischung oder loses Korn</translation>
    </message>
    <message>
        <source>mix %1</source>
        <translation>Mischung %1</translation>
    </message>
    <message>
        <source>How sure are the litres? 90 of 100 cases</source>
        <translation>Wie sicher sind die Liter? 90 von 100 Fällen</translation>
    </message>
    <message>
        <source>How sure is that? 90 of 100 cases</source>
        <translation>Wie sicher ist das? 90 von 100 Fällen</translation>
    </message>
    <message>
        <source>to buy</source>
        <translation>zu kaufen</translation>
    </message>
    <message>
        <source>bags of %1</source>
        <translation>Säcke von %1</translation>
    </message>
    <message>
        <source>litres of %1</source>
        <translation>Liter von %1</translation>
    </message>
    <message>
        <source>%1 may run short: in %2 of 100 cases.</source>
        <translation>%1 kann knapp werden: in %2 von 100 Fällen.</translation>
    </message>
</context>
<context>
    <name>DayGround</name>
    <message>
        <source>is no longer in the record: take it off</source>
        <translation>steht nicht mehr in der Aufzeichnung: herausnehmen</translation>
    </message>
    <message>
        <source>has no mix yet: choose one</source>
        <translation>hat noch keine Mischung: eine wählen</translation>
    </message>
    <message>
        <source>has neither a pot nor planned litres: give one of them</source>
        <translation>hat weder eine Schale noch geplante Liter: eines davon angeben</translation>
    </message>
    <message>
        <source>has a mix that can&apos;t be found: choose another</source>
        <translation>hat eine Mischung, die nicht zu finden ist: eine andere wählen</translation>
    </message>
</context>
<context>
    <name>DayTicking</name>
    <message>
        <source>Repotted %1 with %2 of %3</source>
        <translation>%1 mit %2 von %3 umgetopft</translation>
    </message>
    <message>
        <source>, into %1</source>
        <translation>, in %1</translation>
    </message>
    <message>
        <source>, plan %1</source>
        <translation>, Plan %1</translation>
    </message>
    <message>
        <source>ticked off %1</source>
        <translation>%1 abgehakt</translation>
    </message>
    <message>
        <source>Took the tick of %1 back</source>
        <translation>Haken von %1 zurückgenommen</translation>
    </message>
    <message>
        <source>tick of %1 taken back</source>
        <translation>Haken von %1 zurückgenommen</translation>
    </message>
    <message>
        <source>Made %1 of %2, %3 left over, kept as %4</source>
        <translation>%1 von %2 hergestellt, %3 übrig, aufbewahrt als %4</translation>
    </message>
    <message>
        <source>Corrected: %1</source>
        <translation>Berichtigt: %1</translation>
    </message>
    <message>
        <source>tick of %1 corrected</source>
        <translation>Haken von %1 berichtigt</translation>
    </message>
    <message>
        <source>day of repotting day %1</source>
        <translation>Datum von Umtopftag %1</translation>
    </message>
    <message>
        <source>What was done on %1 was done on %2</source>
        <translation>Was für den %1 eingetragen war, wurde am %2 getan</translation>
    </message>
    <message>
        <source>leftover of %1</source>
        <translation>Rest von %1</translation>
    </message>
</context>
<context>
    <name>Demonstration</name>
    <message>
        <source>demonstration</source>
        <translation>Vorführung</translation>
    </message>
</context>
<context>
    <name>Figures</name>
    <message>
        <source>see the marked fields</source>
        <translation>siehe die markierten Felder</translation>
    </message>
    <message>
        <source>see the marked fields of the pot</source>
        <translation>siehe die markierten Felder der Schale</translation>
    </message>
    <message>
        <source>Grain of the mix</source>
        <translation>Körnung der Mischung</translation>
    </message>
    <message>
        <source>D50, half is finer</source>
        <translation>D50, die Hälfte ist feiner</translation>
    </message>
    <message>
        <source>D10</source>
        <translation>D10</translation>
    </message>
    <message>
        <source>D90</source>
        <translation>D90</translation>
    </message>
    <message>
        <source>D60/D10</source>
        <translation>D60/D10</translation>
    </message>
    <message>
        <source>Finer than it</source>
        <translation>Feiner als dieser</translation>
    </message>
    <message>
        <source>Mix, worked in</source>
        <translation>Mischung, eingearbeitet</translation>
    </message>
    <message>
        <source>Swells on mixing by</source>
        <translation>Quillt beim Mischen um</translation>
    </message>
    <message>
        <source>Shrinks on mixing by</source>
        <translation>Schwindet beim Mischen um</translation>
    </message>
    <message>
        <source>Litre weight, dry</source>
        <translation>Litergewicht, trocken</translation>
    </message>
    <message>
        <source>Voids between grains</source>
        <translation>Hohlräume zwischen Körnern</translation>
    </message>
    <message>
        <source>Voids in grains</source>
        <translation>Poren in den Körnern</translation>
    </message>
    <message>
        <source>Total porosity</source>
        <translation>Gesamtporosität</translation>
    </message>
    <message>
        <source>Water in grains</source>
        <translation>Wasser in den Körnern</translation>
    </message>
    <message>
        <source>Exchange capacity</source>
        <translation>Austauschkapazität</translation>
    </message>
    <message>
        <source>unknown for a component</source>
        <translation>für einen Bestandteil unbekannt</translation>
    </message>
    <message>
        <source>In this pot, %1 deep</source>
        <translation>In dieser Schale, %1 tief</translation>
    </message>
    <message>
        <source>In the pot</source>
        <translation>In der Schale</translation>
    </message>
    <message>
        <source>Air that drains free</source>
        <translation>Luft, die frei abzieht</translation>
    </message>
    <message>
        <source>Water held</source>
        <translation>Gehaltenes Wasser</translation>
    </message>
    <message>
        <source>Water plants can take</source>
        <translation>Wasser, das Pflanzen nutzen</translation>
    </message>
    <message>
        <source>Trapped air, apart</source>
        <translation>Eingeschlossene Luft, extra</translation>
    </message>
    <message>
        <source>Wet zone, height</source>
        <translation>Nasszone, Höhe</translation>
    </message>
    <message>
        <source>Volume to the fill line</source>
        <translation>Volumen bis zur Füllhöhe</translation>
    </message>
    <message>
        <source>Mix, wet</source>
        <translation>Mischung, nass</translation>
    </message>
    <message>
        <source>To measure out for one pot</source>
        <translation>Für eine Schale abmessen</translation>
    </message>
    <message>
        <source>Mixed, before filling</source>
        <translation>Gemischt, vor dem Füllen</translation>
    </message>
    <message>
        <source>Not computed: %1.</source>
        <translation>Nicht berechnet: %1.</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 parts at %2</source>
        <translation>%1 Teile zu %2</translation>
    </message>
    <message>
        <source>beta of %1</source>
        <translation>Beta von %1</translation>
    </message>
    <message>
        <source>%1 typical</source>
        <translation>%1 üblich</translation>
    </message>
    <message>
        <source>%1: put its marked fields right</source>
        <translation>%1: die markierten Felder berichtigen</translation>
    </message>
    <message>
        <source>%1: finish its sieve test</source>
        <translation>%1: die Siebanalyse abschließen</translation>
    </message>
    <message>
        <source>%1: weigh a litre of it</source>
        <translation>%1: einen Liter davon wiegen</translation>
    </message>
    <message>
        <source>give a component parts</source>
        <translation>einem Bestandteil Teile geben</translation>
    </message>
    <message>
        <source>type the pot&apos;s lengths</source>
        <translation>die Maße der Schale eintragen</translation>
    </message>
    <message>
        <source>measure the grain density of each component</source>
        <translation>die Korndichte jedes Bestandteils messen</translation>
    </message>
    <message>
        <source>type the wanted grain</source>
        <translation>die gewünschte Körnung eintragen</translation>
    </message>
    <message>
        <source>outside the sieves used; a wider set would tell</source>
        <translation>außerhalb der benutzten Siebe; ein weiterer Satz würde es zeigen</translation>
    </message>
    <message>
        <source>Wanted grain, by mass</source>
        <translation>Gewünschtes Korn, nach Masse</translation>
    </message>
    <message>
        <source>saucer %1</source>
        <translation>Untersetzer %1</translation>
    </message>
    <message>
        <source>wick %1</source>
        <translation>Docht %1</translation>
    </message>
    <message>
        <source>tilted %1°</source>
        <translation>%1° geneigt</translation>
    </message>
    <message>
        <source>share of %1</source>
        <translation>Anteil von %1</translation>
    </message>
    <message>
        <source>Price of a mixed litre</source>
        <translation>Preis eines gemischten Liters</translation>
    </message>
    <message>
        <source>a component has no price, or they are in several currencies; only bags have one</source>
        <translation>ein Bestandteil hat keinen Preis, oder sie stehen in mehreren Währungen; nur Säcke haben einen</translation>
    </message>
    <message>
        <source>passing at %1</source>
        <translation>Durchgang bei %1</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>über %1</translation>
    </message>
    <message>
        <source>Sum and loss</source>
        <translation>Summe und Verlust</translation>
    </message>
    <message>
        <source>stayed on %1</source>
        <translation>blieb auf %1</translation>
    </message>
    <message>
        <source>packing density of %1</source>
        <translation>Packungsdichte von %1</translation>
    </message>
</context>
<context>
    <name>FindParts</name>
    <message>
        <source>the pot&apos;s lengths</source>
        <translation>die Maße der Schale</translation>
    </message>
    <message>
        <source>the wanted grain</source>
        <translation>die gewünschte Körnung</translation>
    </message>
    <message>
        <source>a group of trees, or a wish</source>
        <translation>eine Baumgruppe oder ein Wunsch</translation>
    </message>
    <message>
        <source>an unknown amount, because the figure is not defined</source>
        <translation>ein unbekannter Betrag, weil die Zahl nicht definiert ist</translation>
    </message>
    <message>
        <source>%1 meq/L</source>
        <translation>%1 meq/L</translation>
    </message>
    <message>
        <source>%1 a litre</source>
        <translation>%1 je Liter</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>finer than %1</source>
        <translation>feiner als %1</translation>
    </message>
    <message>
        <source>share of %1</source>
        <translation>Anteil von %1</translation>
    </message>
    <message numerus="yes">
        <source>curve within its limits at %n size(s)</source>
        <translation>
            <numerusform>Sieblinie bei einer Größe in ihren Grenzen</numerusform>
            <numerusform>Sieblinie bei %n Größen in ihren Grenzen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>curve near its %n point(s)</source>
        <translation>
            <numerusform>Sieblinie nahe an ihrem Punkt</numerusform>
            <numerusform>Sieblinie nahe an ihren %n Punkten</numerusform>
        </translation>
    </message>
    <message>
        <source>exchange capacity</source>
        <translation>Austauschkapazität</translation>
    </message>
    <message>
        <source>price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>wet litre weight</source>
        <translation>Litergewicht, nass</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>Cannot be had: %1.</source>
        <translation>Nicht zu haben: %1.</translation>
    </message>
    <message>
        <source>Cannot be had together: %1.</source>
        <translation>Nicht zusammen zu haben: %1.</translation>
    </message>
    <message>
        <source>The search was stopped: these are the best so far, not proven.</source>
        <translation>Die Suche wurde angehalten: Das sind die bisher besten, nicht bewiesen.</translation>
    </message>
    <message>
        <source>Free shares are improved from fixed starts: a better recipe may exist.</source>
        <translation>Freie Anteile werden von festen Startpunkten aus verbessert: Es kann ein besseres Rezept geben.</translation>
    </message>
    <message>
        <source>%1 recipes worked out, %2 excluded by bounds</source>
        <translation>%1 Rezepte durchgerechnet, %2 durch Schranken ausgeschlossen</translation>
    </message>
    <message>
        <source>Proven best: %1.</source>
        <translation>Bewiesen am besten: %1.</translation>
    </message>
    <message>
        <source>Not proven best: %1; the best score may be lower by up to %2.</source>
        <translation>Nicht als beste bewiesen: %1; die beste Wertung kann um bis zu %2 niedriger sein.</translation>
    </message>
    <message>
        <source>%1; no recipe scores less.</source>
        <translation>%1; kein Rezept hat eine niedrigere Wertung.</translation>
    </message>
    <message>
        <source>Not proven best: %1.</source>
        <translation>Nicht als beste bewiesen: %1.</translation>
    </message>
    <message>
        <source>%1 between %2 and %3</source>
        <translation>%1 zwischen %2 und %3</translation>
    </message>
    <message>
        <source>%1 at least %2</source>
        <translation>%1 mindestens %2</translation>
    </message>
    <message>
        <source>%1 at most %2</source>
        <translation>%1 höchstens %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>parts, name</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>rank</source>
        <translation>Rang</translation>
    </message>
    <message>
        <source>parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>misses</source>
        <translation>verfehlt</translation>
    </message>
    <message>
        <source>price/L</source>
        <translation>Preis/L</translation>
    </message>
    <message>
        <source>score</source>
        <translation>Wertung</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1 um %2</translation>
    </message>
    <message>
        <source>nearest</source>
        <translation>nächstes</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>Misses “%1” by %2.</source>
        <translation>Verfehlt „%1“ um %2.</translation>
    </message>
    <message>
        <source>Held back by, right at the limit: %1.</source>
        <translation>Gehalten von, genau an der Grenze: %1.</translation>
    </message>
    <message>
        <source>Uses up %1.</source>
        <translation>Braucht %1 auf.</translation>
    </message>
    <message>
        <source>%1 is not sieved yet: its printed size stands in for its curve.</source>
        <translation>%1 ist noch nicht gesiebt: Die aufgedruckte Größe steht für die Sieblinie.</translation>
    </message>
    <message>
        <source>Holds every wish with room to spare.</source>
        <translation>Erfüllt jeden Wunsch mit Spielraum.</translation>
    </message>
    <message>
        <source>The chosen recipe</source>
        <translation>Das gewählte Rezept</translation>
    </message>
    <message>
        <source>Air that drains free</source>
        <translation>Luft, die frei abzieht</translation>
    </message>
    <message>
        <source>Water held</source>
        <translation>Gehaltenes Wasser</translation>
    </message>
    <message>
        <source>Water plants can take</source>
        <translation>Wasser, das Pflanzen nutzen</translation>
    </message>
    <message>
        <source>Litre weight, dry</source>
        <translation>Litergewicht, trocken</translation>
    </message>
    <message>
        <source>Shrinks on mixing by</source>
        <translation>Schwindet beim Mischen um</translation>
    </message>
    <message>
        <source>Exchange capacity</source>
        <translation>Austauschkapazität</translation>
    </message>
    <message>
        <source>unknown for a component</source>
        <translation>für einen Bestandteil unbekannt</translation>
    </message>
    <message>
        <source>Price of a mixed litre</source>
        <translation>Preis eines gemischten Liters</translation>
    </message>
    <message>
        <source>Score, 0 is best</source>
        <translation>Wertung, 0 ist am besten</translation>
    </message>
    <message>
        <source>No recipe holds every wish that must hold.</source>
        <translation>Kein Rezept erfüllt alle Wünsche, die gelten müssen.</translation>
    </message>
    <message>
        <source>No recipe was found that holds every wish that must hold.</source>
        <translation>Es wurde kein Rezept gefunden, das alle Wünsche erfüllt, die gelten müssen.</translation>
    </message>
    <message>
        <source>The nearest that can be had is listed.</source>
        <translation>Das nächste, das zu haben ist, steht in der Liste.</translation>
    </message>
    <message>
        <source>Another recipe comes first with “%1” %2 stricter or %3 looser.</source>
        <translation>Ein anderes Rezept kommt nach vorn, wenn „%1“ um %2 strenger oder um %3 lockerer wird.</translation>
    </message>
    <message>
        <source>Another recipe comes first with “%1” %2 stricter.</source>
        <translation>Ein anderes Rezept kommt nach vorn, wenn „%1“ um %2 strenger wird.</translation>
    </message>
    <message>
        <source>Another recipe comes first with “%1” %2 looser.</source>
        <translation>Ein anderes Rezept kommt nach vorn, wenn „%1“ um %2 lockerer wird.</translation>
    </message>
    <message>
        <source>Whole parts instead of free shares cost %1 of score.</source>
        <translation>Ganze Teile statt freier Anteile kosten %1 an Wertung.</translation>
    </message>
    <message>
        <source>Trade-offs come with the first search: find parts for a pot.</source>
        <translation>Abwägungen kommen mit der ersten Suche: Teile für eine Schale suchen.</translation>
    </message>
    <message numerus="yes">
        <source>Air against water: from %1 air with %2 water to %3 air with %4 water; nothing found beats these %n recipe(s) in both.</source>
        <translation>
            <numerusform>Luft gegen Wasser: von %1 Luft mit %2 Wasser bis %3 Luft mit %4 Wasser; nichts Gefundenes übertrifft dieses Rezept in beidem.</numerusform>
            <numerusform>Luft gegen Wasser: von %1 Luft mit %2 Wasser bis %3 Luft mit %4 Wasser; nichts Gefundenes übertrifft diese %n Rezepte in beidem.</numerusform>
        </translation>
    </message>
    <message>
        <source>Price against fit: from %1 a litre with score %2 to %3 a litre with score %4.</source>
        <translation>Preis gegen Eignung: von %1 je Liter mit Wertung %2 bis %3 je Liter mit Wertung %4.</translation>
    </message>
    <message>
        <source>trade-off</source>
        <translation>Abwägung</translation>
    </message>
    <message>
        <source>air or price</source>
        <translation>Luft oder Preis</translation>
    </message>
    <message>
        <source>water or score</source>
        <translation>Wasser oder Wertung</translation>
    </message>
    <message>
        <source>air, water</source>
        <translation>Luft, Wasser</translation>
    </message>
    <message>
        <source>price, fit</source>
        <translation>Preis, Eignung</translation>
    </message>
    <message>
        <source>Air in %1</source>
        <translation>Luft in %1</translation>
    </message>
    <message>
        <source>Water in %1</source>
        <translation>Wasser in %1</translation>
    </message>
    <message>
        <source>Proven: %1.</source>
        <translation>Bewiesen: %1.</translation>
    </message>
    <message>
        <source>choose a pot, and measure each grain density</source>
        <translation>eine Schale wählen und jede Korndichte messen</translation>
    </message>
    <message>
        <source>measure each grain density</source>
        <translation>jede Korndichte messen</translation>
    </message>
    <message>
        <source>type each price</source>
        <translation>jeden Preis eintragen</translation>
    </message>
    <message>
        <source>This search has no trade-off to show: choose a pot or type prices, then search again.</source>
        <translation>Diese Suche hat keine Abwägung zu zeigen: eine Schale wählen oder Preise eintragen, dann noch einmal suchen.</translation>
    </message>
    <message>
        <source>less than %1 points</source>
        <translation>weniger als %1 Punkte</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 Punkte</translation>
    </message>
    <message>
        <source>water plants can take</source>
        <translation>für Pflanzen verfügbares Wasser</translation>
    </message>
    <message>
        <source>The best recipe is far from “%1” and misses it by %2: screen a bag to it, take in other grain, or loosen the wish.</source>
        <translation>Das beste Rezept ist weit von „%1“ entfernt und verfehlt es um %2: einen Sack darauf absieben, anderes Korn aufnehmen oder den Wunsch lockern.</translation>
    </message>
    <message>
        <source>%1/L</source>
        <comment>currency</comment>
        <translation>%1/L</translation>
    </message>
</context>
<context>
    <name>GradingChart</name>
    <message>
        <source>%1 (so far)</source>
        <translation>%1 (bisher)</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>gewünscht</translation>
    </message>
    <message>
        <source>percent passing</source>
        <translation>Siebdurchgang in Prozent</translation>
    </message>
    <message>
        <source>sieve opening, mm</source>
        <translation>Maschenweite, mm</translation>
    </message>
    <message>
        <source>%1, sample 1</source>
        <translation>%1, Probe 1</translation>
    </message>
    <message>
        <source>%1, sample %2</source>
        <translation>%1, Probe %2</translation>
    </message>
    <message>
        <source>the mix</source>
        <translation>die Mischung</translation>
    </message>
    <message>
        <source>half of %1 is finer than %2</source>
        <translation>die Hälfte von %1 ist feiner als %2</translation>
    </message>
    <message>
        <source>%1 has no middle size inside its sieves</source>
        <translation>%1 hat innerhalb der Siebe keine mittlere Größe</translation>
    </message>
    <message>
        <source>Grading chart, still empty: no sieve test has a curve yet.</source>
        <translation>Körnungsdiagramm, noch leer: Keine Siebanalyse hat schon eine Sieblinie.</translation>
    </message>
    <message>
        <source>Grading chart, percent passing over grain size: %1.</source>
        <translation>Körnungsdiagramm, Siebdurchgang in Prozent über der Korngröße: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n faint curve(s) of single samples and earlier bags lie behind.</source>
        <translation>
            <numerusform>Dahinter liegt blass eine Linie einer einzelnen Probe oder eines früheren Sacks.</numerusform>
            <numerusform>Dahinter liegen blass %n Linien einzelner Proben und früherer Säcke.</numerusform>
        </translation>
    </message>
    <message>
        <source>sieve</source>
        <translation>Sieb</translation>
    </message>
    <message>
        <source>each sample</source>
        <translation>jede Probe</translation>
    </message>
    <message>
        <source>earlier bags</source>
        <translation>frühere Säcke</translation>
    </message>
</context>
<context>
    <name>GrainTrace</name>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>may</source>
        <translation>vielleicht</translation>
    </message>
    <message>
        <source>stands in it</source>
        <translation>steht darin</translation>
    </message>
    <message>
        <source>some may remain</source>
        <translation>etwas kann noch da sein</translation>
    </message>
    <message>
        <source>stood in it</source>
        <translation>stand darin</translation>
    </message>
    <message>
        <source>screened</source>
        <translation>abgesiebt</translation>
    </message>
    <message>
        <source>tipped in</source>
        <translation>eingefüllt</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>gemischt</translation>
    </message>
    <message>
        <source>potted</source>
        <translation>eingetopft</translation>
    </message>
    <message>
        <source>left in the pot</source>
        <translation>in der Schale geblieben</translation>
    </message>
    <message>
        <source>by design</source>
        <translation>nach Rezept</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>zurückgenommen</translation>
    </message>
    <message>
        <source>used</source>
        <translation>benutzt</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>Mischung</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>day of repotting</source>
        <translation>Tag des Umtopfens</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>Baum</translation>
    </message>
    <message>
        <source>thriving</source>
        <translation>wüchsig</translation>
    </message>
    <message>
        <source>watch</source>
        <translation>fraglich</translation>
    </message>
    <message>
        <source>sick</source>
        <translation>krank</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>tot</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>how</source>
        <translation>wie</translation>
    </message>
    <message>
        <source>condition</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>until</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>contains it</source>
        <translation>enthält es</translation>
    </message>
    <message>
        <source>way</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>since</source>
        <translation>seit</translation>
    </message>
    <message>
        <source>left, dry</source>
        <translation>übrig, trocken</translation>
    </message>
    <message>
        <source>%1: no tree stands in it, as far as it was written down.</source>
        <translation>%1: Kein Baum steht darin, soweit es aufgeschrieben wurde.</translation>
    </message>
    <message numerus="yes">
        <source>%n tree(s) stand in it</source>
        <translation>
            <numerusform>%n Baum steht darin</numerusform>
            <numerusform>%n Bäume stehen darin</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>in %n repotted since some may remain</source>
        <translation>
            <numerusform>in %n seither umgetopften kann noch etwas sein</numerusform>
            <numerusform>in %n seither umgetopften kann noch etwas sein</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n stood in it once</source>
        <translation>
            <numerusform>%n stand einmal darin</numerusform>
            <numerusform>%n standen einmal darin</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>by</source>
        <translation>durch</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>%1: no bag is known to be in its soil.</source>
        <translation>%1: Von keinem Sack ist bekannt, dass er in seinem Substrat ist.</translation>
    </message>
    <message numerus="yes">
        <source>%1: the grain of %n bag(s) is or may be in its soil.</source>
        <translation>
            <numerusform>%1: Das Korn von %n Sack ist oder kann in seinem Substrat sein.</numerusform>
            <numerusform>%1: Das Korn von %n Säcken ist oder kann in seinem Substrat sein.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>which</source>
        <translation>welche</translation>
    </message>
    <message>
        <source>these trees</source>
        <translation>diese Bäume</translation>
    </message>
    <message>
        <source>all others</source>
        <translation>alle anderen</translation>
    </message>
    <message>
        <source>%1, %2 of them may</source>
        <translation>%1, %2 davon vielleicht</translation>
    </message>
    <message>
        <source>Few trees prove nothing: what they share may be chance.</source>
        <translation>Wenige Bäume beweisen nichts: Was sie gemeinsam haben, kann Zufall sein.</translation>
    </message>
    <message>
        <source>the drain hole: is it open?</source>
        <translation>das Abflussloch: Ist es offen?</translation>
    </message>
    <message>
        <source>the trunk: is it buried, or stands it too deep?</source>
        <translation>der Stamm: Ist er vergraben oder steht er zu tief?</translation>
    </message>
    <message>
        <source>the tie: is it loose, does the tree rock?</source>
        <translation>die Bindung: Ist sie lose, wackelt der Baum?</translation>
    </message>
    <message>
        <source>the smell of the root mass: is it sour?</source>
        <translation>der Geruch des Ballens: Ist er sauer?</translation>
    </message>
    <message>
        <source>the watering: who, how often, and did it run through?</source>
        <translation>das Gießen: wer, wie oft, und lief es durch?</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>no.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>%1 (removed)</source>
        <translation>%1 (entfernt)</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation>abgenommen</translation>
    </message>
    <message>
        <source>shared</source>
        <translation>gemeinsam</translation>
    </message>
    <message>
        <source>There is nothing called %1: look at its number.</source>
        <translation>Es gibt nichts mit dem Namen %1: die Nummer ansehen.</translation>
    </message>
    <message>
        <source>Several bags are of lot %1: type the number of one of %2.</source>
        <translation>Mehrere Säcke gehören zur Charge %1: die Nummer von einem aus %2 eingeben.</translation>
    </message>
</context>
<context>
    <name>JumpTargets</name>
    <message>
        <source>component %1</source>
        <translation>Bestandteil %1</translation>
    </message>
</context>
<context>
    <name>Lots</name>
    <message>
        <source>finer than wanted</source>
        <translation>feiner als gewünscht</translation>
    </message>
    <message>
        <source>D50</source>
        <translation>D50</translation>
    </message>
    <message>
        <source>usable of a litre</source>
        <translation>nutzbar je Liter</translation>
    </message>
    <message>
        <source>air, 6 cm deep</source>
        <translation>Luft, 6 cm tief</translation>
    </message>
    <message numerus="yes">
        <source>Unusual for the material: %1 is %2; over %n earlier bag(s) it lay between %3 and %4.</source>
        <translation>
            <numerusform>Ungewöhnlich für das Material: %1 ist %2; bei einem früheren Sack lag es zwischen %3 und %4.</numerusform>
            <numerusform>Ungewöhnlich für das Material: %1 ist %2; bei %n früheren Säcken lag es zwischen %3 und %4.</numerusform>
        </translation>
    </message>
    <message>
        <source>A jump from the bag before: %1 is %2; bags of this material seldom differ so much from one to the next.</source>
        <translation>Ein Sprung gegen den Sack davor: %1 ist %2; Säcke dieses Materials unterscheiden sich selten so stark.</translation>
    </message>
    <message>
        <source>In mix %1 it would turn air from %2 into %3 and water from %4 into %5.</source>
        <translation>In der Mischung %1 würde die Luft von %2 auf %3 gehen und das Wasser von %4 auf %5.</translation>
    </message>
</context>
<context>
    <name>PotLabels</name>
    <message>
        <source>page %1</source>
        <translation>Seite %1</translation>
    </message>
</context>
<context>
    <name>PotSection</name>
    <message>
        <source>grain</source>
        <translation>Korn</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>trapped air</source>
        <translation>eingeschlossene Luft</translation>
    </message>
    <message>
        <source>air that drains free</source>
        <translation>Luft, die frei abzieht</translation>
    </message>
</context>
<context>
    <name>PrintedPages</name>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
</context>
<context>
    <name>Protocols</name>
    <message>
        <source>what it needs was not measured</source>
        <translation>was dafür nötig ist, wurde nicht gemessen</translation>
    </message>
    <message>
        <source>Air that drained in</source>
        <translation>Luft, die einzog</translation>
    </message>
    <message>
        <source>Predicted before any test</source>
        <translation>Vor jedem Test vorhergesagt</translation>
    </message>
    <message>
        <source>Water that stayed</source>
        <translation>Wasser, das blieb</translation>
    </message>
    <message>
        <source>Filled when flooded</source>
        <translation>Gefüllt beim Fluten</translation>
    </message>
    <message>
        <source>Weight of a litre in the pot, dry</source>
        <translation>Litergewicht in der Schale, trocken</translation>
    </message>
    <message>
        <source>the water that stayed was not measured</source>
        <translation>das Wasser, das blieb, wurde nicht gemessen</translation>
    </message>
    <message>
        <source>Fitted k, cm mm</source>
        <translation>Angepasstes k, cm mm</translation>
    </message>
    <message>
        <source>Fitted grain fill w</source>
        <translation>Angepasste Kornfüllung w</translation>
    </message>
    <message>
        <source>Fitted flooded fill f</source>
        <translation>Angepasste Flutfüllung f</translation>
    </message>
    <message>
        <source>pot test %1 of mix %2</source>
        <translation>Schalentest %1 der Mischung %2</translation>
    </message>
    <message>
        <source>Pot test %1 of mix %2</source>
        <translation>Schalentest %1 der Mischung %2</translation>
    </message>
    <message>
        <source>: air %1 measured, %2 predicted</source>
        <translation>: Luft %1 gemessen, %2 vorhergesagt</translation>
    </message>
    <message>
        <source>A component of the mix has no grain density: measure it first, then the test can be compared.</source>
        <translation>Bei einem Bestandteil der Mischung fehlt die Korndichte: zuerst messen, dann lässt sich der Test vergleichen.</translation>
    </message>
    <message>
        <source>These figures make no pot test: look at the volume and the order of the masses.</source>
        <translation>Diese Zahlen ergeben keinen Schalentest: Volumen und Reihenfolge der Massen ansehen.</translation>
    </message>
    <message>
        <source>not measured yet</source>
        <translation>noch nicht gemessen</translation>
    </message>
    <message>
        <source>Still to type: %1</source>
        <translation>Noch einzugeben: %1</translation>
    </message>
    <message>
        <source>Litre weight by jug</source>
        <translation>Litergewicht mit dem Krug</translation>
    </message>
    <message>
        <source>What a litre weighs, loose and worked in. It turns parts into masses, and says how much a mix settles.</source>
        <translation>Was ein Liter wiegt, lose und eingearbeitet. Damit werden aus Teilen Massen, und man sieht, wie weit eine Mischung sich setzt.</translation>
    </message>
    <message>
        <source>Weigh the empty jug. Fill it loosely from a scoop held at the rim, heaped, and strike it off level. Weigh.</source>
        <translation>Den leeren Krug wiegen. Mit einer Schaufel am Rand lose füllen, gehäuft, und eben abstreichen. Wiegen.</translation>
    </message>
    <message>
        <source>Empty it, fill and weigh once more: two fills within 3 % are good.</source>
        <translation>Ausleeren, noch einmal füllen und wiegen: Zwei Füllungen innerhalb von 3 % sind gut.</translation>
    </message>
    <message>
        <source>Work the grain in with a stick, as in a pot, without adding any. Read the litres at the mark.</source>
        <translation>Das Korn mit einem Stab einarbeiten wie in einer Schale, ohne nachzufüllen. Die Liter am Strich ablesen.</translation>
    </message>
    <message>
        <source>Two jugs: one heaped and struck off level, one with the same grain worked in with a stick and standing lower.</source>
        <translation>Zwei Krüge: einer gehäuft und eben abgestrichen, einer mit demselben Korn, mit dem Stab eingearbeitet und tiefer stehend.</translation>
    </message>
    <message>
        <source>Grain density by displacement</source>
        <translation>Korndichte durch Verdrängung</translation>
    </message>
    <message>
        <source>What the grain weighs with its inner pores. With the litre weight it gives the voids between the grains.</source>
        <translation>Was das Korn mit seinen inneren Poren wiegt. Mit dem Litergewicht ergibt es die Hohlräume zwischen den Körnern.</translation>
    </message>
    <message>
        <source>Soak the grain for 24 h. Dab it dry until its surface no longer shines. Weigh.</source>
        <translation>Das Korn 24 h einweichen. Trockentupfen, bis die Oberfläche nicht mehr glänzt. Wiegen.</translation>
    </message>
    <message>
        <source>Weigh the jug filled with water to the mark. Put the grain in, stir the air out, top up or draw off to the same mark. Weigh.</source>
        <translation>Den bis zum Strich mit Wasser gefüllten Krug wiegen. Das Korn hineingeben, die Luft herausrühren, auf denselben Strich auffüllen oder abziehen. Wiegen.</translation>
    </message>
    <message>
        <source>Dry the grain at 105 °C or on a warm stove until it no longer gets lighter. Weigh.</source>
        <translation>Das Korn bei 105 °C oder auf einem warmen Ofen trocknen, bis es nicht mehr leichter wird. Wiegen.</translation>
    </message>
    <message>
        <source>Two jugs filled with water to the same mark, the right one with soaked grain at the bottom.</source>
        <translation>Zwei Krüge, bis zum selben Strich mit Wasser gefüllt, der rechte mit eingeweichtem Korn am Boden.</translation>
    </message>
    <message>
        <source>Water absorption in 24 h</source>
        <translation>Wasseraufnahme in 24 h</translation>
    </message>
    <message>
        <source>The water that stays inside the grains: it is there between waterings and takes no air.</source>
        <translation>Das Wasser, das in den Körnern bleibt: Es ist zwischen den Wassergaben da und nimmt keine Luft weg.</translation>
    </message>
    <message>
        <source>Soak a handful for 24 h. Dab it dry until its surface no longer shines. Weigh.</source>
        <translation>Eine Handvoll 24 h einweichen. Trockentupfen, bis die Oberfläche nicht mehr glänzt. Wiegen.</translation>
    </message>
    <message>
        <source>Dry the same grain until it no longer gets lighter. Weigh.</source>
        <translation>Dasselbe Korn trocknen, bis es nicht mehr leichter wird. Wiegen.</translation>
    </message>
    <message>
        <source>Grain under water in a dish, then the same grain spread out to dry.</source>
        <translation>Korn unter Wasser in einer Schüssel, dann dasselbe Korn zum Trocknen ausgebreitet.</translation>
    </message>
    <message>
        <source>Crumble test</source>
        <translation>Zerfallstest</translation>
    </message>
    <message>
        <source>How fast the grain breaks down, by shaking or by freezing and thawing. It says for how many seasons the mix keeps its air.</source>
        <translation>Wie schnell das Korn zerfällt, beim Schütteln oder beim Frieren und Tauen. Es sagt, wie viele Saisons die Mischung ihre Luft behält.</translation>
    </message>
    <message>
        <source>Take sieved grain of the bag. Shake it in a closed tin, or wet it, freeze it and thaw it, so many rounds.</source>
        <translation>Gesiebtes Korn des Sacks nehmen. In einer geschlossenen Dose schütteln, oder nässen, frieren und tauen, so viele Runden.</translation>
    </message>
    <message>
        <source>Dry it and sieve it again on the same sieves. Wear a dust mask.</source>
        <translation>Trocknen und auf denselben Sieben noch einmal sieben. Staubmaske tragen.</translation>
    </message>
    <message>
        <source>A tin that is shaken, and the stack of sieves that the grain goes through again.</source>
        <translation>Eine Dose, die geschüttelt wird, und der Siebturm, durch den das Korn noch einmal geht.</translation>
    </message>
    <message>
        <source>Was it sieved long enough?</source>
        <translation>Wurde lange genug gesiebt?</translation>
    </message>
    <message>
        <source>One more minute of shaking by hand: less than half a percent may still fall through.</source>
        <translation>Noch eine Minute Schütteln von Hand: Weniger als ein halbes Prozent darf noch durchfallen.</translation>
    </message>
    <message>
        <source>After the sieve test shake every sieve one more minute over a clean sheet.</source>
        <translation>Nach der Siebanalyse jedes Sieb noch eine Minute über einem sauberen Bogen schütteln.</translation>
    </message>
    <message>
        <source>Weigh all that fell through.</source>
        <translation>Alles Durchgefallene wiegen.</translation>
    </message>
    <message>
        <source>A sieve shaken over a sheet on which a little grain lies.</source>
        <translation>Ein Sieb, über einem Bogen geschüttelt, auf dem ein wenig Korn liegt.</translation>
    </message>
    <message>
        <source>Pot test by balance</source>
        <translation>Schalentest mit der Waage</translation>
    </message>
    <message>
        <source>Soak the mix for a day. Fill the pot and work it in as you would around a tree. Seal the holes.</source>
        <translation>Die Mischung einen Tag einweichen. Die Schale füllen und einarbeiten wie um einen Baum. Die Löcher verschließen.</translation>
    </message>
    <message>
        <source>Flood slowly from below until a film shines on top. Weigh. Open the holes and let it drain level for half an hour. Weigh.</source>
        <translation>Langsam von unten fluten, bis oben ein Film glänzt. Wiegen. Die Löcher öffnen und eine halbe Stunde waagerecht abtropfen lassen. Wiegen.</translation>
    </message>
    <message>
        <source>Dry everything until it no longer gets lighter. Weigh; the empty pot too. A wet pot is heavy: lift with both hands.</source>
        <translation>Alles trocknen, bis es nicht mehr leichter wird. Wiegen; auch die leere Schale. Eine nasse Schale ist schwer: mit beiden Händen heben.</translation>
    </message>
    <message>
        <source>A pot on a balance three times: flooded to the rim, drained with water left at the bottom, dry.</source>
        <translation>Eine Schale dreimal auf der Waage: bis zum Rand geflutet, abgetropft mit Wasser am Boden, trocken.</translation>
    </message>
    <message>
        <source>Pot test by volumes only</source>
        <translation>Schalentest nur mit Volumen</translation>
    </message>
    <message>
        <source>The same without a balance: water poured in and water caught.</source>
        <translation>Dasselbe ohne Waage: eingegossenes und aufgefangenes Wasser.</translation>
    </message>
    <message>
        <source>Fill the pot with dry mix and work it in. Seal the holes.</source>
        <translation>Die Schale mit trockener Mischung füllen und einarbeiten. Die Löcher verschließen.</translation>
    </message>
    <message>
        <source>Pour in measured water slowly until a shiny film stands, and again after a day&apos;s soak. Note all of it.</source>
        <translation>Abgemessenes Wasser langsam eingießen, bis ein glänzender Film steht, und noch einmal nach einem Tag Einweichen. Alles notieren.</translation>
    </message>
    <message>
        <source>Open the holes over a bowl. After half an hour measure what ran out.</source>
        <translation>Die Löcher über einer Schüssel öffnen. Nach einer halben Stunde messen, was ausgelaufen ist.</translation>
    </message>
    <message>
        <source>A measuring jug pours into a pot, and a bowl below catches what drains.</source>
        <translation>Ein Messkrug gießt in eine Schale, und eine Schüssel darunter fängt auf, was abtropft.</translation>
    </message>
    <message>
        <source>the litres after working in are not typed</source>
        <translation>die Liter nach dem Einarbeiten sind nicht eingegeben</translation>
    </message>
    <message>
        <source>Litre weight, loose, dry</source>
        <translation>Litergewicht, lose, trocken</translation>
    </message>
    <message>
        <source>Worked in, dry</source>
        <translation>Eingearbeitet, trocken</translation>
    </message>
    <message>
        <source>Settling</source>
        <translation>Setzung</translation>
    </message>
    <message>
        <source>litre weight of bag %1</source>
        <translation>Litergewicht von Sack %1</translation>
    </message>
    <message>
        <source>Weighed a jug of bag %1: %2 loose and dry</source>
        <translation>Krug von Sack %1 gewogen: %2 lose und trocken</translation>
    </message>
    <message>
        <source>settling of mix %1</source>
        <translation>Setzung der Mischung %1</translation>
    </message>
    <message>
        <source>Worked in a jug of mix %1: it settles by %2</source>
        <translation>Krug der Mischung %1 eingearbeitet: Sie setzt sich um %2</translation>
    </message>
    <message>
        <source>Grain density, dry</source>
        <translation>Korndichte, trocken</translation>
    </message>
    <message>
        <source>Soaked grain</source>
        <translation>Eingeweichtes Korn</translation>
    </message>
    <message>
        <source>Water after 24 h, of dry mass</source>
        <translation>Wasser nach 24 h, von der Trockenmasse</translation>
    </message>
    <message>
        <source>grain density of bag %1</source>
        <translation>Korndichte von Sack %1</translation>
    </message>
    <message>
        <source>Measured the grain of bag %1 by displacement: %2, water after 24 h %3</source>
        <translation>Korn von Sack %1 durch Verdrängung gemessen: %2, Wasser nach 24 h %3</translation>
    </message>
    <message>
        <source>water absorption of bag %1</source>
        <translation>Wasseraufnahme von Sack %1</translation>
    </message>
    <message>
        <source>Soaked grain of bag %1 for 24 h: it took up %2 of its dry mass</source>
        <translation>Korn von Sack %1 24 h eingeweicht: Es nahm %2 seiner Trockenmasse auf</translation>
    </message>
    <message>
        <source>Sieve this bag first: a crumble test compares with its sieve test.</source>
        <translation>Diesen Sack zuerst sieben: Ein Zerfallstest vergleicht mit seiner Siebanalyse.</translation>
    </message>
    <message>
        <source>Broken, of the mass</source>
        <translation>Zerfallen, von der Masse</translation>
    </message>
    <message>
        <source>Breakages of a grain in a round</source>
        <translation>Brüche eines Korns je Runde</translation>
    </message>
    <message>
        <source>In a season</source>
        <translation>In einer Saison</translation>
    </message>
    <message>
        <source>Modulus of the fragments</source>
        <translation>Modul der Bruchstücke</translation>
    </message>
    <message>
        <source>crumble test of bag %1</source>
        <translation>Zerfallstest von Sack %1</translation>
    </message>
    <message>
        <source>Crumble test of bag %1: %2 of the mass broke in %3 rounds</source>
        <translation>Zerfallstest von Sack %1: %2 der Masse zerfielen in %3 Runden</translation>
    </message>
    <message>
        <source>Fell through in one more minute</source>
        <translation>Fiel in einer weiteren Minute durch</translation>
    </message>
    <message>
        <source>The sieving of bag %1 was thorough: %2 fell through in one more minute</source>
        <translation>Sack %1 war gründlich gesiebt: %2 fielen in einer weiteren Minute durch</translation>
    </message>
    <message>
        <source>The sieving of bag %1 was not thorough: %2 fell through in one more minute</source>
        <translation>Sack %1 war nicht gründlich gesiebt: %2 fielen in einer weiteren Minute durch</translation>
    </message>
    <message>
        <source>Keep the sieve test with its bag first: this belongs to a sieve test.</source>
        <translation>Die Siebanalyse zuerst bei ihrem Sack aufbewahren: Das hier gehört zu einer Siebanalyse.</translation>
    </message>
    <message>
        <source>thoroughness of sieving bag %1</source>
        <translation>Gründlichkeit der Siebung von Sack %1</translation>
    </message>
    <message>
        <source>Empty jug</source>
        <translation>Leerer Krug</translation>
    </message>
    <message>
        <source>weighed dry</source>
        <translation>trocken gewogen</translation>
    </message>
    <message>
        <source>Jug with grain</source>
        <translation>Krug mit Korn</translation>
    </message>
    <message>
        <source>poured loosely, struck off level</source>
        <translation>lose geschüttet, eben abgestrichen</translation>
    </message>
    <message>
        <source>Filled once more</source>
        <translation>Noch einmal gefüllt</translation>
    </message>
    <message>
        <source>emptied and poured again; may stay empty</source>
        <translation>geleert und neu geschüttet; darf leer bleiben</translation>
    </message>
    <message>
        <source>The jug holds</source>
        <translation>Der Krug fasst</translation>
    </message>
    <message>
        <source>by weighing it full of water</source>
        <translation>gewogen, randvoll mit Wasser</translation>
    </message>
    <message>
        <source>Worked in, it fills</source>
        <translation>Eingearbeitet füllt es</translation>
    </message>
    <message>
        <source>read at the mark</source>
        <translation>am Strich abgelesen</translation>
    </message>
    <message>
        <source>read at the mark; may stay empty</source>
        <translation>am Strich abgelesen; darf leer bleiben</translation>
    </message>
    <message>
        <source>Moisture of the grain</source>
        <translation>Feuchte des Korns</translation>
    </message>
    <message>
        <source>of the dry mass; empty: dry</source>
        <translation>von der Trockenmasse; leer: trocken</translation>
    </message>
    <message>
        <source>Soaked, dabbed dry</source>
        <translation>Eingeweicht, trockengetupft</translation>
    </message>
    <message>
        <source>after 24 h under water</source>
        <translation>nach 24 h unter Wasser</translation>
    </message>
    <message>
        <source>Jug with water</source>
        <translation>Krug mit Wasser</translation>
    </message>
    <message>
        <source>filled to the mark, no grain</source>
        <translation>bis zum Strich gefüllt, ohne Korn</translation>
    </message>
    <message>
        <source>Jug, water and grain</source>
        <translation>Krug, Wasser und Korn</translation>
    </message>
    <message>
        <source>to the same mark</source>
        <translation>bis zum selben Strich</translation>
    </message>
    <message>
        <source>Dried grain</source>
        <translation>Getrocknetes Korn</translation>
    </message>
    <message>
        <source>the same grain</source>
        <translation>dasselbe Korn</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Runden</translation>
    </message>
    <message>
        <source>of shaking, or of freezing and thawing</source>
        <translation>Schütteln, oder Frieren und Tauen</translation>
    </message>
    <message>
        <source>Rounds that make a season</source>
        <translation>Runden, die eine Saison ausmachen</translation>
    </message>
    <message>
        <source>empty: %1</source>
        <translation>leer: %1</translation>
    </message>
    <message>
        <source>On %1</source>
        <translation>Auf %1</translation>
    </message>
    <message>
        <source>sieved again</source>
        <translation>erneut gesiebt</translation>
    </message>
    <message>
        <source>In the pan</source>
        <translation>Im Boden</translation>
    </message>
    <message>
        <source>Whole sample</source>
        <translation>Ganze Probe</translation>
    </message>
    <message>
        <source>what went onto the stack</source>
        <translation>was auf den Siebturm kam</translation>
    </message>
    <message>
        <source>Fell through</source>
        <translation>Durchgefallen</translation>
    </message>
    <message>
        <source>all sieves together, in one more minute</source>
        <translation>alle Siebe zusammen, in einer weiteren Minute</translation>
    </message>
    <message>
        <source>Filled depth</source>
        <translation>Gefüllte Tiefe</translation>
    </message>
    <message>
        <source>of the mix, straight walls</source>
        <translation>der Mischung, gerade Wände</translation>
    </message>
    <message>
        <source>by a water fill</source>
        <translation>durch Auslitern</translation>
    </message>
    <message>
        <source>empty: to the pot&apos;s fill line</source>
        <translation>leer: bis zur Füllhöhe der Schale</translation>
    </message>
    <message>
        <source>Empty pot</source>
        <translation>Leere Schale</translation>
    </message>
    <message>
        <source>with mesh and wire</source>
        <translation>mit Netz und Draht</translation>
    </message>
    <message>
        <source>Flooded, sealed</source>
        <translation>Geflutet, verschlossen</translation>
    </message>
    <message>
        <source>slowly from below; may stay empty</source>
        <translation>langsam von unten; darf leer bleiben</translation>
    </message>
    <message>
        <source>Drained</source>
        <translation>Abgetropft</translation>
    </message>
    <message>
        <source>half an hour, level</source>
        <translation>eine halbe Stunde, waagerecht</translation>
    </message>
    <message>
        <source>Dry, with the pot</source>
        <translation>Trocken, mit der Schale</translation>
    </message>
    <message>
        <source>the same mix</source>
        <translation>dieselbe Mischung</translation>
    </message>
    <message>
        <source>Water poured in</source>
        <translation>Eingegossenes Wasser</translation>
    </message>
    <message>
        <source>until a shiny film stands</source>
        <translation>bis ein glänzender Film steht</translation>
    </message>
    <message>
        <source>Water caught</source>
        <translation>Aufgefangenes Wasser</translation>
    </message>
    <message>
        <source>half an hour later</source>
        <translation>eine halbe Stunde später</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Keep a mix first: a pot test is a test of a mix.</source>
        <translation>Zuerst eine Mischung aufbewahren: Ein Schalentest prüft eine Mischung.</translation>
    </message>
    <message>
        <source>Receive a bag first: what is measured is kept with its bag.</source>
        <translation>Zuerst einen Sack annehmen: Was gemessen wird, steht bei seinem Sack.</translation>
    </message>
    <message>
        <source>Volume of mix in it</source>
        <translation>Volumen der Mischung darin</translation>
    </message>
    <message>
        <source>Weighed a jug of bag %1: %2 loose and dry, %3 worked in</source>
        <translation>Krug von Sack %1 gewogen: %2 lose und trocken, %3 eingearbeitet</translation>
    </message>
    <message>
        <source>More fell through than was weighed: weigh both again.</source>
        <translation>Es fiel mehr durch, als gewogen wurde: beides noch einmal wiegen.</translation>
    </message>
    <message>
        <source>The air and water of this mix in a real pot. It corrects the estimates of the mix and shows how far off they were.</source>
        <translation>Luft und Wasser dieser Mischung in einem wirklichen Topf. Das berichtigt die Schätzungen der Mischung und zeigt, wie weit sie danebenlagen.</translation>
    </message>
</context>
<context>
    <name>Ranges</name>
    <message>
        <source>5, 50 and 95 of 100 cases: up to %1, %2, %3</source>
        <translation>5, 50 und 95 von 100 Fällen: bis %1, %2, %3</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>The same verdict in %1 of 100 cases.</source>
        <translation>Dasselbe Urteil in %1 von 100 Fällen.</translation>
    </message>
    <message>
        <source>, by pot test %1</source>
        <translation>, nach Schalentest %1</translation>
    </message>
    <message>
        <source>in %1 of 100 cases</source>
        <translation>in %1 von 100 Fällen</translation>
    </message>
    <message>
        <source>, leaning on pot test %1</source>
        <translation>, gestützt auf Schalentest %1</translation>
    </message>
</context>
<context>
    <name>RecordKind</name>
    <message>
        <source>own material</source>
        <translation>eigenes Material</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>Sack</translation>
    </message>
    <message>
        <source>bin</source>
        <translation>Kiste</translation>
    </message>
    <message>
        <source>fraction</source>
        <translation>Fraktion</translation>
    </message>
    <message>
        <source>sieve set</source>
        <translation>Siebsatz</translation>
    </message>
    <message>
        <source>sieve test</source>
        <translation>Siebanalyse</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>Mischung</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>Baum</translation>
    </message>
    <message>
        <source>root-mass plan</source>
        <translation>Ballenplan</translation>
    </message>
    <message>
        <source>repotting day</source>
        <translation>Umtopftag</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>pot test</source>
        <translation>Schalentest</translation>
    </message>
    <message>
        <source>stock entry</source>
        <translation>Vorratsbuchung</translation>
    </message>
    <message>
        <source>log entry</source>
        <translation>Tagebucheintrag</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>group of trees</source>
        <translation>Baumgruppe</translation>
    </message>
</context>
<context>
    <name>RootPlanDesk</name>
    <message>
        <source>%1 into %2</source>
        <translation>%1 in %2</translation>
    </message>
</context>
<context>
    <name>Screening</name>
    <message>
        <source>Weighed so far: %1</source>
        <translation>Bisher gewogen: %1</translation>
    </message>
    <message>
        <source>Weighed %1: %2 more than went in</source>
        <translation>%1 gewogen: %2 mehr, als hineinging</translation>
    </message>
    <message>
        <source>Weighed %1, lost %2</source>
        <translation>%1 gewogen, %2 verloren</translation>
    </message>
    <message>
        <source>Finish the sieve test first: the fractions are predicted from it.</source>
        <translation>Zuerst die Siebanalyse abschließen: Daraus werden die Fraktionen vorhergesagt.</translation>
    </message>
    <message>
        <source>Type the openings to screen at; the verdict names none.</source>
        <translation>Die Maschenweiten zum Absieben eingeben; das Urteil nennt keine.</translation>
    </message>
    <message>
        <source>Much of what is left of the bag is in no fraction: type how much dry grain was screened.</source>
        <translation>Viel von dem, was vom Sack übrig ist, liegt in keiner Fraktion: eintippen, wie viel trockenes Korn gesiebt wurde.</translation>
    </message>
    <message>
        <source>Much more was weighed than went in: look at the weights, or type how much dry grain was screened.</source>
        <translation>Viel mehr wurde gewogen, als hineinging: die Gewichte ansehen oder eingeben, wie viel trockenes Korn abgesiebt wurde.</translation>
    </message>
</context>
<context>
    <name>Section</name>
    <message>
        <source>height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>90 of 100 cases</source>
        <translation>90 von 100 Fällen</translation>
    </message>
</context>
<context>
    <name>Shelf</name>
    <message>
        <source>%1, to buy</source>
        <translation>%1, zu kaufen</translation>
    </message>
</context>
<context>
    <name>StockText</name>
    <message>
        <source>received</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>screened into it</source>
        <translation>hineingesiebt</translation>
    </message>
    <message>
        <source>screened out of it</source>
        <translation>herausgesiebt</translation>
    </message>
    <message>
        <source>used</source>
        <translation>benutzt</translation>
    </message>
    <message>
        <source>came back or was tipped in</source>
        <translation>kam zurück oder wurde eingefüllt</translation>
    </message>
    <message>
        <source>spilt</source>
        <translation>verschüttet</translation>
    </message>
    <message>
        <source>thrown out</source>
        <translation>weggeworfen</translation>
    </message>
    <message>
        <source>difference found by counting</source>
        <translation>beim Zählen gefundener Unterschied</translation>
    </message>
    <message>
        <source>Sum of the lines of the ledger, in dry grain</source>
        <translation>Summe der Zeilen des Lagerbuchs, in trockenem Korn</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>the record</source>
        <translation>die Aufzeichnung</translation>
    </message>
    <message>
        <source>Left of it</source>
        <translation>Davon übrig</translation>
    </message>
    <message>
        <source>Loose grain</source>
        <translation>Loses Korn</translation>
    </message>
    <message>
        <source>Dry grain</source>
        <translation>Trockenes Korn</translation>
    </message>
    <message>
        <source>nothing of it was taken into stock yet</source>
        <translation>davon wurde noch nichts in den Vorrat genommen</translation>
    </message>
    <message>
        <source>Loose litres = dry grain / litre weight</source>
        <translation>Lose Liter = trockenes Korn / Litergewicht</translation>
    </message>
    <message>
        <source>litre weight, dry</source>
        <translation>Litergewicht, trocken</translation>
    </message>
    <message>
        <source>%1 dry</source>
        <translation>%1 trocken</translation>
    </message>
    <message>
        <source>Tested: not yet</source>
        <translation>Geprüft: noch nicht</translation>
    </message>
    <message numerus="yes">
        <source>Tested: %n sieve test(s), the last on %1</source>
        <translation>
            <numerusform>Geprüft: %n Siebanalyse, die letzte am %1</numerusform>
            <numerusform>Geprüft: %n Siebanalysen, die letzte am %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Tested: %n sieve test(s)</source>
        <translation>
            <numerusform>Geprüft: %n Siebanalyse</numerusform>
            <numerusform>Geprüft: %n Siebanalysen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2 at %3</source>
        <translation>%1, %2 bei %3</translation>
    </message>
    <message>
        <source>weigh a litre of it</source>
        <translation>einen Liter davon wiegen</translation>
    </message>
    <message>
        <source>its own litre weight, else that of its newest sieve test, else its dry mass by the litres it came with</source>
        <translation>das eigene Litergewicht, sonst das der neuesten Siebprobe, sonst die Trockenmasse durch die Liter, mit denen es kam</translation>
    </message>
    <message>
        <source>the litre weight of its bag, since nobody weighed a litre of it</source>
        <translation>das Litergewicht ihres Sacks, da niemand einen Liter davon gewogen hat</translation>
    </message>
    <message>
        <source>the litre weight of its bag by how the fraction was predicted to pack, since nobody weighed a litre of it</source>
        <translation>das Litergewicht ihres Sacks mal der vorhergesagten Packung der Fraktion, da niemand einen Liter davon gewogen hat</translation>
    </message>
    <message>
        <source>litre weight of its bag, dry</source>
        <translation>Litergewicht ihres Sacks, trocken</translation>
    </message>
    <message>
        <source>litre weight of the fraction over that of its bag, as predicted</source>
        <translation>Litergewicht der Fraktion durch das ihres Sacks, wie vorausgesagt</translation>
    </message>
</context>
<context>
    <name>Surroundings</name>
    <message>
        <source>mix %1</source>
        <translation>Mischung %1</translation>
    </message>
    <message>
        <source>tub %1 of %2</source>
        <translation>Wanne %1 von %2</translation>
    </message>
    <message>
        <source>used ground of %1</source>
        <translation>gebrauchtes Substrat von %1</translation>
    </message>
</context>
<context>
    <name>TestSheet</name>
    <message>
        <source>pan</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>sieve, mm</source>
        <translation>Sieb, mm</translation>
    </message>
    <message>
        <source>stayed on</source>
        <translation>liegen geblieben</translation>
    </message>
    <message>
        <source>of the mass</source>
        <translation>der Masse</translation>
    </message>
    <message>
        <source>passing</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Sieve test of %1</source>
        <translation>Siebanalyse von %1</translation>
    </message>
    <message>
        <source>Bag %1</source>
        <translation>Sack %1</translation>
    </message>
    <message>
        <source>sample %1, dry</source>
        <translation>Probe %1, trocken</translation>
    </message>
    <message>
        <source>loss %1</source>
        <translation>Verlust %1</translation>
    </message>
    <message>
        <source>Sieve test</source>
        <translation>Siebanalyse</translation>
    </message>
</context>
<context>
    <name>TreeAgeing</name>
    <message>
        <source>As the grain breaks down, in seasons since the repotting of %1%2: %3</source>
        <translation>Wie das Korn zerfällt, in Saisons seit dem Umtopfen am %1%2: %3</translation>
    </message>
</context>
<context>
    <name>TreeGroups</name>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>own</source>
        <translation>eigene</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>geändert</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>übliche Praxis</translation>
    </message>
</context>
<context>
    <name>Verdict</name>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source>Take it as it is</source>
        <translation>So verwenden, wie er ist</translation>
    </message>
    <message>
        <source>Take it after screening at %1</source>
        <translation>Verwenden nach dem Absieben bei %1</translation>
    </message>
    <message>
        <source>Other use, or complain</source>
        <translation>Anders verwenden oder reklamieren</translation>
    </message>
    <message>
        <source>fraction</source>
        <translation>Fraktion</translation>
    </message>
    <message>
        <source>of the mass</source>
        <translation>der Masse</translation>
    </message>
    <message>
        <source>from a litre</source>
        <translation>von einem Liter</translation>
    </message>
    <message>
        <source>from a bag</source>
        <translation>von einem Sack</translation>
    </message>
    <message>
        <source>D50</source>
        <translation>D50</translation>
    </message>
    <message>
        <source>screen at</source>
        <translation>absieben bei</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>bleibt</translation>
    </message>
    <message>
        <source>usable</source>
        <translation>nutzbar</translation>
    </message>
    <message>
        <source>good enough</source>
        <translation>gut genug</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>Laboratory figures</source>
        <translation>Laborkennwerte</translation>
    </message>
    <message>
        <source>the sieves do not reach far enough</source>
        <translation>die Siebe reichen nicht weit genug</translation>
    </message>
    <message>
        <source>Curvature</source>
        <translation>Krümmungszahl</translation>
    </message>
    <message>
        <source>Fineness modulus</source>
        <translation>Feinheitsmodul</translation>
    </message>
    <message>
        <source>Mean, phi</source>
        <translation>Mittel, phi</translation>
    </message>
    <message>
        <source>Sorting, phi</source>
        <translation>Sortierung, phi</translation>
    </message>
    <message>
        <source>Skewness</source>
        <translation>Schiefe</translation>
    </message>
    <message>
        <source>Kurtosis</source>
        <translation>Wölbung</translation>
    </message>
    <message>
        <source>Price of a usable litre</source>
        <translation>Preis eines nutzbaren Liters</translation>
    </message>
    <message>
        <source>No verdict: %1</source>
        <translation>Kein Urteil: %1</translation>
    </message>
    <message>
        <source>Finer</source>
        <translation>Feiner</translation>
    </message>
    <message>
        <source>Coarser</source>
        <translation>Gröber</translation>
    </message>
    <message>
        <source>Usable of a litre</source>
        <translation>Nutzbar je Liter</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>über %1</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>see the marked cells and fields</source>
        <translation>siehe die markierten Zellen und Felder</translation>
    </message>
    <message>
        <source>finish the sieve test</source>
        <translation>die Siebanalyse abschließen</translation>
    </message>
    <message>
        <source>choose its bag</source>
        <translation>seinen Sack wählen</translation>
    </message>
    <message>
        <source>type price and litres of the bag</source>
        <translation>Preis und Liter des Sacks eintragen</translation>
    </message>
    <message>
        <source>type the wanted grain</source>
        <translation>die gewünschte Körnung eintragen</translation>
    </message>
    <message>
        <source>finer in it</source>
        <translation>feiner darin</translation>
    </message>
    <message>
        <source>Wanted grain in %1</source>
        <translation>Gewünschtes Korn in %1</translation>
    </message>
    <message>
        <source>the sieves do not reach the ends of the wanted grain</source>
        <translation>die Siebe reichen nicht bis an die Enden des gewünschten Korns</translation>
    </message>
    <message>
        <source>Wanted, by mass</source>
        <translation>Gewünscht, nach Masse</translation>
    </message>
    <message>
        <source>%1 to %2, the nearest sieves</source>
        <translation>%1 bis %2, die nächsten Siebe</translation>
    </message>
    <message>
        <source>D50, half is finer</source>
        <translation>D50, die Hälfte ist feiner</translation>
    </message>
    <message>
        <source>D%1</source>
        <translation>D%1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::AgeingView</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Air that drains free, 90 of 100 cases</source>
        <translation>Luft, die frei abzieht, 90 von 100 Fällen</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>Grading, finer than</source>
        <translation>Körnung, feiner als</translation>
    </message>
    <message>
        <source>sieve</source>
        <translation>Sieb</translation>
    </message>
    <message>
        <source>The years to come: air and grading by season</source>
        <translation>Die kommenden Jahre: Luft und Körnung nach Saison</translation>
    </message>
    <message>
        <source>Nothing can be foretold for this mix in this pot.</source>
        <translation>Für diese Mischung in dieser Schale lässt sich nichts vorhersagen.</translation>
    </message>
    <message>
        <source>crumbs stay</source>
        <translation>Krümel bleiben</translation>
    </message>
    <message>
        <source>crumbs wash down</source>
        <translation>Krümel gespült</translation>
    </message>
    <message>
        <source>repotting hint</source>
        <translation>Hinweis zum Umtopfen</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::BackupsCard</name>
    <message>
        <source>%1, before an update of the program</source>
        <translation>%1, vor einer Aktualisierung des Programms</translation>
    </message>
    <message>
        <source>Restore this backup...</source>
        <translation>Diese Sicherung wiederherstellen...</translation>
    </message>
    <message>
        <source>Look into it, reading only</source>
        <translation>Hineinsehen, nur zum Lesen</translation>
    </message>
    <message>
        <source>Backups of the record</source>
        <translation>Sicherungen der Aufzeichnung</translation>
    </message>
    <message>
        <source>Backups of the record, newest first</source>
        <translation>Sicherungen der Aufzeichnung, neueste zuerst</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>beschädigt</translation>
    </message>
    <message>
        <source>None yet. The first is made before the first change of another day, into %1.</source>
        <translation>Noch keine. Die erste entsteht vor der ersten Änderung eines anderen Tages, in %1.</translation>
    </message>
    <message>
        <source>In %1. One is made before the first change of a day; those of the last 10 days and the last one of each of 12 months are kept.</source>
        <translation>In %1. Eine entsteht vor der ersten Änderung eines Tages; die der letzten 10 Tage und die jeweils letzte von 12 Monaten bleiben.</translation>
    </message>
    <message>
        <source>checked</source>
        <translation>geprüft</translation>
    </message>
    <message>
        <source>intact</source>
        <translation>unversehrt</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::BagsPage</name>
    <message>
        <source>F&amp;ind</source>
        <translation>&amp;Suchen</translation>
    </message>
    <message>
        <source>bag, material or lot</source>
        <translation>Sack, Material oder Charge</translation>
    </message>
    <message>
        <source>Find a bag</source>
        <translation>Sack suchen</translation>
    </message>
    <message>
        <source>Material of the bags to receive</source>
        <translation>Material der anzunehmenden Säcke</translation>
    </message>
    <message>
        <source>&amp;Receive bags</source>
        <translation>Säcke a&amp;nnehmen</translation>
    </message>
    <message>
        <source>Receive bags of this material</source>
        <translation>Säcke dieses Materials annehmen</translation>
    </message>
    <message>
        <source>No bags yet. Choose a material and receive the first ones: the lot, how many, their litres or mass. Grading them is one click from here.</source>
        <translation>Noch keine Säcke. Ein Material wählen und die ersten annehmen: Charge, Anzahl, Liter oder Masse. Das Prüfen der Körnung ist von hier einen Klick entfernt.</translation>
    </message>
    <message>
        <source>Bags</source>
        <translation>Säcke</translation>
    </message>
    <message>
        <source>Enter puts the fraction into the mix.</source>
        <translation>Die Eingabetaste gibt die Fraktion in die Mischung.</translation>
    </message>
    <message>
        <source>Grade this bag</source>
        <translation>Körnung dieses Sacks prüfen</translation>
    </message>
    <message>
        <source>&amp;Take into stock</source>
        <translation>In den &amp;Vorrat</translation>
    </message>
    <message>
        <source>Take into stock</source>
        <translation>In den Vorrat nehmen</translation>
    </message>
    <message>
        <source>Meas&amp;ure...</source>
        <translation>&amp;Messen...</translation>
    </message>
    <message>
        <source>Measure this bag: litre weight, grain density, water, crumbling</source>
        <translation>Diesen Sack messen: Litergewicht, Korndichte, Wasser, Zerfall</translation>
    </message>
    <message>
        <source>%1 of bag %2</source>
        <translation>%1 von Sack %2</translation>
    </message>
    <message>
        <source>&amp;Lot</source>
        <translation>&amp;Charge</translation>
    </message>
    <message>
        <source>as marked on the bag</source>
        <translation>wie auf dem Sack vermerkt</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>&amp;Number of bags</source>
        <translation>Anzahl der Säc&amp;ke</translation>
    </message>
    <message>
        <source>of this lot</source>
        <translation>dieser Charge</translation>
    </message>
    <message>
        <source>number</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>&amp;Printed size, from</source>
        <translation>A&amp;ufdruck, von</translation>
    </message>
    <message>
        <source>provisional until the lot is sieved</source>
        <translation>vorläufig, bis die Charge gesiebt ist</translation>
    </message>
    <message>
        <source>printed size</source>
        <translation>aufgedruckte Größe</translation>
    </message>
    <message>
        <source>Printed size, to</source>
        <translation>Aufdruck, bis</translation>
    </message>
    <message>
        <source>the coarse end</source>
        <translation>das grobe Ende</translation>
    </message>
    <message>
        <source>Litres in one b&amp;ag</source>
        <translation>&amp;Liter in einem Sack</translation>
    </message>
    <message>
        <source>loose, as printed or measured</source>
        <translation>lose, wie aufgedruckt oder gemessen</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>Mass of one bag</source>
        <translation>Masse eines Sacks</translation>
    </message>
    <message>
        <source>as bagged; kg can be typed</source>
        <translation>wie abgefüllt; auch in kg</translation>
    </message>
    <message>
        <source>The bag was weighed</source>
        <translation>Gewogen wurde</translation>
    </message>
    <message>
        <source>as bagged</source>
        <translation>wie abgefüllt</translation>
    </message>
    <message>
        <source>air-dry</source>
        <translation>lufttrocken</translation>
    </message>
    <message>
        <source>oven-dry</source>
        <translation>ofentrocken</translation>
    </message>
    <message>
        <source>weighing</source>
        <translation>Wägung</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Gewogen</translation>
    </message>
    <message>
        <source>water per dry mass, as bagged</source>
        <translation>Wasser je Trockenmasse</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>Litre weight, &amp;dry</source>
        <translation>Litergewicht, t&amp;rocken</translation>
    </message>
    <message>
        <source>measured on this lot</source>
        <translation>an dieser Charge gemessen</translation>
    </message>
    <message>
        <source>litre weight</source>
        <translation>Litergewicht</translation>
    </message>
    <message>
        <source>Grain densit&amp;y</source>
        <translation>K&amp;orndichte</translation>
    </message>
    <message>
        <source>grain density</source>
        <translation>Korndichte</translation>
    </message>
    <message>
        <source>Price of one &amp;bag</source>
        <translation>Pre&amp;is eines Sacks</translation>
    </message>
    <message>
        <source>in your money</source>
        <translation>in der eigenen Währung</translation>
    </message>
    <message>
        <source>price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>your word for it; after the price</source>
        <translation>steht nach dem Preis</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>Received on</source>
        <translation>Angenommen am</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>anything worth knowing next year</source>
        <translation>was nächstes Jahr wissenswert ist</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>bag %1</source>
        <translation>Sack %1</translation>
    </message>
    <message>
        <source>Received bag %1</source>
        <translation>Sack %1 angenommen</translation>
    </message>
    <message>
        <source>bag %1 removed</source>
        <translation>Sack %1 entfernt</translation>
    </message>
    <message>
        <source>bag %1 taken into stock</source>
        <translation>Sack %1 in den Vorrat genommen</translation>
    </message>
    <message>
        <source>Bags and fractions</source>
        <translation>Säcke und Fraktionen</translation>
    </message>
    <message>
        <source>Bins and tubs</source>
        <translation>Kisten und Wannen</translation>
    </message>
    <message>
        <source>Taken back from</source>
        <translation>Zurückgenommen von</translation>
    </message>
    <message>
        <source>It stood in</source>
        <translation>Es stand in</translation>
    </message>
    <message>
        <source>the mix it was, like MX-01/1</source>
        <translation>die Mischung, die es war, wie MX-01/1</translation>
    </message>
    <message>
        <source>Taken back on</source>
        <translation>Zurückgenommen am</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>Baum</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>Mischung</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>zurückgenommen</translation>
    </message>
    <message>
        <source>No bag has these words.</source>
        <translation>Kein Sack hat diese Wörter.</translation>
    </message>
    <message>
        <source>%1 of dry grain came; take it into stock to follow what is left.</source>
        <translation>%1 trockenes Korn kamen; in den Vorrat nehmen, um zu verfolgen, was übrig ist.</translation>
    </message>
    <message>
        <source>Type the mass of a bag, or its litres and the litre weight, to take it into stock.</source>
        <translation>Masse eines Sacks oder Liter und Litergewicht eingeben, um ihn in den Vorrat zu nehmen.</translation>
    </message>
    <message>
        <source>Grade thi&amp;s bag</source>
        <translation>Körnung &amp;prüfen</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>The stock counts dry grain: type the moisture, or choose oven-dry for how the bag was weighed, to take it into stock.</source>
        <translation>Der Vorrat zählt trockenes Korn: die Feuchte eintragen oder ofentrocken wählen, so wie der Sack gewogen wurde, um ihn in den Vorrat zu nehmen.</translation>
    </message>
    <message>
        <source>Bag %1 stays: tests, mixes or the stock name it. Count 0 left where it is used up.</source>
        <translation>Sack %1 bleibt: Analysen, Mischungen oder der Vorrat nennen ihn. Ist er aufgebraucht, 0 als gezählt buchen.</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>%1, and what came into stock with it</source>
        <translation>%1, und was damit in den Vorrat kam</translation>
    </message>
    <message>
        <source>Fractions on the shelf</source>
        <translation>Fraktionen im Vorrat</translation>
    </message>
    <message>
        <source>a tree, like TR-06; empty if bought</source>
        <translation>ein Baum, wie TR-06; leer, wenn gekauft</translation>
    </message>
    <message>
        <source>&amp;Material to receive</source>
        <translation>Anzunehmendes Ma&amp;terial</translation>
    </message>
    <message>
        <source>What is in the bag</source>
        <translation>Was im Sack ist</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Bag %1 keeps its material, as a mix, a fraction or a bin has grain of it: receive the bag anew, and count 0 left of this one.</source>
        <translation>Sack %1 behält sein Material, weil eine Mischung, eine Fraktion oder eine Kiste Korn von ihm hat: den Sack neu annehmen und von diesem 0 übrig zählen.</translation>
    </message>
    <message>
        <source>Bag %1 is %2 now, on its sieve tests and on the bench too.</source>
        <translation>Sack %1 ist jetzt %2, auch in seinen Siebanalysen und auf dem Arbeitstisch.</translation>
    </message>
    <message>
        <source>Bag %1 is in stock already.</source>
        <translation>Sack %1 ist schon im Vorrat.</translation>
    </message>
    <message>
        <source>In stock now: %1 of bag %2.</source>
        <translation>Jetzt im Vorrat: %1 von Sack %2.</translation>
    </message>
    <message>
        <source>No bag has these words, but fractions below have.</source>
        <translation>Kein Sack hat diese Wörter, aber Fraktionen darunter.</translation>
    </message>
    <message>
        <source>Fraction %1 is marked: choose the bag in its list to remove it.</source>
        <translation>Fraktion %1 ist markiert: den Sack in seiner Liste wählen, um ihn zu entfernen.</translation>
    </message>
    <message>
        <source>a day like %1</source>
        <translation>ein Tag wie %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::BandRow</name>
    <message>
        <source>Wanted grain, from</source>
        <translation>Gewünschte Körnung, von</translation>
    </message>
    <message>
        <source>finest size wanted</source>
        <translation>feinste gewünschte Größe</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>coarsest size wanted</source>
        <translation>gröbste gewünschte Größe</translation>
    </message>
    <message>
        <source>wanted grain</source>
        <translation>gewünschte Körnung</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::BinsTab</name>
    <message>
        <source>%1 (since %2)</source>
        <translation>%1 (seit %2)</translation>
    </message>
    <message>
        <source>Nothing is noted to lie in it now.</source>
        <translation>Es ist nichts vermerkt, das jetzt darin liegt.</translation>
    </message>
    <message>
        <source>It holds %1.</source>
        <translation>Sie enthält %1.</translation>
    </message>
    <message>
        <source>What is taken out may contain each of: %1.</source>
        <translation>Was herausgenommen wird, kann jedes davon enthalten: %1.</translation>
    </message>
    <message>
        <source>%1 of bin %2</source>
        <translation>%1 von Kiste %2</translation>
    </message>
    <message>
        <source>Bins and leftover tubs</source>
        <translation>Kisten und Restwannen</translation>
    </message>
    <message>
        <source>bin by number, name or material</source>
        <translation>Kiste nach Nummer, Name oder Material</translation>
    </message>
    <message>
        <source>No bins yet. A bin or leftover tub holds several lots; what is taken out of it may contain each of them.</source>
        <translation>Noch keine Kisten. Eine Kiste oder Restwanne enthält mehrere Chargen; was herausgenommen wird, kann jede davon enthalten.</translation>
    </message>
    <message>
        <source>left</source>
        <translation>übrig</translation>
    </message>
    <message>
        <source>Add a &amp;bin or tub</source>
        <translation>Kiste oder Wanne hinzu&amp;fügen</translation>
    </message>
    <message>
        <source>What was tipped into it</source>
        <translation>Was hineingefüllt wurde</translation>
    </message>
    <message>
        <source>&amp;Put into the mix</source>
        <translation>In die &amp;Mischung</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>as it stands on the lid</source>
        <translation>wie es auf dem Deckel steht</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Material of the bin</source>
        <translation>Material der Kiste</translation>
    </message>
    <message>
        <source>of several materials</source>
        <translation>aus mehreren Materialien</translation>
    </message>
    <message>
        <source>material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>&amp;Material</source>
        <translation>Ma&amp;terial</translation>
    </message>
    <message>
        <source>&amp;Litre weight, dry</source>
        <translation>&amp;Litergewicht, trocken</translation>
    </message>
    <message>
        <source>measured on what lies in it</source>
        <translation>gemessen an dem, was darin liegt</translation>
    </message>
    <message>
        <source>litre weight</source>
        <translation>Litergewicht</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>anything worth knowing next year</source>
        <translation>was nächstes Jahr wissenswert ist</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Tip in</source>
        <translation>Einfüllen</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Wie viel</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>It is empty</source>
        <translation>Sie ist leer</translation>
    </message>
    <message>
        <source>leftovers</source>
        <translation>Reste</translation>
    </message>
    <message>
        <source>bin %1</source>
        <translation>Kiste %1</translation>
    </message>
    <message>
        <source>Put up bin %1</source>
        <translation>Kiste %1 aufgestellt</translation>
    </message>
    <message>
        <source>bin %1 removed</source>
        <translation>Kiste %1 entfernt</translation>
    </message>
    <message>
        <source>Type the number of what is tipped in.</source>
        <translation>Die Nummer dessen eingeben, was eingefüllt wird.</translation>
    </message>
    <message>
        <source>%1 tipped into bin %2</source>
        <translation>%1 in Kiste %2 gefüllt</translation>
    </message>
    <message>
        <source>Tipped %1 into bin %2</source>
        <translation>%1 in Kiste %2 gefüllt</translation>
    </message>
    <message>
        <source>bin %1 emptied</source>
        <translation>Kiste %1 geleert</translation>
    </message>
    <message>
        <source>Bin %1 is empty</source>
        <translation>Kiste %1 ist leer</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>tipped in</source>
        <translation>eingefüllt</translation>
    </message>
    <message>
        <source>until</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>trocken</translation>
    </message>
    <message>
        <source>still in it</source>
        <translation>noch darin</translation>
    </message>
    <message>
        <source>G&amp;rade this bin</source>
        <translation>Körnung &amp;prüfen</translation>
    </message>
    <message>
        <source>Bin %1 stays: tests, batches or the stock name it. Write down that it is empty instead.</source>
        <translation>Kiste %1 bleibt: Analysen, Ansätze oder der Vorrat nennen sie. Stattdessen aufschreiben, dass sie leer ist.</translation>
    </message>
    <message>
        <source>A bin can&apos;t be tipped into itself: name another.</source>
        <translation>Eine Kiste kann nicht in sich selbst gefüllt werden: eine andere nennen.</translation>
    </message>
    <message>
        <source>no.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>Mischung</translation>
    </message>
    <message>
        <source>since</source>
        <translation>seit</translation>
    </message>
    <message>
        <source>Mix left over on the shelf</source>
        <translation>Übrige Mischung im Vorrat</translation>
    </message>
    <message>
        <source>Put this tub into the mix</source>
        <translation>Diese Wanne in die Mischung geben</translation>
    </message>
    <message>
        <source>like %1</source>
        <translation>wie %1</translation>
    </message>
    <message>
        <source>bag, lot, batch or bin</source>
        <translation>Sack, Charge, Ansatz oder Kiste</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::CautionBar</name>
    <message>
        <source>Got it</source>
        <translation>Verstanden</translation>
    </message>
    <message>
        <source>Put away the caution: %1</source>
        <translation>Vorsichtshinweis weggelegt: %1</translation>
    </message>
    <message>
        <source>All of it</source>
        <translation>Alles lesen</translation>
    </message>
    <message>
        <source>All of the caution: %1</source>
        <translation>Den ganzen Vorsichtshinweis lesen: %1</translation>
    </message>
    <message>
        <source>Less of it</source>
        <translation>Weniger lesen</translation>
    </message>
    <message>
        <source>Less of the caution: %1</source>
        <translation>Den Vorsichtshinweis kürzer lesen: %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ComparisonView</name>
    <message>
        <source>Mixes side by side</source>
        <translation>Mischungen nebeneinander</translation>
    </message>
    <message>
        <source>air %1, water %2</source>
        <translation>Luft %1, Wasser %2</translation>
    </message>
    <message>
        <source>Mixes compared</source>
        <translation>Mischungen verglichen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Stop comparing</source>
        <translation>Vergleich anhalten</translation>
    </message>
    <message>
        <source>on the bench</source>
        <translation>auf dem Arbeitstisch</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1; by pot test %2</source>
        <translation>%1; nach Schalentest %2</translation>
    </message>
    <message>
        <source>%1; leaning on pot test %2</source>
        <translation>%1; gestützt auf Schalentest %2</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>grain and trapped air</source>
        <translation>Korn und eingeschlossene Luft</translation>
    </message>
    <message>
        <source>wanted grain</source>
        <translation>gewünschtes Korn</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::DayPage</name>
    <message>
        <source>Dust and lifting.</source>
        <translation>Staub und Heben.</translation>
    </message>
    <message>
        <source>Screen damp, outdoors, with a mask; from 16 kg lift with two or use a trolley, less at arm&apos;s length. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation>Feucht, im Freien und mit Maske absieben; ab 16 kg zu zweit heben oder einen Karren nehmen, am ausgestreckten Arm schon früher. Allgemeine Hinweise; Sicherheitsdatenblätter, örtliche Vorschriften und fachkundiger Rat gehen vor.</translation>
    </message>
    <message>
        <source>No repotting day yet. Make one, then put trees on it: their litres, what to screen, buy and mix, and what is heavy follow by themselves. The season tells which trees are due.</source>
        <translation>Noch kein Umtopftag. Einen anlegen und Bäume daraufsetzen: Liter, was abzusieben, zu kaufen und zu mischen ist und was schwer ist, ergeben sich von selbst. Die Saison sagt, welche Bäume an der Reihe sind.</translation>
    </message>
    <message>
        <source>Trees of the day in working order</source>
        <translation>Bäume des Tages in Arbeitsfolge</translation>
    </message>
    <message>
        <source>Space ticks a tree off; plan, litres, buds, helper and note are written into the table.</source>
        <translation>Die Leertaste hakt einen Baum ab; Plan, Liter, Knospen, Helfer und Notiz werden in die Tabelle geschrieben.</translation>
    </message>
    <message>
        <source>What the day takes</source>
        <translation>Was der Tag braucht</translation>
    </message>
    <message>
        <source>Litres</source>
        <translation>Liter</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation>Ansätze</translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation>Heben</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Tree</source>
        <translation>Baum</translation>
    </message>
    <message>
        <source>Screen and buy</source>
        <translation>Absieben und kaufen</translation>
    </message>
    <message>
        <source>Lists</source>
        <translation>Listen</translation>
    </message>
    <message>
        <source>Left over</source>
        <translation>Übrig</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>Repotting day</source>
        <translation>Umtopftag</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Tag</translation>
    </message>
    <message>
        <source>New day</source>
        <translation>Neuer Tag</translation>
    </message>
    <message>
        <source>Make a new repotting day</source>
        <translation>Einen neuen Umtopftag anlegen</translation>
    </message>
    <message>
        <source>Tree to put on the day</source>
        <translation>Baum für den Tag</translation>
    </message>
    <message>
        <source>&amp;Tree</source>
        <translation>Ba&amp;um</translation>
    </message>
    <message>
        <source>Put on the day</source>
        <translation>Auf den Tag setzen</translation>
    </message>
    <message>
        <source>Put this tree on the day</source>
        <translation>Diesen Baum auf den Tag setzen</translation>
    </message>
    <message>
        <source>Order of work</source>
        <translation>Arbeitsfolge</translation>
    </message>
    <message>
        <source>buds</source>
        <translation>Knospen</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>Mischung</translation>
    </message>
    <message>
        <source>helper</source>
        <translation>Helfer</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>&amp;Work by</source>
        <translation>&amp;Folge nach</translation>
    </message>
    <message>
        <source>How so?</source>
        <translation>Wieso?</translation>
    </message>
    <message>
        <source>How the figures of the day come about</source>
        <translation>Wie die Zahlen des Tages zustande kommen</translation>
    </message>
    <message>
        <source>Tick off what has litres</source>
        <translation>Abhaken, was Liter hat</translation>
    </message>
    <message>
        <source>Tick off every tree whose litres were written</source>
        <translation>Jeden Baum abhaken, dessen Liter eingetragen sind</translation>
    </message>
    <message>
        <source>Day sheet...</source>
        <translation>Tagesblatt...</translation>
    </message>
    <message>
        <source>Batch cards...</source>
        <translation>Mischkarten...</translation>
    </message>
    <message>
        <source>Pot labels...</source>
        <translation>Schalenetiketten...</translation>
    </message>
    <message>
        <source>Write as PDF: %1</source>
        <translation>Als PDF schreiben: %1</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>stands on the sheets</source>
        <translation>steht auf den Blättern</translation>
    </message>
    <message>
        <source>Tub</source>
        <translation>Wanne</translation>
    </message>
    <message>
        <source>no batch is larger</source>
        <translation>kein Ansatz ist größer</translation>
    </message>
    <message>
        <source>tub</source>
        <translation>Wanne</translation>
    </message>
    <message>
        <source>Scoop</source>
        <translation>Schaufel</translation>
    </message>
    <message>
        <source>struck off level</source>
        <translation>eben abgestrichen</translation>
    </message>
    <message>
        <source>scoop</source>
        <translation>Schaufel</translation>
    </message>
    <message>
        <source>Settling</source>
        <translation>Setzung</translation>
    </message>
    <message>
        <source>settling</source>
        <translation>Setzung</translation>
    </message>
    <message>
        <source>Spill</source>
        <translation>Streuverlust</translation>
    </message>
    <message>
        <source>spill</source>
        <translation>Streuverlust</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>weather, helpers, what to do better</source>
        <translation>Wetter, Helfer, was besser werden soll</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Take the plan from the record</source>
        <translation>Plan aus der Aufzeichnung holen</translation>
    </message>
    <message>
        <source>Take pot litres from the tree&apos;s newest root-mass plan</source>
        <translation>Liter der Schale aus dem neuesten Ballenplan des Baums holen</translation>
    </message>
    <message>
        <source>Take off the day</source>
        <translation>Vom Tag nehmen</translation>
    </message>
    <message>
        <source>Take this tree off the day</source>
        <translation>Diesen Baum vom Tag nehmen</translation>
    </message>
    <message>
        <source>Mix of this tree</source>
        <translation>Mischung dieses Baums</translation>
    </message>
    <message>
        <source>Pot of this tree</source>
        <translation>Schale dieses Baums</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Mischung</translation>
    </message>
    <message>
        <source>Pot</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>New mix in the pot</source>
        <translation>Neue Mischung in der Schale</translation>
    </message>
    <message>
        <source>as it lies; empty: all the pot holds</source>
        <translation>wie sie liegt; leer: alles, was die Schale fasst</translation>
    </message>
    <message>
        <source>fill</source>
        <translation>Füllung</translation>
    </message>
    <message>
        <source>If it goes worse</source>
        <translation>Wenn es schlechter kommt</translation>
    </message>
    <message>
        <source>new mix of the worst fall-back</source>
        <translation>neue Mischung beim ungünstigsten Ausweichplan</translation>
    </message>
    <message>
        <source>fall-back</source>
        <translation>Ausweichplan</translation>
    </message>
    <message>
        <source>Kept root mass</source>
        <translation>Bleibender Ballen</translation>
    </message>
    <message>
        <source>weighed with what clings to it; kg can be typed</source>
        <translation>gewogen mit allem, was haftet; kg darf eingegeben werden</translation>
    </message>
    <message>
        <source>kept root mass</source>
        <translation>bleibender Ballen</translation>
    </message>
    <message>
        <source>Find a recipe from what is on the shelf</source>
        <translation>Ein Rezept aus dem Vorrat suchen</translation>
    </message>
    <message>
        <source>The evening before</source>
        <translation>Am Abend davor</translation>
    </message>
    <message>
        <source>In the morning</source>
        <translation>Am Morgen</translation>
    </message>
    <message>
        <source>What follows from the figures</source>
        <translation>Was aus den Zahlen folgt</translation>
    </message>
    <message>
        <source>Space ticks, F2 changes a line, Delete takes it away.</source>
        <translation>Leertaste hakt ab, F2 ändert eine Zeile, Entf nimmt sie weg.</translation>
    </message>
    <message>
        <source>one more line, then Enter</source>
        <translation>noch eine Zeile, dann Eingabe</translation>
    </message>
    <message>
        <source>One more line: %1</source>
        <translation>Noch eine Zeile: %1</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>list</source>
        <translation>Liste</translation>
    </message>
    <message>
        <source>Mix that is left over</source>
        <translation>Mischung, die übrig ist</translation>
    </message>
    <message>
        <source>Made in all</source>
        <translation>Insgesamt hergestellt</translation>
    </message>
    <message>
        <source>Return to stock</source>
        <translation>In den Vorrat zurück</translation>
    </message>
    <message>
        <source>Trees due by</source>
        <translation>Fällige Bäume bis</translation>
    </message>
    <message>
        <source>Season sheet...</source>
        <translation>Saisonblatt...</translation>
    </message>
    <message>
        <source>Write the season as PDF</source>
        <translation>Die Saison als PDF schreiben</translation>
    </message>
    <message>
        <source>%1 of repotting day %2</source>
        <translation>%1 von Umtopftag %2</translation>
    </message>
    <message>
        <source>%1 of tree %2</source>
        <translation>%1 von Baum %2</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>litres</source>
        <translation>Liter</translation>
    </message>
    <message>
        <source>repotting day</source>
        <translation>Umtopftag</translation>
    </message>
    <message>
        <source>Label the old pots</source>
        <translation>Die alten Schalen beschriften</translation>
    </message>
    <message>
        <source>repotting day %1</source>
        <translation>Umtopftag %1</translation>
    </message>
    <message>
        <source>repotting day %1 removed</source>
        <translation>Umtopftag %1 entfernt</translation>
    </message>
    <message>
        <source>tree %1</source>
        <translation>Baum %1</translation>
    </message>
    <message>
        <source>Tree %1 is done; take its tick back first.</source>
        <translation>Baum %1 ist erledigt; zuerst den Haken zurücknehmen.</translation>
    </message>
    <message>
        <source>tree %1 taken off</source>
        <translation>Baum %1 vom Tag genommen</translation>
    </message>
    <message>
        <source>Tree %1 can&apos;t be ticked off yet: see its note.</source>
        <translation>Baum %1 lässt sich noch nicht abhaken: siehe seine Notiz.</translation>
    </message>
    <message>
        <source>Done: %1. Undo gives all back.</source>
        <translation>Erledigt: %1. Rückgängig gibt alles zurück.</translation>
    </message>
    <message>
        <source>Done: %1. By the record %2 is below nothing: count it.</source>
        <translation>Erledigt: %1. Nach den Büchern ist %2 unter null: nachzählen.</translation>
    </message>
    <message>
        <source>Write what was made and what is left first.</source>
        <translation>Zuerst eintragen, was hergestellt wurde und was übrig ist.</translation>
    </message>
    <message>
        <source>In stock: %1.</source>
        <translation>Im Vorrat: %1.</translation>
    </message>
    <message>
        <source>no trees yet</source>
        <translation>noch keine Bäume</translation>
    </message>
    <message>
        <source>all are on it</source>
        <translation>alle stehen darauf</translation>
    </message>
    <message>
        <source>Put trees on the day first.</source>
        <translation>Zuerst Bäume auf den Tag setzen.</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>Zu kaufen</translation>
    </message>
    <message>
        <source>For each tree</source>
        <translation>Für jeden Baum</translation>
    </message>
    <message>
        <source>%1 by what was used: %2, the median of the last %3</source>
        <translation>%1 nach Verbrauch: %2, der Median der letzten %3</translation>
    </message>
    <message>
        <source>Heaviest: %1, %2</source>
        <translation>Am schwersten: %1, %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>By the record %1 is below nothing: count it</source>
        <translation>Nach den Büchern ist %1 unter null: nachzählen</translation>
    </message>
    <message>
        <source>%1 of %2 trees done, sheet revision %3</source>
        <translation>%1 von %2 Bäumen erledigt, Blattfassung %3</translation>
    </message>
    <message>
        <source>No tree chosen</source>
        <translation>Kein Baum gewählt</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keiner</translation>
    </message>
    <message>
        <source>No tree is due by then, as far as the record knows.</source>
        <translation>Bis dahin ist kein Baum fällig, soweit die Aufzeichnung weiß.</translation>
    </message>
    <message>
        <source>Trees that are due and can&apos;t be added up yet</source>
        <translation>Fällige Bäume, die sich noch nicht zusammenzählen lassen</translation>
    </message>
    <message>
        <source>How the day adds up</source>
        <translation>Wie sich der Tag zusammenzählt</translation>
    </message>
    <message>
        <source>day sheet</source>
        <translation>Tagesblatt</translation>
    </message>
    <message>
        <source>batch cards</source>
        <translation>Mischkarten</translation>
    </message>
    <message>
        <source>pot labels</source>
        <translation>Schalenetiketten</translation>
    </message>
    <message>
        <source>season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Gespeichert als %1.</translation>
    </message>
    <message>
        <source>There is nothing to print yet: put trees with mix and pot on the day.</source>
        <translation>Noch nichts zu drucken: Bäume mit Mischung und Schale auf den Tag setzen.</translation>
    </message>
    <message>
        <source>Root-mass plans</source>
        <translation>Ballenpläne</translation>
    </message>
    <message>
        <source>order of work</source>
        <translation>Arbeitsfolge</translation>
    </message>
    <message>
        <source>sheet of repotting day %1 printed</source>
        <translation>Blatt von Umtopftag %1 gedruckt</translation>
    </message>
    <message>
        <source>empty: of the mix, else as learnt, else 0 %</source>
        <translation>leer: die der Mischung, sonst wie gelernt, sonst 0 %</translation>
    </message>
    <message>
        <source>Sphagnum of the shoulder</source>
        <translation>Sphagnum der Schulter</translation>
    </message>
    <message>
        <source>as it lies; from the plan, where there is a shoulder</source>
        <translation>wie es liegt; aus dem Plan, wo es eine Schulter gibt</translation>
    </message>
    <message>
        <source>sphagnum</source>
        <translation>Sphagnum</translation>
    </message>
    <message>
        <source>Top dressing of</source>
        <translation>Abdeckung aus</translation>
    </message>
    <message>
        <source>a bag like K-07, a fraction or a material; its thickness stands at the pot</source>
        <translation>ein Sack wie K-07, eine Fraktion oder ein Material; ihre Dicke steht bei der Schale</translation>
    </message>
    <message>
        <source>top dressing</source>
        <translation>Abdeckung</translation>
    </message>
    <message>
        <source>Corrected: tree %1, with its history and the stock. Undo gives all back.</source>
        <translation>Berichtigt: Baum %1, mit seiner Geschichte und dem Vorrat. Rückgängig gibt alles zurück.</translation>
    </message>
    <message>
        <source>What was made and what is left of a mix: the leftover becomes a tub in stock, and what was spilt teaches the next day.</source>
        <translation>Was von einer Mischung hergestellt wurde und übrig ist: Der Rest wird eine Wanne im Vorrat, und der Streuverlust lehrt den nächsten Tag.</translation>
    </message>
    <message>
        <source>Return the leftover to stock</source>
        <translation>Den Rest in den Vorrat zurückgeben</translation>
    </message>
    <message>
        <source>This day stays: trees were ticked off on it. Take their ticks back first.</source>
        <translation>Dieser Tag bleibt: Es wurden Bäume darauf abgehakt. Erst die Haken zurücknehmen.</translation>
    </message>
    <message>
        <source>There is no further tree to put on the day: add one on the Trees tab first.</source>
        <translation>Es gibt keinen weiteren Baum für den Tag: erst im Reiter Bäume einen anlegen.</translation>
    </message>
    <message>
        <source>No open tree has its litres yet: write them under “poured in” first.</source>
        <translation>Noch kein offener Baum hat Liter: sie erst unter „eingefüllt“ schreiben.</translation>
    </message>
    <message>
        <source>More can&apos;t be left over than was made: correct one of them.</source>
        <translation>Es kann nicht mehr übrig sein, als hergestellt wurde: eine der Zahlen berichtigen.</translation>
    </message>
    <message>
        <source>%1, removed</source>
        <translation>%1, entfernt</translation>
    </message>
    <message>
        <source>No tree of the day has a root-mass plan in the record: plan its root mass first.</source>
        <translation>Kein Baum des Tages hat einen Ballenplan in der Aufzeichnung: erst seinen Ballen planen.</translation>
    </message>
    <message>
        <source>The history of tree %1 has no cuts, as its root-mass plan can&apos;t be worked out: mend the plan, then tick the tree again.</source>
        <translation>In der Geschichte von Baum %1 stehen keine Schnitte, weil sich sein Ballenplan nicht berechnen lässt: den Plan berichtigen, dann den Baum neu abhaken.</translation>
    </message>
    <message>
        <source>planned: %1, Enter takes it</source>
        <translation>geplant: %1, die Eingabetaste übernimmt es</translation>
    </message>
    <message>
        <source>likely: %1, Enter takes it</source>
        <translation>wohl: %1, die Eingabetaste übernimmt es</translation>
    </message>
    <message>
        <source>Root-mass plans...</source>
        <translation>Ballenpläne...</translation>
    </message>
    <message>
        <source>Find parts from the shelf</source>
        <translation>Teile aus dem Vorrat suchen</translation>
    </message>
    <message>
        <source>root-mass plans</source>
        <translation>Ballenpläne</translation>
    </message>
    <message>
        <source>Short of grain, see “Screen and buy”: %1</source>
        <translation>Es fehlt Korn, siehe „Absieben und kaufen“: %1</translation>
    </message>
    <message>
        <source>To mix</source>
        <translation>Zu mischen</translation>
    </message>
    <message>
        <source>empty: of the mix, else as learnt, else 7 %</source>
        <translation>leer: wie bei der Mischung, sonst wie gelernt, sonst 7 %</translation>
    </message>
    <message>
        <source>Done: %1. Undo ticks it off again.</source>
        <translation>Erledigt: %1. Rückgängig hakt ihn wieder ab.</translation>
    </message>
    <message>
        <source>By its date the day is still to come: correct the date if the work is done.</source>
        <translation>Nach seinem Datum steht der Tag noch bevor: das Datum berichtigen, wenn die Arbeit getan ist.</translation>
    </message>
    <message>
        <source>%1 %2, %3 of %4 done</source>
        <comment>a day, its name, trees done, all its trees</comment>
        <translation>%1 %2, %3 von %4 erledigt</translation>
    </message>
    <message>
        <source>a day like %1</source>
        <translation>ein Tag wie %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::DayRoom</name>
    <message>
        <source>Repotting da&amp;y</source>
        <translation>Umt&amp;opftag</translation>
    </message>
    <message>
        <source>&amp;New day</source>
        <translation>&amp;Neuer Tag</translation>
    </message>
    <message>
        <source>Ctrl+Alt+N</source>
        <translation>Ctrl+Alt+N</translation>
    </message>
    <message>
        <source>&amp;Put the tree on the day</source>
        <translation>Den Baum auf den Tag &amp;setzen</translation>
    </message>
    <message>
        <source>Ctrl+Alt+A</source>
        <translation>Ctrl+Alt+A</translation>
    </message>
    <message>
        <source>Take the tree o&amp;ff the day</source>
        <translation>Den Baum &amp;vom Tag nehmen</translation>
    </message>
    <message>
        <source>Ctrl+Alt+R</source>
        <translation>Ctrl+Alt+R</translation>
    </message>
    <message>
        <source>Ctrl+Alt+G</source>
        <translation>Ctrl+Alt+G</translation>
    </message>
    <message>
        <source>&amp;Tick the tree off, or back</source>
        <translation>Den Baum abha&amp;ken oder zurück</translation>
    </message>
    <message>
        <source>Ctrl+Alt+K</source>
        <translation>Ctrl+Alt+K</translation>
    </message>
    <message>
        <source>Tick off &amp;what has litres</source>
        <translation>Abhaken, &amp;was Liter hat</translation>
    </message>
    <message>
        <source>Ctrl+Alt+E</source>
        <translation>Ctrl+Alt+E</translation>
    </message>
    <message>
        <source>&amp;Season</source>
        <translation>S&amp;aison</translation>
    </message>
    <message>
        <source>Ctrl+Alt+S</source>
        <translation>Ctrl+Alt+S</translation>
    </message>
    <message>
        <source>&amp;Remove the day</source>
        <translation>Den Tag &amp;entfernen</translation>
    </message>
    <message>
        <source>Ctrl+Alt+Shift+Delete</source>
        <translation>Ctrl+Alt+Shift+Delete</translation>
    </message>
    <message>
        <source>&amp;Day sheet as PDF...</source>
        <translation>&amp;Tagesblatt als PDF...</translation>
    </message>
    <message>
        <source>Ctrl+Alt+D</source>
        <translation>Ctrl+Alt+D</translation>
    </message>
    <message>
        <source>&amp;Batch cards as PDF...</source>
        <translation>&amp;Mischkarten als PDF...</translation>
    </message>
    <message>
        <source>Ctrl+Alt+B</source>
        <translation>Ctrl+Alt+B</translation>
    </message>
    <message>
        <source>Pot &amp;labels as PDF...</source>
        <translation>Schalenet&amp;iketten als PDF...</translation>
    </message>
    <message>
        <source>Alt+Shift+L</source>
        <translation>Alt+Shift+L</translation>
    </message>
    <message>
        <source>Ctrl+Alt+O</source>
        <translation>Ctrl+Alt+O</translation>
    </message>
    <message>
        <source>Take its plan from the re&amp;cord</source>
        <translation>Seinen &amp;Plan aus der Aufzeichnung holen</translation>
    </message>
    <message>
        <source>R&amp;oot-mass plans as PDF...</source>
        <translation>&amp;Ballenpläne als PDF...</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::DayTreesModel</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>to do</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>ticking a tree off takes its grain from the stock and writes its history and the log</source>
        <translation>Das Abhaken nimmt das Korn aus dem Vorrat und schreibt Geschichte und Tagebuch</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>Baum</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>Mischung</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>the plan to follow; after the work, the one that was followed</source>
        <translation>der Plan, dem gefolgt werden soll; nach der Arbeit der, dem gefolgt wurde</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>main mix as it lies in the pot</source>
        <translation>Hauptmischung, wie sie in der Schale liegt</translation>
    </message>
    <message>
        <source>in the pot</source>
        <translation>Füllung</translation>
    </message>
    <message>
        <source>before settling and spill</source>
        <translation>vor Setzung und Streuverlust</translation>
    </message>
    <message>
        <source>to pour</source>
        <translation>einfüllen</translation>
    </message>
    <message>
        <source>scoops</source>
        <translation>Schaufeln</translation>
    </message>
    <message>
        <source>litres that were poured in; they teach settling and spill</source>
        <translation>Liter, die eingefüllt wurden; sie lehren Setzung und Streuverlust</translation>
    </message>
    <message>
        <source>poured in</source>
        <translation>eingefüllt</translation>
    </message>
    <message>
        <source>buds</source>
        <translation>Knospen</translation>
    </message>
    <message>
        <source>helper</source>
        <translation>Helfer</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ExplanationPopup</name>
    <message>
        <source>Read on: %1</source>
        <translation>Weiterlesen: %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::FieldForm</name>
    <message>
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::FigurePanel</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: not computed, %2</source>
        <translation>%1: nicht berechnet, %2</translation>
    </message>
    <message>
        <source>nothing is known of its range</source>
        <translation>über die Spanne ist nichts bekannt</translation>
    </message>
    <message>
        <source>%1: no range</source>
        <translation>%1: keine Spanne</translation>
    </message>
    <message>
        <source>%1, in 90 of 100 cases: %2</source>
        <translation>%1, in 90 von 100 Fällen: %2</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::FindPanel</name>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>More: wishes, limits and the grain to choose from</source>
        <translation>Mehr: Wünsche, Grenzen und das Korn zur Auswahl</translation>
    </message>
    <message>
        <source>Group of trees</source>
        <translation>Baumgruppe</translation>
    </message>
    <message>
        <source>Pot</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>Wishes</source>
        <translation>Wünsche</translation>
    </message>
    <message>
        <source>Dust is finer than</source>
        <translation>Staub ist feiner als</translation>
    </message>
    <message>
        <source>size of dust</source>
        <translation>Größe des Staubs</translation>
    </message>
    <message>
        <source>1 mm, less in very small pots</source>
        <translation>1 mm, weniger in sehr kleinen Schalen</translation>
    </message>
    <message>
        <source>Mixed litres needed</source>
        <translation>Benötigte Liter Mischung</translation>
    </message>
    <message>
        <source>litres needed</source>
        <translation>benötigte Liter</translation>
    </message>
    <message>
        <source>one filling: %1</source>
        <translation>eine Füllung: %1</translation>
    </message>
    <message>
        <source>one filling of the pot</source>
        <translation>eine Füllung der Schale</translation>
    </message>
    <message>
        <source>Components, at most</source>
        <translation>Bestandteile, höchstens</translation>
    </message>
    <message>
        <source>components of a recipe</source>
        <translation>Bestandteile eines Rezepts</translation>
    </message>
    <message>
        <source>1 to 6</source>
        <translation>1 bis 6</translation>
    </message>
    <message>
        <source>whole parts to scoop</source>
        <translation>ganze Teile zum Schaufeln</translation>
    </message>
    <message>
        <source>free shares</source>
        <translation>freie Anteile</translation>
    </message>
    <message>
        <source>Recipes in</source>
        <translation>Rezepte in</translation>
    </message>
    <message>
        <source>whole parts</source>
        <translation>ganze Teile</translation>
    </message>
    <message>
        <source>Parts in all, at most</source>
        <translation>Teile insgesamt, höchstens</translation>
    </message>
    <message>
        <source>parts of a recipe</source>
        <translation>Teile eines Rezepts</translation>
    </message>
    <message>
        <source>1 to 20</source>
        <translation>1 bis 20</translation>
    </message>
    <message>
        <source>Grain to choose from</source>
        <translation>Korn zur Auswahl</translation>
    </message>
    <message>
        <source>take</source>
        <translation>nehmen</translation>
    </message>
    <message>
        <source>stock, L</source>
        <translation>Vorrat, L</translation>
    </message>
    <message>
        <source>price/L</source>
        <translation>Preis/L</translation>
    </message>
    <message>
        <source>least %</source>
        <translation>mind. %</translation>
    </message>
    <message>
        <source>most %</source>
        <translation>höchst. %</translation>
    </message>
    <message>
        <source>Keep for this group</source>
        <translation>Für diese Gruppe merken</translation>
    </message>
    <message>
        <source>Start this group with these wishes from now on</source>
        <translation>Diese Gruppe von nun an mit diesen Wünschen beginnen</translation>
    </message>
    <message>
        <source>group of trees</source>
        <translation>Baumgruppe</translation>
    </message>
    <message>
        <source>wishes for %1</source>
        <translation>Wünsche für %1</translation>
    </message>
    <message>
        <source>pot %1</source>
        <translation>Schale %1</translation>
    </message>
    <message>
        <source>wish: %1</source>
        <translation>Wunsch: %1</translation>
    </message>
    <message>
        <source>%1 as a candidate</source>
        <translation>%1 zur Auswahl</translation>
    </message>
    <message>
        <source>choose a group</source>
        <translation>eine Gruppe wählen</translation>
    </message>
    <message>
        <source>as typed under Pot</source>
        <translation>wie unter Schale eingegeben</translation>
    </message>
    <message>
        <source>choose a pot, or type its lengths</source>
        <translation>eine Schale wählen oder ihre Maße eingeben</translation>
    </message>
    <message>
        <source>%1 deep to the fill line, %2; wanted grain and litres below are for this pot.</source>
        <translation>%1 tief bis zur Füllhöhe, %2; gewünschte Körnung und Liter unten gelten für diese Schale.</translation>
    </message>
    <message>
        <source>stock, %1</source>
        <translation>Vorrat, %1</translation>
    </message>
    <message>
        <source>%1 (not sieved)</source>
        <translation>%1 (nicht gesiebt)</translation>
    </message>
    <message>
        <source>%1 of it are reserved for a mix</source>
        <translation>%1 davon sind für eine Mischung vorgemerkt</translation>
    </message>
    <message>
        <source>See the marked fields under “More”.</source>
        <translation>Siehe die markierten Felder unter „Mehr“.</translation>
    </message>
    <message>
        <source>the share of a candidate</source>
        <translation>der Anteil eines Kandidaten</translation>
    </message>
    <message>
        <source>Choose a group first</source>
        <translation>Zuerst eine Gruppe wählen</translation>
    </message>
    <message>
        <source>Type its lengths under “By hand”, or choose one of the record.</source>
        <translation>Die Maße unter „Von Hand“ eingeben oder eine aus der Aufzeichnung wählen.</translation>
    </message>
    <message>
        <source>one filling of each pot: %1</source>
        <translation>eine Füllung jeder Schale: %1</translation>
    </message>
    <message>
        <source>Pots the mix should be good in too</source>
        <translation>Schalen, in denen die Mischung auch gut sein soll</translation>
    </message>
    <message>
        <source>good in these pots too</source>
        <translation>auch gut in diesen Schalen</translation>
    </message>
    <message>
        <source>filling, L</source>
        <translation>Füllung, L</translation>
    </message>
    <message>
        <source>All groups...</source>
        <translation>Alle Gruppen...</translation>
    </message>
    <message>
        <source>See, change and add groups of trees</source>
        <translation>Baumgruppen ansehen, ändern und hinzufügen</translation>
    </message>
    <message>
        <source>further pot %1</source>
        <translation>weitere Schale %1</translation>
    </message>
    <message>
        <source>filling, %1</source>
        <translation>Füllung, %1</translation>
    </message>
    <message>
        <source>%1, %2 reserved</source>
        <translation>%1, %2 vorgemerkt</translation>
    </message>
    <message>
        <source>“%1” cannot be had: nothing on the shelf comes near it, and so no mix does. Loosen it, or add grain.</source>
        <translation>„%1“ ist nicht zu haben: Nichts im Vorrat kommt dem nahe, und so auch keine Mischung. Den Wunsch lockern oder Korn ergänzen.</translation>
    </message>
    <message>
        <source>Not known how much of it there is: type it, or leave it open.</source>
        <translation>Nicht bekannt, wie viel davon da ist: eintippen oder offen lassen.</translation>
    </message>
    <message>
        <source>Its bag has no price or no litres: write them down there, or type what a litre costs.</source>
        <translation>Der Sack hat keinen Preis oder keine Liter: beides dort eintragen oder eintippen, was ein Liter kostet.</translation>
    </message>
    <message>
        <source>Only bags have a price: type what a litre of this is worth, or leave it open.</source>
        <translation>Nur Säcke haben einen Preis: eintippen, was ein Liter hiervon wert ist, oder offen lassen.</translation>
    </message>
    <message>
        <source>The wanted grain is now %1 to %2, as the group asks; undo brings back what was typed.</source>
        <translation>Die gewünschte Körnung ist jetzt %1 bis %2, wie die Gruppe sie verlangt; Rückgängig bringt das Eingetragene zurück.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::GoneNotice</name>
    <message>
        <source>Bring it back with what I typed</source>
        <translation>Mit dem Eingegebenen zurückholen</translation>
    </message>
    <message>
        <source>Let it go</source>
        <translation>Nicht zurückholen</translation>
    </message>
    <message>
        <source>What was typed into %1 and not saved: %2</source>
        <translation>Was in %1 eingegeben und nicht gespeichert wurde: %2</translation>
    </message>
    <message>
        <source>%1 brought back</source>
        <translation>%1 zurückgeholt</translation>
    </message>
    <message>
        <source>%1 is not in the record any more: it was removed or undone meanwhile, perhaps in another window. What you typed stands here and is not saved yet.</source>
        <translation>%1 steht nicht mehr in der Aufzeichnung: Es wurde inzwischen entfernt oder rückgängig gemacht, vielleicht in einem anderen Fenster. Das Eingegebene steht hier und ist noch nicht gespeichert.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::GradingChart</name>
    <message>
        <source>Grading chart</source>
        <translation>Körnungsdiagramm</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>%1: %2 passes</source>
        <translation>%1: %2 Durchgang</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::GrainForm</name>
    <message>
        <source>none: own figures only</source>
        <translation>keines: nur eigene Zahlen</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>&amp;Material</source>
        <translation>Ma&amp;terial</translation>
    </message>
    <message>
        <source>material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>%1 (typical)</source>
        <translation>%1 (üblich)</translation>
    </message>
    <message>
        <source>&amp;Litre weight, dry</source>
        <translation>&amp;Litergewicht, trocken</translation>
    </message>
    <message>
        <source>litre weight</source>
        <translation>Litergewicht</translation>
    </message>
    <message>
        <source>weigh a litre</source>
        <translation>einen Liter wiegen</translation>
    </message>
    <message>
        <source>Gr&amp;ain density</source>
        <translation>&amp;Korndichte</translation>
    </message>
    <message>
        <source>grain density</source>
        <translation>Korndichte</translation>
    </message>
    <message>
        <source>dry mass of the grain with its inner pores</source>
        <translation>Trockenmasse des Korns mit seinen inneren Poren</translation>
    </message>
    <message>
        <source>Soli&amp;d density</source>
        <translation>&amp;Reindichte</translation>
    </message>
    <message>
        <source>solid density</source>
        <translation>Reindichte</translation>
    </message>
    <message>
        <source>dry mass of the solid without pores</source>
        <translation>Trockenmasse des Feststoffs ohne Poren</translation>
    </message>
    <message>
        <source>&amp;Water after 24 h</source>
        <translation>&amp;Wasser nach 24 h</translation>
    </message>
    <message>
        <source>water absorption</source>
        <translation>Wasseraufnahme</translation>
    </message>
    <message>
        <source>water in the soaked, surface-dry grain, of its dry mass</source>
        <translation>Wasser im eingeweichten, oberflächentrockenen Korn, von der Trockenmasse</translation>
    </message>
    <message>
        <source>%1 Typical figures stand in for what is not measured.</source>
        <translation>%1 Übliche Zahlen stehen für das, was nicht gemessen ist.</translation>
    </message>
    <message>
        <source>Without a material the litre weight must be weighed before the component can go into the mix.</source>
        <translation>Ohne Material muss das Litergewicht gewogen sein, bevor der Bestandteil in die Mischung kann.</translation>
    </message>
    <message>
        <source>of one litre, loosely poured</source>
        <translation>von einem Liter, locker geschüttet</translation>
    </message>
    <message>
        <source>Sieve, across</source>
        <translation>Sieb, Weite</translation>
    </message>
    <message>
        <source>width of the sieves</source>
        <translation>Weite der Siebe</translation>
    </message>
    <message>
        <source>inside its frame; shows an overloaded sieve</source>
        <translation>innen im Rahmen; zeigt ein überladenes Sieb</translation>
    </message>
    <message>
        <source>Water in the sample</source>
        <translation>Wasser in der Probe</translation>
    </message>
    <message>
        <source>moisture of the sample</source>
        <translation>Feuchte der Probe</translation>
    </message>
    <message>
        <source>as sieved, of its dry mass; empty if dry</source>
        <translation>wie gesiebt, der Trockenmasse; leer, wenn trocken</translation>
    </message>
    <message>
        <source>Washed, dry</source>
        <translation>Gewaschen, trocken</translation>
    </message>
    <message>
        <source>washed mass of the sample</source>
        <translation>gewaschene Masse der Probe</translation>
    </message>
    <message>
        <source>of the sample, if its dust was washed out</source>
        <translation>der Probe, wenn der Staub ausgewaschen wurde</translation>
    </message>
    <message>
        <source>The sample that was sieved</source>
        <translation>Die gesiebte Probe</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::GroupsPage</name>
    <message>
        <source>Groups of trees</source>
        <translation>Baumgruppen</translation>
    </message>
    <message>
        <source>group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>whose</source>
        <translation>wessen</translation>
    </message>
    <message>
        <source>&amp;New, like this one</source>
        <translation>&amp;Neue wie diese</translation>
    </message>
    <message>
        <source>Add a group of your own that starts with the wishes of the chosen one</source>
        <translation>Eine eigene Gruppe hinzufügen, die mit den Wünschen der gewählten beginnt</translation>
    </message>
    <message>
        <source>&amp;Leave out</source>
        <translation>A&amp;uslassen</translation>
    </message>
    <message>
        <source>Do not offer this group any more; a group of your own goes</source>
        <translation>Diese Gruppe nicht mehr anbieten; eine eigene verschwindet</translation>
    </message>
    <message>
        <source>Re&amp;store</source>
        <translation>&amp;Wiederherstellen</translation>
    </message>
    <message>
        <source>Back to common practice, or offered again</source>
        <translation>Zurück zur üblichen Praxis, oder wieder angeboten</translation>
    </message>
    <message>
        <source>Find &amp;parts for it</source>
        <translation>&amp;Teile dafür suchen</translation>
    </message>
    <message>
        <source>Find parts for this group</source>
        <translation>Teile für diese Gruppe suchen</translation>
    </message>
    <message>
        <source>Wishes of this group</source>
        <translation>Wünsche dieser Gruppe</translation>
    </message>
    <message>
        <source>Na&amp;me</source>
        <translation>Na&amp;me</translation>
    </message>
    <message>
        <source>as you call these trees</source>
        <translation>eigene Bezeichnung dieser Bäume</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Trees it is for</source>
        <translation>Bäume, für die sie ist</translation>
    </message>
    <message>
        <source>any</source>
        <translation>beliebig</translation>
    </message>
    <message>
        <source>trees it is for</source>
        <translation>Bäume, für die sie ist</translation>
    </message>
    <message>
        <source>Wanted grain from</source>
        <translation>Gewünschte Körnung von</translation>
    </message>
    <message>
        <source>the finest grain that is wanted</source>
        <translation>das feinste gewünschte Korn</translation>
    </message>
    <message>
        <source>wanted grain</source>
        <translation>gewünschte Körnung</translation>
    </message>
    <message>
        <source>Wanted grain to</source>
        <translation>Gewünschte Körnung bis</translation>
    </message>
    <message>
        <source>the coarsest grain that is wanted</source>
        <translation>das gröbste gewünschte Korn</translation>
    </message>
    <message>
        <source>Dust is finer than</source>
        <translation>Staub ist feiner als</translation>
    </message>
    <message>
        <source>what clogs a pot of these trees</source>
        <translation>was eine Schale dieser Bäume verstopft</translation>
    </message>
    <message>
        <source>size of dust</source>
        <translation>Größe des Staubs</translation>
    </message>
    <message>
        <source>Mi&amp;x to start from</source>
        <translation>Mis&amp;chung zum Anfangen</translation>
    </message>
    <message>
        <source>parts and names: 5 akadama : 3 pumice</source>
        <translation>Teile und Namen: 5 akadama : 3 pumice</translation>
    </message>
    <message>
        <source>mix to start from</source>
        <translation>Mischung zum Anfangen</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>what else you go by</source>
        <translation>wonach man sich sonst richtet</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>%1 of the group %2</source>
        <translation>%1 der Gruppe %2</translation>
    </message>
    <message>
        <source>wishes</source>
        <translation>Wünsche</translation>
    </message>
    <message>
        <source>my %1</source>
        <translation>eigene %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>name of a group, number</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>group %1</source>
        <translation>Gruppe %1</translation>
    </message>
    <message>
        <source>group %1 removed</source>
        <translation>Gruppe %1 entfernt</translation>
    </message>
    <message>
        <source>offer</source>
        <translation>anbieten</translation>
    </message>
    <message>
        <source>%1 is not offered any more; “Restore” brings it back.</source>
        <translation>%1 wird nicht mehr angeboten; „Wiederherstellen“ bringt sie zurück.</translation>
    </message>
    <message>
        <source>group %1 restored</source>
        <translation>Gruppe %1 wiederhergestellt</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Remo&amp;ve</source>
        <translation>Ent&amp;fernen</translation>
    </message>
    <message>
        <source>What a mix for these trees should be like, and so what a search for parts starts with. What a tree&apos;s roots bear goes by the group on its own page. It is common practice, never the only way: your climate, your water and your hands know better.</source>
        <translation>Wie eine Mischung für diese Bäume sein soll, und damit, womit die Suche nach Teilen beginnt. Was die Wurzeln eines Baums vertragen, geht nach der Gruppe auf seiner eigenen Seite. Es ist übliche Praxis, nie der einzige Weg: das eigene Klima, das eigene Wasser und die eigenen Hände wissen es besser.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::HowButton</name>
    <message>
        <source>How so? Formula, numbers and source</source>
        <translation>Wieso? Formel, Zahlen und Quelle</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>How so: %1</source>
        <translation>Wieso: %1</translation>
    </message>
    <message>
        <source>How so: %1, %2</source>
        <translation>Wieso: %1, %2</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ImportPage</name>
    <message>
        <source>Where a record here differs, the file&apos;s takes its place</source>
        <translation>Wo ein Eintrag hier abweicht, tritt der aus der Datei an seine Stelle</translation>
    </message>
    <message>
        <source>Take them in</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Read the file again</source>
        <translation>Die Datei noch einmal lesen</translation>
    </message>
    <message>
        <source>Records from a file</source>
        <translation>Einträge aus einer Datei</translation>
    </message>
    <message>
        <source>Another file...</source>
        <translation>Andere Datei...</translation>
    </message>
    <message>
        <source>The &amp;list holds</source>
        <translation>Die &amp;Liste enthält</translation>
    </message>
    <message>
        <source>What the list holds</source>
        <translation>Was die Liste enthält</translation>
    </message>
    <message>
        <source>what its columns say</source>
        <translation>was ihre Spalten sagen</translation>
    </message>
    <message>
        <source>bags</source>
        <translation>Säcke</translation>
    </message>
    <message>
        <source>sieve tests</source>
        <translation>Siebanalysen</translation>
    </message>
    <message>
        <source>trees</source>
        <translation>Bäume</translation>
    </message>
    <message>
        <source>What is wrong in the file, by row</source>
        <translation>Was in der Datei falsch ist, nach Zeilen</translation>
    </message>
    <message>
        <source>Records of the file and what becomes of them</source>
        <translation>Einträge der Datei und was aus ihnen wird</translation>
    </message>
    <message>
        <source>One moment...</source>
        <translation>Einen Augenblick...</translation>
    </message>
    <message>
        <source>Lists and records (*.csv *.json);;All files (*)</source>
        <translation>Listen und Einträge (*.csv *.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>No file is chosen yet.</source>
        <translation>Noch keine Datei gewählt.</translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) to take in</source>
        <translation>
            <numerusform>%n Eintrag zu übernehmen</numerusform>
            <numerusform>%n Einträge zu übernehmen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n here already</source>
        <translation>
            <numerusform>%n schon hier</numerusform>
            <numerusform>%n schon hier</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fault(s): mend them in the file and read it again; until then nothing is taken in</source>
        <translation>
            <numerusform>%n Fehler: in der Datei beheben und neu lesen; bis dahin wird nichts übernommen</numerusform>
            <numerusform>%n Fehler: in der Datei beheben und neu lesen; bis dahin wird nichts übernommen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) taken in; one undo takes them back.</source>
        <translation>
            <numerusform>%n Eintrag übernommen; ein Rückgängig nimmt ihn zurück.</numerusform>
            <numerusform>%n Einträge übernommen; ein Rückgängig nimmt sie zurück.</numerusform>
        </translation>
    </message>
    <message>
        <source>A list of bags, sieve tests, pots or trees as a spreadsheet saves it (CSV), or records, one or all, as JSON. Nothing is taken in before you say so, taking the same file in twice adds nothing twice, and one undo takes all of it back.</source>
        <translation>Eine Liste von Säcken, Siebanalysen, Schalen oder Bäumen, wie eine Tabellenkalkulation sie speichert (CSV), oder Einträge, einzelne oder alle, als JSON. Nichts wird übernommen, bevor es bestätigt ist; dieselbe Datei zweimal zu übernehmen fügt nichts doppelt hinzu, und ein Rückgängig nimmt alles zurück.</translation>
    </message>
    <message>
        <source>pots</source>
        <translation>Schalen</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>%1 (taken in all the same)</source>
        <translation>%1 (trotzdem übernommen)</translation>
    </message>
    <message>
        <source>line %1, character %2</source>
        <translation>Zeile %1, Zeichen %2</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>Zeile %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ImportTableModel</name>
    <message>
        <source>the next free</source>
        <translation>nächste freie</translation>
    </message>
    <message>
        <source>no.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>what becomes of it</source>
        <translation>was daraus wird</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::JumpBox</name>
    <message>
        <source>Go to</source>
        <translation>Gehe zu</translation>
    </message>
    <message>
        <source>Bag, mix, tree or what to do</source>
        <translation>Sack, Mischung, Baum oder was zu tun ist</translation>
    </message>
    <message>
        <source>like K-07, or pumice</source>
        <translation>wie K-07 oder Bims</translation>
    </message>
    <message>
        <source>What fits</source>
        <translation>Was passt</translation>
    </message>
    <message>
        <source>nothing fits</source>
        <translation>nichts passt</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::LogPage</name>
    <message>
        <source>Log, newest first</source>
        <translation>Tagebuch, Neuestes zuerst</translation>
    </message>
    <message>
        <source>F&amp;ind</source>
        <translation>&amp;Suchen</translation>
    </message>
    <message>
        <source>any word of the log</source>
        <translation>irgendein Wort des Tagebuchs</translation>
    </message>
    <message>
        <source>&amp;About</source>
        <translation>Übe&amp;r</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Tag</translation>
    </message>
    <message>
        <source>&amp;Write down</source>
        <translation>Au&amp;fschreiben</translation>
    </message>
    <message>
        <source>what you saw or did; with About above it is kept there too</source>
        <translation>was zu sehen oder zu tun war; steht oben ein Über, wird es auch dort bewahrt</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>Aufbe&amp;wahren</translation>
    </message>
    <message>
        <source>Keep this line in the log</source>
        <translation>Diese Zeile im Tagebuch aufbewahren</translation>
    </message>
    <message>
        <source>What it is linked to</source>
        <translation>Womit es verbunden ist</translation>
    </message>
    <message>
        <source>Linked to %1</source>
        <translation>Verbunden mit %1</translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translation>noch nichts</translation>
    </message>
    <message>
        <source>line in the log</source>
        <translation>Zeile im Tagebuch</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Tagebuch</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschah</translation>
    </message>
    <message>
        <source>Where grain went</source>
        <translation>Wohin Korn ging</translation>
    </message>
    <message>
        <source>Sick trees</source>
        <translation>Kranke Bäume</translation>
    </message>
    <message>
        <source>A small change is a field that was typed into: a note, a mass, a name. Everything else that happened stands here anyway.</source>
        <translation>Eine kleine Änderung ist ein Feld, in das etwas eingegeben wurde: eine Notiz, eine Masse, ein Name. Alles andere, was geschah, steht ohnehin hier.</translation>
    </message>
    <message>
        <source>&amp;Small changes too</source>
        <translation>Auch &amp;kleine Änderungen</translation>
    </message>
    <message>
        <source>&amp;Small changes too (%1)</source>
        <translation>Auch &amp;kleine Änderungen (%1)</translation>
    </message>
    <message>
        <source>Show small changes too</source>
        <translation>Auch kleine Änderungen zeigen</translation>
    </message>
    <message>
        <source>Show small changes too, %1 are left out</source>
        <translation>Auch kleine Änderungen zeigen, %1 sind ausgelassen</translation>
    </message>
    <message>
        <source>Nothing fits Find, About and the days together; empty one of them to see more.</source>
        <translation>Nichts passt zu Suche, Über und den Tagen zugleich; eines davon leeren, um mehr zu sehen.</translation>
    </message>
    <message>
        <source>&amp;Keep with %1</source>
        <translation>Mit %1 &amp;behalten</translation>
    </message>
    <message>
        <source>Keep this line in the log and with %1</source>
        <translation>Diese Zeile im Protokoll und bei %1 behalten</translation>
    </message>
    <message>
        <source>like %1</source>
        <translation>wie %1</translation>
    </message>
    <message>
        <source>%1 is no day like %2.</source>
        <translation>%1 ist kein Tag wie %2.</translation>
    </message>
    <message>
        <source>a bag, its lot, a mix or a tree, like K-07</source>
        <translation>Sack, Charge, Mischung oder Baum, wie K-07</translation>
    </message>
    <message>
        <source>The whole log is shown.</source>
        <translation>Das ganze Tagebuch wird gezeigt.</translation>
    </message>
    <message>
        <source>Type a bag, its lot, a mix or a tree into About to see what it is linked to; where its grain went in the end stands on the next tab.</source>
        <translation>Unter Über einen Sack, seine Charge, eine Mischung oder einen Baum eingeben, um zu sehen, womit es verbunden ist; wohin das Korn am Ende ging, steht im nächsten Reiter.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::LotChart</name>
    <message>
        <source>No lots to compare: type the wanted grain, and grade bags of one material.</source>
        <translation>Keine Chargen zu vergleichen: die gewünschte Körnung eingeben und Säcke eines Materials prüfen.</translation>
    </message>
    <message numerus="yes">
        <source>%n lot(s), oldest first; the last, %1: %2.</source>
        <translation>
            <numerusform>Eine Charge, %1: %2.</numerusform>
            <numerusform>%n Chargen, älteste zuerst; die letzte, %1: %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A usual range needs %n earlier lot(s).</source>
        <translation>
            <numerusform>Für eine übliche Spanne braucht es %n frühere Charge.</numerusform>
            <numerusform>Für eine übliche Spanne braucht es %n frühere Chargen.</numerusform>
        </translation>
    </message>
    <message>
        <source>All within what is usual.</source>
        <translation>Alles im Rahmen des Üblichen.</translation>
    </message>
    <message>
        <source>Outside what is usual: %1.</source>
        <translation>Außerhalb des Üblichen: %1.</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>Sack</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>usual</source>
        <translation>üblich</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Dust, size, yield and air from lot to lot</source>
        <translation>Staub, Größe, Ausbeute und Luft von Charge zu Charge</translation>
    </message>
    <message>
        <source>unusual</source>
        <translation>ungewöhnlich</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::MainWindow</name>
    <message>
        <source>Gritwright</source>
        <translation>Gritwright</translation>
    </message>
    <message>
        <source>Bags</source>
        <translation>Säcke</translation>
    </message>
    <message>
        <source>Sieving</source>
        <translation>Sieben</translation>
    </message>
    <message>
        <source>Mixes</source>
        <translation>Mischungen</translation>
    </message>
    <message>
        <source>Pots and trees</source>
        <translation>Schalen und Bäume</translation>
    </message>
    <message>
        <source>Repotting day</source>
        <translation>Umtopftag</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Tagebuch</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>bench cleared</source>
        <translation>Arbeitstisch geleert</translation>
    </message>
    <message>
        <source>&amp;Open sieve tests...</source>
        <translation>Siebanalysen ö&amp;ffnen...</translation>
    </message>
    <message>
        <source>Ctrl+Shift+O</source>
        <translation>Ctrl+Shift+O</translation>
    </message>
    <message>
        <source>&amp;Demonstration</source>
        <translation>&amp;Vorführung</translation>
    </message>
    <message>
        <source>Ctrl+Shift+D</source>
        <translation>Ctrl+Shift+D</translation>
    </message>
    <message>
        <source>Save the &amp;picture or its data...</source>
        <translation>&amp;Bild oder seine Daten speichern...</translation>
    </message>
    <message>
        <source>Ctrl+E</source>
        <translation>Ctrl+E</translation>
    </message>
    <message>
        <source>Ctrl+Shift+P</source>
        <translation>Ctrl+Shift+P</translation>
    </message>
    <message>
        <source>&amp;Settings</source>
        <translation>E&amp;instellungen</translation>
    </message>
    <message>
        <source>Ctrl+,</source>
        <translation>Ctrl+,</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>B&amp;eenden</translation>
    </message>
    <message>
        <source>Ctrl+Q</source>
        <translation>Ctrl+Q</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>Ctrl+Z</source>
        <translation>Ctrl+Z</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Z</source>
        <translation>Ctrl+Shift+Z</translation>
    </message>
    <message>
        <source>&amp;Copy cells</source>
        <translation>Zellen &amp;kopieren</translation>
    </message>
    <message>
        <source>&amp;Paste into the stack</source>
        <translation>In den Siebturm &amp;einfügen</translation>
    </message>
    <message>
        <source>C&amp;lear cells</source>
        <translation>Zellen &amp;leeren</translation>
    </message>
    <message>
        <source>&amp;New sieve above</source>
        <translation>&amp;Neues Sieb darüber</translation>
    </message>
    <message>
        <source>&amp;Remove sieve</source>
        <translation>&amp;Sieb entfernen</translation>
    </message>
    <message>
        <source>Ctrl+Delete</source>
        <translation>Ctrl+Delete</translation>
    </message>
    <message>
        <source>&amp;Component</source>
        <translation>B&amp;estandteil</translation>
    </message>
    <message>
        <source>&amp;Next component</source>
        <translation>&amp;Nächster Bestandteil</translation>
    </message>
    <message>
        <source>Ctrl+PgDown</source>
        <translation>Ctrl+PgDown</translation>
    </message>
    <message>
        <source>&amp;Previous component</source>
        <translation>&amp;Voriger Bestandteil</translation>
    </message>
    <message>
        <source>Ctrl+PgUp</source>
        <translation>Ctrl+PgUp</translation>
    </message>
    <message>
        <source>&amp;Add a component</source>
        <translation>Bestandteil hin&amp;zufügen</translation>
    </message>
    <message>
        <source>Ctrl+Shift+N</source>
        <translation>Ctrl+Shift+N</translation>
    </message>
    <message>
        <source>&amp;Remove this component</source>
        <translation>Diesen Bestandteil en&amp;tfernen</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Delete</source>
        <translation>Ctrl+Shift+Delete</translation>
    </message>
    <message>
        <source>&amp;Further sample of this bag</source>
        <translation>&amp;Weitere Probe dieses Sacks</translation>
    </message>
    <message>
        <source>Ctrl+Shift+F</source>
        <translation>Ctrl+Shift+F</translation>
    </message>
    <message>
        <source>Remove the &amp;last sample</source>
        <translation>&amp;Letzte Probe entfernen</translation>
    </message>
    <message>
        <source>Ctrl+Alt+F</source>
        <translation>Ctrl+Alt+F</translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation>&amp;Gehe</translation>
    </message>
    <message>
        <source>&amp;Any bag, mix or action...</source>
        <translation>Sack, Mischung &amp;oder Handlung...</translation>
    </message>
    <message>
        <source>Ctrl+K</source>
        <translation>Ctrl+K</translation>
    </message>
    <message>
        <source>&amp;Sieve test</source>
        <translation>&amp;Siebanalyse</translation>
    </message>
    <message>
        <source>Ctrl+Shift+1</source>
        <translation>Ctrl+Shift+1</translation>
    </message>
    <message>
        <source>&amp;Grain</source>
        <translation>&amp;Korn</translation>
    </message>
    <message>
        <source>Ctrl+Shift+2</source>
        <translation>Ctrl+Shift+2</translation>
    </message>
    <message>
        <source>C&amp;urve of this test</source>
        <translation>Sieblin&amp;ie dieser Analyse</translation>
    </message>
    <message>
        <source>Ctrl+Shift+3</source>
        <translation>Ctrl+Shift+3</translation>
    </message>
    <message>
        <source>&amp;Lot to lot</source>
        <translation>&amp;Charge zu Charge</translation>
    </message>
    <message>
        <source>Ctrl+Shift+4</source>
        <translation>Ctrl+Shift+4</translation>
    </message>
    <message>
        <source>&amp;Verdict on the bag</source>
        <translation>&amp;Urteil über den Sack</translation>
    </message>
    <message>
        <source>Ctrl+Shift+5</source>
        <translation>Ctrl+Shift+5</translation>
    </message>
    <message>
        <source>S&amp;creen this bag</source>
        <translation>&amp;Diesen Sack absieben</translation>
    </message>
    <message>
        <source>Ctrl+Shift+6</source>
        <translation>Ctrl+Shift+6</translation>
    </message>
    <message>
        <source>&amp;Pot</source>
        <translation>Scha&amp;le</translation>
    </message>
    <message>
        <source>Ctrl+Alt+4</source>
        <translation>Ctrl+Alt+4</translation>
    </message>
    <message>
        <source>Curves of the &amp;mix</source>
        <translation>Sieblinien der &amp;Mischung</translation>
    </message>
    <message>
        <source>Ctrl+Alt+5</source>
        <translation>Ctrl+Alt+5</translation>
    </message>
    <message>
        <source>Pot in s&amp;ection</source>
        <translation>Schale im Sc&amp;hnitt</translation>
    </message>
    <message>
        <source>Ctrl+Alt+6</source>
        <translation>Ctrl+Alt+6</translation>
    </message>
    <message>
        <source>Litres &amp;in and out</source>
        <translation>Liter hi&amp;nein und heraus</translation>
    </message>
    <message>
        <source>Ctrl+Alt+7</source>
        <translation>Ctrl+Alt+7</translation>
    </message>
    <message>
        <source>Mi&amp;xes side by side</source>
        <translation>Mischungen nebenein&amp;ander</translation>
    </message>
    <message>
        <source>Ctrl+Alt+8</source>
        <translation>Ctrl+Alt+8</translation>
    </message>
    <message>
        <source>Find par&amp;ts</source>
        <translation>&amp;Teile suchen</translation>
    </message>
    <message>
        <source>Ctrl+Shift+7</source>
        <translation>Ctrl+Shift+7</translation>
    </message>
    <message>
        <source>&amp;Recipes found</source>
        <translation>Gefundene &amp;Rezepte</translation>
    </message>
    <message>
        <source>Ctrl+Shift+8</source>
        <translation>Ctrl+Shift+8</translation>
    </message>
    <message>
        <source>Trade-&amp;offs of the recipes</source>
        <translation>Abwägungen der Re&amp;zepte</translation>
    </message>
    <message>
        <source>Ctrl+Shift+9</source>
        <translation>Ctrl+Shift+9</translation>
    </message>
    <message>
        <source>Ctrl+Alt+9</source>
        <translation>Ctrl+Alt+9</translation>
    </message>
    <message>
        <source>&amp;Wanted grain</source>
        <translation>&amp;Gewünschte Körnung</translation>
    </message>
    <message>
        <source>Ctrl+B</source>
        <translation>Ctrl+B</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>Pictures as &amp;tables</source>
        <translation>Bilder als &amp;Tabellen</translation>
    </message>
    <message>
        <source>Ctrl+T</source>
        <translation>Ctrl+T</translation>
    </message>
    <message>
        <source>&amp;Whole curve again</source>
        <translation>&amp;Ganze Sieblinie wieder</translation>
    </message>
    <message>
        <source>Ctrl+9</source>
        <translation>Ctrl+9</translation>
    </message>
    <message>
        <source>&amp;US units</source>
        <translation>&amp;US-Einheiten</translation>
    </message>
    <message>
        <source>Ctrl+Alt+M</source>
        <translation>Ctrl+Alt+M</translation>
    </message>
    <message>
        <source>Colours of the s&amp;ystem</source>
        <translation>Farben des S&amp;ystems</translation>
    </message>
    <message>
        <source>Ctrl+Alt+0</source>
        <translation>Ctrl+Alt+0</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>Ctrl+Alt+1</source>
        <translation>Ctrl+Alt+1</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <source>Ctrl+Alt+2</source>
        <translation>Ctrl+Alt+2</translation>
    </message>
    <message>
        <source>&amp;High contrast</source>
        <translation>H&amp;oher Kontrast</translation>
    </message>
    <message>
        <source>Ctrl+Alt+3</source>
        <translation>Ctrl+Alt+3</translation>
    </message>
    <message>
        <source>Larger te&amp;xt</source>
        <translation>Größere &amp;Schrift</translation>
    </message>
    <message>
        <source>S&amp;maller text</source>
        <translation>&amp;Kleinere Schrift</translation>
    </message>
    <message>
        <source>&amp;Normal text</source>
        <translation>&amp;Normale Schrift</translation>
    </message>
    <message>
        <source>Ctrl+0</source>
        <translation>Ctrl+0</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Manual: this page</source>
        <translation>Handbuch: &amp;diese Seite</translation>
    </message>
    <message>
        <source>F1</source>
        <translation>F1</translation>
    </message>
    <message>
        <source>C&amp;ontents of the manual</source>
        <translation>&amp;Inhalt des Handbuchs</translation>
    </message>
    <message>
        <source>Ctrl+Shift+F1</source>
        <translation>Ctrl+Shift+F1</translation>
    </message>
    <message>
        <source>The &amp;three doors</source>
        <translation>Die drei &amp;Türen</translation>
    </message>
    <message>
        <source>Alt+Shift+F1</source>
        <translation>Alt+Shift+F1</translation>
    </message>
    <message>
        <source>Show &amp;cautions again</source>
        <translation>&amp;Vorsichtshinweise wieder zeigen</translation>
    </message>
    <message>
        <source>Shift+F1</source>
        <translation>Shift+F1</translation>
    </message>
    <message>
        <source>&amp;About Gritwright</source>
        <translation>Ü&amp;ber Gritwright</translation>
    </message>
    <message>
        <source>Ctrl+F1</source>
        <translation>Ctrl+F1</translation>
    </message>
    <message>
        <source>About Gritwright</source>
        <translation>Über Gritwright</translation>
    </message>
    <message>
        <source>Gritwright %1: grading, mixes and pots for trees in shallow containers.

Free software under the GNU General Public License, version 3 or later, without any warranty.
Estimates are general information; where a figure matters, measure it in a pot test.</source>
        <translation>Gritwright %1: Körnung, Mischungen und Schalen für Bäume in flachen Gefäßen.

Freie Software unter der GNU General Public License, Version 3 oder später, ohne jede Gewährleistung.
Schätzungen sind allgemeine Hinweise; wo eine Zahl zählt, in einem Schalentest messen.</translation>
    </message>
    <message>
        <source>Save “%1”</source>
        <translation>„%1“ speichern</translation>
    </message>
    <message>
        <source>Picture (*.png);;Drawing (*.svg);;PDF (*.pdf);;Its data (*.csv)</source>
        <translation>Bild (*.png);;Zeichnung (*.svg);;PDF (*.pdf);;Die Daten (*.csv)</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Gespeichert als %1.</translation>
    </message>
    <message>
        <source>Test sheet as PDF</source>
        <translation>Siebblatt als PDF</translation>
    </message>
    <message>
        <source>sieve test.pdf</source>
        <translation>Siebanalyse.pdf</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Gritwright – demonstration, an invented nursery</source>
        <translation>Gritwright – Vorführung, eine erfundene Baumschule</translation>
    </message>
    <message>
        <source>Demonstration: everything here is invented and goes when this window is closed.</source>
        <translation>Vorführung: Alles hier ist erfunden und verschwindet, wenn dieses Fenster geschlossen wird.</translation>
    </message>
    <message>
        <source>The demonstration can&apos;t be opened</source>
        <translation>Die Vorführung lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>demonstration opened</source>
        <translation>Vorführung geöffnet</translation>
    </message>
    <message>
        <source>Open sieve tests</source>
        <translation>Siebanalysen öffnen</translation>
    </message>
    <message>
        <source>Sieve tests (*.csv *.json);;All files (*)</source>
        <translation>Siebanalysen (*.csv *.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>%1 was not opened</source>
        <translation>%1 wurde nicht geöffnet</translation>
    </message>
    <message>
        <source>A mix here has up to %1 components; remove one first.</source>
        <translation>Eine Mischung hat hier bis zu %1 Bestandteile; zuerst einen entfernen.</translation>
    </message>
    <message>
        <source>%1 opened</source>
        <translation>%1 geöffnet</translation>
    </message>
    <message>
        <source>&amp;Years to come</source>
        <translation>Kommende &amp;Jahre</translation>
    </message>
    <message>
        <source>Ctrl+Alt+Y</source>
        <translation>Ctrl+Alt+Y</translation>
    </message>
    <message>
        <source>The record could not be opened, so this page is empty; what lies on the bench is kept all the same.</source>
        <translation>Die Aufzeichnung ließ sich nicht öffnen, deshalb ist diese Seite leer; was auf dem Arbeitstisch liegt, bleibt trotzdem bewahrt.</translation>
    </message>
    <message>
        <source>What can be done...</source>
        <translation>Was sich tun lässt...</translation>
    </message>
    <message>
        <source>Records from a f&amp;ile...</source>
        <translation>Ein&amp;träge aus einer Datei...</translation>
    </message>
    <message>
        <source>Ctrl+I</source>
        <translation>Ctrl+I</translation>
    </message>
    <message>
        <source>Open &amp;another record...</source>
        <translation>&amp;Andere Aufzeichnung öffnen...</translation>
    </message>
    <message>
        <source>Ctrl+Alt+W</source>
        <translation>Ctrl+Alt+W</translation>
    </message>
    <message>
        <source>&amp;Back to the usual record</source>
        <translation>&amp;Zurück zur üblichen Aufzeichnung</translation>
    </message>
    <message>
        <source>Ctrl+Alt+H</source>
        <translation>Ctrl+Alt+H</translation>
    </message>
    <message>
        <source>Bac&amp;kups of the record</source>
        <translation>Si&amp;cherungen der Aufzeichnung</translation>
    </message>
    <message>
        <source>Ctrl+Alt+U</source>
        <translation>Ctrl+Alt+U</translation>
    </message>
    <message>
        <source>Open another record</source>
        <translation>Andere Aufzeichnung öffnen</translation>
    </message>
    <message>
        <source>Gritwright records (*.gritwright);;All files (*)</source>
        <translation>Gritwright-Aufzeichnungen (*.gritwright);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Restore a backup</source>
        <translation>Eine Sicherung wiederherstellen</translation>
    </message>
    <message>
        <source>Put %1 in the place of the record?</source>
        <translation>%1 an die Stelle der Aufzeichnung setzen?</translation>
    </message>
    <message>
        <source>What was written down since then is no longer in the record. The record as it is now stays beside it under a name of its own, so nothing is lost.</source>
        <translation>Was seitdem geschrieben wurde, steht dann nicht mehr in der Aufzeichnung. Die jetzige bleibt unter eigenem Namen daneben liegen, verloren geht also nichts.</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>Gritwright – %1, reading only</source>
        <translation>Gritwright – %1, nur zum Lesen</translation>
    </message>
    <message>
        <source>Gritwright – %1</source>
        <translation>Gritwright – %1</translation>
    </message>
    <message>
        <source>%1 is open for reading only: nothing here can be changed.</source>
        <translation>%1 ist nur zum Lesen geöffnet: Hier lässt sich nichts ändern.</translation>
    </message>
    <message>
        <source>This is %1, not the usual record.</source>
        <translation>Das ist %1, nicht die übliche Aufzeichnung.</translation>
    </message>
    <message>
        <source>Open po&amp;t...</source>
        <translation>&amp;Schale öffnen...</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>Rück&amp;gängig: %1</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>Rück&amp;gängig</translation>
    </message>
    <message>
        <source>Re&amp;do: %1</source>
        <translation>Wieder&amp;holen: %1</translation>
    </message>
    <message>
        <source>Re&amp;do</source>
        <translation>Wieder&amp;holen</translation>
    </message>
    <message>
        <source>Pot tests against the pre&amp;dictions</source>
        <translation>Schalentests gegen &amp;Vorhersagen</translation>
    </message>
    <message>
        <source>Open pot</source>
        <translation>Schale öffnen</translation>
    </message>
    <message>
        <source>Pots (*.json);;All files (*)</source>
        <translation>Schalen (*.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>pot opened</source>
        <translation>Schale geöffnet</translation>
    </message>
    <message>
        <source>Bottom layer and top dressing of the pot are not on this form and were left out.</source>
        <translation>Drainageschicht und Abdeckung der Schale gibt es in diesem Formular nicht; sie wurden ausgelassen.</translation>
    </message>
    <message>
        <source>%1 could not be written: end its name in png, svg, pdf or csv, and choose a folder you may write to.</source>
        <translation>%1 ließ sich nicht schreiben: den Namen auf png, svg, pdf oder csv enden lassen und einen Ordner wählen, in den geschrieben werden darf.</translation>
    </message>
    <message>
        <source>%1 could not be written: choose a folder you may write to.</source>
        <translation>%1 ließ sich nicht schreiben: einen Ordner wählen, in den geschrieben werden darf.</translation>
    </message>
    <message>
        <source>Cl&amp;ear the bench</source>
        <translation>Arbeitstisch &amp;leeren</translation>
    </message>
    <message>
        <source>There is no picture on this page to save.</source>
        <translation>Auf dieser Seite ist kein Bild, das sich sichern ließe.</translation>
    </message>
    <message>
        <source>P&amp;rint the sheet...</source>
        <translation>Blatt &amp;drucken...</translation>
    </message>
    <message>
        <source>S&amp;heet as PDF...</source>
        <translation>Blatt als &amp;PDF...</translation>
    </message>
    <message>
        <source>Nothing here goes on paper. Sieving and Mixes (Ctrl+2) have the sheet of a test, Pots and trees that of a plan, Repotting day its lists.</source>
        <translation>Hier kommt nichts zu Papier. Sieben und Mischungen (Strg+2) haben das Blatt einer Siebprobe, Schalen und Bäume das eines Plans, Umtopftag seine Listen.</translation>
    </message>
    <message>
        <source>Text at %1 %.</source>
        <translation>Text mit %1 %.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ManualPage</name>
    <message>
        <source>Search the manual</source>
        <translation>Das Handbuch durchsuchen</translation>
    </message>
    <message>
        <source>one word or several</source>
        <translation>ein Wort oder mehrere</translation>
    </message>
    <message>
        <source>Page before</source>
        <translation>Seite davor</translation>
    </message>
    <message>
        <source>To the work (Esc)</source>
        <translation>Zur Arbeit (Esc)</translation>
    </message>
    <message>
        <source>Chapters</source>
        <translation>Kapitel</translation>
    </message>
    <message>
        <source>Text of the chapter</source>
        <translation>Text des Kapitels</translation>
    </message>
    <message>
        <source>in no chapter</source>
        <translation>in keinem Kapitel</translation>
    </message>
    <message numerus="yes">
        <source>in %n chapter(s)</source>
        <translation>
            <numerusform>in %n Kapitel</numerusform>
            <numerusform>in %n Kapiteln</numerusform>
        </translation>
    </message>
    <message>
        <source>The manual is written in English.</source>
        <translation>Das Handbuch ist auf Englisch geschrieben.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::MeasurePage</name>
    <message>
        <source>Measurement</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>&amp;Measure</source>
        <translation>Messe&amp;n</translation>
    </message>
    <message>
        <source>What is measured</source>
        <translation>Was gemessen wird</translation>
    </message>
    <message>
        <source>Pot of the test</source>
        <translation>Schale des Tests</translation>
    </message>
    <message>
        <source>In the &amp;pot</source>
        <translation>In der &amp;Schale</translation>
    </message>
    <message>
        <source>Dust, heat and weight:</source>
        <translation>Staub, Hitze und Gewicht:</translation>
    </message>
    <message>
        <source>dry dusty grain outdoors with a mask; let hot dishes cool; lift wet pots with both hands. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation>Staubiges Korn im Freien und mit Maske trocknen; heiße Schüsseln abkühlen lassen; nasse Schalen mit beiden Händen heben. Allgemeine Hinweise; Sicherheitsdatenblätter, örtliche Vorschriften und fachkundiger Rat gehen vor.</translation>
    </message>
    <message>
        <source>&amp;Keep what was measured</source>
        <translation>Ge&amp;messenes aufbewahren</translation>
    </message>
    <message>
        <source>Keep what was measured</source>
        <translation>Gemessenes aufbewahren</translation>
    </message>
    <message>
        <source>Mi&amp;x</source>
        <translation>M&amp;ischung</translation>
    </message>
    <message>
        <source>&amp;Bag or mix</source>
        <translation>Sack &amp;oder Mischung</translation>
    </message>
    <message>
        <source>&amp;Bag</source>
        <translation>Sa&amp;ck</translation>
    </message>
    <message>
        <source>Complete: keep it, and the estimates use it from now on.</source>
        <translation>Vollständig: aufbewahren, dann nutzen es die Schätzungen von nun an.</translation>
    </message>
    <message>
        <source>Is that right?</source>
        <translation>Stimmt das?</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Aufbewahrt: %1</translation>
    </message>
    <message>
        <source>straight walls</source>
        <translation>gerade Wände</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::MixPage</name>
    <message>
        <source>Mix</source>
        <translation>Mischung</translation>
    </message>
    <message>
        <source>name of the mix</source>
        <translation>Name der Mischung</translation>
    </message>
    <message>
        <source>what it is for</source>
        <translation>wofür sie ist</translation>
    </message>
    <message>
        <source>&amp;Keep this mix</source>
        <translation>Die&amp;se Mischung aufbewahren</translation>
    </message>
    <message>
        <source>Keep this mix in the record</source>
        <translation>Diese Mischung in der Aufzeichnung aufbewahren</translation>
    </message>
    <message>
        <source>Ways to a mix</source>
        <translation>Wege zu einer Mischung</translation>
    </message>
    <message>
        <source>By hand</source>
        <translation>Von Hand</translation>
    </message>
    <message>
        <source>Find parts</source>
        <translation>Teile suchen</translation>
    </message>
    <message>
        <source>Dust and moss:</source>
        <translation>Staub und Moos:</translation>
    </message>
    <message>
        <source>wet the grain before mixing it, and keep long-fibred moss off your skin and out of your lungs. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation>Das Korn vor dem Mischen nässen und langfaseriges Moos von Haut und Lunge fernhalten. Allgemeine Hinweise; Sicherheitsdatenblätter, örtliche Vorschriften und fachkundiger Rat gehen vor.</translation>
    </message>
    <message>
        <source>Pot</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>Pot test: measure air and water of a kept mix</source>
        <translation>Schalentest: Luft und Wasser einer aufbewahrten Mischung messen</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>Sieblinien</translation>
    </message>
    <message>
        <source>Pot in section</source>
        <translation>Schale im Schnitt</translation>
    </message>
    <message>
        <source>Litres</source>
        <translation>Liter</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>Trade-offs</source>
        <translation>Abwägungen</translation>
    </message>
    <message>
        <source>Pot tests</source>
        <translation>Schalentests</translation>
    </message>
    <message>
        <source>Pictures of the mix</source>
        <translation>Bilder der Mischung</translation>
    </message>
    <message>
        <source>What would narrow it most?</source>
        <translation>Was würde es am meisten einengen?</translation>
    </message>
    <message>
        <source>Worked out as soon as the mix stands still.</source>
        <translation>Wird berechnet, sobald die Mischung feststeht.</translation>
    </message>
    <message>
        <source>Mind: %1</source>
        <translation>Achtung: %1</translation>
    </message>
    <message>
        <source>Years</source>
        <translation>Jahre</translation>
    </message>
    <message>
        <source>Pot test...</source>
        <translation>Schalentest...</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::Navigation</name>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::NewPotForm</name>
    <message>
        <source>&amp;Keep this pot</source>
        <translation>Diese Scha&amp;le aufbewahren</translation>
    </message>
    <message>
        <source>A new pot</source>
        <translation>Eine neue Schale</translation>
    </message>
    <message>
        <source>Measure its inside at the rim, and its depth. Nothing is worked out before.</source>
        <translation>Innen am Rand messen, und die Tiefe. Vorher wird nichts berechnet.</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>as you call it</source>
        <translation>eigene Bezeichnung</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>&amp;Shape</source>
        <translation>&amp;Form</translation>
    </message>
    <message>
        <source>Rim, length</source>
        <translation>Rand, Länge</translation>
    </message>
    <message>
        <source>Rim, across flats</source>
        <translation>Rand, Schlüsselweite</translation>
    </message>
    <message>
        <source>Rim, diameter</source>
        <translation>Rand, Durchmesser</translation>
    </message>
    <message>
        <source>inside, at the rim</source>
        <translation>innen, am Rand</translation>
    </message>
    <message>
        <source>Rim, width</source>
        <translation>Rand, Breite</translation>
    </message>
    <message>
        <source>Middle, diameter</source>
        <translation>Mitte, Durchmesser</translation>
    </message>
    <message>
        <source>inside, at half the depth</source>
        <translation>innen, auf halber Tiefe</translation>
    </message>
    <message>
        <source>&amp;Depth inside</source>
        <translation>&amp;Tiefe innen</translation>
    </message>
    <message>
        <source>floor to rim</source>
        <translation>Boden bis Rand</translation>
    </message>
    <message>
        <source>Keep this pot</source>
        <translation>Diese Schale aufbewahren</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Nicht jetzt</translation>
    </message>
    <message>
        <source>Not now; what is typed waits</source>
        <translation>Nicht jetzt; das Eingegebene wartet</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>Schale</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PartsBar</name>
    <message>
        <source>No mix yet: finish the sieve tests and give them parts.</source>
        <translation>Noch keine Mischung: die Siebanalysen abschließen und Teile vergeben.</translation>
    </message>
    <message>
        <source>voids between grains</source>
        <translation>zwischen Körnern</translation>
    </message>
    <message>
        <source>voids in grains</source>
        <translation>in Körnern</translation>
    </message>
    <message>
        <source>solid grain</source>
        <translation>Feststoff</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>In go %1; out come %2 mixed, of which %3 once settled.</source>
        <translation>Hinein gehen %1; heraus kommen %2 gemischt, davon %3, wenn gesetzt.</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>wie viel</translation>
    </message>
    <message>
        <source>%1, loose</source>
        <translation>%1, lose</translation>
    </message>
    <message>
        <source>mixed, poured</source>
        <translation>gemischt, geschüttet</translation>
    </message>
    <message>
        <source>%1, settled</source>
        <translation>%1, gesetzt</translation>
    </message>
    <message>
        <source>Litres in and litres out</source>
        <translation>Liter hinein und heraus</translation>
    </message>
    <message>
        <source>In: %1 loose, each by itself</source>
        <translation>Hinein: %1 lose, jedes für sich</translation>
    </message>
    <message>
        <source>Out: %1 mixed; what fills it once settled</source>
        <translation>Heraus: %1 gemischt; was füllt, wenn es sich gesetzt hat</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>90 of 100 cases</source>
        <translation>90 von 100 Fällen</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PartsPanel</name>
    <message>
        <source>Components, in parts of loose litres</source>
        <translation>Bestandteile, in Teilen loser Liter</translation>
    </message>
    <message>
        <source>parts of %1</source>
        <translation>Teile von %1</translation>
    </message>
    <message>
        <source>component %1</source>
        <translation>Bestandteil %1</translation>
    </message>
    <message>
        <source>Parts of %1, slider</source>
        <translation>Teile von %1, Schieber</translation>
    </message>
    <message>
        <source>Parts of %1</source>
        <translation>Teile von %1</translation>
    </message>
    <message>
        <source>Component %1</source>
        <translation>Bestandteil %1</translation>
    </message>
    <message>
        <source>new component</source>
        <translation>neuer Bestandteil</translation>
    </message>
    <message>
        <source>%1 removed</source>
        <translation>%1 entfernt</translation>
    </message>
    <message>
        <source>A mix here has up to %1 components; remove one first.</source>
        <translation>Eine Mischung hat hier bis zu %1 Bestandteile; erst einen entfernen.</translation>
    </message>
    <message>
        <source>Show %1</source>
        <translation>%1 zeigen</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PictureTabs</name>
    <message>
        <source>As a table</source>
        <translation>Als Tabelle</translation>
    </message>
    <message>
        <source>Pictures as tables</source>
        <translation>Bilder als Tabellen</translation>
    </message>
    <message>
        <source>%1, as a table</source>
        <translation>%1, als Tabelle</translation>
    </message>
    <message>
        <source>As a picture</source>
        <translation>Als Bild</translation>
    </message>
    <message>
        <source>How so: %1</source>
        <translation>Wieso: %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PotDrawing</name>
    <message>
        <source>rim</source>
        <translation>Rand</translation>
    </message>
    <message>
        <source>fill line</source>
        <translation>Füllhöhe</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>The pot to scale, from the front and from above</source>
        <translation>Die Schale im Maßstab, von vorn und von oben</translation>
    </message>
    <message>
        <source>Inside %1 by %2 at the rim, %3 by %4 at the floor, %5 deep, filled %6.</source>
        <translation>Innen %1 mal %2 am Rand, %3 mal %4 am Boden, %5 tief, gefüllt %6.</translation>
    </message>
    <message>
        <source>No pot yet.</source>
        <translation>Noch keine Schale.</translation>
    </message>
    <message>
        <source>where</source>
        <translation>wo</translation>
    </message>
    <message>
        <source>height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>rim %1</source>
        <translation>Rand %1</translation>
    </message>
    <message>
        <source>floor %1, depth %2</source>
        <translation>Boden %1, Tiefe %2</translation>
    </message>
    <message>
        <source>from above, %1 wide</source>
        <translation>von oben, %1 breit</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PotForm</name>
    <message>
        <source>Shape</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>rectangle</source>
        <translation>Rechteck</translation>
    </message>
    <message>
        <source>oval</source>
        <translation>oval</translation>
    </message>
    <message>
        <source>round</source>
        <translation>rund</translation>
    </message>
    <message>
        <source>hexagon</source>
        <translation>Sechseck</translation>
    </message>
    <message>
        <source>octagon</source>
        <translation>Achteck</translation>
    </message>
    <message>
        <source>drum, lip turned in</source>
        <translation>Trommel, Rand eingezogen</translation>
    </message>
    <message>
        <source>soft rectangle</source>
        <translation>Rechteck, weiche Ecken</translation>
    </message>
    <message>
        <source>bowl</source>
        <translation>Halbkugelschale</translation>
    </message>
    <message>
        <source>Sha&amp;pe</source>
        <translation>&amp;Form</translation>
    </message>
    <message>
        <source>shape of the pot</source>
        <translation>Form der Schale</translation>
    </message>
    <message>
        <source>Rim, length</source>
        <translation>Rand, Länge</translation>
    </message>
    <message>
        <source>rim of the pot</source>
        <translation>Rand der Schale</translation>
    </message>
    <message>
        <source>inside, at the rim</source>
        <translation>innen, am Rand</translation>
    </message>
    <message>
        <source>Rim, diameter</source>
        <translation>Rand, Durchmesser</translation>
    </message>
    <message>
        <source>Rim, across flats</source>
        <translation>Rand, Schlüsselweite</translation>
    </message>
    <message>
        <source>Rim, &amp;width</source>
        <translation>&amp;Rand, Breite</translation>
    </message>
    <message>
        <source>rim width of the pot</source>
        <translation>Randbreite der Schale</translation>
    </message>
    <message>
        <source>&amp;Middle, diameter</source>
        <translation>&amp;Mitte, Durchmesser</translation>
    </message>
    <message>
        <source>middle of the pot</source>
        <translation>Mitte der Schale</translation>
    </message>
    <message>
        <source>inside, at half the depth</source>
        <translation>innen, auf halber Tiefe</translation>
    </message>
    <message>
        <source>as the rim: straight walls</source>
        <translation>wie der Rand: gerade Wände</translation>
    </message>
    <message>
        <source>Corner e&amp;xponent</source>
        <translation>Eckene&amp;xponent</translation>
    </message>
    <message>
        <source>corner exponent of the pot</source>
        <translation>Eckenexponent der Schale</translation>
    </message>
    <message>
        <source>2 an ellipse, 4 soft corners, 6 nearly square</source>
        <translation>2 Ellipse, 4 weiche Ecken, 6 fast eckig</translation>
    </message>
    <message>
        <source>Dep&amp;th inside</source>
        <translation>&amp;Tiefe innen</translation>
    </message>
    <message>
        <source>depth of the pot</source>
        <translation>Tiefe der Schale</translation>
    </message>
    <message>
        <source>floor to rim</source>
        <translation>Boden bis Rand</translation>
    </message>
    <message>
        <source>F&amp;ill line below rim</source>
        <translation>Gießrand</translation>
    </message>
    <message>
        <source>fill line of the pot</source>
        <translation>Gießrand der Schale</translation>
    </message>
    <message>
        <source>common practice: 0.3 to 1 cm</source>
        <translation>üblich: 0,3 bis 1 cm</translation>
    </message>
    <message>
        <source>W&amp;ater fill</source>
        <translation>&amp;Wasserfüllung</translation>
    </message>
    <message>
        <source>water fill of the pot</source>
        <translation>Wasserfüllung der Schale</translation>
    </message>
    <message>
        <source>measured; overrides the lengths</source>
        <translation>gemessen; geht vor</translation>
    </message>
    <message>
        <source>Mou&amp;nd above it</source>
        <translation>&amp;Kuppe darüber</translation>
    </message>
    <message>
        <source>mound of the pot</source>
        <translation>Kuppe der Schale</translation>
    </message>
    <message>
        <source>rise in the middle; none if empty</source>
        <translation>Anstieg in der Mitte</translation>
    </message>
    <message>
        <source>Sa&amp;ucer water</source>
        <translation>&amp;Untersetzerwasser</translation>
    </message>
    <message>
        <source>saucer of the pot</source>
        <translation>Untersetzer der Schale</translation>
    </message>
    <message>
        <source>standing water above the floor</source>
        <translation>stehendes Wasser über dem Boden</translation>
    </message>
    <message>
        <source>wick of the pot</source>
        <translation>Docht der Schale</translation>
    </message>
    <message>
        <source>length below the floor</source>
        <translation>Länge unter dem Boden</translation>
    </message>
    <message>
        <source>tilt of the pot</source>
        <translation>Neigung der Schale</translation>
    </message>
    <message>
        <source>about the length; level if empty</source>
        <translation>längs; waagerecht, wenn leer</translation>
    </message>
    <message>
        <source>settling</source>
        <translation>Setzung</translation>
    </message>
    <message>
        <source>&amp;Spill</source>
        <translation>Streu&amp;verlust</translation>
    </message>
    <message>
        <source>spill</source>
        <translation>Streuverlust</translation>
    </message>
    <message>
        <source>mix that misses the pot, 5 to 10</source>
        <translation>Mischung neben der Schale, 5 bis 10</translation>
    </message>
    <message>
        <source>lost volume: 0 poured, about 8 worked in; empty: by jug tests of the bags, else as usual</source>
        <translation>Volumenverlust: 0 geschüttet, etwa 8 eingearbeitet; leer: nach Krugtests der Säcke, sonst wie üblich</translation>
    </message>
    <message>
        <source>empty: %1, by a jug of this mix</source>
        <translation>leer: %1, nach einem Krug dieser Mischung</translation>
    </message>
    <message>
        <source>empty: %1, by your jug tests</source>
        <translation>leer: %1, nach den eigenen Krugtests</translation>
    </message>
    <message>
        <source>empty: %1, worked in; 0 if poured</source>
        <translation>leer: %1, eingearbeitet; 0, wenn geschüttet</translation>
    </message>
    <message>
        <source>One of your pots</source>
        <translation>Eine eigene Schale</translation>
    </message>
    <message>
        <source>&amp;Your pots</source>
        <translation>Eigene S&amp;chalen</translation>
    </message>
    <message>
        <source>Wick or ground</source>
        <translation>Docht oder Erde</translation>
    </message>
    <message>
        <source>none is kept yet</source>
        <translation>noch keine aufbewahrt</translation>
    </message>
    <message>
        <source>Floor, length</source>
        <translation>Boden, Länge</translation>
    </message>
    <message>
        <source>floor of the pot</source>
        <translation>Boden des Topfs</translation>
    </message>
    <message>
        <source>Floor, diameter</source>
        <translation>Boden, Durchmesser</translation>
    </message>
    <message>
        <source>Floor, across flats</source>
        <translation>Boden, Schlüsselweite</translation>
    </message>
    <message>
        <source>Floor, width</source>
        <translation>Boden, Breite</translation>
    </message>
    <message>
        <source>floor width of the pot</source>
        <translation>Breite des Topfbodens</translation>
    </message>
    <message>
        <source>Tilt, deg&amp;rees</source>
        <translation>&amp;Neigung, Grad</translation>
    </message>
    <message>
        <source>Sett&amp;ling</source>
        <translation>Setzung</translation>
    </message>
    <message>
        <source>as typed</source>
        <translation>wie eingegeben</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PotSectionView</name>
    <message>
        <source>No pot yet: type its shape and inside lengths.</source>
        <translation>Noch keine Schale: Form und Innenmaße eingeben.</translation>
    </message>
    <message>
        <source>Pot in section, filled %1 deep; no mix yet, so no water.</source>
        <translation>Schale im Schnitt, %1 hoch gefüllt; noch keine Mischung, also kein Wasser.</translation>
    </message>
    <message>
        <source>Pot in section, filled %1 deep: the lowest %2 stay wet; water %3 at the floor and %4 at the fill line.</source>
        <translation>Schale im Schnitt, %1 hoch gefüllt: die untersten %2 bleiben nass; Wasser %3 am Boden und %4 an der Füllhöhe.</translation>
    </message>
    <message>
        <source>Pot in section; up and down change its depth</source>
        <translation>Schale im Schnitt; Auf und Ab ändern ihre Tiefe</translation>
    </message>
    <message>
        <source>Drag the rim, or press Up and Down, to try another depth</source>
        <translation>Den Rand ziehen oder Auf und Ab drücken, um eine andere Tiefe zu probieren</translation>
    </message>
    <message>
        <source>wet zone %1</source>
        <translation>Nasszone %1</translation>
    </message>
    <message>
        <source>filled %1</source>
        <translation>gefüllt %1</translation>
    </message>
    <message>
        <source>depth inside %1</source>
        <translation>Tiefe innen %1</translation>
    </message>
    <message>
        <source>depth of the pot</source>
        <translation>Tiefe der Schale</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PotsTab</name>
    <message>
        <source>%1 of pot %2</source>
        <translation>%1 von Schale %2</translation>
    </message>
    <message>
        <source>Pots</source>
        <translation>Schalen</translation>
    </message>
    <message>
        <source>pot by number or name</source>
        <translation>Nummer oder Name</translation>
    </message>
    <message>
        <source>No pots yet. Add one and measure its inside: length and width at the rim and at the floor, and the depth.</source>
        <translation>Noch keine Schalen. Eine hinzufügen und innen messen: Länge und Breite am Rand und am Boden, und die Tiefe.</translation>
    </message>
    <message>
        <source>free or taken</source>
        <translation>frei oder vergeben</translation>
    </message>
    <message>
        <source>Add a &amp;pot</source>
        <translation>S&amp;chale hinzufügen</translation>
    </message>
    <message>
        <source>taken: %1</source>
        <translation>vergeben: %1</translation>
    </message>
    <message>
        <source>given away</source>
        <translation>weggegeben</translation>
    </message>
    <message>
        <source>free</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>as you call it</source>
        <translation>eigene Bezeichnung</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>table of areas</source>
        <translation>Flächentabelle</translation>
    </message>
    <message>
        <source>&amp;Shape</source>
        <translation>&amp;Form</translation>
    </message>
    <message>
        <source>broken, sold or given away</source>
        <translation>zerbrochen, verkauft oder weggegeben</translation>
    </message>
    <message>
        <source>whereabouts</source>
        <translation>Verbleib</translation>
    </message>
    <message>
        <source>Rim, length</source>
        <translation>Rand, Länge</translation>
    </message>
    <message>
        <source>inside, at the rim</source>
        <translation>innen, am Rand</translation>
    </message>
    <message>
        <source>rim</source>
        <translation>Rand</translation>
    </message>
    <message>
        <source>Rim, diameter</source>
        <translation>Rand, Durchmesser</translation>
    </message>
    <message>
        <source>Rim, across flats</source>
        <translation>Rand, Schlüsselweite</translation>
    </message>
    <message>
        <source>Rim, width</source>
        <translation>Rand, Breite</translation>
    </message>
    <message>
        <source>rim width</source>
        <translation>Randbreite</translation>
    </message>
    <message>
        <source>Middle, diameter</source>
        <translation>Mitte, Durchmesser</translation>
    </message>
    <message>
        <source>inside, at half the depth</source>
        <translation>innen, auf halber Tiefe</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>Floor, length</source>
        <translation>Boden, Länge</translation>
    </message>
    <message>
        <source>as the rim: straight walls</source>
        <translation>wie der Rand: gerade Wände</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>Floor, diameter</source>
        <translation>Boden, Durchmesser</translation>
    </message>
    <message>
        <source>Floor, across flats</source>
        <translation>Boden, Schlüsselweite</translation>
    </message>
    <message>
        <source>Floor, width</source>
        <translation>Boden, Breite</translation>
    </message>
    <message>
        <source>floor width</source>
        <translation>Bodenbreite</translation>
    </message>
    <message>
        <source>Corner exponent</source>
        <translation>Eckenexponent</translation>
    </message>
    <message>
        <source>2 an ellipse, 4 soft corners, 6 nearly square</source>
        <translation>2 Ellipse, 4 weiche Ecken, 6 fast eckig</translation>
    </message>
    <message>
        <source>corner exponent</source>
        <translation>Eckenexponent</translation>
    </message>
    <message>
        <source>Heights and areas</source>
        <translation>Höhen und Flächen</translation>
    </message>
    <message>
        <source>cm and cm2 from the floor: 0 450; 4 520; 8 600</source>
        <translation>cm und cm2 vom Boden an: 0 450; 4 520; 8 600</translation>
    </message>
    <message>
        <source>&amp;Depth inside</source>
        <translation>&amp;Tiefe innen</translation>
    </message>
    <message>
        <source>floor to rim</source>
        <translation>Boden bis Rand</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Corner radius</source>
        <translation>Eckenradius</translation>
    </message>
    <message>
        <source>sharp corners if empty</source>
        <translation>scharfe Ecken, wenn leer</translation>
    </message>
    <message>
        <source>corner radius</source>
        <translation>Eckenradius</translation>
    </message>
    <message>
        <source>Rounding at the floor</source>
        <translation>Rundung am Boden</translation>
    </message>
    <message>
        <source>radius between floor and wall</source>
        <translation>Radius zwischen Boden und Wand</translation>
    </message>
    <message>
        <source>rounding at the floor</source>
        <translation>Rundung am Boden</translation>
    </message>
    <message>
        <source>Fill line below rim</source>
        <translation>Gießrand</translation>
    </message>
    <message>
        <source>common practice: 0.3 to 1 cm</source>
        <translation>üblich: 0,3 bis 1 cm</translation>
    </message>
    <message>
        <source>fill line</source>
        <translation>Füllhöhe</translation>
    </message>
    <message>
        <source>&amp;Water fill</source>
        <translation>&amp;Wasserfüllung</translation>
    </message>
    <message>
        <source>water fill</source>
        <translation>Wasserfüllung</translation>
    </message>
    <message>
        <source>Bottom layer</source>
        <translation>Drainageschicht</translation>
    </message>
    <message>
        <source>coarse grain on the floor; none if empty</source>
        <translation>grob; keine, wenn leer</translation>
    </message>
    <message>
        <source>bottom layer</source>
        <translation>Drainageschicht</translation>
    </message>
    <message>
        <source>Top dressing</source>
        <translation>Abdeckung</translation>
    </message>
    <message>
        <source>top dressing</source>
        <translation>Abdeckung</translation>
    </message>
    <message>
        <source>Own &amp;mass</source>
        <translation>Eigene &amp;Masse</translation>
    </message>
    <message>
        <source>empty and dry; for lifting</source>
        <translation>leer und trocken; für das Heben</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Drain holes</source>
        <translation>Abflusslöcher</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>wie viele</translation>
    </message>
    <message>
        <source>drain holes</source>
        <translation>Abflusslöcher</translation>
    </message>
    <message>
        <source>Feet</source>
        <translation>Füße</translation>
    </message>
    <message>
        <source>height under the pot</source>
        <translation>Höhe unter der Schale</translation>
    </message>
    <message>
        <source>feet</source>
        <translation>Füße</translation>
    </message>
    <message>
        <source>No&amp;te</source>
        <translation>N&amp;otiz</translation>
    </message>
    <message>
        <source>glaze, chips, where it stands</source>
        <translation>Glasur, Scharten, wo sie steht</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Picture of the pot</source>
        <translation>Bild der Schale</translation>
    </message>
    <message>
        <source>The pot to scale</source>
        <translation>Die Schale im Maßstab</translation>
    </message>
    <message>
        <source>shape</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>pot added</source>
        <translation>Schale hinzugefügt</translation>
    </message>
    <message>
        <source>Pot %1 stays: a tree&apos;s history or a day names it. Mark it as given away instead.</source>
        <translation>Schale %1 bleibt: Die Geschichte eines Baums oder ein Tag nennt sie. Stattdessen als weggegeben vermerken.</translation>
    </message>
    <message>
        <source>pot %1 removed</source>
        <translation>Schale %1 entfernt</translation>
    </message>
    <message>
        <source>Pot %1: %2</source>
        <translation>Schale %1: %2</translation>
    </message>
    <message>
        <source>What it holds</source>
        <translation>Was sie fasst</translation>
    </message>
    <message>
        <source>to the fill line</source>
        <translation>bis zur Füllhöhe</translation>
    </message>
    <message>
        <source>by its lengths alone</source>
        <translation>nur nach den Maßen</translation>
    </message>
    <message>
        <source>water fill against lengths</source>
        <translation>Wasserfüllung gegen Maße</translation>
    </message>
    <message>
        <source>no water fill was measured</source>
        <translation>es wurde keine Wasserfüllung gemessen</translation>
    </message>
    <message>
        <source>main mix, without layers</source>
        <translation>Hauptmischung, ohne Schichten</translation>
    </message>
    <message>
        <source>Mound above it</source>
        <translation>Kuppe darüber</translation>
    </message>
    <message>
        <source>rise in the middle; none if empty</source>
        <translation>Anstieg in der Mitte</translation>
    </message>
    <message>
        <source>mound</source>
        <translation>Kuppe</translation>
    </message>
    <message>
        <source>measured; overrides the lengths</source>
        <translation>gemessen; geht vor</translation>
    </message>
    <message>
        <source>usual 0.3 to 0.5; none if empty</source>
        <translation>üblich 0.3 bis 0.5; leer heißt keine</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ProtocolDrawing</name>
    <message>
        <source>How it is done: %1</source>
        <translation>So wird es gemacht: %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecipesPanel</name>
    <message>
        <source>Recipes, best first</source>
        <translation>Rezepte, bestes zuerst</translation>
    </message>
    <message>
        <source>How far the search has come</source>
        <translation>Wie weit die Suche ist</translation>
    </message>
    <message>
        <source>Enough</source>
        <translation>Genug</translation>
    </message>
    <message>
        <source>Stop searching and show what was found so far</source>
        <translation>Die Suche anhalten und zeigen, was bisher gefunden wurde</translation>
    </message>
    <message>
        <source>recipes %p %</source>
        <translation>Rezepte %p %</translation>
    </message>
    <message>
        <source>the nearest recipe %p %</source>
        <translation>das nächste Rezept %p %</translation>
    </message>
    <message>
        <source>contradictions %p %</source>
        <translation>Widersprüche %p %</translation>
    </message>
    <message>
        <source>Keep as a mix</source>
        <translation>Als Mischung aufbewahren</translation>
    </message>
    <message>
        <source>Keep the chosen recipe as a mix, and lay it on the bench</source>
        <translation>Das gewählte Rezept als Mischung aufbewahren und auf den Arbeitstisch legen</translation>
    </message>
    <message>
        <source>Keep and reserve</source>
        <translation>Aufbewahren und vormerken</translation>
    </message>
    <message>
        <source>Keep the chosen recipe as a mix, and reserve its grain</source>
        <translation>Das gewählte Rezept als Mischung aufbewahren und sein Korn vormerken</translation>
    </message>
    <message>
        <source>Search on</source>
        <translation>Weiter suchen</translation>
    </message>
    <message>
        <source>Search again to the end</source>
        <translation>Noch einmal bis zum Ende suchen</translation>
    </message>
    <message>
        <source>Still wanted: %1.</source>
        <translation>Noch gesucht: %1.</translation>
    </message>
    <message>
        <source>A marked field on the left has to be put right first.</source>
        <translation>Zuerst ist ein markiertes Feld links in Ordnung zu bringen.</translation>
    </message>
    <message>
        <source>The inputs changed: what is shown in grey answers the question before.</source>
        <translation>Die Eingaben haben sich geändert: Was grau steht, beantwortet die Frage davor.</translation>
    </message>
    <message>
        <source>Searching the shelf.</source>
        <translation>Der Vorrat wird durchsucht.</translation>
    </message>
    <message>
        <source>No recipe holds every wish that must hold; the nearest is shown.</source>
        <translation>Kein Rezept erfüllt alle Wünsche, die gelten müssen; das nächste wird gezeigt.</translation>
    </message>
    <message numerus="yes">
        <source>%n recipe(s), best first.</source>
        <translation>
            <numerusform>Ein Rezept.</numerusform>
            <numerusform>%n Rezepte, bestes zuerst.</numerusform>
        </translation>
    </message>
    <message>
        <source>its grain is kept for this mix in later searches</source>
        <translation>sein Korn bleibt bei späteren Suchen für diese Mischung</translation>
    </message>
    <message>
        <source>type the litres needed first</source>
        <translation>erst die benötigten Liter eintragen</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordBook</name>
    <message>
        <source>Undone: %1</source>
        <translation>Rückgängig: %1</translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation>Wiederholt: %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordForm</name>
    <message>
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>Emptied elsewhere meanwhile, so what you typed is not saved yet. Enter saves yours, Escape empties the field.</source>
        <translation>Inzwischen anderswo geleert, deshalb ist die Eingabe noch nicht gespeichert. Eingabe speichert sie, Esc leert das Feld.</translation>
    </message>
    <message>
        <source>Changed elsewhere meanwhile to “%1”, so what you typed is not saved yet. Enter saves yours, Escape takes the other.</source>
        <translation>Inzwischen anderswo in „%1“ geändert, deshalb ist die Eingabe noch nicht gespeichert. Eingabe speichert sie, Esc nimmt das andere.</translation>
    </message>
    <message>
        <source>Typed before and not saved yet. Enter saves it, Escape takes back what was there.</source>
        <translation>Vorher eingetippt und noch nicht gespeichert. Enter speichert es, Escape holt zurück, was da war.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordImport</name>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>here already, left alone</source>
        <translation>schon hier, unberührt gelassen</translation>
    </message>
    <message>
        <source>comes back</source>
        <translation>kommt zurück</translation>
    </message>
    <message>
        <source>replaces the one here</source>
        <translation>ersetzt den hiesigen</translation>
    </message>
    <message>
        <source>differs from the one here</source>
        <translation>weicht vom hiesigen ab</translation>
    </message>
    <message>
        <source>import of %1</source>
        <translation>Übernahme von %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordListModel</name>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keine</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>Sack</translation>
    </message>
    <message>
        <source>fraction</source>
        <translation>Fraktion</translation>
    </message>
    <message>
        <source>no.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>what happened</source>
        <translation>was geschah</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>received</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>%1 dry</source>
        <translation>%1 trocken</translation>
    </message>
    <message>
        <source>tests</source>
        <translation>Analysen</translation>
    </message>
    <message>
        <source>left</source>
        <translation>übrig</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordListSide</name>
    <message>
        <source>F&amp;ind</source>
        <translation>&amp;Suchen</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordPages</name>
    <message>
        <source>Rec&amp;ord</source>
        <translation>Auf&amp;zeichnung</translation>
    </message>
    <message>
        <source>&amp;Receive bags</source>
        <translation>Säcke a&amp;nnehmen</translation>
    </message>
    <message>
        <source>Ctrl+R</source>
        <translation>Ctrl+R</translation>
    </message>
    <message>
        <source>&amp;Grade this bag</source>
        <translation>Körnung &amp;prüfen</translation>
    </message>
    <message>
        <source>Ctrl+G</source>
        <translation>Ctrl+G</translation>
    </message>
    <message>
        <source>Ctrl+M</source>
        <translation>Ctrl+M</translation>
    </message>
    <message>
        <source>&amp;Take into stock</source>
        <translation>In den &amp;Vorrat</translation>
    </message>
    <message>
        <source>Ctrl+Shift+T</source>
        <translation>Ctrl+Shift+T</translation>
    </message>
    <message>
        <source>Measur&amp;e this bag</source>
        <translation>&amp;Diesen Sack messen</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Ctrl+D</translation>
    </message>
    <message>
        <source>&amp;Pot test of a mix</source>
        <translation>Schalentest &amp;einer Mischung</translation>
    </message>
    <message>
        <source>Ctrl+Shift+B</source>
        <translation>Ctrl+Shift+B</translation>
    </message>
    <message>
        <source>Ctrl+Shift+R</source>
        <translation>Ctrl+Shift+R</translation>
    </message>
    <message>
        <source>&amp;Add a tree</source>
        <translation>&amp;Baum hinzufügen</translation>
    </message>
    <message>
        <source>Alt+Shift+T</source>
        <translation>Alt+Shift+T</translation>
    </message>
    <message>
        <source>Add a p&amp;ot</source>
        <translation>Sch&amp;ale hinzufügen</translation>
    </message>
    <message>
        <source>Ctrl+Alt+P</source>
        <translation>Ctrl+Alt+P</translation>
    </message>
    <message>
        <source>Plan the root mass of this tree</source>
        <translation>Den Ballen dieses Baums planen</translation>
    </message>
    <message>
        <source>Ctrl+Alt+J</source>
        <translation>Ctrl+Alt+J</translation>
    </message>
    <message>
        <source>Remove this tree, pot or plan</source>
        <translation>Diesen Baum, diese Schale oder diesen Plan entfernen</translation>
    </message>
    <message>
        <source>Alt+Shift+Delete</source>
        <translation>Alt+Shift+Delete</translation>
    </message>
    <message>
        <source>&amp;Keep the sieve test with its bag</source>
        <translation>Siebanal&amp;yse bei ihrem Sack aufbewahren</translation>
    </message>
    <message>
        <source>Ctrl+S</source>
        <translation>Ctrl+S</translation>
    </message>
    <message>
        <source>Keep the &amp;fractions of the screening</source>
        <translation>&amp;Fraktionen des Absiebens aufbewahren</translation>
    </message>
    <message>
        <source>Ctrl+Shift+K</source>
        <translation>Ctrl+Shift+K</translation>
    </message>
    <message>
        <source>Keep the mi&amp;x</source>
        <translation>D&amp;ie Mischung aufbewahren</translation>
    </message>
    <message>
        <source>Ctrl+Shift+M</source>
        <translation>Ctrl+Shift+M</translation>
    </message>
    <message>
        <source>&amp;Write down in the log</source>
        <translation>Ins &amp;Tagebuch schreiben</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation>Ctrl+L</translation>
    </message>
    <message>
        <source>F&amp;ind on this page</source>
        <translation>Auf dieser Seite s&amp;uchen</translation>
    </message>
    <message>
        <source>Ctrl+F</source>
        <translation>Ctrl+F</translation>
    </message>
    <message>
        <source>&amp;Undo in the record</source>
        <translation>Rück&amp;gängig in der Aufzeichnung</translation>
    </message>
    <message>
        <source>Ctrl+Alt+Z</source>
        <translation>Ctrl+Alt+Z</translation>
    </message>
    <message>
        <source>Re&amp;do in the record</source>
        <translation>Wieder&amp;holen in der Aufzeichnung</translation>
    </message>
    <message>
        <source>Ctrl+Alt+Shift+Z</source>
        <translation>Ctrl+Alt+Shift+Z</translation>
    </message>
    <message>
        <source>Save a &amp;copy of the record...</source>
        <translation>&amp;Kopie der Aufzeichnung speichern...</translation>
    </message>
    <message>
        <source>Ctrl+Shift+S</source>
        <translation>Ctrl+Shift+S</translation>
    </message>
    <message>
        <source>grain of %1 as measured</source>
        <translation>Korn von %1 wie gemessen</translation>
    </message>
    <message>
        <source>Ctrl+Z</source>
        <translation>Ctrl+Z</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Z</source>
        <translation>Ctrl+Shift+Z</translation>
    </message>
    <message>
        <source>&amp;Undo in the record: %1</source>
        <translation>Rück&amp;gängig in der Aufzeichnung: %1</translation>
    </message>
    <message>
        <source>Re&amp;do in the record: %1</source>
        <translation>Wieder&amp;holen in der Aufzeichnung: %1</translation>
    </message>
    <message>
        <source>wishes for %1</source>
        <translation>Wünsche für %1</translation>
    </message>
    <message>
        <source>A search for %1 starts with these wishes from now on.</source>
        <translation>Eine Suche für %1 beginnt von nun an mit diesen Wünschen.</translation>
    </message>
    <message>
        <source>sieves of %1</source>
        <translation>Siebe von %1</translation>
    </message>
    <message>
        <source>Choose the material on the Grain tab first: a bag is of some material.</source>
        <translation>Zuerst das Material unter Korn wählen: Ein Sack ist aus irgendeinem Material.</translation>
    </message>
    <message>
        <source>bag %1</source>
        <translation>Sack %1</translation>
    </message>
    <message>
        <source>sieve test of bag %1</source>
        <translation>Siebanalyse von Sack %1</translation>
    </message>
    <message>
        <source>Graded bag %1</source>
        <translation>Körnung von Sack %1 geprüft</translation>
    </message>
    <message>
        <source>The sieve test is kept with its bag once the pan is typed and no fault is left; until then it stays on the bench.</source>
        <translation>Die Siebanalyse wird bei ihrem Sack aufbewahrt, sobald der Boden eingegeben ist und kein Fehler mehr da ist; bis dahin bleibt sie auf dem Arbeitstisch.</translation>
    </message>
    <message>
        <source>Bag %1 has this sieve test already.</source>
        <translation>Sack %1 hat diese Siebanalyse schon.</translation>
    </message>
    <message>
        <source>bag of %1</source>
        <translation>Sack aus %1</translation>
    </message>
    <message numerus="yes">
        <source>Kept %n sieve test(s) with bag %1.</source>
        <translation>
            <numerusform>%n Siebanalyse bei Sack %1 aufbewahrt.</numerusform>
            <numerusform>%n Siebanalysen bei Sack %1 aufbewahrt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Weigh every fraction first, then they can be kept.</source>
        <translation>Zuerst jede Fraktion wiegen, dann lassen sie sich aufbewahren.</translation>
    </message>
    <message>
        <source>Keep the sieve test with its bag first: fractions come from a bag.</source>
        <translation>Zuerst die Siebanalyse bei ihrem Sack aufbewahren: Fraktionen kommen aus einem Sack.</translation>
    </message>
    <message>
        <source>screening of bag %1</source>
        <translation>Absieben von Sack %1</translation>
    </message>
    <message>
        <source>Screened bag %1. %2</source>
        <translation>Sack %1 abgesiebt. %2</translation>
    </message>
    <message>
        <source>screening kept of %1</source>
        <translation>Absieben von %1 aufbewahrt</translation>
    </message>
    <message>
        <source>The fractions of bag %1 are in stock.</source>
        <translation>Die Fraktionen von Sack %1 sind im Vorrat.</translation>
    </message>
    <message>
        <source>There is no mix to keep yet: finish the sieve tests and give them parts.</source>
        <translation>Noch keine Mischung aufzubewahren: die Siebanalysen abschließen und Teile vergeben.</translation>
    </message>
    <message>
        <source>Give the mix a name first.</source>
        <translation>Der Mischung zuerst einen Namen geben.</translation>
    </message>
    <message>
        <source>This mix is kept already, as %1.</source>
        <translation>Diese Mischung ist schon aufbewahrt, als %1.</translation>
    </message>
    <message>
        <source>mix %1</source>
        <translation>Mischung %1</translation>
    </message>
    <message>
        <source>Kept mix %1, %2</source>
        <translation>Mischung %1 aufbewahrt, %2</translation>
    </message>
    <message>
        <source>Kept as %1.</source>
        <translation>Aufbewahrt als %1.</translation>
    </message>
    <message>
        <source>found mix</source>
        <translation>gefundene Mischung</translation>
    </message>
    <message>
        <source>Found mix %1, %2, and reserved its grain</source>
        <translation>Mischung %1, %2, gefunden und ihr Korn vorgemerkt</translation>
    </message>
    <message>
        <source>Found mix %1, %2</source>
        <translation>Mischung %1, %2, gefunden</translation>
    </message>
    <message>
        <source>Kept as %1 and laid on the bench.</source>
        <translation>Aufbewahrt als %1 und auf den Arbeitstisch gelegt.</translation>
    </message>
    <message>
        <source>mix %1 opened</source>
        <translation>Mischung %1 geöffnet</translation>
    </message>
    <message>
        <source>Save a copy of the record</source>
        <translation>Kopie der Aufzeichnung speichern</translation>
    </message>
    <message>
        <source>Gritwright records (*.gritwright)</source>
        <translation>Gritwright-Aufzeichnungen (*.gritwright)</translation>
    </message>
    <message>
        <source>A checked copy lies in %1.</source>
        <translation>Eine geprüfte Kopie liegt in %1.</translation>
    </message>
    <message>
        <source>Take &amp;back grain from a tree</source>
        <translation>Korn von einem Baum &amp;zurücknehmen</translation>
    </message>
    <message>
        <source>Ctrl+Alt+I</source>
        <translation>Ctrl+Alt+I</translation>
    </message>
    <message>
        <source>Add a bin or tub</source>
        <translation>Kiste oder Wanne hinzufügen</translation>
    </message>
    <message>
        <source>Ctrl+Alt+X</source>
        <translation>Ctrl+Alt+X</translation>
    </message>
    <message>
        <source>Re&amp;move this bag or bin</source>
        <translation>Diesen Sack oder diese Kiste entfe&amp;rnen</translation>
    </message>
    <message>
        <source>W&amp;here this grain went</source>
        <translation>&amp;Wohin dieses Korn ging</translation>
    </message>
    <message>
        <source>Ctrl+Shift+W</source>
        <translation>Ctrl+Shift+W</translation>
    </message>
    <message>
        <source>What do the sick trees share?</source>
        <translation>Was haben die kranken Bäume gemeinsam?</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Y</source>
        <translation>Ctrl+Shift+Y</translation>
    </message>
    <message>
        <source>Save the list of trees...</source>
        <translation>Liste der Bäume speichern...</translation>
    </message>
    <message>
        <source>Ctrl+Shift+L</source>
        <translation>Ctrl+Shift+L</translation>
    </message>
    <message>
        <source>The bench holds %1 components: the others of mix %2 were left out.</source>
        <translation>Der Arbeitstisch fasst %1 Bestandteile: Die anderen der Mischung %2 wurden ausgelassen.</translation>
    </message>
    <message>
        <source>Write records to a fi&amp;le...</source>
        <translation>Einträge in eine Datei &amp;schreiben...</translation>
    </message>
    <message>
        <source>Ctrl+Shift+E</source>
        <translation>Ctrl+Shift+E</translation>
    </message>
    <message>
        <source>The whole record (*.json)</source>
        <translation>Die ganze Aufzeichnung (*.json)</translation>
    </message>
    <message>
        <source>List of bags (*.csv)</source>
        <translation>Liste der Säcke (*.csv)</translation>
    </message>
    <message>
        <source>List of sieve tests (*.csv)</source>
        <translation>Liste der Siebanalysen (*.csv)</translation>
    </message>
    <message>
        <source>List of trees (*.csv)</source>
        <translation>Liste der Bäume (*.csv)</translation>
    </message>
    <message>
        <source>List of fractions (*.csv)</source>
        <translation>Liste der Fraktionen (*.csv)</translation>
    </message>
    <message>
        <source>List of the stock&apos;s entries (*.csv)</source>
        <translation>Liste der Vorratsbuchungen (*.csv)</translation>
    </message>
    <message>
        <source>The log (*.csv)</source>
        <translation>Das Tagebuch (*.csv)</translation>
    </message>
    <message>
        <source>Write records to a file</source>
        <translation>Einträge in eine Datei schreiben</translation>
    </message>
    <message>
        <source>Written to %1.</source>
        <translation>Geschrieben nach %1.</translation>
    </message>
    <message>
        <source>Group&amp;s of trees and their wishes</source>
        <translation>Bau&amp;mgruppen und ihre Wünsche</translation>
    </message>
    <message>
        <source>Ctrl+Shift+G</source>
        <translation>Ctrl+Shift+G</translation>
    </message>
    <message>
        <source>Kept as %1 and laid on the bench; its grain for %2 is kept from other searches until it is mixed.</source>
        <translation>Aufbewahrt als %1 und auf den Arbeitstisch gelegt; sein Korn für %2 bleibt anderen Suchen vorenthalten, bis es gemischt ist.</translation>
    </message>
    <message>
        <source>Put this grai&amp;n into the mix</source>
        <translation>Dieses Korn in die Mis&amp;chung geben</translation>
    </message>
    <message>
        <source>pot %1</source>
        <translation>Schale %1</translation>
    </message>
    <message>
        <source>List of pots (*.csv)</source>
        <translation>Liste der Schalen (*.csv)</translation>
    </message>
    <message>
        <source>The sieve test of %1 is not kept and left the bench: undo brings it back.</source>
        <translation>Die Siebanalyse von %1 ist nicht aufbewahrt und hat den Arbeitstisch verlassen: „Rückgängig“ holt sie zurück.</translation>
    </message>
    <message>
        <source>No bag stands behind %1: type its sieve test.</source>
        <translation>Hinter %1 steht kein Sack: die Siebanalyse eintippen.</translation>
    </message>
    <message>
        <source>Written to %1, but not all of it. %2.</source>
        <translation>Geschrieben nach %1, aber nicht alles. %2.</translation>
    </message>
    <message>
        <source>litre weight of %1</source>
        <translation>Litergewicht von %1</translation>
    </message>
    <message>
        <source>material of %1</source>
        <translation>Material von %1</translation>
    </message>
    <message>
        <source>fraction %1</source>
        <translation>Fraktion %1</translation>
    </message>
    <message>
        <source>bin %1</source>
        <translation>Kiste %1</translation>
    </message>
    <message>
        <source>ground of %1</source>
        <translation>Substrat von %1</translation>
    </message>
    <message>
        <source>tub %1</source>
        <translation>Wanne %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordSession</name>
    <message>
        <source>bag and pot numbers of the record before</source>
        <translation>Nummern von Säcken und Schalen der vorigen Aufzeichnung</translation>
    </message>
    <message>
        <source>Nothing was restored: %1</source>
        <translation>Nichts wurde wiederhergestellt: %1</translation>
    </message>
    <message>
        <source>Restored. The record as it was is kept as %1.</source>
        <translation>Wiederhergestellt. Die Aufzeichnung, wie sie war, bleibt als %1.</translation>
    </message>
    <message>
        <source>Restored.</source>
        <translation>Wiederhergestellt.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RootPlanDesk</name>
    <message>
        <source>%1 of root-mass plan %2</source>
        <translation>%1 von Ballenplan %2</translation>
    </message>
    <message>
        <source>root-mass plan of tree %1</source>
        <translation>Ballenplan von Baum %1</translation>
    </message>
    <message>
        <source>place of the tree</source>
        <translation>Platz des Baums</translation>
    </message>
    <message>
        <source>mix of root-mass plan %1</source>
        <translation>Mischung von Ballenplan %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RootPlanTab</name>
    <message>
        <source>Tree to plan for</source>
        <translation>Baum, für den geplant wird</translation>
    </message>
    <message>
        <source>&amp;Begin a plan</source>
        <translation>P&amp;lan beginnen</translation>
    </message>
    <message>
        <source>Begin a plan for this tree</source>
        <translation>Einen Plan für diesen Baum beginnen</translation>
    </message>
    <message>
        <source>Root-mass plans</source>
        <translation>Ballenpläne</translation>
    </message>
    <message>
        <source>plan by number or name</source>
        <translation>Nummer oder Name</translation>
    </message>
    <message>
        <source>No plans yet. Choose a tree above and begin one.</source>
        <translation>Noch keine Pläne. Oben einen Baum wählen und einen beginnen.</translation>
    </message>
    <message>
        <source>for tree</source>
        <translation>für Baum</translation>
    </message>
    <message>
        <source>Parts of the plan</source>
        <translation>Teile des Plans</translation>
    </message>
    <message>
        <source>Root mass</source>
        <translation>Ballen</translation>
    </message>
    <message>
        <source>Stand</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>May come off</source>
        <translation>Darf weg</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Arbeitstisch</translation>
    </message>
    <message>
        <source>Species group</source>
        <translation>Artengruppe</translation>
    </message>
    <message>
        <source>group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>Pot it goes into</source>
        <translation>Schale, in die er kommt</translation>
    </message>
    <message>
        <source>Into &amp;pot</source>
        <translation>&amp;In Schale</translation>
    </message>
    <message>
        <source>Form of the root mass</source>
        <translation>Form des Ballens</translation>
    </message>
    <message>
        <source>as its present pot</source>
        <translation>wie seine jetzige Schale</translation>
    </message>
    <message>
        <source>box</source>
        <translation>Kasten</translation>
    </message>
    <message>
        <source>upright elliptic</source>
        <translation>aufrecht elliptisch</translation>
    </message>
    <message>
        <source>rounded</source>
        <translation>gerundet</translation>
    </message>
    <message>
        <source>&amp;Root mass</source>
        <translation>Balle&amp;n</translation>
    </message>
    <message>
        <source>Present pot</source>
        <translation>Jetzige Schale</translation>
    </message>
    <message>
        <source>present pot</source>
        <translation>jetzige Schale</translation>
    </message>
    <message>
        <source>Root mass, length</source>
        <translation>Ballen, Länge</translation>
    </message>
    <message>
        <source>left to right, from the old front</source>
        <translation>links nach rechts, von der alten Front aus</translation>
    </message>
    <message>
        <source>Root mass, width</source>
        <translation>Ballen, Breite</translation>
    </message>
    <message>
        <source>front to back</source>
        <translation>vorn nach hinten</translation>
    </message>
    <message>
        <source>Root mass, height</source>
        <translation>Ballen, Höhe</translation>
    </message>
    <message>
        <source>underside to surface</source>
        <translation>Unterseite bis Oberfläche</translation>
    </message>
    <message>
        <source>Roundness</source>
        <translation>Rundheit</translation>
    </message>
    <message>
        <source>2 an ellipsoid, 4 a box with soft edges</source>
        <translation>2 ein Ellipsoid, 4 ein Kasten mit weichen Kanten</translation>
    </message>
    <message>
        <source>Trunk base, right</source>
        <translation>Stammfuß, rechts</translation>
    </message>
    <message>
        <source>of the root mass&apos;s middle; empty: middle of its top</source>
        <translation>von der Ballenmitte; leer: Mitte der Oberseite</translation>
    </message>
    <message>
        <source>Trunk base, back</source>
        <translation>Stammfuß, hinten</translation>
    </message>
    <message>
        <source>behind its middle</source>
        <translation>hinter der Mitte</translation>
    </message>
    <message>
        <source>Trunk base, up</source>
        <translation>Stammfuß, hoch</translation>
    </message>
    <message>
        <source>over its underside</source>
        <translation>über der Unterseite</translation>
    </message>
    <message>
        <source>New mix at the side</source>
        <translation>Neue Mischung seitlich</translation>
    </message>
    <message>
        <source>wanted; empty: 5 % of the length, 0.5 to 2 cm</source>
        <translation>leer: 5 % der Länge, 0,5 bis 2 cm</translation>
    </message>
    <message>
        <source>New mix below</source>
        <translation>Neue Mischung unten</translation>
    </message>
    <message>
        <source>wanted; empty: 15 % of the depth, 0.5 to 1.5 cm</source>
        <translation>leer: 15 % der Tiefe, 0,5 bis 1,5 cm</translation>
    </message>
    <message>
        <source>Turn, degrees</source>
        <translation>Drehung, Grad</translation>
    </message>
    <message>
        <source>the new front; from right toward back</source>
        <translation>die neue Front; von rechts nach hinten</translation>
    </message>
    <message>
        <source>may be turned by</source>
        <translation>darf gedreht werden um</translation>
    </message>
    <message>
        <source>degrees either way, to fit</source>
        <translation>Grad in jede Richtung, damit es passt</translation>
    </message>
    <message>
        <source>Tip, degrees</source>
        <translation>Kippung, Grad</translation>
    </message>
    <message>
        <source>0 to 90</source>
        <translation>0 bis 90</translation>
    </message>
    <message>
        <source>Tip toward, degrees</source>
        <translation>Kippen nach, Grad</translation>
    </message>
    <message>
        <source>0 right, 90 back, 180 left</source>
        <translation>0 rechts, 90 hinten, 180 links</translation>
    </message>
    <message>
        <source>Tip at least, degrees</source>
        <translation>Kippung mindestens, Grad</translation>
    </message>
    <message>
        <source>empty: it may be set upright</source>
        <translation>leer: darf aufrecht gestellt werden</translation>
    </message>
    <message>
        <source>Trunk base stands right</source>
        <translation>Stammfuß steht rechts</translation>
    </message>
    <message>
        <source>of the pot&apos;s middle; empty: root mass in the middle</source>
        <translation>von der Schalenmitte; leer: Ballen in der Mitte</translation>
    </message>
    <message>
        <source>Trunk base stands back</source>
        <translation>Stammfuß steht hinten</translation>
    </message>
    <message>
        <source>of the pot&apos;s middle</source>
        <translation>von der Schalenmitte</translation>
    </message>
    <message>
        <source>Trunk base over floor</source>
        <translation>Stammfuß über Boden</translation>
    </message>
    <message>
        <source>empty: at its least height over the soil</source>
        <translation>leer: in kleinster Höhe über dem Substrat</translation>
    </message>
    <message>
        <source>Trunk base over soil</source>
        <translation>Stammfuß über Substrat</translation>
    </message>
    <message>
        <source>at least; the trunk is never buried</source>
        <translation>mindestens; der Stamm wird nie vergraben</translation>
    </message>
    <message>
        <source>How it is cut</source>
        <translation>Wie geschnitten wird</translation>
    </message>
    <message>
        <source>along the pot&apos;s wall</source>
        <translation>an der Schalenwand entlang</translation>
    </message>
    <message>
        <source>straight, as a saw goes</source>
        <translation>gerade, wie eine Säge geht</translation>
    </message>
    <message>
        <source>cut style</source>
        <translation>Schnittart</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Schnitt</translation>
    </message>
    <message>
        <source>%1, at most</source>
        <translation>%1, höchstens</translation>
    </message>
    <message>
        <source>0: nothing, a structural root; empty: not known</source>
        <translation>0: nichts, eine tragende Wurzel; leer: nicht bekannt</translation>
    </message>
    <message>
        <source>%1, combed</source>
        <translation>%1, ausgekämmt</translation>
    </message>
    <message>
        <source>depth without a cut; empty: not combed</source>
        <translation>Tiefe ohne Schnitt; leer: nicht ausgekämmt</translation>
    </message>
    <message>
        <source>of the root mass; empty: the group&apos;s</source>
        <translation>vom Ballen; leer: wie die Gruppe</translation>
    </message>
    <message>
        <source>Untouched, at least</source>
        <translation>Unberührt, mindestens</translation>
    </message>
    <message>
        <source>Taken off, at most</source>
        <translation>Abgenommen, höchstens</translation>
    </message>
    <message>
        <source>Free pots of the record</source>
        <translation>Freie Schalen der Aufzeichnung</translation>
    </message>
    <message>
        <source>leave them out</source>
        <translation>auslassen</translation>
    </message>
    <message>
        <source>try them where this pot is too small</source>
        <translation>probieren, wenn diese Schale zu klein ist</translation>
    </message>
    <message>
        <source>free pots</source>
        <translation>freie Schalen</translation>
    </message>
    <message>
        <source>Free pots</source>
        <translation>Freie Schalen</translation>
    </message>
    <message>
        <source>Where the cut stopped</source>
        <translation>Wo der Schnitt stockte</translation>
    </message>
    <message>
        <source>Cut stopped, from</source>
        <translation>Schnitt stockte, von</translation>
    </message>
    <message>
        <source>It stopped at</source>
        <translation>Er stockte bei</translation>
    </message>
    <message>
        <source>depth from the farthest point, like 3 cm</source>
        <translation>Tiefe vom fernsten Punkt, etwa 3 cm</translation>
    </message>
    <message>
        <source>Stopped there: plan the rest</source>
        <translation>Dort gestockt: den Rest planen</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Clear what was stopped</source>
        <translation>Gestocktes löschen</translation>
    </message>
    <message>
        <source>stopped cuts</source>
        <translation>gestockte Schnitte</translation>
    </message>
    <message>
        <source>Pictures of the plan</source>
        <translation>Bilder des Plans</translation>
    </message>
    <message>
        <source>From the side and above</source>
        <translation>Von der Seite und von oben</translation>
    </message>
    <message>
        <source>Plan shown</source>
        <translation>Gezeigter Plan</translation>
    </message>
    <message>
        <source>Done: write this plan into the tree&apos;s history</source>
        <translation>Erledigt: diesen Plan in die Geschichte des Baums schreiben</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Lifting, blades, moss.</source>
        <translation>Heben, Klingen, Moos.</translation>
    </message>
    <message>
        <source>Two people or a trolley for a heavy pot; cut away from the hand; gloves for sphagnum. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation>Zu zweit oder mit Karren bei schweren Schalen; von der Hand weg schneiden; Handschuhe bei Sphagnum. Allgemeine Hinweise; Sicherheitsdatenblätter, örtliche Vorschriften und fachkundiger Rat gehen vor.</translation>
    </message>
    <message>
        <source>If the upper surface stops</source>
        <translation>Wenn die Oberseite stockt</translation>
    </message>
    <message>
        <source>upper cut stops at</source>
        <translation>oberer Schnitt stockt bei</translation>
    </message>
    <message>
        <source>take below</source>
        <translation>unten wegnehmen</translation>
    </message>
    <message>
        <source>trunk base</source>
        <translation>Stammfuß</translation>
    </message>
    <message>
        <source>untouched</source>
        <translation>unberührt</translation>
    </message>
    <message>
        <source>new mix</source>
        <translation>neue Mischung</translation>
    </message>
    <message>
        <source>root mass</source>
        <translation>Ballen</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>stopped cut</source>
        <translation>gestockter Schnitt</translation>
    </message>
    <message>
        <source>Saved %1</source>
        <translation>%1 gespeichert</translation>
    </message>
    <message>
        <source>repotting of tree %1 by plan %2</source>
        <translation>Umtopfen von Baum %1 nach Plan %2</translation>
    </message>
    <message>
        <source>Written into the history of tree %1; the mix is added on the Trees tab.</source>
        <translation>In die Geschichte von Baum %1 geschrieben; die Mischung wird unter Bäume ergänzt.</translation>
    </message>
    <message>
        <source>There is no tree yet: add it on the Trees tab.</source>
        <translation>Noch kein Baum: unter Bäume hinzufügen.</translation>
    </message>
    <message>
        <source>Tree %1 has no species group, so what it bears is not known: choose its group on the Trees tab.</source>
        <translation>Baum %1 hat keine Artengruppe, deshalb ist nicht bekannt, was er verträgt: seine Gruppe unter Bäume wählen.</translation>
    </message>
    <message>
        <source>root-mass plan %1 removed</source>
        <translation>Ballenplan %1 entfernt</translation>
    </message>
    <message>
        <source>%1, as it was</source>
        <translation>%1, wie es war</translation>
    </message>
    <message>
        <source>%1: stopped at %2</source>
        <translation>%1: gestockt bei %2</translation>
    </message>
    <message>
        <source>Plan %1: %2.</source>
        <translation>Plan %1: %2.</translation>
    </message>
    <message>
        <source>fits as it is</source>
        <translation>passt, wie er ist</translation>
    </message>
    <message>
        <source>Caution:</source>
        <translation>Vorsicht:</translation>
    </message>
    <message>
        <source>Note:</source>
        <translation>Hinweis:</translation>
    </message>
    <message>
        <source>plan %1</source>
        <translation>Plan %1</translation>
    </message>
    <message>
        <source>plan %1, in stages</source>
        <translation>Plan %1, in Etappen</translation>
    </message>
    <message>
        <source>corners %1 of the root mass</source>
        <translation>Ecken %1 des Ballens</translation>
    </message>
    <message>
        <source>Nothing limits the fit.</source>
        <translation>Nichts begrenzt den Sitz.</translation>
    </message>
    <message>
        <source>What limits the fit: %1.</source>
        <translation>Was den Sitz begrenzt: %1.</translation>
    </message>
    <message>
        <source>%1 longer</source>
        <translation>%1 länger</translation>
    </message>
    <message>
        <source>%1 wider</source>
        <translation>%1 breiter</translation>
    </message>
    <message>
        <source>%1 deeper</source>
        <translation>%1 tiefer</translation>
    </message>
    <message>
        <source>Smallest change of the pot that would fit: %1.</source>
        <translation>Kleinste Änderung der Schale, mit der es passt: %1.</translation>
    </message>
    <message>
        <source>Plan %1 in figures</source>
        <translation>Plan %1 in Zahlen</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation>abgenommen</translation>
    </message>
    <message>
        <source>stays untouched</source>
        <translation>bleibt unberührt</translation>
    </message>
    <message>
        <source>new mix, as it lies</source>
        <translation>neue Mischung, wie sie liegt</translation>
    </message>
    <message>
        <source>soil line over the floor</source>
        <translation>Substratlinie über dem Boden</translation>
    </message>
    <message>
        <source>new mix, of the pot</source>
        <translation>neue Mischung, von der Schale</translation>
    </message>
    <message>
        <source>shoulder over the soil</source>
        <translation>Schulter über dem Substrat</translation>
    </message>
    <message>
        <source>not in one go</source>
        <translation>nicht in einem Zug</translation>
    </message>
    <message>
        <source>Mix that fills the rest</source>
        <translation>Mischung, die den Rest füllt</translation>
    </message>
    <message>
        <source>&amp;Mix</source>
        <translation>&amp;Mischung</translation>
    </message>
    <message>
        <source>Trunk and stones</source>
        <translation>Stamm und Steine</translation>
    </message>
    <message>
        <source>under the soil; they take the place of mix</source>
        <translation>im Substrat, an Stelle von Mischung</translation>
    </message>
    <message>
        <source>Cut in this order</source>
        <translation>In dieser Folge schneiden</translation>
    </message>
    <message>
        <source>like: up, right; empty: largest first</source>
        <translation>wie: up, right; leer: das Größte zuerst</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>All soil off on purpose: bare-rooted</source>
        <translation>Alles Substrat mit Absicht ab: wurzelnackt</translation>
    </message>
    <message>
        <source>Bare-root it</source>
        <translation>Wurzelnackt machen</translation>
    </message>
    <message>
        <source>bare-rooting</source>
        <translation>wurzelnackt</translation>
    </message>
    <message>
        <source>It was bare-rooted last time</source>
        <translation>Er war beim letzten Mal wurzelnackt</translation>
    </message>
    <message>
        <source>Bare-rooted last time</source>
        <translation>Beim letzten Mal wurzelnackt</translation>
    </message>
    <message>
        <source>last bare-rooting</source>
        <translation>zuletzt wurzelnackt</translation>
    </message>
    <message>
        <source>Disturbed beside a cut</source>
        <translation>Gestört neben einem Schnitt</translation>
    </message>
    <message>
        <source>to this depth; empty: 3 % of the length, 0.3 to 2 cm</source>
        <translation>bis zu dieser Tiefe; leer: 3 % der Länge, 0,3 bis 2 cm</translation>
    </message>
    <message>
        <source>In stages: years between</source>
        <translation>In Etappen: Jahre dazwischen</translation>
    </message>
    <message>
        <source>whole years; empty: the group&apos;s least interval</source>
        <translation>ganze Jahre; leer: kleinster Abstand der Gruppe</translation>
    </message>
    <message>
        <source>Air and water</source>
        <translation>Luft und Wasser</translation>
    </message>
    <message>
        <source>Written into the history of tree %1; a repotting day also takes the grain from the stock.</source>
        <translation>In die Geschichte von Baum %1 geschrieben; ein Umtopftag nimmt auch das Korn aus dem Vorrat.</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keiner</translation>
    </message>
    <message>
        <source>untouched last time and again</source>
        <translation>letztes Mal unberührt und wieder</translation>
    </message>
    <message>
        <source>worked last time and again</source>
        <translation>letztes Mal bearbeitet und wieder</translation>
    </message>
    <message>
        <source>Write into histor&amp;y</source>
        <translation>In die Geschi&amp;chte</translation>
    </message>
    <message>
        <source>Pri&amp;nt...</source>
        <translation>Druc&amp;ken...</translation>
    </message>
    <message>
        <source>P&amp;DF...</source>
        <translation>PD&amp;F...</translation>
    </message>
    <message>
        <source>The printer could not be reached: is it on? The PDF can be printed later.</source>
        <translation>Der Drucker war nicht zu erreichen: Ist er eingeschaltet? Das PDF lässt sich auch später drucken.</translation>
    </message>
    <message>
        <source>No pot is free: add the pot it shall go into on the Pots tab.</source>
        <translation>Keine Schale ist frei: die Schale, in die er soll, unter Schalen hinzufügen.</translation>
    </message>
    <message>
        <source>Measure the root mass and type its length, width and height, or choose the pot it stands in. Nothing is worked out before.</source>
        <translation>Den Ballen messen und Länge, Breite und Höhe eingeben, oder die Schale wählen, in der er steht. Vorher wird nichts berechnet.</translation>
    </message>
    <message>
        <source>sphagnum of the shoulder, about</source>
        <translation>Sphagnum der Schulter, etwa</translation>
    </message>
    <message>
        <source>Plan %1 stays: a tree&apos;s history or a day names it. Begin a new plan instead.</source>
        <translation>Plan %1 bleibt: Die Geschichte eines Baums oder ein Tag nennt ihn. Stattdessen einen neuen Plan beginnen.</translation>
    </message>
    <message>
        <source>Species gro&amp;up</source>
        <translation>Artengru&amp;ppe</translation>
    </message>
    <message>
        <source>New plan for &amp;tree</source>
        <translation>Neuer Plan für Ba&amp;um</translation>
    </message>
    <message>
        <source>Print the root-mass plan</source>
        <translation>Den Ballenplan drucken</translation>
    </message>
    <message>
        <source>Save the root-mass plan as PDF</source>
        <translation>Den Ballenplan als PDF speichern</translation>
    </message>
    <message>
        <source>Root-mass plan as PDF</source>
        <translation>Ballenplan als PDF</translation>
    </message>
    <message>
        <source>root-mass plan %1.pdf</source>
        <translation>Ballenplan %1.pdf</translation>
    </message>
    <message>
        <source>%1: %2 (%3)</source>
        <translation>%1: %2 (%3)</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation>%1 oder mehr</translation>
    </message>
    <message>
        <source>Caution: after everything that may be done the root mass still sticks out, %1; take a larger pot</source>
        <translation>Vorsicht: nach allem, was getan werden darf, ragt der Ballen noch heraus, %1; eine größere Schale nehmen</translation>
    </message>
    <message>
        <source>No plan is worked out here yet. Begin one and enter its root mass and pot: then its sheet can go on paper.</source>
        <translation>Hier ist noch kein Plan ausgerechnet. Einen beginnen und Ballen und Schale eingeben: dann kann sein Blatt zu Papier.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RootPlanView</name>
    <message>
        <source>taken off</source>
        <translation>abgenommen</translation>
    </message>
    <message>
        <source>kept root mass</source>
        <translation>bleibender Ballen</translation>
    </message>
    <message>
        <source>untouched</source>
        <translation>unberührt</translation>
    </message>
    <message>
        <source>bottom layer, dressing</source>
        <translation>Drainage, Abdeckung</translation>
    </message>
    <message>
        <source>shoulder</source>
        <translation>Schulter</translation>
    </message>
    <message>
        <source>soil surface</source>
        <translation>Substratoberfläche</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>back</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>up</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>down</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>old right</source>
        <translation>alte rechte Seite</translation>
    </message>
    <message>
        <source>old left</source>
        <translation>alte linke Seite</translation>
    </message>
    <message>
        <source>old back</source>
        <translation>alte Rückseite</translation>
    </message>
    <message>
        <source>old front</source>
        <translation>alte Vorderseite</translation>
    </message>
    <message>
        <source>old top</source>
        <translation>alte Oberseite</translation>
    </message>
    <message>
        <source>old bottom</source>
        <translation>alte Unterseite</translation>
    </message>
    <message>
        <source>move the tree</source>
        <translation>den Baum versetzen</translation>
    </message>
    <message>
        <source>turn it</source>
        <translation>drehen</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>schneiden</translation>
    </message>
    <message>
        <source>tip it less</source>
        <translation>weniger kippen</translation>
    </message>
    <message>
        <source>sink it</source>
        <translation>tiefer setzen</translation>
    </message>
    <message>
        <source>raise it to the soil</source>
        <translation>bis zum Substrat anheben</translation>
    </message>
    <message>
        <source>build a shoulder</source>
        <translation>eine Schulter bauen</translation>
    </message>
    <message>
        <source>take another pot</source>
        <translation>eine andere Schale nehmen</translation>
    </message>
    <message>
        <source>in stages</source>
        <translation>in Etappen</translation>
    </message>
    <message>
        <source>No plan yet: choose a tree and begin one.</source>
        <translation>Noch kein Plan: einen Baum wählen und einen beginnen.</translation>
    </message>
    <message>
        <source>Plan %1: %2 is taken off, %3 stays untouched, the trunk base stands %4 over the floor and the soil line lies at %5.</source>
        <translation>Plan %1: %2 werden abgenommen, %3 bleiben unberührt, der Stammfuß steht %4 über dem Boden und die Substratlinie liegt bei %5.</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>where</source>
        <translation>wo</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>wie viel</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>combed</source>
        <translation>ausgekämmt</translation>
    </message>
    <message>
        <source>of the root mass</source>
        <translation>des Ballens</translation>
    </message>
    <message>
        <source>trunk base</source>
        <translation>Stammfuß</translation>
    </message>
    <message>
        <source>right of the middle</source>
        <translation>rechts der Mitte</translation>
    </message>
    <message>
        <source>behind the middle</source>
        <translation>hinter der Mitte</translation>
    </message>
    <message>
        <source>over the floor</source>
        <translation>über dem Boden</translation>
    </message>
    <message>
        <source>at the trunk, over the floor</source>
        <translation>am Stamm, über dem Boden</translation>
    </message>
    <message>
        <source>over the soil</source>
        <translation>über dem Substrat</translation>
    </message>
    <message>
        <source>untouched last time</source>
        <translation>letztes Mal unberührt</translation>
    </message>
    <message>
        <source>The plan from the side and from above; arrow keys move the tree, Page Up and Page Down raise and sink it, Shift with left and right turns it, Shift with up and down tips it</source>
        <translation>Der Plan von der Seite und von oben; Pfeiltasten bewegen den Baum, Bild auf und Bild ab heben und senken ihn, Umschalt mit links und rechts dreht ihn, Umschalt mit auf und ab kippt ihn</translation>
    </message>
    <message>
        <source>Plan %1 goes in stages: %2 comes off now and the tree goes back into its old pot, as drawn here.</source>
        <translation>Plan %1 geht in Etappen: %2 kommen jetzt ab und der Baum geht in die alte Schale zurück, wie hier gezeichnet.</translation>
    </message>
    <message>
        <source>Drag the tree in either picture, or use the arrow keys, Page Up and Page Down; the ring at the old front turns it, the ring on the trunk tips it, as do the arrow keys with Shift</source>
        <translation>Den Baum in einem der Bilder ziehen oder Pfeiltasten, Bild auf und Bild ab benutzen; der Ring an der alten Front dreht ihn, der Ring am Stamm kippt ihn, ebenso die Pfeiltasten mit Umschalt</translation>
    </message>
    <message>
        <source>trunk</source>
        <translation>Stamm</translation>
    </message>
    <message>
        <source>round off corners</source>
        <translation>Ecken abrunden</translation>
    </message>
    <message>
        <source>rounded off</source>
        <translation>abgerundet</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RootSectionView</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>air %1, water held %2</source>
        <translation>Luft %1, gehaltenes Wasser %2</translation>
    </message>
    <message>
        <source>The pot in section with the new mix around the root mass</source>
        <translation>Die Schale im Schnitt mit der neuen Mischung um den Ballen</translation>
    </message>
    <message>
        <source>%1 (%2): %3; the lowest %4 stay wet.</source>
        <translation>%1 (%2): %3; die untersten %4 bleiben nass.</translation>
    </message>
    <message>
        <source>What the kept root mass holds is not known.</source>
        <translation>Was der bleibende Ballen hält, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Plan %1 goes in stages, back into the old pot: its section is not known.</source>
        <translation>Plan %1 geht in Etappen, zurück in die alte Schale: Ihr Schnitt ist nicht bekannt.</translation>
    </message>
    <message>
        <source>No mix yet: choose on “Root mass” what fills the rest of the pot.</source>
        <translation>Noch keine Mischung: unter „Ballen“ wählen, was den Rest der Schale füllt.</translation>
    </message>
    <message>
        <source>kept root mass: not known</source>
        <translation>bleibender Ballen: nicht bekannt</translation>
    </message>
    <message>
        <source>wet zone %1</source>
        <translation>Nasszone %1</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>filled %1</source>
        <translation>gefüllt %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 has a component without a grain density, so its water is not known: measure it.</source>
        <translation>%1 hat einen Bestandteil ohne Korndichte, deshalb ist sein Wasser nicht bekannt: sie messen.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ScoreView</name>
    <message numerus="yes">
        <source>predicted %1 points too low on average, %2 points root mean square, %n test(s)</source>
        <translation>
            <numerusform>im Mittel um %1 Punkte zu niedrig vorhergesagt, %2 Punkte quadratisches Mittel, %n Test</numerusform>
            <numerusform>im Mittel um %1 Punkte zu niedrig vorhergesagt, %2 Punkte quadratisches Mittel, %n Tests</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>predicted %1 points too high on average, %2 points root mean square, %n test(s)</source>
        <translation>
            <numerusform>im Mittel um %1 Punkte zu hoch vorhergesagt, %2 Punkte quadratisches Mittel, %n Test</numerusform>
            <numerusform>im Mittel um %1 Punkte zu hoch vorhergesagt, %2 Punkte quadratisches Mittel, %n Tests</numerusform>
        </translation>
    </message>
    <message>
        <source>No pot test to compare yet. A pot test of a kept mix shows how far off the estimate of its air was.</source>
        <translation>Noch kein Schalentest zu vergleichen. Ein Schalentest einer aufbewahrten Mischung zeigt, wie weit die Schätzung ihrer Luft danebenlag.</translation>
    </message>
    <message>
        <source>Fine, up to %1: %2.</source>
        <translation>Fein, bis %1: %2.</translation>
    </message>
    <message>
        <source>Coarse: %1.</source>
        <translation>Grob: %1.</translation>
    </message>
    <message>
        <source>pot test</source>
        <translation>Schalentest</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>Mischung</translation>
    </message>
    <message>
        <source>grain</source>
        <translation>Korn</translation>
    </message>
    <message>
        <source>predicted air</source>
        <translation>vorhergesagte Luft</translation>
    </message>
    <message>
        <source>measured air</source>
        <translation>gemessene Luft</translation>
    </message>
    <message>
        <source>points off</source>
        <translation>Punkte daneben</translation>
    </message>
    <message>
        <source>coarse</source>
        <translation>grob</translation>
    </message>
    <message>
        <source>fine</source>
        <translation>fein</translation>
    </message>
    <message>
        <source>Pot tests: predicted against measured air</source>
        <translation>Schalentests: vorhergesagte gegen gemessene Luft</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>fine grain</source>
        <translation>feines Korn</translation>
    </message>
    <message>
        <source>coarse grain</source>
        <translation>grobes Korn</translation>
    </message>
    <message>
        <source>Air that drains free: %1.</source>
        <translation>Luft, die frei abzieht: %1.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ScreeningPanel</name>
    <message>
        <source>&amp;Keep these fractions</source>
        <translation>Diese &amp;Fraktionen aufbewahren</translation>
    </message>
    <message>
        <source>Screen at, mm</source>
        <translation>Absieben bei, mm</translation>
    </message>
    <message>
        <source>openings to screen at</source>
        <translation>Maschenweiten zum Absieben</translation>
    </message>
    <message>
        <source>as the verdict says; or type 6.3 2</source>
        <translation>wie das Urteil sagt; oder 6,3 2 eingeben</translation>
    </message>
    <message>
        <source>Dry grain screened</source>
        <translation>Abgesiebtes Korn, trocken</translation>
    </message>
    <message>
        <source>grain screened</source>
        <translation>abgesiebtes Korn</translation>
    </message>
    <message>
        <source>all that is left of the bag; kg can be typed</source>
        <translation>alles, was vom Sack übrig ist; kg darf eingegeben werden</translation>
    </message>
    <message>
        <source>Fractions, predicted and measured</source>
        <translation>Fraktionen, vorhergesagt und gemessen</translation>
    </message>
    <message>
        <source>Type what each fraction weighed, and its litres, into the last two columns.</source>
        <translation>In die letzten zwei Spalten eingeben, was jede Fraktion wog, und ihre Liter.</translation>
    </message>
    <message>
        <source>Keep these fractions</source>
        <translation>Diese Fraktionen aufbewahren</translation>
    </message>
    <message>
        <source>Lifting:</source>
        <translation>Heben:</translation>
    </message>
    <message>
        <source>a full bag is heavy; lift from the knees, or screen it in two halves. General information; qualified advice prevails.</source>
        <translation>Ein voller Sack ist schwer; aus den Knien heben oder in zwei Hälften absieben. Allgemeine Hinweise; fachkundiger Rat geht vor.</translation>
    </message>
    <message>
        <source>mass of the fraction %1</source>
        <translation>Masse der Fraktion %1</translation>
    </message>
    <message>
        <source>litres of the fraction %1</source>
        <translation>Liter der Fraktion %1</translation>
    </message>
    <message>
        <source>fraction</source>
        <translation>Fraktion</translation>
    </message>
    <message>
        <source>share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>predicted</source>
        <translation>vorhergesagt</translation>
    </message>
    <message>
        <source>litres</source>
        <translation>Liter</translation>
    </message>
    <message>
        <source>weighed, %1</source>
        <translation>gewogen, %1</translation>
    </message>
    <message>
        <source>measured, %1</source>
        <translation>gemessen, %1</translation>
    </message>
    <message>
        <source>Weigh every fraction first</source>
        <translation>Zuerst jede Fraktion wiegen</translation>
    </message>
    <message>
        <source>Screened on</source>
        <translation>Abgesiebt am</translation>
    </message>
    <message>
        <source>day of the screening</source>
        <translation>Tag des Absiebens</translation>
    </message>
    <message>
        <source>What is predicted</source>
        <translation>Was vorhergesagt ist</translation>
    </message>
    <message>
        <source>today; or a day like %1</source>
        <translation>heute; oder ein Tag wie %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SectionView</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>as the system</source>
        <translation>wie das System</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>A change holds from the next start. Every translation is a draft, not yet read by a native grower.</source>
        <translation>Eine Änderung gilt ab dem nächsten Start. Jede Übersetzung ist ein Entwurf, noch von keinem Muttersprachler aus der Praxis gelesen.</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>metric: litres, millimetres, grams</source>
        <translation>metrisch: Liter, Millimeter, Gramm</translation>
    </message>
    <message>
        <source>US: quarts, inches, ounces</source>
        <translation>US: Quarts, Zoll, Unzen</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Farben</translation>
    </message>
    <message>
        <source>light</source>
        <translation>hell</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <source>high contrast</source>
        <translation>hoher Kontrast</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>Schriftgröße</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>Show laboratory figures beside the verdict</source>
        <translation>Laborkennwerte neben dem Urteil zeigen</translation>
    </message>
    <message>
        <source>Backups folder</source>
        <translation>Ordner der Sicherungen</translation>
    </message>
    <message>
        <source>beside the record; a change holds from the next start</source>
        <translation>neben der Aufzeichnung; eine Änderung gilt ab dem nächsten Start</translation>
    </message>
    <message>
        <source>Choose...</source>
        <translation>Wählen...</translation>
    </message>
    <message>
        <source>Choose the backups folder</source>
        <translation>Den Ordner der Sicherungen wählen</translation>
    </message>
    <message>
        <source>Sieves you own</source>
        <translation>Eigene Siebe</translation>
    </message>
    <message>
        <source>Sets of sieves you own</source>
        <translation>Eigene Siebsätze</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>openings</source>
        <translation>Maschenweiten</translation>
    </message>
    <message>
        <source>Add a set</source>
        <translation>Satz hinzufügen</translation>
    </message>
    <message>
        <source>Add a set of sieves</source>
        <translation>Einen Siebsatz hinzufügen</translation>
    </message>
    <message>
        <source>my sieves</source>
        <translation>meine Siebe</translation>
    </message>
    <message>
        <source>set of sieves %1</source>
        <translation>Siebsatz %1</translation>
    </message>
    <message>
        <source>Your record</source>
        <translation>Die eigene Aufzeichnung</translation>
    </message>
    <message>
        <source>It lies in %1.</source>
        <translation>Sie liegt in %1.</translation>
    </message>
    <message>
        <source>It is open for reading only.</source>
        <translation>Sie ist nur zum Lesen geöffnet.</translation>
    </message>
    <message>
        <source>That is a network folder: saving takes longer there, and only one person should work in it at a time.</source>
        <translation>Das ist ein Netzordner: Speichern dauert dort länger, und nur eine Person sollte zugleich darin arbeiten.</translation>
    </message>
    <message>
        <source>Another program copies that folder elsewhere: let it finish before the record is opened on another machine, or two half records may come of it.</source>
        <translation>Ein anderes Programm kopiert diesen Ordner anderswohin: erst beenden lassen, bevor die Aufzeichnung auf einem anderen Rechner geöffnet wird, sonst können zwei halbe daraus werden.</translation>
    </message>
    <message>
        <source>One set a line, its openings in mm or by name, apart by blanks: 8 5.6 4 2.8 2 1.4 1; how wide they are inside the frame shows an overloaded sieve. They are offered on the Sieving page, and “which openings?” chooses among them.</source>
        <translation>Ein Satz je Zeile, die Maschenweiten in mm oder mit Namen, durch Leerzeichen getrennt: 8 5,6 4 2,8 2 1,4 1; die Weite innen im Rahmen zeigt ein überladenes Sieb. Sie werden unter Sieben angeboten, und „Welche Maschenweiten?“ wählt unter ihnen.</translation>
    </message>
    <message>
        <source>across, %1</source>
        <translation>Weite, %1</translation>
    </message>
    <message>
        <source>%1 is no longer among your sieves; undo brings it back.</source>
        <translation>%1 gehört nicht mehr zu den eigenen Sieben; Rückgängig bringt den Satz zurück.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SheetEditor</name>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>bag, lot or material</source>
        <translation>Sack, Charge oder Material</translation>
    </message>
    <message>
        <source>&amp;Sample, dry</source>
        <translation>&amp;Probe, trocken</translation>
    </message>
    <message>
        <source>sample mass of %1</source>
        <translation>Probenmasse von %1</translation>
    </message>
    <message>
        <source>weighed before sieving; shows the loss</source>
        <translation>vor dem Sieben gewogen; zeigt den Verlust</translation>
    </message>
    <message>
        <source>Sample %1, dry</source>
        <translation>Probe %1, trocken</translation>
    </message>
    <message>
        <source>mass of sample %1 of %2</source>
        <translation>Masse der Probe %1 von %2</translation>
    </message>
    <message>
        <source>a further sample of the same bag</source>
        <translation>eine weitere Probe desselben Sacks</translation>
    </message>
    <message>
        <source>by mass, net</source>
        <translation>nach Masse, netto</translation>
    </message>
    <message>
        <source>by gross and tare</source>
        <translation>brutto und Tara</translation>
    </message>
    <message>
        <source>by litres, a bag by bucket</source>
        <translation>nach Litern, ein Sack mit dem Eimer</translation>
    </message>
    <message>
        <source>How the fractions are measured</source>
        <translation>Wie die Fraktionen gemessen werden</translation>
    </message>
    <message>
        <source>&amp;Measured</source>
        <translation>Ge&amp;messen</translation>
    </message>
    <message>
        <source>way of measuring %1</source>
        <translation>Messweise von %1</translation>
    </message>
    <message>
        <source>Sample 1: %1</source>
        <translation>Probe 1: %1</translation>
    </message>
    <message>
        <source>Sample %1: sum %2, loss %3</source>
        <translation>Probe %1: Summe %2, Verlust %3</translation>
    </message>
    <message>
        <source>Sample %1: sum %2</source>
        <translation>Probe %1: Summe %2</translation>
    </message>
    <message>
        <source>Sum %1</source>
        <translation>Summe %1</translation>
    </message>
    <message>
        <source>Nothing weighed yet: the curve grows as you type.</source>
        <translation>Noch nichts gewogen: Die Sieblinie wächst beim Eingeben.</translation>
    </message>
    <message>
        <source>Sum and loss: – (see the marked cells)</source>
        <translation>Summe und Verlust: – (siehe die markierten Zellen)</translation>
    </message>
    <message>
        <source>%1; type the sample mass or the pan to see the curve.</source>
        <translation>%1; Probenmasse oder Boden eingeben, um die Sieblinie zu sehen.</translation>
    </message>
    <message>
        <source>%1, still in the stack %2</source>
        <translation>%1, noch im Siebturm %2</translation>
    </message>
    <message>
        <source>%1, loss – (no sample mass)</source>
        <translation>%1, Verlust – (keine Probenmasse)</translation>
    </message>
    <message>
        <source>%1, gain %2</source>
        <translation>%1, Zuwachs %2</translation>
    </message>
    <message>
        <source>%1, loss %2</source>
        <translation>%1, Verlust %2</translation>
    </message>
    <message>
        <source>%1; type the pan to see the curve.</source>
        <translation>%1; den Boden eingeben, um die Sieblinie zu sehen.</translation>
    </message>
    <message>
        <source>%1. Fractions lie looser than the whole bag did: litres tell no loss.</source>
        <translation>%1. Fraktionen liegen lockerer als der ganze Sack: Liter sagen nichts über den Verlust.</translation>
    </message>
    <message>
        <source>Sample %1</source>
        <translation>Probe %1</translation>
    </message>
    <message>
        <source>Checks of the sieve test</source>
        <translation>Prüfungen der Siebanalyse</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SickTreesTab</name>
    <message>
        <source>Trees, the sick ones first; Space ticks those to compare</source>
        <translation>Bäume, die kranken zuerst; die Leertaste hakt die zu vergleichenden an</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>Baum</translation>
    </message>
    <message>
        <source>condition</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>since</source>
        <translation>seit</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>potted</source>
        <translation>eingetopft</translation>
    </message>
    <message>
        <source>Tick the sick ones</source>
        <translation>Die kranken anhaken</translation>
    </message>
    <message>
        <source>Tick the sick trees again and no other</source>
        <translation>Die kranken Bäume wieder anhaken und keinen anderen</translation>
    </message>
    <message>
        <source>What do these trees share?</source>
        <translation>Was haben diese Bäume gemeinsam?</translation>
    </message>
    <message>
        <source>Look first at</source>
        <translation>Zuerst ansehen</translation>
    </message>
    <message>
        <source>What these trees share, beside all others</source>
        <translation>Was diese Bäume gemeinsam haben, neben allen anderen</translation>
    </message>
    <message>
        <source>Save the comparison...</source>
        <translation>Vergleich speichern...</translation>
    </message>
    <message>
        <source>Save what these trees share as text, CSV or JSON</source>
        <translation>Was diese Bäume gemeinsam haben, als Text, CSV oder JSON speichern</translation>
    </message>
    <message>
        <source>compare %1, %2</source>
        <translation>%1, %2 vergleichen</translation>
    </message>
    <message>
        <source>No trees yet. What is written down about them on Pots and trees stands here, the sick ones first.</source>
        <translation>Noch keine Bäume. Was unter Schalen und Bäume über sie aufgeschrieben wird, steht hier, die kranken zuerst.</translation>
    </message>
    <message>
        <source>%1; tick those to compare with all others.</source>
        <translation>%1; die anhaken, die mit allen anderen zu vergleichen sind.</translation>
    </message>
    <message>
        <source>No tree is sick</source>
        <translation>Kein Baum ist krank</translation>
    </message>
    <message numerus="yes">
        <source>%n tree(s) sick</source>
        <translation>
            <numerusform>%n Baum krank</numerusform>
            <numerusform>%n Bäume krank</numerusform>
        </translation>
    </message>
    <message>
        <source>No tree is ticked.</source>
        <translation>Kein Baum ist angehakt.</translation>
    </message>
    <message>
        <source>Compared: %1</source>
        <translation>Verglichen: %1</translation>
    </message>
    <message>
        <source>Tick one tree to see what is known of its soil, or several to see what they share.</source>
        <translation>Einen Baum anhaken, um zu sehen, was über sein Substrat bekannt ist, oder mehrere, um zu sehen, was sie gemeinsam haben.</translation>
    </message>
    <message>
        <source>They share nothing that was written down.</source>
        <translation>Sie haben nichts Aufgeschriebenes gemeinsam.</translation>
    </message>
    <message>
        <source>Tick the trees to compare first.</source>
        <translation>Zuerst die zu vergleichenden Bäume anhaken.</translation>
    </message>
    <message>
        <source>Save what these trees share</source>
        <translation>Speichern, was diese Bäume gemeinsam haben</translation>
    </message>
    <message>
        <source>shared by the trees</source>
        <translation>gemeinsam bei den Bäumen</translation>
    </message>
    <message>
        <source>Text to print (*.txt);;For a spreadsheet (*.csv);;For programs (*.json)</source>
        <translation>Text zum Drucken (*.txt);;Für eine Tabellenkalkulation (*.csv);;Für Programme (*.json)</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Gespeichert als %1.</translation>
    </message>
    <message>
        <source>%1 could not be written: choose a folder you may write to.</source>
        <translation>%1 ließ sich nicht schreiben: einen Ordner wählen, in den geschrieben werden darf.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SieveTable</name>
    <message>
        <source>Sieve stack</source>
        <translation>Siebturm</translation>
    </message>
    <message>
        <source>One sieve a row, coarse to fine, the pan last. Type what stayed on; Enter goes to the next pan.</source>
        <translation>Ein Sieb je Zeile, grob nach fein, der Boden zuletzt. Eingeben, was liegen blieb; die Eingabetaste geht zum nächsten.</translation>
    </message>
    <message>
        <source>This is worked out: type what stayed on the sieve.</source>
        <translation>Das wird ausgerechnet: einzutragen ist, was auf dem Sieb blieb.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SieveTableModel</name>
    <message>
        <source>pan</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>sieve %1</source>
        <translation>Sieb %1</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>sieve, mm</source>
        <translation>Sieb, mm</translation>
    </message>
    <message>
        <source>gross, %1</source>
        <translation>brutto, %1</translation>
    </message>
    <message>
        <source>stayed on, %1</source>
        <translation>liegt, %1</translation>
    </message>
    <message>
        <source>tare, %1</source>
        <translation>Tara, %1</translation>
    </message>
    <message>
        <source>net</source>
        <translation>netto</translation>
    </message>
    <message>
        <source>sample 2, %1</source>
        <translation>Probe 2, %1</translation>
    </message>
    <message>
        <source>sample 3, %1</source>
        <translation>Probe 3, %1</translation>
    </message>
    <message>
        <source>passing</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>check</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>sieve %1 of %2</source>
        <translation>Sieb %1 von %2</translation>
    </message>
    <message>
        <source>sample %1 on %2 of %3</source>
        <translation>Probe %1 auf %2 von %3</translation>
    </message>
    <message>
        <source>pan mass of %1</source>
        <translation>Boden von %1, Masse</translation>
    </message>
    <message>
        <source>mass on %1 of %2</source>
        <translation>Masse auf %1 von %2</translation>
    </message>
    <message>
        <source>paste into %1</source>
        <translation>in %1 eingefügt</translation>
    </message>
    <message numerus="yes">
        <source>Pasted %n row(s).</source>
        <translation>
            <numerusform>%n Zeile eingefügt.</numerusform>
            <numerusform>%n Zeilen eingefügt.</numerusform>
        </translation>
    </message>
    <message>
        <source>further sample of %1</source>
        <translation>weitere Probe von %1</translation>
    </message>
    <message>
        <source>sample %1 of %2 removed</source>
        <translation>Probe %1 von %2 entfernt</translation>
    </message>
    <message>
        <source>new sieve of %1</source>
        <translation>neues Sieb von %1</translation>
    </message>
    <message>
        <source>sieve %1 of %2 removed</source>
        <translation>Sieb %1 von %2 entfernt</translation>
    </message>
    <message>
        <source>gross %1, %2</source>
        <translation>brutto %1, %2</translation>
    </message>
    <message>
        <source>There is nothing to paste: copy rows of numbers first.</source>
        <translation>Es gibt nichts einzufügen: erst Zeilen mit Zahlen kopieren.</translation>
    </message>
    <message>
        <source>predicted, %1</source>
        <translation>vorhergesagt, %1</translation>
    </message>
    <message>
        <source>%1 Left out below the pan: %2</source>
        <translation>%1 Unter dem Boden weggelassen: %2</translation>
    </message>
    <message>
        <source>%1 They came from fine to coarse and were turned round.</source>
        <translation>%1 Sie kamen von fein nach grob und wurden umgedreht.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SievingPage</name>
    <message>
        <source>Bag</source>
        <translation>Sack</translation>
    </message>
    <message>
        <source>Sieves</source>
        <translation>Siebe</translation>
    </message>
    <message>
        <source>Dust:</source>
        <translation>Staub:</translation>
    </message>
    <message>
        <source>sieve dry grain outdoors, wind behind you, with a mask (P2 or N95 at least, P3 or P100 for grit and sand); clean with a damp cloth, not a broom. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation>Trockenes Korn im Freien sieben, den Wind im Rücken, mit Maske (mindestens P2 oder N95, P3 oder P100 bei Grus und Sand); mit feuchtem Tuch reinigen, nicht mit dem Besen. Allgemeine Hinweise; Sicherheitsdatenblätter, örtliche Vorschriften und fachkundiger Rat gehen vor.</translation>
    </message>
    <message>
        <source>What is typed</source>
        <translation>Was eingegeben wird</translation>
    </message>
    <message>
        <source>Sieve test</source>
        <translation>Siebanalyse</translation>
    </message>
    <message>
        <source>Grain</source>
        <translation>Korn</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>Sieblinie</translation>
    </message>
    <message>
        <source>Lot to lot</source>
        <translation>Chargen</translation>
    </message>
    <message>
        <source>Pictures of the sieve test</source>
        <translation>Bilder der Siebanalyse</translation>
    </message>
    <message>
        <source>What follows for the bag</source>
        <translation>Was für den Sack folgt</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Screen this bag</source>
        <translation>Diesen Sack absieben</translation>
    </message>
    <message>
        <source>none, or choose one to grade</source>
        <translation>keiner, oder einen zum Prüfen wählen</translation>
    </message>
    <message>
        <source>as typed</source>
        <translation>wie eingegeben</translation>
    </message>
    <message>
        <source>Component</source>
        <translation>Bestandteil</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::StockLine</name>
    <message>
        <source>What happened to the grain</source>
        <translation>Was mit dem Korn geschah</translation>
    </message>
    <message>
        <source>counted, left</source>
        <translation>gezählt, übrig</translation>
    </message>
    <message>
        <source>used</source>
        <translation>benutzt</translation>
    </message>
    <message>
        <source>spilt</source>
        <translation>verschüttet</translation>
    </message>
    <message>
        <source>thrown out</source>
        <translation>weggeworfen</translation>
    </message>
    <message>
        <source>put back</source>
        <translation>zurückgetan</translation>
    </message>
    <message>
        <source>How much, dry</source>
        <translation>Wie viel, trocken</translation>
    </message>
    <message>
        <source>900 g or 2 L, dry</source>
        <translation>900 g oder 2 L, trocken</translation>
    </message>
    <message>
        <source>Book it</source>
        <translation>Buchen</translation>
    </message>
    <message>
        <source>Book it in the stock</source>
        <translation>Im Vorrat buchen</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Wie viel</translation>
    </message>
    <message>
        <source>Of %1</source>
        <translation>Von %1</translation>
    </message>
    <message>
        <source>Nothing of it is in stock yet: take it into stock, or count what is left.</source>
        <translation>Davon ist noch nichts im Vorrat: in den Vorrat nehmen, oder zählen, was übrig ist.</translation>
    </message>
    <message>
        <source>Counted %1: %2 left</source>
        <translation>%1 gezählt: %2 übrig</translation>
    </message>
    <message>
        <source>Spilt %2 of %1</source>
        <translation>%2 von %1 verschüttet</translation>
    </message>
    <message>
        <source>Threw out %2 of %1</source>
        <translation>%2 von %1 weggeworfen</translation>
    </message>
    <message>
        <source>Put %2 back to %1</source>
        <translation>%2 zu %1 zurückgetan</translation>
    </message>
    <message>
        <source>Used %2 of %1</source>
        <translation>%2 von %1 benutzt</translation>
    </message>
    <message>
        <source>%1, at its own litre weight of %2.</source>
        <translation>%1, beim eigenen Litergewicht von %2.</translation>
    </message>
    <message>
        <source>%1, at the typical litre weight of %2: measure its own.</source>
        <translation>%1, beim üblichen Litergewicht von %2: das eigene messen.</translation>
    </message>
    <message>
        <source>32 oz or 2 qt, dry</source>
        <translation>32 oz oder 2 qt, trocken</translation>
    </message>
    <message>
        <source>%1, at a litre weight of %2 by that of its bag: measure its own.</source>
        <translation>%1, mit einem Litergewicht von %2 nach dem ihres Sacks: das eigene messen.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TraceTab</name>
    <message>
        <source>Save the list...</source>
        <translation>Liste speichern...</translation>
    </message>
    <message>
        <source>&amp;Trace</source>
        <translation>&amp;Verfolgen</translation>
    </message>
    <message>
        <source>a bag, fraction, bin, batch or mix, to see which trees stand in it; or a tree, to see what it stands in</source>
        <translation>ein Sack, eine Fraktion, eine Kiste, ein Ansatz oder eine Mischung, um zu sehen, welche Bäume darin stehen; oder ein Baum, um zu sehen, worin er steht</translation>
    </message>
    <message>
        <source>Trace</source>
        <translation>Verfolgen</translation>
    </message>
    <message>
        <source>Save the list of trees as text, CSV or JSON</source>
        <translation>Die Liste der Bäume als Text, CSV oder JSON speichern</translation>
    </message>
    <message>
        <source>Trees, or what a tree stands in</source>
        <translation>Bäume, oder worin ein Baum steht</translation>
    </message>
    <message>
        <source>Where the rest of it went or lies</source>
        <translation>Wohin der Rest davon ging oder wo er liegt</translation>
    </message>
    <message>
        <source>Type the number of a bag to see which trees stand in its grain, or of a tree to see what it stands in.</source>
        <translation>Die Nummer eines Sacks eingeben, um zu sehen, welche Bäume in seinem Korn stehen, oder die eines Baums, um zu sehen, worin er steht.</translation>
    </message>
    <message>
        <source>Trace a bag, fraction, bin, batch or mix first: its list of trees can be saved.</source>
        <translation>Zuerst einen Sack, eine Fraktion, eine Kiste, einen Ansatz oder eine Mischung verfolgen: Dann lässt sich die Liste der Bäume speichern.</translation>
    </message>
    <message>
        <source>Save the list of trees</source>
        <translation>Die Liste der Bäume speichern</translation>
    </message>
    <message>
        <source>%1 trees</source>
        <translation>%1 Bäume</translation>
    </message>
    <message>
        <source>Text to print (*.txt);;For a spreadsheet (*.csv);;For programs (*.json)</source>
        <translation>Text zum Drucken (*.txt);;Für eine Tabellenkalkulation (*.csv);;Für Programme (*.json)</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Gespeichert als %1.</translation>
    </message>
    <message>
        <source>%1 could not be written: choose a folder you may write to.</source>
        <translation>%1 ließ sich nicht schreiben: einen Ordner wählen, in den geschrieben werden darf.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TracedTable</name>
    <message>
        <source>Enter goes on to the record of the row.</source>
        <translation>Die Eingabetaste geht zum Eintrag der Zeile.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TradeOffView</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>What air costs in water, and fit in money</source>
        <translation>Was Luft an Wasser kostet und Eignung an Geld</translation>
    </message>
    <message>
        <source>Water held</source>
        <translation>Gehaltenes Wasser</translation>
    </message>
    <message>
        <source>air that drains free</source>
        <translation>Luft, die frei abzieht</translation>
    </message>
    <message>
        <source>Score, lower fits better</source>
        <translation>Wertung, niedrig ist besser</translation>
    </message>
    <message>
        <source>price of a mixed litre</source>
        <translation>Preis eines gemischten Liters</translation>
    </message>
    <message>
        <source>price of a mixed litre, %1</source>
        <translation>Preis eines gemischten Liters, %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TreesPage</name>
    <message>
        <source>Pots and trees</source>
        <translation>Schalen und Bäume</translation>
    </message>
    <message>
        <source>Trees</source>
        <translation>Bäume</translation>
    </message>
    <message>
        <source>Pots</source>
        <translation>Schalen</translation>
    </message>
    <message>
        <source>Root-mass plans</source>
        <translation>Ballenpläne</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TreesTab</name>
    <message>
        <source>top</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>back</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>conifer</source>
        <translation>Nadelbaum</translation>
    </message>
    <message>
        <source>deciduous conifer</source>
        <translation>sommergrüner Nadelbaum</translation>
    </message>
    <message>
        <source>deciduous, developing</source>
        <translation>Laubbaum, im Aufbau</translation>
    </message>
    <message>
        <source>deciduous, refined</source>
        <translation>Laubbaum, verfeinert</translation>
    </message>
    <message>
        <source>broadleaf evergreen</source>
        <translation>immergrüner Laubbaum</translation>
    </message>
    <message>
        <source>acid lover</source>
        <translation>Säureliebend</translation>
    </message>
    <message>
        <source>tropical</source>
        <translation>tropisch</translation>
    </message>
    <message>
        <source>sick tree</source>
        <translation>kranker Baum</translation>
    </message>
    <message>
        <source>freshly collected</source>
        <translation>frisch gesammelt</translation>
    </message>
    <message>
        <source>imported</source>
        <translation>importiert</translation>
    </message>
    <message>
        <source>%1 of tree %2</source>
        <translation>%1 von Baum %2</translation>
    </message>
    <message>
        <source>Trees</source>
        <translation>Bäume</translation>
    </message>
    <message>
        <source>tree by number, name or species</source>
        <translation>Nummer, Name oder Art</translation>
    </message>
    <message>
        <source>No trees yet. Add the first: its species and group, then what it was last repotted into.</source>
        <translation>Noch keine Bäume. Den ersten hinzufügen: Art und Gruppe, dann, worin er zuletzt umgetopft wurde.</translation>
    </message>
    <message>
        <source>Add a t&amp;ree</source>
        <translation>Baum hinzu&amp;fügen</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>fällig %1</translation>
    </message>
    <message>
        <source>Root-mass p&amp;lan of this tree</source>
        <translation>Ba&amp;llenplan dieses Baums</translation>
    </message>
    <message>
        <source>Root-mass plan of this tree</source>
        <translation>Ballenplan dieses Baums</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>as you call it</source>
        <translation>eigene Bezeichnung</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>&amp;Species</source>
        <translation>A&amp;rt</translation>
    </message>
    <message>
        <source>as far as you know it</source>
        <translation>soweit bekannt</translation>
    </message>
    <message>
        <source>species</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Species group</source>
        <translation>Artengruppe</translation>
    </message>
    <message>
        <source>not chosen yet</source>
        <translation>noch nicht gewählt</translation>
    </message>
    <message>
        <source>group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>Since the year</source>
        <translation>Seit dem Jahr</translation>
    </message>
    <message>
        <source>sown, struck or collected</source>
        <translation>Saat, Steckling, Fund</translation>
    </message>
    <message>
        <source>year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <source>Trunk &amp;width</source>
        <translation>Stammbre&amp;ite</translation>
    </message>
    <message>
        <source>at the base, over the roots</source>
        <translation>am Fuß, über den Wurzeln</translation>
    </message>
    <message>
        <source>trunk width</source>
        <translation>Stammbreite</translation>
    </message>
    <message>
        <source>trunk base</source>
        <translation>Stammfuß</translation>
    </message>
    <message>
        <source>Trunk base, right</source>
        <translation>Stammfuß, rechts</translation>
    </message>
    <message>
        <source>Trunk base, back</source>
        <translation>Stammfuß, hinten</translation>
    </message>
    <message>
        <source>behind its middle</source>
        <translation>hinter der Mitte</translation>
    </message>
    <message>
        <source>Trunk base, up</source>
        <translation>Stammfuß, hoch</translation>
    </message>
    <message>
        <source>over the root mass&apos;s underside</source>
        <translation>über der Unterseite</translation>
    </message>
    <message>
        <source>&amp;Mass</source>
        <translation>&amp;Masse</translation>
    </message>
    <message>
        <source>without soil and pot; for lifting</source>
        <translation>ohne Substrat und Schale; für das Heben</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Ready when</source>
        <translation>Bereit, wenn</translation>
    </message>
    <message>
        <source>as buds swell</source>
        <translation>die Knospen schwellen</translation>
    </message>
    <message>
        <source>window</source>
        <translation>Zeitfenster</translation>
    </message>
    <message>
        <source>Window opens</source>
        <translation>Fenster öffnet</translation>
    </message>
    <message>
        <source>month and day, like 03-01</source>
        <translation>Monat und Tag, wie 03-01</translation>
    </message>
    <message>
        <source>Window closes</source>
        <translation>Fenster schließt</translation>
    </message>
    <message>
        <source>month and day, like 04-20</source>
        <translation>Monat und Tag, wie 04-20</translation>
    </message>
    <message>
        <source>Next repotting</source>
        <translation>Nächstes Umtopfen</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>files by reference, apart by ;</source>
        <translation>Dateien, getrennt durch ;</translation>
    </message>
    <message>
        <source>photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Add a photo...</source>
        <translation>Foto hinzufügen...</translation>
    </message>
    <message>
        <source>Add a photo by its file</source>
        <translation>Ein Foto über seine Datei hinzufügen</translation>
    </message>
    <message>
        <source>No&amp;te</source>
        <translation>N&amp;otiz</translation>
    </message>
    <message>
        <source>anything worth knowing</source>
        <translation>was wissenswert ist</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Day it was seen</source>
        <translation>Tag der Beobachtung</translation>
    </message>
    <message>
        <source>looked at for repotting</source>
        <translation>fürs Umtopfen angesehen</translation>
    </message>
    <message>
        <source>Da&amp;y</source>
        <translation>&amp;Tag</translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation>Was zu sehen war</translation>
    </message>
    <message>
        <source>colour, buds, water that stands, roots at the hole</source>
        <translation>Farbe, Knospen, stehendes Wasser, Wurzeln am Loch</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Aufschreiben</translation>
    </message>
    <message>
        <source>Write down what was seen</source>
        <translation>Das Gesehene aufschreiben</translation>
    </message>
    <message>
        <source>Repottings</source>
        <translation>Umtopfungen</translation>
    </message>
    <message>
        <source>Repottings, newest first</source>
        <translation>Umtopfungen, Neueste zuerst</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>Mischung</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>geschnitten</translation>
    </message>
    <message>
        <source>combed</source>
        <translation>ausgekämmt</translation>
    </message>
    <message>
        <source>bare-rooted</source>
        <translation>wurzelnackt</translation>
    </message>
    <message>
        <source>untouched</source>
        <translation>unberührt</translation>
    </message>
    <message>
        <source>Day of the repotting</source>
        <translation>Tag des Umtopfens</translation>
    </message>
    <message>
        <source>Pot it went into</source>
        <translation>Schale, in die er kam</translation>
    </message>
    <message>
        <source>Mix it stands in</source>
        <translation>Mischung, in der er steht</translation>
    </message>
    <message>
        <source>Note on the repotting</source>
        <translation>Notiz zum Umtopfen</translation>
    </message>
    <message>
        <source>what was cut, what was found</source>
        <translation>was geschnitten, was gefunden wurde</translation>
    </message>
    <message>
        <source>Write down a repotting</source>
        <translation>Ein Umtopfen aufschreiben</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>inspection</source>
        <translation>Begutachtung</translation>
    </message>
    <message>
        <source>condition</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>repotting</source>
        <translation>Umtopfen</translation>
    </message>
    <message>
        <source>Add photos</source>
        <translation>Fotos hinzufügen</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.webp *.heic);;All files (*)</source>
        <translation>Bilder (*.jpg *.jpeg *.png *.webp *.heic);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>new tree</source>
        <translation>neuer Baum</translation>
    </message>
    <message>
        <source>tree added</source>
        <translation>Baum hinzugefügt</translation>
    </message>
    <message>
        <source>Tree %1 stays: plans, days or the log name it. Write down that it is dead instead.</source>
        <translation>Baum %1 bleibt: Pläne, Tage oder das Tagebuch nennen ihn. Stattdessen aufschreiben, dass er tot ist.</translation>
    </message>
    <message>
        <source>tree %1 removed</source>
        <translation>Baum %1 entfernt</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Tree %1, %2 years</source>
        <translation>Baum %1, %2 Jahre</translation>
    </message>
    <message>
        <source>Tree %1</source>
        <translation>Baum %1</translation>
    </message>
    <message>
        <source>Next repotting: %1, as you set it.</source>
        <translation>Nächstes Umtopfen: %1, wie gesetzt.</translation>
    </message>
    <message>
        <source>Next repotting by the group&apos;s interval: from %1, by %2 at the latest (common practice; look at it first).</source>
        <translation>Nächstes Umtopfen nach dem Abstand der Gruppe: ab %1, spätestens %2 (übliche Praxis; zuerst ansehen).</translation>
    </message>
    <message>
        <source>Next repotting: – (it has no last repotting, or its group has no interval)</source>
        <translation>Nächstes Umtopfen: – (kein letztes Umtopfen, oder die Gruppe hat keinen Abstand)</translation>
    </message>
    <message>
        <source>Next repotting: – (choose its group and write down the last repotting)</source>
        <translation>Nächstes Umtopfen: – (Gruppe wählen und das letzte Umtopfen aufschreiben)</translation>
    </message>
    <message>
        <source>looked at</source>
        <translation>angesehen</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>%1 corners</source>
        <translation>%1 Ecken</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>was getan wurde</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation>abgenommen</translation>
    </message>
    <message>
        <source>What its roots bear when it is repotted goes by this group. What its mix should be like is chosen for a mix, under Groups of trees.</source>
        <translation>Was seine Wurzeln beim Umtopfen vertragen, geht nach dieser Gruppe. Wie seine Mischung sein soll, wird für eine Mischung gewählt, unter Baumgruppen.</translation>
    </message>
    <message>
        <source>Species gro&amp;up</source>
        <translation>Artengru&amp;ppe</translation>
    </message>
    <message>
        <source>of the root mass&apos;s middle</source>
        <translation>von der Mitte des Ballens</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>The tree&apos;s condition, newest first</source>
        <translation>Zustand des Baums, Neuestes zuerst</translation>
    </message>
    <message>
        <source>Begun for tree %1, and waits there: %2</source>
        <translation>Für Baum %1 begonnen und wartet dort: %2</translation>
    </message>
    <message>
        <source>like %1</source>
        <translation>wie %1</translation>
    </message>
    <message>
        <source>a day like %1; by interval if empty</source>
        <translation>ein Tag wie %1; nach Abstand, wenn leer</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TroublePage</name>
    <message>
        <source>The record could not be opened</source>
        <translation>Die Aufzeichnung ließ sich nicht öffnen</translation>
    </message>
    <message>
        <source>The file was not changed, and what lies on the bench is kept. A backup that is restored takes the file&apos;s place; the file itself stays beside it under a name of its own, so nothing is overwritten.</source>
        <translation>Die Datei wurde nicht verändert, und was auf dem Arbeitstisch liegt, bleibt. Eine wiederhergestellte Sicherung tritt an die Stelle der Datei; die Datei selbst bleibt unter eigenem Namen daneben, überschrieben wird also nichts.</translation>
    </message>
    <message>
        <source>Open it for reading only</source>
        <translation>Nur zum Lesen öffnen</translation>
    </message>
    <message>
        <source>Open another record...</source>
        <translation>Andere Aufzeichnung öffnen...</translation>
    </message>
    <message>
        <source>Try this one again</source>
        <translation>Diese noch einmal versuchen</translation>
    </message>
    <message>
        <source>Restore the newest intact backup: %1</source>
        <translation>Die neueste unversehrte Sicherung wiederherstellen: %1</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>Without a backup the command line can still read what is whole and write it into a file: %1</source>
        <translation>Ohne Sicherung kann die Kommandozeile noch lesen, was heil ist, und es in eine Datei schreiben: %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::VerdictPanel</name>
    <message>
        <source>What screening there gives</source>
        <translation>Was das Absieben dort ergibt</translation>
    </message>
    <message>
        <source>Which openings? From the sieves of this test</source>
        <translation>Welche Maschenweiten? Von den Sieben dieser Analyse</translation>
    </message>
    <message>
        <source>Which openings? From the sieves you own</source>
        <translation>Welche Maschenweiten? Von den eigenen Sieben</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::WelcomePage</name>
    <message>
        <source>From a weighed sieve sample to a mix in a pot</source>
        <translation>Von der gewogenen Siebprobe zur Mischung in der Schale</translation>
    </message>
    <message>
        <source>Look at the demonstration</source>
        <translation>Die Vorführung ansehen</translation>
    </message>
    <message>
        <source>An invented nursery in a window of its own: bags, sieve tests, a mix for pines. Closing it throws it away.</source>
        <translation>Eine erfundene Baumschule in einem eigenen Fenster: Säcke, Siebanalysen, eine Mischung für Kiefern. Schließen wirft sie weg.</translation>
    </message>
    <message>
        <source>Record a sieving</source>
        <translation>Eine Siebung aufzeichnen</translation>
    </message>
    <message>
        <source>An empty stack of sieves, ready to type into.</source>
        <translation>Ein leerer Siebturm, bereit zur Eingabe.</translation>
    </message>
    <message>
        <source>Shape and inside lengths: its volume at once, air and water when there is a mix.</source>
        <translation>Form und Innenmaße: sofort das Volumen, Luft und Wasser, sobald es eine Mischung gibt.</translation>
    </message>
    <message>
        <source>Type what stayed on each sieve, blend the bags, set the pot: read how much air and water the mix holds in it, and how many litres of each to measure out.</source>
        <translation>Eingeben, was auf jedem Sieb lag, die Säcke mischen, die Schale angeben: ablesen, wie viel Luft und Wasser die Mischung darin hält und wie viele Liter von jedem abzumessen sind.</translation>
    </message>
    <message>
        <source>Describe a pot</source>
        <translation>Eine Schale beschreiben</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::WishTable</name>
    <message>
        <source>share of the mass inside the wanted grain</source>
        <translation>Anteil der Masse in der gewünschten Körnung</translation>
    </message>
    <message>
        <source>share of the mass that is dust, finer than the size below</source>
        <translation>Anteil der Masse, der Staub ist, feiner als die Größe unten</translation>
    </message>
    <message>
        <source>share of the pot that drains free after a flood</source>
        <translation>Anteil der Schale, der nach dem Fluten frei abläuft</translation>
    </message>
    <message>
        <source>share of the pot that holds water after draining</source>
        <translation>Anteil der Schale, der nach dem Abtropfen Wasser hält</translation>
    </message>
    <message>
        <source>share of the pot whose water plants can take</source>
        <translation>Anteil der Schale, dessen Wasser Pflanzen nutzen</translation>
    </message>
    <message>
        <source>mass of a litre, drained</source>
        <translation>Masse eines Liters, abgetropft</translation>
    </message>
    <message>
        <source>of a mixed litre, in your own currency</source>
        <translation>eines gemischten Liters, in der eigenen Währung</translation>
    </message>
    <message>
        <source>percent passing between limits at sizes you give</source>
        <translation>Siebdurchgang zwischen Grenzen bei selbst gewählten Größen</translation>
    </message>
    <message>
        <source>percent passing to come near to at sizes you give</source>
        <translation>Siebdurchgang, dem nahezukommen ist, bei selbst gewählten Größen</translation>
    </message>
    <message>
        <source>%1 to %2, %</source>
        <translation>%1 bis %2, %</translation>
    </message>
    <message>
        <source>wanted grain, %</source>
        <translation>gewünschtes Korn, %</translation>
    </message>
    <message>
        <source>dust, %</source>
        <translation>Staub, %</translation>
    </message>
    <message>
        <source>air in pot, %</source>
        <translation>Luft in Schale, %</translation>
    </message>
    <message>
        <source>water in pot, %</source>
        <translation>Wasser in Schale, %</translation>
    </message>
    <message>
        <source>exchange, meq/L</source>
        <translation>Austausch, meq/L</translation>
    </message>
    <message>
        <source>price of a litre</source>
        <translation>Preis je Liter</translation>
    </message>
    <message>
        <source>curve within</source>
        <translation>Sieblinie innerhalb</translation>
    </message>
    <message>
        <source>curve near</source>
        <translation>Sieblinie nahe</translation>
    </message>
    <message>
        <source>wish</source>
        <translation>Wunsch</translation>
    </message>
    <message>
        <source>least</source>
        <translation>mindestens</translation>
    </message>
    <message>
        <source>most</source>
        <translation>höchstens</translation>
    </message>
    <message>
        <source>must</source>
        <translation>muss</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>%1 must hold</source>
        <translation>%1 muss gelten</translation>
    </message>
    <message>
        <source>sizes in mm with percent passing: 4.75 90-100; 2.36 34-50</source>
        <translation>Größen in mm mit Siebdurchgang in Prozent: 4.75 90-100; 2.36 34-50</translation>
    </message>
    <message>
        <source>sizes in mm with percent passing: 4.75 95; 2.36 42</source>
        <translation>Größen in mm mit Siebdurchgang in Prozent: 4.75 95; 2.36 42</translation>
    </message>
    <message>
        <source>exchange capacity of a litre</source>
        <translation>Austauschkapazität eines Liters</translation>
    </message>
    <message>
        <source>plants can take, %</source>
        <translation>für Pflanzen, %</translation>
    </message>
    <message>
        <source>wet litre, %1</source>
        <translation>Liter nass, %1</translation>
    </message>
</context>
<context>
    <name>materials</name>
    <message>
        <source>akadama</source>
        <translation>Akadama</translation>
    </message>
    <message>
        <source>Granular volcanic subsoil clay, dug and dried, sold by grain band and hardness. Breaks down in wet frost.</source>
        <translation>Körniger vulkanischer Unterboden-Ton, gegraben und getrocknet, nach Körnung und Härte verkauft. Zerfällt bei nassem Frost.</translation>
    </message>
    <message>
        <source>biochar</source>
        <translation>Pflanzenkohle</translation>
    </message>
    <message>
        <source>Charred wood or husk; differs widely by feedstock and may shed water while fresh.</source>
        <translation>Verkohltes Holz oder Spelzen; je nach Ausgangsstoff sehr verschieden, frisch mitunter wasserabweisend.</translation>
    </message>
    <message>
        <source>calcined clay</source>
        <translation>gebrannter Ton</translation>
    </message>
    <message>
        <source>Clay granules fired hard. Lasts years if fired hot: soak and freeze a pinch to see.</source>
        <translation>Hart gebrannte Tonkörner. Halten Jahre, wenn heiß gebrannt: eine Prise wässern und gefrieren zeigt es.</translation>
    </message>
    <message>
        <source>calcined diatomite</source>
        <translation>gebrannte Kieselgur</translation>
    </message>
    <message>
        <source>Fired diatomaceous earth, light and very absorbent. Its dust must not be breathed.</source>
        <translation>Gebrannte Kieselgur, leicht und sehr saugfähig. Ihr Staub darf nicht eingeatmet werden.</translation>
    </message>
    <message>
        <source>coir</source>
        <translation>Kokosfaser</translation>
    </message>
    <message>
        <source>Coconut husk pith and fibre. Without a grain density: shares and grading only.</source>
        <translation>Mark und Fasern der Kokosschale. Ohne Korndichte: nur Anteile und Körnung.</translation>
    </message>
    <message>
        <source>crushed expanded clay</source>
        <translation>gebrochener Blähton</translation>
    </message>
    <message>
        <source>Fired clay pellets broken to 4-8 mm: rough, with opened pores.</source>
        <translation>Gebrannte Tonkugeln, auf 4-8 mm gebrochen: rau, mit geöffneten Poren.</translation>
    </message>
    <message>
        <source>decomposed granite</source>
        <translation>Granitgrus</translation>
    </message>
    <message>
        <source>Granite weathered in place: coarse, sandy, with some fines.</source>
        <translation>An Ort und Stelle verwitterter Granit: grob, sandig, mit etwas Feinkorn.</translation>
    </message>
    <message>
        <source>expanded clay</source>
        <translation>Blähton</translation>
    </message>
    <message>
        <source>Rounded fired clay pellets, 4-10 mm, with a sealed skin; much of the pore space is closed.</source>
        <translation>Runde gebrannte Tonkugeln, 4-10 mm, mit dichter Haut; ein großer Teil der Poren ist geschlossen.</translation>
    </message>
    <message>
        <source>expanded shale</source>
        <translation>Blähschiefer</translation>
    </message>
    <message>
        <source>Kiln-expanded shale, hard and angular.</source>
        <translation>Im Ofen geblähter Schiefer, hart und kantig.</translation>
    </message>
    <message>
        <source>granite grit</source>
        <translation>Granitsplitt</translation>
    </message>
    <message>
        <source>Crushed granite: solid, angular, heavy; drains and weighs down.</source>
        <translation>Gebrochener Granit: dicht, kantig, schwer; entwässert und gibt Gewicht.</translation>
    </message>
    <message>
        <source>kanuma</source>
        <translation>Kanuma</translation>
    </message>
    <message>
        <source>Soft, acid, weathered pumice subsoil for acid-loving species. Crushes easily.</source>
        <translation>Weicher, saurer, verwitterter Bims-Unterboden für Säureliebende. Zerdrückt sich leicht.</translation>
    </message>
    <message>
        <source>kiryu</source>
        <translation>Kiryu</translation>
    </message>
    <message>
        <source>Weathered river grit with rusty, slightly porous grain.</source>
        <translation>Verwitterter Flusskies mit rostigem, leicht porösem Korn.</translation>
    </message>
    <message>
        <source>peat</source>
        <translation>Torf</translation>
    </message>
    <message>
        <source>Sphagnum peat. Without a grain density: shares and grading only.</source>
        <translation>Hochmoortorf. Ohne Korndichte: nur Anteile und Körnung.</translation>
    </message>
    <message>
        <source>perlite</source>
        <translation>Perlit</translation>
    </message>
    <message>
        <source>Expanded volcanic glass; holds water at its surface, most inner pores are closed. Dusty: wet it before pouring.</source>
        <translation>Geblähtes Vulkanglas; hält Wasser an der Oberfläche, die meisten inneren Poren sind geschlossen. Staubig: vor dem Schütten anfeuchten.</translation>
    </message>
    <message>
        <source>pine bark</source>
        <translation>Kiefernrinde</translation>
    </message>
    <message>
        <source>Aged and screened pine bark. Rots down and shrinks.</source>
        <translation>Gereifte, gesiebte Kiefernrinde. Verrottet und schwindet.</translation>
    </message>
    <message>
        <source>pumice</source>
        <translation>Bims</translation>
    </message>
    <message>
        <source>Foamed volcanic glass; light or dense by deposit. A dense grain goes with a heavy jug: use these figures as a set.</source>
        <translation>Geschäumtes Vulkanglas; je nach Vorkommen leicht oder dicht. Zu dichtem Korn gehört ein schwerer Krug: diese Werte nur zusammen verwenden.</translation>
    </message>
    <message>
        <source>quartz sand</source>
        <translation>Quarzsand</translation>
    </message>
    <message>
        <source>Washed silica sand: solid grain without inner pores.</source>
        <translation>Gewaschener Quarzsand: dichtes Korn ohne innere Poren.</translation>
    </message>
    <message>
        <source>scoria</source>
        <translation>Lava</translation>
    </message>
    <message>
        <source>Vesicular basaltic cinder, rough and heavy; some of its pores are closed.</source>
        <translation>Blasige Basaltschlacke, rau und schwer; ein Teil ihrer Poren ist geschlossen.</translation>
    </message>
    <message>
        <source>sphagnum</source>
        <translation>Sphagnum</translation>
    </message>
    <message>
        <source>Long-fibre sphagnum moss. Without a grain density: shares and grading only. Wear gloves: moss may carry a skin fungus.</source>
        <translation>Langfaseriges Sphagnum-Moos. Ohne Korndichte: nur Anteile und Körnung. Handschuhe tragen: Moos kann einen Hautpilz tragen.</translation>
    </message>
    <message>
        <source>vermiculite</source>
        <translation>Vermiculit</translation>
    </message>
    <message>
        <source>Exfoliated mica; its layers collapse under load and with wear. Very old stock of unknown origin may hold asbestos: leave it shut.</source>
        <translation>Geblähter Glimmer; seine Schichten fallen unter Last und mit der Zeit zusammen. Sehr alte Ware unbekannter Herkunft kann Asbest enthalten: geschlossen lassen.</translation>
    </message>
    <message>
        <source>zeolite</source>
        <translation>Zeolith</translation>
    </message>
    <message>
        <source>Crushed clinoptilolite rock: heavy, with a very high exchange capacity.</source>
        <translation>Gebrochenes Klinoptilolith-Gestein: schwer, mit sehr hoher Austauschkapazität.</translation>
    </message>
</context>
<context>
    <name>profiles</name>
    <message>
        <source>very small trees</source>
        <translation>sehr kleine Bäume</translation>
    </message>
    <message>
        <source>small trees</source>
        <translation>kleine Bäume</translation>
    </message>
    <message>
        <source>conifers</source>
        <translation>Nadelbäume</translation>
    </message>
    <message>
        <source>conifers, large or collected</source>
        <translation>Nadelbäume, groß oder gesammelt</translation>
    </message>
    <message>
        <source>deciduous, developing</source>
        <translation>Laubbaum, im Aufbau</translation>
    </message>
    <message>
        <source>deciduous, refined</source>
        <translation>Laubbaum, verfeinert</translation>
    </message>
    <message>
        <source>deciduous conifers</source>
        <translation>sommergrüne Nadelbäume</translation>
    </message>
    <message>
        <source>evergreen broadleaf</source>
        <translation>immergrüne Laubbäume</translation>
    </message>
    <message>
        <source>acid lovers</source>
        <translation>Säureliebende</translation>
    </message>
    <message>
        <source>tropicals</source>
        <translation>Tropische</translation>
    </message>
</context>
<context>
    <name>report</name>
    <message>
        <source>the grain would hold {held_percent} % of its volume in water and has {pores_percent} % of pores: was it dabbed dry on the outside, and is the density right?</source>
        <translation>das Korn würde {held_percent} % seines Volumens an Wasser halten und hat {pores_percent} % Poren: War es außen trockengetupft, und stimmt die Dichte?</translation>
    </message>
    <message>
        <source>the grain took up {percent} % of its dry mass; few kinds of grain do: was it dabbed dry on the outside?</source>
        <translation>das Korn nahm {percent} % seiner Trockenmasse auf; das tun wenige Körnungen: War es außen trockengetupft?</translation>
    </message>
    <message>
        <source>likely below {percent} % air in season {season} if the crumbs stay among the grain: a hint for the next repotting, an estimate</source>
        <translation>wahrscheinlich unter {percent} % Luft in Saison {season}, wenn die Krümel zwischen den Körnern bleiben: ein Hinweis für das nächste Umtopfen, eine Schätzung</translation>
    </message>
    <message>
        <source>likely below {percent} % air in season {season} if the crumbs wash down to the floor: a hint for the next repotting, an estimate</source>
        <translation>wahrscheinlich unter {percent} % Luft in Saison {season}, wenn die Krümel zum Boden gespült werden: ein Hinweis für das nächste Umtopfen, eine Schätzung</translation>
    </message>
    <message>
        <source>the years to come are an estimate: frost, watering and repotting habits differ, and roots lower the air further</source>
        <translation>die kommenden Jahre sind eine Schätzung: Frost, Gießen und Umtopfgewohnheiten sind verschieden, und Wurzeln senken die Luft weiter</translation>
    </message>
    <message>
        <source>how long this grain lasts is not known; it is taken as not breaking. A crumble test would tell</source>
        <translation>wie lange dieses Korn hält, ist nicht bekannt; es gilt als beständig. Ein Zerfallstest würde es sagen</translation>
    </message>
    <message>
        <source>tilt and bottom layer are left out of the years to come</source>
        <translation>Neigung und Drainageschicht sind in den kommenden Jahren nicht berücksichtigt</translation>
    </message>
    <message>
        <source>the test and the usual values are far apart, so neither is trusted as far as it claims: the range is {factor} times as wide; repeat the test</source>
        <translation>der Test und die üblichen Werte liegen weit auseinander, deshalb wird keinem so weit getraut, wie er verspricht: Die Spanne ist {factor}-mal so breit; den Test wiederholen</translation>
    </message>
    <message>
        <source>only {percent} % of the voids between grains filled when flooded; was it flooded slowly from below, after a day&apos;s soak?</source>
        <translation>nur {percent} % der Hohlräume zwischen den Körnern füllten sich beim Fluten; wurde langsam von unten geflutet, nach einem Tag Einweichen?</translation>
    </message>
    <message>
        <source>without the mix only what was measured is told; give &quot;mix&quot; or --mix to learn from it</source>
        <translation>ohne die Mischung wird nur gesagt, was gemessen wurde; mit „mix“ oder --mix lässt sich daraus lernen</translation>
    </message>
    <message>
        <source>without the pot&apos;s shape or depth there is nothing to compare with; give &quot;container&quot;, &quot;depth_cm&quot; or --pot</source>
        <translation>ohne Form oder Tiefe der Schale gibt es nichts zu vergleichen; „container“, „depth_cm“ oder --pot angeben</translation>
    </message>
    <message>
        <source>the grain came out coarser than it went in: was it the same handful, and was nothing lost?</source>
        <translation>das Korn kam gröber heraus, als es hineinging: War es dieselbe Handvoll, und ging nichts verloren?</translation>
    </message>
    <message>
        <source>the grain displaces no water; look at the three masses</source>
        <translation>das Korn verdrängt kein Wasser; die drei Massen ansehen</translation>
    </message>
    <message>
        <source>the soaked grain is lighter than water ({density_g_l} g/L): hold it under with a sieve, or its volume comes out too small</source>
        <translation>das eingeweichte Korn ist leichter als Wasser ({density_g_l} g/L): mit einem Sieb untertauchen, sonst kommt sein Volumen zu klein heraus</translation>
    </message>
    <message>
        <source>a fraction needs the opening it stayed on, the one it fell through, or both</source>
        <translation>eine Fraktion braucht die Maschenweite, auf der sie liegen blieb, die, durch die sie fiel, oder beide</translation>
    </message>
    <message>
        <source>{density_g_l} g/L is unusual for grain; look at the masses and at the volume of the jug</source>
        <translation>{density_g_l} g/L sind für Korn ungewöhnlich; die Massen und das Volumen des Krugs ansehen</translation>
    </message>
    <message>
        <source>the grain lost {percent} % of its volume when worked in; 5 to 13 % is usual: was it filled loosely?</source>
        <translation>das Korn verlor beim Einarbeiten {percent} % seines Volumens; 5 bis 13 % sind üblich: War es lose gefüllt?</translation>
    </message>
    <message>
        <source>the pot tests were made with another mix than this one; what they teach holds for this one only as far as the grain is alike</source>
        <translation>die Schalentests wurden mit einer anderen Mischung als dieser gemacht; was sie lehren, gilt für diese nur, soweit das Korn gleicht</translation>
    </message>
    <message>
        <source>no rigid grain: the packing model is less certain for it</source>
        <translation>kein starres Korn: Das Packungsmodell ist dafür weniger sicher</translation>
    </message>
    <message>
        <source>all components have 0 parts; give one of them a part</source>
        <translation>alle Bestandteile haben 0 Teile; einem von ihnen einen Teil geben</translation>
    </message>
    <message>
        <source>a settling of {share} can&apos;t be; expected 0 to below 1, the share of the volume lost</source>
        <translation>eine Setzung von {share} kann nicht sein; erwartet wird 0 bis unter 1, der Anteil des verlorenen Volumens</translation>
    </message>
    <message>
        <source>a spill of {share} can&apos;t be; expected 0 to below 1, the share of the mix that misses the pot</source>
        <translation>ein Streuverlust von {share} kann nicht sein; erwartet wird 0 bis unter 1, der Anteil der Mischung neben der Schale</translation>
    </message>
    <message>
        <source>the mix swells by {percent} %: it takes more room than its components apart</source>
        <translation>die Mischung quillt um {percent} %: Sie braucht mehr Raum als ihre Bestandteile einzeln</translation>
    </message>
    <message>
        <source>weigh a litre of the {component}: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>einen Liter von {component} wiegen: Spanne für {figure} von ±{now_points} auf ±{then_points} Punkte</translation>
    </message>
    <message>
        <source>sieve the {component} three times more: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>{component} dreimal mehr sieben: Spanne für {figure} von ±{now_points} auf ±{then_points} Punkte</translation>
    </message>
    <message>
        <source>range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>Spanne für {figure} von ±{now_points} auf ±{then_points} Punkte</translation>
    </message>
    <message>
        <source>fill the pot with water and weigh it: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>die Schale mit Wasser füllen und wiegen: Spanne für {figure} von ±{now_points} auf ±{then_points} Punkte</translation>
    </message>
    <message>
        <source>make a pot test of the mix: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>einen Schalentest der Mischung machen: Spanne für {figure} von ±{now_points} auf ±{then_points} Punkte</translation>
    </message>
    <message>
        <source>see in a jug how far the mix settles: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>im Krug sehen, wie weit die Mischung sich setzt: Spanne für {figure} von ±{now_points} auf ±{then_points} Punkte</translation>
    </message>
    <message>
        <source>soak the {component} for a day and weigh it surface-dry: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>{component} einen Tag einweichen und oberflächentrocken wiegen: Spanne für {figure} von ±{now_points} auf ±{then_points} Punkte</translation>
    </message>
    <message>
        <source>{percent} % of air is unusual; was it drained level for half an hour, and is the volume right?</source>
        <translation>{percent} % Luft sind ungewöhnlich; wurde eine halbe Stunde waagerecht abgetropft, und stimmt das Volumen?</translation>
    </message>
    <message>
        <source>{percent} % of water after draining is unusual; look at the masses and the volume</source>
        <translation>{percent} % Wasser nach dem Abtropfen sind ungewöhnlich; Massen und Volumen ansehen</translation>
    </message>
    <message>
        <source>{caught_ml} mL ran out of {poured_ml} mL poured in; count all the water from the dry mix on</source>
        <translation>{caught_ml} mL liefen von {poured_ml} mL eingegossenen aus; alles Wasser von der trockenen Mischung an zählen</translation>
    </message>
    <message>
        <source>a depth of {depth_cm} cm can&apos;t be; expected more than 0</source>
        <translation>eine Tiefe von {depth_cm} cm kann nicht sein; erwartet wird mehr als 0</translation>
    </message>
    <message>
        <source>the volume of the mix is not known; give volume_ml, a container in the file, or --pot</source>
        <translation>das Volumen der Mischung ist nicht bekannt; volume_ml, ein Gefäß in der Datei oder --pot angeben</translation>
    </message>
    <message>
        <source>neither a flooded nor a drained mass is given; expected one of flooded_g and drained_g</source>
        <translation>weder eine geflutete noch eine abgetropfte Masse ist angegeben; erwartet wird flooded_g oder drained_g</translation>
    </message>
    <message>
        <source>there are no tests; expected one or more</source>
        <translation>es gibt keine Tests; erwartet wird einer oder mehr</translation>
    </message>
    <message>
        <source>{percent} % filled when flooded is unusual; look at the masses and the volume</source>
        <translation>{percent} % gefüllt beim Fluten sind ungewöhnlich; Massen und Volumen ansehen</translation>
    </message>
    <message>
        <source>the pot is given twice; expected one of container and depth_cm</source>
        <translation>die Schale ist zweimal angegeben; erwartet wird container oder depth_cm</translation>
    </message>
    <message>
        <source>a volume of {volume_ml} mL can&apos;t be; expected more than 0</source>
        <translation>ein Volumen von {volume_ml} mL kann nicht sein; erwartet wird mehr als 0</translation>
    </message>
    <message>
        <source>masses and poured water are mixed; expected one or the other for each test</source>
        <translation>Massen und eingegossenes Wasser sind vermischt; für jeden Test das eine oder das andere</translation>
    </message>
    <message>
        <source>{higher_g} g is not above {lower_g} g; expected tare, dry, drained, flooded in rising order</source>
        <translation>{higher_g} g liegt nicht über {lower_g} g; erwartet werden Tara, trocken, abgetropft, geflutet in steigender Folge</translation>
    </message>
    <message>
        <source>{percent} % is 1-2 mm: good for very small pots and for top dressing</source>
        <translation>{percent} % sind 1-2 mm: gut für sehr kleine Schalen und als Abdeckung</translation>
    </message>
    <message>
        <source>above 2 mm ({size_mm} mm here) the estimate is good to 3.5 points at best; a pot test makes it better</source>
        <translation>über 2 mm (hier {size_mm} mm) ist die Schätzung bestenfalls auf 3.5 Punkte genau; ein Schalentest macht sie besser</translation>
    </message>
    <message>
        <source>the figures describe the new mix after soaking and draining; watering a dry pot from above reaches less (about half the rise), and roots and breakdown lower the air with time</source>
        <translation>die Zahlen beschreiben die neue Mischung nach Einweichen und Abtropfen; Gießen einer trockenen Schale von oben erreicht weniger (etwa die halbe Steighöhe), und Wurzeln und Zerfall senken die Luft mit der Zeit</translation>
    </message>
    <message>
        <source>grain of {size_mm} mm holds a wet zone of about one grain or less</source>
        <translation>Korn von {size_mm} mm hält eine Nasszone von etwa einem Korn oder weniger</translation>
    </message>
    <message>
        <source>{value} can&apos;t be; expected {low} to {high}</source>
        <translation>{value} kann nicht sein; erwartet wird {low} bis {high}</translation>
    </message>
    <message>
        <source>a table of areas has no outline; tilted, a round one is assumed</source>
        <translation>eine Flächentabelle hat keinen Umriss; gekippt wird ein runder angenommen</translation>
    </message>
    <message>
        <source>the unit is {unit}; expected {expected}</source>
        <translation>die Einheit ist {unit}; erwartet wird {expected}</translation>
    </message>
    <message>
        <source>the absorption fills {water_percent} % of the grain, which has {pores_percent} % pores; look at the absorption and both grain densities</source>
        <translation>die Wasseraufnahme füllt {water_percent} % des Korns, das {pores_percent} % Poren hat; Wasseraufnahme und beide Dichten ansehen</translation>
    </message>
    <message>
        <source>an absorption of {ratio} can&apos;t be; expected 0 or more, kg of water per kg of dry grain</source>
        <translation>eine Wasseraufnahme von {ratio} kann nicht sein; erwartet wird 0 oder mehr, kg Wasser je kg trockenes Korn</translation>
    </message>
    <message>
        <source>an exchange capacity of {cec_meq_100g} meq/100 g can&apos;t be; expected 0 or more</source>
        <translation>eine Austauschkapazität von {cec_meq_100g} meq/100 g kann nicht sein; erwartet wird 0 oder mehr</translation>
    </message>
    <message>
        <source>grain of one size has no pan and no top class; leave this out or give a grading</source>
        <translation>Korn einer Größe hat keinen Boden und keine oberste Klasse; das weglassen oder eine Körnung angeben</translation>
    </message>
    <message>
        <source>a density of {density_g_l} g/L can&apos;t be; expected more than 0</source>
        <translation>eine Dichte von {density_g_l} g/L kann nicht sein; erwartet wird mehr als 0</translation>
    </message>
    <message>
        <source>{percent} % moisture can&apos;t be; expected 0 or more, water per dry mass</source>
        <translation>{percent} % Feuchte kann nicht sein; erwartet wird 0 oder mehr, Wasser je Trockenmasse</translation>
    </message>
    <message>
        <source>the sieve test {file} can&apos;t be read from here; give the grading itself</source>
        <translation>die Siebanalyse {file} lässt sich von hier nicht lesen; die Körnung selbst angeben</translation>
    </message>
    <message>
        <source>the grain sizes are missing; give grading, class_mm or sieve_test</source>
        <translation>die Korngrößen fehlen; grading, class_mm oder sieve_test angeben</translation>
    </message>
    <message>
        <source>an open share of {share} can&apos;t be; expected 0 to 1</source>
        <translation>ein offener Anteil von {share} kann nicht sein; erwartet wird 0 bis 1</translation>
    </message>
    <message>
        <source>{parts} parts can&apos;t be; expected 0 or more</source>
        <translation>{parts} Teile kann nicht sein; erwartet wird 0 oder mehr</translation>
    </message>
    <message>
        <source>a grain size of {size_mm} mm can&apos;t be; expected more than 0</source>
        <translation>eine Korngröße von {size_mm} mm kann nicht sein; erwartet wird mehr als 0</translation>
    </message>
    <message>
        <source>the grain sizes are given in more than one way; give one of grading, class_mm and sieve_test</source>
        <translation>die Korngrößen sind auf mehrere Arten angegeben; eine von grading, class_mm und sieve_test angeben</translation>
    </message>
    <message>
        <source>the area is {area_cm2} cm2; it must be above 0 (only the floor may be a point)</source>
        <translation>die Fläche ist {area_cm2} cm2; sie muss über 0 liegen (nur der Boden darf ein Punkt sein)</translation>
    </message>
    <message>
        <source>the area is {area_cm2} cm2; expected at most a square of ten metres</source>
        <translation>die Fläche ist {area_cm2} cm2; erwartet wird höchstens ein Quadrat von zehn Metern</translation>
    </message>
    <message>
        <source>the exponent is {exponent}; expected at most {limit}</source>
        <translation>der Exponent ist {exponent}; erwartet wird höchstens {limit}</translation>
    </message>
    <message>
        <source>the exponent is {exponent}; it must be 1 or more</source>
        <translation>der Exponent ist {exponent}; er muss 1 oder mehr sein</translation>
    </message>
    <message>
        <source>{count} drain holes can&apos;t be; expected 0 or more</source>
        <translation>{count} Abflusslöcher kann nicht sein; erwartet wird 0 oder mehr</translation>
    </message>
    <message>
        <source>the length is {length_cm} cm; it must be above 0</source>
        <translation>die Länge ist {length_cm} cm; sie muss über 0 liegen</translation>
    </message>
    <message>
        <source>the length is {length_cm} cm; expected at most {limit_cm} cm</source>
        <translation>die Länge ist {length_cm} cm; erwartet wird höchstens {limit_cm} cm</translation>
    </message>
    <message>
        <source>the length is {length_cm} cm; expected at least {limit_cm} cm</source>
        <translation>die Länge ist {length_cm} cm; erwartet wird mindestens {limit_cm} cm</translation>
    </message>
    <message>
        <source>a drum needs its diameter at half the depth</source>
        <translation>eine Trommel braucht ihren Durchmesser auf halber Tiefe</translation>
    </message>
    <message>
        <source>the profile has no areas; give height_cm and area_cm2 from the floor to the rim</source>
        <translation>das Profil hat keine Flächen; height_cm und area_cm2 vom Boden bis zum Rand angeben</translation>
    </message>
    <message>
        <source>the table of areas has {rows} rows; at least two are needed, floor and rim</source>
        <translation>die Flächentabelle hat {rows} Zeilen; mindestens zwei sind nötig, Boden und Rand</translation>
    </message>
    <message>
        <source>the tilt is {tilt_deg} degrees; expected 0 to 60</source>
        <translation>die Neigung ist {tilt_deg} Grad; erwartet wird 0 bis 60</translation>
    </message>
    <message>
        <source>{form} is no form of a mound; expected paraboloid, cone or ellipsoid</source>
        <translation>{form} ist keine Kuppenform; erwartet wird paraboloid, cone oder ellipsoid</translation>
    </message>
    <message>
        <source>{shape} is no shape; expected rectangular, oval, round, hexagonal, octagonal, drum, superellipse, bowl or profile</source>
        <translation>{shape} ist keine Form; erwartet wird rectangular, oval, round, hexagonal, octagonal, drum, superellipse, bowl oder profile</translation>
    </message>
    <message>
        <source>{axis} is no axis to tilt about; expected length or width</source>
        <translation>{axis} ist keine Kippachse; erwartet wird length oder width</translation>
    </message>
    <message>
        <source>the volume is {volume_ml} mL; it must be above 0</source>
        <translation>das Volumen ist {volume_ml} mL; es muss über 0 liegen</translation>
    </message>
    <message>
        <source>with {diameter_cm} cm at half the depth the walls would meet; check the three diameters</source>
        <translation>mit {diameter_cm} cm auf halber Tiefe würden sich die Wände treffen; die drei Durchmesser prüfen</translation>
    </message>
    <message>
        <source>the header has no column {column}; expected aperture_mm with retained_g, with gross_g and tare_g, or with retained_l</source>
        <translation>im Kopf fehlt die Spalte {column}; erwartet wird aperture_mm mit retained_g, mit gross_g und tare_g oder mit retained_l</translation>
    </message>
    <message>
        <source>there is no header line; expected aperture_mm,retained_g</source>
        <translation>es gibt keine Kopfzeile; erwartet wird aperture_mm,retained_g</translation>
    </message>
    <message>
        <source>{text} is not a day; expected one like 2026-03-14</source>
        <translation>{text} ist kein Tag; erwartet wird ein Datum wie 2026-03-14</translation>
    </message>
    <message>
        <source>the file is no longer where it was opened; save a copy of what is open</source>
        <translation>die Datei ist nicht mehr dort, wo sie geöffnet wurde; eine Kopie des Geöffneten speichern</translation>
    </message>
    <message>
        <source>this is a folder; name a file</source>
        <translation>das ist ein Ordner; eine Datei nennen</translation>
    </message>
    <message>
        <source>the format is {found}; expected {expected}</source>
        <translation>das Format ist {found}; erwartet wird {expected}</translation>
    </message>
    <message>
        <source>an opening of {aperture_mm} mm can&apos;t be; give the free opening of the sieve in mm</source>
        <translation>eine Maschenweite von {aperture_mm} mm kann nicht sein; die lichte Weite des Siebs in mm angeben</translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm after {before_mm} mm is out of order; write a grading coarse to fine</source>
        <translation>die Maschenweite {aperture_mm} mm nach {before_mm} mm ist außer der Reihe; eine Körnung von grob nach fein schreiben</translation>
    </message>
    <message>
        <source>the pan size {size_mm} mm has to lie above 0 and not above the finest sieve, {finest_mm} mm</source>
        <translation>die Größe des Bodens {size_mm} mm muss über 0 und nicht über dem feinsten Sieb, {finest_mm} mm, liegen</translation>
    </message>
    <message>
        <source>the top size {size_mm} mm has to lie above the coarsest sieve, {coarsest_mm} mm</source>
        <translation>die oberste Größe {size_mm} mm muss über dem gröbsten Sieb, {coarsest_mm} mm, liegen</translation>
    </message>
    <message>
        <source>the key {key} stands twice; give it once</source>
        <translation>der Schlüssel {key} steht zweimal da; einmal angeben</translation>
    </message>
    <message>
        <source>the two results lie {percent} % apart, {usual_percent} % is usual; measure a third time</source>
        <translation>die beiden Ergebnisse liegen {percent} % auseinander, {usual_percent} % sind üblich; ein drittes Mal messen</translation>
    </message>
    <message>
        <source>{text} has a decimal comma; write a point, or separate the columns by ; or tab</source>
        <translation>{text} hat ein Dezimalkomma; einen Punkt schreiben oder die Spalten durch ; oder Tabulator trennen</translation>
    </message>
    <message>
        <source>{unit} is no unit known here; leave it out or write one that fits the field</source>
        <translation>{unit} ist hier als Einheit nicht bekannt; weglassen oder eine schreiben, die zum Feld passt</translation>
    </message>
    <message>
        <source>at least {least} are needed here</source>
        <translation>hier sind mindestens {least} nötig</translation>
    </message>
    <message>
        <source>expected {expected} here</source>
        <translation>hier wird {expected} erwartet</translation>
    </message>
    <message>
        <source>name at least one opening to screen at</source>
        <translation>mindestens eine Maschenweite zum Absieben nennen</translation>
    </message>
    <message>
        <source>{aperture_mm} mm is below the finest sieve of the test, {finest_mm} mm, and {percent} % is finer than that: test with a finer sieve</source>
        <translation>{aperture_mm} mm liegt unter dem feinsten Sieb der Analyse, {finest_mm} mm, und {percent} % sind feiner: mit einem feineren Sieb prüfen</translation>
    </message>
    <message>
        <source>an opening of {aperture_mm} mm can&apos;t be; expected more than 0</source>
        <translation>eine Maschenweite von {aperture_mm} mm kann nicht sein; erwartet wird mehr als 0</translation>
    </message>
    <message>
        <source>a sharpness of {sharpness} can&apos;t be; expected more than 0</source>
        <translation>eine Trennschärfe von {sharpness} kann nicht sein; erwartet wird mehr als 0</translation>
    </message>
    <message>
        <source>{percent} % crumbs can&apos;t be; expected 0 to 100</source>
        <translation>{percent} % Krümel kann nicht sein; erwartet wird 0 bis 100</translation>
    </message>
    <message>
        <source>a sieve of {diameter_mm} mm has no sieving area; give the diameter of the frame in mm</source>
        <translation>ein Sieb von {diameter_mm} mm hat keine Siebfläche; den Durchmesser des Rahmens in mm angeben</translation>
    </message>
    <message>
        <source>{percent} % of the sample was lost while sieving, more than 1 %: look for a spilled or forgotten pan</source>
        <translation>{percent} % der Probe gingen beim Sieben verloren, mehr als 1 %: nach verschüttetem oder vergessenem Korn suchen</translation>
    </message>
    <message>
        <source>a mass of {mass_g} g can&apos;t be; expected 0 or more</source>
        <translation>eine Masse von {mass_g} g kann nicht sein; erwartet wird 0 oder mehr</translation>
    </message>
    <message>
        <source>the same fraction is given in more than one way; give its mass, its gross and tare, or its litres</source>
        <translation>dieselbe Fraktion ist auf mehrere Arten angegeben; Masse, brutto und Tara oder Liter angeben</translation>
    </message>
    <message>
        <source>masses and litres are mixed; measure all fractions in one way</source>
        <translation>Massen und Liter sind vermischt; alle Fraktionen auf eine Art messen</translation>
    </message>
    <message>
        <source>the pan is missing; the last row holds what fell through the finest sieve, 0 if nothing did</source>
        <translation>der Boden fehlt; die letzte Zeile enthält, was durch das feinste Sieb fiel, 0, wenn es nichts war</translation>
    </message>
    <message>
        <source>there is no sieve; expected at least one row above the pan</source>
        <translation>es gibt kein Sieb; erwartet wird mindestens eine Zeile über dem Boden</translation>
    </message>
    <message>
        <source>{percent} % is finer than the finest sieve, {aperture_mm} mm; a finer sieve would show where the dust begins</source>
        <translation>{percent} % sind feiner als das feinste Sieb, {aperture_mm} mm; ein feineres Sieb würde zeigen, wo der Staub beginnt</translation>
    </message>
    <message>
        <source>{count} can&apos;t be the number of a test; expected 1 or more</source>
        <translation>{count} kann nicht die Zahl einer Analyse sein; erwartet wird 1 oder mehr</translation>
    </message>
    <message>
        <source>a resolution of {mass_g} g can&apos;t be; expected 0 or more</source>
        <translation>eine Auflösung von {mass_g} g kann nicht sein; erwartet wird 0 oder mehr</translation>
    </message>
    <message>
        <source>a sample of {mass_g} g can&apos;t be; expected more than 0</source>
        <translation>eine Probe von {mass_g} g kann nicht sein; erwartet wird mehr als 0</translation>
    </message>
    <message>
        <source>{mass_g} g is a small sample for grain of {size_mm} mm; take {least_g} g or more</source>
        <translation>{mass_g} g sind eine kleine Probe für Korn von {size_mm} mm; {least_g} g oder mehr nehmen</translation>
    </message>
    <message>
        <source>{text} is no basis; expected original or recovered</source>
        <translation>{text} ist keine Grundlage; erwartet wird original oder recovered</translation>
    </message>
    <message>
        <source>a volume of {volume_l} L can&apos;t be; expected 0 or more</source>
        <translation>ein Volumen von {volume_l} L kann nicht sein; erwartet wird 0 oder mehr</translation>
    </message>
    <message>
        <source>a test was measured in litres, so each counts the same</source>
        <translation>eine Analyse wurde in Litern gemessen, deshalb zählt jede gleich</translation>
    </message>
    <message>
        <source>{percent} % of the sample still fell through in one more minute, 0.5 % is the limit: shake on, unless the grain is soft and breaks</source>
        <translation>{percent} % der Probe fielen in einer weiteren Minute noch durch, 0.5 % ist die Grenze: weiter schütteln, außer das Korn ist weich und zerbricht</translation>
    </message>
    <message>
        <source>this byte is not UTF-8; save the file as UTF-8</source>
        <translation>dieses Byte ist kein UTF-8; die Datei als UTF-8 speichern</translation>
    </message>
    <message>
        <source>{count} bags can&apos;t be; expected 1 or more</source>
        <translation>{count} Säcke kann nicht sein; erwartet wird 1 oder mehr</translation>
    </message>
    <message>
        <source>in whole scoops a batch is up to {percent} points off the recipe; a smaller scoop or a larger tub keeps it closer</source>
        <translation>in ganzen Schaufeln liegt ein Ansatz bis zu {percent} Punkte neben dem Rezept; eine kleinere Schaufel oder größere Wanne hält ihn näher</translation>
    </message>
    <message>
        <source>{volume_ml} mL can&apos;t be filled in; expected 0 or more</source>
        <translation>{volume_ml} mL lassen sich nicht einfüllen; erwartet wird 0 oder mehr</translation>
    </message>
    <message>
        <source>about {mass_kg} kg when full and wet: lift it by two or use a trolley (general information; safety sheets, local codes and qualified advice prevail)</source>
        <translation>voll und nass etwa {mass_kg} kg: zu zweit heben oder einen Karren nehmen (allgemeine Hinweise; Sicherheitsdatenblätter, örtliche Vorschriften und fachkundiger Rat gehen vor)</translation>
    </message>
    <message>
        <source>at least {mass_kg} kg when full and wet, not all of it weighed: lift it by two or use a trolley (general information; safety sheets, local codes and qualified advice prevail)</source>
        <translation>voll und nass mindestens {mass_kg} kg, nicht alles gewogen: zu zweit heben oder einen Karren nehmen (allgemeine Hinweise; Sicherheitsdatenblätter, örtliche Vorschriften und fachkundiger Rat gehen vor)</translation>
    </message>
    <message>
        <source>an interval of {years} years can&apos;t be; expected 1 or more</source>
        <translation>ein Abstand von {years} Jahren kann nicht sein; erwartet wird 1 oder mehr</translation>
    </message>
    <message>
        <source>{volume_l} L of a layer are not counted as any grain; name its grain</source>
        <translation>{volume_l} L einer Schicht zählen zu keinem Korn; ihr Korn nennen</translation>
    </message>
    <message>
        <source>a mass of {mass_kg} kg can&apos;t be; expected 0 or more</source>
        <translation>eine Masse von {mass_kg} kg kann nicht sein; erwartet wird 0 oder mehr</translation>
    </message>
    <message>
        <source>no settling is given; litres are as poured, and worked in they lie about 8 % lower</source>
        <translation>es ist keine Setzung angegeben; die Liter sind geschüttet, eingearbeitet liegen sie etwa 8 % niedriger</translation>
    </message>
    <message>
        <source>no spill is given; 5 to 10 % beside the pot is common</source>
        <translation>es ist kein Streuverlust angegeben; 5 bis 10 % neben der Schale sind üblich</translation>
    </message>
    <message>
        <source>{text} is no month and day; expected the like of 03-15</source>
        <translation>{text} ist kein Monat und Tag; erwartet wird etwas wie 03-15</translation>
    </message>
    <message>
        <source>expected a whole number, found {value}</source>
        <translation>erwartet wird eine ganze Zahl, gefunden {value}</translation>
    </message>
    <message>
        <source>settling {percent} %, the median of the last {count} trees filled</source>
        <translation>Setzung {percent} %, der Median der letzten {count} gefüllten Bäume</translation>
    </message>
    <message>
        <source>spill {percent} %, the median of the last {count} batches</source>
        <translation>Streuverlust {percent} %, der Median der letzten {count} Ansätze</translation>
    </message>
    <message>
        <source>{volume_l} L on the shelf can&apos;t be; expected 0 or more</source>
        <translation>{volume_l} L im Vorrat kann nicht sein; erwartet wird 0 oder mehr</translation>
    </message>
    <message>
        <source>the work can&apos;t be ordered by {text}; expected bud, mix, helper or name</source>
        <translation>die Arbeit lässt sich nicht nach {text} ordnen; erwartet wird bud, mix, helper oder name</translation>
    </message>
    <message>
        <source>{text} is no time of the day; expected evening or morning</source>
        <translation>{text} ist keine Tageszeit; erwartet wird evening oder morning</translation>
    </message>
    <message>
        <source>screened grain has no yield; leave one of the two out</source>
        <translation>abgesiebtes Korn hat keine Ausbeute; eines von beiden weglassen</translation>
    </message>
    <message>
        <source>a yield of {share} can&apos;t be; expected more than 0 and at most 1.2, litres for each litre screened</source>
        <translation>eine Ausbeute von {share} kann nicht sein; erwartet wird mehr als 0 und höchstens 1.2, Liter je abgesiebtem Liter</translation>
    </message>
    <message>
        <source>the band runs from {from_mm} to {to_mm} mm; expected the finer size first</source>
        <translation>der Bereich geht von {from_mm} bis {to_mm} mm; die feinere Größe zuerst</translation>
    </message>
    <message>
        <source>recipes of {value} components can&apos;t be searched; expected 1 to {most}</source>
        <translation>Rezepte aus {value} Bestandteilen lassen sich nicht durchsuchen; erwartet wird 1 bis {most}</translation>
    </message>
    <message>
        <source>the wish names more than one figure; make a wish of each</source>
        <translation>der Wunsch nennt mehr als eine Zahl; aus jeder einen Wunsch machen</translation>
    </message>
    <message>
        <source>{value} can&apos;t be; expected 0 or more</source>
        <translation>{value} kann nicht sein; erwartet wird 0 oder mehr</translation>
    </message>
    <message>
        <source>{value} can&apos;t be reached; expected {low} to {high}</source>
        <translation>{value} ist nicht zu erreichen; erwartet wird {low} bis {high}</translation>
    </message>
    <message>
        <source>{value} L are needed; expected more than 0</source>
        <translation>{value} L werden benötigt; erwartet wird mehr als 0</translation>
    </message>
    <message>
        <source>there is nothing to mix; expected 1 to 40 candidates</source>
        <translation>es gibt nichts zu mischen; erwartet werden 1 bis 40 Kandidaten</translation>
    </message>
    <message>
        <source>the wish names nothing; give one of limits, nearest, band, finer_than_mm, air_filled_porosity, container_capacity, available_in_pot, wet_mass_g_l, cec_meq_l, price_per_l, share</source>
        <translation>der Wunsch nennt nichts; eines angeben von limits, nearest, band, finer_than_mm, air_filled_porosity, container_capacity, available_in_pot, wet_mass_g_l, cec_meq_l, price_per_l, share</translation>
    </message>
    <message>
        <source>nothing is asked for; give a lower limit, an upper limit or both</source>
        <translation>es wird nichts verlangt; eine untere Grenze, eine obere oder beide angeben</translation>
    </message>
    <message>
        <source>{key} is false; leave the wish out or write true</source>
        <translation>{key} ist false; den Wunsch weglassen oder true schreiben</translation>
    </message>
    <message>
        <source>{text} can&apos;t be read; expected a size in mm and percent passing, such as 4.75 90-100, with ; between points</source>
        <translation>{text} lässt sich nicht lesen; erwartet wird eine Größe in mm und der Durchgang in Prozent, etwa 4.75 90-100, mit ; zwischen den Punkten</translation>
    </message>
    <message>
        <source>a price of {value} can&apos;t be; expected 0 or more</source>
        <translation>ein Preis von {value} kann nicht sein; erwartet wird 0 oder mehr</translation>
    </message>
    <message>
        <source>a price of 0 as upper limit leaves no scale to measure a miss by; expected more than 0</source>
        <translation>ein Preis von 0 als obere Grenze lässt keinen Maßstab für ein Verfehlen; erwartet wird mehr als 0</translation>
    </message>
    <message>
        <source>none of the {recipes} recipes scores less; of those that score the same a cheaper or simpler one may exist</source>
        <translation>keines der {recipes} Rezepte hat eine niedrigere Wertung; unter denen mit gleicher kann ein billigeres oder einfacheres sein</translation>
    </message>
    <message>
        <source>a stock of {value} L can&apos;t be; expected 0 or more</source>
        <translation>ein Vorrat von {value} L kann nicht sein; erwartet wird 0 oder mehr</translation>
    </message>
    <message>
        <source>a total of {value} parts can&apos;t be searched; expected 1 to {most}</source>
        <translation>eine Summe von {value} Teilen lässt sich nicht durchsuchen; erwartet wird 1 bis {most}</translation>
    </message>
    <message>
        <source>a weight of {weight} can&apos;t be; expected 0 or more</source>
        <translation>ein Gewicht von {weight} kann nicht sein; erwartet wird 0 oder mehr</translation>
    </message>
    <message>
        <source>this must be above 0; leave it out if it is not known</source>
        <translation>das muss über 0 liegen; weglassen, wenn es nicht bekannt ist</translation>
    </message>
    <message>
        <source>{text} holds no grain; expected a bag, a bin, a fraction or a batch</source>
        <translation>{text} enthält kein Korn; erwartet wird ein Sack, eine Kiste, eine Fraktion oder ein Ansatz</translation>
    </message>
    <message>
        <source>the sizes run from {from_mm} mm down to {to_mm} mm; expected the finer first</source>
        <translation>die Größen gehen von {from_mm} mm hinunter auf {to_mm} mm; die feinere zuerst</translation>
    </message>
    <message>
        <source>{text} is not known here; expected one of {expected}</source>
        <translation>{text} ist hier nicht bekannt; erwartet wird eines von {expected}</translation>
    </message>
    <message>
        <source>an angle of {angle_deg} degrees can&apos;t be; expected {low_deg} to {high_deg}</source>
        <translation>ein Winkel von {angle_deg} Grad kann nicht sein; erwartet wird {low_deg} bis {high_deg}</translation>
    </message>
    <message>
        <source>deciduous conifers stand between: bare-rooted with care, an older tree keeps a core</source>
        <translation>sommergrüne Nadelbäume stehen dazwischen: wurzelnackt mit Vorsicht, ein älterer Baum behält einen Kern</translation>
    </message>
    <message>
        <source>refined trees lose fine twigs when bare-rooted: work edges and base, a sector at most</source>
        <translation>verfeinerte Bäume verlieren wurzelnackt feine Triebe: Ränder und Unterseite bearbeiten, höchstens einen Sektor</translation>
    </message>
    <message>
        <source>this group is not bare-rooted: keep the core</source>
        <translation>diese Gruppe wird nicht wurzelnackt gemacht: den Kern behalten</translation>
    </message>
    <message>
        <source>bare-root tropicals only while they grow</source>
        <translation>Tropische nur wurzelnackt machen, während sie wachsen</translation>
    </message>
    <message>
        <source>freshly collected: trim torn ends only, then leave it for 2-3 years</source>
        <translation>frisch gesammelt: nur zerrissene Enden schneiden, dann 2-3 Jahre in Ruhe lassen</translation>
    </message>
    <message>
        <source>conifers: bottom and one half, never all sides; the other half a year or two later</source>
        <translation>Nadelbäume: Unterseite und eine Hälfte, nie alle Seiten; die andere Hälfte ein oder zwei Jahre später</translation>
    </message>
    <message>
        <source>a conifer is never bare-rooted; comb one half and the bottom, the other half in a later year</source>
        <translation>ein Nadelbaum wird nie wurzelnackt gemacht; eine Hälfte und die Unterseite auskämmen, die andere Hälfte in einem späteren Jahr</translation>
    </message>
    <message>
        <source>an exponent of {exponent} can&apos;t be; expected 1 to 100 (2 is an ellipsoid, 4 a box with soft edges)</source>
        <translation>ein Exponent von {exponent} kann nicht sein; erwartet wird 1 bis 100 (2 ist ein Ellipsoid, 4 ein Kasten mit weichen Kanten)</translation>
    </message>
    <message>
        <source>what lies behind this face is not known; the plan takes {depth_cm} cm off it, the next plan is for when that proves impossible</source>
        <translation>was hinter dieser Seite liegt, ist nicht bekannt; der Plan nimmt {depth_cm} cm davon ab, der nächste Plan gilt, wenn das nicht geht</translation>
    </message>
    <message>
        <source>imported: leave it until it grows strongly, then go by its own group</source>
        <translation>importiert: in Ruhe lassen, bis er kräftig wächst, dann nach seiner eigenen Gruppe gehen</translation>
    </message>
    <message>
        <source>{years} years can&apos;t be; expected 1 to 100</source>
        <translation>{years} Jahre kann nicht sein; erwartet wird 1 bis 100</translation>
    </message>
    <message>
        <source>the pot chosen is too small; it fits the free pot {pot}</source>
        <translation>die gewählte Schale ist zu klein; er passt in die freie Schale {pot}</translation>
    </message>
    <message>
        <source>a share of {share} can&apos;t be; expected 0 to 1</source>
        <translation>ein Anteil von {share} kann nicht sein; erwartet wird 0 bis 1</translation>
    </message>
    <message>
        <source>the root mass stands {rise_cm} cm over the soil: build it up with sphagnum</source>
        <translation>der Ballen steht {rise_cm} cm über dem Substrat: mit Sphagnum anböschen</translation>
    </message>
    <message>
        <source>sick: dead and rotten roots come off, no healthy one; clean tools, throw the old soil away</source>
        <translation>krank: tote und faule Wurzeln kommen ab, keine gesunde; saubere Werkzeuge, das alte Substrat wegwerfen</translation>
    </message>
    <message>
        <source>not in one go: these cuts and back into the old pot, the rest when the tree has recovered</source>
        <translation>nicht in einem Zug: diese Schnitte und zurück in die alte Schale, der Rest, wenn der Baum sich erholt hat</translation>
    </message>
    <message>
        <source>a table of areas has no outline; a round one is assumed</source>
        <translation>eine Flächentabelle hat keinen Umriss; ein runder wird angenommen</translation>
    </message>
    <message>
        <source>a tip of {angle_deg} degrees lays the tree down; look at what becomes the new surface</source>
        <translation>eine Kippung von {angle_deg} Grad legt den Baum um; ansehen, was zur neuen Oberfläche wird</translation>
    </message>
    <message>
        <source>the trunk base can&apos;t be at {length_cm} cm; expected {low_cm} cm to {high_cm} cm</source>
        <translation>der Stammfuß kann nicht bei {length_cm} cm stehen; erwartet wird {low_cm} cm bis {high_cm} cm</translation>
    </message>
    <message>
        <source>the trunk base would be buried where it was placed; it was raised to the soil</source>
        <translation>der Stammfuß wäre, wo er gesetzt wurde, vergraben; er wurde bis zum Substrat angehoben</translation>
    </message>
    <message>
        <source>there is no group {group}; expected one of {expected}</source>
        <translation>es gibt keine Gruppe {group}; erwartet wird eine von {expected}</translation>
    </message>
    <message>
        <source>the record has {mass_g} g; count what is there</source>
        <translation>die Bücher haben {mass_g} g; zählen, was da ist</translation>
    </message>
    <message>
        <source>give grams or litres of {id}</source>
        <translation>Gramm oder Liter von {id} angeben</translation>
    </message>
    <message>
        <source>no tree is marked sick; name the trees to compare</source>
        <translation>kein Baum ist als krank vermerkt; die zu vergleichenden Bäume nennen</translation>
    </message>
    <message>
        <source>{text} is no month and day; expected 03-14</source>
        <translation>{text} ist kein Monat und Tag; erwartet wird 03-14</translation>
    </message>
    <message>
        <source>the share is {share}; expected 0 to 1</source>
        <translation>der Anteil ist {share}; erwartet wird 0 bis 1</translation>
    </message>
    <message>
        <source>today&apos;s backup could not be made ({reason}); what you write is saved all the same</source>
        <translation>die heutige Sicherung ließ sich nicht anlegen ({reason}); was geschrieben wird, ist trotzdem gespeichert</translation>
    </message>
    <message>
        <source>stopped; nothing was written</source>
        <translation>angehalten; nichts wurde geschrieben</translation>
    </message>
    <message>
        <source>there is nothing to redo</source>
        <translation>nichts zu wiederholen</translation>
    </message>
    <message>
        <source>there is nothing to undo</source>
        <translation>nichts rückgängig zu machen</translation>
    </message>
    <message>
        <source>air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>(flooded - dry) / volume</source>
        <translation>(geflutet - trocken) / Volumen</translation>
    </message>
    <message>
        <source>(flooded - drained) / volume: what drained; trapped air is not in it</source>
        <translation>(geflutet - abgetropft) / Volumen: was abtropfte; eingeschlossene Luft ist nicht dabei</translation>
    </message>
    <message>
        <source>(drained - dry) / volume</source>
        <translation>(abgetropft - trocken) / Volumen</translation>
    </message>
    <message>
        <source>(fill + reserve) / ((1 - settling)(1 - spill)); reserve = the two largest differences to a worse plan</source>
        <translation>(Füllung + Reserve) / ((1 - Setzung)(1 - Streuverlust)); Reserve = die zwei größten Unterschiede zu einem schlechteren Plan</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>Mischung</translation>
    </message>
    <message>
        <source>fill</source>
        <translation>Füllung</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>settling</source>
        <translation>Setzung</translation>
    </message>
    <message>
        <source>spill</source>
        <translation>Streuverlust</translation>
    </message>
    <message>
        <source>needed x loose share / (1 - shrinkage)</source>
        <translation>benötigt x loser Anteil / (1 - Schwund)</translation>
    </message>
    <message>
        <source>component</source>
        <translation>Bestandteil</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>benötigt</translation>
    </message>
    <message>
        <source>shrinkage</source>
        <translation>Schwund</translation>
    </message>
    <message>
        <source>gives</source>
        <translation>ergibt</translation>
    </message>
    <message>
        <source>ready / yield</source>
        <translation>fertig / Ausbeute</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>Sack</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>fertig</translation>
    </message>
    <message>
        <source>yield</source>
        <translation>Ausbeute</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>raw litres / litres of a bag, rounded up; raw = short / yield</source>
        <translation>Rohliter / Liter eines Sacks, aufgerundet; roh = Fehlmenge / Ausbeute</translation>
    </message>
    <message>
        <source>material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>short</source>
        <translation>Fehlmenge</translation>
    </message>
    <message>
        <source>a part not weighed</source>
        <translation>ein nicht gewogener Teil</translation>
    </message>
    <message>
        <source>left out, and the mass is said as at least</source>
        <translation>ausgelassen, und die Masse heißt dann mindestens</translation>
    </message>
    <message>
        <source>tub of {mix}</source>
        <translation>Wanne mit {mix}</translation>
    </message>
    <message>
        <source>at least {mass}</source>
        <translation>mindestens {mass}</translation>
    </message>
    <message>
        <source>1 bag</source>
        <translation>1 Sack</translation>
    </message>
    <message>
        <source>{count} bags</source>
        <translation>{count} Säcke</translation>
    </message>
    <message>
        <source>Repotting day</source>
        <translation>Umtopftag</translation>
    </message>
    <message>
        <source>{title}, sheet revision {revision}</source>
        <translation>{title}, Blattfassung {revision}</translation>
    </message>
    <message>
        <source>{title}, {day}, sheet revision {revision}</source>
        <translation>{title}, {day}, Blattfassung {revision}</translation>
    </message>
    <message>
        <source>{mix} version {version}</source>
        <translation>{mix} Fassung {version}</translation>
    </message>
    <message>
        <source>{from} to {to}</source>
        <translation>{from} bis {to}</translation>
    </message>
    <message>
        <source>{figure} typical</source>
        <translation>{figure} üblich</translation>
    </message>
    <message>
        <source>Set out {raw} of {bag} for {component}</source>
        <translation>{raw} von {bag} für {component} bereitstellen</translation>
    </message>
    <message>
        <source>Screen {raw} of {bag} at {band} for {component}, gives {ready} ({yield})</source>
        <translation>{raw} von {bag} bei {band} für {component} absieben, ergibt {ready} ({yield})</translation>
    </message>
    <message>
        <source>Screen {raw} of {bag} for {component}, gives {ready} ({yield})</source>
        <translation>{raw} von {bag} für {component} absieben, ergibt {ready} ({yield})</translation>
    </message>
    <message>
        <source>{yield}, typical: measure</source>
        <translation>{yield}, üblich: messen</translation>
    </message>
    <message>
        <source>Buy {bags} of {material}, short of {short} ready</source>
        <translation>{bags} {material} kaufen, es fehlen {short} fertig</translation>
    </message>
    <message>
        <source>Buy {bags} of {material} of {volume} (typical), short of {short} ready</source>
        <translation>{bags} {material} zu {volume} (üblich) kaufen, es fehlen {short} fertig</translation>
    </message>
    <message>
        <source>Buy {bags} of {material} of {volume}, short of {short} ready</source>
        <translation>{bags} {material} zu {volume} kaufen, es fehlen {short} fertig</translation>
    </message>
    <message>
        <source>{line}, price {price}</source>
        <translation>{line}, Preis {price}</translation>
    </message>
    <message>
        <source>Grain</source>
        <translation>Korn</translation>
    </message>
    <message>
        <source>Mixes</source>
        <translation>Mischungen</translation>
    </message>
    <message>
        <source>The reserve covers the two trees of each mix that would take most if they go worse. Left over mix goes back to stock as a tub of its own.</source>
        <translation>Die Reserve deckt je Mischung die zwei Bäume, die am meisten bräuchten, wenn es schlechter kommt. Übrige Mischung geht als eigene Wanne in den Vorrat zurück.</translation>
    </message>
    <message>
        <source>From the shelf</source>
        <translation>Aus dem Vorrat</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>Zu kaufen</translation>
    </message>
    <message>
        <source>due</source>
        <translation>fällig</translation>
    </message>
    <message>
        <source>may be: look at it</source>
        <translation>vielleicht: ansehen</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keiner</translation>
    </message>
    <message>
        <source>Trees due by {day}</source>
        <translation>Fällige Bäume bis {day}</translation>
    </message>
    <message>
        <source>no day yet</source>
        <translation>noch kein Tag</translation>
    </message>
    <message>
        <source>Bags that several days want</source>
        <translation>Säcke, die mehrere Tage wollen</translation>
    </message>
    <message>
        <source>{lift}: two people or a trolley</source>
        <translation>{lift}: zu zweit oder mit Karren</translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation>Heben</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Hinweise</translation>
    </message>
    <message>
        <source>Dust: dry grain can hold respirable silica. Screen batches damp, outdoors with the wind behind, with a mask (P3 or P100 for silica, P2 or N95 at least); clean with a wet cloth or an H-class vacuum, never a broom.</source>
        <translation>Staub: Trockenes Korn kann lungengängiges Quarz enthalten. Feucht und im Freien mit dem Wind im Rücken absieben, mit Maske (P3 oder P100 bei Quarz, mindestens P2 oder N95); mit feuchtem Tuch oder H-Sauger reinigen, nie mit dem Besen.</translation>
    </message>
    <message>
        <source>Lifting: from about 16 kg use two people or a trolley, less at arm&apos;s length. &quot;At least&quot; means that not all of it was weighed.</source>
        <translation>Heben: ab etwa 16 kg zu zweit oder mit Karren, am ausgestreckten Arm schon früher. „Mindestens“ heißt, dass nicht alles gewogen wurde.</translation>
    </message>
    <message>
        <source>Moss: sphagnum can carry a skin infection (sporotrichosis); gloves protect.</source>
        <translation>Moos: Sphagnum kann eine Hautinfektion übertragen (Sporotrichose); Handschuhe schützen.</translation>
    </message>
    <message>
        <source>Bark and potting media can carry Legionella: wet gently without spray, mask and gloves, open the bag away from the face, wash hands.</source>
        <translation>Rinde und Substrate können Legionellen enthalten: sanft ohne Sprühnebel nässen, Maske und Handschuhe, den Sack vom Gesicht weg öffnen, Hände waschen.</translation>
    </message>
    <message>
        <source>Vermiculite from old or unknown bags: some held asbestos. Leave it closed, do not sieve it.</source>
        <translation>Vermiculit aus alten oder unbekannten Säcken: Manches enthielt Asbest. Geschlossen lassen, nicht sieben.</translation>
    </message>
    <message>
        <source>Perlite: wet it before pouring.</source>
        <translation>Perlit: vor dem Schütten nässen.</translation>
    </message>
    <message>
        <source>General information; the products&apos; safety sheets, local codes and qualified advice prevail.</source>
        <translation>Allgemeine Hinweise; die Sicherheitsdatenblätter der Produkte, örtliche Vorschriften und fachkundiger Rat gehen vor.</translation>
    </message>
    <message>
        <source>pot of {tree}</source>
        <translation>Schale von {tree}</translation>
    </message>
    <message>
        <source>Wet the grain, so that it is damp and makes no dust</source>
        <translation>Das Korn nässen, damit es feucht ist und nicht staubt</translation>
    </message>
    <message>
        <source>Cut mesh and wire for 1 pot</source>
        <translation>Netz und Draht für 1 Schale zuschneiden</translation>
    </message>
    <message>
        <source>Cut mesh and wire for {count} pots</source>
        <translation>Netz und Draht für {count} Schalen zuschneiden</translation>
    </message>
    <message>
        <source>Set out cutters, hooks, sticks, sealing paste, disinfectant</source>
        <translation>Scheren, Haken, Stäbe, Wundverschluss, Desinfektionsmittel bereitlegen</translation>
    </message>
    <message>
        <source>Mix {batches} of {mix}, {litres} in all</source>
        <translation>{batches} {mix} mischen, {litres} insgesamt</translation>
    </message>
    <message>
        <source>1 batch</source>
        <translation>1 Ansatz</translation>
    </message>
    <message>
        <source>{count} batches</source>
        <translation>{count} Ansätze</translation>
    </message>
    <message>
        <source>Mesh over the holes, wire for the tie-down, bottom layer</source>
        <translation>Netz über die Löcher, Draht zum Festbinden, Drainageschicht</translation>
    </message>
    <message>
        <source>Tie the tree down, work the mix in, leave no hollows</source>
        <translation>Den Baum festbinden, die Mischung einarbeiten, keine Hohlräume lassen</translation>
    </message>
    <message>
        <source>Water until the outflow runs clear</source>
        <translation>Gießen, bis klares Wasser abläuft</translation>
    </message>
    <message>
        <source>Disinfect the tools before the next tree</source>
        <translation>Die Werkzeuge vor dem nächsten Baum desinfizieren</translation>
    </message>
    <message>
        <source>Afterwards: shade, no frost, no fertiliser for 3 to 6 weeks</source>
        <translation>Danach: Schatten, kein Frost, 3 bis 6 Wochen kein Dünger</translation>
    </message>
    <message>
        <source>1 tree</source>
        <translation>1 Baum</translation>
    </message>
    <message>
        <source>{count} trees</source>
        <translation>{count} Bäume</translation>
    </message>
    <message>
        <source>The evening before</source>
        <translation>Am Abend davor</translation>
    </message>
    <message>
        <source>In the morning</source>
        <translation>Am Morgen</translation>
    </message>
    <message>
        <source>Trees in working order</source>
        <translation>Bäume in Arbeitsfolge</translation>
    </message>
    <message>
        <source>For each tree</source>
        <translation>Für jeden Baum</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>The season</source>
        <translation>Die Saison</translation>
    </message>
    <message>
        <source>{trees} due by {day}</source>
        <translation>{trees} fällig bis {day}</translation>
    </message>
    <message>
        <source>Batch cards</source>
        <translation>Mischkarten</translation>
    </message>
    <message>
        <source>{count} scoops</source>
        <translation>{count} Schaufeln</translation>
    </message>
    <message>
        <source>{mix}, batch {number} of {count}</source>
        <translation>{mix}, Ansatz {number} von {count}</translation>
    </message>
    <message>
        <source>Gives {litres} of mix</source>
        <translation>Ergibt {litres} Mischung</translation>
    </message>
    <message>
        <source>One scoop is {litres}, struck off level.</source>
        <translation>Eine Schaufel ist {litres}, eben abgestrichen.</translation>
    </message>
    <message>
        <source>For {trees}</source>
        <translation>Für {trees}</translation>
    </message>
    <message>
        <source>mixed, at</source>
        <translation>gemischt, um</translation>
    </message>
    <message>
        <source>made ________, left over ________</source>
        <translation>hergestellt ________, übrig ________</translation>
    </message>
    <message>
        <source>plan {plan}</source>
        <translation>Plan {plan}</translation>
    </message>
    <message>
        <source>score, price (unpriced last), fewer components, names, smaller total, larger parts in the order of the names; a recipe is listed if some component differs by 10 points of loose volume from every better one listed</source>
        <translation>Wertung, Preis (ohne Preis zuletzt), weniger Bestandteile, Namen, kleinere Summe, größere Teile in der Reihenfolge der Namen; ein Rezept steht in der Liste, wenn ein Bestandteil um 10 Punkte des losen Volumens von jedem besseren der Liste abweicht</translation>
    </message>
    <message>
        <source>100 (start - washed out - recovered) / start</source>
        <translation>100 (Anfang - ausgewaschen - wiedergefunden) / Anfang</translation>
    </message>
    <message>
        <source>recovered</source>
        <translation>wiedergefunden</translation>
    </message>
    <message>
        <source>ASTM C136-19: more than 0.3 % is not for acceptance</source>
        <translation>ASTM C136-19: mehr als 0,3 % taugt nicht zur Abnahme</translation>
    </message>
    <message>
        <source>sum of what came off the sieves and the pan / (1 + moisture)</source>
        <translation>Summe dessen, was von Sieben und Boden kam / (1 + Feuchte)</translation>
    </message>
    <message>
        <source>ASTM C566, the form, from memory</source>
        <translation>ASTM C566, die Form, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>the starting mass, before washing, or what was recovered and washed out; crumbs taken off; dry</source>
        <translation>die Ausgangsmasse, vor dem Waschen, oder was wiedergefunden und ausgewaschen wurde; ohne Krümel; trocken</translation>
    </message>
    <message>
        <source>base</source>
        <translation>Grundlage</translation>
    </message>
    <message>
        <source>ASTM C136-19; crumbs: Folk, Petrology of Sedimentary Rocks, p. 32</source>
        <translation>ASTM C136-19; Krümel: Folk, Petrology of Sedimentary Rocks, S. 32</translation>
    </message>
    <message>
        <source>pan</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>ASTM C136-19: the base is the original dry mass, before washing, unless the test says recovered</source>
        <translation>ASTM C136-19: Grundlage ist die ursprüngliche Trockenmasse vor dem Waschen, wenn die Analyse nicht recovered sagt</translation>
    </message>
    <message>
        <source>size at a percent passing, linear in log10(size) between the two sieves around it; never extrapolated</source>
        <translation>Größe bei einem Durchgang, linear in log10(Größe) zwischen den beiden Sieben darum; nie extrapoliert</translation>
    </message>
    <message>
        <source>share that stays on an opening a: G = 1 - exp(-ln 2 (x/a)^s), integrated over each class on log size; two cuts in series multiply; the pan passes</source>
        <translation>Anteil, der auf einer Maschenweite a liegen bleibt: G = 1 - exp(-ln 2 (x/a)^s), über jede Klasse auf log Größe integriert; zwei Trennungen hintereinander multiplizieren sich; der Boden geht durch</translation>
    </message>
    <message>
        <source>100 x mass of the fraction that is finer than each sieve / mass of the fraction</source>
        <translation>100 x Masse der Fraktion, feiner als jedes Sieb / Masse der Fraktion</translation>
    </message>
    <message>
        <source>(mass share / packing density of the fraction) / (1 / packing density of the bag)</source>
        <translation>(Massenanteil / Packungsdichte der Fraktion) / (1 / Packungsdichte des Sacks)</translation>
    </message>
    <message>
        <source>size at a percent passing, linear in log10(size) between the two sieves around it; never extrapolated; the curve of a mix is the sum of its components&apos; curves by mass share</source>
        <translation>Größe bei einem Durchgang, linear in log10(Größe) zwischen den beiden Sieben darum; nie extrapoliert; die Sieblinie einer Mischung ist die Summe der Linien ihrer Bestandteile nach Massenanteil</translation>
    </message>
    <message>
        <source>openings</source>
        <translation>Maschenweiten</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>kept, by mass</source>
        <translation>bleibt, nach Masse</translation>
    </message>
    <message>
        <source>take: in_band and finer within their limits; take after screening: usable within its limit; else other use or complain</source>
        <translation>verwenden: Anteil im Bereich und feinerer Anteil in ihren Grenzen; nach dem Absieben: nutzbarer Anteil in seiner Grenze; sonst anders verwenden oder reklamieren</translation>
    </message>
    <message>
        <source>least wanted, by mass</source>
        <translation>im Bereich, mindestens</translation>
    </message>
    <message>
        <source>most finer</source>
        <translation>feiner, höchstens</translation>
    </message>
    <message>
        <source>least usable</source>
        <translation>nutzbar, mindestens</translation>
    </message>
    <message>
        <source>docs/science/grading.md; the limits are our assumption</source>
        <translation>docs/science/grading.md; die Grenzen sind unsere Annahme</translation>
    </message>
    <message>
        <source>loose litres of the fraction that is kept, per loose litre of bag; by mass share where packing is unknown</source>
        <translation>lose Liter der bleibenden Fraktion je losem Liter des Sacks; nach Massenanteil, wo die Packung unbekannt ist</translation>
    </message>
    <message>
        <source>price / (litres x usable litres of a litre)</source>
        <translation>Preis / (Liter x nutzbare Liter eines Liters)</translation>
    </message>
    <message>
        <source>price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>litres</source>
        <translation>Liter</translation>
    </message>
    <message>
        <source>usable of a litre</source>
        <translation>nutzbar je Liter</translation>
    </message>
    <message>
        <source>100 (passing at the coarse end - passing at the fine end), read linear in log10(size) between sieves</source>
        <translation>100 (Durchgang am groben Ende - Durchgang am feinen Ende), linear in log10(Größe) zwischen Sieben gelesen</translation>
    </message>
    <message>
        <source>share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>(f16 + f50 + f84) / 3, phi = -log2(d/mm), percentiles counted from the coarse end</source>
        <translation>(f16 + f50 + f84) / 3, phi = -log2(d/mm), Perzentile vom groben Ende gezählt</translation>
    </message>
    <message>
        <source>docs/science/calibration.md, bulk density by jug</source>
        <translation>docs/science/calibration.md, Schüttdichte mit dem Krug</translation>
    </message>
    <message>
        <source>docs/science/calibration.md, grain density by displacement; the form of ASTM C127, from memory</source>
        <translation>docs/science/calibration.md, Korndichte durch Verdrängung; die Form von ASTM C127, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>docs/science/ageing.md, crumble test</source>
        <translation>docs/science/ageing.md, Zerfallstest</translation>
    </message>
    <message>
        <source>jug</source>
        <translation>Krug</translation>
    </message>
    <message>
        <source>with grain</source>
        <translation>mit Korn</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>(with grain - jug) / (1 + moisture) / volume</source>
        <translation>(mit Korn - Krug) / (1 + Feuchte) / Volumen</translation>
    </message>
    <message>
        <source>worked in</source>
        <translation>eingearbeitet</translation>
    </message>
    <message>
        <source>(with grain - jug) / (1 + moisture) / volume worked in</source>
        <translation>(mit Korn - Krug) / (1 + Feuchte) / Volumen eingearbeitet</translation>
    </message>
    <message>
        <source>1 - volume worked in / loose volume</source>
        <translation>1 - Volumen eingearbeitet / Volumen lose</translation>
    </message>
    <message>
        <source>loose</source>
        <translation>lose</translation>
    </message>
    <message>
        <source>soaked, dabbed dry</source>
        <translation>eingeweicht, trockengetupft</translation>
    </message>
    <message>
        <source>jug with water</source>
        <translation>Krug mit Wasser</translation>
    </message>
    <message>
        <source>jug with water and grain</source>
        <translation>Krug mit Wasser und Korn</translation>
    </message>
    <message>
        <source>soaked / displaced water, displaced = jug with water + soaked - jug with both, 1 g is 1 mL</source>
        <translation>eingeweicht / verdrängtes Wasser, verdrängt = Krug mit Wasser + eingeweicht - Krug mit beidem, 1 g ist 1 mL</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>trocken</translation>
    </message>
    <message>
        <source>dry / displaced water, displaced = jug with water + soaked - jug with both, 1 g is 1 mL</source>
        <translation>trocken / verdrängtes Wasser, verdrängt = Krug mit Wasser + eingeweicht - Krug mit beidem, 1 g ist 1 mL</translation>
    </message>
    <message>
        <source>(soaked and dabbed dry - dry) / dry</source>
        <translation>(eingeweicht und trockengetupft - trocken) / trocken</translation>
    </message>
    <message>
        <source>docs/science/calibration.md, absorption; the form of ASTM C127, from memory</source>
        <translation>docs/science/calibration.md, Wasseraufnahme; die Form von ASTM C127, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>rounds</source>
        <translation>Runden</translation>
    </message>
    <message>
        <source>share of the mass that left its class: 1 - e^-breakages</source>
        <translation>Anteil der Masse, der seine Klasse verließ: 1 - e^-Brüche</translation>
    </message>
    <message>
        <source>least squares of passing after, by Poisson&apos;s law of breakages and fragments (x/L)^modulus</source>
        <translation>kleinste Quadrate des Durchgangs danach, nach Poissons Gesetz der Brüche und Bruchstücken (x/L)^Modul</translation>
    </message>
    <message>
        <source>miss</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>of the fragments: finer than x is (x/L)^modulus; the smaller, the dustier</source>
        <translation>der Bruchstücke: feiner als x ist (x/L)^Modul; je kleiner, desto staubiger</translation>
    </message>
    <message>
        <source>breakages per round x rounds in a season</source>
        <translation>Brüche je Runde x Runden je Saison</translation>
    </message>
    <message>
        <source>rounds in a season</source>
        <translation>Runden je Saison</translation>
    </message>
    <message>
        <source>what fell through in one more minute / sample; thorough below 0.5 %</source>
        <translation>was in einer weiteren Minute durchfiel / Probe; gründlich unter 0,5 %</translation>
    </message>
    <message>
        <source>fell through</source>
        <translation>durchgefallen</translation>
    </message>
    <message>
        <source>sample</source>
        <translation>Probe</translation>
    </message>
    <message>
        <source>sum of the dry masses / volume of the settled mix</source>
        <translation>Summe der Trockenmassen / Volumen der gesetzten Mischung</translation>
    </message>
    <message>
        <source>voids between grains</source>
        <translation>Hohlräume zwischen Körnern</translation>
    </message>
    <message>
        <source>voids between grains + voids in grains</source>
        <translation>Hohlräume zwischen den Körnern + Poren in den Körnern</translation>
    </message>
    <message>
        <source>between</source>
        <translation>zwischen</translation>
    </message>
    <message>
        <source>(1 - voids between grains) x sum of the water the grains hold: by the water absorption where it is known, else w of the open grain pores</source>
        <translation>(1 - Hohlräume zwischen den Körnern) x Summe des Wassers der Körner: nach der Wasseraufnahme, wo sie bekannt ist, sonst w der offenen Kornporen</translation>
    </message>
    <message>
        <source>m_k = v_k rho_b,k; the grading of the mix is blended by these shares</source>
        <translation>m_k = v_k rho_b,k; die Körnung der Mischung wird nach diesen Anteilen gemischt</translation>
    </message>
    <message>
        <source>parts / sum of parts</source>
        <translation>Teile / Summe der Teile</translation>
    </message>
    <message>
        <source>sum over components of mass share x passing, each curve read linear in log10(size) on its own sieves</source>
        <translation>Summe über die Bestandteile von Massenanteil x Durchgang, jede Linie linear in log10(Größe) auf ihren eigenen Sieben gelesen</translation>
    </message>
    <message>
        <source>E_k / sum E, E_k = mass / grain density</source>
        <translation>E_k / Summe E, E_k = Masse / Korndichte</translation>
    </message>
    <message>
        <source>as passing, by envelope share</source>
        <translation>wie der Durchgang, nach Kornvolumenanteil</translation>
    </message>
    <message>
        <source>1/phi = max over i of U_i (linear dominant class with wedging), each component with the one class beta that gives back its own packing density</source>
        <translation>1/phi = Maximum über i von U_i (linear, herrschende Klasse, mit Verkeilung), jeder Bestandteil mit dem einen Klassen-Beta, das seine eigene Packungsdichte wiedergibt</translation>
    </message>
    <message>
        <source>Yu, Zou &amp; Standish 1996; Kwan, Chan &amp; Wong 2013 (from memory); ±1.5 points of voids</source>
        <translation>Yu, Zou &amp; Standish 1996; Kwan, Chan &amp; Wong 2013 (aus dem Gedächtnis); ±1,5 Punkte der Hohlräume</translation>
    </message>
    <message>
        <source>1 - V/sum v, with V = sum E/phi</source>
        <translation>1 - V/Summe v, mit V = Summe E/phi</translation>
    </message>
    <message>
        <source>1 - phi/(1 - settling)</source>
        <translation>1 - phi/(1 - Setzung)</translation>
    </message>
    <message>
        <source>sum m / sum (m / grain density)</source>
        <translation>Summe m / Summe (m / Korndichte)</translation>
    </message>
    <message>
        <source>filled depth</source>
        <translation>gefüllte Tiefe</translation>
    </message>
    <message>
        <source>mean of theta(z) over the pot, theta(h) = theta_r + (f phi_v - theta_r) mean_j [1 + (h d&apos;_j/k)^n]^-(1-1/n) + water in grains</source>
        <translation>Mittel von theta(z) über die Schale, theta(h) = theta_r + (f phi_v - theta_r) Mittel_j [1 + (h d&apos;_j/k)^n]^-(1-1/n) + Wasser in den Körnern</translation>
    </message>
    <message>
        <source>docs/science/water.md; constants fitted to 29 clean sands of UNSODA 2.0; above 2 mm ±.035 at best, wants a pot test</source>
        <translation>docs/science/water.md; Konstanten an 29 reine Sande von UNSODA 2.0 angepasst; über 2 mm bestenfalls ±0,035, will einen Schalentest</translation>
    </message>
    <message>
        <source>water in grains</source>
        <translation>Wasser in den Körnern</translation>
    </message>
    <message>
        <source>theta at no suction: f of the voids between grains + water in grains</source>
        <translation>theta ohne Saugspannung: f der Hohlräume zwischen den Körnern + Wasser in den Körnern</translation>
    </message>
    <message>
        <source>theta at a suction of 10 cm of water</source>
        <translation>theta bei einer Saugspannung von 10 cm Wasser</translation>
    </message>
    <message>
        <source>theta at a suction of 50 cm of water</source>
        <translation>theta bei einer Saugspannung von 50 cm Wasser</translation>
    </message>
    <message>
        <source>De Boodt &amp; Verdonck 1972, from memory; docs/science/water.md</source>
        <translation>De Boodt &amp; Verdonck 1972, aus dem Gedächtnis; docs/science/water.md</translation>
    </message>
    <message>
        <source>open voids - theta(0): gas a flood does not reach, and grain pores it does not fill</source>
        <translation>offene Hohlräume - theta(0): Gas, das Fluten nicht erreicht, und Kornporen, die es nicht füllt</translation>
    </message>
    <message>
        <source>integral of A(z) from the floor to the fill line</source>
        <translation>Integral von A(z) vom Boden bis zur Füllhöhe</translation>
    </message>
    <message>
        <source>area at the floor</source>
        <translation>Fläche am Boden</translation>
    </message>
    <message>
        <source>area at the fill line</source>
        <translation>Fläche an der Füllhöhe</translation>
    </message>
    <message>
        <source>A(z) of the shape at eleven equal heights from the floor to the fill line</source>
        <translation>A(z) der Form in elf gleichen Höhen vom Boden bis zur Füllhöhe</translation>
    </message>
    <message>
        <source>area halfway up</source>
        <translation>Fläche auf halber Höhe</translation>
    </message>
    <message>
        <source>the water fill overrides the lengths; A(z) is scaled by their ratio</source>
        <translation>die Wasserfüllung geht den Maßen vor; A(z) wird im Verhältnis skaliert</translation>
    </message>
    <message>
        <source>water fill</source>
        <translation>Wasserfüllung</translation>
    </message>
    <message>
        <source>by the lengths</source>
        <translation>nach den Maßen</translation>
    </message>
    <message>
        <source>component = mixed litres x share / (1 - shrinkage), mixed litres = fill / ((1 - settling)(1 - spill)), fill = volume + mound - bottom layer - top dressing</source>
        <translation>Bestandteil = gemischte Liter x Anteil / (1 - Schwund), gemischte Liter = Füllung / ((1 - Setzung)(1 - Streuverlust)), Füllung = Volumen + Kuppe - Drainageschicht - Abdeckung</translation>
    </message>
    <message>
        <source>mound</source>
        <translation>Kuppe</translation>
    </message>
    <message>
        <source>bottom layer</source>
        <translation>Drainageschicht</translation>
    </message>
    <message>
        <source>top dressing</source>
        <translation>Abdeckung</translation>
    </message>
    <message>
        <source>floor to fill line</source>
        <translation>Boden bis Füllhöhe</translation>
    </message>
    <message>
        <source>water poured or weighed to the fill line; the area at every height is scaled to it</source>
        <translation>bis zur Füllhöhe gegossenes oder gewogenes Wasser; die Fläche wird in jeder Höhe darauf skaliert</translation>
    </message>
    <message>
        <source>integral of the inside area from the floor to the fill line</source>
        <translation>Integral der Innenfläche vom Boden bis zur Füllhöhe</translation>
    </message>
    <message>
        <source>water fill / volume by the lengths - 1</source>
        <translation>Wasserfüllung / Volumen nach den Maßen - 1</translation>
    </message>
    <message>
        <source>volume + mound - bottom layer - top dressing</source>
        <translation>Volumen + Kuppe - Drainageschicht - Abdeckung</translation>
    </message>
    <message>
        <source>Plan {plan}, from the front</source>
        <translation>Plan {plan}, von vorn</translation>
    </message>
    <message>
        <source>Plan {plan}, from above</source>
        <translation>Plan {plan}, von oben</translation>
    </message>
    <message>
        <source>soil line</source>
        <translation>Substratlinie</translation>
    </message>
    <message>
        <source>farthest any point of the posed root mass passes the allowed space in a direction, at that point&apos;s height</source>
        <translation>wie weit ein Punkt des gestellten Ballens den erlaubten Raum in einer Richtung höchstens überragt, in der Höhe dieses Punkts</translation>
    </message>
    <message>
        <source>share of the root mass still outside after the straight cuts</source>
        <translation>Anteil des Ballens, der nach den geraden Schnitten noch draußen ist</translation>
    </message>
    <message>
        <source>1 - kept/root mass</source>
        <translation>1 - bleibend/Ballen</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>bleibt</translation>
    </message>
    <message>
        <source>root mass</source>
        <translation>Ballen</translation>
    </message>
    <message>
        <source>kept points farther than the working depth from all that is removed, deeper than combed, connected to the trunk base</source>
        <translation>bleibende Punkte, weiter als die Arbeitstiefe von allem Entfernten, tiefer als ausgekämmt, mit dem Stammfuß verbunden</translation>
    </message>
    <message>
        <source>root mass - kept</source>
        <translation>Ballen - bleibend</translation>
    </message>
    <message>
        <source>fill line + mound at the trunk</source>
        <translation>Füllhöhe + Kuppe am Stamm</translation>
    </message>
    <message>
        <source>fill line</source>
        <translation>Füllhöhe</translation>
    </message>
    <message>
        <source>pot to the fill line + mound - layers - kept root mass under the soil - trunk and stones</source>
        <translation>Schale bis zur Füllhöhe + Kuppe - Schichten - bleibender Ballen unter dem Substrat - Stamm und Steine</translation>
    </message>
    <message>
        <source>pot, mound, less layers</source>
        <translation>Schale, Kuppe, ohne Schichten</translation>
    </message>
    <message>
        <source>kept under the soil</source>
        <translation>bleibt unter dem Substrat</translation>
    </message>
    <message>
        <source>trunk and stones</source>
        <translation>Stamm und Steine</translation>
    </message>
    <message>
        <source>rise over the soil &lt;= level run to the inner rim x tan 35 degrees</source>
        <translation>Anstieg über das Substrat &lt;= waagerechte Strecke zum inneren Rand x tan 35 Grad</translation>
    </message>
    <message>
        <source>rise</source>
        <translation>Anstieg</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>back</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>up</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>down</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>old right</source>
        <translation>alte rechte Seite</translation>
    </message>
    <message>
        <source>old left</source>
        <translation>alte linke Seite</translation>
    </message>
    <message>
        <source>old back</source>
        <translation>alte Rückseite</translation>
    </message>
    <message>
        <source>old front</source>
        <translation>alte Vorderseite</translation>
    </message>
    <message>
        <source>old top</source>
        <translation>alte Oberseite</translation>
    </message>
    <message>
        <source>old bottom</source>
        <translation>alte Unterseite</translation>
    </message>
    <message>
        <source>What limits the fit</source>
        <translation>Was den Sitz begrenzt</translation>
    </message>
    <message>
        <source>Nothing: the root mass fits as it is posed.</source>
        <translation>Nichts: Der Ballen passt, wie er gestellt ist.</translation>
    </message>
    <message>
        <source>After straight cuts {share} of the root mass still stick out at corners.</source>
        <translation>Nach geraden Schnitten ragen noch {share} des Ballens an Ecken heraus.</translation>
    </message>
    <message>
        <source>{length} to the right</source>
        <translation>{length} nach rechts</translation>
    </message>
    <message>
        <source>{length} to the left</source>
        <translation>{length} nach links</translation>
    </message>
    <message>
        <source>{length} to the back</source>
        <translation>{length} nach hinten</translation>
    </message>
    <message>
        <source>{length} to the front</source>
        <translation>{length} nach vorn</translation>
    </message>
    <message>
        <source>in the middle</source>
        <translation>in der Mitte</translation>
    </message>
    <message>
        <source>{one} of the middle</source>
        <translation>{one} von der Mitte</translation>
    </message>
    <message>
        <source>{one} and {other} of the middle</source>
        <translation>{one} und {other} von der Mitte</translation>
    </message>
    <message>
        <source>Comb the {face} {depth} deep</source>
        <translation>{face}: {depth} tief auskämmen</translation>
    </message>
    <message>
        <source>Take {depth} off the {face}, which points {direction}</source>
        <translation>{face}, weist nach {direction}: {depth} abnehmen</translation>
    </message>
    <message>
        <source>Put the tree back into its old pot; the rest after 1 year</source>
        <translation>Den Baum in die alte Schale zurückstellen; der Rest nach 1 Jahr</translation>
    </message>
    <message>
        <source>Put the tree back into its old pot; the rest after {count} years</source>
        <translation>Den Baum in die alte Schale zurückstellen; der Rest nach {count} Jahren</translation>
    </message>
    <message>
        <source>Put the tree back into its old pot</source>
        <translation>Den Baum in die alte Schale zurückstellen</translation>
    </message>
    <message>
        <source>Trunk base {place}, {height} over the floor</source>
        <translation>Stammfuß {place}, {height} über dem Boden</translation>
    </message>
    <message>
        <source>{stand}, turned {angle}</source>
        <translation>{stand}, um {angle} gedreht</translation>
    </message>
    <message>
        <source>{stand}, tipped {angle} toward {toward} (from the pot&apos;s right to its back)</source>
        <translation>{stand}, um {angle} nach {toward} gekippt (von rechts in der Schale nach hinten)</translation>
    </message>
    <message>
        <source>Plan {plan}</source>
        <translation>Plan {plan}</translation>
    </message>
    <message>
        <source>Into another free pot: {pot}</source>
        <translation>In eine andere freie Schale: {pot}</translation>
    </message>
    <message>
        <source>{stop}, then it does not fit: stage it</source>
        <translation>{stop}, dann passt es nicht: in Etappen</translation>
    </message>
    <message>
        <source>If the cut from above comes to an end</source>
        <translation>Wenn der Schnitt von oben ansteht</translation>
    </message>
    <message>
        <source>Root-mass plan</source>
        <translation>Ballenplan</translation>
    </message>
    <message>
        <source>Root-mass plan, into its pot</source>
        <translation>Ballenplan, in seine Schale</translation>
    </message>
    <message>
        <source>Root-mass plan, into {pot}</source>
        <translation>Ballenplan, in {pot}</translation>
    </message>
    <message>
        <source>{title}, root-mass plan</source>
        <translation>{title}, Ballenplan</translation>
    </message>
    <message>
        <source>To scale: hatched comes off, grey stays</source>
        <translation>Im Maßstab: Schraffiertes kommt ab, Graues bleibt</translation>
    </message>
    <message>
        <source>Clean tools for each tree. Some part of the root mass stays untouched; what is combed through is disturbed even where soil clings to it.</source>
        <translation>Saubere Werkzeuge für jeden Baum. Ein Teil des Ballens bleibt unberührt; was ausgekämmt wird, ist gestört, auch wo Substrat daran haftet.</translation>
    </message>
    <message>
        <source>Common practice, general information; qualified advice prevails.</source>
        <translation>Übliche Praxis, allgemeine Hinweise; fachkundiger Rat geht vor.</translation>
    </message>
    <message>
        <source>bin</source>
        <translation>Kiste</translation>
    </message>
    <message>
        <source>fraction</source>
        <translation>Fraktion</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>Baum</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>top</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>the empty pot</source>
        <translation>die leere Schale</translation>
    </message>
    <message>
        <source>the dry pot</source>
        <translation>die trockene Schale</translation>
    </message>
    <message>
        <source>the drained pot</source>
        <translation>die abgetropfte Schale</translation>
    </message>
    <message>
        <source>the mix settles by {percent} % as the jug tests of {bags} say; a jug of the mix itself would say it better</source>
        <translation>die Mischung setzt sich um {percent} %, wie die Krugtests von {bags} sagen; ein Krug der Mischung selbst würde es besser sagen</translation>
    </message>
    <message>
        <source>the mix settles by {percent} %, by your own jug of mix {mix}</source>
        <translation>die Mischung setzt sich um {percent} %, nach dem eigenen Krug der Mischung {mix}</translation>
    </message>
    <message>
        <source>the file lies outside the folder of the file that names it; put it there, or into a folder sieve_tests beside it</source>
        <translation>die Datei liegt außerhalb des Ordners der Datei, die sie nennt; dorthin legen oder in einen Ordner sieve_tests daneben</translation>
    </message>
    <message>
        <source>what this list holds can&apos;t be told from its columns; say which kind of record it lists (on the command line with --kind)</source>
        <translation>was diese Liste enthält, lässt sich an den Spalten nicht erkennen; sagen, welche Art von Einträgen sie führt (auf der Befehlszeile mit --kind)</translation>
    </message>
    <message>
        <source>{left_l} L can&apos;t be left over; expected 0 to what was made</source>
        <translation>{left_l} L können nicht übrig sein; erwartet wird 0 bis zum Hergestellten</translation>
    </message>
    <message>
        <source>{percent} % of what was left untouched last time stays so again; most of it lies before this face: work that half now, as far as the tree bears it</source>
        <translation>{percent} % dessen, was letztes Mal unberührt blieb, bleiben es wieder; das meiste liegt vor dieser Seite: diese Hälfte jetzt bearbeiten, soweit der Baum es verträgt</translation>
    </message>
    <message>
        <source>{percent} % of the soil that was worked last time is worked again; it is to rest, and the other half comes now: most of it lies before this face (common practice)</source>
        <translation>{percent} % des Substrats, das letztes Mal bearbeitet wurde, werden wieder bearbeitet; es soll ruhen, und jetzt kommt die andere Hälfte: Das meiste liegt vor dieser Seite (übliche Praxis)</translation>
    </message>
    <message>
        <source>a tip of {angle_deg} degrees can&apos;t be; expected 0 to 90</source>
        <translation>eine Kippung von {angle_deg} Grad kann nicht sein; erwartet wird 0 bis 90</translation>
    </message>
    <message>
        <source>Plan {plan}, this year, in its old pot, from the front</source>
        <translation>Plan {plan}, dieses Jahr, in der alten Schale, von vorn</translation>
    </message>
    <message>
        <source>Plan {plan}, this year, in its old pot, from above</source>
        <translation>Plan {plan}, dieses Jahr, in der alten Schale, von oben</translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <translation>{low} bis {high}</translation>
    </message>
    <message>
        <source>new mix only, {share} of the pot</source>
        <translation>nur neue Mischung, {share} der Schale</translation>
    </message>
    <message>
        <source>Pot in section: {what}</source>
        <translation>Schale im Schnitt: {what}</translation>
    </message>
    <message>
        <source>filled {height}</source>
        <translation>gefüllt {height}</translation>
    </message>
    <message>
        <source>wet zone {height}</source>
        <translation>Nasszone {height}</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>New mix only</source>
        <translation>Nur neue Mischung</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Water held</source>
        <translation>Gehaltenes Wasser</translation>
    </message>
    <message>
        <source>Wet zone</source>
        <translation>Nasszone</translation>
    </message>
    <message>
        <source>Air and water: {what}</source>
        <translation>Luft und Wasser: {what}</translation>
    </message>
    <message>
        <source>What the kept root mass (hatched) holds is not known; the figures say nothing about it.</source>
        <translation>Was der bleibende Ballen (schraffiert) hält, ist nicht bekannt; die Zahlen sagen nichts darüber.</translation>
    </message>
    <message>
        <source>{text} can&apos;t be read; expected parts and a name, such as 5 akadama, with : between them</source>
        <translation>{text} lässt sich nicht lesen; erwartet werden Teile und ein Name, etwa 5 akadama, mit : dazwischen</translation>
    </message>
    <message>
        <source>{tree} in {pot}</source>
        <translation>{tree} in {pot}</translation>
    </message>
    <message>
        <source>the two sievings have no two sieves in common; sieve both with the same set</source>
        <translation>die beiden Siebungen haben keine zwei Siebe gemeinsam; beide mit demselben Satz sieben</translation>
    </message>
    <message>
        <source>the dry grain outweighs the soaked grain; look at both masses</source>
        <translation>das trockene Korn wiegt mehr als das eingeweichte; beide Massen ansehen</translation>
    </message>
    <message>
        <source>the filled jug weighs no more than the empty one; look at both masses</source>
        <translation>der gefüllte Krug wiegt nicht mehr als der leere; beide Massen ansehen</translation>
    </message>
    <message>
        <source>the grain fills more after working in than before; look at both volumes</source>
        <translation>das Korn füllt nach dem Einarbeiten mehr als davor; beide Volumen ansehen</translation>
    </message>
    <message>
        <source>there is no column called {column}; known here: {known}</source>
        <translation>es gibt keine Spalte namens {column}; hier bekannt: {known}</translation>
    </message>
    <message>
        <source>the disk is full; nothing of this change was written. Make room and try again</source>
        <translation>der Datenträger ist voll; von dieser Änderung wurde nichts geschrieben. Platz schaffen und noch einmal versuchen</translation>
    </message>
    <message>
        <source>the file is empty; look whether it was saved</source>
        <translation>die Datei ist leer; nachsehen, ob sie gespeichert wurde</translation>
    </message>
    <message>
        <source>another program holds the record; try again in a moment</source>
        <translation>ein anderes Programm hält die Aufzeichnung; gleich noch einmal versuchen</translation>
    </message>
    <message>
        <source>the record was written by a newer Gritwright (version {version}, known here: {known}); open it for reading only, or update</source>
        <translation>die Aufzeichnung wurde von einem neueren Gritwright geschrieben (Version {version}, hier bekannt: {known}); nur zum Lesen öffnen oder aktualisieren</translation>
    </message>
    <message>
        <source>this is no Gritwright record; choose a file that ends in .gritwright</source>
        <translation>das ist keine Gritwright-Aufzeichnung; eine Datei wählen, die auf .gritwright endet</translation>
    </message>
    <message>
        <source>the file or its folder can&apos;t be written to; look whose they are, or choose another folder</source>
        <translation>in die Datei oder ihren Ordner lässt sich nicht schreiben; nachsehen, wem sie gehören, oder einen anderen Ordner wählen</translation>
    </message>
    <message>
        <source>the file made trouble ({text}); try again, and if it stays so restore the newest intact backup</source>
        <translation>die Datei machte Schwierigkeiten ({text}); noch einmal versuchen, und wenn es so bleibt, die neueste gute Sicherung wiederherstellen</translation>
    </message>
    <message>
        <source>reading stopped half-way; nothing was done with the file. Try again, or copy it to this machine first</source>
        <translation>das Lesen brach auf halbem Weg ab; mit der Datei wurde nichts getan. Noch einmal versuchen oder sie zuerst auf diesen Rechner kopieren</translation>
    </message>
    <message>
        <source>writing failed; nothing of this change was kept. Look whether the disk is there and has room, and try again</source>
        <translation>das Schreiben misslang; von dieser Änderung wurde nichts behalten. Nachsehen, ob der Datenträger da ist und Platz hat, und noch einmal versuchen</translation>
    </message>
    <message>
        <source>there is no key called {key}; look at its spelling, or leave it out</source>
        <translation>es gibt keinen Schlüssel namens {key}; seine Schreibweise ansehen oder ihn weglassen</translation>
    </message>
    <message>
        <source>sieve set</source>
        <translation>Siebsatz</translation>
    </message>
    <message>
        <source>sieve test</source>
        <translation>Siebanalyse</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>root-mass plan</source>
        <translation>Ballenplan</translation>
    </message>
    <message>
        <source>repotting day</source>
        <translation>Umtopftag</translation>
    </message>
    <message>
        <source>pot test</source>
        <translation>Schalentest</translation>
    </message>
    <message>
        <source>stock entry</source>
        <translation>Vorratsbuchung</translation>
    </message>
    <message>
        <source>log entry</source>
        <translation>Tagebucheintrag</translation>
    </message>
    <message>
        <source>group of trees</source>
        <translation>Baumgruppe</translation>
    </message>
    <message>
        <source>{text} is no group of trees; look at its spelling</source>
        <translation>{text} ist keine Baumgruppe; die Schreibweise ansehen</translation>
    </message>
    <message>
        <source>expected at least one opening</source>
        <translation>erwartet wird mindestens eine Maschenweite</translation>
    </message>
    <message>
        <source>names {text}, which is not in the record; add it there, or take the name out</source>
        <translation>nennt {text}, was nicht in der Aufzeichnung steht; dort hinzufügen oder den Namen herausnehmen</translation>
    </message>
    <message>
        <source>the entry says nothing; write what happened</source>
        <translation>der Eintrag sagt nichts; schreiben, was geschah</translation>
    </message>
    <message>
        <source>not in one go: this year these cuts and back into the old pot, the rest later (years between: {years})</source>
        <translation>nicht in einem Zug: dieses Jahr diese Schnitte und zurück in die alte Schale, der Rest später (Jahre dazwischen: {years})</translation>
    </message>
    <message>
        <source>this is the record itself; choose another name</source>
        <translation>das ist die Aufzeichnung selbst; einen anderen Namen wählen</translation>
    </message>
    <message>
        <source>the record lies in a network folder: it is saved more slowly there, and only one person should work in it at a time</source>
        <translation>die Aufzeichnung liegt in einem Netzordner: Dort speichert sie langsamer, und nur eine Person sollte zugleich darin arbeiten</translation>
    </message>
    <message>
        <source>the record lies in a folder that another program copies elsewhere: let the copying finish before it is opened on another machine</source>
        <translation>die Aufzeichnung liegt in einem Ordner, den ein anderes Programm anderswohin kopiert: das Kopieren beenden lassen, bevor sie auf einem anderen Rechner geöffnet wird</translation>
    </message>
    <message>
        <source>the record was brought to version {version}; a backup was made before</source>
        <translation>die Aufzeichnung wurde auf Version {version} gebracht; davor wurde eine Sicherung angelegt</translation>
    </message>
    <message>
        <source>the record was not there and a new one was made, but there are backups of one of that name; restore the newest if it went missing</source>
        <translation>die Aufzeichnung war nicht da und eine neue wurde angelegt, aber es gibt Sicherungen einer dieses Namens; die neueste wiederherstellen, falls sie verloren ging</translation>
    </message>
    <message>
        <source>the record is of an older version, and the backup before it is brought forward could not be written to {file}; nothing was changed. Choose another backups folder or make room, or open it for reading only</source>
        <translation>die Aufzeichnung ist von einer älteren Version, und die Sicherung vor dem Umstellen ließ sich nicht nach {file} schreiben; nichts wurde verändert. Einen anderen Ordner für Sicherungen wählen, Platz schaffen oder nur zum Lesen öffnen</translation>
    </message>
    <message>
        <source>the record is open for reading only; save a copy of it to write in</source>
        <translation>die Aufzeichnung ist nur zum Lesen geöffnet; zum Schreiben eine Kopie von ihr speichern</translation>
    </message>
    <message>
        <source>Build the shoulder with about {litres} of sphagnum, {height} over the soil</source>
        <translation>Die Schulter mit etwa {litres} Sphagnum bauen, {height} über dem Substrat</translation>
    </message>
    <message>
        <source>dormant</source>
        <translation>ruhend</translation>
    </message>
    <message>
        <source>swelling</source>
        <translation>schwellend</translation>
    </message>
    <message>
        <source>green tips</source>
        <translation>grüne Spitzen</translation>
    </message>
    <message>
        <source>opening</source>
        <translation>öffnend</translation>
    </message>
    <message>
        <source>in leaf</source>
        <translation>belaubt</translation>
    </message>
    <message>
        <source>the mix has no components; put one in</source>
        <translation>die Mischung hat keine Bestandteile; einen hineingeben</translation>
    </message>
    <message>
        <source>a price of {amount} can&apos;t be; expected 0 or more</source>
        <translation>ein Preis von {amount} kann nicht sein; erwartet wird 0 oder mehr</translation>
    </message>
    <message>
        <source>the day has no trees; name at least one</source>
        <translation>der Tag hat keine Bäume; mindestens einen nennen</translation>
    </message>
    <message>
        <source>another {kind} {id} is here already, so nothing was taken in; give this one another number, or let it take the place of the one here</source>
        <translation>ein anderer Eintrag {kind} {id} ist schon hier, darum wurde nichts übernommen; diesem eine andere Nummer geben oder ihn an die Stelle des vorhandenen setzen</translation>
    </message>
    <message>
        <source>another group is called {name} already; choose another name</source>
        <translation>eine andere Gruppe heißt schon {name}; einen anderen Namen wählen</translation>
    </message>
    <message>
        <source>{text} names no record; expected kind and number like bag:K-07</source>
        <translation>{text} nennt keinen Eintrag; erwartet werden Art und Nummer wie bag:K-07</translation>
    </message>
    <message>
        <source>the {kind} {id} exists or existed, and a number is never used again; choose another</source>
        <translation>{kind} {id} gibt es oder gab es schon, und eine Nummer wird nie wieder vergeben; eine andere wählen</translation>
    </message>
    <message>
        <source>{face} (now {direction}) up to {depth} deep</source>
        <translation>{face} (jetzt {direction}) bis zu {depth} tief</translation>
    </message>
    <message>
        <source>Round off the corners along the wall, {share} of the root mass: {where}</source>
        <translation>Die Ecken längs der Wand abrunden, {share} des Ballens: {where}</translation>
    </message>
    <message>
        <source>the new mix already has less than {percent} % air in this pot; a coarser mix or a deeper pot has more</source>
        <translation>schon die neue Mischung hat in dieser Schale weniger als {percent} % Luft; eine gröbere Mischung oder eine tiefere Schale hat mehr</translation>
    </message>
    <message>
        <source>the flooded mass asks for {percent} % of the voids between grains; look at the volume, the grain density and the dry mass</source>
        <translation>die geflutete Masse verlangt {percent} % der Hohlräume zwischen den Körnern; Volumen, Korndichte und Trockenmasse ansehen</translation>
    </message>
    <message>
        <source>the measured litre weight leaves {voids_percent} % of voids between grains, which grain does not do; the predicted voids were used instead: look at the masses and the volume</source>
        <translation>das gemessene Litergewicht lässt {voids_percent} % Hohlräume zwischen den Körnern, was Korn nicht tut; stattdessen wurden die vorhergesagten Hohlräume benutzt: Massen und Volumen ansehen</translation>
    </message>
    <message>
        <source>the crumbled grading is {points} points off any even breaking, so the figures are rough; repeat the test for better ones</source>
        <translation>die Körnung nach dem Zerfall liegt {points} Punkte neben jedem gleichmäßigen Zerbrechen, die Zahlen sind also grob; für bessere den Test wiederholen</translation>
    </message>
    <message>
        <source>the number of rounds is missing or not above 0; type how often it was shaken or frozen</source>
        <translation>die Zahl der Runden fehlt oder liegt nicht über 0; eintragen, wie oft geschüttelt oder gefroren wurde</translation>
    </message>
    <message>
        <source>a grain density of {density_g_l} g/L is above that of its solid, {solid_g_l} g/L; look at the masses and at the mark on the jug</source>
        <translation>eine Korndichte von {density_g_l} g/L liegt über der ihres Feststoffs, {solid_g_l} g/L; die Massen und den Strich am Krug ansehen</translation>
    </message>
    <message>
        <source>a grain density of {density_g_l} g/L is unusual; look at the masses, and was all air let out from between the grains?</source>
        <translation>eine Korndichte von {density_g_l} g/L ist ungewöhnlich; die Massen ansehen, und war alle Luft zwischen den Körnern heraus?</translation>
    </message>
    <message>
        <source>a mass is missing or not above 0; weigh it and type it here</source>
        <translation>eine Masse fehlt oder liegt nicht über 0; wiegen und hier eintragen</translation>
    </message>
    <message>
        <source>the jug would hold {voids_percent} % of voids between grains of {density_g_l} g/L, which loose grain hardly does; look at the volume and at the grain density</source>
        <translation>der Krug hielte {voids_percent} % Hohlräume zwischen Körnern von {density_g_l} g/L, was loses Korn kaum tut; Volumen und Korndichte ansehen</translation>
    </message>
    <message>
        <source>the volume is missing or not above 0; weigh the jug full of water, 1 g is 1 mL</source>
        <translation>das Volumen fehlt oder liegt nicht über 0; den Krug voll Wasser wiegen, 1 g ist 1 mL</translation>
    </message>
    <message>
        <source>the grain density is not known: the mix has mass shares and grading only; measure it by displacement for volumes and porosities</source>
        <translation>die Korndichte ist nicht bekannt: Die Mischung hat nur Massenanteile und Körnung; für Volumen und Porositäten durch Verdrängung messen</translation>
    </message>
    <message>
        <source>the grain density implies a solid of {density_g_l} g/L, outside {low} to {high}: look at it again, or give the solid density</source>
        <translation>die Korndichte setzt einen Feststoff von {density_g_l} g/L voraus, außerhalb von {low} bis {high}: noch einmal ansehen oder die Reindichte angeben</translation>
    </message>
    <message>
        <source>the parts add up to {sum}: if they were meant as percent, look for one that is missing or counted twice</source>
        <translation>die Teile ergeben zusammen {sum}: Waren sie als Prozent gemeint, nach einem suchen, das fehlt oder doppelt zählt</translation>
    </message>
    <message>
        <source>a settling of {percent} % leaves no voids; expected less than {most_percent} %, which is all the grain allows</source>
        <translation>eine Setzung von {percent} % lässt keine Hohlräume; erwartet wird weniger als {most_percent} %, mehr erlaubt das Korn nicht</translation>
    </message>
    <message>
        <source>the solid density of {density_g_l} g/L is outside {low} to {high}: look at it again</source>
        <translation>die Reindichte von {density_g_l} g/L liegt außerhalb von {low} bis {high}: noch einmal ansehen</translation>
    </message>
    <message>
        <source>{sources} sources stand beside {components} components; give each component one, or none of them</source>
        <translation>{sources} Quellen stehen neben {components} Bestandteilen; jedem Bestandteil eine geben oder keinem</translation>
    </message>
    <message>
        <source>measure the grain density of the {component} by displacement: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>die Korndichte von {component} durch Verdrängung messen: Spanne für {figure} von ±{now_points} auf ±{then_points} Punkte</translation>
    </message>
    <message>
        <source>a litre weight of {density_g_l} g/L in the pot is unusual; look at the tare and the volume</source>
        <translation>ein Litergewicht von {density_g_l} g/L in der Schale ist ungewöhnlich; Tara und Volumen ansehen</translation>
    </message>
    <message>
        <source>{mass_g} g can&apos;t be: {what} weighed {least_g} g; weigh both again</source>
        <translation>{mass_g} g kann nicht sein: {what} wog {least_g} g; beide noch einmal wiegen</translation>
    </message>
    <message>
        <source>{caught_ml} mL were caught but only {poured_ml} mL poured; count all the water from the dry mix on</source>
        <translation>{caught_ml} mL wurden aufgefangen, aber nur {poured_ml} mL eingegossen; alles Wasser ab der trockenen Mischung zählen</translation>
    </message>
    <message>
        <source>a volume of {volume_ml} mL can&apos;t be; expected 0 or more</source>
        <translation>ein Volumen von {volume_ml} mL kann nicht sein; erwartet wird 0 oder mehr</translation>
    </message>
    <message>
        <source>no verdict on {from_mm}-{to_mm} mm: the sieves of the test don&apos;t reach both ends; add a sieve at the end that is missing</source>
        <translation>kein Urteil über {from_mm}-{to_mm} mm: Die Siebe der Analyse reichen nicht an beide Enden; ein Sieb an dem fehlenden Ende ergänzen</translation>
    </message>
    <message>
        <source>grain of {size_mm} mm is coarser than the 15 mm the model was made for; make a pot test to know</source>
        <translation>Korn von {size_mm} mm ist gröber als die 15 mm, für die das Modell gemacht wurde; ein Schalentest gibt Gewissheit</translation>
    </message>
    <message>
        <source>a tenth of the mix is {size_mm} mm or finer; dusty mixes are out of the model&apos;s range: screen the dust out, or make a pot test</source>
        <translation>ein Zehntel der Mischung ist {size_mm} mm oder feiner; staubige Mischungen liegen außerhalb des Modells: den Staub absieben oder einen Schalentest machen</translation>
    </message>
    <message>
        <source>{fines_percent} % is finer than the last sieve; fines wash down and clog, so the air shown is too high: screen them out</source>
        <translation>{fines_percent} % sind feiner als das letzte Sieb; Feinanteile werden hinuntergespült und verstopfen, die gezeigte Luft ist also zu hoch: absieben</translation>
    </message>
    <message>
        <source>the sizes leave a gap and the fine part is {fines_percent} %; fine grain fills the voids of the coarse, so the air shown is too high: screen it out, or make a pot test</source>
        <translation>die Größen lassen eine Lücke und der Feinanteil ist {fines_percent} %; feines Korn füllt die Hohlräume des groben, die gezeigte Luft ist also zu hoch: absieben oder einen Schalentest machen</translation>
    </message>
    <message>
        <source>organic, fibrous or soft grain is out of the model&apos;s range; make a pot test to know</source>
        <translation>organisches, faseriges oder weiches Korn liegt außerhalb des Modells; ein Schalentest gibt Gewissheit</translation>
    </message>
    <message>
        <source>the wet zone would reach {perched_cm} cm, above the fill line at {depth_cm} cm: the whole pot stays wet; take a coarser mix or a deeper pot</source>
        <translation>die Nasszone würde {perched_cm} cm erreichen, über die Füllhöhe bei {depth_cm} cm hinaus: Die ganze Schale bleibt nass; eine gröbere Mischung oder eine tiefere Schale nehmen</translation>
    </message>
    <message>
        <source>the band ends at {to_mm} mm, which is not above {from_mm} mm where it starts; give the finer size first</source>
        <translation>der Bereich endet bei {to_mm} mm, was nicht über {from_mm} mm liegt, wo er beginnt; die feinere Größe zuerst angeben</translation>
    </message>
    <message>
        <source>the name {name} is used twice; give one of them another</source>
        <translation>der Name {name} wird zweimal benutzt; einem davon einen anderen geben</translation>
    </message>
    <message>
        <source>{low} is negative; a catalogue figure is 0 or more</source>
        <translation>{low} ist negativ; eine Katalogzahl ist 0 oder mehr</translation>
    </message>
    <message>
        <source>the material has no name; give it one</source>
        <translation>das Material hat keinen Namen; einen angeben</translation>
    </message>
    <message>
        <source>the figure names no source; name one that stands in references.json</source>
        <translation>die Zahl nennt keine Quelle; eine nennen, die in references.json steht</translation>
    </message>
    <message>
        <source>the range runs from {low} down to {high}; write the lower figure first</source>
        <translation>die Spanne geht von {low} hinunter auf {high}; die kleinere Zahl zuerst schreiben</translation>
    </message>
    <message>
        <source>the share {high} is above 1; write 40 % as 0.4</source>
        <translation>der Anteil {high} liegt über 1; 40 % als 0.4 schreiben</translation>
    </message>
    <message>
        <source>references.json lists no source called {source}; add it there, or look at its spelling</source>
        <translation>references.json führt keine Quelle namens {source}; dort ergänzen oder die Schreibweise ansehen</translation>
    </message>
    <message>
        <source>{text} is not known for {key}; look at its spelling, or in schema.json</source>
        <translation>{text} ist für {key} nicht bekannt; die Schreibweise oder schema.json ansehen</translation>
    </message>
    <message>
        <source>no figure uses the source {source}; take it out of references.json, or name it beside its figure</source>
        <translation>keine Zahl benutzt die Quelle {source}; aus references.json nehmen oder bei ihrer Zahl nennen</translation>
    </message>
    <message>
        <source>{value} lies outside its own range {low} to {high}; correct the one that is wrong</source>
        <translation>{value} liegt außerhalb der eigenen Spanne {low} bis {high}; die falsche Zahl berichtigen</translation>
    </message>
    <message>
        <source>the litre weight {bulk_g_l} g/L, dry, is not below the grain density {particle_g_l} g/L, but loose grain has voids; weigh a litre again, or correct the grain density</source>
        <translation>das Litergewicht {bulk_g_l} g/L, trocken, liegt nicht unter der Korndichte {particle_g_l} g/L, loses Korn hat aber Hohlräume; einen Liter noch einmal wiegen oder die Korndichte berichtigen</translation>
    </message>
    <message>
        <source>the litre weight {bulk_g_l} g/L, dry, is not below the solid density {skeletal_g_l} g/L, but loose grain has voids; weigh a litre again, or correct the solid density</source>
        <translation>das Litergewicht {bulk_g_l} g/L, trocken, liegt nicht unter der Reindichte {skeletal_g_l} g/L, loses Korn hat aber Hohlräume; einen Liter noch einmal wiegen oder die Reindichte berichtigen</translation>
    </message>
    <message>
        <source>the grain density {particle_g_l} g/L is above the solid density {skeletal_g_l} g/L, but a grain is no denser than its solid; correct the one that is wrong</source>
        <translation>die Korndichte {particle_g_l} g/L liegt über der Reindichte {skeletal_g_l} g/L, ein Korn ist aber nicht dichter als sein Feststoff; die falsche Zahl berichtigen</translation>
    </message>
    <message>
        <source>there is no material called {name} in the catalogue; write it as one of the nearest: {nearest}</source>
        <translation>im Katalog gibt es kein Material namens {name}; eines der ähnlichsten schreiben: {nearest}</translation>
    </message>
    <message>
        <source>the corner radius {radius_cm} cm is more than half of the shorter side; expected at most {limit_cm} cm</source>
        <translation>der Eckenradius {radius_cm} cm ist mehr als die halbe kürzere Seite; erwartet werden höchstens {limit_cm} cm</translation>
    </message>
    <message>
        <source>a corner radius belongs to a rectangular pot; leave it out here</source>
        <translation>ein Eckenradius gehört zu einer rechteckigen Schale; hier weglassen</translation>
    </message>
    <message>
        <source>the exponent {exponent} differs from {other}; give a pot one exponent</source>
        <translation>der Exponent {exponent} weicht von {other} ab; einer Schale einen Exponenten geben</translation>
    </message>
    <message>
        <source>the fill line lies {freeboard_cm} cm below the rim, but the pot is only {depth_cm} cm deep; measure both again</source>
        <translation>die Füllhöhe liegt {freeboard_cm} cm unter dem Rand, aber die Schale ist nur {depth_cm} cm tief; beide noch einmal messen</translation>
    </message>
    <message>
        <source>bottom layer and top dressing together take {layers_cm} cm of the {filled_cm} cm filled; make them thinner, so that room is left for the mix</source>
        <translation>Drainageschicht und Abdeckung zusammen nehmen {layers_cm} cm der {filled_cm} cm Füllung; dünner machen, damit Platz für die Mischung bleibt</translation>
    </message>
    <message>
        <source>the length is {length_cm} cm; expected 0 or more</source>
        <translation>die Länge ist {length_cm} cm; erwartet wird 0 oder mehr</translation>
    </message>
    <message>
        <source>the mass is {mass_kg} kg; expected 0 or more</source>
        <translation>die Masse ist {mass_kg} kg; erwartet wird 0 oder mehr</translation>
    </message>
    <message>
        <source>the table of areas ends at {height_cm} cm, below the rim at {depth_cm} cm; add a row for the rim</source>
        <translation>die Flächentabelle endet bei {height_cm} cm, unter dem Rand bei {depth_cm} cm; eine Zeile für den Rand ergänzen</translation>
    </message>
    <message>
        <source>the table of areas starts at {height_cm} cm; put a row for the floor, at 0, first</source>
        <translation>die Flächentabelle beginnt bei {height_cm} cm; eine Zeile für den Boden, bei 0, an den Anfang stellen</translation>
    </message>
    <message>
        <source>the height {height_cm} cm follows {before_cm} cm; write the heights from the floor up</source>
        <translation>die Höhe {height_cm} cm folgt auf {before_cm} cm; die Höhen vom Boden aufwärts schreiben</translation>
    </message>
    <message>
        <source>the volume is {volume_ml} mL, which no pot holds; look at its unit</source>
        <translation>das Volumen ist {volume_ml} mL, was keine Schale fasst; die Einheit ansehen</translation>
    </message>
    <message>
        <source>the water fill of {volume_ml} mL is {percent} % of the {lengths_ml} mL that the lengths hold; look at its unit and at the lengths</source>
        <translation>die Wasserfüllung von {volume_ml} mL ist {percent} % der {lengths_ml} mL, die die Maße fassen; Einheit und Maße ansehen</translation>
    </message>
    <message>
        <source>the column {column} stands twice in the header; take one out</source>
        <translation>die Spalte {column} steht zweimal im Kopf; eine herausnehmen</translation>
    </message>
    <message>
        <source>a quote opened here and is never closed; close it, or take it out</source>
        <translation>ein Anführungszeichen geht hier auf und nie zu; es schließen oder herausnehmen</translation>
    </message>
    <message>
        <source>a row follows the pan (line {pan_line}); write the pan as the last row</source>
        <translation>nach dem Boden (Zeile {pan_line}) folgt eine Zeile; den Boden als letzte Zeile schreiben</translation>
    </message>
    <message>
        <source>{found} cells stand here, the header has {expected} columns; take out what is too much, or put a text that holds the separator into quotes</source>
        <translation>hier stehen {found} Zellen, der Kopf hat {expected} Spalten; herausnehmen, was zu viel ist, oder einen Text mit dem Trennzeichen in Anführungszeichen setzen</translation>
    </message>
    <message>
        <source>the name of the file is empty; give one</source>
        <translation>der Name der Datei ist leer; einen angeben</translation>
    </message>
    <message>
        <source>the file is larger than {limit_mb} MB, where a sieve test or a mix is a few kilobytes; look whether it is the one you meant</source>
        <translation>die Datei ist größer als {limit_mb} MB, eine Siebanalyse oder Mischung hat wenige Kilobyte; prüfen, ob es die richtige ist</translation>
    </message>
    <message>
        <source>the grading has no points; give openings with what passes them</source>
        <translation>die Körnung hat keine Punkte; Maschenweiten mit ihrem Siebdurchgang angeben</translation>
    </message>
    <message>
        <source>{coarser_percent} % passes {coarser_mm} mm but {finer_percent} % the finer {finer_mm} mm; correct one of them, passing never falls as the opening grows</source>
        <translation>{coarser_percent} % gehen durch {coarser_mm} mm, aber {finer_percent} % durch die feineren {finer_mm} mm; eine der Zahlen berichtigen, der Siebdurchgang fällt nie mit wachsender Maschenweite</translation>
    </message>
    <message>
        <source>{percent} % passing can&apos;t be; expected 0 to 100</source>
        <translation>{percent} % Siebdurchgang kann nicht sein; erwartet wird 0 bis 100</translation>
    </message>
    <message>
        <source>the file ends before its JSON does; close the last bracket or quote, or save the file again</source>
        <translation>die Datei endet vor ihrem JSON; die letzte Klammer oder das letzte Anführungszeichen schließen oder die Datei neu speichern</translation>
    </message>
    <message>
        <source>brackets are nested deeper than {limit} levels; look whether this is the file you meant</source>
        <translation>Klammern sind tiefer als {limit} Ebenen verschachtelt; prüfen, ob es die richtige Datei ist</translation>
    </message>
    <message>
        <source>the file holds more than {limit} values; look whether this is the file you meant</source>
        <translation>die Datei enthält mehr als {limit} Werte; prüfen, ob es die richtige Datei ist</translation>
    </message>
    <message>
        <source>the key {key} is missing; add it</source>
        <translation>der Schlüssel {key} fehlt; ihn ergänzen</translation>
    </message>
    <message>
        <source>a number is missing here; write it</source>
        <translation>hier fehlt eine Zahl; sie eintragen</translation>
    </message>
    <message>
        <source>{text} is not a number; write it in figures</source>
        <translation>{text} ist keine Zahl; sie in Ziffern eintragen</translation>
    </message>
    <message>
        <source>{text} is too large to be a measured value; look at its decimal point and its unit</source>
        <translation>{text} ist zu groß für einen gemessenen Wert; Dezimalzeichen und Einheit ansehen</translation>
    </message>
    <message>
        <source>{text} is too small to be a measured value; look at its decimal point and its unit</source>
        <translation>{text} ist zu klein für einen gemessenen Wert; Dezimalzeichen und Einheit ansehen</translation>
    </message>
    <message>
        <source>the schema refers to itself without end; mend the reference</source>
        <translation>das Schema verweist endlos auf sich selbst; den Verweis berichtigen</translation>
    </message>
    <message>
        <source>there is no schema called {schema}; look at its spelling, or put it beside the others</source>
        <translation>es gibt kein Schema namens {schema}; die Schreibweise ansehen oder es zu den anderen legen</translation>
    </message>
    <message>
        <source>this fits none of the allowed forms; look in the schema for them</source>
        <translation>das passt zu keiner der erlaubten Formen; sie stehen im Schema</translation>
    </message>
    <message>
        <source>{text} is not one of the allowed values; look in the schema for them</source>
        <translation>{text} ist keiner der erlaubten Werte; sie stehen im Schema</translation>
    </message>
    <message>
        <source>{value} is beyond the limit {limit}; write a value within it</source>
        <translation>{value} liegt jenseits der Grenze {limit}; einen Wert innerhalb schreiben</translation>
    </message>
    <message>
        <source>this fits more than one of the allowed forms; leave out what belongs to the others</source>
        <translation>das passt zu mehr als einer der erlaubten Formen; weglassen, was zu den anderen gehört</translation>
    </message>
    <message>
        <source>the schema uses {keyword}, which is not checked here; say it in another way</source>
        <translation>das Schema benutzt {keyword}, was hier nicht geprüft wird; es anders ausdrücken</translation>
    </message>
    <message>
        <source>{aperture_mm} mm is above the coarsest sieve of the test, {coarsest_mm} mm; how the grain above that is spread is assumed: test with a coarser sieve</source>
        <translation>{aperture_mm} mm liegt über dem gröbsten Sieb der Analyse, {coarsest_mm} mm; wie das Korn darüber verteilt ist, wird angenommen: mit einem gröberen Sieb prüfen</translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm is named twice; name it once</source>
        <translation>die Maschenweite {aperture_mm} mm ist zweimal genannt; sie einmal nennen</translation>
    </message>
    <message>
        <source>the set has no sieve; type at least one opening</source>
        <translation>der Satz hat kein Sieb; mindestens eine Maschenweite eintragen</translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm follows {before_mm} mm; write the sieves from coarse to fine</source>
        <translation>die Maschenweite {aperture_mm} mm folgt auf {before_mm} mm; die Siebe von grob nach fein schreiben</translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm follows {above_mm} mm; write the sieves from coarse to fine</source>
        <translation>die Maschenweite {aperture_mm} mm folgt auf {above_mm} mm; die Siebe von grob nach fein schreiben</translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm stands twice; correct one of them, or take it out</source>
        <translation>die Maschenweite {aperture_mm} mm steht zweimal da; eine berichtigen oder herausnehmen</translation>
    </message>
    <message>
        <source>the litre weight {bulk_g_l} g/L is above the grain density {particle_g_l} g/L; weigh a litre again, or correct the grain density</source>
        <translation>das Litergewicht {bulk_g_l} g/L liegt über der Korndichte {particle_g_l} g/L; einen Liter noch einmal wiegen oder die Korndichte berichtigen</translation>
    </message>
    <message>
        <source>nothing was left on the sieves or in the pan; type what each of them held</source>
        <translation>auf den Sieben und im Boden lag nichts; eintragen, was auf jedem lag</translation>
    </message>
    <message>
        <source>the fractions add up to {sum_g} g, the sample is {sample_g} g; the balance explains only {explained_g} g: weigh them again, or correct the sample&apos;s mass</source>
        <translation>die Fraktionen ergeben zusammen {sum_g} g, die Probe ist {sample_g} g; die Waage erklärt nur {explained_g} g: noch einmal wiegen oder die Probenmasse berichtigen</translation>
    </message>
    <message>
        <source>the tare of {tare_g} g is above the gross mass of {gross_g} g; weigh the empty pan again, or swap the two</source>
        <translation>die Tara von {tare_g} g liegt über der Bruttomasse von {gross_g} g; das leere Gefäß noch einmal wiegen oder beide tauschen</translation>
    </message>
    <message>
        <source>there are more than {limit} rows; write one row for each sieve and one for the pan</source>
        <translation>es sind mehr als {limit} Zeilen; je Sieb eine Zeile schreiben und eine für den Boden</translation>
    </message>
    <message>
        <source>{washed_g} g after washing is more than the {dry_g} g before it; dry and weigh it again, or swap the two</source>
        <translation>{washed_g} g nach dem Waschen ist mehr als die {dry_g} g davor; noch einmal trocknen und wiegen oder beide tauschen</translation>
    </message>
    <message>
        <source>the mass after washing needs the dry mass before washing; give it too</source>
        <translation>die Masse nach dem Waschen braucht die Trockenmasse vor dem Waschen; auch sie angeben</translation>
    </message>
    <message>
        <source>at {aperture_mm} mm the tests run from {least_percent} to {most_percent} % passing; careful repeats stay within {limit_points} points nineteen times of twenty: the samples differ, mix the bag well and sieve another</source>
        <translation>bei {aperture_mm} mm liegen die Analysen zwischen {least_percent} und {most_percent} % Siebdurchgang; sorgfältige Wiederholungen bleiben in neunzehn von zwanzig Fällen innerhalb von {limit_points} Punkten: Die Proben sind verschieden, den Sack gut durchmischen und noch eine sieben</translation>
    </message>
    <message>
        <source>the tests share no range of sieves, so they can&apos;t be pooled; sieve them with the same set</source>
        <translation>die Analysen haben keine Siebe gemeinsam und lassen sich deshalb nicht zusammenfassen; mit demselben Satz sieben</translation>
    </message>
    <message>
        <source>there is no sieve test to pool; give at least one</source>
        <translation>es gibt keine Siebanalyse zum Zusammenfassen; mindestens eine angeben</translation>
    </message>
    <message>
        <source>there is a NUL byte here; choose a text file, this is none</source>
        <translation>hier steht ein NUL-Byte; eine Textdatei wählen, das ist keine</translation>
    </message>
    <message>
        <source>in whole scoops, batches without {grain}: {without} of {batches}; mix them with the others before use, or take a smaller scoop or a larger tub</source>
        <translation>in ganzen Schaufeln fehlt {grain} in {without} von {batches} Ansätzen; sie vor dem Gebrauch mit den anderen mischen oder eine kleinere Schaufel oder größere Wanne nehmen</translation>
    </message>
    <message>
        <source>the mix {text} is named twice; name it once</source>
        <translation>die Mischung {text} ist zweimal genannt; sie einmal nennen</translation>
    </message>
    <message>
        <source>{left_l} L are left of {made_l} L made, so nothing was used; correct one of them</source>
        <translation>{left_l} L sind übrig von {made_l} L hergestellten, es wurde also nichts verbraucht; eine der Zahlen berichtigen</translation>
    </message>
    <message>
        <source>no bag size is known, so bags can&apos;t be counted; {raw_l} L of raw grain are needed: type the litres of a bag</source>
        <translation>es ist keine Sackgröße bekannt, deshalb lassen sich Säcke nicht zählen; {raw_l} L Rohkorn sind nötig: die Liter eines Sacks eintragen</translation>
    </message>
    <message>
        <source>neither fill_ml nor a pot says how much mix the tree takes; give one of them</source>
        <translation>weder fill_ml noch eine Schale sagt, wie viel Mischung der Baum braucht; eines davon angeben</translation>
    </message>
    <message>
        <source>{day} lies outside the tree&apos;s window, {opens} to {closes}; choose a day within it, or go by the buds</source>
        <translation>{day} liegt außerhalb des Zeitfensters des Baums, {opens} bis {closes}; einen Tag darin wählen oder nach den Knospen gehen</translation>
    </message>
    <message>
        <source>{reserved_l} L of it are promised to other days, so that {short_l} L are short here; screen or buy them</source>
        <translation>{reserved_l} L davon sind anderen Tagen versprochen, deshalb fehlen hier {short_l} L; sie absieben oder kaufen</translation>
    </message>
    <message>
        <source>the scoop of {scoop_l} L is larger than the tub of {tub_l} L; take a smaller scoop or a larger tub</source>
        <translation>die Schaufel von {scoop_l} L ist größer als die Wanne von {tub_l} L; eine kleinere Schaufel oder eine größere Wanne nehmen</translation>
    </message>
    <message>
        <source>{short_l} L of ready grain are short; screen or buy {raw_l} L of raw grain</source>
        <translation>{short_l} L fertiges Korn fehlen; {raw_l} L Rohkorn absieben oder kaufen</translation>
    </message>
    <message>
        <source>how much of it is left is not known; enough was assumed: count it</source>
        <translation>wie viel davon übrig ist, ist nicht bekannt; es wurde genug angenommen: nachzählen</translation>
    </message>
    <message>
        <source>the tree {text} stands twice in the day; take it out once</source>
        <translation>der Baum {text} steht zweimal am Tag; einmal herausnehmen</translation>
    </message>
    <message>
        <source>the day has no mix called {text}; look at its spelling, or add it</source>
        <translation>der Tag hat keine Mischung namens {text}; die Schreibweise ansehen oder sie ergänzen</translation>
    </message>
    <message>
        <source>the day has no pot called {text}; look at its spelling, or add it</source>
        <translation>der Tag hat keine Schale namens {text}; die Schreibweise ansehen oder sie ergänzen</translation>
    </message>
    <message>
        <source>version {version} can&apos;t be; expected 1 or more</source>
        <translation>Version {version} kann nicht sein; erwartet wird 1 oder mehr</translation>
    </message>
    <message>
        <source>the limits run from {low} down to {high}; write the lower one first</source>
        <translation>die Grenzen gehen von {low} hinunter auf {high}; die kleinere zuerst schreiben</translation>
    </message>
    <message>
        <source>{value} is no whole number; write one without decimals</source>
        <translation>{value} ist keine ganze Zahl; eine ohne Nachkommastellen schreiben</translation>
    </message>
    <message>
        <source>the stock of every candidate is 0, so all are excluded; give the stock of one, or leave it out</source>
        <translation>der Vorrat jedes Kandidaten ist 0, also sind alle ausgeschlossen; den Vorrat eines Kandidaten angeben oder weglassen</translation>
    </message>
    <message>
        <source>no recipe of whole parts is within the stock; ask for fewer litres, or add stock</source>
        <translation>kein Rezept aus ganzen Teilen bleibt im Vorrat; weniger Liter verlangen oder Vorrat ergänzen</translation>
    </message>
    <message>
        <source>no candidate was tested at {aperture_mm} mm, and the curves are not extrapolated; sieve one of them there</source>
        <translation>kein Kandidat wurde bei {aperture_mm} mm geprüft, und die Sieblinien werden nicht extrapoliert; einen davon dort sieben</translation>
    </message>
    <message>
        <source>has no grain density, so the litres it takes are not known; recipes with it count as beyond the stock: measure its grain density</source>
        <translation>hat keine Korndichte, deshalb sind die benötigten Liter nicht bekannt; Rezepte damit gelten als über dem Vorrat: die Korndichte messen</translation>
    </message>
    <message>
        <source>there are {count} candidates; leave some out, at most {most} are searched</source>
        <translation>es sind {count} Kandidaten; einige weglassen, höchstens {most} werden durchsucht</translation>
    </message>
    <message>
        <source>there are {count} wishes; leave some out, at most {most} are weighed</source>
        <translation>es sind {count} Wünsche; einige weglassen, höchstens {most} werden gewichtet</translation>
    </message>
    <message>
        <source>there is no pot called {pot} among the pots; look at its spelling, or add it</source>
        <translation>unter den Schalen gibt es keine namens {pot}; die Schreibweise ansehen oder sie ergänzen</translation>
    </message>
    <message>
        <source>no candidate has the name or family {name}; look at its spelling, or add one</source>
        <translation>kein Kandidat hat den Namen oder die Familie {name}; die Schreibweise ansehen oder einen ergänzen</translation>
    </message>
    <message>
        <source>wish number {wish} cannot hold: every candidate lies beyond its limits on the same side, and so does every mix of them; loosen it, or add another candidate</source>
        <translation>Wunsch Nummer {wish} kann nicht gelten: Jeder Kandidat liegt auf derselben Seite jenseits seiner Grenzen, und so jede Mischung daraus; ihn lockern oder einen weiteren Kandidaten ergänzen</translation>
    </message>
    <message>
        <source>the {kind} {id} stands twice in this file; give one of them another number, or take it out</source>
        <translation>{kind} {id} steht zweimal in dieser Datei; einem davon eine andere Nummer geben oder es herausnehmen</translation>
    </message>
    <message>
        <source>a name is missing here; type one</source>
        <translation>hier fehlt ein Name; einen eintragen</translation>
    </message>
    <message>
        <source>the root-mass plan is empty; fill it in, or leave it out</source>
        <translation>der Ballenplan ist leer; ihn ausfüllen oder weglassen</translation>
    </message>
    <message>
        <source>{number} is no whole number; write one without decimals</source>
        <translation>{number} ist keine ganze Zahl; eine ohne Nachkommastellen schreiben</translation>
    </message>
    <message>
        <source>{text} is no kind of record; look at its spelling, expected the like of bag, mix or tree</source>
        <translation>{text} ist keine Art von Eintrag; die Schreibweise ansehen, erwartet wird etwas wie bag, mix oder tree</translation>
    </message>
    <message>
        <source>the tree {text} stands twice on this day; take it off once</source>
        <translation>der Baum {text} steht zweimal an diesem Tag; einmal herausnehmen</translation>
    </message>
    <message>
        <source>acid lovers bear one of base, sides or surface at a repotting; this plan works more than one: leave the others for another year</source>
        <translation>Säureliebende vertragen beim Umtopfen eines von Boden, Seiten oder Oberfläche; dieser Plan bearbeitet mehr als eines: die anderen für ein anderes Jahr lassen</translation>
    </message>
    <message>
        <source>the tree was bare-rooted last time, which it does not bear at every repotting; keep a core this time</source>
        <translation>der Baum war beim letzten Mal wurzelnackt, was er nicht bei jedem Umtopfen verträgt; diesmal einen Kern lassen</translation>
    </message>
    <message>
        <source>{clearance_cm} cm of new mix there leave no room; the pot allows less than {limit_cm} cm</source>
        <translation>{clearance_cm} cm neue Mischung dort lassen keinen Raum; die Schale erlaubt weniger als {limit_cm} cm</translation>
    </message>
    <message>
        <source>combing {depth_cm} cm deep goes past the middle; comb at most half of it, {limit_cm} cm</source>
        <translation>{depth_cm} cm tief auskämmen geht über die Mitte; höchstens den halben Ballen auskämmen, {limit_cm} cm</translation>
    </message>
    <message>
        <source>the direction {direction} stands twice; take one out</source>
        <translation>die Richtung {direction} steht zweimal da; eine herausnehmen</translation>
    </message>
    <message>
        <source>only a rounded root mass has an exponent; leave it out</source>
        <translation>nur ein gerundeter Ballen hat einen Exponenten; ihn weglassen</translation>
    </message>
    <message>
        <source>the old face {face} stands twice; take one out</source>
        <translation>die alte Seite {face} steht zweimal da; eine herausnehmen</translation>
    </message>
    <message>
        <source>it would fit, but more would come off, or less stay untouched, than the group bears; take a larger pot</source>
        <translation>es würde passen, aber es käme mehr ab oder bliebe weniger unberührt, als die Gruppe verträgt; eine größere Schale nehmen</translation>
    </message>
    <message>
        <source>between the lowest level {lowest_cm} cm and the fill line {highest_cm} cm is no room for a root mass; make the bottom layer or the new mix below thinner, or fill higher</source>
        <translation>zwischen der tiefsten Lage {lowest_cm} cm und der Füllhöhe {highest_cm} cm ist kein Raum für einen Ballen; die Drainageschicht oder die neue Mischung unten dünner machen oder höher füllen</translation>
    </message>
    <message>
        <source>{percent} % comes off; the group bears {limit_percent} %: take less off, or take a larger pot</source>
        <translation>{percent} % kommen ab; die Gruppe verträgt {limit_percent} %: weniger wegnehmen oder eine größere Schale nehmen</translation>
    </message>
    <message>
        <source>{percent} % comes off; more than 70 % is never advised: take less off, or take a larger pot</source>
        <translation>{percent} % kommen ab; mehr als 70 % werden nie empfohlen: weniger wegnehmen oder eine größere Schale nehmen</translation>
    </message>
    <message>
        <source>the least tip {angle_deg} degrees is above the tip {tip_deg} degrees; make it smaller</source>
        <translation>die kleinste Kippung {angle_deg} Grad liegt über der Kippung {tip_deg} Grad; sie verkleinern</translation>
    </message>
    <message>
        <source>{percent} % stays untouched; the group wants {limit_percent} %: cut and comb less, or take a larger pot</source>
        <translation>{percent} % bleiben unberührt; die Gruppe will {limit_percent} %: weniger schneiden und auskämmen oder eine größere Schale nehmen</translation>
    </message>
    <message>
        <source>neither a due day nor a last repotting with an interval says when it is due, so it is not counted; write one of them down</source>
        <translation>weder ein fälliger Tag noch ein letztes Umtopfen mit Abstand sagt, wann er fällig ist, er zählt also nicht mit; eines davon aufschreiben</translation>
    </message>
    <message>
        <source>a count needs what was found; type it, 0 if nothing is left</source>
        <translation>eine Zählung braucht, was gefunden wurde; es eintragen, 0 wenn nichts mehr da ist</translation>
    </message>
    <message>
        <source>litres need the litre weight they were turned into grams with; give it too</source>
        <translation>Liter brauchen das Litergewicht, mit dem sie zu Gramm wurden; auch es angeben</translation>
    </message>
    <message>
        <source>litres of {id} can&apos;t be turned into grams: its litre weight is not known; weigh it, or measure its litre weight</source>
        <translation>Liter von {id} lassen sich nicht in Gramm umrechnen: das Litergewicht ist nicht bekannt; wiegen oder das Litergewicht messen</translation>
    </message>
    <message>
        <source>{change_g} g does not suit the reason; write what goes away as negative, what comes as positive</source>
        <translation>{change_g} g passt nicht zum Grund; was weggeht negativ schreiben, was kommt positiv</translation>
    </message>
    <message>
        <source>{text} stands behind {before}; write the repottings from the oldest to the newest</source>
        <translation>{text} steht hinter {before}; die Umtopfungen vom ältesten zum neuesten schreiben</translation>
    </message>
    <message>
        <source>box {box} of the untouched part ends before it begins; swap its ends</source>
        <translation>Kasten {box} des unberührten Teils endet, bevor er beginnt; die Enden tauschen</translation>
    </message>
    <message>
        <source>the boxes have {count} numbers; write six for each</source>
        <translation>die Kästen haben {count} Zahlen; für jeden sechs schreiben</translation>
    </message>
    <message>
        <source>the clock of this machine stands before the last entry ({time}); set it right, entries keep their order all the same</source>
        <translation>die Uhr dieses Rechners steht vor dem letzten Eintrag ({time}); sie richtig stellen, die Einträge behalten trotzdem ihre Reihenfolge</translation>
    </message>
    <message>
        <source>there is no {kind} {id}; look at its number</source>
        <translation>es gibt kein {kind} {id}; die Nummer ansehen</translation>
    </message>
    <message>
        <source>the file or its folder can&apos;t be written to; the record is open for reading only: save a copy of it to write in</source>
        <translation>in die Datei oder ihren Ordner lässt sich nicht schreiben; die Aufzeichnung ist nur zum Lesen geöffnet: zum Schreiben eine Kopie davon speichern</translation>
    </message>
    <message>
        <source>another window was quicker; the last step is now: {label}. Look at it, and undo again if you mean that</source>
        <translation>ein anderes Fenster war schneller; der letzte Schritt ist jetzt: {label}. Ihn ansehen und noch einmal zurücknehmen, wenn er gemeint ist</translation>
    </message>
    <message>
        <source>Cut straight across the corners, {share} of the root mass: {where}</source>
        <translation>Quer über die Ecken gerade schneiden, {share} des Ballens: {where}</translation>
    </message>
    <message>
        <source>{tree} {reason}</source>
        <translation>{tree} {reason}</translation>
    </message>
    <message>
        <source>tree {tree} has no root-mass plan that can be worked out; plan its root mass first</source>
        <translation>Baum {tree} hat keinen Ballenplan, der sich berechnen lässt; erst seinen Ballen planen</translation>
    </message>
    <message>
        <source>tree {tree} has no plan {text}; its root-mass plan has {plans}</source>
        <translation>Baum {tree} hat keinen Plan {text}; sein Ballenplan hat {plans}</translation>
    </message>
    <message>
        <source>tree {tree} can&apos;t be corrected: its repotting of that day is no longer in its history; take its tick back and tick it again</source>
        <translation>Baum {tree} lässt sich nicht berichtigen: sein Umtopfen an diesem Tag steht nicht mehr in seiner Geschichte; den Haken zurücknehmen und neu setzen</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>: </source>
        <translation>: </translation>
    </message>
    <message>
        <source>height over the floor of the pot up to which the pores stay nine tenths full</source>
        <translation>Höhe über dem Boden der Schale, bis zu der die Poren zu neun Zehnteln voll bleiben</translation>
    </message>
    <message>
        <source>the k that holds the water measured; the water in the grains is known</source>
        <translation>das k, das das gemessene Wasser hält; das Wasser in den Körnern ist bekannt</translation>
    </message>
    <message>
        <source>least (water held - measured)^2/0.02^2 + (ln(k/k0)/0.24)^2 + ((w - w0)/0.15)^2 over k and w</source>
        <translation>kleinstes (gehaltenes Wasser - gemessen)^2/0,02^2 + (ln(k/k0)/0,24)^2 + ((w - w0)/0,15)^2 über k und w</translation>
    </message>
    <message>
        <source>k and w that hold the water measured at two depths</source>
        <translation>k und w, die das in zwei Tiefen gemessene Wasser halten</translation>
    </message>
    <message>
        <source>wet mix + kept root mass + tree + pot + layers; wet mix = fill x (litre weight + 1000 g/L x water held)</source>
        <translation>nasse Mischung + bleibender Ballen + Baum + Schale + Schichten; nasse Mischung = Füllung x (Litergewicht + 1000 g/L x gehaltenes Wasser)</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>buds</source>
        <translation>Knospen</translation>
    </message>
    <message>
        <source>helper</source>
        <translation>Helfer</translation>
    </message>
    <message>
        <source>pour</source>
        <translation>einfüllen</translation>
    </message>
    <message>
        <source>scoops</source>
        <translation>Schaufeln</translation>
    </message>
    <message>
        <source>layers</source>
        <translation>Schichten</translation>
    </message>
    <message>
        <source>done: plan, litres, note</source>
        <translation>erledigt: Plan, Liter, Notiz</translation>
    </message>
    <message>
        <source>grain</source>
        <translation>Korn</translation>
    </message>
    <message>
        <source>quarts</source>
        <translation>Quarts</translation>
    </message>
    <message>
        <source>in the pots</source>
        <translation>in den Schalen</translation>
    </message>
    <message>
        <source>to mix</source>
        <translation>zu mischen</translation>
    </message>
    <message>
        <source>batches</source>
        <translation>Ansätze</translation>
    </message>
    <message>
        <source>made</source>
        <translation>hergestellt</translation>
    </message>
    <message>
        <source>left over</source>
        <translation>übrig</translation>
    </message>
    <message>
        <source>to have ready</source>
        <translation>bereitzuhalten</translation>
    </message>
    <message>
        <source>for</source>
        <translation>für</translation>
    </message>
    <message>
        <source>raw</source>
        <translation>roh</translation>
    </message>
    <message>
        <source>usable</source>
        <translation>nutzbar</translation>
    </message>
    <message>
        <source>short of</source>
        <translation>es fehlen</translation>
    </message>
    <message>
        <source>one bag</source>
        <translation>ein Sack</translation>
    </message>
    <message>
        <source>buy</source>
        <translation>kaufen</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>wants</source>
        <translation>will</translation>
    </message>
    <message>
        <source>gets</source>
        <translation>bekommt</translation>
    </message>
    <message>
        <source>full and wet</source>
        <translation>voll und nass</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>sum of weight (points missed)^2 over the wishes that need not hold; points: percent of the mass, 100 x shares, 20 g/L, 5 meq/L, 5 % of a price limit; limits and gradings by root mean square over their openings</source>
        <translation>Summe aus Gewicht x (verfehlte Punkte)^2 über die Wünsche, die nicht gelten müssen; Punkte: Prozent der Masse, 100 x Anteile, 20 g/L, 5 meq/L, 5 % einer Preisgrenze; Grenzen und Körnungen im quadratischen Mittel über ihre Maschenweiten</translation>
    </message>
    <message>
        <source>examined + excluded = all recipes; a recipe is excluded only if a lower bound of its score, or a wish that must hold, puts it behind the list</source>
        <translation>durchgerechnet + ausgeschlossen = alle Rezepte; ein Rezept wird nur ausgeschlossen, wenn eine untere Schranke seiner Wertung oder ein Wunsch, der gelten muss, es hinter die Liste stellt</translation>
    </message>
    <message>
        <source>no mix of this grading keeps the measured {capacity_percent} % of water; look at the masses, the volume and the grading</source>
        <translation>keine Mischung dieser Körnung hält die gemessenen {capacity_percent} % Wasser; Massen, Volumen und Körnung ansehen</translation>
    </message>
    <message>
        <source>the two depths contradict each other more than tests of one mix do, so both were weighed against the usual values; repeat one of the tests</source>
        <translation>die beiden Tiefen widersprechen sich mehr, als es Tests einer Mischung tun, deshalb wurden beide gegen die üblichen Werte abgewogen; einen der Tests wiederholen</translation>
    </message>
    <message>
        <source>the fineness modulus reads {aperture_mm} mm off the curve, that sieve was not used; a sieve of {aperture_mm} mm would give it</source>
        <translation>der Feinheitsmodul liest {aperture_mm} mm aus der Sieblinie, dieses Sieb wurde nicht benutzt; ein Sieb von {aperture_mm} mm ergäbe den Wert</translation>
    </message>
    <message>
        <source>the fineness modulus is not defined: {percent} % is finer than the finest sieve, {finest_mm} mm, and it asks for {aperture_mm} mm; a sieve of {aperture_mm} mm would give it</source>
        <translation>der Feinheitsmodul ist nicht definiert: {percent} % sind feiner als das feinste Sieb, {finest_mm} mm, und er verlangt {aperture_mm} mm; ein Sieb von {aperture_mm} mm ergäbe ihn</translation>
    </message>
    <message>
        <source>{percent} % stayed on the coarsest sieve, {aperture_mm} mm; the fineness modulus counts none of it on coarser ones; a coarser sieve would tell</source>
        <translation>{percent} % blieben auf dem gröbsten Sieb liegen, {aperture_mm} mm; der Feinheitsmodul zählt davon nichts auf gröberen; ein gröberes Sieb würde es zeigen</translation>
    </message>
    <message>
        <source>a laboratory figure without a value needs a size outside the sieves used; sieve with a wider set</source>
        <translation>ein Laborkennwert ohne Wert braucht eine Größe außerhalb der benutzten Siebe; mit einem breiteren Satz sieben</translation>
    </message>
    <message>
        <source>by {count} of your pot tests</source>
        <translation>nach {count} eigenen Schalentests</translation>
    </message>
    <message>
        <source>air and water are by {count} of your own pot tests of mix {mix}, the last is {test}</source>
        <translation>Luft und Wasser nach {count} eigenen Schalentests der Mischung {mix}, der letzte ist {test}</translation>
    </message>
    <message>
        <source>by {count} of your pot tests ({dates})</source>
        <translation>nach {count} eigenen Schalentests ({dates})</translation>
    </message>
    <message>
        <source>the exchange capacity of a component is not known, so the mix&apos;s is not either; give it if you need it</source>
        <translation>die Austauschkapazität eines Bestandteils ist nicht bekannt, deshalb auch die der Mischung nicht; bei Bedarf angeben</translation>
    </message>
    <message>
        <source>the solid density is not known: total porosity counts only the pores that take up water; give the solid density for all of them</source>
        <translation>die Reindichte ist nicht bekannt: Die Gesamtporosität zählt nur die Poren, die Wasser aufnehmen; für alle die Reindichte angeben</translation>
    </message>
    <message>
        <source>{percent} % is finer than {aperture_mm} mm and taken as grain of {size_mm} mm; a finer sieve would tell</source>
        <translation>{percent} % sind feiner als {aperture_mm} mm und gelten als Korn von {size_mm} mm; ein feineres Sieb würde es zeigen</translation>
    </message>
    <message>
        <source>this mix has no pot test of its own: air and water lean by {percent} % on pot tests {tests} of mixes {mixes} with {materials}</source>
        <translation>diese Mischung hat keinen eigenen Schalentest: Luft und Wasser stützen sich zu {percent} % auf die Schalentests {tests} der Mischungen {mixes} mit {materials}</translation>
    </message>
    <message>
        <source>{percent} % is coarser than {aperture_mm} mm and taken to end at {top_mm} mm; a coarser sieve would tell</source>
        <translation>{percent} % sind gröber als {aperture_mm} mm und gelten als bis {top_mm} mm reichend; ein gröberes Sieb würde es zeigen</translation>
    </message>
    <message>
        <source>figures that were not given are typical values of the catalogue; measure your own to be sure</source>
        <translation>nicht angegebene Zahlen sind übliche Werte des Katalogs; um sicher zu sein, selbst messen</translation>
    </message>
    <message>
        <source>litres are taken in proportion to mass; screened grain lies looser, so they come out a little low; weigh a litre and measure the grain density</source>
        <translation>Liter gelten als der Masse verhältnisgleich; abgesiebtes Korn liegt lockerer, deshalb kommen sie etwas zu niedrig heraus; einen Liter wiegen und die Korndichte messen</translation>
    </message>
    <message>
        <source>what the screening keeps is {percent} % wanted grain, {finer_percent} % finer</source>
        <translation>was das Absieben behält, ist zu {percent} % gewünschte Körnung, zu {finer_percent} % feiner</translation>
    </message>
    <message>
        <source>the bottom layer&apos;s grain is not known, so the water is computed as if the mix reached the floor; name its grain</source>
        <translation>das Korn der Drainageschicht ist nicht bekannt, deshalb wird das Wasser berechnet, als reichte die Mischung bis zum Boden; das Korn der Schicht nennen</translation>
    </message>
    <message>
        <source>100 x mass that stayed on / base</source>
        <translation>100 x liegen gebliebene Masse / Grundlage</translation>
    </message>
    <message>
        <source>100 (1 - cumulative mass that stayed on / base); cumulative masses are divided, rounded shares never added</source>
        <translation>100 (1 - aufsummierte liegen gebliebene Masse / Grundlage); aufsummierte Massen werden geteilt, nie gerundete Anteile addiert</translation>
    </message>
    <message>
        <source>wanted grain</source>
        <translation>gewünschte Körnung</translation>
    </message>
    <message>
        <source>passing at the coarse end of the wanted grain - passing at its fine end, by mass</source>
        <translation>Durchgang am groben Ende der gewünschten Körnung - Durchgang am feinen Ende, nach Masse</translation>
    </message>
    <message>
        <source>passing at the fine end of the wanted grain, by mass</source>
        <translation>Durchgang am feinen Ende der gewünschten Körnung, nach Masse</translation>
    </message>
    <message>
        <source>wanted grain, its ends at the sieves of the test</source>
        <translation>gewünschte Körnung, ihre Enden an den Sieben der Analyse</translation>
    </message>
    <message>
        <source>passing at the fine end of the wanted grain less what was lost, by mass</source>
        <translation>Durchgang am feinen Ende der gewünschten Körnung ohne das Verlorene, nach Masse</translation>
    </message>
    <message>
        <source>1 - passing at the coarse end of the wanted grain, by mass</source>
        <translation>1 - Durchgang am groben Ende der gewünschten Körnung, nach Masse</translation>
    </message>
    <message>
        <source>sum of cumulative percent that stayed on 0.150, 0.300, 0.600, 1.18, 2.36, 4.75, 9.5, 19.0, 37.5, 75, 150 mm / 100</source>
        <translation>Summe der aufsummierten Rückstände in Prozent auf 0,150, 0,300, 0,600, 1,18, 2,36, 4,75, 9,5, 19,0, 37,5, 75, 150 mm / 100</translation>
    </message>
    <message>
        <source>a rectangle with soft corners needs its exponent (2 is an ellipse, 4 a rectangle with soft corners)</source>
        <translation>ein Rechteck mit weichen Ecken braucht seinen Exponenten (2 ist eine Ellipse, 4 ein Rechteck mit weichen Ecken)</translation>
    </message>
    <message>
        <source>a rounding of {radius_cm} cm at the floor leaves no floor; at most {limit_cm} cm fits here</source>
        <translation>eine Rundung von {radius_cm} cm am Boden lässt keinen Boden; hier passen höchstens {limit_cm} cm</translation>
    </message>
    <message>
        <source>this shape has no edge between floor and wall to round; leave the rounding out, a bowl and a table of areas already hold the curve</source>
        <translation>diese Form hat keine Kante zwischen Boden und Wand zum Runden; die Rundung weglassen, Halbkugelschale und Flächentabelle enthalten die Krümmung schon</translation>
    </message>
    <message>
        <source>the file is damaged; restore the newest intact backup: what was written after it is only in the damaged file, which is kept</source>
        <translation>die Datei ist beschädigt; die neueste unversehrte Sicherung wiederherstellen: Was danach geschrieben wurde, steht nur in der beschädigten Datei, die aufbewahrt wird</translation>
    </message>
    <message>
        <source>the file is not there; look at its name</source>
        <translation>die Datei ist nicht da; ihren Namen ansehen</translation>
    </message>
    <message>
        <source>the file can&apos;t be read; look whose it is, and whether it is a file</source>
        <translation>die Datei lässt sich nicht lesen; nachsehen, wem sie gehört und ob es eine Datei ist</translation>
    </message>
    <message>
        <source>the reference materials were not found; install Gritwright again, or set GRITWRIGHT_DATA to the folder that holds materials/</source>
        <translation>die Referenzmaterialien wurden nicht gefunden; Gritwright neu installieren oder GRITWRIGHT_DATA auf den Ordner setzen, der materials/ enthält</translation>
    </message>
    <message>
        <source>passing ran from {low_percent} to {high_percent} % and was rescaled to 0-100 %; look whether the curve was read off rightly</source>
        <translation>der Durchgang lief von {low_percent} bis {high_percent} % und wurde auf 0-100 % umgerechnet; prüfen, ob die Sieblinie richtig abgelesen wurde</translation>
    </message>
    <message>
        <source>what follows is not JSON; mend it, or save the file again ({text})</source>
        <translation>was folgt, ist kein JSON; berichtigen oder die Datei neu speichern ({text})</translation>
    </message>
    <message>
        <source>litre weight and grain density are not both known: litres rest on a packing density of {packing_density} for one size of grain; weigh a litre and measure the grain density for litres of this bag</source>
        <translation>Litergewicht und Korndichte sind nicht beide bekannt: Die Liter beruhen auf einer Packungsdichte von {packing_density} für Korn einer Größe; für Liter dieses Sacks einen Liter wiegen und die Korndichte messen</translation>
    </message>
    <message>
        <source>no starting mass was given, so the percentages are of the {mass_g} g recovered and a loss would not show; weigh the sample before sieving</source>
        <translation>es wurde keine Ausgangsmasse angegeben, deshalb beziehen sich die Prozente auf die wiedergefundenen {mass_g} g, und ein Verlust fiele nicht auf; die Probe vor dem Sieben wiegen</translation>
    </message>
    <message>
        <source>measured in litres: shares of loose volume stand for shares of mass, as if every fraction lay equally dense; weigh the fractions to be sure</source>
        <translation>in Litern gemessen: Anteile des losen Volumens stehen für Anteile der Masse, als läge jede Fraktion gleich dicht; um sicher zu sein, die Fraktionen wiegen</translation>
    </message>
    <message>
        <source>the fractions outweigh the sample by {percent} %, no more than the balance&apos;s resolution explains; nothing needs doing</source>
        <translation>die Fraktionen wiegen {percent} % mehr als die Probe, nicht mehr, als die Auflösung der Waage erklärt; es ist nichts zu tun</translation>
    </message>
    <message>
        <source>{percent} % of the sample was lost while sieving; look under the sieves, or weigh the sample again: above 0.3 % a laboratory repeats the test</source>
        <translation>{percent} % der Probe gingen beim Sieben verloren; unter den Sieben nachsehen oder die Probe noch einmal wiegen: Über 0.3 % wiederholt ein Labor die Analyse</translation>
    </message>
    <message>
        <source>not defined: {list}; {percent} % passes the coarsest sieve, {aperture_mm} mm; a coarser sieve would define them</source>
        <translation>nicht definiert: {list}; {percent} % gehen durch das gröbste Sieb, {aperture_mm} mm; ein gröberes Sieb würde sie bestimmen</translation>
    </message>
    <message>
        <source>not defined: {list}; {percent} % is finer than the finest sieve, {aperture_mm} mm; a finer sieve would define them</source>
        <translation>nicht definiert: {list}; {percent} % sind feiner als das feinste Sieb, {aperture_mm} mm; ein feineres Sieb würde sie bestimmen</translation>
    </message>
    <message>
        <source>{mass_g} g is a small sample for grain of {size_mm} mm if it is stone; take {least_g} g or more, or type the grain density if it is lighter</source>
        <translation>{mass_g} g sind eine kleine Probe für Korn von {size_mm} mm, wenn es Stein ist; {least_g} g oder mehr nehmen oder die Korndichte eingeben, wenn es leichter ist</translation>
    </message>
    <message>
        <source>{percent} % stayed on the coarsest sieve, {aperture_mm} mm, and is taken to end at {top_mm} mm; a coarser sieve would tell</source>
        <translation>{percent} % blieben auf dem gröbsten Sieb liegen, {aperture_mm} mm, und gelten als bis {top_mm} mm reichend; ein gröberes Sieb würde es zeigen</translation>
    </message>
    <message>
        <source>(1 - voids between grains) x mean porosity of the grains, 1 - grain density/solid density</source>
        <translation>(1 - Hohlräume zwischen den Körnern) x mittlere Porosität der Körner, 1 - Korndichte/Reindichte</translation>
    </message>
    <message>
        <source>sum over components of mass share x exchange capacity in meq/100 g x 10 x litre weight in kg/L</source>
        <translation>Summe über die Bestandteile von Massenanteil x Austauschkapazität in meq/100 g x 10 x Litergewicht in kg/L</translation>
    </message>
    <message>
        <source>litre weight</source>
        <translation>Litergewicht</translation>
    </message>
    <message>
        <source>the packing density all classes of a component share for which the model gives back the component&apos;s own phi = dry litre weight / grain density: V = min over i of (1/phi - G_i)/(1 - F_i - G_i), beta = 1/V</source>
        <translation>die Packungsdichte, die alle Klassen eines Bestandteils teilen und mit der das Modell sein eigenes phi = Litergewicht trocken / Korndichte wiedergibt: V = Minimum über i von (1/phi - G_i)/(1 - F_i - G_i), beta = 1/V</translation>
    </message>
    <message>
        <source>V = sum E/phi of the parts taken as litres, E = loose litres x dry litre weight / grain density</source>
        <translation>V = Summe E/phi der als Liter genommenen Teile, E = lose Liter x Litergewicht trocken / Korndichte</translation>
    </message>
    <message>
        <source>sum m / sum (m / solid density)</source>
        <translation>Summe m / Summe (m / Reindichte)</translation>
    </message>
    <message>
        <source>height of the fill line over the floor: depth - fill line below rim</source>
        <translation>Höhe der Füllhöhe über dem Boden: Tiefe - Gießrand</translation>
    </message>
    <message>
        <source>theta(0) - water held: the share that drains</source>
        <translation>theta(0) - gehaltenes Wasser: der Anteil, der abtropft</translation>
    </message>
    <message>
        <source>water held</source>
        <translation>gehaltenes Wasser</translation>
    </message>
    <message>
        <source>all open voids, between and in grains, - water held</source>
        <translation>alle offenen Hohlräume, zwischen und in den Körnern, - gehaltenes Wasser</translation>
    </message>
    <message>
        <source>water held - theta(50)</source>
        <translation>gehaltenes Wasser - theta(50)</translation>
    </message>
    <message>
        <source>volume of the mix x (litre weight + 1000 g/L x water held)</source>
        <translation>Volumen der Mischung x (Litergewicht + 1000 g/L x gehaltenes Wasser)</translation>
    </message>
    <message>
        <source>the crumble test&apos;s figures can&apos;t be (breakages 0 or more; modulus and rounds in a season above 0); make the test again</source>
        <translation>die Zahlen des Zerfallstests können nicht sein (Brüche 0 oder mehr; Modul und Runden je Saison über 0); den Test wiederholen</translation>
    </message>
    <message>
        <source>the mix was removed after the day was planned; the day keeps it as it was then, until another is chosen at its trees</source>
        <translation>die Mischung wurde nach der Planung des Tages entfernt; der Tag behält sie, wie sie war, bis bei seinen Bäumen eine andere gewählt wird</translation>
    </message>
    <message>
        <source>the mix was changed after the day was planned; the day keeps version {version}, the newest is {newest}: choose it at its trees to take that</source>
        <translation>die Mischung wurde nach der Planung des Tages geändert; der Tag behält Fassung {version}, die neueste ist {newest}: sie bei seinen Bäumen wählen, um sie zu nehmen</translation>
    </message>
    <message>
        <source>a bag of {bag_l} L was assumed, as is usual for the material; type the litres of a bag</source>
        <translation>ein Sack von {bag_l} L wurde angenommen, wie für das Material üblich; die Liter eines Sacks eintragen</translation>
    </message>
    <message>
        <source>no yield was measured, so {percent} % usable was assumed; sieve the bag</source>
        <translation>es wurde keine Ausbeute gemessen, deshalb wurden {percent} % nutzbar angenommen; den Sack sieben</translation>
    </message>
    <message>
        <source>without a root-mass plan all the pot holds was counted, {volume_l} L; plan the root mass, or type the litres</source>
        <translation>ohne Ballenplan wurde alles gezählt, was die Schale fasst, {volume_l} L; den Ballen planen oder die Liter eintragen</translation>
    </message>
    <message>
        <source>the search for wishes that exclude each other was stopped after {seconds} s; those shown do, there may be more</source>
        <translation>die Suche nach Wünschen, die einander ausschließen, wurde nach {seconds} s angehalten; die gezeigten tun es, es kann weitere geben</translation>
    </message>
    <message>
        <source>only wishes about grading and shares were looked through for such that exclude each other, three at a time; wishes about air, water or price may do so too</source>
        <translation>nur Wünsche an Körnung und Anteile wurden darauf durchsucht, ob sie einander ausschließen, drei auf einmal; Wünsche an Luft, Wasser oder Preis können es auch tun</translation>
    </message>
    <message>
        <source>free shares are improved from fixed starts, so a better recipe may exist; search in whole parts for a proof</source>
        <translation>freie Anteile werden von festen Startpunkten aus verbessert, deshalb kann es ein besseres Rezept geben; für einen Beweis in ganzen Teilen suchen</translation>
    </message>
    <message>
        <source>there are {recipes} recipes, too many to try all; the best score may be lower by up to {gap}: allow fewer components or parts for a proof</source>
        <translation>es gibt {recipes} Rezepte, zu viele, um alle durchzurechnen; die beste Wertung kann um bis zu {gap} niedriger sein: für einen Beweis weniger Bestandteile oder Teile erlauben</translation>
    </message>
    <message>
        <source>was not tested at {aperture_mm} mm, which a wish reads; its pan or its coarsest class stands in for what is not known: sieve it there</source>
        <translation>wurde bei {aperture_mm} mm, die ein Wunsch liest, nicht geprüft; Boden oder gröbste Klasse stehen für das Unbekannte: dort sieben</translation>
    </message>
    <message>
        <source>the {kind} {id} can&apos;t be read from the file and was left out; take it in from a backup, or write it anew</source>
        <translation>{kind} {id} lässt sich nicht aus der Datei lesen und wurde ausgelassen; aus einer Sicherung übernehmen oder neu schreiben</translation>
    </message>
    <message>
        <source>this {kind} was corrected since the file was written; it stays as it is here: look which of the two is right</source>
        <translation>{kind}: seit die Datei geschrieben wurde, berichtigt; es bleibt, wie es hier ist: nachsehen, welches von beiden stimmt</translation>
    </message>
    <message>
        <source>as many more lines were corrected since and stay as they are here: {count}</source>
        <translation>so viele weitere Zeilen wurden seither berichtigt und bleiben, wie sie hier sind: {count}</translation>
    </message>
    <message>
        <source>there is no material called {name} in the catalogue, so it is taken as your own; nearest there: {nearest}</source>
        <translation>der Katalog hat kein Material namens {name}, darum gilt es als eigenes; am nächsten dort: {nearest}</translation>
    </message>
    <message>
        <source>comes in as {to}, the next free number: {id} here is another line</source>
        <translation>kommt als {to} herein, die nächste freie Nummer: {id} ist hier eine andere Zeile</translation>
    </message>
    <message>
        <source>as many more lines come in under the next free numbers: {count}</source>
        <translation>so viele weitere Zeilen kommen unter den nächsten freien Nummern herein: {count}</translation>
    </message>
    <message>
        <source>how much room the bare roots take is not known, so the fill is for the whole pot; what is left goes back to stock</source>
        <translation>wie viel Raum die nackten Wurzeln nehmen, ist nicht bekannt, deshalb gilt die Füllung für die ganze Schale; was übrig ist, geht in den Vorrat zurück</translation>
    </message>
    <message>
        <source>a corner would have to be rounded off where nothing may come off; take a larger pot, or turn the tree</source>
        <translation>eine Ecke müsste abgerundet werden, wo nichts weg darf; eine größere Schale nehmen oder den Baum drehen</translation>
    </message>
    <message>
        <source>to fit, {percent} % would have to come off in all; more than 70 % is never advised, not in stages either: take a larger pot</source>
        <translation>damit es passt, müssten insgesamt {percent} % ab; mehr als 70 % werden nie empfohlen, auch nicht in Etappen: eine größere Schale nehmen</translation>
    </message>
    <message>
        <source>nothing is left to fill: root mass, trunk and stones take up all the pot; look at their lengths</source>
        <translation>es bleibt nichts zu füllen: Ballen, Stamm und Steine nehmen die ganze Schale ein; ihre Maße ansehen</translation>
    </message>
    <message>
        <source>a shoulder would be steeper than 35 degrees between rim and root mass; sink the tree, or take a wider pot</source>
        <translation>eine Schulter wäre zwischen Rand und Ballen steiler als 35 Grad; den Baum tiefer setzen oder eine breitere Schale nehmen</translation>
    </message>
    <message>
        <source>after everything that may be done the root mass still sticks out {excess_cm} cm; take a larger pot</source>
        <translation>nach allem, was getan werden darf, ragt der Ballen noch {excess_cm} cm heraus; eine größere Schale nehmen</translation>
    </message>
    <message>
        <source>the wall turns in: roots fill the belly, and later the tree comes out only by cutting; take a pot that opens upward if you can</source>
        <translation>die Wand zieht ein: Wurzeln füllen den Bauch, und später kommt der Baum nur durch Schneiden heraus; wenn möglich eine Schale nehmen, die sich nach oben öffnet</translation>
    </message>
    <message>
        <source>no tree is due by {until}; choose a later day to see the next</source>
        <translation>bis {until} ist kein Baum fällig; einen späteren Tag wählen, um den nächsten zu sehen</translation>
    </message>
    <message>
        <source>the record was changed elsewhere meanwhile; look at it and type yours again</source>
        <translation>die Aufzeichnung wurde inzwischen anderswo geändert; ansehen und die eigene Eingabe wiederholen</translation>
    </message>
    <message>
        <source>the record&apos;s file is damaged; restore the newest intact backup: what was written after it is only in the damaged file, which is kept</source>
        <translation>die Datei der Aufzeichnung ist beschädigt; die neueste unversehrte Sicherung wiederherstellen: Was danach geschrieben wurde, steht nur in der beschädigten Datei, die aufbewahrt wird</translation>
    </message>
    <message>
        <source>{id} may be {text}; write the kind in front, like bag:K-07</source>
        <translation>{id} kann {text} sein; die Art davorschreiben, wie bag:K-07</translation>
    </message>
    <message>
        <source>the lists disagree with the {kind} {id} itself, which is whole: draw them anew with gritwright log check --mend, nothing is lost</source>
        <translation>die Listen stimmen nicht mit {kind} {id} überein, der Eintrag selbst ist heil: sie mit gritwright log check --mend neu aufstellen, nichts geht verloren</translation>
    </message>
    <message>
        <source>another window has this record open and saves it in another way ({mode}); close that window and open the record again</source>
        <translation>ein anderes Fenster hat diese Aufzeichnung offen und speichert sie auf andere Weise ({mode}); jenes Fenster schließen und die Aufzeichnung noch einmal öffnen</translation>
    </message>
    <message>
        <source>there is no record yet; write the first line with gritwright log add, or open the window</source>
        <translation>es gibt noch keine Aufzeichnung; die erste Zeile mit gritwright log add schreiben oder das Fenster öffnen</translation>
    </message>
    <message>
        <source>would be refused today: {fault}</source>
        <translation>würde heute abgelehnt: {fault}</translation>
    </message>
    <message>
        <source>the {kind} {id} can&apos;t be read from the file; take it in from a backup, or write it anew</source>
        <translation>{kind} {id} lässt sich nicht aus der Datei lesen; aus einer Sicherung übernehmen oder neu schreiben</translation>
    </message>
    <message>
        <source>the {kind} {id} was changed elsewhere meanwhile; look at it and type yours again</source>
        <translation>{kind} {id} wurde inzwischen anderswo geändert; ansehen und die eigene Eingabe wiederholen</translation>
    </message>
    <message>
        <source>toward</source>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>sticks out</source>
        <translation>ragt heraus</translation>
    </message>
    <message>
        <source>untouched</source>
        <translation>unberührt</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation>abgenommen</translation>
    </message>
    <message>
        <source>mix in the pot</source>
        <translation>Mischung in der Schale</translation>
    </message>
    <message>
        <source>the upper cut stops at</source>
        <translation>der obere Schnitt stockt bei</translation>
    </message>
    <message>
        <source>then below</source>
        <translation>dann unten</translation>
    </message>
    <message>
        <source>trunk base</source>
        <translation>Stammfuß</translation>
    </message>
    <message>
        <source>{stop} or more</source>
        <translation>{stop} oder mehr</translation>
    </message>
    <message>
        <source>{volume_l} L is too little to mix or measure with; expected {least_l} L or more</source>
        <translation>{volume_l} L sind zu wenig, um darin zu mischen oder damit zu messen; erwartet werden {least_l} L oder mehr</translation>
    </message>
    <message>
        <source>What lies on the shelf is counted by its dry mass and its litre weight, so that a bag can give more or fewer litres than are printed on it.</source>
        <translation>Was im Regal liegt, wird nach Trockenmasse und Litergewicht gezählt; ein Sack kann daher mehr oder weniger Liter geben, als auf ihm stehen.</translation>
    </message>
    <message>
        <source>one and the same pot is planned for {trees}; choose another for all but one, unless you have several of it</source>
        <translation>ein und dieselbe Schale ist für {trees} geplant; für alle bis auf einen eine andere wählen, außer es sind mehrere davon da</translation>
    </message>
    <message>
        <source>the cut passes {depth_cm} cm under the base of the trunk, which would stand bare; take it from below, or enter how far the old top may be taken</source>
        <translation>der Schnitt geht {depth_cm} cm unter dem Stammfuß durch, er stünde frei; unten abnehmen, oder eingeben, wie weit die alte Oberseite gehen darf</translation>
    </message>
    <message>
        <source>new mix for what comes off</source>
        <translation>neue Mischung für das Abgenommene</translation>
    </message>
    <message>
        <source>sum over components of share x price of a loose litre / (1 - shrinkage)</source>
        <translation>Summe über die Bestandteile von Anteil x Preis eines losen Liters / (1 - Schwund)</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>verloren</translation>
    </message>
    <message>
        <source>dry mass</source>
        <translation>Trockenmasse</translation>
    </message>
    <message>
        <source>mean porosity of the grains</source>
        <translation>mittlere Porosität der Körner</translation>
    </message>
    <message>
        <source>water the grains hold</source>
        <translation>Wasser, das die Körner halten</translation>
    </message>
    <message>
        <source>open voids</source>
        <translation>offene Hohlräume</translation>
    </message>
    <message>
        <source>volume of the mix</source>
        <translation>Volumen der Mischung</translation>
    </message>
    <message>
        <source>start</source>
        <translation>Anfang</translation>
    </message>
    <message>
        <source>washed out</source>
        <translation>ausgewaschen</translation>
    </message>
    <message>
        <source>the rest</source>
        <translation>der Rest</translation>
    </message>
    <message>
        <source>Plitt 1971, the form of the partition curve; s is a setting, no published value for sieving by hand was found</source>
        <translation>Plitt 1971, die Form der Trennkurve; s ist eine Einstellung, ein veröffentlichter Wert für das Sieben von Hand wurde nicht gefunden</translation>
    </message>
    <message>
        <source>docs/science/packing.md, one class beta for the bag and its fractions</source>
        <translation>docs/science/packing.md, ein Klassen-Beta für den Sack und seine Fraktionen</translation>
    </message>
    <message>
        <source>dry grain</source>
        <translation>trockenes Korn</translation>
    </message>
    <message>
        <source>dry mass = share x dry grain; litres = loose litres per loose litre x dry grain / litre weight</source>
        <translation>Trockenmasse = Anteil x trockenes Korn; Liter = lose Liter je losem Liter x trockenes Korn / Litergewicht</translation>
    </message>
    <message>
        <source>every pair of openings and every single one; kept: the share between them; usable: what of the bag is kept and wanted; finer in it: what of the kept is finer than wanted; good enough: kept grain within the limits of the verdict</source>
        <translation>jedes Paar von Öffnungen und jede einzelne; bleibt: der Anteil dazwischen; nutzbar: was vom Sack behalten wird und gewünscht ist; feiner darin: was vom Behaltenen feiner ist als gewünscht; gut genug: Korn, das bleibt, innerhalb der Grenzen des Urteils</translation>
    </message>
    <message>
        <source>passing at the coarse end of the wanted grain less what was lost, by mass</source>
        <translation>Durchgang am groben Ende der gewünschten Körnung abzüglich des Verlorenen, nach Masse</translation>
    </message>
    <message>
        <source>saucer</source>
        <translation>Untersetzer</translation>
    </message>
    <message>
        <source>wick</source>
        <translation>Docht</translation>
    </message>
    <message>
        <source>tilt</source>
        <translation>Neigung</translation>
    </message>
    <message>
        <source>docs/science/water.md; constants by pot tests, or as the mix gives them</source>
        <translation>docs/science/water.md; Konstanten nach Schalentests oder wie die Mischung sie angibt</translation>
    </message>
    <message>
        <source>flooded</source>
        <translation>geflutet</translation>
    </message>
    <message>
        <source>drained</source>
        <translation>abgetropft</translation>
    </message>
    <message>
        <source>dry, with the pot</source>
        <translation>trocken, mit der Schale</translation>
    </message>
    <message>
        <source>empty pot</source>
        <translation>leere Schale</translation>
    </message>
    <message>
        <source>poured</source>
        <translation>gegossen</translation>
    </message>
    <message>
        <source>caught</source>
        <translation>aufgefangen</translation>
    </message>
    <message>
        <source>water held, measured</source>
        <translation>gehaltenes Wasser, gemessen</translation>
    </message>
    <message>
        <source>dry mass / volume</source>
        <translation>Trockenmasse / Volumen</translation>
    </message>
    <message>
        <source>a grain breaks lambda times a season by Poisson&apos;s law; what breaks off grain that stayed on L is finer than x with the share (x/L)^m; each season the mix is graded, packed and dosed anew, and its air is theta(0) - water held: the middle, 5 and 95 % of the cases drawn</source>
        <translation>ein Korn zerbricht lambda-mal je Saison nach dem Poisson-Gesetz; was von Korn abbricht, das auf L blieb, ist zum Anteil (x/L)^m feiner als x; jede Saison wird die Mischung neu gestuft, gepackt und dosiert, und ihre Luft ist theta(0) - gehaltenes Wasser: die Mitte, 5 und 95 % der gezogenen Fälle</translation>
    </message>
    <message>
        <source>docs/science/ageing.md; an estimate</source>
        <translation>docs/science/ageing.md; eine Schätzung</translation>
    </message>
    <message>
        <source>taken not to break</source>
        <translation>als nicht zerbrechend angenommen</translation>
    </message>
    <message>
        <source>limit of the hint</source>
        <translation>Grenze für den Hinweis</translation>
    </message>
    <message>
        <source>mean of predicted - measured air over the tests, and the root of its mean square; predicted by the usual constants, so that no test foretells itself</source>
        <translation>Mittel von vorhergesagter - gemessener Luft über die Tests und die Wurzel ihres mittleren Quadrats; vorhergesagt mit den üblichen Konstanten, damit kein Test sich selbst vorhersagt</translation>
    </message>
    <message>
        <source>bags before, oldest first</source>
        <translation>Säcke davor, älteste zuerst</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>mean step</source>
        <translation>mittlerer Schritt</translation>
    </message>
    <message>
        <source>usual from</source>
        <translation>üblich ab</translation>
    </message>
    <message>
        <source>usual to</source>
        <translation>üblich bis</translation>
    </message>
    <message>
        <source>NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2; docs/science/grading.md</source>
        <translation>NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2; docs/science/grading.md</translation>
    </message>
    <message>
        <source>air of the material alone, straight walls so deep; earlier bags in the grain of this one, so that only their gradings differ</source>
        <translation>Luft des Materials allein, gerade Wände, so tief; frühere Säcke mit dem Korn von diesem, damit sich nur ihre Sieblinien unterscheiden</translation>
    </message>
    <message>
        <source>new mix, of the pot</source>
        <translation>neue Mischung, von der Schale</translation>
    </message>
    <message>
        <source>5 and 95 % of its lambda, as factors</source>
        <translation>5 und 95 % seines lambda, als Faktoren</translation>
    </message>
    <message>
        <source>seasons</source>
        <translation>Saisons</translation>
    </message>
    <message>
        <source>the same, with what crumbled off finer than 1 mm at the floor: packed with .55 it clogs the share c of the mix, which then drains nothing; air is (1 - c) x the air of what stands above, as on a wick</source>
        <translation>dasselbe, nur liegt am Boden, was feiner als 1 mm abbrach: mit 0,55 gepackt verstopft es den Anteil c der Mischung, aus dem dann nichts abtropft; die Luft ist (1 - c) x die Luft von dem, was darüber wie auf einem Docht steht</translation>
    </message>
    <message>
        <source>(theta_0 - water in the grains) / voids between grains, not over 1; of several tests their mean</source>
        <translation>(theta_0 - Wasser in den Körnern) / Hohlräume zwischen den Körnern, nicht über 1; bei mehreren Tests ihr Mittel</translation>
    </message>
    <message>
        <source>passing of all samples: their mean by dry mass, equally where one was measured in litres; read linear in log10(size) where one lacked a sieve</source>
        <translation>Durchgang aller Proben: ihr Mittel nach Trockenmasse, zu gleichen Teilen, wo eine in Litern gemessen wurde; linear in log10(Größe) abgelesen, wo einer ein Sieb fehlte</translation>
    </message>
    <message>
        <source>usual: mean of the bags before, to either side 2.66 x the mean step from one to the next, not below 0; a jump: a step beyond 3.267 x the mean step</source>
        <translation>üblich: Mittel der Säcke davor, nach beiden Seiten 2,66 x der mittlere Schritt von einem zum nächsten, nicht unter 0; ein Sprung: ein Schritt über 3,267 x der mittlere Schritt</translation>
    </message>
    <message>
        <source>figure</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>largest usual step</source>
        <translation>größter üblicher Schritt</translation>
    </message>
    <message>
        <source>finer than wanted</source>
        <translation>feiner als gewünscht</translation>
    </message>
    <message>
        <source>air, 6 cm deep</source>
        <translation>Luft, 6 cm tief</translation>
    </message>
    <message>
        <source>new mix only: the pot&apos;s area at each height less that of the kept root mass</source>
        <translation>nur die neue Mischung: die Fläche der Schale in jeder Höhe ohne die des bleibenden Ballens</translation>
    </message>
    <message>
        <source>theta(0) - water held, by the usual constants, so that no test foretells itself</source>
        <translation>theta(0) - gehaltenes Wasser, mit den üblichen Konstanten, damit kein Test sich selbst vorhersagt</translation>
    </message>
    <message>
        <source>packing density of the bag</source>
        <translation>Packungsdichte des Sacks</translation>
    </message>
    <message>
        <source>packing density of what is kept</source>
        <translation>Packungsdichte von dem, was bleibt</translation>
    </message>
    <message>
        <source>{mass_g} g lay on the {aperture_mm} mm sieve, which sieves well up to {limit_g} g; sieve in {goes} goes</source>
        <translation>{mass_g} g lagen auf dem Sieb {aperture_mm} mm, das bis {limit_g} g gut siebt; in {goes} Gängen sieben</translation>
    </message>
</context>
</TS>
