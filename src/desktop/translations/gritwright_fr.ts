<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>Ageing</name>
    <message numerus="yes">
        <source>Likely not below %1 air within %n season(s).</source>
        <translation>
            <numerusform>Probablement pas moins de %1 d’air en %n saison.</numerusform>
            <numerusform>Probablement pas moins de %1 d’air en %n saisons.</numerusform>
        </translation>
    </message>
    <message>
        <source>Likely below %1 air in season %2: a hint for the next repotting, an estimate.</source>
        <translation>Probablement moins de %1 d’air en saison %2&#xa0;: une indication pour le prochain rempotage, une estimation.</translation>
    </message>
    <message>
        <source>Likely below %1 air in season %2 if the crumbs stay: a hint for the next repotting, an estimate.</source>
        <translation>Probablement moins de %1 d’air en saison %2 si les miettes restent&#xa0;: une indication pour le prochain rempotage, une estimation.</translation>
    </message>
    <message>
        <source>Likely below %1 air in season %2 if the crumbs wash down: a hint for the next repotting, an estimate.</source>
        <translation>Probablement moins de %1 d’air en saison %2 si les miettes descendent&#xa0;: une indication pour le prochain rempotage, une estimation.</translation>
    </message>
    <message>
        <source>The years to come need a mix with known grain densities and a pot.</source>
        <translation>Les années à venir demandent un mélange aux densités de grain connues et un pot.</translation>
    </message>
    <message>
        <source>The years to come are being worked out.</source>
        <translation>Les années à venir sont en cours de calcul.</translation>
    </message>
    <message>
        <source>Air in this pot, the middle of the cases: %1 when new; after %2 seasons %3 (%4) if the crumbs stay, %5 (%6) if they wash down. %7</source>
        <translation>Air dans ce pot, le milieu des cas&#xa0;: %1 neuf&#xa0;; après %2 saisons %3 (%4) si les miettes restent, %5 (%6) si elles descendent. %7</translation>
    </message>
    <message>
        <source>By your own crumble test: %1.</source>
        <translation>D’après votre essai d’effritement&#xa0;: %1.</translation>
    </message>
    <message>
        <source>By the catalogue’s typical durability: %1.</source>
        <translation>D’après la durabilité usuelle du catalogue&#xa0;: %1.</translation>
    </message>
    <message>
        <source>season</source>
        <translation>saison</translation>
    </message>
    <message>
        <source>air, crumbs stay</source>
        <translation>air, miettes restées</translation>
    </message>
    <message>
        <source>90 of 100 cases</source>
        <translation>90 cas sur 100</translation>
    </message>
    <message>
        <source>air, crumbs wash down</source>
        <translation>air, miettes descendues</translation>
    </message>
    <message>
        <source>finer than %1</source>
        <translation>plus fin que %1</translation>
    </message>
    <message>
        <source>new</source>
        <translation>nouveau</translation>
    </message>
    <message>
        <source>The new mix already has less than %1 air in this pot; a coarser mix or a deeper pot has more.</source>
        <translation>Le mélange neuf a déjà moins de %1 d’air dans ce pot&#xa0;; un mélange plus gros ou un pot plus profond en a plus.</translation>
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
        <translation>Granulométrie, mélanges et pots pour arbres en contenants peu profonds</translation>
    </message>
    <message>
        <source>Open the demonstration.</source>
        <translation>Ouvrir la démonstration.</translation>
    </message>
    <message>
        <source>Write pictures of the window to DIR and end.</source>
        <translation>Écrire des images de la fenêtre dans DIR, puis quitter.</translation>
    </message>
    <message>
        <source>With --shots: also high contrast, other window and text sizes.</source>
        <translation>Avec --shots&#xa0;: aussi le contraste élevé, d’autres tailles de fenêtre et de texte.</translation>
    </message>
    <message>
        <source>The record to open instead of the usual one.</source>
        <translation>Le registre à ouvrir à la place du registre habituel.</translation>
    </message>
    <message>
        <source>Language of the window: de, en, es, fr or ja.</source>
        <translation>Langue de la fenêtre&#xa0;: de, en, es, fr ou ja.</translation>
    </message>
    <message>
        <source>A record to open instead of the usual one, or sieve tests.</source>
        <translation>Un registre à ouvrir à la place du registre habituel, ou des essais de tamisage.</translation>
    </message>
    <message>
        <source>What lies on the bench could not be saved: look whether the disk is full.</source>
        <translation>Ce qui se trouve sur l’établi n’a pas pu être enregistré&#xa0;: vérifiez si le disque est plein.</translation>
    </message>
</context>
<context>
    <name>BagMaterial</name>
    <message>
        <source>material of bag %1</source>
        <translation>matériau du sac %1</translation>
    </message>
</context>
<context>
    <name>BenchState</name>
    <message>
        <source>Component %1</source>
        <translation>Composant %1</translation>
    </message>
    <message>
        <source>Predicted, in percent of the mass; nothing is weighed yet. Sieve it and type what stays on each sieve: then it can be kept and printed as a test.</source>
        <translation>Prévu, en pour cent de la masse ; rien n’est encore pesé. Tamisez et saisissez ce qui reste sur chaque tamis : il pourra alors être conservé et imprimé comme essai.</translation>
    </message>
</context>
<context>
    <name>Comparison</name>
    <message>
        <source>Nothing to compare yet: keep a mix, or finish the one on the bench.</source>
        <translation>Rien à comparer pour l’instant&#xa0;: conservez un mélange ou terminez celui de l’établi.</translation>
    </message>
    <message>
        <source>%1 holds %2 air and %3 water</source>
        <translation>%1 contient %2 d’air et %3 d’eau</translation>
    </message>
    <message>
        <source>%1 without a pot</source>
        <translation>%1 sans pot</translation>
    </message>
    <message>
        <source>In one pot, %1 deep: %2.</source>
        <translation>Dans un même pot, profond de %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mélange</translation>
    </message>
    <message>
        <source>air</source>
        <translation>air</translation>
    </message>
    <message>
        <source>water</source>
        <translation>eau</translation>
    </message>
    <message>
        <source>finer</source>
        <translation>plus fin</translation>
    </message>
    <message>
        <source>litre weight</source>
        <translation>poids du litre</translation>
    </message>
    <message>
        <source>D50</source>
        <translation>D50</translation>
    </message>
    <message>
        <source>90 of 100</source>
        <translation>90 sur 100</translation>
    </message>
    <message>
        <source>%1 (by pot test %2)</source>
        <translation>%1 (d’après l’essai en pot %2)</translation>
    </message>
    <message>
        <source>%1 (leaning on pot test %2)</source>
        <translation>%1 (appuyé sur l’essai en pot %2)</translation>
    </message>
    <message>
        <source>plants can take</source>
        <translation>pour les plantes</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>voulu</translation>
    </message>
    <message>
        <source>pot tests</source>
        <translation>essais en pot</translation>
    </message>
    <message>
        <source>leaning on %1</source>
        <translation>appuyé sur %1</translation>
    </message>
</context>
<context>
    <name>DayCertainty</name>
    <message>
        <source>from</source>
        <translation>de</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>milieu</translation>
    </message>
    <message>
        <source>to</source>
        <translation>à</translation>
    </message>
    <message>
        <source>mix or loose grain</source>
        <translation>mélange ou grain en vrac</translation>
    </message>
    <message>
        <source>mix %1</source>
        <translation>mélange %1</translation>
    </message>
    <message>
        <source>How sure are the litres? 90 of 100 cases</source>
        <translation>Les litres sont-ils sûrs&#xa0;? 90 cas sur 100</translation>
    </message>
    <message>
        <source>How sure is that? 90 of 100 cases</source>
        <translation>Est-ce sûr&#xa0;? 90 cas sur 100</translation>
    </message>
    <message>
        <source>to buy</source>
        <translation>à acheter</translation>
    </message>
    <message>
        <source>bags of %1</source>
        <translation>sacs de %1</translation>
    </message>
    <message>
        <source>litres of %1</source>
        <translation>litres de %1</translation>
    </message>
    <message>
        <source>%1 may run short: in %2 of 100 cases.</source>
        <translation>%1 peut manquer&#xa0;: dans %2 cas sur 100.</translation>
    </message>
</context>
<context>
    <name>DayGround</name>
    <message>
        <source>is no longer in the record: take it off</source>
        <translation>n’est plus dans le registre&#xa0;: ôtez-le</translation>
    </message>
    <message>
        <source>has no mix yet: choose one</source>
        <translation>n’a pas encore de mélange&#xa0;: choisissez-en un</translation>
    </message>
    <message>
        <source>has neither a pot nor planned litres: give one of them</source>
        <translation>n’a ni pot ni litres prévus&#xa0;: donnez l’un des deux</translation>
    </message>
    <message>
        <source>has a mix that can&apos;t be found: choose another</source>
        <translation>a un mélange introuvable&#xa0;: choisissez-en un autre</translation>
    </message>
</context>
<context>
    <name>DayTicking</name>
    <message>
        <source>Repotted %1 with %2 of %3</source>
        <translation>%1 rempoté avec %2 de %3</translation>
    </message>
    <message>
        <source>, into %1</source>
        <translation>, dans %1</translation>
    </message>
    <message>
        <source>, plan %1</source>
        <translation>, plan %1</translation>
    </message>
    <message>
        <source>ticked off %1</source>
        <translation>%1 coché</translation>
    </message>
    <message>
        <source>Took the tick of %1 back</source>
        <translation>Coche de %1 retirée</translation>
    </message>
    <message>
        <source>tick of %1 taken back</source>
        <translation>coche de %1 retirée</translation>
    </message>
    <message>
        <source>Made %1 of %2, %3 left over, kept as %4</source>
        <translation>%1 de %2 préparés, %3 de reste, conservés sous %4</translation>
    </message>
    <message>
        <source>Corrected: %1</source>
        <translation>Corrigé&#xa0;: %1</translation>
    </message>
    <message>
        <source>tick of %1 corrected</source>
        <translation>coche de %1 corrigée</translation>
    </message>
    <message>
        <source>day of repotting day %1</source>
        <translation>date de la journée de rempotage %1</translation>
    </message>
    <message>
        <source>What was done on %1 was done on %2</source>
        <translation>Ce qui était noté au %1 a été fait le %2</translation>
    </message>
    <message>
        <source>leftover of %1</source>
        <translation>reste de %1</translation>
    </message>
</context>
<context>
    <name>Demonstration</name>
    <message>
        <source>demonstration</source>
        <translation>démonstration</translation>
    </message>
</context>
<context>
    <name>Figures</name>
    <message>
        <source>see the marked fields</source>
        <translation>voir les champs marqués</translation>
    </message>
    <message>
        <source>see the marked fields of the pot</source>
        <translation>voir les champs marqués du pot</translation>
    </message>
    <message>
        <source>Grain of the mix</source>
        <translation>Grain du mélange</translation>
    </message>
    <message>
        <source>D50, half is finer</source>
        <translation>D50, la moitié est plus fine</translation>
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
        <translation>Plus fin qu’elle</translation>
    </message>
    <message>
        <source>Mix, worked in</source>
        <translation>Mélange, mis en place</translation>
    </message>
    <message>
        <source>Swells on mixing by</source>
        <translation>Foisonne au mélange de</translation>
    </message>
    <message>
        <source>Shrinks on mixing by</source>
        <translation>Se réduit au mélange de</translation>
    </message>
    <message>
        <source>Litre weight, dry</source>
        <translation>Poids du litre, sec</translation>
    </message>
    <message>
        <source>Voids between grains</source>
        <translation>Vides entre les grains</translation>
    </message>
    <message>
        <source>Voids in grains</source>
        <translation>Vides dans les grains</translation>
    </message>
    <message>
        <source>Total porosity</source>
        <translation>Porosité totale</translation>
    </message>
    <message>
        <source>Water in grains</source>
        <translation>Eau dans les grains</translation>
    </message>
    <message>
        <source>Exchange capacity</source>
        <translation>Capacité d’échange</translation>
    </message>
    <message>
        <source>unknown for a component</source>
        <translation>inconnue pour un composant</translation>
    </message>
    <message>
        <source>In this pot, %1 deep</source>
        <translation>Dans ce pot, profond de %1</translation>
    </message>
    <message>
        <source>In the pot</source>
        <translation>Dans le pot</translation>
    </message>
    <message>
        <source>Air that drains free</source>
        <translation>Air qui se libère au drainage</translation>
    </message>
    <message>
        <source>Water held</source>
        <translation>Eau retenue</translation>
    </message>
    <message>
        <source>Water plants can take</source>
        <translation>Eau que les plantes prennent</translation>
    </message>
    <message>
        <source>Trapped air, apart</source>
        <translation>Air piégé, à part</translation>
    </message>
    <message>
        <source>Wet zone, height</source>
        <translation>Zone saturée, hauteur</translation>
    </message>
    <message>
        <source>Volume to the fill line</source>
        <translation>Volume jusqu’au niveau</translation>
    </message>
    <message>
        <source>Mix, wet</source>
        <translation>Mélange, mouillé</translation>
    </message>
    <message>
        <source>To measure out for one pot</source>
        <translation>À mesurer pour un pot</translation>
    </message>
    <message>
        <source>Mixed, before filling</source>
        <translation>Mélangé, avant remplissage</translation>
    </message>
    <message>
        <source>Not computed: %1.</source>
        <translation>Non calculé&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Source&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1 parts at %2</source>
        <translation>%1 parts à %2</translation>
    </message>
    <message>
        <source>beta of %1</source>
        <translation>bêta de %1</translation>
    </message>
    <message>
        <source>%1 typical</source>
        <translation>%1 usuel</translation>
    </message>
    <message>
        <source>%1: put its marked fields right</source>
        <translation>%1&#xa0;: corrigez ses champs marqués</translation>
    </message>
    <message>
        <source>%1: finish its sieve test</source>
        <translation>%1&#xa0;: terminez son essai de tamisage</translation>
    </message>
    <message>
        <source>%1: weigh a litre of it</source>
        <translation>%1&#xa0;: pesez-en un litre</translation>
    </message>
    <message>
        <source>give a component parts</source>
        <translation>donnez des parts à un composant</translation>
    </message>
    <message>
        <source>type the pot&apos;s lengths</source>
        <translation>saisissez les longueurs du pot</translation>
    </message>
    <message>
        <source>measure the grain density of each component</source>
        <translation>mesurez la densité des grains de chaque composant</translation>
    </message>
    <message>
        <source>type the wanted grain</source>
        <translation>saisissez le grain voulu</translation>
    </message>
    <message>
        <source>outside the sieves used; a wider set would tell</source>
        <translation>hors des tamis utilisés ; un jeu plus étendu le dirait</translation>
    </message>
    <message>
        <source>Wanted grain, by mass</source>
        <translation>Grain voulu, en masse</translation>
    </message>
    <message>
        <source>saucer %1</source>
        <translation>soucoupe %1</translation>
    </message>
    <message>
        <source>wick %1</source>
        <translation>mèche %1</translation>
    </message>
    <message>
        <source>tilted %1°</source>
        <translation>incliné de %1°</translation>
    </message>
    <message>
        <source>share of %1</source>
        <translation>part de %1</translation>
    </message>
    <message>
        <source>Price of a mixed litre</source>
        <translation>Prix d’un litre mélangé</translation>
    </message>
    <message>
        <source>a component has no price, or they are in several currencies; only bags have one</source>
        <translation>un composant n’a pas de prix, ou ils sont en plusieurs monnaies&#xa0;; seuls les sacs en ont un</translation>
    </message>
    <message>
        <source>passing at %1</source>
        <translation>passant à %1</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>plus de %1</translation>
    </message>
    <message>
        <source>Sum and loss</source>
        <translation>Somme et perte</translation>
    </message>
    <message>
        <source>stayed on %1</source>
        <translation>resté sur %1</translation>
    </message>
    <message>
        <source>packing density of %1</source>
        <translation>compacité de %1</translation>
    </message>
</context>
<context>
    <name>FindParts</name>
    <message>
        <source>the pot&apos;s lengths</source>
        <translation>les dimensions du pot</translation>
    </message>
    <message>
        <source>the wanted grain</source>
        <translation>le grain voulu</translation>
    </message>
    <message>
        <source>a group of trees, or a wish</source>
        <translation>un groupe d’arbres, ou un souhait</translation>
    </message>
    <message>
        <source>an unknown amount, because the figure is not defined</source>
        <translation>une valeur inconnue, car le chiffre n’est pas défini</translation>
    </message>
    <message>
        <source>%1 meq/L</source>
        <translation>%1 meq/L</translation>
    </message>
    <message>
        <source>%1 a litre</source>
        <translation>%1 le litre</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>finer than %1</source>
        <translation>plus fin que %1</translation>
    </message>
    <message>
        <source>share of %1</source>
        <translation>part de %1</translation>
    </message>
    <message numerus="yes">
        <source>curve within its limits at %n size(s)</source>
        <translation>
            <numerusform>courbe dans ses limites à une taille</numerusform>
            <numerusform>courbe dans ses limites à %n tailles</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>curve near its %n point(s)</source>
        <translation>
            <numerusform>courbe proche de son point</numerusform>
            <numerusform>courbe proche de ses %n points</numerusform>
        </translation>
    </message>
    <message>
        <source>exchange capacity</source>
        <translation>capacité d’échange</translation>
    </message>
    <message>
        <source>price</source>
        <translation>prix</translation>
    </message>
    <message>
        <source>air</source>
        <translation>air</translation>
    </message>
    <message>
        <source>water</source>
        <translation>eau</translation>
    </message>
    <message>
        <source>wet litre weight</source>
        <translation>poids du litre mouillé</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 dans %2</translation>
    </message>
    <message>
        <source>Cannot be had: %1.</source>
        <translation>Impossible à obtenir&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Cannot be had together: %1.</source>
        <translation>Impossible à obtenir ensemble&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The search was stopped: these are the best so far, not proven.</source>
        <translation>La recherche a été arrêtée&#xa0;: voici les meilleures jusqu’ici, sans preuve.</translation>
    </message>
    <message>
        <source>Free shares are improved from fixed starts: a better recipe may exist.</source>
        <translation>Les parts libres sont améliorées à partir de départs fixes&#xa0;: une meilleure recette peut exister.</translation>
    </message>
    <message>
        <source>%1 recipes worked out, %2 excluded by bounds</source>
        <translation>%1 recettes calculées, %2 exclues par des bornes</translation>
    </message>
    <message>
        <source>Proven best: %1.</source>
        <translation>Prouvée la meilleure&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Not proven best: %1; the best score may be lower by up to %2.</source>
        <translation>Pas prouvée la meilleure&#xa0;: %1&#xa0;; la meilleure note peut être plus basse de %2 au plus.</translation>
    </message>
    <message>
        <source>%1; no recipe scores less.</source>
        <translation>%1&#xa0;; aucune recette n’a une note plus basse.</translation>
    </message>
    <message>
        <source>Not proven best: %1.</source>
        <translation>Pas prouvée la meilleure&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1 between %2 and %3</source>
        <translation>%1 entre %2 et %3</translation>
    </message>
    <message>
        <source>%1 at least %2</source>
        <translation>%1 au moins %2</translation>
    </message>
    <message>
        <source>%1 at most %2</source>
        <translation>%1 au plus %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>parts, name</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>rank</source>
        <translation>rang</translation>
    </message>
    <message>
        <source>parts</source>
        <translation>parts</translation>
    </message>
    <message>
        <source>misses</source>
        <translation>manque</translation>
    </message>
    <message>
        <source>price/L</source>
        <translation>prix/L</translation>
    </message>
    <message>
        <source>score</source>
        <translation>note</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>nearest</source>
        <translation>proche</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>Misses “%1” by %2.</source>
        <translation>Manque «&#xa0;%1&#xa0;» de %2.</translation>
    </message>
    <message>
        <source>Held back by, right at the limit: %1.</source>
        <translation>Retenue, juste à la limite, par&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Uses up %1.</source>
        <translation>Épuise %1.</translation>
    </message>
    <message>
        <source>%1 is not sieved yet: its printed size stands in for its curve.</source>
        <translation>%1 n’est pas encore tamisé&#xa0;: la taille imprimée tient lieu de courbe.</translation>
    </message>
    <message>
        <source>Holds every wish with room to spare.</source>
        <translation>Respecte tous les souhaits avec de la marge.</translation>
    </message>
    <message>
        <source>The chosen recipe</source>
        <translation>La recette choisie</translation>
    </message>
    <message>
        <source>Air that drains free</source>
        <translation>Air qui se libère au drainage</translation>
    </message>
    <message>
        <source>Water held</source>
        <translation>Eau retenue</translation>
    </message>
    <message>
        <source>Water plants can take</source>
        <translation>Eau que les plantes prennent</translation>
    </message>
    <message>
        <source>Litre weight, dry</source>
        <translation>Poids du litre, sec</translation>
    </message>
    <message>
        <source>Shrinks on mixing by</source>
        <translation>Se réduit au mélange de</translation>
    </message>
    <message>
        <source>Exchange capacity</source>
        <translation>Capacité d’échange</translation>
    </message>
    <message>
        <source>unknown for a component</source>
        <translation>inconnue pour un composant</translation>
    </message>
    <message>
        <source>Price of a mixed litre</source>
        <translation>Prix d’un litre mélangé</translation>
    </message>
    <message>
        <source>Score, 0 is best</source>
        <translation>Note, 0 est la meilleure</translation>
    </message>
    <message>
        <source>No recipe holds every wish that must hold.</source>
        <translation>Aucune recette ne respecte tous les souhaits obligatoires.</translation>
    </message>
    <message>
        <source>No recipe was found that holds every wish that must hold.</source>
        <translation>Aucune recette trouvée ne respecte tous les souhaits obligatoires.</translation>
    </message>
    <message>
        <source>The nearest that can be had is listed.</source>
        <translation>La plus proche possible figure dans la liste.</translation>
    </message>
    <message>
        <source>Another recipe comes first with “%1” %2 stricter or %3 looser.</source>
        <translation>Une autre recette passe devant avec «&#xa0;%1&#xa0;» plus strict de %2 ou plus large de %3.</translation>
    </message>
    <message>
        <source>Another recipe comes first with “%1” %2 stricter.</source>
        <translation>Une autre recette passe devant avec «&#xa0;%1&#xa0;» plus strict de %2.</translation>
    </message>
    <message>
        <source>Another recipe comes first with “%1” %2 looser.</source>
        <translation>Une autre recette passe devant avec «&#xa0;%1&#xa0;» plus large de %2.</translation>
    </message>
    <message>
        <source>Whole parts instead of free shares cost %1 of score.</source>
        <translation>Des parts entières au lieu de parts libres coûtent %1 de note.</translation>
    </message>
    <message>
        <source>Trade-offs come with the first search: find parts for a pot.</source>
        <translation>Les compromis viennent avec la première recherche&#xa0;: cherchez des parts pour un pot.</translation>
    </message>
    <message numerus="yes">
        <source>Air against water: from %1 air with %2 water to %3 air with %4 water; nothing found beats these %n recipe(s) in both.</source>
        <translation>
            <numerusform>Air contre eau&#xa0;: de %1 d’air avec %2 d’eau à %3 d’air avec %4 d’eau&#xa0;; rien de trouvé ne bat cette recette sur les deux.</numerusform>
            <numerusform>Air contre eau&#xa0;: de %1 d’air avec %2 d’eau à %3 d’air avec %4 d’eau&#xa0;; rien de trouvé ne bat ces %n recettes sur les deux.</numerusform>
        </translation>
    </message>
    <message>
        <source>Price against fit: from %1 a litre with score %2 to %3 a litre with score %4.</source>
        <translation>Prix contre adéquation&#xa0;: de %1 le litre avec une note de %2 à %3 le litre avec une note de %4.</translation>
    </message>
    <message>
        <source>trade-off</source>
        <translation>compromis</translation>
    </message>
    <message>
        <source>air or price</source>
        <translation>air ou prix</translation>
    </message>
    <message>
        <source>water or score</source>
        <translation>eau ou note</translation>
    </message>
    <message>
        <source>air, water</source>
        <translation>air, eau</translation>
    </message>
    <message>
        <source>price, fit</source>
        <translation>prix, adéquation</translation>
    </message>
    <message>
        <source>Air in %1</source>
        <translation>Air dans %1</translation>
    </message>
    <message>
        <source>Water in %1</source>
        <translation>Eau dans %1</translation>
    </message>
    <message>
        <source>Proven: %1.</source>
        <translation>Prouvé : %1.</translation>
    </message>
    <message>
        <source>choose a pot, and measure each grain density</source>
        <translation>choisissez un pot, et mesurez chaque densité des grains</translation>
    </message>
    <message>
        <source>measure each grain density</source>
        <translation>mesurez chaque densité des grains</translation>
    </message>
    <message>
        <source>type each price</source>
        <translation>saisissez chaque prix</translation>
    </message>
    <message>
        <source>This search has no trade-off to show: choose a pot or type prices, then search again.</source>
        <translation>Cette recherche n’a pas de compromis à montrer&#xa0;: choisissez un pot ou saisissez des prix, puis cherchez à nouveau.</translation>
    </message>
    <message>
        <source>less than %1 points</source>
        <translation>moins de %1 point</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 points</translation>
    </message>
    <message>
        <source>water plants can take</source>
        <translation>eau disponible aux plantes</translation>
    </message>
    <message>
        <source>The best recipe is far from “%1” and misses it by %2: screen a bag to it, take in other grain, or loosen the wish.</source>
        <translation>La meilleure recette est loin de «&#xa0;%1&#xa0;» et le manque de %2&#xa0;: criblez-y un sac, faites entrer un autre grain, ou assouplissez le souhait.</translation>
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
        <translation>%1 (jusqu’ici)</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>voulu</translation>
    </message>
    <message>
        <source>percent passing</source>
        <translation>pourcentage passant</translation>
    </message>
    <message>
        <source>sieve opening, mm</source>
        <translation>ouverture du tamis, mm</translation>
    </message>
    <message>
        <source>%1, sample 1</source>
        <translation>%1, échantillon 1</translation>
    </message>
    <message>
        <source>%1, sample %2</source>
        <translation>%1, échantillon %2</translation>
    </message>
    <message>
        <source>the mix</source>
        <translation>le mélange</translation>
    </message>
    <message>
        <source>half of %1 is finer than %2</source>
        <translation>la moitié de %1 est plus fine que %2</translation>
    </message>
    <message>
        <source>%1 has no middle size inside its sieves</source>
        <translation>%1 n’a pas de taille médiane entre ses tamis</translation>
    </message>
    <message>
        <source>Grading chart, still empty: no sieve test has a curve yet.</source>
        <translation>Diagramme granulométrique, encore vide&#xa0;: aucun essai de tamisage n’a de courbe.</translation>
    </message>
    <message>
        <source>Grading chart, percent passing over grain size: %1.</source>
        <translation>Diagramme granulométrique, pourcentage passant selon la taille du grain&#xa0;: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n faint curve(s) of single samples and earlier bags lie behind.</source>
        <translation>
            <numerusform>Derrière se trouve, pâle, une courbe d’un échantillon seul ou d’un sac précédent.</numerusform>
            <numerusform>Derrière se trouvent, pâles, %n courbes d’échantillons seuls et de sacs précédents.</numerusform>
        </translation>
    </message>
    <message>
        <source>sieve</source>
        <translation>tamis</translation>
    </message>
    <message>
        <source>each sample</source>
        <translation>chaque échantillon</translation>
    </message>
    <message>
        <source>earlier bags</source>
        <translation>sacs précédents</translation>
    </message>
</context>
<context>
    <name>GrainTrace</name>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>may</source>
        <translation>peut-être</translation>
    </message>
    <message>
        <source>stands in it</source>
        <translation>s’y trouve</translation>
    </message>
    <message>
        <source>some may remain</source>
        <translation>il peut en rester</translation>
    </message>
    <message>
        <source>stood in it</source>
        <translation>s’y trouvait</translation>
    </message>
    <message>
        <source>screened</source>
        <translation>criblé</translation>
    </message>
    <message>
        <source>tipped in</source>
        <translation>versé dedans</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>mélangé</translation>
    </message>
    <message>
        <source>potted</source>
        <translation>empoté</translation>
    </message>
    <message>
        <source>left in the pot</source>
        <translation>resté dans le pot</translation>
    </message>
    <message>
        <source>by design</source>
        <translation>par la recette</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>repris</translation>
    </message>
    <message>
        <source>used</source>
        <translation>utilisé</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lot</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mélange</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>profondeur</translation>
    </message>
    <message>
        <source>day of repotting</source>
        <translation>jour du rempotage</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>plan</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>arbre</translation>
    </message>
    <message>
        <source>thriving</source>
        <translation>vigoureux</translation>
    </message>
    <message>
        <source>watch</source>
        <translation>à suivre</translation>
    </message>
    <message>
        <source>sick</source>
        <translation>malade</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>mort</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>how</source>
        <translation>comment</translation>
    </message>
    <message>
        <source>condition</source>
        <translation>état</translation>
    </message>
    <message>
        <source>until</source>
        <translation>jusqu’à</translation>
    </message>
    <message>
        <source>contains it</source>
        <translation>en contient</translation>
    </message>
    <message>
        <source>way</source>
        <translation>chemin</translation>
    </message>
    <message>
        <source>what</source>
        <translation>quoi</translation>
    </message>
    <message>
        <source>since</source>
        <translation>depuis</translation>
    </message>
    <message>
        <source>left, dry</source>
        <translation>reste, sec</translation>
    </message>
    <message>
        <source>%1: no tree stands in it, as far as it was written down.</source>
        <translation>%1&#xa0;: aucun arbre ne s’y trouve, pour autant que ce fut écrit.</translation>
    </message>
    <message numerus="yes">
        <source>%n tree(s) stand in it</source>
        <translation>
            <numerusform>%n arbre s’y trouve</numerusform>
            <numerusform>%n arbres s’y trouvent</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>in %n repotted since some may remain</source>
        <translation>
            <numerusform>dans %n rempoté depuis, il peut en rester</numerusform>
            <numerusform>dans %n rempotés depuis, il peut en rester</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n stood in it once</source>
        <translation>
            <numerusform>%n s’y est trouvé</numerusform>
            <numerusform>%n s’y sont trouvés</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>title</source>
        <translation>titre</translation>
    </message>
    <message>
        <source>by</source>
        <translation>par</translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>%1: no bag is known to be in its soil.</source>
        <translation>%1&#xa0;: aucun sac n’est connu dans son substrat.</translation>
    </message>
    <message numerus="yes">
        <source>%1: the grain of %n bag(s) is or may be in its soil.</source>
        <translation>
            <numerusform>%1&#xa0;: le grain de %n sac est ou peut être dans son substrat.</numerusform>
            <numerusform>%1&#xa0;: le grain de %n sacs est ou peut être dans son substrat.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 dans %2</translation>
    </message>
    <message>
        <source>which</source>
        <translation>lequel</translation>
    </message>
    <message>
        <source>these trees</source>
        <translation>ces arbres</translation>
    </message>
    <message>
        <source>all others</source>
        <translation>tous les autres</translation>
    </message>
    <message>
        <source>%1, %2 of them may</source>
        <translation>%1, dont %2 peut-être</translation>
    </message>
    <message>
        <source>Few trees prove nothing: what they share may be chance.</source>
        <translation>Peu d’arbres ne prouvent rien&#xa0;: ce qu’ils partagent peut être un hasard.</translation>
    </message>
    <message>
        <source>the drain hole: is it open?</source>
        <translation>le trou de drainage&#xa0;: est-il ouvert&#xa0;?</translation>
    </message>
    <message>
        <source>the trunk: is it buried, or stands it too deep?</source>
        <translation>le tronc&#xa0;: est-il enterré, ou placé trop bas&#xa0;?</translation>
    </message>
    <message>
        <source>the tie: is it loose, does the tree rock?</source>
        <translation>l’attache&#xa0;: est-elle lâche, l’arbre bouge-t-il&#xa0;?</translation>
    </message>
    <message>
        <source>the smell of the root mass: is it sour?</source>
        <translation>l’odeur de la motte&#xa0;: est-elle aigre&#xa0;?</translation>
    </message>
    <message>
        <source>the watering: who, how often, and did it run through?</source>
        <translation>l’arrosage&#xa0;: qui, combien de fois, et a-t-il traversé&#xa0;?</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>pot</translation>
    </message>
    <message>
        <source>no.</source>
        <translation>n°</translation>
    </message>
    <message>
        <source>%1 (removed)</source>
        <translation>%1 (supprimé)</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation>ôté</translation>
    </message>
    <message>
        <source>shared</source>
        <translation>en commun</translation>
    </message>
    <message>
        <source>There is nothing called %1: look at its number.</source>
        <translation>Rien ne s’appelle %1&#xa0;: vérifier le numéro.</translation>
    </message>
    <message>
        <source>Several bags are of lot %1: type the number of one of %2.</source>
        <translation>Plusieurs sacs sont du lot %1&#xa0;: saisir le numéro de l’un de %2.</translation>
    </message>
</context>
<context>
    <name>JumpTargets</name>
    <message>
        <source>component %1</source>
        <translation>composant %1</translation>
    </message>
</context>
<context>
    <name>Lots</name>
    <message>
        <source>finer than wanted</source>
        <translation>plus fin que voulu</translation>
    </message>
    <message>
        <source>D50</source>
        <translation>D50</translation>
    </message>
    <message>
        <source>usable of a litre</source>
        <translation>utilisable par litre</translation>
    </message>
    <message>
        <source>air, 6 cm deep</source>
        <translation>air, 6 cm de profondeur</translation>
    </message>
    <message numerus="yes">
        <source>Unusual for the material: %1 is %2; over %n earlier bag(s) it lay between %3 and %4.</source>
        <translation>
            <numerusform>Inhabituel pour ce matériau&#xa0;: %1 vaut %2&#xa0;; sur un sac précédent, c’était entre %3 et %4.</numerusform>
            <numerusform>Inhabituel pour ce matériau&#xa0;: %1 vaut %2&#xa0;; sur %n sacs précédents, c’était entre %3 et %4.</numerusform>
        </translation>
    </message>
    <message>
        <source>A jump from the bag before: %1 is %2; bags of this material seldom differ so much from one to the next.</source>
        <translation>Un saut par rapport au sac précédent&#xa0;: %1 vaut %2&#xa0;; les sacs de ce matériau diffèrent rarement autant d’un à l’autre.</translation>
    </message>
    <message>
        <source>In mix %1 it would turn air from %2 into %3 and water from %4 into %5.</source>
        <translation>Dans le mélange %1, l’air passerait de %2 à %3 et l’eau de %4 à %5.</translation>
    </message>
</context>
<context>
    <name>PotLabels</name>
    <message>
        <source>page %1</source>
        <translation>page %1</translation>
    </message>
</context>
<context>
    <name>PotSection</name>
    <message>
        <source>grain</source>
        <translation>grain</translation>
    </message>
    <message>
        <source>water</source>
        <translation>eau</translation>
    </message>
    <message>
        <source>trapped air</source>
        <translation>air piégé</translation>
    </message>
    <message>
        <source>air that drains free</source>
        <translation>air qui se libère</translation>
    </message>
</context>
<context>
    <name>PrintedPages</name>
    <message>
        <source>page %1 of %2</source>
        <translation>page %1 sur %2</translation>
    </message>
</context>
<context>
    <name>Protocols</name>
    <message>
        <source>what it needs was not measured</source>
        <translation>ce qu’il faut n’a pas été mesuré</translation>
    </message>
    <message>
        <source>Air that drained in</source>
        <translation>Air entré au drainage</translation>
    </message>
    <message>
        <source>Predicted before any test</source>
        <translation>Prévu avant tout essai</translation>
    </message>
    <message>
        <source>Water that stayed</source>
        <translation>Eau restée</translation>
    </message>
    <message>
        <source>Filled when flooded</source>
        <translation>Rempli à l’inondation</translation>
    </message>
    <message>
        <source>Weight of a litre in the pot, dry</source>
        <translation>Poids d’un litre dans le pot, sec</translation>
    </message>
    <message>
        <source>the water that stayed was not measured</source>
        <translation>l’eau restée n’a pas été mesurée</translation>
    </message>
    <message>
        <source>Fitted k, cm mm</source>
        <translation>k ajusté, cm mm</translation>
    </message>
    <message>
        <source>Fitted grain fill w</source>
        <translation>Remplissage des grains w ajusté</translation>
    </message>
    <message>
        <source>Fitted flooded fill f</source>
        <translation>Remplissage inondé f ajusté</translation>
    </message>
    <message>
        <source>pot test %1 of mix %2</source>
        <translation>essai en pot %1 du mélange %2</translation>
    </message>
    <message>
        <source>Pot test %1 of mix %2</source>
        <translation>Essai en pot %1 du mélange %2</translation>
    </message>
    <message>
        <source>: air %1 measured, %2 predicted</source>
        <translation>&#xa0;: air %1 mesuré, %2 prévu</translation>
    </message>
    <message>
        <source>A component of the mix has no grain density: measure it first, then the test can be compared.</source>
        <translation>Un composant du mélange n’a pas de densité des grains&#xa0;: mesurez-la d’abord, l’essai pourra alors être comparé.</translation>
    </message>
    <message>
        <source>These figures make no pot test: look at the volume and the order of the masses.</source>
        <translation>Ces chiffres ne font pas un essai en pot&#xa0;: vérifiez le volume et l’ordre des masses.</translation>
    </message>
    <message>
        <source>not measured yet</source>
        <translation>pas encore mesuré</translation>
    </message>
    <message>
        <source>Still to type: %1</source>
        <translation>Encore à saisir&#xa0;: %1</translation>
    </message>
    <message>
        <source>Litre weight by jug</source>
        <translation>Poids du litre au pichet</translation>
    </message>
    <message>
        <source>What a litre weighs, loose and worked in. It turns parts into masses, and says how much a mix settles.</source>
        <translation>Ce que pèse un litre, en vrac et mis en place. Cela change les parts en masses et dit de combien un mélange se tasse.</translation>
    </message>
    <message>
        <source>Weigh the empty jug. Fill it loosely from a scoop held at the rim, heaped, and strike it off level. Weigh.</source>
        <translation>Pesez le pichet vide. Remplissez-le en vrac à la pelle tenue au bord, en dôme, et arasez. Pesez.</translation>
    </message>
    <message>
        <source>Empty it, fill and weigh once more: two fills within 3 % are good.</source>
        <translation>Videz, remplissez et pesez encore une fois&#xa0;: deux remplissages à 3&#xa0;% près sont bons.</translation>
    </message>
    <message>
        <source>Work the grain in with a stick, as in a pot, without adding any. Read the litres at the mark.</source>
        <translation>Tassez le grain à la baguette, comme dans un pot, sans en ajouter. Lisez les litres à la marque.</translation>
    </message>
    <message>
        <source>Two jugs: one heaped and struck off level, one with the same grain worked in with a stick and standing lower.</source>
        <translation>Deux pichets&#xa0;: l’un rempli en dôme et arasé, l’autre avec le même grain tassé à la baguette, plus bas.</translation>
    </message>
    <message>
        <source>Grain density by displacement</source>
        <translation>Densité des grains par déplacement d’eau</translation>
    </message>
    <message>
        <source>What the grain weighs with its inner pores. With the litre weight it gives the voids between the grains.</source>
        <translation>Ce que pèse le grain avec ses pores internes. Avec le poids du litre, cela donne les vides entre les grains.</translation>
    </message>
    <message>
        <source>Soak the grain for 24 h. Dab it dry until its surface no longer shines. Weigh.</source>
        <translation>Trempez le grain 24 h. Essuyez-le jusqu’à ce que sa surface ne brille plus. Pesez.</translation>
    </message>
    <message>
        <source>Weigh the jug filled with water to the mark. Put the grain in, stir the air out, top up or draw off to the same mark. Weigh.</source>
        <translation>Pesez le pichet rempli d’eau jusqu’à la marque. Versez le grain, chassez l’air en remuant, ajustez l’eau à la même marque. Pesez.</translation>
    </message>
    <message>
        <source>Dry the grain at 105 °C or on a warm stove until it no longer gets lighter. Weigh.</source>
        <translation>Séchez le grain à 105 °C ou sur un poêle chaud jusqu’à ce qu’il ne s’allège plus. Pesez.</translation>
    </message>
    <message>
        <source>Two jugs filled with water to the same mark, the right one with soaked grain at the bottom.</source>
        <translation>Deux pichets remplis d’eau à la même marque, celui de droite avec du grain trempé au fond.</translation>
    </message>
    <message>
        <source>Water absorption in 24 h</source>
        <translation>Absorption d’eau en 24 h</translation>
    </message>
    <message>
        <source>The water that stays inside the grains: it is there between waterings and takes no air.</source>
        <translation>L’eau qui reste dans les grains&#xa0;: elle est là entre les arrosages et ne prend pas la place de l’air.</translation>
    </message>
    <message>
        <source>Soak a handful for 24 h. Dab it dry until its surface no longer shines. Weigh.</source>
        <translation>Trempez une poignée 24 h. Essuyez jusqu’à ce que la surface ne brille plus. Pesez.</translation>
    </message>
    <message>
        <source>Dry the same grain until it no longer gets lighter. Weigh.</source>
        <translation>Séchez le même grain jusqu’à ce qu’il ne s’allège plus. Pesez.</translation>
    </message>
    <message>
        <source>Grain under water in a dish, then the same grain spread out to dry.</source>
        <translation>Du grain sous l’eau dans un plat, puis le même grain étalé pour sécher.</translation>
    </message>
    <message>
        <source>Crumble test</source>
        <translation>Essai d’effritement</translation>
    </message>
    <message>
        <source>How fast the grain breaks down, by shaking or by freezing and thawing. It says for how many seasons the mix keeps its air.</source>
        <translation>À quelle vitesse le grain se brise, secoué ou gelé et dégelé. Cela dit combien de saisons le mélange garde son air.</translation>
    </message>
    <message>
        <source>Take sieved grain of the bag. Shake it in a closed tin, or wet it, freeze it and thaw it, so many rounds.</source>
        <translation>Prenez du grain tamisé du sac. Secouez-le dans une boîte fermée, ou mouillez-le, gelez-le et dégelez-le, un certain nombre de cycles.</translation>
    </message>
    <message>
        <source>Dry it and sieve it again on the same sieves. Wear a dust mask.</source>
        <translation>Séchez-le et tamisez-le de nouveau sur les mêmes tamis. Portez un masque à poussière.</translation>
    </message>
    <message>
        <source>A tin that is shaken, and the stack of sieves that the grain goes through again.</source>
        <translation>Une boîte que l’on secoue, et la colonne de tamis que le grain traverse de nouveau.</translation>
    </message>
    <message>
        <source>Was it sieved long enough?</source>
        <translation>A-t-on tamisé assez longtemps&#xa0;?</translation>
    </message>
    <message>
        <source>One more minute of shaking by hand: less than half a percent may still fall through.</source>
        <translation>Une minute de plus à la main&#xa0;: il peut encore passer moins d’un demi pour cent.</translation>
    </message>
    <message>
        <source>After the sieve test shake every sieve one more minute over a clean sheet.</source>
        <translation>Après l’essai, secouez chaque tamis une minute de plus au-dessus d’une feuille propre.</translation>
    </message>
    <message>
        <source>Weigh all that fell through.</source>
        <translation>Pesez tout ce qui est passé.</translation>
    </message>
    <message>
        <source>A sieve shaken over a sheet on which a little grain lies.</source>
        <translation>Un tamis secoué au-dessus d’une feuille où se trouve un peu de grain.</translation>
    </message>
    <message>
        <source>Pot test by balance</source>
        <translation>Essai en pot à la balance</translation>
    </message>
    <message>
        <source>Soak the mix for a day. Fill the pot and work it in as you would around a tree. Seal the holes.</source>
        <translation>Trempez le mélange un jour. Remplissez le pot et tassez comme autour d’un arbre. Bouchez les trous.</translation>
    </message>
    <message>
        <source>Flood slowly from below until a film shines on top. Weigh. Open the holes and let it drain level for half an hour. Weigh.</source>
        <translation>Inondez lentement par le bas jusqu’à ce qu’un film brille en surface. Pesez. Ouvrez les trous et laissez égoutter à plat une demi-heure. Pesez.</translation>
    </message>
    <message>
        <source>Dry everything until it no longer gets lighter. Weigh; the empty pot too. A wet pot is heavy: lift with both hands.</source>
        <translation>Séchez le tout jusqu’à ce qu’il ne s’allège plus. Pesez&#xa0;; le pot vide aussi. Un pot mouillé est lourd&#xa0;: soulevez à deux mains.</translation>
    </message>
    <message>
        <source>A pot on a balance three times: flooded to the rim, drained with water left at the bottom, dry.</source>
        <translation>Un pot trois fois sur une balance&#xa0;: inondé jusqu’au bord, égoutté avec de l’eau restée au fond, sec.</translation>
    </message>
    <message>
        <source>Pot test by volumes only</source>
        <translation>Essai en pot par volumes seuls</translation>
    </message>
    <message>
        <source>The same without a balance: water poured in and water caught.</source>
        <translation>Le même sans balance&#xa0;: l’eau versée et l’eau recueillie.</translation>
    </message>
    <message>
        <source>Fill the pot with dry mix and work it in. Seal the holes.</source>
        <translation>Remplissez le pot de mélange sec et tassez. Bouchez les trous.</translation>
    </message>
    <message>
        <source>Pour in measured water slowly until a shiny film stands, and again after a day&apos;s soak. Note all of it.</source>
        <translation>Versez lentement de l’eau mesurée jusqu’à ce qu’un film brillant tienne, puis encore après un jour de trempage. Notez tout.</translation>
    </message>
    <message>
        <source>Open the holes over a bowl. After half an hour measure what ran out.</source>
        <translation>Ouvrez les trous au-dessus d’un bac. Après une demi-heure, mesurez ce qui a coulé.</translation>
    </message>
    <message>
        <source>A measuring jug pours into a pot, and a bowl below catches what drains.</source>
        <translation>Un pichet gradué verse dans un pot, et un bac dessous recueille ce qui s’égoutte.</translation>
    </message>
    <message>
        <source>the litres after working in are not typed</source>
        <translation>les litres après mise en place ne sont pas saisis</translation>
    </message>
    <message>
        <source>Litre weight, loose, dry</source>
        <translation>Poids du litre, en vrac, sec</translation>
    </message>
    <message>
        <source>Worked in, dry</source>
        <translation>Mis en place, sec</translation>
    </message>
    <message>
        <source>Settling</source>
        <translation>Tassement</translation>
    </message>
    <message>
        <source>litre weight of bag %1</source>
        <translation>poids du litre du sac %1</translation>
    </message>
    <message>
        <source>Weighed a jug of bag %1: %2 loose and dry</source>
        <translation>Pichet du sac %1 pesé&#xa0;: %2 en vrac et sec</translation>
    </message>
    <message>
        <source>settling of mix %1</source>
        <translation>tassement du mélange %1</translation>
    </message>
    <message>
        <source>Worked in a jug of mix %1: it settles by %2</source>
        <translation>Pichet du mélange %1 mis en place&#xa0;: il se tasse de %2</translation>
    </message>
    <message>
        <source>Grain density, dry</source>
        <translation>Densité des grains, sèche</translation>
    </message>
    <message>
        <source>Soaked grain</source>
        <translation>Grain trempé</translation>
    </message>
    <message>
        <source>Water after 24 h, of dry mass</source>
        <translation>Eau après 24 h, de la masse sèche</translation>
    </message>
    <message>
        <source>grain density of bag %1</source>
        <translation>densité des grains du sac %1</translation>
    </message>
    <message>
        <source>Measured the grain of bag %1 by displacement: %2, water after 24 h %3</source>
        <translation>Grain du sac %1 mesuré par déplacement&#xa0;: %2, eau après 24 h %3</translation>
    </message>
    <message>
        <source>water absorption of bag %1</source>
        <translation>absorption d’eau du sac %1</translation>
    </message>
    <message>
        <source>Soaked grain of bag %1 for 24 h: it took up %2 of its dry mass</source>
        <translation>Grain du sac %1 trempé 24 h&#xa0;: il a pris %2 de sa masse sèche</translation>
    </message>
    <message>
        <source>Sieve this bag first: a crumble test compares with its sieve test.</source>
        <translation>Tamisez d’abord ce sac&#xa0;: un essai d’effritement se compare à son essai de tamisage.</translation>
    </message>
    <message>
        <source>Broken, of the mass</source>
        <translation>Brisé, de la masse</translation>
    </message>
    <message>
        <source>Breakages of a grain in a round</source>
        <translation>Bris d’un grain par cycle</translation>
    </message>
    <message>
        <source>In a season</source>
        <translation>Par saison</translation>
    </message>
    <message>
        <source>Modulus of the fragments</source>
        <translation>Module des fragments</translation>
    </message>
    <message>
        <source>crumble test of bag %1</source>
        <translation>essai d’effritement du sac %1</translation>
    </message>
    <message>
        <source>Crumble test of bag %1: %2 of the mass broke in %3 rounds</source>
        <translation>Essai d’effritement du sac %1&#xa0;: %2 de la masse brisée en %3 cycles</translation>
    </message>
    <message>
        <source>Fell through in one more minute</source>
        <translation>Passé en une minute de plus</translation>
    </message>
    <message>
        <source>The sieving of bag %1 was thorough: %2 fell through in one more minute</source>
        <translation>Le tamisage du sac %1 était complet&#xa0;: %2 passés en une minute de plus</translation>
    </message>
    <message>
        <source>The sieving of bag %1 was not thorough: %2 fell through in one more minute</source>
        <translation>Le tamisage du sac %1 n’était pas complet&#xa0;: %2 passés en une minute de plus</translation>
    </message>
    <message>
        <source>Keep the sieve test with its bag first: this belongs to a sieve test.</source>
        <translation>Conservez d’abord l’essai de tamisage avec son sac&#xa0;: ceci appartient à un essai.</translation>
    </message>
    <message>
        <source>thoroughness of sieving bag %1</source>
        <translation>qualité du tamisage du sac %1</translation>
    </message>
    <message>
        <source>Empty jug</source>
        <translation>Pichet vide</translation>
    </message>
    <message>
        <source>weighed dry</source>
        <translation>pesé sec</translation>
    </message>
    <message>
        <source>Jug with grain</source>
        <translation>Pichet avec grain</translation>
    </message>
    <message>
        <source>poured loosely, struck off level</source>
        <translation>versé en vrac, arasé</translation>
    </message>
    <message>
        <source>Filled once more</source>
        <translation>Rempli une fois de plus</translation>
    </message>
    <message>
        <source>emptied and poured again; may stay empty</source>
        <translation>vidé et versé de nouveau&#xa0;; peut rester vide</translation>
    </message>
    <message>
        <source>The jug holds</source>
        <translation>Le pichet contient</translation>
    </message>
    <message>
        <source>by weighing it full of water</source>
        <translation>en le pesant plein d’eau</translation>
    </message>
    <message>
        <source>Worked in, it fills</source>
        <translation>Mis en place, il remplit</translation>
    </message>
    <message>
        <source>read at the mark</source>
        <translation>lu à la marque</translation>
    </message>
    <message>
        <source>read at the mark; may stay empty</source>
        <translation>lu à la marque&#xa0;; peut rester vide</translation>
    </message>
    <message>
        <source>Moisture of the grain</source>
        <translation>Humidité du grain</translation>
    </message>
    <message>
        <source>of the dry mass; empty: dry</source>
        <translation>de la masse sèche&#xa0;; vide&#xa0;: sec</translation>
    </message>
    <message>
        <source>Soaked, dabbed dry</source>
        <translation>Trempé, essuyé</translation>
    </message>
    <message>
        <source>after 24 h under water</source>
        <translation>après 24 h sous l’eau</translation>
    </message>
    <message>
        <source>Jug with water</source>
        <translation>Pichet avec eau</translation>
    </message>
    <message>
        <source>filled to the mark, no grain</source>
        <translation>rempli à la marque, sans grain</translation>
    </message>
    <message>
        <source>Jug, water and grain</source>
        <translation>Pichet, eau et grain</translation>
    </message>
    <message>
        <source>to the same mark</source>
        <translation>à la même marque</translation>
    </message>
    <message>
        <source>Dried grain</source>
        <translation>Grain séché</translation>
    </message>
    <message>
        <source>the same grain</source>
        <translation>le même grain</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Cycles</translation>
    </message>
    <message>
        <source>of shaking, or of freezing and thawing</source>
        <translation>de secousses, ou de gel et dégel</translation>
    </message>
    <message>
        <source>Rounds that make a season</source>
        <translation>Cycles qui font une saison</translation>
    </message>
    <message>
        <source>empty: %1</source>
        <translation>vide&#xa0;: %1</translation>
    </message>
    <message>
        <source>On %1</source>
        <translation>Sur %1</translation>
    </message>
    <message>
        <source>sieved again</source>
        <translation>tamisé de nouveau</translation>
    </message>
    <message>
        <source>In the pan</source>
        <translation>Dans le fond</translation>
    </message>
    <message>
        <source>Whole sample</source>
        <translation>Échantillon entier</translation>
    </message>
    <message>
        <source>what went onto the stack</source>
        <translation>ce qui est allé sur la colonne</translation>
    </message>
    <message>
        <source>Fell through</source>
        <translation>Passé</translation>
    </message>
    <message>
        <source>all sieves together, in one more minute</source>
        <translation>tous les tamis ensemble, en une minute de plus</translation>
    </message>
    <message>
        <source>Filled depth</source>
        <translation>Profondeur remplie</translation>
    </message>
    <message>
        <source>of the mix, straight walls</source>
        <translation>du mélange, parois droites</translation>
    </message>
    <message>
        <source>by a water fill</source>
        <translation>par remplissage d’eau</translation>
    </message>
    <message>
        <source>empty: to the pot&apos;s fill line</source>
        <translation>vide&#xa0;: jusqu’au niveau du pot</translation>
    </message>
    <message>
        <source>Empty pot</source>
        <translation>Pot vide</translation>
    </message>
    <message>
        <source>with mesh and wire</source>
        <translation>avec grille et fil</translation>
    </message>
    <message>
        <source>Flooded, sealed</source>
        <translation>Inondé, bouché</translation>
    </message>
    <message>
        <source>slowly from below; may stay empty</source>
        <translation>lentement par le bas&#xa0;; peut rester vide</translation>
    </message>
    <message>
        <source>Drained</source>
        <translation>Égoutté</translation>
    </message>
    <message>
        <source>half an hour, level</source>
        <translation>une demi-heure, à plat</translation>
    </message>
    <message>
        <source>Dry, with the pot</source>
        <translation>Sec, avec le pot</translation>
    </message>
    <message>
        <source>the same mix</source>
        <translation>le même mélange</translation>
    </message>
    <message>
        <source>Water poured in</source>
        <translation>Eau versée</translation>
    </message>
    <message>
        <source>until a shiny film stands</source>
        <translation>jusqu’à un film brillant</translation>
    </message>
    <message>
        <source>Water caught</source>
        <translation>Eau recueillie</translation>
    </message>
    <message>
        <source>half an hour later</source>
        <translation>une demi-heure après</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Mesuré</translation>
    </message>
    <message>
        <source>Keep a mix first: a pot test is a test of a mix.</source>
        <translation>Conservez d’abord un mélange&#xa0;: un essai en pot porte sur un mélange.</translation>
    </message>
    <message>
        <source>Receive a bag first: what is measured is kept with its bag.</source>
        <translation>Réceptionnez d’abord un sac&#xa0;: ce qui est mesuré est gardé avec son sac.</translation>
    </message>
    <message>
        <source>Volume of mix in it</source>
        <translation>Volume de mélange dedans</translation>
    </message>
    <message>
        <source>Weighed a jug of bag %1: %2 loose and dry, %3 worked in</source>
        <translation>Pichet du sac %1 pesé : %2 en vrac et sec, %3 mis en place</translation>
    </message>
    <message>
        <source>More fell through than was weighed: weigh both again.</source>
        <translation>Il est passé plus que ce qui a été pesé&#xa0;: repesez les deux.</translation>
    </message>
    <message>
        <source>The air and water of this mix in a real pot. It corrects the estimates of the mix and shows how far off they were.</source>
        <translation>L’air et l’eau de ce mélange dans un vrai pot. Cela corrige les estimations du mélange et montre leur écart.</translation>
    </message>
</context>
<context>
    <name>Ranges</name>
    <message>
        <source>5, 50 and 95 of 100 cases: up to %1, %2, %3</source>
        <translation>5, 50 et 95 cas sur 100&#xa0;: jusqu’à %1, %2, %3</translation>
    </message>
    <message>
        <source>open</source>
        <translation>ouvert</translation>
    </message>
    <message>
        <source>The same verdict in %1 of 100 cases.</source>
        <translation>Même verdict dans %1 cas sur 100.</translation>
    </message>
    <message>
        <source>, by pot test %1</source>
        <translation>, d’après l’essai en pot %1</translation>
    </message>
    <message>
        <source>in %1 of 100 cases</source>
        <translation>dans %1 cas sur 100</translation>
    </message>
    <message>
        <source>, leaning on pot test %1</source>
        <translation>, appuyé sur l’essai en pot %1</translation>
    </message>
</context>
<context>
    <name>RecordKind</name>
    <message>
        <source>own material</source>
        <translation>matériau propre</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>sac</translation>
    </message>
    <message>
        <source>bin</source>
        <translation>caisse</translation>
    </message>
    <message>
        <source>fraction</source>
        <translation>fraction</translation>
    </message>
    <message>
        <source>sieve set</source>
        <translation>jeu de tamis</translation>
    </message>
    <message>
        <source>sieve test</source>
        <translation>essai de tamisage</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mélange</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>arbre</translation>
    </message>
    <message>
        <source>root-mass plan</source>
        <translation>plan de motte</translation>
    </message>
    <message>
        <source>repotting day</source>
        <translation>journée de rempotage</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>gâchée</translation>
    </message>
    <message>
        <source>pot test</source>
        <translation>essai en pot</translation>
    </message>
    <message>
        <source>stock entry</source>
        <translation>écriture de stock</translation>
    </message>
    <message>
        <source>log entry</source>
        <translation>entrée du journal</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>pot</translation>
    </message>
    <message>
        <source>group of trees</source>
        <translation>groupe d’arbres</translation>
    </message>
</context>
<context>
    <name>RootPlanDesk</name>
    <message>
        <source>%1 into %2</source>
        <translation>%1 dans %2</translation>
    </message>
</context>
<context>
    <name>Screening</name>
    <message>
        <source>Weighed so far: %1</source>
        <translation>Pesé jusqu’ici&#xa0;: %1</translation>
    </message>
    <message>
        <source>Weighed %1: %2 more than went in</source>
        <translation>%1 pesés&#xa0;: %2 de plus qu’au départ</translation>
    </message>
    <message>
        <source>Weighed %1, lost %2</source>
        <translation>%1 pesés, %2 perdus</translation>
    </message>
    <message>
        <source>Finish the sieve test first: the fractions are predicted from it.</source>
        <translation>Terminez d’abord l’essai de tamisage&#xa0;: les fractions en sont prédites.</translation>
    </message>
    <message>
        <source>Type the openings to screen at; the verdict names none.</source>
        <translation>Saisissez les ouvertures de criblage&#xa0;; le verdict n’en indique aucune.</translation>
    </message>
    <message>
        <source>Much of what is left of the bag is in no fraction: type how much dry grain was screened.</source>
        <translation>Une grande partie de ce qui reste du sac n&apos;est dans aucune fraction : saisissez combien de grain sec a été tamisé.</translation>
    </message>
    <message>
        <source>Much more was weighed than went in: look at the weights, or type how much dry grain was screened.</source>
        <translation>On a pesé bien plus qu’il n’est entré&#xa0;: revoir les poids, ou saisir combien de grain sec a été criblé.</translation>
    </message>
</context>
<context>
    <name>Section</name>
    <message>
        <source>height</source>
        <translation>hauteur</translation>
    </message>
    <message>
        <source>90 of 100 cases</source>
        <translation>90 cas sur 100</translation>
    </message>
</context>
<context>
    <name>Shelf</name>
    <message>
        <source>%1, to buy</source>
        <translation>%1, à acheter</translation>
    </message>
</context>
<context>
    <name>StockText</name>
    <message>
        <source>received</source>
        <translation>réceptionné</translation>
    </message>
    <message>
        <source>screened into it</source>
        <translation>criblé dedans</translation>
    </message>
    <message>
        <source>screened out of it</source>
        <translation>criblé hors</translation>
    </message>
    <message>
        <source>used</source>
        <translation>utilisé</translation>
    </message>
    <message>
        <source>came back or was tipped in</source>
        <translation>revenu ou versé dedans</translation>
    </message>
    <message>
        <source>spilt</source>
        <translation>renversé</translation>
    </message>
    <message>
        <source>thrown out</source>
        <translation>jeté</translation>
    </message>
    <message>
        <source>difference found by counting</source>
        <translation>différence trouvée au comptage</translation>
    </message>
    <message>
        <source>Sum of the lines of the ledger, in dry grain</source>
        <translation>Somme des lignes du livre de stock, en grain sec</translation>
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
        <translation>le registre</translation>
    </message>
    <message>
        <source>Left of it</source>
        <translation>Il en reste</translation>
    </message>
    <message>
        <source>Loose grain</source>
        <translation>Grain en vrac</translation>
    </message>
    <message>
        <source>Dry grain</source>
        <translation>Grain sec</translation>
    </message>
    <message>
        <source>nothing of it was taken into stock yet</source>
        <translation>rien n’en a encore été mis en stock</translation>
    </message>
    <message>
        <source>Loose litres = dry grain / litre weight</source>
        <translation>Litres en vrac = grain sec / poids du litre</translation>
    </message>
    <message>
        <source>litre weight, dry</source>
        <translation>poids du litre, sec</translation>
    </message>
    <message>
        <source>%1 dry</source>
        <translation>%1 sec</translation>
    </message>
    <message>
        <source>Tested: not yet</source>
        <translation>Essayé&#xa0;: pas encore</translation>
    </message>
    <message numerus="yes">
        <source>Tested: %n sieve test(s), the last on %1</source>
        <translation>
            <numerusform>Essayé&#xa0;: %n essai de tamisage, le dernier le %1</numerusform>
            <numerusform>Essayé&#xa0;: %n essais de tamisage, le dernier le %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Tested: %n sieve test(s)</source>
        <translation>
            <numerusform>Essayé&#xa0;: %n essai de tamisage</numerusform>
            <numerusform>Essayé&#xa0;: %n essais de tamisage</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2 at %3</source>
        <translation>%1, %2 à %3</translation>
    </message>
    <message>
        <source>weigh a litre of it</source>
        <translation>pesez-en un litre</translation>
    </message>
    <message>
        <source>its own litre weight, else that of its newest sieve test, else its dry mass by the litres it came with</source>
        <translation>sa propre masse au litre, sinon celle de son plus récent essai de tamisage, sinon sa masse sèche par les litres de son arrivée</translation>
    </message>
    <message>
        <source>the litre weight of its bag, since nobody weighed a litre of it</source>
        <translation>la masse au litre de son sac, car personne n’en a pesé un litre</translation>
    </message>
    <message>
        <source>the litre weight of its bag by how the fraction was predicted to pack, since nobody weighed a litre of it</source>
        <translation>la masse au litre de son sac selon le tassement prédit de la fraction, car personne n’en a pesé un litre</translation>
    </message>
    <message>
        <source>litre weight of its bag, dry</source>
        <translation>poids du litre de son sac, sec</translation>
    </message>
    <message>
        <source>litre weight of the fraction over that of its bag, as predicted</source>
        <translation>poids du litre de la fraction divisé par celui de son sac, comme prédit</translation>
    </message>
</context>
<context>
    <name>Surroundings</name>
    <message>
        <source>mix %1</source>
        <translation>mélange %1</translation>
    </message>
    <message>
        <source>tub %1 of %2</source>
        <translation>auge %1 de %2</translation>
    </message>
    <message>
        <source>used ground of %1</source>
        <translation>substrat usagé de %1</translation>
    </message>
</context>
<context>
    <name>TestSheet</name>
    <message>
        <source>pan</source>
        <translation>fond</translation>
    </message>
    <message>
        <source>sieve, mm</source>
        <translation>tamis, mm</translation>
    </message>
    <message>
        <source>stayed on</source>
        <translation>retenu</translation>
    </message>
    <message>
        <source>of the mass</source>
        <translation>de la masse</translation>
    </message>
    <message>
        <source>passing</source>
        <translation>passant</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Contrôles</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Verdict</translation>
    </message>
    <message>
        <source>Sieve test of %1</source>
        <translation>Essai de tamisage de %1</translation>
    </message>
    <message>
        <source>Bag %1</source>
        <translation>Sac %1</translation>
    </message>
    <message>
        <source>sample %1, dry</source>
        <translation>échantillon %1, sec</translation>
    </message>
    <message>
        <source>loss %1</source>
        <translation>perte %1</translation>
    </message>
    <message>
        <source>Sieve test</source>
        <translation>Essai de tamisage</translation>
    </message>
</context>
<context>
    <name>TreeAgeing</name>
    <message>
        <source>As the grain breaks down, in seasons since the repotting of %1%2: %3</source>
        <translation>Comme le grain se dégrade, en saisons depuis le rempotage du %1%2 : %3</translation>
    </message>
</context>
<context>
    <name>TreeGroups</name>
    <message>
        <source>left out</source>
        <translation>laissé de côté</translation>
    </message>
    <message>
        <source>own</source>
        <translation>propre</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>changé</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>pratique courante</translation>
    </message>
</context>
<context>
    <name>Verdict</name>
    <message>
        <source> and </source>
        <translation> et </translation>
    </message>
    <message>
        <source>Take it as it is</source>
        <translation>À prendre tel quel</translation>
    </message>
    <message>
        <source>Take it after screening at %1</source>
        <translation>À prendre après criblage à %1</translation>
    </message>
    <message>
        <source>Other use, or complain</source>
        <translation>Autre usage, ou réclamer</translation>
    </message>
    <message>
        <source>fraction</source>
        <translation>fraction</translation>
    </message>
    <message>
        <source>of the mass</source>
        <translation>de la masse</translation>
    </message>
    <message>
        <source>from a litre</source>
        <translation>par litre</translation>
    </message>
    <message>
        <source>from a bag</source>
        <translation>par sac</translation>
    </message>
    <message>
        <source>D50</source>
        <translation>D50</translation>
    </message>
    <message>
        <source>screen at</source>
        <translation>cribler à</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>gardé</translation>
    </message>
    <message>
        <source>usable</source>
        <translation>utilisable</translation>
    </message>
    <message>
        <source>good enough</source>
        <translation>suffisant</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>Laboratory figures</source>
        <translation>Chiffres de laboratoire</translation>
    </message>
    <message>
        <source>the sieves do not reach far enough</source>
        <translation>les tamis ne vont pas assez loin</translation>
    </message>
    <message>
        <source>Curvature</source>
        <translation>Courbure</translation>
    </message>
    <message>
        <source>Fineness modulus</source>
        <translation>Module de finesse</translation>
    </message>
    <message>
        <source>Mean, phi</source>
        <translation>Moyenne, phi</translation>
    </message>
    <message>
        <source>Sorting, phi</source>
        <translation>Tri, phi</translation>
    </message>
    <message>
        <source>Skewness</source>
        <translation>Asymétrie</translation>
    </message>
    <message>
        <source>Kurtosis</source>
        <translation>Aplatissement</translation>
    </message>
    <message>
        <source>Price of a usable litre</source>
        <translation>Prix d’un litre utilisable</translation>
    </message>
    <message>
        <source>No verdict: %1</source>
        <translation>Pas de verdict&#xa0;: %1</translation>
    </message>
    <message>
        <source>Finer</source>
        <translation>Plus fin</translation>
    </message>
    <message>
        <source>Coarser</source>
        <translation>Plus gros</translation>
    </message>
    <message>
        <source>Usable of a litre</source>
        <translation>Utilisable par litre</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>plus de %1</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>moins de %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>see the marked cells and fields</source>
        <translation>voir les cellules et champs marqués</translation>
    </message>
    <message>
        <source>finish the sieve test</source>
        <translation>terminez l’essai de tamisage</translation>
    </message>
    <message>
        <source>choose its bag</source>
        <translation>choisissez son sac</translation>
    </message>
    <message>
        <source>type price and litres of the bag</source>
        <translation>saisissez le prix et les litres du sac</translation>
    </message>
    <message>
        <source>type the wanted grain</source>
        <translation>saisissez le grain voulu</translation>
    </message>
    <message>
        <source>finer in it</source>
        <translation>plus fin dedans</translation>
    </message>
    <message>
        <source>Wanted grain in %1</source>
        <translation>Grain voulu dans %1</translation>
    </message>
    <message>
        <source>the sieves do not reach the ends of the wanted grain</source>
        <translation>les tamis n’atteignent pas les bornes du grain voulu</translation>
    </message>
    <message>
        <source>Wanted, by mass</source>
        <translation>Voulu, en masse</translation>
    </message>
    <message>
        <source>%1 to %2, the nearest sieves</source>
        <translation>%1 à %2, les tamis les plus proches</translation>
    </message>
    <message>
        <source>D50, half is finer</source>
        <translation>D50, la moitié est plus fine</translation>
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
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>Air that drains free, 90 of 100 cases</source>
        <translation>Air qui se libère, 90 cas sur 100</translation>
    </message>
    <message>
        <source>new</source>
        <translation>nouveau</translation>
    </message>
    <message>
        <source>season</source>
        <translation>saison</translation>
    </message>
    <message>
        <source>Grading, finer than</source>
        <translation>Granulométrie, plus fin que</translation>
    </message>
    <message>
        <source>sieve</source>
        <translation>tamis</translation>
    </message>
    <message>
        <source>The years to come: air and grading by season</source>
        <translation>Les années à venir&#xa0;: air et granulométrie par saison</translation>
    </message>
    <message>
        <source>Nothing can be foretold for this mix in this pot.</source>
        <translation>Rien ne peut être prédit pour ce mélange dans ce pot.</translation>
    </message>
    <message>
        <source>crumbs stay</source>
        <translation>miettes restées</translation>
    </message>
    <message>
        <source>crumbs wash down</source>
        <translation>miettes descendues</translation>
    </message>
    <message>
        <source>repotting hint</source>
        <translation>repère de rempotage</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::BackupsCard</name>
    <message>
        <source>%1, before an update of the program</source>
        <translation>%1, avant une mise à jour du programme</translation>
    </message>
    <message>
        <source>Restore this backup...</source>
        <translation>Restaurer cette sauvegarde...</translation>
    </message>
    <message>
        <source>Look into it, reading only</source>
        <translation>Regarder dedans, en lecture seule</translation>
    </message>
    <message>
        <source>Backups of the record</source>
        <translation>Sauvegardes du registre</translation>
    </message>
    <message>
        <source>Backups of the record, newest first</source>
        <translation>Sauvegardes du registre, la plus récente d’abord</translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>size</source>
        <translation>taille</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>pas encore</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>abîmée</translation>
    </message>
    <message>
        <source>None yet. The first is made before the first change of another day, into %1.</source>
        <translation>Aucune encore. La première est faite avant le premier changement d’un autre jour, dans %1.</translation>
    </message>
    <message>
        <source>In %1. One is made before the first change of a day; those of the last 10 days and the last one of each of 12 months are kept.</source>
        <translation>Dans %1. Une est faite avant le premier changement d’un jour&#xa0;; celles des 10 derniers jours et la dernière de chacun de 12 mois sont gardées.</translation>
    </message>
    <message>
        <source>checked</source>
        <translation>vérifiée</translation>
    </message>
    <message>
        <source>intact</source>
        <translation>intacte</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::BagsPage</name>
    <message>
        <source>F&amp;ind</source>
        <translation>Ch&amp;ercher</translation>
    </message>
    <message>
        <source>bag, material or lot</source>
        <translation>sac, matériau ou lot</translation>
    </message>
    <message>
        <source>Find a bag</source>
        <translation>Chercher un sac</translation>
    </message>
    <message>
        <source>Material of the bags to receive</source>
        <translation>Matériau des sacs à réceptionner</translation>
    </message>
    <message>
        <source>&amp;Receive bags</source>
        <translation>Récepti&amp;onner</translation>
    </message>
    <message>
        <source>Receive bags of this material</source>
        <translation>Réceptionner des sacs de ce matériau</translation>
    </message>
    <message>
        <source>No bags yet. Choose a material and receive the first ones: the lot, how many, their litres or mass. Grading them is one click from here.</source>
        <translation>Pas encore de sacs. Choisissez un matériau et réceptionnez les premiers&#xa0;: le lot, le nombre, les litres ou la masse. Leur contrôle est à un clic d’ici.</translation>
    </message>
    <message>
        <source>Bags</source>
        <translation>Sacs</translation>
    </message>
    <message>
        <source>Enter puts the fraction into the mix.</source>
        <translation>Entrée met la fraction dans le mélange.</translation>
    </message>
    <message>
        <source>Grade this bag</source>
        <translation>Contrôler ce sac</translation>
    </message>
    <message>
        <source>&amp;Take into stock</source>
        <translation>Mettre en stoc&amp;k</translation>
    </message>
    <message>
        <source>Take into stock</source>
        <translation>Mettre en stock</translation>
    </message>
    <message>
        <source>Meas&amp;ure...</source>
        <translation>Mes&amp;urer...</translation>
    </message>
    <message>
        <source>Measure this bag: litre weight, grain density, water, crumbling</source>
        <translation>Mesurer ce sac&#xa0;: poids du litre, densité des grains, eau, effritement</translation>
    </message>
    <message>
        <source>%1 of bag %2</source>
        <translation>%1 du sac %2</translation>
    </message>
    <message>
        <source>&amp;Lot</source>
        <translation>&amp;Lot</translation>
    </message>
    <message>
        <source>as marked on the bag</source>
        <translation>comme marqué sur le sac</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lot</translation>
    </message>
    <message>
        <source>&amp;Number of bags</source>
        <translation>Nom&amp;bre de sacs</translation>
    </message>
    <message>
        <source>of this lot</source>
        <translation>de ce lot</translation>
    </message>
    <message>
        <source>number</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>&amp;Printed size, from</source>
        <translation>&amp;Taille écrite, de</translation>
    </message>
    <message>
        <source>provisional until the lot is sieved</source>
        <translation>provisoire jusqu’au tamisage du lot</translation>
    </message>
    <message>
        <source>printed size</source>
        <translation>taille imprimée</translation>
    </message>
    <message>
        <source>Printed size, to</source>
        <translation>Taille écrite, à</translation>
    </message>
    <message>
        <source>the coarse end</source>
        <translation>le bout grossier</translation>
    </message>
    <message>
        <source>Litres in one b&amp;ag</source>
        <translation>Litres par &amp;sac</translation>
    </message>
    <message>
        <source>loose, as printed or measured</source>
        <translation>en vrac, imprimés ou mesurés</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>volume</translation>
    </message>
    <message>
        <source>Mass of one bag</source>
        <translation>Masse d’un sac</translation>
    </message>
    <message>
        <source>as bagged; kg can be typed</source>
        <translation>tel qu’ensaché&#xa0;; aussi en kg</translation>
    </message>
    <message>
        <source>The bag was weighed</source>
        <translation>Le sac a été pesé</translation>
    </message>
    <message>
        <source>as bagged</source>
        <translation>tel qu’ensaché</translation>
    </message>
    <message>
        <source>air-dry</source>
        <translation>séché à l’air</translation>
    </message>
    <message>
        <source>oven-dry</source>
        <translation>séché à l’étuve</translation>
    </message>
    <message>
        <source>weighing</source>
        <translation>pesée</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Pesé</translation>
    </message>
    <message>
        <source>water per dry mass, as bagged</source>
        <translation>eau par masse sèche, tel qu’ensaché</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>humidité</translation>
    </message>
    <message>
        <source>Litre weight, &amp;dry</source>
        <translation>&amp;Poids du litre, sec</translation>
    </message>
    <message>
        <source>measured on this lot</source>
        <translation>mesuré sur ce lot</translation>
    </message>
    <message>
        <source>litre weight</source>
        <translation>poids du litre</translation>
    </message>
    <message>
        <source>Grain densit&amp;y</source>
        <translation>Densité des &amp;grains</translation>
    </message>
    <message>
        <source>grain density</source>
        <translation>densité des grains</translation>
    </message>
    <message>
        <source>Price of one &amp;bag</source>
        <translation>Pri&amp;x d’un sac</translation>
    </message>
    <message>
        <source>in your money</source>
        <translation>dans votre monnaie</translation>
    </message>
    <message>
        <source>price</source>
        <translation>prix</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Monnaie</translation>
    </message>
    <message>
        <source>your word for it; after the price</source>
        <translation>votre mot&#xa0;; après le prix</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>monnaie</translation>
    </message>
    <message>
        <source>Received on</source>
        <translation>Réceptionné le</translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>anything worth knowing next year</source>
        <translation>ce qu’il sera bon de savoir l’an prochain</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>bag %1</source>
        <translation>sac %1</translation>
    </message>
    <message>
        <source>Received bag %1</source>
        <translation>Sac %1 réceptionné</translation>
    </message>
    <message>
        <source>bag %1 removed</source>
        <translation>sac %1 supprimé</translation>
    </message>
    <message>
        <source>bag %1 taken into stock</source>
        <translation>sac %1 mis en stock</translation>
    </message>
    <message>
        <source>Bags and fractions</source>
        <translation>Sacs et fractions</translation>
    </message>
    <message>
        <source>Bins and tubs</source>
        <translation>Caisses et auges</translation>
    </message>
    <message>
        <source>Taken back from</source>
        <translation>Repris de</translation>
    </message>
    <message>
        <source>It stood in</source>
        <translation>Il était dans</translation>
    </message>
    <message>
        <source>the mix it was, like MX-01/1</source>
        <translation>le mélange qu’il était, comme MX-01/1</translation>
    </message>
    <message>
        <source>Taken back on</source>
        <translation>Repris le</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>arbre</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mélange</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>repris</translation>
    </message>
    <message>
        <source>No bag has these words.</source>
        <translation>Aucun sac n’a ces mots.</translation>
    </message>
    <message>
        <source>%1 of dry grain came; take it into stock to follow what is left.</source>
        <translation>%1 de grain sec sont arrivés&#xa0;; mettez-les en stock pour suivre ce qui reste.</translation>
    </message>
    <message>
        <source>Type the mass of a bag, or its litres and the litre weight, to take it into stock.</source>
        <translation>Saisissez la masse d’un sac, ou ses litres et le poids du litre, pour le mettre en stock.</translation>
    </message>
    <message>
        <source>Grade thi&amp;s bag</source>
        <translation>Contrôler ce sac</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humidité</translation>
    </message>
    <message>
        <source>The stock counts dry grain: type the moisture, or choose oven-dry for how the bag was weighed, to take it into stock.</source>
        <translation>Le stock compte le grain sec : indiquer l’humidité, ou choisir séché à l’étuve selon la pesée du sac, pour le prendre en stock.</translation>
    </message>
    <message>
        <source>Bag %1 stays: tests, mixes or the stock name it. Count 0 left where it is used up.</source>
        <translation>Le sac %1 reste&#xa0;: des essais, des mélanges ou le stock le citent. S’il est épuisé, comptez 0.</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masse</translation>
    </message>
    <message>
        <source>%1, and what came into stock with it</source>
        <translation>%1, et ce qui est entré en stock avec</translation>
    </message>
    <message>
        <source>Fractions on the shelf</source>
        <translation>Fractions en stock</translation>
    </message>
    <message>
        <source>a tree, like TR-06; empty if bought</source>
        <translation>un arbre, comme TR-06 ; vide si acheté</translation>
    </message>
    <message>
        <source>&amp;Material to receive</source>
        <translation>&amp;Matériau à réceptionner</translation>
    </message>
    <message>
        <source>What is in the bag</source>
        <translation>Ce que contient le sac</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Matériau</translation>
    </message>
    <message>
        <source>Bag %1 keeps its material, as a mix, a fraction or a bin has grain of it: receive the bag anew, and count 0 left of this one.</source>
        <translation>Le sac %1 garde son matériau, car un mélange, une fraction ou une caisse a de son grain&#xa0;: recevez le sac à nouveau et comptez 0 restant pour celui-ci.</translation>
    </message>
    <message>
        <source>Bag %1 is %2 now, on its sieve tests and on the bench too.</source>
        <translation>Le sac %1 est maintenant&#xa0;: %2, aussi dans ses essais de tamisage et sur l’établi.</translation>
    </message>
    <message>
        <source>Bag %1 is in stock already.</source>
        <translation>Le sac %1 est déjà en stock.</translation>
    </message>
    <message>
        <source>In stock now: %1 of bag %2.</source>
        <translation>En stock maintenant&#xa0;: %1 du sac %2.</translation>
    </message>
    <message>
        <source>No bag has these words, but fractions below have.</source>
        <translation>Aucun sac n’a ces mots, mais des fractions ci-dessous.</translation>
    </message>
    <message>
        <source>Fraction %1 is marked: choose the bag in its list to remove it.</source>
        <translation>La fraction %1 est marquée&#xa0;: choisir le sac dans sa liste pour le retirer.</translation>
    </message>
    <message>
        <source>a day like %1</source>
        <translation>un jour comme %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::BandRow</name>
    <message>
        <source>Wanted grain, from</source>
        <translation>Grain voulu, de</translation>
    </message>
    <message>
        <source>finest size wanted</source>
        <translation>taille la plus fine voulue</translation>
    </message>
    <message>
        <source>to</source>
        <translation>à</translation>
    </message>
    <message>
        <source>coarsest size wanted</source>
        <translation>taille la plus grosse voulue</translation>
    </message>
    <message>
        <source>wanted grain</source>
        <translation>grain voulu</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::BinsTab</name>
    <message>
        <source>%1 (since %2)</source>
        <translation>%1 (depuis %2)</translation>
    </message>
    <message>
        <source>Nothing is noted to lie in it now.</source>
        <translation>Rien n’est noté comme s’y trouvant maintenant.</translation>
    </message>
    <message>
        <source>It holds %1.</source>
        <translation>Elle contient %1.</translation>
    </message>
    <message>
        <source>What is taken out may contain each of: %1.</source>
        <translation>Ce qu’on en sort peut contenir chacun de&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1 of bin %2</source>
        <translation>%1 de la caisse %2</translation>
    </message>
    <message>
        <source>Bins and leftover tubs</source>
        <translation>Caisses et auges de restes</translation>
    </message>
    <message>
        <source>bin by number, name or material</source>
        <translation>caisse par numéro, nom ou matériau</translation>
    </message>
    <message>
        <source>No bins yet. A bin or leftover tub holds several lots; what is taken out of it may contain each of them.</source>
        <translation>Pas encore de caisses. Une caisse ou auge de restes contient plusieurs lots&#xa0;; ce qu’on en sort peut contenir chacun d’eux.</translation>
    </message>
    <message>
        <source>left</source>
        <translation>reste</translation>
    </message>
    <message>
        <source>Add a &amp;bin or tub</source>
        <translation>Ajouter une caisse ou a&amp;uge</translation>
    </message>
    <message>
        <source>What was tipped into it</source>
        <translation>Ce qui y a été versé</translation>
    </message>
    <message>
        <source>&amp;Put into the mix</source>
        <translation>Mettre &amp;dans le mélange</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>as it stands on the lid</source>
        <translation>comme écrit sur le couvercle</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>Material of the bin</source>
        <translation>Matériau de la caisse</translation>
    </message>
    <message>
        <source>of several materials</source>
        <translation>de plusieurs matériaux</translation>
    </message>
    <message>
        <source>material</source>
        <translation>matériau</translation>
    </message>
    <message>
        <source>&amp;Material</source>
        <translation>&amp;Matériau</translation>
    </message>
    <message>
        <source>&amp;Litre weight, dry</source>
        <translation>Poids du &amp;litre, sec</translation>
    </message>
    <message>
        <source>measured on what lies in it</source>
        <translation>mesuré sur ce qui s’y trouve</translation>
    </message>
    <message>
        <source>litre weight</source>
        <translation>poids du litre</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>anything worth knowing next year</source>
        <translation>ce qu’il sera bon de savoir l’an prochain</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>Tip in</source>
        <translation>Verser dedans</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Combien</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Le</translation>
    </message>
    <message>
        <source>It is empty</source>
        <translation>Elle est vide</translation>
    </message>
    <message>
        <source>leftovers</source>
        <translation>restes</translation>
    </message>
    <message>
        <source>bin %1</source>
        <translation>caisse %1</translation>
    </message>
    <message>
        <source>Put up bin %1</source>
        <translation>Caisse %1 installée</translation>
    </message>
    <message>
        <source>bin %1 removed</source>
        <translation>caisse %1 supprimée</translation>
    </message>
    <message>
        <source>Type the number of what is tipped in.</source>
        <translation>Saisissez le numéro de ce qui est versé.</translation>
    </message>
    <message>
        <source>%1 tipped into bin %2</source>
        <translation>%1 versé dans la caisse %2</translation>
    </message>
    <message>
        <source>Tipped %1 into bin %2</source>
        <translation>%1 versé dans la caisse %2</translation>
    </message>
    <message>
        <source>bin %1 emptied</source>
        <translation>caisse %1 vidée</translation>
    </message>
    <message>
        <source>Bin %1 is empty</source>
        <translation>La caisse %1 est vide</translation>
    </message>
    <message>
        <source>what</source>
        <translation>quoi</translation>
    </message>
    <message>
        <source>title</source>
        <translation>titre</translation>
    </message>
    <message>
        <source>tipped in</source>
        <translation>versé dedans</translation>
    </message>
    <message>
        <source>until</source>
        <translation>jusqu’à</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>sec</translation>
    </message>
    <message>
        <source>still in it</source>
        <translation>encore dedans</translation>
    </message>
    <message>
        <source>G&amp;rade this bin</source>
        <translation>Con&amp;trôler cette caisse</translation>
    </message>
    <message>
        <source>Bin %1 stays: tests, batches or the stock name it. Write down that it is empty instead.</source>
        <translation>La caisse %1 reste&#xa0;: des essais, des gâchées ou le stock la citent. Notez plutôt qu’elle est vide.</translation>
    </message>
    <message>
        <source>A bin can&apos;t be tipped into itself: name another.</source>
        <translation>Une caisse ne peut pas être versée en elle-même&#xa0;: nommez-en une autre.</translation>
    </message>
    <message>
        <source>no.</source>
        <translation>n°</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mélange</translation>
    </message>
    <message>
        <source>since</source>
        <translation>depuis</translation>
    </message>
    <message>
        <source>Mix left over on the shelf</source>
        <translation>Mélange restant en stock</translation>
    </message>
    <message>
        <source>Put this tub into the mix</source>
        <translation>Mettre cette auge dans le mélange</translation>
    </message>
    <message>
        <source>like %1</source>
        <translation>comme %1</translation>
    </message>
    <message>
        <source>bag, lot, batch or bin</source>
        <translation>sac, lot, gâchée ou caisse</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::CautionBar</name>
    <message>
        <source>Got it</source>
        <translation>Compris</translation>
    </message>
    <message>
        <source>Put away the caution: %1</source>
        <translation>Précaution rangée&#xa0;: %1</translation>
    </message>
    <message>
        <source>All of it</source>
        <translation>Tout lire</translation>
    </message>
    <message>
        <source>All of the caution: %1</source>
        <translation>Lire toute la précaution&#xa0;: %1</translation>
    </message>
    <message>
        <source>Less of it</source>
        <translation>Lire moins</translation>
    </message>
    <message>
        <source>Less of the caution: %1</source>
        <translation>Lire la précaution en bref&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ComparisonView</name>
    <message>
        <source>Mixes side by side</source>
        <translation>Mélanges côte à côte</translation>
    </message>
    <message>
        <source>air %1, water %2</source>
        <translation>air %1, eau %2</translation>
    </message>
    <message>
        <source>Mixes compared</source>
        <translation>Mélanges comparés</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Stop comparing</source>
        <translation>Arrêter la comparaison</translation>
    </message>
    <message>
        <source>on the bench</source>
        <translation>sur l’établi</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1; by pot test %2</source>
        <translation>%1 ; d’après l’essai en pot %2</translation>
    </message>
    <message>
        <source>%1; leaning on pot test %2</source>
        <translation>%1&#xa0;; appuyé sur l’essai en pot %2</translation>
    </message>
    <message>
        <source>water</source>
        <translation>eau</translation>
    </message>
    <message>
        <source>air</source>
        <translation>air</translation>
    </message>
    <message>
        <source>grain and trapped air</source>
        <translation>grain et air piégé</translation>
    </message>
    <message>
        <source>wanted grain</source>
        <translation>grain voulu</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::DayPage</name>
    <message>
        <source>Dust and lifting.</source>
        <translation>Poussière et levage.</translation>
    </message>
    <message>
        <source>Screen damp, outdoors, with a mask; from 16 kg lift with two or use a trolley, less at arm&apos;s length. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation>Criblez humide, dehors, avec un masque&#xa0;; dès 16 kg, levez à deux ou prenez un chariot, moins à bout de bras. Informations générales&#xa0;; les fiches de sécurité, règles locales et avis qualifiés priment.</translation>
    </message>
    <message>
        <source>No repotting day yet. Make one, then put trees on it: their litres, what to screen, buy and mix, and what is heavy follow by themselves. The season tells which trees are due.</source>
        <translation>Pas encore de journée de rempotage. Créez-en une, puis mettez-y des arbres&#xa0;: leurs litres, quoi cribler, acheter et mélanger, et ce qui est lourd suivent tout seuls. La saison dit quels arbres sont dus.</translation>
    </message>
    <message>
        <source>Trees of the day in working order</source>
        <translation>Arbres de la journée dans l’ordre de travail</translation>
    </message>
    <message>
        <source>Space ticks a tree off; plan, litres, buds, helper and note are written into the table.</source>
        <translation>Espace coche un arbre&#xa0;; plan, litres, bourgeons, aide et note s’écrivent dans le tableau.</translation>
    </message>
    <message>
        <source>What the day takes</source>
        <translation>Ce que demande la journée</translation>
    </message>
    <message>
        <source>Litres</source>
        <translation>Litres</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation>Gâchées</translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation>Levage</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Journée</translation>
    </message>
    <message>
        <source>Tree</source>
        <translation>Arbre</translation>
    </message>
    <message>
        <source>Screen and buy</source>
        <translation>Cribler et acheter</translation>
    </message>
    <message>
        <source>Lists</source>
        <translation>Listes</translation>
    </message>
    <message>
        <source>Left over</source>
        <translation>Reste</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>Repotting day</source>
        <translation>Journée de rempotage</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Journée</translation>
    </message>
    <message>
        <source>New day</source>
        <translation>Nouvelle journée</translation>
    </message>
    <message>
        <source>Make a new repotting day</source>
        <translation>Créer une journée de rempotage</translation>
    </message>
    <message>
        <source>Tree to put on the day</source>
        <translation>Arbre à mettre sur la journée</translation>
    </message>
    <message>
        <source>&amp;Tree</source>
        <translation>Ar&amp;bre</translation>
    </message>
    <message>
        <source>Put on the day</source>
        <translation>Mettre sur la journée</translation>
    </message>
    <message>
        <source>Put this tree on the day</source>
        <translation>Mettre cet arbre sur la journée</translation>
    </message>
    <message>
        <source>Order of work</source>
        <translation>Ordre de travail</translation>
    </message>
    <message>
        <source>buds</source>
        <translation>bourgeons</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mélange</translation>
    </message>
    <message>
        <source>helper</source>
        <translation>aide</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>&amp;Work by</source>
        <translation>&amp;Par</translation>
    </message>
    <message>
        <source>How so?</source>
        <translation>Pourquoi&#xa0;?</translation>
    </message>
    <message>
        <source>How the figures of the day come about</source>
        <translation>D’où viennent les chiffres de la journée</translation>
    </message>
    <message>
        <source>Tick off what has litres</source>
        <translation>Cocher ce qui a des litres</translation>
    </message>
    <message>
        <source>Tick off every tree whose litres were written</source>
        <translation>Cocher chaque arbre dont les litres ont été écrits</translation>
    </message>
    <message>
        <source>Day sheet...</source>
        <translation>Feuille du jour...</translation>
    </message>
    <message>
        <source>Batch cards...</source>
        <translation>Fiches de gâchée...</translation>
    </message>
    <message>
        <source>Pot labels...</source>
        <translation>Étiquettes...</translation>
    </message>
    <message>
        <source>Write as PDF: %1</source>
        <translation>Écrire en PDF&#xa0;: %1</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Le</translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>stands on the sheets</source>
        <translation>figure sur les feuilles</translation>
    </message>
    <message>
        <source>Tub</source>
        <translation>Auge</translation>
    </message>
    <message>
        <source>no batch is larger</source>
        <translation>aucune gâchée n’est plus grande</translation>
    </message>
    <message>
        <source>tub</source>
        <translation>auge</translation>
    </message>
    <message>
        <source>Scoop</source>
        <translation>Mesure</translation>
    </message>
    <message>
        <source>struck off level</source>
        <translation>arasée</translation>
    </message>
    <message>
        <source>scoop</source>
        <translation>mesure</translation>
    </message>
    <message>
        <source>Settling</source>
        <translation>Tassement</translation>
    </message>
    <message>
        <source>settling</source>
        <translation>tassement</translation>
    </message>
    <message>
        <source>Spill</source>
        <translation>Pertes</translation>
    </message>
    <message>
        <source>spill</source>
        <translation>pertes</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>weather, helpers, what to do better</source>
        <translation>temps, aides, ce qu’il faut mieux faire</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>Take the plan from the record</source>
        <translation>Prendre le plan du registre</translation>
    </message>
    <message>
        <source>Take pot litres from the tree&apos;s newest root-mass plan</source>
        <translation>Prendre les litres du pot du dernier plan de motte de l’arbre</translation>
    </message>
    <message>
        <source>Take off the day</source>
        <translation>Retirer de la journée</translation>
    </message>
    <message>
        <source>Take this tree off the day</source>
        <translation>Retirer cet arbre de la journée</translation>
    </message>
    <message>
        <source>Mix of this tree</source>
        <translation>Mélange de cet arbre</translation>
    </message>
    <message>
        <source>Pot of this tree</source>
        <translation>Pot de cet arbre</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>pot</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Mélange</translation>
    </message>
    <message>
        <source>Pot</source>
        <translation>Pot</translation>
    </message>
    <message>
        <source>New mix in the pot</source>
        <translation>Mélange neuf dans le pot</translation>
    </message>
    <message>
        <source>as it lies; empty: all the pot holds</source>
        <translation>en place&#xa0;; vide&#xa0;: tout ce que contient le pot</translation>
    </message>
    <message>
        <source>fill</source>
        <translation>remplissage</translation>
    </message>
    <message>
        <source>If it goes worse</source>
        <translation>Si cela va moins bien</translation>
    </message>
    <message>
        <source>new mix of the worst fall-back</source>
        <translation>mélange neuf du pire plan de repli</translation>
    </message>
    <message>
        <source>fall-back</source>
        <translation>repli</translation>
    </message>
    <message>
        <source>Kept root mass</source>
        <translation>Motte gardée</translation>
    </message>
    <message>
        <source>weighed with what clings to it; kg can be typed</source>
        <translation>pesée avec ce qui y tient&#xa0;; kg peut être saisi</translation>
    </message>
    <message>
        <source>kept root mass</source>
        <translation>motte gardée</translation>
    </message>
    <message>
        <source>Find a recipe from what is on the shelf</source>
        <translation>Chercher une recette avec ce qu’il y a en stock</translation>
    </message>
    <message>
        <source>The evening before</source>
        <translation>La veille au soir</translation>
    </message>
    <message>
        <source>In the morning</source>
        <translation>Le matin</translation>
    </message>
    <message>
        <source>What follows from the figures</source>
        <translation>Ce qui découle des chiffres</translation>
    </message>
    <message>
        <source>Space ticks, F2 changes a line, Delete takes it away.</source>
        <translation>Espace coche, F2 modifie une ligne, Suppr l’enlève.</translation>
    </message>
    <message>
        <source>one more line, then Enter</source>
        <translation>une ligne de plus, puis Entrée</translation>
    </message>
    <message>
        <source>One more line: %1</source>
        <translation>Une ligne de plus&#xa0;: %1</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Ajouter</translation>
    </message>
    <message>
        <source>list</source>
        <translation>liste</translation>
    </message>
    <message>
        <source>Mix that is left over</source>
        <translation>Mélange de reste</translation>
    </message>
    <message>
        <source>Made in all</source>
        <translation>Préparé en tout</translation>
    </message>
    <message>
        <source>Return to stock</source>
        <translation>Remettre en stock</translation>
    </message>
    <message>
        <source>Trees due by</source>
        <translation>Arbres dus d’ici le</translation>
    </message>
    <message>
        <source>Season sheet...</source>
        <translation>Feuille de saison...</translation>
    </message>
    <message>
        <source>Write the season as PDF</source>
        <translation>Écrire la saison en PDF</translation>
    </message>
    <message>
        <source>%1 of repotting day %2</source>
        <translation>%1 de la journée de rempotage %2</translation>
    </message>
    <message>
        <source>%1 of tree %2</source>
        <translation>%1 de l’arbre %2</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>plan</translation>
    </message>
    <message>
        <source>litres</source>
        <translation>litres</translation>
    </message>
    <message>
        <source>repotting day</source>
        <translation>journée de rempotage</translation>
    </message>
    <message>
        <source>Label the old pots</source>
        <translation>Étiqueter les anciens pots</translation>
    </message>
    <message>
        <source>repotting day %1</source>
        <translation>journée de rempotage %1</translation>
    </message>
    <message>
        <source>repotting day %1 removed</source>
        <translation>journée de rempotage %1 supprimée</translation>
    </message>
    <message>
        <source>tree %1</source>
        <translation>arbre %1</translation>
    </message>
    <message>
        <source>Tree %1 is done; take its tick back first.</source>
        <translation>L’arbre %1 est fait&#xa0;; retirez d’abord sa coche.</translation>
    </message>
    <message>
        <source>tree %1 taken off</source>
        <translation>arbre %1 retiré</translation>
    </message>
    <message>
        <source>Tree %1 can&apos;t be ticked off yet: see its note.</source>
        <translation>L’arbre %1 ne peut pas encore être coché&#xa0;: voir sa note.</translation>
    </message>
    <message>
        <source>Done: %1. Undo gives all back.</source>
        <translation>Fait&#xa0;: %1. Annuler rend tout.</translation>
    </message>
    <message>
        <source>Done: %1. By the record %2 is below nothing: count it.</source>
        <translation>Fait&#xa0;: %1. D’après les livres, %2 est sous zéro&#xa0;: recomptez.</translation>
    </message>
    <message>
        <source>Write what was made and what is left first.</source>
        <translation>Écrivez d’abord ce qui a été préparé et ce qui reste.</translation>
    </message>
    <message>
        <source>In stock: %1.</source>
        <translation>En stock&#xa0;: %1.</translation>
    </message>
    <message>
        <source>no trees yet</source>
        <translation>pas encore d’arbres</translation>
    </message>
    <message>
        <source>all are on it</source>
        <translation>tous y sont</translation>
    </message>
    <message>
        <source>Put trees on the day first.</source>
        <translation>Mettez d’abord des arbres sur la journée.</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>À acheter</translation>
    </message>
    <message>
        <source>For each tree</source>
        <translation>Pour chaque arbre</translation>
    </message>
    <message>
        <source>%1 by what was used: %2, the median of the last %3</source>
        <translation>%1 d’après l’usage&#xa0;: %2, la médiane des %3 derniers</translation>
    </message>
    <message>
        <source>Heaviest: %1, %2</source>
        <translation>Le plus lourd&#xa0;: %1, %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>By the record %1 is below nothing: count it</source>
        <translation>D’après les livres, %1 est sous zéro&#xa0;: recomptez</translation>
    </message>
    <message>
        <source>%1 of %2 trees done, sheet revision %3</source>
        <translation>%1 arbres sur %2 faits, feuille révision %3</translation>
    </message>
    <message>
        <source>No tree chosen</source>
        <translation>Aucun arbre choisi</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>aucun encore</translation>
    </message>
    <message>
        <source>No tree is due by then, as far as the record knows.</source>
        <translation>Aucun arbre n’est dû d’ici là, pour autant que le registre le sache.</translation>
    </message>
    <message>
        <source>Trees that are due and can&apos;t be added up yet</source>
        <translation>Arbres dus qu’on ne peut pas encore additionner</translation>
    </message>
    <message>
        <source>How the day adds up</source>
        <translation>Comment la journée s’additionne</translation>
    </message>
    <message>
        <source>day sheet</source>
        <translation>feuille du jour</translation>
    </message>
    <message>
        <source>batch cards</source>
        <translation>fiches de gâchée</translation>
    </message>
    <message>
        <source>pot labels</source>
        <translation>étiquettes de pot</translation>
    </message>
    <message>
        <source>season</source>
        <translation>saison</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Enregistré sous %1.</translation>
    </message>
    <message>
        <source>There is nothing to print yet: put trees with mix and pot on the day.</source>
        <translation>Rien à imprimer encore&#xa0;: mettez sur la journée des arbres avec mélange et pot.</translation>
    </message>
    <message>
        <source>Root-mass plans</source>
        <translation>Plans de motte</translation>
    </message>
    <message>
        <source>order of work</source>
        <translation>ordre de travail</translation>
    </message>
    <message>
        <source>sheet of repotting day %1 printed</source>
        <translation>feuille de la journée de rempotage %1 imprimée</translation>
    </message>
    <message>
        <source>empty: of the mix, else as learnt, else 0 %</source>
        <translation>vide&#xa0;: celui du mélange, sinon comme appris, sinon 0 %</translation>
    </message>
    <message>
        <source>Sphagnum of the shoulder</source>
        <translation>Sphaigne de l’épaulement</translation>
    </message>
    <message>
        <source>as it lies; from the plan, where there is a shoulder</source>
        <translation>en place&#xa0;; tiré du plan, s’il y a un épaulement</translation>
    </message>
    <message>
        <source>sphagnum</source>
        <translation>sphaigne</translation>
    </message>
    <message>
        <source>Top dressing of</source>
        <translation>Couche de surface de</translation>
    </message>
    <message>
        <source>a bag like K-07, a fraction or a material; its thickness stands at the pot</source>
        <translation>un sac comme K-07, une fraction ou un matériau&#xa0;; son épaisseur est notée au pot</translation>
    </message>
    <message>
        <source>top dressing</source>
        <translation>couche de surface</translation>
    </message>
    <message>
        <source>Corrected: tree %1, with its history and the stock. Undo gives all back.</source>
        <translation>Corrigé&#xa0;: arbre %1, avec son histoire et le stock. Annuler rend tout.</translation>
    </message>
    <message>
        <source>What was made and what is left of a mix: the leftover becomes a tub in stock, and what was spilt teaches the next day.</source>
        <translation>Ce qui a été préparé d’un mélange et ce qui reste&#xa0;: le reste devient une auge en stock, et les pertes instruisent la journée suivante.</translation>
    </message>
    <message>
        <source>Return the leftover to stock</source>
        <translation>Remettre le reste en stock</translation>
    </message>
    <message>
        <source>This day stays: trees were ticked off on it. Take their ticks back first.</source>
        <translation>Cette journée reste&#xa0;: des arbres y ont été cochés. Décochez-les d’abord.</translation>
    </message>
    <message>
        <source>There is no further tree to put on the day: add one on the Trees tab first.</source>
        <translation>Il n’y a plus d’arbre à mettre sur la journée&#xa0;: ajoutez-en d’abord un à l’onglet Arbres.</translation>
    </message>
    <message>
        <source>No open tree has its litres yet: write them under “poured in” first.</source>
        <translation>Aucun arbre ouvert n’a encore ses litres&#xa0;: écrivez-les d’abord sous «&#xa0;versé&#xa0;».</translation>
    </message>
    <message>
        <source>More can&apos;t be left over than was made: correct one of them.</source>
        <translation>Il ne peut pas rester plus que ce qui a été préparé&#xa0;: corrigez l’un des deux.</translation>
    </message>
    <message>
        <source>%1, removed</source>
        <translation>%1, supprimé</translation>
    </message>
    <message>
        <source>No tree of the day has a root-mass plan in the record: plan its root mass first.</source>
        <translation>Aucun arbre de la journée n’a de plan de motte dans le registre&#xa0;: planifiez d’abord sa motte.</translation>
    </message>
    <message>
        <source>The history of tree %1 has no cuts, as its root-mass plan can&apos;t be worked out: mend the plan, then tick the tree again.</source>
        <translation>L’histoire de l’arbre %1 n’a pas de coupes, car son plan de motte n’est pas calculable&#xa0;: corrigez le plan, puis cochez de nouveau l’arbre.</translation>
    </message>
    <message>
        <source>planned: %1, Enter takes it</source>
        <translation>prévu : %1, Entrée le prend</translation>
    </message>
    <message>
        <source>likely: %1, Enter takes it</source>
        <translation>probable : %1, Entrée le prend</translation>
    </message>
    <message>
        <source>Root-mass plans...</source>
        <translation>Plans de motte...</translation>
    </message>
    <message>
        <source>Find parts from the shelf</source>
        <translation>Chercher des parts du stock</translation>
    </message>
    <message>
        <source>root-mass plans</source>
        <translation>plans de motte</translation>
    </message>
    <message>
        <source>Short of grain, see “Screen and buy”: %1</source>
        <translation>Il manque du grain, voyez «&#xa0;Cribler et acheter&#xa0;»&#xa0;: %1</translation>
    </message>
    <message>
        <source>To mix</source>
        <translation>À mélanger</translation>
    </message>
    <message>
        <source>empty: of the mix, else as learnt, else 7 %</source>
        <translation>vide&#xa0;: comme le mélange, sinon comme appris, sinon 7 %</translation>
    </message>
    <message>
        <source>Done: %1. Undo ticks it off again.</source>
        <translation>Fait&#xa0;: %1. Annuler le coche à nouveau.</translation>
    </message>
    <message>
        <source>By its date the day is still to come: correct the date if the work is done.</source>
        <translation>D’après sa date, le jour est encore à venir&#xa0;: corrigez la date si le travail est fait.</translation>
    </message>
    <message>
        <source>%1 %2, %3 of %4 done</source>
        <comment>a day, its name, trees done, all its trees</comment>
        <translation>%1 %2, %3 sur %4 faits</translation>
    </message>
    <message>
        <source>a day like %1</source>
        <translation>un jour comme %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::DayRoom</name>
    <message>
        <source>Repotting da&amp;y</source>
        <translation>Rempota&amp;ge</translation>
    </message>
    <message>
        <source>&amp;New day</source>
        <translation>&amp;Nouvelle journée</translation>
    </message>
    <message>
        <source>Ctrl+Alt+N</source>
        <translation>Ctrl+Alt+N</translation>
    </message>
    <message>
        <source>&amp;Put the tree on the day</source>
        <translation>&amp;Mettre l’arbre sur la journée</translation>
    </message>
    <message>
        <source>Ctrl+Alt+A</source>
        <translation>Ctrl+Alt+A</translation>
    </message>
    <message>
        <source>Take the tree o&amp;ff the day</source>
        <translation>&amp;Retirer l’arbre de la journée</translation>
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
        <translation>&amp;Cocher l’arbre, ou décocher</translation>
    </message>
    <message>
        <source>Ctrl+Alt+K</source>
        <translation>Ctrl+Alt+K</translation>
    </message>
    <message>
        <source>Tick off &amp;what has litres</source>
        <translation>Cocher ce &amp;qui a des litres</translation>
    </message>
    <message>
        <source>Ctrl+Alt+E</source>
        <translation>Ctrl+Alt+E</translation>
    </message>
    <message>
        <source>&amp;Season</source>
        <translation>&amp;Saison</translation>
    </message>
    <message>
        <source>Ctrl+Alt+S</source>
        <translation>Ctrl+Alt+S</translation>
    </message>
    <message>
        <source>&amp;Remove the day</source>
        <translation>S&amp;upprimer la journée</translation>
    </message>
    <message>
        <source>Ctrl+Alt+Shift+Delete</source>
        <translation>Ctrl+Alt+Shift+Delete</translation>
    </message>
    <message>
        <source>&amp;Day sheet as PDF...</source>
        <translation>&amp;Feuille du jour en PDF...</translation>
    </message>
    <message>
        <source>Ctrl+Alt+D</source>
        <translation>Ctrl+Alt+D</translation>
    </message>
    <message>
        <source>&amp;Batch cards as PDF...</source>
        <translation>Fiches de gâc&amp;hée en PDF...</translation>
    </message>
    <message>
        <source>Ctrl+Alt+B</source>
        <translation>Ctrl+Alt+B</translation>
    </message>
    <message>
        <source>Pot &amp;labels as PDF...</source>
        <translation>É&amp;tiquettes de pot en PDF...</translation>
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
        <translation>Prendre son &amp;plan du registre</translation>
    </message>
    <message>
        <source>R&amp;oot-mass plans as PDF...</source>
        <translation>Plans de m&amp;otte en PDF...</translation>
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
        <translation>fait</translation>
    </message>
    <message>
        <source>to do</source>
        <translation>à faire</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>ticking a tree off takes its grain from the stock and writes its history and the log</source>
        <translation>cocher un arbre prend son grain du stock et écrit son histoire et le journal</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>arbre</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mélange</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>pot</translation>
    </message>
    <message>
        <source>the plan to follow; after the work, the one that was followed</source>
        <translation>le plan à suivre&#xa0;; après le travail, celui qui a été suivi</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>plan</translation>
    </message>
    <message>
        <source>main mix as it lies in the pot</source>
        <translation>mélange principal, en place dans le pot</translation>
    </message>
    <message>
        <source>in the pot</source>
        <translation>dans le pot</translation>
    </message>
    <message>
        <source>before settling and spill</source>
        <translation>avant tassement et pertes</translation>
    </message>
    <message>
        <source>to pour</source>
        <translation>à verser</translation>
    </message>
    <message>
        <source>scoops</source>
        <translation>mesures</translation>
    </message>
    <message>
        <source>litres that were poured in; they teach settling and spill</source>
        <translation>litres versés&#xa0;; ils instruisent le tassement et les pertes</translation>
    </message>
    <message>
        <source>poured in</source>
        <translation>versé</translation>
    </message>
    <message>
        <source>buds</source>
        <translation>bourgeons</translation>
    </message>
    <message>
        <source>helper</source>
        <translation>aide</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ExplanationPopup</name>
    <message>
        <source>Read on: %1</source>
        <translation>Lire la suite&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::FieldForm</name>
    <message>
        <source>%1 in %2</source>
        <translation>%1 dans %2</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::FigurePanel</name>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: not computed, %2</source>
        <translation>%1&#xa0;: non calculé, %2</translation>
    </message>
    <message>
        <source>nothing is known of its range</source>
        <translation>on ne sait rien de son étendue</translation>
    </message>
    <message>
        <source>%1: no range</source>
        <translation>%1&#xa0;: pas d’étendue</translation>
    </message>
    <message>
        <source>%1, in 90 of 100 cases: %2</source>
        <translation>%1, dans 90 cas sur 100&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::FindPanel</name>
    <message>
        <source>More</source>
        <translation>Plus</translation>
    </message>
    <message>
        <source>More: wishes, limits and the grain to choose from</source>
        <translation>Plus&#xa0;: souhaits, limites et grain au choix</translation>
    </message>
    <message>
        <source>Group of trees</source>
        <translation>Groupe d’arbres</translation>
    </message>
    <message>
        <source>Pot</source>
        <translation>Pot</translation>
    </message>
    <message>
        <source>Wishes</source>
        <translation>Souhaits</translation>
    </message>
    <message>
        <source>Dust is finer than</source>
        <translation>La poussière est sous</translation>
    </message>
    <message>
        <source>size of dust</source>
        <translation>taille de la poussière</translation>
    </message>
    <message>
        <source>1 mm, less in very small pots</source>
        <translation>1 mm, moins pour les très petits pots</translation>
    </message>
    <message>
        <source>Mixed litres needed</source>
        <translation>Litres mélangés voulus</translation>
    </message>
    <message>
        <source>litres needed</source>
        <translation>litres voulus</translation>
    </message>
    <message>
        <source>one filling: %1</source>
        <translation>un remplissage&#xa0;: %1</translation>
    </message>
    <message>
        <source>one filling of the pot</source>
        <translation>un remplissage du pot</translation>
    </message>
    <message>
        <source>Components, at most</source>
        <translation>Composants, au plus</translation>
    </message>
    <message>
        <source>components of a recipe</source>
        <translation>composants d’une recette</translation>
    </message>
    <message>
        <source>1 to 6</source>
        <translation>1 à 6</translation>
    </message>
    <message>
        <source>whole parts to scoop</source>
        <translation>parts entières à la pelle</translation>
    </message>
    <message>
        <source>free shares</source>
        <translation>parts libres</translation>
    </message>
    <message>
        <source>Recipes in</source>
        <translation>Recettes en</translation>
    </message>
    <message>
        <source>whole parts</source>
        <translation>parts entières</translation>
    </message>
    <message>
        <source>Parts in all, at most</source>
        <translation>Parts en tout, au plus</translation>
    </message>
    <message>
        <source>parts of a recipe</source>
        <translation>parts d’une recette</translation>
    </message>
    <message>
        <source>1 to 20</source>
        <translation>1 à 20</translation>
    </message>
    <message>
        <source>Grain to choose from</source>
        <translation>Grain au choix</translation>
    </message>
    <message>
        <source>take</source>
        <translation>prendre</translation>
    </message>
    <message>
        <source>stock, L</source>
        <translation>stock, L</translation>
    </message>
    <message>
        <source>price/L</source>
        <translation>prix/L</translation>
    </message>
    <message>
        <source>least %</source>
        <translation>min.&#xa0;%</translation>
    </message>
    <message>
        <source>most %</source>
        <translation>max.&#xa0;%</translation>
    </message>
    <message>
        <source>Keep for this group</source>
        <translation>Retenir pour ce groupe</translation>
    </message>
    <message>
        <source>Start this group with these wishes from now on</source>
        <translation>Commencer désormais ce groupe avec ces souhaits</translation>
    </message>
    <message>
        <source>group of trees</source>
        <translation>groupe d’arbres</translation>
    </message>
    <message>
        <source>wishes for %1</source>
        <translation>souhaits pour %1</translation>
    </message>
    <message>
        <source>pot %1</source>
        <translation>pot %1</translation>
    </message>
    <message>
        <source>wish: %1</source>
        <translation>souhait&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 as a candidate</source>
        <translation>%1 comme candidat</translation>
    </message>
    <message>
        <source>choose a group</source>
        <translation>choisir un groupe</translation>
    </message>
    <message>
        <source>as typed under Pot</source>
        <translation>comme saisi sous Pot</translation>
    </message>
    <message>
        <source>choose a pot, or type its lengths</source>
        <translation>choisissez un pot, ou saisissez ses dimensions</translation>
    </message>
    <message>
        <source>%1 deep to the fill line, %2; wanted grain and litres below are for this pot.</source>
        <translation>profond de %1 jusqu’au niveau, %2&#xa0;; le grain voulu et les litres ci-dessous sont pour ce pot.</translation>
    </message>
    <message>
        <source>stock, %1</source>
        <translation>stock, %1</translation>
    </message>
    <message>
        <source>%1 (not sieved)</source>
        <translation>%1 (non tamisé)</translation>
    </message>
    <message>
        <source>%1 of it are reserved for a mix</source>
        <translation>%1 en sont réservés pour un mélange</translation>
    </message>
    <message>
        <source>See the marked fields under “More”.</source>
        <translation>Voir les champs marqués sous «&#xa0;Plus&#xa0;».</translation>
    </message>
    <message>
        <source>the share of a candidate</source>
        <translation>la part d’un candidat</translation>
    </message>
    <message>
        <source>Choose a group first</source>
        <translation>Choisissez d’abord un groupe</translation>
    </message>
    <message>
        <source>Type its lengths under “By hand”, or choose one of the record.</source>
        <translation>Saisissez ses dimensions sous «&#xa0;À la main&#xa0;», ou choisissez-en un du registre.</translation>
    </message>
    <message>
        <source>one filling of each pot: %1</source>
        <translation>un remplissage de chaque pot&#xa0;: %1</translation>
    </message>
    <message>
        <source>Pots the mix should be good in too</source>
        <translation>Pots où le mélange doit aussi être bon</translation>
    </message>
    <message>
        <source>good in these pots too</source>
        <translation>bon aussi dans ces pots</translation>
    </message>
    <message>
        <source>filling, L</source>
        <translation>remplissage, L</translation>
    </message>
    <message>
        <source>All groups...</source>
        <translation>Tous les groupes...</translation>
    </message>
    <message>
        <source>See, change and add groups of trees</source>
        <translation>Voir, changer et ajouter des groupes d’arbres</translation>
    </message>
    <message>
        <source>further pot %1</source>
        <translation>autre pot %1</translation>
    </message>
    <message>
        <source>filling, %1</source>
        <translation>remplissage, %1</translation>
    </message>
    <message>
        <source>%1, %2 reserved</source>
        <translation>%1, %2 réservé</translation>
    </message>
    <message>
        <source>“%1” cannot be had: nothing on the shelf comes near it, and so no mix does. Loosen it, or add grain.</source>
        <translation>«&#xa0;%1&#xa0;» est impossible&#xa0;: rien en stock n’en approche, donc aucun mélange non plus. Assouplissez-le, ou ajoutez du grain.</translation>
    </message>
    <message>
        <source>Not known how much of it there is: type it, or leave it open.</source>
        <translation>On ne sait pas combien il en reste : saisissez-le ou laissez ouvert.</translation>
    </message>
    <message>
        <source>Its bag has no price or no litres: write them down there, or type what a litre costs.</source>
        <translation>Son sac n&apos;a pas de prix ou pas de litres : notez-les là-bas, ou saisissez ce que coûte un litre.</translation>
    </message>
    <message>
        <source>Only bags have a price: type what a litre of this is worth, or leave it open.</source>
        <translation>Seuls les sacs ont un prix : saisissez ce que vaut un litre de ceci, ou laissez ouvert.</translation>
    </message>
    <message>
        <source>The wanted grain is now %1 to %2, as the group asks; undo brings back what was typed.</source>
        <translation>Le grain voulu est maintenant de %1 à %2, comme le groupe le demande&#xa0;; Annuler rend ce qui était saisi.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::GoneNotice</name>
    <message>
        <source>Bring it back with what I typed</source>
        <translation>Le rétablir avec ma saisie</translation>
    </message>
    <message>
        <source>Let it go</source>
        <translation>Ne pas le rétablir</translation>
    </message>
    <message>
        <source>What was typed into %1 and not saved: %2</source>
        <translation>Ce qui a été saisi dans %1 et non enregistré&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 brought back</source>
        <translation>%1 rétabli</translation>
    </message>
    <message>
        <source>%1 is not in the record any more: it was removed or undone meanwhile, perhaps in another window. What you typed stands here and is not saved yet.</source>
        <translation>%1 n’est plus dans le registre&#xa0;: supprimé ou annulé entre-temps, peut-être dans une autre fenêtre. Votre saisie reste ici et n’est pas encore enregistrée.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::GradingChart</name>
    <message>
        <source>Grading chart</source>
        <translation>Diagramme granulométrique</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>%1: %2 passes</source>
        <translation>%1&#xa0;: %2 passe</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::GrainForm</name>
    <message>
        <source>none: own figures only</source>
        <translation>aucun&#xa0;: vos chiffres seulement</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Matériau</translation>
    </message>
    <message>
        <source>&amp;Material</source>
        <translation>&amp;Matériau</translation>
    </message>
    <message>
        <source>material</source>
        <translation>matériau</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>%1 (typical)</source>
        <translation>%1 (usuel)</translation>
    </message>
    <message>
        <source>&amp;Litre weight, dry</source>
        <translation>Poids du &amp;litre, sec</translation>
    </message>
    <message>
        <source>litre weight</source>
        <translation>poids du litre</translation>
    </message>
    <message>
        <source>weigh a litre</source>
        <translation>peser un litre</translation>
    </message>
    <message>
        <source>Gr&amp;ain density</source>
        <translation>&amp;Densité des grains</translation>
    </message>
    <message>
        <source>grain density</source>
        <translation>densité des grains</translation>
    </message>
    <message>
        <source>dry mass of the grain with its inner pores</source>
        <translation>masse sèche du grain avec ses pores internes</translation>
    </message>
    <message>
        <source>Soli&amp;d density</source>
        <translation>Densité du &amp;solide</translation>
    </message>
    <message>
        <source>solid density</source>
        <translation>densité du solide</translation>
    </message>
    <message>
        <source>dry mass of the solid without pores</source>
        <translation>masse sèche du solide sans pores</translation>
    </message>
    <message>
        <source>&amp;Water after 24 h</source>
        <translation>&amp;Eau après 24 h</translation>
    </message>
    <message>
        <source>water absorption</source>
        <translation>absorption d’eau</translation>
    </message>
    <message>
        <source>water in the soaked, surface-dry grain, of its dry mass</source>
        <translation>eau du grain trempé, sec en surface, de sa masse sèche</translation>
    </message>
    <message>
        <source>%1 Typical figures stand in for what is not measured.</source>
        <translation>%1 Des chiffres usuels remplacent ce qui n’est pas mesuré.</translation>
    </message>
    <message>
        <source>Without a material the litre weight must be weighed before the component can go into the mix.</source>
        <translation>Sans matériau, le poids du litre doit être pesé avant que le composant puisse entrer dans le mélange.</translation>
    </message>
    <message>
        <source>of one litre, loosely poured</source>
        <translation>d’un litre, versé sans tasser</translation>
    </message>
    <message>
        <source>Sieve, across</source>
        <translation>Tamis, largeur</translation>
    </message>
    <message>
        <source>width of the sieves</source>
        <translation>largeur des tamis</translation>
    </message>
    <message>
        <source>inside its frame; shows an overloaded sieve</source>
        <translation>dans son cadre&#xa0;; montre un tamis surchargé</translation>
    </message>
    <message>
        <source>Water in the sample</source>
        <translation>Eau dans l’échantillon</translation>
    </message>
    <message>
        <source>moisture of the sample</source>
        <translation>humidité de l’échantillon</translation>
    </message>
    <message>
        <source>as sieved, of its dry mass; empty if dry</source>
        <translation>tel que tamisé, de sa masse sèche&#xa0;; vide si sec</translation>
    </message>
    <message>
        <source>Washed, dry</source>
        <translation>Lavé, sec</translation>
    </message>
    <message>
        <source>washed mass of the sample</source>
        <translation>masse lavée de l’échantillon</translation>
    </message>
    <message>
        <source>of the sample, if its dust was washed out</source>
        <translation>de l’échantillon, si la poussière a été lavée</translation>
    </message>
    <message>
        <source>The sample that was sieved</source>
        <translation>L’échantillon tamisé</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::GroupsPage</name>
    <message>
        <source>Groups of trees</source>
        <translation>Groupes d’arbres</translation>
    </message>
    <message>
        <source>group</source>
        <translation>groupe</translation>
    </message>
    <message>
        <source>whose</source>
        <translation>de qui</translation>
    </message>
    <message>
        <source>&amp;New, like this one</source>
        <translation>&amp;Nouveau, comme celui-ci</translation>
    </message>
    <message>
        <source>Add a group of your own that starts with the wishes of the chosen one</source>
        <translation>Ajouter un groupe à vous qui commence avec les souhaits de celui choisi</translation>
    </message>
    <message>
        <source>&amp;Leave out</source>
        <translation>&amp;Laisser de côté</translation>
    </message>
    <message>
        <source>Do not offer this group any more; a group of your own goes</source>
        <translation>Ne plus proposer ce groupe&#xa0;; un groupe à vous disparaît</translation>
    </message>
    <message>
        <source>Re&amp;store</source>
        <translation>Ré&amp;tablir</translation>
    </message>
    <message>
        <source>Back to common practice, or offered again</source>
        <translation>Retour à la pratique courante, ou de nouveau proposé</translation>
    </message>
    <message>
        <source>Find &amp;parts for it</source>
        <translation>Chercher des &amp;parts pour lui</translation>
    </message>
    <message>
        <source>Find parts for this group</source>
        <translation>Chercher des parts pour ce groupe</translation>
    </message>
    <message>
        <source>Wishes of this group</source>
        <translation>Souhaits de ce groupe</translation>
    </message>
    <message>
        <source>Na&amp;me</source>
        <translation>No&amp;m</translation>
    </message>
    <message>
        <source>as you call these trees</source>
        <translation>comme vous appelez ces arbres</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>Trees it is for</source>
        <translation>Arbres concernés</translation>
    </message>
    <message>
        <source>any</source>
        <translation>tous</translation>
    </message>
    <message>
        <source>trees it is for</source>
        <translation>arbres à qui il va</translation>
    </message>
    <message>
        <source>Wanted grain from</source>
        <translation>Grain voulu de</translation>
    </message>
    <message>
        <source>the finest grain that is wanted</source>
        <translation>le grain le plus fin voulu</translation>
    </message>
    <message>
        <source>wanted grain</source>
        <translation>grain voulu</translation>
    </message>
    <message>
        <source>Wanted grain to</source>
        <translation>Grain voulu à</translation>
    </message>
    <message>
        <source>the coarsest grain that is wanted</source>
        <translation>le grain le plus gros voulu</translation>
    </message>
    <message>
        <source>Dust is finer than</source>
        <translation>La poussière est sous</translation>
    </message>
    <message>
        <source>what clogs a pot of these trees</source>
        <translation>ce qui colmate un pot de ces arbres</translation>
    </message>
    <message>
        <source>size of dust</source>
        <translation>taille de la poussière</translation>
    </message>
    <message>
        <source>Mi&amp;x to start from</source>
        <translation>Mélange &amp;de départ</translation>
    </message>
    <message>
        <source>parts and names: 5 akadama : 3 pumice</source>
        <translation>parts et noms&#xa0;: 5 akadama&#xa0;: 3 pumice</translation>
    </message>
    <message>
        <source>mix to start from</source>
        <translation>mélange de départ</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>what else you go by</source>
        <translation>ce qui vous guide encore</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>%1 of the group %2</source>
        <translation>%1 du groupe %2</translation>
    </message>
    <message>
        <source>wishes</source>
        <translation>souhaits</translation>
    </message>
    <message>
        <source>my %1</source>
        <translation>mes %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>name of a group, number</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>group %1</source>
        <translation>groupe %1</translation>
    </message>
    <message>
        <source>group %1 removed</source>
        <translation>groupe %1 supprimé</translation>
    </message>
    <message>
        <source>offer</source>
        <translation>proposer</translation>
    </message>
    <message>
        <source>%1 is not offered any more; “Restore” brings it back.</source>
        <translation>%1 n’est plus proposé&#xa0;; «&#xa0;Rétablir&#xa0;» le ramène.</translation>
    </message>
    <message>
        <source>group %1 restored</source>
        <translation>groupe %1 rétabli</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Remo&amp;ve</source>
        <translation>&amp;Supprimer</translation>
    </message>
    <message>
        <source>What a mix for these trees should be like, and so what a search for parts starts with. What a tree&apos;s roots bear goes by the group on its own page. It is common practice, never the only way: your climate, your water and your hands know better.</source>
        <translation>Comment un mélange pour ces arbres doit être, donc par quoi commence la recherche de parts. Ce que supportent les racines d’un arbre suit le groupe sur sa propre page. C’est la pratique courante, jamais la seule voie : votre climat, votre eau et vos mains le savent mieux.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::HowButton</name>
    <message>
        <source>How so? Formula, numbers and source</source>
        <translation>Pourquoi&#xa0;? Formule, chiffres et source</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>How so: %1</source>
        <translation>Pourquoi&#xa0;: %1</translation>
    </message>
    <message>
        <source>How so: %1, %2</source>
        <translation>Pourquoi&#xa0;: %1, %2</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ImportPage</name>
    <message>
        <source>Where a record here differs, the file&apos;s takes its place</source>
        <translation>Là où un enregistrement d’ici diffère, celui du fichier prend sa place</translation>
    </message>
    <message>
        <source>Take them in</source>
        <translation>Les reprendre</translation>
    </message>
    <message>
        <source>Read the file again</source>
        <translation>Relire le fichier</translation>
    </message>
    <message>
        <source>Records from a file</source>
        <translation>Enregistrements d’un fichier</translation>
    </message>
    <message>
        <source>Another file...</source>
        <translation>Autre fichier...</translation>
    </message>
    <message>
        <source>The &amp;list holds</source>
        <translation>La &amp;liste contient</translation>
    </message>
    <message>
        <source>What the list holds</source>
        <translation>Ce que contient la liste</translation>
    </message>
    <message>
        <source>what its columns say</source>
        <translation>ce que disent ses colonnes</translation>
    </message>
    <message>
        <source>bags</source>
        <translation>sacs</translation>
    </message>
    <message>
        <source>sieve tests</source>
        <translation>essais de tamisage</translation>
    </message>
    <message>
        <source>trees</source>
        <translation>arbres</translation>
    </message>
    <message>
        <source>What is wrong in the file, by row</source>
        <translation>Ce qui est faux dans le fichier, par ligne</translation>
    </message>
    <message>
        <source>Records of the file and what becomes of them</source>
        <translation>Enregistrements du fichier et ce qu’ils deviennent</translation>
    </message>
    <message>
        <source>One moment...</source>
        <translation>Un instant...</translation>
    </message>
    <message>
        <source>Lists and records (*.csv *.json);;All files (*)</source>
        <translation>Listes et enregistrements (*.csv *.json);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>No file is chosen yet.</source>
        <translation>Aucun fichier n’est encore choisi.</translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) to take in</source>
        <translation>
            <numerusform>%n enregistrement à reprendre</numerusform>
            <numerusform>%n enregistrements à reprendre</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n here already</source>
        <translation>
            <numerusform>%n déjà ici</numerusform>
            <numerusform>%n déjà ici</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fault(s): mend them in the file and read it again; until then nothing is taken in</source>
        <translation>
            <numerusform>%n erreur&#xa0;: corrigez-la dans le fichier et relisez-le&#xa0;; d’ici là rien n’est repris</numerusform>
            <numerusform>%n erreurs&#xa0;: corrigez-les dans le fichier et relisez-le&#xa0;; d’ici là rien n’est repris</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) taken in; one undo takes them back.</source>
        <translation>
            <numerusform>%n enregistrement repris&#xa0;; une annulation le retire.</numerusform>
            <numerusform>%n enregistrements repris&#xa0;; une annulation les retire.</numerusform>
        </translation>
    </message>
    <message>
        <source>A list of bags, sieve tests, pots or trees as a spreadsheet saves it (CSV), or records, one or all, as JSON. Nothing is taken in before you say so, taking the same file in twice adds nothing twice, and one undo takes all of it back.</source>
        <translation>Une liste de sacs, d’essais de tamisage, de pots ou d’arbres telle qu’un tableur l’enregistre (CSV), ou des enregistrements, un seul ou tous, en JSON. Rien n’est repris avant que vous le disiez&#xa0;; reprendre deux fois le même fichier n’ajoute rien en double, et une annulation retire tout.</translation>
    </message>
    <message>
        <source>pots</source>
        <translation>pots</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>%1 (taken in all the same)</source>
        <translation>%1 (repris quand même)</translation>
    </message>
    <message>
        <source>line %1, character %2</source>
        <translation>ligne %1, caractère %2</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>ligne %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ImportTableModel</name>
    <message>
        <source>the next free</source>
        <translation>le suivant</translation>
    </message>
    <message>
        <source>no.</source>
        <translation>n°</translation>
    </message>
    <message>
        <source>what</source>
        <translation>quoi</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>genre</translation>
    </message>
    <message>
        <source>what becomes of it</source>
        <translation>ce qu’il devient</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::JumpBox</name>
    <message>
        <source>Go to</source>
        <translation>Aller à</translation>
    </message>
    <message>
        <source>Bag, mix, tree or what to do</source>
        <translation>Sac, mélange, arbre ou chose à faire</translation>
    </message>
    <message>
        <source>like K-07, or pumice</source>
        <translation>comme K-07, ou ponce</translation>
    </message>
    <message>
        <source>What fits</source>
        <translation>Ce qui convient</translation>
    </message>
    <message>
        <source>nothing fits</source>
        <translation>rien ne convient</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::LogPage</name>
    <message>
        <source>Log, newest first</source>
        <translation>Journal, le plus récent d’abord</translation>
    </message>
    <message>
        <source>F&amp;ind</source>
        <translation>Ch&amp;ercher</translation>
    </message>
    <message>
        <source>any word of the log</source>
        <translation>un mot quelconque du journal</translation>
    </message>
    <message>
        <source>&amp;About</source>
        <translation>Au &amp;sujet de</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Du</translation>
    </message>
    <message>
        <source>to</source>
        <translation>à</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Jour</translation>
    </message>
    <message>
        <source>&amp;Write down</source>
        <translation>Écrire</translation>
    </message>
    <message>
        <source>what you saw or did; with About above it is kept there too</source>
        <translation>ce que vous avez vu ou fait&#xa0;; si un sujet est donné plus haut, c’est gardé là aussi</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>Conser&amp;ver</translation>
    </message>
    <message>
        <source>Keep this line in the log</source>
        <translation>Conserver cette ligne dans le journal</translation>
    </message>
    <message>
        <source>What it is linked to</source>
        <translation>À quoi c’est lié</translation>
    </message>
    <message>
        <source>Linked to %1</source>
        <translation>Lié à %1</translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translation>rien encore</translation>
    </message>
    <message>
        <source>line in the log</source>
        <translation>ligne du journal</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Journal</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Ce qui s’est passé</translation>
    </message>
    <message>
        <source>Where grain went</source>
        <translation>Où est allé le grain</translation>
    </message>
    <message>
        <source>Sick trees</source>
        <translation>Arbres malades</translation>
    </message>
    <message>
        <source>A small change is a field that was typed into: a note, a mass, a name. Everything else that happened stands here anyway.</source>
        <translation>Un petit changement est un champ où l’on a saisi&#xa0;: une note, une masse, un nom. Tout le reste de ce qui s’est passé figure ici de toute façon.</translation>
    </message>
    <message>
        <source>&amp;Small changes too</source>
        <translation>&amp;Petits changements aussi</translation>
    </message>
    <message>
        <source>&amp;Small changes too (%1)</source>
        <translation>&amp;Petits changements aussi (%1)</translation>
    </message>
    <message>
        <source>Show small changes too</source>
        <translation>Montrer aussi les petits changements</translation>
    </message>
    <message>
        <source>Show small changes too, %1 are left out</source>
        <translation>Montrer aussi les petits changements, %1 sont laissés de côté</translation>
    </message>
    <message>
        <source>Nothing fits Find, About and the days together; empty one of them to see more.</source>
        <translation>Rien ne répond à la fois à la recherche, au sujet et aux jours&#xa0;; videz l’un d’eux pour en voir plus.</translation>
    </message>
    <message>
        <source>&amp;Keep with %1</source>
        <translation>&amp;Garder avec %1</translation>
    </message>
    <message>
        <source>Keep this line in the log and with %1</source>
        <translation>Garder cette ligne dans le journal et avec %1</translation>
    </message>
    <message>
        <source>like %1</source>
        <translation>comme %1</translation>
    </message>
    <message>
        <source>%1 is no day like %2.</source>
        <translation>%1 n’est pas un jour comme %2.</translation>
    </message>
    <message>
        <source>a bag, its lot, a mix or a tree, like K-07</source>
        <translation>un sac, son lot, un mélange ou un arbre, comme K-07</translation>
    </message>
    <message>
        <source>The whole log is shown.</source>
        <translation>Le journal entier est affiché.</translation>
    </message>
    <message>
        <source>Type a bag, its lot, a mix or a tree into About to see what it is linked to; where its grain went in the end stands on the next tab.</source>
        <translation>Saisir un sac, son lot, un mélange ou un arbre comme sujet pour voir à quoi il est lié&#xa0;; où son grain est allé finalement se lit dans l’onglet suivant.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::LotChart</name>
    <message>
        <source>No lots to compare: type the wanted grain, and grade bags of one material.</source>
        <translation>Pas de lots à comparer&#xa0;: saisissez le grain voulu et contrôlez des sacs d’un même matériau.</translation>
    </message>
    <message numerus="yes">
        <source>%n lot(s), oldest first; the last, %1: %2.</source>
        <translation>
            <numerusform>Un lot, %1&#xa0;: %2.</numerusform>
            <numerusform>%n lots, le plus ancien d’abord&#xa0;; le dernier, %1&#xa0;: %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A usual range needs %n earlier lot(s).</source>
        <translation>
            <numerusform>Une étendue usuelle demande %n lot précédent.</numerusform>
            <numerusform>Une étendue usuelle demande %n lots précédents.</numerusform>
        </translation>
    </message>
    <message>
        <source>All within what is usual.</source>
        <translation>Tout est dans l’usuel.</translation>
    </message>
    <message>
        <source>Outside what is usual: %1.</source>
        <translation>Hors de l’usuel&#xa0;: %1.</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>sac</translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>usual</source>
        <translation>usuel</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>Dust, size, yield and air from lot to lot</source>
        <translation>Poussière, taille, rendement et air d’un lot à l’autre</translation>
    </message>
    <message>
        <source>unusual</source>
        <translation>inhabituel</translation>
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
        <translation>Sacs</translation>
    </message>
    <message>
        <source>Sieving</source>
        <translation>Tamisage</translation>
    </message>
    <message>
        <source>Mixes</source>
        <translation>Mélanges</translation>
    </message>
    <message>
        <source>Pots and trees</source>
        <translation>Pots et arbres</translation>
    </message>
    <message>
        <source>Repotting day</source>
        <translation>Journée de rempotage</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Journal</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Fichier</translation>
    </message>
    <message>
        <source>bench cleared</source>
        <translation>établi vidé</translation>
    </message>
    <message>
        <source>&amp;Open sieve tests...</source>
        <translation>&amp;Ouvrir des essais de tamisage...</translation>
    </message>
    <message>
        <source>Ctrl+Shift+O</source>
        <translation>Ctrl+Shift+O</translation>
    </message>
    <message>
        <source>&amp;Demonstration</source>
        <translation>&amp;Démonstration</translation>
    </message>
    <message>
        <source>Ctrl+Shift+D</source>
        <translation>Ctrl+Shift+D</translation>
    </message>
    <message>
        <source>Save the &amp;picture or its data...</source>
        <translation>&amp;Enregistrer l’image ou ses données...</translation>
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
        <translation>Ré&amp;glages</translation>
    </message>
    <message>
        <source>Ctrl+,</source>
        <translation>Ctrl+,</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Quitter</translation>
    </message>
    <message>
        <source>Ctrl+Q</source>
        <translation>Ctrl+Q</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Édition</translation>
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
        <translation>&amp;Copier les cellules</translation>
    </message>
    <message>
        <source>&amp;Paste into the stack</source>
        <translation>C&amp;oller dans la colonne</translation>
    </message>
    <message>
        <source>C&amp;lear cells</source>
        <translation>&amp;Vider les cellules</translation>
    </message>
    <message>
        <source>&amp;New sieve above</source>
        <translation>&amp;Nouveau tamis au-dessus</translation>
    </message>
    <message>
        <source>&amp;Remove sieve</source>
        <translation>&amp;Supprimer le tamis</translation>
    </message>
    <message>
        <source>Ctrl+Delete</source>
        <translation>Ctrl+Delete</translation>
    </message>
    <message>
        <source>&amp;Component</source>
        <translation>&amp;Composant</translation>
    </message>
    <message>
        <source>&amp;Next component</source>
        <translation>Composant &amp;suivant</translation>
    </message>
    <message>
        <source>Ctrl+PgDown</source>
        <translation>Ctrl+PgDown</translation>
    </message>
    <message>
        <source>&amp;Previous component</source>
        <translation>Composant &amp;précédent</translation>
    </message>
    <message>
        <source>Ctrl+PgUp</source>
        <translation>Ctrl+PgUp</translation>
    </message>
    <message>
        <source>&amp;Add a component</source>
        <translation>&amp;Ajouter un composant</translation>
    </message>
    <message>
        <source>Ctrl+Shift+N</source>
        <translation>Ctrl+Shift+N</translation>
    </message>
    <message>
        <source>&amp;Remove this component</source>
        <translation>Supp&amp;rimer ce composant</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Delete</source>
        <translation>Ctrl+Shift+Delete</translation>
    </message>
    <message>
        <source>&amp;Further sample of this bag</source>
        <translation>Autre échantillon de &amp;ce sac</translation>
    </message>
    <message>
        <source>Ctrl+Shift+F</source>
        <translation>Ctrl+Shift+F</translation>
    </message>
    <message>
        <source>Remove the &amp;last sample</source>
        <translation>Supprimer le &amp;dernier échantillon</translation>
    </message>
    <message>
        <source>Ctrl+Alt+F</source>
        <translation>Ctrl+Alt+F</translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation>&amp;Aller</translation>
    </message>
    <message>
        <source>&amp;Any bag, mix or action...</source>
        <translation>Sac, mélange ou acti&amp;on...</translation>
    </message>
    <message>
        <source>Ctrl+K</source>
        <translation>Ctrl+K</translation>
    </message>
    <message>
        <source>&amp;Sieve test</source>
        <translation>&amp;Essai de tamisage</translation>
    </message>
    <message>
        <source>Ctrl+Shift+1</source>
        <translation>Ctrl+Shift+1</translation>
    </message>
    <message>
        <source>&amp;Grain</source>
        <translation>Gra&amp;in</translation>
    </message>
    <message>
        <source>Ctrl+Shift+2</source>
        <translation>Ctrl+Shift+2</translation>
    </message>
    <message>
        <source>C&amp;urve of this test</source>
        <translation>Co&amp;urbe de cet essai</translation>
    </message>
    <message>
        <source>Ctrl+Shift+3</source>
        <translation>Ctrl+Shift+3</translation>
    </message>
    <message>
        <source>&amp;Lot to lot</source>
        <translation>&amp;Lot à lot</translation>
    </message>
    <message>
        <source>Ctrl+Shift+4</source>
        <translation>Ctrl+Shift+4</translation>
    </message>
    <message>
        <source>&amp;Verdict on the bag</source>
        <translation>Verdic&amp;t sur le sac</translation>
    </message>
    <message>
        <source>Ctrl+Shift+5</source>
        <translation>Ctrl+Shift+5</translation>
    </message>
    <message>
        <source>S&amp;creen this bag</source>
        <translation>Cri&amp;bler ce sac</translation>
    </message>
    <message>
        <source>Ctrl+Shift+6</source>
        <translation>Ctrl+Shift+6</translation>
    </message>
    <message>
        <source>&amp;Pot</source>
        <translation>&amp;Pot</translation>
    </message>
    <message>
        <source>Ctrl+Alt+4</source>
        <translation>Ctrl+Alt+4</translation>
    </message>
    <message>
        <source>Curves of the &amp;mix</source>
        <translation>Courbes du &amp;mélange</translation>
    </message>
    <message>
        <source>Ctrl+Alt+5</source>
        <translation>Ctrl+Alt+5</translation>
    </message>
    <message>
        <source>Pot in s&amp;ection</source>
        <translation>Pot en &amp;coupe</translation>
    </message>
    <message>
        <source>Ctrl+Alt+6</source>
        <translation>Ctrl+Alt+6</translation>
    </message>
    <message>
        <source>Litres &amp;in and out</source>
        <translation>Litres entra&amp;nt et sortant</translation>
    </message>
    <message>
        <source>Ctrl+Alt+7</source>
        <translation>Ctrl+Alt+7</translation>
    </message>
    <message>
        <source>Mi&amp;xes side by side</source>
        <translation>Mélan&amp;ges côte à côte</translation>
    </message>
    <message>
        <source>Ctrl+Alt+8</source>
        <translation>Ctrl+Alt+8</translation>
    </message>
    <message>
        <source>Find par&amp;ts</source>
        <translation>C&amp;hercher des parts</translation>
    </message>
    <message>
        <source>Ctrl+Shift+7</source>
        <translation>Ctrl+Shift+7</translation>
    </message>
    <message>
        <source>&amp;Recipes found</source>
        <translation>&amp;Recettes trouvées</translation>
    </message>
    <message>
        <source>Ctrl+Shift+8</source>
        <translation>Ctrl+Shift+8</translation>
    </message>
    <message>
        <source>Trade-&amp;offs of the recipes</source>
        <translation>Compromi&amp;s des recettes</translation>
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
        <translation>Grain &amp;voulu</translation>
    </message>
    <message>
        <source>Ctrl+B</source>
        <translation>Ctrl+B</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>Affic&amp;hage</translation>
    </message>
    <message>
        <source>Pictures as &amp;tables</source>
        <translation>Images en &amp;tableaux</translation>
    </message>
    <message>
        <source>Ctrl+T</source>
        <translation>Ctrl+T</translation>
    </message>
    <message>
        <source>&amp;Whole curve again</source>
        <translation>&amp;Courbe entière à nouveau</translation>
    </message>
    <message>
        <source>Ctrl+9</source>
        <translation>Ctrl+9</translation>
    </message>
    <message>
        <source>&amp;US units</source>
        <translation>Unités &amp;US</translation>
    </message>
    <message>
        <source>Ctrl+Alt+M</source>
        <translation>Ctrl+Alt+M</translation>
    </message>
    <message>
        <source>Colours of the s&amp;ystem</source>
        <translation>Couleurs du s&amp;ystème</translation>
    </message>
    <message>
        <source>Ctrl+Alt+0</source>
        <translation>Ctrl+Alt+0</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>Cl&amp;air</translation>
    </message>
    <message>
        <source>Ctrl+Alt+1</source>
        <translation>Ctrl+Alt+1</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>So&amp;mbre</translation>
    </message>
    <message>
        <source>Ctrl+Alt+2</source>
        <translation>Ctrl+Alt+2</translation>
    </message>
    <message>
        <source>&amp;High contrast</source>
        <translation>Contraste é&amp;levé</translation>
    </message>
    <message>
        <source>Ctrl+Alt+3</source>
        <translation>Ctrl+Alt+3</translation>
    </message>
    <message>
        <source>Larger te&amp;xt</source>
        <translation>Texte &amp;plus grand</translation>
    </message>
    <message>
        <source>S&amp;maller text</source>
        <translation>Te&amp;xte plus petit</translation>
    </message>
    <message>
        <source>&amp;Normal text</source>
        <translation>Texte &amp;normal</translation>
    </message>
    <message>
        <source>Ctrl+0</source>
        <translation>Ctrl+0</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>A&amp;ide</translation>
    </message>
    <message>
        <source>&amp;Manual: this page</source>
        <translation>&amp;Manuel&#xa0;: cette page</translation>
    </message>
    <message>
        <source>F1</source>
        <translation>F1</translation>
    </message>
    <message>
        <source>C&amp;ontents of the manual</source>
        <translation>&amp;Sommaire du manuel</translation>
    </message>
    <message>
        <source>Ctrl+Shift+F1</source>
        <translation>Ctrl+Shift+F1</translation>
    </message>
    <message>
        <source>The &amp;three doors</source>
        <translation>Les &amp;trois portes</translation>
    </message>
    <message>
        <source>Alt+Shift+F1</source>
        <translation>Alt+Shift+F1</translation>
    </message>
    <message>
        <source>Show &amp;cautions again</source>
        <translation>Montrer à nouveau les &amp;précautions</translation>
    </message>
    <message>
        <source>Shift+F1</source>
        <translation>Shift+F1</translation>
    </message>
    <message>
        <source>&amp;About Gritwright</source>
        <translation>À propos de &amp;Gritwright</translation>
    </message>
    <message>
        <source>Ctrl+F1</source>
        <translation>Ctrl+F1</translation>
    </message>
    <message>
        <source>About Gritwright</source>
        <translation>À propos de Gritwright</translation>
    </message>
    <message>
        <source>Gritwright %1: grading, mixes and pots for trees in shallow containers.

Free software under the GNU General Public License, version 3 or later, without any warranty.
Estimates are general information; where a figure matters, measure it in a pot test.</source>
        <translation>Gritwright %1&#xa0;: granulométrie, mélanges et pots pour arbres en contenants peu profonds.

Logiciel libre sous la GNU General Public License, version 3 ou ultérieure, sans aucune garantie.
Les estimations sont des informations générales&#xa0;; quand un chiffre compte, mesurez-le par un essai en pot.</translation>
    </message>
    <message>
        <source>Save “%1”</source>
        <translation>Enregistrer «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>Picture (*.png);;Drawing (*.svg);;PDF (*.pdf);;Its data (*.csv)</source>
        <translation>Image (*.png);;Dessin (*.svg);;PDF (*.pdf);;Ses données (*.csv)</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Enregistré sous %1.</translation>
    </message>
    <message>
        <source>Test sheet as PDF</source>
        <translation>Feuille d’essai en PDF</translation>
    </message>
    <message>
        <source>sieve test.pdf</source>
        <translation>essai de tamisage.pdf</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Gritwright – demonstration, an invented nursery</source>
        <translation>Gritwright – démonstration, une pépinière inventée</translation>
    </message>
    <message>
        <source>Demonstration: everything here is invented and goes when this window is closed.</source>
        <translation>Démonstration&#xa0;: tout ici est inventé et disparaît quand cette fenêtre se ferme.</translation>
    </message>
    <message>
        <source>The demonstration can&apos;t be opened</source>
        <translation>La démonstration ne peut pas s’ouvrir</translation>
    </message>
    <message>
        <source>demonstration opened</source>
        <translation>démonstration ouverte</translation>
    </message>
    <message>
        <source>Open sieve tests</source>
        <translation>Ouvrir des essais de tamisage</translation>
    </message>
    <message>
        <source>Sieve tests (*.csv *.json);;All files (*)</source>
        <translation>Essais de tamisage (*.csv *.json);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>%1 was not opened</source>
        <translation>%1 n’a pas été ouvert</translation>
    </message>
    <message>
        <source>A mix here has up to %1 components; remove one first.</source>
        <translation>Un mélange a ici jusqu’à %1 composants&#xa0;; supprimez-en un d’abord.</translation>
    </message>
    <message>
        <source>%1 opened</source>
        <translation>%1 ouvert</translation>
    </message>
    <message>
        <source>&amp;Years to come</source>
        <translation>&amp;Années à venir</translation>
    </message>
    <message>
        <source>Ctrl+Alt+Y</source>
        <translation>Ctrl+Alt+Y</translation>
    </message>
    <message>
        <source>The record could not be opened, so this page is empty; what lies on the bench is kept all the same.</source>
        <translation>Le registre n’a pas pu être ouvert, cette page est donc vide&#xa0;; ce qui est sur l’établi est gardé malgré tout.</translation>
    </message>
    <message>
        <source>What can be done...</source>
        <translation>Ce qui peut être fait...</translation>
    </message>
    <message>
        <source>Records from a f&amp;ile...</source>
        <translation>Enregistrements d’un fic&amp;hier...</translation>
    </message>
    <message>
        <source>Ctrl+I</source>
        <translation>Ctrl+I</translation>
    </message>
    <message>
        <source>Open &amp;another record...</source>
        <translation>Ouvrir un a&amp;utre registre...</translation>
    </message>
    <message>
        <source>Ctrl+Alt+W</source>
        <translation>Ctrl+Alt+W</translation>
    </message>
    <message>
        <source>&amp;Back to the usual record</source>
        <translation>Re&amp;venir au registre habituel</translation>
    </message>
    <message>
        <source>Ctrl+Alt+H</source>
        <translation>Ctrl+Alt+H</translation>
    </message>
    <message>
        <source>Bac&amp;kups of the record</source>
        <translation>&amp;Sauvegardes du registre</translation>
    </message>
    <message>
        <source>Ctrl+Alt+U</source>
        <translation>Ctrl+Alt+U</translation>
    </message>
    <message>
        <source>Open another record</source>
        <translation>Ouvrir un autre registre</translation>
    </message>
    <message>
        <source>Gritwright records (*.gritwright);;All files (*)</source>
        <translation>Registres Gritwright (*.gritwright);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Restore a backup</source>
        <translation>Restaurer une sauvegarde</translation>
    </message>
    <message>
        <source>Put %1 in the place of the record?</source>
        <translation>Mettre %1 à la place du registre&#xa0;?</translation>
    </message>
    <message>
        <source>What was written down since then is no longer in the record. The record as it is now stays beside it under a name of its own, so nothing is lost.</source>
        <translation>Ce qui a été écrit depuis ne sera plus dans le registre. Le registre actuel reste à côté sous un nom à lui, rien n’est donc perdu.</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Restaurer</translation>
    </message>
    <message>
        <source>Gritwright – %1, reading only</source>
        <translation>Gritwright – %1, en lecture seule</translation>
    </message>
    <message>
        <source>Gritwright – %1</source>
        <translation>Gritwright – %1</translation>
    </message>
    <message>
        <source>%1 is open for reading only: nothing here can be changed.</source>
        <translation>%1 est ouvert en lecture seule&#xa0;: rien ici ne peut être changé.</translation>
    </message>
    <message>
        <source>This is %1, not the usual record.</source>
        <translation>Ceci est %1, pas le registre habituel.</translation>
    </message>
    <message>
        <source>Open po&amp;t...</source>
        <translation>Ouvrir un po&amp;t...</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Annuler&#xa0;: %1</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Annuler</translation>
    </message>
    <message>
        <source>Re&amp;do: %1</source>
        <translation>&amp;Rétablir&#xa0;: %1</translation>
    </message>
    <message>
        <source>Re&amp;do</source>
        <translation>&amp;Rétablir</translation>
    </message>
    <message>
        <source>Pot tests against the pre&amp;dictions</source>
        <translation>Essais en pot contre les pré&amp;dictions</translation>
    </message>
    <message>
        <source>Open pot</source>
        <translation>Ouvrir un pot</translation>
    </message>
    <message>
        <source>Pots (*.json);;All files (*)</source>
        <translation>Pots (*.json);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>pot opened</source>
        <translation>pot ouvert</translation>
    </message>
    <message>
        <source>Bottom layer and top dressing of the pot are not on this form and were left out.</source>
        <translation>La couche de drainage et la couche de surface du pot n’existent pas dans ce formulaire et ont été laissées de côté.</translation>
    </message>
    <message>
        <source>%1 could not be written: end its name in png, svg, pdf or csv, and choose a folder you may write to.</source>
        <translation>%1 n’a pas pu être écrit&#xa0;: terminez son nom en png, svg, pdf ou csv, et choisissez un dossier où vous pouvez écrire.</translation>
    </message>
    <message>
        <source>%1 could not be written: choose a folder you may write to.</source>
        <translation>%1 n’a pas pu être écrit&#xa0;: choisissez un dossier où vous pouvez écrire.</translation>
    </message>
    <message>
        <source>Cl&amp;ear the bench</source>
        <translation>&amp;Nettoyer l’établi</translation>
    </message>
    <message>
        <source>There is no picture on this page to save.</source>
        <translation>Il n&apos;y a pas d&apos;image à enregistrer sur cette page.</translation>
    </message>
    <message>
        <source>P&amp;rint the sheet...</source>
        <translation>Imp&amp;rimer la feuille...</translation>
    </message>
    <message>
        <source>S&amp;heet as PDF...</source>
        <translation>Feuille en &amp;PDF...</translation>
    </message>
    <message>
        <source>Nothing here goes on paper. Sieving and Mixes (Ctrl+2) have the sheet of a test, Pots and trees that of a plan, Repotting day its lists.</source>
        <translation>Rien ici ne va sur papier. Tamisage et Mélanges (Ctrl+2) ont la feuille d’un essai, Pots et arbres celle d’un plan, Journée de rempotage ses listes.</translation>
    </message>
    <message>
        <source>Text at %1 %.</source>
        <translation>Texte à %1 %.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ManualPage</name>
    <message>
        <source>Search the manual</source>
        <translation>Chercher dans le manuel</translation>
    </message>
    <message>
        <source>one word or several</source>
        <translation>un mot ou plusieurs</translation>
    </message>
    <message>
        <source>Page before</source>
        <translation>Page précédente</translation>
    </message>
    <message>
        <source>To the work (Esc)</source>
        <translation>Au travail (Échap)</translation>
    </message>
    <message>
        <source>Chapters</source>
        <translation>Chapitres</translation>
    </message>
    <message>
        <source>Text of the chapter</source>
        <translation>Texte du chapitre</translation>
    </message>
    <message>
        <source>in no chapter</source>
        <translation>dans aucun chapitre</translation>
    </message>
    <message numerus="yes">
        <source>in %n chapter(s)</source>
        <translation>
            <numerusform>dans %n chapitre</numerusform>
            <numerusform>dans %n chapitres</numerusform>
        </translation>
    </message>
    <message>
        <source>The manual is written in English.</source>
        <translation>Le manuel est rédigé en anglais.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::MeasurePage</name>
    <message>
        <source>Measurement</source>
        <translation>Mesure</translation>
    </message>
    <message>
        <source>&amp;Measure</source>
        <translation>&amp;Mesurer</translation>
    </message>
    <message>
        <source>What is measured</source>
        <translation>Ce qui est mesuré</translation>
    </message>
    <message>
        <source>Pot of the test</source>
        <translation>Pot de l’essai</translation>
    </message>
    <message>
        <source>In the &amp;pot</source>
        <translation>Dans le &amp;pot</translation>
    </message>
    <message>
        <source>Dust, heat and weight:</source>
        <translation>Poussière, chaleur et poids&#xa0;:</translation>
    </message>
    <message>
        <source>dry dusty grain outdoors with a mask; let hot dishes cool; lift wet pots with both hands. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation>séchez le grain poussiéreux dehors avec un masque&#xa0;; laissez refroidir les plats chauds&#xa0;; levez les pots mouillés à deux mains. Informations générales&#xa0;; les fiches de sécurité, règles locales et avis qualifiés priment.</translation>
    </message>
    <message>
        <source>&amp;Keep what was measured</source>
        <translation>Conserver &amp;la mesure</translation>
    </message>
    <message>
        <source>Keep what was measured</source>
        <translation>Conserver la mesure</translation>
    </message>
    <message>
        <source>Mi&amp;x</source>
        <translation>Mélan&amp;ge</translation>
    </message>
    <message>
        <source>&amp;Bag or mix</source>
        <translation>Sac &amp;ou mélange</translation>
    </message>
    <message>
        <source>&amp;Bag</source>
        <translation>&amp;Sac</translation>
    </message>
    <message>
        <source>Complete: keep it, and the estimates use it from now on.</source>
        <translation>Complet&#xa0;: conservez-le, et les estimations s’en servent désormais.</translation>
    </message>
    <message>
        <source>Is that right?</source>
        <translation>Est-ce bien cela&#xa0;?</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Conservé&#xa0;: %1</translation>
    </message>
    <message>
        <source>straight walls</source>
        <translation>parois droites</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::MixPage</name>
    <message>
        <source>Mix</source>
        <translation>Mélange</translation>
    </message>
    <message>
        <source>name of the mix</source>
        <translation>nom du mélange</translation>
    </message>
    <message>
        <source>what it is for</source>
        <translation>à quoi il sert</translation>
    </message>
    <message>
        <source>&amp;Keep this mix</source>
        <translation>Conser&amp;ver ce mélange</translation>
    </message>
    <message>
        <source>Keep this mix in the record</source>
        <translation>Conserver ce mélange dans le registre</translation>
    </message>
    <message>
        <source>Ways to a mix</source>
        <translation>Chemins vers un mélange</translation>
    </message>
    <message>
        <source>By hand</source>
        <translation>À la main</translation>
    </message>
    <message>
        <source>Find parts</source>
        <translation>Chercher des parts</translation>
    </message>
    <message>
        <source>Dust and moss:</source>
        <translation>Poussière et mousse&#xa0;:</translation>
    </message>
    <message>
        <source>wet the grain before mixing it, and keep long-fibred moss off your skin and out of your lungs. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation>mouillez le grain avant de mélanger, et tenez la mousse à longues fibres loin de la peau et des poumons. Informations générales&#xa0;; les fiches de sécurité, règles locales et avis qualifiés priment.</translation>
    </message>
    <message>
        <source>Pot</source>
        <translation>Pot</translation>
    </message>
    <message>
        <source>Pot test: measure air and water of a kept mix</source>
        <translation>Essai en pot&#xa0;: mesurer l’air et l’eau d’un mélange conservé</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>Courbes</translation>
    </message>
    <message>
        <source>Pot in section</source>
        <translation>Pot en coupe</translation>
    </message>
    <message>
        <source>Litres</source>
        <translation>Litres</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Comparer</translation>
    </message>
    <message>
        <source>Trade-offs</source>
        <translation>Compromis</translation>
    </message>
    <message>
        <source>Pot tests</source>
        <translation>Essais en pot</translation>
    </message>
    <message>
        <source>Pictures of the mix</source>
        <translation>Images du mélange</translation>
    </message>
    <message>
        <source>What would narrow it most?</source>
        <translation>Qu’est-ce qui le préciserait le plus&#xa0;?</translation>
    </message>
    <message>
        <source>Worked out as soon as the mix stands still.</source>
        <translation>Calculé dès que le mélange ne bouge plus.</translation>
    </message>
    <message>
        <source>Mind: %1</source>
        <translation>Attention&#xa0;: %1</translation>
    </message>
    <message>
        <source>Years</source>
        <translation>Années</translation>
    </message>
    <message>
        <source>Pot test...</source>
        <translation>Essai en pot...</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::Navigation</name>
    <message>
        <source>Pages</source>
        <translation>Pages</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::NewPotForm</name>
    <message>
        <source>&amp;Keep this pot</source>
        <translation>Conser&amp;ver ce pot</translation>
    </message>
    <message>
        <source>A new pot</source>
        <translation>Un nouveau pot</translation>
    </message>
    <message>
        <source>Measure its inside at the rim, and its depth. Nothing is worked out before.</source>
        <translation>Mesurez-en l’intérieur au bord, et la profondeur. Rien n’est calculé avant.</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>as you call it</source>
        <translation>comme vous l’appelez</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Forme</translation>
    </message>
    <message>
        <source>&amp;Shape</source>
        <translation>F&amp;orme</translation>
    </message>
    <message>
        <source>Rim, length</source>
        <translation>Bord, longueur</translation>
    </message>
    <message>
        <source>Rim, across flats</source>
        <translation>Bord, entre plats</translation>
    </message>
    <message>
        <source>Rim, diameter</source>
        <translation>Bord, diamètre</translation>
    </message>
    <message>
        <source>inside, at the rim</source>
        <translation>intérieur, au bord</translation>
    </message>
    <message>
        <source>Rim, width</source>
        <translation>Bord, largeur</translation>
    </message>
    <message>
        <source>Middle, diameter</source>
        <translation>Milieu, diamètre</translation>
    </message>
    <message>
        <source>inside, at half the depth</source>
        <translation>intérieur, à mi-profondeur</translation>
    </message>
    <message>
        <source>&amp;Depth inside</source>
        <translation>&amp;Profondeur intérieure</translation>
    </message>
    <message>
        <source>floor to rim</source>
        <translation>du fond au bord</translation>
    </message>
    <message>
        <source>Keep this pot</source>
        <translation>Conserver ce pot</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Pas maintenant</translation>
    </message>
    <message>
        <source>Not now; what is typed waits</source>
        <translation>Pas maintenant&#xa0;; ce qui est saisi attend</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>pot</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PartsBar</name>
    <message>
        <source>No mix yet: finish the sieve tests and give them parts.</source>
        <translation>Pas encore de mélange&#xa0;: terminez les essais de tamisage et donnez des parts.</translation>
    </message>
    <message>
        <source>voids between grains</source>
        <translation>entre les grains</translation>
    </message>
    <message>
        <source>voids in grains</source>
        <translation>dans les grains</translation>
    </message>
    <message>
        <source>solid grain</source>
        <translation>grain solide</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>In go %1; out come %2 mixed, of which %3 once settled.</source>
        <translation>Il entre %1&#xa0;; il sort %2 mélangés, dont %3 une fois tassés.</translation>
    </message>
    <message>
        <source>what</source>
        <translation>quoi</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>combien</translation>
    </message>
    <message>
        <source>%1, loose</source>
        <translation>%1, en vrac</translation>
    </message>
    <message>
        <source>mixed, poured</source>
        <translation>mélangé, versé</translation>
    </message>
    <message>
        <source>%1, settled</source>
        <translation>%1, tassé</translation>
    </message>
    <message>
        <source>Litres in and litres out</source>
        <translation>Litres entrant et sortant</translation>
    </message>
    <message>
        <source>In: %1 loose, each by itself</source>
        <translation>Entrée&#xa0;: %1 en vrac, chacun à part</translation>
    </message>
    <message>
        <source>Out: %1 mixed; what fills it once settled</source>
        <translation>Sortie&#xa0;: %1 mélangés&#xa0;; ce qui remplit une fois tassé</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>90 of 100 cases</source>
        <translation>90 cas sur 100</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PartsPanel</name>
    <message>
        <source>Components, in parts of loose litres</source>
        <translation>Composants, en parts de litres en vrac</translation>
    </message>
    <message>
        <source>parts of %1</source>
        <translation>parts de %1</translation>
    </message>
    <message>
        <source>component %1</source>
        <translation>composant %1</translation>
    </message>
    <message>
        <source>Parts of %1, slider</source>
        <translation>Parts de %1, curseur</translation>
    </message>
    <message>
        <source>Parts of %1</source>
        <translation>Parts de %1</translation>
    </message>
    <message>
        <source>Component %1</source>
        <translation>Composant %1</translation>
    </message>
    <message>
        <source>new component</source>
        <translation>nouveau composant</translation>
    </message>
    <message>
        <source>%1 removed</source>
        <translation>%1 supprimé</translation>
    </message>
    <message>
        <source>A mix here has up to %1 components; remove one first.</source>
        <translation>Un mélange a ici jusqu’à %1 composants&#xa0;; retirez-en d’abord un.</translation>
    </message>
    <message>
        <source>Show %1</source>
        <translation>Montrer %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PictureTabs</name>
    <message>
        <source>As a table</source>
        <translation>En tableau</translation>
    </message>
    <message>
        <source>Pictures as tables</source>
        <translation>Images en tableaux</translation>
    </message>
    <message>
        <source>%1, as a table</source>
        <translation>%1, en tableau</translation>
    </message>
    <message>
        <source>As a picture</source>
        <translation>En image</translation>
    </message>
    <message>
        <source>How so: %1</source>
        <translation>Pourquoi&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PotDrawing</name>
    <message>
        <source>rim</source>
        <translation>bord</translation>
    </message>
    <message>
        <source>fill line</source>
        <translation>niveau</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>fond</translation>
    </message>
    <message>
        <source>The pot to scale, from the front and from above</source>
        <translation>Le pot à l’échelle, de face et d’en haut</translation>
    </message>
    <message>
        <source>Inside %1 by %2 at the rim, %3 by %4 at the floor, %5 deep, filled %6.</source>
        <translation>Intérieur %1 par %2 au bord, %3 par %4 au fond, profondeur %5, rempli %6.</translation>
    </message>
    <message>
        <source>No pot yet.</source>
        <translation>Pas encore de pot.</translation>
    </message>
    <message>
        <source>where</source>
        <translation>où</translation>
    </message>
    <message>
        <source>height</source>
        <translation>hauteur</translation>
    </message>
    <message>
        <source>length</source>
        <translation>longueur</translation>
    </message>
    <message>
        <source>width</source>
        <translation>largeur</translation>
    </message>
    <message>
        <source>rim %1</source>
        <translation>bord %1</translation>
    </message>
    <message>
        <source>floor %1, depth %2</source>
        <translation>fond %1, profondeur %2</translation>
    </message>
    <message>
        <source>from above, %1 wide</source>
        <translation>d’en haut, largeur %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PotForm</name>
    <message>
        <source>Shape</source>
        <translation>Forme</translation>
    </message>
    <message>
        <source>rectangle</source>
        <translation>rectangle</translation>
    </message>
    <message>
        <source>oval</source>
        <translation>ovale</translation>
    </message>
    <message>
        <source>round</source>
        <translation>rond</translation>
    </message>
    <message>
        <source>hexagon</source>
        <translation>hexagone</translation>
    </message>
    <message>
        <source>octagon</source>
        <translation>octogone</translation>
    </message>
    <message>
        <source>drum, lip turned in</source>
        <translation>tambour, lèvre rentrée</translation>
    </message>
    <message>
        <source>soft rectangle</source>
        <translation>rectangle doux</translation>
    </message>
    <message>
        <source>bowl</source>
        <translation>coupe</translation>
    </message>
    <message>
        <source>Sha&amp;pe</source>
        <translation>Form&amp;e</translation>
    </message>
    <message>
        <source>shape of the pot</source>
        <translation>forme du pot</translation>
    </message>
    <message>
        <source>Rim, length</source>
        <translation>Bord, longueur</translation>
    </message>
    <message>
        <source>rim of the pot</source>
        <translation>bord du pot</translation>
    </message>
    <message>
        <source>inside, at the rim</source>
        <translation>intérieur, au bord</translation>
    </message>
    <message>
        <source>Rim, diameter</source>
        <translation>Bord, diamètre</translation>
    </message>
    <message>
        <source>Rim, across flats</source>
        <translation>Bord, entre plats</translation>
    </message>
    <message>
        <source>Rim, &amp;width</source>
        <translation>Bord, lar&amp;geur</translation>
    </message>
    <message>
        <source>rim width of the pot</source>
        <translation>largeur du bord du pot</translation>
    </message>
    <message>
        <source>&amp;Middle, diameter</source>
        <translation>&amp;Milieu, diamètre</translation>
    </message>
    <message>
        <source>middle of the pot</source>
        <translation>milieu du pot</translation>
    </message>
    <message>
        <source>inside, at half the depth</source>
        <translation>intérieur, à mi-profondeur</translation>
    </message>
    <message>
        <source>as the rim: straight walls</source>
        <translation>comme le bord&#xa0;: parois droites</translation>
    </message>
    <message>
        <source>Corner e&amp;xponent</source>
        <translation>E&amp;xposant des coins</translation>
    </message>
    <message>
        <source>corner exponent of the pot</source>
        <translation>exposant des coins du pot</translation>
    </message>
    <message>
        <source>2 an ellipse, 4 soft corners, 6 nearly square</source>
        <translation>2 ellipse, 4 coins doux, 6 presque carré</translation>
    </message>
    <message>
        <source>Dep&amp;th inside</source>
        <translation>&amp;Profondeur intérieure</translation>
    </message>
    <message>
        <source>depth of the pot</source>
        <translation>profondeur du pot</translation>
    </message>
    <message>
        <source>floor to rim</source>
        <translation>du fond au bord</translation>
    </message>
    <message>
        <source>F&amp;ill line below rim</source>
        <translation>Niveau sous le &amp;bord</translation>
    </message>
    <message>
        <source>fill line of the pot</source>
        <translation>niveau du pot sous le bord</translation>
    </message>
    <message>
        <source>common practice: 0.3 to 1 cm</source>
        <translation>pratique courante&#xa0;: 0,3 à 1 cm</translation>
    </message>
    <message>
        <source>W&amp;ater fill</source>
        <translation>Remplissage &amp;d’eau</translation>
    </message>
    <message>
        <source>water fill of the pot</source>
        <translation>remplissage d’eau du pot</translation>
    </message>
    <message>
        <source>measured; overrides the lengths</source>
        <translation>mesuré&#xa0;; l’emporte</translation>
    </message>
    <message>
        <source>Mou&amp;nd above it</source>
        <translation>B&amp;utte au-dessus</translation>
    </message>
    <message>
        <source>mound of the pot</source>
        <translation>butte du pot</translation>
    </message>
    <message>
        <source>rise in the middle; none if empty</source>
        <translation>hausse au milieu</translation>
    </message>
    <message>
        <source>Sa&amp;ucer water</source>
        <translation>Eau de soucoupe</translation>
    </message>
    <message>
        <source>saucer of the pot</source>
        <translation>soucoupe du pot</translation>
    </message>
    <message>
        <source>standing water above the floor</source>
        <translation>eau stagnante au-dessus du fond</translation>
    </message>
    <message>
        <source>wick of the pot</source>
        <translation>mèche du pot</translation>
    </message>
    <message>
        <source>length below the floor</source>
        <translation>longueur sous le fond</translation>
    </message>
    <message>
        <source>tilt of the pot</source>
        <translation>inclinaison du pot</translation>
    </message>
    <message>
        <source>about the length; level if empty</source>
        <translation>dans la longueur&#xa0;; à plat si vide</translation>
    </message>
    <message>
        <source>settling</source>
        <translation>tassement</translation>
    </message>
    <message>
        <source>&amp;Spill</source>
        <translation>Per&amp;tes</translation>
    </message>
    <message>
        <source>spill</source>
        <translation>pertes</translation>
    </message>
    <message>
        <source>mix that misses the pot, 5 to 10</source>
        <translation>mélange à côté du pot, 5 à 10</translation>
    </message>
    <message>
        <source>lost volume: 0 poured, about 8 worked in; empty: by jug tests of the bags, else as usual</source>
        <translation>volume perdu&#xa0;: 0 versé, environ 8 mis en place&#xa0;; vide&#xa0;: par les essais au pichet des sacs, sinon comme d’usage</translation>
    </message>
    <message>
        <source>empty: %1, by a jug of this mix</source>
        <translation>vide&#xa0;: %1, par un pichet de ce mélange</translation>
    </message>
    <message>
        <source>empty: %1, by your jug tests</source>
        <translation>vide&#xa0;: %1, par vos essais au pichet</translation>
    </message>
    <message>
        <source>empty: %1, worked in; 0 if poured</source>
        <translation>vide&#xa0;: %1, mis en place&#xa0;; 0 si versé</translation>
    </message>
    <message>
        <source>One of your pots</source>
        <translation>Un de vos pots</translation>
    </message>
    <message>
        <source>&amp;Your pots</source>
        <translation>Vo&amp;s pots</translation>
    </message>
    <message>
        <source>Wick or ground</source>
        <translation>Mèche ou sol</translation>
    </message>
    <message>
        <source>none is kept yet</source>
        <translation>aucun n’est encore conservé</translation>
    </message>
    <message>
        <source>Floor, length</source>
        <translation>Fond, longueur</translation>
    </message>
    <message>
        <source>floor of the pot</source>
        <translation>fond du pot</translation>
    </message>
    <message>
        <source>Floor, diameter</source>
        <translation>Fond, diamètre</translation>
    </message>
    <message>
        <source>Floor, across flats</source>
        <translation>Fond, entre plats</translation>
    </message>
    <message>
        <source>Floor, width</source>
        <translation>Fond, largeur</translation>
    </message>
    <message>
        <source>floor width of the pot</source>
        <translation>largeur du fond du pot</translation>
    </message>
    <message>
        <source>Tilt, deg&amp;rees</source>
        <translation>Inclinaison, degrés</translation>
    </message>
    <message>
        <source>Sett&amp;ling</source>
        <translation>Tasseme&amp;nt</translation>
    </message>
    <message>
        <source>as typed</source>
        <translation>comme saisi</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PotSectionView</name>
    <message>
        <source>No pot yet: type its shape and inside lengths.</source>
        <translation>Pas encore de pot&#xa0;: saisissez sa forme et ses dimensions intérieures.</translation>
    </message>
    <message>
        <source>Pot in section, filled %1 deep; no mix yet, so no water.</source>
        <translation>Pot en coupe, rempli sur %1&#xa0;; pas encore de mélange, donc pas d’eau.</translation>
    </message>
    <message>
        <source>Pot in section, filled %1 deep: the lowest %2 stay wet; water %3 at the floor and %4 at the fill line.</source>
        <translation>Pot en coupe, rempli sur %1&#xa0;: les %2 du bas restent saturés&#xa0;; eau %3 au fond et %4 au niveau.</translation>
    </message>
    <message>
        <source>Pot in section; up and down change its depth</source>
        <translation>Pot en coupe&#xa0;; Haut et Bas changent sa profondeur</translation>
    </message>
    <message>
        <source>Drag the rim, or press Up and Down, to try another depth</source>
        <translation>Tirez le bord, ou pressez Haut et Bas, pour essayer une autre profondeur</translation>
    </message>
    <message>
        <source>wet zone %1</source>
        <translation>zone saturée %1</translation>
    </message>
    <message>
        <source>filled %1</source>
        <translation>rempli %1</translation>
    </message>
    <message>
        <source>depth inside %1</source>
        <translation>profondeur intérieure %1</translation>
    </message>
    <message>
        <source>depth of the pot</source>
        <translation>profondeur du pot</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PotsTab</name>
    <message>
        <source>%1 of pot %2</source>
        <translation>%1 du pot %2</translation>
    </message>
    <message>
        <source>Pots</source>
        <translation>Pots</translation>
    </message>
    <message>
        <source>pot by number or name</source>
        <translation>numéro ou nom</translation>
    </message>
    <message>
        <source>No pots yet. Add one and measure its inside: length and width at the rim and at the floor, and the depth.</source>
        <translation>Pas encore de pots. Ajoutez-en un et mesurez son intérieur&#xa0;: longueur et largeur au bord et au fond, et la profondeur.</translation>
    </message>
    <message>
        <source>free or taken</source>
        <translation>libre ou pris</translation>
    </message>
    <message>
        <source>Add a &amp;pot</source>
        <translation>Ajo&amp;uter un pot</translation>
    </message>
    <message>
        <source>taken: %1</source>
        <translation>pris&#xa0;: %1</translation>
    </message>
    <message>
        <source>given away</source>
        <translation>donné</translation>
    </message>
    <message>
        <source>free</source>
        <translation>libre</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>as you call it</source>
        <translation>comme vous l’appelez</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Forme</translation>
    </message>
    <message>
        <source>table of areas</source>
        <translation>tableau d’aires</translation>
    </message>
    <message>
        <source>&amp;Shape</source>
        <translation>F&amp;orme</translation>
    </message>
    <message>
        <source>broken, sold or given away</source>
        <translation>cassé, vendu ou donné</translation>
    </message>
    <message>
        <source>whereabouts</source>
        <translation>devenir</translation>
    </message>
    <message>
        <source>Rim, length</source>
        <translation>Bord, longueur</translation>
    </message>
    <message>
        <source>inside, at the rim</source>
        <translation>intérieur, au bord</translation>
    </message>
    <message>
        <source>rim</source>
        <translation>bord</translation>
    </message>
    <message>
        <source>Rim, diameter</source>
        <translation>Bord, diamètre</translation>
    </message>
    <message>
        <source>Rim, across flats</source>
        <translation>Bord, entre plats</translation>
    </message>
    <message>
        <source>Rim, width</source>
        <translation>Bord, largeur</translation>
    </message>
    <message>
        <source>rim width</source>
        <translation>largeur du bord</translation>
    </message>
    <message>
        <source>Middle, diameter</source>
        <translation>Milieu, diamètre</translation>
    </message>
    <message>
        <source>inside, at half the depth</source>
        <translation>intérieur, à mi-profondeur</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>milieu</translation>
    </message>
    <message>
        <source>Floor, length</source>
        <translation>Fond, longueur</translation>
    </message>
    <message>
        <source>as the rim: straight walls</source>
        <translation>comme le bord&#xa0;: parois droites</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>fond</translation>
    </message>
    <message>
        <source>Floor, diameter</source>
        <translation>Fond, diamètre</translation>
    </message>
    <message>
        <source>Floor, across flats</source>
        <translation>Fond, entre plats</translation>
    </message>
    <message>
        <source>Floor, width</source>
        <translation>Fond, largeur</translation>
    </message>
    <message>
        <source>floor width</source>
        <translation>largeur du fond</translation>
    </message>
    <message>
        <source>Corner exponent</source>
        <translation>Exposant des coins</translation>
    </message>
    <message>
        <source>2 an ellipse, 4 soft corners, 6 nearly square</source>
        <translation>2 ellipse, 4 coins doux, 6 presque carré</translation>
    </message>
    <message>
        <source>corner exponent</source>
        <translation>exposant des coins</translation>
    </message>
    <message>
        <source>Heights and areas</source>
        <translation>Hauteurs et aires</translation>
    </message>
    <message>
        <source>cm and cm2 from the floor: 0 450; 4 520; 8 600</source>
        <translation>cm et cm2 depuis le fond&#xa0;: 0 450; 4 520; 8 600</translation>
    </message>
    <message>
        <source>&amp;Depth inside</source>
        <translation>&amp;Profondeur intérieure</translation>
    </message>
    <message>
        <source>floor to rim</source>
        <translation>du fond au bord</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>profondeur</translation>
    </message>
    <message>
        <source>Corner radius</source>
        <translation>Rayon des coins</translation>
    </message>
    <message>
        <source>sharp corners if empty</source>
        <translation>coins vifs si vide</translation>
    </message>
    <message>
        <source>corner radius</source>
        <translation>rayon des coins</translation>
    </message>
    <message>
        <source>Rounding at the floor</source>
        <translation>Arrondi au fond</translation>
    </message>
    <message>
        <source>radius between floor and wall</source>
        <translation>rayon entre fond et paroi</translation>
    </message>
    <message>
        <source>rounding at the floor</source>
        <translation>arrondi au fond</translation>
    </message>
    <message>
        <source>Fill line below rim</source>
        <translation>Niveau sous le bord</translation>
    </message>
    <message>
        <source>common practice: 0.3 to 1 cm</source>
        <translation>pratique courante&#xa0;: 0,3 à 1 cm</translation>
    </message>
    <message>
        <source>fill line</source>
        <translation>niveau</translation>
    </message>
    <message>
        <source>&amp;Water fill</source>
        <translation>Remplissage &amp;d’eau</translation>
    </message>
    <message>
        <source>water fill</source>
        <translation>remplissage d’eau</translation>
    </message>
    <message>
        <source>Bottom layer</source>
        <translation>Couche de drainage</translation>
    </message>
    <message>
        <source>coarse grain on the floor; none if empty</source>
        <translation>gros grain&#xa0;; aucune si vide</translation>
    </message>
    <message>
        <source>bottom layer</source>
        <translation>couche de drainage</translation>
    </message>
    <message>
        <source>Top dressing</source>
        <translation>Couche de surface</translation>
    </message>
    <message>
        <source>top dressing</source>
        <translation>couche de surface</translation>
    </message>
    <message>
        <source>Own &amp;mass</source>
        <translation>&amp;Masse propre</translation>
    </message>
    <message>
        <source>empty and dry; for lifting</source>
        <translation>vide et sec&#xa0;; pour le levage</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masse</translation>
    </message>
    <message>
        <source>Drain holes</source>
        <translation>Trous de drainage</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>combien</translation>
    </message>
    <message>
        <source>drain holes</source>
        <translation>trous de drainage</translation>
    </message>
    <message>
        <source>Feet</source>
        <translation>Pieds</translation>
    </message>
    <message>
        <source>height under the pot</source>
        <translation>hauteur sous le pot</translation>
    </message>
    <message>
        <source>feet</source>
        <translation>pieds</translation>
    </message>
    <message>
        <source>No&amp;te</source>
        <translation>No&amp;te</translation>
    </message>
    <message>
        <source>glaze, chips, where it stands</source>
        <translation>émail, éclats, où il se trouve</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>Picture of the pot</source>
        <translation>Image du pot</translation>
    </message>
    <message>
        <source>The pot to scale</source>
        <translation>Le pot à l’échelle</translation>
    </message>
    <message>
        <source>shape</source>
        <translation>forme</translation>
    </message>
    <message>
        <source>pot added</source>
        <translation>pot ajouté</translation>
    </message>
    <message>
        <source>Pot %1 stays: a tree&apos;s history or a day names it. Mark it as given away instead.</source>
        <translation>Le pot %1 reste&#xa0;: l’histoire d’un arbre ou une journée le cite. Marquez-le plutôt comme donné.</translation>
    </message>
    <message>
        <source>pot %1 removed</source>
        <translation>pot %1 supprimé</translation>
    </message>
    <message>
        <source>Pot %1: %2</source>
        <translation>Pot %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>What it holds</source>
        <translation>Ce qu’il contient</translation>
    </message>
    <message>
        <source>to the fill line</source>
        <translation>jusqu’au niveau</translation>
    </message>
    <message>
        <source>by its lengths alone</source>
        <translation>par ses seules dimensions</translation>
    </message>
    <message>
        <source>water fill against lengths</source>
        <translation>remplissage d’eau contre dimensions</translation>
    </message>
    <message>
        <source>no water fill was measured</source>
        <translation>aucun remplissage d’eau n’a été mesuré</translation>
    </message>
    <message>
        <source>main mix, without layers</source>
        <translation>mélange principal, sans couches</translation>
    </message>
    <message>
        <source>Mound above it</source>
        <translation>Butte au-dessus</translation>
    </message>
    <message>
        <source>rise in the middle; none if empty</source>
        <translation>hausse au milieu</translation>
    </message>
    <message>
        <source>mound</source>
        <translation>butte</translation>
    </message>
    <message>
        <source>measured; overrides the lengths</source>
        <translation>mesuré&#xa0;; l’emporte</translation>
    </message>
    <message>
        <source>usual 0.3 to 0.5; none if empty</source>
        <translation>usuel 0.3 à 0.5 ; aucun si vide</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ProtocolDrawing</name>
    <message>
        <source>How it is done: %1</source>
        <translation>Comment faire&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecipesPanel</name>
    <message>
        <source>Recipes, best first</source>
        <translation>Recettes, la meilleure d’abord</translation>
    </message>
    <message>
        <source>How far the search has come</source>
        <translation>Avancement de la recherche</translation>
    </message>
    <message>
        <source>Enough</source>
        <translation>Assez</translation>
    </message>
    <message>
        <source>Stop searching and show what was found so far</source>
        <translation>Arrêter la recherche et montrer ce qui a été trouvé</translation>
    </message>
    <message>
        <source>recipes %p %</source>
        <translation>recettes %p&#xa0;%</translation>
    </message>
    <message>
        <source>the nearest recipe %p %</source>
        <translation>la recette proche %p&#xa0;%</translation>
    </message>
    <message>
        <source>contradictions %p %</source>
        <translation>contradictions %p&#xa0;%</translation>
    </message>
    <message>
        <source>Keep as a mix</source>
        <translation>Conserver comme mélange</translation>
    </message>
    <message>
        <source>Keep the chosen recipe as a mix, and lay it on the bench</source>
        <translation>Conserver la recette choisie comme mélange et la poser sur l’établi</translation>
    </message>
    <message>
        <source>Keep and reserve</source>
        <translation>Conserver et réserver</translation>
    </message>
    <message>
        <source>Keep the chosen recipe as a mix, and reserve its grain</source>
        <translation>Conserver la recette choisie comme mélange et réserver son grain</translation>
    </message>
    <message>
        <source>Search on</source>
        <translation>Poursuivre</translation>
    </message>
    <message>
        <source>Search again to the end</source>
        <translation>Chercher encore jusqu’au bout</translation>
    </message>
    <message>
        <source>Still wanted: %1.</source>
        <translation>Il manque encore&#xa0;: %1.</translation>
    </message>
    <message>
        <source>A marked field on the left has to be put right first.</source>
        <translation>Un champ marqué à gauche doit d’abord être corrigé.</translation>
    </message>
    <message>
        <source>The inputs changed: what is shown in grey answers the question before.</source>
        <translation>Les données ont changé&#xa0;: ce qui est en gris répond à la question d’avant.</translation>
    </message>
    <message>
        <source>Searching the shelf.</source>
        <translation>Recherche dans le stock.</translation>
    </message>
    <message>
        <source>No recipe holds every wish that must hold; the nearest is shown.</source>
        <translation>Aucune recette ne respecte tous les souhaits obligatoires&#xa0;; la plus proche est montrée.</translation>
    </message>
    <message numerus="yes">
        <source>%n recipe(s), best first.</source>
        <translation>
            <numerusform>Une recette.</numerusform>
            <numerusform>%n recettes, la meilleure d’abord.</numerusform>
        </translation>
    </message>
    <message>
        <source>its grain is kept for this mix in later searches</source>
        <translation>son grain est gardé pour ce mélange dans les recherches suivantes</translation>
    </message>
    <message>
        <source>type the litres needed first</source>
        <translation>saisissez d’abord les litres nécessaires</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordBook</name>
    <message>
        <source>Undone: %1</source>
        <translation>Annulé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation>Rétabli&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordForm</name>
    <message>
        <source>%1 in %2</source>
        <translation>%1 dans %2</translation>
    </message>
    <message>
        <source>Emptied elsewhere meanwhile, so what you typed is not saved yet. Enter saves yours, Escape empties the field.</source>
        <translation>Vidé ailleurs entre-temps, votre saisie n’est donc pas encore enregistrée. Entrée enregistre la vôtre, Échap vide le champ.</translation>
    </message>
    <message>
        <source>Changed elsewhere meanwhile to “%1”, so what you typed is not saved yet. Enter saves yours, Escape takes the other.</source>
        <translation>Changé ailleurs entre-temps en «&#xa0;%1&#xa0;», votre saisie n’est donc pas encore enregistrée. Entrée enregistre la vôtre, Échap prend l’autre.</translation>
    </message>
    <message>
        <source>Typed before and not saved yet. Enter saves it, Escape takes back what was there.</source>
        <translation>Saisi auparavant et pas encore enregistré. Entrée l’enregistre, Échap reprend ce qui s’y trouvait.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordImport</name>
    <message>
        <source>new</source>
        <translation>nouveau</translation>
    </message>
    <message>
        <source>here already, left alone</source>
        <translation>déjà ici, laissé tel quel</translation>
    </message>
    <message>
        <source>comes back</source>
        <translation>revient</translation>
    </message>
    <message>
        <source>replaces the one here</source>
        <translation>remplace celui d’ici</translation>
    </message>
    <message>
        <source>differs from the one here</source>
        <translation>diffère de celui d’ici</translation>
    </message>
    <message>
        <source>import of %1</source>
        <translation>reprise de %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordListModel</name>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>sac</translation>
    </message>
    <message>
        <source>fraction</source>
        <translation>fraction</translation>
    </message>
    <message>
        <source>no.</source>
        <translation>n°</translation>
    </message>
    <message>
        <source>what happened</source>
        <translation>ce qui s’est passé</translation>
    </message>
    <message>
        <source>what</source>
        <translation>quoi</translation>
    </message>
    <message>
        <source>received</source>
        <translation>réceptionné</translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>%1 dry</source>
        <translation>%1 sec</translation>
    </message>
    <message>
        <source>tests</source>
        <translation>essais</translation>
    </message>
    <message>
        <source>left</source>
        <translation>reste</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordListSide</name>
    <message>
        <source>F&amp;ind</source>
        <translation>Ch&amp;ercher</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordPages</name>
    <message>
        <source>Rec&amp;ord</source>
        <translation>&amp;Registre</translation>
    </message>
    <message>
        <source>&amp;Receive bags</source>
        <translation>Récepti&amp;onner</translation>
    </message>
    <message>
        <source>Ctrl+R</source>
        <translation>Ctrl+R</translation>
    </message>
    <message>
        <source>&amp;Grade this bag</source>
        <translation>Contrôler ce sac</translation>
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
        <translation>Mettre en stoc&amp;k</translation>
    </message>
    <message>
        <source>Ctrl+Shift+T</source>
        <translation>Ctrl+Shift+T</translation>
    </message>
    <message>
        <source>Measur&amp;e this bag</source>
        <translation>&amp;Mesurer ce sac</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Ctrl+D</translation>
    </message>
    <message>
        <source>&amp;Pot test of a mix</source>
        <translation>Essai en &amp;pot d’un mélange</translation>
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
        <translation>Ajouter un ar&amp;bre</translation>
    </message>
    <message>
        <source>Alt+Shift+T</source>
        <translation>Alt+Shift+T</translation>
    </message>
    <message>
        <source>Add a p&amp;ot</source>
        <translation>Ajouter &amp;un pot</translation>
    </message>
    <message>
        <source>Ctrl+Alt+P</source>
        <translation>Ctrl+Alt+P</translation>
    </message>
    <message>
        <source>Plan the root mass of this tree</source>
        <translation>Planifier la motte de cet arbre</translation>
    </message>
    <message>
        <source>Ctrl+Alt+J</source>
        <translation>Ctrl+Alt+J</translation>
    </message>
    <message>
        <source>Remove this tree, pot or plan</source>
        <translation>Supprimer cet arbre, ce pot ou ce plan</translation>
    </message>
    <message>
        <source>Alt+Shift+Delete</source>
        <translation>Alt+Shift+Delete</translation>
    </message>
    <message>
        <source>&amp;Keep the sieve test with its bag</source>
        <translation>&amp;Conserver l’essai de tamisage avec son sac</translation>
    </message>
    <message>
        <source>Ctrl+S</source>
        <translation>Ctrl+S</translation>
    </message>
    <message>
        <source>Keep the &amp;fractions of the screening</source>
        <translation>Conserver les &amp;fractions du criblage</translation>
    </message>
    <message>
        <source>Ctrl+Shift+K</source>
        <translation>Ctrl+Shift+K</translation>
    </message>
    <message>
        <source>Keep the mi&amp;x</source>
        <translation>Conser&amp;ver le mélange</translation>
    </message>
    <message>
        <source>Ctrl+Shift+M</source>
        <translation>Ctrl+Shift+M</translation>
    </message>
    <message>
        <source>&amp;Write down in the log</source>
        <translation>Écrire dans le &amp;journal</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation>Ctrl+L</translation>
    </message>
    <message>
        <source>F&amp;ind on this page</source>
        <translation>C&amp;hercher sur cette page</translation>
    </message>
    <message>
        <source>Ctrl+F</source>
        <translation>Ctrl+F</translation>
    </message>
    <message>
        <source>&amp;Undo in the record</source>
        <translation>A&amp;nnuler dans le registre</translation>
    </message>
    <message>
        <source>Ctrl+Alt+Z</source>
        <translation>Ctrl+Alt+Z</translation>
    </message>
    <message>
        <source>Re&amp;do in the record</source>
        <translation>Ré&amp;tablir dans le registre</translation>
    </message>
    <message>
        <source>Ctrl+Alt+Shift+Z</source>
        <translation>Ctrl+Alt+Shift+Z</translation>
    </message>
    <message>
        <source>Save a &amp;copy of the record...</source>
        <translation>Enregi&amp;strer une copie du registre...</translation>
    </message>
    <message>
        <source>Ctrl+Shift+S</source>
        <translation>Ctrl+Shift+S</translation>
    </message>
    <message>
        <source>grain of %1 as measured</source>
        <translation>grain de %1 tel que mesuré</translation>
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
        <translation>A&amp;nnuler dans le registre&#xa0;: %1</translation>
    </message>
    <message>
        <source>Re&amp;do in the record: %1</source>
        <translation>Ré&amp;tablir dans le registre&#xa0;: %1</translation>
    </message>
    <message>
        <source>wishes for %1</source>
        <translation>souhaits pour %1</translation>
    </message>
    <message>
        <source>A search for %1 starts with these wishes from now on.</source>
        <translation>Une recherche pour %1 commence désormais avec ces souhaits.</translation>
    </message>
    <message>
        <source>sieves of %1</source>
        <translation>tamis de %1</translation>
    </message>
    <message>
        <source>Choose the material on the Grain tab first: a bag is of some material.</source>
        <translation>Choisissez d’abord le matériau sous l’onglet Grain&#xa0;: un sac est d’un certain matériau.</translation>
    </message>
    <message>
        <source>bag %1</source>
        <translation>sac %1</translation>
    </message>
    <message>
        <source>sieve test of bag %1</source>
        <translation>essai de tamisage du sac %1</translation>
    </message>
    <message>
        <source>Graded bag %1</source>
        <translation>Sac %1 contrôlé</translation>
    </message>
    <message>
        <source>The sieve test is kept with its bag once the pan is typed and no fault is left; until then it stays on the bench.</source>
        <translation>L’essai est conservé avec son sac dès que le fond est saisi et qu’il ne reste pas d’erreur&#xa0;; d’ici là il reste sur l’établi.</translation>
    </message>
    <message>
        <source>Bag %1 has this sieve test already.</source>
        <translation>Le sac %1 a déjà cet essai.</translation>
    </message>
    <message>
        <source>bag of %1</source>
        <translation>sac de %1</translation>
    </message>
    <message numerus="yes">
        <source>Kept %n sieve test(s) with bag %1.</source>
        <translation>
            <numerusform>%n essai de tamisage conservé avec le sac %1.</numerusform>
            <numerusform>%n essais de tamisage conservés avec le sac %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Weigh every fraction first, then they can be kept.</source>
        <translation>Pesez d’abord chaque fraction, puis elles pourront être conservées.</translation>
    </message>
    <message>
        <source>Keep the sieve test with its bag first: fractions come from a bag.</source>
        <translation>Conservez d’abord l’essai avec son sac&#xa0;: les fractions viennent d’un sac.</translation>
    </message>
    <message>
        <source>screening of bag %1</source>
        <translation>criblage du sac %1</translation>
    </message>
    <message>
        <source>Screened bag %1. %2</source>
        <translation>Sac %1 criblé. %2</translation>
    </message>
    <message>
        <source>screening kept of %1</source>
        <translation>criblage de %1 conservé</translation>
    </message>
    <message>
        <source>The fractions of bag %1 are in stock.</source>
        <translation>Les fractions du sac %1 sont en stock.</translation>
    </message>
    <message>
        <source>There is no mix to keep yet: finish the sieve tests and give them parts.</source>
        <translation>Pas encore de mélange à conserver&#xa0;: terminez les essais de tamisage et donnez des parts.</translation>
    </message>
    <message>
        <source>Give the mix a name first.</source>
        <translation>Donnez d’abord un nom au mélange.</translation>
    </message>
    <message>
        <source>This mix is kept already, as %1.</source>
        <translation>Ce mélange est déjà conservé, sous %1.</translation>
    </message>
    <message>
        <source>mix %1</source>
        <translation>mélange %1</translation>
    </message>
    <message>
        <source>Kept mix %1, %2</source>
        <translation>Mélange %1 conservé, %2</translation>
    </message>
    <message>
        <source>Kept as %1.</source>
        <translation>Conservé sous %1.</translation>
    </message>
    <message>
        <source>found mix</source>
        <translation>mélange trouvé</translation>
    </message>
    <message>
        <source>Found mix %1, %2, and reserved its grain</source>
        <translation>Mélange %1, %2, trouvé et son grain réservé</translation>
    </message>
    <message>
        <source>Found mix %1, %2</source>
        <translation>Mélange %1, %2, trouvé</translation>
    </message>
    <message>
        <source>Kept as %1 and laid on the bench.</source>
        <translation>Conservé sous %1 et posé sur l’établi.</translation>
    </message>
    <message>
        <source>mix %1 opened</source>
        <translation>mélange %1 ouvert</translation>
    </message>
    <message>
        <source>Save a copy of the record</source>
        <translation>Enregistrer une copie du registre</translation>
    </message>
    <message>
        <source>Gritwright records (*.gritwright)</source>
        <translation>Registres Gritwright (*.gritwright)</translation>
    </message>
    <message>
        <source>A checked copy lies in %1.</source>
        <translation>Une copie vérifiée se trouve dans %1.</translation>
    </message>
    <message>
        <source>Take &amp;back grain from a tree</source>
        <translation>&amp;Reprendre le grain d’un arbre</translation>
    </message>
    <message>
        <source>Ctrl+Alt+I</source>
        <translation>Ctrl+Alt+I</translation>
    </message>
    <message>
        <source>Add a bin or tub</source>
        <translation>Ajouter une caisse ou auge</translation>
    </message>
    <message>
        <source>Ctrl+Alt+X</source>
        <translation>Ctrl+Alt+X</translation>
    </message>
    <message>
        <source>Re&amp;move this bag or bin</source>
        <translation>Supprimer ce s&amp;ac ou cette caisse</translation>
    </message>
    <message>
        <source>W&amp;here this grain went</source>
        <translation>Où &amp;est allé ce grain</translation>
    </message>
    <message>
        <source>Ctrl+Shift+W</source>
        <translation>Ctrl+Shift+W</translation>
    </message>
    <message>
        <source>What do the sick trees share?</source>
        <translation>Que partagent les arbres malades&#xa0;?</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Y</source>
        <translation>Ctrl+Shift+Y</translation>
    </message>
    <message>
        <source>Save the list of trees...</source>
        <translation>Enregistrer la liste des arbres...</translation>
    </message>
    <message>
        <source>Ctrl+Shift+L</source>
        <translation>Ctrl+Shift+L</translation>
    </message>
    <message>
        <source>The bench holds %1 components: the others of mix %2 were left out.</source>
        <translation>L’établi tient %1 composants&#xa0;: les autres du mélange %2 ont été laissés de côté.</translation>
    </message>
    <message>
        <source>Write records to a fi&amp;le...</source>
        <translation>Écrire &amp;des enregistrements dans un fichier...</translation>
    </message>
    <message>
        <source>Ctrl+Shift+E</source>
        <translation>Ctrl+Shift+E</translation>
    </message>
    <message>
        <source>The whole record (*.json)</source>
        <translation>Tout le registre (*.json)</translation>
    </message>
    <message>
        <source>List of bags (*.csv)</source>
        <translation>Liste des sacs (*.csv)</translation>
    </message>
    <message>
        <source>List of sieve tests (*.csv)</source>
        <translation>Liste des essais de tamisage (*.csv)</translation>
    </message>
    <message>
        <source>List of trees (*.csv)</source>
        <translation>Liste des arbres (*.csv)</translation>
    </message>
    <message>
        <source>List of fractions (*.csv)</source>
        <translation>Liste des fractions (*.csv)</translation>
    </message>
    <message>
        <source>List of the stock&apos;s entries (*.csv)</source>
        <translation>Liste des écritures de stock (*.csv)</translation>
    </message>
    <message>
        <source>The log (*.csv)</source>
        <translation>Le journal (*.csv)</translation>
    </message>
    <message>
        <source>Write records to a file</source>
        <translation>Écrire des enregistrements dans un fichier</translation>
    </message>
    <message>
        <source>Written to %1.</source>
        <translation>Écrit dans %1.</translation>
    </message>
    <message>
        <source>Group&amp;s of trees and their wishes</source>
        <translation>Groupes d’arbres et leurs souha&amp;its</translation>
    </message>
    <message>
        <source>Ctrl+Shift+G</source>
        <translation>Ctrl+Shift+G</translation>
    </message>
    <message>
        <source>Kept as %1 and laid on the bench; its grain for %2 is kept from other searches until it is mixed.</source>
        <translation>Conservé sous %1 et posé sur l’établi&#xa0;; son grain pour %2 est gardé des autres recherches jusqu’à son mélange.</translation>
    </message>
    <message>
        <source>Put this grai&amp;n into the mix</source>
        <translation>Mettre ce grain dans le mélange</translation>
    </message>
    <message>
        <source>pot %1</source>
        <translation>pot %1</translation>
    </message>
    <message>
        <source>List of pots (*.csv)</source>
        <translation>Liste des pots (*.csv)</translation>
    </message>
    <message>
        <source>The sieve test of %1 is not kept and left the bench: undo brings it back.</source>
        <translation>L’essai de tamisage de %1 n’est pas conservé et a quitté l’établi : annulez pour le ramener.</translation>
    </message>
    <message>
        <source>No bag stands behind %1: type its sieve test.</source>
        <translation>Aucun sac ne se trouve derrière %1 : saisissez son tamisage.</translation>
    </message>
    <message>
        <source>Written to %1, but not all of it. %2.</source>
        <translation>Écrit dans %1, mais pas tout. %2.</translation>
    </message>
    <message>
        <source>litre weight of %1</source>
        <translation>masse au litre de %1</translation>
    </message>
    <message>
        <source>material of %1</source>
        <translation>matériau de %1</translation>
    </message>
    <message>
        <source>fraction %1</source>
        <translation>fraction %1</translation>
    </message>
    <message>
        <source>bin %1</source>
        <translation>caisse %1</translation>
    </message>
    <message>
        <source>ground of %1</source>
        <translation>substrat de %1</translation>
    </message>
    <message>
        <source>tub %1</source>
        <translation>auge %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordSession</name>
    <message>
        <source>bag and pot numbers of the record before</source>
        <translation>numéros de sacs et de pots du registre précédent</translation>
    </message>
    <message>
        <source>Nothing was restored: %1</source>
        <translation>Rien n’a été restauré&#xa0;: %1</translation>
    </message>
    <message>
        <source>Restored. The record as it was is kept as %1.</source>
        <translation>Restauré. Le registre tel qu’il était est gardé sous %1.</translation>
    </message>
    <message>
        <source>Restored.</source>
        <translation>Restauré.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RootPlanDesk</name>
    <message>
        <source>%1 of root-mass plan %2</source>
        <translation>%1 du plan de motte %2</translation>
    </message>
    <message>
        <source>root-mass plan of tree %1</source>
        <translation>plan de motte de l’arbre %1</translation>
    </message>
    <message>
        <source>place of the tree</source>
        <translation>place de l’arbre</translation>
    </message>
    <message>
        <source>mix of root-mass plan %1</source>
        <translation>mélange du plan de motte %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RootPlanTab</name>
    <message>
        <source>Tree to plan for</source>
        <translation>Arbre à planifier</translation>
    </message>
    <message>
        <source>&amp;Begin a plan</source>
        <translation>Commencer &amp;un plan</translation>
    </message>
    <message>
        <source>Begin a plan for this tree</source>
        <translation>Commencer un plan pour cet arbre</translation>
    </message>
    <message>
        <source>Root-mass plans</source>
        <translation>Plans de motte</translation>
    </message>
    <message>
        <source>plan by number or name</source>
        <translation>numéro ou nom</translation>
    </message>
    <message>
        <source>No plans yet. Choose a tree above and begin one.</source>
        <translation>Pas encore de plans. Choisissez un arbre plus haut et commencez-en un.</translation>
    </message>
    <message>
        <source>for tree</source>
        <translation>pour l’arbre</translation>
    </message>
    <message>
        <source>Parts of the plan</source>
        <translation>Parties du plan</translation>
    </message>
    <message>
        <source>Root mass</source>
        <translation>Motte</translation>
    </message>
    <message>
        <source>Stand</source>
        <translation>Place</translation>
    </message>
    <message>
        <source>May come off</source>
        <translation>À ôter</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Établi</translation>
    </message>
    <message>
        <source>Species group</source>
        <translation>Groupe d’espèces</translation>
    </message>
    <message>
        <source>group</source>
        <translation>groupe</translation>
    </message>
    <message>
        <source>Pot it goes into</source>
        <translation>Pot où il va</translation>
    </message>
    <message>
        <source>Into &amp;pot</source>
        <translation>&amp;Dans le pot</translation>
    </message>
    <message>
        <source>Form of the root mass</source>
        <translation>Forme de la motte</translation>
    </message>
    <message>
        <source>as its present pot</source>
        <translation>comme son pot actuel</translation>
    </message>
    <message>
        <source>box</source>
        <translation>boîte</translation>
    </message>
    <message>
        <source>upright elliptic</source>
        <translation>elliptique, debout</translation>
    </message>
    <message>
        <source>rounded</source>
        <translation>arrondie</translation>
    </message>
    <message>
        <source>&amp;Root mass</source>
        <translation>Mo&amp;tte</translation>
    </message>
    <message>
        <source>Present pot</source>
        <translation>Pot actuel</translation>
    </message>
    <message>
        <source>present pot</source>
        <translation>pot actuel</translation>
    </message>
    <message>
        <source>Root mass, length</source>
        <translation>Motte, longueur</translation>
    </message>
    <message>
        <source>left to right, from the old front</source>
        <translation>de gauche à droite, depuis l’ancien devant</translation>
    </message>
    <message>
        <source>Root mass, width</source>
        <translation>Motte, largeur</translation>
    </message>
    <message>
        <source>front to back</source>
        <translation>d’avant en arrière</translation>
    </message>
    <message>
        <source>Root mass, height</source>
        <translation>Motte, hauteur</translation>
    </message>
    <message>
        <source>underside to surface</source>
        <translation>du dessous à la surface</translation>
    </message>
    <message>
        <source>Roundness</source>
        <translation>Rondeur</translation>
    </message>
    <message>
        <source>2 an ellipsoid, 4 a box with soft edges</source>
        <translation>2 un ellipsoïde, 4 une boîte aux arêtes douces</translation>
    </message>
    <message>
        <source>Trunk base, right</source>
        <translation>Base du tronc, droite</translation>
    </message>
    <message>
        <source>of the root mass&apos;s middle; empty: middle of its top</source>
        <translation>du milieu de la motte&#xa0;; vide&#xa0;: milieu du dessus</translation>
    </message>
    <message>
        <source>Trunk base, back</source>
        <translation>Base du tronc, arrière</translation>
    </message>
    <message>
        <source>behind its middle</source>
        <translation>derrière son milieu</translation>
    </message>
    <message>
        <source>Trunk base, up</source>
        <translation>Base du tronc, haut</translation>
    </message>
    <message>
        <source>over its underside</source>
        <translation>au-dessus de son dessous</translation>
    </message>
    <message>
        <source>New mix at the side</source>
        <translation>Mélange neuf sur le côté</translation>
    </message>
    <message>
        <source>wanted; empty: 5 % of the length, 0.5 to 2 cm</source>
        <translation>vide&#xa0;: 5&#xa0;% de la longueur, 0,5 à 2 cm</translation>
    </message>
    <message>
        <source>New mix below</source>
        <translation>Mélange neuf dessous</translation>
    </message>
    <message>
        <source>wanted; empty: 15 % of the depth, 0.5 to 1.5 cm</source>
        <translation>vide&#xa0;: 15&#xa0;% de la profondeur, 0,5 à 1,5 cm</translation>
    </message>
    <message>
        <source>Turn, degrees</source>
        <translation>Rotation, degrés</translation>
    </message>
    <message>
        <source>the new front; from right toward back</source>
        <translation>le nouveau devant&#xa0;; de droite vers l’arrière</translation>
    </message>
    <message>
        <source>may be turned by</source>
        <translation>peut tourner de</translation>
    </message>
    <message>
        <source>degrees either way, to fit</source>
        <translation>degrés de part et d’autre, pour tenir</translation>
    </message>
    <message>
        <source>Tip, degrees</source>
        <translation>Bascule, degrés</translation>
    </message>
    <message>
        <source>0 to 90</source>
        <translation>0 à 90</translation>
    </message>
    <message>
        <source>Tip toward, degrees</source>
        <translation>Bascule vers, degrés</translation>
    </message>
    <message>
        <source>0 right, 90 back, 180 left</source>
        <translation>0 droite, 90 arrière, 180 gauche</translation>
    </message>
    <message>
        <source>Tip at least, degrees</source>
        <translation>Bascule au moins, degrés</translation>
    </message>
    <message>
        <source>empty: it may be set upright</source>
        <translation>vide&#xa0;: il peut être mis droit</translation>
    </message>
    <message>
        <source>Trunk base stands right</source>
        <translation>Base du tronc à droite</translation>
    </message>
    <message>
        <source>of the pot&apos;s middle; empty: root mass in the middle</source>
        <translation>du milieu du pot&#xa0;; vide&#xa0;: motte au milieu</translation>
    </message>
    <message>
        <source>Trunk base stands back</source>
        <translation>Base du tronc en arrière</translation>
    </message>
    <message>
        <source>of the pot&apos;s middle</source>
        <translation>du milieu du pot</translation>
    </message>
    <message>
        <source>Trunk base over floor</source>
        <translation>Base du tronc sur fond</translation>
    </message>
    <message>
        <source>empty: at its least height over the soil</source>
        <translation>vide&#xa0;: à sa moindre hauteur sur le substrat</translation>
    </message>
    <message>
        <source>Trunk base over soil</source>
        <translation>Base du tronc sur substrat</translation>
    </message>
    <message>
        <source>at least; the trunk is never buried</source>
        <translation>au moins&#xa0;; le tronc n’est jamais enterré</translation>
    </message>
    <message>
        <source>How it is cut</source>
        <translation>Façon de couper</translation>
    </message>
    <message>
        <source>along the pot&apos;s wall</source>
        <translation>le long de la paroi du pot</translation>
    </message>
    <message>
        <source>straight, as a saw goes</source>
        <translation>droit, comme va une scie</translation>
    </message>
    <message>
        <source>cut style</source>
        <translation>façon de couper</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Coupe</translation>
    </message>
    <message>
        <source>%1, at most</source>
        <translation>%1, au plus</translation>
    </message>
    <message>
        <source>0: nothing, a structural root; empty: not known</source>
        <translation>0&#xa0;: rien, une racine porteuse&#xa0;; vide&#xa0;: inconnu</translation>
    </message>
    <message>
        <source>%1, combed</source>
        <translation>%1, peigné</translation>
    </message>
    <message>
        <source>depth without a cut; empty: not combed</source>
        <translation>profondeur sans coupe&#xa0;; vide&#xa0;: non peigné</translation>
    </message>
    <message>
        <source>of the root mass; empty: the group&apos;s</source>
        <translation>de la motte&#xa0;; vide&#xa0;: selon le groupe</translation>
    </message>
    <message>
        <source>Untouched, at least</source>
        <translation>Intact, au moins</translation>
    </message>
    <message>
        <source>Taken off, at most</source>
        <translation>Ôté, au plus</translation>
    </message>
    <message>
        <source>Free pots of the record</source>
        <translation>Pots libres du registre</translation>
    </message>
    <message>
        <source>leave them out</source>
        <translation>les laisser</translation>
    </message>
    <message>
        <source>try them where this pot is too small</source>
        <translation>les essayer si ce pot est trop petit</translation>
    </message>
    <message>
        <source>free pots</source>
        <translation>pots libres</translation>
    </message>
    <message>
        <source>Free pots</source>
        <translation>Pots libres</translation>
    </message>
    <message>
        <source>Where the cut stopped</source>
        <translation>Où la coupe a buté</translation>
    </message>
    <message>
        <source>Cut stopped, from</source>
        <translation>Coupe arrêtée, depuis</translation>
    </message>
    <message>
        <source>It stopped at</source>
        <translation>Elle a buté à</translation>
    </message>
    <message>
        <source>depth from the farthest point, like 3 cm</source>
        <translation>profondeur depuis le point le plus loin, comme 3 cm</translation>
    </message>
    <message>
        <source>Stopped there: plan the rest</source>
        <translation>Arrêtée là&#xa0;: planifier le reste</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Effacer</translation>
    </message>
    <message>
        <source>Clear what was stopped</source>
        <translation>Effacer les arrêts</translation>
    </message>
    <message>
        <source>stopped cuts</source>
        <translation>coupes arrêtées</translation>
    </message>
    <message>
        <source>Pictures of the plan</source>
        <translation>Images du plan</translation>
    </message>
    <message>
        <source>From the side and above</source>
        <translation>De côté et d’en haut</translation>
    </message>
    <message>
        <source>Plan shown</source>
        <translation>Plan montré</translation>
    </message>
    <message>
        <source>Done: write this plan into the tree&apos;s history</source>
        <translation>Fait&#xa0;: écrire ce plan dans l’histoire de l’arbre</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Lifting, blades, moss.</source>
        <translation>Levage, lames, mousse.</translation>
    </message>
    <message>
        <source>Two people or a trolley for a heavy pot; cut away from the hand; gloves for sphagnum. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation>À deux ou avec un chariot pour un pot lourd&#xa0;; coupez en vous éloignant de la main&#xa0;; des gants pour la sphaigne. Informations générales&#xa0;; les fiches de sécurité, règles locales et avis qualifiés priment.</translation>
    </message>
    <message>
        <source>If the upper surface stops</source>
        <translation>Si le dessus bute</translation>
    </message>
    <message>
        <source>upper cut stops at</source>
        <translation>coupe du dessus arrêtée à</translation>
    </message>
    <message>
        <source>take below</source>
        <translation>ôter dessous</translation>
    </message>
    <message>
        <source>trunk base</source>
        <translation>base du tronc</translation>
    </message>
    <message>
        <source>untouched</source>
        <translation>intact</translation>
    </message>
    <message>
        <source>new mix</source>
        <translation>mélange neuf</translation>
    </message>
    <message>
        <source>root mass</source>
        <translation>motte</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>pot</translation>
    </message>
    <message>
        <source>stopped cut</source>
        <translation>coupe arrêtée</translation>
    </message>
    <message>
        <source>Saved %1</source>
        <translation>%1 enregistré</translation>
    </message>
    <message>
        <source>repotting of tree %1 by plan %2</source>
        <translation>rempotage de l’arbre %1 selon le plan %2</translation>
    </message>
    <message>
        <source>Written into the history of tree %1; the mix is added on the Trees tab.</source>
        <translation>Écrit dans l’histoire de l’arbre %1&#xa0;; le mélange s’ajoute sous l’onglet Arbres.</translation>
    </message>
    <message>
        <source>There is no tree yet: add it on the Trees tab.</source>
        <translation>Pas encore d’arbre&#xa0;: ajoutez-le sous l’onglet Arbres.</translation>
    </message>
    <message>
        <source>Tree %1 has no species group, so what it bears is not known: choose its group on the Trees tab.</source>
        <translation>L’arbre %1 n’a pas de groupe d’espèces, on ne sait donc pas ce qu’il supporte&#xa0;: choisissez son groupe sous l’onglet Arbres.</translation>
    </message>
    <message>
        <source>root-mass plan %1 removed</source>
        <translation>plan de motte %1 supprimé</translation>
    </message>
    <message>
        <source>%1, as it was</source>
        <translation>%1, tel qu’il était</translation>
    </message>
    <message>
        <source>%1: stopped at %2</source>
        <translation>%1&#xa0;: arrêté à %2</translation>
    </message>
    <message>
        <source>Plan %1: %2.</source>
        <translation>Plan %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>fits as it is</source>
        <translation>tient tel quel</translation>
    </message>
    <message>
        <source>Caution:</source>
        <translation>Précaution&#xa0;:</translation>
    </message>
    <message>
        <source>Note:</source>
        <translation>Remarque&#xa0;:</translation>
    </message>
    <message>
        <source>plan %1</source>
        <translation>plan %1</translation>
    </message>
    <message>
        <source>plan %1, in stages</source>
        <translation>plan %1, par étapes</translation>
    </message>
    <message>
        <source>corners %1 of the root mass</source>
        <translation>coins %1 de la motte</translation>
    </message>
    <message>
        <source>Nothing limits the fit.</source>
        <translation>Rien ne limite la place.</translation>
    </message>
    <message>
        <source>What limits the fit: %1.</source>
        <translation>Ce qui limite la place&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1 longer</source>
        <translation>%1 de longueur</translation>
    </message>
    <message>
        <source>%1 wider</source>
        <translation>%1 de largeur</translation>
    </message>
    <message>
        <source>%1 deeper</source>
        <translation>%1 de profondeur</translation>
    </message>
    <message>
        <source>Smallest change of the pot that would fit: %1.</source>
        <translation>Plus petit changement du pot qui suffirait&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Plan %1 in figures</source>
        <translation>Plan %1 en chiffres</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation>ôté</translation>
    </message>
    <message>
        <source>stays untouched</source>
        <translation>reste intact</translation>
    </message>
    <message>
        <source>new mix, as it lies</source>
        <translation>mélange neuf, en place</translation>
    </message>
    <message>
        <source>soil line over the floor</source>
        <translation>niveau du substrat sur le fond</translation>
    </message>
    <message>
        <source>new mix, of the pot</source>
        <translation>mélange neuf, du pot</translation>
    </message>
    <message>
        <source>shoulder over the soil</source>
        <translation>épaulement au-dessus du substrat</translation>
    </message>
    <message>
        <source>not in one go</source>
        <translation>pas en une fois</translation>
    </message>
    <message>
        <source>Mix that fills the rest</source>
        <translation>Mélange qui remplit le reste</translation>
    </message>
    <message>
        <source>&amp;Mix</source>
        <translation>Mé&amp;lange</translation>
    </message>
    <message>
        <source>Trunk and stones</source>
        <translation>Tronc et pierres</translation>
    </message>
    <message>
        <source>under the soil; they take the place of mix</source>
        <translation>sous le substrat, au lieu du mélange</translation>
    </message>
    <message>
        <source>Cut in this order</source>
        <translation>Couper dans cet ordre</translation>
    </message>
    <message>
        <source>like: up, right; empty: largest first</source>
        <translation>comme&#xa0;: up, right&#xa0;; vide&#xa0;: le plus grand d’abord</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>All soil off on purpose: bare-rooted</source>
        <translation>Tout le substrat ôté exprès&#xa0;: racines nues</translation>
    </message>
    <message>
        <source>Bare-root it</source>
        <translation>À racines nues</translation>
    </message>
    <message>
        <source>bare-rooting</source>
        <translation>racines nues</translation>
    </message>
    <message>
        <source>It was bare-rooted last time</source>
        <translation>Il était à racines nues la dernière fois</translation>
    </message>
    <message>
        <source>Bare-rooted last time</source>
        <translation>À racines nues la dernière fois</translation>
    </message>
    <message>
        <source>last bare-rooting</source>
        <translation>dernières racines nues</translation>
    </message>
    <message>
        <source>Disturbed beside a cut</source>
        <translation>Dérangé près d’une coupe</translation>
    </message>
    <message>
        <source>to this depth; empty: 3 % of the length, 0.3 to 2 cm</source>
        <translation>jusqu’à cette profondeur&#xa0;; vide&#xa0;: 3&#xa0;% de la longueur, 0,3 à 2 cm</translation>
    </message>
    <message>
        <source>In stages: years between</source>
        <translation>Par étapes&#xa0;: années entre</translation>
    </message>
    <message>
        <source>whole years; empty: the group&apos;s least interval</source>
        <translation>années entières&#xa0;; vide&#xa0;: le moindre intervalle du groupe</translation>
    </message>
    <message>
        <source>Air and water</source>
        <translation>Air et eau</translation>
    </message>
    <message>
        <source>Written into the history of tree %1; a repotting day also takes the grain from the stock.</source>
        <translation>Écrit dans l’histoire de l’arbre %1&#xa0;; une journée de rempotage prend aussi le grain du stock.</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>aucun encore</translation>
    </message>
    <message>
        <source>untouched last time and again</source>
        <translation>intact la dernière fois et encore</translation>
    </message>
    <message>
        <source>worked last time and again</source>
        <translation>travaillé la dernière fois et encore</translation>
    </message>
    <message>
        <source>Write into histor&amp;y</source>
        <translation>&amp;Vers l’histoire</translation>
    </message>
    <message>
        <source>Pri&amp;nt...</source>
        <translation>I&amp;mprimer...</translation>
    </message>
    <message>
        <source>P&amp;DF...</source>
        <translation>&amp;PDF...</translation>
    </message>
    <message>
        <source>The printer could not be reached: is it on? The PDF can be printed later.</source>
        <translation>L’imprimante n’a pas pu être jointe&#xa0;: est-elle allumée&#xa0;? Le PDF peut être imprimé plus tard.</translation>
    </message>
    <message>
        <source>No pot is free: add the pot it shall go into on the Pots tab.</source>
        <translation>Aucun pot n’est libre&#xa0;: ajoutez sous l’onglet Pots celui où il doit aller.</translation>
    </message>
    <message>
        <source>Measure the root mass and type its length, width and height, or choose the pot it stands in. Nothing is worked out before.</source>
        <translation>Mesurez la motte et saisissez sa longueur, sa largeur et sa hauteur, ou choisissez le pot où elle se trouve. Rien n’est calculé avant.</translation>
    </message>
    <message>
        <source>sphagnum of the shoulder, about</source>
        <translation>sphaigne de l’épaulement, environ</translation>
    </message>
    <message>
        <source>Plan %1 stays: a tree&apos;s history or a day names it. Begin a new plan instead.</source>
        <translation>Le plan %1 reste&#xa0;: l’histoire d’un arbre ou une journée le cite. Commencez plutôt un nouveau plan.</translation>
    </message>
    <message>
        <source>Species gro&amp;up</source>
        <translation>&amp;Groupe d’espèces</translation>
    </message>
    <message>
        <source>New plan for &amp;tree</source>
        <translation>Nouveau plan pour l’ar&amp;bre</translation>
    </message>
    <message>
        <source>Print the root-mass plan</source>
        <translation>Imprimer le plan de motte</translation>
    </message>
    <message>
        <source>Save the root-mass plan as PDF</source>
        <translation>Enregistrer le plan de motte en PDF</translation>
    </message>
    <message>
        <source>Root-mass plan as PDF</source>
        <translation>Plan de motte en PDF</translation>
    </message>
    <message>
        <source>root-mass plan %1.pdf</source>
        <translation>plan de motte %1.pdf</translation>
    </message>
    <message>
        <source>%1: %2 (%3)</source>
        <translation>%1&#xa0;: %2 (%3)</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation>%1 ou plus</translation>
    </message>
    <message>
        <source>Caution: after everything that may be done the root mass still sticks out, %1; take a larger pot</source>
        <translation>Précaution&#xa0;: après tout ce qui peut être fait, la motte dépasse encore, %1&#xa0;; prenez un pot plus grand</translation>
    </message>
    <message>
        <source>No plan is worked out here yet. Begin one and enter its root mass and pot: then its sheet can go on paper.</source>
        <translation>Aucun plan n’est encore calculé ici. Commencez-en un et saisissez sa motte et son pot : sa feuille pourra alors aller sur papier.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RootPlanView</name>
    <message>
        <source>taken off</source>
        <translation>ôté</translation>
    </message>
    <message>
        <source>kept root mass</source>
        <translation>motte gardée</translation>
    </message>
    <message>
        <source>untouched</source>
        <translation>intact</translation>
    </message>
    <message>
        <source>bottom layer, dressing</source>
        <translation>drainage, surface</translation>
    </message>
    <message>
        <source>shoulder</source>
        <translation>épaulement</translation>
    </message>
    <message>
        <source>soil surface</source>
        <translation>surface du substrat</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>pot</translation>
    </message>
    <message>
        <source>right</source>
        <translation>droite</translation>
    </message>
    <message>
        <source>left</source>
        <translation>gauche</translation>
    </message>
    <message>
        <source>back</source>
        <translation>arrière</translation>
    </message>
    <message>
        <source>front</source>
        <translation>avant</translation>
    </message>
    <message>
        <source>up</source>
        <translation>haut</translation>
    </message>
    <message>
        <source>down</source>
        <translation>bas</translation>
    </message>
    <message>
        <source>old right</source>
        <translation>ancienne droite</translation>
    </message>
    <message>
        <source>old left</source>
        <translation>ancienne gauche</translation>
    </message>
    <message>
        <source>old back</source>
        <translation>ancien arrière</translation>
    </message>
    <message>
        <source>old front</source>
        <translation>ancien avant</translation>
    </message>
    <message>
        <source>old top</source>
        <translation>ancien dessus</translation>
    </message>
    <message>
        <source>old bottom</source>
        <translation>ancien dessous</translation>
    </message>
    <message>
        <source>move the tree</source>
        <translation>déplacer l’arbre</translation>
    </message>
    <message>
        <source>turn it</source>
        <translation>le tourner</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>couper</translation>
    </message>
    <message>
        <source>tip it less</source>
        <translation>moins l’incliner</translation>
    </message>
    <message>
        <source>sink it</source>
        <translation>l’enfoncer</translation>
    </message>
    <message>
        <source>raise it to the soil</source>
        <translation>le lever jusqu’au substrat</translation>
    </message>
    <message>
        <source>build a shoulder</source>
        <translation>bâtir un épaulement</translation>
    </message>
    <message>
        <source>take another pot</source>
        <translation>prendre un autre pot</translation>
    </message>
    <message>
        <source>in stages</source>
        <translation>par étapes</translation>
    </message>
    <message>
        <source>No plan yet: choose a tree and begin one.</source>
        <translation>Pas encore de plan&#xa0;: choisissez un arbre et commencez-en un.</translation>
    </message>
    <message>
        <source>Plan %1: %2 is taken off, %3 stays untouched, the trunk base stands %4 over the floor and the soil line lies at %5.</source>
        <translation>Plan %1&#xa0;: %2 est ôté, %3 reste intact, la base du tronc est à %4 au-dessus du fond et le niveau du substrat à %5.</translation>
    </message>
    <message>
        <source>what</source>
        <translation>quoi</translation>
    </message>
    <message>
        <source>where</source>
        <translation>où</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>combien</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>combed</source>
        <translation>peigné</translation>
    </message>
    <message>
        <source>of the root mass</source>
        <translation>de la motte</translation>
    </message>
    <message>
        <source>trunk base</source>
        <translation>base du tronc</translation>
    </message>
    <message>
        <source>right of the middle</source>
        <translation>à droite du milieu</translation>
    </message>
    <message>
        <source>behind the middle</source>
        <translation>derrière le milieu</translation>
    </message>
    <message>
        <source>over the floor</source>
        <translation>au-dessus du fond</translation>
    </message>
    <message>
        <source>at the trunk, over the floor</source>
        <translation>au tronc, au-dessus du fond</translation>
    </message>
    <message>
        <source>over the soil</source>
        <translation>au-dessus du substrat</translation>
    </message>
    <message>
        <source>untouched last time</source>
        <translation>intact la dernière fois</translation>
    </message>
    <message>
        <source>The plan from the side and from above; arrow keys move the tree, Page Up and Page Down raise and sink it, Shift with left and right turns it, Shift with up and down tips it</source>
        <translation>Le plan de côté et d’en haut&#xa0;; les flèches déplacent l’arbre, Page haut et Page bas le lèvent et l’abaissent, Maj avec gauche et droite le tourne, Maj avec haut et bas le bascule</translation>
    </message>
    <message>
        <source>Plan %1 goes in stages: %2 comes off now and the tree goes back into its old pot, as drawn here.</source>
        <translation>Le plan %1 va par étapes&#xa0;: %2 est ôté maintenant et l’arbre retourne dans son ancien pot, comme dessiné ici.</translation>
    </message>
    <message>
        <source>Drag the tree in either picture, or use the arrow keys, Page Up and Page Down; the ring at the old front turns it, the ring on the trunk tips it, as do the arrow keys with Shift</source>
        <translation>Tirez l’arbre dans l’une des images, ou utilisez les flèches, Page haut et Page bas&#xa0;; l’anneau à l’ancien devant le tourne, l’anneau du tronc le bascule, comme les flèches avec Maj</translation>
    </message>
    <message>
        <source>trunk</source>
        <translation>tronc</translation>
    </message>
    <message>
        <source>round off corners</source>
        <translation>arrondir les coins</translation>
    </message>
    <message>
        <source>rounded off</source>
        <translation>arrondi</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RootSectionView</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>air %1, water held %2</source>
        <translation>air %1, eau retenue %2</translation>
    </message>
    <message>
        <source>The pot in section with the new mix around the root mass</source>
        <translation>Le pot en coupe avec le mélange neuf autour de la motte</translation>
    </message>
    <message>
        <source>%1 (%2): %3; the lowest %4 stay wet.</source>
        <translation>%1 (%2)&#xa0;: %3&#xa0;; les %4 du bas restent saturés.</translation>
    </message>
    <message>
        <source>What the kept root mass holds is not known.</source>
        <translation>Ce que retient la motte gardée n’est pas connu.</translation>
    </message>
    <message>
        <source>Plan %1 goes in stages, back into the old pot: its section is not known.</source>
        <translation>Le plan %1 va par étapes, retour dans l’ancien pot&#xa0;: sa coupe n’est pas connue.</translation>
    </message>
    <message>
        <source>No mix yet: choose on “Root mass” what fills the rest of the pot.</source>
        <translation>Pas encore de mélange&#xa0;: choisissez sous «&#xa0;Motte&#xa0;» ce qui remplit le reste du pot.</translation>
    </message>
    <message>
        <source>kept root mass: not known</source>
        <translation>motte gardée&#xa0;: inconnu</translation>
    </message>
    <message>
        <source>wet zone %1</source>
        <translation>zone saturée %1</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>filled %1</source>
        <translation>rempli %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 has a component without a grain density, so its water is not known: measure it.</source>
        <translation>%1 a un composant sans densité des grains, son eau n’est donc pas connue&#xa0;: mesurez-la.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ScoreView</name>
    <message numerus="yes">
        <source>predicted %1 points too low on average, %2 points root mean square, %n test(s)</source>
        <translation>
            <numerusform>prévu trop bas de %1 points en moyenne, écart quadratique %2 points, %n essai</numerusform>
            <numerusform>prévu trop bas de %1 points en moyenne, écart quadratique %2 points, %n essais</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>predicted %1 points too high on average, %2 points root mean square, %n test(s)</source>
        <translation>
            <numerusform>prévu trop haut de %1 points en moyenne, écart quadratique %2 points, %n essai</numerusform>
            <numerusform>prévu trop haut de %1 points en moyenne, écart quadratique %2 points, %n essais</numerusform>
        </translation>
    </message>
    <message>
        <source>No pot test to compare yet. A pot test of a kept mix shows how far off the estimate of its air was.</source>
        <translation>Pas encore d’essai en pot à comparer. L’essai en pot d’un mélange conservé montre l’écart de l’estimation de son air.</translation>
    </message>
    <message>
        <source>Fine, up to %1: %2.</source>
        <translation>Fin, jusqu’à %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Coarse: %1.</source>
        <translation>Grossier&#xa0;: %1.</translation>
    </message>
    <message>
        <source>pot test</source>
        <translation>essai en pot</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mélange</translation>
    </message>
    <message>
        <source>grain</source>
        <translation>grain</translation>
    </message>
    <message>
        <source>predicted air</source>
        <translation>air prévu</translation>
    </message>
    <message>
        <source>measured air</source>
        <translation>air mesuré</translation>
    </message>
    <message>
        <source>points off</source>
        <translation>points d’écart</translation>
    </message>
    <message>
        <source>coarse</source>
        <translation>grossier</translation>
    </message>
    <message>
        <source>fine</source>
        <translation>fin</translation>
    </message>
    <message>
        <source>Pot tests: predicted against measured air</source>
        <translation>Essais en pot&#xa0;: air prévu contre air mesuré</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>fine grain</source>
        <translation>grain fin</translation>
    </message>
    <message>
        <source>coarse grain</source>
        <translation>grain grossier</translation>
    </message>
    <message>
        <source>Air that drains free: %1.</source>
        <translation>Air qui se libère au drainage&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ScreeningPanel</name>
    <message>
        <source>&amp;Keep these fractions</source>
        <translation>C&amp;onserver ces fractions</translation>
    </message>
    <message>
        <source>Screen at, mm</source>
        <translation>Cribler à, mm</translation>
    </message>
    <message>
        <source>openings to screen at</source>
        <translation>ouvertures de criblage</translation>
    </message>
    <message>
        <source>as the verdict says; or type 6.3 2</source>
        <translation>comme dit le verdict&#xa0;; ou saisissez 6,3 2</translation>
    </message>
    <message>
        <source>Dry grain screened</source>
        <translation>Grain sec criblé</translation>
    </message>
    <message>
        <source>grain screened</source>
        <translation>grain criblé</translation>
    </message>
    <message>
        <source>all that is left of the bag; kg can be typed</source>
        <translation>tout ce qui reste du sac&#xa0;; kg peut être saisi</translation>
    </message>
    <message>
        <source>Fractions, predicted and measured</source>
        <translation>Fractions, prévues et mesurées</translation>
    </message>
    <message>
        <source>Type what each fraction weighed, and its litres, into the last two columns.</source>
        <translation>Saisissez dans les deux dernières colonnes le poids de chaque fraction et ses litres.</translation>
    </message>
    <message>
        <source>Keep these fractions</source>
        <translation>Conserver ces fractions</translation>
    </message>
    <message>
        <source>Lifting:</source>
        <translation>Levage&#xa0;:</translation>
    </message>
    <message>
        <source>a full bag is heavy; lift from the knees, or screen it in two halves. General information; qualified advice prevails.</source>
        <translation>un sac plein est lourd&#xa0;; levez avec les genoux, ou criblez-le en deux moitiés. Informations générales&#xa0;; l’avis qualifié prime.</translation>
    </message>
    <message>
        <source>mass of the fraction %1</source>
        <translation>masse de la fraction %1</translation>
    </message>
    <message>
        <source>litres of the fraction %1</source>
        <translation>litres de la fraction %1</translation>
    </message>
    <message>
        <source>fraction</source>
        <translation>fraction</translation>
    </message>
    <message>
        <source>share</source>
        <translation>part</translation>
    </message>
    <message>
        <source>predicted</source>
        <translation>prévu</translation>
    </message>
    <message>
        <source>litres</source>
        <translation>litres</translation>
    </message>
    <message>
        <source>weighed, %1</source>
        <translation>pesé, %1</translation>
    </message>
    <message>
        <source>measured, %1</source>
        <translation>mesuré, %1</translation>
    </message>
    <message>
        <source>Weigh every fraction first</source>
        <translation>Pesez d’abord chaque fraction</translation>
    </message>
    <message>
        <source>Screened on</source>
        <translation>Criblé le</translation>
    </message>
    <message>
        <source>day of the screening</source>
        <translation>jour du criblage</translation>
    </message>
    <message>
        <source>What is predicted</source>
        <translation>Ce qui est prévu</translation>
    </message>
    <message>
        <source>today; or a day like %1</source>
        <translation>aujourd’hui&#xa0;; ou un jour comme %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SectionView</name>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2&#xa0;: %3</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>as the system</source>
        <translation>comme le système</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
    <message>
        <source>A change holds from the next start. Every translation is a draft, not yet read by a native grower.</source>
        <translation>Un changement vaut au prochain démarrage. Chaque traduction est une ébauche, pas encore relue par un cultivateur de langue maternelle.</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unités</translation>
    </message>
    <message>
        <source>metric: litres, millimetres, grams</source>
        <translation>métrique&#xa0;: litres, millimètres, grammes</translation>
    </message>
    <message>
        <source>US: quarts, inches, ounces</source>
        <translation>US&#xa0;: quarts, pouces, onces</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Couleurs</translation>
    </message>
    <message>
        <source>light</source>
        <translation>clair</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>sombre</translation>
    </message>
    <message>
        <source>high contrast</source>
        <translation>contraste élevé</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>Taille du texte</translation>
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
        <translation>Montrer les chiffres de laboratoire à côté du verdict</translation>
    </message>
    <message>
        <source>Backups folder</source>
        <translation>Dossier des sauvegardes</translation>
    </message>
    <message>
        <source>beside the record; a change holds from the next start</source>
        <translation>à côté du registre&#xa0;; un changement vaut au prochain démarrage</translation>
    </message>
    <message>
        <source>Choose...</source>
        <translation>Choisir...</translation>
    </message>
    <message>
        <source>Choose the backups folder</source>
        <translation>Choisir le dossier des sauvegardes</translation>
    </message>
    <message>
        <source>Sieves you own</source>
        <translation>Vos tamis</translation>
    </message>
    <message>
        <source>Sets of sieves you own</source>
        <translation>Vos jeux de tamis</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>openings</source>
        <translation>ouvertures</translation>
    </message>
    <message>
        <source>Add a set</source>
        <translation>Ajouter un jeu</translation>
    </message>
    <message>
        <source>Add a set of sieves</source>
        <translation>Ajouter un jeu de tamis</translation>
    </message>
    <message>
        <source>my sieves</source>
        <translation>mes tamis</translation>
    </message>
    <message>
        <source>set of sieves %1</source>
        <translation>jeu de tamis %1</translation>
    </message>
    <message>
        <source>Your record</source>
        <translation>Votre registre</translation>
    </message>
    <message>
        <source>It lies in %1.</source>
        <translation>Il se trouve dans %1.</translation>
    </message>
    <message>
        <source>It is open for reading only.</source>
        <translation>Il est ouvert en lecture seule.</translation>
    </message>
    <message>
        <source>That is a network folder: saving takes longer there, and only one person should work in it at a time.</source>
        <translation>C’est un dossier réseau&#xa0;: l’enregistrement y est plus long, et une seule personne devrait y travailler à la fois.</translation>
    </message>
    <message>
        <source>Another program copies that folder elsewhere: let it finish before the record is opened on another machine, or two half records may come of it.</source>
        <translation>Un autre programme copie ce dossier ailleurs&#xa0;: laissez-le finir avant d’ouvrir le registre sur une autre machine, sinon il peut en sortir deux moitiés.</translation>
    </message>
    <message>
        <source>One set a line, its openings in mm or by name, apart by blanks: 8 5.6 4 2.8 2 1.4 1; how wide they are inside the frame shows an overloaded sieve. They are offered on the Sieving page, and “which openings?” chooses among them.</source>
        <translation>Un jeu par ligne, ses ouvertures en mm ou par nom, séparées par des espaces&#xa0;: 8 5,6 4 2,8 2 1,4 1&#xa0;; leur largeur dans le cadre montre un tamis surchargé. Ils sont proposés sous Tamisage, et «&#xa0;Quelles ouvertures&#xa0;?&#xa0;» choisit parmi eux.</translation>
    </message>
    <message>
        <source>across, %1</source>
        <translation>largeur, %1</translation>
    </message>
    <message>
        <source>%1 is no longer among your sieves; undo brings it back.</source>
        <translation>%1 ne fait plus partie des tamis&#xa0;; Annuler le rend.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SheetEditor</name>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>bag, lot or material</source>
        <translation>sac, lot ou matériau</translation>
    </message>
    <message>
        <source>&amp;Sample, dry</source>
        <translation>Échantillon, &amp;sec</translation>
    </message>
    <message>
        <source>sample mass of %1</source>
        <translation>masse d’échantillon de %1</translation>
    </message>
    <message>
        <source>weighed before sieving; shows the loss</source>
        <translation>pesé avant tamisage&#xa0;; montre la perte</translation>
    </message>
    <message>
        <source>Sample %1, dry</source>
        <translation>Échantillon %1, sec</translation>
    </message>
    <message>
        <source>mass of sample %1 of %2</source>
        <translation>masse de l’échantillon %1 de %2</translation>
    </message>
    <message>
        <source>a further sample of the same bag</source>
        <translation>un autre échantillon du même sac</translation>
    </message>
    <message>
        <source>by mass, net</source>
        <translation>en masse, net</translation>
    </message>
    <message>
        <source>by gross and tare</source>
        <translation>brut et tare</translation>
    </message>
    <message>
        <source>by litres, a bag by bucket</source>
        <translation>en litres, un sac au seau</translation>
    </message>
    <message>
        <source>How the fractions are measured</source>
        <translation>Comment les fractions sont mesurées</translation>
    </message>
    <message>
        <source>&amp;Measured</source>
        <translation>&amp;Mesuré</translation>
    </message>
    <message>
        <source>way of measuring %1</source>
        <translation>façon de mesurer %1</translation>
    </message>
    <message>
        <source>Sample 1: %1</source>
        <translation>Échantillon 1&#xa0;: %1</translation>
    </message>
    <message>
        <source>Sample %1: sum %2, loss %3</source>
        <translation>Échantillon %1&#xa0;: somme %2, perte %3</translation>
    </message>
    <message>
        <source>Sample %1: sum %2</source>
        <translation>Échantillon %1&#xa0;: somme %2</translation>
    </message>
    <message>
        <source>Sum %1</source>
        <translation>Somme %1</translation>
    </message>
    <message>
        <source>Nothing weighed yet: the curve grows as you type.</source>
        <translation>Rien de pesé encore&#xa0;: la courbe grandit à mesure que vous saisissez.</translation>
    </message>
    <message>
        <source>Sum and loss: – (see the marked cells)</source>
        <translation>Somme et perte&#xa0;: – (voir les cellules marquées)</translation>
    </message>
    <message>
        <source>%1; type the sample mass or the pan to see the curve.</source>
        <translation>%1&#xa0;; saisissez la masse de l’échantillon ou le fond pour voir la courbe.</translation>
    </message>
    <message>
        <source>%1, still in the stack %2</source>
        <translation>%1, encore dans la colonne %2</translation>
    </message>
    <message>
        <source>%1, loss – (no sample mass)</source>
        <translation>%1, perte – (pas de masse d’échantillon)</translation>
    </message>
    <message>
        <source>%1, gain %2</source>
        <translation>%1, gain %2</translation>
    </message>
    <message>
        <source>%1, loss %2</source>
        <translation>%1, perte %2</translation>
    </message>
    <message>
        <source>%1; type the pan to see the curve.</source>
        <translation>%1&#xa0;; saisissez le fond pour voir la courbe.</translation>
    </message>
    <message>
        <source>%1. Fractions lie looser than the whole bag did: litres tell no loss.</source>
        <translation>%1. Les fractions sont plus lâches que le sac entier&#xa0;: les litres ne disent rien de la perte.</translation>
    </message>
    <message>
        <source>Sample %1</source>
        <translation>Échantillon %1</translation>
    </message>
    <message>
        <source>Checks of the sieve test</source>
        <translation>Vérifications de l’analyse granulométrique</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SickTreesTab</name>
    <message>
        <source>Trees, the sick ones first; Space ticks those to compare</source>
        <translation>Arbres, les malades d’abord&#xa0;; Espace coche ceux à comparer</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>arbre</translation>
    </message>
    <message>
        <source>condition</source>
        <translation>état</translation>
    </message>
    <message>
        <source>since</source>
        <translation>depuis</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>potted</source>
        <translation>empoté</translation>
    </message>
    <message>
        <source>Tick the sick ones</source>
        <translation>Cocher les malades</translation>
    </message>
    <message>
        <source>Tick the sick trees again and no other</source>
        <translation>Cocher de nouveau les arbres malades et aucun autre</translation>
    </message>
    <message>
        <source>What do these trees share?</source>
        <translation>Que partagent ces arbres&#xa0;?</translation>
    </message>
    <message>
        <source>Look first at</source>
        <translation>À regarder d’abord</translation>
    </message>
    <message>
        <source>What these trees share, beside all others</source>
        <translation>Ce que partagent ces arbres, à côté de tous les autres</translation>
    </message>
    <message>
        <source>Save the comparison...</source>
        <translation>Enregistrer la comparaison...</translation>
    </message>
    <message>
        <source>Save what these trees share as text, CSV or JSON</source>
        <translation>Enregistrer ce que partagent ces arbres en texte, CSV ou JSON</translation>
    </message>
    <message>
        <source>compare %1, %2</source>
        <translation>comparer %1, %2</translation>
    </message>
    <message>
        <source>No trees yet. What is written down about them on Pots and trees stands here, the sick ones first.</source>
        <translation>Pas encore d’arbres. Ce qui est écrit d’eux sous Pots et arbres figure ici, les malades d’abord.</translation>
    </message>
    <message>
        <source>%1; tick those to compare with all others.</source>
        <translation>%1&#xa0;; cochez ceux à comparer avec tous les autres.</translation>
    </message>
    <message>
        <source>No tree is sick</source>
        <translation>Aucun arbre n’est malade</translation>
    </message>
    <message numerus="yes">
        <source>%n tree(s) sick</source>
        <translation>
            <numerusform>%n arbre malade</numerusform>
            <numerusform>%n arbres malades</numerusform>
        </translation>
    </message>
    <message>
        <source>No tree is ticked.</source>
        <translation>Aucun arbre n’est coché.</translation>
    </message>
    <message>
        <source>Compared: %1</source>
        <translation>Comparés&#xa0;: %1</translation>
    </message>
    <message>
        <source>Tick one tree to see what is known of its soil, or several to see what they share.</source>
        <translation>Cochez un arbre pour voir ce qu’on sait de son substrat, ou plusieurs pour voir ce qu’ils partagent.</translation>
    </message>
    <message>
        <source>They share nothing that was written down.</source>
        <translation>Ils ne partagent rien qui ait été écrit.</translation>
    </message>
    <message>
        <source>Tick the trees to compare first.</source>
        <translation>Cochez d’abord les arbres à comparer.</translation>
    </message>
    <message>
        <source>Save what these trees share</source>
        <translation>Enregistrer ce que partagent ces arbres</translation>
    </message>
    <message>
        <source>shared by the trees</source>
        <translation>partagé par les arbres</translation>
    </message>
    <message>
        <source>Text to print (*.txt);;For a spreadsheet (*.csv);;For programs (*.json)</source>
        <translation>Texte à imprimer (*.txt);;Pour un tableur (*.csv);;Pour des programmes (*.json)</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Enregistré sous %1.</translation>
    </message>
    <message>
        <source>%1 could not be written: choose a folder you may write to.</source>
        <translation>%1 n’a pas pu être écrit&#xa0;: choisissez un dossier où vous pouvez écrire.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SieveTable</name>
    <message>
        <source>Sieve stack</source>
        <translation>Colonne de tamis</translation>
    </message>
    <message>
        <source>One sieve a row, coarse to fine, the pan last. Type what stayed on; Enter goes to the next pan.</source>
        <translation>Un tamis par ligne, du gros au fin, le fond en dernier. Saisissez ce qui est resté&#xa0;; Entrée passe au suivant.</translation>
    </message>
    <message>
        <source>This is worked out: type what stayed on the sieve.</source>
        <translation>Ceci est calculé&#xa0;: saisir ce qui est resté sur le tamis.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SieveTableModel</name>
    <message>
        <source>pan</source>
        <translation>fond</translation>
    </message>
    <message>
        <source>sieve %1</source>
        <translation>tamis %1</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>vide</translation>
    </message>
    <message>
        <source>sieve, mm</source>
        <translation>tamis, mm</translation>
    </message>
    <message>
        <source>gross, %1</source>
        <translation>brut, %1</translation>
    </message>
    <message>
        <source>stayed on, %1</source>
        <translation>retenu, %1</translation>
    </message>
    <message>
        <source>tare, %1</source>
        <translation>tare, %1</translation>
    </message>
    <message>
        <source>net</source>
        <translation>net</translation>
    </message>
    <message>
        <source>sample 2, %1</source>
        <translation>échantillon 2, %1</translation>
    </message>
    <message>
        <source>sample 3, %1</source>
        <translation>échantillon 3, %1</translation>
    </message>
    <message>
        <source>passing</source>
        <translation>passant</translation>
    </message>
    <message>
        <source>check</source>
        <translation>contrôle</translation>
    </message>
    <message>
        <source>sieve %1 of %2</source>
        <translation>tamis %1 de %2</translation>
    </message>
    <message>
        <source>sample %1 on %2 of %3</source>
        <translation>échantillon %1 sur %2 de %3</translation>
    </message>
    <message>
        <source>pan mass of %1</source>
        <translation>masse du fond de %1</translation>
    </message>
    <message>
        <source>mass on %1 of %2</source>
        <translation>masse sur %1 de %2</translation>
    </message>
    <message>
        <source>paste into %1</source>
        <translation>coller dans %1</translation>
    </message>
    <message numerus="yes">
        <source>Pasted %n row(s).</source>
        <translation>
            <numerusform>%n ligne collée.</numerusform>
            <numerusform>%n lignes collées.</numerusform>
        </translation>
    </message>
    <message>
        <source>further sample of %1</source>
        <translation>autre échantillon de %1</translation>
    </message>
    <message>
        <source>sample %1 of %2 removed</source>
        <translation>échantillon %1 de %2 supprimé</translation>
    </message>
    <message>
        <source>new sieve of %1</source>
        <translation>nouveau tamis de %1</translation>
    </message>
    <message>
        <source>sieve %1 of %2 removed</source>
        <translation>tamis %1 de %2 supprimé</translation>
    </message>
    <message>
        <source>gross %1, %2</source>
        <translation>brut %1, %2</translation>
    </message>
    <message>
        <source>There is nothing to paste: copy rows of numbers first.</source>
        <translation>Il n’y a rien à coller&#xa0;: copiez d’abord des lignes de nombres.</translation>
    </message>
    <message>
        <source>predicted, %1</source>
        <translation>prévu, %1</translation>
    </message>
    <message>
        <source>%1 Left out below the pan: %2</source>
        <translation>%1 Laissé de côté sous le fond : %2</translation>
    </message>
    <message>
        <source>%1 They came from fine to coarse and were turned round.</source>
        <translation>%1 Elles venaient du fin au grossier et ont été retournées.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SievingPage</name>
    <message>
        <source>Bag</source>
        <translation>Sac</translation>
    </message>
    <message>
        <source>Sieves</source>
        <translation>Tamis</translation>
    </message>
    <message>
        <source>Dust:</source>
        <translation>Poussière&#xa0;:</translation>
    </message>
    <message>
        <source>sieve dry grain outdoors, wind behind you, with a mask (P2 or N95 at least, P3 or P100 for grit and sand); clean with a damp cloth, not a broom. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation>tamisez le grain sec dehors, le vent dans le dos, avec un masque (P2 ou N95 au moins, P3 ou P100 pour gravier et sable)&#xa0;; nettoyez au chiffon humide, pas au balai. Informations générales&#xa0;; les fiches de sécurité, règles locales et avis qualifiés priment.</translation>
    </message>
    <message>
        <source>What is typed</source>
        <translation>Ce qui est saisi</translation>
    </message>
    <message>
        <source>Sieve test</source>
        <translation>Essai de tamisage</translation>
    </message>
    <message>
        <source>Grain</source>
        <translation>Grain</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>Courbe</translation>
    </message>
    <message>
        <source>Lot to lot</source>
        <translation>Lot à lot</translation>
    </message>
    <message>
        <source>Pictures of the sieve test</source>
        <translation>Images de l’essai de tamisage</translation>
    </message>
    <message>
        <source>What follows for the bag</source>
        <translation>Ce qui s’ensuit pour le sac</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Verdict</translation>
    </message>
    <message>
        <source>Screen this bag</source>
        <translation>Cribler ce sac</translation>
    </message>
    <message>
        <source>none, or choose one to grade</source>
        <translation>aucun, ou choisissez-en un à contrôler</translation>
    </message>
    <message>
        <source>as typed</source>
        <translation>comme saisi</translation>
    </message>
    <message>
        <source>Component</source>
        <translation>Composant</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::StockLine</name>
    <message>
        <source>What happened to the grain</source>
        <translation>Ce qui est arrivé au grain</translation>
    </message>
    <message>
        <source>counted, left</source>
        <translation>compté, il reste</translation>
    </message>
    <message>
        <source>used</source>
        <translation>utilisé</translation>
    </message>
    <message>
        <source>spilt</source>
        <translation>renversé</translation>
    </message>
    <message>
        <source>thrown out</source>
        <translation>jeté</translation>
    </message>
    <message>
        <source>put back</source>
        <translation>remis</translation>
    </message>
    <message>
        <source>How much, dry</source>
        <translation>Combien, sec</translation>
    </message>
    <message>
        <source>900 g or 2 L, dry</source>
        <translation>900 g ou 2 L, sec</translation>
    </message>
    <message>
        <source>Book it</source>
        <translation>Inscrire</translation>
    </message>
    <message>
        <source>Book it in the stock</source>
        <translation>Inscrire au stock</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Combien</translation>
    </message>
    <message>
        <source>Of %1</source>
        <translation>De %1</translation>
    </message>
    <message>
        <source>Nothing of it is in stock yet: take it into stock, or count what is left.</source>
        <translation>Rien n’en est encore en stock&#xa0;: mettez-le en stock, ou comptez ce qui reste.</translation>
    </message>
    <message>
        <source>Counted %1: %2 left</source>
        <translation>Compté %1&#xa0;: il reste %2</translation>
    </message>
    <message>
        <source>Spilt %2 of %1</source>
        <translation>Renversé %2 de %1</translation>
    </message>
    <message>
        <source>Threw out %2 of %1</source>
        <translation>Jeté %2 de %1</translation>
    </message>
    <message>
        <source>Put %2 back to %1</source>
        <translation>Remis %2 dans %1</translation>
    </message>
    <message>
        <source>Used %2 of %1</source>
        <translation>Utilisé %2 de %1</translation>
    </message>
    <message>
        <source>%1, at its own litre weight of %2.</source>
        <translation>%1, à son propre poids du litre de %2.</translation>
    </message>
    <message>
        <source>%1, at the typical litre weight of %2: measure its own.</source>
        <translation>%1, au poids du litre usuel de %2&#xa0;: mesurez le sien.</translation>
    </message>
    <message>
        <source>32 oz or 2 qt, dry</source>
        <translation>32 oz ou 2 qt, sec</translation>
    </message>
    <message>
        <source>%1, at a litre weight of %2 by that of its bag: measure its own.</source>
        <translation>%1, à une masse au litre de %2 d’après celle de son sac&#xa0;: mesurer la sienne.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TraceTab</name>
    <message>
        <source>Save the list...</source>
        <translation>Enregistrer la liste...</translation>
    </message>
    <message>
        <source>&amp;Trace</source>
        <translation>S&amp;uivre</translation>
    </message>
    <message>
        <source>a bag, fraction, bin, batch or mix, to see which trees stand in it; or a tree, to see what it stands in</source>
        <translation>un sac, une fraction, une caisse, une gâchée ou un mélange, pour voir quels arbres s’y trouvent&#xa0;; ou un arbre, pour voir où il se trouve</translation>
    </message>
    <message>
        <source>Trace</source>
        <translation>Suivre</translation>
    </message>
    <message>
        <source>Save the list of trees as text, CSV or JSON</source>
        <translation>Enregistrer la liste des arbres en texte, CSV ou JSON</translation>
    </message>
    <message>
        <source>Trees, or what a tree stands in</source>
        <translation>Arbres, ou où se trouve un arbre</translation>
    </message>
    <message>
        <source>Where the rest of it went or lies</source>
        <translation>Où le reste est allé ou se trouve</translation>
    </message>
    <message>
        <source>Type the number of a bag to see which trees stand in its grain, or of a tree to see what it stands in.</source>
        <translation>Saisissez le numéro d’un sac pour voir quels arbres sont dans son grain, ou celui d’un arbre pour voir où il se trouve.</translation>
    </message>
    <message>
        <source>Trace a bag, fraction, bin, batch or mix first: its list of trees can be saved.</source>
        <translation>Suivez d’abord un sac, une fraction, une caisse, une gâchée ou un mélange&#xa0;: sa liste d’arbres pourra être enregistrée.</translation>
    </message>
    <message>
        <source>Save the list of trees</source>
        <translation>Enregistrer la liste des arbres</translation>
    </message>
    <message>
        <source>%1 trees</source>
        <translation>%1 arbres</translation>
    </message>
    <message>
        <source>Text to print (*.txt);;For a spreadsheet (*.csv);;For programs (*.json)</source>
        <translation>Texte à imprimer (*.txt);;Pour un tableur (*.csv);;Pour des programmes (*.json)</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Enregistré sous %1.</translation>
    </message>
    <message>
        <source>%1 could not be written: choose a folder you may write to.</source>
        <translation>%1 n’a pas pu être écrit&#xa0;: choisissez un dossier où vous pouvez écrire.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TracedTable</name>
    <message>
        <source>Enter goes on to the record of the row.</source>
        <translation>Entrée va à l’enregistrement de la ligne.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TradeOffView</name>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>What air costs in water, and fit in money</source>
        <translation>Ce que l’air coûte en eau, et l’adéquation en argent</translation>
    </message>
    <message>
        <source>Water held</source>
        <translation>Eau retenue</translation>
    </message>
    <message>
        <source>air that drains free</source>
        <translation>air qui se libère</translation>
    </message>
    <message>
        <source>Score, lower fits better</source>
        <translation>Note, plus basse convient mieux</translation>
    </message>
    <message>
        <source>price of a mixed litre</source>
        <translation>prix d’un litre mélangé</translation>
    </message>
    <message>
        <source>price of a mixed litre, %1</source>
        <translation>prix d’un litre mélangé, %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TreesPage</name>
    <message>
        <source>Pots and trees</source>
        <translation>Pots et arbres</translation>
    </message>
    <message>
        <source>Trees</source>
        <translation>Arbres</translation>
    </message>
    <message>
        <source>Pots</source>
        <translation>Pots</translation>
    </message>
    <message>
        <source>Root-mass plans</source>
        <translation>Plans de motte</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TreesTab</name>
    <message>
        <source>top</source>
        <translation>dessus</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>dessous</translation>
    </message>
    <message>
        <source>left</source>
        <translation>gauche</translation>
    </message>
    <message>
        <source>right</source>
        <translation>droite</translation>
    </message>
    <message>
        <source>front</source>
        <translation>avant</translation>
    </message>
    <message>
        <source>back</source>
        <translation>arrière</translation>
    </message>
    <message>
        <source>conifer</source>
        <translation>conifère</translation>
    </message>
    <message>
        <source>deciduous conifer</source>
        <translation>conifère caduc</translation>
    </message>
    <message>
        <source>deciduous, developing</source>
        <translation>caduc, en formation</translation>
    </message>
    <message>
        <source>deciduous, refined</source>
        <translation>caduc, raffiné</translation>
    </message>
    <message>
        <source>broadleaf evergreen</source>
        <translation>feuillu persistant</translation>
    </message>
    <message>
        <source>acid lover</source>
        <translation>plante acidophile</translation>
    </message>
    <message>
        <source>tropical</source>
        <translation>tropical</translation>
    </message>
    <message>
        <source>sick tree</source>
        <translation>arbre malade</translation>
    </message>
    <message>
        <source>freshly collected</source>
        <translation>fraîchement prélevé</translation>
    </message>
    <message>
        <source>imported</source>
        <translation>importé</translation>
    </message>
    <message>
        <source>%1 of tree %2</source>
        <translation>%1 de l’arbre %2</translation>
    </message>
    <message>
        <source>Trees</source>
        <translation>Arbres</translation>
    </message>
    <message>
        <source>tree by number, name or species</source>
        <translation>numéro, nom ou espèce</translation>
    </message>
    <message>
        <source>No trees yet. Add the first: its species and group, then what it was last repotted into.</source>
        <translation>Pas encore d’arbres. Ajoutez le premier&#xa0;: son espèce et son groupe, puis ce dans quoi il a été rempoté la dernière fois.</translation>
    </message>
    <message>
        <source>Add a t&amp;ree</source>
        <translation>Ajouter &amp;un arbre</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>dû %1</translation>
    </message>
    <message>
        <source>Root-mass p&amp;lan of this tree</source>
        <translation>P&amp;lan de motte de cet arbre</translation>
    </message>
    <message>
        <source>Root-mass plan of this tree</source>
        <translation>Plan de motte de cet arbre</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>as you call it</source>
        <translation>comme vous l’appelez</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>&amp;Species</source>
        <translation>E&amp;spèce</translation>
    </message>
    <message>
        <source>as far as you know it</source>
        <translation>autant que vous le savez</translation>
    </message>
    <message>
        <source>species</source>
        <translation>espèce</translation>
    </message>
    <message>
        <source>Species group</source>
        <translation>Groupe d’espèces</translation>
    </message>
    <message>
        <source>not chosen yet</source>
        <translation>pas encore choisi</translation>
    </message>
    <message>
        <source>group</source>
        <translation>groupe</translation>
    </message>
    <message>
        <source>Since the year</source>
        <translation>Depuis l’année</translation>
    </message>
    <message>
        <source>sown, struck or collected</source>
        <translation>semé, bouturé, prélevé</translation>
    </message>
    <message>
        <source>year</source>
        <translation>année</translation>
    </message>
    <message>
        <source>Trunk &amp;width</source>
        <translation>Largeur &amp;du tronc</translation>
    </message>
    <message>
        <source>at the base, over the roots</source>
        <translation>à la base, au-dessus des racines</translation>
    </message>
    <message>
        <source>trunk width</source>
        <translation>largeur du tronc</translation>
    </message>
    <message>
        <source>trunk base</source>
        <translation>base du tronc</translation>
    </message>
    <message>
        <source>Trunk base, right</source>
        <translation>Base du tronc, droite</translation>
    </message>
    <message>
        <source>Trunk base, back</source>
        <translation>Base du tronc, arrière</translation>
    </message>
    <message>
        <source>behind its middle</source>
        <translation>derrière son milieu</translation>
    </message>
    <message>
        <source>Trunk base, up</source>
        <translation>Base du tronc, haut</translation>
    </message>
    <message>
        <source>over the root mass&apos;s underside</source>
        <translation>au-dessus du dessous</translation>
    </message>
    <message>
        <source>&amp;Mass</source>
        <translation>&amp;Masse</translation>
    </message>
    <message>
        <source>without soil and pot; for lifting</source>
        <translation>sans substrat ni pot&#xa0;; pour le levage</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masse</translation>
    </message>
    <message>
        <source>Ready when</source>
        <translation>Prêt quand</translation>
    </message>
    <message>
        <source>as buds swell</source>
        <translation>les bourgeons gonflent</translation>
    </message>
    <message>
        <source>window</source>
        <translation>fenêtre</translation>
    </message>
    <message>
        <source>Window opens</source>
        <translation>Fenêtre, début</translation>
    </message>
    <message>
        <source>month and day, like 03-01</source>
        <translation>mois et jour, comme 03-01</translation>
    </message>
    <message>
        <source>Window closes</source>
        <translation>Fenêtre, fin</translation>
    </message>
    <message>
        <source>month and day, like 04-20</source>
        <translation>mois et jour, comme 04-20</translation>
    </message>
    <message>
        <source>Next repotting</source>
        <translation>Prochain rempotage</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
    <message>
        <source>files by reference, apart by ;</source>
        <translation>fichiers, séparés par&#xa0;;</translation>
    </message>
    <message>
        <source>photos</source>
        <translation>photos</translation>
    </message>
    <message>
        <source>Add a photo...</source>
        <translation>Ajouter une photo...</translation>
    </message>
    <message>
        <source>Add a photo by its file</source>
        <translation>Ajouter une photo par son fichier</translation>
    </message>
    <message>
        <source>No&amp;te</source>
        <translation>No&amp;te</translation>
    </message>
    <message>
        <source>anything worth knowing</source>
        <translation>ce qu’il est bon de savoir</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>Day it was seen</source>
        <translation>Jour de l’observation</translation>
    </message>
    <message>
        <source>looked at for repotting</source>
        <translation>examiné pour rempotage</translation>
    </message>
    <message>
        <source>Da&amp;y</source>
        <translation>&amp;Jour</translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation>Ce qui a été vu</translation>
    </message>
    <message>
        <source>colour, buds, water that stands, roots at the hole</source>
        <translation>couleur, bourgeons, eau stagnante, racines au trou</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Écrire</translation>
    </message>
    <message>
        <source>Write down what was seen</source>
        <translation>Écrire ce qui a été vu</translation>
    </message>
    <message>
        <source>Repottings</source>
        <translation>Rempotages</translation>
    </message>
    <message>
        <source>Repottings, newest first</source>
        <translation>Rempotages, le plus récent d’abord</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>pot</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mélange</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>plan</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>coupé</translation>
    </message>
    <message>
        <source>combed</source>
        <translation>peigné</translation>
    </message>
    <message>
        <source>bare-rooted</source>
        <translation>racines nues</translation>
    </message>
    <message>
        <source>untouched</source>
        <translation>intact</translation>
    </message>
    <message>
        <source>Day of the repotting</source>
        <translation>Jour du rempotage</translation>
    </message>
    <message>
        <source>Pot it went into</source>
        <translation>Pot où il est allé</translation>
    </message>
    <message>
        <source>Mix it stands in</source>
        <translation>Mélange où il se trouve</translation>
    </message>
    <message>
        <source>Note on the repotting</source>
        <translation>Note sur le rempotage</translation>
    </message>
    <message>
        <source>what was cut, what was found</source>
        <translation>ce qui a été coupé, ce qui a été trouvé</translation>
    </message>
    <message>
        <source>Write down a repotting</source>
        <translation>Écrire un rempotage</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>inspection</source>
        <translation>examen</translation>
    </message>
    <message>
        <source>condition</source>
        <translation>état</translation>
    </message>
    <message>
        <source>repotting</source>
        <translation>rempotage</translation>
    </message>
    <message>
        <source>Add photos</source>
        <translation>Ajouter des photos</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.webp *.heic);;All files (*)</source>
        <translation>Images (*.jpg *.jpeg *.png *.webp *.heic);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>new tree</source>
        <translation>nouvel arbre</translation>
    </message>
    <message>
        <source>tree added</source>
        <translation>arbre ajouté</translation>
    </message>
    <message>
        <source>Tree %1 stays: plans, days or the log name it. Write down that it is dead instead.</source>
        <translation>L’arbre %1 reste&#xa0;: des plans, des journées ou le journal le citent. Écrivez plutôt qu’il est mort.</translation>
    </message>
    <message>
        <source>tree %1 removed</source>
        <translation>arbre %1 supprimé</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>Tree %1, %2 years</source>
        <translation>Arbre %1, %2 ans</translation>
    </message>
    <message>
        <source>Tree %1</source>
        <translation>Arbre %1</translation>
    </message>
    <message>
        <source>Next repotting: %1, as you set it.</source>
        <translation>Prochain rempotage&#xa0;: %1, comme vous l’avez fixé.</translation>
    </message>
    <message>
        <source>Next repotting by the group&apos;s interval: from %1, by %2 at the latest (common practice; look at it first).</source>
        <translation>Prochain rempotage selon l’intervalle du groupe&#xa0;: dès %1, au plus tard %2 (pratique courante&#xa0;; regardez d’abord).</translation>
    </message>
    <message>
        <source>Next repotting: – (it has no last repotting, or its group has no interval)</source>
        <translation>Prochain rempotage&#xa0;: – (pas de dernier rempotage, ou son groupe n’a pas d’intervalle)</translation>
    </message>
    <message>
        <source>Next repotting: – (choose its group and write down the last repotting)</source>
        <translation>Prochain rempotage&#xa0;: – (choisissez son groupe et écrivez le dernier rempotage)</translation>
    </message>
    <message>
        <source>looked at</source>
        <translation>examiné</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>%1 corners</source>
        <translation>%1 coins</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>ce qui a été fait</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation>ôté</translation>
    </message>
    <message>
        <source>What its roots bear when it is repotted goes by this group. What its mix should be like is chosen for a mix, under Groups of trees.</source>
        <translation>Ce que supportent ses racines au rempotage suit ce groupe. Comment doit être son mélange se choisit pour un mélange, sous Groupes d’arbres.</translation>
    </message>
    <message>
        <source>Species gro&amp;up</source>
        <translation>&amp;Groupe d’espèces</translation>
    </message>
    <message>
        <source>of the root mass&apos;s middle</source>
        <translation>du milieu de la motte</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>État</translation>
    </message>
    <message>
        <source>The tree&apos;s condition, newest first</source>
        <translation>État de l’arbre, le plus récent d’abord</translation>
    </message>
    <message>
        <source>Begun for tree %1, and waits there: %2</source>
        <translation>Commencé pour l’arbre %1, attend là&#xa0;: %2</translation>
    </message>
    <message>
        <source>like %1</source>
        <translation>comme %1</translation>
    </message>
    <message>
        <source>a day like %1; by interval if empty</source>
        <translation>un jour comme %1&#xa0;; par intervalle si vide</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TroublePage</name>
    <message>
        <source>The record could not be opened</source>
        <translation>Le registre n’a pas pu être ouvert</translation>
    </message>
    <message>
        <source>The file was not changed, and what lies on the bench is kept. A backup that is restored takes the file&apos;s place; the file itself stays beside it under a name of its own, so nothing is overwritten.</source>
        <translation>Le fichier n’a pas été modifié, et ce qui est sur l’établi est gardé. Une sauvegarde restaurée prend la place du fichier&#xa0;; le fichier lui-même reste à côté sous un nom à lui, rien n’est donc écrasé.</translation>
    </message>
    <message>
        <source>Open it for reading only</source>
        <translation>L’ouvrir en lecture seule</translation>
    </message>
    <message>
        <source>Open another record...</source>
        <translation>Ouvrir un autre registre...</translation>
    </message>
    <message>
        <source>Try this one again</source>
        <translation>Réessayer celui-ci</translation>
    </message>
    <message>
        <source>Restore the newest intact backup: %1</source>
        <translation>Restaurer la plus récente sauvegarde intacte&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Without a backup the command line can still read what is whole and write it into a file: %1</source>
        <translation>Sans sauvegarde, la ligne de commande peut encore lire ce qui est intact et l’écrire dans un fichier&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::VerdictPanel</name>
    <message>
        <source>What screening there gives</source>
        <translation>Ce que donne ce criblage</translation>
    </message>
    <message>
        <source>Which openings? From the sieves of this test</source>
        <translation>Quelles ouvertures&#xa0;? Parmi les tamis de cet essai</translation>
    </message>
    <message>
        <source>Which openings? From the sieves you own</source>
        <translation>Quelles ouvertures&#xa0;? Parmi vos tamis</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::WelcomePage</name>
    <message>
        <source>From a weighed sieve sample to a mix in a pot</source>
        <translation>D’un échantillon tamisé et pesé à un mélange dans un pot</translation>
    </message>
    <message>
        <source>Look at the demonstration</source>
        <translation>Voir la démonstration</translation>
    </message>
    <message>
        <source>An invented nursery in a window of its own: bags, sieve tests, a mix for pines. Closing it throws it away.</source>
        <translation>Une pépinière inventée dans une fenêtre à part&#xa0;: sacs, essais de tamisage, un mélange pour pins. La fermer la jette.</translation>
    </message>
    <message>
        <source>Record a sieving</source>
        <translation>Noter un tamisage</translation>
    </message>
    <message>
        <source>An empty stack of sieves, ready to type into.</source>
        <translation>Une colonne de tamis vide, prête à la saisie.</translation>
    </message>
    <message>
        <source>Shape and inside lengths: its volume at once, air and water when there is a mix.</source>
        <translation>Forme et dimensions intérieures&#xa0;: son volume aussitôt, air et eau dès qu’il y a un mélange.</translation>
    </message>
    <message>
        <source>Type what stayed on each sieve, blend the bags, set the pot: read how much air and water the mix holds in it, and how many litres of each to measure out.</source>
        <translation>Saisissez ce qui est resté sur chaque tamis, mélangez les sacs, choisissez le pot&#xa0;: lisez combien d’air et d’eau le mélange y garde, et combien de litres mesurer de chacun.</translation>
    </message>
    <message>
        <source>Describe a pot</source>
        <translation>Décrire un pot</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::WishTable</name>
    <message>
        <source>share of the mass inside the wanted grain</source>
        <translation>part de la masse dans le grain voulu</translation>
    </message>
    <message>
        <source>share of the mass that is dust, finer than the size below</source>
        <translation>part de la masse en poussière, plus fine que la taille ci-dessous</translation>
    </message>
    <message>
        <source>share of the pot that drains free after a flood</source>
        <translation>part du pot qui se vide librement après inondation</translation>
    </message>
    <message>
        <source>share of the pot that holds water after draining</source>
        <translation>part du pot qui garde de l’eau après égouttage</translation>
    </message>
    <message>
        <source>share of the pot whose water plants can take</source>
        <translation>part du pot dont les plantes peuvent prendre l’eau</translation>
    </message>
    <message>
        <source>mass of a litre, drained</source>
        <translation>masse d’un litre, égoutté</translation>
    </message>
    <message>
        <source>of a mixed litre, in your own currency</source>
        <translation>d’un litre mélangé, dans votre monnaie</translation>
    </message>
    <message>
        <source>percent passing between limits at sizes you give</source>
        <translation>pourcentage passant entre des limites aux tailles données</translation>
    </message>
    <message>
        <source>percent passing to come near to at sizes you give</source>
        <translation>pourcentage passant à approcher aux tailles données</translation>
    </message>
    <message>
        <source>%1 to %2, %</source>
        <translation>%1 à %2,&#xa0;%</translation>
    </message>
    <message>
        <source>wanted grain, %</source>
        <translation>grain voulu,&#xa0;%</translation>
    </message>
    <message>
        <source>dust, %</source>
        <translation>poussière,&#xa0;%</translation>
    </message>
    <message>
        <source>air in pot, %</source>
        <translation>air dans le pot,&#xa0;%</translation>
    </message>
    <message>
        <source>water in pot, %</source>
        <translation>eau dans le pot,&#xa0;%</translation>
    </message>
    <message>
        <source>exchange, meq/L</source>
        <translation>échange, meq/L</translation>
    </message>
    <message>
        <source>price of a litre</source>
        <translation>prix d’un litre</translation>
    </message>
    <message>
        <source>curve within</source>
        <translation>courbe dans</translation>
    </message>
    <message>
        <source>curve near</source>
        <translation>courbe proche</translation>
    </message>
    <message>
        <source>wish</source>
        <translation>souhait</translation>
    </message>
    <message>
        <source>least</source>
        <translation>au moins</translation>
    </message>
    <message>
        <source>most</source>
        <translation>au plus</translation>
    </message>
    <message>
        <source>must</source>
        <translation>exigé</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>poids</translation>
    </message>
    <message>
        <source>%1 must hold</source>
        <translation>%1 est exigé</translation>
    </message>
    <message>
        <source>sizes in mm with percent passing: 4.75 90-100; 2.36 34-50</source>
        <translation>tailles en mm avec pourcentage passant&#xa0;: 4.75 90-100; 2.36 34-50</translation>
    </message>
    <message>
        <source>sizes in mm with percent passing: 4.75 95; 2.36 42</source>
        <translation>tailles en mm avec pourcentage passant&#xa0;: 4.75 95; 2.36 42</translation>
    </message>
    <message>
        <source>exchange capacity of a litre</source>
        <translation>capacité d’échange d’un litre</translation>
    </message>
    <message>
        <source>plants can take, %</source>
        <translation>pour les plantes, %</translation>
    </message>
    <message>
        <source>wet litre, %1</source>
        <translation>litre mouillé, %1</translation>
    </message>
</context>
<context>
    <name>materials</name>
    <message>
        <source>akadama</source>
        <translation>akadama</translation>
    </message>
    <message>
        <source>Granular volcanic subsoil clay, dug and dried, sold by grain band and hardness. Breaks down in wet frost.</source>
        <translation>Argile volcanique granuleuse de sous-sol, extraite et séchée, vendue par calibre et dureté. Se désagrège par gel humide.</translation>
    </message>
    <message>
        <source>biochar</source>
        <translation>biochar</translation>
    </message>
    <message>
        <source>Charred wood or husk; differs widely by feedstock and may shed water while fresh.</source>
        <translation>Bois ou balle carbonisés ; varie beaucoup selon l&apos;origine et peut repousser l&apos;eau à l&apos;état frais.</translation>
    </message>
    <message>
        <source>calcined clay</source>
        <translation>argile calcinée</translation>
    </message>
    <message>
        <source>Clay granules fired hard. Lasts years if fired hot: soak and freeze a pinch to see.</source>
        <translation>Granulés d&apos;argile cuits dur. Tient des années si cuit très chaud : tremper et geler une pincée pour le voir.</translation>
    </message>
    <message>
        <source>calcined diatomite</source>
        <translation>diatomite calcinée</translation>
    </message>
    <message>
        <source>Fired diatomaceous earth, light and very absorbent. Its dust must not be breathed.</source>
        <translation>Terre de diatomées cuite, légère et très absorbante. Ne pas respirer sa poussière.</translation>
    </message>
    <message>
        <source>coir</source>
        <translation>fibre de coco</translation>
    </message>
    <message>
        <source>Coconut husk pith and fibre. Without a grain density: shares and grading only.</source>
        <translation>Moelle et fibres de bourre de coco. Sans densité des grains : parts et granulométrie seulement.</translation>
    </message>
    <message>
        <source>crushed expanded clay</source>
        <translation>argile expansée concassée</translation>
    </message>
    <message>
        <source>Fired clay pellets broken to 4-8 mm: rough, with opened pores.</source>
        <translation>Billes d&apos;argile cuite concassées à 4-8 mm : rugueuses, aux pores ouverts.</translation>
    </message>
    <message>
        <source>decomposed granite</source>
        <translation>arène granitique</translation>
    </message>
    <message>
        <source>Granite weathered in place: coarse, sandy, with some fines.</source>
        <translation>Granite altéré sur place : grossier, sableux, avec quelques fines.</translation>
    </message>
    <message>
        <source>expanded clay</source>
        <translation>argile expansée</translation>
    </message>
    <message>
        <source>Rounded fired clay pellets, 4-10 mm, with a sealed skin; much of the pore space is closed.</source>
        <translation>Billes rondes d&apos;argile cuite, 4-10 mm, à peau fermée ; une grande part des pores est close.</translation>
    </message>
    <message>
        <source>expanded shale</source>
        <translation>schiste expansé</translation>
    </message>
    <message>
        <source>Kiln-expanded shale, hard and angular.</source>
        <translation>Schiste expansé au four, dur et anguleux.</translation>
    </message>
    <message>
        <source>granite grit</source>
        <translation>gravillon de granite</translation>
    </message>
    <message>
        <source>Crushed granite: solid, angular, heavy; drains and weighs down.</source>
        <translation>Granite concassé : massif, anguleux, lourd ; draine et leste.</translation>
    </message>
    <message>
        <source>kanuma</source>
        <translation>kanuma</translation>
    </message>
    <message>
        <source>Soft, acid, weathered pumice subsoil for acid-loving species. Crushes easily.</source>
        <translation>Ponce de sous-sol tendre, acide, altérée, pour les espèces acidophiles. S&apos;écrase facilement.</translation>
    </message>
    <message>
        <source>kiryu</source>
        <translation>kiryu</translation>
    </message>
    <message>
        <source>Weathered river grit with rusty, slightly porous grain.</source>
        <translation>Gravier de rivière altéré, à grain rouillé et un peu poreux.</translation>
    </message>
    <message>
        <source>peat</source>
        <translation>tourbe</translation>
    </message>
    <message>
        <source>Sphagnum peat. Without a grain density: shares and grading only.</source>
        <translation>Tourbe de sphaigne. Sans densité des grains : parts et granulométrie seulement.</translation>
    </message>
    <message>
        <source>perlite</source>
        <translation>perlite</translation>
    </message>
    <message>
        <source>Expanded volcanic glass; holds water at its surface, most inner pores are closed. Dusty: wet it before pouring.</source>
        <translation>Verre volcanique expansé ; retient l&apos;eau en surface, la plupart des pores internes sont clos. Poussiéreuse : mouiller avant de verser.</translation>
    </message>
    <message>
        <source>pine bark</source>
        <translation>écorce de pin</translation>
    </message>
    <message>
        <source>Aged and screened pine bark. Rots down and shrinks.</source>
        <translation>Écorce de pin vieillie et criblée. Pourrit et se tasse.</translation>
    </message>
    <message>
        <source>pumice</source>
        <translation>ponce</translation>
    </message>
    <message>
        <source>Foamed volcanic glass; light or dense by deposit. A dense grain goes with a heavy jug: use these figures as a set.</source>
        <translation>Verre volcanique mousseux ; léger ou dense selon le gisement. Grain dense va avec pichet lourd : prendre ces valeurs ensemble.</translation>
    </message>
    <message>
        <source>quartz sand</source>
        <translation>sable de quartz</translation>
    </message>
    <message>
        <source>Washed silica sand: solid grain without inner pores.</source>
        <translation>Sable de silice lavé : grain massif sans pores internes.</translation>
    </message>
    <message>
        <source>scoria</source>
        <translation>pouzzolane</translation>
    </message>
    <message>
        <source>Vesicular basaltic cinder, rough and heavy; some of its pores are closed.</source>
        <translation>Scorie basaltique bulleuse, rugueuse et lourde ; une partie de ses pores est close.</translation>
    </message>
    <message>
        <source>sphagnum</source>
        <translation>sphaigne</translation>
    </message>
    <message>
        <source>Long-fibre sphagnum moss. Without a grain density: shares and grading only. Wear gloves: moss may carry a skin fungus.</source>
        <translation>Mousse de sphaigne à fibres longues. Sans densité des grains : parts et granulométrie seulement. Porter des gants : la mousse peut porter un champignon de la peau.</translation>
    </message>
    <message>
        <source>vermiculite</source>
        <translation>vermiculite</translation>
    </message>
    <message>
        <source>Exfoliated mica; its layers collapse under load and with wear. Very old stock of unknown origin may hold asbestos: leave it shut.</source>
        <translation>Mica exfolié ; ses feuillets s&apos;écrasent sous la charge et à l&apos;usage. Un très vieux stock d&apos;origine inconnue peut contenir de l&apos;amiante : laisser fermé.</translation>
    </message>
    <message>
        <source>zeolite</source>
        <translation>zéolite</translation>
    </message>
    <message>
        <source>Crushed clinoptilolite rock: heavy, with a very high exchange capacity.</source>
        <translation>Roche de clinoptilolite concassée : lourde, à très forte capacité d&apos;échange.</translation>
    </message>
</context>
<context>
    <name>profiles</name>
    <message>
        <source>very small trees</source>
        <translation>très petits arbres</translation>
    </message>
    <message>
        <source>small trees</source>
        <translation>petits arbres</translation>
    </message>
    <message>
        <source>conifers</source>
        <translation>conifères</translation>
    </message>
    <message>
        <source>conifers, large or collected</source>
        <translation>conifères, grands ou prélevés</translation>
    </message>
    <message>
        <source>deciduous, developing</source>
        <translation>caduc, en formation</translation>
    </message>
    <message>
        <source>deciduous, refined</source>
        <translation>caduc, raffiné</translation>
    </message>
    <message>
        <source>deciduous conifers</source>
        <translation>conifères caducs</translation>
    </message>
    <message>
        <source>evergreen broadleaf</source>
        <translation>feuillus persistants</translation>
    </message>
    <message>
        <source>acid lovers</source>
        <translation>plantes acidophiles</translation>
    </message>
    <message>
        <source>tropicals</source>
        <translation>tropicaux</translation>
    </message>
</context>
<context>
    <name>report</name>
    <message>
        <source>the grain would hold {held_percent} % of its volume in water and has {pores_percent} % of pores: was it dabbed dry on the outside, and is the density right?</source>
        <translation>le grain tiendrait {held_percent}&#xa0;% de son volume en eau et a {pores_percent}&#xa0;% de pores&#xa0;: était-il essuyé en surface, et la densité est-elle juste&#xa0;?</translation>
    </message>
    <message>
        <source>the grain took up {percent} % of its dry mass; few kinds of grain do: was it dabbed dry on the outside?</source>
        <translation>le grain a pris {percent}&#xa0;% de sa masse sèche&#xa0;; peu de grains le font&#xa0;: était-il essuyé en surface&#xa0;?</translation>
    </message>
    <message>
        <source>likely below {percent} % air in season {season} if the crumbs stay among the grain: a hint for the next repotting, an estimate</source>
        <translation>probablement moins de {percent}&#xa0;% d’air en saison {season} si les miettes restent parmi les grains&#xa0;: une indication pour le prochain rempotage, une estimation</translation>
    </message>
    <message>
        <source>likely below {percent} % air in season {season} if the crumbs wash down to the floor: a hint for the next repotting, an estimate</source>
        <translation>probablement moins de {percent}&#xa0;% d’air en saison {season} si les miettes sont entraînées au fond&#xa0;: une indication pour le prochain rempotage, une estimation</translation>
    </message>
    <message>
        <source>the years to come are an estimate: frost, watering and repotting habits differ, and roots lower the air further</source>
        <translation>les années à venir sont une estimation&#xa0;: le gel, l’arrosage et les habitudes de rempotage diffèrent, et les racines réduisent encore l’air</translation>
    </message>
    <message>
        <source>how long this grain lasts is not known; it is taken as not breaking. A crumble test would tell</source>
        <translation>on ne sait pas combien de temps ce grain dure&#xa0;; il est tenu pour durable. Un essai d’effritement le dirait</translation>
    </message>
    <message>
        <source>tilt and bottom layer are left out of the years to come</source>
        <translation>l’inclinaison et la couche de drainage sont laissées hors des années à venir</translation>
    </message>
    <message>
        <source>the test and the usual values are far apart, so neither is trusted as far as it claims: the range is {factor} times as wide; repeat the test</source>
        <translation>l’essai et les valeurs usuelles sont très éloignés, aucun n’est donc cru autant qu’il le prétend&#xa0;: l’étendue est {factor} fois plus large&#xa0;; répétez l’essai</translation>
    </message>
    <message>
        <source>only {percent} % of the voids between grains filled when flooded; was it flooded slowly from below, after a day&apos;s soak?</source>
        <translation>seuls {percent}&#xa0;% des vides entre les grains se sont remplis à l’inondation&#xa0;; a-t-on inondé lentement par le bas, après un jour de trempage&#xa0;?</translation>
    </message>
    <message>
        <source>without the mix only what was measured is told; give &quot;mix&quot; or --mix to learn from it</source>
        <translation>sans le mélange, seul ce qui a été mesuré est dit&#xa0;; donnez «&#xa0;mix&#xa0;» ou --mix pour en tirer un enseignement</translation>
    </message>
    <message>
        <source>without the pot&apos;s shape or depth there is nothing to compare with; give &quot;container&quot;, &quot;depth_cm&quot; or --pot</source>
        <translation>sans la forme ou la profondeur du pot, rien à comparer&#xa0;; donnez «&#xa0;container&#xa0;», «&#xa0;depth_cm&#xa0;» ou --pot</translation>
    </message>
    <message>
        <source>the grain came out coarser than it went in: was it the same handful, and was nothing lost?</source>
        <translation>le grain est ressorti plus gros qu’il n’était entré&#xa0;: était-ce la même poignée, et rien n’a-t-il été perdu&#xa0;?</translation>
    </message>
    <message>
        <source>the grain displaces no water; look at the three masses</source>
        <translation>le grain ne déplace pas d’eau&#xa0;; vérifiez les trois masses</translation>
    </message>
    <message>
        <source>the soaked grain is lighter than water ({density_g_l} g/L): hold it under with a sieve, or its volume comes out too small</source>
        <translation>le grain trempé est plus léger que l’eau ({density_g_l} g/L)&#xa0;: maintenez-le sous l’eau avec un tamis, sinon son volume sera trop petit</translation>
    </message>
    <message>
        <source>a fraction needs the opening it stayed on, the one it fell through, or both</source>
        <translation>une fraction demande l’ouverture qui l’a retenue, celle qu’elle a passée, ou les deux</translation>
    </message>
    <message>
        <source>{density_g_l} g/L is unusual for grain; look at the masses and at the volume of the jug</source>
        <translation>{density_g_l} g/L est inhabituel pour du grain&#xa0;; vérifiez les masses et le volume du pichet</translation>
    </message>
    <message>
        <source>the grain lost {percent} % of its volume when worked in; 5 to 13 % is usual: was it filled loosely?</source>
        <translation>le grain a perdu {percent}&#xa0;% de son volume à la mise en place&#xa0;; 5 à 13&#xa0;% est usuel&#xa0;: était-il rempli en vrac&#xa0;?</translation>
    </message>
    <message>
        <source>the pot tests were made with another mix than this one; what they teach holds for this one only as far as the grain is alike</source>
        <translation>les essais en pot ont été faits avec un autre mélange que celui-ci&#xa0;; ce qu’ils enseignent ne vaut pour lui que si le grain se ressemble</translation>
    </message>
    <message>
        <source>no rigid grain: the packing model is less certain for it</source>
        <translation>grain non rigide&#xa0;: le modèle d’empilement y est moins sûr</translation>
    </message>
    <message>
        <source>all components have 0 parts; give one of them a part</source>
        <translation>tous les composants ont 0 part&#xa0;; donnez une part à l’un d’eux</translation>
    </message>
    <message>
        <source>a settling of {share} can&apos;t be; expected 0 to below 1, the share of the volume lost</source>
        <translation>un tassement de {share} est impossible&#xa0;; attendu de 0 à moins de 1, la part du volume perdue</translation>
    </message>
    <message>
        <source>a spill of {share} can&apos;t be; expected 0 to below 1, the share of the mix that misses the pot</source>
        <translation>des pertes de {share} sont impossibles&#xa0;; attendu de 0 à moins de 1, la part du mélange tombée à côté du pot</translation>
    </message>
    <message>
        <source>the mix swells by {percent} %: it takes more room than its components apart</source>
        <translation>le mélange foisonne de {percent}&#xa0;%&#xa0;: il prend plus de place que ses composants séparés</translation>
    </message>
    <message>
        <source>weigh a litre of the {component}: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>pesez un litre de {component}&#xa0;: étendue pour {figure} de ±{now_points} à ±{then_points} points</translation>
    </message>
    <message>
        <source>sieve the {component} three times more: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>tamisez trois fois de plus {component}&#xa0;: étendue pour {figure} de ±{now_points} à ±{then_points} points</translation>
    </message>
    <message>
        <source>range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>étendue pour {figure} de ±{now_points} à ±{then_points} points</translation>
    </message>
    <message>
        <source>fill the pot with water and weigh it: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>remplissez le pot d’eau et pesez-le&#xa0;: étendue pour {figure} de ±{now_points} à ±{then_points} points</translation>
    </message>
    <message>
        <source>make a pot test of the mix: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>faites un essai en pot du mélange&#xa0;: étendue pour {figure} de ±{now_points} à ±{then_points} points</translation>
    </message>
    <message>
        <source>see in a jug how far the mix settles: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>voyez dans un pichet de combien le mélange se tasse&#xa0;: étendue pour {figure} de ±{now_points} à ±{then_points} points</translation>
    </message>
    <message>
        <source>soak the {component} for a day and weigh it surface-dry: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>trempez {component} un jour et pesez-le sec en surface&#xa0;: étendue pour {figure} de ±{now_points} à ±{then_points} points</translation>
    </message>
    <message>
        <source>{percent} % of air is unusual; was it drained level for half an hour, and is the volume right?</source>
        <translation>{percent}&#xa0;% d’air est inhabituel&#xa0;; a-t-on égoutté à plat une demi-heure, et le volume est-il juste&#xa0;?</translation>
    </message>
    <message>
        <source>{percent} % of water after draining is unusual; look at the masses and the volume</source>
        <translation>{percent}&#xa0;% d’eau après égouttage est inhabituel&#xa0;; vérifiez les masses et le volume</translation>
    </message>
    <message>
        <source>{caught_ml} mL ran out of {poured_ml} mL poured in; count all the water from the dry mix on</source>
        <translation>{caught_ml} mL ont coulé sur {poured_ml} mL versés&#xa0;; comptez toute l’eau depuis le mélange sec</translation>
    </message>
    <message>
        <source>a depth of {depth_cm} cm can&apos;t be; expected more than 0</source>
        <translation>une profondeur de {depth_cm} cm est impossible&#xa0;; attendu plus de 0</translation>
    </message>
    <message>
        <source>the volume of the mix is not known; give volume_ml, a container in the file, or --pot</source>
        <translation>le volume du mélange n’est pas connu&#xa0;; donnez volume_ml, un contenant dans le fichier, ou --pot</translation>
    </message>
    <message>
        <source>neither a flooded nor a drained mass is given; expected one of flooded_g and drained_g</source>
        <translation>ni masse inondée ni masse égouttée n’est donnée&#xa0;; attendu flooded_g ou drained_g</translation>
    </message>
    <message>
        <source>there are no tests; expected one or more</source>
        <translation>il n’y a pas d’essais&#xa0;; attendu un ou plusieurs</translation>
    </message>
    <message>
        <source>{percent} % filled when flooded is unusual; look at the masses and the volume</source>
        <translation>{percent}&#xa0;% rempli à l’inondation est inhabituel&#xa0;; vérifiez les masses et le volume</translation>
    </message>
    <message>
        <source>the pot is given twice; expected one of container and depth_cm</source>
        <translation>le pot est donné deux fois&#xa0;; attendu container ou depth_cm</translation>
    </message>
    <message>
        <source>a volume of {volume_ml} mL can&apos;t be; expected more than 0</source>
        <translation>un volume de {volume_ml} mL est impossible&#xa0;; attendu plus de 0</translation>
    </message>
    <message>
        <source>masses and poured water are mixed; expected one or the other for each test</source>
        <translation>masses et eau versée sont mêlées&#xa0;; attendu l’un ou l’autre pour chaque essai</translation>
    </message>
    <message>
        <source>{higher_g} g is not above {lower_g} g; expected tare, dry, drained, flooded in rising order</source>
        <translation>{higher_g} g n’est pas au-dessus de {lower_g} g&#xa0;; attendu tare, sec, égoutté, inondé en ordre croissant</translation>
    </message>
    <message>
        <source>{percent} % is 1-2 mm: good for very small pots and for top dressing</source>
        <translation>{percent}&#xa0;% est de 1-2 mm&#xa0;: bon pour de très petits pots et en surface</translation>
    </message>
    <message>
        <source>above 2 mm ({size_mm} mm here) the estimate is good to 3.5 points at best; a pot test makes it better</source>
        <translation>au-dessus de 2 mm (ici {size_mm} mm) l’estimation est bonne à 3.5 points au mieux&#xa0;; un essai en pot l’améliore</translation>
    </message>
    <message>
        <source>the figures describe the new mix after soaking and draining; watering a dry pot from above reaches less (about half the rise), and roots and breakdown lower the air with time</source>
        <translation>les chiffres décrivent le mélange neuf après trempage et égouttage&#xa0;; arroser un pot sec par le haut atteint moins (environ la moitié de la montée), et racines et dégradation réduisent l’air avec le temps</translation>
    </message>
    <message>
        <source>grain of {size_mm} mm holds a wet zone of about one grain or less</source>
        <translation>un grain de {size_mm} mm garde une zone saturée d’environ un grain ou moins</translation>
    </message>
    <message>
        <source>{value} can&apos;t be; expected {low} to {high}</source>
        <translation>{value} est impossible&#xa0;; attendu de {low} à {high}</translation>
    </message>
    <message>
        <source>a table of areas has no outline; tilted, a round one is assumed</source>
        <translation>un tableau d’aires n’a pas de contour&#xa0;; incliné, un rond est supposé</translation>
    </message>
    <message>
        <source>the unit is {unit}; expected {expected}</source>
        <translation>l’unité est {unit}&#xa0;; attendu {expected}</translation>
    </message>
    <message>
        <source>the absorption fills {water_percent} % of the grain, which has {pores_percent} % pores; look at the absorption and both grain densities</source>
        <translation>l’absorption remplit {water_percent}&#xa0;% du grain, qui a {pores_percent}&#xa0;% de pores&#xa0;; vérifiez l’absorption et les deux densités</translation>
    </message>
    <message>
        <source>an absorption of {ratio} can&apos;t be; expected 0 or more, kg of water per kg of dry grain</source>
        <translation>une absorption de {ratio} est impossible&#xa0;; attendu 0 ou plus, kg d’eau par kg de grain sec</translation>
    </message>
    <message>
        <source>an exchange capacity of {cec_meq_100g} meq/100 g can&apos;t be; expected 0 or more</source>
        <translation>une capacité d’échange de {cec_meq_100g} meq/100 g est impossible&#xa0;; attendu 0 ou plus</translation>
    </message>
    <message>
        <source>grain of one size has no pan and no top class; leave this out or give a grading</source>
        <translation>un grain d’une seule taille n’a ni fond ni classe supérieure&#xa0;; laissez cela ou donnez une granulométrie</translation>
    </message>
    <message>
        <source>a density of {density_g_l} g/L can&apos;t be; expected more than 0</source>
        <translation>une densité de {density_g_l} g/L est impossible&#xa0;; attendu plus de 0</translation>
    </message>
    <message>
        <source>{percent} % moisture can&apos;t be; expected 0 or more, water per dry mass</source>
        <translation>{percent}&#xa0;% d’humidité est impossible&#xa0;; attendu 0 ou plus, eau par masse sèche</translation>
    </message>
    <message>
        <source>the sieve test {file} can&apos;t be read from here; give the grading itself</source>
        <translation>l’essai de tamisage {file} ne peut pas être lu d’ici&#xa0;; donnez la granulométrie elle-même</translation>
    </message>
    <message>
        <source>the grain sizes are missing; give grading, class_mm or sieve_test</source>
        <translation>les tailles de grain manquent&#xa0;; donnez grading, class_mm ou sieve_test</translation>
    </message>
    <message>
        <source>an open share of {share} can&apos;t be; expected 0 to 1</source>
        <translation>une part ouverte de {share} est impossible&#xa0;; attendu de 0 à 1</translation>
    </message>
    <message>
        <source>{parts} parts can&apos;t be; expected 0 or more</source>
        <translation>{parts} parts est impossible&#xa0;; attendu 0 ou plus</translation>
    </message>
    <message>
        <source>a grain size of {size_mm} mm can&apos;t be; expected more than 0</source>
        <translation>une taille de grain de {size_mm} mm est impossible&#xa0;; attendu plus de 0</translation>
    </message>
    <message>
        <source>the grain sizes are given in more than one way; give one of grading, class_mm and sieve_test</source>
        <translation>les tailles de grain sont données de plusieurs façons&#xa0;; donnez l’une de grading, class_mm et sieve_test</translation>
    </message>
    <message>
        <source>the area is {area_cm2} cm2; it must be above 0 (only the floor may be a point)</source>
        <translation>l’aire est de {area_cm2} cm2&#xa0;; elle doit dépasser 0 (seul le fond peut être un point)</translation>
    </message>
    <message>
        <source>the area is {area_cm2} cm2; expected at most a square of ten metres</source>
        <translation>l’aire est de {area_cm2} cm2&#xa0;; attendu au plus un carré de dix mètres</translation>
    </message>
    <message>
        <source>the exponent is {exponent}; expected at most {limit}</source>
        <translation>l’exposant est {exponent}&#xa0;; attendu au plus {limit}</translation>
    </message>
    <message>
        <source>the exponent is {exponent}; it must be 1 or more</source>
        <translation>l’exposant est {exponent}&#xa0;; il doit être 1 ou plus</translation>
    </message>
    <message>
        <source>{count} drain holes can&apos;t be; expected 0 or more</source>
        <translation>{count} trous de drainage est impossible&#xa0;; attendu 0 ou plus</translation>
    </message>
    <message>
        <source>the length is {length_cm} cm; it must be above 0</source>
        <translation>la longueur est de {length_cm} cm&#xa0;; elle doit dépasser 0</translation>
    </message>
    <message>
        <source>the length is {length_cm} cm; expected at most {limit_cm} cm</source>
        <translation>la longueur est de {length_cm} cm&#xa0;; attendu au plus {limit_cm} cm</translation>
    </message>
    <message>
        <source>the length is {length_cm} cm; expected at least {limit_cm} cm</source>
        <translation>la longueur est de {length_cm} cm&#xa0;; attendu au moins {limit_cm} cm</translation>
    </message>
    <message>
        <source>a drum needs its diameter at half the depth</source>
        <translation>un tambour demande son diamètre à mi-profondeur</translation>
    </message>
    <message>
        <source>the profile has no areas; give height_cm and area_cm2 from the floor to the rim</source>
        <translation>le profil n’a pas d’aires&#xa0;; donnez height_cm et area_cm2 du fond au bord</translation>
    </message>
    <message>
        <source>the table of areas has {rows} rows; at least two are needed, floor and rim</source>
        <translation>le tableau d’aires a {rows} lignes&#xa0;; il en faut au moins deux, fond et bord</translation>
    </message>
    <message>
        <source>the tilt is {tilt_deg} degrees; expected 0 to 60</source>
        <translation>l’inclinaison est de {tilt_deg} degrés&#xa0;; attendu de 0 à 60</translation>
    </message>
    <message>
        <source>{form} is no form of a mound; expected paraboloid, cone or ellipsoid</source>
        <translation>{form} n’est pas une forme de butte&#xa0;; attendu paraboloid, cone ou ellipsoid</translation>
    </message>
    <message>
        <source>{shape} is no shape; expected rectangular, oval, round, hexagonal, octagonal, drum, superellipse, bowl or profile</source>
        <translation>{shape} n’est pas une forme&#xa0;; attendu rectangular, oval, round, hexagonal, octagonal, drum, superellipse, bowl ou profile</translation>
    </message>
    <message>
        <source>{axis} is no axis to tilt about; expected length or width</source>
        <translation>{axis} n’est pas un axe d’inclinaison&#xa0;; attendu length ou width</translation>
    </message>
    <message>
        <source>the volume is {volume_ml} mL; it must be above 0</source>
        <translation>le volume est de {volume_ml} mL&#xa0;; il doit dépasser 0</translation>
    </message>
    <message>
        <source>with {diameter_cm} cm at half the depth the walls would meet; check the three diameters</source>
        <translation>avec {diameter_cm} cm à mi-profondeur, les parois se rejoindraient&#xa0;; vérifiez les trois diamètres</translation>
    </message>
    <message>
        <source>the header has no column {column}; expected aperture_mm with retained_g, with gross_g and tare_g, or with retained_l</source>
        <translation>l’en-tête n’a pas de colonne {column}&#xa0;; attendu aperture_mm avec retained_g, avec gross_g et tare_g, ou avec retained_l</translation>
    </message>
    <message>
        <source>there is no header line; expected aperture_mm,retained_g</source>
        <translation>il n’y a pas de ligne d’en-tête&#xa0;; attendu aperture_mm,retained_g</translation>
    </message>
    <message>
        <source>{text} is not a day; expected one like 2026-03-14</source>
        <translation>{text} n’est pas un jour&#xa0;; attendu une date comme 2026-03-14</translation>
    </message>
    <message>
        <source>the file is no longer where it was opened; save a copy of what is open</source>
        <translation>le fichier n’est plus là où il a été ouvert&#xa0;; enregistrez une copie de ce qui est ouvert</translation>
    </message>
    <message>
        <source>this is a folder; name a file</source>
        <translation>c’est un dossier&#xa0;; nommez un fichier</translation>
    </message>
    <message>
        <source>the format is {found}; expected {expected}</source>
        <translation>le format est {found}&#xa0;; attendu {expected}</translation>
    </message>
    <message>
        <source>an opening of {aperture_mm} mm can&apos;t be; give the free opening of the sieve in mm</source>
        <translation>une ouverture de {aperture_mm} mm est impossible&#xa0;; donnez l’ouverture libre du tamis en mm</translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm after {before_mm} mm is out of order; write a grading coarse to fine</source>
        <translation>l’ouverture {aperture_mm} mm après {before_mm} mm n’est pas dans l’ordre&#xa0;; écrivez une granulométrie du gros au fin</translation>
    </message>
    <message>
        <source>the pan size {size_mm} mm has to lie above 0 and not above the finest sieve, {finest_mm} mm</source>
        <translation>la taille du fond {size_mm} mm doit être au-dessus de 0 et pas au-dessus du tamis le plus fin, {finest_mm} mm</translation>
    </message>
    <message>
        <source>the top size {size_mm} mm has to lie above the coarsest sieve, {coarsest_mm} mm</source>
        <translation>la taille supérieure {size_mm} mm doit être au-dessus du tamis le plus gros, {coarsest_mm} mm</translation>
    </message>
    <message>
        <source>the key {key} stands twice; give it once</source>
        <translation>la clé {key} est là deux fois&#xa0;; donnez-la une fois</translation>
    </message>
    <message>
        <source>the two results lie {percent} % apart, {usual_percent} % is usual; measure a third time</source>
        <translation>les deux résultats diffèrent de {percent}&#xa0;%, {usual_percent}&#xa0;% est usuel&#xa0;; mesurez une troisième fois</translation>
    </message>
    <message>
        <source>{text} has a decimal comma; write a point, or separate the columns by ; or tab</source>
        <translation>{text} a une virgule décimale&#xa0;; écrivez un point, ou séparez les colonnes par&#xa0;; ou tabulation</translation>
    </message>
    <message>
        <source>{unit} is no unit known here; leave it out or write one that fits the field</source>
        <translation>{unit} n’est pas une unité connue ici&#xa0;; laissez-la ou écrivez-en une qui convient au champ</translation>
    </message>
    <message>
        <source>at least {least} are needed here</source>
        <translation>il en faut au moins {least} ici</translation>
    </message>
    <message>
        <source>expected {expected} here</source>
        <translation>attendu ici&#xa0;: {expected}</translation>
    </message>
    <message>
        <source>name at least one opening to screen at</source>
        <translation>nommez au moins une ouverture de criblage</translation>
    </message>
    <message>
        <source>{aperture_mm} mm is below the finest sieve of the test, {finest_mm} mm, and {percent} % is finer than that: test with a finer sieve</source>
        <translation>{aperture_mm} mm est sous le tamis le plus fin de l’essai, {finest_mm} mm, et {percent}&#xa0;% est plus fin&#xa0;: essayez avec un tamis plus fin</translation>
    </message>
    <message>
        <source>an opening of {aperture_mm} mm can&apos;t be; expected more than 0</source>
        <translation>une ouverture de {aperture_mm} mm est impossible&#xa0;; attendu plus de 0</translation>
    </message>
    <message>
        <source>a sharpness of {sharpness} can&apos;t be; expected more than 0</source>
        <translation>une netteté de {sharpness} est impossible&#xa0;; attendu plus de 0</translation>
    </message>
    <message>
        <source>{percent} % crumbs can&apos;t be; expected 0 to 100</source>
        <translation>{percent}&#xa0;% de miettes est impossible&#xa0;; attendu de 0 à 100</translation>
    </message>
    <message>
        <source>a sieve of {diameter_mm} mm has no sieving area; give the diameter of the frame in mm</source>
        <translation>un tamis de {diameter_mm} mm n’a pas de surface&#xa0;; donnez le diamètre du cadre en mm</translation>
    </message>
    <message>
        <source>{percent} % of the sample was lost while sieving, more than 1 %: look for a spilled or forgotten pan</source>
        <translation>{percent}&#xa0;% de l’échantillon a été perdu au tamisage, plus de 1&#xa0;%&#xa0;: cherchez un fond renversé ou oublié</translation>
    </message>
    <message>
        <source>a mass of {mass_g} g can&apos;t be; expected 0 or more</source>
        <translation>une masse de {mass_g} g est impossible&#xa0;; attendu 0 ou plus</translation>
    </message>
    <message>
        <source>the same fraction is given in more than one way; give its mass, its gross and tare, or its litres</source>
        <translation>la même fraction est donnée de plusieurs façons&#xa0;; donnez sa masse, son brut et sa tare, ou ses litres</translation>
    </message>
    <message>
        <source>masses and litres are mixed; measure all fractions in one way</source>
        <translation>masses et litres sont mêlés&#xa0;; mesurez toutes les fractions d’une seule façon</translation>
    </message>
    <message>
        <source>the pan is missing; the last row holds what fell through the finest sieve, 0 if nothing did</source>
        <translation>le fond manque&#xa0;; la dernière ligne contient ce qui a passé le tamis le plus fin, 0 si rien</translation>
    </message>
    <message>
        <source>there is no sieve; expected at least one row above the pan</source>
        <translation>il n’y a pas de tamis&#xa0;; attendu au moins une ligne au-dessus du fond</translation>
    </message>
    <message>
        <source>{percent} % is finer than the finest sieve, {aperture_mm} mm; a finer sieve would show where the dust begins</source>
        <translation>{percent}&#xa0;% est plus fin que le tamis le plus fin, {aperture_mm} mm&#xa0;; un tamis plus fin montrerait où commence la poussière</translation>
    </message>
    <message>
        <source>{count} can&apos;t be the number of a test; expected 1 or more</source>
        <translation>{count} ne peut pas être le nombre d’un essai&#xa0;; attendu 1 ou plus</translation>
    </message>
    <message>
        <source>a resolution of {mass_g} g can&apos;t be; expected 0 or more</source>
        <translation>une résolution de {mass_g} g est impossible&#xa0;; attendu 0 ou plus</translation>
    </message>
    <message>
        <source>a sample of {mass_g} g can&apos;t be; expected more than 0</source>
        <translation>un échantillon de {mass_g} g est impossible&#xa0;; attendu plus de 0</translation>
    </message>
    <message>
        <source>{mass_g} g is a small sample for grain of {size_mm} mm; take {least_g} g or more</source>
        <translation>{mass_g} g est un petit échantillon pour un grain de {size_mm} mm&#xa0;; prenez {least_g} g ou plus</translation>
    </message>
    <message>
        <source>{text} is no basis; expected original or recovered</source>
        <translation>{text} n’est pas une base&#xa0;; attendu original ou recovered</translation>
    </message>
    <message>
        <source>a volume of {volume_l} L can&apos;t be; expected 0 or more</source>
        <translation>un volume de {volume_l} L est impossible&#xa0;; attendu 0 ou plus</translation>
    </message>
    <message>
        <source>a test was measured in litres, so each counts the same</source>
        <translation>un essai a été mesuré en litres, donc chacun compte pareil</translation>
    </message>
    <message>
        <source>{percent} % of the sample still fell through in one more minute, 0.5 % is the limit: shake on, unless the grain is soft and breaks</source>
        <translation>{percent}&#xa0;% de l’échantillon est encore passé en une minute de plus, 0.5&#xa0;% est la limite&#xa0;: secouez encore, sauf si le grain est tendre et se brise</translation>
    </message>
    <message>
        <source>this byte is not UTF-8; save the file as UTF-8</source>
        <translation>cet octet n’est pas de l’UTF-8&#xa0;; enregistrez le fichier en UTF-8</translation>
    </message>
    <message>
        <source>{count} bags can&apos;t be; expected 1 or more</source>
        <translation>{count} sacs est impossible&#xa0;; attendu 1 ou plus</translation>
    </message>
    <message>
        <source>in whole scoops a batch is up to {percent} points off the recipe; a smaller scoop or a larger tub keeps it closer</source>
        <translation>en mesures entières une gâchée s’écarte de la recette jusqu’à {percent} points&#xa0;; une mesure plus petite ou une auge plus grande la garde plus près</translation>
    </message>
    <message>
        <source>{volume_ml} mL can&apos;t be filled in; expected 0 or more</source>
        <translation>{volume_ml} mL ne peuvent pas être versés&#xa0;; attendu 0 ou plus</translation>
    </message>
    <message>
        <source>about {mass_kg} kg when full and wet: lift it by two or use a trolley (general information; safety sheets, local codes and qualified advice prevail)</source>
        <translation>environ {mass_kg} kg plein et mouillé&#xa0;: levez à deux ou prenez un chariot (informations générales&#xa0;; les fiches de sécurité, règles locales et avis qualifiés priment)</translation>
    </message>
    <message>
        <source>at least {mass_kg} kg when full and wet, not all of it weighed: lift it by two or use a trolley (general information; safety sheets, local codes and qualified advice prevail)</source>
        <translation>au moins {mass_kg} kg plein et mouillé, tout n’est pas pesé&#xa0;: levez à deux ou prenez un chariot (informations générales&#xa0;; les fiches de sécurité, règles locales et avis qualifiés priment)</translation>
    </message>
    <message>
        <source>an interval of {years} years can&apos;t be; expected 1 or more</source>
        <translation>un intervalle de {years} ans est impossible&#xa0;; attendu 1 ou plus</translation>
    </message>
    <message>
        <source>{volume_l} L of a layer are not counted as any grain; name its grain</source>
        <translation>{volume_l} L d’une couche ne comptent pour aucun grain&#xa0;; nommez son grain</translation>
    </message>
    <message>
        <source>a mass of {mass_kg} kg can&apos;t be; expected 0 or more</source>
        <translation>une masse de {mass_kg} kg est impossible&#xa0;; attendu 0 ou plus</translation>
    </message>
    <message>
        <source>no settling is given; litres are as poured, and worked in they lie about 8 % lower</source>
        <translation>aucun tassement n’est donné&#xa0;; les litres sont versés, mis en place ils sont environ 8&#xa0;% plus bas</translation>
    </message>
    <message>
        <source>no spill is given; 5 to 10 % beside the pot is common</source>
        <translation>aucune perte n’est donnée&#xa0;; 5 à 10&#xa0;% à côté du pot est courant</translation>
    </message>
    <message>
        <source>{text} is no month and day; expected the like of 03-15</source>
        <translation>{text} n’est pas un mois et un jour&#xa0;; attendu quelque chose comme 03-15</translation>
    </message>
    <message>
        <source>expected a whole number, found {value}</source>
        <translation>attendu un nombre entier, trouvé {value}</translation>
    </message>
    <message>
        <source>settling {percent} %, the median of the last {count} trees filled</source>
        <translation>tassement {percent}&#xa0;%, la médiane des {count} derniers arbres remplis</translation>
    </message>
    <message>
        <source>spill {percent} %, the median of the last {count} batches</source>
        <translation>pertes {percent}&#xa0;%, la médiane des {count} dernières gâchées</translation>
    </message>
    <message>
        <source>{volume_l} L on the shelf can&apos;t be; expected 0 or more</source>
        <translation>{volume_l} L en stock est impossible&#xa0;; attendu 0 ou plus</translation>
    </message>
    <message>
        <source>the work can&apos;t be ordered by {text}; expected bud, mix, helper or name</source>
        <translation>le travail ne peut pas être ordonné par {text}&#xa0;; attendu bud, mix, helper ou name</translation>
    </message>
    <message>
        <source>{text} is no time of the day; expected evening or morning</source>
        <translation>{text} n’est pas un moment du jour&#xa0;; attendu evening ou morning</translation>
    </message>
    <message>
        <source>screened grain has no yield; leave one of the two out</source>
        <translation>le grain criblé n’a pas de rendement&#xa0;; laissez l’un des deux</translation>
    </message>
    <message>
        <source>a yield of {share} can&apos;t be; expected more than 0 and at most 1.2, litres for each litre screened</source>
        <translation>un rendement de {share} est impossible&#xa0;; attendu plus de 0 et au plus 1.2, litres par litre criblé</translation>
    </message>
    <message>
        <source>the band runs from {from_mm} to {to_mm} mm; expected the finer size first</source>
        <translation>la plage va de {from_mm} à {to_mm} mm&#xa0;; attendu la taille la plus fine d’abord</translation>
    </message>
    <message>
        <source>recipes of {value} components can&apos;t be searched; expected 1 to {most}</source>
        <translation>des recettes de {value} composants ne peuvent pas être cherchées&#xa0;; attendu de 1 à {most}</translation>
    </message>
    <message>
        <source>the wish names more than one figure; make a wish of each</source>
        <translation>le souhait nomme plus d’un chiffre&#xa0;; faites un souhait de chacun</translation>
    </message>
    <message>
        <source>{value} can&apos;t be; expected 0 or more</source>
        <translation>{value} est impossible&#xa0;; attendu 0 ou plus</translation>
    </message>
    <message>
        <source>{value} can&apos;t be reached; expected {low} to {high}</source>
        <translation>{value} ne peut pas être atteint&#xa0;; attendu de {low} à {high}</translation>
    </message>
    <message>
        <source>{value} L are needed; expected more than 0</source>
        <translation>{value} L sont demandés&#xa0;; attendu plus de 0</translation>
    </message>
    <message>
        <source>there is nothing to mix; expected 1 to 40 candidates</source>
        <translation>il n’y a rien à mélanger&#xa0;; attendu de 1 à 40 candidats</translation>
    </message>
    <message>
        <source>the wish names nothing; give one of limits, nearest, band, finer_than_mm, air_filled_porosity, container_capacity, available_in_pot, wet_mass_g_l, cec_meq_l, price_per_l, share</source>
        <translation>le souhait ne nomme rien&#xa0;; donnez l’un de limits, nearest, band, finer_than_mm, air_filled_porosity, container_capacity, available_in_pot, wet_mass_g_l, cec_meq_l, price_per_l, share</translation>
    </message>
    <message>
        <source>nothing is asked for; give a lower limit, an upper limit or both</source>
        <translation>rien n’est demandé&#xa0;; donnez une limite basse, une limite haute ou les deux</translation>
    </message>
    <message>
        <source>{key} is false; leave the wish out or write true</source>
        <translation>{key} est false&#xa0;; laissez le souhait ou écrivez true</translation>
    </message>
    <message>
        <source>{text} can&apos;t be read; expected a size in mm and percent passing, such as 4.75 90-100, with ; between points</source>
        <translation>{text} ne peut pas être lu&#xa0;; attendu une taille en mm et un pourcentage passant, comme 4.75 90-100, avec&#xa0;; entre les points</translation>
    </message>
    <message>
        <source>a price of {value} can&apos;t be; expected 0 or more</source>
        <translation>un prix de {value} est impossible&#xa0;; attendu 0 ou plus</translation>
    </message>
    <message>
        <source>a price of 0 as upper limit leaves no scale to measure a miss by; expected more than 0</source>
        <translation>un prix de 0 comme limite haute ne laisse pas d’échelle pour mesurer un manque&#xa0;; attendu plus de 0</translation>
    </message>
    <message>
        <source>none of the {recipes} recipes scores less; of those that score the same a cheaper or simpler one may exist</source>
        <translation>aucune des {recipes} recettes n’a une note plus basse&#xa0;; parmi celles de même note, une moins chère ou plus simple peut exister</translation>
    </message>
    <message>
        <source>a stock of {value} L can&apos;t be; expected 0 or more</source>
        <translation>un stock de {value} L est impossible&#xa0;; attendu 0 ou plus</translation>
    </message>
    <message>
        <source>a total of {value} parts can&apos;t be searched; expected 1 to {most}</source>
        <translation>un total de {value} parts ne peut pas être cherché&#xa0;; attendu de 1 à {most}</translation>
    </message>
    <message>
        <source>a weight of {weight} can&apos;t be; expected 0 or more</source>
        <translation>un poids de {weight} est impossible&#xa0;; attendu 0 ou plus</translation>
    </message>
    <message>
        <source>this must be above 0; leave it out if it is not known</source>
        <translation>ceci doit dépasser 0&#xa0;; laissez-le si ce n’est pas connu</translation>
    </message>
    <message>
        <source>{text} holds no grain; expected a bag, a bin, a fraction or a batch</source>
        <translation>{text} ne contient pas de grain&#xa0;; attendu un sac, une caisse, une fraction ou une gâchée</translation>
    </message>
    <message>
        <source>the sizes run from {from_mm} mm down to {to_mm} mm; expected the finer first</source>
        <translation>les tailles vont de {from_mm} mm en descendant à {to_mm} mm&#xa0;; attendu la plus fine d’abord</translation>
    </message>
    <message>
        <source>{text} is not known here; expected one of {expected}</source>
        <translation>{text} n’est pas connu ici&#xa0;; attendu l’un de {expected}</translation>
    </message>
    <message>
        <source>an angle of {angle_deg} degrees can&apos;t be; expected {low_deg} to {high_deg}</source>
        <translation>un angle de {angle_deg} degrés est impossible&#xa0;; attendu de {low_deg} à {high_deg}</translation>
    </message>
    <message>
        <source>deciduous conifers stand between: bare-rooted with care, an older tree keeps a core</source>
        <translation>les conifères caducs sont entre les deux&#xa0;: racines nues avec précaution, un arbre âgé garde un cœur</translation>
    </message>
    <message>
        <source>refined trees lose fine twigs when bare-rooted: work edges and base, a sector at most</source>
        <translation>les arbres raffinés perdent des rameaux fins à racines nues&#xa0;: travaillez les bords et la base, un secteur au plus</translation>
    </message>
    <message>
        <source>this group is not bare-rooted: keep the core</source>
        <translation>ce groupe n’est pas mis à racines nues&#xa0;: gardez le cœur</translation>
    </message>
    <message>
        <source>bare-root tropicals only while they grow</source>
        <translation>mettez les tropicaux à racines nues seulement pendant leur croissance</translation>
    </message>
    <message>
        <source>freshly collected: trim torn ends only, then leave it for 2-3 years</source>
        <translation>fraîchement prélevé&#xa0;: ne taillez que les bouts déchirés, puis laissez-le 2-3 ans</translation>
    </message>
    <message>
        <source>conifers: bottom and one half, never all sides; the other half a year or two later</source>
        <translation>conifères&#xa0;: le dessous et une moitié, jamais tous les côtés&#xa0;; l’autre moitié un ou deux ans plus tard</translation>
    </message>
    <message>
        <source>a conifer is never bare-rooted; comb one half and the bottom, the other half in a later year</source>
        <translation>un conifère n’est jamais mis à racines nues&#xa0;; peignez une moitié et le dessous, l’autre moitié une année suivante</translation>
    </message>
    <message>
        <source>an exponent of {exponent} can&apos;t be; expected 1 to 100 (2 is an ellipsoid, 4 a box with soft edges)</source>
        <translation>un exposant de {exponent} est impossible&#xa0;; attendu de 1 à 100 (2 est un ellipsoïde, 4 une boîte aux arêtes douces)</translation>
    </message>
    <message>
        <source>what lies behind this face is not known; the plan takes {depth_cm} cm off it, the next plan is for when that proves impossible</source>
        <translation>ce qu’il y a derrière cette face n’est pas connu&#xa0;; le plan en ôte {depth_cm} cm, le plan suivant est pour le cas où c’est impossible</translation>
    </message>
    <message>
        <source>imported: leave it until it grows strongly, then go by its own group</source>
        <translation>importé&#xa0;: laissez-le jusqu’à ce qu’il pousse fort, puis suivez son propre groupe</translation>
    </message>
    <message>
        <source>{years} years can&apos;t be; expected 1 to 100</source>
        <translation>{years} ans est impossible&#xa0;; attendu de 1 à 100</translation>
    </message>
    <message>
        <source>the pot chosen is too small; it fits the free pot {pot}</source>
        <translation>le pot choisi est trop petit&#xa0;; elle tient dans le pot libre {pot}</translation>
    </message>
    <message>
        <source>a share of {share} can&apos;t be; expected 0 to 1</source>
        <translation>une part de {share} est impossible&#xa0;; attendu de 0 à 1</translation>
    </message>
    <message>
        <source>the root mass stands {rise_cm} cm over the soil: build it up with sphagnum</source>
        <translation>la motte dépasse le substrat de {rise_cm} cm&#xa0;: bâtissez-la avec de la sphaigne</translation>
    </message>
    <message>
        <source>sick: dead and rotten roots come off, no healthy one; clean tools, throw the old soil away</source>
        <translation>malade&#xa0;: les racines mortes et pourries s’ôtent, aucune saine&#xa0;; outils propres, jetez l’ancien substrat</translation>
    </message>
    <message>
        <source>not in one go: these cuts and back into the old pot, the rest when the tree has recovered</source>
        <translation>pas en une fois&#xa0;: ces coupes et retour dans l’ancien pot, le reste quand l’arbre s’est remis</translation>
    </message>
    <message>
        <source>a table of areas has no outline; a round one is assumed</source>
        <translation>un tableau d’aires n’a pas de contour&#xa0;; un rond est supposé</translation>
    </message>
    <message>
        <source>a tip of {angle_deg} degrees lays the tree down; look at what becomes the new surface</source>
        <translation>une bascule de {angle_deg} degrés couche l’arbre&#xa0;; voyez ce qui devient la nouvelle surface</translation>
    </message>
    <message>
        <source>the trunk base can&apos;t be at {length_cm} cm; expected {low_cm} cm to {high_cm} cm</source>
        <translation>la base du tronc ne peut pas être à {length_cm} cm&#xa0;; attendu de {low_cm} cm à {high_cm} cm</translation>
    </message>
    <message>
        <source>the trunk base would be buried where it was placed; it was raised to the soil</source>
        <translation>la base du tronc serait enterrée là où elle a été placée&#xa0;; elle a été levée jusqu’au substrat</translation>
    </message>
    <message>
        <source>there is no group {group}; expected one of {expected}</source>
        <translation>il n’y a pas de groupe {group}&#xa0;; attendu l’un de {expected}</translation>
    </message>
    <message>
        <source>the record has {mass_g} g; count what is there</source>
        <translation>les livres ont {mass_g} g&#xa0;; comptez ce qu’il y a</translation>
    </message>
    <message>
        <source>give grams or litres of {id}</source>
        <translation>donnez les grammes ou les litres de {id}</translation>
    </message>
    <message>
        <source>no tree is marked sick; name the trees to compare</source>
        <translation>aucun arbre n’est marqué malade&#xa0;; nommez les arbres à comparer</translation>
    </message>
    <message>
        <source>{text} is no month and day; expected 03-14</source>
        <translation>{text} n’est pas un mois et un jour&#xa0;; attendu 03-14</translation>
    </message>
    <message>
        <source>the share is {share}; expected 0 to 1</source>
        <translation>la part est de {share}&#xa0;; attendu de 0 à 1</translation>
    </message>
    <message>
        <source>today&apos;s backup could not be made ({reason}); what you write is saved all the same</source>
        <translation>la sauvegarde du jour n’a pas pu être faite ({reason})&#xa0;; ce que vous écrivez est enregistré malgré tout</translation>
    </message>
    <message>
        <source>stopped; nothing was written</source>
        <translation>arrêté&#xa0;; rien n’a été écrit</translation>
    </message>
    <message>
        <source>there is nothing to redo</source>
        <translation>rien à rétablir</translation>
    </message>
    <message>
        <source>there is nothing to undo</source>
        <translation>rien à annuler</translation>
    </message>
    <message>
        <source>air</source>
        <translation>air</translation>
    </message>
    <message>
        <source>water</source>
        <translation>eau</translation>
    </message>
    <message>
        <source>(flooded - dry) / volume</source>
        <translation>(inondé - sec) / volume</translation>
    </message>
    <message>
        <source>(flooded - drained) / volume: what drained; trapped air is not in it</source>
        <translation>(inondé - égoutté) / volume&#xa0;: ce qui s’est égoutté&#xa0;; l’air piégé n’y est pas</translation>
    </message>
    <message>
        <source>(drained - dry) / volume</source>
        <translation>(égoutté - sec) / volume</translation>
    </message>
    <message>
        <source>(fill + reserve) / ((1 - settling)(1 - spill)); reserve = the two largest differences to a worse plan</source>
        <translation>(remplissage + réserve) / ((1 - tassement)(1 - pertes))&#xa0;; réserve = les deux plus grands écarts à un plan pire</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mélange</translation>
    </message>
    <message>
        <source>fill</source>
        <translation>remplissage</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>réserve</translation>
    </message>
    <message>
        <source>settling</source>
        <translation>tassement</translation>
    </message>
    <message>
        <source>spill</source>
        <translation>pertes</translation>
    </message>
    <message>
        <source>needed x loose share / (1 - shrinkage)</source>
        <translation>requis x part en vrac / (1 - retrait)</translation>
    </message>
    <message>
        <source>component</source>
        <translation>composant</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>requis</translation>
    </message>
    <message>
        <source>shrinkage</source>
        <translation>retrait</translation>
    </message>
    <message>
        <source>gives</source>
        <translation>donne</translation>
    </message>
    <message>
        <source>ready / yield</source>
        <translation>prêt / rendement</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>sac</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>prêt</translation>
    </message>
    <message>
        <source>yield</source>
        <translation>rendement</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>pratique courante, sans source</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>mesuré</translation>
    </message>
    <message>
        <source>raw litres / litres of a bag, rounded up; raw = short / yield</source>
        <translation>litres bruts / litres d’un sac, arrondis au-dessus&#xa0;; brut = manque / rendement</translation>
    </message>
    <message>
        <source>material</source>
        <translation>matériau</translation>
    </message>
    <message>
        <source>short</source>
        <translation>manque</translation>
    </message>
    <message>
        <source>a part not weighed</source>
        <translation>une partie non pesée</translation>
    </message>
    <message>
        <source>left out, and the mass is said as at least</source>
        <translation>laissée de côté, et la masse est dite au moins</translation>
    </message>
    <message>
        <source>tub of {mix}</source>
        <translation>auge de {mix}</translation>
    </message>
    <message>
        <source>at least {mass}</source>
        <translation>au moins {mass}</translation>
    </message>
    <message>
        <source>1 bag</source>
        <translation>1 sac</translation>
    </message>
    <message>
        <source>{count} bags</source>
        <translation>{count} sacs</translation>
    </message>
    <message>
        <source>Repotting day</source>
        <translation>Journée de rempotage</translation>
    </message>
    <message>
        <source>{title}, sheet revision {revision}</source>
        <translation>{title}, feuille révision {revision}</translation>
    </message>
    <message>
        <source>{title}, {day}, sheet revision {revision}</source>
        <translation>{title}, {day}, feuille révision {revision}</translation>
    </message>
    <message>
        <source>{mix} version {version}</source>
        <translation>{mix} version {version}</translation>
    </message>
    <message>
        <source>{from} to {to}</source>
        <translation>{from} à {to}</translation>
    </message>
    <message>
        <source>{figure} typical</source>
        <translation>{figure} usuel</translation>
    </message>
    <message>
        <source>Set out {raw} of {bag} for {component}</source>
        <translation>Préparez {raw} de {bag} pour {component}</translation>
    </message>
    <message>
        <source>Screen {raw} of {bag} at {band} for {component}, gives {ready} ({yield})</source>
        <translation>Criblez {raw} de {bag} à {band} pour {component}, donne {ready} ({yield})</translation>
    </message>
    <message>
        <source>Screen {raw} of {bag} for {component}, gives {ready} ({yield})</source>
        <translation>Criblez {raw} de {bag} pour {component}, donne {ready} ({yield})</translation>
    </message>
    <message>
        <source>{yield}, typical: measure</source>
        <translation>{yield}, usuel&#xa0;: mesurez</translation>
    </message>
    <message>
        <source>Buy {bags} of {material}, short of {short} ready</source>
        <translation>Achetez {bags} de {material}, il manque {short} prêts</translation>
    </message>
    <message>
        <source>Buy {bags} of {material} of {volume} (typical), short of {short} ready</source>
        <translation>Achetez {bags} de {material} de {volume} (usuel), il manque {short} prêts</translation>
    </message>
    <message>
        <source>Buy {bags} of {material} of {volume}, short of {short} ready</source>
        <translation>Achetez {bags} de {material} de {volume}, il manque {short} prêts</translation>
    </message>
    <message>
        <source>{line}, price {price}</source>
        <translation>{line}, prix {price}</translation>
    </message>
    <message>
        <source>Grain</source>
        <translation>Grain</translation>
    </message>
    <message>
        <source>Mixes</source>
        <translation>Mélanges</translation>
    </message>
    <message>
        <source>The reserve covers the two trees of each mix that would take most if they go worse. Left over mix goes back to stock as a tub of its own.</source>
        <translation>La réserve couvre, par mélange, les deux arbres qui prendraient le plus si cela va moins bien. Le reste retourne en stock dans une auge à part.</translation>
    </message>
    <message>
        <source>From the shelf</source>
        <translation>Du stock</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>À acheter</translation>
    </message>
    <message>
        <source>due</source>
        <translation>dû</translation>
    </message>
    <message>
        <source>may be: look at it</source>
        <translation>peut-être&#xa0;: à regarder</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>aucun encore</translation>
    </message>
    <message>
        <source>Trees due by {day}</source>
        <translation>Arbres dus d’ici le {day}</translation>
    </message>
    <message>
        <source>no day yet</source>
        <translation>pas encore de jour</translation>
    </message>
    <message>
        <source>Bags that several days want</source>
        <translation>Sacs que veulent plusieurs journées</translation>
    </message>
    <message>
        <source>{lift}: two people or a trolley</source>
        <translation>{lift}&#xa0;: à deux ou avec un chariot</translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation>Levage</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Remarques</translation>
    </message>
    <message>
        <source>Dust: dry grain can hold respirable silica. Screen batches damp, outdoors with the wind behind, with a mask (P3 or P100 for silica, P2 or N95 at least); clean with a wet cloth or an H-class vacuum, never a broom.</source>
        <translation>Poussière&#xa0;: le grain sec peut contenir de la silice respirable. Criblez humide, dehors, le vent dans le dos, avec un masque (P3 ou P100 pour la silice, P2 ou N95 au moins)&#xa0;; nettoyez au chiffon mouillé ou à l’aspirateur de classe H, jamais au balai.</translation>
    </message>
    <message>
        <source>Lifting: from about 16 kg use two people or a trolley, less at arm&apos;s length. &quot;At least&quot; means that not all of it was weighed.</source>
        <translation>Levage&#xa0;: dès environ 16 kg, à deux ou avec un chariot, moins à bout de bras. «&#xa0;Au moins&#xa0;» veut dire que tout n’a pas été pesé.</translation>
    </message>
    <message>
        <source>Moss: sphagnum can carry a skin infection (sporotrichosis); gloves protect.</source>
        <translation>Mousse&#xa0;: la sphaigne peut porter une infection de la peau (sporotrichose)&#xa0;; des gants protègent.</translation>
    </message>
    <message>
        <source>Bark and potting media can carry Legionella: wet gently without spray, mask and gloves, open the bag away from the face, wash hands.</source>
        <translation>L’écorce et les terreaux peuvent porter des légionelles&#xa0;: mouillez doucement sans brouillard, masque et gants, ouvrez le sac loin du visage, lavez-vous les mains.</translation>
    </message>
    <message>
        <source>Vermiculite from old or unknown bags: some held asbestos. Leave it closed, do not sieve it.</source>
        <translation>Vermiculite de sacs anciens ou inconnus&#xa0;: certaines contenaient de l’amiante. Laissez-la fermée, ne la tamisez pas.</translation>
    </message>
    <message>
        <source>Perlite: wet it before pouring.</source>
        <translation>Perlite&#xa0;: mouillez-la avant de la verser.</translation>
    </message>
    <message>
        <source>General information; the products&apos; safety sheets, local codes and qualified advice prevail.</source>
        <translation>Informations générales&#xa0;; les fiches de sécurité des produits, règles locales et avis qualifiés priment.</translation>
    </message>
    <message>
        <source>pot of {tree}</source>
        <translation>pot de {tree}</translation>
    </message>
    <message>
        <source>Wet the grain, so that it is damp and makes no dust</source>
        <translation>Mouillez le grain, pour qu’il soit humide et ne fasse pas de poussière</translation>
    </message>
    <message>
        <source>Cut mesh and wire for 1 pot</source>
        <translation>Coupez grille et fil pour 1 pot</translation>
    </message>
    <message>
        <source>Cut mesh and wire for {count} pots</source>
        <translation>Coupez grille et fil pour {count} pots</translation>
    </message>
    <message>
        <source>Set out cutters, hooks, sticks, sealing paste, disinfectant</source>
        <translation>Préparez pinces, crochets, baguettes, mastic, désinfectant</translation>
    </message>
    <message>
        <source>Mix {batches} of {mix}, {litres} in all</source>
        <translation>Mélangez {batches} de {mix}, {litres} en tout</translation>
    </message>
    <message>
        <source>1 batch</source>
        <translation>1 gâchée</translation>
    </message>
    <message>
        <source>{count} batches</source>
        <translation>{count} gâchées</translation>
    </message>
    <message>
        <source>Mesh over the holes, wire for the tie-down, bottom layer</source>
        <translation>Grille sur les trous, fil d’arrimage, couche de drainage</translation>
    </message>
    <message>
        <source>Tie the tree down, work the mix in, leave no hollows</source>
        <translation>Arrimez l’arbre, mettez le mélange en place, sans laisser de creux</translation>
    </message>
    <message>
        <source>Water until the outflow runs clear</source>
        <translation>Arrosez jusqu’à ce que l’eau sorte claire</translation>
    </message>
    <message>
        <source>Disinfect the tools before the next tree</source>
        <translation>Désinfectez les outils avant l’arbre suivant</translation>
    </message>
    <message>
        <source>Afterwards: shade, no frost, no fertiliser for 3 to 6 weeks</source>
        <translation>Ensuite&#xa0;: ombre, pas de gel, pas d’engrais pendant 3 à 6 semaines</translation>
    </message>
    <message>
        <source>1 tree</source>
        <translation>1 arbre</translation>
    </message>
    <message>
        <source>{count} trees</source>
        <translation>{count} arbres</translation>
    </message>
    <message>
        <source>The evening before</source>
        <translation>La veille au soir</translation>
    </message>
    <message>
        <source>In the morning</source>
        <translation>Le matin</translation>
    </message>
    <message>
        <source>Trees in working order</source>
        <translation>Arbres dans l’ordre de travail</translation>
    </message>
    <message>
        <source>For each tree</source>
        <translation>Pour chaque arbre</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Précautions</translation>
    </message>
    <message>
        <source>The season</source>
        <translation>La saison</translation>
    </message>
    <message>
        <source>{trees} due by {day}</source>
        <translation>{trees} dus d’ici le {day}</translation>
    </message>
    <message>
        <source>Batch cards</source>
        <translation>Fiches de gâchée</translation>
    </message>
    <message>
        <source>{count} scoops</source>
        <translation>{count} mesures</translation>
    </message>
    <message>
        <source>{mix}, batch {number} of {count}</source>
        <translation>{mix}, gâchée {number} sur {count}</translation>
    </message>
    <message>
        <source>Gives {litres} of mix</source>
        <translation>Donne {litres} de mélange</translation>
    </message>
    <message>
        <source>One scoop is {litres}, struck off level.</source>
        <translation>Une mesure fait {litres}, arasée.</translation>
    </message>
    <message>
        <source>For {trees}</source>
        <translation>Pour {trees}</translation>
    </message>
    <message>
        <source>mixed, at</source>
        <translation>mélangé, à</translation>
    </message>
    <message>
        <source>made ________, left over ________</source>
        <translation>préparé ________, reste ________</translation>
    </message>
    <message>
        <source>plan {plan}</source>
        <translation>plan {plan}</translation>
    </message>
    <message>
        <source>score, price (unpriced last), fewer components, names, smaller total, larger parts in the order of the names; a recipe is listed if some component differs by 10 points of loose volume from every better one listed</source>
        <translation>note, prix (sans prix en dernier), moins de composants, noms, total plus petit, plus grandes parts dans l’ordre des noms&#xa0;; une recette figure si un composant diffère de 10 points de volume en vrac de toute meilleure de la liste</translation>
    </message>
    <message>
        <source>100 (start - washed out - recovered) / start</source>
        <translation>100 (départ - lavé - récupéré) / départ</translation>
    </message>
    <message>
        <source>recovered</source>
        <translation>récupéré</translation>
    </message>
    <message>
        <source>ASTM C136-19: more than 0.3 % is not for acceptance</source>
        <translation>ASTM C136-19&#xa0;: plus de 0,3&#xa0;% ne vaut pas pour réception</translation>
    </message>
    <message>
        <source>sum of what came off the sieves and the pan / (1 + moisture)</source>
        <translation>somme de ce qui est venu des tamis et du fond / (1 + humidité)</translation>
    </message>
    <message>
        <source>ASTM C566, the form, from memory</source>
        <translation>ASTM C566, la forme, de mémoire</translation>
    </message>
    <message>
        <source>the starting mass, before washing, or what was recovered and washed out; crumbs taken off; dry</source>
        <translation>la masse de départ, avant lavage, ou ce qui a été récupéré et lavé&#xa0;; miettes ôtées&#xa0;; sec</translation>
    </message>
    <message>
        <source>base</source>
        <translation>base</translation>
    </message>
    <message>
        <source>ASTM C136-19; crumbs: Folk, Petrology of Sedimentary Rocks, p. 32</source>
        <translation>ASTM C136-19&#xa0;; miettes&#xa0;: Folk, Petrology of Sedimentary Rocks, p. 32</translation>
    </message>
    <message>
        <source>pan</source>
        <translation>fond</translation>
    </message>
    <message>
        <source>ASTM C136-19: the base is the original dry mass, before washing, unless the test says recovered</source>
        <translation>ASTM C136-19&#xa0;: la base est la masse sèche d’origine, avant lavage, sauf si l’essai dit recovered</translation>
    </message>
    <message>
        <source>size at a percent passing, linear in log10(size) between the two sieves around it; never extrapolated</source>
        <translation>taille à un pourcentage passant, linéaire en log10(taille) entre les deux tamis voisins&#xa0;; jamais extrapolée</translation>
    </message>
    <message>
        <source>share that stays on an opening a: G = 1 - exp(-ln 2 (x/a)^s), integrated over each class on log size; two cuts in series multiply; the pan passes</source>
        <translation>part qui reste sur une ouverture a&#xa0;: G = 1 - exp(-ln 2 (x/a)^s), intégrée sur chaque classe en log taille&#xa0;; deux coupures en série se multiplient&#xa0;; le fond passe</translation>
    </message>
    <message>
        <source>100 x mass of the fraction that is finer than each sieve / mass of the fraction</source>
        <translation>100 x masse de la fraction plus fine que chaque tamis / masse de la fraction</translation>
    </message>
    <message>
        <source>(mass share / packing density of the fraction) / (1 / packing density of the bag)</source>
        <translation>(part de masse / compacité de la fraction) / (1 / compacité du sac)</translation>
    </message>
    <message>
        <source>size at a percent passing, linear in log10(size) between the two sieves around it; never extrapolated; the curve of a mix is the sum of its components&apos; curves by mass share</source>
        <translation>taille à un pourcentage passant, linéaire en log10(taille) entre les deux tamis voisins&#xa0;; jamais extrapolée&#xa0;; la courbe d’un mélange est la somme des courbes de ses composants par part de masse</translation>
    </message>
    <message>
        <source>openings</source>
        <translation>ouvertures</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>kept, by mass</source>
        <translation>gardé, en masse</translation>
    </message>
    <message>
        <source>take: in_band and finer within their limits; take after screening: usable within its limit; else other use or complain</source>
        <translation>prendre&#xa0;: part dans la plage et part plus fine dans leurs limites&#xa0;; après criblage&#xa0;: part utilisable dans sa limite&#xa0;; sinon autre usage ou réclamer</translation>
    </message>
    <message>
        <source>least wanted, by mass</source>
        <translation>dans la plage, au moins</translation>
    </message>
    <message>
        <source>most finer</source>
        <translation>plus fin, au plus</translation>
    </message>
    <message>
        <source>least usable</source>
        <translation>utilisable, au moins</translation>
    </message>
    <message>
        <source>docs/science/grading.md; the limits are our assumption</source>
        <translation>docs/science/grading.md&#xa0;; les limites sont notre hypothèse</translation>
    </message>
    <message>
        <source>loose litres of the fraction that is kept, per loose litre of bag; by mass share where packing is unknown</source>
        <translation>litres en vrac de la fraction gardée, par litre en vrac du sac&#xa0;; par part de masse si la compacité est inconnue</translation>
    </message>
    <message>
        <source>price / (litres x usable litres of a litre)</source>
        <translation>prix / (litres x litres utilisables d’un litre)</translation>
    </message>
    <message>
        <source>price</source>
        <translation>prix</translation>
    </message>
    <message>
        <source>litres</source>
        <translation>litres</translation>
    </message>
    <message>
        <source>usable of a litre</source>
        <translation>utilisable par litre</translation>
    </message>
    <message>
        <source>100 (passing at the coarse end - passing at the fine end), read linear in log10(size) between sieves</source>
        <translation>100 (passant au bout grossier - passant au bout fin), lu linéaire en log10(taille) entre tamis</translation>
    </message>
    <message>
        <source>share</source>
        <translation>part</translation>
    </message>
    <message>
        <source>(f16 + f50 + f84) / 3, phi = -log2(d/mm), percentiles counted from the coarse end</source>
        <translation>(f16 + f50 + f84) / 3, phi = -log2(d/mm), centiles comptés depuis le bout grossier</translation>
    </message>
    <message>
        <source>docs/science/calibration.md, bulk density by jug</source>
        <translation>docs/science/calibration.md, densité apparente au pichet</translation>
    </message>
    <message>
        <source>docs/science/calibration.md, grain density by displacement; the form of ASTM C127, from memory</source>
        <translation>docs/science/calibration.md, densité des grains par déplacement&#xa0;; la forme d’ASTM C127, de mémoire</translation>
    </message>
    <message>
        <source>docs/science/ageing.md, crumble test</source>
        <translation>docs/science/ageing.md, essai d’effritement</translation>
    </message>
    <message>
        <source>jug</source>
        <translation>pichet</translation>
    </message>
    <message>
        <source>with grain</source>
        <translation>avec grain</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>humidité</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>volume</translation>
    </message>
    <message>
        <source>(with grain - jug) / (1 + moisture) / volume</source>
        <translation>(avec grain - pichet) / (1 + humidité) / volume</translation>
    </message>
    <message>
        <source>worked in</source>
        <translation>mis en place</translation>
    </message>
    <message>
        <source>(with grain - jug) / (1 + moisture) / volume worked in</source>
        <translation>(avec grain - pichet) / (1 + humidité) / volume mis en place</translation>
    </message>
    <message>
        <source>1 - volume worked in / loose volume</source>
        <translation>1 - volume mis en place / volume en vrac</translation>
    </message>
    <message>
        <source>loose</source>
        <translation>en vrac</translation>
    </message>
    <message>
        <source>soaked, dabbed dry</source>
        <translation>trempé, essuyé</translation>
    </message>
    <message>
        <source>jug with water</source>
        <translation>pichet avec eau</translation>
    </message>
    <message>
        <source>jug with water and grain</source>
        <translation>pichet avec eau et grain</translation>
    </message>
    <message>
        <source>soaked / displaced water, displaced = jug with water + soaked - jug with both, 1 g is 1 mL</source>
        <translation>trempé / eau déplacée, déplacée = pichet avec eau + trempé - pichet avec les deux, 1 g fait 1 mL</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>sec</translation>
    </message>
    <message>
        <source>dry / displaced water, displaced = jug with water + soaked - jug with both, 1 g is 1 mL</source>
        <translation>sec / eau déplacée, déplacée = pichet avec eau + trempé - pichet avec les deux, 1 g fait 1 mL</translation>
    </message>
    <message>
        <source>(soaked and dabbed dry - dry) / dry</source>
        <translation>(trempé et essuyé - sec) / sec</translation>
    </message>
    <message>
        <source>docs/science/calibration.md, absorption; the form of ASTM C127, from memory</source>
        <translation>docs/science/calibration.md, absorption&#xa0;; la forme d’ASTM C127, de mémoire</translation>
    </message>
    <message>
        <source>rounds</source>
        <translation>cycles</translation>
    </message>
    <message>
        <source>share of the mass that left its class: 1 - e^-breakages</source>
        <translation>part de la masse qui a quitté sa classe&#xa0;: 1 - e^-bris</translation>
    </message>
    <message>
        <source>least squares of passing after, by Poisson&apos;s law of breakages and fragments (x/L)^modulus</source>
        <translation>moindres carrés du passant après, par la loi de Poisson des bris et fragments (x/L)^module</translation>
    </message>
    <message>
        <source>miss</source>
        <translation>écart</translation>
    </message>
    <message>
        <source>of the fragments: finer than x is (x/L)^modulus; the smaller, the dustier</source>
        <translation>des fragments&#xa0;: plus fin que x est (x/L)^module&#xa0;; plus petit, plus poussiéreux</translation>
    </message>
    <message>
        <source>breakages per round x rounds in a season</source>
        <translation>bris par cycle x cycles par saison</translation>
    </message>
    <message>
        <source>rounds in a season</source>
        <translation>cycles par saison</translation>
    </message>
    <message>
        <source>what fell through in one more minute / sample; thorough below 0.5 %</source>
        <translation>ce qui est passé en une minute de plus / échantillon&#xa0;; complet sous 0,5&#xa0;%</translation>
    </message>
    <message>
        <source>fell through</source>
        <translation>passé</translation>
    </message>
    <message>
        <source>sample</source>
        <translation>échantillon</translation>
    </message>
    <message>
        <source>sum of the dry masses / volume of the settled mix</source>
        <translation>somme des masses sèches / volume du mélange tassé</translation>
    </message>
    <message>
        <source>voids between grains</source>
        <translation>vides entre les grains</translation>
    </message>
    <message>
        <source>voids between grains + voids in grains</source>
        <translation>vides entre les grains + vides dans les grains</translation>
    </message>
    <message>
        <source>between</source>
        <translation>entre</translation>
    </message>
    <message>
        <source>(1 - voids between grains) x sum of the water the grains hold: by the water absorption where it is known, else w of the open grain pores</source>
        <translation>(1 - vides entre les grains) x somme de l’eau des grains&#xa0;: par l’absorption d’eau si elle est connue, sinon w des pores ouverts</translation>
    </message>
    <message>
        <source>m_k = v_k rho_b,k; the grading of the mix is blended by these shares</source>
        <translation>m_k = v_k rho_b,k&#xa0;; la granulométrie du mélange est composée selon ces parts</translation>
    </message>
    <message>
        <source>parts / sum of parts</source>
        <translation>parts / somme des parts</translation>
    </message>
    <message>
        <source>sum over components of mass share x passing, each curve read linear in log10(size) on its own sieves</source>
        <translation>somme sur les composants de part de masse x passant, chaque courbe lue linéaire en log10(taille) sur ses propres tamis</translation>
    </message>
    <message>
        <source>E_k / sum E, E_k = mass / grain density</source>
        <translation>E_k / somme E, E_k = masse / densité des grains</translation>
    </message>
    <message>
        <source>as passing, by envelope share</source>
        <translation>comme le passant, par part de volume de grain</translation>
    </message>
    <message>
        <source>1/phi = max over i of U_i (linear dominant class with wedging), each component with the one class beta that gives back its own packing density</source>
        <translation>1/phi = maximum sur i de U_i (classe dominante linéaire, avec coincement), chaque composant avec le bêta de classe qui redonne sa propre compacité</translation>
    </message>
    <message>
        <source>Yu, Zou &amp; Standish 1996; Kwan, Chan &amp; Wong 2013 (from memory); ±1.5 points of voids</source>
        <translation>Yu, Zou &amp; Standish 1996&#xa0;; Kwan, Chan &amp; Wong 2013 (de mémoire)&#xa0;; ±1,5 point de vides</translation>
    </message>
    <message>
        <source>1 - V/sum v, with V = sum E/phi</source>
        <translation>1 - V/somme v, avec V = somme E/phi</translation>
    </message>
    <message>
        <source>1 - phi/(1 - settling)</source>
        <translation>1 - phi/(1 - tassement)</translation>
    </message>
    <message>
        <source>sum m / sum (m / grain density)</source>
        <translation>somme m / somme (m / densité des grains)</translation>
    </message>
    <message>
        <source>filled depth</source>
        <translation>profondeur remplie</translation>
    </message>
    <message>
        <source>mean of theta(z) over the pot, theta(h) = theta_r + (f phi_v - theta_r) mean_j [1 + (h d&apos;_j/k)^n]^-(1-1/n) + water in grains</source>
        <translation>moyenne de theta(z) sur le pot, theta(h) = theta_r + (f phi_v - theta_r) moyenne_j [1 + (h d&apos;_j/k)^n]^-(1-1/n) + eau dans les grains</translation>
    </message>
    <message>
        <source>docs/science/water.md; constants fitted to 29 clean sands of UNSODA 2.0; above 2 mm ±.035 at best, wants a pot test</source>
        <translation>docs/science/water.md&#xa0;; constantes ajustées à 29 sables propres d’UNSODA 2.0&#xa0;; au-dessus de 2 mm ±0,035 au mieux, demande un essai en pot</translation>
    </message>
    <message>
        <source>water in grains</source>
        <translation>eau dans les grains</translation>
    </message>
    <message>
        <source>theta at no suction: f of the voids between grains + water in grains</source>
        <translation>theta sans succion&#xa0;: f des vides entre les grains + eau dans les grains</translation>
    </message>
    <message>
        <source>theta at a suction of 10 cm of water</source>
        <translation>theta à une succion de 10 cm d’eau</translation>
    </message>
    <message>
        <source>theta at a suction of 50 cm of water</source>
        <translation>theta à une succion de 50 cm d’eau</translation>
    </message>
    <message>
        <source>De Boodt &amp; Verdonck 1972, from memory; docs/science/water.md</source>
        <translation>De Boodt &amp; Verdonck 1972, de mémoire&#xa0;; docs/science/water.md</translation>
    </message>
    <message>
        <source>open voids - theta(0): gas a flood does not reach, and grain pores it does not fill</source>
        <translation>vides ouverts - theta(0)&#xa0;: gaz qu’une inondation n’atteint pas, et pores qu’elle ne remplit pas</translation>
    </message>
    <message>
        <source>integral of A(z) from the floor to the fill line</source>
        <translation>intégrale de A(z) du fond au niveau</translation>
    </message>
    <message>
        <source>area at the floor</source>
        <translation>aire au fond</translation>
    </message>
    <message>
        <source>area at the fill line</source>
        <translation>aire au niveau</translation>
    </message>
    <message>
        <source>A(z) of the shape at eleven equal heights from the floor to the fill line</source>
        <translation>A(z) de la forme à onze hauteurs égales du fond au niveau</translation>
    </message>
    <message>
        <source>area halfway up</source>
        <translation>aire à mi-hauteur</translation>
    </message>
    <message>
        <source>the water fill overrides the lengths; A(z) is scaled by their ratio</source>
        <translation>le remplissage d’eau l’emporte sur les dimensions&#xa0;; A(z) est mis à l’échelle de leur rapport</translation>
    </message>
    <message>
        <source>water fill</source>
        <translation>remplissage d’eau</translation>
    </message>
    <message>
        <source>by the lengths</source>
        <translation>par les dimensions</translation>
    </message>
    <message>
        <source>component = mixed litres x share / (1 - shrinkage), mixed litres = fill / ((1 - settling)(1 - spill)), fill = volume + mound - bottom layer - top dressing</source>
        <translation>composant = litres mélangés x part / (1 - retrait), litres mélangés = remplissage / ((1 - tassement)(1 - pertes)), remplissage = volume + butte - couche de drainage - couche de surface</translation>
    </message>
    <message>
        <source>mound</source>
        <translation>butte</translation>
    </message>
    <message>
        <source>bottom layer</source>
        <translation>couche de drainage</translation>
    </message>
    <message>
        <source>top dressing</source>
        <translation>couche de surface</translation>
    </message>
    <message>
        <source>floor to fill line</source>
        <translation>du fond au niveau</translation>
    </message>
    <message>
        <source>water poured or weighed to the fill line; the area at every height is scaled to it</source>
        <translation>eau versée ou pesée jusqu’au niveau&#xa0;; l’aire à chaque hauteur y est mise à l’échelle</translation>
    </message>
    <message>
        <source>integral of the inside area from the floor to the fill line</source>
        <translation>intégrale de l’aire intérieure du fond au niveau</translation>
    </message>
    <message>
        <source>water fill / volume by the lengths - 1</source>
        <translation>remplissage d’eau / volume par les dimensions - 1</translation>
    </message>
    <message>
        <source>volume + mound - bottom layer - top dressing</source>
        <translation>volume + butte - couche de drainage - couche de surface</translation>
    </message>
    <message>
        <source>Plan {plan}, from the front</source>
        <translation>Plan {plan}, de face</translation>
    </message>
    <message>
        <source>Plan {plan}, from above</source>
        <translation>Plan {plan}, d’en haut</translation>
    </message>
    <message>
        <source>soil line</source>
        <translation>niveau du substrat</translation>
    </message>
    <message>
        <source>farthest any point of the posed root mass passes the allowed space in a direction, at that point&apos;s height</source>
        <translation>le plus loin dont un point de la motte placée dépasse l’espace permis dans une direction, à la hauteur de ce point</translation>
    </message>
    <message>
        <source>share of the root mass still outside after the straight cuts</source>
        <translation>part de la motte encore dehors après les coupes droites</translation>
    </message>
    <message>
        <source>1 - kept/root mass</source>
        <translation>1 - gardé/motte</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>gardé</translation>
    </message>
    <message>
        <source>root mass</source>
        <translation>motte</translation>
    </message>
    <message>
        <source>kept points farther than the working depth from all that is removed, deeper than combed, connected to the trunk base</source>
        <translation>points gardés plus loin que la profondeur de travail de tout ce qui est ôté, plus profonds que le peignage, reliés à la base du tronc</translation>
    </message>
    <message>
        <source>root mass - kept</source>
        <translation>motte - gardé</translation>
    </message>
    <message>
        <source>fill line + mound at the trunk</source>
        <translation>niveau + butte au tronc</translation>
    </message>
    <message>
        <source>fill line</source>
        <translation>niveau</translation>
    </message>
    <message>
        <source>pot to the fill line + mound - layers - kept root mass under the soil - trunk and stones</source>
        <translation>pot jusqu’au niveau + butte - couches - motte gardée sous le substrat - tronc et pierres</translation>
    </message>
    <message>
        <source>pot, mound, less layers</source>
        <translation>pot, butte, moins les couches</translation>
    </message>
    <message>
        <source>kept under the soil</source>
        <translation>gardé sous le substrat</translation>
    </message>
    <message>
        <source>trunk and stones</source>
        <translation>tronc et pierres</translation>
    </message>
    <message>
        <source>rise over the soil &lt;= level run to the inner rim x tan 35 degrees</source>
        <translation>hausse sur le substrat &lt;= distance horizontale au bord intérieur x tan 35 degrés</translation>
    </message>
    <message>
        <source>rise</source>
        <translation>hausse</translation>
    </message>
    <message>
        <source>right</source>
        <translation>droite</translation>
    </message>
    <message>
        <source>left</source>
        <translation>gauche</translation>
    </message>
    <message>
        <source>back</source>
        <translation>arrière</translation>
    </message>
    <message>
        <source>front</source>
        <translation>avant</translation>
    </message>
    <message>
        <source>up</source>
        <translation>haut</translation>
    </message>
    <message>
        <source>down</source>
        <translation>bas</translation>
    </message>
    <message>
        <source>old right</source>
        <translation>ancienne droite</translation>
    </message>
    <message>
        <source>old left</source>
        <translation>ancienne gauche</translation>
    </message>
    <message>
        <source>old back</source>
        <translation>ancien arrière</translation>
    </message>
    <message>
        <source>old front</source>
        <translation>ancien avant</translation>
    </message>
    <message>
        <source>old top</source>
        <translation>ancien dessus</translation>
    </message>
    <message>
        <source>old bottom</source>
        <translation>ancien dessous</translation>
    </message>
    <message>
        <source>What limits the fit</source>
        <translation>Ce qui limite la place</translation>
    </message>
    <message>
        <source>Nothing: the root mass fits as it is posed.</source>
        <translation>Rien&#xa0;: la motte tient comme elle est placée.</translation>
    </message>
    <message>
        <source>After straight cuts {share} of the root mass still stick out at corners.</source>
        <translation>Après les coupes droites, {share} de la motte dépasse encore aux coins.</translation>
    </message>
    <message>
        <source>{length} to the right</source>
        <translation>{length} à droite</translation>
    </message>
    <message>
        <source>{length} to the left</source>
        <translation>{length} à gauche</translation>
    </message>
    <message>
        <source>{length} to the back</source>
        <translation>{length} en arrière</translation>
    </message>
    <message>
        <source>{length} to the front</source>
        <translation>{length} en avant</translation>
    </message>
    <message>
        <source>in the middle</source>
        <translation>au milieu</translation>
    </message>
    <message>
        <source>{one} of the middle</source>
        <translation>{one} du milieu</translation>
    </message>
    <message>
        <source>{one} and {other} of the middle</source>
        <translation>{one} et {other} du milieu</translation>
    </message>
    <message>
        <source>Comb the {face} {depth} deep</source>
        <translation>{face}&#xa0;: peignez sur {depth}</translation>
    </message>
    <message>
        <source>Take {depth} off the {face}, which points {direction}</source>
        <translation>{face} (à présent&#xa0;: {direction})&#xa0;: ôtez {depth}</translation>
    </message>
    <message>
        <source>Put the tree back into its old pot; the rest after 1 year</source>
        <translation>Remettez l’arbre dans son ancien pot&#xa0;; le reste après 1 an</translation>
    </message>
    <message>
        <source>Put the tree back into its old pot; the rest after {count} years</source>
        <translation>Remettez l’arbre dans son ancien pot&#xa0;; le reste après {count} ans</translation>
    </message>
    <message>
        <source>Put the tree back into its old pot</source>
        <translation>Remettez l’arbre dans son ancien pot</translation>
    </message>
    <message>
        <source>Trunk base {place}, {height} over the floor</source>
        <translation>Base du tronc {place}, {height} au-dessus du fond</translation>
    </message>
    <message>
        <source>{stand}, turned {angle}</source>
        <translation>{stand}, tournée de {angle}</translation>
    </message>
    <message>
        <source>{stand}, tipped {angle} toward {toward} (from the pot&apos;s right to its back)</source>
        <translation>{stand}, basculée de {angle} vers {toward} (de la droite du pot vers son arrière)</translation>
    </message>
    <message>
        <source>Plan {plan}</source>
        <translation>Plan {plan}</translation>
    </message>
    <message>
        <source>Into another free pot: {pot}</source>
        <translation>Dans un autre pot libre&#xa0;: {pot}</translation>
    </message>
    <message>
        <source>{stop}, then it does not fit: stage it</source>
        <translation>{stop}, alors cela ne tient pas&#xa0;: par étapes</translation>
    </message>
    <message>
        <source>If the cut from above comes to an end</source>
        <translation>Si la coupe du dessus bute</translation>
    </message>
    <message>
        <source>Root-mass plan</source>
        <translation>Plan de motte</translation>
    </message>
    <message>
        <source>Root-mass plan, into its pot</source>
        <translation>Plan de motte, dans son pot</translation>
    </message>
    <message>
        <source>Root-mass plan, into {pot}</source>
        <translation>Plan de motte, dans {pot}</translation>
    </message>
    <message>
        <source>{title}, root-mass plan</source>
        <translation>{title}, plan de motte</translation>
    </message>
    <message>
        <source>To scale: hatched comes off, grey stays</source>
        <translation>À l’échelle&#xa0;: le hachuré s’ôte, le gris reste</translation>
    </message>
    <message>
        <source>Clean tools for each tree. Some part of the root mass stays untouched; what is combed through is disturbed even where soil clings to it.</source>
        <translation>Des outils propres pour chaque arbre. Une partie de la motte reste intacte&#xa0;; ce qui est peigné est dérangé, même là où le substrat y tient.</translation>
    </message>
    <message>
        <source>Common practice, general information; qualified advice prevails.</source>
        <translation>Pratique courante, informations générales&#xa0;; l’avis qualifié prime.</translation>
    </message>
    <message>
        <source>bin</source>
        <translation>caisse</translation>
    </message>
    <message>
        <source>fraction</source>
        <translation>fraction</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>arbre</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>gâchée</translation>
    </message>
    <message>
        <source>top</source>
        <translation>dessus</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>dessous</translation>
    </message>
    <message>
        <source>the empty pot</source>
        <translation>le pot vide</translation>
    </message>
    <message>
        <source>the dry pot</source>
        <translation>le pot sec</translation>
    </message>
    <message>
        <source>the drained pot</source>
        <translation>le pot égoutté</translation>
    </message>
    <message>
        <source>the mix settles by {percent} % as the jug tests of {bags} say; a jug of the mix itself would say it better</source>
        <translation>le mélange se tasse de {percent}&#xa0;% comme le disent les essais au pichet de {bags}&#xa0;; un pichet du mélange lui-même le dirait mieux</translation>
    </message>
    <message>
        <source>the mix settles by {percent} %, by your own jug of mix {mix}</source>
        <translation>le mélange se tasse de {percent}&#xa0;%, par votre propre pichet du mélange {mix}</translation>
    </message>
    <message>
        <source>the file lies outside the folder of the file that names it; put it there, or into a folder sieve_tests beside it</source>
        <translation>le fichier est hors du dossier du fichier qui le nomme&#xa0;; mettez-le là, ou dans un dossier sieve_tests à côté</translation>
    </message>
    <message>
        <source>what this list holds can&apos;t be told from its columns; say which kind of record it lists (on the command line with --kind)</source>
        <translation>ce que contient cette liste ne se voit pas à ses colonnes&#xa0;; dites quel genre d’enregistrements elle liste (sur la ligne de commande avec --kind)</translation>
    </message>
    <message>
        <source>{left_l} L can&apos;t be left over; expected 0 to what was made</source>
        <translation>{left_l} L ne peuvent pas rester&#xa0;; attendu de 0 à ce qui a été préparé</translation>
    </message>
    <message>
        <source>{percent} % of what was left untouched last time stays so again; most of it lies before this face: work that half now, as far as the tree bears it</source>
        <translation>{percent}&#xa0;% de ce qui était resté intact la dernière fois le reste encore&#xa0;; l’essentiel est devant cette face&#xa0;: travaillez cette moitié maintenant, autant que l’arbre le supporte</translation>
    </message>
    <message>
        <source>{percent} % of the soil that was worked last time is worked again; it is to rest, and the other half comes now: most of it lies before this face (common practice)</source>
        <translation>{percent}&#xa0;% du substrat travaillé la dernière fois l’est à nouveau&#xa0;; il doit reposer, et l’autre moitié vient maintenant&#xa0;: l’essentiel est devant cette face (pratique courante)</translation>
    </message>
    <message>
        <source>a tip of {angle_deg} degrees can&apos;t be; expected 0 to 90</source>
        <translation>une bascule de {angle_deg} degrés est impossible&#xa0;; attendu de 0 à 90</translation>
    </message>
    <message>
        <source>Plan {plan}, this year, in its old pot, from the front</source>
        <translation>Plan {plan}, cette année, dans son ancien pot, de face</translation>
    </message>
    <message>
        <source>Plan {plan}, this year, in its old pot, from above</source>
        <translation>Plan {plan}, cette année, dans son ancien pot, vu de dessus</translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <translation>{low} à {high}</translation>
    </message>
    <message>
        <source>new mix only, {share} of the pot</source>
        <translation>mélange neuf seulement, {share} du pot</translation>
    </message>
    <message>
        <source>Pot in section: {what}</source>
        <translation>Pot en coupe : {what}</translation>
    </message>
    <message>
        <source>filled {height}</source>
        <translation>rempli {height}</translation>
    </message>
    <message>
        <source>wet zone {height}</source>
        <translation>zone saturée {height}</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>New mix only</source>
        <translation>Mélange neuf seulement</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Air</translation>
    </message>
    <message>
        <source>Water held</source>
        <translation>Eau retenue</translation>
    </message>
    <message>
        <source>Wet zone</source>
        <translation>Zone saturée</translation>
    </message>
    <message>
        <source>Air and water: {what}</source>
        <translation>Air et eau : {what}</translation>
    </message>
    <message>
        <source>What the kept root mass (hatched) holds is not known; the figures say nothing about it.</source>
        <translation>Ce que retient la motte conservée (hachurée) n’est pas connu ; les chiffres n’en disent rien.</translation>
    </message>
    <message>
        <source>{text} can&apos;t be read; expected parts and a name, such as 5 akadama, with : between them</source>
        <translation>{text} ne peut pas être lu&#xa0;; attendu des parts et un nom, comme 5 akadama, avec&#xa0;: entre eux</translation>
    </message>
    <message>
        <source>{tree} in {pot}</source>
        <translation>{tree} dans {pot}</translation>
    </message>
    <message>
        <source>the two sievings have no two sieves in common; sieve both with the same set</source>
        <translation>les deux tamisages n’ont pas deux tamis en commun&#xa0;; tamisez les deux avec le même jeu</translation>
    </message>
    <message>
        <source>the dry grain outweighs the soaked grain; look at both masses</source>
        <translation>le grain sec pèse plus que le grain trempé&#xa0;; vérifiez les deux masses</translation>
    </message>
    <message>
        <source>the filled jug weighs no more than the empty one; look at both masses</source>
        <translation>le pichet rempli ne pèse pas plus que le vide&#xa0;; vérifiez les deux masses</translation>
    </message>
    <message>
        <source>the grain fills more after working in than before; look at both volumes</source>
        <translation>le grain remplit plus après la mise en place qu’avant&#xa0;; vérifiez les deux volumes</translation>
    </message>
    <message>
        <source>there is no column called {column}; known here: {known}</source>
        <translation>il n’y a pas de colonne appelée {column}&#xa0;; connues ici&#xa0;: {known}</translation>
    </message>
    <message>
        <source>the disk is full; nothing of this change was written. Make room and try again</source>
        <translation>le disque est plein&#xa0;; rien de ce changement n’a été écrit. Faites de la place et réessayez</translation>
    </message>
    <message>
        <source>the file is empty; look whether it was saved</source>
        <translation>le fichier est vide&#xa0;; voyez s’il a été enregistré</translation>
    </message>
    <message>
        <source>another program holds the record; try again in a moment</source>
        <translation>un autre programme tient le registre&#xa0;; réessayez dans un instant</translation>
    </message>
    <message>
        <source>the record was written by a newer Gritwright (version {version}, known here: {known}); open it for reading only, or update</source>
        <translation>le registre a été écrit par un Gritwright plus récent (version {version}, connue ici&#xa0;: {known})&#xa0;; ouvrez-le en lecture seule, ou mettez à jour</translation>
    </message>
    <message>
        <source>this is no Gritwright record; choose a file that ends in .gritwright</source>
        <translation>ce n’est pas un registre Gritwright&#xa0;; choisissez un fichier qui finit par .gritwright</translation>
    </message>
    <message>
        <source>the file or its folder can&apos;t be written to; look whose they are, or choose another folder</source>
        <translation>le fichier ou son dossier ne peut pas être écrit&#xa0;; voyez à qui ils sont, ou choisissez un autre dossier</translation>
    </message>
    <message>
        <source>the file made trouble ({text}); try again, and if it stays so restore the newest intact backup</source>
        <translation>le fichier a fait des difficultés ({text})&#xa0;; réessayez, et si cela dure, restaurez la plus récente bonne sauvegarde</translation>
    </message>
    <message>
        <source>reading stopped half-way; nothing was done with the file. Try again, or copy it to this machine first</source>
        <translation>la lecture s’est arrêtée à mi-chemin&#xa0;; rien n’a été fait du fichier. Réessayez, ou copiez-le d’abord sur cette machine</translation>
    </message>
    <message>
        <source>writing failed; nothing of this change was kept. Look whether the disk is there and has room, and try again</source>
        <translation>l’écriture a échoué&#xa0;; rien de ce changement n’a été gardé. Voyez si le disque est là et a de la place, et réessayez</translation>
    </message>
    <message>
        <source>there is no key called {key}; look at its spelling, or leave it out</source>
        <translation>il n’y a pas de clé appelée {key}&#xa0;; vérifiez son orthographe, ou omettez-la</translation>
    </message>
    <message>
        <source>sieve set</source>
        <translation>jeu de tamis</translation>
    </message>
    <message>
        <source>sieve test</source>
        <translation>essai de tamisage</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>pot</translation>
    </message>
    <message>
        <source>root-mass plan</source>
        <translation>plan de motte</translation>
    </message>
    <message>
        <source>repotting day</source>
        <translation>journée de rempotage</translation>
    </message>
    <message>
        <source>pot test</source>
        <translation>essai en pot</translation>
    </message>
    <message>
        <source>stock entry</source>
        <translation>écriture de stock</translation>
    </message>
    <message>
        <source>log entry</source>
        <translation>entrée du journal</translation>
    </message>
    <message>
        <source>group of trees</source>
        <translation>groupe d’arbres</translation>
    </message>
    <message>
        <source>{text} is no group of trees; look at its spelling</source>
        <translation>{text} n’est pas un groupe d’arbres&#xa0;; vérifiez l’orthographe</translation>
    </message>
    <message>
        <source>expected at least one opening</source>
        <translation>attendu au moins une ouverture</translation>
    </message>
    <message>
        <source>names {text}, which is not in the record; add it there, or take the name out</source>
        <translation>cite {text}, qui n’est pas dans le registre&#xa0;; ajoutez-le là, ou retirez ce nom</translation>
    </message>
    <message>
        <source>the entry says nothing; write what happened</source>
        <translation>l’entrée ne dit rien&#xa0;; écrivez ce qui s’est passé</translation>
    </message>
    <message>
        <source>not in one go: this year these cuts and back into the old pot, the rest later (years between: {years})</source>
        <translation>pas en une fois&#xa0;: cette année ces coupes et retour dans l’ancien pot, le reste plus tard (années entre les deux&#xa0;: {years})</translation>
    </message>
    <message>
        <source>this is the record itself; choose another name</source>
        <translation>c’est le registre lui-même&#xa0;; choisissez un autre nom</translation>
    </message>
    <message>
        <source>the record lies in a network folder: it is saved more slowly there, and only one person should work in it at a time</source>
        <translation>le registre est dans un dossier réseau&#xa0;: il s’y enregistre plus lentement, et une seule personne devrait y travailler à la fois</translation>
    </message>
    <message>
        <source>the record lies in a folder that another program copies elsewhere: let the copying finish before it is opened on another machine</source>
        <translation>le registre est dans un dossier qu’un autre programme copie ailleurs&#xa0;: laissez finir la copie avant de l’ouvrir sur une autre machine</translation>
    </message>
    <message>
        <source>the record was brought to version {version}; a backup was made before</source>
        <translation>le registre a été porté à la version {version}&#xa0;; une sauvegarde a été faite avant</translation>
    </message>
    <message>
        <source>the record was not there and a new one was made, but there are backups of one of that name; restore the newest if it went missing</source>
        <translation>le registre n’était pas là et un nouveau a été créé, mais il y a des sauvegardes d’un registre de ce nom&#xa0;; restaurez la plus récente s’il a disparu</translation>
    </message>
    <message>
        <source>the record is of an older version, and the backup before it is brought forward could not be written to {file}; nothing was changed. Choose another backups folder or make room, or open it for reading only</source>
        <translation>le registre est d’une version plus ancienne, et la sauvegarde avant sa mise à niveau n’a pas pu être écrite dans {file}&#xa0;; rien n’a été changé. Choisissez un autre dossier de sauvegardes, faites de la place, ou ouvrez-le en lecture seule</translation>
    </message>
    <message>
        <source>the record is open for reading only; save a copy of it to write in</source>
        <translation>le registre est ouvert en lecture seule&#xa0;; enregistrez-en une copie pour y écrire</translation>
    </message>
    <message>
        <source>Build the shoulder with about {litres} of sphagnum, {height} over the soil</source>
        <translation>Bâtissez l’épaulement avec environ {litres} de sphaigne, {height} au-dessus du substrat</translation>
    </message>
    <message>
        <source>dormant</source>
        <translation>dormants</translation>
    </message>
    <message>
        <source>swelling</source>
        <translation>gonflants</translation>
    </message>
    <message>
        <source>green tips</source>
        <translation>pointes vertes</translation>
    </message>
    <message>
        <source>opening</source>
        <translation>en éclosion</translation>
    </message>
    <message>
        <source>in leaf</source>
        <translation>en feuilles</translation>
    </message>
    <message>
        <source>the mix has no components; put one in</source>
        <translation>le mélange n’a pas de composants ; en mettre un</translation>
    </message>
    <message>
        <source>a price of {amount} can&apos;t be; expected 0 or more</source>
        <translation>un prix de {amount} n’est pas possible ; attendu 0 ou plus</translation>
    </message>
    <message>
        <source>the day has no trees; name at least one</source>
        <translation>la journée n’a pas d’arbres ; en nommer au moins un</translation>
    </message>
    <message>
        <source>another {kind} {id} is here already, so nothing was taken in; give this one another number, or let it take the place of the one here</source>
        <translation>un autre {kind} {id} est déjà ici, rien n’a donc été repris ; donner un autre numéro à celui-ci, ou le mettre à la place de l’autre</translation>
    </message>
    <message>
        <source>another group is called {name} already; choose another name</source>
        <translation>un autre groupe s’appelle déjà {name} ; choisir un autre nom</translation>
    </message>
    <message>
        <source>{text} names no record; expected kind and number like bag:K-07</source>
        <translation>{text} ne nomme aucune fiche ; attendu genre et numéro comme bag:K-07</translation>
    </message>
    <message>
        <source>the {kind} {id} exists or existed, and a number is never used again; choose another</source>
        <translation>{kind} {id} existe ou a existé, et un numéro n’est jamais repris ; en choisir un autre</translation>
    </message>
    <message>
        <source>{face} (now {direction}) up to {depth} deep</source>
        <translation>{face} (maintenant {direction}) jusqu’à {depth} de profondeur</translation>
    </message>
    <message>
        <source>Round off the corners along the wall, {share} of the root mass: {where}</source>
        <translation>Arrondissez les coins le long de la paroi, {share} de la motte : {where}</translation>
    </message>
    <message>
        <source>the new mix already has less than {percent} % air in this pot; a coarser mix or a deeper pot has more</source>
        <translation>le mélange neuf a déjà moins de {percent}&#xa0;% d’air dans ce pot&#xa0;; un mélange plus gros ou un pot plus profond en a plus</translation>
    </message>
    <message>
        <source>the flooded mass asks for {percent} % of the voids between grains; look at the volume, the grain density and the dry mass</source>
        <translation>la masse inondée demande {percent}&#xa0;% des vides entre les grains&#xa0;; vérifiez le volume, la densité des grains et la masse sèche</translation>
    </message>
    <message>
        <source>the measured litre weight leaves {voids_percent} % of voids between grains, which grain does not do; the predicted voids were used instead: look at the masses and the volume</source>
        <translation>le poids du litre mesuré laisse {voids_percent}&#xa0;% de vides entre les grains, ce que le grain ne fait pas&#xa0;; les vides prévus ont été utilisés à la place&#xa0;: vérifiez les masses et le volume</translation>
    </message>
    <message>
        <source>the crumbled grading is {points} points off any even breaking, so the figures are rough; repeat the test for better ones</source>
        <translation>la granulométrie effritée est à {points} points de tout bris régulier, les chiffres sont donc grossiers&#xa0;; refaites l’essai pour de meilleurs</translation>
    </message>
    <message>
        <source>the number of rounds is missing or not above 0; type how often it was shaken or frozen</source>
        <translation>le nombre de cycles manque ou n’est pas supérieur à 0&#xa0;; saisissez combien de fois on a secoué ou gelé</translation>
    </message>
    <message>
        <source>a grain density of {density_g_l} g/L is above that of its solid, {solid_g_l} g/L; look at the masses and at the mark on the jug</source>
        <translation>une densité des grains de {density_g_l} g/L dépasse celle de son solide, {solid_g_l} g/L&#xa0;; vérifiez les masses et la marque du pichet</translation>
    </message>
    <message>
        <source>a grain density of {density_g_l} g/L is unusual; look at the masses, and was all air let out from between the grains?</source>
        <translation>une densité des grains de {density_g_l} g/L est inhabituelle&#xa0;; vérifiez les masses, et tout l’air était-il sorti d’entre les grains&#xa0;?</translation>
    </message>
    <message>
        <source>a mass is missing or not above 0; weigh it and type it here</source>
        <translation>une masse manque ou n’est pas supérieure à 0&#xa0;; pesez et saisissez-la ici</translation>
    </message>
    <message>
        <source>the jug would hold {voids_percent} % of voids between grains of {density_g_l} g/L, which loose grain hardly does; look at the volume and at the grain density</source>
        <translation>le pichet aurait {voids_percent}&#xa0;% de vides entre des grains de {density_g_l} g/L, ce que le grain en vrac ne fait guère&#xa0;; vérifiez le volume et la densité des grains</translation>
    </message>
    <message>
        <source>the volume is missing or not above 0; weigh the jug full of water, 1 g is 1 mL</source>
        <translation>le volume manque ou n’est pas supérieur à 0&#xa0;; pesez le pichet plein d’eau, 1 g fait 1 mL</translation>
    </message>
    <message>
        <source>the grain density is not known: the mix has mass shares and grading only; measure it by displacement for volumes and porosities</source>
        <translation>la densité des grains n’est pas connue&#xa0;: le mélange n’a que des parts de masse et une granulométrie&#xa0;; mesurez-la par déplacement d’eau pour les volumes et les porosités</translation>
    </message>
    <message>
        <source>the grain density implies a solid of {density_g_l} g/L, outside {low} to {high}: look at it again, or give the solid density</source>
        <translation>la densité des grains implique un solide de {density_g_l} g/L, hors de {low} à {high}&#xa0;: revoyez-la, ou donnez la densité du solide</translation>
    </message>
    <message>
        <source>the parts add up to {sum}: if they were meant as percent, look for one that is missing or counted twice</source>
        <translation>les parts font {sum}&#xa0;: si elles étaient en pour cent, cherchez-en une qui manque ou qui est comptée deux fois</translation>
    </message>
    <message>
        <source>a settling of {percent} % leaves no voids; expected less than {most_percent} %, which is all the grain allows</source>
        <translation>un tassement de {percent}&#xa0;% ne laisse pas de vides&#xa0;; attendu moins de {most_percent}&#xa0;%, le grain n’en permet pas plus</translation>
    </message>
    <message>
        <source>the solid density of {density_g_l} g/L is outside {low} to {high}: look at it again</source>
        <translation>la densité du solide de {density_g_l} g/L est hors de {low} à {high}&#xa0;: revoyez-la</translation>
    </message>
    <message>
        <source>{sources} sources stand beside {components} components; give each component one, or none of them</source>
        <translation>{sources} sources pour {components} composants&#xa0;; donnez-en une à chaque composant, ou à aucun</translation>
    </message>
    <message>
        <source>measure the grain density of the {component} by displacement: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>mesurez la densité des grains de {component} par déplacement d’eau&#xa0;: étendue pour {figure} de ±{now_points} à ±{then_points} points</translation>
    </message>
    <message>
        <source>a litre weight of {density_g_l} g/L in the pot is unusual; look at the tare and the volume</source>
        <translation>un poids du litre de {density_g_l} g/L dans le pot est inhabituel&#xa0;; vérifiez la tare et le volume</translation>
    </message>
    <message>
        <source>{mass_g} g can&apos;t be: {what} weighed {least_g} g; weigh both again</source>
        <translation>{mass_g} g est impossible&#xa0;: {what} pesait {least_g} g&#xa0;; repesez les deux</translation>
    </message>
    <message>
        <source>{caught_ml} mL were caught but only {poured_ml} mL poured; count all the water from the dry mix on</source>
        <translation>{caught_ml} mL ont été recueillis mais seulement {poured_ml} mL versés&#xa0;; comptez toute l’eau depuis le mélange sec</translation>
    </message>
    <message>
        <source>a volume of {volume_ml} mL can&apos;t be; expected 0 or more</source>
        <translation>un volume de {volume_ml} mL est impossible&#xa0;; attendu 0 ou plus</translation>
    </message>
    <message>
        <source>no verdict on {from_mm}-{to_mm} mm: the sieves of the test don&apos;t reach both ends; add a sieve at the end that is missing</source>
        <translation>pas de verdict sur {from_mm}-{to_mm} mm&#xa0;: les tamis de l’essai n’atteignent pas les deux bouts&#xa0;; ajoutez un tamis au bout qui manque</translation>
    </message>
    <message>
        <source>grain of {size_mm} mm is coarser than the 15 mm the model was made for; make a pot test to know</source>
        <translation>un grain de {size_mm} mm est plus gros que les 15 mm pour lesquels le modèle est fait&#xa0;; faites un essai en pot pour savoir</translation>
    </message>
    <message>
        <source>a tenth of the mix is {size_mm} mm or finer; dusty mixes are out of the model&apos;s range: screen the dust out, or make a pot test</source>
        <translation>un dixième du mélange fait {size_mm} mm ou moins&#xa0;; les mélanges poussiéreux sont hors du domaine du modèle&#xa0;: criblez la poussière, ou faites un essai en pot</translation>
    </message>
    <message>
        <source>{fines_percent} % is finer than the last sieve; fines wash down and clog, so the air shown is too high: screen them out</source>
        <translation>{fines_percent}&#xa0;% est plus fin que le dernier tamis&#xa0;; les fines descendent et colmatent, l’air affiché est donc trop élevé&#xa0;: criblez-les</translation>
    </message>
    <message>
        <source>the sizes leave a gap and the fine part is {fines_percent} %; fine grain fills the voids of the coarse, so the air shown is too high: screen it out, or make a pot test</source>
        <translation>les tailles laissent un trou et la part fine est de {fines_percent}&#xa0;%&#xa0;; le grain fin remplit les vides du gros, l’air affiché est donc trop élevé&#xa0;: criblez-le, ou faites un essai en pot</translation>
    </message>
    <message>
        <source>organic, fibrous or soft grain is out of the model&apos;s range; make a pot test to know</source>
        <translation>le grain organique, fibreux ou mou est hors du domaine du modèle&#xa0;; faites un essai en pot pour savoir</translation>
    </message>
    <message>
        <source>the wet zone would reach {perched_cm} cm, above the fill line at {depth_cm} cm: the whole pot stays wet; take a coarser mix or a deeper pot</source>
        <translation>la zone saturée atteindrait {perched_cm} cm, au-dessus du niveau à {depth_cm} cm&#xa0;: tout le pot reste saturé&#xa0;; prenez un mélange plus gros ou un pot plus profond</translation>
    </message>
    <message>
        <source>the band ends at {to_mm} mm, which is not above {from_mm} mm where it starts; give the finer size first</source>
        <translation>la plage finit à {to_mm} mm, ce qui n’est pas au-dessus de {from_mm} mm où elle commence&#xa0;; donnez d’abord la taille fine</translation>
    </message>
    <message>
        <source>the name {name} is used twice; give one of them another</source>
        <translation>le nom {name} est utilisé deux fois&#xa0;; donnez-en un autre à l’un d’eux</translation>
    </message>
    <message>
        <source>{low} is negative; a catalogue figure is 0 or more</source>
        <translation>{low} est négatif&#xa0;; un chiffre du catalogue est de 0 ou plus</translation>
    </message>
    <message>
        <source>the material has no name; give it one</source>
        <translation>le matériau n’a pas de nom&#xa0;; donnez-en un</translation>
    </message>
    <message>
        <source>the figure names no source; name one that stands in references.json</source>
        <translation>le chiffre ne cite pas de source&#xa0;; citez-en une qui figure dans references.json</translation>
    </message>
    <message>
        <source>the range runs from {low} down to {high}; write the lower figure first</source>
        <translation>l’étendue va de {low} en descendant à {high}&#xa0;; écrivez d’abord le plus petit chiffre</translation>
    </message>
    <message>
        <source>the share {high} is above 1; write 40 % as 0.4</source>
        <translation>la part {high} dépasse 1&#xa0;; écrivez 40&#xa0;% comme 0.4</translation>
    </message>
    <message>
        <source>references.json lists no source called {source}; add it there, or look at its spelling</source>
        <translation>references.json ne contient pas de source appelée {source}&#xa0;; ajoutez-la, ou vérifiez l’orthographe</translation>
    </message>
    <message>
        <source>{text} is not known for {key}; look at its spelling, or in schema.json</source>
        <translation>{text} n’est pas connu pour {key}&#xa0;; vérifiez l’orthographe, ou voyez schema.json</translation>
    </message>
    <message>
        <source>no figure uses the source {source}; take it out of references.json, or name it beside its figure</source>
        <translation>aucun chiffre n’utilise la source {source}&#xa0;; ôtez-la de references.json, ou citez-la près de son chiffre</translation>
    </message>
    <message>
        <source>{value} lies outside its own range {low} to {high}; correct the one that is wrong</source>
        <translation>{value} est hors de sa propre étendue {low} à {high}&#xa0;; corrigez le chiffre faux</translation>
    </message>
    <message>
        <source>the litre weight {bulk_g_l} g/L, dry, is not below the grain density {particle_g_l} g/L, but loose grain has voids; weigh a litre again, or correct the grain density</source>
        <translation>le poids du litre {bulk_g_l} g/L, sec, n’est pas sous la densité des grains {particle_g_l} g/L, or le grain en vrac a des vides&#xa0;; repesez un litre, ou corrigez la densité des grains</translation>
    </message>
    <message>
        <source>the litre weight {bulk_g_l} g/L, dry, is not below the solid density {skeletal_g_l} g/L, but loose grain has voids; weigh a litre again, or correct the solid density</source>
        <translation>le poids du litre {bulk_g_l} g/L, sec, n’est pas sous la densité du solide {skeletal_g_l} g/L, or le grain en vrac a des vides&#xa0;; repesez un litre, ou corrigez la densité du solide</translation>
    </message>
    <message>
        <source>the grain density {particle_g_l} g/L is above the solid density {skeletal_g_l} g/L, but a grain is no denser than its solid; correct the one that is wrong</source>
        <translation>la densité des grains {particle_g_l} g/L dépasse celle du solide {skeletal_g_l} g/L, or un grain n’est pas plus dense que son solide&#xa0;; corrigez celle qui est fausse</translation>
    </message>
    <message>
        <source>there is no material called {name} in the catalogue; write it as one of the nearest: {nearest}</source>
        <translation>il n’y a pas de matériau appelé {name} dans le catalogue&#xa0;; écrivez l’un des plus proches&#xa0;: {nearest}</translation>
    </message>
    <message>
        <source>the corner radius {radius_cm} cm is more than half of the shorter side; expected at most {limit_cm} cm</source>
        <translation>le rayon des coins {radius_cm} cm dépasse la moitié du petit côté&#xa0;; attendu au plus {limit_cm} cm</translation>
    </message>
    <message>
        <source>a corner radius belongs to a rectangular pot; leave it out here</source>
        <translation>un rayon de coins va avec un pot rectangulaire&#xa0;; ôtez-le ici</translation>
    </message>
    <message>
        <source>the exponent {exponent} differs from {other}; give a pot one exponent</source>
        <translation>l’exposant {exponent} diffère de {other}&#xa0;; donnez au pot un seul exposant</translation>
    </message>
    <message>
        <source>the fill line lies {freeboard_cm} cm below the rim, but the pot is only {depth_cm} cm deep; measure both again</source>
        <translation>le niveau est à {freeboard_cm} cm sous le bord, mais le pot n’a que {depth_cm} cm de profondeur&#xa0;; remesurez les deux</translation>
    </message>
    <message>
        <source>bottom layer and top dressing together take {layers_cm} cm of the {filled_cm} cm filled; make them thinner, so that room is left for the mix</source>
        <translation>couche de drainage et couche de surface prennent ensemble {layers_cm} cm des {filled_cm} cm remplis&#xa0;; amincissez-les, pour qu’il reste place au mélange</translation>
    </message>
    <message>
        <source>the length is {length_cm} cm; expected 0 or more</source>
        <translation>la longueur est de {length_cm} cm&#xa0;; attendu 0 ou plus</translation>
    </message>
    <message>
        <source>the mass is {mass_kg} kg; expected 0 or more</source>
        <translation>la masse est de {mass_kg} kg&#xa0;; attendu 0 ou plus</translation>
    </message>
    <message>
        <source>the table of areas ends at {height_cm} cm, below the rim at {depth_cm} cm; add a row for the rim</source>
        <translation>le tableau d’aires finit à {height_cm} cm, sous le bord à {depth_cm} cm&#xa0;; ajoutez une ligne pour le bord</translation>
    </message>
    <message>
        <source>the table of areas starts at {height_cm} cm; put a row for the floor, at 0, first</source>
        <translation>le tableau d’aires commence à {height_cm} cm&#xa0;; mettez en premier une ligne pour le fond, à 0</translation>
    </message>
    <message>
        <source>the height {height_cm} cm follows {before_cm} cm; write the heights from the floor up</source>
        <translation>la hauteur {height_cm} cm suit {before_cm} cm&#xa0;; écrivez les hauteurs depuis le fond vers le haut</translation>
    </message>
    <message>
        <source>the volume is {volume_ml} mL, which no pot holds; look at its unit</source>
        <translation>le volume est de {volume_ml} mL, ce qu’aucun pot ne tient&#xa0;; vérifiez l’unité</translation>
    </message>
    <message>
        <source>the water fill of {volume_ml} mL is {percent} % of the {lengths_ml} mL that the lengths hold; look at its unit and at the lengths</source>
        <translation>le remplissage d’eau de {volume_ml} mL fait {percent} % des {lengths_ml} mL que contiennent les dimensions&#xa0;; vérifiez son unité et les dimensions</translation>
    </message>
    <message>
        <source>the column {column} stands twice in the header; take one out</source>
        <translation>la colonne {column} est deux fois dans l’en-tête&#xa0;; ôtez-en une</translation>
    </message>
    <message>
        <source>a quote opened here and is never closed; close it, or take it out</source>
        <translation>un guillemet s’ouvre ici et ne se ferme jamais&#xa0;; fermez-le, ou ôtez-le</translation>
    </message>
    <message>
        <source>a row follows the pan (line {pan_line}); write the pan as the last row</source>
        <translation>une ligne suit le fond (ligne {pan_line})&#xa0;; écrivez le fond en dernière ligne</translation>
    </message>
    <message>
        <source>{found} cells stand here, the header has {expected} columns; take out what is too much, or put a text that holds the separator into quotes</source>
        <translation>il y a ici {found} cellules, l’en-tête a {expected} colonnes&#xa0;; ôtez ce qui est de trop, ou mettez entre guillemets un texte qui contient le séparateur</translation>
    </message>
    <message>
        <source>the name of the file is empty; give one</source>
        <translation>le nom du fichier est vide&#xa0;; donnez-en un</translation>
    </message>
    <message>
        <source>the file is larger than {limit_mb} MB, where a sieve test or a mix is a few kilobytes; look whether it is the one you meant</source>
        <translation>le fichier dépasse {limit_mb} Mo, un essai de tamisage ou un mélange fait quelques kilo-octets&#xa0;; vérifiez que c’est le bon</translation>
    </message>
    <message>
        <source>the grading has no points; give openings with what passes them</source>
        <translation>la granulométrie n’a pas de points&#xa0;; donnez des ouvertures avec leur passant</translation>
    </message>
    <message>
        <source>{coarser_percent} % passes {coarser_mm} mm but {finer_percent} % the finer {finer_mm} mm; correct one of them, passing never falls as the opening grows</source>
        <translation>{coarser_percent}&#xa0;% passe {coarser_mm} mm mais {finer_percent}&#xa0;% les {finer_mm} mm plus fins&#xa0;; corrigez l’un des deux, le passant ne baisse jamais quand l’ouverture grandit</translation>
    </message>
    <message>
        <source>{percent} % passing can&apos;t be; expected 0 to 100</source>
        <translation>{percent}&#xa0;% passant est impossible&#xa0;; attendu 0 à 100</translation>
    </message>
    <message>
        <source>the file ends before its JSON does; close the last bracket or quote, or save the file again</source>
        <translation>le fichier finit avant son JSON&#xa0;; fermez la dernière accolade ou le dernier guillemet, ou enregistrez à nouveau le fichier</translation>
    </message>
    <message>
        <source>brackets are nested deeper than {limit} levels; look whether this is the file you meant</source>
        <translation>les accolades sont imbriquées à plus de {limit} niveaux&#xa0;; vérifiez que c’est le bon fichier</translation>
    </message>
    <message>
        <source>the file holds more than {limit} values; look whether this is the file you meant</source>
        <translation>le fichier contient plus de {limit} valeurs&#xa0;; vérifiez que c’est le bon fichier</translation>
    </message>
    <message>
        <source>the key {key} is missing; add it</source>
        <translation>la clé {key} manque&#xa0;; ajoutez-la</translation>
    </message>
    <message>
        <source>a number is missing here; write it</source>
        <translation>il manque un nombre ici&#xa0;; saisissez-le</translation>
    </message>
    <message>
        <source>{text} is not a number; write it in figures</source>
        <translation>{text} n’est pas un nombre&#xa0;; saisissez-le en chiffres</translation>
    </message>
    <message>
        <source>{text} is too large to be a measured value; look at its decimal point and its unit</source>
        <translation>{text} est trop grand pour une valeur mesurée&#xa0;; vérifiez le signe décimal et l’unité</translation>
    </message>
    <message>
        <source>{text} is too small to be a measured value; look at its decimal point and its unit</source>
        <translation>{text} est trop petit pour une valeur mesurée&#xa0;; vérifiez le signe décimal et l’unité</translation>
    </message>
    <message>
        <source>the schema refers to itself without end; mend the reference</source>
        <translation>le schéma se renvoie à lui-même sans fin&#xa0;; corrigez le renvoi</translation>
    </message>
    <message>
        <source>there is no schema called {schema}; look at its spelling, or put it beside the others</source>
        <translation>il n’y a pas de schéma appelé {schema}&#xa0;; vérifiez l’orthographe, ou placez-le près des autres</translation>
    </message>
    <message>
        <source>this fits none of the allowed forms; look in the schema for them</source>
        <translation>ceci ne convient à aucune des formes permises&#xa0;; voyez-les dans le schéma</translation>
    </message>
    <message>
        <source>{text} is not one of the allowed values; look in the schema for them</source>
        <translation>{text} n’est pas l’une des valeurs permises&#xa0;; voyez-les dans le schéma</translation>
    </message>
    <message>
        <source>{value} is beyond the limit {limit}; write a value within it</source>
        <translation>{value} dépasse la limite {limit}&#xa0;; écrivez une valeur qui la respecte</translation>
    </message>
    <message>
        <source>this fits more than one of the allowed forms; leave out what belongs to the others</source>
        <translation>ceci convient à plus d’une des formes permises&#xa0;; ôtez ce qui appartient aux autres</translation>
    </message>
    <message>
        <source>the schema uses {keyword}, which is not checked here; say it in another way</source>
        <translation>le schéma utilise {keyword}, qui n’est pas vérifié ici&#xa0;; dites-le autrement</translation>
    </message>
    <message>
        <source>{aperture_mm} mm is above the coarsest sieve of the test, {coarsest_mm} mm; how the grain above that is spread is assumed: test with a coarser sieve</source>
        <translation>{aperture_mm} mm est au-dessus du tamis le plus gros de l’essai, {coarsest_mm} mm&#xa0;; la répartition du grain au-dessus est supposée&#xa0;: essayez avec un tamis plus gros</translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm is named twice; name it once</source>
        <translation>l’ouverture {aperture_mm} mm est nommée deux fois&#xa0;; nommez-la une fois</translation>
    </message>
    <message>
        <source>the set has no sieve; type at least one opening</source>
        <translation>le jeu n’a pas de tamis&#xa0;; saisissez au moins une ouverture</translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm follows {before_mm} mm; write the sieves from coarse to fine</source>
        <translation>l’ouverture {aperture_mm} mm suit {before_mm} mm&#xa0;; écrivez les tamis du gros au fin</translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm follows {above_mm} mm; write the sieves from coarse to fine</source>
        <translation>l’ouverture {aperture_mm} mm suit {above_mm} mm&#xa0;; écrivez les tamis du gros au fin</translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm stands twice; correct one of them, or take it out</source>
        <translation>l’ouverture {aperture_mm} mm est là deux fois&#xa0;; corrigez-en une, ou ôtez-la</translation>
    </message>
    <message>
        <source>the litre weight {bulk_g_l} g/L is above the grain density {particle_g_l} g/L; weigh a litre again, or correct the grain density</source>
        <translation>le poids du litre {bulk_g_l} g/L dépasse la densité des grains {particle_g_l} g/L&#xa0;; repesez un litre, ou corrigez la densité des grains</translation>
    </message>
    <message>
        <source>nothing was left on the sieves or in the pan; type what each of them held</source>
        <translation>il n’est rien resté sur les tamis ni dans le fond&#xa0;; saisissez ce que chacun a retenu</translation>
    </message>
    <message>
        <source>the fractions add up to {sum_g} g, the sample is {sample_g} g; the balance explains only {explained_g} g: weigh them again, or correct the sample&apos;s mass</source>
        <translation>les fractions font {sum_g} g, l’échantillon {sample_g} g&#xa0;; la balance n’explique que {explained_g} g&#xa0;: repesez-les, ou corrigez la masse de l’échantillon</translation>
    </message>
    <message>
        <source>the tare of {tare_g} g is above the gross mass of {gross_g} g; weigh the empty pan again, or swap the two</source>
        <translation>la tare de {tare_g} g dépasse la masse brute de {gross_g} g&#xa0;; repesez le récipient vide, ou échangez les deux</translation>
    </message>
    <message>
        <source>there are more than {limit} rows; write one row for each sieve and one for the pan</source>
        <translation>il y a plus de {limit} lignes&#xa0;; écrivez une ligne par tamis et une pour le fond</translation>
    </message>
    <message>
        <source>{washed_g} g after washing is more than the {dry_g} g before it; dry and weigh it again, or swap the two</source>
        <translation>{washed_g} g après lavage dépasse les {dry_g} g d’avant&#xa0;; séchez et repesez, ou échangez les deux</translation>
    </message>
    <message>
        <source>the mass after washing needs the dry mass before washing; give it too</source>
        <translation>la masse après lavage demande la masse sèche avant lavage&#xa0;; donnez-la aussi</translation>
    </message>
    <message>
        <source>at {aperture_mm} mm the tests run from {least_percent} to {most_percent} % passing; careful repeats stay within {limit_points} points nineteen times of twenty: the samples differ, mix the bag well and sieve another</source>
        <translation>à {aperture_mm} mm les essais vont de {least_percent} à {most_percent}&#xa0;% passant&#xa0;; des répétitions soignées restent à {limit_points} points dix-neuf fois sur vingt&#xa0;: les échantillons diffèrent, mélangez bien le sac et tamisez-en un autre</translation>
    </message>
    <message>
        <source>the tests share no range of sieves, so they can&apos;t be pooled; sieve them with the same set</source>
        <translation>les essais n’ont pas de tamis communs et ne peuvent donc pas être réunis&#xa0;; tamisez avec le même jeu</translation>
    </message>
    <message>
        <source>there is no sieve test to pool; give at least one</source>
        <translation>il n’y a pas d’essai de tamisage à réunir&#xa0;; donnez-en au moins un</translation>
    </message>
    <message>
        <source>there is a NUL byte here; choose a text file, this is none</source>
        <translation>il y a un octet NUL ici&#xa0;; choisissez un fichier texte, ceci n’en est pas un</translation>
    </message>
    <message>
        <source>in whole scoops, batches without {grain}: {without} of {batches}; mix them with the others before use, or take a smaller scoop or a larger tub</source>
        <translation>en mesures entières, {grain} manque dans {without} gâchées sur {batches}&#xa0;; mélangez-les aux autres avant l’emploi, ou prenez une mesure plus petite ou une auge plus grande</translation>
    </message>
    <message>
        <source>the mix {text} is named twice; name it once</source>
        <translation>le mélange {text} est nommé deux fois&#xa0;; nommez-le une fois</translation>
    </message>
    <message>
        <source>{left_l} L are left of {made_l} L made, so nothing was used; correct one of them</source>
        <translation>il reste {left_l} L de {made_l} L préparés, rien n’a donc été utilisé&#xa0;; corrigez l’un des deux</translation>
    </message>
    <message>
        <source>no bag size is known, so bags can&apos;t be counted; {raw_l} L of raw grain are needed: type the litres of a bag</source>
        <translation>aucune taille de sac n’est connue, les sacs ne peuvent donc pas être comptés&#xa0;; {raw_l} L de grain brut sont nécessaires&#xa0;: saisissez les litres d’un sac</translation>
    </message>
    <message>
        <source>neither fill_ml nor a pot says how much mix the tree takes; give one of them</source>
        <translation>ni fill_ml ni un pot ne dit combien de mélange prend l’arbre&#xa0;; donnez l’un des deux</translation>
    </message>
    <message>
        <source>{day} lies outside the tree&apos;s window, {opens} to {closes}; choose a day within it, or go by the buds</source>
        <translation>{day} est hors de la fenêtre de l’arbre, {opens} à {closes}&#xa0;; choisissez un jour dedans, ou fiez-vous aux bourgeons</translation>
    </message>
    <message>
        <source>{reserved_l} L of it are promised to other days, so that {short_l} L are short here; screen or buy them</source>
        <translation>{reserved_l} L en sont promis à d’autres journées, il manque donc ici {short_l} L&#xa0;; criblez-les ou achetez-les</translation>
    </message>
    <message>
        <source>the scoop of {scoop_l} L is larger than the tub of {tub_l} L; take a smaller scoop or a larger tub</source>
        <translation>la mesure de {scoop_l} L est plus grande que l’auge de {tub_l} L&#xa0;; prenez une mesure plus petite ou une auge plus grande</translation>
    </message>
    <message>
        <source>{short_l} L of ready grain are short; screen or buy {raw_l} L of raw grain</source>
        <translation>il manque {short_l} L de grain prêt&#xa0;; criblez ou achetez {raw_l} L de grain brut</translation>
    </message>
    <message>
        <source>how much of it is left is not known; enough was assumed: count it</source>
        <translation>ce qu’il en reste n’est pas connu&#xa0;; il a été supposé suffisant&#xa0;: comptez-le</translation>
    </message>
    <message>
        <source>the tree {text} stands twice in the day; take it out once</source>
        <translation>l’arbre {text} est deux fois sur la journée&#xa0;; ôtez-le une fois</translation>
    </message>
    <message>
        <source>the day has no mix called {text}; look at its spelling, or add it</source>
        <translation>la journée n’a pas de mélange appelé {text}&#xa0;; vérifiez l’orthographe, ou ajoutez-le</translation>
    </message>
    <message>
        <source>the day has no pot called {text}; look at its spelling, or add it</source>
        <translation>la journée n’a pas de pot appelé {text}&#xa0;; vérifiez l’orthographe, ou ajoutez-le</translation>
    </message>
    <message>
        <source>version {version} can&apos;t be; expected 1 or more</source>
        <translation>la version {version} est impossible&#xa0;; attendu 1 ou plus</translation>
    </message>
    <message>
        <source>the limits run from {low} down to {high}; write the lower one first</source>
        <translation>les limites vont de {low} en descendant à {high}&#xa0;; écrivez d’abord la plus petite</translation>
    </message>
    <message>
        <source>{value} is no whole number; write one without decimals</source>
        <translation>{value} n’est pas un nombre entier&#xa0;; écrivez-en un sans décimales</translation>
    </message>
    <message>
        <source>the stock of every candidate is 0, so all are excluded; give the stock of one, or leave it out</source>
        <translation>le stock de chaque candidat est de 0, tous sont donc exclus&#xa0;; donnez le stock de l’un d’eux, ou ôtez-le</translation>
    </message>
    <message>
        <source>no recipe of whole parts is within the stock; ask for fewer litres, or add stock</source>
        <translation>aucune recette de parts entières ne tient dans le stock&#xa0;; demandez moins de litres, ou ajoutez du stock</translation>
    </message>
    <message>
        <source>no candidate was tested at {aperture_mm} mm, and the curves are not extrapolated; sieve one of them there</source>
        <translation>aucun candidat n’a été testé à {aperture_mm} mm, et les courbes ne sont pas extrapolées&#xa0;; tamisez-en un à cette ouverture</translation>
    </message>
    <message>
        <source>has no grain density, so the litres it takes are not known; recipes with it count as beyond the stock: measure its grain density</source>
        <translation>n’a pas de densité des grains, les litres qu’il prend ne sont donc pas connus&#xa0;; les recettes avec lui comptent comme au-delà du stock&#xa0;: mesurez sa densité de grain</translation>
    </message>
    <message>
        <source>there are {count} candidates; leave some out, at most {most} are searched</source>
        <translation>il y a {count} candidats&#xa0;; ôtez-en, au plus {most} sont examinés</translation>
    </message>
    <message>
        <source>there are {count} wishes; leave some out, at most {most} are weighed</source>
        <translation>il y a {count} souhaits&#xa0;; ôtez-en, au plus {most} sont pesés</translation>
    </message>
    <message>
        <source>there is no pot called {pot} among the pots; look at its spelling, or add it</source>
        <translation>il n’y a pas de pot appelé {pot} parmi les pots&#xa0;; vérifiez l’orthographe, ou ajoutez-le</translation>
    </message>
    <message>
        <source>no candidate has the name or family {name}; look at its spelling, or add one</source>
        <translation>aucun candidat n’a le nom ou la famille {name}&#xa0;; vérifiez l’orthographe, ou ajoutez-en un</translation>
    </message>
    <message>
        <source>wish number {wish} cannot hold: every candidate lies beyond its limits on the same side, and so does every mix of them; loosen it, or add another candidate</source>
        <translation>le souhait numéro {wish} ne peut tenir&#xa0;: chaque candidat dépasse ses limites du même côté, et ainsi tout mélange d’entre eux&#xa0;; assouplissez-le, ou ajoutez un candidat</translation>
    </message>
    <message>
        <source>the {kind} {id} stands twice in this file; give one of them another number, or take it out</source>
        <translation>{kind} {id} est deux fois dans ce fichier&#xa0;; donnez un autre numéro à l’un des deux, ou ôtez-le</translation>
    </message>
    <message>
        <source>a name is missing here; type one</source>
        <translation>il manque un nom ici&#xa0;; saisissez-en un</translation>
    </message>
    <message>
        <source>the root-mass plan is empty; fill it in, or leave it out</source>
        <translation>le plan de motte est vide&#xa0;; remplissez-le, ou ôtez-le</translation>
    </message>
    <message>
        <source>{number} is no whole number; write one without decimals</source>
        <translation>{number} n’est pas un nombre entier&#xa0;; écrivez-en un sans décimales</translation>
    </message>
    <message>
        <source>{text} is no kind of record; look at its spelling, expected the like of bag, mix or tree</source>
        <translation>{text} n’est pas un genre d’enregistrement&#xa0;; vérifiez l’orthographe, attendu par exemple bag, mix ou tree</translation>
    </message>
    <message>
        <source>the tree {text} stands twice on this day; take it off once</source>
        <translation>l’arbre {text} est deux fois sur cette journée&#xa0;; ôtez-le une fois</translation>
    </message>
    <message>
        <source>acid lovers bear one of base, sides or surface at a repotting; this plan works more than one: leave the others for another year</source>
        <translation>les plantes acidophiles supportent au rempotage l’un de fond, côtés ou surface&#xa0;; ce plan en travaille plus d’un&#xa0;: laissez les autres pour une autre année</translation>
    </message>
    <message>
        <source>the tree was bare-rooted last time, which it does not bear at every repotting; keep a core this time</source>
        <translation>l’arbre a été mis à racines nues la dernière fois, ce qu’il ne supporte pas à chaque rempotage&#xa0;; gardez un noyau cette fois</translation>
    </message>
    <message>
        <source>{clearance_cm} cm of new mix there leave no room; the pot allows less than {limit_cm} cm</source>
        <translation>{clearance_cm} cm de mélange neuf à cet endroit ne laissent pas de place&#xa0;; le pot permet moins de {limit_cm} cm</translation>
    </message>
    <message>
        <source>combing {depth_cm} cm deep goes past the middle; comb at most half of it, {limit_cm} cm</source>
        <translation>peigner sur {depth_cm} cm dépasse le milieu&#xa0;; peignez au plus la moitié de la motte, {limit_cm} cm</translation>
    </message>
    <message>
        <source>the direction {direction} stands twice; take one out</source>
        <translation>la direction {direction} est là deux fois&#xa0;; ôtez-en une</translation>
    </message>
    <message>
        <source>only a rounded root mass has an exponent; leave it out</source>
        <translation>seule une motte arrondie a un exposant&#xa0;; ôtez-le</translation>
    </message>
    <message>
        <source>the old face {face} stands twice; take one out</source>
        <translation>l’ancienne face {face} est là deux fois&#xa0;; ôtez-en une</translation>
    </message>
    <message>
        <source>it would fit, but more would come off, or less stay untouched, than the group bears; take a larger pot</source>
        <translation>cela tiendrait, mais plus serait ôté, ou moins resterait intact, que le groupe ne supporte&#xa0;; prenez un pot plus grand</translation>
    </message>
    <message>
        <source>between the lowest level {lowest_cm} cm and the fill line {highest_cm} cm is no room for a root mass; make the bottom layer or the new mix below thinner, or fill higher</source>
        <translation>entre le niveau le plus bas {lowest_cm} cm et le niveau de remplissage {highest_cm} cm il n’y a pas de place pour une motte&#xa0;; amincissez la couche de drainage ou le mélange neuf dessous, ou remplissez plus haut</translation>
    </message>
    <message>
        <source>{percent} % comes off; the group bears {limit_percent} %: take less off, or take a larger pot</source>
        <translation>{percent}&#xa0;% est ôté&#xa0;; le groupe supporte {limit_percent}&#xa0;%&#xa0;: ôtez moins, ou prenez un pot plus grand</translation>
    </message>
    <message>
        <source>{percent} % comes off; more than 70 % is never advised: take less off, or take a larger pot</source>
        <translation>{percent}&#xa0;% est ôté&#xa0;; plus de 70&#xa0;% n’est jamais conseillé&#xa0;: ôtez moins, ou prenez un pot plus grand</translation>
    </message>
    <message>
        <source>the least tip {angle_deg} degrees is above the tip {tip_deg} degrees; make it smaller</source>
        <translation>la moindre bascule {angle_deg} degrés dépasse la bascule {tip_deg} degrés&#xa0;; réduisez-la</translation>
    </message>
    <message>
        <source>{percent} % stays untouched; the group wants {limit_percent} %: cut and comb less, or take a larger pot</source>
        <translation>{percent}&#xa0;% reste intact&#xa0;; le groupe veut {limit_percent}&#xa0;%&#xa0;: coupez et peignez moins, ou prenez un pot plus grand</translation>
    </message>
    <message>
        <source>neither a due day nor a last repotting with an interval says when it is due, so it is not counted; write one of them down</source>
        <translation>ni un jour dû ni un dernier rempotage avec intervalle ne dit quand il est dû, il n’est donc pas compté&#xa0;; notez l’un des deux</translation>
    </message>
    <message>
        <source>a count needs what was found; type it, 0 if nothing is left</source>
        <translation>un comptage demande ce qui a été trouvé&#xa0;; saisissez-le, 0 s’il ne reste rien</translation>
    </message>
    <message>
        <source>litres need the litre weight they were turned into grams with; give it too</source>
        <translation>des litres demandent le poids du litre qui les a changés en grammes&#xa0;; donnez-le aussi</translation>
    </message>
    <message>
        <source>litres of {id} can&apos;t be turned into grams: its litre weight is not known; weigh it, or measure its litre weight</source>
        <translation>les litres de {id} ne peuvent pas devenir des grammes&#xa0;: son poids du litre n’est pas connu&#xa0;; pesez-le, ou mesurez son poids du litre</translation>
    </message>
    <message>
        <source>{change_g} g does not suit the reason; write what goes away as negative, what comes as positive</source>
        <translation>{change_g} g ne va pas avec la raison&#xa0;; écrivez en négatif ce qui part, en positif ce qui arrive</translation>
    </message>
    <message>
        <source>{text} stands behind {before}; write the repottings from the oldest to the newest</source>
        <translation>{text} vient après {before}&#xa0;; écrivez les rempotages du plus ancien au plus récent</translation>
    </message>
    <message>
        <source>box {box} of the untouched part ends before it begins; swap its ends</source>
        <translation>la boîte {box} de la partie intacte finit avant de commencer&#xa0;; échangez ses bouts</translation>
    </message>
    <message>
        <source>the boxes have {count} numbers; write six for each</source>
        <translation>les boîtes ont {count} nombres&#xa0;; écrivez-en six pour chacune</translation>
    </message>
    <message>
        <source>the clock of this machine stands before the last entry ({time}); set it right, entries keep their order all the same</source>
        <translation>l’horloge de cette machine est avant la dernière entrée ({time})&#xa0;; mettez-la à l’heure, les entrées gardent leur ordre malgré tout</translation>
    </message>
    <message>
        <source>there is no {kind} {id}; look at its number</source>
        <translation>il n’y a pas de {kind} {id}&#xa0;; vérifiez le numéro</translation>
    </message>
    <message>
        <source>the file or its folder can&apos;t be written to; the record is open for reading only: save a copy of it to write in</source>
        <translation>le fichier ou son dossier ne peut pas être écrit&#xa0;; le registre est ouvert en lecture seule&#xa0;: enregistrez-en une copie pour y écrire</translation>
    </message>
    <message>
        <source>another window was quicker; the last step is now: {label}. Look at it, and undo again if you mean that</source>
        <translation>une autre fenêtre a été plus rapide&#xa0;; la dernière étape est maintenant&#xa0;: {label}. Regardez-la, et annulez à nouveau si c’est bien elle</translation>
    </message>
    <message>
        <source>Cut straight across the corners, {share} of the root mass: {where}</source>
        <translation>Coupez droit en travers des coins, {share} de la motte&#xa0;: {where}</translation>
    </message>
    <message>
        <source>{tree} {reason}</source>
        <translation>{tree} {reason}</translation>
    </message>
    <message>
        <source>tree {tree} has no root-mass plan that can be worked out; plan its root mass first</source>
        <translation>l’arbre {tree} n’a pas de plan de motte calculable&#xa0;; planifiez d’abord sa motte</translation>
    </message>
    <message>
        <source>tree {tree} has no plan {text}; its root-mass plan has {plans}</source>
        <translation>l’arbre {tree} n’a pas de plan {text}&#xa0;; son plan de motte a {plans}</translation>
    </message>
    <message>
        <source>tree {tree} can&apos;t be corrected: its repotting of that day is no longer in its history; take its tick back and tick it again</source>
        <translation>l’arbre {tree} ne peut pas être corrigé&#xa0;: son rempotage de ce jour n’est plus dans son histoire&#xa0;; retirez sa coche et cochez-le de nouveau</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>; </source>
        <translation>&#xa0;; </translation>
    </message>
    <message>
        <source>: </source>
        <translation>&#xa0;: </translation>
    </message>
    <message>
        <source>height over the floor of the pot up to which the pores stay nine tenths full</source>
        <translation>hauteur au-dessus du fond du pot jusqu’à laquelle les pores restent pleins aux neuf dixièmes</translation>
    </message>
    <message>
        <source>the k that holds the water measured; the water in the grains is known</source>
        <translation>le k qui retient l’eau mesurée&#xa0;; l’eau dans les grains est connue</translation>
    </message>
    <message>
        <source>least (water held - measured)^2/0.02^2 + (ln(k/k0)/0.24)^2 + ((w - w0)/0.15)^2 over k and w</source>
        <translation>moindre (eau retenue - mesuré)^2/0,02^2 + (ln(k/k0)/0,24)^2 + ((w - w0)/0,15)^2 sur k et w</translation>
    </message>
    <message>
        <source>k and w that hold the water measured at two depths</source>
        <translation>k et w qui retiennent l’eau mesurée à deux profondeurs</translation>
    </message>
    <message>
        <source>wet mix + kept root mass + tree + pot + layers; wet mix = fill x (litre weight + 1000 g/L x water held)</source>
        <translation>mélange mouillé + motte gardée + arbre + pot + couches&#xa0;; mélange mouillé = remplissage x (poids du litre + 1000 g/L x eau retenue)</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>plan</translation>
    </message>
    <message>
        <source>buds</source>
        <translation>bourgeons</translation>
    </message>
    <message>
        <source>helper</source>
        <translation>aide</translation>
    </message>
    <message>
        <source>pour</source>
        <translation>verser</translation>
    </message>
    <message>
        <source>scoops</source>
        <translation>mesures</translation>
    </message>
    <message>
        <source>layers</source>
        <translation>couches</translation>
    </message>
    <message>
        <source>done: plan, litres, note</source>
        <translation>fait&#xa0;: plan, litres, note</translation>
    </message>
    <message>
        <source>grain</source>
        <translation>grain</translation>
    </message>
    <message>
        <source>quarts</source>
        <translation>quarts</translation>
    </message>
    <message>
        <source>in the pots</source>
        <translation>dans les pots</translation>
    </message>
    <message>
        <source>to mix</source>
        <translation>à mélanger</translation>
    </message>
    <message>
        <source>batches</source>
        <translation>gâchées</translation>
    </message>
    <message>
        <source>made</source>
        <translation>préparé</translation>
    </message>
    <message>
        <source>left over</source>
        <translation>reste</translation>
    </message>
    <message>
        <source>to have ready</source>
        <translation>à tenir prêt</translation>
    </message>
    <message>
        <source>for</source>
        <translation>pour</translation>
    </message>
    <message>
        <source>raw</source>
        <translation>brut</translation>
    </message>
    <message>
        <source>usable</source>
        <translation>utilisable</translation>
    </message>
    <message>
        <source>short of</source>
        <translation>manque</translation>
    </message>
    <message>
        <source>one bag</source>
        <translation>un sac</translation>
    </message>
    <message>
        <source>buy</source>
        <translation>acheter</translation>
    </message>
    <message>
        <source>from</source>
        <translation>de</translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>wants</source>
        <translation>veut</translation>
    </message>
    <message>
        <source>gets</source>
        <translation>obtient</translation>
    </message>
    <message>
        <source>full and wet</source>
        <translation>plein et mouillé</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masse</translation>
    </message>
    <message>
        <source>sum of weight (points missed)^2 over the wishes that need not hold; points: percent of the mass, 100 x shares, 20 g/L, 5 meq/L, 5 % of a price limit; limits and gradings by root mean square over their openings</source>
        <translation>somme de poids x (points manqués)^2 sur les souhaits non obligatoires&#xa0;; points&#xa0;: pour cent de la masse, 100 x parts, 20 g/L, 5 meq/L, 5&#xa0;% d’une limite de prix&#xa0;; limites et granulométries par moyenne quadratique sur leurs ouvertures</translation>
    </message>
    <message>
        <source>examined + excluded = all recipes; a recipe is excluded only if a lower bound of its score, or a wish that must hold, puts it behind the list</source>
        <translation>examinées + exclues = toutes les recettes&#xa0;; une recette n’est exclue que si une borne basse de sa note, ou un souhait obligatoire, la met derrière la liste</translation>
    </message>
    <message>
        <source>no mix of this grading keeps the measured {capacity_percent} % of water; look at the masses, the volume and the grading</source>
        <translation>aucun mélange de cette granulométrie ne retient les {capacity_percent}&#xa0;% d’eau mesurés&#xa0;; vérifiez les masses, le volume et la granulométrie</translation>
    </message>
    <message>
        <source>the two depths contradict each other more than tests of one mix do, so both were weighed against the usual values; repeat one of the tests</source>
        <translation>les deux profondeurs se contredisent plus que ne le font des essais d’un même mélange, elles ont donc été pondérées avec les valeurs usuelles&#xa0;; refaites l’un des essais</translation>
    </message>
    <message>
        <source>the fineness modulus reads {aperture_mm} mm off the curve, that sieve was not used; a sieve of {aperture_mm} mm would give it</source>
        <translation>le module de finesse lit {aperture_mm} mm sur la courbe, ce tamis n’a pas été utilisé&#xa0;; un tamis de {aperture_mm} mm donnerait la valeur</translation>
    </message>
    <message>
        <source>the fineness modulus is not defined: {percent} % is finer than the finest sieve, {finest_mm} mm, and it asks for {aperture_mm} mm; a sieve of {aperture_mm} mm would give it</source>
        <translation>le module de finesse n’est pas défini&#xa0;: {percent}&#xa0;% est plus fin que le tamis le plus fin, {finest_mm} mm, et il demande {aperture_mm} mm&#xa0;; un tamis de {aperture_mm} mm le donnerait</translation>
    </message>
    <message>
        <source>{percent} % stayed on the coarsest sieve, {aperture_mm} mm; the fineness modulus counts none of it on coarser ones; a coarser sieve would tell</source>
        <translation>{percent}&#xa0;% est resté sur le tamis le plus gros, {aperture_mm} mm&#xa0;; le module de finesse n’en compte rien sur de plus gros&#xa0;; un tamis plus gros le dirait</translation>
    </message>
    <message>
        <source>a laboratory figure without a value needs a size outside the sieves used; sieve with a wider set</source>
        <translation>un chiffre de laboratoire sans valeur demande une taille hors des tamis utilisés&#xa0;; tamisez avec un jeu plus étendu</translation>
    </message>
    <message>
        <source>by {count} of your pot tests</source>
        <translation>d’après {count} de vos essais en pot</translation>
    </message>
    <message>
        <source>air and water are by {count} of your own pot tests of mix {mix}, the last is {test}</source>
        <translation>air et eau d’après {count} de vos essais en pot du mélange {mix}, le dernier est {test}</translation>
    </message>
    <message>
        <source>by {count} of your pot tests ({dates})</source>
        <translation>d’après {count} de vos essais en pot ({dates})</translation>
    </message>
    <message>
        <source>the exchange capacity of a component is not known, so the mix&apos;s is not either; give it if you need it</source>
        <translation>la capacité d’échange d’un composant n’est pas connue, celle du mélange ne l’est donc pas non plus&#xa0;; donnez-la si vous en avez besoin</translation>
    </message>
    <message>
        <source>the solid density is not known: total porosity counts only the pores that take up water; give the solid density for all of them</source>
        <translation>la densité du solide n’est pas connue&#xa0;: la porosité totale ne compte que les pores qui prennent l’eau&#xa0;; donnez la densité du solide pour les compter tous</translation>
    </message>
    <message>
        <source>{percent} % is finer than {aperture_mm} mm and taken as grain of {size_mm} mm; a finer sieve would tell</source>
        <translation>{percent}&#xa0;% est plus fin que {aperture_mm} mm et pris pour du grain de {size_mm} mm&#xa0;; un tamis plus fin le dirait</translation>
    </message>
    <message>
        <source>this mix has no pot test of its own: air and water lean by {percent} % on pot tests {tests} of mixes {mixes} with {materials}</source>
        <translation>ce mélange n’a pas d’essai en pot à lui&#xa0;: air et eau s’appuient à {percent}&#xa0;% sur les essais {tests} des mélanges {mixes} avec {materials}</translation>
    </message>
    <message>
        <source>{percent} % is coarser than {aperture_mm} mm and taken to end at {top_mm} mm; a coarser sieve would tell</source>
        <translation>{percent}&#xa0;% est plus gros que {aperture_mm} mm et pris pour finir à {top_mm} mm&#xa0;; un tamis plus gros le dirait</translation>
    </message>
    <message>
        <source>figures that were not given are typical values of the catalogue; measure your own to be sure</source>
        <translation>les chiffres non donnés sont des valeurs usuelles du catalogue&#xa0;; mesurez les vôtres pour plus de sûreté</translation>
    </message>
    <message>
        <source>litres are taken in proportion to mass; screened grain lies looser, so they come out a little low; weigh a litre and measure the grain density</source>
        <translation>les litres sont pris en proportion de la masse&#xa0;; le grain criblé est plus lâche, ils sont donc un peu bas&#xa0;; pesez un litre et mesurez la densité des grains</translation>
    </message>
    <message>
        <source>what the screening keeps is {percent} % wanted grain, {finer_percent} % finer</source>
        <translation>ce que garde le criblage est à {percent}&#xa0;% du grain voulu, à {finer_percent}&#xa0;% plus fin</translation>
    </message>
    <message>
        <source>the bottom layer&apos;s grain is not known, so the water is computed as if the mix reached the floor; name its grain</source>
        <translation>le grain de la couche de drainage n’est pas connu, l’eau est donc calculée comme si le mélange allait jusqu’au fond&#xa0;; nommez ce grain</translation>
    </message>
    <message>
        <source>100 x mass that stayed on / base</source>
        <translation>100 x masse retenue / base</translation>
    </message>
    <message>
        <source>100 (1 - cumulative mass that stayed on / base); cumulative masses are divided, rounded shares never added</source>
        <translation>100 (1 - masse retenue cumulée / base)&#xa0;; les masses cumulées sont divisées, jamais des parts arrondies ajoutées</translation>
    </message>
    <message>
        <source>wanted grain</source>
        <translation>grain voulu</translation>
    </message>
    <message>
        <source>passing at the coarse end of the wanted grain - passing at its fine end, by mass</source>
        <translation>passant au bout grossier du grain voulu - passant à son bout fin, en masse</translation>
    </message>
    <message>
        <source>passing at the fine end of the wanted grain, by mass</source>
        <translation>passant au bout fin du grain voulu, en masse</translation>
    </message>
    <message>
        <source>wanted grain, its ends at the sieves of the test</source>
        <translation>grain voulu, ses bouts aux tamis de l’essai</translation>
    </message>
    <message>
        <source>passing at the fine end of the wanted grain less what was lost, by mass</source>
        <translation>passant au bout fin du grain voulu, moins les pertes, en masse</translation>
    </message>
    <message>
        <source>1 - passing at the coarse end of the wanted grain, by mass</source>
        <translation>1 - passant au bout grossier du grain voulu, en masse</translation>
    </message>
    <message>
        <source>sum of cumulative percent that stayed on 0.150, 0.300, 0.600, 1.18, 2.36, 4.75, 9.5, 19.0, 37.5, 75, 150 mm / 100</source>
        <translation>somme des refus cumulés en pour cent sur 0,150, 0,300, 0,600, 1,18, 2,36, 4,75, 9,5, 19,0, 37,5, 75, 150 mm / 100</translation>
    </message>
    <message>
        <source>a rectangle with soft corners needs its exponent (2 is an ellipse, 4 a rectangle with soft corners)</source>
        <translation>un rectangle à coins doux demande son exposant (2 est une ellipse, 4 un rectangle à coins doux)</translation>
    </message>
    <message>
        <source>a rounding of {radius_cm} cm at the floor leaves no floor; at most {limit_cm} cm fits here</source>
        <translation>un arrondi de {radius_cm} cm au fond ne laisse pas de fond&#xa0;; au plus {limit_cm} cm conviennent ici</translation>
    </message>
    <message>
        <source>this shape has no edge between floor and wall to round; leave the rounding out, a bowl and a table of areas already hold the curve</source>
        <translation>cette forme n’a pas d’arête entre fond et paroi à arrondir&#xa0;; ôtez l’arrondi, une coupe et un tableau d’aires contiennent déjà la courbe</translation>
    </message>
    <message>
        <source>the file is damaged; restore the newest intact backup: what was written after it is only in the damaged file, which is kept</source>
        <translation>le fichier est abîmé&#xa0;; restaurez la plus récente sauvegarde intacte&#xa0;: ce qui a été écrit après n’est que dans le fichier abîmé, qui est conservé</translation>
    </message>
    <message>
        <source>the file is not there; look at its name</source>
        <translation>le fichier n’est pas là&#xa0;; vérifiez son nom</translation>
    </message>
    <message>
        <source>the file can&apos;t be read; look whose it is, and whether it is a file</source>
        <translation>le fichier ne peut pas être lu&#xa0;; voyez à qui il est, et si c’est bien un fichier</translation>
    </message>
    <message>
        <source>the reference materials were not found; install Gritwright again, or set GRITWRIGHT_DATA to the folder that holds materials/</source>
        <translation>les matériaux de référence n’ont pas été trouvés&#xa0;; réinstallez Gritwright, ou donnez à GRITWRIGHT_DATA le dossier qui contient materials/</translation>
    </message>
    <message>
        <source>passing ran from {low_percent} to {high_percent} % and was rescaled to 0-100 %; look whether the curve was read off rightly</source>
        <translation>le passant allait de {low_percent} à {high_percent}&#xa0;% et a été ramené à 0-100&#xa0;%&#xa0;; vérifiez que la courbe a été bien lue</translation>
    </message>
    <message>
        <source>what follows is not JSON; mend it, or save the file again ({text})</source>
        <translation>la suite n’est pas du JSON&#xa0;; corrigez-la, ou enregistrez à nouveau le fichier ({text})</translation>
    </message>
    <message>
        <source>litre weight and grain density are not both known: litres rest on a packing density of {packing_density} for one size of grain; weigh a litre and measure the grain density for litres of this bag</source>
        <translation>le poids du litre et la densité des grains ne sont pas connus tous deux&#xa0;: les litres reposent sur une compacité de {packing_density} pour un grain d’une taille&#xa0;; pesez un litre et mesurez la densité des grains pour avoir les litres de ce sac</translation>
    </message>
    <message>
        <source>no starting mass was given, so the percentages are of the {mass_g} g recovered and a loss would not show; weigh the sample before sieving</source>
        <translation>aucune masse de départ n’a été donnée, les pourcentages se rapportent donc aux {mass_g} g récupérés et une perte ne se verrait pas&#xa0;; pesez l’échantillon avant le tamisage</translation>
    </message>
    <message>
        <source>measured in litres: shares of loose volume stand for shares of mass, as if every fraction lay equally dense; weigh the fractions to be sure</source>
        <translation>mesuré en litres&#xa0;: les parts de volume en vrac tiennent lieu de parts de masse, comme si chaque fraction était également dense&#xa0;; pesez les fractions pour plus de sûreté</translation>
    </message>
    <message>
        <source>the fractions outweigh the sample by {percent} %, no more than the balance&apos;s resolution explains; nothing needs doing</source>
        <translation>les fractions pèsent {percent}&#xa0;% de plus que l’échantillon, pas plus que n’explique la résolution de la balance&#xa0;; il n’y a rien à faire</translation>
    </message>
    <message>
        <source>{percent} % of the sample was lost while sieving; look under the sieves, or weigh the sample again: above 0.3 % a laboratory repeats the test</source>
        <translation>{percent}&#xa0;% de l’échantillon a été perdu au tamisage&#xa0;; regardez sous les tamis, ou repesez l’échantillon&#xa0;: au-dessus de 0.3&#xa0;% un laboratoire refait l’essai</translation>
    </message>
    <message>
        <source>not defined: {list}; {percent} % passes the coarsest sieve, {aperture_mm} mm; a coarser sieve would define them</source>
        <translation>non défini&#xa0;: {list}&#xa0;; {percent}&#xa0;% passe le tamis le plus gros, {aperture_mm} mm&#xa0;; un tamis plus gros les définirait</translation>
    </message>
    <message>
        <source>not defined: {list}; {percent} % is finer than the finest sieve, {aperture_mm} mm; a finer sieve would define them</source>
        <translation>non défini&#xa0;: {list}&#xa0;; {percent}&#xa0;% est plus fin que le tamis le plus fin, {aperture_mm} mm&#xa0;; un tamis plus fin les définirait</translation>
    </message>
    <message>
        <source>{mass_g} g is a small sample for grain of {size_mm} mm if it is stone; take {least_g} g or more, or type the grain density if it is lighter</source>
        <translation>{mass_g} g est un petit échantillon pour un grain de {size_mm} mm si c’est de la pierre&#xa0;; prenez {least_g} g ou plus, ou saisissez la densité des grains s’il est plus léger</translation>
    </message>
    <message>
        <source>{percent} % stayed on the coarsest sieve, {aperture_mm} mm, and is taken to end at {top_mm} mm; a coarser sieve would tell</source>
        <translation>{percent}&#xa0;% est resté sur le tamis le plus gros, {aperture_mm} mm, et est pris pour finir à {top_mm} mm&#xa0;; un tamis plus gros le dirait</translation>
    </message>
    <message>
        <source>(1 - voids between grains) x mean porosity of the grains, 1 - grain density/solid density</source>
        <translation>(1 - vides entre les grains) x porosité moyenne des grains, 1 - densité des grains/densité du solide</translation>
    </message>
    <message>
        <source>sum over components of mass share x exchange capacity in meq/100 g x 10 x litre weight in kg/L</source>
        <translation>somme sur les composants de part de masse x capacité d’échange en meq/100 g x 10 x poids du litre en kg/L</translation>
    </message>
    <message>
        <source>litre weight</source>
        <translation>poids du litre</translation>
    </message>
    <message>
        <source>the packing density all classes of a component share for which the model gives back the component&apos;s own phi = dry litre weight / grain density: V = min over i of (1/phi - G_i)/(1 - F_i - G_i), beta = 1/V</source>
        <translation>la compacité que partagent toutes les classes d’un composant et pour laquelle le modèle redonne son propre phi = poids du litre sec / densité des grains&#xa0;: V = minimum sur i de (1/phi - G_i)/(1 - F_i - G_i), beta = 1/V</translation>
    </message>
    <message>
        <source>V = sum E/phi of the parts taken as litres, E = loose litres x dry litre weight / grain density</source>
        <translation>V = somme E/phi des parts prises en litres, E = litres en vrac x poids du litre sec / densité des grains</translation>
    </message>
    <message>
        <source>sum m / sum (m / solid density)</source>
        <translation>somme m / somme (m / densité du solide)</translation>
    </message>
    <message>
        <source>height of the fill line over the floor: depth - fill line below rim</source>
        <translation>hauteur du niveau au-dessus du fond&#xa0;: profondeur - niveau sous le bord</translation>
    </message>
    <message>
        <source>theta(0) - water held: the share that drains</source>
        <translation>theta(0) - eau retenue&#xa0;: la part qui s’égoutte</translation>
    </message>
    <message>
        <source>water held</source>
        <translation>eau retenue</translation>
    </message>
    <message>
        <source>all open voids, between and in grains, - water held</source>
        <translation>tous les vides ouverts, entre et dans les grains, - eau retenue</translation>
    </message>
    <message>
        <source>water held - theta(50)</source>
        <translation>eau retenue - theta(50)</translation>
    </message>
    <message>
        <source>volume of the mix x (litre weight + 1000 g/L x water held)</source>
        <translation>volume du mélange x (poids du litre + 1000 g/L x eau retenue)</translation>
    </message>
    <message>
        <source>the crumble test&apos;s figures can&apos;t be (breakages 0 or more; modulus and rounds in a season above 0); make the test again</source>
        <translation>les chiffres de l’essai d’effritement sont impossibles (bris 0 ou plus&#xa0;; module et cycles par saison supérieurs à 0)&#xa0;; refaites l’essai</translation>
    </message>
    <message>
        <source>the mix was removed after the day was planned; the day keeps it as it was then, until another is chosen at its trees</source>
        <translation>le mélange a été retiré après la préparation de la journée&#xa0;; la journée le garde tel qu’il était, jusqu’à ce qu’un autre soit choisi pour ses arbres</translation>
    </message>
    <message>
        <source>the mix was changed after the day was planned; the day keeps version {version}, the newest is {newest}: choose it at its trees to take that</source>
        <translation>le mélange a été changé après la préparation de la journée&#xa0;; la journée garde la version {version}, la plus récente est {newest}&#xa0;: choisissez-la pour ses arbres si vous la voulez</translation>
    </message>
    <message>
        <source>a bag of {bag_l} L was assumed, as is usual for the material; type the litres of a bag</source>
        <translation>un sac de {bag_l} L a été supposé, comme il est usuel pour ce matériau&#xa0;; saisissez les litres d’un sac</translation>
    </message>
    <message>
        <source>no yield was measured, so {percent} % usable was assumed; sieve the bag</source>
        <translation>aucun rendement n’a été mesuré, {percent}&#xa0;% utilisable a donc été supposé&#xa0;; tamisez le sac</translation>
    </message>
    <message>
        <source>without a root-mass plan all the pot holds was counted, {volume_l} L; plan the root mass, or type the litres</source>
        <translation>sans plan de motte, tout ce que contient le pot a été compté, {volume_l} L&#xa0;; planifiez la motte, ou saisissez les litres</translation>
    </message>
    <message>
        <source>the search for wishes that exclude each other was stopped after {seconds} s; those shown do, there may be more</source>
        <translation>la recherche de souhaits qui s’excluent a été arrêtée après {seconds} s&#xa0;; ceux montrés s’excluent, il peut y en avoir d’autres</translation>
    </message>
    <message>
        <source>only wishes about grading and shares were looked through for such that exclude each other, three at a time; wishes about air, water or price may do so too</source>
        <translation>seuls les souhaits de granulométrie et de parts ont été examinés pour voir s’ils s’excluent, trois à la fois&#xa0;; des souhaits d’air, d’eau ou de prix peuvent s’exclure aussi</translation>
    </message>
    <message>
        <source>free shares are improved from fixed starts, so a better recipe may exist; search in whole parts for a proof</source>
        <translation>les parts libres sont améliorées à partir de départs fixes, une meilleure recette peut donc exister&#xa0;; cherchez en parts entières pour une preuve</translation>
    </message>
    <message>
        <source>there are {recipes} recipes, too many to try all; the best score may be lower by up to {gap}: allow fewer components or parts for a proof</source>
        <translation>il y a {recipes} recettes, trop pour les essayer toutes&#xa0;; la meilleure note peut être plus basse de {gap} au plus&#xa0;: permettez moins de composants ou de parts pour une preuve</translation>
    </message>
    <message>
        <source>was not tested at {aperture_mm} mm, which a wish reads; its pan or its coarsest class stands in for what is not known: sieve it there</source>
        <translation>n’a pas été testé à {aperture_mm} mm, que lit un souhait&#xa0;; son fond ou sa classe la plus grosse tient lieu de ce qui est inconnu&#xa0;: tamisez-le à cette ouverture</translation>
    </message>
    <message>
        <source>the {kind} {id} can&apos;t be read from the file and was left out; take it in from a backup, or write it anew</source>
        <translation>{kind} {id} n’a pas pu être lu dans le fichier et a été laissé de côté ; reprenez-le d’une sauvegarde, ou récrivez-le</translation>
    </message>
    <message>
        <source>this {kind} was corrected since the file was written; it stays as it is here: look which of the two is right</source>
        <translation>{kind} : corrigé depuis que le fichier a été écrit ; cela reste comme ici : voyez lequel des deux est juste</translation>
    </message>
    <message>
        <source>as many more lines were corrected since and stay as they are here: {count}</source>
        <translation>autant d’autres lignes ont été corrigées depuis et restent comme ici : {count}</translation>
    </message>
    <message>
        <source>there is no material called {name} in the catalogue, so it is taken as your own; nearest there: {nearest}</source>
        <translation>le catalogue n’a pas de matériau nommé {name}, il compte donc comme le vôtre ; le plus proche : {nearest}</translation>
    </message>
    <message>
        <source>comes in as {to}, the next free number: {id} here is another line</source>
        <translation>entre sous {to}, le prochain numéro libre : {id} est ici une autre ligne</translation>
    </message>
    <message>
        <source>as many more lines come in under the next free numbers: {count}</source>
        <translation>autant d’autres lignes entrent sous les prochains numéros libres : {count}</translation>
    </message>
    <message>
        <source>how much room the bare roots take is not known, so the fill is for the whole pot; what is left goes back to stock</source>
        <translation>la place que prennent les racines nues n’est pas connue, le remplissage est donc pour tout le pot&#xa0;; ce qui reste retourne en stock</translation>
    </message>
    <message>
        <source>a corner would have to be rounded off where nothing may come off; take a larger pot, or turn the tree</source>
        <translation>il faudrait arrondir un coin là où rien ne peut être ôté&#xa0;; prenez un pot plus grand, ou tournez l’arbre</translation>
    </message>
    <message>
        <source>to fit, {percent} % would have to come off in all; more than 70 % is never advised, not in stages either: take a larger pot</source>
        <translation>pour tenir, {percent}&#xa0;% devrait être ôté en tout&#xa0;; plus de 70&#xa0;% n’est jamais conseillé, même par étapes&#xa0;: prenez un pot plus grand</translation>
    </message>
    <message>
        <source>nothing is left to fill: root mass, trunk and stones take up all the pot; look at their lengths</source>
        <translation>il ne reste rien à remplir&#xa0;: motte, tronc et pierres prennent tout le pot&#xa0;; vérifiez leurs dimensions</translation>
    </message>
    <message>
        <source>a shoulder would be steeper than 35 degrees between rim and root mass; sink the tree, or take a wider pot</source>
        <translation>un épaulement serait plus raide que 35 degrés entre bord et motte&#xa0;; enfoncez l’arbre, ou prenez un pot plus large</translation>
    </message>
    <message>
        <source>after everything that may be done the root mass still sticks out {excess_cm} cm; take a larger pot</source>
        <translation>après tout ce qui peut être fait, la motte dépasse encore de {excess_cm} cm&#xa0;; prenez un pot plus grand</translation>
    </message>
    <message>
        <source>the wall turns in: roots fill the belly, and later the tree comes out only by cutting; take a pot that opens upward if you can</source>
        <translation>la paroi rentre&#xa0;: les racines remplissent le ventre, et plus tard l’arbre ne sort qu’en coupant&#xa0;; prenez si possible un pot qui s’ouvre vers le haut</translation>
    </message>
    <message>
        <source>no tree is due by {until}; choose a later day to see the next</source>
        <translation>aucun arbre n’est dû d’ici le {until}&#xa0;; choisissez un jour plus tardif pour voir le suivant</translation>
    </message>
    <message>
        <source>the record was changed elsewhere meanwhile; look at it and type yours again</source>
        <translation>le registre a été changé ailleurs entre-temps&#xa0;; regardez-le et refaites votre saisie</translation>
    </message>
    <message>
        <source>the record&apos;s file is damaged; restore the newest intact backup: what was written after it is only in the damaged file, which is kept</source>
        <translation>le fichier du registre est abîmé&#xa0;; restaurez la plus récente sauvegarde intacte&#xa0;: ce qui a été écrit après n’est que dans le fichier abîmé, qui est conservé</translation>
    </message>
    <message>
        <source>{id} may be {text}; write the kind in front, like bag:K-07</source>
        <translation>{id} peut être {text}&#xa0;; écrivez le genre devant, comme bag:K-07</translation>
    </message>
    <message>
        <source>the lists disagree with the {kind} {id} itself, which is whole: draw them anew with gritwright log check --mend, nothing is lost</source>
        <translation>les listes ne s’accordent pas avec {kind} {id}, qui est lui-même intact : refaites-les avec gritwright log check --mend, rien n’est perdu</translation>
    </message>
    <message>
        <source>another window has this record open and saves it in another way ({mode}); close that window and open the record again</source>
        <translation>une autre fenêtre a ouvert ce registre et l’enregistre d’une autre façon ({mode})&#xa0;; fermez cette fenêtre et rouvrez le registre</translation>
    </message>
    <message>
        <source>there is no record yet; write the first line with gritwright log add, or open the window</source>
        <translation>il n’y a pas encore de registre&#xa0;; écrivez la première ligne avec gritwright log add, ou ouvrez la fenêtre</translation>
    </message>
    <message>
        <source>would be refused today: {fault}</source>
        <translation>serait refusé aujourd’hui : {fault}</translation>
    </message>
    <message>
        <source>the {kind} {id} can&apos;t be read from the file; take it in from a backup, or write it anew</source>
        <translation>{kind} {id} ne peut pas être lu dans le fichier ; reprenez-le d’une sauvegarde, ou récrivez-le</translation>
    </message>
    <message>
        <source>the {kind} {id} was changed elsewhere meanwhile; look at it and type yours again</source>
        <translation>{kind} {id} a été changé ailleurs entre-temps&#xa0;; vérifiez et refaites votre saisie</translation>
    </message>
    <message>
        <source>toward</source>
        <translation>vers</translation>
    </message>
    <message>
        <source>sticks out</source>
        <translation>dépasse</translation>
    </message>
    <message>
        <source>untouched</source>
        <translation>intact</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation>ôté</translation>
    </message>
    <message>
        <source>mix in the pot</source>
        <translation>mélange dans le pot</translation>
    </message>
    <message>
        <source>the upper cut stops at</source>
        <translation>la coupe du dessus bute à</translation>
    </message>
    <message>
        <source>then below</source>
        <translation>alors dessous</translation>
    </message>
    <message>
        <source>trunk base</source>
        <translation>base du tronc</translation>
    </message>
    <message>
        <source>{stop} or more</source>
        <translation>{stop} ou plus</translation>
    </message>
    <message>
        <source>{volume_l} L is too little to mix or measure with; expected {least_l} L or more</source>
        <translation>{volume_l} L, c’est trop peu pour mélanger ou mesurer&#xa0;; attendu {least_l} L ou plus</translation>
    </message>
    <message>
        <source>What lies on the shelf is counted by its dry mass and its litre weight, so that a bag can give more or fewer litres than are printed on it.</source>
        <translation>Ce qui est sur l&apos;étagère est compté par sa masse sèche et sa masse au litre ; un sac peut donc donner plus ou moins de litres qu&apos;il n&apos;est imprimé dessus.</translation>
    </message>
    <message>
        <source>one and the same pot is planned for {trees}; choose another for all but one, unless you have several of it</source>
        <translation>un seul et même pot est prévu pour {trees} ; choisissez-en un autre pour tous sauf un, à moins d&apos;en avoir plusieurs</translation>
    </message>
    <message>
        <source>the cut passes {depth_cm} cm under the base of the trunk, which would stand bare; take it from below, or enter how far the old top may be taken</source>
        <translation>la coupe passe {depth_cm} cm sous la base du tronc, qui resterait à nu&#xa0;; prenez par le dessous, ou saisissez jusqu’où l’ancien dessus peut être ôté</translation>
    </message>
    <message>
        <source>new mix for what comes off</source>
        <translation>mélange neuf pour ce qui est ôté</translation>
    </message>
    <message>
        <source>sum over components of share x price of a loose litre / (1 - shrinkage)</source>
        <translation>somme sur les composants de part x prix d’un litre en vrac / (1 - retrait)</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>perdu</translation>
    </message>
    <message>
        <source>dry mass</source>
        <translation>masse sèche</translation>
    </message>
    <message>
        <source>mean porosity of the grains</source>
        <translation>porosité moyenne des grains</translation>
    </message>
    <message>
        <source>water the grains hold</source>
        <translation>eau que les grains retiennent</translation>
    </message>
    <message>
        <source>open voids</source>
        <translation>vides ouverts</translation>
    </message>
    <message>
        <source>volume of the mix</source>
        <translation>volume du mélange</translation>
    </message>
    <message>
        <source>start</source>
        <translation>départ</translation>
    </message>
    <message>
        <source>washed out</source>
        <translation>lavé</translation>
    </message>
    <message>
        <source>the rest</source>
        <translation>le reste</translation>
    </message>
    <message>
        <source>Plitt 1971, the form of the partition curve; s is a setting, no published value for sieving by hand was found</source>
        <translation>Plitt 1971, la forme de la courbe de partage&#xa0;; s est un réglage, aucune valeur publiée pour le tamisage à la main n&apos;a été trouvée</translation>
    </message>
    <message>
        <source>docs/science/packing.md, one class beta for the bag and its fractions</source>
        <translation>docs/science/packing.md, un bêta de classe pour le sac et ses fractions</translation>
    </message>
    <message>
        <source>dry grain</source>
        <translation>grain sec</translation>
    </message>
    <message>
        <source>dry mass = share x dry grain; litres = loose litres per loose litre x dry grain / litre weight</source>
        <translation>masse sèche = part x grain sec&#xa0;; litres = litres en vrac par litre en vrac x grain sec / poids du litre</translation>
    </message>
    <message>
        <source>every pair of openings and every single one; kept: the share between them; usable: what of the bag is kept and wanted; finer in it: what of the kept is finer than wanted; good enough: kept grain within the limits of the verdict</source>
        <translation>chaque paire d&apos;ouvertures et chacune seule&#xa0;; gardé&#xa0;: la part entre elles&#xa0;; utilisable&#xa0;: ce qui du sac est gardé et voulu&#xa0;; plus fin dedans&#xa0;: ce qui du gardé est plus fin que voulu&#xa0;; suffisant&#xa0;: grain gardé dans les limites du verdict</translation>
    </message>
    <message>
        <source>passing at the coarse end of the wanted grain less what was lost, by mass</source>
        <translation>passant au bout grossier du grain voulu moins ce qui a été perdu, en masse</translation>
    </message>
    <message>
        <source>saucer</source>
        <translation>soucoupe</translation>
    </message>
    <message>
        <source>wick</source>
        <translation>mèche</translation>
    </message>
    <message>
        <source>tilt</source>
        <translation>inclinaison</translation>
    </message>
    <message>
        <source>docs/science/water.md; constants by pot tests, or as the mix gives them</source>
        <translation>docs/science/water.md&#xa0;; constantes par essais en pot, ou comme le mélange les donne</translation>
    </message>
    <message>
        <source>flooded</source>
        <translation>inondé</translation>
    </message>
    <message>
        <source>drained</source>
        <translation>égoutté</translation>
    </message>
    <message>
        <source>dry, with the pot</source>
        <translation>sec, avec le pot</translation>
    </message>
    <message>
        <source>empty pot</source>
        <translation>pot vide</translation>
    </message>
    <message>
        <source>poured</source>
        <translation>versé</translation>
    </message>
    <message>
        <source>caught</source>
        <translation>recueilli</translation>
    </message>
    <message>
        <source>water held, measured</source>
        <translation>eau retenue, mesurée</translation>
    </message>
    <message>
        <source>dry mass / volume</source>
        <translation>masse sèche / volume</translation>
    </message>
    <message>
        <source>a grain breaks lambda times a season by Poisson&apos;s law; what breaks off grain that stayed on L is finer than x with the share (x/L)^m; each season the mix is graded, packed and dosed anew, and its air is theta(0) - water held: the middle, 5 and 95 % of the cases drawn</source>
        <translation>un grain se brise lambda fois par saison selon la loi de Poisson&#xa0;; ce qui se détache d’un grain resté sur L est plus fin que x pour la part (x/L)^m&#xa0;; chaque saison, sa granulométrie, son tassement et son dosage sont recalculés, et l’air du mélange est theta(0) - eau retenue&#xa0;: le milieu, 5 et 95 % des cas tirés</translation>
    </message>
    <message>
        <source>docs/science/ageing.md; an estimate</source>
        <translation>docs/science/ageing.md&#xa0;; une estimation</translation>
    </message>
    <message>
        <source>taken not to break</source>
        <translation>supposé ne pas se briser</translation>
    </message>
    <message>
        <source>limit of the hint</source>
        <translation>limite de l’indication</translation>
    </message>
    <message>
        <source>mean of predicted - measured air over the tests, and the root of its mean square; predicted by the usual constants, so that no test foretells itself</source>
        <translation>moyenne de l’air prévu - mesuré sur les essais, et racine de son carré moyen&#xa0;; prévu avec les constantes habituelles, pour qu’aucun essai ne se prédise lui-même</translation>
    </message>
    <message>
        <source>bags before, oldest first</source>
        <translation>sacs précédents, du plus ancien au plus récent</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>moyenne</translation>
    </message>
    <message>
        <source>mean step</source>
        <translation>écart moyen</translation>
    </message>
    <message>
        <source>usual from</source>
        <translation>usuel à partir de</translation>
    </message>
    <message>
        <source>usual to</source>
        <translation>usuel jusqu’à</translation>
    </message>
    <message>
        <source>NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2; docs/science/grading.md</source>
        <translation>NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2&#xa0;; docs/science/grading.md</translation>
    </message>
    <message>
        <source>air of the material alone, straight walls so deep; earlier bags in the grain of this one, so that only their gradings differ</source>
        <translation>air du matériau seul, parois droites, à cette profondeur&#xa0;; sacs précédents avec le grain de celui-ci, pour que seules leurs granulométries diffèrent</translation>
    </message>
    <message>
        <source>new mix, of the pot</source>
        <translation>mélange neuf, du pot</translation>
    </message>
    <message>
        <source>5 and 95 % of its lambda, as factors</source>
        <translation>5 et 95 % de son lambda, en facteurs</translation>
    </message>
    <message>
        <source>seasons</source>
        <translation>saisons</translation>
    </message>
    <message>
        <source>the same, with what crumbled off finer than 1 mm at the floor: packed with .55 it clogs the share c of the mix, which then drains nothing; air is (1 - c) x the air of what stands above, as on a wick</source>
        <translation>de même, avec au fond ce qui s’est détaché en dessous de 1 mm&#xa0;: tassé à 0,55, il colmate la part c du mélange, qui alors ne draine plus&#xa0;; l’air est (1 - c) x l’air de ce qui se trouve au-dessus, comme sur une mèche</translation>
    </message>
    <message>
        <source>(theta_0 - water in the grains) / voids between grains, not over 1; of several tests their mean</source>
        <translation>(theta_0 - eau dans les grains) / vides entre les grains, pas plus de 1&#xa0;; de plusieurs essais, leur moyenne</translation>
    </message>
    <message>
        <source>passing of all samples: their mean by dry mass, equally where one was measured in litres; read linear in log10(size) where one lacked a sieve</source>
        <translation>passant de tous les échantillons&#xa0;: leur moyenne par masse sèche, à parts égales si l’un a été mesuré en litres&#xa0;; lu linéairement en log10(taille) là où il manquait un tamis</translation>
    </message>
    <message>
        <source>usual: mean of the bags before, to either side 2.66 x the mean step from one to the next, not below 0; a jump: a step beyond 3.267 x the mean step</source>
        <translation>usuel&#xa0;: moyenne des sacs précédents, de part et d’autre 2,66 x l’écart moyen de l’un au suivant, pas moins de 0&#xa0;; un saut&#xa0;: un écart de plus de 3,267 x l’écart moyen</translation>
    </message>
    <message>
        <source>figure</source>
        <translation>grandeur</translation>
    </message>
    <message>
        <source>largest usual step</source>
        <translation>plus grand écart usuel</translation>
    </message>
    <message>
        <source>finer than wanted</source>
        <translation>plus fin que voulu</translation>
    </message>
    <message>
        <source>air, 6 cm deep</source>
        <translation>air, 6 cm de profondeur</translation>
    </message>
    <message>
        <source>new mix only: the pot&apos;s area at each height less that of the kept root mass</source>
        <translation>mélange neuf seul&#xa0;: l’aire du pot à chaque hauteur moins celle de la motte conservée</translation>
    </message>
    <message>
        <source>theta(0) - water held, by the usual constants, so that no test foretells itself</source>
        <translation>theta(0) - eau retenue, avec les constantes habituelles, pour qu’aucun essai ne se prédise lui-même</translation>
    </message>
    <message>
        <source>packing density of the bag</source>
        <translation>compacité du sac</translation>
    </message>
    <message>
        <source>packing density of what is kept</source>
        <translation>compacité de ce qui est gardé</translation>
    </message>
    <message>
        <source>{mass_g} g lay on the {aperture_mm} mm sieve, which sieves well up to {limit_g} g; sieve in {goes} goes</source>
        <translation>{mass_g} g étaient sur le tamis de {aperture_mm} mm, qui tamise bien jusqu’à {limit_g} g&#xa0;; tamiser en {goes} fois</translation>
    </message>
</context>
</TS>
