<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>Ageing</name>
    <message numerus="yes">
        <source>Likely not below %1 air within %n season(s).</source>
        <translation>
            <numerusform>Probablemente no menos de %1 de aire en %n temporada.</numerusform>
            <numerusform>Probablemente no menos de %1 de aire en %n temporadas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Likely below %1 air in season %2: a hint for the next repotting, an estimate.</source>
        <translation>Probablemente menos de %1 de aire en la temporada %2: una pista para el próximo trasplante, una estimación.</translation>
    </message>
    <message>
        <source>Likely below %1 air in season %2 if the crumbs stay: a hint for the next repotting, an estimate.</source>
        <translation>Probablemente menos de %1 de aire en la temporada %2 si los fragmentos quedan: una pista para el próximo trasplante, una estimación.</translation>
    </message>
    <message>
        <source>Likely below %1 air in season %2 if the crumbs wash down: a hint for the next repotting, an estimate.</source>
        <translation>Probablemente menos de %1 de aire en la temporada %2 si los fragmentos bajan: una pista para el próximo trasplante, una estimación.</translation>
    </message>
    <message>
        <source>The years to come need a mix with known grain densities and a pot.</source>
        <translation>Los años venideros necesitan una mezcla con densidades del grano conocidas y una maceta.</translation>
    </message>
    <message>
        <source>The years to come are being worked out.</source>
        <translation>Se están calculando los años venideros.</translation>
    </message>
    <message>
        <source>Air in this pot, the middle of the cases: %1 when new; after %2 seasons %3 (%4) if the crumbs stay, %5 (%6) if they wash down. %7</source>
        <translation>Aire en esta maceta, el valor medio de los casos: %1 cuando es nueva; tras %2 temporadas %3 (%4) si los fragmentos quedan, %5 (%6) si bajan. %7</translation>
    </message>
    <message>
        <source>By your own crumble test: %1.</source>
        <translation>Según su propio ensayo de desmenuzamiento: %1.</translation>
    </message>
    <message>
        <source>By the catalogue’s typical durability: %1.</source>
        <translation>Según la durabilidad típica del catálogo: %1.</translation>
    </message>
    <message>
        <source>season</source>
        <translation>temporada</translation>
    </message>
    <message>
        <source>air, crumbs stay</source>
        <translation>aire, fragmentos quedan</translation>
    </message>
    <message>
        <source>90 of 100 cases</source>
        <translation>90 de 100 casos</translation>
    </message>
    <message>
        <source>air, crumbs wash down</source>
        <translation>aire, fragmentos bajan</translation>
    </message>
    <message>
        <source>finer than %1</source>
        <translation>más fino que %1</translation>
    </message>
    <message>
        <source>new</source>
        <translation>nuevo</translation>
    </message>
    <message>
        <source>The new mix already has less than %1 air in this pot; a coarser mix or a deeper pot has more.</source>
        <translation>La mezcla nueva ya tiene menos del %1 de aire en esta maceta; una mezcla más gruesa o una maceta más honda tiene más.</translation>
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
        <translation>Granulometría, mezclas y macetas para árboles en recipientes poco profundos</translation>
    </message>
    <message>
        <source>Open the demonstration.</source>
        <translation>Abrir la demostración.</translation>
    </message>
    <message>
        <source>Write pictures of the window to DIR and end.</source>
        <translation>Guardar imágenes de la ventana en DIR y terminar.</translation>
    </message>
    <message>
        <source>With --shots: also high contrast, other window and text sizes.</source>
        <translation>Con --shots: también alto contraste y otros tamaños de ventana y de letra.</translation>
    </message>
    <message>
        <source>The record to open instead of the usual one.</source>
        <translation>El registro que se abre en lugar del habitual.</translation>
    </message>
    <message>
        <source>Language of the window: de, en, es, fr or ja.</source>
        <translation>Idioma de la ventana: de, en, es, fr o ja.</translation>
    </message>
    <message>
        <source>A record to open instead of the usual one, or sieve tests.</source>
        <translation>Un registro que se abre en lugar del habitual, o ensayos de tamizado.</translation>
    </message>
    <message>
        <source>What lies on the bench could not be saved: look whether the disk is full.</source>
        <translation>No se pudo guardar lo que hay en el banco: compruebe si el disco está lleno.</translation>
    </message>
</context>
<context>
    <name>BagMaterial</name>
    <message>
        <source>material of bag %1</source>
        <translation>material del saco %1</translation>
    </message>
</context>
<context>
    <name>BenchState</name>
    <message>
        <source>Component %1</source>
        <translation>Componente %1</translation>
    </message>
    <message>
        <source>Predicted, in percent of the mass; nothing is weighed yet. Sieve it and type what stays on each sieve: then it can be kept and printed as a test.</source>
        <translation>Previsto, en tanto por ciento de la masa; aún no se ha pesado nada. Tamice y escriba lo que queda en cada tamiz: entonces se puede guardar e imprimir como ensayo.</translation>
    </message>
</context>
<context>
    <name>Comparison</name>
    <message>
        <source>Nothing to compare yet: keep a mix, or finish the one on the bench.</source>
        <translation>Aún no hay nada que comparar: guarde una mezcla o termine la del banco.</translation>
    </message>
    <message>
        <source>%1 holds %2 air and %3 water</source>
        <translation>%1 tiene %2 de aire y %3 de agua</translation>
    </message>
    <message>
        <source>%1 without a pot</source>
        <translation>%1 sin maceta</translation>
    </message>
    <message>
        <source>In one pot, %1 deep: %2.</source>
        <translation>En una misma maceta, de %1 de hondo: %2.</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mezcla</translation>
    </message>
    <message>
        <source>air</source>
        <translation>aire</translation>
    </message>
    <message>
        <source>water</source>
        <translation>agua</translation>
    </message>
    <message>
        <source>finer</source>
        <translation>más fino</translation>
    </message>
    <message>
        <source>litre weight</source>
        <translation>peso por litro</translation>
    </message>
    <message>
        <source>D50</source>
        <translation>D50</translation>
    </message>
    <message>
        <source>90 of 100</source>
        <translation>90 de 100</translation>
    </message>
    <message>
        <source>%1 (by pot test %2)</source>
        <translation>%1 (según el ensayo en maceta %2)</translation>
    </message>
    <message>
        <source>%1 (leaning on pot test %2)</source>
        <translation>%1 (con apoyo en el ensayo en maceta %2)</translation>
    </message>
    <message>
        <source>plants can take</source>
        <translation>para plantas</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>deseado</translation>
    </message>
    <message>
        <source>pot tests</source>
        <translation>ensayos en maceta</translation>
    </message>
    <message>
        <source>leaning on %1</source>
        <translation>con apoyo en %1</translation>
    </message>
</context>
<context>
    <name>DayCertainty</name>
    <message>
        <source>from</source>
        <translation>desde</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>medio</translation>
    </message>
    <message>
        <source>to</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>mix or loose grain</source>
        <translation>mezcla o grano suelto</translation>
    </message>
    <message>
        <source>mix %1</source>
        <translation>mezcla %1</translation>
    </message>
    <message>
        <source>How sure are the litres? 90 of 100 cases</source>
        <translation>¿Qué seguridad tienen los litros? 90 de 100 casos</translation>
    </message>
    <message>
        <source>How sure is that? 90 of 100 cases</source>
        <translation>¿Qué seguridad tiene? 90 de 100 casos</translation>
    </message>
    <message>
        <source>to buy</source>
        <translation>por comprar</translation>
    </message>
    <message>
        <source>bags of %1</source>
        <translation>sacos de %1</translation>
    </message>
    <message>
        <source>litres of %1</source>
        <translation>litros de %1</translation>
    </message>
    <message>
        <source>%1 may run short: in %2 of 100 cases.</source>
        <translation>%1 puede no alcanzar: en %2 de 100 casos.</translation>
    </message>
</context>
<context>
    <name>DayGround</name>
    <message>
        <source>is no longer in the record: take it off</source>
        <translation>ya no está en el registro: quítelo</translation>
    </message>
    <message>
        <source>has no mix yet: choose one</source>
        <translation>aún no tiene mezcla: elija una</translation>
    </message>
    <message>
        <source>has neither a pot nor planned litres: give one of them</source>
        <translation>no tiene ni maceta ni litros previstos: dé uno de los dos</translation>
    </message>
    <message>
        <source>has a mix that can&apos;t be found: choose another</source>
        <translation>tiene una mezcla que no se encuentra: elija otra</translation>
    </message>
</context>
<context>
    <name>DayTicking</name>
    <message>
        <source>Repotted %1 with %2 of %3</source>
        <translation>Trasplantado %1 con %2 de %3</translation>
    </message>
    <message>
        <source>, into %1</source>
        <translation>, en %1</translation>
    </message>
    <message>
        <source>, plan %1</source>
        <translation>, plan %1</translation>
    </message>
    <message>
        <source>ticked off %1</source>
        <translation>%1 marcado como hecho</translation>
    </message>
    <message>
        <source>Took the tick of %1 back</source>
        <translation>Se retiró la marca de %1</translation>
    </message>
    <message>
        <source>tick of %1 taken back</source>
        <translation>marca de %1 retirada</translation>
    </message>
    <message>
        <source>Made %1 of %2, %3 left over, kept as %4</source>
        <translation>Hechos %1 de %2, sobraron %3, guardados como %4</translation>
    </message>
    <message>
        <source>Corrected: %1</source>
        <translation>Corregido: %1</translation>
    </message>
    <message>
        <source>tick of %1 corrected</source>
        <translation>marca de %1 corregida</translation>
    </message>
    <message>
        <source>day of repotting day %1</source>
        <translation>fecha de la jornada de trasplante %1</translation>
    </message>
    <message>
        <source>What was done on %1 was done on %2</source>
        <translation>Lo anotado para el %1 se hizo el %2</translation>
    </message>
    <message>
        <source>leftover of %1</source>
        <translation>sobrante de %1</translation>
    </message>
</context>
<context>
    <name>Demonstration</name>
    <message>
        <source>demonstration</source>
        <translation>demostración</translation>
    </message>
</context>
<context>
    <name>Figures</name>
    <message>
        <source>see the marked fields</source>
        <translation>vea los campos marcados</translation>
    </message>
    <message>
        <source>see the marked fields of the pot</source>
        <translation>vea los campos marcados de la maceta</translation>
    </message>
    <message>
        <source>Grain of the mix</source>
        <translation>Grano de la mezcla</translation>
    </message>
    <message>
        <source>D50, half is finer</source>
        <translation>D50, la mitad es más fina</translation>
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
        <translation>Más fino</translation>
    </message>
    <message>
        <source>Mix, worked in</source>
        <translation>Mezcla, asentada</translation>
    </message>
    <message>
        <source>Swells on mixing by</source>
        <translation>Al mezclar se esponja</translation>
    </message>
    <message>
        <source>Shrinks on mixing by</source>
        <translation>Al mezclar merma</translation>
    </message>
    <message>
        <source>Litre weight, dry</source>
        <translation>Peso por litro, seco</translation>
    </message>
    <message>
        <source>Voids between grains</source>
        <translation>Huecos entre granos</translation>
    </message>
    <message>
        <source>Voids in grains</source>
        <translation>Poros de los granos</translation>
    </message>
    <message>
        <source>Total porosity</source>
        <translation>Porosidad total</translation>
    </message>
    <message>
        <source>Water in grains</source>
        <translation>Agua en los granos</translation>
    </message>
    <message>
        <source>Exchange capacity</source>
        <translation>Capacidad de intercambio</translation>
    </message>
    <message>
        <source>unknown for a component</source>
        <translation>desconocido para un componente</translation>
    </message>
    <message>
        <source>In this pot, %1 deep</source>
        <translation>En esta maceta, %1 de hondo</translation>
    </message>
    <message>
        <source>In the pot</source>
        <translation>En la maceta</translation>
    </message>
    <message>
        <source>Air that drains free</source>
        <translation>Aire tras drenar</translation>
    </message>
    <message>
        <source>Water held</source>
        <translation>Agua retenida</translation>
    </message>
    <message>
        <source>Water plants can take</source>
        <translation>Agua para la planta</translation>
    </message>
    <message>
        <source>Trapped air, apart</source>
        <translation>Aire atrapado, aparte</translation>
    </message>
    <message>
        <source>Wet zone, height</source>
        <translation>Zona saturada, altura</translation>
    </message>
    <message>
        <source>Volume to the fill line</source>
        <translation>Volumen hasta el llenado</translation>
    </message>
    <message>
        <source>Mix, wet</source>
        <translation>Mezcla, mojada</translation>
    </message>
    <message>
        <source>To measure out for one pot</source>
        <translation>Para medir, una maceta</translation>
    </message>
    <message>
        <source>Mixed, before filling</source>
        <translation>Mezclado, antes de llenar</translation>
    </message>
    <message>
        <source>Not computed: %1.</source>
        <translation>No calculado: %1.</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Fuente: %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1 parts at %2</source>
        <translation>%1 partes de %2</translation>
    </message>
    <message>
        <source>beta of %1</source>
        <translation>beta de %1</translation>
    </message>
    <message>
        <source>%1 typical</source>
        <translation>%1 típico</translation>
    </message>
    <message>
        <source>%1: put its marked fields right</source>
        <translation>%1: corrija sus campos marcados</translation>
    </message>
    <message>
        <source>%1: finish its sieve test</source>
        <translation>%1: termine su ensayo de tamizado</translation>
    </message>
    <message>
        <source>%1: weigh a litre of it</source>
        <translation>%1: pese un litro</translation>
    </message>
    <message>
        <source>give a component parts</source>
        <translation>dé partes a un componente</translation>
    </message>
    <message>
        <source>type the pot&apos;s lengths</source>
        <translation>escriba las medidas de la maceta</translation>
    </message>
    <message>
        <source>measure the grain density of each component</source>
        <translation>mida la densidad del grano de cada componente</translation>
    </message>
    <message>
        <source>type the wanted grain</source>
        <translation>escriba el grano deseado</translation>
    </message>
    <message>
        <source>outside the sieves used; a wider set would tell</source>
        <translation>fuera de los tamices usados; un juego más amplio lo diría</translation>
    </message>
    <message>
        <source>Wanted grain, by mass</source>
        <translation>Grano deseado, en masa</translation>
    </message>
    <message>
        <source>saucer %1</source>
        <translation>plato %1</translation>
    </message>
    <message>
        <source>wick %1</source>
        <translation>mecha %1</translation>
    </message>
    <message>
        <source>tilted %1°</source>
        <translation>inclinada %1°</translation>
    </message>
    <message>
        <source>share of %1</source>
        <translation>parte de %1</translation>
    </message>
    <message>
        <source>Price of a mixed litre</source>
        <translation>Precio de un litro mezclado</translation>
    </message>
    <message>
        <source>a component has no price, or they are in several currencies; only bags have one</source>
        <translation>un componente no tiene precio, o están en varias monedas; solo los sacos lo tienen</translation>
    </message>
    <message>
        <source>passing at %1</source>
        <translation>pasa por %1</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>más de %1</translation>
    </message>
    <message>
        <source>Sum and loss</source>
        <translation>Suma y pérdida</translation>
    </message>
    <message>
        <source>stayed on %1</source>
        <translation>quedó en %1</translation>
    </message>
    <message>
        <source>packing density of %1</source>
        <translation>densidad de empaquetamiento de %1</translation>
    </message>
</context>
<context>
    <name>FindParts</name>
    <message>
        <source>the pot&apos;s lengths</source>
        <translation>las medidas de la maceta</translation>
    </message>
    <message>
        <source>the wanted grain</source>
        <translation>el grano deseado</translation>
    </message>
    <message>
        <source>a group of trees, or a wish</source>
        <translation>un grupo de árboles o un deseo</translation>
    </message>
    <message>
        <source>an unknown amount, because the figure is not defined</source>
        <translation>una cantidad desconocida, porque la cifra no está definida</translation>
    </message>
    <message>
        <source>%1 meq/L</source>
        <translation>%1 meq/L</translation>
    </message>
    <message>
        <source>%1 a litre</source>
        <translation>%1 el litro</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>finer than %1</source>
        <translation>más fino que %1</translation>
    </message>
    <message>
        <source>share of %1</source>
        <translation>proporción de %1</translation>
    </message>
    <message numerus="yes">
        <source>curve within its limits at %n size(s)</source>
        <translation>
            <numerusform>curva dentro de sus límites en %n tamaño</numerusform>
            <numerusform>curva dentro de sus límites en %n tamaños</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>curve near its %n point(s)</source>
        <translation>
            <numerusform>curva cerca de su punto (%n)</numerusform>
            <numerusform>curva cerca de sus %n puntos</numerusform>
        </translation>
    </message>
    <message>
        <source>exchange capacity</source>
        <translation>capacidad de intercambio</translation>
    </message>
    <message>
        <source>price</source>
        <translation>precio</translation>
    </message>
    <message>
        <source>air</source>
        <translation>aire</translation>
    </message>
    <message>
        <source>water</source>
        <translation>agua</translation>
    </message>
    <message>
        <source>wet litre weight</source>
        <translation>peso por litro, mojado</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>Cannot be had: %1.</source>
        <translation>No es posible: %1.</translation>
    </message>
    <message>
        <source>Cannot be had together: %1.</source>
        <translation>No son posibles a la vez: %1.</translation>
    </message>
    <message>
        <source>The search was stopped: these are the best so far, not proven.</source>
        <translation>Se detuvo la búsqueda: estas son las mejores hasta ahora, sin demostrar.</translation>
    </message>
    <message>
        <source>Free shares are improved from fixed starts: a better recipe may exist.</source>
        <translation>Las proporciones libres se mejoran desde puntos de partida fijos: puede haber una receta mejor.</translation>
    </message>
    <message>
        <source>%1 recipes worked out, %2 excluded by bounds</source>
        <translation>%1 recetas calculadas, %2 descartadas por cotas</translation>
    </message>
    <message>
        <source>Proven best: %1.</source>
        <translation>La mejor, demostrado: %1.</translation>
    </message>
    <message>
        <source>Not proven best: %1; the best score may be lower by up to %2.</source>
        <translation>No está demostrado que sea la mejor: %1; la mejor puntuación puede ser hasta %2 más baja.</translation>
    </message>
    <message>
        <source>%1; no recipe scores less.</source>
        <translation>%1; ninguna receta puntúa más bajo.</translation>
    </message>
    <message>
        <source>Not proven best: %1.</source>
        <translation>No está demostrado que sea la mejor: %1.</translation>
    </message>
    <message>
        <source>%1 between %2 and %3</source>
        <translation>%1 entre %2 y %3</translation>
    </message>
    <message>
        <source>%1 at least %2</source>
        <translation>%1 al menos %2</translation>
    </message>
    <message>
        <source>%1 at most %2</source>
        <translation>%1 como máximo %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>parts, name</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>rank</source>
        <translation>puesto</translation>
    </message>
    <message>
        <source>parts</source>
        <translation>partes</translation>
    </message>
    <message>
        <source>misses</source>
        <translation>incumple</translation>
    </message>
    <message>
        <source>price/L</source>
        <translation>precio/L</translation>
    </message>
    <message>
        <source>score</source>
        <translation>puntuación</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1 por %2</translation>
    </message>
    <message>
        <source>nearest</source>
        <translation>la más cercana</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>Misses “%1” by %2.</source>
        <translation>Incumple «%1» por %2.</translation>
    </message>
    <message>
        <source>Held back by, right at the limit: %1.</source>
        <translation>Lo frena, justo en el límite: %1.</translation>
    </message>
    <message>
        <source>Uses up %1.</source>
        <translation>Agota %1.</translation>
    </message>
    <message>
        <source>%1 is not sieved yet: its printed size stands in for its curve.</source>
        <translation>%1 aún no está tamizado: su calibre impreso hace las veces de curva.</translation>
    </message>
    <message>
        <source>Holds every wish with room to spare.</source>
        <translation>Cumple todos los deseos con margen.</translation>
    </message>
    <message>
        <source>The chosen recipe</source>
        <translation>La receta elegida</translation>
    </message>
    <message>
        <source>Air that drains free</source>
        <translation>Aire tras drenar</translation>
    </message>
    <message>
        <source>Water held</source>
        <translation>Agua retenida</translation>
    </message>
    <message>
        <source>Water plants can take</source>
        <translation>Agua para la planta</translation>
    </message>
    <message>
        <source>Litre weight, dry</source>
        <translation>Peso por litro, seco</translation>
    </message>
    <message>
        <source>Shrinks on mixing by</source>
        <translation>Al mezclar merma</translation>
    </message>
    <message>
        <source>Exchange capacity</source>
        <translation>Capacidad de intercambio</translation>
    </message>
    <message>
        <source>unknown for a component</source>
        <translation>desconocido para un componente</translation>
    </message>
    <message>
        <source>Price of a mixed litre</source>
        <translation>Precio de un litro mezclado</translation>
    </message>
    <message>
        <source>Score, 0 is best</source>
        <translation>Puntuación, 0 es lo mejor</translation>
    </message>
    <message>
        <source>No recipe holds every wish that must hold.</source>
        <translation>Ninguna receta cumple todos los deseos obligatorios.</translation>
    </message>
    <message>
        <source>No recipe was found that holds every wish that must hold.</source>
        <translation>No se encontró ninguna receta que cumpla todos los deseos obligatorios.</translation>
    </message>
    <message>
        <source>The nearest that can be had is listed.</source>
        <translation>Se muestra la más cercana posible.</translation>
    </message>
    <message>
        <source>Another recipe comes first with “%1” %2 stricter or %3 looser.</source>
        <translation>Otra receta queda primera con «%1» %2 más estricto o %3 más amplio.</translation>
    </message>
    <message>
        <source>Another recipe comes first with “%1” %2 stricter.</source>
        <translation>Otra receta queda primera con «%1» %2 más estricto.</translation>
    </message>
    <message>
        <source>Another recipe comes first with “%1” %2 looser.</source>
        <translation>Otra receta queda primera con «%1» %2 más amplio.</translation>
    </message>
    <message>
        <source>Whole parts instead of free shares cost %1 of score.</source>
        <translation>Partes enteras en vez de proporciones libres cuestan %1 de puntuación.</translation>
    </message>
    <message>
        <source>Trade-offs come with the first search: find parts for a pot.</source>
        <translation>Los compromisos llegan con la primera búsqueda: busque partes para una maceta.</translation>
    </message>
    <message numerus="yes">
        <source>Air against water: from %1 air with %2 water to %3 air with %4 water; nothing found beats these %n recipe(s) in both.</source>
        <translation>
            <numerusform>Aire frente a agua: de %1 de aire con %2 de agua a %3 de aire con %4 de agua; nada de lo encontrado supera a esta receta en ambos.</numerusform>
            <numerusform>Aire frente a agua: de %1 de aire con %2 de agua a %3 de aire con %4 de agua; nada de lo encontrado supera a estas %n recetas en ambos.</numerusform>
        </translation>
    </message>
    <message>
        <source>Price against fit: from %1 a litre with score %2 to %3 a litre with score %4.</source>
        <translation>Precio frente a ajuste: de %1 el litro con puntuación %2 a %3 el litro con puntuación %4.</translation>
    </message>
    <message>
        <source>trade-off</source>
        <translation>compromiso</translation>
    </message>
    <message>
        <source>air or price</source>
        <translation>aire o precio</translation>
    </message>
    <message>
        <source>water or score</source>
        <translation>agua o puntuación</translation>
    </message>
    <message>
        <source>air, water</source>
        <translation>aire, agua</translation>
    </message>
    <message>
        <source>price, fit</source>
        <translation>precio, ajuste</translation>
    </message>
    <message>
        <source>Air in %1</source>
        <translation>Aire en %1</translation>
    </message>
    <message>
        <source>Water in %1</source>
        <translation>Agua en %1</translation>
    </message>
    <message>
        <source>Proven: %1.</source>
        <translation>Demostrado: %1.</translation>
    </message>
    <message>
        <source>choose a pot, and measure each grain density</source>
        <translation>elija una maceta y mida cada densidad del grano</translation>
    </message>
    <message>
        <source>measure each grain density</source>
        <translation>mida cada densidad del grano</translation>
    </message>
    <message>
        <source>type each price</source>
        <translation>escriba cada precio</translation>
    </message>
    <message>
        <source>This search has no trade-off to show: choose a pot or type prices, then search again.</source>
        <translation>Esta búsqueda no tiene compromiso que mostrar: elija una maceta o escriba precios y busque de nuevo.</translation>
    </message>
    <message>
        <source>less than %1 points</source>
        <translation>menos de %1 puntos</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 puntos</translation>
    </message>
    <message>
        <source>water plants can take</source>
        <translation>agua disponible para plantas</translation>
    </message>
    <message>
        <source>The best recipe is far from “%1” and misses it by %2: screen a bag to it, take in other grain, or loosen the wish.</source>
        <translation>La mejor receta está lejos de «%1», queda a %2: cribe un saco para ello, añada otro grano o afloje el deseo.</translation>
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
        <translation>%1 (hasta ahora)</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>deseado</translation>
    </message>
    <message>
        <source>percent passing</source>
        <translation>porcentaje que pasa</translation>
    </message>
    <message>
        <source>sieve opening, mm</source>
        <translation>abertura del tamiz, mm</translation>
    </message>
    <message>
        <source>%1, sample 1</source>
        <translation>%1, muestra 1</translation>
    </message>
    <message>
        <source>%1, sample %2</source>
        <translation>%1, muestra %2</translation>
    </message>
    <message>
        <source>the mix</source>
        <translation>la mezcla</translation>
    </message>
    <message>
        <source>half of %1 is finer than %2</source>
        <translation>la mitad de %1 es más fina que %2</translation>
    </message>
    <message>
        <source>%1 has no middle size inside its sieves</source>
        <translation>%1 no tiene tamaño medio dentro de sus tamices</translation>
    </message>
    <message>
        <source>Grading chart, still empty: no sieve test has a curve yet.</source>
        <translation>Gráfico granulométrico, aún vacío: ningún ensayo de tamizado tiene curva todavía.</translation>
    </message>
    <message>
        <source>Grading chart, percent passing over grain size: %1.</source>
        <translation>Gráfico granulométrico, porcentaje que pasa según el tamaño de grano: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n faint curve(s) of single samples and earlier bags lie behind.</source>
        <translation>
            <numerusform>Detrás queda %n curva tenue de muestras sueltas y sacos anteriores.</numerusform>
            <numerusform>Detrás quedan %n curvas tenues de muestras sueltas y sacos anteriores.</numerusform>
        </translation>
    </message>
    <message>
        <source>sieve</source>
        <translation>tamiz</translation>
    </message>
    <message>
        <source>each sample</source>
        <translation>cada muestra</translation>
    </message>
    <message>
        <source>earlier bags</source>
        <translation>sacos anteriores</translation>
    </message>
</context>
<context>
    <name>GrainTrace</name>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>may</source>
        <translation>quizá</translation>
    </message>
    <message>
        <source>stands in it</source>
        <translation>está en ello</translation>
    </message>
    <message>
        <source>some may remain</source>
        <translation>puede quedar algo</translation>
    </message>
    <message>
        <source>stood in it</source>
        <translation>estuvo en ello</translation>
    </message>
    <message>
        <source>screened</source>
        <translation>cribado</translation>
    </message>
    <message>
        <source>tipped in</source>
        <translation>echado</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>mezclado</translation>
    </message>
    <message>
        <source>potted</source>
        <translation>plantado</translation>
    </message>
    <message>
        <source>left in the pot</source>
        <translation>quedó en la maceta</translation>
    </message>
    <message>
        <source>by design</source>
        <translation>por diseño</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>devuelto</translation>
    </message>
    <message>
        <source>used</source>
        <translation>usado</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mezcla</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>profundidad</translation>
    </message>
    <message>
        <source>day of repotting</source>
        <translation>día del trasplante</translation>
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
        <translation>árbol</translation>
    </message>
    <message>
        <source>thriving</source>
        <translation>vigoroso</translation>
    </message>
    <message>
        <source>watch</source>
        <translation>vigilar</translation>
    </message>
    <message>
        <source>sick</source>
        <translation>enfermo</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>muerto</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>how</source>
        <translation>cómo</translation>
    </message>
    <message>
        <source>condition</source>
        <translation>estado</translation>
    </message>
    <message>
        <source>until</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>contains it</source>
        <translation>lo contiene</translation>
    </message>
    <message>
        <source>way</source>
        <translation>vía</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>since</source>
        <translation>desde</translation>
    </message>
    <message>
        <source>left, dry</source>
        <translation>queda</translation>
    </message>
    <message>
        <source>%1: no tree stands in it, as far as it was written down.</source>
        <translation>%1: ningún árbol está en ello, según lo anotado.</translation>
    </message>
    <message numerus="yes">
        <source>%n tree(s) stand in it</source>
        <translation>
            <numerusform>%n árbol está en ello</numerusform>
            <numerusform>%n árboles están en ello</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>in %n repotted since some may remain</source>
        <translation>
            <numerusform>en %n trasplantado después puede quedar algo</numerusform>
            <numerusform>en %n trasplantados después puede quedar algo</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n stood in it once</source>
        <translation>
            <numerusform>%n estuvo en ello</numerusform>
            <numerusform>%n estuvieron en ello</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>title</source>
        <translation>título</translation>
    </message>
    <message>
        <source>by</source>
        <translation>por</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>%1: no bag is known to be in its soil.</source>
        <translation>%1: no se conoce ningún saco en su tierra.</translation>
    </message>
    <message numerus="yes">
        <source>%1: the grain of %n bag(s) is or may be in its soil.</source>
        <translation>
            <numerusform>%1: el grano de %n saco está o puede estar en su tierra.</numerusform>
            <numerusform>%1: el grano de %n sacos está o puede estar en su tierra.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>which</source>
        <translation>cuál</translation>
    </message>
    <message>
        <source>these trees</source>
        <translation>estos árboles</translation>
    </message>
    <message>
        <source>all others</source>
        <translation>los demás</translation>
    </message>
    <message>
        <source>%1, %2 of them may</source>
        <translation>%1, de ellos %2 quizá</translation>
    </message>
    <message>
        <source>Few trees prove nothing: what they share may be chance.</source>
        <translation>Pocos árboles no prueban nada: lo que comparten puede ser casualidad.</translation>
    </message>
    <message>
        <source>the drain hole: is it open?</source>
        <translation>el agujero de drenaje: ¿está abierto?</translation>
    </message>
    <message>
        <source>the trunk: is it buried, or stands it too deep?</source>
        <translation>el tronco: ¿está enterrado o demasiado hondo?</translation>
    </message>
    <message>
        <source>the tie: is it loose, does the tree rock?</source>
        <translation>la sujeción: ¿está floja, se mueve el árbol?</translation>
    </message>
    <message>
        <source>the smell of the root mass: is it sour?</source>
        <translation>el olor del cepellón: ¿es agrio?</translation>
    </message>
    <message>
        <source>the watering: who, how often, and did it run through?</source>
        <translation>el riego: ¿quién, cada cuánto, y atravesó la maceta?</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>maceta</translation>
    </message>
    <message>
        <source>no.</source>
        <translation>n.º</translation>
    </message>
    <message>
        <source>%1 (removed)</source>
        <translation>%1 (quitado)</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation>quitado</translation>
    </message>
    <message>
        <source>shared</source>
        <translation>en común</translation>
    </message>
    <message>
        <source>There is nothing called %1: look at its number.</source>
        <translation>No hay nada llamado %1: revisar el número.</translation>
    </message>
    <message>
        <source>Several bags are of lot %1: type the number of one of %2.</source>
        <translation>Varios sacos son del lote %1: escribir el número de uno de %2.</translation>
    </message>
</context>
<context>
    <name>JumpTargets</name>
    <message>
        <source>component %1</source>
        <translation>componente %1</translation>
    </message>
</context>
<context>
    <name>Lots</name>
    <message>
        <source>finer than wanted</source>
        <translation>más fino de lo deseado</translation>
    </message>
    <message>
        <source>D50</source>
        <translation>D50</translation>
    </message>
    <message>
        <source>usable of a litre</source>
        <translation>aprovechable por litro</translation>
    </message>
    <message>
        <source>air, 6 cm deep</source>
        <translation>aire, a 6 cm de hondo</translation>
    </message>
    <message numerus="yes">
        <source>Unusual for the material: %1 is %2; over %n earlier bag(s) it lay between %3 and %4.</source>
        <translation>
            <numerusform>Inusual para el material: %1 es %2; en %n saco anterior estuvo entre %3 y %4.</numerusform>
            <numerusform>Inusual para el material: %1 es %2; en %n sacos anteriores estuvo entre %3 y %4.</numerusform>
        </translation>
    </message>
    <message>
        <source>A jump from the bag before: %1 is %2; bags of this material seldom differ so much from one to the next.</source>
        <translation>Un salto respecto al saco anterior: %1 es %2; los sacos de este material rara vez difieren tanto de uno al siguiente.</translation>
    </message>
    <message>
        <source>In mix %1 it would turn air from %2 into %3 and water from %4 into %5.</source>
        <translation>En la mezcla %1 cambiaría el aire de %2 a %3 y el agua de %4 a %5.</translation>
    </message>
</context>
<context>
    <name>PotLabels</name>
    <message>
        <source>page %1</source>
        <translation>página %1</translation>
    </message>
</context>
<context>
    <name>PotSection</name>
    <message>
        <source>grain</source>
        <translation>grano</translation>
    </message>
    <message>
        <source>water</source>
        <translation>agua</translation>
    </message>
    <message>
        <source>trapped air</source>
        <translation>aire atrapado</translation>
    </message>
    <message>
        <source>air that drains free</source>
        <translation>aire tras drenar</translation>
    </message>
</context>
<context>
    <name>PrintedPages</name>
    <message>
        <source>page %1 of %2</source>
        <translation>página %1 de %2</translation>
    </message>
</context>
<context>
    <name>Protocols</name>
    <message>
        <source>what it needs was not measured</source>
        <translation>no se midió lo que hace falta</translation>
    </message>
    <message>
        <source>Air that drained in</source>
        <translation>Aire que entró al drenar</translation>
    </message>
    <message>
        <source>Predicted before any test</source>
        <translation>Previsto antes de todo ensayo</translation>
    </message>
    <message>
        <source>Water that stayed</source>
        <translation>Agua que quedó</translation>
    </message>
    <message>
        <source>Filled when flooded</source>
        <translation>Lleno al inundar</translation>
    </message>
    <message>
        <source>Weight of a litre in the pot, dry</source>
        <translation>Peso de un litro en la maceta, seco</translation>
    </message>
    <message>
        <source>the water that stayed was not measured</source>
        <translation>no se midió el agua que quedó</translation>
    </message>
    <message>
        <source>Fitted k, cm mm</source>
        <translation>k ajustado, cm mm</translation>
    </message>
    <message>
        <source>Fitted grain fill w</source>
        <translation>Llenado de grano w ajustado</translation>
    </message>
    <message>
        <source>Fitted flooded fill f</source>
        <translation>Llenado al inundar f ajustado</translation>
    </message>
    <message>
        <source>pot test %1 of mix %2</source>
        <translation>ensayo en maceta %1 de la mezcla %2</translation>
    </message>
    <message>
        <source>Pot test %1 of mix %2</source>
        <translation>Ensayo en maceta %1 de la mezcla %2</translation>
    </message>
    <message>
        <source>: air %1 measured, %2 predicted</source>
        <translation>: aire %1 medido, %2 previsto</translation>
    </message>
    <message>
        <source>A component of the mix has no grain density: measure it first, then the test can be compared.</source>
        <translation>Un componente de la mezcla no tiene densidad del grano: mídala primero y el ensayo podrá compararse.</translation>
    </message>
    <message>
        <source>These figures make no pot test: look at the volume and the order of the masses.</source>
        <translation>Estas cifras no forman un ensayo en maceta: revise el volumen y el orden de las masas.</translation>
    </message>
    <message>
        <source>not measured yet</source>
        <translation>aún sin medir</translation>
    </message>
    <message>
        <source>Still to type: %1</source>
        <translation>Falta por escribir: %1</translation>
    </message>
    <message>
        <source>Litre weight by jug</source>
        <translation>Peso por litro con jarra</translation>
    </message>
    <message>
        <source>What a litre weighs, loose and worked in. It turns parts into masses, and says how much a mix settles.</source>
        <translation>Lo que pesa un litro, suelto y asentado. Convierte partes en masas y dice cuánto se asienta una mezcla.</translation>
    </message>
    <message>
        <source>Weigh the empty jug. Fill it loosely from a scoop held at the rim, heaped, and strike it off level. Weigh.</source>
        <translation>Pese la jarra vacía. Llénela suelta con una pala a la altura del borde, colmada, y rásela. Pese.</translation>
    </message>
    <message>
        <source>Empty it, fill and weigh once more: two fills within 3 % are good.</source>
        <translation>Vacíela, llénela y pese otra vez: dos llenados que difieran menos del 3 % son buenos.</translation>
    </message>
    <message>
        <source>Work the grain in with a stick, as in a pot, without adding any. Read the litres at the mark.</source>
        <translation>Asiente el grano con un palillo, como en una maceta, sin añadir más. Lea los litros en la marca.</translation>
    </message>
    <message>
        <source>Two jugs: one heaped and struck off level, one with the same grain worked in with a stick and standing lower.</source>
        <translation>Dos jarras: una colmada y rasada, otra con el mismo grano asentado con un palillo y más bajo.</translation>
    </message>
    <message>
        <source>Grain density by displacement</source>
        <translation>Densidad del grano por desplazamiento</translation>
    </message>
    <message>
        <source>What the grain weighs with its inner pores. With the litre weight it gives the voids between the grains.</source>
        <translation>Lo que pesa el grano con sus poros internos. Con el peso por litro da los huecos entre los granos.</translation>
    </message>
    <message>
        <source>Soak the grain for 24 h. Dab it dry until its surface no longer shines. Weigh.</source>
        <translation>Remoje el grano 24 h. Séquelo a toques hasta que su superficie ya no brille. Pese.</translation>
    </message>
    <message>
        <source>Weigh the jug filled with water to the mark. Put the grain in, stir the air out, top up or draw off to the same mark. Weigh.</source>
        <translation>Pese la jarra llena de agua hasta la marca. Ponga el grano, remueva para sacar el aire, añada o quite agua hasta la misma marca. Pese.</translation>
    </message>
    <message>
        <source>Dry the grain at 105 °C or on a warm stove until it no longer gets lighter. Weigh.</source>
        <translation>Seque el grano a 105 °C o sobre una estufa caliente hasta que ya no pierda peso. Pese.</translation>
    </message>
    <message>
        <source>Two jugs filled with water to the same mark, the right one with soaked grain at the bottom.</source>
        <translation>Dos jarras llenas de agua hasta la misma marca, la derecha con grano remojado en el fondo.</translation>
    </message>
    <message>
        <source>Water absorption in 24 h</source>
        <translation>Absorción de agua en 24 h</translation>
    </message>
    <message>
        <source>The water that stays inside the grains: it is there between waterings and takes no air.</source>
        <translation>El agua que queda dentro de los granos: está ahí entre riegos y no quita aire.</translation>
    </message>
    <message>
        <source>Soak a handful for 24 h. Dab it dry until its surface no longer shines. Weigh.</source>
        <translation>Remoje un puñado 24 h. Séquelo a toques hasta que su superficie ya no brille. Pese.</translation>
    </message>
    <message>
        <source>Dry the same grain until it no longer gets lighter. Weigh.</source>
        <translation>Seque el mismo grano hasta que ya no pierda peso. Pese.</translation>
    </message>
    <message>
        <source>Grain under water in a dish, then the same grain spread out to dry.</source>
        <translation>Grano bajo agua en un plato, y luego el mismo grano extendido para secar.</translation>
    </message>
    <message>
        <source>Crumble test</source>
        <translation>Ensayo de desmenuzamiento</translation>
    </message>
    <message>
        <source>How fast the grain breaks down, by shaking or by freezing and thawing. It says for how many seasons the mix keeps its air.</source>
        <translation>Con qué rapidez se deshace el grano, agitado o con hielo y deshielo. Dice cuántas temporadas conserva la mezcla su aire.</translation>
    </message>
    <message>
        <source>Take sieved grain of the bag. Shake it in a closed tin, or wet it, freeze it and thaw it, so many rounds.</source>
        <translation>Tome grano tamizado del saco. Agítelo en una lata cerrada, o mójelo, congélelo y descongélelo, tantas rondas.</translation>
    </message>
    <message>
        <source>Dry it and sieve it again on the same sieves. Wear a dust mask.</source>
        <translation>Séquelo y tamícelo otra vez con los mismos tamices. Use mascarilla antipolvo.</translation>
    </message>
    <message>
        <source>A tin that is shaken, and the stack of sieves that the grain goes through again.</source>
        <translation>Una lata que se agita, y la columna de tamices por la que el grano pasa de nuevo.</translation>
    </message>
    <message>
        <source>Was it sieved long enough?</source>
        <translation>¿Se tamizó bastante tiempo?</translation>
    </message>
    <message>
        <source>One more minute of shaking by hand: less than half a percent may still fall through.</source>
        <translation>Un minuto más de agitado a mano: aún puede caer menos de medio por ciento.</translation>
    </message>
    <message>
        <source>After the sieve test shake every sieve one more minute over a clean sheet.</source>
        <translation>Tras el ensayo de tamizado agite cada tamiz un minuto más sobre una hoja limpia.</translation>
    </message>
    <message>
        <source>Weigh all that fell through.</source>
        <translation>Pese todo lo que cayó.</translation>
    </message>
    <message>
        <source>A sieve shaken over a sheet on which a little grain lies.</source>
        <translation>Un tamiz agitado sobre una hoja en la que hay un poco de grano.</translation>
    </message>
    <message>
        <source>Pot test by balance</source>
        <translation>Ensayo en maceta con balanza</translation>
    </message>
    <message>
        <source>Soak the mix for a day. Fill the pot and work it in as you would around a tree. Seal the holes.</source>
        <translation>Remoje la mezcla un día. Llene la maceta y asiéntela como lo haría alrededor de un árbol. Tape los agujeros.</translation>
    </message>
    <message>
        <source>Flood slowly from below until a film shines on top. Weigh. Open the holes and let it drain level for half an hour. Weigh.</source>
        <translation>Inunde despacio desde abajo hasta que brille una película arriba. Pese. Abra los agujeros y deje drenar a nivel media hora. Pese.</translation>
    </message>
    <message>
        <source>Dry everything until it no longer gets lighter. Weigh; the empty pot too. A wet pot is heavy: lift with both hands.</source>
        <translation>Séquelo todo hasta que ya no pierda peso. Pese; la maceta vacía también. Una maceta mojada pesa: levántela con ambas manos.</translation>
    </message>
    <message>
        <source>A pot on a balance three times: flooded to the rim, drained with water left at the bottom, dry.</source>
        <translation>Una maceta en la balanza tres veces: inundada hasta el borde, drenada con agua en el fondo, seca.</translation>
    </message>
    <message>
        <source>Pot test by volumes only</source>
        <translation>Ensayo en maceta solo con volúmenes</translation>
    </message>
    <message>
        <source>The same without a balance: water poured in and water caught.</source>
        <translation>Lo mismo sin balanza: agua vertida y agua recogida.</translation>
    </message>
    <message>
        <source>Fill the pot with dry mix and work it in. Seal the holes.</source>
        <translation>Llene la maceta con mezcla seca y asiéntela. Tape los agujeros.</translation>
    </message>
    <message>
        <source>Pour in measured water slowly until a shiny film stands, and again after a day&apos;s soak. Note all of it.</source>
        <translation>Vierta despacio agua medida hasta que quede una película brillante, y otra vez tras un día de remojo. Anótela toda.</translation>
    </message>
    <message>
        <source>Open the holes over a bowl. After half an hour measure what ran out.</source>
        <translation>Abra los agujeros sobre un balde. A la media hora mida lo que salió.</translation>
    </message>
    <message>
        <source>A measuring jug pours into a pot, and a bowl below catches what drains.</source>
        <translation>Una jarra medidora vierte en una maceta, y un balde debajo recoge lo que drena.</translation>
    </message>
    <message>
        <source>the litres after working in are not typed</source>
        <translation>no se han escrito los litros tras asentar</translation>
    </message>
    <message>
        <source>Litre weight, loose, dry</source>
        <translation>Peso por litro, suelto, seco</translation>
    </message>
    <message>
        <source>Worked in, dry</source>
        <translation>Asentado, seco</translation>
    </message>
    <message>
        <source>Settling</source>
        <translation>Asentamiento</translation>
    </message>
    <message>
        <source>litre weight of bag %1</source>
        <translation>peso por litro del saco %1</translation>
    </message>
    <message>
        <source>Weighed a jug of bag %1: %2 loose and dry</source>
        <translation>Pesada una jarra del saco %1: %2 suelto y seco</translation>
    </message>
    <message>
        <source>settling of mix %1</source>
        <translation>asentamiento de la mezcla %1</translation>
    </message>
    <message>
        <source>Worked in a jug of mix %1: it settles by %2</source>
        <translation>Asentada una jarra de la mezcla %1: se asienta un %2</translation>
    </message>
    <message>
        <source>Grain density, dry</source>
        <translation>Densidad del grano, seco</translation>
    </message>
    <message>
        <source>Soaked grain</source>
        <translation>Grano remojado</translation>
    </message>
    <message>
        <source>Water after 24 h, of dry mass</source>
        <translation>Agua a las 24 h, de la masa seca</translation>
    </message>
    <message>
        <source>grain density of bag %1</source>
        <translation>densidad del grano del saco %1</translation>
    </message>
    <message>
        <source>Measured the grain of bag %1 by displacement: %2, water after 24 h %3</source>
        <translation>Medido el grano del saco %1 por desplazamiento: %2, agua a las 24 h %3</translation>
    </message>
    <message>
        <source>water absorption of bag %1</source>
        <translation>absorción de agua del saco %1</translation>
    </message>
    <message>
        <source>Soaked grain of bag %1 for 24 h: it took up %2 of its dry mass</source>
        <translation>Remojado 24 h el grano del saco %1: tomó un %2 de su masa seca</translation>
    </message>
    <message>
        <source>Sieve this bag first: a crumble test compares with its sieve test.</source>
        <translation>Tamice antes este saco: un ensayo de desmenuzamiento se compara con su ensayo de tamizado.</translation>
    </message>
    <message>
        <source>Broken, of the mass</source>
        <translation>Roto, de la masa</translation>
    </message>
    <message>
        <source>Breakages of a grain in a round</source>
        <translation>Roturas de un grano por ronda</translation>
    </message>
    <message>
        <source>In a season</source>
        <translation>En una temporada</translation>
    </message>
    <message>
        <source>Modulus of the fragments</source>
        <translation>Módulo de los fragmentos</translation>
    </message>
    <message>
        <source>crumble test of bag %1</source>
        <translation>ensayo de desmenuzamiento del saco %1</translation>
    </message>
    <message>
        <source>Crumble test of bag %1: %2 of the mass broke in %3 rounds</source>
        <translation>Ensayo de desmenuzamiento del saco %1: el %2 de la masa se rompió en %3 rondas</translation>
    </message>
    <message>
        <source>Fell through in one more minute</source>
        <translation>Cayó en un minuto más</translation>
    </message>
    <message>
        <source>The sieving of bag %1 was thorough: %2 fell through in one more minute</source>
        <translation>El tamizado del saco %1 fue completo: cayó un %2 en un minuto más</translation>
    </message>
    <message>
        <source>The sieving of bag %1 was not thorough: %2 fell through in one more minute</source>
        <translation>El tamizado del saco %1 no fue completo: cayó un %2 en un minuto más</translation>
    </message>
    <message>
        <source>Keep the sieve test with its bag first: this belongs to a sieve test.</source>
        <translation>Guarde antes el ensayo de tamizado con su saco: esto pertenece a un ensayo de tamizado.</translation>
    </message>
    <message>
        <source>thoroughness of sieving bag %1</source>
        <translation>tamizado completo del saco %1</translation>
    </message>
    <message>
        <source>Empty jug</source>
        <translation>Jarra vacía</translation>
    </message>
    <message>
        <source>weighed dry</source>
        <translation>pesada en seco</translation>
    </message>
    <message>
        <source>Jug with grain</source>
        <translation>Jarra con grano</translation>
    </message>
    <message>
        <source>poured loosely, struck off level</source>
        <translation>vertido suelto, rasado</translation>
    </message>
    <message>
        <source>Filled once more</source>
        <translation>Llenada otra vez</translation>
    </message>
    <message>
        <source>emptied and poured again; may stay empty</source>
        <translation>vaciada y vertida de nuevo; puede quedar vacío</translation>
    </message>
    <message>
        <source>The jug holds</source>
        <translation>Capacidad de la jarra</translation>
    </message>
    <message>
        <source>by weighing it full of water</source>
        <translation>pesándola llena de agua</translation>
    </message>
    <message>
        <source>Worked in, it fills</source>
        <translation>Asentado, llena</translation>
    </message>
    <message>
        <source>read at the mark</source>
        <translation>leído en la marca</translation>
    </message>
    <message>
        <source>read at the mark; may stay empty</source>
        <translation>leído en la marca; puede quedar vacío</translation>
    </message>
    <message>
        <source>Moisture of the grain</source>
        <translation>Humedad del grano</translation>
    </message>
    <message>
        <source>of the dry mass; empty: dry</source>
        <translation>de la masa seca; vacío: seco</translation>
    </message>
    <message>
        <source>Soaked, dabbed dry</source>
        <translation>Remojado, secado a toques</translation>
    </message>
    <message>
        <source>after 24 h under water</source>
        <translation>tras 24 h bajo agua</translation>
    </message>
    <message>
        <source>Jug with water</source>
        <translation>Jarra con agua</translation>
    </message>
    <message>
        <source>filled to the mark, no grain</source>
        <translation>llena hasta la marca, sin grano</translation>
    </message>
    <message>
        <source>Jug, water and grain</source>
        <translation>Jarra, agua y grano</translation>
    </message>
    <message>
        <source>to the same mark</source>
        <translation>hasta la misma marca</translation>
    </message>
    <message>
        <source>Dried grain</source>
        <translation>Grano seco</translation>
    </message>
    <message>
        <source>the same grain</source>
        <translation>el mismo grano</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Rondas</translation>
    </message>
    <message>
        <source>of shaking, or of freezing and thawing</source>
        <translation>de agitado, o de hielo y deshielo</translation>
    </message>
    <message>
        <source>Rounds that make a season</source>
        <translation>Rondas por temporada</translation>
    </message>
    <message>
        <source>empty: %1</source>
        <translation>vacío: %1</translation>
    </message>
    <message>
        <source>On %1</source>
        <translation>Sobre %1</translation>
    </message>
    <message>
        <source>sieved again</source>
        <translation>tamizado de nuevo</translation>
    </message>
    <message>
        <source>In the pan</source>
        <translation>En la bandeja</translation>
    </message>
    <message>
        <source>Whole sample</source>
        <translation>Muestra entera</translation>
    </message>
    <message>
        <source>what went onto the stack</source>
        <translation>lo que se echó a los tamices</translation>
    </message>
    <message>
        <source>Fell through</source>
        <translation>Cayó</translation>
    </message>
    <message>
        <source>all sieves together, in one more minute</source>
        <translation>todos los tamices juntos, en un minuto más</translation>
    </message>
    <message>
        <source>Filled depth</source>
        <translation>Profundidad llena</translation>
    </message>
    <message>
        <source>of the mix, straight walls</source>
        <translation>de la mezcla, paredes rectas</translation>
    </message>
    <message>
        <source>by a water fill</source>
        <translation>por llenado con agua</translation>
    </message>
    <message>
        <source>empty: to the pot&apos;s fill line</source>
        <translation>vacío: hasta la línea de llenado</translation>
    </message>
    <message>
        <source>Empty pot</source>
        <translation>Maceta vacía</translation>
    </message>
    <message>
        <source>with mesh and wire</source>
        <translation>con malla y alambre</translation>
    </message>
    <message>
        <source>Flooded, sealed</source>
        <translation>Inundada, tapada</translation>
    </message>
    <message>
        <source>slowly from below; may stay empty</source>
        <translation>despacio desde abajo; puede quedar vacío</translation>
    </message>
    <message>
        <source>Drained</source>
        <translation>Drenada</translation>
    </message>
    <message>
        <source>half an hour, level</source>
        <translation>media hora, a nivel</translation>
    </message>
    <message>
        <source>Dry, with the pot</source>
        <translation>Seca, con la maceta</translation>
    </message>
    <message>
        <source>the same mix</source>
        <translation>la misma mezcla</translation>
    </message>
    <message>
        <source>Water poured in</source>
        <translation>Agua vertida</translation>
    </message>
    <message>
        <source>until a shiny film stands</source>
        <translation>hasta quedar una película brillante</translation>
    </message>
    <message>
        <source>Water caught</source>
        <translation>Agua recogida</translation>
    </message>
    <message>
        <source>half an hour later</source>
        <translation>media hora después</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Medido</translation>
    </message>
    <message>
        <source>Keep a mix first: a pot test is a test of a mix.</source>
        <translation>Guarde antes una mezcla: un ensayo en maceta es de una mezcla.</translation>
    </message>
    <message>
        <source>Receive a bag first: what is measured is kept with its bag.</source>
        <translation>Reciba antes un saco: lo que se mide se guarda con su saco.</translation>
    </message>
    <message>
        <source>Volume of mix in it</source>
        <translation>Volumen de mezcla</translation>
    </message>
    <message>
        <source>Weighed a jug of bag %1: %2 loose and dry, %3 worked in</source>
        <translation>Pesada una jarra del saco %1: %2 suelto y seco, %3 asentado</translation>
    </message>
    <message>
        <source>More fell through than was weighed: weigh both again.</source>
        <translation>Cayó más de lo que se pesó: pese otra vez ambos.</translation>
    </message>
    <message>
        <source>The air and water of this mix in a real pot. It corrects the estimates of the mix and shows how far off they were.</source>
        <translation>El aire y el agua de esta mezcla en una maceta real. Corrige las estimaciones de la mezcla y muestra cuánto se desviaban.</translation>
    </message>
</context>
<context>
    <name>Ranges</name>
    <message>
        <source>5, 50 and 95 of 100 cases: up to %1, %2, %3</source>
        <translation>5, 50 y 95 de 100 casos: hasta %1, %2, %3</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>The same verdict in %1 of 100 cases.</source>
        <translation>El mismo dictamen en %1 de 100 casos.</translation>
    </message>
    <message>
        <source>, by pot test %1</source>
        <translation>, según el ensayo en maceta %1</translation>
    </message>
    <message>
        <source>in %1 of 100 cases</source>
        <translation>en %1 de 100 casos</translation>
    </message>
    <message>
        <source>, leaning on pot test %1</source>
        <translation>, con apoyo en el ensayo en maceta %1</translation>
    </message>
</context>
<context>
    <name>RecordKind</name>
    <message>
        <source>own material</source>
        <translation>material propio</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>saco</translation>
    </message>
    <message>
        <source>bin</source>
        <translation>cubeta</translation>
    </message>
    <message>
        <source>fraction</source>
        <translation>fracción</translation>
    </message>
    <message>
        <source>sieve set</source>
        <translation>juego de tamices</translation>
    </message>
    <message>
        <source>sieve test</source>
        <translation>ensayo de tamizado</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mezcla</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>árbol</translation>
    </message>
    <message>
        <source>root-mass plan</source>
        <translation>plan de cepellón</translation>
    </message>
    <message>
        <source>repotting day</source>
        <translation>jornada de trasplante</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>tanda</translation>
    </message>
    <message>
        <source>pot test</source>
        <translation>ensayo en maceta</translation>
    </message>
    <message>
        <source>stock entry</source>
        <translation>asiento de existencias</translation>
    </message>
    <message>
        <source>log entry</source>
        <translation>entrada del diario</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>maceta</translation>
    </message>
    <message>
        <source>group of trees</source>
        <translation>grupo de árboles</translation>
    </message>
</context>
<context>
    <name>RootPlanDesk</name>
    <message>
        <source>%1 into %2</source>
        <translation>%1 a %2</translation>
    </message>
</context>
<context>
    <name>Screening</name>
    <message>
        <source>Weighed so far: %1</source>
        <translation>Pesado hasta ahora: %1</translation>
    </message>
    <message>
        <source>Weighed %1: %2 more than went in</source>
        <translation>Pesados %1: %2 más de lo que entró</translation>
    </message>
    <message>
        <source>Weighed %1, lost %2</source>
        <translation>Pesados %1, perdidos %2</translation>
    </message>
    <message>
        <source>Finish the sieve test first: the fractions are predicted from it.</source>
        <translation>Termine antes el ensayo de tamizado: las fracciones se prevén a partir de él.</translation>
    </message>
    <message>
        <source>Type the openings to screen at; the verdict names none.</source>
        <translation>Escriba las aberturas a las que cribar; el dictamen no da ninguna.</translation>
    </message>
    <message>
        <source>Much of what is left of the bag is in no fraction: type how much dry grain was screened.</source>
        <translation>Mucho de lo que queda del saco no está en ninguna fracción: escriba cuánto grano seco se tamizó.</translation>
    </message>
    <message>
        <source>Much more was weighed than went in: look at the weights, or type how much dry grain was screened.</source>
        <translation>Se pesó mucho más de lo que entró: revisar los pesos o escribir cuánto grano seco se cribó.</translation>
    </message>
</context>
<context>
    <name>Section</name>
    <message>
        <source>height</source>
        <translation>altura</translation>
    </message>
    <message>
        <source>90 of 100 cases</source>
        <translation>90 de 100 casos</translation>
    </message>
</context>
<context>
    <name>Shelf</name>
    <message>
        <source>%1, to buy</source>
        <translation>%1, por comprar</translation>
    </message>
</context>
<context>
    <name>StockText</name>
    <message>
        <source>received</source>
        <translation>recibido</translation>
    </message>
    <message>
        <source>screened into it</source>
        <translation>entró por cribado</translation>
    </message>
    <message>
        <source>screened out of it</source>
        <translation>salió por cribado</translation>
    </message>
    <message>
        <source>used</source>
        <translation>usado</translation>
    </message>
    <message>
        <source>came back or was tipped in</source>
        <translation>volvió o se echó</translation>
    </message>
    <message>
        <source>spilt</source>
        <translation>derramado</translation>
    </message>
    <message>
        <source>thrown out</source>
        <translation>tirado</translation>
    </message>
    <message>
        <source>difference found by counting</source>
        <translation>diferencia hallada al contar</translation>
    </message>
    <message>
        <source>Sum of the lines of the ledger, in dry grain</source>
        <translation>Suma de las líneas del libro, en grano seco</translation>
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
        <translation>el registro</translation>
    </message>
    <message>
        <source>Left of it</source>
        <translation>Queda</translation>
    </message>
    <message>
        <source>Loose grain</source>
        <translation>Grano suelto</translation>
    </message>
    <message>
        <source>Dry grain</source>
        <translation>Grano seco</translation>
    </message>
    <message>
        <source>nothing of it was taken into stock yet</source>
        <translation>aún no se pasó nada de ello a existencias</translation>
    </message>
    <message>
        <source>Loose litres = dry grain / litre weight</source>
        <translation>Litros sueltos = grano seco / peso por litro</translation>
    </message>
    <message>
        <source>litre weight, dry</source>
        <translation>peso por litro, seco</translation>
    </message>
    <message>
        <source>%1 dry</source>
        <translation>%1 seco</translation>
    </message>
    <message>
        <source>Tested: not yet</source>
        <translation>Ensayado: aún no</translation>
    </message>
    <message numerus="yes">
        <source>Tested: %n sieve test(s), the last on %1</source>
        <translation>
            <numerusform>Ensayado: %n ensayo de tamizado, el %1</numerusform>
            <numerusform>Ensayado: %n ensayos de tamizado, el último el %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Tested: %n sieve test(s)</source>
        <translation>
            <numerusform>Ensayado: %n ensayo de tamizado</numerusform>
            <numerusform>Ensayado: %n ensayos de tamizado</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2 at %3</source>
        <translation>%1, %2 a %3</translation>
    </message>
    <message>
        <source>weigh a litre of it</source>
        <translation>pese un litro</translation>
    </message>
    <message>
        <source>its own litre weight, else that of its newest sieve test, else its dry mass by the litres it came with</source>
        <translation>su propio peso por litro, si no el de su ensayo de tamizado más reciente, si no su masa seca entre los litros con que llegó</translation>
    </message>
    <message>
        <source>the litre weight of its bag, since nobody weighed a litre of it</source>
        <translation>el peso por litro de su saco, pues nadie pesó un litro de ella</translation>
    </message>
    <message>
        <source>the litre weight of its bag by how the fraction was predicted to pack, since nobody weighed a litre of it</source>
        <translation>el peso por litro de su saco según cómo se predijo que se asienta la fracción, pues nadie pesó un litro de ella</translation>
    </message>
    <message>
        <source>litre weight of its bag, dry</source>
        <translation>peso por litro de su saco, seco</translation>
    </message>
    <message>
        <source>litre weight of the fraction over that of its bag, as predicted</source>
        <translation>peso por litro de la fracción entre el de su saco, según lo previsto</translation>
    </message>
</context>
<context>
    <name>Surroundings</name>
    <message>
        <source>mix %1</source>
        <translation>mezcla %1</translation>
    </message>
    <message>
        <source>tub %1 of %2</source>
        <translation>tina %1 de %2</translation>
    </message>
    <message>
        <source>used ground of %1</source>
        <translation>tierra usada de %1</translation>
    </message>
</context>
<context>
    <name>TestSheet</name>
    <message>
        <source>pan</source>
        <translation>bandeja</translation>
    </message>
    <message>
        <source>sieve, mm</source>
        <translation>tamiz, mm</translation>
    </message>
    <message>
        <source>stayed on</source>
        <translation>retenido</translation>
    </message>
    <message>
        <source>of the mass</source>
        <translation>de la masa</translation>
    </message>
    <message>
        <source>passing</source>
        <translation>que pasa</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Comprobaciones</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Dictamen</translation>
    </message>
    <message>
        <source>Sieve test of %1</source>
        <translation>Ensayo de tamizado de %1</translation>
    </message>
    <message>
        <source>Bag %1</source>
        <translation>Saco %1</translation>
    </message>
    <message>
        <source>sample %1, dry</source>
        <translation>muestra %1, seca</translation>
    </message>
    <message>
        <source>loss %1</source>
        <translation>pérdida %1</translation>
    </message>
    <message>
        <source>Sieve test</source>
        <translation>Ensayo de tamizado</translation>
    </message>
</context>
<context>
    <name>TreeAgeing</name>
    <message>
        <source>As the grain breaks down, in seasons since the repotting of %1%2: %3</source>
        <translation>Al deshacerse el grano, en temporadas desde el trasplante de %1%2: %3</translation>
    </message>
</context>
<context>
    <name>TreeGroups</name>
    <message>
        <source>left out</source>
        <translation>excluido</translation>
    </message>
    <message>
        <source>own</source>
        <translation>propio</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>cambiado</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>práctica común</translation>
    </message>
</context>
<context>
    <name>Verdict</name>
    <message>
        <source> and </source>
        <translation> y </translation>
    </message>
    <message>
        <source>Take it as it is</source>
        <translation>Úselo tal cual</translation>
    </message>
    <message>
        <source>Take it after screening at %1</source>
        <translation>Úselo tras cribar a %1</translation>
    </message>
    <message>
        <source>Other use, or complain</source>
        <translation>Otro uso, o reclame</translation>
    </message>
    <message>
        <source>fraction</source>
        <translation>fracción</translation>
    </message>
    <message>
        <source>of the mass</source>
        <translation>de la masa</translation>
    </message>
    <message>
        <source>from a litre</source>
        <translation>de un litro</translation>
    </message>
    <message>
        <source>from a bag</source>
        <translation>de un saco</translation>
    </message>
    <message>
        <source>D50</source>
        <translation>D50</translation>
    </message>
    <message>
        <source>screen at</source>
        <translation>cribar a</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>queda</translation>
    </message>
    <message>
        <source>usable</source>
        <translation>aprovechable</translation>
    </message>
    <message>
        <source>good enough</source>
        <translation>vale</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>Laboratory figures</source>
        <translation>Cifras de laboratorio</translation>
    </message>
    <message>
        <source>the sieves do not reach far enough</source>
        <translation>los tamices no llegan lo bastante lejos</translation>
    </message>
    <message>
        <source>Curvature</source>
        <translation>Curvatura</translation>
    </message>
    <message>
        <source>Fineness modulus</source>
        <translation>Módulo de finura</translation>
    </message>
    <message>
        <source>Mean, phi</source>
        <translation>Media, phi</translation>
    </message>
    <message>
        <source>Sorting, phi</source>
        <translation>Clasificación, phi</translation>
    </message>
    <message>
        <source>Skewness</source>
        <translation>Asimetría</translation>
    </message>
    <message>
        <source>Kurtosis</source>
        <translation>Curtosis</translation>
    </message>
    <message>
        <source>Price of a usable litre</source>
        <translation>Precio de un litro aprovechable</translation>
    </message>
    <message>
        <source>No verdict: %1</source>
        <translation>Sin dictamen: %1</translation>
    </message>
    <message>
        <source>Finer</source>
        <translation>Más fino</translation>
    </message>
    <message>
        <source>Coarser</source>
        <translation>Más grueso</translation>
    </message>
    <message>
        <source>Usable of a litre</source>
        <translation>Aprovechable por litro</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>más de %1</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>menos de %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>see the marked cells and fields</source>
        <translation>vea las celdas y los campos marcados</translation>
    </message>
    <message>
        <source>finish the sieve test</source>
        <translation>termine el ensayo de tamizado</translation>
    </message>
    <message>
        <source>choose its bag</source>
        <translation>elija su saco</translation>
    </message>
    <message>
        <source>type price and litres of the bag</source>
        <translation>escriba precio y litros del saco</translation>
    </message>
    <message>
        <source>type the wanted grain</source>
        <translation>escriba el grano deseado</translation>
    </message>
    <message>
        <source>finer in it</source>
        <translation>más fino en él</translation>
    </message>
    <message>
        <source>Wanted grain in %1</source>
        <translation>Grano deseado en %1</translation>
    </message>
    <message>
        <source>the sieves do not reach the ends of the wanted grain</source>
        <translation>los tamices no llegan a los extremos del grano deseado</translation>
    </message>
    <message>
        <source>Wanted, by mass</source>
        <translation>Deseado, en masa</translation>
    </message>
    <message>
        <source>%1 to %2, the nearest sieves</source>
        <translation>%1 a %2, los tamices más cercanos</translation>
    </message>
    <message>
        <source>D50, half is finer</source>
        <translation>D50, la mitad es más fina</translation>
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
        <translation>Aire tras drenar, 90 de 100 casos</translation>
    </message>
    <message>
        <source>new</source>
        <translation>nuevo</translation>
    </message>
    <message>
        <source>season</source>
        <translation>temporada</translation>
    </message>
    <message>
        <source>Grading, finer than</source>
        <translation>Granulometría, más fino que</translation>
    </message>
    <message>
        <source>sieve</source>
        <translation>tamiz</translation>
    </message>
    <message>
        <source>The years to come: air and grading by season</source>
        <translation>Los años venideros: aire y granulometría por temporada</translation>
    </message>
    <message>
        <source>Nothing can be foretold for this mix in this pot.</source>
        <translation>No se puede predecir nada para esta mezcla en esta maceta.</translation>
    </message>
    <message>
        <source>crumbs stay</source>
        <translation>fragmentos quedan</translation>
    </message>
    <message>
        <source>crumbs wash down</source>
        <translation>fragmentos bajan</translation>
    </message>
    <message>
        <source>repotting hint</source>
        <translation>aviso de trasplante</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::BackupsCard</name>
    <message>
        <source>%1, before an update of the program</source>
        <translation>%1, antes de actualizar el programa</translation>
    </message>
    <message>
        <source>Restore this backup...</source>
        <translation>Restaurar esta copia...</translation>
    </message>
    <message>
        <source>Look into it, reading only</source>
        <translation>Mirarla, solo lectura</translation>
    </message>
    <message>
        <source>Backups of the record</source>
        <translation>Copias de seguridad del registro</translation>
    </message>
    <message>
        <source>Backups of the record, newest first</source>
        <translation>Copias de seguridad del registro, la más nueva primero</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>size</source>
        <translation>tamaño</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>aún no</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>dañada</translation>
    </message>
    <message>
        <source>None yet. The first is made before the first change of another day, into %1.</source>
        <translation>Aún ninguna. La primera se hace antes del primer cambio de otro día, en %1.</translation>
    </message>
    <message>
        <source>In %1. One is made before the first change of a day; those of the last 10 days and the last one of each of 12 months are kept.</source>
        <translation>En %1. Se hace una antes del primer cambio de cada día; se guardan las de los últimos 10 días y la última de cada uno de 12 meses.</translation>
    </message>
    <message>
        <source>checked</source>
        <translation>comprobada</translation>
    </message>
    <message>
        <source>intact</source>
        <translation>íntegra</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::BagsPage</name>
    <message>
        <source>F&amp;ind</source>
        <translation>&amp;Buscar</translation>
    </message>
    <message>
        <source>bag, material or lot</source>
        <translation>saco, material o lote</translation>
    </message>
    <message>
        <source>Find a bag</source>
        <translation>Buscar un saco</translation>
    </message>
    <message>
        <source>Material of the bags to receive</source>
        <translation>Material de los sacos que se reciben</translation>
    </message>
    <message>
        <source>&amp;Receive bags</source>
        <translation>Recibir sacos</translation>
    </message>
    <message>
        <source>Receive bags of this material</source>
        <translation>Recibir sacos de este material</translation>
    </message>
    <message>
        <source>No bags yet. Choose a material and receive the first ones: the lot, how many, their litres or mass. Grading them is one click from here.</source>
        <translation>Aún no hay sacos. Elija un material y reciba los primeros: el lote, cuántos, sus litros o su masa. Tamizarlos está a un clic de aquí.</translation>
    </message>
    <message>
        <source>Bags</source>
        <translation>Sacos</translation>
    </message>
    <message>
        <source>Enter puts the fraction into the mix.</source>
        <translation>Intro pone la fracción en la mezcla.</translation>
    </message>
    <message>
        <source>Grade this bag</source>
        <translation>Tamizar este saco</translation>
    </message>
    <message>
        <source>&amp;Take into stock</source>
        <translation>Pasar a e&amp;xistencias</translation>
    </message>
    <message>
        <source>Take into stock</source>
        <translation>Pasar a existencias</translation>
    </message>
    <message>
        <source>Meas&amp;ure...</source>
        <translation>Me&amp;dir...</translation>
    </message>
    <message>
        <source>Measure this bag: litre weight, grain density, water, crumbling</source>
        <translation>Medir este saco: peso por litro, densidad del grano, agua, desmenuzamiento</translation>
    </message>
    <message>
        <source>%1 of bag %2</source>
        <translation>%1 del saco %2</translation>
    </message>
    <message>
        <source>&amp;Lot</source>
        <translation>&amp;Lote</translation>
    </message>
    <message>
        <source>as marked on the bag</source>
        <translation>según la marca del saco</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>&amp;Number of bags</source>
        <translation>&amp;Número de sacos</translation>
    </message>
    <message>
        <source>of this lot</source>
        <translation>de este lote</translation>
    </message>
    <message>
        <source>number</source>
        <translation>número</translation>
    </message>
    <message>
        <source>&amp;Printed size, from</source>
        <translation>Calibre impreso, desde</translation>
    </message>
    <message>
        <source>provisional until the lot is sieved</source>
        <translation>provisional hasta tamizar el lote</translation>
    </message>
    <message>
        <source>printed size</source>
        <translation>calibre impreso</translation>
    </message>
    <message>
        <source>Printed size, to</source>
        <translation>Calibre impreso, hasta</translation>
    </message>
    <message>
        <source>the coarse end</source>
        <translation>el extremo grueso</translation>
    </message>
    <message>
        <source>Litres in one b&amp;ag</source>
        <translation>Litros por &amp;saco</translation>
    </message>
    <message>
        <source>loose, as printed or measured</source>
        <translation>suelto, impreso o medido</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>volumen</translation>
    </message>
    <message>
        <source>Mass of one bag</source>
        <translation>Masa de un saco</translation>
    </message>
    <message>
        <source>as bagged; kg can be typed</source>
        <translation>también en kg</translation>
    </message>
    <message>
        <source>The bag was weighed</source>
        <translation>El saco se pesó</translation>
    </message>
    <message>
        <source>as bagged</source>
        <translation>tal como viene</translation>
    </message>
    <message>
        <source>air-dry</source>
        <translation>seco al aire</translation>
    </message>
    <message>
        <source>oven-dry</source>
        <translation>secado en horno</translation>
    </message>
    <message>
        <source>weighing</source>
        <translation>pesada</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Pesado</translation>
    </message>
    <message>
        <source>water per dry mass, as bagged</source>
        <translation>agua por masa seca</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>humedad</translation>
    </message>
    <message>
        <source>Litre weight, &amp;dry</source>
        <translation>&amp;Peso por litro, seco</translation>
    </message>
    <message>
        <source>measured on this lot</source>
        <translation>medido en este lote</translation>
    </message>
    <message>
        <source>litre weight</source>
        <translation>peso por litro</translation>
    </message>
    <message>
        <source>Grain densit&amp;y</source>
        <translation>Densidad del &amp;grano</translation>
    </message>
    <message>
        <source>grain density</source>
        <translation>densidad del grano</translation>
    </message>
    <message>
        <source>Price of one &amp;bag</source>
        <translation>Precio de &amp;un saco</translation>
    </message>
    <message>
        <source>in your money</source>
        <translation>en su moneda</translation>
    </message>
    <message>
        <source>price</source>
        <translation>precio</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Moneda</translation>
    </message>
    <message>
        <source>your word for it; after the price</source>
        <translation>tras el precio</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>moneda</translation>
    </message>
    <message>
        <source>Received on</source>
        <translation>Recibido el</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>anything worth knowing next year</source>
        <translation>para el año que viene</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>bag %1</source>
        <translation>saco %1</translation>
    </message>
    <message>
        <source>Received bag %1</source>
        <translation>Recibido el saco %1</translation>
    </message>
    <message>
        <source>bag %1 removed</source>
        <translation>saco %1 quitado</translation>
    </message>
    <message>
        <source>bag %1 taken into stock</source>
        <translation>saco %1 pasado a existencias</translation>
    </message>
    <message>
        <source>Bags and fractions</source>
        <translation>Sacos y fracciones</translation>
    </message>
    <message>
        <source>Bins and tubs</source>
        <translation>Cubetas y tinas</translation>
    </message>
    <message>
        <source>Taken back from</source>
        <translation>Devuelto por</translation>
    </message>
    <message>
        <source>It stood in</source>
        <translation>Estuvo en</translation>
    </message>
    <message>
        <source>the mix it was, like MX-01/1</source>
        <translation>la mezcla que era, como MX-01/1</translation>
    </message>
    <message>
        <source>Taken back on</source>
        <translation>Devuelto el</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>árbol</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mezcla</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>devuelto</translation>
    </message>
    <message>
        <source>No bag has these words.</source>
        <translation>Ningún saco tiene estas palabras.</translation>
    </message>
    <message>
        <source>%1 of dry grain came; take it into stock to follow what is left.</source>
        <translation>Llegaron %1 de grano seco; páselo a existencias para seguir lo que queda.</translation>
    </message>
    <message>
        <source>Type the mass of a bag, or its litres and the litre weight, to take it into stock.</source>
        <translation>Escriba la masa de un saco, o sus litros y el peso por litro, para pasarlo a existencias.</translation>
    </message>
    <message>
        <source>Grade thi&amp;s bag</source>
        <translation>&amp;Tamizar este saco</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>The stock counts dry grain: type the moisture, or choose oven-dry for how the bag was weighed, to take it into stock.</source>
        <translation>Las existencias cuentan grano seco: escriba la humedad, o elija secado en horno según se pesó el saco, para tomarlo en existencias.</translation>
    </message>
    <message>
        <source>Bag %1 stays: tests, mixes or the stock name it. Count 0 left where it is used up.</source>
        <translation>El saco %1 se queda: lo nombran ensayos, mezclas o las existencias. Si se acabó, cuente 0.</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masa</translation>
    </message>
    <message>
        <source>%1, and what came into stock with it</source>
        <translation>%1, y lo que entró con ello en existencias</translation>
    </message>
    <message>
        <source>Fractions on the shelf</source>
        <translation>Fracciones en existencias</translation>
    </message>
    <message>
        <source>a tree, like TR-06; empty if bought</source>
        <translation>un árbol, como TR-06; vacío si se compró</translation>
    </message>
    <message>
        <source>&amp;Material to receive</source>
        <translation>&amp;Material que se recibe</translation>
    </message>
    <message>
        <source>What is in the bag</source>
        <translation>Qué hay en el saco</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Bag %1 keeps its material, as a mix, a fraction or a bin has grain of it: receive the bag anew, and count 0 left of this one.</source>
        <translation>El saco %1 conserva su material, porque una mezcla, una fracción o una cubeta tiene grano suyo: reciba el saco de nuevo y cuente 0 restante de este.</translation>
    </message>
    <message>
        <source>Bag %1 is %2 now, on its sieve tests and on the bench too.</source>
        <translation>El saco %1 es ahora %2, también en sus ensayos de tamizado y en el banco.</translation>
    </message>
    <message>
        <source>Bag %1 is in stock already.</source>
        <translation>El saco %1 ya está en existencias.</translation>
    </message>
    <message>
        <source>In stock now: %1 of bag %2.</source>
        <translation>Ahora en existencias: %1 del saco %2.</translation>
    </message>
    <message>
        <source>No bag has these words, but fractions below have.</source>
        <translation>Ningún saco tiene estas palabras, pero sí fracciones más abajo.</translation>
    </message>
    <message>
        <source>Fraction %1 is marked: choose the bag in its list to remove it.</source>
        <translation>La fracción %1 está marcada: elegir el saco en su lista para quitarlo.</translation>
    </message>
    <message>
        <source>a day like %1</source>
        <translation>un día como %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::BandRow</name>
    <message>
        <source>Wanted grain, from</source>
        <translation>Grano deseado, desde</translation>
    </message>
    <message>
        <source>finest size wanted</source>
        <translation>tamaño más fino deseado</translation>
    </message>
    <message>
        <source>to</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>coarsest size wanted</source>
        <translation>tamaño más grueso deseado</translation>
    </message>
    <message>
        <source>wanted grain</source>
        <translation>grano deseado</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::BinsTab</name>
    <message>
        <source>%1 (since %2)</source>
        <translation>%1 (desde %2)</translation>
    </message>
    <message>
        <source>Nothing is noted to lie in it now.</source>
        <translation>No consta que ahora haya algo en ella.</translation>
    </message>
    <message>
        <source>It holds %1.</source>
        <translation>Contiene %1.</translation>
    </message>
    <message>
        <source>What is taken out may contain each of: %1.</source>
        <translation>Lo que se saque puede contener de cada uno: %1.</translation>
    </message>
    <message>
        <source>%1 of bin %2</source>
        <translation>%1 de la cubeta %2</translation>
    </message>
    <message>
        <source>Bins and leftover tubs</source>
        <translation>Cubetas y tinas de sobrantes</translation>
    </message>
    <message>
        <source>bin by number, name or material</source>
        <translation>cubeta por número, nombre o material</translation>
    </message>
    <message>
        <source>No bins yet. A bin or leftover tub holds several lots; what is taken out of it may contain each of them.</source>
        <translation>Aún no hay cubetas. Una cubeta o tina de sobrantes guarda varios lotes; lo que se saque de ella puede contener de cada uno.</translation>
    </message>
    <message>
        <source>left</source>
        <translation>queda</translation>
    </message>
    <message>
        <source>Add a &amp;bin or tub</source>
        <translation>Añadir &amp;una cubeta o tina</translation>
    </message>
    <message>
        <source>What was tipped into it</source>
        <translation>Lo que se echó en ella</translation>
    </message>
    <message>
        <source>&amp;Put into the mix</source>
        <translation>Poner en &amp;la mezcla</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>as it stands on the lid</source>
        <translation>como pone en la tapa</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>Material of the bin</source>
        <translation>Material de la cubeta</translation>
    </message>
    <message>
        <source>of several materials</source>
        <translation>de varios materiales</translation>
    </message>
    <message>
        <source>material</source>
        <translation>material</translation>
    </message>
    <message>
        <source>&amp;Material</source>
        <translation>&amp;Material</translation>
    </message>
    <message>
        <source>&amp;Litre weight, dry</source>
        <translation>&amp;Peso por litro, seco</translation>
    </message>
    <message>
        <source>measured on what lies in it</source>
        <translation>medido en lo que contiene</translation>
    </message>
    <message>
        <source>litre weight</source>
        <translation>peso por litro</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>anything worth knowing next year</source>
        <translation>para el año que viene</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>Tip in</source>
        <translation>Echar</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Cuánto</translation>
    </message>
    <message>
        <source>On</source>
        <translation>El</translation>
    </message>
    <message>
        <source>It is empty</source>
        <translation>Está vacía</translation>
    </message>
    <message>
        <source>leftovers</source>
        <translation>sobrantes</translation>
    </message>
    <message>
        <source>bin %1</source>
        <translation>cubeta %1</translation>
    </message>
    <message>
        <source>Put up bin %1</source>
        <translation>Puesta la cubeta %1</translation>
    </message>
    <message>
        <source>bin %1 removed</source>
        <translation>cubeta %1 quitada</translation>
    </message>
    <message>
        <source>Type the number of what is tipped in.</source>
        <translation>Escriba el número de lo que se echa.</translation>
    </message>
    <message>
        <source>%1 tipped into bin %2</source>
        <translation>%1 echado en la cubeta %2</translation>
    </message>
    <message>
        <source>Tipped %1 into bin %2</source>
        <translation>Echado %1 en la cubeta %2</translation>
    </message>
    <message>
        <source>bin %1 emptied</source>
        <translation>cubeta %1 vaciada</translation>
    </message>
    <message>
        <source>Bin %1 is empty</source>
        <translation>La cubeta %1 está vacía</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>title</source>
        <translation>título</translation>
    </message>
    <message>
        <source>tipped in</source>
        <translation>echado</translation>
    </message>
    <message>
        <source>until</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>seco</translation>
    </message>
    <message>
        <source>still in it</source>
        <translation>aún en ella</translation>
    </message>
    <message>
        <source>G&amp;rade this bin</source>
        <translation>&amp;Tamizar esta cubeta</translation>
    </message>
    <message>
        <source>Bin %1 stays: tests, batches or the stock name it. Write down that it is empty instead.</source>
        <translation>La cubeta %1 se queda: la nombran ensayos, tandas o las existencias. Anote en su lugar que está vacía.</translation>
    </message>
    <message>
        <source>A bin can&apos;t be tipped into itself: name another.</source>
        <translation>Una cubeta no se puede echar en sí misma: nombre otra.</translation>
    </message>
    <message>
        <source>no.</source>
        <translation>n.º</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mezcla</translation>
    </message>
    <message>
        <source>since</source>
        <translation>desde</translation>
    </message>
    <message>
        <source>Mix left over on the shelf</source>
        <translation>Mezcla sobrante en existencias</translation>
    </message>
    <message>
        <source>Put this tub into the mix</source>
        <translation>Poner esta tina en la mezcla</translation>
    </message>
    <message>
        <source>like %1</source>
        <translation>como %1</translation>
    </message>
    <message>
        <source>bag, lot, batch or bin</source>
        <translation>saco, lote, tanda, cubeta</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::CautionBar</name>
    <message>
        <source>Got it</source>
        <translation>Entendido</translation>
    </message>
    <message>
        <source>Put away the caution: %1</source>
        <translation>Ocultar la advertencia: %1</translation>
    </message>
    <message>
        <source>All of it</source>
        <translation>Leer todo</translation>
    </message>
    <message>
        <source>All of the caution: %1</source>
        <translation>Leer toda la advertencia: %1</translation>
    </message>
    <message>
        <source>Less of it</source>
        <translation>Leer menos</translation>
    </message>
    <message>
        <source>Less of the caution: %1</source>
        <translation>Leer la advertencia en breve: %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ComparisonView</name>
    <message>
        <source>Mixes side by side</source>
        <translation>Mezclas lado a lado</translation>
    </message>
    <message>
        <source>air %1, water %2</source>
        <translation>aire %1, agua %2</translation>
    </message>
    <message>
        <source>Mixes compared</source>
        <translation>Mezclas comparadas</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Stop comparing</source>
        <translation>Dejar de comparar</translation>
    </message>
    <message>
        <source>on the bench</source>
        <translation>en el banco</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1; by pot test %2</source>
        <translation>%1; según el ensayo en maceta %2</translation>
    </message>
    <message>
        <source>%1; leaning on pot test %2</source>
        <translation>%1; con apoyo en el ensayo en maceta %2</translation>
    </message>
    <message>
        <source>water</source>
        <translation>agua</translation>
    </message>
    <message>
        <source>air</source>
        <translation>aire</translation>
    </message>
    <message>
        <source>grain and trapped air</source>
        <translation>grano y aire atrapado</translation>
    </message>
    <message>
        <source>wanted grain</source>
        <translation>grano deseado</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::DayPage</name>
    <message>
        <source>Dust and lifting.</source>
        <translation>Polvo y peso.</translation>
    </message>
    <message>
        <source>Screen damp, outdoors, with a mask; from 16 kg lift with two or use a trolley, less at arm&apos;s length. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation>Cribe húmedo, al aire libre y con mascarilla; desde 16 kg levante entre dos o use una carretilla, menos con los brazos extendidos. Información general; prevalecen las fichas de seguridad, las normas locales y el consejo cualificado.</translation>
    </message>
    <message>
        <source>No repotting day yet. Make one, then put trees on it: their litres, what to screen, buy and mix, and what is heavy follow by themselves. The season tells which trees are due.</source>
        <translation>Aún no hay jornada de trasplante. Cree una y ponga árboles en ella: sus litros, lo que hay que cribar, comprar y mezclar, y lo que pesa salen solos. La temporada dice a qué árboles les toca.</translation>
    </message>
    <message>
        <source>Trees of the day in working order</source>
        <translation>Árboles de la jornada en orden de trabajo</translation>
    </message>
    <message>
        <source>Space ticks a tree off; plan, litres, buds, helper and note are written into the table.</source>
        <translation>Espacio marca un árbol como hecho; plan, litros, yemas, ayudante y nota se escriben en la tabla.</translation>
    </message>
    <message>
        <source>What the day takes</source>
        <translation>Lo que pide la jornada</translation>
    </message>
    <message>
        <source>Litres</source>
        <translation>Litros</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation>Tandas</translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation>Cargas</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jornada</translation>
    </message>
    <message>
        <source>Tree</source>
        <translation>Árbol</translation>
    </message>
    <message>
        <source>Screen and buy</source>
        <translation>Cribar y comprar</translation>
    </message>
    <message>
        <source>Lists</source>
        <translation>Listas</translation>
    </message>
    <message>
        <source>Left over</source>
        <translation>Sobrante</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Temporada</translation>
    </message>
    <message>
        <source>Repotting day</source>
        <translation>Jornada de trasplante</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Día</translation>
    </message>
    <message>
        <source>New day</source>
        <translation>Nueva jornada</translation>
    </message>
    <message>
        <source>Make a new repotting day</source>
        <translation>Crear una jornada de trasplante</translation>
    </message>
    <message>
        <source>Tree to put on the day</source>
        <translation>Árbol que poner en la jornada</translation>
    </message>
    <message>
        <source>&amp;Tree</source>
        <translation>Árb&amp;ol</translation>
    </message>
    <message>
        <source>Put on the day</source>
        <translation>Poner en la jornada</translation>
    </message>
    <message>
        <source>Put this tree on the day</source>
        <translation>Poner este árbol en la jornada</translation>
    </message>
    <message>
        <source>Order of work</source>
        <translation>Orden de trabajo</translation>
    </message>
    <message>
        <source>buds</source>
        <translation>yemas</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mezcla</translation>
    </message>
    <message>
        <source>helper</source>
        <translation>ayudante</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>&amp;Work by</source>
        <translation>Ordenar &amp;por</translation>
    </message>
    <message>
        <source>How so?</source>
        <translation>¿De dónde sale?</translation>
    </message>
    <message>
        <source>How the figures of the day come about</source>
        <translation>De dónde salen las cifras de la jornada</translation>
    </message>
    <message>
        <source>Tick off what has litres</source>
        <translation>Marcar los que tienen litros</translation>
    </message>
    <message>
        <source>Tick off every tree whose litres were written</source>
        <translation>Marcar como hechos todos los árboles con litros escritos</translation>
    </message>
    <message>
        <source>Day sheet...</source>
        <translation>Hoja de la jornada...</translation>
    </message>
    <message>
        <source>Batch cards...</source>
        <translation>Fichas de tanda...</translation>
    </message>
    <message>
        <source>Pot labels...</source>
        <translation>Etiquetas de maceta...</translation>
    </message>
    <message>
        <source>Write as PDF: %1</source>
        <translation>Escribir como PDF: %1</translation>
    </message>
    <message>
        <source>On</source>
        <translation>El</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>stands on the sheets</source>
        <translation>figura en las hojas</translation>
    </message>
    <message>
        <source>Tub</source>
        <translation>Tina</translation>
    </message>
    <message>
        <source>no batch is larger</source>
        <translation>ninguna tanda es mayor</translation>
    </message>
    <message>
        <source>tub</source>
        <translation>tina</translation>
    </message>
    <message>
        <source>Scoop</source>
        <translation>Pala</translation>
    </message>
    <message>
        <source>struck off level</source>
        <translation>rasada</translation>
    </message>
    <message>
        <source>scoop</source>
        <translation>pala</translation>
    </message>
    <message>
        <source>Settling</source>
        <translation>Asentamiento</translation>
    </message>
    <message>
        <source>settling</source>
        <translation>asentamiento</translation>
    </message>
    <message>
        <source>Spill</source>
        <translation>Derrame</translation>
    </message>
    <message>
        <source>spill</source>
        <translation>derrame</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>weather, helpers, what to do better</source>
        <translation>tiempo, ayuda, mejoras</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>Take the plan from the record</source>
        <translation>Tomar el plan del registro</translation>
    </message>
    <message>
        <source>Take pot litres from the tree&apos;s newest root-mass plan</source>
        <translation>Tomar los litros del plan de cepellón más reciente del árbol</translation>
    </message>
    <message>
        <source>Take off the day</source>
        <translation>Quitar de la jornada</translation>
    </message>
    <message>
        <source>Take this tree off the day</source>
        <translation>Quitar este árbol de la jornada</translation>
    </message>
    <message>
        <source>Mix of this tree</source>
        <translation>Mezcla de este árbol</translation>
    </message>
    <message>
        <source>Pot of this tree</source>
        <translation>Maceta de este árbol</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>maceta</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Mezcla</translation>
    </message>
    <message>
        <source>Pot</source>
        <translation>Maceta</translation>
    </message>
    <message>
        <source>New mix in the pot</source>
        <translation>Mezcla nueva en la maceta</translation>
    </message>
    <message>
        <source>as it lies; empty: all the pot holds</source>
        <translation>ya asentada; vacío: toda la maceta</translation>
    </message>
    <message>
        <source>fill</source>
        <translation>llenado</translation>
    </message>
    <message>
        <source>If it goes worse</source>
        <translation>Si sale peor</translation>
    </message>
    <message>
        <source>new mix of the worst fall-back</source>
        <translation>mezcla nueva en el peor de los casos</translation>
    </message>
    <message>
        <source>fall-back</source>
        <translation>alternativa</translation>
    </message>
    <message>
        <source>Kept root mass</source>
        <translation>Cepellón que queda</translation>
    </message>
    <message>
        <source>weighed with what clings to it; kg can be typed</source>
        <translation>pesado con lo que lleva adherido; se puede escribir kg</translation>
    </message>
    <message>
        <source>kept root mass</source>
        <translation>cepellón que queda</translation>
    </message>
    <message>
        <source>Find a recipe from what is on the shelf</source>
        <translation>Buscar una receta con lo que hay en la estantería</translation>
    </message>
    <message>
        <source>The evening before</source>
        <translation>La víspera</translation>
    </message>
    <message>
        <source>In the morning</source>
        <translation>Por la mañana</translation>
    </message>
    <message>
        <source>What follows from the figures</source>
        <translation>Lo que resulta de las cifras</translation>
    </message>
    <message>
        <source>Space ticks, F2 changes a line, Delete takes it away.</source>
        <translation>Espacio marca, F2 cambia una línea, Supr la quita.</translation>
    </message>
    <message>
        <source>one more line, then Enter</source>
        <translation>una línea más, luego Intro</translation>
    </message>
    <message>
        <source>One more line: %1</source>
        <translation>Una línea más: %1</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>list</source>
        <translation>lista</translation>
    </message>
    <message>
        <source>Mix that is left over</source>
        <translation>Mezcla que sobró</translation>
    </message>
    <message>
        <source>Made in all</source>
        <translation>Hecho en total</translation>
    </message>
    <message>
        <source>Return to stock</source>
        <translation>Devolver a existencias</translation>
    </message>
    <message>
        <source>Trees due by</source>
        <translation>Árboles que tocan hasta</translation>
    </message>
    <message>
        <source>Season sheet...</source>
        <translation>Hoja de temporada...</translation>
    </message>
    <message>
        <source>Write the season as PDF</source>
        <translation>Escribir la temporada como PDF</translation>
    </message>
    <message>
        <source>%1 of repotting day %2</source>
        <translation>%1 de la jornada de trasplante %2</translation>
    </message>
    <message>
        <source>%1 of tree %2</source>
        <translation>%1 del árbol %2</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>plan</translation>
    </message>
    <message>
        <source>litres</source>
        <translation>litros</translation>
    </message>
    <message>
        <source>repotting day</source>
        <translation>jornada de trasplante</translation>
    </message>
    <message>
        <source>Label the old pots</source>
        <translation>Etiquetar las macetas viejas</translation>
    </message>
    <message>
        <source>repotting day %1</source>
        <translation>jornada de trasplante %1</translation>
    </message>
    <message>
        <source>repotting day %1 removed</source>
        <translation>jornada de trasplante %1 quitada</translation>
    </message>
    <message>
        <source>tree %1</source>
        <translation>árbol %1</translation>
    </message>
    <message>
        <source>Tree %1 is done; take its tick back first.</source>
        <translation>El árbol %1 está hecho; retire antes su marca.</translation>
    </message>
    <message>
        <source>tree %1 taken off</source>
        <translation>árbol %1 quitado</translation>
    </message>
    <message>
        <source>Tree %1 can&apos;t be ticked off yet: see its note.</source>
        <translation>El árbol %1 aún no se puede marcar: vea su nota.</translation>
    </message>
    <message>
        <source>Done: %1. Undo gives all back.</source>
        <translation>Hecho: %1. Deshacer lo devuelve todo.</translation>
    </message>
    <message>
        <source>Done: %1. By the record %2 is below nothing: count it.</source>
        <translation>Hecho: %1. Según los libros %2 queda por debajo de cero: cuéntelo.</translation>
    </message>
    <message>
        <source>Write what was made and what is left first.</source>
        <translation>Escriba antes lo que se hizo y lo que sobra.</translation>
    </message>
    <message>
        <source>In stock: %1.</source>
        <translation>En existencias: %1.</translation>
    </message>
    <message>
        <source>no trees yet</source>
        <translation>aún sin árboles</translation>
    </message>
    <message>
        <source>all are on it</source>
        <translation>todos están en ella</translation>
    </message>
    <message>
        <source>Put trees on the day first.</source>
        <translation>Ponga antes árboles en la jornada.</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>Por comprar</translation>
    </message>
    <message>
        <source>For each tree</source>
        <translation>Por árbol</translation>
    </message>
    <message>
        <source>%1 by what was used: %2, the median of the last %3</source>
        <translation>%1 según lo usado: %2, la mediana de los últimos %3</translation>
    </message>
    <message>
        <source>Heaviest: %1, %2</source>
        <translation>Lo más pesado: %1, %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>By the record %1 is below nothing: count it</source>
        <translation>Según los libros %1 queda por debajo de cero: cuéntelo</translation>
    </message>
    <message>
        <source>%1 of %2 trees done, sheet revision %3</source>
        <translation>%1 de %2 árboles hechos, revisión %3 de la hoja</translation>
    </message>
    <message>
        <source>No tree chosen</source>
        <translation>Ningún árbol elegido</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>aún ninguno</translation>
    </message>
    <message>
        <source>No tree is due by then, as far as the record knows.</source>
        <translation>Hasta entonces no le toca a ningún árbol, que el registro sepa.</translation>
    </message>
    <message>
        <source>Trees that are due and can&apos;t be added up yet</source>
        <translation>Árboles a los que les toca y que aún no se pueden sumar</translation>
    </message>
    <message>
        <source>How the day adds up</source>
        <translation>Cómo se suma la jornada</translation>
    </message>
    <message>
        <source>day sheet</source>
        <translation>hoja de la jornada</translation>
    </message>
    <message>
        <source>batch cards</source>
        <translation>fichas de tanda</translation>
    </message>
    <message>
        <source>pot labels</source>
        <translation>etiquetas de maceta</translation>
    </message>
    <message>
        <source>season</source>
        <translation>temporada</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Guardado como %1.</translation>
    </message>
    <message>
        <source>There is nothing to print yet: put trees with mix and pot on the day.</source>
        <translation>Aún no hay nada que imprimir: ponga en la jornada árboles con mezcla y maceta.</translation>
    </message>
    <message>
        <source>Root-mass plans</source>
        <translation>Planes de cepellón</translation>
    </message>
    <message>
        <source>order of work</source>
        <translation>orden de trabajo</translation>
    </message>
    <message>
        <source>sheet of repotting day %1 printed</source>
        <translation>hoja de la jornada de trasplante %1 impresa</translation>
    </message>
    <message>
        <source>empty: of the mix, else as learnt, else 0 %</source>
        <translation>vacío: el de la mezcla, si no lo aprendido o 0 %</translation>
    </message>
    <message>
        <source>Sphagnum of the shoulder</source>
        <translation>Esfagno del talud</translation>
    </message>
    <message>
        <source>as it lies; from the plan, where there is a shoulder</source>
        <translation>ya asentado; del plan, donde hay talud</translation>
    </message>
    <message>
        <source>sphagnum</source>
        <translation>esfagno</translation>
    </message>
    <message>
        <source>Top dressing of</source>
        <translation>Cobertura de</translation>
    </message>
    <message>
        <source>a bag like K-07, a fraction or a material; its thickness stands at the pot</source>
        <translation>un saco como K-07, una fracción o un material; su grosor consta en la maceta</translation>
    </message>
    <message>
        <source>top dressing</source>
        <translation>cobertura</translation>
    </message>
    <message>
        <source>Corrected: tree %1, with its history and the stock. Undo gives all back.</source>
        <translation>Corregido: árbol %1, con su historial y las existencias. Deshacer lo devuelve todo.</translation>
    </message>
    <message>
        <source>What was made and what is left of a mix: the leftover becomes a tub in stock, and what was spilt teaches the next day.</source>
        <translation>Lo que se hizo y lo que sobra de una mezcla: el sobrante pasa a ser una tina en existencias, y lo derramado enseña para la próxima jornada.</translation>
    </message>
    <message>
        <source>Return the leftover to stock</source>
        <translation>Devolver el sobrante a existencias</translation>
    </message>
    <message>
        <source>This day stays: trees were ticked off on it. Take their ticks back first.</source>
        <translation>Esta jornada se queda: en ella se marcaron árboles como hechos. Quite primero las marcas.</translation>
    </message>
    <message>
        <source>There is no further tree to put on the day: add one on the Trees tab first.</source>
        <translation>No queda ningún árbol que poner en la jornada: añada primero uno en la pestaña Árboles.</translation>
    </message>
    <message>
        <source>No open tree has its litres yet: write them under “poured in” first.</source>
        <translation>Ningún árbol pendiente tiene aún sus litros: escríbalos primero en «vertido».</translation>
    </message>
    <message>
        <source>More can&apos;t be left over than was made: correct one of them.</source>
        <translation>No puede sobrar más de lo que se hizo: corrija uno de los dos.</translation>
    </message>
    <message>
        <source>%1, removed</source>
        <translation>%1, quitado</translation>
    </message>
    <message>
        <source>No tree of the day has a root-mass plan in the record: plan its root mass first.</source>
        <translation>Ningún árbol de la jornada tiene un plan de cepellón en el registro: planifique primero su cepellón.</translation>
    </message>
    <message>
        <source>The history of tree %1 has no cuts, as its root-mass plan can&apos;t be worked out: mend the plan, then tick the tree again.</source>
        <translation>El historial del árbol %1 no tiene cortes, porque su plan de cepellón no se puede calcular: corrija el plan y vuelva a marcar el árbol.</translation>
    </message>
    <message>
        <source>planned: %1, Enter takes it</source>
        <translation>previsto: %1, Intro lo toma</translation>
    </message>
    <message>
        <source>likely: %1, Enter takes it</source>
        <translation>probable: %1, Intro lo toma</translation>
    </message>
    <message>
        <source>Root-mass plans...</source>
        <translation>Planes de cepellón...</translation>
    </message>
    <message>
        <source>Find parts from the shelf</source>
        <translation>Buscar partes en existencias</translation>
    </message>
    <message>
        <source>root-mass plans</source>
        <translation>planes de cepellón</translation>
    </message>
    <message>
        <source>Short of grain, see “Screen and buy”: %1</source>
        <translation>Falta grano, vea «Cribar y comprar»: %1</translation>
    </message>
    <message>
        <source>To mix</source>
        <translation>Por mezclar</translation>
    </message>
    <message>
        <source>empty: of the mix, else as learnt, else 7 %</source>
        <translation>vacío: lo de la mezcla, si no lo aprendido o 7 %</translation>
    </message>
    <message>
        <source>Done: %1. Undo ticks it off again.</source>
        <translation>Hecho: %1. Deshacer lo marca de nuevo.</translation>
    </message>
    <message>
        <source>By its date the day is still to come: correct the date if the work is done.</source>
        <translation>Según su fecha el día aún está por venir: corrija la fecha si el trabajo está hecho.</translation>
    </message>
    <message>
        <source>%1 %2, %3 of %4 done</source>
        <comment>a day, its name, trees done, all its trees</comment>
        <translation>%1 %2, %3 de %4 hechos</translation>
    </message>
    <message>
        <source>a day like %1</source>
        <translation>un día como %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::DayRoom</name>
    <message>
        <source>Repotting da&amp;y</source>
        <translation>&amp;Jornada de trasplante</translation>
    </message>
    <message>
        <source>&amp;New day</source>
        <translation>&amp;Nueva jornada</translation>
    </message>
    <message>
        <source>Ctrl+Alt+N</source>
        <translation>Ctrl+Alt+N</translation>
    </message>
    <message>
        <source>&amp;Put the tree on the day</source>
        <translation>&amp;Poner el árbol en la jornada</translation>
    </message>
    <message>
        <source>Ctrl+Alt+A</source>
        <translation>Ctrl+Alt+A</translation>
    </message>
    <message>
        <source>Take the tree o&amp;ff the day</source>
        <translation>&amp;Quitar el árbol de la jornada</translation>
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
        <translation>&amp;Marcar el árbol como hecho, o no</translation>
    </message>
    <message>
        <source>Ctrl+Alt+K</source>
        <translation>Ctrl+Alt+K</translation>
    </message>
    <message>
        <source>Tick off &amp;what has litres</source>
        <translation>Marcar los que tienen &amp;litros</translation>
    </message>
    <message>
        <source>Ctrl+Alt+E</source>
        <translation>Ctrl+Alt+E</translation>
    </message>
    <message>
        <source>&amp;Season</source>
        <translation>T&amp;emporada</translation>
    </message>
    <message>
        <source>Ctrl+Alt+S</source>
        <translation>Ctrl+Alt+S</translation>
    </message>
    <message>
        <source>&amp;Remove the day</source>
        <translation>Q&amp;uitar la jornada</translation>
    </message>
    <message>
        <source>Ctrl+Alt+Shift+Delete</source>
        <translation>Ctrl+Alt+Shift+Delete</translation>
    </message>
    <message>
        <source>&amp;Day sheet as PDF...</source>
        <translation>&amp;Hoja de la jornada como PDF...</translation>
    </message>
    <message>
        <source>Ctrl+Alt+D</source>
        <translation>Ctrl+Alt+D</translation>
    </message>
    <message>
        <source>&amp;Batch cards as PDF...</source>
        <translation>&amp;Fichas de tanda como PDF...</translation>
    </message>
    <message>
        <source>Ctrl+Alt+B</source>
        <translation>Ctrl+Alt+B</translation>
    </message>
    <message>
        <source>Pot &amp;labels as PDF...</source>
        <translation>Et&amp;iquetas de maceta como PDF...</translation>
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
        <translation>&amp;Tomar su plan del registro</translation>
    </message>
    <message>
        <source>R&amp;oot-mass plans as PDF...</source>
        <translation>Planes de &amp;cepellón como PDF...</translation>
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
        <translation>hecho</translation>
    </message>
    <message>
        <source>to do</source>
        <translation>pendiente</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>ticking a tree off takes its grain from the stock and writes its history and the log</source>
        <translation>marcar un árbol como hecho descuenta su grano de las existencias y escribe su historial y el diario</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>árbol</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mezcla</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>maceta</translation>
    </message>
    <message>
        <source>the plan to follow; after the work, the one that was followed</source>
        <translation>el plan que seguir; tras el trabajo, el que se siguió</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>plan</translation>
    </message>
    <message>
        <source>main mix as it lies in the pot</source>
        <translation>mezcla principal ya asentada en la maceta</translation>
    </message>
    <message>
        <source>in the pot</source>
        <translation>en maceta</translation>
    </message>
    <message>
        <source>before settling and spill</source>
        <translation>antes de asentamiento y derrame</translation>
    </message>
    <message>
        <source>to pour</source>
        <translation>por verter</translation>
    </message>
    <message>
        <source>scoops</source>
        <translation>palas</translation>
    </message>
    <message>
        <source>litres that were poured in; they teach settling and spill</source>
        <translation>litros vertidos; enseñan asentamiento y derrame</translation>
    </message>
    <message>
        <source>poured in</source>
        <translation>vertido</translation>
    </message>
    <message>
        <source>buds</source>
        <translation>yemas</translation>
    </message>
    <message>
        <source>helper</source>
        <translation>ayudante</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ExplanationPopup</name>
    <message>
        <source>Read on: %1</source>
        <translation>Seguir leyendo: %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::FieldForm</name>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
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
        <translation>%1: no calculado, %2</translation>
    </message>
    <message>
        <source>nothing is known of its range</source>
        <translation>no se sabe nada de su margen</translation>
    </message>
    <message>
        <source>%1: no range</source>
        <translation>%1: sin margen</translation>
    </message>
    <message>
        <source>%1, in 90 of 100 cases: %2</source>
        <translation>%1, en 90 de 100 casos: %2</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::FindPanel</name>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>More: wishes, limits and the grain to choose from</source>
        <translation>Más: deseos, límites y el grano entre el que elegir</translation>
    </message>
    <message>
        <source>Group of trees</source>
        <translation>Grupo de árboles</translation>
    </message>
    <message>
        <source>Pot</source>
        <translation>Maceta</translation>
    </message>
    <message>
        <source>Wishes</source>
        <translation>Deseos</translation>
    </message>
    <message>
        <source>Dust is finer than</source>
        <translation>Polvo es más fino que</translation>
    </message>
    <message>
        <source>size of dust</source>
        <translation>tamaño del polvo</translation>
    </message>
    <message>
        <source>1 mm, less in very small pots</source>
        <translation>1 mm, menos en macetas muy pequeñas</translation>
    </message>
    <message>
        <source>Mixed litres needed</source>
        <translation>Litros mezclados necesarios</translation>
    </message>
    <message>
        <source>litres needed</source>
        <translation>litros necesarios</translation>
    </message>
    <message>
        <source>one filling: %1</source>
        <translation>un llenado: %1</translation>
    </message>
    <message>
        <source>one filling of the pot</source>
        <translation>un llenado de la maceta</translation>
    </message>
    <message>
        <source>Components, at most</source>
        <translation>Componentes, máximo</translation>
    </message>
    <message>
        <source>components of a recipe</source>
        <translation>componentes de una receta</translation>
    </message>
    <message>
        <source>1 to 6</source>
        <translation>1 a 6</translation>
    </message>
    <message>
        <source>whole parts to scoop</source>
        <translation>partes enteras para palear</translation>
    </message>
    <message>
        <source>free shares</source>
        <translation>proporciones libres</translation>
    </message>
    <message>
        <source>Recipes in</source>
        <translation>Recetas en</translation>
    </message>
    <message>
        <source>whole parts</source>
        <translation>partes enteras</translation>
    </message>
    <message>
        <source>Parts in all, at most</source>
        <translation>Partes en total, máximo</translation>
    </message>
    <message>
        <source>parts of a recipe</source>
        <translation>partes de una receta</translation>
    </message>
    <message>
        <source>1 to 20</source>
        <translation>1 a 20</translation>
    </message>
    <message>
        <source>Grain to choose from</source>
        <translation>Grano entre el que elegir</translation>
    </message>
    <message>
        <source>take</source>
        <translation>usar</translation>
    </message>
    <message>
        <source>stock, L</source>
        <translation>existencias, L</translation>
    </message>
    <message>
        <source>price/L</source>
        <translation>precio/L</translation>
    </message>
    <message>
        <source>least %</source>
        <translation>mín. %</translation>
    </message>
    <message>
        <source>most %</source>
        <translation>máx. %</translation>
    </message>
    <message>
        <source>Keep for this group</source>
        <translation>Guardar para este grupo</translation>
    </message>
    <message>
        <source>Start this group with these wishes from now on</source>
        <translation>Empezar este grupo con estos deseos de ahora en adelante</translation>
    </message>
    <message>
        <source>group of trees</source>
        <translation>grupo de árboles</translation>
    </message>
    <message>
        <source>wishes for %1</source>
        <translation>deseos para %1</translation>
    </message>
    <message>
        <source>pot %1</source>
        <translation>maceta %1</translation>
    </message>
    <message>
        <source>wish: %1</source>
        <translation>deseo: %1</translation>
    </message>
    <message>
        <source>%1 as a candidate</source>
        <translation>%1 como candidato</translation>
    </message>
    <message>
        <source>choose a group</source>
        <translation>elija un grupo</translation>
    </message>
    <message>
        <source>as typed under Pot</source>
        <translation>como se escribió en Maceta</translation>
    </message>
    <message>
        <source>choose a pot, or type its lengths</source>
        <translation>elija una maceta o escriba sus medidas</translation>
    </message>
    <message>
        <source>%1 deep to the fill line, %2; wanted grain and litres below are for this pot.</source>
        <translation>%1 de hondo hasta la línea de llenado, %2; el grano deseado y los litros de abajo son para esta maceta.</translation>
    </message>
    <message>
        <source>stock, %1</source>
        <translation>existencias, %1</translation>
    </message>
    <message>
        <source>%1 (not sieved)</source>
        <translation>%1 (sin tamizar)</translation>
    </message>
    <message>
        <source>%1 of it are reserved for a mix</source>
        <translation>%1 de ello están reservados para una mezcla</translation>
    </message>
    <message>
        <source>See the marked fields under “More”.</source>
        <translation>Vea los campos marcados en «Más».</translation>
    </message>
    <message>
        <source>the share of a candidate</source>
        <translation>la proporción de un candidato</translation>
    </message>
    <message>
        <source>Choose a group first</source>
        <translation>Elija antes un grupo</translation>
    </message>
    <message>
        <source>Type its lengths under “By hand”, or choose one of the record.</source>
        <translation>Escriba sus medidas en «A mano» o elija una del registro.</translation>
    </message>
    <message>
        <source>one filling of each pot: %1</source>
        <translation>un llenado de cada maceta: %1</translation>
    </message>
    <message>
        <source>Pots the mix should be good in too</source>
        <translation>Macetas en que la mezcla debe ser buena también</translation>
    </message>
    <message>
        <source>good in these pots too</source>
        <translation>buena también en estas macetas</translation>
    </message>
    <message>
        <source>filling, L</source>
        <translation>llenado, L</translation>
    </message>
    <message>
        <source>All groups...</source>
        <translation>Todos los grupos...</translation>
    </message>
    <message>
        <source>See, change and add groups of trees</source>
        <translation>Ver, cambiar y añadir grupos de árboles</translation>
    </message>
    <message>
        <source>further pot %1</source>
        <translation>otra maceta %1</translation>
    </message>
    <message>
        <source>filling, %1</source>
        <translation>llenado, %1</translation>
    </message>
    <message>
        <source>%1, %2 reserved</source>
        <translation>%1, %2 reservados</translation>
    </message>
    <message>
        <source>“%1” cannot be had: nothing on the shelf comes near it, and so no mix does. Loosen it, or add grain.</source>
        <translation>«%1» no es posible: nada en la estantería se le acerca, y por tanto ninguna mezcla. Aflójelo o añada grano.</translation>
    </message>
    <message>
        <source>Not known how much of it there is: type it, or leave it open.</source>
        <translation>No se sabe cuánto queda: escríbalo o déjelo abierto.</translation>
    </message>
    <message>
        <source>Its bag has no price or no litres: write them down there, or type what a litre costs.</source>
        <translation>Su saco no tiene precio o no tiene litros: anótelos allí o escriba lo que cuesta un litro.</translation>
    </message>
    <message>
        <source>Only bags have a price: type what a litre of this is worth, or leave it open.</source>
        <translation>Solo los sacos tienen precio: escriba lo que vale un litro de esto o déjelo abierto.</translation>
    </message>
    <message>
        <source>The wanted grain is now %1 to %2, as the group asks; undo brings back what was typed.</source>
        <translation>El grano deseado es ahora de %1 a %2, como pide el grupo; Deshacer devuelve lo escrito.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::GoneNotice</name>
    <message>
        <source>Bring it back with what I typed</source>
        <translation>Recuperarlo con lo que escribí</translation>
    </message>
    <message>
        <source>Let it go</source>
        <translation>No recuperarlo</translation>
    </message>
    <message>
        <source>What was typed into %1 and not saved: %2</source>
        <translation>Lo que se escribió en %1 y no se guardó: %2</translation>
    </message>
    <message>
        <source>%1 brought back</source>
        <translation>%1 recuperado</translation>
    </message>
    <message>
        <source>%1 is not in the record any more: it was removed or undone meanwhile, perhaps in another window. What you typed stands here and is not saved yet.</source>
        <translation>%1 ya no está en el registro: entretanto se quitó o se deshizo, quizá en otra ventana. Lo que escribió sigue aquí y aún no está guardado.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::GradingChart</name>
    <message>
        <source>Grading chart</source>
        <translation>Gráfico granulométrico</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>%1: %2 passes</source>
        <translation>%1: pasa el %2</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::GrainForm</name>
    <message>
        <source>none: own figures only</source>
        <translation>ninguno: solo cifras propias</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>&amp;Material</source>
        <translation>&amp;Material</translation>
    </message>
    <message>
        <source>material</source>
        <translation>material</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>sin dato</translation>
    </message>
    <message>
        <source>%1 (typical)</source>
        <translation>%1 (típico)</translation>
    </message>
    <message>
        <source>&amp;Litre weight, dry</source>
        <translation>&amp;Peso por litro, seco</translation>
    </message>
    <message>
        <source>litre weight</source>
        <translation>peso por litro</translation>
    </message>
    <message>
        <source>weigh a litre</source>
        <translation>pese un litro</translation>
    </message>
    <message>
        <source>Gr&amp;ain density</source>
        <translation>Densidad de&amp;l grano</translation>
    </message>
    <message>
        <source>grain density</source>
        <translation>densidad del grano</translation>
    </message>
    <message>
        <source>dry mass of the grain with its inner pores</source>
        <translation>masa seca del grano con sus poros internos</translation>
    </message>
    <message>
        <source>Soli&amp;d density</source>
        <translation>Densidad del sóli&amp;do</translation>
    </message>
    <message>
        <source>solid density</source>
        <translation>densidad del sólido</translation>
    </message>
    <message>
        <source>dry mass of the solid without pores</source>
        <translation>masa seca del sólido sin poros</translation>
    </message>
    <message>
        <source>&amp;Water after 24 h</source>
        <translation>A&amp;gua a las 24 h</translation>
    </message>
    <message>
        <source>water absorption</source>
        <translation>absorción de agua</translation>
    </message>
    <message>
        <source>water in the soaked, surface-dry grain, of its dry mass</source>
        <translation>agua en el grano remojado y seco por fuera, de su masa seca</translation>
    </message>
    <message>
        <source>%1 Typical figures stand in for what is not measured.</source>
        <translation>%1 Las cifras típicas suplen lo que no se ha medido.</translation>
    </message>
    <message>
        <source>Without a material the litre weight must be weighed before the component can go into the mix.</source>
        <translation>Sin material hay que pesar el litro antes de que el componente pueda entrar en la mezcla.</translation>
    </message>
    <message>
        <source>of one litre, loosely poured</source>
        <translation>de un litro, vertido suelto</translation>
    </message>
    <message>
        <source>Sieve, across</source>
        <translation>Tamiz, ancho</translation>
    </message>
    <message>
        <source>width of the sieves</source>
        <translation>ancho de los tamices</translation>
    </message>
    <message>
        <source>inside its frame; shows an overloaded sieve</source>
        <translation>dentro del marco; muestra un tamiz sobrecargado</translation>
    </message>
    <message>
        <source>Water in the sample</source>
        <translation>Agua en la muestra</translation>
    </message>
    <message>
        <source>moisture of the sample</source>
        <translation>humedad de la muestra</translation>
    </message>
    <message>
        <source>as sieved, of its dry mass; empty if dry</source>
        <translation>tal como se tamizó, de su masa seca; vacío si está seca</translation>
    </message>
    <message>
        <source>Washed, dry</source>
        <translation>Lavada, seca</translation>
    </message>
    <message>
        <source>washed mass of the sample</source>
        <translation>masa lavada de la muestra</translation>
    </message>
    <message>
        <source>of the sample, if its dust was washed out</source>
        <translation>de la muestra, si se lavó el polvo</translation>
    </message>
    <message>
        <source>The sample that was sieved</source>
        <translation>La muestra tamizada</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::GroupsPage</name>
    <message>
        <source>Groups of trees</source>
        <translation>Grupos de árboles</translation>
    </message>
    <message>
        <source>group</source>
        <translation>grupo</translation>
    </message>
    <message>
        <source>whose</source>
        <translation>de quién</translation>
    </message>
    <message>
        <source>&amp;New, like this one</source>
        <translation>&amp;Nuevo, como este</translation>
    </message>
    <message>
        <source>Add a group of your own that starts with the wishes of the chosen one</source>
        <translation>Añadir un grupo propio que empieza con los deseos del elegido</translation>
    </message>
    <message>
        <source>&amp;Leave out</source>
        <translation>E&amp;xcluir</translation>
    </message>
    <message>
        <source>Do not offer this group any more; a group of your own goes</source>
        <translation>No ofrecer más este grupo; un grupo propio se va</translation>
    </message>
    <message>
        <source>Re&amp;store</source>
        <translation>Re&amp;staurar</translation>
    </message>
    <message>
        <source>Back to common practice, or offered again</source>
        <translation>Volver a la práctica común, u ofrecerlo otra vez</translation>
    </message>
    <message>
        <source>Find &amp;parts for it</source>
        <translation>Buscar &amp;partes para él</translation>
    </message>
    <message>
        <source>Find parts for this group</source>
        <translation>Buscar partes para este grupo</translation>
    </message>
    <message>
        <source>Wishes of this group</source>
        <translation>Deseos de este grupo</translation>
    </message>
    <message>
        <source>Na&amp;me</source>
        <translation>No&amp;mbre</translation>
    </message>
    <message>
        <source>as you call these trees</source>
        <translation>como usted llama a estos árboles</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>Trees it is for</source>
        <translation>Árboles para los que es</translation>
    </message>
    <message>
        <source>any</source>
        <translation>cualquiera</translation>
    </message>
    <message>
        <source>trees it is for</source>
        <translation>árboles para los que es</translation>
    </message>
    <message>
        <source>Wanted grain from</source>
        <translation>Grano deseado, desde</translation>
    </message>
    <message>
        <source>the finest grain that is wanted</source>
        <translation>el grano más fino que se desea</translation>
    </message>
    <message>
        <source>wanted grain</source>
        <translation>grano deseado</translation>
    </message>
    <message>
        <source>Wanted grain to</source>
        <translation>Grano deseado, hasta</translation>
    </message>
    <message>
        <source>the coarsest grain that is wanted</source>
        <translation>el grano más grueso que se desea</translation>
    </message>
    <message>
        <source>Dust is finer than</source>
        <translation>Polvo es más fino que</translation>
    </message>
    <message>
        <source>what clogs a pot of these trees</source>
        <translation>lo que obstruye una maceta de estos árboles</translation>
    </message>
    <message>
        <source>size of dust</source>
        <translation>tamaño del polvo</translation>
    </message>
    <message>
        <source>Mi&amp;x to start from</source>
        <translation>Me&amp;zcla de partida</translation>
    </message>
    <message>
        <source>parts and names: 5 akadama : 3 pumice</source>
        <translation>partes y nombres: 5 akadama : 3 pumice</translation>
    </message>
    <message>
        <source>mix to start from</source>
        <translation>mezcla de partida</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>what else you go by</source>
        <translation>por qué más se guía usted</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>%1 of the group %2</source>
        <translation>%1 del grupo %2</translation>
    </message>
    <message>
        <source>wishes</source>
        <translation>deseos</translation>
    </message>
    <message>
        <source>my %1</source>
        <translation>mi %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>name of a group, number</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>group %1</source>
        <translation>grupo %1</translation>
    </message>
    <message>
        <source>group %1 removed</source>
        <translation>grupo %1 quitado</translation>
    </message>
    <message>
        <source>offer</source>
        <translation>ofrecer</translation>
    </message>
    <message>
        <source>%1 is not offered any more; “Restore” brings it back.</source>
        <translation>%1 ya no se ofrece; «Restaurar» lo devuelve.</translation>
    </message>
    <message>
        <source>group %1 restored</source>
        <translation>grupo %1 restaurado</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Remo&amp;ve</source>
        <translation>&amp;Quitar</translation>
    </message>
    <message>
        <source>What a mix for these trees should be like, and so what a search for parts starts with. What a tree&apos;s roots bear goes by the group on its own page. It is common practice, never the only way: your climate, your water and your hands know better.</source>
        <translation>Cómo debe ser una mezcla para estos árboles, y con qué empieza la búsqueda de partes. Lo que aguantan las raíces de un árbol va por el grupo de su propia página. Es práctica común, nunca el único camino: su clima, su agua y sus manos saben más.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::HowButton</name>
    <message>
        <source>How so? Formula, numbers and source</source>
        <translation>¿De dónde sale? Fórmula, números y fuente</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>How so: %1</source>
        <translation>De dónde sale: %1</translation>
    </message>
    <message>
        <source>How so: %1, %2</source>
        <translation>De dónde sale: %1, %2</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ImportPage</name>
    <message>
        <source>Where a record here differs, the file&apos;s takes its place</source>
        <translation>Donde un registro de aquí difiere, lo sustituye el del archivo</translation>
    </message>
    <message>
        <source>Take them in</source>
        <translation>Incorporarlos</translation>
    </message>
    <message>
        <source>Read the file again</source>
        <translation>Leer otra vez el archivo</translation>
    </message>
    <message>
        <source>Records from a file</source>
        <translation>Registros de un archivo</translation>
    </message>
    <message>
        <source>Another file...</source>
        <translation>Otro archivo...</translation>
    </message>
    <message>
        <source>The &amp;list holds</source>
        <translation>La &amp;lista contiene</translation>
    </message>
    <message>
        <source>What the list holds</source>
        <translation>Lo que contiene la lista</translation>
    </message>
    <message>
        <source>what its columns say</source>
        <translation>lo que digan sus columnas</translation>
    </message>
    <message>
        <source>bags</source>
        <translation>sacos</translation>
    </message>
    <message>
        <source>sieve tests</source>
        <translation>tamizados</translation>
    </message>
    <message>
        <source>trees</source>
        <translation>árboles</translation>
    </message>
    <message>
        <source>What is wrong in the file, by row</source>
        <translation>Lo que está mal en el archivo, por fila</translation>
    </message>
    <message>
        <source>Records of the file and what becomes of them</source>
        <translation>Registros del archivo y qué será de ellos</translation>
    </message>
    <message>
        <source>One moment...</source>
        <translation>Un momento...</translation>
    </message>
    <message>
        <source>Lists and records (*.csv *.json);;All files (*)</source>
        <translation>Listas y registros (*.csv *.json);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>No file is chosen yet.</source>
        <translation>Aún no se ha elegido un archivo.</translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) to take in</source>
        <translation>
            <numerusform>%n registro por incorporar</numerusform>
            <numerusform>%n registros por incorporar</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n here already</source>
        <translation>
            <numerusform>%n ya está aquí</numerusform>
            <numerusform>%n ya están aquí</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fault(s): mend them in the file and read it again; until then nothing is taken in</source>
        <translation>
            <numerusform>%n error: corríjalo en el archivo y léalo otra vez; hasta entonces no se incorpora nada</numerusform>
            <numerusform>%n errores: corríjalos en el archivo y léalo otra vez; hasta entonces no se incorpora nada</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) taken in; one undo takes them back.</source>
        <translation>
            <numerusform>%n registro incorporado; un solo deshacer lo retira.</numerusform>
            <numerusform>%n registros incorporados; un solo deshacer los retira.</numerusform>
        </translation>
    </message>
    <message>
        <source>A list of bags, sieve tests, pots or trees as a spreadsheet saves it (CSV), or records, one or all, as JSON. Nothing is taken in before you say so, taking the same file in twice adds nothing twice, and one undo takes all of it back.</source>
        <translation>Una lista de sacos, ensayos de tamizado, macetas o árboles como la guarda una hoja de cálculo (CSV), o registros, uno o todos, como JSON. Nada se incorpora hasta que usted lo diga, incorporar dos veces el mismo archivo no añade nada dos veces, y un solo deshacer lo retira todo.</translation>
    </message>
    <message>
        <source>pots</source>
        <translation>macetas</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>%1 (taken in all the same)</source>
        <translation>%1 (se tomó de todos modos)</translation>
    </message>
    <message>
        <source>line %1, character %2</source>
        <translation>línea %1, carácter %2</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>línea %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ImportTableModel</name>
    <message>
        <source>the next free</source>
        <translation>el siguiente</translation>
    </message>
    <message>
        <source>no.</source>
        <translation>n.º</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>tipo</translation>
    </message>
    <message>
        <source>what becomes of it</source>
        <translation>qué será de él</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::JumpBox</name>
    <message>
        <source>Go to</source>
        <translation>Ir a</translation>
    </message>
    <message>
        <source>Bag, mix, tree or what to do</source>
        <translation>Saco, mezcla, árbol o qué hacer</translation>
    </message>
    <message>
        <source>like K-07, or pumice</source>
        <translation>como K-07 o akadama</translation>
    </message>
    <message>
        <source>What fits</source>
        <translation>Lo que coincide</translation>
    </message>
    <message>
        <source>nothing fits</source>
        <translation>nada coincide</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::LogPage</name>
    <message>
        <source>Log, newest first</source>
        <translation>Diario, lo más nuevo primero</translation>
    </message>
    <message>
        <source>F&amp;ind</source>
        <translation>&amp;Buscar</translation>
    </message>
    <message>
        <source>any word of the log</source>
        <translation>cualquier palabra del diario</translation>
    </message>
    <message>
        <source>&amp;About</source>
        <translation>S&amp;obre</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>to</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Día</translation>
    </message>
    <message>
        <source>&amp;Write down</source>
        <translation>A&amp;notar</translation>
    </message>
    <message>
        <source>what you saw or did; with About above it is kept there too</source>
        <translation>lo que vio o hizo; con «Sobre» arriba se guarda también allí</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>Keep this line in the log</source>
        <translation>Guardar esta línea en el diario</translation>
    </message>
    <message>
        <source>What it is linked to</source>
        <translation>Con qué está vinculado</translation>
    </message>
    <message>
        <source>Linked to %1</source>
        <translation>Vinculado con %1</translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translation>nada todavía</translation>
    </message>
    <message>
        <source>line in the log</source>
        <translation>línea en el diario</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Diario</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Lo que pasó</translation>
    </message>
    <message>
        <source>Where grain went</source>
        <translation>Adónde fue el grano</translation>
    </message>
    <message>
        <source>Sick trees</source>
        <translation>Árboles enfermos</translation>
    </message>
    <message>
        <source>A small change is a field that was typed into: a note, a mass, a name. Everything else that happened stands here anyway.</source>
        <translation>Un cambio pequeño es un campo en el que se escribió: una nota, una masa, un nombre. Todo lo demás que pasó consta aquí de todos modos.</translation>
    </message>
    <message>
        <source>&amp;Small changes too</source>
        <translation>También cambios &amp;pequeños</translation>
    </message>
    <message>
        <source>&amp;Small changes too (%1)</source>
        <translation>También cambios &amp;pequeños (%1)</translation>
    </message>
    <message>
        <source>Show small changes too</source>
        <translation>Mostrar también los cambios pequeños</translation>
    </message>
    <message>
        <source>Show small changes too, %1 are left out</source>
        <translation>Mostrar también los cambios pequeños, %1 omitidos</translation>
    </message>
    <message>
        <source>Nothing fits Find, About and the days together; empty one of them to see more.</source>
        <translation>Nada cumple a la vez la búsqueda, el asunto y los días; vacíe uno de ellos para ver más.</translation>
    </message>
    <message>
        <source>&amp;Keep with %1</source>
        <translation>&amp;Guardar con %1</translation>
    </message>
    <message>
        <source>Keep this line in the log and with %1</source>
        <translation>Guardar esta línea en el diario y con %1</translation>
    </message>
    <message>
        <source>like %1</source>
        <translation>como %1</translation>
    </message>
    <message>
        <source>%1 is no day like %2.</source>
        <translation>%1 no es un día como %2.</translation>
    </message>
    <message>
        <source>a bag, its lot, a mix or a tree, like K-07</source>
        <translation>un saco, su lote, una mezcla o un árbol, como K-07</translation>
    </message>
    <message>
        <source>The whole log is shown.</source>
        <translation>Se muestra todo el diario.</translation>
    </message>
    <message>
        <source>Type a bag, its lot, a mix or a tree into About to see what it is linked to; where its grain went in the end stands on the next tab.</source>
        <translation>Escribir un saco, su lote, una mezcla o un árbol en «Sobre» para ver con qué está enlazado; adónde fue al final su grano está en la pestaña siguiente.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::LotChart</name>
    <message>
        <source>No lots to compare: type the wanted grain, and grade bags of one material.</source>
        <translation>No hay lotes que comparar: escriba el grano deseado y tamice sacos de un material.</translation>
    </message>
    <message numerus="yes">
        <source>%n lot(s), oldest first; the last, %1: %2.</source>
        <translation>
            <numerusform>%n lote; %1: %2.</numerusform>
            <numerusform>%n lotes, el más antiguo primero; el último, %1: %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A usual range needs %n earlier lot(s).</source>
        <translation>
            <numerusform>Un margen habitual requiere %n lote anterior.</numerusform>
            <numerusform>Un margen habitual requiere %n lotes anteriores.</numerusform>
        </translation>
    </message>
    <message>
        <source>All within what is usual.</source>
        <translation>Todo dentro de lo habitual.</translation>
    </message>
    <message>
        <source>Outside what is usual: %1.</source>
        <translation>Fuera de lo habitual: %1.</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>saco</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>usual</source>
        <translation>habitual</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Dust, size, yield and air from lot to lot</source>
        <translation>Polvo, tamaño, rendimiento y aire de lote a lote</translation>
    </message>
    <message>
        <source>unusual</source>
        <translation>inusual</translation>
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
        <translation>Sacos</translation>
    </message>
    <message>
        <source>Sieving</source>
        <translation>Tamizado</translation>
    </message>
    <message>
        <source>Mixes</source>
        <translation>Mezclas</translation>
    </message>
    <message>
        <source>Pots and trees</source>
        <translation>Macetas y árboles</translation>
    </message>
    <message>
        <source>Repotting day</source>
        <translation>Jornada de trasplante</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Diario</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Archivo</translation>
    </message>
    <message>
        <source>bench cleared</source>
        <translation>banco vaciado</translation>
    </message>
    <message>
        <source>&amp;Open sieve tests...</source>
        <translation>&amp;Abrir ensayos de tamizado...</translation>
    </message>
    <message>
        <source>Ctrl+Shift+O</source>
        <translation>Ctrl+Shift+O</translation>
    </message>
    <message>
        <source>&amp;Demonstration</source>
        <translation>&amp;Demostración</translation>
    </message>
    <message>
        <source>Ctrl+Shift+D</source>
        <translation>Ctrl+Shift+D</translation>
    </message>
    <message>
        <source>Save the &amp;picture or its data...</source>
        <translation>Guardar la &amp;imagen o sus datos...</translation>
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
        <translation>A&amp;justes</translation>
    </message>
    <message>
        <source>Ctrl+,</source>
        <translation>Ctrl+,</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Salir</translation>
    </message>
    <message>
        <source>Ctrl+Q</source>
        <translation>Ctrl+Q</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Editar</translation>
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
        <translation>&amp;Copiar celdas</translation>
    </message>
    <message>
        <source>&amp;Paste into the stack</source>
        <translation>&amp;Pegar en la columna</translation>
    </message>
    <message>
        <source>C&amp;lear cells</source>
        <translation>&amp;Vaciar celdas</translation>
    </message>
    <message>
        <source>&amp;New sieve above</source>
        <translation>&amp;Nuevo tamiz encima</translation>
    </message>
    <message>
        <source>&amp;Remove sieve</source>
        <translation>&amp;Quitar tamiz</translation>
    </message>
    <message>
        <source>Ctrl+Delete</source>
        <translation>Ctrl+Delete</translation>
    </message>
    <message>
        <source>&amp;Component</source>
        <translation>&amp;Componente</translation>
    </message>
    <message>
        <source>&amp;Next component</source>
        <translation>Componente &amp;siguiente</translation>
    </message>
    <message>
        <source>Ctrl+PgDown</source>
        <translation>Ctrl+PgDown</translation>
    </message>
    <message>
        <source>&amp;Previous component</source>
        <translation>Componente &amp;anterior</translation>
    </message>
    <message>
        <source>Ctrl+PgUp</source>
        <translation>Ctrl+PgUp</translation>
    </message>
    <message>
        <source>&amp;Add a component</source>
        <translation>Añadir un &amp;componente</translation>
    </message>
    <message>
        <source>Ctrl+Shift+N</source>
        <translation>Ctrl+Shift+N</translation>
    </message>
    <message>
        <source>&amp;Remove this component</source>
        <translation>&amp;Quitar este componente</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Delete</source>
        <translation>Ctrl+Shift+Delete</translation>
    </message>
    <message>
        <source>&amp;Further sample of this bag</source>
        <translation>&amp;Otra muestra de este saco</translation>
    </message>
    <message>
        <source>Ctrl+Shift+F</source>
        <translation>Ctrl+Shift+F</translation>
    </message>
    <message>
        <source>Remove the &amp;last sample</source>
        <translation>Quitar la ú&amp;ltima muestra</translation>
    </message>
    <message>
        <source>Ctrl+Alt+F</source>
        <translation>Ctrl+Alt+F</translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation>&amp;Ir</translation>
    </message>
    <message>
        <source>&amp;Any bag, mix or action...</source>
        <translation>Cualquier saco, me&amp;zcla o acción...</translation>
    </message>
    <message>
        <source>Ctrl+K</source>
        <translation>Ctrl+K</translation>
    </message>
    <message>
        <source>&amp;Sieve test</source>
        <translation>Ensa&amp;yo de tamizado</translation>
    </message>
    <message>
        <source>Ctrl+Shift+1</source>
        <translation>Ctrl+Shift+1</translation>
    </message>
    <message>
        <source>&amp;Grain</source>
        <translation>&amp;Grano</translation>
    </message>
    <message>
        <source>Ctrl+Shift+2</source>
        <translation>Ctrl+Shift+2</translation>
    </message>
    <message>
        <source>C&amp;urve of this test</source>
        <translation>C&amp;urva de este ensayo</translation>
    </message>
    <message>
        <source>Ctrl+Shift+3</source>
        <translation>Ctrl+Shift+3</translation>
    </message>
    <message>
        <source>&amp;Lot to lot</source>
        <translation>De &amp;lote a lote</translation>
    </message>
    <message>
        <source>Ctrl+Shift+4</source>
        <translation>Ctrl+Shift+4</translation>
    </message>
    <message>
        <source>&amp;Verdict on the bag</source>
        <translation>&amp;Dictamen del saco</translation>
    </message>
    <message>
        <source>Ctrl+Shift+5</source>
        <translation>Ctrl+Shift+5</translation>
    </message>
    <message>
        <source>S&amp;creen this bag</source>
        <translation>C&amp;ribar este saco</translation>
    </message>
    <message>
        <source>Ctrl+Shift+6</source>
        <translation>Ctrl+Shift+6</translation>
    </message>
    <message>
        <source>&amp;Pot</source>
        <translation>Ma&amp;ceta</translation>
    </message>
    <message>
        <source>Ctrl+Alt+4</source>
        <translation>Ctrl+Alt+4</translation>
    </message>
    <message>
        <source>Curves of the &amp;mix</source>
        <translation>Curvas de la &amp;mezcla</translation>
    </message>
    <message>
        <source>Ctrl+Alt+5</source>
        <translation>Ctrl+Alt+5</translation>
    </message>
    <message>
        <source>Pot in s&amp;ection</source>
        <translation>Maceta en s&amp;ección</translation>
    </message>
    <message>
        <source>Ctrl+Alt+6</source>
        <translation>Ctrl+Alt+6</translation>
    </message>
    <message>
        <source>Litres &amp;in and out</source>
        <translation>Litros que e&amp;ntran y salen</translation>
    </message>
    <message>
        <source>Ctrl+Alt+7</source>
        <translation>Ctrl+Alt+7</translation>
    </message>
    <message>
        <source>Mi&amp;xes side by side</source>
        <translation>Mezclas lado &amp;a lado</translation>
    </message>
    <message>
        <source>Ctrl+Alt+8</source>
        <translation>Ctrl+Alt+8</translation>
    </message>
    <message>
        <source>Find par&amp;ts</source>
        <translation>&amp;Buscar partes</translation>
    </message>
    <message>
        <source>Ctrl+Shift+7</source>
        <translation>Ctrl+Shift+7</translation>
    </message>
    <message>
        <source>&amp;Recipes found</source>
        <translation>Rece&amp;tas encontradas</translation>
    </message>
    <message>
        <source>Ctrl+Shift+8</source>
        <translation>Ctrl+Shift+8</translation>
    </message>
    <message>
        <source>Trade-&amp;offs of the recipes</source>
        <translation>C&amp;ompromisos de las recetas</translation>
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
        <translation>Grano de&amp;seado</translation>
    </message>
    <message>
        <source>Ctrl+B</source>
        <translation>Ctrl+B</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ver</translation>
    </message>
    <message>
        <source>Pictures as &amp;tables</source>
        <translation>Imágenes como &amp;tablas</translation>
    </message>
    <message>
        <source>Ctrl+T</source>
        <translation>Ctrl+T</translation>
    </message>
    <message>
        <source>&amp;Whole curve again</source>
        <translation>&amp;Curva entera otra vez</translation>
    </message>
    <message>
        <source>Ctrl+9</source>
        <translation>Ctrl+9</translation>
    </message>
    <message>
        <source>&amp;US units</source>
        <translation>&amp;Unidades de EE. UU.</translation>
    </message>
    <message>
        <source>Ctrl+Alt+M</source>
        <translation>Ctrl+Alt+M</translation>
    </message>
    <message>
        <source>Colours of the s&amp;ystem</source>
        <translation>Colores del &amp;sistema</translation>
    </message>
    <message>
        <source>Ctrl+Alt+0</source>
        <translation>Ctrl+Alt+0</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>C&amp;laro</translation>
    </message>
    <message>
        <source>Ctrl+Alt+1</source>
        <translation>Ctrl+Alt+1</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Oscuro</translation>
    </message>
    <message>
        <source>Ctrl+Alt+2</source>
        <translation>Ctrl+Alt+2</translation>
    </message>
    <message>
        <source>&amp;High contrast</source>
        <translation>&amp;Alto contraste</translation>
    </message>
    <message>
        <source>Ctrl+Alt+3</source>
        <translation>Ctrl+Alt+3</translation>
    </message>
    <message>
        <source>Larger te&amp;xt</source>
        <translation>Letra &amp;más grande</translation>
    </message>
    <message>
        <source>S&amp;maller text</source>
        <translation>Letra más &amp;pequeña</translation>
    </message>
    <message>
        <source>&amp;Normal text</source>
        <translation>Letra &amp;normal</translation>
    </message>
    <message>
        <source>Ctrl+0</source>
        <translation>Ctrl+0</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>A&amp;yuda</translation>
    </message>
    <message>
        <source>&amp;Manual: this page</source>
        <translation>&amp;Manual: esta página</translation>
    </message>
    <message>
        <source>F1</source>
        <translation>F1</translation>
    </message>
    <message>
        <source>C&amp;ontents of the manual</source>
        <translation>Í&amp;ndice del manual</translation>
    </message>
    <message>
        <source>Ctrl+Shift+F1</source>
        <translation>Ctrl+Shift+F1</translation>
    </message>
    <message>
        <source>The &amp;three doors</source>
        <translation>Las &amp;tres puertas</translation>
    </message>
    <message>
        <source>Alt+Shift+F1</source>
        <translation>Alt+Shift+F1</translation>
    </message>
    <message>
        <source>Show &amp;cautions again</source>
        <translation>Volver a mostrar las &amp;advertencias</translation>
    </message>
    <message>
        <source>Shift+F1</source>
        <translation>Shift+F1</translation>
    </message>
    <message>
        <source>&amp;About Gritwright</source>
        <translation>Acerca &amp;de Gritwright</translation>
    </message>
    <message>
        <source>Ctrl+F1</source>
        <translation>Ctrl+F1</translation>
    </message>
    <message>
        <source>About Gritwright</source>
        <translation>Acerca de Gritwright</translation>
    </message>
    <message>
        <source>Gritwright %1: grading, mixes and pots for trees in shallow containers.

Free software under the GNU General Public License, version 3 or later, without any warranty.
Estimates are general information; where a figure matters, measure it in a pot test.</source>
        <translation>Gritwright %1: granulometría, mezclas y macetas para árboles en recipientes poco profundos.

Software libre bajo la Licencia Pública General GNU, versión 3 o posterior, sin garantía alguna.
Las estimaciones son información general; donde una cifra importe, mídala con un ensayo en maceta.</translation>
    </message>
    <message>
        <source>Save “%1”</source>
        <translation>Guardar «%1»</translation>
    </message>
    <message>
        <source>Picture (*.png);;Drawing (*.svg);;PDF (*.pdf);;Its data (*.csv)</source>
        <translation>Imagen (*.png);;Dibujo (*.svg);;PDF (*.pdf);;Sus datos (*.csv)</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Guardado como %1.</translation>
    </message>
    <message>
        <source>Test sheet as PDF</source>
        <translation>Hoja de ensayo como PDF</translation>
    </message>
    <message>
        <source>sieve test.pdf</source>
        <translation>ensayo de tamizado.pdf</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Gritwright – demonstration, an invented nursery</source>
        <translation>Gritwright – demostración, un vivero inventado</translation>
    </message>
    <message>
        <source>Demonstration: everything here is invented and goes when this window is closed.</source>
        <translation>Demostración: todo lo de aquí es inventado y desaparece al cerrar esta ventana.</translation>
    </message>
    <message>
        <source>The demonstration can&apos;t be opened</source>
        <translation>No se puede abrir la demostración</translation>
    </message>
    <message>
        <source>demonstration opened</source>
        <translation>demostración abierta</translation>
    </message>
    <message>
        <source>Open sieve tests</source>
        <translation>Abrir ensayos de tamizado</translation>
    </message>
    <message>
        <source>Sieve tests (*.csv *.json);;All files (*)</source>
        <translation>Ensayos de tamizado (*.csv *.json);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>%1 was not opened</source>
        <translation>%1 no se abrió</translation>
    </message>
    <message>
        <source>A mix here has up to %1 components; remove one first.</source>
        <translation>Aquí una mezcla tiene hasta %1 componentes; quite antes uno.</translation>
    </message>
    <message>
        <source>%1 opened</source>
        <translation>%1 abierto</translation>
    </message>
    <message>
        <source>&amp;Years to come</source>
        <translation>Años &amp;venideros</translation>
    </message>
    <message>
        <source>Ctrl+Alt+Y</source>
        <translation>Ctrl+Alt+Y</translation>
    </message>
    <message>
        <source>The record could not be opened, so this page is empty; what lies on the bench is kept all the same.</source>
        <translation>No se pudo abrir el registro, así que esta página está vacía; lo que hay en el banco se conserva de todos modos.</translation>
    </message>
    <message>
        <source>What can be done...</source>
        <translation>Qué se puede hacer...</translation>
    </message>
    <message>
        <source>Records from a f&amp;ile...</source>
        <translation>&amp;Registros de un archivo...</translation>
    </message>
    <message>
        <source>Ctrl+I</source>
        <translation>Ctrl+I</translation>
    </message>
    <message>
        <source>Open &amp;another record...</source>
        <translation>Abrir otro re&amp;gistro...</translation>
    </message>
    <message>
        <source>Ctrl+Alt+W</source>
        <translation>Ctrl+Alt+W</translation>
    </message>
    <message>
        <source>&amp;Back to the usual record</source>
        <translation>&amp;Volver al registro habitual</translation>
    </message>
    <message>
        <source>Ctrl+Alt+H</source>
        <translation>Ctrl+Alt+H</translation>
    </message>
    <message>
        <source>Bac&amp;kups of the record</source>
        <translation>Copias de seg&amp;uridad del registro</translation>
    </message>
    <message>
        <source>Ctrl+Alt+U</source>
        <translation>Ctrl+Alt+U</translation>
    </message>
    <message>
        <source>Open another record</source>
        <translation>Abrir otro registro</translation>
    </message>
    <message>
        <source>Gritwright records (*.gritwright);;All files (*)</source>
        <translation>Registros de Gritwright (*.gritwright);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Restore a backup</source>
        <translation>Restaurar una copia de seguridad</translation>
    </message>
    <message>
        <source>Put %1 in the place of the record?</source>
        <translation>¿Poner %1 en lugar del registro?</translation>
    </message>
    <message>
        <source>What was written down since then is no longer in the record. The record as it is now stays beside it under a name of its own, so nothing is lost.</source>
        <translation>Lo anotado desde entonces ya no está en el registro. El registro tal como está queda a su lado con nombre propio, así que no se pierde nada.</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Restaurar</translation>
    </message>
    <message>
        <source>Gritwright – %1, reading only</source>
        <translation>Gritwright – %1, solo lectura</translation>
    </message>
    <message>
        <source>Gritwright – %1</source>
        <translation>Gritwright – %1</translation>
    </message>
    <message>
        <source>%1 is open for reading only: nothing here can be changed.</source>
        <translation>%1 está abierto solo para lectura: aquí no se puede cambiar nada.</translation>
    </message>
    <message>
        <source>This is %1, not the usual record.</source>
        <translation>Este es %1, no el registro habitual.</translation>
    </message>
    <message>
        <source>Open po&amp;t...</source>
        <translation>Abrir ma&amp;ceta...</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Deshacer: %1</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Deshacer</translation>
    </message>
    <message>
        <source>Re&amp;do: %1</source>
        <translation>&amp;Rehacer: %1</translation>
    </message>
    <message>
        <source>Re&amp;do</source>
        <translation>&amp;Rehacer</translation>
    </message>
    <message>
        <source>Pot tests against the pre&amp;dictions</source>
        <translation>Ensayos en maceta y &amp;previsiones</translation>
    </message>
    <message>
        <source>Open pot</source>
        <translation>Abrir maceta</translation>
    </message>
    <message>
        <source>Pots (*.json);;All files (*)</source>
        <translation>Macetas (*.json);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>pot opened</source>
        <translation>maceta abierta</translation>
    </message>
    <message>
        <source>Bottom layer and top dressing of the pot are not on this form and were left out.</source>
        <translation>La capa de fondo y la cobertura de la maceta no están en este formulario y se omitieron.</translation>
    </message>
    <message>
        <source>%1 could not be written: end its name in png, svg, pdf or csv, and choose a folder you may write to.</source>
        <translation>No se pudo escribir %1: termine el nombre en png, svg, pdf o csv y elija una carpeta en la que pueda escribir.</translation>
    </message>
    <message>
        <source>%1 could not be written: choose a folder you may write to.</source>
        <translation>No se pudo escribir %1: elija una carpeta en la que pueda escribir.</translation>
    </message>
    <message>
        <source>Cl&amp;ear the bench</source>
        <translation>Vaciar el ba&amp;nco</translation>
    </message>
    <message>
        <source>There is no picture on this page to save.</source>
        <translation>En esta página no hay ninguna imagen que guardar.</translation>
    </message>
    <message>
        <source>P&amp;rint the sheet...</source>
        <translation>Im&amp;primir la hoja...</translation>
    </message>
    <message>
        <source>S&amp;heet as PDF...</source>
        <translation>&amp;Hoja como PDF...</translation>
    </message>
    <message>
        <source>Nothing here goes on paper. Sieving and Mixes (Ctrl+2) have the sheet of a test, Pots and trees that of a plan, Repotting day its lists.</source>
        <translation>Nada de aquí va al papel. Tamizado y Mezclas (Ctrl+2) tienen la hoja de un ensayo, Macetas y árboles la de un plan, Jornada de trasplante sus listas.</translation>
    </message>
    <message>
        <source>Text at %1 %.</source>
        <translation>Texto al %1 %.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ManualPage</name>
    <message>
        <source>Search the manual</source>
        <translation>Buscar en el manual</translation>
    </message>
    <message>
        <source>one word or several</source>
        <translation>una palabra o varias</translation>
    </message>
    <message>
        <source>Page before</source>
        <translation>Página anterior</translation>
    </message>
    <message>
        <source>To the work (Esc)</source>
        <translation>Al trabajo (Esc)</translation>
    </message>
    <message>
        <source>Chapters</source>
        <translation>Capítulos</translation>
    </message>
    <message>
        <source>Text of the chapter</source>
        <translation>Texto del capítulo</translation>
    </message>
    <message>
        <source>in no chapter</source>
        <translation>en ningún capítulo</translation>
    </message>
    <message numerus="yes">
        <source>in %n chapter(s)</source>
        <translation>
            <numerusform>en %n capítulo</numerusform>
            <numerusform>en %n capítulos</numerusform>
        </translation>
    </message>
    <message>
        <source>The manual is written in English.</source>
        <translation>El manual está escrito en inglés.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::MeasurePage</name>
    <message>
        <source>Measurement</source>
        <translation>Medición</translation>
    </message>
    <message>
        <source>&amp;Measure</source>
        <translation>&amp;Medición</translation>
    </message>
    <message>
        <source>What is measured</source>
        <translation>Lo que se mide</translation>
    </message>
    <message>
        <source>Pot of the test</source>
        <translation>Maceta del ensayo</translation>
    </message>
    <message>
        <source>In the &amp;pot</source>
        <translation>En la mace&amp;ta</translation>
    </message>
    <message>
        <source>Dust, heat and weight:</source>
        <translation>Polvo, calor y peso:</translation>
    </message>
    <message>
        <source>dry dusty grain outdoors with a mask; let hot dishes cool; lift wet pots with both hands. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation>seque el grano polvoriento al aire libre y con mascarilla; deje enfriar los platos calientes; levante las macetas mojadas con ambas manos. Información general; prevalecen las fichas de seguridad, las normas locales y el consejo cualificado.</translation>
    </message>
    <message>
        <source>&amp;Keep what was measured</source>
        <translation>&amp;Guardar lo medido</translation>
    </message>
    <message>
        <source>Keep what was measured</source>
        <translation>Guardar lo medido</translation>
    </message>
    <message>
        <source>Mi&amp;x</source>
        <translation>Me&amp;zcla</translation>
    </message>
    <message>
        <source>&amp;Bag or mix</source>
        <translation>Saco &amp;o mezcla</translation>
    </message>
    <message>
        <source>&amp;Bag</source>
        <translation>&amp;Saco</translation>
    </message>
    <message>
        <source>Complete: keep it, and the estimates use it from now on.</source>
        <translation>Completo: guárdelo y las estimaciones lo usarán desde ahora.</translation>
    </message>
    <message>
        <source>Is that right?</source>
        <translation>¿Es correcto?</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Guardado: %1</translation>
    </message>
    <message>
        <source>straight walls</source>
        <translation>paredes rectas</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::MixPage</name>
    <message>
        <source>Mix</source>
        <translation>Mezcla</translation>
    </message>
    <message>
        <source>name of the mix</source>
        <translation>nombre de la mezcla</translation>
    </message>
    <message>
        <source>what it is for</source>
        <translation>para qué es</translation>
    </message>
    <message>
        <source>&amp;Keep this mix</source>
        <translation>Guardar esta me&amp;zcla</translation>
    </message>
    <message>
        <source>Keep this mix in the record</source>
        <translation>Guardar esta mezcla en el registro</translation>
    </message>
    <message>
        <source>Ways to a mix</source>
        <translation>Caminos a una mezcla</translation>
    </message>
    <message>
        <source>By hand</source>
        <translation>A mano</translation>
    </message>
    <message>
        <source>Find parts</source>
        <translation>Buscar partes</translation>
    </message>
    <message>
        <source>Dust and moss:</source>
        <translation>Polvo y musgo:</translation>
    </message>
    <message>
        <source>wet the grain before mixing it, and keep long-fibred moss off your skin and out of your lungs. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation>moje el grano antes de mezclarlo y mantenga el musgo de fibra larga lejos de la piel y los pulmones. Información general; prevalecen las fichas de seguridad, las normas locales y el consejo cualificado.</translation>
    </message>
    <message>
        <source>Pot</source>
        <translation>Maceta</translation>
    </message>
    <message>
        <source>Pot test: measure air and water of a kept mix</source>
        <translation>Ensayo en maceta: medir aire y agua de una mezcla guardada</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>Curvas</translation>
    </message>
    <message>
        <source>Pot in section</source>
        <translation>Maceta en sección</translation>
    </message>
    <message>
        <source>Litres</source>
        <translation>Litros</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Comparar</translation>
    </message>
    <message>
        <source>Trade-offs</source>
        <translation>Compromisos</translation>
    </message>
    <message>
        <source>Pot tests</source>
        <translation>Ensayos en maceta</translation>
    </message>
    <message>
        <source>Pictures of the mix</source>
        <translation>Imágenes de la mezcla</translation>
    </message>
    <message>
        <source>What would narrow it most?</source>
        <translation>¿Qué lo precisaría más?</translation>
    </message>
    <message>
        <source>Worked out as soon as the mix stands still.</source>
        <translation>Se calcula en cuanto la mezcla queda quieta.</translation>
    </message>
    <message>
        <source>Mind: %1</source>
        <translation>Atención: %1</translation>
    </message>
    <message>
        <source>Years</source>
        <translation>Años</translation>
    </message>
    <message>
        <source>Pot test...</source>
        <translation>Ensayo en maceta...</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::Navigation</name>
    <message>
        <source>Pages</source>
        <translation>Páginas</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::NewPotForm</name>
    <message>
        <source>&amp;Keep this pot</source>
        <translation>&amp;Guardar esta maceta</translation>
    </message>
    <message>
        <source>A new pot</source>
        <translation>Una maceta nueva</translation>
    </message>
    <message>
        <source>Measure its inside at the rim, and its depth. Nothing is worked out before.</source>
        <translation>Mida su interior en el borde, y la profundidad. Antes no se calcula nada.</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>as you call it</source>
        <translation>como usted la llama</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Forma</translation>
    </message>
    <message>
        <source>&amp;Shape</source>
        <translation>F&amp;orma</translation>
    </message>
    <message>
        <source>Rim, length</source>
        <translation>Borde, largo</translation>
    </message>
    <message>
        <source>Rim, across flats</source>
        <translation>Borde, entre caras</translation>
    </message>
    <message>
        <source>Rim, diameter</source>
        <translation>Borde, diámetro</translation>
    </message>
    <message>
        <source>inside, at the rim</source>
        <translation>por dentro, en el borde</translation>
    </message>
    <message>
        <source>Rim, width</source>
        <translation>Borde, ancho</translation>
    </message>
    <message>
        <source>Middle, diameter</source>
        <translation>Medio, diámetro</translation>
    </message>
    <message>
        <source>inside, at half the depth</source>
        <translation>por dentro, a media profundidad</translation>
    </message>
    <message>
        <source>&amp;Depth inside</source>
        <translation>Pro&amp;fundidad interior</translation>
    </message>
    <message>
        <source>floor to rim</source>
        <translation>del fondo al borde</translation>
    </message>
    <message>
        <source>Keep this pot</source>
        <translation>Guardar esta maceta</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Ahora no</translation>
    </message>
    <message>
        <source>Not now; what is typed waits</source>
        <translation>Ahora no; lo escrito queda en espera</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>maceta</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PartsBar</name>
    <message>
        <source>No mix yet: finish the sieve tests and give them parts.</source>
        <translation>Aún no hay mezcla: termine los ensayos de tamizado y deles partes.</translation>
    </message>
    <message>
        <source>voids between grains</source>
        <translation>huecos entre granos</translation>
    </message>
    <message>
        <source>voids in grains</source>
        <translation>poros de los granos</translation>
    </message>
    <message>
        <source>solid grain</source>
        <translation>grano sólido</translation>
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
        <translation>Entran %1; salen %2 mezclados, de los cuales %3 una vez asentados.</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>cuánto</translation>
    </message>
    <message>
        <source>%1, loose</source>
        <translation>%1, suelto</translation>
    </message>
    <message>
        <source>mixed, poured</source>
        <translation>mezclado, vertido</translation>
    </message>
    <message>
        <source>%1, settled</source>
        <translation>%1, asentado</translation>
    </message>
    <message>
        <source>Litres in and litres out</source>
        <translation>Litros que entran y salen</translation>
    </message>
    <message>
        <source>In: %1 loose, each by itself</source>
        <translation>Entra: %1 suelto, cada uno por sí</translation>
    </message>
    <message>
        <source>Out: %1 mixed; what fills it once settled</source>
        <translation>Sale: %1 mezclado; lo que lo llena una vez asentado</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>90 of 100 cases</source>
        <translation>90 de 100 casos</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PartsPanel</name>
    <message>
        <source>Components, in parts of loose litres</source>
        <translation>Componentes, en partes de litros sueltos</translation>
    </message>
    <message>
        <source>parts of %1</source>
        <translation>partes de %1</translation>
    </message>
    <message>
        <source>component %1</source>
        <translation>componente %1</translation>
    </message>
    <message>
        <source>Parts of %1, slider</source>
        <translation>Partes de %1, deslizador</translation>
    </message>
    <message>
        <source>Parts of %1</source>
        <translation>Partes de %1</translation>
    </message>
    <message>
        <source>Component %1</source>
        <translation>Componente %1</translation>
    </message>
    <message>
        <source>new component</source>
        <translation>componente nuevo</translation>
    </message>
    <message>
        <source>%1 removed</source>
        <translation>%1 quitado</translation>
    </message>
    <message>
        <source>A mix here has up to %1 components; remove one first.</source>
        <translation>Aquí una mezcla tiene hasta %1 componentes; quite primero uno.</translation>
    </message>
    <message>
        <source>Show %1</source>
        <translation>Mostrar %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PictureTabs</name>
    <message>
        <source>As a table</source>
        <translation>Como tabla</translation>
    </message>
    <message>
        <source>Pictures as tables</source>
        <translation>Imágenes como tablas</translation>
    </message>
    <message>
        <source>%1, as a table</source>
        <translation>%1, como tabla</translation>
    </message>
    <message>
        <source>As a picture</source>
        <translation>Como imagen</translation>
    </message>
    <message>
        <source>How so: %1</source>
        <translation>De dónde sale: %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PotDrawing</name>
    <message>
        <source>rim</source>
        <translation>borde</translation>
    </message>
    <message>
        <source>fill line</source>
        <translation>línea de llenado</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>fondo</translation>
    </message>
    <message>
        <source>The pot to scale, from the front and from above</source>
        <translation>La maceta a escala, de frente y desde arriba</translation>
    </message>
    <message>
        <source>Inside %1 by %2 at the rim, %3 by %4 at the floor, %5 deep, filled %6.</source>
        <translation>Por dentro %1 por %2 en el borde, %3 por %4 en el fondo, %5 de hondo, llena %6.</translation>
    </message>
    <message>
        <source>No pot yet.</source>
        <translation>Aún no hay maceta.</translation>
    </message>
    <message>
        <source>where</source>
        <translation>dónde</translation>
    </message>
    <message>
        <source>height</source>
        <translation>altura</translation>
    </message>
    <message>
        <source>length</source>
        <translation>largo</translation>
    </message>
    <message>
        <source>width</source>
        <translation>ancho</translation>
    </message>
    <message>
        <source>rim %1</source>
        <translation>borde %1</translation>
    </message>
    <message>
        <source>floor %1, depth %2</source>
        <translation>fondo %1, hondo %2</translation>
    </message>
    <message>
        <source>from above, %1 wide</source>
        <translation>desde arriba, %1 de ancho</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PotForm</name>
    <message>
        <source>Shape</source>
        <translation>Forma</translation>
    </message>
    <message>
        <source>rectangle</source>
        <translation>rectángulo</translation>
    </message>
    <message>
        <source>oval</source>
        <translation>óvalo</translation>
    </message>
    <message>
        <source>round</source>
        <translation>redonda</translation>
    </message>
    <message>
        <source>hexagon</source>
        <translation>hexágono</translation>
    </message>
    <message>
        <source>octagon</source>
        <translation>octágono</translation>
    </message>
    <message>
        <source>drum, lip turned in</source>
        <translation>tambor, borde hacia dentro</translation>
    </message>
    <message>
        <source>soft rectangle</source>
        <translation>rectángulo suave</translation>
    </message>
    <message>
        <source>bowl</source>
        <translation>cuenco</translation>
    </message>
    <message>
        <source>Sha&amp;pe</source>
        <translation>&amp;Forma</translation>
    </message>
    <message>
        <source>shape of the pot</source>
        <translation>forma de la maceta</translation>
    </message>
    <message>
        <source>Rim, length</source>
        <translation>Borde, largo</translation>
    </message>
    <message>
        <source>rim of the pot</source>
        <translation>borde de la maceta</translation>
    </message>
    <message>
        <source>inside, at the rim</source>
        <translation>por dentro, en el borde</translation>
    </message>
    <message>
        <source>Rim, diameter</source>
        <translation>Borde, diámetro</translation>
    </message>
    <message>
        <source>Rim, across flats</source>
        <translation>Borde, entre caras</translation>
    </message>
    <message>
        <source>Rim, &amp;width</source>
        <translation>&amp;Borde, ancho</translation>
    </message>
    <message>
        <source>rim width of the pot</source>
        <translation>ancho del borde de la maceta</translation>
    </message>
    <message>
        <source>&amp;Middle, diameter</source>
        <translation>Me&amp;dio, diámetro</translation>
    </message>
    <message>
        <source>middle of the pot</source>
        <translation>medio de la maceta</translation>
    </message>
    <message>
        <source>inside, at half the depth</source>
        <translation>por dentro, a media profundidad</translation>
    </message>
    <message>
        <source>as the rim: straight walls</source>
        <translation>como el borde: paredes rectas</translation>
    </message>
    <message>
        <source>Corner e&amp;xponent</source>
        <translation>E&amp;xponente de esquina</translation>
    </message>
    <message>
        <source>corner exponent of the pot</source>
        <translation>exponente de esquina de la maceta</translation>
    </message>
    <message>
        <source>2 an ellipse, 4 soft corners, 6 nearly square</source>
        <translation>2 una elipse, 4 esquinas suaves, 6 casi cuadrado</translation>
    </message>
    <message>
        <source>Dep&amp;th inside</source>
        <translation>&amp;Profundidad interior</translation>
    </message>
    <message>
        <source>depth of the pot</source>
        <translation>profundidad de la maceta</translation>
    </message>
    <message>
        <source>floor to rim</source>
        <translation>del fondo al borde</translation>
    </message>
    <message>
        <source>F&amp;ill line below rim</source>
        <translation>Llenado ba&amp;jo el borde</translation>
    </message>
    <message>
        <source>fill line of the pot</source>
        <translation>línea de llenado de la maceta</translation>
    </message>
    <message>
        <source>common practice: 0.3 to 1 cm</source>
        <translation>práctica común: 0,3 a 1 cm</translation>
    </message>
    <message>
        <source>W&amp;ater fill</source>
        <translation>Lle&amp;nado con agua</translation>
    </message>
    <message>
        <source>water fill of the pot</source>
        <translation>llenado con agua de la maceta</translation>
    </message>
    <message>
        <source>measured; overrides the lengths</source>
        <translation>medido; prevalece</translation>
    </message>
    <message>
        <source>Mou&amp;nd above it</source>
        <translation>Montíc&amp;ulo encima</translation>
    </message>
    <message>
        <source>mound of the pot</source>
        <translation>montículo de la maceta</translation>
    </message>
    <message>
        <source>rise in the middle; none if empty</source>
        <translation>en el centro; vacío: nada</translation>
    </message>
    <message>
        <source>Sa&amp;ucer water</source>
        <translation>Agua en e&amp;l plato</translation>
    </message>
    <message>
        <source>saucer of the pot</source>
        <translation>plato de la maceta</translation>
    </message>
    <message>
        <source>standing water above the floor</source>
        <translation>agua estancada sobre el fondo</translation>
    </message>
    <message>
        <source>wick of the pot</source>
        <translation>mecha de la maceta</translation>
    </message>
    <message>
        <source>length below the floor</source>
        <translation>longitud bajo el fondo</translation>
    </message>
    <message>
        <source>tilt of the pot</source>
        <translation>inclinación de la maceta</translation>
    </message>
    <message>
        <source>about the length; level if empty</source>
        <translation>a lo largo; vacío: a nivel</translation>
    </message>
    <message>
        <source>settling</source>
        <translation>asentamiento</translation>
    </message>
    <message>
        <source>&amp;Spill</source>
        <translation>Derra&amp;me</translation>
    </message>
    <message>
        <source>spill</source>
        <translation>derrame</translation>
    </message>
    <message>
        <source>mix that misses the pot, 5 to 10</source>
        <translation>mezcla que cae fuera, 5 a 10</translation>
    </message>
    <message>
        <source>lost volume: 0 poured, about 8 worked in; empty: by jug tests of the bags, else as usual</source>
        <translation>volumen perdido: 0 vertido, unos 8 asentado; vacío: según sus jarras, o lo habitual</translation>
    </message>
    <message>
        <source>empty: %1, by a jug of this mix</source>
        <translation>vacío: %1, por una jarra de esta mezcla</translation>
    </message>
    <message>
        <source>empty: %1, by your jug tests</source>
        <translation>vacío: %1, por sus jarras</translation>
    </message>
    <message>
        <source>empty: %1, worked in; 0 if poured</source>
        <translation>vacío: %1, asentado; 0 si se vierte</translation>
    </message>
    <message>
        <source>One of your pots</source>
        <translation>Una de sus macetas</translation>
    </message>
    <message>
        <source>&amp;Your pots</source>
        <translation>&amp;Sus macetas</translation>
    </message>
    <message>
        <source>Wick or ground</source>
        <translation>Mecha o suelo</translation>
    </message>
    <message>
        <source>none is kept yet</source>
        <translation>aún no hay ninguna guardada</translation>
    </message>
    <message>
        <source>Floor, length</source>
        <translation>Fondo, largo</translation>
    </message>
    <message>
        <source>floor of the pot</source>
        <translation>fondo de la maceta</translation>
    </message>
    <message>
        <source>Floor, diameter</source>
        <translation>Fondo, diámetro</translation>
    </message>
    <message>
        <source>Floor, across flats</source>
        <translation>Fondo, entre caras</translation>
    </message>
    <message>
        <source>Floor, width</source>
        <translation>Fondo, ancho</translation>
    </message>
    <message>
        <source>floor width of the pot</source>
        <translation>anchura del fondo de la maceta</translation>
    </message>
    <message>
        <source>Tilt, deg&amp;rees</source>
        <translation>Inclinación, grados</translation>
    </message>
    <message>
        <source>Sett&amp;ling</source>
        <translation>Asen&amp;tamiento</translation>
    </message>
    <message>
        <source>as typed</source>
        <translation>lo escrito</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PotSectionView</name>
    <message>
        <source>No pot yet: type its shape and inside lengths.</source>
        <translation>Aún no hay maceta: escriba su forma y medidas interiores.</translation>
    </message>
    <message>
        <source>Pot in section, filled %1 deep; no mix yet, so no water.</source>
        <translation>Maceta en sección, llena %1 de hondo; aún sin mezcla, así que sin agua.</translation>
    </message>
    <message>
        <source>Pot in section, filled %1 deep: the lowest %2 stay wet; water %3 at the floor and %4 at the fill line.</source>
        <translation>Maceta en sección, llena %1 de hondo: los %2 inferiores quedan mojados; agua %3 en el fondo y %4 en la línea de llenado.</translation>
    </message>
    <message>
        <source>Pot in section; up and down change its depth</source>
        <translation>Maceta en sección; arriba y abajo cambian su profundidad</translation>
    </message>
    <message>
        <source>Drag the rim, or press Up and Down, to try another depth</source>
        <translation>Arrastre el borde, o pulse Arriba y Abajo, para probar otra profundidad</translation>
    </message>
    <message>
        <source>wet zone %1</source>
        <translation>zona saturada %1</translation>
    </message>
    <message>
        <source>filled %1</source>
        <translation>llena %1</translation>
    </message>
    <message>
        <source>depth inside %1</source>
        <translation>profundidad interior %1</translation>
    </message>
    <message>
        <source>depth of the pot</source>
        <translation>profundidad de la maceta</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PotsTab</name>
    <message>
        <source>%1 of pot %2</source>
        <translation>%1 de la maceta %2</translation>
    </message>
    <message>
        <source>Pots</source>
        <translation>Macetas</translation>
    </message>
    <message>
        <source>pot by number or name</source>
        <translation>número o nombre</translation>
    </message>
    <message>
        <source>No pots yet. Add one and measure its inside: length and width at the rim and at the floor, and the depth.</source>
        <translation>Aún no hay macetas. Añada una y mida su interior: largo y ancho en el borde y en el fondo, y la profundidad.</translation>
    </message>
    <message>
        <source>free or taken</source>
        <translation>libre u ocupada</translation>
    </message>
    <message>
        <source>Add a &amp;pot</source>
        <translation>Aña&amp;dir una maceta</translation>
    </message>
    <message>
        <source>taken: %1</source>
        <translation>ocupada: %1</translation>
    </message>
    <message>
        <source>given away</source>
        <translation>dada</translation>
    </message>
    <message>
        <source>free</source>
        <translation>libre</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>as you call it</source>
        <translation>como usted la llama</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Forma</translation>
    </message>
    <message>
        <source>table of areas</source>
        <translation>tabla de áreas</translation>
    </message>
    <message>
        <source>&amp;Shape</source>
        <translation>F&amp;orma</translation>
    </message>
    <message>
        <source>broken, sold or given away</source>
        <translation>rota, vendida o regalada</translation>
    </message>
    <message>
        <source>whereabouts</source>
        <translation>paradero</translation>
    </message>
    <message>
        <source>Rim, length</source>
        <translation>Borde, largo</translation>
    </message>
    <message>
        <source>inside, at the rim</source>
        <translation>por dentro, en el borde</translation>
    </message>
    <message>
        <source>rim</source>
        <translation>borde</translation>
    </message>
    <message>
        <source>Rim, diameter</source>
        <translation>Borde, diámetro</translation>
    </message>
    <message>
        <source>Rim, across flats</source>
        <translation>Borde, entre caras</translation>
    </message>
    <message>
        <source>Rim, width</source>
        <translation>Borde, ancho</translation>
    </message>
    <message>
        <source>rim width</source>
        <translation>ancho del borde</translation>
    </message>
    <message>
        <source>Middle, diameter</source>
        <translation>Medio, diámetro</translation>
    </message>
    <message>
        <source>inside, at half the depth</source>
        <translation>por dentro, a media profundidad</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>medio</translation>
    </message>
    <message>
        <source>Floor, length</source>
        <translation>Fondo, largo</translation>
    </message>
    <message>
        <source>as the rim: straight walls</source>
        <translation>como el borde: paredes rectas</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>fondo</translation>
    </message>
    <message>
        <source>Floor, diameter</source>
        <translation>Fondo, diámetro</translation>
    </message>
    <message>
        <source>Floor, across flats</source>
        <translation>Fondo, entre caras</translation>
    </message>
    <message>
        <source>Floor, width</source>
        <translation>Fondo, ancho</translation>
    </message>
    <message>
        <source>floor width</source>
        <translation>ancho del fondo</translation>
    </message>
    <message>
        <source>Corner exponent</source>
        <translation>Exponente de esquina</translation>
    </message>
    <message>
        <source>2 an ellipse, 4 soft corners, 6 nearly square</source>
        <translation>2 una elipse, 4 esquinas suaves, 6 casi cuadrado</translation>
    </message>
    <message>
        <source>corner exponent</source>
        <translation>exponente de esquina</translation>
    </message>
    <message>
        <source>Heights and areas</source>
        <translation>Alturas y áreas</translation>
    </message>
    <message>
        <source>cm and cm2 from the floor: 0 450; 4 520; 8 600</source>
        <translation>cm y cm2 desde el fondo: 0 450; 4 520; 8 600</translation>
    </message>
    <message>
        <source>&amp;Depth inside</source>
        <translation>Pro&amp;fundidad interior</translation>
    </message>
    <message>
        <source>floor to rim</source>
        <translation>del fondo al borde</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>profundidad</translation>
    </message>
    <message>
        <source>Corner radius</source>
        <translation>Radio de esquina</translation>
    </message>
    <message>
        <source>sharp corners if empty</source>
        <translation>vacío: esquinas vivas</translation>
    </message>
    <message>
        <source>corner radius</source>
        <translation>radio de esquina</translation>
    </message>
    <message>
        <source>Rounding at the floor</source>
        <translation>Redondeo del fondo</translation>
    </message>
    <message>
        <source>radius between floor and wall</source>
        <translation>radio entre fondo y pared</translation>
    </message>
    <message>
        <source>rounding at the floor</source>
        <translation>redondeo del fondo</translation>
    </message>
    <message>
        <source>Fill line below rim</source>
        <translation>Llenado bajo el borde</translation>
    </message>
    <message>
        <source>common practice: 0.3 to 1 cm</source>
        <translation>práctica común: 0,3 a 1 cm</translation>
    </message>
    <message>
        <source>fill line</source>
        <translation>línea de llenado</translation>
    </message>
    <message>
        <source>&amp;Water fill</source>
        <translation>&amp;Llenado con agua</translation>
    </message>
    <message>
        <source>water fill</source>
        <translation>llenado con agua</translation>
    </message>
    <message>
        <source>Bottom layer</source>
        <translation>Capa de fondo</translation>
    </message>
    <message>
        <source>coarse grain on the floor; none if empty</source>
        <translation>grano grueso; vacío: nada</translation>
    </message>
    <message>
        <source>bottom layer</source>
        <translation>capa de fondo</translation>
    </message>
    <message>
        <source>Top dressing</source>
        <translation>Cobertura</translation>
    </message>
    <message>
        <source>top dressing</source>
        <translation>cobertura</translation>
    </message>
    <message>
        <source>Own &amp;mass</source>
        <translation>&amp;Masa propia</translation>
    </message>
    <message>
        <source>empty and dry; for lifting</source>
        <translation>vacía y seca; para levantarla</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masa</translation>
    </message>
    <message>
        <source>Drain holes</source>
        <translation>Agujeros de drenaje</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>cuántos</translation>
    </message>
    <message>
        <source>drain holes</source>
        <translation>agujeros de drenaje</translation>
    </message>
    <message>
        <source>Feet</source>
        <translation>Pies</translation>
    </message>
    <message>
        <source>height under the pot</source>
        <translation>altura bajo la maceta</translation>
    </message>
    <message>
        <source>feet</source>
        <translation>pies</translation>
    </message>
    <message>
        <source>No&amp;te</source>
        <translation>No&amp;ta</translation>
    </message>
    <message>
        <source>glaze, chips, where it stands</source>
        <translation>esmalte, desconchones, dónde está</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>Picture of the pot</source>
        <translation>Imagen de la maceta</translation>
    </message>
    <message>
        <source>The pot to scale</source>
        <translation>La maceta a escala</translation>
    </message>
    <message>
        <source>shape</source>
        <translation>forma</translation>
    </message>
    <message>
        <source>pot added</source>
        <translation>maceta añadida</translation>
    </message>
    <message>
        <source>Pot %1 stays: a tree&apos;s history or a day names it. Mark it as given away instead.</source>
        <translation>La maceta %1 se queda: la nombra el historial de un árbol o una jornada. Márquela como dada.</translation>
    </message>
    <message>
        <source>pot %1 removed</source>
        <translation>maceta %1 quitada</translation>
    </message>
    <message>
        <source>Pot %1: %2</source>
        <translation>Maceta %1: %2</translation>
    </message>
    <message>
        <source>What it holds</source>
        <translation>Lo que cabe</translation>
    </message>
    <message>
        <source>to the fill line</source>
        <translation>hasta la línea de llenado</translation>
    </message>
    <message>
        <source>by its lengths alone</source>
        <translation>solo por sus medidas</translation>
    </message>
    <message>
        <source>water fill against lengths</source>
        <translation>agua frente a medidas</translation>
    </message>
    <message>
        <source>no water fill was measured</source>
        <translation>no se midió el llenado con agua</translation>
    </message>
    <message>
        <source>main mix, without layers</source>
        <translation>mezcla principal, sin capas</translation>
    </message>
    <message>
        <source>Mound above it</source>
        <translation>Montículo encima</translation>
    </message>
    <message>
        <source>rise in the middle; none if empty</source>
        <translation>en el centro; vacío: nada</translation>
    </message>
    <message>
        <source>mound</source>
        <translation>montículo</translation>
    </message>
    <message>
        <source>measured; overrides the lengths</source>
        <translation>medido; prevalece</translation>
    </message>
    <message>
        <source>usual 0.3 to 0.5; none if empty</source>
        <translation>usual 0.3 a 0.5; vacío: ninguno</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ProtocolDrawing</name>
    <message>
        <source>How it is done: %1</source>
        <translation>Cómo se hace: %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecipesPanel</name>
    <message>
        <source>Recipes, best first</source>
        <translation>Recetas, la mejor primero</translation>
    </message>
    <message>
        <source>How far the search has come</source>
        <translation>Hasta dónde ha llegado la búsqueda</translation>
    </message>
    <message>
        <source>Enough</source>
        <translation>Basta</translation>
    </message>
    <message>
        <source>Stop searching and show what was found so far</source>
        <translation>Detener la búsqueda y mostrar lo encontrado</translation>
    </message>
    <message>
        <source>recipes %p %</source>
        <translation>recetas %p %</translation>
    </message>
    <message>
        <source>the nearest recipe %p %</source>
        <translation>la receta más cercana %p %</translation>
    </message>
    <message>
        <source>contradictions %p %</source>
        <translation>contradicciones %p %</translation>
    </message>
    <message>
        <source>Keep as a mix</source>
        <translation>Guardar como mezcla</translation>
    </message>
    <message>
        <source>Keep the chosen recipe as a mix, and lay it on the bench</source>
        <translation>Guardar la receta elegida como mezcla y ponerla en el banco</translation>
    </message>
    <message>
        <source>Keep and reserve</source>
        <translation>Guardar y reservar</translation>
    </message>
    <message>
        <source>Keep the chosen recipe as a mix, and reserve its grain</source>
        <translation>Guardar la receta elegida como mezcla y reservar su grano</translation>
    </message>
    <message>
        <source>Search on</source>
        <translation>Seguir buscando</translation>
    </message>
    <message>
        <source>Search again to the end</source>
        <translation>Buscar otra vez hasta el final</translation>
    </message>
    <message>
        <source>Still wanted: %1.</source>
        <translation>Falta: %1.</translation>
    </message>
    <message>
        <source>A marked field on the left has to be put right first.</source>
        <translation>Hay que corregir antes un campo marcado a la izquierda.</translation>
    </message>
    <message>
        <source>The inputs changed: what is shown in grey answers the question before.</source>
        <translation>Los datos cambiaron: lo que se ve en gris responde a la pregunta anterior.</translation>
    </message>
    <message>
        <source>Searching the shelf.</source>
        <translation>Buscando en la estantería.</translation>
    </message>
    <message>
        <source>No recipe holds every wish that must hold; the nearest is shown.</source>
        <translation>Ninguna receta cumple todos los deseos obligatorios; se muestra la más cercana.</translation>
    </message>
    <message numerus="yes">
        <source>%n recipe(s), best first.</source>
        <translation>
            <numerusform>%n receta.</numerusform>
            <numerusform>%n recetas, la mejor primero.</numerusform>
        </translation>
    </message>
    <message>
        <source>its grain is kept for this mix in later searches</source>
        <translation>su grano se guarda para esta mezcla en búsquedas posteriores</translation>
    </message>
    <message>
        <source>type the litres needed first</source>
        <translation>escriba primero los litros necesarios</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordBook</name>
    <message>
        <source>Undone: %1</source>
        <translation>Deshecho: %1</translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation>Hecho otra vez: %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordForm</name>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>Emptied elsewhere meanwhile, so what you typed is not saved yet. Enter saves yours, Escape empties the field.</source>
        <translation>Entretanto se vació en otra parte, así que lo que escribió aún no está guardado. Intro guarda lo suyo, Escape vacía el campo.</translation>
    </message>
    <message>
        <source>Changed elsewhere meanwhile to “%1”, so what you typed is not saved yet. Enter saves yours, Escape takes the other.</source>
        <translation>Entretanto se cambió en otra parte a «%1», así que lo que escribió aún no está guardado. Intro guarda lo suyo, Escape toma lo otro.</translation>
    </message>
    <message>
        <source>Typed before and not saved yet. Enter saves it, Escape takes back what was there.</source>
        <translation>Escrito antes y aún sin guardar. Intro lo guarda, Escape recupera lo que había.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordImport</name>
    <message>
        <source>new</source>
        <translation>nuevo</translation>
    </message>
    <message>
        <source>here already, left alone</source>
        <translation>ya está aquí, se deja</translation>
    </message>
    <message>
        <source>comes back</source>
        <translation>vuelve</translation>
    </message>
    <message>
        <source>replaces the one here</source>
        <translation>sustituye al de aquí</translation>
    </message>
    <message>
        <source>differs from the one here</source>
        <translation>difiere del de aquí</translation>
    </message>
    <message>
        <source>import of %1</source>
        <translation>importación de %1</translation>
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
        <translation>ninguno</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>saco</translation>
    </message>
    <message>
        <source>fraction</source>
        <translation>fracción</translation>
    </message>
    <message>
        <source>no.</source>
        <translation>n.º</translation>
    </message>
    <message>
        <source>what happened</source>
        <translation>qué pasó</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>received</source>
        <translation>recibido</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>%1 dry</source>
        <translation>%1 seco</translation>
    </message>
    <message>
        <source>tests</source>
        <translation>tamizados</translation>
    </message>
    <message>
        <source>left</source>
        <translation>queda</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordListSide</name>
    <message>
        <source>F&amp;ind</source>
        <translation>&amp;Buscar</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordPages</name>
    <message>
        <source>Rec&amp;ord</source>
        <translation>&amp;Registro</translation>
    </message>
    <message>
        <source>&amp;Receive bags</source>
        <translation>Recibir sacos</translation>
    </message>
    <message>
        <source>Ctrl+R</source>
        <translation>Ctrl+R</translation>
    </message>
    <message>
        <source>&amp;Grade this bag</source>
        <translation>&amp;Tamizar este saco</translation>
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
        <translation>Pasar a e&amp;xistencias</translation>
    </message>
    <message>
        <source>Ctrl+Shift+T</source>
        <translation>Ctrl+Shift+T</translation>
    </message>
    <message>
        <source>Measur&amp;e this bag</source>
        <translation>Me&amp;dir este saco</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Ctrl+D</translation>
    </message>
    <message>
        <source>&amp;Pot test of a mix</source>
        <translation>&amp;Ensayo en maceta de una mezcla</translation>
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
        <translation>Añadir &amp;un árbol</translation>
    </message>
    <message>
        <source>Alt+Shift+T</source>
        <translation>Alt+Shift+T</translation>
    </message>
    <message>
        <source>Add a p&amp;ot</source>
        <translation>Añadir una ma&amp;ceta</translation>
    </message>
    <message>
        <source>Ctrl+Alt+P</source>
        <translation>Ctrl+Alt+P</translation>
    </message>
    <message>
        <source>Plan the root mass of this tree</source>
        <translation>Planificar el cepellón de este árbol</translation>
    </message>
    <message>
        <source>Ctrl+Alt+J</source>
        <translation>Ctrl+Alt+J</translation>
    </message>
    <message>
        <source>Remove this tree, pot or plan</source>
        <translation>Quitar este árbol, maceta o plan</translation>
    </message>
    <message>
        <source>Alt+Shift+Delete</source>
        <translation>Alt+Shift+Delete</translation>
    </message>
    <message>
        <source>&amp;Keep the sieve test with its bag</source>
        <translation>&amp;Guardar el ensayo de tamizado con su saco</translation>
    </message>
    <message>
        <source>Ctrl+S</source>
        <translation>Ctrl+S</translation>
    </message>
    <message>
        <source>Keep the &amp;fractions of the screening</source>
        <translation>Guardar las &amp;fracciones del cribado</translation>
    </message>
    <message>
        <source>Ctrl+Shift+K</source>
        <translation>Ctrl+Shift+K</translation>
    </message>
    <message>
        <source>Keep the mi&amp;x</source>
        <translation>Guardar la me&amp;zcla</translation>
    </message>
    <message>
        <source>Ctrl+Shift+M</source>
        <translation>Ctrl+Shift+M</translation>
    </message>
    <message>
        <source>&amp;Write down in the log</source>
        <translation>A&amp;notar en el diario</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation>Ctrl+L</translation>
    </message>
    <message>
        <source>F&amp;ind on this page</source>
        <translation>Buscar en esta &amp;página</translation>
    </message>
    <message>
        <source>Ctrl+F</source>
        <translation>Ctrl+F</translation>
    </message>
    <message>
        <source>&amp;Undo in the record</source>
        <translation>Des&amp;hacer en el registro</translation>
    </message>
    <message>
        <source>Ctrl+Alt+Z</source>
        <translation>Ctrl+Alt+Z</translation>
    </message>
    <message>
        <source>Re&amp;do in the record</source>
        <translation>&amp;Rehacer en el registro</translation>
    </message>
    <message>
        <source>Ctrl+Alt+Shift+Z</source>
        <translation>Ctrl+Alt+Shift+Z</translation>
    </message>
    <message>
        <source>Save a &amp;copy of the record...</source>
        <translation>Guardar una cop&amp;ia del registro...</translation>
    </message>
    <message>
        <source>Ctrl+Shift+S</source>
        <translation>Ctrl+Shift+S</translation>
    </message>
    <message>
        <source>grain of %1 as measured</source>
        <translation>grano de %1 medido</translation>
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
        <translation>Des&amp;hacer en el registro: %1</translation>
    </message>
    <message>
        <source>Re&amp;do in the record: %1</source>
        <translation>&amp;Rehacer en el registro: %1</translation>
    </message>
    <message>
        <source>wishes for %1</source>
        <translation>deseos para %1</translation>
    </message>
    <message>
        <source>A search for %1 starts with these wishes from now on.</source>
        <translation>Una búsqueda para %1 empieza con estos deseos de ahora en adelante.</translation>
    </message>
    <message>
        <source>sieves of %1</source>
        <translation>tamices de %1</translation>
    </message>
    <message>
        <source>Choose the material on the Grain tab first: a bag is of some material.</source>
        <translation>Elija antes el material en la pestaña Grano: un saco es de algún material.</translation>
    </message>
    <message>
        <source>bag %1</source>
        <translation>saco %1</translation>
    </message>
    <message>
        <source>sieve test of bag %1</source>
        <translation>ensayo de tamizado del saco %1</translation>
    </message>
    <message>
        <source>Graded bag %1</source>
        <translation>Tamizado el saco %1</translation>
    </message>
    <message>
        <source>The sieve test is kept with its bag once the pan is typed and no fault is left; until then it stays on the bench.</source>
        <translation>El ensayo de tamizado se guarda con su saco en cuanto se escribe la bandeja y no queda error; hasta entonces sigue en el banco.</translation>
    </message>
    <message>
        <source>Bag %1 has this sieve test already.</source>
        <translation>El saco %1 ya tiene este ensayo de tamizado.</translation>
    </message>
    <message>
        <source>bag of %1</source>
        <translation>saco de %1</translation>
    </message>
    <message numerus="yes">
        <source>Kept %n sieve test(s) with bag %1.</source>
        <translation>
            <numerusform>Guardado %n ensayo de tamizado con el saco %1.</numerusform>
            <numerusform>Guardados %n ensayos de tamizado con el saco %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Weigh every fraction first, then they can be kept.</source>
        <translation>Pese antes cada fracción; luego se podrán guardar.</translation>
    </message>
    <message>
        <source>Keep the sieve test with its bag first: fractions come from a bag.</source>
        <translation>Guarde antes el ensayo de tamizado con su saco: las fracciones salen de un saco.</translation>
    </message>
    <message>
        <source>screening of bag %1</source>
        <translation>cribado del saco %1</translation>
    </message>
    <message>
        <source>Screened bag %1. %2</source>
        <translation>Cribado el saco %1. %2</translation>
    </message>
    <message>
        <source>screening kept of %1</source>
        <translation>cribado de %1 guardado</translation>
    </message>
    <message>
        <source>The fractions of bag %1 are in stock.</source>
        <translation>Las fracciones del saco %1 están en existencias.</translation>
    </message>
    <message>
        <source>There is no mix to keep yet: finish the sieve tests and give them parts.</source>
        <translation>Aún no hay mezcla que guardar: termine los ensayos de tamizado y deles partes.</translation>
    </message>
    <message>
        <source>Give the mix a name first.</source>
        <translation>Dé antes un nombre a la mezcla.</translation>
    </message>
    <message>
        <source>This mix is kept already, as %1.</source>
        <translation>Esta mezcla ya está guardada, como %1.</translation>
    </message>
    <message>
        <source>mix %1</source>
        <translation>mezcla %1</translation>
    </message>
    <message>
        <source>Kept mix %1, %2</source>
        <translation>Guardada la mezcla %1, %2</translation>
    </message>
    <message>
        <source>Kept as %1.</source>
        <translation>Guardada como %1.</translation>
    </message>
    <message>
        <source>found mix</source>
        <translation>mezcla encontrada</translation>
    </message>
    <message>
        <source>Found mix %1, %2, and reserved its grain</source>
        <translation>Encontrada la mezcla %1, %2, y reservado su grano</translation>
    </message>
    <message>
        <source>Found mix %1, %2</source>
        <translation>Encontrada la mezcla %1, %2</translation>
    </message>
    <message>
        <source>Kept as %1 and laid on the bench.</source>
        <translation>Guardada como %1 y puesta en el banco.</translation>
    </message>
    <message>
        <source>mix %1 opened</source>
        <translation>mezcla %1 abierta</translation>
    </message>
    <message>
        <source>Save a copy of the record</source>
        <translation>Guardar una copia del registro</translation>
    </message>
    <message>
        <source>Gritwright records (*.gritwright)</source>
        <translation>Registros de Gritwright (*.gritwright)</translation>
    </message>
    <message>
        <source>A checked copy lies in %1.</source>
        <translation>Hay una copia comprobada en %1.</translation>
    </message>
    <message>
        <source>Take &amp;back grain from a tree</source>
        <translation>Rec&amp;oger grano de un árbol</translation>
    </message>
    <message>
        <source>Ctrl+Alt+I</source>
        <translation>Ctrl+Alt+I</translation>
    </message>
    <message>
        <source>Add a bin or tub</source>
        <translation>Añadir una cubeta o tina</translation>
    </message>
    <message>
        <source>Ctrl+Alt+X</source>
        <translation>Ctrl+Alt+X</translation>
    </message>
    <message>
        <source>Re&amp;move this bag or bin</source>
        <translation>&amp;Quitar este saco o cubeta</translation>
    </message>
    <message>
        <source>W&amp;here this grain went</source>
        <translation>&amp;Adónde fue este grano</translation>
    </message>
    <message>
        <source>Ctrl+Shift+W</source>
        <translation>Ctrl+Shift+W</translation>
    </message>
    <message>
        <source>What do the sick trees share?</source>
        <translation>¿Qué comparten los árboles enfermos?</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Y</source>
        <translation>Ctrl+Shift+Y</translation>
    </message>
    <message>
        <source>Save the list of trees...</source>
        <translation>Guardar la lista de árboles...</translation>
    </message>
    <message>
        <source>Ctrl+Shift+L</source>
        <translation>Ctrl+Shift+L</translation>
    </message>
    <message>
        <source>The bench holds %1 components: the others of mix %2 were left out.</source>
        <translation>El banco admite %1 componentes: los demás de la mezcla %2 quedaron fuera.</translation>
    </message>
    <message>
        <source>Write records to a fi&amp;le...</source>
        <translation>&amp;Volcar registros en un archivo...</translation>
    </message>
    <message>
        <source>Ctrl+Shift+E</source>
        <translation>Ctrl+Shift+E</translation>
    </message>
    <message>
        <source>The whole record (*.json)</source>
        <translation>El registro entero (*.json)</translation>
    </message>
    <message>
        <source>List of bags (*.csv)</source>
        <translation>Lista de sacos (*.csv)</translation>
    </message>
    <message>
        <source>List of sieve tests (*.csv)</source>
        <translation>Lista de ensayos de tamizado (*.csv)</translation>
    </message>
    <message>
        <source>List of trees (*.csv)</source>
        <translation>Lista de árboles (*.csv)</translation>
    </message>
    <message>
        <source>List of fractions (*.csv)</source>
        <translation>Lista de fracciones (*.csv)</translation>
    </message>
    <message>
        <source>List of the stock&apos;s entries (*.csv)</source>
        <translation>Lista de los asientos de existencias (*.csv)</translation>
    </message>
    <message>
        <source>The log (*.csv)</source>
        <translation>El diario (*.csv)</translation>
    </message>
    <message>
        <source>Write records to a file</source>
        <translation>Volcar registros en un archivo</translation>
    </message>
    <message>
        <source>Written to %1.</source>
        <translation>Escrito en %1.</translation>
    </message>
    <message>
        <source>Group&amp;s of trees and their wishes</source>
        <translation>Grupos de árboles &amp;y sus deseos</translation>
    </message>
    <message>
        <source>Ctrl+Shift+G</source>
        <translation>Ctrl+Shift+G</translation>
    </message>
    <message>
        <source>Kept as %1 and laid on the bench; its grain for %2 is kept from other searches until it is mixed.</source>
        <translation>Guardada como %1 y puesta en el banco; su grano para %2 queda fuera de otras búsquedas hasta que se mezcle.</translation>
    </message>
    <message>
        <source>Put this grai&amp;n into the mix</source>
        <translation>Poner este grano en la &amp;mezcla</translation>
    </message>
    <message>
        <source>pot %1</source>
        <translation>maceta %1</translation>
    </message>
    <message>
        <source>List of pots (*.csv)</source>
        <translation>Lista de macetas (*.csv)</translation>
    </message>
    <message>
        <source>The sieve test of %1 is not kept and left the bench: undo brings it back.</source>
        <translation>El ensayo de tamizado de %1 no está guardado y ha dejado el banco: Deshacer lo devuelve.</translation>
    </message>
    <message>
        <source>No bag stands behind %1: type its sieve test.</source>
        <translation>Ningún saco respalda %1: escriba su ensayo de tamizado.</translation>
    </message>
    <message>
        <source>Written to %1, but not all of it. %2.</source>
        <translation>Escrito en %1, pero no todo. %2.</translation>
    </message>
    <message>
        <source>litre weight of %1</source>
        <translation>peso por litro de %1</translation>
    </message>
    <message>
        <source>material of %1</source>
        <translation>material de %1</translation>
    </message>
    <message>
        <source>fraction %1</source>
        <translation>fracción %1</translation>
    </message>
    <message>
        <source>bin %1</source>
        <translation>cubeta %1</translation>
    </message>
    <message>
        <source>ground of %1</source>
        <translation>tierra de %1</translation>
    </message>
    <message>
        <source>tub %1</source>
        <translation>tina %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordSession</name>
    <message>
        <source>bag and pot numbers of the record before</source>
        <translation>números de sacos y macetas del registro anterior</translation>
    </message>
    <message>
        <source>Nothing was restored: %1</source>
        <translation>No se restauró nada: %1</translation>
    </message>
    <message>
        <source>Restored. The record as it was is kept as %1.</source>
        <translation>Restaurado. El registro tal como estaba se guarda como %1.</translation>
    </message>
    <message>
        <source>Restored.</source>
        <translation>Restaurado.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RootPlanDesk</name>
    <message>
        <source>%1 of root-mass plan %2</source>
        <translation>%1 del plan de cepellón %2</translation>
    </message>
    <message>
        <source>root-mass plan of tree %1</source>
        <translation>plan de cepellón del árbol %1</translation>
    </message>
    <message>
        <source>place of the tree</source>
        <translation>lugar del árbol</translation>
    </message>
    <message>
        <source>mix of root-mass plan %1</source>
        <translation>mezcla del plan de cepellón %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RootPlanTab</name>
    <message>
        <source>Tree to plan for</source>
        <translation>Árbol que planificar</translation>
    </message>
    <message>
        <source>&amp;Begin a plan</source>
        <translation>Empe&amp;zar un plan</translation>
    </message>
    <message>
        <source>Begin a plan for this tree</source>
        <translation>Empezar un plan para este árbol</translation>
    </message>
    <message>
        <source>Root-mass plans</source>
        <translation>Planes de cepellón</translation>
    </message>
    <message>
        <source>plan by number or name</source>
        <translation>número o nombre</translation>
    </message>
    <message>
        <source>No plans yet. Choose a tree above and begin one.</source>
        <translation>Aún no hay planes. Elija arriba un árbol y empiece uno.</translation>
    </message>
    <message>
        <source>for tree</source>
        <translation>para el árbol</translation>
    </message>
    <message>
        <source>Parts of the plan</source>
        <translation>Partes del plan</translation>
    </message>
    <message>
        <source>Root mass</source>
        <translation>Cepellón</translation>
    </message>
    <message>
        <source>Stand</source>
        <translation>Posición</translation>
    </message>
    <message>
        <source>May come off</source>
        <translation>Se puede quitar</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Banco</translation>
    </message>
    <message>
        <source>Species group</source>
        <translation>Grupo de especies</translation>
    </message>
    <message>
        <source>group</source>
        <translation>grupo</translation>
    </message>
    <message>
        <source>Pot it goes into</source>
        <translation>Maceta de destino</translation>
    </message>
    <message>
        <source>Into &amp;pot</source>
        <translation>A la mace&amp;ta</translation>
    </message>
    <message>
        <source>Form of the root mass</source>
        <translation>Forma del cepellón</translation>
    </message>
    <message>
        <source>as its present pot</source>
        <translation>como su maceta actual</translation>
    </message>
    <message>
        <source>box</source>
        <translation>caja</translation>
    </message>
    <message>
        <source>upright elliptic</source>
        <translation>elíptico vertical</translation>
    </message>
    <message>
        <source>rounded</source>
        <translation>redondeado</translation>
    </message>
    <message>
        <source>&amp;Root mass</source>
        <translation>Cepelló&amp;n</translation>
    </message>
    <message>
        <source>Present pot</source>
        <translation>Maceta actual</translation>
    </message>
    <message>
        <source>present pot</source>
        <translation>maceta actual</translation>
    </message>
    <message>
        <source>Root mass, length</source>
        <translation>Cepellón, largo</translation>
    </message>
    <message>
        <source>left to right, from the old front</source>
        <translation>de izquierda a derecha, desde el frente antiguo</translation>
    </message>
    <message>
        <source>Root mass, width</source>
        <translation>Cepellón, ancho</translation>
    </message>
    <message>
        <source>front to back</source>
        <translation>de delante atrás</translation>
    </message>
    <message>
        <source>Root mass, height</source>
        <translation>Cepellón, alto</translation>
    </message>
    <message>
        <source>underside to surface</source>
        <translation>de la cara inferior a la superficie</translation>
    </message>
    <message>
        <source>Roundness</source>
        <translation>Redondez</translation>
    </message>
    <message>
        <source>2 an ellipsoid, 4 a box with soft edges</source>
        <translation>2 un elipsoide, 4 una caja de bordes suaves</translation>
    </message>
    <message>
        <source>Trunk base, right</source>
        <translation>Base del tronco, derecha</translation>
    </message>
    <message>
        <source>of the root mass&apos;s middle; empty: middle of its top</source>
        <translation>desde el centro del cepellón; vacío: centro de su cara superior</translation>
    </message>
    <message>
        <source>Trunk base, back</source>
        <translation>Base del tronco, atrás</translation>
    </message>
    <message>
        <source>behind its middle</source>
        <translation>detrás de su centro</translation>
    </message>
    <message>
        <source>Trunk base, up</source>
        <translation>Base del tronco, arriba</translation>
    </message>
    <message>
        <source>over its underside</source>
        <translation>sobre su cara inferior</translation>
    </message>
    <message>
        <source>New mix at the side</source>
        <translation>Mezcla nueva al lado</translation>
    </message>
    <message>
        <source>wanted; empty: 5 % of the length, 0.5 to 2 cm</source>
        <translation>vacío: 5 % del largo, 0,5 a 2 cm</translation>
    </message>
    <message>
        <source>New mix below</source>
        <translation>Mezcla nueva debajo</translation>
    </message>
    <message>
        <source>wanted; empty: 15 % of the depth, 0.5 to 1.5 cm</source>
        <translation>vacío: 15 % de la prof., 0,5 a 1,5 cm</translation>
    </message>
    <message>
        <source>Turn, degrees</source>
        <translation>Giro, grados</translation>
    </message>
    <message>
        <source>the new front; from right toward back</source>
        <translation>el frente nuevo; de la derecha hacia atrás</translation>
    </message>
    <message>
        <source>may be turned by</source>
        <translation>se puede girar</translation>
    </message>
    <message>
        <source>degrees either way, to fit</source>
        <translation>grados a cada lado, para que quepa</translation>
    </message>
    <message>
        <source>Tip, degrees</source>
        <translation>Vuelco, grados</translation>
    </message>
    <message>
        <source>0 to 90</source>
        <translation>0 a 90</translation>
    </message>
    <message>
        <source>Tip toward, degrees</source>
        <translation>Vuelco hacia, grados</translation>
    </message>
    <message>
        <source>0 right, 90 back, 180 left</source>
        <translation>0 derecha, 90 atrás, 180 izquierda</translation>
    </message>
    <message>
        <source>Tip at least, degrees</source>
        <translation>Vuelco mínimo, grados</translation>
    </message>
    <message>
        <source>empty: it may be set upright</source>
        <translation>vacío: puede quedar vertical</translation>
    </message>
    <message>
        <source>Trunk base stands right</source>
        <translation>Base del tronco a la derecha</translation>
    </message>
    <message>
        <source>of the pot&apos;s middle; empty: root mass in the middle</source>
        <translation>del centro de la maceta; vacío: cepellón centrado</translation>
    </message>
    <message>
        <source>Trunk base stands back</source>
        <translation>Base del tronco hacia atrás</translation>
    </message>
    <message>
        <source>of the pot&apos;s middle</source>
        <translation>del centro de la maceta</translation>
    </message>
    <message>
        <source>Trunk base over floor</source>
        <translation>Base del tronco sobre el fondo</translation>
    </message>
    <message>
        <source>empty: at its least height over the soil</source>
        <translation>vacío: a su altura mínima sobre la tierra</translation>
    </message>
    <message>
        <source>Trunk base over soil</source>
        <translation>Base del tronco sobre la tierra</translation>
    </message>
    <message>
        <source>at least; the trunk is never buried</source>
        <translation>como mínimo; el tronco nunca se entierra</translation>
    </message>
    <message>
        <source>How it is cut</source>
        <translation>Cómo se corta</translation>
    </message>
    <message>
        <source>along the pot&apos;s wall</source>
        <translation>siguiendo la pared de la maceta</translation>
    </message>
    <message>
        <source>straight, as a saw goes</source>
        <translation>recto, como va una sierra</translation>
    </message>
    <message>
        <source>cut style</source>
        <translation>forma de corte</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Corte</translation>
    </message>
    <message>
        <source>%1, at most</source>
        <translation>%1, máx.</translation>
    </message>
    <message>
        <source>0: nothing, a structural root; empty: not known</source>
        <translation>0: nada, una raíz estructural; vacío: no se sabe</translation>
    </message>
    <message>
        <source>%1, combed</source>
        <translation>%1, peinado</translation>
    </message>
    <message>
        <source>depth without a cut; empty: not combed</source>
        <translation>profundidad sin cortar; vacío: sin peinar</translation>
    </message>
    <message>
        <source>of the root mass; empty: the group&apos;s</source>
        <translation>del cepellón; vacío: lo del grupo</translation>
    </message>
    <message>
        <source>Untouched, at least</source>
        <translation>Intacto, mínimo</translation>
    </message>
    <message>
        <source>Taken off, at most</source>
        <translation>Quitado, máximo</translation>
    </message>
    <message>
        <source>Free pots of the record</source>
        <translation>Macetas libres del registro</translation>
    </message>
    <message>
        <source>leave them out</source>
        <translation>dejarlas fuera</translation>
    </message>
    <message>
        <source>try them where this pot is too small</source>
        <translation>probarlas si esta maceta es pequeña</translation>
    </message>
    <message>
        <source>free pots</source>
        <translation>macetas libres</translation>
    </message>
    <message>
        <source>Free pots</source>
        <translation>Macetas libres</translation>
    </message>
    <message>
        <source>Where the cut stopped</source>
        <translation>Dónde se detuvo el corte</translation>
    </message>
    <message>
        <source>Cut stopped, from</source>
        <translation>Corte detenido, desde</translation>
    </message>
    <message>
        <source>It stopped at</source>
        <translation>Se detuvo a</translation>
    </message>
    <message>
        <source>depth from the farthest point, like 3 cm</source>
        <translation>profundidad desde el punto más lejano, como 3 cm</translation>
    </message>
    <message>
        <source>Stopped there: plan the rest</source>
        <translation>Se detuvo ahí: planificar el resto</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>Clear what was stopped</source>
        <translation>Borrar lo detenido</translation>
    </message>
    <message>
        <source>stopped cuts</source>
        <translation>cortes detenidos</translation>
    </message>
    <message>
        <source>Pictures of the plan</source>
        <translation>Imágenes del plan</translation>
    </message>
    <message>
        <source>From the side and above</source>
        <translation>De lado y desde arriba</translation>
    </message>
    <message>
        <source>Plan shown</source>
        <translation>Plan mostrado</translation>
    </message>
    <message>
        <source>Done: write this plan into the tree&apos;s history</source>
        <translation>Hecho: escribir este plan en el historial del árbol</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Lifting, blades, moss.</source>
        <translation>Peso, filos, musgo.</translation>
    </message>
    <message>
        <source>Two people or a trolley for a heavy pot; cut away from the hand; gloves for sphagnum. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation>Dos personas o una carretilla para una maceta pesada; corte alejando la hoja de la mano; guantes para el esfagno. Información general; prevalecen las fichas de seguridad, las normas locales y el consejo cualificado.</translation>
    </message>
    <message>
        <source>If the upper surface stops</source>
        <translation>Si la superficie superior se detiene</translation>
    </message>
    <message>
        <source>upper cut stops at</source>
        <translation>el corte superior se detiene a</translation>
    </message>
    <message>
        <source>take below</source>
        <translation>quitar debajo</translation>
    </message>
    <message>
        <source>trunk base</source>
        <translation>base del tronco</translation>
    </message>
    <message>
        <source>untouched</source>
        <translation>intacto</translation>
    </message>
    <message>
        <source>new mix</source>
        <translation>mezcla nueva</translation>
    </message>
    <message>
        <source>root mass</source>
        <translation>cepellón</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>maceta</translation>
    </message>
    <message>
        <source>stopped cut</source>
        <translation>corte detenido</translation>
    </message>
    <message>
        <source>Saved %1</source>
        <translation>%1 guardado</translation>
    </message>
    <message>
        <source>repotting of tree %1 by plan %2</source>
        <translation>trasplante del árbol %1 según el plan %2</translation>
    </message>
    <message>
        <source>Written into the history of tree %1; the mix is added on the Trees tab.</source>
        <translation>Escrito en el historial del árbol %1; la mezcla se añade en la pestaña Árboles.</translation>
    </message>
    <message>
        <source>There is no tree yet: add it on the Trees tab.</source>
        <translation>Aún no hay ningún árbol: añádalo en la pestaña Árboles.</translation>
    </message>
    <message>
        <source>Tree %1 has no species group, so what it bears is not known: choose its group on the Trees tab.</source>
        <translation>El árbol %1 no tiene grupo de especies, así que no se sabe qué soporta: elija su grupo en la pestaña Árboles.</translation>
    </message>
    <message>
        <source>root-mass plan %1 removed</source>
        <translation>plan de cepellón %1 quitado</translation>
    </message>
    <message>
        <source>%1, as it was</source>
        <translation>%1, tal como era</translation>
    </message>
    <message>
        <source>%1: stopped at %2</source>
        <translation>%1: detenido a %2</translation>
    </message>
    <message>
        <source>Plan %1: %2.</source>
        <translation>Plan %1: %2.</translation>
    </message>
    <message>
        <source>fits as it is</source>
        <translation>cabe tal cual</translation>
    </message>
    <message>
        <source>Caution:</source>
        <translation>Precaución:</translation>
    </message>
    <message>
        <source>Note:</source>
        <translation>Nota:</translation>
    </message>
    <message>
        <source>plan %1</source>
        <translation>plan %1</translation>
    </message>
    <message>
        <source>plan %1, in stages</source>
        <translation>plan %1, por etapas</translation>
    </message>
    <message>
        <source>corners %1 of the root mass</source>
        <translation>esquinas %1 del cepellón</translation>
    </message>
    <message>
        <source>Nothing limits the fit.</source>
        <translation>Nada limita el encaje.</translation>
    </message>
    <message>
        <source>What limits the fit: %1.</source>
        <translation>Lo que limita el encaje: %1.</translation>
    </message>
    <message>
        <source>%1 longer</source>
        <translation>%1 más larga</translation>
    </message>
    <message>
        <source>%1 wider</source>
        <translation>%1 más ancha</translation>
    </message>
    <message>
        <source>%1 deeper</source>
        <translation>%1 más honda</translation>
    </message>
    <message>
        <source>Smallest change of the pot that would fit: %1.</source>
        <translation>Mínimo cambio de maceta con el que cabría: %1.</translation>
    </message>
    <message>
        <source>Plan %1 in figures</source>
        <translation>El plan %1 en cifras</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation>quitado</translation>
    </message>
    <message>
        <source>stays untouched</source>
        <translation>queda intacto</translation>
    </message>
    <message>
        <source>new mix, as it lies</source>
        <translation>mezcla nueva, asentada</translation>
    </message>
    <message>
        <source>soil line over the floor</source>
        <translation>línea de tierra sobre el fondo</translation>
    </message>
    <message>
        <source>new mix, of the pot</source>
        <translation>mezcla nueva, de la maceta</translation>
    </message>
    <message>
        <source>shoulder over the soil</source>
        <translation>talud sobre la tierra</translation>
    </message>
    <message>
        <source>not in one go</source>
        <translation>no de una vez</translation>
    </message>
    <message>
        <source>Mix that fills the rest</source>
        <translation>Mezcla que llena el resto</translation>
    </message>
    <message>
        <source>&amp;Mix</source>
        <translation>&amp;Mezcla</translation>
    </message>
    <message>
        <source>Trunk and stones</source>
        <translation>Tronco y piedras</translation>
    </message>
    <message>
        <source>under the soil; they take the place of mix</source>
        <translation>bajo la tierra; ocupan el lugar de la mezcla</translation>
    </message>
    <message>
        <source>Cut in this order</source>
        <translation>Cortar en este orden</translation>
    </message>
    <message>
        <source>like: up, right; empty: largest first</source>
        <translation>como: up, right; vacío: lo mayor primero</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>All soil off on purpose: bare-rooted</source>
        <translation>Toda la tierra fuera a propósito: a raíz desnuda</translation>
    </message>
    <message>
        <source>Bare-root it</source>
        <translation>Dejarlo a raíz desnuda</translation>
    </message>
    <message>
        <source>bare-rooting</source>
        <translation>raíz desnuda</translation>
    </message>
    <message>
        <source>It was bare-rooted last time</source>
        <translation>La última vez quedó a raíz desnuda</translation>
    </message>
    <message>
        <source>Bare-rooted last time</source>
        <translation>A raíz desnuda la última vez</translation>
    </message>
    <message>
        <source>last bare-rooting</source>
        <translation>última raíz desnuda</translation>
    </message>
    <message>
        <source>Disturbed beside a cut</source>
        <translation>Alterado junto al corte</translation>
    </message>
    <message>
        <source>to this depth; empty: 3 % of the length, 0.3 to 2 cm</source>
        <translation>hasta esta hondura; vacío: 3 %, 0,3 a 2 cm</translation>
    </message>
    <message>
        <source>In stages: years between</source>
        <translation>Por etapas: años entre ellas</translation>
    </message>
    <message>
        <source>whole years; empty: the group&apos;s least interval</source>
        <translation>años enteros; vacío: lo del grupo</translation>
    </message>
    <message>
        <source>Air and water</source>
        <translation>Aire y agua</translation>
    </message>
    <message>
        <source>Written into the history of tree %1; a repotting day also takes the grain from the stock.</source>
        <translation>Escrito en el historial del árbol %1; una jornada de trasplante también descuenta el grano de las existencias.</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>aún ninguno</translation>
    </message>
    <message>
        <source>untouched last time and again</source>
        <translation>intacto la última vez y otra vez</translation>
    </message>
    <message>
        <source>worked last time and again</source>
        <translation>trabajado la última vez y otra vez</translation>
    </message>
    <message>
        <source>Write into histor&amp;y</source>
        <translation>Escribir en el &amp;historial</translation>
    </message>
    <message>
        <source>Pri&amp;nt...</source>
        <translation>Im&amp;primir...</translation>
    </message>
    <message>
        <source>P&amp;DF...</source>
        <translation>PD&amp;F...</translation>
    </message>
    <message>
        <source>The printer could not be reached: is it on? The PDF can be printed later.</source>
        <translation>No se pudo acceder a la impresora: ¿está encendida? El PDF se puede imprimir más tarde.</translation>
    </message>
    <message>
        <source>No pot is free: add the pot it shall go into on the Pots tab.</source>
        <translation>Ninguna maceta está libre: añada en la pestaña Macetas aquella a la que deba ir.</translation>
    </message>
    <message>
        <source>Measure the root mass and type its length, width and height, or choose the pot it stands in. Nothing is worked out before.</source>
        <translation>Mida el cepellón y escriba su largo, ancho y alto, o elija la maceta en que está. Antes no se calcula nada.</translation>
    </message>
    <message>
        <source>sphagnum of the shoulder, about</source>
        <translation>esfagno del talud, aproximado</translation>
    </message>
    <message>
        <source>Plan %1 stays: a tree&apos;s history or a day names it. Begin a new plan instead.</source>
        <translation>El plan %1 se queda: lo nombra el historial de un árbol o una jornada. Empiece en su lugar un plan nuevo.</translation>
    </message>
    <message>
        <source>Species gro&amp;up</source>
        <translation>&amp;Grupo de especies</translation>
    </message>
    <message>
        <source>New plan for &amp;tree</source>
        <translation>Nuevo plan para el árb&amp;ol</translation>
    </message>
    <message>
        <source>Print the root-mass plan</source>
        <translation>Imprimir el plan de cepellón</translation>
    </message>
    <message>
        <source>Save the root-mass plan as PDF</source>
        <translation>Guardar el plan de cepellón como PDF</translation>
    </message>
    <message>
        <source>Root-mass plan as PDF</source>
        <translation>Plan de cepellón como PDF</translation>
    </message>
    <message>
        <source>root-mass plan %1.pdf</source>
        <translation>plan de cepellón %1.pdf</translation>
    </message>
    <message>
        <source>%1: %2 (%3)</source>
        <translation>%1: %2 (%3)</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation>%1 o más</translation>
    </message>
    <message>
        <source>Caution: after everything that may be done the root mass still sticks out, %1; take a larger pot</source>
        <translation>Precaución: después de todo lo que se puede hacer, el cepellón aún sobresale, %1; tome una maceta más grande</translation>
    </message>
    <message>
        <source>No plan is worked out here yet. Begin one and enter its root mass and pot: then its sheet can go on paper.</source>
        <translation>Aquí aún no hay ningún plan calculado. Empiece uno e introduzca su cepellón y su maceta: entonces su hoja podrá ir al papel.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RootPlanView</name>
    <message>
        <source>taken off</source>
        <translation>quitado</translation>
    </message>
    <message>
        <source>kept root mass</source>
        <translation>cepellón que queda</translation>
    </message>
    <message>
        <source>untouched</source>
        <translation>intacto</translation>
    </message>
    <message>
        <source>bottom layer, dressing</source>
        <translation>capa de fondo, cobertura</translation>
    </message>
    <message>
        <source>shoulder</source>
        <translation>talud</translation>
    </message>
    <message>
        <source>soil surface</source>
        <translation>superficie de la tierra</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>maceta</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>back</source>
        <translation>atrás</translation>
    </message>
    <message>
        <source>front</source>
        <translation>delante</translation>
    </message>
    <message>
        <source>up</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>down</source>
        <translation>abajo</translation>
    </message>
    <message>
        <source>old right</source>
        <translation>lado derecho antiguo</translation>
    </message>
    <message>
        <source>old left</source>
        <translation>lado izquierdo antiguo</translation>
    </message>
    <message>
        <source>old back</source>
        <translation>dorso antiguo</translation>
    </message>
    <message>
        <source>old front</source>
        <translation>frente antiguo</translation>
    </message>
    <message>
        <source>old top</source>
        <translation>lado superior antiguo</translation>
    </message>
    <message>
        <source>old bottom</source>
        <translation>lado inferior antiguo</translation>
    </message>
    <message>
        <source>move the tree</source>
        <translation>mover el árbol</translation>
    </message>
    <message>
        <source>turn it</source>
        <translation>girarlo</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>corte</translation>
    </message>
    <message>
        <source>tip it less</source>
        <translation>volcarlo menos</translation>
    </message>
    <message>
        <source>sink it</source>
        <translation>hundirlo</translation>
    </message>
    <message>
        <source>raise it to the soil</source>
        <translation>subirlo hasta la tierra</translation>
    </message>
    <message>
        <source>build a shoulder</source>
        <translation>hacer un talud</translation>
    </message>
    <message>
        <source>take another pot</source>
        <translation>tomar otra maceta</translation>
    </message>
    <message>
        <source>in stages</source>
        <translation>por etapas</translation>
    </message>
    <message>
        <source>No plan yet: choose a tree and begin one.</source>
        <translation>Aún no hay plan: elija un árbol y empiece uno.</translation>
    </message>
    <message>
        <source>Plan %1: %2 is taken off, %3 stays untouched, the trunk base stands %4 over the floor and the soil line lies at %5.</source>
        <translation>Plan %1: se quita %2, queda intacto %3, la base del tronco está %4 sobre el fondo y la línea de tierra queda a %5.</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>where</source>
        <translation>dónde</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>cuánto</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>combed</source>
        <translation>peinado</translation>
    </message>
    <message>
        <source>of the root mass</source>
        <translation>del cepellón</translation>
    </message>
    <message>
        <source>trunk base</source>
        <translation>base del tronco</translation>
    </message>
    <message>
        <source>right of the middle</source>
        <translation>a la derecha del centro</translation>
    </message>
    <message>
        <source>behind the middle</source>
        <translation>detrás del centro</translation>
    </message>
    <message>
        <source>over the floor</source>
        <translation>sobre el fondo</translation>
    </message>
    <message>
        <source>at the trunk, over the floor</source>
        <translation>en el tronco, sobre el fondo</translation>
    </message>
    <message>
        <source>over the soil</source>
        <translation>sobre la tierra</translation>
    </message>
    <message>
        <source>untouched last time</source>
        <translation>intacto la última vez</translation>
    </message>
    <message>
        <source>The plan from the side and from above; arrow keys move the tree, Page Up and Page Down raise and sink it, Shift with left and right turns it, Shift with up and down tips it</source>
        <translation>El plan de lado y desde arriba; las flechas mueven el árbol, RePág y AvPág lo suben y lo hunden, Mayús con izquierda y derecha lo gira, Mayús con arriba y abajo lo vuelca</translation>
    </message>
    <message>
        <source>Plan %1 goes in stages: %2 comes off now and the tree goes back into its old pot, as drawn here.</source>
        <translation>El plan %1 va por etapas: %2 se quita ahora y el árbol vuelve a su maceta antigua, como se dibuja aquí.</translation>
    </message>
    <message>
        <source>Drag the tree in either picture, or use the arrow keys, Page Up and Page Down; the ring at the old front turns it, the ring on the trunk tips it, as do the arrow keys with Shift</source>
        <translation>Arrastre el árbol en cualquiera de las imágenes, o use las flechas, RePág y AvPág; el anillo en el frente antiguo lo gira, el anillo en el tronco lo vuelca, igual que las flechas con Mayús</translation>
    </message>
    <message>
        <source>trunk</source>
        <translation>tronco</translation>
    </message>
    <message>
        <source>round off corners</source>
        <translation>redondear esquinas</translation>
    </message>
    <message>
        <source>rounded off</source>
        <translation>redondeado</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RootSectionView</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>air %1, water held %2</source>
        <translation>aire %1, agua retenida %2</translation>
    </message>
    <message>
        <source>The pot in section with the new mix around the root mass</source>
        <translation>La maceta en sección con la mezcla nueva alrededor del cepellón</translation>
    </message>
    <message>
        <source>%1 (%2): %3; the lowest %4 stay wet.</source>
        <translation>%1 (%2): %3; los %4 inferiores quedan mojados.</translation>
    </message>
    <message>
        <source>What the kept root mass holds is not known.</source>
        <translation>No se sabe qué retiene el cepellón que queda.</translation>
    </message>
    <message>
        <source>Plan %1 goes in stages, back into the old pot: its section is not known.</source>
        <translation>El plan %1 va por etapas, de vuelta a la maceta antigua: no se conoce su sección.</translation>
    </message>
    <message>
        <source>No mix yet: choose on “Root mass” what fills the rest of the pot.</source>
        <translation>Aún no hay mezcla: elija en «Cepellón» qué llena el resto de la maceta.</translation>
    </message>
    <message>
        <source>kept root mass: not known</source>
        <translation>cepellón que queda: se desconoce</translation>
    </message>
    <message>
        <source>wet zone %1</source>
        <translation>zona saturada %1</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>sin dato</translation>
    </message>
    <message>
        <source>filled %1</source>
        <translation>llena %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 has a component without a grain density, so its water is not known: measure it.</source>
        <translation>%1 tiene un componente sin densidad del grano, así que no se conoce su agua: mídala.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ScoreView</name>
    <message numerus="yes">
        <source>predicted %1 points too low on average, %2 points root mean square, %n test(s)</source>
        <translation>
            <numerusform>previsión %1 puntos demasiado baja, %2 puntos de media cuadrática, %n ensayo</numerusform>
            <numerusform>previsión %1 puntos demasiado baja de media, %2 puntos de media cuadrática, %n ensayos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>predicted %1 points too high on average, %2 points root mean square, %n test(s)</source>
        <translation>
            <numerusform>previsión %1 puntos demasiado alta, %2 puntos de media cuadrática, %n ensayo</numerusform>
            <numerusform>previsión %1 puntos demasiado alta de media, %2 puntos de media cuadrática, %n ensayos</numerusform>
        </translation>
    </message>
    <message>
        <source>No pot test to compare yet. A pot test of a kept mix shows how far off the estimate of its air was.</source>
        <translation>Aún no hay ensayo en maceta que comparar. Un ensayo en maceta de una mezcla guardada muestra cuánto erraba la estimación de su aire.</translation>
    </message>
    <message>
        <source>Fine, up to %1: %2.</source>
        <translation>Fino, hasta %1: %2.</translation>
    </message>
    <message>
        <source>Coarse: %1.</source>
        <translation>Grueso: %1.</translation>
    </message>
    <message>
        <source>pot test</source>
        <translation>ensayo en maceta</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mezcla</translation>
    </message>
    <message>
        <source>grain</source>
        <translation>grano</translation>
    </message>
    <message>
        <source>predicted air</source>
        <translation>aire previsto</translation>
    </message>
    <message>
        <source>measured air</source>
        <translation>aire medido</translation>
    </message>
    <message>
        <source>points off</source>
        <translation>puntos de error</translation>
    </message>
    <message>
        <source>coarse</source>
        <translation>grueso</translation>
    </message>
    <message>
        <source>fine</source>
        <translation>fino</translation>
    </message>
    <message>
        <source>Pot tests: predicted against measured air</source>
        <translation>Ensayos en maceta: aire previsto frente a medido</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>fine grain</source>
        <translation>grano fino</translation>
    </message>
    <message>
        <source>coarse grain</source>
        <translation>grano grueso</translation>
    </message>
    <message>
        <source>Air that drains free: %1.</source>
        <translation>Aire tras drenar: %1.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ScreeningPanel</name>
    <message>
        <source>&amp;Keep these fractions</source>
        <translation>Guardar estas &amp;fracciones</translation>
    </message>
    <message>
        <source>Screen at, mm</source>
        <translation>Cribar a, mm</translation>
    </message>
    <message>
        <source>openings to screen at</source>
        <translation>aberturas a las que cribar</translation>
    </message>
    <message>
        <source>as the verdict says; or type 6.3 2</source>
        <translation>como dice el dictamen; o escriba 6,3 2</translation>
    </message>
    <message>
        <source>Dry grain screened</source>
        <translation>Grano seco cribado</translation>
    </message>
    <message>
        <source>grain screened</source>
        <translation>grano cribado</translation>
    </message>
    <message>
        <source>all that is left of the bag; kg can be typed</source>
        <translation>todo lo que queda del saco; se puede escribir kg</translation>
    </message>
    <message>
        <source>Fractions, predicted and measured</source>
        <translation>Fracciones, previstas y medidas</translation>
    </message>
    <message>
        <source>Type what each fraction weighed, and its litres, into the last two columns.</source>
        <translation>Escriba lo que pesó cada fracción, y sus litros, en las dos últimas columnas.</translation>
    </message>
    <message>
        <source>Keep these fractions</source>
        <translation>Guardar estas fracciones</translation>
    </message>
    <message>
        <source>Lifting:</source>
        <translation>Peso:</translation>
    </message>
    <message>
        <source>a full bag is heavy; lift from the knees, or screen it in two halves. General information; qualified advice prevails.</source>
        <translation>un saco lleno pesa; levántelo con las rodillas o críbelo en dos mitades. Información general; prevalece el consejo cualificado.</translation>
    </message>
    <message>
        <source>mass of the fraction %1</source>
        <translation>masa de la fracción %1</translation>
    </message>
    <message>
        <source>litres of the fraction %1</source>
        <translation>litros de la fracción %1</translation>
    </message>
    <message>
        <source>fraction</source>
        <translation>fracción</translation>
    </message>
    <message>
        <source>share</source>
        <translation>proporción</translation>
    </message>
    <message>
        <source>predicted</source>
        <translation>previsto</translation>
    </message>
    <message>
        <source>litres</source>
        <translation>litros</translation>
    </message>
    <message>
        <source>weighed, %1</source>
        <translation>pesado, %1</translation>
    </message>
    <message>
        <source>measured, %1</source>
        <translation>medido, %1</translation>
    </message>
    <message>
        <source>Weigh every fraction first</source>
        <translation>Pese antes cada fracción</translation>
    </message>
    <message>
        <source>Screened on</source>
        <translation>Cribado el</translation>
    </message>
    <message>
        <source>day of the screening</source>
        <translation>día del cribado</translation>
    </message>
    <message>
        <source>What is predicted</source>
        <translation>Lo que se prevé</translation>
    </message>
    <message>
        <source>today; or a day like %1</source>
        <translation>hoy; o un día como %1</translation>
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
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>as the system</source>
        <translation>como el sistema</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>A change holds from the next start. Every translation is a draft, not yet read by a native grower.</source>
        <translation>Un cambio vale desde el próximo inicio. Cada traducción es un borrador, aún no leído por un cultivador nativo.</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unidades</translation>
    </message>
    <message>
        <source>metric: litres, millimetres, grams</source>
        <translation>métricas: litros, milímetros, gramos</translation>
    </message>
    <message>
        <source>US: quarts, inches, ounces</source>
        <translation>EE. UU.: cuartos, pulgadas, onzas</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Colores</translation>
    </message>
    <message>
        <source>light</source>
        <translation>claro</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>oscuro</translation>
    </message>
    <message>
        <source>high contrast</source>
        <translation>alto contraste</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>Tamaño de letra</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>Show laboratory figures beside the verdict</source>
        <translation>Mostrar cifras de laboratorio junto al dictamen</translation>
    </message>
    <message>
        <source>Backups folder</source>
        <translation>Carpeta de copias de seguridad</translation>
    </message>
    <message>
        <source>beside the record; a change holds from the next start</source>
        <translation>junto al registro; un cambio vale desde el próximo inicio</translation>
    </message>
    <message>
        <source>Choose...</source>
        <translation>Elegir...</translation>
    </message>
    <message>
        <source>Choose the backups folder</source>
        <translation>Elegir la carpeta de copias de seguridad</translation>
    </message>
    <message>
        <source>Sieves you own</source>
        <translation>Tamices propios</translation>
    </message>
    <message>
        <source>Sets of sieves you own</source>
        <translation>Juegos de tamices propios</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>openings</source>
        <translation>aberturas</translation>
    </message>
    <message>
        <source>Add a set</source>
        <translation>Añadir un juego</translation>
    </message>
    <message>
        <source>Add a set of sieves</source>
        <translation>Añadir un juego de tamices</translation>
    </message>
    <message>
        <source>my sieves</source>
        <translation>mis tamices</translation>
    </message>
    <message>
        <source>set of sieves %1</source>
        <translation>juego de tamices %1</translation>
    </message>
    <message>
        <source>Your record</source>
        <translation>Su registro</translation>
    </message>
    <message>
        <source>It lies in %1.</source>
        <translation>Está en %1.</translation>
    </message>
    <message>
        <source>It is open for reading only.</source>
        <translation>Está abierto solo para lectura.</translation>
    </message>
    <message>
        <source>That is a network folder: saving takes longer there, and only one person should work in it at a time.</source>
        <translation>Es una carpeta de red: allí se tarda más en guardar, y solo una persona debería trabajar en él a la vez.</translation>
    </message>
    <message>
        <source>Another program copies that folder elsewhere: let it finish before the record is opened on another machine, or two half records may come of it.</source>
        <translation>Otro programa copia esa carpeta a otra parte: espere a que termine antes de abrir el registro en otra máquina, o pueden salir dos medios registros.</translation>
    </message>
    <message>
        <source>One set a line, its openings in mm or by name, apart by blanks: 8 5.6 4 2.8 2 1.4 1; how wide they are inside the frame shows an overloaded sieve. They are offered on the Sieving page, and “which openings?” chooses among them.</source>
        <translation>Un juego por línea, sus aberturas en mm o por nombre, separadas por espacios: 8 5,6 4 2,8 2 1,4 1; su ancho dentro del marco muestra un tamiz sobrecargado. Se ofrecen en la página Tamizado, y «¿qué aberturas?» elige entre ellas.</translation>
    </message>
    <message>
        <source>across, %1</source>
        <translation>ancho, %1</translation>
    </message>
    <message>
        <source>%1 is no longer among your sieves; undo brings it back.</source>
        <translation>%1 ya no está entre los tamices; Deshacer lo devuelve.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SheetEditor</name>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>bag, lot or material</source>
        <translation>saco, lote o material</translation>
    </message>
    <message>
        <source>&amp;Sample, dry</source>
        <translation>Muestra, &amp;seca</translation>
    </message>
    <message>
        <source>sample mass of %1</source>
        <translation>masa de la muestra de %1</translation>
    </message>
    <message>
        <source>weighed before sieving; shows the loss</source>
        <translation>pesada antes de tamizar; muestra la pérdida</translation>
    </message>
    <message>
        <source>Sample %1, dry</source>
        <translation>Muestra %1, seca</translation>
    </message>
    <message>
        <source>mass of sample %1 of %2</source>
        <translation>masa de la muestra %1 de %2</translation>
    </message>
    <message>
        <source>a further sample of the same bag</source>
        <translation>otra muestra del mismo saco</translation>
    </message>
    <message>
        <source>by mass, net</source>
        <translation>por masa, neta</translation>
    </message>
    <message>
        <source>by gross and tare</source>
        <translation>por bruto y tara</translation>
    </message>
    <message>
        <source>by litres, a bag by bucket</source>
        <translation>por litros, un saco a cubos</translation>
    </message>
    <message>
        <source>How the fractions are measured</source>
        <translation>Cómo se miden las fracciones</translation>
    </message>
    <message>
        <source>&amp;Measured</source>
        <translation>&amp;Medido</translation>
    </message>
    <message>
        <source>way of measuring %1</source>
        <translation>forma de medir %1</translation>
    </message>
    <message>
        <source>Sample 1: %1</source>
        <translation>Muestra 1: %1</translation>
    </message>
    <message>
        <source>Sample %1: sum %2, loss %3</source>
        <translation>Muestra %1: suma %2, pérdida %3</translation>
    </message>
    <message>
        <source>Sample %1: sum %2</source>
        <translation>Muestra %1: suma %2</translation>
    </message>
    <message>
        <source>Sum %1</source>
        <translation>Suma %1</translation>
    </message>
    <message>
        <source>Nothing weighed yet: the curve grows as you type.</source>
        <translation>Aún no se ha pesado nada: la curva crece al escribir.</translation>
    </message>
    <message>
        <source>Sum and loss: – (see the marked cells)</source>
        <translation>Suma y pérdida: – (vea las celdas marcadas)</translation>
    </message>
    <message>
        <source>%1; type the sample mass or the pan to see the curve.</source>
        <translation>%1; escriba la masa de la muestra o la bandeja para ver la curva.</translation>
    </message>
    <message>
        <source>%1, still in the stack %2</source>
        <translation>%1, aún en los tamices %2</translation>
    </message>
    <message>
        <source>%1, loss – (no sample mass)</source>
        <translation>%1, pérdida – (sin masa de la muestra)</translation>
    </message>
    <message>
        <source>%1, gain %2</source>
        <translation>%1, ganancia %2</translation>
    </message>
    <message>
        <source>%1, loss %2</source>
        <translation>%1, pérdida %2</translation>
    </message>
    <message>
        <source>%1; type the pan to see the curve.</source>
        <translation>%1; escriba la bandeja para ver la curva.</translation>
    </message>
    <message>
        <source>%1. Fractions lie looser than the whole bag did: litres tell no loss.</source>
        <translation>%1. Las fracciones quedan más sueltas que el saco entero: los litros no dicen la pérdida.</translation>
    </message>
    <message>
        <source>Sample %1</source>
        <translation>Muestra %1</translation>
    </message>
    <message>
        <source>Checks of the sieve test</source>
        <translation>Comprobaciones del ensayo de tamizado</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SickTreesTab</name>
    <message>
        <source>Trees, the sick ones first; Space ticks those to compare</source>
        <translation>Árboles, los enfermos primero; Espacio marca los que comparar</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>árbol</translation>
    </message>
    <message>
        <source>condition</source>
        <translation>estado</translation>
    </message>
    <message>
        <source>since</source>
        <translation>desde</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>potted</source>
        <translation>plantado</translation>
    </message>
    <message>
        <source>Tick the sick ones</source>
        <translation>Marcar los enfermos</translation>
    </message>
    <message>
        <source>Tick the sick trees again and no other</source>
        <translation>Volver a marcar los árboles enfermos y ningún otro</translation>
    </message>
    <message>
        <source>What do these trees share?</source>
        <translation>¿Qué comparten estos árboles?</translation>
    </message>
    <message>
        <source>Look first at</source>
        <translation>Mire primero</translation>
    </message>
    <message>
        <source>What these trees share, beside all others</source>
        <translation>Lo que comparten estos árboles, junto a los demás</translation>
    </message>
    <message>
        <source>Save the comparison...</source>
        <translation>Guardar la comparación...</translation>
    </message>
    <message>
        <source>Save what these trees share as text, CSV or JSON</source>
        <translation>Guardar lo que comparten estos árboles como texto, CSV o JSON</translation>
    </message>
    <message>
        <source>compare %1, %2</source>
        <translation>comparar %1, %2</translation>
    </message>
    <message>
        <source>No trees yet. What is written down about them on Pots and trees stands here, the sick ones first.</source>
        <translation>Aún no hay árboles. Lo anotado de ellos en Macetas y árboles aparece aquí, los enfermos primero.</translation>
    </message>
    <message>
        <source>%1; tick those to compare with all others.</source>
        <translation>%1; marque los que comparar con todos los demás.</translation>
    </message>
    <message>
        <source>No tree is sick</source>
        <translation>Ningún árbol enfermo</translation>
    </message>
    <message numerus="yes">
        <source>%n tree(s) sick</source>
        <translation>
            <numerusform>%n árbol enfermo</numerusform>
            <numerusform>%n árboles enfermos</numerusform>
        </translation>
    </message>
    <message>
        <source>No tree is ticked.</source>
        <translation>Ningún árbol marcado.</translation>
    </message>
    <message>
        <source>Compared: %1</source>
        <translation>Comparados: %1</translation>
    </message>
    <message>
        <source>Tick one tree to see what is known of its soil, or several to see what they share.</source>
        <translation>Marque un árbol para ver qué se sabe de su tierra, o varios para ver qué comparten.</translation>
    </message>
    <message>
        <source>They share nothing that was written down.</source>
        <translation>No comparten nada que esté anotado.</translation>
    </message>
    <message>
        <source>Tick the trees to compare first.</source>
        <translation>Marque antes los árboles que comparar.</translation>
    </message>
    <message>
        <source>Save what these trees share</source>
        <translation>Guardar lo que comparten estos árboles</translation>
    </message>
    <message>
        <source>shared by the trees</source>
        <translation>común a los árboles</translation>
    </message>
    <message>
        <source>Text to print (*.txt);;For a spreadsheet (*.csv);;For programs (*.json)</source>
        <translation>Texto para imprimir (*.txt);;Para una hoja de cálculo (*.csv);;Para programas (*.json)</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Guardado como %1.</translation>
    </message>
    <message>
        <source>%1 could not be written: choose a folder you may write to.</source>
        <translation>No se pudo escribir %1: elija una carpeta en la que pueda escribir.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SieveTable</name>
    <message>
        <source>Sieve stack</source>
        <translation>Columna de tamices</translation>
    </message>
    <message>
        <source>One sieve a row, coarse to fine, the pan last. Type what stayed on; Enter goes to the next pan.</source>
        <translation>Un tamiz por fila, de grueso a fino, la bandeja al final. Escriba lo retenido; Intro pasa a la siguiente bandeja.</translation>
    </message>
    <message>
        <source>This is worked out: type what stayed on the sieve.</source>
        <translation>Esto se calcula: escribir lo que quedó en el tamiz.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SieveTableModel</name>
    <message>
        <source>pan</source>
        <translation>bandeja</translation>
    </message>
    <message>
        <source>sieve %1</source>
        <translation>tamiz %1</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>vacío</translation>
    </message>
    <message>
        <source>sieve, mm</source>
        <translation>tamiz, mm</translation>
    </message>
    <message>
        <source>gross, %1</source>
        <translation>bruto, %1</translation>
    </message>
    <message>
        <source>stayed on, %1</source>
        <translation>retenido, %1</translation>
    </message>
    <message>
        <source>tare, %1</source>
        <translation>tara, %1</translation>
    </message>
    <message>
        <source>net</source>
        <translation>neto</translation>
    </message>
    <message>
        <source>sample 2, %1</source>
        <translation>muestra 2, %1</translation>
    </message>
    <message>
        <source>sample 3, %1</source>
        <translation>muestra 3, %1</translation>
    </message>
    <message>
        <source>passing</source>
        <translation>que pasa</translation>
    </message>
    <message>
        <source>check</source>
        <translation>control</translation>
    </message>
    <message>
        <source>sieve %1 of %2</source>
        <translation>tamiz %1 de %2</translation>
    </message>
    <message>
        <source>sample %1 on %2 of %3</source>
        <translation>muestra %1 en %2 de %3</translation>
    </message>
    <message>
        <source>pan mass of %1</source>
        <translation>masa de la bandeja de %1</translation>
    </message>
    <message>
        <source>mass on %1 of %2</source>
        <translation>masa en %1 de %2</translation>
    </message>
    <message>
        <source>paste into %1</source>
        <translation>pegar en %1</translation>
    </message>
    <message numerus="yes">
        <source>Pasted %n row(s).</source>
        <translation>
            <numerusform>Pegada %n fila.</numerusform>
            <numerusform>Pegadas %n filas.</numerusform>
        </translation>
    </message>
    <message>
        <source>further sample of %1</source>
        <translation>otra muestra de %1</translation>
    </message>
    <message>
        <source>sample %1 of %2 removed</source>
        <translation>muestra %1 de %2 quitada</translation>
    </message>
    <message>
        <source>new sieve of %1</source>
        <translation>tamiz nuevo de %1</translation>
    </message>
    <message>
        <source>sieve %1 of %2 removed</source>
        <translation>tamiz %1 de %2 quitado</translation>
    </message>
    <message>
        <source>gross %1, %2</source>
        <translation>bruto %1, %2</translation>
    </message>
    <message>
        <source>There is nothing to paste: copy rows of numbers first.</source>
        <translation>No hay nada que pegar: copie primero filas de números.</translation>
    </message>
    <message>
        <source>predicted, %1</source>
        <translation>previsto, %1</translation>
    </message>
    <message>
        <source>%1 Left out below the pan: %2</source>
        <translation>%1 Se dejó fuera debajo de la bandeja: %2</translation>
    </message>
    <message>
        <source>%1 They came from fine to coarse and were turned round.</source>
        <translation>%1 Venían de fino a grueso y se invirtieron.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SievingPage</name>
    <message>
        <source>Bag</source>
        <translation>Saco</translation>
    </message>
    <message>
        <source>Sieves</source>
        <translation>Tamices</translation>
    </message>
    <message>
        <source>Dust:</source>
        <translation>Polvo:</translation>
    </message>
    <message>
        <source>sieve dry grain outdoors, wind behind you, with a mask (P2 or N95 at least, P3 or P100 for grit and sand); clean with a damp cloth, not a broom. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation>tamice el grano seco al aire libre, con el viento a la espalda y mascarilla (P2 o N95 como mínimo, P3 o P100 para grava fina y arena); limpie con un paño húmedo, no con escoba. Información general; prevalecen las fichas de seguridad, las normas locales y el consejo cualificado.</translation>
    </message>
    <message>
        <source>What is typed</source>
        <translation>Lo que se escribe</translation>
    </message>
    <message>
        <source>Sieve test</source>
        <translation>Ensayo de tamizado</translation>
    </message>
    <message>
        <source>Grain</source>
        <translation>Grano</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>Curva</translation>
    </message>
    <message>
        <source>Lot to lot</source>
        <translation>De lote a lote</translation>
    </message>
    <message>
        <source>Pictures of the sieve test</source>
        <translation>Imágenes del ensayo de tamizado</translation>
    </message>
    <message>
        <source>What follows for the bag</source>
        <translation>Lo que resulta para el saco</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Dictamen</translation>
    </message>
    <message>
        <source>Screen this bag</source>
        <translation>Cribar este saco</translation>
    </message>
    <message>
        <source>none, or choose one to grade</source>
        <translation>ninguno, o elija uno para tamizar</translation>
    </message>
    <message>
        <source>as typed</source>
        <translation>lo escrito</translation>
    </message>
    <message>
        <source>Component</source>
        <translation>Componente</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::StockLine</name>
    <message>
        <source>What happened to the grain</source>
        <translation>Lo que pasó con el grano</translation>
    </message>
    <message>
        <source>counted, left</source>
        <translation>contado, queda</translation>
    </message>
    <message>
        <source>used</source>
        <translation>usado</translation>
    </message>
    <message>
        <source>spilt</source>
        <translation>derramado</translation>
    </message>
    <message>
        <source>thrown out</source>
        <translation>tirado</translation>
    </message>
    <message>
        <source>put back</source>
        <translation>repuesto</translation>
    </message>
    <message>
        <source>How much, dry</source>
        <translation>Cuánto, seco</translation>
    </message>
    <message>
        <source>900 g or 2 L, dry</source>
        <translation>900 g o 2 L, seco</translation>
    </message>
    <message>
        <source>Book it</source>
        <translation>Anotar</translation>
    </message>
    <message>
        <source>Book it in the stock</source>
        <translation>Anotar en existencias</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Cuánto</translation>
    </message>
    <message>
        <source>Of %1</source>
        <translation>De %1</translation>
    </message>
    <message>
        <source>Nothing of it is in stock yet: take it into stock, or count what is left.</source>
        <translation>Aún no hay nada de ello en existencias: páselo a existencias o cuente lo que queda.</translation>
    </message>
    <message>
        <source>Counted %1: %2 left</source>
        <translation>Contado %1: quedan %2</translation>
    </message>
    <message>
        <source>Spilt %2 of %1</source>
        <translation>Se derramaron %2 de %1</translation>
    </message>
    <message>
        <source>Threw out %2 of %1</source>
        <translation>Se tiraron %2 de %1</translation>
    </message>
    <message>
        <source>Put %2 back to %1</source>
        <translation>Se repusieron %2 en %1</translation>
    </message>
    <message>
        <source>Used %2 of %1</source>
        <translation>Se usaron %2 de %1</translation>
    </message>
    <message>
        <source>%1, at its own litre weight of %2.</source>
        <translation>%1, a su propio peso por litro de %2.</translation>
    </message>
    <message>
        <source>%1, at the typical litre weight of %2: measure its own.</source>
        <translation>%1, al peso por litro típico de %2: mida el suyo.</translation>
    </message>
    <message>
        <source>32 oz or 2 qt, dry</source>
        <translation>32 oz o 2 qt, seco</translation>
    </message>
    <message>
        <source>%1, at a litre weight of %2 by that of its bag: measure its own.</source>
        <translation>%1, con un peso por litro de %2 según el de su saco: medir el propio.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TraceTab</name>
    <message>
        <source>Save the list...</source>
        <translation>Guardar la lista...</translation>
    </message>
    <message>
        <source>&amp;Trace</source>
        <translation>Ras&amp;trear</translation>
    </message>
    <message>
        <source>a bag, fraction, bin, batch or mix, to see which trees stand in it; or a tree, to see what it stands in</source>
        <translation>un saco, fracción, cubeta, tanda o mezcla, para ver qué árboles están en ello; o un árbol, para ver en qué está</translation>
    </message>
    <message>
        <source>Trace</source>
        <translation>Rastrear</translation>
    </message>
    <message>
        <source>Save the list of trees as text, CSV or JSON</source>
        <translation>Guardar la lista de árboles como texto, CSV o JSON</translation>
    </message>
    <message>
        <source>Trees, or what a tree stands in</source>
        <translation>Árboles, o en qué está un árbol</translation>
    </message>
    <message>
        <source>Where the rest of it went or lies</source>
        <translation>Adónde fue el resto o dónde está</translation>
    </message>
    <message>
        <source>Type the number of a bag to see which trees stand in its grain, or of a tree to see what it stands in.</source>
        <translation>Escriba el número de un saco para ver qué árboles están en su grano, o de un árbol para ver en qué está.</translation>
    </message>
    <message>
        <source>Trace a bag, fraction, bin, batch or mix first: its list of trees can be saved.</source>
        <translation>Rastree antes un saco, fracción, cubeta, tanda o mezcla: su lista de árboles se puede guardar.</translation>
    </message>
    <message>
        <source>Save the list of trees</source>
        <translation>Guardar la lista de árboles</translation>
    </message>
    <message>
        <source>%1 trees</source>
        <translation>árboles de %1</translation>
    </message>
    <message>
        <source>Text to print (*.txt);;For a spreadsheet (*.csv);;For programs (*.json)</source>
        <translation>Texto para imprimir (*.txt);;Para una hoja de cálculo (*.csv);;Para programas (*.json)</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Guardado como %1.</translation>
    </message>
    <message>
        <source>%1 could not be written: choose a folder you may write to.</source>
        <translation>No se pudo escribir %1: elija una carpeta en la que pueda escribir.</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TracedTable</name>
    <message>
        <source>Enter goes on to the record of the row.</source>
        <translation>Intro pasa al registro de la fila.</translation>
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
        <translation>Lo que el aire cuesta en agua y el ajuste en dinero</translation>
    </message>
    <message>
        <source>Water held</source>
        <translation>Agua retenida</translation>
    </message>
    <message>
        <source>air that drains free</source>
        <translation>aire tras drenar</translation>
    </message>
    <message>
        <source>Score, lower fits better</source>
        <translation>Puntos, menos es mejor</translation>
    </message>
    <message>
        <source>price of a mixed litre</source>
        <translation>precio de un litro mezclado</translation>
    </message>
    <message>
        <source>price of a mixed litre, %1</source>
        <translation>precio de un litro mezclado, %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TreesPage</name>
    <message>
        <source>Pots and trees</source>
        <translation>Macetas y árboles</translation>
    </message>
    <message>
        <source>Trees</source>
        <translation>Árboles</translation>
    </message>
    <message>
        <source>Pots</source>
        <translation>Macetas</translation>
    </message>
    <message>
        <source>Root-mass plans</source>
        <translation>Planes de cepellón</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TreesTab</name>
    <message>
        <source>top</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>abajo</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>front</source>
        <translation>delante</translation>
    </message>
    <message>
        <source>back</source>
        <translation>atrás</translation>
    </message>
    <message>
        <source>conifer</source>
        <translation>conífera</translation>
    </message>
    <message>
        <source>deciduous conifer</source>
        <translation>conífera caducifolia</translation>
    </message>
    <message>
        <source>deciduous, developing</source>
        <translation>caducifolio, en formación</translation>
    </message>
    <message>
        <source>deciduous, refined</source>
        <translation>caducifolio, refinado</translation>
    </message>
    <message>
        <source>broadleaf evergreen</source>
        <translation>perennifolio de hoja ancha</translation>
    </message>
    <message>
        <source>acid lover</source>
        <translation>acidófila</translation>
    </message>
    <message>
        <source>tropical</source>
        <translation>tropical</translation>
    </message>
    <message>
        <source>sick tree</source>
        <translation>árbol enfermo</translation>
    </message>
    <message>
        <source>freshly collected</source>
        <translation>recién recolectado</translation>
    </message>
    <message>
        <source>imported</source>
        <translation>importado</translation>
    </message>
    <message>
        <source>%1 of tree %2</source>
        <translation>%1 del árbol %2</translation>
    </message>
    <message>
        <source>Trees</source>
        <translation>Árboles</translation>
    </message>
    <message>
        <source>tree by number, name or species</source>
        <translation>número, nombre, especie</translation>
    </message>
    <message>
        <source>No trees yet. Add the first: its species and group, then what it was last repotted into.</source>
        <translation>Aún no hay árboles. Añada el primero: su especie y grupo, y luego en qué se trasplantó la última vez.</translation>
    </message>
    <message>
        <source>Add a t&amp;ree</source>
        <translation>Añadir &amp;un árbol</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>toca %1</translation>
    </message>
    <message>
        <source>Root-mass p&amp;lan of this tree</source>
        <translation>P&amp;lan de cepellón de este árbol</translation>
    </message>
    <message>
        <source>Root-mass plan of this tree</source>
        <translation>Plan de cepellón de este árbol</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>as you call it</source>
        <translation>como usted la llama</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>&amp;Species</source>
        <translation>Es&amp;pecie</translation>
    </message>
    <message>
        <source>as far as you know it</source>
        <translation>hasta donde la conozca</translation>
    </message>
    <message>
        <source>species</source>
        <translation>especie</translation>
    </message>
    <message>
        <source>Species group</source>
        <translation>Grupo de especies</translation>
    </message>
    <message>
        <source>not chosen yet</source>
        <translation>aún sin elegir</translation>
    </message>
    <message>
        <source>group</source>
        <translation>grupo</translation>
    </message>
    <message>
        <source>Since the year</source>
        <translation>Desde el año</translation>
    </message>
    <message>
        <source>sown, struck or collected</source>
        <translation>sembrado o recolectado</translation>
    </message>
    <message>
        <source>year</source>
        <translation>año</translation>
    </message>
    <message>
        <source>Trunk &amp;width</source>
        <translation>Anc&amp;ho del tronco</translation>
    </message>
    <message>
        <source>at the base, over the roots</source>
        <translation>en la base, sobre las raíces</translation>
    </message>
    <message>
        <source>trunk width</source>
        <translation>ancho del tronco</translation>
    </message>
    <message>
        <source>trunk base</source>
        <translation>base del tronco</translation>
    </message>
    <message>
        <source>Trunk base, right</source>
        <translation>Base del tronco, derecha</translation>
    </message>
    <message>
        <source>Trunk base, back</source>
        <translation>Base del tronco, atrás</translation>
    </message>
    <message>
        <source>behind its middle</source>
        <translation>detrás de su centro</translation>
    </message>
    <message>
        <source>Trunk base, up</source>
        <translation>Base del tronco, arriba</translation>
    </message>
    <message>
        <source>over the root mass&apos;s underside</source>
        <translation>sobre su cara inferior</translation>
    </message>
    <message>
        <source>&amp;Mass</source>
        <translation>&amp;Masa</translation>
    </message>
    <message>
        <source>without soil and pot; for lifting</source>
        <translation>sin tierra ni maceta; para levantarlo</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masa</translation>
    </message>
    <message>
        <source>Ready when</source>
        <translation>Listo cuando</translation>
    </message>
    <message>
        <source>as buds swell</source>
        <translation>al hincharse las yemas</translation>
    </message>
    <message>
        <source>window</source>
        <translation>época</translation>
    </message>
    <message>
        <source>Window opens</source>
        <translation>La época empieza</translation>
    </message>
    <message>
        <source>month and day, like 03-01</source>
        <translation>mes y día, como 03-01</translation>
    </message>
    <message>
        <source>Window closes</source>
        <translation>La época acaba</translation>
    </message>
    <message>
        <source>month and day, like 04-20</source>
        <translation>mes y día, como 04-20</translation>
    </message>
    <message>
        <source>Next repotting</source>
        <translation>Próximo trasplante</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>files by reference, apart by ;</source>
        <translation>archivos, con ; entre ellos</translation>
    </message>
    <message>
        <source>photos</source>
        <translation>fotos</translation>
    </message>
    <message>
        <source>Add a photo...</source>
        <translation>Añadir una foto...</translation>
    </message>
    <message>
        <source>Add a photo by its file</source>
        <translation>Añadir una foto por su archivo</translation>
    </message>
    <message>
        <source>No&amp;te</source>
        <translation>No&amp;ta</translation>
    </message>
    <message>
        <source>anything worth knowing</source>
        <translation>lo que convenga saber</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>Day it was seen</source>
        <translation>Día en que se vio</translation>
    </message>
    <message>
        <source>looked at for repotting</source>
        <translation>revisado para trasplante</translation>
    </message>
    <message>
        <source>Da&amp;y</source>
        <translation>&amp;Día</translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation>Lo que se vio</translation>
    </message>
    <message>
        <source>colour, buds, water that stands, roots at the hole</source>
        <translation>color, yemas, agua estancada, raíces en el agujero</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Anotar</translation>
    </message>
    <message>
        <source>Write down what was seen</source>
        <translation>Anotar lo que se vio</translation>
    </message>
    <message>
        <source>Repottings</source>
        <translation>Trasplantes</translation>
    </message>
    <message>
        <source>Repottings, newest first</source>
        <translation>Trasplantes, lo más nuevo primero</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>maceta</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mezcla</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>plan</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>cortado</translation>
    </message>
    <message>
        <source>combed</source>
        <translation>peinado</translation>
    </message>
    <message>
        <source>bare-rooted</source>
        <translation>raíz desnuda</translation>
    </message>
    <message>
        <source>untouched</source>
        <translation>intacto</translation>
    </message>
    <message>
        <source>Day of the repotting</source>
        <translation>Día del trasplante</translation>
    </message>
    <message>
        <source>Pot it went into</source>
        <translation>Maceta en que se puso</translation>
    </message>
    <message>
        <source>Mix it stands in</source>
        <translation>Mezcla en que está</translation>
    </message>
    <message>
        <source>Note on the repotting</source>
        <translation>Nota sobre el trasplante</translation>
    </message>
    <message>
        <source>what was cut, what was found</source>
        <translation>qué se cortó, qué se encontró</translation>
    </message>
    <message>
        <source>Write down a repotting</source>
        <translation>Anotar un trasplante</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>inspection</source>
        <translation>inspección</translation>
    </message>
    <message>
        <source>condition</source>
        <translation>estado</translation>
    </message>
    <message>
        <source>repotting</source>
        <translation>trasplante</translation>
    </message>
    <message>
        <source>Add photos</source>
        <translation>Añadir fotos</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.webp *.heic);;All files (*)</source>
        <translation>Imágenes (*.jpg *.jpeg *.png *.webp *.heic);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>new tree</source>
        <translation>árbol nuevo</translation>
    </message>
    <message>
        <source>tree added</source>
        <translation>árbol añadido</translation>
    </message>
    <message>
        <source>Tree %1 stays: plans, days or the log name it. Write down that it is dead instead.</source>
        <translation>El árbol %1 se queda: lo nombran planes, jornadas o el diario. Anote que está muerto.</translation>
    </message>
    <message>
        <source>tree %1 removed</source>
        <translation>árbol %1 quitado</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>sin dato</translation>
    </message>
    <message>
        <source>Tree %1, %2 years</source>
        <translation>Árbol %1, %2 años</translation>
    </message>
    <message>
        <source>Tree %1</source>
        <translation>Árbol %1</translation>
    </message>
    <message>
        <source>Next repotting: %1, as you set it.</source>
        <translation>Próximo trasplante: %1, como usted lo fijó.</translation>
    </message>
    <message>
        <source>Next repotting by the group&apos;s interval: from %1, by %2 at the latest (common practice; look at it first).</source>
        <translation>Próximo trasplante según el intervalo del grupo: desde %1, a más tardar %2 (práctica común; revíselo antes).</translation>
    </message>
    <message>
        <source>Next repotting: – (it has no last repotting, or its group has no interval)</source>
        <translation>Próximo trasplante: – (no tiene trasplante anterior, o su grupo no tiene intervalo)</translation>
    </message>
    <message>
        <source>Next repotting: – (choose its group and write down the last repotting)</source>
        <translation>Próximo trasplante: – (elija su grupo y anote el último trasplante)</translation>
    </message>
    <message>
        <source>looked at</source>
        <translation>revisado</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>%1 corners</source>
        <translation>%1 esquinas</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>lo que se hizo</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation>quitado</translation>
    </message>
    <message>
        <source>What its roots bear when it is repotted goes by this group. What its mix should be like is chosen for a mix, under Groups of trees.</source>
        <translation>Lo que aguantan sus raíces al trasplantar va por este grupo. Cómo debe ser su mezcla se elige para una mezcla, en Grupos de árboles.</translation>
    </message>
    <message>
        <source>Species gro&amp;up</source>
        <translation>&amp;Grupo de especies</translation>
    </message>
    <message>
        <source>of the root mass&apos;s middle</source>
        <translation>del centro del cepellón</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>The tree&apos;s condition, newest first</source>
        <translation>Estado del árbol, lo más reciente primero</translation>
    </message>
    <message>
        <source>Begun for tree %1, and waits there: %2</source>
        <translation>Empezado para el árbol %1, espera allí: %2</translation>
    </message>
    <message>
        <source>like %1</source>
        <translation>como %1</translation>
    </message>
    <message>
        <source>a day like %1; by interval if empty</source>
        <translation>%1; vacío: intervalo</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TroublePage</name>
    <message>
        <source>The record could not be opened</source>
        <translation>No se pudo abrir el registro</translation>
    </message>
    <message>
        <source>The file was not changed, and what lies on the bench is kept. A backup that is restored takes the file&apos;s place; the file itself stays beside it under a name of its own, so nothing is overwritten.</source>
        <translation>El archivo no se cambió, y lo que hay en el banco se conserva. Una copia que se restaura ocupa el lugar del archivo; el archivo mismo queda a su lado con nombre propio, así que nada se sobrescribe.</translation>
    </message>
    <message>
        <source>Open it for reading only</source>
        <translation>Abrirlo solo para lectura</translation>
    </message>
    <message>
        <source>Open another record...</source>
        <translation>Abrir otro registro...</translation>
    </message>
    <message>
        <source>Try this one again</source>
        <translation>Probar este otra vez</translation>
    </message>
    <message>
        <source>Restore the newest intact backup: %1</source>
        <translation>Restaurar la copia íntegra más nueva: %1</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>Without a backup the command line can still read what is whole and write it into a file: %1</source>
        <translation>Sin copia de seguridad, la línea de órdenes aún puede leer lo que está intacto y escribirlo en un archivo: %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::VerdictPanel</name>
    <message>
        <source>What screening there gives</source>
        <translation>Lo que da cribar ahí</translation>
    </message>
    <message>
        <source>Which openings? From the sieves of this test</source>
        <translation>¿Qué aberturas? De los tamices de este ensayo</translation>
    </message>
    <message>
        <source>Which openings? From the sieves you own</source>
        <translation>¿Qué aberturas? De los tamices propios</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::WelcomePage</name>
    <message>
        <source>From a weighed sieve sample to a mix in a pot</source>
        <translation>De una muestra tamizada y pesada a una mezcla en la maceta</translation>
    </message>
    <message>
        <source>Look at the demonstration</source>
        <translation>Ver la demostración</translation>
    </message>
    <message>
        <source>An invented nursery in a window of its own: bags, sieve tests, a mix for pines. Closing it throws it away.</source>
        <translation>Un vivero inventado en su propia ventana: sacos, ensayos de tamizado, una mezcla para pinos. Al cerrarla se descarta.</translation>
    </message>
    <message>
        <source>Record a sieving</source>
        <translation>Registrar un tamizado</translation>
    </message>
    <message>
        <source>An empty stack of sieves, ready to type into.</source>
        <translation>Una columna de tamices vacía, lista para escribir.</translation>
    </message>
    <message>
        <source>Shape and inside lengths: its volume at once, air and water when there is a mix.</source>
        <translation>Forma y medidas interiores: su volumen al momento, y aire y agua cuando haya mezcla.</translation>
    </message>
    <message>
        <source>Type what stayed on each sieve, blend the bags, set the pot: read how much air and water the mix holds in it, and how many litres of each to measure out.</source>
        <translation>Escriba lo que quedó en cada tamiz, mezcle los sacos, fije la maceta: lea cuánto aire y agua tiene en ella la mezcla y cuántos litros de cada uno hay que medir.</translation>
    </message>
    <message>
        <source>Describe a pot</source>
        <translation>Describir una maceta</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::WishTable</name>
    <message>
        <source>share of the mass inside the wanted grain</source>
        <translation>proporción de la masa dentro del grano deseado</translation>
    </message>
    <message>
        <source>share of the mass that is dust, finer than the size below</source>
        <translation>proporción de la masa que es polvo, más fina que el tamaño de abajo</translation>
    </message>
    <message>
        <source>share of the pot that drains free after a flood</source>
        <translation>proporción de la maceta que se vacía tras inundar</translation>
    </message>
    <message>
        <source>share of the pot that holds water after draining</source>
        <translation>proporción de la maceta que retiene agua tras drenar</translation>
    </message>
    <message>
        <source>share of the pot whose water plants can take</source>
        <translation>proporción de la maceta cuya agua pueden tomar las plantas</translation>
    </message>
    <message>
        <source>mass of a litre, drained</source>
        <translation>masa de un litro, drenado</translation>
    </message>
    <message>
        <source>of a mixed litre, in your own currency</source>
        <translation>de un litro mezclado, en su moneda</translation>
    </message>
    <message>
        <source>percent passing between limits at sizes you give</source>
        <translation>porcentaje que pasa entre límites, en tamaños que usted da</translation>
    </message>
    <message>
        <source>percent passing to come near to at sizes you give</source>
        <translation>porcentaje que pasa al que acercarse, en tamaños que usted da</translation>
    </message>
    <message>
        <source>%1 to %2, %</source>
        <translation>%1 a %2, %</translation>
    </message>
    <message>
        <source>wanted grain, %</source>
        <translation>grano deseado, %</translation>
    </message>
    <message>
        <source>dust, %</source>
        <translation>polvo, %</translation>
    </message>
    <message>
        <source>air in pot, %</source>
        <translation>aire en maceta, %</translation>
    </message>
    <message>
        <source>water in pot, %</source>
        <translation>agua en maceta, %</translation>
    </message>
    <message>
        <source>exchange, meq/L</source>
        <translation>intercambio, meq/L</translation>
    </message>
    <message>
        <source>price of a litre</source>
        <translation>precio de un litro</translation>
    </message>
    <message>
        <source>curve within</source>
        <translation>curva dentro de</translation>
    </message>
    <message>
        <source>curve near</source>
        <translation>curva cerca de</translation>
    </message>
    <message>
        <source>wish</source>
        <translation>deseo</translation>
    </message>
    <message>
        <source>least</source>
        <translation>mínimo</translation>
    </message>
    <message>
        <source>most</source>
        <translation>máximo</translation>
    </message>
    <message>
        <source>must</source>
        <translation>obligatorio</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>peso</translation>
    </message>
    <message>
        <source>%1 must hold</source>
        <translation>%1 es obligatorio</translation>
    </message>
    <message>
        <source>sizes in mm with percent passing: 4.75 90-100; 2.36 34-50</source>
        <translation>tamaños en mm con porcentaje que pasa: 4.75 90-100; 2.36 34-50</translation>
    </message>
    <message>
        <source>sizes in mm with percent passing: 4.75 95; 2.36 42</source>
        <translation>tamaños en mm con porcentaje que pasa: 4.75 95; 2.36 42</translation>
    </message>
    <message>
        <source>exchange capacity of a litre</source>
        <translation>capacidad de intercambio de un litro</translation>
    </message>
    <message>
        <source>plants can take, %</source>
        <translation>para plantas, %</translation>
    </message>
    <message>
        <source>wet litre, %1</source>
        <translation>litro mojado, %1</translation>
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
        <translation>Subsuelo volcánico arcilloso granulado, extraído y secado, vendido por calibre y dureza. Se deshace con heladas húmedas.</translation>
    </message>
    <message>
        <source>biochar</source>
        <translation>biocarbón</translation>
    </message>
    <message>
        <source>Charred wood or husk; differs widely by feedstock and may shed water while fresh.</source>
        <translation>Madera o cáscara carbonizada; varía mucho según el origen y recién hecha puede repeler el agua.</translation>
    </message>
    <message>
        <source>calcined clay</source>
        <translation>arcilla calcinada</translation>
    </message>
    <message>
        <source>Clay granules fired hard. Lasts years if fired hot: soak and freeze a pinch to see.</source>
        <translation>Gránulos de arcilla cocidos duros. Dura años si se coció muy caliente: remoje y congele una pizca para verlo.</translation>
    </message>
    <message>
        <source>calcined diatomite</source>
        <translation>diatomita calcinada</translation>
    </message>
    <message>
        <source>Fired diatomaceous earth, light and very absorbent. Its dust must not be breathed.</source>
        <translation>Tierra de diatomeas cocida, ligera y muy absorbente. Su polvo no debe respirarse.</translation>
    </message>
    <message>
        <source>coir</source>
        <translation>fibra de coco</translation>
    </message>
    <message>
        <source>Coconut husk pith and fibre. Without a grain density: shares and grading only.</source>
        <translation>Polvo y fibra de cáscara de coco. Sin densidad del grano: solo proporciones y granulometría.</translation>
    </message>
    <message>
        <source>crushed expanded clay</source>
        <translation>arcilla expandida triturada</translation>
    </message>
    <message>
        <source>Fired clay pellets broken to 4-8 mm: rough, with opened pores.</source>
        <translation>Bolas de arcilla cocida rotas a 4-8 mm: ásperas, con los poros abiertos.</translation>
    </message>
    <message>
        <source>decomposed granite</source>
        <translation>granito descompuesto</translation>
    </message>
    <message>
        <source>Granite weathered in place: coarse, sandy, with some fines.</source>
        <translation>Granito meteorizado en su sitio: grueso, arenoso, con algunos finos.</translation>
    </message>
    <message>
        <source>expanded clay</source>
        <translation>arcilla expandida</translation>
    </message>
    <message>
        <source>Rounded fired clay pellets, 4-10 mm, with a sealed skin; much of the pore space is closed.</source>
        <translation>Bolas redondas de arcilla cocida, 4-10 mm, con piel sellada; gran parte de los poros está cerrada.</translation>
    </message>
    <message>
        <source>expanded shale</source>
        <translation>esquisto expandido</translation>
    </message>
    <message>
        <source>Kiln-expanded shale, hard and angular.</source>
        <translation>Esquisto expandido en horno, duro y anguloso.</translation>
    </message>
    <message>
        <source>granite grit</source>
        <translation>gravilla de granito</translation>
    </message>
    <message>
        <source>Crushed granite: solid, angular, heavy; drains and weighs down.</source>
        <translation>Granito triturado: macizo, anguloso, pesado; drena y da peso.</translation>
    </message>
    <message>
        <source>kanuma</source>
        <translation>kanuma</translation>
    </message>
    <message>
        <source>Soft, acid, weathered pumice subsoil for acid-loving species. Crushes easily.</source>
        <translation>Pómez blanda, ácida y meteorizada del subsuelo, para especies acidófilas. Se aplasta con facilidad.</translation>
    </message>
    <message>
        <source>kiryu</source>
        <translation>kiryu</translation>
    </message>
    <message>
        <source>Weathered river grit with rusty, slightly porous grain.</source>
        <translation>Gravilla de río meteorizada, de grano herrumbroso y algo poroso.</translation>
    </message>
    <message>
        <source>peat</source>
        <translation>turba</translation>
    </message>
    <message>
        <source>Sphagnum peat. Without a grain density: shares and grading only.</source>
        <translation>Turba de esfagno. Sin densidad del grano: solo proporciones y granulometría.</translation>
    </message>
    <message>
        <source>perlite</source>
        <translation>perlita</translation>
    </message>
    <message>
        <source>Expanded volcanic glass; holds water at its surface, most inner pores are closed. Dusty: wet it before pouring.</source>
        <translation>Vidrio volcánico expandido; retiene agua en su superficie, casi todos los poros internos están cerrados. Hace polvo: mójela antes de verterla.</translation>
    </message>
    <message>
        <source>pine bark</source>
        <translation>corteza de pino</translation>
    </message>
    <message>
        <source>Aged and screened pine bark. Rots down and shrinks.</source>
        <translation>Corteza de pino envejecida y cribada. Se pudre y merma.</translation>
    </message>
    <message>
        <source>pumice</source>
        <translation>pómez</translation>
    </message>
    <message>
        <source>Foamed volcanic glass; light or dense by deposit. A dense grain goes with a heavy jug: use these figures as a set.</source>
        <translation>Vidrio volcánico espumado; ligero o denso según el yacimiento. A grano denso corresponde jarra pesada: use estas cifras en conjunto.</translation>
    </message>
    <message>
        <source>quartz sand</source>
        <translation>arena de cuarzo</translation>
    </message>
    <message>
        <source>Washed silica sand: solid grain without inner pores.</source>
        <translation>Arena de sílice lavada: grano macizo sin poros internos.</translation>
    </message>
    <message>
        <source>scoria</source>
        <translation>escoria volcánica</translation>
    </message>
    <message>
        <source>Vesicular basaltic cinder, rough and heavy; some of its pores are closed.</source>
        <translation>Ceniza basáltica vesicular, áspera y pesada; algunos de sus poros están cerrados.</translation>
    </message>
    <message>
        <source>sphagnum</source>
        <translation>esfagno</translation>
    </message>
    <message>
        <source>Long-fibre sphagnum moss. Without a grain density: shares and grading only. Wear gloves: moss may carry a skin fungus.</source>
        <translation>Musgo esfagno de fibra larga. Sin densidad del grano: solo proporciones y granulometría. Use guantes: el musgo puede llevar un hongo de la piel.</translation>
    </message>
    <message>
        <source>vermiculite</source>
        <translation>vermiculita</translation>
    </message>
    <message>
        <source>Exfoliated mica; its layers collapse under load and with wear. Very old stock of unknown origin may hold asbestos: leave it shut.</source>
        <translation>Mica exfoliada; sus láminas se aplastan con la carga y el uso. Existencias muy viejas de origen desconocido pueden contener amianto: déjelas cerradas.</translation>
    </message>
    <message>
        <source>zeolite</source>
        <translation>zeolita</translation>
    </message>
    <message>
        <source>Crushed clinoptilolite rock: heavy, with a very high exchange capacity.</source>
        <translation>Roca de clinoptilolita triturada: pesada, con una capacidad de intercambio muy alta.</translation>
    </message>
</context>
<context>
    <name>profiles</name>
    <message>
        <source>very small trees</source>
        <translation>árboles muy pequeños</translation>
    </message>
    <message>
        <source>small trees</source>
        <translation>árboles pequeños</translation>
    </message>
    <message>
        <source>conifers</source>
        <translation>coníferas</translation>
    </message>
    <message>
        <source>conifers, large or collected</source>
        <translation>coníferas, grandes o recolectadas</translation>
    </message>
    <message>
        <source>deciduous, developing</source>
        <translation>caducifolio, en formación</translation>
    </message>
    <message>
        <source>deciduous, refined</source>
        <translation>caducifolio, refinado</translation>
    </message>
    <message>
        <source>deciduous conifers</source>
        <translation>coníferas caducifolias</translation>
    </message>
    <message>
        <source>evergreen broadleaf</source>
        <translation>perennifolio de hoja ancha</translation>
    </message>
    <message>
        <source>acid lovers</source>
        <translation>acidófilas</translation>
    </message>
    <message>
        <source>tropicals</source>
        <translation>tropicales</translation>
    </message>
</context>
<context>
    <name>report</name>
    <message>
        <source>the grain would hold {held_percent} % of its volume in water and has {pores_percent} % of pores: was it dabbed dry on the outside, and is the density right?</source>
        <translation>el grano retendría un {held_percent} % de su volumen en agua y tiene un {pores_percent} % de poros: ¿se secó a toques por fuera y es correcta la densidad?</translation>
    </message>
    <message>
        <source>the grain took up {percent} % of its dry mass; few kinds of grain do: was it dabbed dry on the outside?</source>
        <translation>el grano tomó un {percent} % de su masa seca; pocos granos lo hacen: ¿se secó a toques por fuera?</translation>
    </message>
    <message>
        <source>likely below {percent} % air in season {season} if the crumbs stay among the grain: a hint for the next repotting, an estimate</source>
        <translation>probablemente menos del {percent} % de aire en la temporada {season} si los fragmentos quedan entre el grano: una pista para el próximo trasplante, una estimación</translation>
    </message>
    <message>
        <source>likely below {percent} % air in season {season} if the crumbs wash down to the floor: a hint for the next repotting, an estimate</source>
        <translation>probablemente menos del {percent} % de aire en la temporada {season} si los fragmentos bajan hasta el fondo: una pista para el próximo trasplante, una estimación</translation>
    </message>
    <message>
        <source>the years to come are an estimate: frost, watering and repotting habits differ, and roots lower the air further</source>
        <translation>los años venideros son una estimación: varían las heladas, el riego y la costumbre de trasplantar, y las raíces reducen aún más el aire</translation>
    </message>
    <message>
        <source>how long this grain lasts is not known; it is taken as not breaking. A crumble test would tell</source>
        <translation>no se sabe cuánto dura este grano; se toma como que no se rompe. Un ensayo de desmenuzamiento lo diría</translation>
    </message>
    <message>
        <source>tilt and bottom layer are left out of the years to come</source>
        <translation>la inclinación y la capa de fondo no entran en los años venideros</translation>
    </message>
    <message>
        <source>the test and the usual values are far apart, so neither is trusted as far as it claims: the range is {factor} times as wide; repeat the test</source>
        <translation>el ensayo y los valores habituales distan mucho, así que no se confía en ninguno tanto como pretende: el margen es {factor} veces mayor; repita el ensayo</translation>
    </message>
    <message>
        <source>only {percent} % of the voids between grains filled when flooded; was it flooded slowly from below, after a day&apos;s soak?</source>
        <translation>al inundar solo se llenó el {percent} % de los huecos entre granos; ¿se inundó despacio desde abajo, tras un día de remojo?</translation>
    </message>
    <message>
        <source>without the mix only what was measured is told; give &quot;mix&quot; or --mix to learn from it</source>
        <translation>sin la mezcla solo se dice lo medido; dé &quot;mix&quot; o --mix para aprender de ello</translation>
    </message>
    <message>
        <source>without the pot&apos;s shape or depth there is nothing to compare with; give &quot;container&quot;, &quot;depth_cm&quot; or --pot</source>
        <translation>sin la forma o la profundidad de la maceta no hay con qué comparar; dé &quot;container&quot;, &quot;depth_cm&quot; o --pot</translation>
    </message>
    <message>
        <source>the grain came out coarser than it went in: was it the same handful, and was nothing lost?</source>
        <translation>el grano salió más grueso de lo que entró: ¿era el mismo puñado y no se perdió nada?</translation>
    </message>
    <message>
        <source>the grain displaces no water; look at the three masses</source>
        <translation>el grano no desplaza agua; revise las tres masas</translation>
    </message>
    <message>
        <source>the soaked grain is lighter than water ({density_g_l} g/L): hold it under with a sieve, or its volume comes out too small</source>
        <translation>el grano remojado es más ligero que el agua ({density_g_l} g/L): manténgalo sumergido con un tamiz, o su volumen saldrá pequeño</translation>
    </message>
    <message>
        <source>a fraction needs the opening it stayed on, the one it fell through, or both</source>
        <translation>una fracción necesita la abertura en que quedó, la que pasó, o ambas</translation>
    </message>
    <message>
        <source>{density_g_l} g/L is unusual for grain; look at the masses and at the volume of the jug</source>
        <translation>{density_g_l} g/L es inusual para grano; revise las masas y el volumen de la jarra</translation>
    </message>
    <message>
        <source>the grain lost {percent} % of its volume when worked in; 5 to 13 % is usual: was it filled loosely?</source>
        <translation>el grano perdió un {percent} % de su volumen al asentarlo; lo habitual es del 5 al 13 %: ¿se llenó suelto?</translation>
    </message>
    <message>
        <source>the pot tests were made with another mix than this one; what they teach holds for this one only as far as the grain is alike</source>
        <translation>los ensayos en maceta se hicieron con otra mezcla; lo que enseñan vale para esta solo en la medida en que el grano se parezca</translation>
    </message>
    <message>
        <source>no rigid grain: the packing model is less certain for it</source>
        <translation>no es un grano rígido: el modelo de empaquetamiento es menos seguro para él</translation>
    </message>
    <message>
        <source>all components have 0 parts; give one of them a part</source>
        <translation>todos los componentes tienen 0 partes; dé una parte a alguno</translation>
    </message>
    <message>
        <source>a settling of {share} can&apos;t be; expected 0 to below 1, the share of the volume lost</source>
        <translation>un asentamiento de {share} no es posible; se espera de 0 a menos de 1, la proporción de volumen perdida</translation>
    </message>
    <message>
        <source>a spill of {share} can&apos;t be; expected 0 to below 1, the share of the mix that misses the pot</source>
        <translation>un derrame de {share} no es posible; se espera de 0 a menos de 1, la proporción de mezcla que cae fuera de la maceta</translation>
    </message>
    <message>
        <source>the mix swells by {percent} %: it takes more room than its components apart</source>
        <translation>la mezcla se esponja un {percent} %: ocupa más que sus componentes por separado</translation>
    </message>
    <message>
        <source>weigh a litre of the {component}: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>pese un litro de {component}: margen de {figure} de ±{now_points} a ±{then_points} puntos</translation>
    </message>
    <message>
        <source>sieve the {component} three times more: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>tamice {component} tres veces más: margen de {figure} de ±{now_points} a ±{then_points} puntos</translation>
    </message>
    <message>
        <source>range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>margen de {figure} de ±{now_points} a ±{then_points} puntos</translation>
    </message>
    <message>
        <source>fill the pot with water and weigh it: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>llene la maceta de agua y pésela: margen de {figure} de ±{now_points} a ±{then_points} puntos</translation>
    </message>
    <message>
        <source>make a pot test of the mix: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>haga un ensayo en maceta de la mezcla: margen de {figure} de ±{now_points} a ±{then_points} puntos</translation>
    </message>
    <message>
        <source>see in a jug how far the mix settles: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>vea en una jarra cuánto se asienta la mezcla: margen de {figure} de ±{now_points} a ±{then_points} puntos</translation>
    </message>
    <message>
        <source>soak the {component} for a day and weigh it surface-dry: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>remoje {component} un día y péselo seco por fuera: margen de {figure} de ±{now_points} a ±{then_points} puntos</translation>
    </message>
    <message>
        <source>{percent} % of air is unusual; was it drained level for half an hour, and is the volume right?</source>
        <translation>un {percent} % de aire es inusual; ¿drenó a nivel media hora y es correcto el volumen?</translation>
    </message>
    <message>
        <source>{percent} % of water after draining is unusual; look at the masses and the volume</source>
        <translation>un {percent} % de agua tras drenar es inusual; revise las masas y el volumen</translation>
    </message>
    <message>
        <source>{caught_ml} mL ran out of {poured_ml} mL poured in; count all the water from the dry mix on</source>
        <translation>salieron {caught_ml} mL de {poured_ml} mL vertidos; cuente toda el agua desde la mezcla seca</translation>
    </message>
    <message>
        <source>a depth of {depth_cm} cm can&apos;t be; expected more than 0</source>
        <translation>una profundidad de {depth_cm} cm no es posible; se espera más de 0</translation>
    </message>
    <message>
        <source>the volume of the mix is not known; give volume_ml, a container in the file, or --pot</source>
        <translation>no se conoce el volumen de la mezcla; dé volume_ml, un recipiente en el archivo, o --pot</translation>
    </message>
    <message>
        <source>neither a flooded nor a drained mass is given; expected one of flooded_g and drained_g</source>
        <translation>no se da ni masa inundada ni drenada; se espera una de flooded_g y drained_g</translation>
    </message>
    <message>
        <source>there are no tests; expected one or more</source>
        <translation>no hay ensayos; se espera uno o más</translation>
    </message>
    <message>
        <source>{percent} % filled when flooded is unusual; look at the masses and the volume</source>
        <translation>un {percent} % lleno al inundar es inusual; revise las masas y el volumen</translation>
    </message>
    <message>
        <source>the pot is given twice; expected one of container and depth_cm</source>
        <translation>la maceta se da dos veces; se espera una de container y depth_cm</translation>
    </message>
    <message>
        <source>a volume of {volume_ml} mL can&apos;t be; expected more than 0</source>
        <translation>un volumen de {volume_ml} mL no es posible; se espera más de 0</translation>
    </message>
    <message>
        <source>masses and poured water are mixed; expected one or the other for each test</source>
        <translation>se mezclan masas y agua vertida; se espera lo uno o lo otro en cada ensayo</translation>
    </message>
    <message>
        <source>{higher_g} g is not above {lower_g} g; expected tare, dry, drained, flooded in rising order</source>
        <translation>{higher_g} g no supera {lower_g} g; se espera tara, seco, drenado, inundado en orden creciente</translation>
    </message>
    <message>
        <source>{percent} % is 1-2 mm: good for very small pots and for top dressing</source>
        <translation>un {percent} % es de 1-2 mm: bueno para macetas muy pequeñas y para cobertura</translation>
    </message>
    <message>
        <source>above 2 mm ({size_mm} mm here) the estimate is good to 3.5 points at best; a pot test makes it better</source>
        <translation>por encima de 2 mm (aquí {size_mm} mm) la estimación acierta a 3,5 puntos en el mejor caso; un ensayo en maceta la mejora</translation>
    </message>
    <message>
        <source>the figures describe the new mix after soaking and draining; watering a dry pot from above reaches less (about half the rise), and roots and breakdown lower the air with time</source>
        <translation>las cifras describen la mezcla nueva tras remojar y drenar; regar desde arriba una maceta seca logra menos (cerca de la mitad del ascenso), y las raíces y el desgaste bajan el aire con el tiempo</translation>
    </message>
    <message>
        <source>grain of {size_mm} mm holds a wet zone of about one grain or less</source>
        <translation>un grano de {size_mm} mm retiene una zona saturada de un grano o menos</translation>
    </message>
    <message>
        <source>{value} can&apos;t be; expected {low} to {high}</source>
        <translation>{value} no es posible; se espera de {low} a {high}</translation>
    </message>
    <message>
        <source>a table of areas has no outline; tilted, a round one is assumed</source>
        <translation>una tabla de áreas no tiene contorno; inclinada, se supone redonda</translation>
    </message>
    <message>
        <source>the unit is {unit}; expected {expected}</source>
        <translation>la unidad es {unit}; se espera {expected}</translation>
    </message>
    <message>
        <source>the absorption fills {water_percent} % of the grain, which has {pores_percent} % pores; look at the absorption and both grain densities</source>
        <translation>la absorción llena el {water_percent} % del grano, que tiene un {pores_percent} % de poros; revise la absorción y ambas densidades</translation>
    </message>
    <message>
        <source>an absorption of {ratio} can&apos;t be; expected 0 or more, kg of water per kg of dry grain</source>
        <translation>una absorción de {ratio} no es posible; se espera 0 o más, kg de agua por kg de grano seco</translation>
    </message>
    <message>
        <source>an exchange capacity of {cec_meq_100g} meq/100 g can&apos;t be; expected 0 or more</source>
        <translation>una capacidad de intercambio de {cec_meq_100g} meq/100 g no es posible; se espera 0 o más</translation>
    </message>
    <message>
        <source>grain of one size has no pan and no top class; leave this out or give a grading</source>
        <translation>un grano de un solo tamaño no tiene bandeja ni clase superior; omítalo o dé una granulometría</translation>
    </message>
    <message>
        <source>a density of {density_g_l} g/L can&apos;t be; expected more than 0</source>
        <translation>una densidad de {density_g_l} g/L no es posible; se espera más de 0</translation>
    </message>
    <message>
        <source>{percent} % moisture can&apos;t be; expected 0 or more, water per dry mass</source>
        <translation>un {percent} % de humedad no es posible; se espera 0 o más, agua por masa seca</translation>
    </message>
    <message>
        <source>the sieve test {file} can&apos;t be read from here; give the grading itself</source>
        <translation>el ensayo de tamizado {file} no se puede leer desde aquí; dé la granulometría misma</translation>
    </message>
    <message>
        <source>the grain sizes are missing; give grading, class_mm or sieve_test</source>
        <translation>faltan los tamaños de grano; dé grading, class_mm o sieve_test</translation>
    </message>
    <message>
        <source>an open share of {share} can&apos;t be; expected 0 to 1</source>
        <translation>una proporción abierta de {share} no es posible; se espera de 0 a 1</translation>
    </message>
    <message>
        <source>{parts} parts can&apos;t be; expected 0 or more</source>
        <translation>{parts} partes no es posible; se espera 0 o más</translation>
    </message>
    <message>
        <source>a grain size of {size_mm} mm can&apos;t be; expected more than 0</source>
        <translation>un tamaño de grano de {size_mm} mm no es posible; se espera más de 0</translation>
    </message>
    <message>
        <source>the grain sizes are given in more than one way; give one of grading, class_mm and sieve_test</source>
        <translation>los tamaños de grano se dan de más de una manera; dé uno de grading, class_mm y sieve_test</translation>
    </message>
    <message>
        <source>the area is {area_cm2} cm2; it must be above 0 (only the floor may be a point)</source>
        <translation>el área es {area_cm2} cm2; debe ser mayor que 0 (solo el fondo puede ser un punto)</translation>
    </message>
    <message>
        <source>the area is {area_cm2} cm2; expected at most a square of ten metres</source>
        <translation>el área es {area_cm2} cm2; se espera como máximo un cuadrado de diez metros</translation>
    </message>
    <message>
        <source>the exponent is {exponent}; expected at most {limit}</source>
        <translation>el exponente es {exponent}; se espera como máximo {limit}</translation>
    </message>
    <message>
        <source>the exponent is {exponent}; it must be 1 or more</source>
        <translation>el exponente es {exponent}; debe ser 1 o más</translation>
    </message>
    <message>
        <source>{count} drain holes can&apos;t be; expected 0 or more</source>
        <translation>{count} agujeros de drenaje no es posible; se espera 0 o más</translation>
    </message>
    <message>
        <source>the length is {length_cm} cm; it must be above 0</source>
        <translation>la longitud es {length_cm} cm; debe ser mayor que 0</translation>
    </message>
    <message>
        <source>the length is {length_cm} cm; expected at most {limit_cm} cm</source>
        <translation>la longitud es {length_cm} cm; se espera como máximo {limit_cm} cm</translation>
    </message>
    <message>
        <source>the length is {length_cm} cm; expected at least {limit_cm} cm</source>
        <translation>la longitud es {length_cm} cm; se espera al menos {limit_cm} cm</translation>
    </message>
    <message>
        <source>a drum needs its diameter at half the depth</source>
        <translation>un tambor necesita su diámetro a media profundidad</translation>
    </message>
    <message>
        <source>the profile has no areas; give height_cm and area_cm2 from the floor to the rim</source>
        <translation>el perfil no tiene áreas; dé height_cm y area_cm2 desde el fondo hasta el borde</translation>
    </message>
    <message>
        <source>the table of areas has {rows} rows; at least two are needed, floor and rim</source>
        <translation>la tabla de áreas tiene {rows} filas; hacen falta al menos dos, fondo y borde</translation>
    </message>
    <message>
        <source>the tilt is {tilt_deg} degrees; expected 0 to 60</source>
        <translation>la inclinación es de {tilt_deg} grados; se espera de 0 a 60</translation>
    </message>
    <message>
        <source>{form} is no form of a mound; expected paraboloid, cone or ellipsoid</source>
        <translation>{form} no es forma de un montículo; se espera paraboloid, cone o ellipsoid</translation>
    </message>
    <message>
        <source>{shape} is no shape; expected rectangular, oval, round, hexagonal, octagonal, drum, superellipse, bowl or profile</source>
        <translation>{shape} no es una forma; se espera rectangular, oval, round, hexagonal, octagonal, drum, superellipse, bowl o profile</translation>
    </message>
    <message>
        <source>{axis} is no axis to tilt about; expected length or width</source>
        <translation>{axis} no es un eje de inclinación; se espera length o width</translation>
    </message>
    <message>
        <source>the volume is {volume_ml} mL; it must be above 0</source>
        <translation>el volumen es {volume_ml} mL; debe ser mayor que 0</translation>
    </message>
    <message>
        <source>with {diameter_cm} cm at half the depth the walls would meet; check the three diameters</source>
        <translation>con {diameter_cm} cm a media profundidad las paredes se tocarían; compruebe los tres diámetros</translation>
    </message>
    <message>
        <source>the header has no column {column}; expected aperture_mm with retained_g, with gross_g and tare_g, or with retained_l</source>
        <translation>la cabecera no tiene la columna {column}; se espera aperture_mm con retained_g, con gross_g y tare_g, o con retained_l</translation>
    </message>
    <message>
        <source>there is no header line; expected aperture_mm,retained_g</source>
        <translation>no hay línea de cabecera; se espera aperture_mm,retained_g</translation>
    </message>
    <message>
        <source>{text} is not a day; expected one like 2026-03-14</source>
        <translation>{text} no es un día; se espera una fecha como 2026-03-14</translation>
    </message>
    <message>
        <source>the file is no longer where it was opened; save a copy of what is open</source>
        <translation>el archivo ya no está donde se abrió; guarde una copia de lo que está abierto</translation>
    </message>
    <message>
        <source>this is a folder; name a file</source>
        <translation>esto es una carpeta; indique un archivo</translation>
    </message>
    <message>
        <source>the format is {found}; expected {expected}</source>
        <translation>el formato es {found}; se espera {expected}</translation>
    </message>
    <message>
        <source>an opening of {aperture_mm} mm can&apos;t be; give the free opening of the sieve in mm</source>
        <translation>una abertura de {aperture_mm} mm no es posible; dé la abertura libre del tamiz en mm</translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm after {before_mm} mm is out of order; write a grading coarse to fine</source>
        <translation>la abertura {aperture_mm} mm tras {before_mm} mm está fuera de orden; escriba la granulometría de grueso a fino</translation>
    </message>
    <message>
        <source>the pan size {size_mm} mm has to lie above 0 and not above the finest sieve, {finest_mm} mm</source>
        <translation>el tamaño de la bandeja {size_mm} mm debe ser mayor que 0 y no superar el tamiz más fino, {finest_mm} mm</translation>
    </message>
    <message>
        <source>the top size {size_mm} mm has to lie above the coarsest sieve, {coarsest_mm} mm</source>
        <translation>el tamaño máximo {size_mm} mm debe superar el tamiz más grueso, {coarsest_mm} mm</translation>
    </message>
    <message>
        <source>the key {key} stands twice; give it once</source>
        <translation>la clave {key} aparece dos veces; dela una vez</translation>
    </message>
    <message>
        <source>the two results lie {percent} % apart, {usual_percent} % is usual; measure a third time</source>
        <translation>los dos resultados difieren un {percent} %, lo habitual es un {usual_percent} %; mida por tercera vez</translation>
    </message>
    <message>
        <source>{text} has a decimal comma; write a point, or separate the columns by ; or tab</source>
        <translation>{text} tiene coma decimal; escriba un punto, o separe las columnas con ; o tabulador</translation>
    </message>
    <message>
        <source>{unit} is no unit known here; leave it out or write one that fits the field</source>
        <translation>{unit} no es una unidad conocida aquí; omítala o escriba una que convenga al campo</translation>
    </message>
    <message>
        <source>at least {least} are needed here</source>
        <translation>aquí hacen falta al menos {least}</translation>
    </message>
    <message>
        <source>expected {expected} here</source>
        <translation>aquí se espera {expected}</translation>
    </message>
    <message>
        <source>name at least one opening to screen at</source>
        <translation>indique al menos una abertura a la que cribar</translation>
    </message>
    <message>
        <source>{aperture_mm} mm is below the finest sieve of the test, {finest_mm} mm, and {percent} % is finer than that: test with a finer sieve</source>
        <translation>{aperture_mm} mm está por debajo del tamiz más fino del ensayo, {finest_mm} mm, y un {percent} % es más fino que él: ensaye con un tamiz más fino</translation>
    </message>
    <message>
        <source>an opening of {aperture_mm} mm can&apos;t be; expected more than 0</source>
        <translation>una abertura de {aperture_mm} mm no es posible; se espera más de 0</translation>
    </message>
    <message>
        <source>a sharpness of {sharpness} can&apos;t be; expected more than 0</source>
        <translation>una nitidez de {sharpness} no es posible; se espera más de 0</translation>
    </message>
    <message>
        <source>{percent} % crumbs can&apos;t be; expected 0 to 100</source>
        <translation>un {percent} % de fragmentos no es posible; se espera de 0 a 100</translation>
    </message>
    <message>
        <source>a sieve of {diameter_mm} mm has no sieving area; give the diameter of the frame in mm</source>
        <translation>un tamiz de {diameter_mm} mm no tiene superficie de tamizado; dé el diámetro del marco en mm</translation>
    </message>
    <message>
        <source>{percent} % of the sample was lost while sieving, more than 1 %: look for a spilled or forgotten pan</source>
        <translation>un {percent} % de la muestra se perdió al tamizar, más del 1 %: busque una bandeja derramada u olvidada</translation>
    </message>
    <message>
        <source>a mass of {mass_g} g can&apos;t be; expected 0 or more</source>
        <translation>una masa de {mass_g} g no es posible; se espera 0 o más</translation>
    </message>
    <message>
        <source>the same fraction is given in more than one way; give its mass, its gross and tare, or its litres</source>
        <translation>la misma fracción se da de más de una manera; dé su masa, su bruto y tara, o sus litros</translation>
    </message>
    <message>
        <source>masses and litres are mixed; measure all fractions in one way</source>
        <translation>se mezclan masas y litros; mida todas las fracciones de una sola manera</translation>
    </message>
    <message>
        <source>the pan is missing; the last row holds what fell through the finest sieve, 0 if nothing did</source>
        <translation>falta la bandeja; la última fila contiene lo que cayó por el tamiz más fino, 0 si no cayó nada</translation>
    </message>
    <message>
        <source>there is no sieve; expected at least one row above the pan</source>
        <translation>no hay ningún tamiz; se espera al menos una fila sobre la bandeja</translation>
    </message>
    <message>
        <source>{percent} % is finer than the finest sieve, {aperture_mm} mm; a finer sieve would show where the dust begins</source>
        <translation>un {percent} % es más fino que el tamiz más fino, {aperture_mm} mm; un tamiz más fino mostraría dónde empieza el polvo</translation>
    </message>
    <message>
        <source>{count} can&apos;t be the number of a test; expected 1 or more</source>
        <translation>{count} no puede ser el número de un ensayo; se espera 1 o más</translation>
    </message>
    <message>
        <source>a resolution of {mass_g} g can&apos;t be; expected 0 or more</source>
        <translation>una resolución de {mass_g} g no es posible; se espera 0 o más</translation>
    </message>
    <message>
        <source>a sample of {mass_g} g can&apos;t be; expected more than 0</source>
        <translation>una muestra de {mass_g} g no es posible; se espera más de 0</translation>
    </message>
    <message>
        <source>{mass_g} g is a small sample for grain of {size_mm} mm; take {least_g} g or more</source>
        <translation>{mass_g} g es una muestra pequeña para grano de {size_mm} mm; tome {least_g} g o más</translation>
    </message>
    <message>
        <source>{text} is no basis; expected original or recovered</source>
        <translation>{text} no es una base; se espera original o recovered</translation>
    </message>
    <message>
        <source>a volume of {volume_l} L can&apos;t be; expected 0 or more</source>
        <translation>un volumen de {volume_l} L no es posible; se espera 0 o más</translation>
    </message>
    <message>
        <source>a test was measured in litres, so each counts the same</source>
        <translation>un ensayo se midió en litros, así que todos cuentan igual</translation>
    </message>
    <message>
        <source>{percent} % of the sample still fell through in one more minute, 0.5 % is the limit: shake on, unless the grain is soft and breaks</source>
        <translation>un {percent} % de la muestra aún cayó en un minuto más, 0,5 % es el límite: siga agitando, salvo que el grano sea blando y se rompa</translation>
    </message>
    <message>
        <source>this byte is not UTF-8; save the file as UTF-8</source>
        <translation>este byte no es UTF-8; guarde el archivo como UTF-8</translation>
    </message>
    <message>
        <source>{count} bags can&apos;t be; expected 1 or more</source>
        <translation>{count} sacos no es posible; se espera 1 o más</translation>
    </message>
    <message>
        <source>in whole scoops a batch is up to {percent} points off the recipe; a smaller scoop or a larger tub keeps it closer</source>
        <translation>en palas enteras una tanda se aparta hasta {percent} puntos de la receta; una pala menor o una tina mayor la acercan</translation>
    </message>
    <message>
        <source>{volume_ml} mL can&apos;t be filled in; expected 0 or more</source>
        <translation>{volume_ml} mL no se pueden llenar; se espera 0 o más</translation>
    </message>
    <message>
        <source>about {mass_kg} kg when full and wet: lift it by two or use a trolley (general information; safety sheets, local codes and qualified advice prevail)</source>
        <translation>unos {mass_kg} kg llena y mojada: levántela entre dos o use una carretilla (información general; prevalecen las fichas de seguridad, las normas locales y el consejo cualificado)</translation>
    </message>
    <message>
        <source>at least {mass_kg} kg when full and wet, not all of it weighed: lift it by two or use a trolley (general information; safety sheets, local codes and qualified advice prevail)</source>
        <translation>al menos {mass_kg} kg llena y mojada, sin haberse pesado todo: levántela entre dos o use una carretilla (información general; prevalecen las fichas de seguridad, las normas locales y el consejo cualificado)</translation>
    </message>
    <message>
        <source>an interval of {years} years can&apos;t be; expected 1 or more</source>
        <translation>un intervalo de {years} años no es posible; se espera 1 o más</translation>
    </message>
    <message>
        <source>{volume_l} L of a layer are not counted as any grain; name its grain</source>
        <translation>{volume_l} L de una capa no se cuentan como ningún grano; nombre su grano</translation>
    </message>
    <message>
        <source>a mass of {mass_kg} kg can&apos;t be; expected 0 or more</source>
        <translation>una masa de {mass_kg} kg no es posible; se espera 0 o más</translation>
    </message>
    <message>
        <source>no settling is given; litres are as poured, and worked in they lie about 8 % lower</source>
        <translation>no se da asentamiento; los litros son vertidos, y asentados quedan cerca de un 8 % más bajos</translation>
    </message>
    <message>
        <source>no spill is given; 5 to 10 % beside the pot is common</source>
        <translation>no se da derrame; es común que un 5 a 10 % caiga fuera de la maceta</translation>
    </message>
    <message>
        <source>{text} is no month and day; expected the like of 03-15</source>
        <translation>{text} no es mes y día; se espera algo como 03-15</translation>
    </message>
    <message>
        <source>expected a whole number, found {value}</source>
        <translation>se espera un número entero, se encontró {value}</translation>
    </message>
    <message>
        <source>settling {percent} %, the median of the last {count} trees filled</source>
        <translation>asentamiento {percent} %, la mediana de los últimos {count} árboles llenados</translation>
    </message>
    <message>
        <source>spill {percent} %, the median of the last {count} batches</source>
        <translation>derrame {percent} %, la mediana de las últimas {count} tandas</translation>
    </message>
    <message>
        <source>{volume_l} L on the shelf can&apos;t be; expected 0 or more</source>
        <translation>{volume_l} L en la estantería no es posible; se espera 0 o más</translation>
    </message>
    <message>
        <source>the work can&apos;t be ordered by {text}; expected bud, mix, helper or name</source>
        <translation>el trabajo no se puede ordenar por {text}; se espera bud, mix, helper o name</translation>
    </message>
    <message>
        <source>{text} is no time of the day; expected evening or morning</source>
        <translation>{text} no es un momento del día; se espera evening o morning</translation>
    </message>
    <message>
        <source>screened grain has no yield; leave one of the two out</source>
        <translation>el grano cribado no tiene rendimiento; omita uno de los dos</translation>
    </message>
    <message>
        <source>a yield of {share} can&apos;t be; expected more than 0 and at most 1.2, litres for each litre screened</source>
        <translation>un rendimiento de {share} no es posible; se espera más de 0 y como máximo 1,2 litros por cada litro cribado</translation>
    </message>
    <message>
        <source>the band runs from {from_mm} to {to_mm} mm; expected the finer size first</source>
        <translation>el calibre va de {from_mm} a {to_mm} mm; se espera primero el tamaño más fino</translation>
    </message>
    <message>
        <source>recipes of {value} components can&apos;t be searched; expected 1 to {most}</source>
        <translation>no se pueden buscar recetas de {value} componentes; se espera de 1 a {most}</translation>
    </message>
    <message>
        <source>the wish names more than one figure; make a wish of each</source>
        <translation>el deseo nombra más de una cifra; haga un deseo de cada una</translation>
    </message>
    <message>
        <source>{value} can&apos;t be; expected 0 or more</source>
        <translation>{value} no es posible; se espera 0 o más</translation>
    </message>
    <message>
        <source>{value} can&apos;t be reached; expected {low} to {high}</source>
        <translation>{value} no se puede alcanzar; se espera de {low} a {high}</translation>
    </message>
    <message>
        <source>{value} L are needed; expected more than 0</source>
        <translation>se necesitan {value} L; se espera más de 0</translation>
    </message>
    <message>
        <source>there is nothing to mix; expected 1 to 40 candidates</source>
        <translation>no hay nada que mezclar; se espera de 1 a 40 candidatos</translation>
    </message>
    <message>
        <source>the wish names nothing; give one of limits, nearest, band, finer_than_mm, air_filled_porosity, container_capacity, available_in_pot, wet_mass_g_l, cec_meq_l, price_per_l, share</source>
        <translation>el deseo no nombra nada; dé uno de limits, nearest, band, finer_than_mm, air_filled_porosity, container_capacity, available_in_pot, wet_mass_g_l, cec_meq_l, price_per_l, share</translation>
    </message>
    <message>
        <source>nothing is asked for; give a lower limit, an upper limit or both</source>
        <translation>no se pide nada; dé un límite inferior, un límite superior o ambos</translation>
    </message>
    <message>
        <source>{key} is false; leave the wish out or write true</source>
        <translation>{key} es false; omita el deseo o escriba true</translation>
    </message>
    <message>
        <source>{text} can&apos;t be read; expected a size in mm and percent passing, such as 4.75 90-100, with ; between points</source>
        <translation>{text} no se puede leer; se espera un tamaño en mm y el porcentaje que pasa, como 4.75 90-100, con ; entre puntos</translation>
    </message>
    <message>
        <source>a price of {value} can&apos;t be; expected 0 or more</source>
        <translation>un precio de {value} no es posible; se espera 0 o más</translation>
    </message>
    <message>
        <source>a price of 0 as upper limit leaves no scale to measure a miss by; expected more than 0</source>
        <translation>un precio de 0 como límite superior no deja escala para medir la falta; se espera más de 0</translation>
    </message>
    <message>
        <source>none of the {recipes} recipes scores less; of those that score the same a cheaper or simpler one may exist</source>
        <translation>ninguna de las {recipes} recetas puntúa más bajo; entre las que puntúan igual puede haber una más barata o más sencilla</translation>
    </message>
    <message>
        <source>a stock of {value} L can&apos;t be; expected 0 or more</source>
        <translation>unas existencias de {value} L no son posibles; se espera 0 o más</translation>
    </message>
    <message>
        <source>a total of {value} parts can&apos;t be searched; expected 1 to {most}</source>
        <translation>no se puede buscar un total de {value} partes; se espera de 1 a {most}</translation>
    </message>
    <message>
        <source>a weight of {weight} can&apos;t be; expected 0 or more</source>
        <translation>un peso de {weight} no es posible; se espera 0 o más</translation>
    </message>
    <message>
        <source>this must be above 0; leave it out if it is not known</source>
        <translation>esto debe ser mayor que 0; omítalo si no se sabe</translation>
    </message>
    <message>
        <source>{text} holds no grain; expected a bag, a bin, a fraction or a batch</source>
        <translation>{text} no contiene grano; se espera un saco, una cubeta, una fracción o una tanda</translation>
    </message>
    <message>
        <source>the sizes run from {from_mm} mm down to {to_mm} mm; expected the finer first</source>
        <translation>los tamaños van de {from_mm} mm hacia abajo hasta {to_mm} mm; se espera primero el más fino</translation>
    </message>
    <message>
        <source>{text} is not known here; expected one of {expected}</source>
        <translation>{text} no se conoce aquí; se espera uno de {expected}</translation>
    </message>
    <message>
        <source>an angle of {angle_deg} degrees can&apos;t be; expected {low_deg} to {high_deg}</source>
        <translation>un ángulo de {angle_deg} grados no es posible; se espera de {low_deg} a {high_deg}</translation>
    </message>
    <message>
        <source>deciduous conifers stand between: bare-rooted with care, an older tree keeps a core</source>
        <translation>las coníferas caducifolias están a medio camino: a raíz desnuda con cuidado, un árbol viejo conserva un núcleo</translation>
    </message>
    <message>
        <source>refined trees lose fine twigs when bare-rooted: work edges and base, a sector at most</source>
        <translation>los árboles refinados pierden ramillas finas a raíz desnuda: trabaje bordes y base, un sector como máximo</translation>
    </message>
    <message>
        <source>this group is not bare-rooted: keep the core</source>
        <translation>este grupo no se deja a raíz desnuda: conserve el núcleo</translation>
    </message>
    <message>
        <source>bare-root tropicals only while they grow</source>
        <translation>tropicales a raíz desnuda solo mientras crecen</translation>
    </message>
    <message>
        <source>freshly collected: trim torn ends only, then leave it for 2-3 years</source>
        <translation>recién recolectado: recorte solo las puntas rotas y déjelo 2-3 años</translation>
    </message>
    <message>
        <source>conifers: bottom and one half, never all sides; the other half a year or two later</source>
        <translation>coníferas: base y una mitad, nunca todos los lados; la otra mitad un año o dos después</translation>
    </message>
    <message>
        <source>a conifer is never bare-rooted; comb one half and the bottom, the other half in a later year</source>
        <translation>una conífera nunca se deja a raíz desnuda; peine una mitad y la base, la otra mitad otro año</translation>
    </message>
    <message>
        <source>an exponent of {exponent} can&apos;t be; expected 1 to 100 (2 is an ellipsoid, 4 a box with soft edges)</source>
        <translation>un exponente de {exponent} no es posible; se espera de 1 a 100 (2 es un elipsoide, 4 una caja de bordes suaves)</translation>
    </message>
    <message>
        <source>what lies behind this face is not known; the plan takes {depth_cm} cm off it, the next plan is for when that proves impossible</source>
        <translation>no se sabe qué hay tras este lado; el plan quita de él {depth_cm} cm, el plan siguiente es para cuando resulte imposible</translation>
    </message>
    <message>
        <source>imported: leave it until it grows strongly, then go by its own group</source>
        <translation>importado: déjelo hasta que crezca con fuerza, después siga su propio grupo</translation>
    </message>
    <message>
        <source>{years} years can&apos;t be; expected 1 to 100</source>
        <translation>{years} años no es posible; se espera de 1 a 100</translation>
    </message>
    <message>
        <source>the pot chosen is too small; it fits the free pot {pot}</source>
        <translation>la maceta elegida es pequeña; cabe en la maceta libre {pot}</translation>
    </message>
    <message>
        <source>a share of {share} can&apos;t be; expected 0 to 1</source>
        <translation>una proporción de {share} no es posible; se espera de 0 a 1</translation>
    </message>
    <message>
        <source>the root mass stands {rise_cm} cm over the soil: build it up with sphagnum</source>
        <translation>el cepellón sobresale {rise_cm} cm de la tierra: rodéelo de esfagno</translation>
    </message>
    <message>
        <source>sick: dead and rotten roots come off, no healthy one; clean tools, throw the old soil away</source>
        <translation>enfermo: se quitan raíces muertas y podridas, ninguna sana; limpie las herramientas, tire la tierra vieja</translation>
    </message>
    <message>
        <source>not in one go: these cuts and back into the old pot, the rest when the tree has recovered</source>
        <translation>no de una vez: estos cortes y vuelta a la maceta antigua, el resto cuando el árbol se haya recuperado</translation>
    </message>
    <message>
        <source>a table of areas has no outline; a round one is assumed</source>
        <translation>una tabla de áreas no tiene contorno; se supone redondo</translation>
    </message>
    <message>
        <source>a tip of {angle_deg} degrees lays the tree down; look at what becomes the new surface</source>
        <translation>un vuelco de {angle_deg} grados tumba el árbol; mire qué pasa a ser la nueva superficie</translation>
    </message>
    <message>
        <source>the trunk base can&apos;t be at {length_cm} cm; expected {low_cm} cm to {high_cm} cm</source>
        <translation>la base del tronco no puede estar a {length_cm} cm; se espera de {low_cm} cm a {high_cm} cm</translation>
    </message>
    <message>
        <source>the trunk base would be buried where it was placed; it was raised to the soil</source>
        <translation>la base del tronco quedaría enterrada donde se puso; se subió hasta la tierra</translation>
    </message>
    <message>
        <source>there is no group {group}; expected one of {expected}</source>
        <translation>no hay ningún grupo {group}; se espera uno de {expected}</translation>
    </message>
    <message>
        <source>the record has {mass_g} g; count what is there</source>
        <translation>los libros tienen {mass_g} g; cuente lo que hay</translation>
    </message>
    <message>
        <source>give grams or litres of {id}</source>
        <translation>dé gramos o litros de {id}</translation>
    </message>
    <message>
        <source>no tree is marked sick; name the trees to compare</source>
        <translation>ningún árbol está marcado como enfermo; nombre los árboles que comparar</translation>
    </message>
    <message>
        <source>{text} is no month and day; expected 03-14</source>
        <translation>{text} no es mes y día; se espera 03-14</translation>
    </message>
    <message>
        <source>the share is {share}; expected 0 to 1</source>
        <translation>la proporción es {share}; se espera de 0 a 1</translation>
    </message>
    <message>
        <source>today&apos;s backup could not be made ({reason}); what you write is saved all the same</source>
        <translation>no se pudo hacer la copia de seguridad de hoy ({reason}); lo que escribe se guarda igualmente</translation>
    </message>
    <message>
        <source>stopped; nothing was written</source>
        <translation>detenido; no se escribió nada</translation>
    </message>
    <message>
        <source>there is nothing to redo</source>
        <translation>no hay nada que rehacer</translation>
    </message>
    <message>
        <source>there is nothing to undo</source>
        <translation>no hay nada que deshacer</translation>
    </message>
    <message>
        <source>air</source>
        <translation>aire</translation>
    </message>
    <message>
        <source>water</source>
        <translation>agua</translation>
    </message>
    <message>
        <source>(flooded - dry) / volume</source>
        <translation>(inundada - seca) / volumen</translation>
    </message>
    <message>
        <source>(flooded - drained) / volume: what drained; trapped air is not in it</source>
        <translation>(inundada - drenada) / volumen: lo que drenó; el aire atrapado no está incluido</translation>
    </message>
    <message>
        <source>(drained - dry) / volume</source>
        <translation>(drenada - seca) / volumen</translation>
    </message>
    <message>
        <source>(fill + reserve) / ((1 - settling)(1 - spill)); reserve = the two largest differences to a worse plan</source>
        <translation>(llenado + reserva) / ((1 - asentamiento)(1 - derrame)); reserva = las dos mayores diferencias con un plan peor</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mezcla</translation>
    </message>
    <message>
        <source>fill</source>
        <translation>llenado</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>reserva</translation>
    </message>
    <message>
        <source>settling</source>
        <translation>asentamiento</translation>
    </message>
    <message>
        <source>spill</source>
        <translation>derrame</translation>
    </message>
    <message>
        <source>needed x loose share / (1 - shrinkage)</source>
        <translation>necesario x proporción suelta / (1 - merma)</translation>
    </message>
    <message>
        <source>component</source>
        <translation>componente</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>necesario</translation>
    </message>
    <message>
        <source>shrinkage</source>
        <translation>merma</translation>
    </message>
    <message>
        <source>gives</source>
        <translation>da</translation>
    </message>
    <message>
        <source>ready / yield</source>
        <translation>listo / rendimiento</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>saco</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>listo</translation>
    </message>
    <message>
        <source>yield</source>
        <translation>rendimiento</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>práctica común, sin fuente</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>medido</translation>
    </message>
    <message>
        <source>raw litres / litres of a bag, rounded up; raw = short / yield</source>
        <translation>litros brutos / litros de un saco, redondeado hacia arriba; bruto = falta / rendimiento</translation>
    </message>
    <message>
        <source>material</source>
        <translation>material</translation>
    </message>
    <message>
        <source>short</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>a part not weighed</source>
        <translation>una parte sin pesar</translation>
    </message>
    <message>
        <source>left out, and the mass is said as at least</source>
        <translation>omitida, y la masa se da como «al menos»</translation>
    </message>
    <message>
        <source>tub of {mix}</source>
        <translation>tina de {mix}</translation>
    </message>
    <message>
        <source>at least {mass}</source>
        <translation>al menos {mass}</translation>
    </message>
    <message>
        <source>1 bag</source>
        <translation>1 saco</translation>
    </message>
    <message>
        <source>{count} bags</source>
        <translation>{count} sacos</translation>
    </message>
    <message>
        <source>Repotting day</source>
        <translation>Jornada de trasplante</translation>
    </message>
    <message>
        <source>{title}, sheet revision {revision}</source>
        <translation>{title}, revisión {revision} de la hoja</translation>
    </message>
    <message>
        <source>{title}, {day}, sheet revision {revision}</source>
        <translation>{title}, {day}, revisión {revision} de la hoja</translation>
    </message>
    <message>
        <source>{mix} version {version}</source>
        <translation>{mix} versión {version}</translation>
    </message>
    <message>
        <source>{from} to {to}</source>
        <translation>{from} a {to}</translation>
    </message>
    <message>
        <source>{figure} typical</source>
        <translation>{figure} típico</translation>
    </message>
    <message>
        <source>Set out {raw} of {bag} for {component}</source>
        <translation>Prepare {raw} de {bag} para {component}</translation>
    </message>
    <message>
        <source>Screen {raw} of {bag} at {band} for {component}, gives {ready} ({yield})</source>
        <translation>Cribe {raw} de {bag} a {band} para {component}, da {ready} ({yield})</translation>
    </message>
    <message>
        <source>Screen {raw} of {bag} for {component}, gives {ready} ({yield})</source>
        <translation>Cribe {raw} de {bag} para {component}, da {ready} ({yield})</translation>
    </message>
    <message>
        <source>{yield}, typical: measure</source>
        <translation>{yield}, típico: mídalo</translation>
    </message>
    <message>
        <source>Buy {bags} of {material}, short of {short} ready</source>
        <translation>Compre {bags} de {material}, faltan {short} listos</translation>
    </message>
    <message>
        <source>Buy {bags} of {material} of {volume} (typical), short of {short} ready</source>
        <translation>Compre {bags} de {material} de {volume} (típico), faltan {short} listos</translation>
    </message>
    <message>
        <source>Buy {bags} of {material} of {volume}, short of {short} ready</source>
        <translation>Compre {bags} de {material} de {volume}, faltan {short} listos</translation>
    </message>
    <message>
        <source>{line}, price {price}</source>
        <translation>{line}, precio {price}</translation>
    </message>
    <message>
        <source>Grain</source>
        <translation>Grano</translation>
    </message>
    <message>
        <source>Mixes</source>
        <translation>Mezclas</translation>
    </message>
    <message>
        <source>The reserve covers the two trees of each mix that would take most if they go worse. Left over mix goes back to stock as a tub of its own.</source>
        <translation>La reserva cubre los dos árboles de cada mezcla que más tomarían si salen peor. La mezcla sobrante vuelve a existencias como tina propia.</translation>
    </message>
    <message>
        <source>From the shelf</source>
        <translation>De la estantería</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>Por comprar</translation>
    </message>
    <message>
        <source>due</source>
        <translation>le toca</translation>
    </message>
    <message>
        <source>may be: look at it</source>
        <translation>quizá: revíselo</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>aún ninguno</translation>
    </message>
    <message>
        <source>Trees due by {day}</source>
        <translation>Árboles que tocan hasta el {day}</translation>
    </message>
    <message>
        <source>no day yet</source>
        <translation>aún sin día</translation>
    </message>
    <message>
        <source>Bags that several days want</source>
        <translation>Sacos que quieren varias jornadas</translation>
    </message>
    <message>
        <source>{lift}: two people or a trolley</source>
        <translation>{lift}: dos personas o una carretilla</translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation>Cargas</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>Dust: dry grain can hold respirable silica. Screen batches damp, outdoors with the wind behind, with a mask (P3 or P100 for silica, P2 or N95 at least); clean with a wet cloth or an H-class vacuum, never a broom.</source>
        <translation>Polvo: el grano seco puede contener sílice respirable. Cribe las tandas húmedas, al aire libre con el viento a la espalda y con mascarilla (P3 o P100 para sílice, P2 o N95 como mínimo); limpie con un paño mojado o un aspirador de clase H, nunca con escoba.</translation>
    </message>
    <message>
        <source>Lifting: from about 16 kg use two people or a trolley, less at arm&apos;s length. &quot;At least&quot; means that not all of it was weighed.</source>
        <translation>Peso: desde unos 16 kg, dos personas o una carretilla; menos con los brazos extendidos. «Al menos» significa que no se pesó todo.</translation>
    </message>
    <message>
        <source>Moss: sphagnum can carry a skin infection (sporotrichosis); gloves protect.</source>
        <translation>Musgo: el esfagno puede transmitir una infección de la piel (esporotricosis); los guantes protegen.</translation>
    </message>
    <message>
        <source>Bark and potting media can carry Legionella: wet gently without spray, mask and gloves, open the bag away from the face, wash hands.</source>
        <translation>La corteza y los sustratos pueden llevar Legionella: moje suavemente sin pulverizar, mascarilla y guantes, abra el saco lejos de la cara, lávese las manos.</translation>
    </message>
    <message>
        <source>Vermiculite from old or unknown bags: some held asbestos. Leave it closed, do not sieve it.</source>
        <translation>Vermiculita de sacos viejos o desconocidos: alguna contenía amianto. Déjela cerrada, no la tamice.</translation>
    </message>
    <message>
        <source>Perlite: wet it before pouring.</source>
        <translation>Perlita: mójela antes de verterla.</translation>
    </message>
    <message>
        <source>General information; the products&apos; safety sheets, local codes and qualified advice prevail.</source>
        <translation>Información general; prevalecen las fichas de seguridad de los productos, las normas locales y el consejo cualificado.</translation>
    </message>
    <message>
        <source>pot of {tree}</source>
        <translation>maceta de {tree}</translation>
    </message>
    <message>
        <source>Wet the grain, so that it is damp and makes no dust</source>
        <translation>Moje el grano, para que esté húmedo y no haga polvo</translation>
    </message>
    <message>
        <source>Cut mesh and wire for 1 pot</source>
        <translation>Corte malla y alambre para 1 maceta</translation>
    </message>
    <message>
        <source>Cut mesh and wire for {count} pots</source>
        <translation>Corte malla y alambre para {count} macetas</translation>
    </message>
    <message>
        <source>Set out cutters, hooks, sticks, sealing paste, disinfectant</source>
        <translation>Prepare tijeras, ganchos, palillos, pasta selladora, desinfectante</translation>
    </message>
    <message>
        <source>Mix {batches} of {mix}, {litres} in all</source>
        <translation>Mezcle {batches} de {mix}, {litres} en total</translation>
    </message>
    <message>
        <source>1 batch</source>
        <translation>1 tanda</translation>
    </message>
    <message>
        <source>{count} batches</source>
        <translation>{count} tandas</translation>
    </message>
    <message>
        <source>Mesh over the holes, wire for the tie-down, bottom layer</source>
        <translation>Malla sobre los agujeros, alambre de sujeción, capa de fondo</translation>
    </message>
    <message>
        <source>Tie the tree down, work the mix in, leave no hollows</source>
        <translation>Sujete el árbol, asiente la mezcla, no deje huecos</translation>
    </message>
    <message>
        <source>Water until the outflow runs clear</source>
        <translation>Riegue hasta que el agua salga clara</translation>
    </message>
    <message>
        <source>Disinfect the tools before the next tree</source>
        <translation>Desinfecte las herramientas antes del siguiente árbol</translation>
    </message>
    <message>
        <source>Afterwards: shade, no frost, no fertiliser for 3 to 6 weeks</source>
        <translation>Después: sombra, sin heladas, sin abono de 3 a 6 semanas</translation>
    </message>
    <message>
        <source>1 tree</source>
        <translation>1 árbol</translation>
    </message>
    <message>
        <source>{count} trees</source>
        <translation>{count} árboles</translation>
    </message>
    <message>
        <source>The evening before</source>
        <translation>La víspera</translation>
    </message>
    <message>
        <source>In the morning</source>
        <translation>Por la mañana</translation>
    </message>
    <message>
        <source>Trees in working order</source>
        <translation>Árboles en orden de trabajo</translation>
    </message>
    <message>
        <source>For each tree</source>
        <translation>Por árbol</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Cuidado</translation>
    </message>
    <message>
        <source>The season</source>
        <translation>La temporada</translation>
    </message>
    <message>
        <source>{trees} due by {day}</source>
        <translation>{trees} hasta el {day}</translation>
    </message>
    <message>
        <source>Batch cards</source>
        <translation>Fichas de tanda</translation>
    </message>
    <message>
        <source>{count} scoops</source>
        <translation>{count} palas</translation>
    </message>
    <message>
        <source>{mix}, batch {number} of {count}</source>
        <translation>{mix}, tanda {number} de {count}</translation>
    </message>
    <message>
        <source>Gives {litres} of mix</source>
        <translation>Da {litres} de mezcla</translation>
    </message>
    <message>
        <source>One scoop is {litres}, struck off level.</source>
        <translation>Una pala son {litres}, rasada.</translation>
    </message>
    <message>
        <source>For {trees}</source>
        <translation>Para {trees}</translation>
    </message>
    <message>
        <source>mixed, at</source>
        <translation>mezclado, a las</translation>
    </message>
    <message>
        <source>made ________, left over ________</source>
        <translation>hecho ________, sobra ________</translation>
    </message>
    <message>
        <source>plan {plan}</source>
        <translation>plan {plan}</translation>
    </message>
    <message>
        <source>score, price (unpriced last), fewer components, names, smaller total, larger parts in the order of the names; a recipe is listed if some component differs by 10 points of loose volume from every better one listed</source>
        <translation>puntuación, precio (sin precio al final), menos componentes, nombres, menor total, partes mayores en el orden de los nombres; una receta se muestra si algún componente difiere 10 puntos de volumen suelto de todas las mejores mostradas</translation>
    </message>
    <message>
        <source>100 (start - washed out - recovered) / start</source>
        <translation>100 (inicial - lavado - recuperado) / inicial</translation>
    </message>
    <message>
        <source>recovered</source>
        <translation>recuperado</translation>
    </message>
    <message>
        <source>ASTM C136-19: more than 0.3 % is not for acceptance</source>
        <translation>ASTM C136-19: más del 0,3 % no sirve para aceptación</translation>
    </message>
    <message>
        <source>sum of what came off the sieves and the pan / (1 + moisture)</source>
        <translation>suma de lo que salió de los tamices y la bandeja / (1 + humedad)</translation>
    </message>
    <message>
        <source>ASTM C566, the form, from memory</source>
        <translation>ASTM C566, la forma, de memoria</translation>
    </message>
    <message>
        <source>the starting mass, before washing, or what was recovered and washed out; crumbs taken off; dry</source>
        <translation>la masa inicial, antes de lavar, o lo recuperado y lavado; sin los fragmentos; seca</translation>
    </message>
    <message>
        <source>base</source>
        <translation>base</translation>
    </message>
    <message>
        <source>ASTM C136-19; crumbs: Folk, Petrology of Sedimentary Rocks, p. 32</source>
        <translation>ASTM C136-19; fragmentos: Folk, Petrology of Sedimentary Rocks, p. 32</translation>
    </message>
    <message>
        <source>pan</source>
        <translation>bandeja</translation>
    </message>
    <message>
        <source>ASTM C136-19: the base is the original dry mass, before washing, unless the test says recovered</source>
        <translation>ASTM C136-19: la base es la masa seca original, antes de lavar, salvo que el ensayo diga recovered</translation>
    </message>
    <message>
        <source>size at a percent passing, linear in log10(size) between the two sieves around it; never extrapolated</source>
        <translation>tamaño para un porcentaje que pasa, lineal en log10(tamaño) entre los dos tamices vecinos; nunca se extrapola</translation>
    </message>
    <message>
        <source>share that stays on an opening a: G = 1 - exp(-ln 2 (x/a)^s), integrated over each class on log size; two cuts in series multiply; the pan passes</source>
        <translation>proporción que queda en una abertura a: G = 1 - exp(-ln 2 (x/a)^s), integrada en cada clase sobre log del tamaño; dos cortes en serie se multiplican; la bandeja pasa</translation>
    </message>
    <message>
        <source>100 x mass of the fraction that is finer than each sieve / mass of the fraction</source>
        <translation>100 x masa de la fracción más fina que cada tamiz / masa de la fracción</translation>
    </message>
    <message>
        <source>(mass share / packing density of the fraction) / (1 / packing density of the bag)</source>
        <translation>(proporción de masa / densidad de empaquetamiento de la fracción) / (1 / densidad de empaquetamiento del saco)</translation>
    </message>
    <message>
        <source>size at a percent passing, linear in log10(size) between the two sieves around it; never extrapolated; the curve of a mix is the sum of its components&apos; curves by mass share</source>
        <translation>tamaño para un porcentaje que pasa, lineal en log10(tamaño) entre los dos tamices vecinos; nunca se extrapola; la curva de una mezcla es la suma de las curvas de sus componentes por proporción de masa</translation>
    </message>
    <message>
        <source>openings</source>
        <translation>aberturas</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>kept, by mass</source>
        <translation>queda, en masa</translation>
    </message>
    <message>
        <source>take: in_band and finer within their limits; take after screening: usable within its limit; else other use or complain</source>
        <translation>usar: en calibre y más fino dentro de sus límites; usar tras cribar: aprovechable dentro de su límite; si no, otro uso o reclamar</translation>
    </message>
    <message>
        <source>least wanted, by mass</source>
        <translation>en calibre, mínimo</translation>
    </message>
    <message>
        <source>most finer</source>
        <translation>más fino, máximo</translation>
    </message>
    <message>
        <source>least usable</source>
        <translation>aprovechable, mínimo</translation>
    </message>
    <message>
        <source>docs/science/grading.md; the limits are our assumption</source>
        <translation>docs/science/grading.md; los límites son suposición nuestra</translation>
    </message>
    <message>
        <source>loose litres of the fraction that is kept, per loose litre of bag; by mass share where packing is unknown</source>
        <translation>litros sueltos de la fracción que queda, por litro suelto de saco; por proporción de masa donde no se conoce el empaquetamiento</translation>
    </message>
    <message>
        <source>price / (litres x usable litres of a litre)</source>
        <translation>precio / (litros x litros aprovechables por litro)</translation>
    </message>
    <message>
        <source>price</source>
        <translation>precio</translation>
    </message>
    <message>
        <source>litres</source>
        <translation>litros</translation>
    </message>
    <message>
        <source>usable of a litre</source>
        <translation>aprovechable por litro</translation>
    </message>
    <message>
        <source>100 (passing at the coarse end - passing at the fine end), read linear in log10(size) between sieves</source>
        <translation>100 (pasa en el extremo grueso - pasa en el extremo fino), leído lineal en log10(tamaño) entre tamices</translation>
    </message>
    <message>
        <source>share</source>
        <translation>proporción</translation>
    </message>
    <message>
        <source>(f16 + f50 + f84) / 3, phi = -log2(d/mm), percentiles counted from the coarse end</source>
        <translation>(f16 + f50 + f84) / 3, phi = -log2(d/mm), percentiles contados desde el extremo grueso</translation>
    </message>
    <message>
        <source>docs/science/calibration.md, bulk density by jug</source>
        <translation>docs/science/calibration.md, densidad aparente con jarra</translation>
    </message>
    <message>
        <source>docs/science/calibration.md, grain density by displacement; the form of ASTM C127, from memory</source>
        <translation>docs/science/calibration.md, densidad del grano por desplazamiento; la forma de ASTM C127, de memoria</translation>
    </message>
    <message>
        <source>docs/science/ageing.md, crumble test</source>
        <translation>docs/science/ageing.md, ensayo de desmenuzamiento</translation>
    </message>
    <message>
        <source>jug</source>
        <translation>jarra</translation>
    </message>
    <message>
        <source>with grain</source>
        <translation>con grano</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>humedad</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>volumen</translation>
    </message>
    <message>
        <source>(with grain - jug) / (1 + moisture) / volume</source>
        <translation>(con grano - jarra) / (1 + humedad) / volumen</translation>
    </message>
    <message>
        <source>worked in</source>
        <translation>asentado</translation>
    </message>
    <message>
        <source>(with grain - jug) / (1 + moisture) / volume worked in</source>
        <translation>(con grano - jarra) / (1 + humedad) / volumen asentado</translation>
    </message>
    <message>
        <source>1 - volume worked in / loose volume</source>
        <translation>1 - volumen asentado / volumen suelto</translation>
    </message>
    <message>
        <source>loose</source>
        <translation>suelto</translation>
    </message>
    <message>
        <source>soaked, dabbed dry</source>
        <translation>remojado, secado a toques</translation>
    </message>
    <message>
        <source>jug with water</source>
        <translation>jarra con agua</translation>
    </message>
    <message>
        <source>jug with water and grain</source>
        <translation>jarra con agua y grano</translation>
    </message>
    <message>
        <source>soaked / displaced water, displaced = jug with water + soaked - jug with both, 1 g is 1 mL</source>
        <translation>remojado / agua desplazada, desplazada = jarra con agua + remojado - jarra con ambos, 1 g es 1 mL</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>seco</translation>
    </message>
    <message>
        <source>dry / displaced water, displaced = jug with water + soaked - jug with both, 1 g is 1 mL</source>
        <translation>seco / agua desplazada, desplazada = jarra con agua + remojado - jarra con ambos, 1 g es 1 mL</translation>
    </message>
    <message>
        <source>(soaked and dabbed dry - dry) / dry</source>
        <translation>(remojado y secado a toques - seco) / seco</translation>
    </message>
    <message>
        <source>docs/science/calibration.md, absorption; the form of ASTM C127, from memory</source>
        <translation>docs/science/calibration.md, absorción; la forma de ASTM C127, de memoria</translation>
    </message>
    <message>
        <source>rounds</source>
        <translation>rondas</translation>
    </message>
    <message>
        <source>share of the mass that left its class: 1 - e^-breakages</source>
        <translation>proporción de la masa que salió de su clase: 1 - e^-roturas</translation>
    </message>
    <message>
        <source>least squares of passing after, by Poisson&apos;s law of breakages and fragments (x/L)^modulus</source>
        <translation>mínimos cuadrados de lo que pasa después, por la ley de Poisson de las roturas y fragmentos (x/L)^módulo</translation>
    </message>
    <message>
        <source>miss</source>
        <translation>error</translation>
    </message>
    <message>
        <source>of the fragments: finer than x is (x/L)^modulus; the smaller, the dustier</source>
        <translation>de los fragmentos: más fino que x es (x/L)^módulo; cuanto menor, más polvo</translation>
    </message>
    <message>
        <source>breakages per round x rounds in a season</source>
        <translation>roturas por ronda x rondas por temporada</translation>
    </message>
    <message>
        <source>rounds in a season</source>
        <translation>rondas por temporada</translation>
    </message>
    <message>
        <source>what fell through in one more minute / sample; thorough below 0.5 %</source>
        <translation>lo que cayó en un minuto más / muestra; completo por debajo del 0,5 %</translation>
    </message>
    <message>
        <source>fell through</source>
        <translation>cayó</translation>
    </message>
    <message>
        <source>sample</source>
        <translation>muestra</translation>
    </message>
    <message>
        <source>sum of the dry masses / volume of the settled mix</source>
        <translation>suma de las masas secas / volumen de la mezcla asentada</translation>
    </message>
    <message>
        <source>voids between grains</source>
        <translation>huecos entre granos</translation>
    </message>
    <message>
        <source>voids between grains + voids in grains</source>
        <translation>huecos entre granos + poros de los granos</translation>
    </message>
    <message>
        <source>between</source>
        <translation>entre</translation>
    </message>
    <message>
        <source>(1 - voids between grains) x sum of the water the grains hold: by the water absorption where it is known, else w of the open grain pores</source>
        <translation>(1 - huecos entre granos) x suma del agua que retienen los granos: por la absorción donde se conoce, si no w de los poros abiertos del grano</translation>
    </message>
    <message>
        <source>m_k = v_k rho_b,k; the grading of the mix is blended by these shares</source>
        <translation>m_k = v_k rho_b,k; la granulometría de la mezcla se combina con estas proporciones</translation>
    </message>
    <message>
        <source>parts / sum of parts</source>
        <translation>partes / suma de partes</translation>
    </message>
    <message>
        <source>sum over components of mass share x passing, each curve read linear in log10(size) on its own sieves</source>
        <translation>suma sobre los componentes de proporción de masa x lo que pasa, cada curva leída lineal en log10(tamaño) en sus propios tamices</translation>
    </message>
    <message>
        <source>E_k / sum E, E_k = mass / grain density</source>
        <translation>E_k / suma E, E_k = masa / densidad del grano</translation>
    </message>
    <message>
        <source>as passing, by envelope share</source>
        <translation>como lo que pasa, por proporción de volumen envolvente</translation>
    </message>
    <message>
        <source>1/phi = max over i of U_i (linear dominant class with wedging), each component with the one class beta that gives back its own packing density</source>
        <translation>1/phi = máximo en i de U_i (clase dominante lineal con acuñamiento), cada componente con el beta de clase que devuelve su propia densidad de empaquetamiento</translation>
    </message>
    <message>
        <source>Yu, Zou &amp; Standish 1996; Kwan, Chan &amp; Wong 2013 (from memory); ±1.5 points of voids</source>
        <translation>Yu, Zou &amp; Standish 1996; Kwan, Chan &amp; Wong 2013 (de memoria); ±1,5 puntos de huecos</translation>
    </message>
    <message>
        <source>1 - V/sum v, with V = sum E/phi</source>
        <translation>1 - V/suma v, con V = suma E/phi</translation>
    </message>
    <message>
        <source>1 - phi/(1 - settling)</source>
        <translation>1 - phi/(1 - asentamiento)</translation>
    </message>
    <message>
        <source>sum m / sum (m / grain density)</source>
        <translation>suma m / suma (m / densidad del grano)</translation>
    </message>
    <message>
        <source>filled depth</source>
        <translation>profundidad llena</translation>
    </message>
    <message>
        <source>mean of theta(z) over the pot, theta(h) = theta_r + (f phi_v - theta_r) mean_j [1 + (h d&apos;_j/k)^n]^-(1-1/n) + water in grains</source>
        <translation>media de theta(z) en la maceta, theta(h) = theta_r + (f phi_v - theta_r) media_j [1 + (h d&apos;_j/k)^n]^-(1-1/n) + agua en los granos</translation>
    </message>
    <message>
        <source>docs/science/water.md; constants fitted to 29 clean sands of UNSODA 2.0; above 2 mm ±.035 at best, wants a pot test</source>
        <translation>docs/science/water.md; constantes ajustadas a 29 arenas limpias de UNSODA 2.0; por encima de 2 mm ±.035 en el mejor caso, pide un ensayo en maceta</translation>
    </message>
    <message>
        <source>water in grains</source>
        <translation>agua en los granos</translation>
    </message>
    <message>
        <source>theta at no suction: f of the voids between grains + water in grains</source>
        <translation>theta sin succión: f de los huecos entre granos + agua en los granos</translation>
    </message>
    <message>
        <source>theta at a suction of 10 cm of water</source>
        <translation>theta a una succión de 10 cm de agua</translation>
    </message>
    <message>
        <source>theta at a suction of 50 cm of water</source>
        <translation>theta a una succión de 50 cm de agua</translation>
    </message>
    <message>
        <source>De Boodt &amp; Verdonck 1972, from memory; docs/science/water.md</source>
        <translation>De Boodt &amp; Verdonck 1972, de memoria; docs/science/water.md</translation>
    </message>
    <message>
        <source>open voids - theta(0): gas a flood does not reach, and grain pores it does not fill</source>
        <translation>poros abiertos - theta(0): gas al que no llega una inundación, y poros del grano que no llena</translation>
    </message>
    <message>
        <source>integral of A(z) from the floor to the fill line</source>
        <translation>integral de A(z) desde el fondo hasta la línea de llenado</translation>
    </message>
    <message>
        <source>area at the floor</source>
        <translation>área en el fondo</translation>
    </message>
    <message>
        <source>area at the fill line</source>
        <translation>área en la línea de llenado</translation>
    </message>
    <message>
        <source>A(z) of the shape at eleven equal heights from the floor to the fill line</source>
        <translation>A(z) de la forma en once alturas iguales desde el fondo hasta la línea de llenado</translation>
    </message>
    <message>
        <source>area halfway up</source>
        <translation>área a media altura</translation>
    </message>
    <message>
        <source>the water fill overrides the lengths; A(z) is scaled by their ratio</source>
        <translation>el llenado con agua prevalece sobre las medidas; A(z) se escala con su cociente</translation>
    </message>
    <message>
        <source>water fill</source>
        <translation>llenado con agua</translation>
    </message>
    <message>
        <source>by the lengths</source>
        <translation>por las medidas</translation>
    </message>
    <message>
        <source>component = mixed litres x share / (1 - shrinkage), mixed litres = fill / ((1 - settling)(1 - spill)), fill = volume + mound - bottom layer - top dressing</source>
        <translation>componente = litros mezclados x proporción / (1 - merma), litros mezclados = llenado / ((1 - asentamiento)(1 - derrame)), llenado = volumen + montículo - capa de fondo - cobertura</translation>
    </message>
    <message>
        <source>mound</source>
        <translation>montículo</translation>
    </message>
    <message>
        <source>bottom layer</source>
        <translation>capa de fondo</translation>
    </message>
    <message>
        <source>top dressing</source>
        <translation>cobertura</translation>
    </message>
    <message>
        <source>floor to fill line</source>
        <translation>del fondo a la línea de llenado</translation>
    </message>
    <message>
        <source>water poured or weighed to the fill line; the area at every height is scaled to it</source>
        <translation>agua vertida o pesada hasta la línea de llenado; el área a cada altura se escala con ella</translation>
    </message>
    <message>
        <source>integral of the inside area from the floor to the fill line</source>
        <translation>integral del área interior desde el fondo hasta la línea de llenado</translation>
    </message>
    <message>
        <source>water fill / volume by the lengths - 1</source>
        <translation>llenado con agua / volumen por las medidas - 1</translation>
    </message>
    <message>
        <source>volume + mound - bottom layer - top dressing</source>
        <translation>volumen + montículo - capa de fondo - cobertura</translation>
    </message>
    <message>
        <source>Plan {plan}, from the front</source>
        <translation>Plan {plan}, de frente</translation>
    </message>
    <message>
        <source>Plan {plan}, from above</source>
        <translation>Plan {plan}, desde arriba</translation>
    </message>
    <message>
        <source>soil line</source>
        <translation>línea de tierra</translation>
    </message>
    <message>
        <source>farthest any point of the posed root mass passes the allowed space in a direction, at that point&apos;s height</source>
        <translation>lo más lejos que un punto del cepellón colocado rebasa el espacio permitido en una dirección, a la altura de ese punto</translation>
    </message>
    <message>
        <source>share of the root mass still outside after the straight cuts</source>
        <translation>proporción del cepellón que sigue fuera tras los cortes rectos</translation>
    </message>
    <message>
        <source>1 - kept/root mass</source>
        <translation>1 - lo que queda/cepellón</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>queda</translation>
    </message>
    <message>
        <source>root mass</source>
        <translation>cepellón</translation>
    </message>
    <message>
        <source>kept points farther than the working depth from all that is removed, deeper than combed, connected to the trunk base</source>
        <translation>puntos que quedan, más lejos que la profundidad de trabajo de todo lo quitado, más hondos que lo peinado, unidos a la base del tronco</translation>
    </message>
    <message>
        <source>root mass - kept</source>
        <translation>cepellón - lo que queda</translation>
    </message>
    <message>
        <source>fill line + mound at the trunk</source>
        <translation>línea de llenado + montículo en el tronco</translation>
    </message>
    <message>
        <source>fill line</source>
        <translation>línea de llenado</translation>
    </message>
    <message>
        <source>pot to the fill line + mound - layers - kept root mass under the soil - trunk and stones</source>
        <translation>maceta hasta la línea de llenado + montículo - capas - cepellón que queda bajo la tierra - tronco y piedras</translation>
    </message>
    <message>
        <source>pot, mound, less layers</source>
        <translation>maceta, montículo, menos capas</translation>
    </message>
    <message>
        <source>kept under the soil</source>
        <translation>queda bajo la tierra</translation>
    </message>
    <message>
        <source>trunk and stones</source>
        <translation>tronco y piedras</translation>
    </message>
    <message>
        <source>rise over the soil &lt;= level run to the inner rim x tan 35 degrees</source>
        <translation>subida sobre la tierra &lt;= distancia horizontal al borde interior x tan 35 grados</translation>
    </message>
    <message>
        <source>rise</source>
        <translation>subida</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>back</source>
        <translation>atrás</translation>
    </message>
    <message>
        <source>front</source>
        <translation>delante</translation>
    </message>
    <message>
        <source>up</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>down</source>
        <translation>abajo</translation>
    </message>
    <message>
        <source>old right</source>
        <translation>lado derecho antiguo</translation>
    </message>
    <message>
        <source>old left</source>
        <translation>lado izquierdo antiguo</translation>
    </message>
    <message>
        <source>old back</source>
        <translation>dorso antiguo</translation>
    </message>
    <message>
        <source>old front</source>
        <translation>frente antiguo</translation>
    </message>
    <message>
        <source>old top</source>
        <translation>lado superior antiguo</translation>
    </message>
    <message>
        <source>old bottom</source>
        <translation>lado inferior antiguo</translation>
    </message>
    <message>
        <source>What limits the fit</source>
        <translation>Lo que limita el encaje</translation>
    </message>
    <message>
        <source>Nothing: the root mass fits as it is posed.</source>
        <translation>Nada: el cepellón cabe tal como se coloca.</translation>
    </message>
    <message>
        <source>After straight cuts {share} of the root mass still stick out at corners.</source>
        <translation>Tras los cortes rectos aún sobresale por las esquinas un {share} del cepellón.</translation>
    </message>
    <message>
        <source>{length} to the right</source>
        <translation>{length} a la derecha</translation>
    </message>
    <message>
        <source>{length} to the left</source>
        <translation>{length} a la izquierda</translation>
    </message>
    <message>
        <source>{length} to the back</source>
        <translation>{length} hacia atrás</translation>
    </message>
    <message>
        <source>{length} to the front</source>
        <translation>{length} hacia delante</translation>
    </message>
    <message>
        <source>in the middle</source>
        <translation>en el centro</translation>
    </message>
    <message>
        <source>{one} of the middle</source>
        <translation>{one} del centro</translation>
    </message>
    <message>
        <source>{one} and {other} of the middle</source>
        <translation>{one} y {other} del centro</translation>
    </message>
    <message>
        <source>Comb the {face} {depth} deep</source>
        <translation>Peine el {face} hasta {depth} de hondo</translation>
    </message>
    <message>
        <source>Take {depth} off the {face}, which points {direction}</source>
        <translation>Quite {depth} del {face}, que apunta: {direction}</translation>
    </message>
    <message>
        <source>Put the tree back into its old pot; the rest after 1 year</source>
        <translation>Devuelva el árbol a su maceta antigua; el resto tras 1 año</translation>
    </message>
    <message>
        <source>Put the tree back into its old pot; the rest after {count} years</source>
        <translation>Devuelva el árbol a su maceta antigua; el resto tras {count} años</translation>
    </message>
    <message>
        <source>Put the tree back into its old pot</source>
        <translation>Devuelva el árbol a su maceta antigua</translation>
    </message>
    <message>
        <source>Trunk base {place}, {height} over the floor</source>
        <translation>Base del tronco {place}, {height} sobre el fondo</translation>
    </message>
    <message>
        <source>{stand}, turned {angle}</source>
        <translation>{stand}, girado {angle}</translation>
    </message>
    <message>
        <source>{stand}, tipped {angle} toward {toward} (from the pot&apos;s right to its back)</source>
        <translation>{stand}, volcado {angle} hacia {toward} (de la derecha de la maceta hacia su parte trasera)</translation>
    </message>
    <message>
        <source>Plan {plan}</source>
        <translation>Plan {plan}</translation>
    </message>
    <message>
        <source>Into another free pot: {pot}</source>
        <translation>A otra maceta libre: {pot}</translation>
    </message>
    <message>
        <source>{stop}, then it does not fit: stage it</source>
        <translation>{stop}, entonces no cabe: por etapas</translation>
    </message>
    <message>
        <source>If the cut from above comes to an end</source>
        <translation>Si el corte desde arriba se acaba</translation>
    </message>
    <message>
        <source>Root-mass plan</source>
        <translation>Plan de cepellón</translation>
    </message>
    <message>
        <source>Root-mass plan, into its pot</source>
        <translation>Plan de cepellón, a su maceta</translation>
    </message>
    <message>
        <source>Root-mass plan, into {pot}</source>
        <translation>Plan de cepellón, a {pot}</translation>
    </message>
    <message>
        <source>{title}, root-mass plan</source>
        <translation>{title}, plan de cepellón</translation>
    </message>
    <message>
        <source>To scale: hatched comes off, grey stays</source>
        <translation>A escala: lo rayado se quita, lo gris queda</translation>
    </message>
    <message>
        <source>Clean tools for each tree. Some part of the root mass stays untouched; what is combed through is disturbed even where soil clings to it.</source>
        <translation>Herramientas limpias para cada árbol. Alguna parte del cepellón queda intacta; lo peinado está alterado aunque lleve tierra adherida.</translation>
    </message>
    <message>
        <source>Common practice, general information; qualified advice prevails.</source>
        <translation>Práctica común, información general; prevalece el consejo cualificado.</translation>
    </message>
    <message>
        <source>bin</source>
        <translation>cubeta</translation>
    </message>
    <message>
        <source>fraction</source>
        <translation>fracción</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>árbol</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>tanda</translation>
    </message>
    <message>
        <source>top</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>abajo</translation>
    </message>
    <message>
        <source>the empty pot</source>
        <translation>la maceta vacía</translation>
    </message>
    <message>
        <source>the dry pot</source>
        <translation>la maceta seca</translation>
    </message>
    <message>
        <source>the drained pot</source>
        <translation>la maceta drenada</translation>
    </message>
    <message>
        <source>the mix settles by {percent} % as the jug tests of {bags} say; a jug of the mix itself would say it better</source>
        <translation>la mezcla se asienta un {percent} % según las jarras de {bags}; una jarra de la mezcla misma lo diría mejor</translation>
    </message>
    <message>
        <source>the mix settles by {percent} %, by your own jug of mix {mix}</source>
        <translation>la mezcla se asienta un {percent} %, según su propia jarra de la mezcla {mix}</translation>
    </message>
    <message>
        <source>the file lies outside the folder of the file that names it; put it there, or into a folder sieve_tests beside it</source>
        <translation>el archivo está fuera de la carpeta del archivo que lo nombra; póngalo allí, o en una carpeta sieve_tests a su lado</translation>
    </message>
    <message>
        <source>what this list holds can&apos;t be told from its columns; say which kind of record it lists (on the command line with --kind)</source>
        <translation>por sus columnas no se sabe qué contiene esta lista; diga qué tipo de registro enumera (en la línea de órdenes con --kind)</translation>
    </message>
    <message>
        <source>{left_l} L can&apos;t be left over; expected 0 to what was made</source>
        <translation>no pueden sobrar {left_l} L; se espera de 0 a lo que se hizo</translation>
    </message>
    <message>
        <source>{percent} % of what was left untouched last time stays so again; most of it lies before this face: work that half now, as far as the tree bears it</source>
        <translation>un {percent} % de lo que quedó intacto la última vez vuelve a quedarlo; la mayor parte está ante este lado: trabaje ahora esa mitad, hasta donde el árbol lo soporte</translation>
    </message>
    <message>
        <source>{percent} % of the soil that was worked last time is worked again; it is to rest, and the other half comes now: most of it lies before this face (common practice)</source>
        <translation>un {percent} % de la tierra trabajada la última vez se trabaja de nuevo; debe descansar, y ahora toca la otra mitad: la mayor parte está ante este lado (práctica común)</translation>
    </message>
    <message>
        <source>a tip of {angle_deg} degrees can&apos;t be; expected 0 to 90</source>
        <translation>un vuelco de {angle_deg} grados no es posible; se espera de 0 a 90</translation>
    </message>
    <message>
        <source>Plan {plan}, this year, in its old pot, from the front</source>
        <translation>Plan {plan}, este año, en su maceta vieja, de frente</translation>
    </message>
    <message>
        <source>Plan {plan}, this year, in its old pot, from above</source>
        <translation>Plan {plan}, este año, en su maceta vieja, desde arriba</translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <translation>{low} a {high}</translation>
    </message>
    <message>
        <source>new mix only, {share} of the pot</source>
        <translation>solo mezcla nueva, {share} de la maceta</translation>
    </message>
    <message>
        <source>Pot in section: {what}</source>
        <translation>Maceta en sección: {what}</translation>
    </message>
    <message>
        <source>filled {height}</source>
        <translation>llena {height}</translation>
    </message>
    <message>
        <source>wet zone {height}</source>
        <translation>zona saturada {height}</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>sin dato</translation>
    </message>
    <message>
        <source>New mix only</source>
        <translation>Solo mezcla nueva</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Aire</translation>
    </message>
    <message>
        <source>Water held</source>
        <translation>Agua retenida</translation>
    </message>
    <message>
        <source>Wet zone</source>
        <translation>Zona saturada</translation>
    </message>
    <message>
        <source>Air and water: {what}</source>
        <translation>Aire y agua: {what}</translation>
    </message>
    <message>
        <source>What the kept root mass (hatched) holds is not known; the figures say nothing about it.</source>
        <translation>Lo que retiene el cepellón conservado (rayado) no se conoce; las cifras no dicen nada de él.</translation>
    </message>
    <message>
        <source>{text} can&apos;t be read; expected parts and a name, such as 5 akadama, with : between them</source>
        <translation>{text} no se puede leer; se esperan partes y un nombre, como 5 akadama, con : entre ellos</translation>
    </message>
    <message>
        <source>{tree} in {pot}</source>
        <translation>{tree} en {pot}</translation>
    </message>
    <message>
        <source>the two sievings have no two sieves in common; sieve both with the same set</source>
        <translation>los dos tamizados no tienen dos tamices en común; tamice ambos con el mismo juego</translation>
    </message>
    <message>
        <source>the dry grain outweighs the soaked grain; look at both masses</source>
        <translation>el grano seco pesa más que el grano remojado; revise ambas masas</translation>
    </message>
    <message>
        <source>the filled jug weighs no more than the empty one; look at both masses</source>
        <translation>la jarra llena no pesa más que la vacía; revise ambas masas</translation>
    </message>
    <message>
        <source>the grain fills more after working in than before; look at both volumes</source>
        <translation>el grano ocupa más después de asentarlo que antes; revise ambos volúmenes</translation>
    </message>
    <message>
        <source>there is no column called {column}; known here: {known}</source>
        <translation>no hay ninguna columna llamada {column}; aquí se conocen: {known}</translation>
    </message>
    <message>
        <source>the disk is full; nothing of this change was written. Make room and try again</source>
        <translation>el disco está lleno; no se escribió nada de este cambio. Haga sitio e inténtelo de nuevo</translation>
    </message>
    <message>
        <source>the file is empty; look whether it was saved</source>
        <translation>el archivo está vacío; mire si se guardó</translation>
    </message>
    <message>
        <source>another program holds the record; try again in a moment</source>
        <translation>otro programa retiene el registro; inténtelo de nuevo en un momento</translation>
    </message>
    <message>
        <source>the record was written by a newer Gritwright (version {version}, known here: {known}); open it for reading only, or update</source>
        <translation>el registro lo escribió un Gritwright más nuevo (versión {version}, aquí se conoce {known}); ábralo solo para lectura o actualice</translation>
    </message>
    <message>
        <source>this is no Gritwright record; choose a file that ends in .gritwright</source>
        <translation>este no es un registro de Gritwright; elija un archivo que termine en .gritwright</translation>
    </message>
    <message>
        <source>the file or its folder can&apos;t be written to; look whose they are, or choose another folder</source>
        <translation>no se puede escribir en el archivo o su carpeta; mire de quién son o elija otra carpeta</translation>
    </message>
    <message>
        <source>the file made trouble ({text}); try again, and if it stays so restore the newest intact backup</source>
        <translation>el archivo dio problemas ({text}); inténtelo de nuevo y, si sigue así, restaure la copia de seguridad buena más reciente</translation>
    </message>
    <message>
        <source>reading stopped half-way; nothing was done with the file. Try again, or copy it to this machine first</source>
        <translation>la lectura se detuvo a medias; no se hizo nada con el archivo. Inténtelo de nuevo o cópielo antes a esta máquina</translation>
    </message>
    <message>
        <source>writing failed; nothing of this change was kept. Look whether the disk is there and has room, and try again</source>
        <translation>la escritura falló; nada de este cambio se conservó. Mire si el disco está y tiene espacio, e inténtelo de nuevo</translation>
    </message>
    <message>
        <source>there is no key called {key}; look at its spelling, or leave it out</source>
        <translation>no hay ninguna clave llamada {key}; revise cómo está escrita u omítala</translation>
    </message>
    <message>
        <source>sieve set</source>
        <translation>juego de tamices</translation>
    </message>
    <message>
        <source>sieve test</source>
        <translation>ensayo de tamizado</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>maceta</translation>
    </message>
    <message>
        <source>root-mass plan</source>
        <translation>plan de cepellón</translation>
    </message>
    <message>
        <source>repotting day</source>
        <translation>jornada de trasplante</translation>
    </message>
    <message>
        <source>pot test</source>
        <translation>ensayo en maceta</translation>
    </message>
    <message>
        <source>stock entry</source>
        <translation>asiento de existencias</translation>
    </message>
    <message>
        <source>log entry</source>
        <translation>entrada del diario</translation>
    </message>
    <message>
        <source>group of trees</source>
        <translation>grupo de árboles</translation>
    </message>
    <message>
        <source>{text} is no group of trees; look at its spelling</source>
        <translation>{text} no es un grupo de árboles; revise cómo está escrito</translation>
    </message>
    <message>
        <source>expected at least one opening</source>
        <translation>se espera al menos una abertura</translation>
    </message>
    <message>
        <source>names {text}, which is not in the record; add it there, or take the name out</source>
        <translation>nombra {text}, que no está en el registro; añádalo allí o quite el nombre</translation>
    </message>
    <message>
        <source>the entry says nothing; write what happened</source>
        <translation>la entrada no dice nada; escriba qué pasó</translation>
    </message>
    <message>
        <source>not in one go: this year these cuts and back into the old pot, the rest later (years between: {years})</source>
        <translation>no de una vez: este año estos cortes y vuelta a la maceta antigua, el resto más adelante (años entre medias: {years})</translation>
    </message>
    <message>
        <source>this is the record itself; choose another name</source>
        <translation>este es el propio registro; elija otro nombre</translation>
    </message>
    <message>
        <source>the record lies in a network folder: it is saved more slowly there, and only one person should work in it at a time</source>
        <translation>el registro está en una carpeta de red: allí se guarda más despacio, y solo una persona debería trabajar en él a la vez</translation>
    </message>
    <message>
        <source>the record lies in a folder that another program copies elsewhere: let the copying finish before it is opened on another machine</source>
        <translation>el registro está en una carpeta que otro programa copia a otra parte: espere a que acabe de copiar antes de abrirlo en otra máquina</translation>
    </message>
    <message>
        <source>the record was brought to version {version}; a backup was made before</source>
        <translation>el registro se pasó a la versión {version}; antes se hizo una copia de seguridad</translation>
    </message>
    <message>
        <source>the record was not there and a new one was made, but there are backups of one of that name; restore the newest if it went missing</source>
        <translation>el registro no estaba y se creó uno nuevo, pero hay copias de seguridad de uno de ese nombre; restaure la más reciente si se perdió</translation>
    </message>
    <message>
        <source>the record is of an older version, and the backup before it is brought forward could not be written to {file}; nothing was changed. Choose another backups folder or make room, or open it for reading only</source>
        <translation>el registro es de una versión anterior, y la copia previa a su actualización no se pudo escribir en {file}; no se cambió nada. Elija otra carpeta de copias o haga sitio, o ábralo solo para lectura</translation>
    </message>
    <message>
        <source>the record is open for reading only; save a copy of it to write in</source>
        <translation>el registro está abierto solo para lectura; guarde una copia para escribir en ella</translation>
    </message>
    <message>
        <source>Build the shoulder with about {litres} of sphagnum, {height} over the soil</source>
        <translation>Haga el talud con unos {litres} de esfagno, {height} sobre la tierra</translation>
    </message>
    <message>
        <source>dormant</source>
        <translation>en reposo</translation>
    </message>
    <message>
        <source>swelling</source>
        <translation>hinchándose</translation>
    </message>
    <message>
        <source>green tips</source>
        <translation>puntas verdes</translation>
    </message>
    <message>
        <source>opening</source>
        <translation>abriéndose</translation>
    </message>
    <message>
        <source>in leaf</source>
        <translation>con hojas</translation>
    </message>
    <message>
        <source>the mix has no components; put one in</source>
        <translation>la mezcla no tiene componentes; ponga uno</translation>
    </message>
    <message>
        <source>a price of {amount} can&apos;t be; expected 0 or more</source>
        <translation>un precio de {amount} no puede ser; se espera 0 o más</translation>
    </message>
    <message>
        <source>the day has no trees; name at least one</source>
        <translation>la jornada no tiene árboles; nombre al menos uno</translation>
    </message>
    <message>
        <source>another {kind} {id} is here already, so nothing was taken in; give this one another number, or let it take the place of the one here</source>
        <translation>otro {kind} {id} ya está aquí, así que no se tomó nada; dé a este otro número, o póngalo en lugar del que hay</translation>
    </message>
    <message>
        <source>another group is called {name} already; choose another name</source>
        <translation>otro grupo ya se llama {name}; elija otro nombre</translation>
    </message>
    <message>
        <source>{text} names no record; expected kind and number like bag:K-07</source>
        <translation>{text} no nombra ningún registro; se espera clase y número como bag:K-07</translation>
    </message>
    <message>
        <source>the {kind} {id} exists or existed, and a number is never used again; choose another</source>
        <translation>{kind} {id} existe o existió, y un número nunca se vuelve a usar; elija otro</translation>
    </message>
    <message>
        <source>{face} (now {direction}) up to {depth} deep</source>
        <translation>{face} (ahora {direction}) hasta {depth} de fondo</translation>
    </message>
    <message>
        <source>Round off the corners along the wall, {share} of the root mass: {where}</source>
        <translation>Redondee las esquinas a lo largo de la pared, {share} del cepellón: {where}</translation>
    </message>
    <message>
        <source>the new mix already has less than {percent} % air in this pot; a coarser mix or a deeper pot has more</source>
        <translation>la mezcla nueva ya tiene menos del {percent} % de aire en esta maceta; una mezcla más gruesa o una maceta más honda tiene más</translation>
    </message>
    <message>
        <source>the flooded mass asks for {percent} % of the voids between grains; look at the volume, the grain density and the dry mass</source>
        <translation>la masa inundada pide el {percent} % de los huecos entre granos; revise el volumen, la densidad del grano y la masa seca</translation>
    </message>
    <message>
        <source>the measured litre weight leaves {voids_percent} % of voids between grains, which grain does not do; the predicted voids were used instead: look at the masses and the volume</source>
        <translation>el peso por litro medido deja un {voids_percent} % de huecos entre granos, cosa que el grano no hace; se usaron los huecos previstos: revise las masas y el volumen</translation>
    </message>
    <message>
        <source>the crumbled grading is {points} points off any even breaking, so the figures are rough; repeat the test for better ones</source>
        <translation>la granulometría desmenuzada se aparta {points} puntos de toda rotura uniforme, así que las cifras son aproximadas; repita el ensayo para mejorarlas</translation>
    </message>
    <message>
        <source>the number of rounds is missing or not above 0; type how often it was shaken or frozen</source>
        <translation>falta el número de rondas o no es mayor que 0; escriba cuántas veces se agitó o se heló</translation>
    </message>
    <message>
        <source>a grain density of {density_g_l} g/L is above that of its solid, {solid_g_l} g/L; look at the masses and at the mark on the jug</source>
        <translation>una densidad del grano de {density_g_l} g/L supera la de su sólido, {solid_g_l} g/L; revise las masas y la marca de la jarra</translation>
    </message>
    <message>
        <source>a grain density of {density_g_l} g/L is unusual; look at the masses, and was all air let out from between the grains?</source>
        <translation>una densidad del grano de {density_g_l} g/L es inusual; revise las masas, ¿y salió todo el aire de entre los granos?</translation>
    </message>
    <message>
        <source>a mass is missing or not above 0; weigh it and type it here</source>
        <translation>falta una masa o no es mayor que 0; pese y escríbala aquí</translation>
    </message>
    <message>
        <source>the jug would hold {voids_percent} % of voids between grains of {density_g_l} g/L, which loose grain hardly does; look at the volume and at the grain density</source>
        <translation>la jarra tendría un {voids_percent} % de huecos entre granos de {density_g_l} g/L, algo raro en grano suelto; revise el volumen y la densidad del grano</translation>
    </message>
    <message>
        <source>the volume is missing or not above 0; weigh the jug full of water, 1 g is 1 mL</source>
        <translation>falta el volumen o no es mayor que 0; pese la jarra llena de agua, 1 g es 1 mL</translation>
    </message>
    <message>
        <source>the grain density is not known: the mix has mass shares and grading only; measure it by displacement for volumes and porosities</source>
        <translation>no se conoce la densidad del grano: la mezcla solo tiene proporciones de masa y granulometría; mídala por desplazamiento para tener volúmenes y porosidades</translation>
    </message>
    <message>
        <source>the grain density implies a solid of {density_g_l} g/L, outside {low} to {high}: look at it again, or give the solid density</source>
        <translation>la densidad del grano supone un sólido de {density_g_l} g/L, fuera de {low} a {high}: revísela o dé la densidad del sólido</translation>
    </message>
    <message>
        <source>the parts add up to {sum}: if they were meant as percent, look for one that is missing or counted twice</source>
        <translation>las partes suman {sum}: si eran porcentajes, busque una que falte o esté contada dos veces</translation>
    </message>
    <message>
        <source>a settling of {percent} % leaves no voids; expected less than {most_percent} %, which is all the grain allows</source>
        <translation>un asentamiento del {percent} % no deja huecos; se espera menos del {most_percent} %, el grano no permite más</translation>
    </message>
    <message>
        <source>the solid density of {density_g_l} g/L is outside {low} to {high}: look at it again</source>
        <translation>la densidad del sólido de {density_g_l} g/L está fuera de {low} a {high}: revísela</translation>
    </message>
    <message>
        <source>{sources} sources stand beside {components} components; give each component one, or none of them</source>
        <translation>hay {sources} fuentes junto a {components} componentes; dé una a cada componente o a ninguno</translation>
    </message>
    <message>
        <source>measure the grain density of the {component} by displacement: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>mida la densidad del grano de {component} por desplazamiento: margen de {figure} de ±{now_points} a ±{then_points} puntos</translation>
    </message>
    <message>
        <source>a litre weight of {density_g_l} g/L in the pot is unusual; look at the tare and the volume</source>
        <translation>un peso por litro de {density_g_l} g/L en la maceta es inusual; revise la tara y el volumen</translation>
    </message>
    <message>
        <source>{mass_g} g can&apos;t be: {what} weighed {least_g} g; weigh both again</source>
        <translation>{mass_g} g no es posible: {what} pesó {least_g} g; pese otra vez ambos</translation>
    </message>
    <message>
        <source>{caught_ml} mL were caught but only {poured_ml} mL poured; count all the water from the dry mix on</source>
        <translation>se recogieron {caught_ml} mL pero solo se vertieron {poured_ml} mL; cuente toda el agua desde la mezcla seca</translation>
    </message>
    <message>
        <source>a volume of {volume_ml} mL can&apos;t be; expected 0 or more</source>
        <translation>un volumen de {volume_ml} mL no es posible; se espera 0 o más</translation>
    </message>
    <message>
        <source>no verdict on {from_mm}-{to_mm} mm: the sieves of the test don&apos;t reach both ends; add a sieve at the end that is missing</source>
        <translation>sin dictamen para {from_mm}-{to_mm} mm: los tamices del ensayo no llegan a ambos extremos; añada un tamiz en el extremo que falta</translation>
    </message>
    <message>
        <source>grain of {size_mm} mm is coarser than the 15 mm the model was made for; make a pot test to know</source>
        <translation>un grano de {size_mm} mm es más grueso que los 15 mm para los que se hizo el modelo; haga un ensayo en maceta para saberlo</translation>
    </message>
    <message>
        <source>a tenth of the mix is {size_mm} mm or finer; dusty mixes are out of the model&apos;s range: screen the dust out, or make a pot test</source>
        <translation>una décima parte de la mezcla es de {size_mm} mm o más fina; las mezclas polvorientas quedan fuera del alcance del modelo: cribe el polvo o haga un ensayo en maceta</translation>
    </message>
    <message>
        <source>{fines_percent} % is finer than the last sieve; fines wash down and clog, so the air shown is too high: screen them out</source>
        <translation>un {fines_percent} % es más fino que el último tamiz; los finos bajan y obstruyen, así que el aire mostrado es demasiado alto: críbelos</translation>
    </message>
    <message>
        <source>the sizes leave a gap and the fine part is {fines_percent} %; fine grain fills the voids of the coarse, so the air shown is too high: screen it out, or make a pot test</source>
        <translation>los tamaños dejan un vacío y la parte fina es un {fines_percent} %; el grano fino llena los huecos del grueso, así que el aire mostrado es demasiado alto: críbelo o haga un ensayo en maceta</translation>
    </message>
    <message>
        <source>organic, fibrous or soft grain is out of the model&apos;s range; make a pot test to know</source>
        <translation>el grano orgánico, fibroso o blando queda fuera del alcance del modelo; haga un ensayo en maceta para saberlo</translation>
    </message>
    <message>
        <source>the wet zone would reach {perched_cm} cm, above the fill line at {depth_cm} cm: the whole pot stays wet; take a coarser mix or a deeper pot</source>
        <translation>la zona saturada llegaría a {perched_cm} cm, por encima de la línea de llenado a {depth_cm} cm: toda la maceta queda mojada; tome una mezcla más gruesa o una maceta más honda</translation>
    </message>
    <message>
        <source>the band ends at {to_mm} mm, which is not above {from_mm} mm where it starts; give the finer size first</source>
        <translation>el calibre acaba en {to_mm} mm, que no supera los {from_mm} mm en que empieza; dé primero el tamaño más fino</translation>
    </message>
    <message>
        <source>the name {name} is used twice; give one of them another</source>
        <translation>el nombre {name} se usa dos veces; dé otro a uno de ellos</translation>
    </message>
    <message>
        <source>{low} is negative; a catalogue figure is 0 or more</source>
        <translation>{low} es negativo; una cifra del catálogo es 0 o más</translation>
    </message>
    <message>
        <source>the material has no name; give it one</source>
        <translation>el material no tiene nombre; dé uno</translation>
    </message>
    <message>
        <source>the figure names no source; name one that stands in references.json</source>
        <translation>la cifra no nombra fuente; nombre una que esté en references.json</translation>
    </message>
    <message>
        <source>the range runs from {low} down to {high}; write the lower figure first</source>
        <translation>el margen va de {low} hacia abajo hasta {high}; escriba primero la cifra menor</translation>
    </message>
    <message>
        <source>the share {high} is above 1; write 40 % as 0.4</source>
        <translation>la proporción {high} supera 1; escriba 40 % como 0.4</translation>
    </message>
    <message>
        <source>references.json lists no source called {source}; add it there, or look at its spelling</source>
        <translation>references.json no contiene ninguna fuente llamada {source}; añádala o revise cómo está escrita</translation>
    </message>
    <message>
        <source>{text} is not known for {key}; look at its spelling, or in schema.json</source>
        <translation>{text} no se conoce para {key}; revise cómo está escrito, o mire en schema.json</translation>
    </message>
    <message>
        <source>no figure uses the source {source}; take it out of references.json, or name it beside its figure</source>
        <translation>ninguna cifra usa la fuente {source}; quítela de references.json o nómbrela junto a su cifra</translation>
    </message>
    <message>
        <source>{value} lies outside its own range {low} to {high}; correct the one that is wrong</source>
        <translation>{value} queda fuera de su propio margen, {low} a {high}; corrija la cifra equivocada</translation>
    </message>
    <message>
        <source>the litre weight {bulk_g_l} g/L, dry, is not below the grain density {particle_g_l} g/L, but loose grain has voids; weigh a litre again, or correct the grain density</source>
        <translation>el peso por litro {bulk_g_l} g/L, seco, no es menor que la densidad del grano {particle_g_l} g/L, pero el grano suelto tiene huecos; pese otra vez un litro o corrija la densidad del grano</translation>
    </message>
    <message>
        <source>the litre weight {bulk_g_l} g/L, dry, is not below the solid density {skeletal_g_l} g/L, but loose grain has voids; weigh a litre again, or correct the solid density</source>
        <translation>el peso por litro {bulk_g_l} g/L, seco, no es menor que la densidad del sólido {skeletal_g_l} g/L, pero el grano suelto tiene huecos; pese otra vez un litro o corrija la densidad del sólido</translation>
    </message>
    <message>
        <source>the grain density {particle_g_l} g/L is above the solid density {skeletal_g_l} g/L, but a grain is no denser than its solid; correct the one that is wrong</source>
        <translation>la densidad del grano {particle_g_l} g/L supera la densidad del sólido {skeletal_g_l} g/L, pero un grano no es más denso que su sólido; corrija la equivocada</translation>
    </message>
    <message>
        <source>there is no material called {name} in the catalogue; write it as one of the nearest: {nearest}</source>
        <translation>no hay ningún material llamado {name} en el catálogo; escriba uno de los más parecidos: {nearest}</translation>
    </message>
    <message>
        <source>the corner radius {radius_cm} cm is more than half of the shorter side; expected at most {limit_cm} cm</source>
        <translation>el radio de esquina {radius_cm} cm es más de la mitad del lado corto; se esperan como máximo {limit_cm} cm</translation>
    </message>
    <message>
        <source>a corner radius belongs to a rectangular pot; leave it out here</source>
        <translation>un radio de esquina es propio de una maceta rectangular; quítelo aquí</translation>
    </message>
    <message>
        <source>the exponent {exponent} differs from {other}; give a pot one exponent</source>
        <translation>el exponente {exponent} difiere de {other}; dé a la maceta un solo exponente</translation>
    </message>
    <message>
        <source>the fill line lies {freeboard_cm} cm below the rim, but the pot is only {depth_cm} cm deep; measure both again</source>
        <translation>la línea de llenado está {freeboard_cm} cm bajo el borde, pero la maceta solo tiene {depth_cm} cm de hondo; mida otra vez ambas</translation>
    </message>
    <message>
        <source>bottom layer and top dressing together take {layers_cm} cm of the {filled_cm} cm filled; make them thinner, so that room is left for the mix</source>
        <translation>la capa de fondo y la cobertura juntas ocupan {layers_cm} cm de los {filled_cm} cm llenos; hágalas más finas, para que quede sitio para la mezcla</translation>
    </message>
    <message>
        <source>the length is {length_cm} cm; expected 0 or more</source>
        <translation>la longitud es {length_cm} cm; se espera 0 o más</translation>
    </message>
    <message>
        <source>the mass is {mass_kg} kg; expected 0 or more</source>
        <translation>la masa es {mass_kg} kg; se espera 0 o más</translation>
    </message>
    <message>
        <source>the table of areas ends at {height_cm} cm, below the rim at {depth_cm} cm; add a row for the rim</source>
        <translation>la tabla de áreas acaba en {height_cm} cm, por debajo del borde a {depth_cm} cm; añada una fila para el borde</translation>
    </message>
    <message>
        <source>the table of areas starts at {height_cm} cm; put a row for the floor, at 0, first</source>
        <translation>la tabla de áreas empieza en {height_cm} cm; ponga primero una fila para el fondo, en 0</translation>
    </message>
    <message>
        <source>the height {height_cm} cm follows {before_cm} cm; write the heights from the floor up</source>
        <translation>la altura {height_cm} cm sigue a {before_cm} cm; escriba las alturas desde el fondo hacia arriba</translation>
    </message>
    <message>
        <source>the volume is {volume_ml} mL, which no pot holds; look at its unit</source>
        <translation>el volumen es {volume_ml} mL, que ninguna maceta contiene; revise la unidad</translation>
    </message>
    <message>
        <source>the water fill of {volume_ml} mL is {percent} % of the {lengths_ml} mL that the lengths hold; look at its unit and at the lengths</source>
        <translation>el llenado con agua de {volume_ml} mL es el {percent} % de los {lengths_ml} mL que caben según las medidas; revise su unidad y las medidas</translation>
    </message>
    <message>
        <source>the column {column} stands twice in the header; take one out</source>
        <translation>la columna {column} aparece dos veces en la cabecera; quite una</translation>
    </message>
    <message>
        <source>a quote opened here and is never closed; close it, or take it out</source>
        <translation>aquí se abrió una comilla que nunca se cierra; ciérrela o quítela</translation>
    </message>
    <message>
        <source>a row follows the pan (line {pan_line}); write the pan as the last row</source>
        <translation>una fila sigue a la bandeja (línea {pan_line}); escriba la bandeja como última fila</translation>
    </message>
    <message>
        <source>{found} cells stand here, the header has {expected} columns; take out what is too much, or put a text that holds the separator into quotes</source>
        <translation>aquí hay {found} celdas, la cabecera tiene {expected} columnas; quite lo que sobra, o ponga entre comillas un texto que contenga el separador</translation>
    </message>
    <message>
        <source>the name of the file is empty; give one</source>
        <translation>el nombre del archivo está vacío; dé uno</translation>
    </message>
    <message>
        <source>the file is larger than {limit_mb} MB, where a sieve test or a mix is a few kilobytes; look whether it is the one you meant</source>
        <translation>el archivo pasa de {limit_mb} MB, un ensayo de tamizado o una mezcla ocupa unos kilobytes; compruebe que es el que quería</translation>
    </message>
    <message>
        <source>the grading has no points; give openings with what passes them</source>
        <translation>la granulometría no tiene puntos; dé aberturas con lo que pasa por ellas</translation>
    </message>
    <message>
        <source>{coarser_percent} % passes {coarser_mm} mm but {finer_percent} % the finer {finer_mm} mm; correct one of them, passing never falls as the opening grows</source>
        <translation>pasa el {coarser_percent} % por {coarser_mm} mm pero el {finer_percent} % por los {finer_mm} mm, más finos; corrija uno de los dos, lo que pasa nunca baja al crecer la abertura</translation>
    </message>
    <message>
        <source>{percent} % passing can&apos;t be; expected 0 to 100</source>
        <translation>un {percent} % que pasa no es posible; se espera 0 a 100</translation>
    </message>
    <message>
        <source>the file ends before its JSON does; close the last bracket or quote, or save the file again</source>
        <translation>el archivo acaba antes que su JSON; cierre el último corchete o la última comilla, o guarde de nuevo el archivo</translation>
    </message>
    <message>
        <source>brackets are nested deeper than {limit} levels; look whether this is the file you meant</source>
        <translation>los corchetes están anidados a más de {limit} niveles; compruebe que es el archivo que quería</translation>
    </message>
    <message>
        <source>the file holds more than {limit} values; look whether this is the file you meant</source>
        <translation>el archivo contiene más de {limit} valores; compruebe que es el archivo que quería</translation>
    </message>
    <message>
        <source>the key {key} is missing; add it</source>
        <translation>falta la clave {key}; añádala</translation>
    </message>
    <message>
        <source>a number is missing here; write it</source>
        <translation>aquí falta un número; escríbalo</translation>
    </message>
    <message>
        <source>{text} is not a number; write it in figures</source>
        <translation>{text} no es un número; escríbalo en cifras</translation>
    </message>
    <message>
        <source>{text} is too large to be a measured value; look at its decimal point and its unit</source>
        <translation>{text} es demasiado grande para ser un valor medido; revise el signo decimal y la unidad</translation>
    </message>
    <message>
        <source>{text} is too small to be a measured value; look at its decimal point and its unit</source>
        <translation>{text} es demasiado pequeño para ser un valor medido; revise el signo decimal y la unidad</translation>
    </message>
    <message>
        <source>the schema refers to itself without end; mend the reference</source>
        <translation>el esquema se refiere a sí mismo sin fin; corrija la referencia</translation>
    </message>
    <message>
        <source>there is no schema called {schema}; look at its spelling, or put it beside the others</source>
        <translation>no hay ningún esquema llamado {schema}; revise cómo está escrito, o póngalo junto a los otros</translation>
    </message>
    <message>
        <source>this fits none of the allowed forms; look in the schema for them</source>
        <translation>esto no se ajusta a ninguna de las formas permitidas; véalas en el esquema</translation>
    </message>
    <message>
        <source>{text} is not one of the allowed values; look in the schema for them</source>
        <translation>{text} no es uno de los valores permitidos; véalos en el esquema</translation>
    </message>
    <message>
        <source>{value} is beyond the limit {limit}; write a value within it</source>
        <translation>{value} rebasa el límite {limit}; escriba un valor que lo respete</translation>
    </message>
    <message>
        <source>this fits more than one of the allowed forms; leave out what belongs to the others</source>
        <translation>esto se ajusta a más de una de las formas permitidas; quite lo que pertenece a las otras</translation>
    </message>
    <message>
        <source>the schema uses {keyword}, which is not checked here; say it in another way</source>
        <translation>el esquema usa {keyword}, que aquí no se comprueba; dígalo de otro modo</translation>
    </message>
    <message>
        <source>{aperture_mm} mm is above the coarsest sieve of the test, {coarsest_mm} mm; how the grain above that is spread is assumed: test with a coarser sieve</source>
        <translation>{aperture_mm} mm está por encima del tamiz más grueso del ensayo, {coarsest_mm} mm; se supone cómo se reparte el grano por encima: ensaye con un tamiz más grueso</translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm is named twice; name it once</source>
        <translation>la abertura {aperture_mm} mm se nombra dos veces; nómbrela una vez</translation>
    </message>
    <message>
        <source>the set has no sieve; type at least one opening</source>
        <translation>el juego no tiene tamices; escriba al menos una abertura</translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm follows {before_mm} mm; write the sieves from coarse to fine</source>
        <translation>la abertura {aperture_mm} mm sigue a {before_mm} mm; escriba los tamices de grueso a fino</translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm follows {above_mm} mm; write the sieves from coarse to fine</source>
        <translation>la abertura {aperture_mm} mm sigue a {above_mm} mm; escriba los tamices de grueso a fino</translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm stands twice; correct one of them, or take it out</source>
        <translation>la abertura {aperture_mm} mm aparece dos veces; corrija una o quítela</translation>
    </message>
    <message>
        <source>the litre weight {bulk_g_l} g/L is above the grain density {particle_g_l} g/L; weigh a litre again, or correct the grain density</source>
        <translation>el peso por litro {bulk_g_l} g/L supera la densidad del grano {particle_g_l} g/L; pese otra vez un litro o corrija la densidad del grano</translation>
    </message>
    <message>
        <source>nothing was left on the sieves or in the pan; type what each of them held</source>
        <translation>no quedó nada en los tamices ni en la bandeja; escriba lo que retuvo cada uno</translation>
    </message>
    <message>
        <source>the fractions add up to {sum_g} g, the sample is {sample_g} g; the balance explains only {explained_g} g: weigh them again, or correct the sample&apos;s mass</source>
        <translation>las fracciones suman {sum_g} g, la muestra es de {sample_g} g; la balanza solo explica {explained_g} g: péselas otra vez o corrija la masa de la muestra</translation>
    </message>
    <message>
        <source>the tare of {tare_g} g is above the gross mass of {gross_g} g; weigh the empty pan again, or swap the two</source>
        <translation>la tara de {tare_g} g supera la masa bruta de {gross_g} g; pese otra vez el recipiente vacío o intercambie ambas</translation>
    </message>
    <message>
        <source>there are more than {limit} rows; write one row for each sieve and one for the pan</source>
        <translation>hay más de {limit} filas; escriba una fila por tamiz y una para la bandeja</translation>
    </message>
    <message>
        <source>{washed_g} g after washing is more than the {dry_g} g before it; dry and weigh it again, or swap the two</source>
        <translation>{washed_g} g tras lavar es más que los {dry_g} g de antes; seque y pese otra vez, o intercambie ambas</translation>
    </message>
    <message>
        <source>the mass after washing needs the dry mass before washing; give it too</source>
        <translation>la masa tras lavar necesita la masa seca antes de lavar; déla también</translation>
    </message>
    <message>
        <source>at {aperture_mm} mm the tests run from {least_percent} to {most_percent} % passing; careful repeats stay within {limit_points} points nineteen times of twenty: the samples differ, mix the bag well and sieve another</source>
        <translation>en {aperture_mm} mm los ensayos van de {least_percent} a {most_percent} % que pasa; repeticiones cuidadosas quedan dentro de {limit_points} puntos diecinueve veces de veinte: las muestras difieren, mezcle bien el saco y tamice otra</translation>
    </message>
    <message>
        <source>the tests share no range of sieves, so they can&apos;t be pooled; sieve them with the same set</source>
        <translation>los ensayos no comparten ningún intervalo de tamices, así que no se pueden reunir; tamícelos con el mismo juego</translation>
    </message>
    <message>
        <source>there is no sieve test to pool; give at least one</source>
        <translation>no hay ensayo de tamizado que reunir; dé al menos uno</translation>
    </message>
    <message>
        <source>there is a NUL byte here; choose a text file, this is none</source>
        <translation>aquí hay un byte NUL; elija un archivo de texto, este no lo es</translation>
    </message>
    <message>
        <source>in whole scoops, batches without {grain}: {without} of {batches}; mix them with the others before use, or take a smaller scoop or a larger tub</source>
        <translation>en palas enteras, {grain} falta en {without} de {batches} tandas; mézclelas con las demás antes de usarlas, o tome una pala menor o una tina mayor</translation>
    </message>
    <message>
        <source>the mix {text} is named twice; name it once</source>
        <translation>la mezcla {text} se nombra dos veces; nómbrela una vez</translation>
    </message>
    <message>
        <source>{left_l} L are left of {made_l} L made, so nothing was used; correct one of them</source>
        <translation>quedan {left_l} L de {made_l} L hechos, así que no se usó nada; corrija uno de los dos</translation>
    </message>
    <message>
        <source>no bag size is known, so bags can&apos;t be counted; {raw_l} L of raw grain are needed: type the litres of a bag</source>
        <translation>no se conoce el tamaño del saco, así que no se pueden contar sacos; hacen falta {raw_l} L de grano bruto: escriba los litros de un saco</translation>
    </message>
    <message>
        <source>neither fill_ml nor a pot says how much mix the tree takes; give one of them</source>
        <translation>ni fill_ml ni una maceta dicen cuánta mezcla toma el árbol; dé uno de los dos</translation>
    </message>
    <message>
        <source>{day} lies outside the tree&apos;s window, {opens} to {closes}; choose a day within it, or go by the buds</source>
        <translation>{day} queda fuera de la época del árbol, {opens} a {closes}; elija un día dentro de ella o guíese por las yemas</translation>
    </message>
    <message>
        <source>{reserved_l} L of it are promised to other days, so that {short_l} L are short here; screen or buy them</source>
        <translation>{reserved_l} L están prometidos a otras jornadas, así que aquí faltan {short_l} L; críbelos o cómprelos</translation>
    </message>
    <message>
        <source>the scoop of {scoop_l} L is larger than the tub of {tub_l} L; take a smaller scoop or a larger tub</source>
        <translation>la pala de {scoop_l} L es mayor que la tina de {tub_l} L; tome una pala más pequeña o una tina más grande</translation>
    </message>
    <message>
        <source>{short_l} L of ready grain are short; screen or buy {raw_l} L of raw grain</source>
        <translation>faltan {short_l} L de grano listo; cribe o compre {raw_l} L de grano bruto</translation>
    </message>
    <message>
        <source>how much of it is left is not known; enough was assumed: count it</source>
        <translation>no se sabe cuánto queda; se supuso bastante: cuéntelo</translation>
    </message>
    <message>
        <source>the tree {text} stands twice in the day; take it out once</source>
        <translation>el árbol {text} aparece dos veces en la jornada; quítelo una vez</translation>
    </message>
    <message>
        <source>the day has no mix called {text}; look at its spelling, or add it</source>
        <translation>la jornada no tiene ninguna mezcla llamada {text}; revise cómo está escrita o añádala</translation>
    </message>
    <message>
        <source>the day has no pot called {text}; look at its spelling, or add it</source>
        <translation>la jornada no tiene ninguna maceta llamada {text}; revise cómo está escrita o añádala</translation>
    </message>
    <message>
        <source>version {version} can&apos;t be; expected 1 or more</source>
        <translation>la versión {version} no es posible; se espera 1 o más</translation>
    </message>
    <message>
        <source>the limits run from {low} down to {high}; write the lower one first</source>
        <translation>los límites van de {low} hacia abajo hasta {high}; escriba primero el menor</translation>
    </message>
    <message>
        <source>{value} is no whole number; write one without decimals</source>
        <translation>{value} no es un número entero; escriba uno sin decimales</translation>
    </message>
    <message>
        <source>the stock of every candidate is 0, so all are excluded; give the stock of one, or leave it out</source>
        <translation>las existencias de todos los candidatos son 0, así que todos quedan excluidos; dé las existencias de uno o quítelas</translation>
    </message>
    <message>
        <source>no recipe of whole parts is within the stock; ask for fewer litres, or add stock</source>
        <translation>ninguna receta de partes enteras cabe en las existencias; pida menos litros o añada existencias</translation>
    </message>
    <message>
        <source>no candidate was tested at {aperture_mm} mm, and the curves are not extrapolated; sieve one of them there</source>
        <translation>ningún candidato se ensayó a {aperture_mm} mm, y las curvas no se extrapolan; tamice uno de ellos ahí</translation>
    </message>
    <message>
        <source>has no grain density, so the litres it takes are not known; recipes with it count as beyond the stock: measure its grain density</source>
        <translation>no tiene densidad del grano, así que no se saben los litros que ocupa; las recetas con él cuentan como fuera de existencias: mida su densidad del grano</translation>
    </message>
    <message>
        <source>there are {count} candidates; leave some out, at most {most} are searched</source>
        <translation>hay {count} candidatos; quite algunos, se buscan como máximo {most}</translation>
    </message>
    <message>
        <source>there are {count} wishes; leave some out, at most {most} are weighed</source>
        <translation>hay {count} deseos; quite algunos, se ponderan como máximo {most}</translation>
    </message>
    <message>
        <source>there is no pot called {pot} among the pots; look at its spelling, or add it</source>
        <translation>no hay ninguna maceta llamada {pot} entre las macetas; revise cómo está escrita o añádala</translation>
    </message>
    <message>
        <source>no candidate has the name or family {name}; look at its spelling, or add one</source>
        <translation>ningún candidato tiene el nombre o la familia {name}; revise cómo está escrito o añada uno</translation>
    </message>
    <message>
        <source>wish number {wish} cannot hold: every candidate lies beyond its limits on the same side, and so does every mix of them; loosen it, or add another candidate</source>
        <translation>el deseo número {wish} no puede cumplirse: todos los candidatos quedan fuera de sus límites por el mismo lado, y así toda mezcla de ellos; aflójelo o añada otro candidato</translation>
    </message>
    <message>
        <source>the {kind} {id} stands twice in this file; give one of them another number, or take it out</source>
        <translation>{kind} {id} aparece dos veces en este archivo; dé otro número a uno de los dos o quítelo</translation>
    </message>
    <message>
        <source>a name is missing here; type one</source>
        <translation>aquí falta un nombre; escriba uno</translation>
    </message>
    <message>
        <source>the root-mass plan is empty; fill it in, or leave it out</source>
        <translation>el plan de cepellón está vacío; rellénelo o quítelo</translation>
    </message>
    <message>
        <source>{number} is no whole number; write one without decimals</source>
        <translation>{number} no es un número entero; escriba uno sin decimales</translation>
    </message>
    <message>
        <source>{text} is no kind of record; look at its spelling, expected the like of bag, mix or tree</source>
        <translation>{text} no es un tipo de registro; revise cómo está escrito, se espera algo como bag, mix o tree</translation>
    </message>
    <message>
        <source>the tree {text} stands twice on this day; take it off once</source>
        <translation>el árbol {text} aparece dos veces en esta jornada; quítelo una vez</translation>
    </message>
    <message>
        <source>acid lovers bear one of base, sides or surface at a repotting; this plan works more than one: leave the others for another year</source>
        <translation>las acidófilas soportan en un trasplante una de base, lados o superficie; este plan trabaja más de una: deje las otras para otro año</translation>
    </message>
    <message>
        <source>the tree was bare-rooted last time, which it does not bear at every repotting; keep a core this time</source>
        <translation>la última vez el árbol quedó a raíz desnuda, cosa que no soporta en cada trasplante; deje esta vez un núcleo</translation>
    </message>
    <message>
        <source>{clearance_cm} cm of new mix there leave no room; the pot allows less than {limit_cm} cm</source>
        <translation>{clearance_cm} cm de mezcla nueva ahí no dejan espacio; la maceta permite menos de {limit_cm} cm</translation>
    </message>
    <message>
        <source>combing {depth_cm} cm deep goes past the middle; comb at most half of it, {limit_cm} cm</source>
        <translation>peinar {depth_cm} cm de hondo pasa del centro; peine como máximo la mitad del cepellón, {limit_cm} cm</translation>
    </message>
    <message>
        <source>the direction {direction} stands twice; take one out</source>
        <translation>la dirección {direction} aparece dos veces; quite una</translation>
    </message>
    <message>
        <source>only a rounded root mass has an exponent; leave it out</source>
        <translation>solo un cepellón redondeado tiene exponente; quítelo</translation>
    </message>
    <message>
        <source>the old face {face} stands twice; take one out</source>
        <translation>el lado antiguo {face} aparece dos veces; quite uno</translation>
    </message>
    <message>
        <source>it would fit, but more would come off, or less stay untouched, than the group bears; take a larger pot</source>
        <translation>cabría, pero se quitaría más, o quedaría intacto menos, de lo que el grupo soporta; tome una maceta más grande</translation>
    </message>
    <message>
        <source>between the lowest level {lowest_cm} cm and the fill line {highest_cm} cm is no room for a root mass; make the bottom layer or the new mix below thinner, or fill higher</source>
        <translation>entre el nivel más bajo, {lowest_cm} cm, y la línea de llenado, {highest_cm} cm, no hay sitio para un cepellón; haga más fina la capa de fondo o la mezcla nueva debajo, o llene más alto</translation>
    </message>
    <message>
        <source>{percent} % comes off; the group bears {limit_percent} %: take less off, or take a larger pot</source>
        <translation>se quita un {percent} %; el grupo soporta un {limit_percent} %: quite menos o tome una maceta más grande</translation>
    </message>
    <message>
        <source>{percent} % comes off; more than 70 % is never advised: take less off, or take a larger pot</source>
        <translation>se quita un {percent} %; más del 70 % nunca se aconseja: quite menos o tome una maceta más grande</translation>
    </message>
    <message>
        <source>the least tip {angle_deg} degrees is above the tip {tip_deg} degrees; make it smaller</source>
        <translation>el vuelco mínimo {angle_deg} grados supera el vuelco {tip_deg} grados; hágalo menor</translation>
    </message>
    <message>
        <source>{percent} % stays untouched; the group wants {limit_percent} %: cut and comb less, or take a larger pot</source>
        <translation>un {percent} % queda intacto; el grupo quiere un {limit_percent} %: corte y peine menos o tome una maceta más grande</translation>
    </message>
    <message>
        <source>neither a due day nor a last repotting with an interval says when it is due, so it is not counted; write one of them down</source>
        <translation>ni un día previsto ni un último trasplante con intervalo dicen cuándo le toca, así que no se cuenta; anote uno de los dos</translation>
    </message>
    <message>
        <source>a count needs what was found; type it, 0 if nothing is left</source>
        <translation>un recuento necesita lo que se encontró; escríbalo, 0 si no queda nada</translation>
    </message>
    <message>
        <source>litres need the litre weight they were turned into grams with; give it too</source>
        <translation>los litros necesitan el peso por litro con que se pasaron a gramos; délo también</translation>
    </message>
    <message>
        <source>litres of {id} can&apos;t be turned into grams: its litre weight is not known; weigh it, or measure its litre weight</source>
        <translation>los litros de {id} no se pueden pasar a gramos: no se conoce su peso por litro; péselo o mida su peso por litro</translation>
    </message>
    <message>
        <source>{change_g} g does not suit the reason; write what goes away as negative, what comes as positive</source>
        <translation>{change_g} g no casa con el motivo; escriba en negativo lo que sale, en positivo lo que entra</translation>
    </message>
    <message>
        <source>{text} stands behind {before}; write the repottings from the oldest to the newest</source>
        <translation>{text} está detrás de {before}; escriba los trasplantes del más antiguo al más nuevo</translation>
    </message>
    <message>
        <source>box {box} of the untouched part ends before it begins; swap its ends</source>
        <translation>la caja {box} de la parte intacta acaba antes de empezar; intercambie sus extremos</translation>
    </message>
    <message>
        <source>the boxes have {count} numbers; write six for each</source>
        <translation>las cajas tienen {count} números; escriba seis para cada una</translation>
    </message>
    <message>
        <source>the clock of this machine stands before the last entry ({time}); set it right, entries keep their order all the same</source>
        <translation>el reloj de esta máquina va por detrás de la última entrada ({time}); póngalo en hora, las entradas conservan su orden igualmente</translation>
    </message>
    <message>
        <source>there is no {kind} {id}; look at its number</source>
        <translation>no hay {kind} {id}; revise el número</translation>
    </message>
    <message>
        <source>the file or its folder can&apos;t be written to; the record is open for reading only: save a copy of it to write in</source>
        <translation>no se puede escribir en el archivo o su carpeta; el registro está abierto solo para lectura: guarde una copia para escribir en ella</translation>
    </message>
    <message>
        <source>another window was quicker; the last step is now: {label}. Look at it, and undo again if you mean that</source>
        <translation>otra ventana fue más rápida; el último paso es ahora: {label}. Mírelo y deshaga de nuevo si es ese</translation>
    </message>
    <message>
        <source>Cut straight across the corners, {share} of the root mass: {where}</source>
        <translation>Corte recto a través de las esquinas, {share} del cepellón: {where}</translation>
    </message>
    <message>
        <source>{tree} {reason}</source>
        <translation>{tree} {reason}</translation>
    </message>
    <message>
        <source>tree {tree} has no root-mass plan that can be worked out; plan its root mass first</source>
        <translation>el árbol {tree} no tiene un plan de cepellón que se pueda calcular; planifique primero su cepellón</translation>
    </message>
    <message>
        <source>tree {tree} has no plan {text}; its root-mass plan has {plans}</source>
        <translation>el árbol {tree} no tiene plan {text}; su plan de cepellón tiene {plans}</translation>
    </message>
    <message>
        <source>tree {tree} can&apos;t be corrected: its repotting of that day is no longer in its history; take its tick back and tick it again</source>
        <translation>el árbol {tree} no se puede corregir: su trasplante de ese día ya no está en su historial; retire su marca y vuelva a marcarlo</translation>
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
        <translation>altura sobre el fondo de la maceta hasta la que los poros siguen llenos en nueve décimas partes</translation>
    </message>
    <message>
        <source>the k that holds the water measured; the water in the grains is known</source>
        <translation>el k que retiene el agua medida; el agua en los granos se conoce</translation>
    </message>
    <message>
        <source>least (water held - measured)^2/0.02^2 + (ln(k/k0)/0.24)^2 + ((w - w0)/0.15)^2 over k and w</source>
        <translation>mínimo de (agua retenida - medida)^2/0.02^2 + (ln(k/k0)/0.24)^2 + ((w - w0)/0.15)^2 sobre k y w</translation>
    </message>
    <message>
        <source>k and w that hold the water measured at two depths</source>
        <translation>k y w que retienen el agua medida a dos profundidades</translation>
    </message>
    <message>
        <source>wet mix + kept root mass + tree + pot + layers; wet mix = fill x (litre weight + 1000 g/L x water held)</source>
        <translation>mezcla mojada + cepellón que queda + árbol + maceta + capas; mezcla mojada = llenado x (peso por litro + 1000 g/L x agua retenida)</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>plan</translation>
    </message>
    <message>
        <source>buds</source>
        <translation>yemas</translation>
    </message>
    <message>
        <source>helper</source>
        <translation>ayudante</translation>
    </message>
    <message>
        <source>pour</source>
        <translation>verter</translation>
    </message>
    <message>
        <source>scoops</source>
        <translation>palas</translation>
    </message>
    <message>
        <source>layers</source>
        <translation>capas</translation>
    </message>
    <message>
        <source>done: plan, litres, note</source>
        <translation>hecho: plan, litros, nota</translation>
    </message>
    <message>
        <source>grain</source>
        <translation>grano</translation>
    </message>
    <message>
        <source>quarts</source>
        <translation>cuartos</translation>
    </message>
    <message>
        <source>in the pots</source>
        <translation>en las macetas</translation>
    </message>
    <message>
        <source>to mix</source>
        <translation>por mezclar</translation>
    </message>
    <message>
        <source>batches</source>
        <translation>tandas</translation>
    </message>
    <message>
        <source>made</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>left over</source>
        <translation>sobrante</translation>
    </message>
    <message>
        <source>to have ready</source>
        <translation>tener listo</translation>
    </message>
    <message>
        <source>for</source>
        <translation>para</translation>
    </message>
    <message>
        <source>raw</source>
        <translation>bruto</translation>
    </message>
    <message>
        <source>usable</source>
        <translation>aprovechable</translation>
    </message>
    <message>
        <source>short of</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>one bag</source>
        <translation>un saco</translation>
    </message>
    <message>
        <source>buy</source>
        <translation>comprar</translation>
    </message>
    <message>
        <source>from</source>
        <translation>desde</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>wants</source>
        <translation>quiere</translation>
    </message>
    <message>
        <source>gets</source>
        <translation>recibe</translation>
    </message>
    <message>
        <source>full and wet</source>
        <translation>lleno y mojado</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masa</translation>
    </message>
    <message>
        <source>sum of weight (points missed)^2 over the wishes that need not hold; points: percent of the mass, 100 x shares, 20 g/L, 5 meq/L, 5 % of a price limit; limits and gradings by root mean square over their openings</source>
        <translation>suma de peso (puntos de falta)^2 sobre los deseos no obligatorios; puntos: porcentaje de la masa, 100 x proporciones, 20 g/L, 5 meq/L, 5 % de un límite de precio; límites y granulometrías por media cuadrática sobre sus aberturas</translation>
    </message>
    <message>
        <source>examined + excluded = all recipes; a recipe is excluded only if a lower bound of its score, or a wish that must hold, puts it behind the list</source>
        <translation>examinadas + descartadas = todas las recetas; una receta se descarta solo si una cota inferior de su puntuación, o un deseo obligatorio, la deja detrás de la lista</translation>
    </message>
    <message>
        <source>no mix of this grading keeps the measured {capacity_percent} % of water; look at the masses, the volume and the grading</source>
        <translation>ninguna mezcla de esta granulometría retiene el {capacity_percent} % de agua medido; revise las masas, el volumen y la granulometría</translation>
    </message>
    <message>
        <source>the two depths contradict each other more than tests of one mix do, so both were weighed against the usual values; repeat one of the tests</source>
        <translation>las dos profundidades se contradicen más de lo que suelen los ensayos de una misma mezcla, así que ambas se ponderaron con los valores habituales; repita uno de los ensayos</translation>
    </message>
    <message>
        <source>the fineness modulus reads {aperture_mm} mm off the curve, that sieve was not used; a sieve of {aperture_mm} mm would give it</source>
        <translation>el módulo de finura lee {aperture_mm} mm en la curva, ese tamiz no se usó; un tamiz de {aperture_mm} mm lo daría</translation>
    </message>
    <message>
        <source>the fineness modulus is not defined: {percent} % is finer than the finest sieve, {finest_mm} mm, and it asks for {aperture_mm} mm; a sieve of {aperture_mm} mm would give it</source>
        <translation>el módulo de finura no está definido: un {percent} % es más fino que el tamiz más fino, {finest_mm} mm, y hace falta {aperture_mm} mm; un tamiz de {aperture_mm} mm lo daría</translation>
    </message>
    <message>
        <source>{percent} % stayed on the coarsest sieve, {aperture_mm} mm; the fineness modulus counts none of it on coarser ones; a coarser sieve would tell</source>
        <translation>un {percent} % quedó en el tamiz más grueso, {aperture_mm} mm; el módulo de finura no lo cuenta en tamices más gruesos; un tamiz más grueso lo mostraría</translation>
    </message>
    <message>
        <source>a laboratory figure without a value needs a size outside the sieves used; sieve with a wider set</source>
        <translation>una cifra de laboratorio sin valor necesita un tamaño fuera de los tamices usados; tamice con un juego más amplio</translation>
    </message>
    <message>
        <source>by {count} of your pot tests</source>
        <translation>según {count} de sus ensayos en maceta</translation>
    </message>
    <message>
        <source>air and water are by {count} of your own pot tests of mix {mix}, the last is {test}</source>
        <translation>aire y agua salen de {count} ensayos en maceta propios de la mezcla {mix}, el último es {test}</translation>
    </message>
    <message>
        <source>by {count} of your pot tests ({dates})</source>
        <translation>según {count} de sus ensayos en maceta ({dates})</translation>
    </message>
    <message>
        <source>the exchange capacity of a component is not known, so the mix&apos;s is not either; give it if you need it</source>
        <translation>no se conoce la capacidad de intercambio de un componente, así que tampoco la de la mezcla; déla si la necesita</translation>
    </message>
    <message>
        <source>the solid density is not known: total porosity counts only the pores that take up water; give the solid density for all of them</source>
        <translation>no se conoce la densidad del sólido: la porosidad total cuenta solo los poros que toman agua; dé la densidad del sólido para contarlos todos</translation>
    </message>
    <message>
        <source>{percent} % is finer than {aperture_mm} mm and taken as grain of {size_mm} mm; a finer sieve would tell</source>
        <translation>un {percent} % es más fino que {aperture_mm} mm y se toma como grano de {size_mm} mm; un tamiz más fino lo mostraría</translation>
    </message>
    <message>
        <source>this mix has no pot test of its own: air and water lean by {percent} % on pot tests {tests} of mixes {mixes} with {materials}</source>
        <translation>esta mezcla no tiene ensayo en maceta propio: aire y agua se apoyan un {percent} % en los ensayos {tests} de las mezclas {mixes} con {materials}</translation>
    </message>
    <message>
        <source>{percent} % is coarser than {aperture_mm} mm and taken to end at {top_mm} mm; a coarser sieve would tell</source>
        <translation>un {percent} % es más grueso que {aperture_mm} mm y se toma como que acaba en {top_mm} mm; un tamiz más grueso lo mostraría</translation>
    </message>
    <message>
        <source>figures that were not given are typical values of the catalogue; measure your own to be sure</source>
        <translation>las cifras que no se dieron son valores típicos del catálogo; mida las suyas para estar seguro</translation>
    </message>
    <message>
        <source>litres are taken in proportion to mass; screened grain lies looser, so they come out a little low; weigh a litre and measure the grain density</source>
        <translation>los litros se toman en proporción a la masa; el grano cribado queda más suelto, así que salen algo cortos; pese un litro y mida la densidad del grano</translation>
    </message>
    <message>
        <source>what the screening keeps is {percent} % wanted grain, {finer_percent} % finer</source>
        <translation>lo que el cribado conserva es un {percent} % grano deseado, un {finer_percent} % más fino</translation>
    </message>
    <message>
        <source>the bottom layer&apos;s grain is not known, so the water is computed as if the mix reached the floor; name its grain</source>
        <translation>no se conoce el grano de la capa de fondo, así que el agua se calcula como si la mezcla llegara al fondo; nombre su grano</translation>
    </message>
    <message>
        <source>100 x mass that stayed on / base</source>
        <translation>100 x masa retenida / base</translation>
    </message>
    <message>
        <source>100 (1 - cumulative mass that stayed on / base); cumulative masses are divided, rounded shares never added</source>
        <translation>100 (1 - masa retenida acumulada / base); se dividen masas acumuladas, nunca se suman proporciones redondeadas</translation>
    </message>
    <message>
        <source>wanted grain</source>
        <translation>grano deseado</translation>
    </message>
    <message>
        <source>passing at the coarse end of the wanted grain - passing at its fine end, by mass</source>
        <translation>pasa en el extremo grueso del grano deseado - pasa en su extremo fino, en masa</translation>
    </message>
    <message>
        <source>passing at the fine end of the wanted grain, by mass</source>
        <translation>pasa en el extremo fino del grano deseado, en masa</translation>
    </message>
    <message>
        <source>wanted grain, its ends at the sieves of the test</source>
        <translation>grano deseado, sus extremos en tamices del ensayo</translation>
    </message>
    <message>
        <source>passing at the fine end of the wanted grain less what was lost, by mass</source>
        <translation>pasa en el extremo fino del grano deseado menos lo perdido, en masa</translation>
    </message>
    <message>
        <source>1 - passing at the coarse end of the wanted grain, by mass</source>
        <translation>1 - pasa en el extremo grueso del grano deseado, en masa</translation>
    </message>
    <message>
        <source>sum of cumulative percent that stayed on 0.150, 0.300, 0.600, 1.18, 2.36, 4.75, 9.5, 19.0, 37.5, 75, 150 mm / 100</source>
        <translation>suma de los porcentajes retenidos acumulados en 0.150, 0.300, 0.600, 1.18, 2.36, 4.75, 9.5, 19.0, 37.5, 75, 150 mm / 100</translation>
    </message>
    <message>
        <source>a rectangle with soft corners needs its exponent (2 is an ellipse, 4 a rectangle with soft corners)</source>
        <translation>un rectángulo de esquinas suaves necesita su exponente (2 es una elipse, 4 un rectángulo de esquinas suaves)</translation>
    </message>
    <message>
        <source>a rounding of {radius_cm} cm at the floor leaves no floor; at most {limit_cm} cm fits here</source>
        <translation>un redondeo de {radius_cm} cm en el fondo no deja fondo; aquí cabe como máximo {limit_cm} cm</translation>
    </message>
    <message>
        <source>this shape has no edge between floor and wall to round; leave the rounding out, a bowl and a table of areas already hold the curve</source>
        <translation>esta forma no tiene arista entre fondo y pared que redondear; quite el redondeo, un cuenco y una tabla de áreas ya contienen la curva</translation>
    </message>
    <message>
        <source>the file is damaged; restore the newest intact backup: what was written after it is only in the damaged file, which is kept</source>
        <translation>el archivo está dañado; restaure la copia de seguridad íntegra más reciente: lo escrito después de ella está solo en el archivo dañado, que se conserva</translation>
    </message>
    <message>
        <source>the file is not there; look at its name</source>
        <translation>el archivo no está; revise su nombre</translation>
    </message>
    <message>
        <source>the file can&apos;t be read; look whose it is, and whether it is a file</source>
        <translation>no se puede leer el archivo; revise de quién es y si es un archivo</translation>
    </message>
    <message>
        <source>the reference materials were not found; install Gritwright again, or set GRITWRIGHT_DATA to the folder that holds materials/</source>
        <translation>no se encontraron los materiales de referencia; instale Gritwright de nuevo o ponga en GRITWRIGHT_DATA la carpeta que contiene materials/</translation>
    </message>
    <message>
        <source>passing ran from {low_percent} to {high_percent} % and was rescaled to 0-100 %; look whether the curve was read off rightly</source>
        <translation>lo que pasa iba de {low_percent} a {high_percent} % y se reescaló a 0-100 %; compruebe que la curva se leyó bien</translation>
    </message>
    <message>
        <source>what follows is not JSON; mend it, or save the file again ({text})</source>
        <translation>lo que sigue no es JSON; corríjalo o guarde de nuevo el archivo ({text})</translation>
    </message>
    <message>
        <source>litre weight and grain density are not both known: litres rest on a packing density of {packing_density} for one size of grain; weigh a litre and measure the grain density for litres of this bag</source>
        <translation>no se conocen a la vez el peso por litro y la densidad del grano: los litros se basan en una densidad de empaquetamiento de {packing_density} para un solo tamaño de grano; pese un litro y mida la densidad del grano para tener los litros de este saco</translation>
    </message>
    <message>
        <source>no starting mass was given, so the percentages are of the {mass_g} g recovered and a loss would not show; weigh the sample before sieving</source>
        <translation>no se dio masa inicial, así que los porcentajes se refieren a los {mass_g} g recuperados y una pérdida no se notaría; pese la muestra antes de tamizar</translation>
    </message>
    <message>
        <source>measured in litres: shares of loose volume stand for shares of mass, as if every fraction lay equally dense; weigh the fractions to be sure</source>
        <translation>medido en litros: proporciones de volumen suelto en lugar de masa, como si todas las fracciones fueran igual de densas; pese las fracciones para estar seguro</translation>
    </message>
    <message>
        <source>the fractions outweigh the sample by {percent} %, no more than the balance&apos;s resolution explains; nothing needs doing</source>
        <translation>las fracciones pesan un {percent} % más que la muestra, no más de lo que explica la resolución de la balanza; no hay que hacer nada</translation>
    </message>
    <message>
        <source>{percent} % of the sample was lost while sieving; look under the sieves, or weigh the sample again: above 0.3 % a laboratory repeats the test</source>
        <translation>un {percent} % de la muestra se perdió al tamizar; mire debajo de los tamices o pese otra vez la muestra: por encima del 0,3 % un laboratorio repite el ensayo</translation>
    </message>
    <message>
        <source>not defined: {list}; {percent} % passes the coarsest sieve, {aperture_mm} mm; a coarser sieve would define them</source>
        <translation>no definido: {list}; un {percent} % pasa el tamiz más grueso, {aperture_mm} mm; un tamiz más grueso lo definiría</translation>
    </message>
    <message>
        <source>not defined: {list}; {percent} % is finer than the finest sieve, {aperture_mm} mm; a finer sieve would define them</source>
        <translation>no definido: {list}; un {percent} % es más fino que el tamiz más fino, {aperture_mm} mm; un tamiz más fino lo definiría</translation>
    </message>
    <message>
        <source>{mass_g} g is a small sample for grain of {size_mm} mm if it is stone; take {least_g} g or more, or type the grain density if it is lighter</source>
        <translation>{mass_g} g es una muestra pequeña para grano de {size_mm} mm si es piedra; tome {least_g} g o más, o escriba la densidad del grano si es más ligero</translation>
    </message>
    <message>
        <source>{percent} % stayed on the coarsest sieve, {aperture_mm} mm, and is taken to end at {top_mm} mm; a coarser sieve would tell</source>
        <translation>un {percent} % quedó en el tamiz más grueso, {aperture_mm} mm, y se toma como que acaba en {top_mm} mm; un tamiz más grueso lo mostraría</translation>
    </message>
    <message>
        <source>(1 - voids between grains) x mean porosity of the grains, 1 - grain density/solid density</source>
        <translation>(1 - huecos entre granos) x porosidad media de los granos, 1 - densidad del grano/densidad del sólido</translation>
    </message>
    <message>
        <source>sum over components of mass share x exchange capacity in meq/100 g x 10 x litre weight in kg/L</source>
        <translation>suma sobre los componentes de proporción de masa x capacidad de intercambio en meq/100 g x 10 x peso por litro en kg/L</translation>
    </message>
    <message>
        <source>litre weight</source>
        <translation>peso por litro</translation>
    </message>
    <message>
        <source>the packing density all classes of a component share for which the model gives back the component&apos;s own phi = dry litre weight / grain density: V = min over i of (1/phi - G_i)/(1 - F_i - G_i), beta = 1/V</source>
        <translation>la densidad de empaquetamiento que comparten todas las clases de un componente y con la que el modelo devuelve el phi propio del componente = peso por litro seco / densidad del grano: V = mínimo en i de (1/phi - G_i)/(1 - F_i - G_i), beta = 1/V</translation>
    </message>
    <message>
        <source>V = sum E/phi of the parts taken as litres, E = loose litres x dry litre weight / grain density</source>
        <translation>V = suma E/phi de las partes tomadas como litros, E = litros sueltos x peso por litro seco / densidad del grano</translation>
    </message>
    <message>
        <source>sum m / sum (m / solid density)</source>
        <translation>suma m / suma (m / densidad del sólido)</translation>
    </message>
    <message>
        <source>height of the fill line over the floor: depth - fill line below rim</source>
        <translation>altura de la línea de llenado sobre el fondo: profundidad - llenado bajo el borde</translation>
    </message>
    <message>
        <source>theta(0) - water held: the share that drains</source>
        <translation>theta(0) - agua retenida: la proporción que drena</translation>
    </message>
    <message>
        <source>water held</source>
        <translation>agua retenida</translation>
    </message>
    <message>
        <source>all open voids, between and in grains, - water held</source>
        <translation>todos los poros abiertos, entre los granos y en ellos, - agua retenida</translation>
    </message>
    <message>
        <source>water held - theta(50)</source>
        <translation>agua retenida - theta(50)</translation>
    </message>
    <message>
        <source>volume of the mix x (litre weight + 1000 g/L x water held)</source>
        <translation>volumen de la mezcla x (peso por litro + 1000 g/L x agua retenida)</translation>
    </message>
    <message>
        <source>the crumble test&apos;s figures can&apos;t be (breakages 0 or more; modulus and rounds in a season above 0); make the test again</source>
        <translation>las cifras del ensayo de desmenuzamiento no son posibles (roturas 0 o más; módulo y rondas por temporada por encima de 0); repita el ensayo</translation>
    </message>
    <message>
        <source>the mix was removed after the day was planned; the day keeps it as it was then, until another is chosen at its trees</source>
        <translation>la mezcla se quitó después de planificar la jornada; la jornada la conserva como era entonces, hasta que se elija otra en sus árboles</translation>
    </message>
    <message>
        <source>the mix was changed after the day was planned; the day keeps version {version}, the newest is {newest}: choose it at its trees to take that</source>
        <translation>la mezcla se cambió después de planificar la jornada; la jornada conserva la versión {version}, la más nueva es {newest}: elíjala en sus árboles para tomar esa</translation>
    </message>
    <message>
        <source>a bag of {bag_l} L was assumed, as is usual for the material; type the litres of a bag</source>
        <translation>se supuso un saco de {bag_l} L, lo habitual para el material; escriba los litros de un saco</translation>
    </message>
    <message>
        <source>no yield was measured, so {percent} % usable was assumed; sieve the bag</source>
        <translation>no se midió rendimiento, así que se supuso un {percent} % aprovechable; tamice el saco</translation>
    </message>
    <message>
        <source>without a root-mass plan all the pot holds was counted, {volume_l} L; plan the root mass, or type the litres</source>
        <translation>sin plan de cepellón se contó todo lo que cabe en la maceta, {volume_l} L; planifique el cepellón o escriba los litros</translation>
    </message>
    <message>
        <source>the search for wishes that exclude each other was stopped after {seconds} s; those shown do, there may be more</source>
        <translation>la búsqueda de deseos que se excluyen se detuvo a los {seconds} s; los mostrados se excluyen, puede haber más</translation>
    </message>
    <message>
        <source>only wishes about grading and shares were looked through for such that exclude each other, three at a time; wishes about air, water or price may do so too</source>
        <translation>solo entre los deseos sobre granulometría y proporciones se buscaron los que se excluyen, de tres en tres; también pueden excluirse los de aire, agua o precio</translation>
    </message>
    <message>
        <source>free shares are improved from fixed starts, so a better recipe may exist; search in whole parts for a proof</source>
        <translation>las proporciones libres se mejoran desde puntos de partida fijos, así que puede haber una receta mejor; busque en partes enteras para tener una demostración</translation>
    </message>
    <message>
        <source>there are {recipes} recipes, too many to try all; the best score may be lower by up to {gap}: allow fewer components or parts for a proof</source>
        <translation>hay {recipes} recetas, demasiadas para probarlas todas; la mejor puntuación puede ser hasta {gap} más baja: permita menos componentes o partes para tener una demostración</translation>
    </message>
    <message>
        <source>was not tested at {aperture_mm} mm, which a wish reads; its pan or its coarsest class stands in for what is not known: sieve it there</source>
        <translation>no se ensayó a {aperture_mm} mm, que un deseo lee; su bandeja o su clase más gruesa suple lo que no se sabe: tamícelo ahí</translation>
    </message>
    <message>
        <source>the {kind} {id} can&apos;t be read from the file and was left out; take it in from a backup, or write it anew</source>
        <translation>{kind} {id} no se puede leer del archivo y se omitió; tómelo de una copia, o escríbalo de nuevo</translation>
    </message>
    <message>
        <source>this {kind} was corrected since the file was written; it stays as it is here: look which of the two is right</source>
        <translation>{kind}: corregido desde que se escribió el archivo; queda como está aquí: mire cuál de los dos es correcto</translation>
    </message>
    <message>
        <source>as many more lines were corrected since and stay as they are here: {count}</source>
        <translation>otras tantas líneas se corrigieron desde entonces y quedan como están aquí: {count}</translation>
    </message>
    <message>
        <source>there is no material called {name} in the catalogue, so it is taken as your own; nearest there: {nearest}</source>
        <translation>no hay en el catálogo un material llamado {name}, así que cuenta como propio; el más parecido: {nearest}</translation>
    </message>
    <message>
        <source>comes in as {to}, the next free number: {id} here is another line</source>
        <translation>entra como {to}, el siguiente número libre: {id} es aquí otra línea</translation>
    </message>
    <message>
        <source>as many more lines come in under the next free numbers: {count}</source>
        <translation>otras tantas líneas entran con los siguientes números libres: {count}</translation>
    </message>
    <message>
        <source>how much room the bare roots take is not known, so the fill is for the whole pot; what is left goes back to stock</source>
        <translation>no se sabe cuánto espacio ocupan las raíces desnudas, así que el llenado es para toda la maceta; lo que sobre vuelve a existencias</translation>
    </message>
    <message>
        <source>a corner would have to be rounded off where nothing may come off; take a larger pot, or turn the tree</source>
        <translation>habría que redondear una esquina donde no se puede quitar nada; tome una maceta más grande o gire el árbol</translation>
    </message>
    <message>
        <source>to fit, {percent} % would have to come off in all; more than 70 % is never advised, not in stages either: take a larger pot</source>
        <translation>para que quepa habría que quitar en total un {percent} %; más del 70 % nunca se aconseja, tampoco por etapas: tome una maceta más grande</translation>
    </message>
    <message>
        <source>nothing is left to fill: root mass, trunk and stones take up all the pot; look at their lengths</source>
        <translation>no queda nada que llenar: cepellón, tronco y piedras ocupan toda la maceta; revise sus medidas</translation>
    </message>
    <message>
        <source>a shoulder would be steeper than 35 degrees between rim and root mass; sink the tree, or take a wider pot</source>
        <translation>un talud tendría más de 35 grados entre borde y cepellón; hunda el árbol o tome una maceta más ancha</translation>
    </message>
    <message>
        <source>after everything that may be done the root mass still sticks out {excess_cm} cm; take a larger pot</source>
        <translation>después de todo lo que se puede hacer, el cepellón aún sobresale {excess_cm} cm; tome una maceta más grande</translation>
    </message>
    <message>
        <source>the wall turns in: roots fill the belly, and later the tree comes out only by cutting; take a pot that opens upward if you can</source>
        <translation>la pared se mete hacia dentro: las raíces llenan la panza, y después el árbol solo sale cortando; si puede, tome una maceta que se abra hacia arriba</translation>
    </message>
    <message>
        <source>no tree is due by {until}; choose a later day to see the next</source>
        <translation>a ningún árbol le toca hasta {until}; elija un día posterior para ver el siguiente</translation>
    </message>
    <message>
        <source>the record was changed elsewhere meanwhile; look at it and type yours again</source>
        <translation>el registro se cambió entretanto en otra parte; mírelo y escriba de nuevo lo suyo</translation>
    </message>
    <message>
        <source>the record&apos;s file is damaged; restore the newest intact backup: what was written after it is only in the damaged file, which is kept</source>
        <translation>el archivo del registro está dañado; restaure la copia de seguridad íntegra más reciente: lo escrito después de ella está solo en el archivo dañado, que se conserva</translation>
    </message>
    <message>
        <source>{id} may be {text}; write the kind in front, like bag:K-07</source>
        <translation>{id} puede ser {text}; escriba el tipo delante, como bag:K-07</translation>
    </message>
    <message>
        <source>the lists disagree with the {kind} {id} itself, which is whole: draw them anew with gritwright log check --mend, nothing is lost</source>
        <translation>las listas no concuerdan con {kind} {id}, que está íntegro: rehágalas con gritwright log check --mend, no se pierde nada</translation>
    </message>
    <message>
        <source>another window has this record open and saves it in another way ({mode}); close that window and open the record again</source>
        <translation>otra ventana tiene abierto este registro y lo guarda de otro modo ({mode}); cierre esa ventana y vuelva a abrir el registro</translation>
    </message>
    <message>
        <source>there is no record yet; write the first line with gritwright log add, or open the window</source>
        <translation>aún no hay registro; escriba la primera línea con gritwright log add o abra la ventana</translation>
    </message>
    <message>
        <source>would be refused today: {fault}</source>
        <translation>hoy se rechazaría: {fault}</translation>
    </message>
    <message>
        <source>the {kind} {id} can&apos;t be read from the file; take it in from a backup, or write it anew</source>
        <translation>{kind} {id} no se puede leer del archivo; tómelo de una copia, o escríbalo de nuevo</translation>
    </message>
    <message>
        <source>the {kind} {id} was changed elsewhere meanwhile; look at it and type yours again</source>
        <translation>{kind} {id} se cambió entretanto en otra parte; mírelo y escriba de nuevo lo suyo</translation>
    </message>
    <message>
        <source>toward</source>
        <translation>hacia</translation>
    </message>
    <message>
        <source>sticks out</source>
        <translation>sobresale</translation>
    </message>
    <message>
        <source>untouched</source>
        <translation>intacto</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation>quitado</translation>
    </message>
    <message>
        <source>mix in the pot</source>
        <translation>mezcla en la maceta</translation>
    </message>
    <message>
        <source>the upper cut stops at</source>
        <translation>el corte superior se detiene a</translation>
    </message>
    <message>
        <source>then below</source>
        <translation>entonces debajo</translation>
    </message>
    <message>
        <source>trunk base</source>
        <translation>base del tronco</translation>
    </message>
    <message>
        <source>{stop} or more</source>
        <translation>{stop} o más</translation>
    </message>
    <message>
        <source>{volume_l} L is too little to mix or measure with; expected {least_l} L or more</source>
        <translation>{volume_l} L es demasiado poco para mezclar o medir; se espera {least_l} L o más</translation>
    </message>
    <message>
        <source>What lies on the shelf is counted by its dry mass and its litre weight, so that a bag can give more or fewer litres than are printed on it.</source>
        <translation>Lo que hay en el estante se cuenta por su masa seca y su peso por litro; por eso un saco puede dar más o menos litros de los impresos en él.</translation>
    </message>
    <message>
        <source>one and the same pot is planned for {trees}; choose another for all but one, unless you have several of it</source>
        <translation>una misma maceta está prevista para {trees}; elija otra para todos menos uno, salvo que tenga varias</translation>
    </message>
    <message>
        <source>the cut passes {depth_cm} cm under the base of the trunk, which would stand bare; take it from below, or enter how far the old top may be taken</source>
        <translation>el corte pasa {depth_cm} cm por debajo de la base del tronco, que quedaría al aire; quite por debajo, o indique hasta dónde puede quitarse la antigua cara superior</translation>
    </message>
    <message>
        <source>new mix for what comes off</source>
        <translation>mezcla nueva para lo que se quita</translation>
    </message>
    <message>
        <source>sum over components of share x price of a loose litre / (1 - shrinkage)</source>
        <translation>suma sobre los componentes de proporción x precio de un litro suelto / (1 - merma)</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>perdido</translation>
    </message>
    <message>
        <source>dry mass</source>
        <translation>masa seca</translation>
    </message>
    <message>
        <source>mean porosity of the grains</source>
        <translation>porosidad media de los granos</translation>
    </message>
    <message>
        <source>water the grains hold</source>
        <translation>agua que retienen los granos</translation>
    </message>
    <message>
        <source>open voids</source>
        <translation>huecos abiertos</translation>
    </message>
    <message>
        <source>volume of the mix</source>
        <translation>volumen de la mezcla</translation>
    </message>
    <message>
        <source>start</source>
        <translation>inicio</translation>
    </message>
    <message>
        <source>washed out</source>
        <translation>lavado</translation>
    </message>
    <message>
        <source>the rest</source>
        <translation>el resto</translation>
    </message>
    <message>
        <source>Plitt 1971, the form of the partition curve; s is a setting, no published value for sieving by hand was found</source>
        <translation>Plitt 1971, la forma de la curva de partición; s es un ajuste, no se halló valor publicado para el tamizado a mano</translation>
    </message>
    <message>
        <source>docs/science/packing.md, one class beta for the bag and its fractions</source>
        <translation>docs/science/packing.md, un beta de clase para el saco y sus fracciones</translation>
    </message>
    <message>
        <source>dry grain</source>
        <translation>grano seco</translation>
    </message>
    <message>
        <source>dry mass = share x dry grain; litres = loose litres per loose litre x dry grain / litre weight</source>
        <translation>masa seca = parte x grano seco; litros = litros sueltos por litro suelto x grano seco / peso del litro</translation>
    </message>
    <message>
        <source>every pair of openings and every single one; kept: the share between them; usable: what of the bag is kept and wanted; finer in it: what of the kept is finer than wanted; good enough: kept grain within the limits of the verdict</source>
        <translation>cada par de aberturas y cada una sola; queda: la parte entre ellas; aprovechable: lo que del saco se queda y se desea; más fino en ello: lo que de lo que se queda es más fino de lo deseado; vale: grano que se queda dentro de los límites del veredicto</translation>
    </message>
    <message>
        <source>passing at the coarse end of the wanted grain less what was lost, by mass</source>
        <translation>lo que pasa en el extremo grueso del grano deseado menos lo perdido, en masa</translation>
    </message>
    <message>
        <source>saucer</source>
        <translation>plato</translation>
    </message>
    <message>
        <source>wick</source>
        <translation>mecha</translation>
    </message>
    <message>
        <source>tilt</source>
        <translation>inclinación</translation>
    </message>
    <message>
        <source>docs/science/water.md; constants by pot tests, or as the mix gives them</source>
        <translation>docs/science/water.md; constantes por pruebas en maceta, o como las da la mezcla</translation>
    </message>
    <message>
        <source>flooded</source>
        <translation>inundada</translation>
    </message>
    <message>
        <source>drained</source>
        <translation>drenada</translation>
    </message>
    <message>
        <source>dry, with the pot</source>
        <translation>seca, con la maceta</translation>
    </message>
    <message>
        <source>empty pot</source>
        <translation>maceta vacía</translation>
    </message>
    <message>
        <source>poured</source>
        <translation>vertido</translation>
    </message>
    <message>
        <source>caught</source>
        <translation>recogido</translation>
    </message>
    <message>
        <source>water held, measured</source>
        <translation>agua retenida, medida</translation>
    </message>
    <message>
        <source>dry mass / volume</source>
        <translation>masa seca / volumen</translation>
    </message>
    <message>
        <source>a grain breaks lambda times a season by Poisson&apos;s law; what breaks off grain that stayed on L is finer than x with the share (x/L)^m; each season the mix is graded, packed and dosed anew, and its air is theta(0) - water held: the middle, 5 and 95 % of the cases drawn</source>
        <translation>un grano se rompe lambda veces por temporada según la ley de Poisson; lo que se desprende del grano que quedó en L es más fino que x en la proporción (x/L)^m; cada temporada se recalculan granulometría, empaquetamiento y dosificación de la mezcla, y su aire es theta(0) - agua retenida: el valor central, el 5 y el 95 % de los casos sorteados</translation>
    </message>
    <message>
        <source>docs/science/ageing.md; an estimate</source>
        <translation>docs/science/ageing.md; una estimación</translation>
    </message>
    <message>
        <source>taken not to break</source>
        <translation>se supone que no se rompe</translation>
    </message>
    <message>
        <source>limit of the hint</source>
        <translation>límite de la pista</translation>
    </message>
    <message>
        <source>mean of predicted - measured air over the tests, and the root of its mean square; predicted by the usual constants, so that no test foretells itself</source>
        <translation>media del aire previsto - medido en los ensayos, y raíz de su cuadrado medio; previsto con las constantes habituales, para que ningún ensayo se prediga a sí mismo</translation>
    </message>
    <message>
        <source>bags before, oldest first</source>
        <translation>sacos anteriores, el más antiguo primero</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>media</translation>
    </message>
    <message>
        <source>mean step</source>
        <translation>diferencia media</translation>
    </message>
    <message>
        <source>usual from</source>
        <translation>habitual desde</translation>
    </message>
    <message>
        <source>usual to</source>
        <translation>habitual hasta</translation>
    </message>
    <message>
        <source>NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2; docs/science/grading.md</source>
        <translation>NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2; docs/science/grading.md</translation>
    </message>
    <message>
        <source>air of the material alone, straight walls so deep; earlier bags in the grain of this one, so that only their gradings differ</source>
        <translation>aire del material solo, paredes rectas, con esa profundidad; los sacos anteriores con el grano de este, para que solo difieran sus granulometrías</translation>
    </message>
    <message>
        <source>new mix, of the pot</source>
        <translation>mezcla nueva, de la maceta</translation>
    </message>
    <message>
        <source>5 and 95 % of its lambda, as factors</source>
        <translation>5 y 95 % de su lambda, como factores</translation>
    </message>
    <message>
        <source>seasons</source>
        <translation>temporadas</translation>
    </message>
    <message>
        <source>the same, with what crumbled off finer than 1 mm at the floor: packed with .55 it clogs the share c of the mix, which then drains nothing; air is (1 - c) x the air of what stands above, as on a wick</source>
        <translation>lo mismo, con lo que se desprendió más fino que 1 mm en el fondo: empaquetado a 0,55 obstruye la parte c de la mezcla, que ya no drena nada; el aire es (1 - c) x el aire de lo que queda encima, como sobre una mecha</translation>
    </message>
    <message>
        <source>(theta_0 - water in the grains) / voids between grains, not over 1; of several tests their mean</source>
        <translation>(theta_0 - agua en los granos) / huecos entre granos, no más de 1; de varios ensayos, su media</translation>
    </message>
    <message>
        <source>passing of all samples: their mean by dry mass, equally where one was measured in litres; read linear in log10(size) where one lacked a sieve</source>
        <translation>pasante de todas las muestras: su media por masa seca, a partes iguales si una se midió en litros; leído linealmente en log10(tamaño) donde a una le faltaba un tamiz</translation>
    </message>
    <message>
        <source>usual: mean of the bags before, to either side 2.66 x the mean step from one to the next, not below 0; a jump: a step beyond 3.267 x the mean step</source>
        <translation>habitual: media de los sacos anteriores, a cada lado 2,66 x la diferencia media de uno al siguiente, no menos de 0; un salto: una diferencia de más de 3,267 x la diferencia media</translation>
    </message>
    <message>
        <source>figure</source>
        <translation>magnitud</translation>
    </message>
    <message>
        <source>largest usual step</source>
        <translation>mayor diferencia habitual</translation>
    </message>
    <message>
        <source>finer than wanted</source>
        <translation>más fino de lo deseado</translation>
    </message>
    <message>
        <source>air, 6 cm deep</source>
        <translation>aire, 6 cm de profundidad</translation>
    </message>
    <message>
        <source>new mix only: the pot&apos;s area at each height less that of the kept root mass</source>
        <translation>solo la mezcla nueva: el área de la maceta a cada altura menos la del cepellón conservado</translation>
    </message>
    <message>
        <source>theta(0) - water held, by the usual constants, so that no test foretells itself</source>
        <translation>theta(0) - agua retenida, con las constantes habituales, para que ningún ensayo se prediga a sí mismo</translation>
    </message>
    <message>
        <source>packing density of the bag</source>
        <translation>densidad de empaquetamiento del saco</translation>
    </message>
    <message>
        <source>packing density of what is kept</source>
        <translation>densidad de empaquetamiento de lo que se queda</translation>
    </message>
    <message>
        <source>{mass_g} g lay on the {aperture_mm} mm sieve, which sieves well up to {limit_g} g; sieve in {goes} goes</source>
        <translation>había {mass_g} g en el tamiz de {aperture_mm} mm, que tamiza bien hasta {limit_g} g; tamizar en {goes} veces</translation>
    </message>
</context>
</TS>
