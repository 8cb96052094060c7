<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="ja" sourcelanguage="en">
<context>
    <name>Ageing</name>
    <message numerus="yes">
        <source>Likely not below %1 air within %n season(s).</source>
        <translation>
            <numerusform>%n シーズン以内に空気が %1 を下回ることはおそらくありません。</numerusform>
        </translation>
    </message>
    <message>
        <source>Likely below %1 air in season %2: a hint for the next repotting, an estimate.</source>
        <translation>%2 シーズン目に空気が %1 を下回る見込み：次の植え替えの目安（推定）。</translation>
    </message>
    <message>
        <source>Likely below %1 air in season %2 if the crumbs stay: a hint for the next repotting, an estimate.</source>
        <translation>崩れた細粒が残る場合、%2 シーズン目に空気が %1 を下回る見込み：次の植え替えの目安（推定）。</translation>
    </message>
    <message>
        <source>Likely below %1 air in season %2 if the crumbs wash down: a hint for the next repotting, an estimate.</source>
        <translation>崩れた細粒が流れ落ちる場合、%2 シーズン目に空気が %1 を下回る見込み：次の植え替えの目安（推定）。</translation>
    </message>
    <message>
        <source>The years to come need a mix with known grain densities and a pot.</source>
        <translation>先の年には、粒子密度のわかる配合と鉢が必要です。</translation>
    </message>
    <message>
        <source>The years to come are being worked out.</source>
        <translation>先の年を計算しています。</translation>
    </message>
    <message>
        <source>Air in this pot, the middle of the cases: %1 when new; after %2 seasons %3 (%4) if the crumbs stay, %5 (%6) if they wash down. %7</source>
        <translation>この鉢の空気（場合の中央値）：新しいとき %1、%2 シーズン後は細粒が残れば %3（%4）、流れ落ちれば %5（%6）。%7</translation>
    </message>
    <message>
        <source>By your own crumble test: %1.</source>
        <translation>ご自身の崩れ試験による：%1。</translation>
    </message>
    <message>
        <source>By the catalogue’s typical durability: %1.</source>
        <translation>目録の代表的な持ちによる：%1。</translation>
    </message>
    <message>
        <source>season</source>
        <translation>シーズン</translation>
    </message>
    <message>
        <source>air, crumbs stay</source>
        <translation>空気、細粒が残る</translation>
    </message>
    <message>
        <source>90 of 100 cases</source>
        <translation>100 例中 90 例</translation>
    </message>
    <message>
        <source>air, crumbs wash down</source>
        <translation>空気、細粒が流れ落ちる</translation>
    </message>
    <message>
        <source>finer than %1</source>
        <translation>%1 より細かい粒</translation>
    </message>
    <message>
        <source>new</source>
        <translation>新規</translation>
    </message>
    <message>
        <source>The new mix already has less than %1 air in this pot; a coarser mix or a deeper pot has more.</source>
        <translation>新しい用土の時点で、この鉢の空気は %1 未満です。より粗い用土か深い鉢なら増えます。</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1。</translation>
    </message>
</context>
<context>
    <name>Application</name>
    <message>
        <source>Grading, mixes and pots for trees in shallow containers</source>
        <translation>浅い鉢で育てる木のための粒度・配合・鉢</translation>
    </message>
    <message>
        <source>Open the demonstration.</source>
        <translation>デモを開く。</translation>
    </message>
    <message>
        <source>Write pictures of the window to DIR and end.</source>
        <translation>ウィンドウの画像を DIR に書き出して終了する。</translation>
    </message>
    <message>
        <source>With --shots: also high contrast, other window and text sizes.</source>
        <translation>--shots とともに: ハイコントラスト、別のウィンドウサイズと文字サイズも。</translation>
    </message>
    <message>
        <source>The record to open instead of the usual one.</source>
        <translation>いつもの記録の代わりに開く記録。</translation>
    </message>
    <message>
        <source>Language of the window: de, en, es, fr or ja.</source>
        <translation>ウィンドウの言語：de、en、es、fr、ja。</translation>
    </message>
    <message>
        <source>A record to open instead of the usual one, or sieve tests.</source>
        <translation>いつもの記録の代わりに開く記録、またはふるい試験。</translation>
    </message>
    <message>
        <source>What lies on the bench could not be saved: look whether the disk is full.</source>
        <translation>作業台の内容を保存できませんでした。ディスクの空きを確かめてください。</translation>
    </message>
</context>
<context>
    <name>BagMaterial</name>
    <message>
        <source>material of bag %1</source>
        <translation>袋 %1 の資材</translation>
    </message>
</context>
<context>
    <name>BenchState</name>
    <message>
        <source>Component %1</source>
        <translation>配合材 %1</translation>
    </message>
    <message>
        <source>Predicted, in percent of the mass; nothing is weighed yet. Sieve it and type what stays on each sieve: then it can be kept and printed as a test.</source>
        <translation>質量の百分率による予測です。まだ何も量っていません。ふるい分けて各ふるいに残った質量を入力すると、ふるい試験として保存・印刷できます。</translation>
    </message>
</context>
<context>
    <name>Comparison</name>
    <message>
        <source>Nothing to compare yet: keep a mix, or finish the one on the bench.</source>
        <translation>比べるものがまだありません。配合を保存するか、作業台の配合を仕上げてください。</translation>
    </message>
    <message>
        <source>%1 holds %2 air and %3 water</source>
        <translation>%1：空気 %2、水 %3</translation>
    </message>
    <message>
        <source>%1 without a pot</source>
        <translation>%1（鉢なし）</translation>
    </message>
    <message>
        <source>In one pot, %1 deep: %2.</source>
        <translation>同じ鉢（深さ %1）で：%2。</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>配合</translation>
    </message>
    <message>
        <source>air</source>
        <translation>空気</translation>
    </message>
    <message>
        <source>water</source>
        <translation>水</translation>
    </message>
    <message>
        <source>finer</source>
        <translation>微塵</translation>
    </message>
    <message>
        <source>litre weight</source>
        <translation>容積重</translation>
    </message>
    <message>
        <source>D50</source>
        <translation>D50</translation>
    </message>
    <message>
        <source>90 of 100</source>
        <translation>90/100</translation>
    </message>
    <message>
        <source>%1 (by pot test %2)</source>
        <translation>%1（鉢試験 %2 による）</translation>
    </message>
    <message>
        <source>%1 (leaning on pot test %2)</source>
        <translation>%1（鉢試験 %2 に一部基づく）</translation>
    </message>
    <message>
        <source>plants can take</source>
        <translation>植物が使える</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>希望</translation>
    </message>
    <message>
        <source>pot tests</source>
        <translation>鉢試験</translation>
    </message>
    <message>
        <source>leaning on %1</source>
        <translation>%1 に一部基づく</translation>
    </message>
</context>
<context>
    <name>DayCertainty</name>
    <message>
        <source>from</source>
        <translation>開始</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>中央</translation>
    </message>
    <message>
        <source>to</source>
        <translation>上限</translation>
    </message>
    <message>
        <source>mix or loose grain</source>
        <translation>配合または粒</translation>
    </message>
    <message>
        <source>mix %1</source>
        <translation>配合 %1</translation>
    </message>
    <message>
        <source>How sure are the litres? 90 of 100 cases</source>
        <translation>L の確かさは？（100 例中 90 例）</translation>
    </message>
    <message>
        <source>How sure is that? 90 of 100 cases</source>
        <translation>どのくらい確か？（100 例中 90 例）</translation>
    </message>
    <message>
        <source>to buy</source>
        <translation>購入</translation>
    </message>
    <message>
        <source>bags of %1</source>
        <translation>%1 の袋数</translation>
    </message>
    <message>
        <source>litres of %1</source>
        <translation>%1 の L</translation>
    </message>
    <message>
        <source>%1 may run short: in %2 of 100 cases.</source>
        <translation>%1 が足りない可能性：100 例中 %2 例。</translation>
    </message>
</context>
<context>
    <name>DayGround</name>
    <message>
        <source>is no longer in the record: take it off</source>
        <translation>もう記録にありません。外してください</translation>
    </message>
    <message>
        <source>has no mix yet: choose one</source>
        <translation>まだ配合がありません。選んでください</translation>
    </message>
    <message>
        <source>has neither a pot nor planned litres: give one of them</source>
        <translation>鉢も予定量（L）もありません。どちらかを与えてください</translation>
    </message>
    <message>
        <source>has a mix that can&apos;t be found: choose another</source>
        <translation>配合が見つかりません。別の配合を選んでください</translation>
    </message>
</context>
<context>
    <name>DayTicking</name>
    <message>
        <source>Repotted %1 with %2 of %3</source>
        <translation>%1 を %3 %2 で植え替え</translation>
    </message>
    <message>
        <source>, into %1</source>
        <translation>、鉢 %1</translation>
    </message>
    <message>
        <source>, plan %1</source>
        <translation>、計画 %1</translation>
    </message>
    <message>
        <source>ticked off %1</source>
        <translation>%1 を済みにする</translation>
    </message>
    <message>
        <source>Took the tick of %1 back</source>
        <translation>%1 の済みを取り消し</translation>
    </message>
    <message>
        <source>tick of %1 taken back</source>
        <translation>%1 の済みの取り消し</translation>
    </message>
    <message>
        <source>Made %1 of %2, %3 left over, kept as %4</source>
        <translation>%2 を %1 作り、残り %3 を %4 として保管</translation>
    </message>
    <message>
        <source>Corrected: %1</source>
        <translation>訂正：%1</translation>
    </message>
    <message>
        <source>tick of %1 corrected</source>
        <translation>%1 の済みの訂正</translation>
    </message>
    <message>
        <source>day of repotting day %1</source>
        <translation>植え替え日 %1 の日付</translation>
    </message>
    <message>
        <source>What was done on %1 was done on %2</source>
        <translation>%1 に行ったとした作業は %2 に行った</translation>
    </message>
    <message>
        <source>leftover of %1</source>
        <translation>%1 の残り</translation>
    </message>
</context>
<context>
    <name>Demonstration</name>
    <message>
        <source>demonstration</source>
        <translation>デモ</translation>
    </message>
</context>
<context>
    <name>Figures</name>
    <message>
        <source>see the marked fields</source>
        <translation>印の付いた欄を見てください</translation>
    </message>
    <message>
        <source>see the marked fields of the pot</source>
        <translation>鉢の印の付いた欄を見てください</translation>
    </message>
    <message>
        <source>Grain of the mix</source>
        <translation>配合の粒度</translation>
    </message>
    <message>
        <source>D50, half is finer</source>
        <translation>D50（半分がこれより細かい）</translation>
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
        <translation>範囲より細かい</translation>
    </message>
    <message>
        <source>Mix, worked in</source>
        <translation>用土、突き込み後</translation>
    </message>
    <message>
        <source>Swells on mixing by</source>
        <translation>混合による膨らみ</translation>
    </message>
    <message>
        <source>Shrinks on mixing by</source>
        <translation>混合による目減り</translation>
    </message>
    <message>
        <source>Litre weight, dry</source>
        <translation>容積重、乾燥</translation>
    </message>
    <message>
        <source>Voids between grains</source>
        <translation>粒間孔隙</translation>
    </message>
    <message>
        <source>Voids in grains</source>
        <translation>粒内孔隙</translation>
    </message>
    <message>
        <source>Total porosity</source>
        <translation>全孔隙率</translation>
    </message>
    <message>
        <source>Water in grains</source>
        <translation>粒内の水</translation>
    </message>
    <message>
        <source>Exchange capacity</source>
        <translation>陽イオン交換容量</translation>
    </message>
    <message>
        <source>unknown for a component</source>
        <translation>不明な配合材があります</translation>
    </message>
    <message>
        <source>In this pot, %1 deep</source>
        <translation>この鉢で（深さ %1）</translation>
    </message>
    <message>
        <source>In the pot</source>
        <translation>鉢の中</translation>
    </message>
    <message>
        <source>Air that drains free</source>
        <translation>排水後の気相率</translation>
    </message>
    <message>
        <source>Water held</source>
        <translation>保水率</translation>
    </message>
    <message>
        <source>Water plants can take</source>
        <translation>有効水分</translation>
    </message>
    <message>
        <source>Trapped air, apart</source>
        <translation>封入空気（別計）</translation>
    </message>
    <message>
        <source>Wet zone, height</source>
        <translation>滞水層の高さ</translation>
    </message>
    <message>
        <source>Volume to the fill line</source>
        <translation>充填線までの容積</translation>
    </message>
    <message>
        <source>Mix, wet</source>
        <translation>用土、湿潤時</translation>
    </message>
    <message>
        <source>To measure out for one pot</source>
        <translation>一鉢分の計量</translation>
    </message>
    <message>
        <source>Mixed, before filling</source>
        <translation>混合後、充填前</translation>
    </message>
    <message>
        <source>Not computed: %1.</source>
        <translation>計算していません：%1。</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>出典：%1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1～%2</translation>
    </message>
    <message>
        <source>%1 parts at %2</source>
        <translation>%1 部、%2</translation>
    </message>
    <message>
        <source>beta of %1</source>
        <translation>%1 の β</translation>
    </message>
    <message>
        <source>%1 typical</source>
        <translation>%1（代表値）</translation>
    </message>
    <message>
        <source>%1: put its marked fields right</source>
        <translation>%1：印の付いた欄を直してください</translation>
    </message>
    <message>
        <source>%1: finish its sieve test</source>
        <translation>%1：ふるい試験を終えてください</translation>
    </message>
    <message>
        <source>%1: weigh a litre of it</source>
        <translation>%1：1 L を量ってください</translation>
    </message>
    <message>
        <source>give a component parts</source>
        <translation>配合材に配合比を与えてください</translation>
    </message>
    <message>
        <source>type the pot&apos;s lengths</source>
        <translation>鉢の寸法を入力してください</translation>
    </message>
    <message>
        <source>measure the grain density of each component</source>
        <translation>すべての配合材の粒子密度を測ってください</translation>
    </message>
    <message>
        <source>type the wanted grain</source>
        <translation>希望粒径を入力してください</translation>
    </message>
    <message>
        <source>outside the sieves used; a wider set would tell</source>
        <translation>使った篩の範囲外です。より広い組なら分かります</translation>
    </message>
    <message>
        <source>Wanted grain, by mass</source>
        <translation>望む粒（質量比）</translation>
    </message>
    <message>
        <source>saucer %1</source>
        <translation>受け皿 %1</translation>
    </message>
    <message>
        <source>wick %1</source>
        <translation>灯芯 %1</translation>
    </message>
    <message>
        <source>tilted %1°</source>
        <translation>傾き %1°</translation>
    </message>
    <message>
        <source>share of %1</source>
        <translation>%1 の割合</translation>
    </message>
    <message>
        <source>Price of a mixed litre</source>
        <translation>混合 1 L の価格</translation>
    </message>
    <message>
        <source>a component has no price, or they are in several currencies; only bags have one</source>
        <translation>価格のない配合材があるか、通貨がそろっていません。価格があるのは袋だけです</translation>
    </message>
    <message>
        <source>passing at %1</source>
        <translation>%1 の通過分</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>%1 超</translation>
    </message>
    <message>
        <source>Sum and loss</source>
        <translation>合計と損失</translation>
    </message>
    <message>
        <source>stayed on %1</source>
        <translation>%1 に残った量</translation>
    </message>
    <message>
        <source>packing density of %1</source>
        <translation>%1 の充填率</translation>
    </message>
</context>
<context>
    <name>FindParts</name>
    <message>
        <source>the pot&apos;s lengths</source>
        <translation>鉢の寸法</translation>
    </message>
    <message>
        <source>the wanted grain</source>
        <translation>希望粒径</translation>
    </message>
    <message>
        <source>a group of trees, or a wish</source>
        <translation>樹種グループか希望条件</translation>
    </message>
    <message>
        <source>an unknown amount, because the figure is not defined</source>
        <translation>不明（この値は定義できません）</translation>
    </message>
    <message>
        <source>%1 meq/L</source>
        <translation>%1 meq/L</translation>
    </message>
    <message>
        <source>%1 a litre</source>
        <translation>1 L あたり %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1～%2</translation>
    </message>
    <message>
        <source>finer than %1</source>
        <translation>%1 より細かい粒</translation>
    </message>
    <message>
        <source>share of %1</source>
        <translation>%1 の割合</translation>
    </message>
    <message numerus="yes">
        <source>curve within its limits at %n size(s)</source>
        <translation>
            <numerusform>%n 粒径で曲線が範囲内</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>curve near its %n point(s)</source>
        <translation>
            <numerusform>%n 点に近い曲線</numerusform>
        </translation>
    </message>
    <message>
        <source>exchange capacity</source>
        <translation>陽イオン交換容量</translation>
    </message>
    <message>
        <source>price</source>
        <translation>価格</translation>
    </message>
    <message>
        <source>air</source>
        <translation>空気</translation>
    </message>
    <message>
        <source>water</source>
        <translation>水</translation>
    </message>
    <message>
        <source>wet litre weight</source>
        <translation>湿潤時の容積重</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1（%2）</translation>
    </message>
    <message>
        <source>Cannot be had: %1.</source>
        <translation>実現できません：%1。</translation>
    </message>
    <message>
        <source>Cannot be had together: %1.</source>
        <translation>同時には実現できません：%1。</translation>
    </message>
    <message>
        <source>The search was stopped: these are the best so far, not proven.</source>
        <translation>検索を止めました。これまでの最良ですが、証明はされていません。</translation>
    </message>
    <message>
        <source>Free shares are improved from fixed starts: a better recipe may exist.</source>
        <translation>自由な割合は決まった出発点から改良します。もっと良いレシピがあるかもしれません。</translation>
    </message>
    <message>
        <source>%1 recipes worked out, %2 excluded by bounds</source>
        <translation>%1 件を計算、%2 件を限界値で除外</translation>
    </message>
    <message>
        <source>Proven best: %1.</source>
        <translation>最良と証明済み：%1。</translation>
    </message>
    <message>
        <source>Not proven best: %1; the best score may be lower by up to %2.</source>
        <translation>最良とは証明されていません：%1。最良の評点は最大 %2 低い可能性があります。</translation>
    </message>
    <message>
        <source>%1; no recipe scores less.</source>
        <translation>%1。これより低い評点のレシピはありません。</translation>
    </message>
    <message>
        <source>Not proven best: %1.</source>
        <translation>最良とは証明されていません：%1。</translation>
    </message>
    <message>
        <source>%1 between %2 and %3</source>
        <translation>%1 %2～%3</translation>
    </message>
    <message>
        <source>%1 at least %2</source>
        <translation>%1 %2 以上</translation>
    </message>
    <message>
        <source>%1 at most %2</source>
        <translation>%1 %2 以下</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>parts, name</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>rank</source>
        <translation>順位</translation>
    </message>
    <message>
        <source>parts</source>
        <translation>配合比</translation>
    </message>
    <message>
        <source>misses</source>
        <translation>外れ</translation>
    </message>
    <message>
        <source>price/L</source>
        <translation>価格/L</translation>
    </message>
    <message>
        <source>score</source>
        <translation>評点</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>nearest</source>
        <translation>最も近い</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>なし</translation>
    </message>
    <message>
        <source>Misses “%1” by %2.</source>
        <translation>「%1」から %2 外れています。</translation>
    </message>
    <message>
        <source>Held back by, right at the limit: %1.</source>
        <translation>ちょうど限界にある条件：%1。</translation>
    </message>
    <message>
        <source>Uses up %1.</source>
        <translation>%1 を使い切ります。</translation>
    </message>
    <message>
        <source>%1 is not sieved yet: its printed size stands in for its curve.</source>
        <translation>%1 はまだふるっていません。表示粒径を曲線の代わりに使います。</translation>
    </message>
    <message>
        <source>Holds every wish with room to spare.</source>
        <translation>すべての希望条件を余裕をもって満たします。</translation>
    </message>
    <message>
        <source>The chosen recipe</source>
        <translation>選んだレシピ</translation>
    </message>
    <message>
        <source>Air that drains free</source>
        <translation>排水後の気相率</translation>
    </message>
    <message>
        <source>Water held</source>
        <translation>保水率</translation>
    </message>
    <message>
        <source>Water plants can take</source>
        <translation>有効水分</translation>
    </message>
    <message>
        <source>Litre weight, dry</source>
        <translation>容積重、乾燥</translation>
    </message>
    <message>
        <source>Shrinks on mixing by</source>
        <translation>混合による目減り</translation>
    </message>
    <message>
        <source>Exchange capacity</source>
        <translation>陽イオン交換容量</translation>
    </message>
    <message>
        <source>unknown for a component</source>
        <translation>不明な配合材があります</translation>
    </message>
    <message>
        <source>Price of a mixed litre</source>
        <translation>混合 1 L の価格</translation>
    </message>
    <message>
        <source>Score, 0 is best</source>
        <translation>評点（0 が最良）</translation>
    </message>
    <message>
        <source>No recipe holds every wish that must hold.</source>
        <translation>必須の条件をすべて満たすレシピはありません。</translation>
    </message>
    <message>
        <source>No recipe was found that holds every wish that must hold.</source>
        <translation>必須の条件をすべて満たすレシピは見つかりませんでした。</translation>
    </message>
    <message>
        <source>The nearest that can be had is listed.</source>
        <translation>実現できる最も近いものを示します。</translation>
    </message>
    <message>
        <source>Another recipe comes first with “%1” %2 stricter or %3 looser.</source>
        <translation>「%1」を %2 厳しくするか %3 緩めると、別のレシピが 1 位になります。</translation>
    </message>
    <message>
        <source>Another recipe comes first with “%1” %2 stricter.</source>
        <translation>「%1」を %2 厳しくすると、別のレシピが 1 位になります。</translation>
    </message>
    <message>
        <source>Another recipe comes first with “%1” %2 looser.</source>
        <translation>「%1」を %2 緩めると、別のレシピが 1 位になります。</translation>
    </message>
    <message>
        <source>Whole parts instead of free shares cost %1 of score.</source>
        <translation>自由な割合でなく整数比にすると、評点が %1 悪くなります。</translation>
    </message>
    <message>
        <source>Trade-offs come with the first search: find parts for a pot.</source>
        <translation>兼ね合いは最初の検索で出ます。鉢を決めて配合比を探してください。</translation>
    </message>
    <message numerus="yes">
        <source>Air against water: from %1 air with %2 water to %3 air with %4 water; nothing found beats these %n recipe(s) in both.</source>
        <translation>
            <numerusform>空気と水の兼ね合い：空気 %1・水 %2 から空気 %3・水 %4 まで。両方でこの %n 件を上回るものはありません。</numerusform>
        </translation>
    </message>
    <message>
        <source>Price against fit: from %1 a litre with score %2 to %3 a litre with score %4.</source>
        <translation>価格と適合の兼ね合い：1 L %1・評点 %2 から 1 L %3・評点 %4 まで。</translation>
    </message>
    <message>
        <source>trade-off</source>
        <translation>兼ね合い</translation>
    </message>
    <message>
        <source>air or price</source>
        <translation>空気または価格</translation>
    </message>
    <message>
        <source>water or score</source>
        <translation>水または評点</translation>
    </message>
    <message>
        <source>air, water</source>
        <translation>空気、水</translation>
    </message>
    <message>
        <source>price, fit</source>
        <translation>価格、適合</translation>
    </message>
    <message>
        <source>Air in %1</source>
        <translation>%1 の空気</translation>
    </message>
    <message>
        <source>Water in %1</source>
        <translation>%1 の水</translation>
    </message>
    <message>
        <source>Proven: %1.</source>
        <translation>証明済み：%1。</translation>
    </message>
    <message>
        <source>choose a pot, and measure each grain density</source>
        <translation>鉢を選び、粒子密度をすべて測ってください</translation>
    </message>
    <message>
        <source>measure each grain density</source>
        <translation>粒子密度をすべて測ってください</translation>
    </message>
    <message>
        <source>type each price</source>
        <translation>価格をすべて入力してください</translation>
    </message>
    <message>
        <source>This search has no trade-off to show: choose a pot or type prices, then search again.</source>
        <translation>この検索には示せる兼ね合いがありません。鉢を選ぶか価格を入力し、もう一度検索してください。</translation>
    </message>
    <message>
        <source>less than %1 points</source>
        <translation>%1 ポイント未満</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 ポイント</translation>
    </message>
    <message>
        <source>water plants can take</source>
        <translation>植物が使える水</translation>
    </message>
    <message>
        <source>The best recipe is far from “%1” and misses it by %2: screen a bag to it, take in other grain, or loosen the wish.</source>
        <translation>最良のレシピでも「%1」から遠く、%2 外れます。袋をふるい分けるか、ほかの粒を受け入れるか、希望条件を緩めてください。</translation>
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
        <translation>%1（途中）</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>希望</translation>
    </message>
    <message>
        <source>percent passing</source>
        <translation>通過百分率</translation>
    </message>
    <message>
        <source>sieve opening, mm</source>
        <translation>ふるいの目開き、mm</translation>
    </message>
    <message>
        <source>%1, sample 1</source>
        <translation>%1、試料 1</translation>
    </message>
    <message>
        <source>%1, sample %2</source>
        <translation>%1、試料 %2</translation>
    </message>
    <message>
        <source>the mix</source>
        <translation>配合</translation>
    </message>
    <message>
        <source>half of %1 is finer than %2</source>
        <translation>%1 の半分は %2 より細かい</translation>
    </message>
    <message>
        <source>%1 has no middle size inside its sieves</source>
        <translation>%1 の中央粒径はふるいの範囲にありません</translation>
    </message>
    <message>
        <source>Grading chart, still empty: no sieve test has a curve yet.</source>
        <translation>粒度曲線はまだ空です。曲線のあるふるい試験がありません。</translation>
    </message>
    <message>
        <source>Grading chart, percent passing over grain size: %1.</source>
        <translation>粒度曲線、粒径に対する通過百分率：%1。</translation>
    </message>
    <message numerus="yes">
        <source>%n faint curve(s) of single samples and earlier bags lie behind.</source>
        <translation>
            <numerusform>背後に、個々の試料と以前の袋の薄い曲線が %n 本あります。</numerusform>
        </translation>
    </message>
    <message>
        <source>sieve</source>
        <translation>ふるい</translation>
    </message>
    <message>
        <source>each sample</source>
        <translation>各試料</translation>
    </message>
    <message>
        <source>earlier bags</source>
        <translation>以前の袋</translation>
    </message>
</context>
<context>
    <name>GrainTrace</name>
    <message>
        <source>yes</source>
        <translation>はい</translation>
    </message>
    <message>
        <source>may</source>
        <translation>可能性あり</translation>
    </message>
    <message>
        <source>stands in it</source>
        <translation>植わっている</translation>
    </message>
    <message>
        <source>some may remain</source>
        <translation>残っている可能性</translation>
    </message>
    <message>
        <source>stood in it</source>
        <translation>植わっていた</translation>
    </message>
    <message>
        <source>screened</source>
        <translation>ふるい分け</translation>
    </message>
    <message>
        <source>tipped in</source>
        <translation>投入</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>混合</translation>
    </message>
    <message>
        <source>potted</source>
        <translation>植え付け</translation>
    </message>
    <message>
        <source>left in the pot</source>
        <translation>鉢に残存</translation>
    </message>
    <message>
        <source>by design</source>
        <translation>配合設計</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>回収</translation>
    </message>
    <message>
        <source>used</source>
        <translation>使用</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>ロット</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>配合</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>深さ</translation>
    </message>
    <message>
        <source>day of repotting</source>
        <translation>植え替えた日</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>計画</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 / %2</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>木</translation>
    </message>
    <message>
        <source>thriving</source>
        <translation>元気</translation>
    </message>
    <message>
        <source>watch</source>
        <translation>要観察</translation>
    </message>
    <message>
        <source>sick</source>
        <translation>衰弱</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>枯死</translation>
    </message>
    <message>
        <source>name</source>
        <translation>名前</translation>
    </message>
    <message>
        <source>how</source>
        <translation>関係</translation>
    </message>
    <message>
        <source>condition</source>
        <translation>状態</translation>
    </message>
    <message>
        <source>until</source>
        <translation>終わり</translation>
    </message>
    <message>
        <source>contains it</source>
        <translation>含む</translation>
    </message>
    <message>
        <source>way</source>
        <translation>経路</translation>
    </message>
    <message>
        <source>what</source>
        <translation>項目</translation>
    </message>
    <message>
        <source>since</source>
        <translation>始まり</translation>
    </message>
    <message>
        <source>left, dry</source>
        <translation>残り、乾燥</translation>
    </message>
    <message>
        <source>%1: no tree stands in it, as far as it was written down.</source>
        <translation>%1：記録の限り、植わっている木はありません。</translation>
    </message>
    <message numerus="yes">
        <source>%n tree(s) stand in it</source>
        <translation>
            <numerusform>%n 本が植わっています</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>in %n repotted since some may remain</source>
        <translation>
            <numerusform>その後植え替えた %n 本に残っている可能性</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n stood in it once</source>
        <translation>
            <numerusform>以前 %n 本が植わっていました</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1：%2。</translation>
    </message>
    <message>
        <source>title</source>
        <translation>名称</translation>
    </message>
    <message>
        <source>by</source>
        <translation>経路</translation>
    </message>
    <message>
        <source>day</source>
        <translation>日付</translation>
    </message>
    <message>
        <source>%1: no bag is known to be in its soil.</source>
        <translation>%1：用土に入っている袋は記録にありません。</translation>
    </message>
    <message numerus="yes">
        <source>%1: the grain of %n bag(s) is or may be in its soil.</source>
        <translation>
            <numerusform>%1：%n 袋の粒が用土に入っているか、その可能性があります。</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1（%2）</translation>
    </message>
    <message>
        <source>which</source>
        <translation>どれ</translation>
    </message>
    <message>
        <source>these trees</source>
        <translation>これらの木</translation>
    </message>
    <message>
        <source>all others</source>
        <translation>他の木</translation>
    </message>
    <message>
        <source>%1, %2 of them may</source>
        <translation>%1（うち可能性 %2）</translation>
    </message>
    <message>
        <source>Few trees prove nothing: what they share may be chance.</source>
        <translation>少ない本数では何も証明できません。共通点は偶然かもしれません。</translation>
    </message>
    <message>
        <source>the drain hole: is it open?</source>
        <translation>排水穴：ふさがっていないか？</translation>
    </message>
    <message>
        <source>the trunk: is it buried, or stands it too deep?</source>
        <translation>幹：埋まっていないか、深植えでないか？</translation>
    </message>
    <message>
        <source>the tie: is it loose, does the tree rock?</source>
        <translation>固定：緩んでいないか、木がぐらつかないか？</translation>
    </message>
    <message>
        <source>the smell of the root mass: is it sour?</source>
        <translation>根鉢のにおい：酸っぱくないか？</translation>
    </message>
    <message>
        <source>the watering: who, how often, and did it run through?</source>
        <translation>潅水：だれが、どのくらいの頻度で、底まで抜けたか？</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>鉢</translation>
    </message>
    <message>
        <source>no.</source>
        <translation>番号</translation>
    </message>
    <message>
        <source>%1 (removed)</source>
        <translation>%1（削除済み）</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation>落とす</translation>
    </message>
    <message>
        <source>shared</source>
        <translation>共通点</translation>
    </message>
    <message>
        <source>There is nothing called %1: look at its number.</source>
        <translation>%1 というものはありません。番号を確かめてください。</translation>
    </message>
    <message>
        <source>Several bags are of lot %1: type the number of one of %2.</source>
        <translation>ロット %1 の袋は複数あります：%2 のどれかの番号を入力してください。</translation>
    </message>
</context>
<context>
    <name>JumpTargets</name>
    <message>
        <source>component %1</source>
        <translation>配合材 %1</translation>
    </message>
</context>
<context>
    <name>Lots</name>
    <message>
        <source>finer than wanted</source>
        <translation>希望より細かい</translation>
    </message>
    <message>
        <source>D50</source>
        <translation>D50</translation>
    </message>
    <message>
        <source>usable of a litre</source>
        <translation>1 L 中の使える量</translation>
    </message>
    <message>
        <source>air, 6 cm deep</source>
        <translation>気相率、深さ 6 cm</translation>
    </message>
    <message numerus="yes">
        <source>Unusual for the material: %1 is %2; over %n earlier bag(s) it lay between %3 and %4.</source>
        <translation>
            <numerusform>この資材としては異例です：%1 が %2。以前の %n 袋では %3～%4 でした。</numerusform>
        </translation>
    </message>
    <message>
        <source>A jump from the bag before: %1 is %2; bags of this material seldom differ so much from one to the next.</source>
        <translation>前の袋からの急な変化：%1 が %2。この資材の袋が続けてこれほど違うことはまれです。</translation>
    </message>
    <message>
        <source>In mix %1 it would turn air from %2 into %3 and water from %4 into %5.</source>
        <translation>配合 %1 では、空気が %2 から %3 に、水が %4 から %5 に変わります。</translation>
    </message>
</context>
<context>
    <name>PotLabels</name>
    <message>
        <source>page %1</source>
        <translation>%1 ページ</translation>
    </message>
</context>
<context>
    <name>PotSection</name>
    <message>
        <source>grain</source>
        <translation>粒</translation>
    </message>
    <message>
        <source>water</source>
        <translation>水</translation>
    </message>
    <message>
        <source>trapped air</source>
        <translation>封入空気</translation>
    </message>
    <message>
        <source>air that drains free</source>
        <translation>排水後の気相率</translation>
    </message>
</context>
<context>
    <name>PrintedPages</name>
    <message>
        <source>page %1 of %2</source>
        <translation>%1 / %2 ページ</translation>
    </message>
</context>
<context>
    <name>Protocols</name>
    <message>
        <source>what it needs was not measured</source>
        <translation>必要なものが測定されていません</translation>
    </message>
    <message>
        <source>Air that drained in</source>
        <translation>排水で入った空気</translation>
    </message>
    <message>
        <source>Predicted before any test</source>
        <translation>試験前の予測</translation>
    </message>
    <message>
        <source>Water that stayed</source>
        <translation>残った水</translation>
    </message>
    <message>
        <source>Filled when flooded</source>
        <translation>湛水時に満ちた割合</translation>
    </message>
    <message>
        <source>Weight of a litre in the pot, dry</source>
        <translation>鉢の中の 1 L の重さ、乾燥</translation>
    </message>
    <message>
        <source>the water that stayed was not measured</source>
        <translation>残った水が測定されていません</translation>
    </message>
    <message>
        <source>Fitted k, cm mm</source>
        <translation>当てはめた k、cm mm</translation>
    </message>
    <message>
        <source>Fitted grain fill w</source>
        <translation>当てはめた粒内充水 w</translation>
    </message>
    <message>
        <source>Fitted flooded fill f</source>
        <translation>当てはめた湛水充水 f</translation>
    </message>
    <message>
        <source>pot test %1 of mix %2</source>
        <translation>配合 %2 の鉢試験 %1</translation>
    </message>
    <message>
        <source>Pot test %1 of mix %2</source>
        <translation>配合 %2 の鉢試験 %1</translation>
    </message>
    <message>
        <source>: air %1 measured, %2 predicted</source>
        <translation>：空気 実測 %1、予測 %2</translation>
    </message>
    <message>
        <source>A component of the mix has no grain density: measure it first, then the test can be compared.</source>
        <translation>粒子密度のない配合材があります。先に測ると、試験を比較できます。</translation>
    </message>
    <message>
        <source>These figures make no pot test: look at the volume and the order of the masses.</source>
        <translation>この値では鉢試験になりません。容積と重さの順序を確かめてください。</translation>
    </message>
    <message>
        <source>not measured yet</source>
        <translation>未測定</translation>
    </message>
    <message>
        <source>Still to type: %1</source>
        <translation>未入力：%1</translation>
    </message>
    <message>
        <source>Litre weight by jug</source>
        <translation>計量ジョッキによる容積重</translation>
    </message>
    <message>
        <source>What a litre weighs, loose and worked in. It turns parts into masses, and says how much a mix settles.</source>
        <translation>1 L の重さ（ふんわり入れたときと突き込んだとき）。配合比を重さに直し、用土の締まりがわかります。</translation>
    </message>
    <message>
        <source>Weigh the empty jug. Fill it loosely from a scoop held at the rim, heaped, and strike it off level. Weigh.</source>
        <translation>空のジョッキを量る。縁の高さから土入れでふんわり山盛りに入れ、すり切る。量る。</translation>
    </message>
    <message>
        <source>Empty it, fill and weigh once more: two fills within 3 % are good.</source>
        <translation>空けて、もう一度入れて量る。2 回の差が 3 % 以内なら良好。</translation>
    </message>
    <message>
        <source>Work the grain in with a stick, as in a pot, without adding any. Read the litres at the mark.</source>
        <translation>鉢のように箸で突き込む（足さない）。目盛りで L を読む。</translation>
    </message>
    <message>
        <source>Two jugs: one heaped and struck off level, one with the same grain worked in with a stick and standing lower.</source>
        <translation>ジョッキ二つ：山盛りをすり切ったものと、同じ粒を箸で突き込んで低くなったもの。</translation>
    </message>
    <message>
        <source>Grain density by displacement</source>
        <translation>水置換による粒子密度</translation>
    </message>
    <message>
        <source>What the grain weighs with its inner pores. With the litre weight it gives the voids between the grains.</source>
        <translation>内部の孔隙を含む粒の重さ。容積重と合わせて粒間孔隙がわかります。</translation>
    </message>
    <message>
        <source>Soak the grain for 24 h. Dab it dry until its surface no longer shines. Weigh.</source>
        <translation>粒を 24 時間水に浸す。表面のつやが消えるまで水気を拭く。量る。</translation>
    </message>
    <message>
        <source>Weigh the jug filled with water to the mark. Put the grain in, stir the air out, top up or draw off to the same mark. Weigh.</source>
        <translation>標線まで水を入れたジョッキを量る。粒を入れ、かき混ぜて空気を抜き、同じ標線まで水を足すか抜く。量る。</translation>
    </message>
    <message>
        <source>Dry the grain at 105 °C or on a warm stove until it no longer gets lighter. Weigh.</source>
        <translation>105 °C または温かいストーブの上で、軽くならなくなるまで乾かす。量る。</translation>
    </message>
    <message>
        <source>Two jugs filled with water to the same mark, the right one with soaked grain at the bottom.</source>
        <translation>同じ標線まで水を入れたジョッキ二つ。右は底に吸水した粒。</translation>
    </message>
    <message>
        <source>Water absorption in 24 h</source>
        <translation>24 時間吸水率</translation>
    </message>
    <message>
        <source>The water that stays inside the grains: it is there between waterings and takes no air.</source>
        <translation>粒の中に残る水。潅水の合間もあり、空気を減らしません。</translation>
    </message>
    <message>
        <source>Soak a handful for 24 h. Dab it dry until its surface no longer shines. Weigh.</source>
        <translation>一つかみを 24 時間水に浸す。表面のつやが消えるまで水気を拭く。量る。</translation>
    </message>
    <message>
        <source>Dry the same grain until it no longer gets lighter. Weigh.</source>
        <translation>同じ粒を、軽くならなくなるまで乾かす。量る。</translation>
    </message>
    <message>
        <source>Grain under water in a dish, then the same grain spread out to dry.</source>
        <translation>皿の水に浸した粒と、広げて乾かしている同じ粒。</translation>
    </message>
    <message>
        <source>Crumble test</source>
        <translation>崩れ試験</translation>
    </message>
    <message>
        <source>How fast the grain breaks down, by shaking or by freezing and thawing. It says for how many seasons the mix keeps its air.</source>
        <translation>振とうまたは凍結融解で粒が崩れる速さ。用土が何シーズン空気を保つかがわかります。</translation>
    </message>
    <message>
        <source>Take sieved grain of the bag. Shake it in a closed tin, or wet it, freeze it and thaw it, so many rounds.</source>
        <translation>袋のふるった粒を取る。密閉缶で振るか、濡らして凍結・融解を所定の回数くり返す。</translation>
    </message>
    <message>
        <source>Dry it and sieve it again on the same sieves. Wear a dust mask.</source>
        <translation>乾かして同じふるいで再びふるう。防じんマスクを着ける。</translation>
    </message>
    <message>
        <source>A tin that is shaken, and the stack of sieves that the grain goes through again.</source>
        <translation>振る缶と、粒を再び通すふるいの段。</translation>
    </message>
    <message>
        <source>Was it sieved long enough?</source>
        <translation>ふるい時間は十分か</translation>
    </message>
    <message>
        <source>One more minute of shaking by hand: less than half a percent may still fall through.</source>
        <translation>手でもう 1 分ふるう。落ちるのは 0.5 % 未満であること。</translation>
    </message>
    <message>
        <source>After the sieve test shake every sieve one more minute over a clean sheet.</source>
        <translation>ふるい試験の後、清潔な紙の上で各ふるいをもう 1 分ふるう。</translation>
    </message>
    <message>
        <source>Weigh all that fell through.</source>
        <translation>落ちたものをすべて量る。</translation>
    </message>
    <message>
        <source>A sieve shaken over a sheet on which a little grain lies.</source>
        <translation>紙の上でふるうふるい。紙に少し粒が落ちている。</translation>
    </message>
    <message>
        <source>Pot test by balance</source>
        <translation>はかりによる鉢試験</translation>
    </message>
    <message>
        <source>Soak the mix for a day. Fill the pot and work it in as you would around a tree. Seal the holes.</source>
        <translation>用土を一日水に浸す。鉢に入れ、植え付けのときのように突き込む。穴をふさぐ。</translation>
    </message>
    <message>
        <source>Flood slowly from below until a film shines on top. Weigh. Open the holes and let it drain level for half an hour. Weigh.</source>
        <translation>表面に水膜が光るまで下からゆっくり湛水する。量る。穴を開け、水平に置いて 30 分排水する。量る。</translation>
    </message>
    <message>
        <source>Dry everything until it no longer gets lighter. Weigh; the empty pot too. A wet pot is heavy: lift with both hands.</source>
        <translation>軽くならなくなるまで全部乾かす。量る。空の鉢も量る。濡れた鉢は重いので両手で持ち上げる。</translation>
    </message>
    <message>
        <source>A pot on a balance three times: flooded to the rim, drained with water left at the bottom, dry.</source>
        <translation>はかりに載せた鉢が三つ：縁まで湛水、排水後（底に水が残る）、乾燥。</translation>
    </message>
    <message>
        <source>Pot test by volumes only</source>
        <translation>容積だけの鉢試験</translation>
    </message>
    <message>
        <source>The same without a balance: water poured in and water caught.</source>
        <translation>はかりなしで同じ試験：注いだ水と受けた水。</translation>
    </message>
    <message>
        <source>Fill the pot with dry mix and work it in. Seal the holes.</source>
        <translation>乾いた用土を鉢に入れて突き込む。穴をふさぐ。</translation>
    </message>
    <message>
        <source>Pour in measured water slowly until a shiny film stands, and again after a day&apos;s soak. Note all of it.</source>
        <translation>量った水を、光る水膜ができるまでゆっくり注ぎ、一日置いてからもう一度注ぐ。全部記録する。</translation>
    </message>
    <message>
        <source>Open the holes over a bowl. After half an hour measure what ran out.</source>
        <translation>受け皿の上で穴を開ける。30 分後に流れ出た量を測る。</translation>
    </message>
    <message>
        <source>A measuring jug pours into a pot, and a bowl below catches what drains.</source>
        <translation>計量ジョッキから鉢に注ぎ、下の受け皿が排水を受ける。</translation>
    </message>
    <message>
        <source>the litres after working in are not typed</source>
        <translation>突き込み後の L が未入力です</translation>
    </message>
    <message>
        <source>Litre weight, loose, dry</source>
        <translation>容積重、ふんわり、乾燥</translation>
    </message>
    <message>
        <source>Worked in, dry</source>
        <translation>突き込み後、乾燥</translation>
    </message>
    <message>
        <source>Settling</source>
        <translation>締まり</translation>
    </message>
    <message>
        <source>litre weight of bag %1</source>
        <translation>袋 %1 の容積重</translation>
    </message>
    <message>
        <source>Weighed a jug of bag %1: %2 loose and dry</source>
        <translation>袋 %1 のジョッキを量った：ふんわり乾燥で %2</translation>
    </message>
    <message>
        <source>settling of mix %1</source>
        <translation>配合 %1 の締まり</translation>
    </message>
    <message>
        <source>Worked in a jug of mix %1: it settles by %2</source>
        <translation>配合 %1 のジョッキを突き込んだ：締まり %2</translation>
    </message>
    <message>
        <source>Grain density, dry</source>
        <translation>粒子密度、乾燥</translation>
    </message>
    <message>
        <source>Soaked grain</source>
        <translation>吸水した粒</translation>
    </message>
    <message>
        <source>Water after 24 h, of dry mass</source>
        <translation>24 時間後の水、乾燥質量比</translation>
    </message>
    <message>
        <source>grain density of bag %1</source>
        <translation>袋 %1 の粒子密度</translation>
    </message>
    <message>
        <source>Measured the grain of bag %1 by displacement: %2, water after 24 h %3</source>
        <translation>袋 %1 の粒を水置換で測定：%2、24 時間後の水 %3</translation>
    </message>
    <message>
        <source>water absorption of bag %1</source>
        <translation>袋 %1 の吸水率</translation>
    </message>
    <message>
        <source>Soaked grain of bag %1 for 24 h: it took up %2 of its dry mass</source>
        <translation>袋 %1 の粒を 24 時間浸した：乾燥質量の %2 を吸水</translation>
    </message>
    <message>
        <source>Sieve this bag first: a crumble test compares with its sieve test.</source>
        <translation>先にこの袋をふるってください。崩れ試験はふるい試験と比較します。</translation>
    </message>
    <message>
        <source>Broken, of the mass</source>
        <translation>崩れた割合（質量）</translation>
    </message>
    <message>
        <source>Breakages of a grain in a round</source>
        <translation>1 回あたりの粒の破砕数</translation>
    </message>
    <message>
        <source>In a season</source>
        <translation>1 シーズンで</translation>
    </message>
    <message>
        <source>Modulus of the fragments</source>
        <translation>破片の指数</translation>
    </message>
    <message>
        <source>crumble test of bag %1</source>
        <translation>袋 %1 の崩れ試験</translation>
    </message>
    <message>
        <source>Crumble test of bag %1: %2 of the mass broke in %3 rounds</source>
        <translation>袋 %1 の崩れ試験：%3 回で質量の %2 が崩れた</translation>
    </message>
    <message>
        <source>Fell through in one more minute</source>
        <translation>追加 1 分で落ちた量</translation>
    </message>
    <message>
        <source>The sieving of bag %1 was thorough: %2 fell through in one more minute</source>
        <translation>袋 %1 のふるいは十分：追加 1 分で %2 落ちた</translation>
    </message>
    <message>
        <source>The sieving of bag %1 was not thorough: %2 fell through in one more minute</source>
        <translation>袋 %1 のふるいは不十分：追加 1 分で %2 落ちた</translation>
    </message>
    <message>
        <source>Keep the sieve test with its bag first: this belongs to a sieve test.</source>
        <translation>先にふるい試験を袋に保存してください。これはふるい試験に付くものです。</translation>
    </message>
    <message>
        <source>thoroughness of sieving bag %1</source>
        <translation>袋 %1 のふるいの十分さ</translation>
    </message>
    <message>
        <source>Empty jug</source>
        <translation>空のジョッキ</translation>
    </message>
    <message>
        <source>weighed dry</source>
        <translation>乾いた状態で計量</translation>
    </message>
    <message>
        <source>Jug with grain</source>
        <translation>粒を入れたジョッキ</translation>
    </message>
    <message>
        <source>poured loosely, struck off level</source>
        <translation>ふんわり入れてすり切り</translation>
    </message>
    <message>
        <source>Filled once more</source>
        <translation>もう一度入れて</translation>
    </message>
    <message>
        <source>emptied and poured again; may stay empty</source>
        <translation>空けて入れ直す（空欄可）</translation>
    </message>
    <message>
        <source>The jug holds</source>
        <translation>ジョッキの容量</translation>
    </message>
    <message>
        <source>by weighing it full of water</source>
        <translation>満水で量る</translation>
    </message>
    <message>
        <source>Worked in, it fills</source>
        <translation>突き込み後の量</translation>
    </message>
    <message>
        <source>read at the mark</source>
        <translation>目盛りで読む</translation>
    </message>
    <message>
        <source>read at the mark; may stay empty</source>
        <translation>目盛りで読む（空欄可）</translation>
    </message>
    <message>
        <source>Moisture of the grain</source>
        <translation>粒の水分</translation>
    </message>
    <message>
        <source>of the dry mass; empty: dry</source>
        <translation>乾燥質量比（空欄：乾燥）</translation>
    </message>
    <message>
        <source>Soaked, dabbed dry</source>
        <translation>吸水、表面を拭いた</translation>
    </message>
    <message>
        <source>after 24 h under water</source>
        <translation>24 時間浸した後</translation>
    </message>
    <message>
        <source>Jug with water</source>
        <translation>水を入れたジョッキ</translation>
    </message>
    <message>
        <source>filled to the mark, no grain</source>
        <translation>標線まで、粒なし</translation>
    </message>
    <message>
        <source>Jug, water and grain</source>
        <translation>ジョッキ＋水＋粒</translation>
    </message>
    <message>
        <source>to the same mark</source>
        <translation>同じ標線まで</translation>
    </message>
    <message>
        <source>Dried grain</source>
        <translation>乾かした粒</translation>
    </message>
    <message>
        <source>the same grain</source>
        <translation>同じ粒</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>回数</translation>
    </message>
    <message>
        <source>of shaking, or of freezing and thawing</source>
        <translation>振とう、または凍結融解</translation>
    </message>
    <message>
        <source>Rounds that make a season</source>
        <translation>1 シーズン分の回数</translation>
    </message>
    <message>
        <source>empty: %1</source>
        <translation>空欄：%1</translation>
    </message>
    <message>
        <source>On %1</source>
        <translation>%1 の上</translation>
    </message>
    <message>
        <source>sieved again</source>
        <translation>再びふるって</translation>
    </message>
    <message>
        <source>In the pan</source>
        <translation>受皿</translation>
    </message>
    <message>
        <source>Whole sample</source>
        <translation>試料全量</translation>
    </message>
    <message>
        <source>what went onto the stack</source>
        <translation>ふるいに入れた量</translation>
    </message>
    <message>
        <source>Fell through</source>
        <translation>落ちた量</translation>
    </message>
    <message>
        <source>all sieves together, in one more minute</source>
        <translation>全部のふるい、追加 1 分で</translation>
    </message>
    <message>
        <source>Filled depth</source>
        <translation>充填深さ</translation>
    </message>
    <message>
        <source>of the mix, straight walls</source>
        <translation>用土の深さ、まっすぐな壁</translation>
    </message>
    <message>
        <source>by a water fill</source>
        <translation>水を満たして測る</translation>
    </message>
    <message>
        <source>empty: to the pot&apos;s fill line</source>
        <translation>空欄：鉢の充填線まで</translation>
    </message>
    <message>
        <source>Empty pot</source>
        <translation>空の鉢</translation>
    </message>
    <message>
        <source>with mesh and wire</source>
        <translation>鉢底網と針金とも</translation>
    </message>
    <message>
        <source>Flooded, sealed</source>
        <translation>湛水、穴をふさいで</translation>
    </message>
    <message>
        <source>slowly from below; may stay empty</source>
        <translation>下からゆっくり（空欄可）</translation>
    </message>
    <message>
        <source>Drained</source>
        <translation>排水後</translation>
    </message>
    <message>
        <source>half an hour, level</source>
        <translation>水平で 30 分</translation>
    </message>
    <message>
        <source>Dry, with the pot</source>
        <translation>乾燥、鉢とも</translation>
    </message>
    <message>
        <source>the same mix</source>
        <translation>同じ用土</translation>
    </message>
    <message>
        <source>Water poured in</source>
        <translation>注いだ水</translation>
    </message>
    <message>
        <source>until a shiny film stands</source>
        <translation>光る水膜ができるまで</translation>
    </message>
    <message>
        <source>Water caught</source>
        <translation>受けた水</translation>
    </message>
    <message>
        <source>half an hour later</source>
        <translation>30 分後</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>測定値</translation>
    </message>
    <message>
        <source>Keep a mix first: a pot test is a test of a mix.</source>
        <translation>先に配合を保存してください。鉢試験は配合の試験です。</translation>
    </message>
    <message>
        <source>Receive a bag first: what is measured is kept with its bag.</source>
        <translation>先に袋を受け入れてください。測定値は袋に保存します。</translation>
    </message>
    <message>
        <source>Volume of mix in it</source>
        <translation>用土の容積</translation>
    </message>
    <message>
        <source>Weighed a jug of bag %1: %2 loose and dry, %3 worked in</source>
        <translation>袋 %1 のジョッキを量った：ふんわり乾燥で %2、突き込み後 %3</translation>
    </message>
    <message>
        <source>More fell through than was weighed: weigh both again.</source>
        <translation>量った量より多く落ちています。両方を量り直してください。</translation>
    </message>
    <message>
        <source>The air and water of this mix in a real pot. It corrects the estimates of the mix and shows how far off they were.</source>
        <translation>実際の鉢でのこの配合の空気と水。配合の推定を正し、どれだけずれていたかを示します。</translation>
    </message>
</context>
<context>
    <name>Ranges</name>
    <message>
        <source>5, 50 and 95 of 100 cases: up to %1, %2, %3</source>
        <translation>100 例中 5・50・95 例：%1、%2、%3 まで</translation>
    </message>
    <message>
        <source>open</source>
        <translation>範囲外</translation>
    </message>
    <message>
        <source>The same verdict in %1 of 100 cases.</source>
        <translation>100 例中 %1 例で同じ判定。</translation>
    </message>
    <message>
        <source>, by pot test %1</source>
        <translation>、鉢試験 %1 による</translation>
    </message>
    <message>
        <source>in %1 of 100 cases</source>
        <translation>100 例中 %1 例</translation>
    </message>
    <message>
        <source>, leaning on pot test %1</source>
        <translation>、鉢試験 %1 に一部基づく</translation>
    </message>
</context>
<context>
    <name>RecordKind</name>
    <message>
        <source>own material</source>
        <translation>自分の資材</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>袋</translation>
    </message>
    <message>
        <source>bin</source>
        <translation>保管容器</translation>
    </message>
    <message>
        <source>fraction</source>
        <translation>区分</translation>
    </message>
    <message>
        <source>sieve set</source>
        <translation>ふるいの組</translation>
    </message>
    <message>
        <source>sieve test</source>
        <translation>ふるい試験</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>配合</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>木</translation>
    </message>
    <message>
        <source>root-mass plan</source>
        <translation>根鉢計画</translation>
    </message>
    <message>
        <source>repotting day</source>
        <translation>植え替え日</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>バッチ</translation>
    </message>
    <message>
        <source>pot test</source>
        <translation>鉢試験</translation>
    </message>
    <message>
        <source>stock entry</source>
        <translation>在庫の記入</translation>
    </message>
    <message>
        <source>log entry</source>
        <translation>日誌の記入</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>鉢</translation>
    </message>
    <message>
        <source>group of trees</source>
        <translation>樹種グループ</translation>
    </message>
</context>
<context>
    <name>RootPlanDesk</name>
    <message>
        <source>%1 into %2</source>
        <translation>%1 を %2 へ</translation>
    </message>
</context>
<context>
    <name>Screening</name>
    <message>
        <source>Weighed so far: %1</source>
        <translation>これまでの計量：%1</translation>
    </message>
    <message>
        <source>Weighed %1: %2 more than went in</source>
        <translation>計量 %1：入れた量より %2 多い</translation>
    </message>
    <message>
        <source>Weighed %1, lost %2</source>
        <translation>計量 %1、損失 %2</translation>
    </message>
    <message>
        <source>Finish the sieve test first: the fractions are predicted from it.</source>
        <translation>先にふるい試験を終えてください。区分はそこから予測します。</translation>
    </message>
    <message>
        <source>Type the openings to screen at; the verdict names none.</source>
        <translation>ふるい分ける目開きを入力してください。判定は示していません。</translation>
    </message>
    <message>
        <source>Much of what is left of the bag is in no fraction: type how much dry grain was screened.</source>
        <translation>袋の残りの多くがどの画分にも入っていません。ふるった乾燥粒の量を入力してください。</translation>
    </message>
    <message>
        <source>Much more was weighed than went in: look at the weights, or type how much dry grain was screened.</source>
        <translation>入れた量よりずっと多く量られています。重さを確かめるか、ふるった乾いた粒の量を入力してください。</translation>
    </message>
</context>
<context>
    <name>Section</name>
    <message>
        <source>height</source>
        <translation>高さ</translation>
    </message>
    <message>
        <source>90 of 100 cases</source>
        <translation>100 例中 90 例</translation>
    </message>
</context>
<context>
    <name>Shelf</name>
    <message>
        <source>%1, to buy</source>
        <translation>%1（購入）</translation>
    </message>
</context>
<context>
    <name>StockText</name>
    <message>
        <source>received</source>
        <translation>受け入れ</translation>
    </message>
    <message>
        <source>screened into it</source>
        <translation>ふるい分けで入った分</translation>
    </message>
    <message>
        <source>screened out of it</source>
        <translation>ふるい分けで出た分</translation>
    </message>
    <message>
        <source>used</source>
        <translation>使用</translation>
    </message>
    <message>
        <source>came back or was tipped in</source>
        <translation>戻した、または投入した分</translation>
    </message>
    <message>
        <source>spilt</source>
        <translation>こぼれ</translation>
    </message>
    <message>
        <source>thrown out</source>
        <translation>廃棄</translation>
    </message>
    <message>
        <source>difference found by counting</source>
        <translation>棚卸しの差</translation>
    </message>
    <message>
        <source>Sum of the lines of the ledger, in dry grain</source>
        <translation>帳簿の行の合計（乾燥粒）</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1、%2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1（%2）</translation>
    </message>
    <message>
        <source>the record</source>
        <translation>記録</translation>
    </message>
    <message>
        <source>Left of it</source>
        <translation>残り</translation>
    </message>
    <message>
        <source>Loose grain</source>
        <translation>ふんわりの粒</translation>
    </message>
    <message>
        <source>Dry grain</source>
        <translation>乾燥粒</translation>
    </message>
    <message>
        <source>nothing of it was taken into stock yet</source>
        <translation>まだ在庫に入っていません</translation>
    </message>
    <message>
        <source>Loose litres = dry grain / litre weight</source>
        <translation>ふんわり L = 乾燥粒 / 容積重</translation>
    </message>
    <message>
        <source>litre weight, dry</source>
        <translation>容積重、乾燥</translation>
    </message>
    <message>
        <source>%1 dry</source>
        <translation>乾燥 %1</translation>
    </message>
    <message>
        <source>Tested: not yet</source>
        <translation>試験：まだ</translation>
    </message>
    <message numerus="yes">
        <source>Tested: %n sieve test(s), the last on %1</source>
        <translation>
            <numerusform>試験：ふるい試験 %n 件、最後は %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Tested: %n sieve test(s)</source>
        <translation>
            <numerusform>試験：ふるい試験 %n 件</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2 at %3</source>
        <translation>%1、%2（%3 で換算）</translation>
    </message>
    <message>
        <source>weigh a litre of it</source>
        <translation>1 L を量ってください</translation>
    </message>
    <message>
        <source>its own litre weight, else that of its newest sieve test, else its dry mass by the litres it came with</source>
        <translation>自身のリットル重量、なければ最新のふるい試験のもの、なければ入荷時の容量で割った乾燥質量</translation>
    </message>
    <message>
        <source>the litre weight of its bag, since nobody weighed a litre of it</source>
        <translation>1 リットルを量っていないため、その袋のリットル重量</translation>
    </message>
    <message>
        <source>the litre weight of its bag by how the fraction was predicted to pack, since nobody weighed a litre of it</source>
        <translation>1 リットルを量っていないため、その袋のリットル重量を、予測した区分の詰まり方で補正</translation>
    </message>
    <message>
        <source>litre weight of its bag, dry</source>
        <translation>その袋の容積重、乾燥</translation>
    </message>
    <message>
        <source>litre weight of the fraction over that of its bag, as predicted</source>
        <translation>区分の容積重と袋の容積重の比（予測）</translation>
    </message>
</context>
<context>
    <name>Surroundings</name>
    <message>
        <source>mix %1</source>
        <translation>配合 %1</translation>
    </message>
    <message>
        <source>tub %1 of %2</source>
        <translation>%2 のトロ舟 %1</translation>
    </message>
    <message>
        <source>used ground of %1</source>
        <translation>%1 の古土</translation>
    </message>
</context>
<context>
    <name>TestSheet</name>
    <message>
        <source>pan</source>
        <translation>受皿</translation>
    </message>
    <message>
        <source>sieve, mm</source>
        <translation>ふるい、mm</translation>
    </message>
    <message>
        <source>stayed on</source>
        <translation>残留</translation>
    </message>
    <message>
        <source>of the mass</source>
        <translation>質量比</translation>
    </message>
    <message>
        <source>passing</source>
        <translation>通過百分率</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>点検</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>判定</translation>
    </message>
    <message>
        <source>Sieve test of %1</source>
        <translation>%1 のふるい試験</translation>
    </message>
    <message>
        <source>Bag %1</source>
        <translation>袋 %1</translation>
    </message>
    <message>
        <source>sample %1, dry</source>
        <translation>試料 %1、乾燥</translation>
    </message>
    <message>
        <source>loss %1</source>
        <translation>損失 %1</translation>
    </message>
    <message>
        <source>Sieve test</source>
        <translation>ふるい試験</translation>
    </message>
</context>
<context>
    <name>TreeAgeing</name>
    <message>
        <source>As the grain breaks down, in seasons since the repotting of %1%2: %3</source>
        <translation>粒の崩れにより、%1%2 の植え替えからのシーズン：%3</translation>
    </message>
</context>
<context>
    <name>TreeGroups</name>
    <message>
        <source>left out</source>
        <translation>除外</translation>
    </message>
    <message>
        <source>own</source>
        <translation>自分用</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>変更済み</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>一般的な目安</translation>
    </message>
</context>
<context>
    <name>Verdict</name>
    <message>
        <source> and </source>
        <translation> と </translation>
    </message>
    <message>
        <source>Take it as it is</source>
        <translation>そのまま使う</translation>
    </message>
    <message>
        <source>Take it after screening at %1</source>
        <translation>%1 でふるって使う</translation>
    </message>
    <message>
        <source>Other use, or complain</source>
        <translation>別の用途に回すか、苦情を言う</translation>
    </message>
    <message>
        <source>fraction</source>
        <translation>区分</translation>
    </message>
    <message>
        <source>of the mass</source>
        <translation>質量比</translation>
    </message>
    <message>
        <source>from a litre</source>
        <translation>1 L から</translation>
    </message>
    <message>
        <source>from a bag</source>
        <translation>1 袋から</translation>
    </message>
    <message>
        <source>D50</source>
        <translation>D50</translation>
    </message>
    <message>
        <source>screen at</source>
        <translation>目開き</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>残る量</translation>
    </message>
    <message>
        <source>usable</source>
        <translation>使える</translation>
    </message>
    <message>
        <source>good enough</source>
        <translation>十分か</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>はい</translation>
    </message>
    <message>
        <source>no</source>
        <translation>いいえ</translation>
    </message>
    <message>
        <source>Laboratory figures</source>
        <translation>試験室の値</translation>
    </message>
    <message>
        <source>the sieves do not reach far enough</source>
        <translation>ふるいの範囲が足りません</translation>
    </message>
    <message>
        <source>Curvature</source>
        <translation>曲率係数</translation>
    </message>
    <message>
        <source>Fineness modulus</source>
        <translation>粗粒率</translation>
    </message>
    <message>
        <source>Mean, phi</source>
        <translation>平均、φ</translation>
    </message>
    <message>
        <source>Sorting, phi</source>
        <translation>淘汰度、φ</translation>
    </message>
    <message>
        <source>Skewness</source>
        <translation>歪度</translation>
    </message>
    <message>
        <source>Kurtosis</source>
        <translation>尖度</translation>
    </message>
    <message>
        <source>Price of a usable litre</source>
        <translation>使える 1 L の価格</translation>
    </message>
    <message>
        <source>No verdict: %1</source>
        <translation>判定なし：%1</translation>
    </message>
    <message>
        <source>Finer</source>
        <translation>細かい</translation>
    </message>
    <message>
        <source>Coarser</source>
        <translation>粗い</translation>
    </message>
    <message>
        <source>Usable of a litre</source>
        <translation>1 L 中の使える量</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>%1 超</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>%1 未満</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1～%2</translation>
    </message>
    <message>
        <source>see the marked cells and fields</source>
        <translation>印の付いたセルと欄を見てください</translation>
    </message>
    <message>
        <source>finish the sieve test</source>
        <translation>ふるい試験を終えてください</translation>
    </message>
    <message>
        <source>choose its bag</source>
        <translation>袋を選んでください</translation>
    </message>
    <message>
        <source>type price and litres of the bag</source>
        <translation>袋の価格と L を入力してください</translation>
    </message>
    <message>
        <source>type the wanted grain</source>
        <translation>希望粒径を入力してください</translation>
    </message>
    <message>
        <source>finer in it</source>
        <translation>細かい分</translation>
    </message>
    <message>
        <source>Wanted grain in %1</source>
        <translation>%1 の望む粒</translation>
    </message>
    <message>
        <source>the sieves do not reach the ends of the wanted grain</source>
        <translation>篩が望む粒の両端に届きません</translation>
    </message>
    <message>
        <source>Wanted, by mass</source>
        <translation>望む粒（質量比）</translation>
    </message>
    <message>
        <source>%1 to %2, the nearest sieves</source>
        <translation>%1～%2（最も近いふるい）</translation>
    </message>
    <message>
        <source>D50, half is finer</source>
        <translation>D50、半分がより細かい</translation>
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
        <translation>排水後の気相率、100 例中 90 例</translation>
    </message>
    <message>
        <source>new</source>
        <translation>新規</translation>
    </message>
    <message>
        <source>season</source>
        <translation>シーズン</translation>
    </message>
    <message>
        <source>Grading, finer than</source>
        <translation>粒度、これより細かい</translation>
    </message>
    <message>
        <source>sieve</source>
        <translation>ふるい</translation>
    </message>
    <message>
        <source>The years to come: air and grading by season</source>
        <translation>先の年：シーズンごとの空気と粒度</translation>
    </message>
    <message>
        <source>Nothing can be foretold for this mix in this pot.</source>
        <translation>この用土とこの鉢については何も予測できません。</translation>
    </message>
    <message>
        <source>crumbs stay</source>
        <translation>細粒が残る</translation>
    </message>
    <message>
        <source>crumbs wash down</source>
        <translation>細粒が流れ落ちる</translation>
    </message>
    <message>
        <source>repotting hint</source>
        <translation>植え替えの目安</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::BackupsCard</name>
    <message>
        <source>%1, before an update of the program</source>
        <translation>%1、プログラム更新前</translation>
    </message>
    <message>
        <source>Restore this backup...</source>
        <translation>このバックアップを復元...</translation>
    </message>
    <message>
        <source>Look into it, reading only</source>
        <translation>中を見る（読み取り専用）</translation>
    </message>
    <message>
        <source>Backups of the record</source>
        <translation>記録のバックアップ</translation>
    </message>
    <message>
        <source>Backups of the record, newest first</source>
        <translation>記録のバックアップ（新しい順）</translation>
    </message>
    <message>
        <source>day</source>
        <translation>日付</translation>
    </message>
    <message>
        <source>size</source>
        <translation>サイズ</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>未確認</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>破損</translation>
    </message>
    <message>
        <source>None yet. The first is made before the first change of another day, into %1.</source>
        <translation>まだありません。最初のものは、別の日の最初の変更の前に %1 に作られます。</translation>
    </message>
    <message>
        <source>In %1. One is made before the first change of a day; those of the last 10 days and the last one of each of 12 months are kept.</source>
        <translation>場所：%1。その日の最初の変更の前に作られます。直近 10 日分と、12 か月各月の最後の分を残します。</translation>
    </message>
    <message>
        <source>checked</source>
        <translation>確認</translation>
    </message>
    <message>
        <source>intact</source>
        <translation>正常</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::BagsPage</name>
    <message>
        <source>F&amp;ind</source>
        <translation>検索(&amp;I)</translation>
    </message>
    <message>
        <source>bag, material or lot</source>
        <translation>袋、資材、ロット</translation>
    </message>
    <message>
        <source>Find a bag</source>
        <translation>袋を検索</translation>
    </message>
    <message>
        <source>Material of the bags to receive</source>
        <translation>受け入れる袋の資材</translation>
    </message>
    <message>
        <source>&amp;Receive bags</source>
        <translation>袋を受け入れる(&amp;R)</translation>
    </message>
    <message>
        <source>Receive bags of this material</source>
        <translation>この資材の袋を受け入れる</translation>
    </message>
    <message>
        <source>No bags yet. Choose a material and receive the first ones: the lot, how many, their litres or mass. Grading them is one click from here.</source>
        <translation>袋はまだありません。資材を選び、最初の袋を受け入れてください：ロット、袋数、容量か重さ。ここからワンクリックで粒度を測れます。</translation>
    </message>
    <message>
        <source>Bags</source>
        <translation>袋</translation>
    </message>
    <message>
        <source>Enter puts the fraction into the mix.</source>
        <translation>Enter で区分を配合に入れます。</translation>
    </message>
    <message>
        <source>Grade this bag</source>
        <translation>この袋の粒度を測る</translation>
    </message>
    <message>
        <source>&amp;Take into stock</source>
        <translation>在庫に入れる(&amp;T)</translation>
    </message>
    <message>
        <source>Take into stock</source>
        <translation>在庫に入れる</translation>
    </message>
    <message>
        <source>Meas&amp;ure...</source>
        <translation>測定...</translation>
    </message>
    <message>
        <source>Measure this bag: litre weight, grain density, water, crumbling</source>
        <translation>この袋を測定：容積重、粒子密度、水、崩れ</translation>
    </message>
    <message>
        <source>%1 of bag %2</source>
        <translation>袋 %2 の%1</translation>
    </message>
    <message>
        <source>&amp;Lot</source>
        <translation>ロット(&amp;L)</translation>
    </message>
    <message>
        <source>as marked on the bag</source>
        <translation>袋の表示どおり</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>ロット</translation>
    </message>
    <message>
        <source>&amp;Number of bags</source>
        <translation>袋数(&amp;N)</translation>
    </message>
    <message>
        <source>of this lot</source>
        <translation>このロットの</translation>
    </message>
    <message>
        <source>number</source>
        <translation>数</translation>
    </message>
    <message>
        <source>&amp;Printed size, from</source>
        <translation>表示粒径、下限(&amp;P)</translation>
    </message>
    <message>
        <source>provisional until the lot is sieved</source>
        <translation>ロットをふるうまでの暫定値</translation>
    </message>
    <message>
        <source>printed size</source>
        <translation>表示粒径</translation>
    </message>
    <message>
        <source>Printed size, to</source>
        <translation>表示粒径、上限</translation>
    </message>
    <message>
        <source>the coarse end</source>
        <translation>粗い側</translation>
    </message>
    <message>
        <source>Litres in one b&amp;ag</source>
        <translation>1 袋の容量(&amp;A)</translation>
    </message>
    <message>
        <source>loose, as printed or measured</source>
        <translation>ふんわり、表示または実測</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>容積</translation>
    </message>
    <message>
        <source>Mass of one bag</source>
        <translation>1 袋の重さ</translation>
    </message>
    <message>
        <source>as bagged; kg can be typed</source>
        <translation>kg も入力可</translation>
    </message>
    <message>
        <source>The bag was weighed</source>
        <translation>計量時の状態</translation>
    </message>
    <message>
        <source>as bagged</source>
        <translation>袋詰めのまま</translation>
    </message>
    <message>
        <source>air-dry</source>
        <translation>風乾</translation>
    </message>
    <message>
        <source>oven-dry</source>
        <translation>炉乾</translation>
    </message>
    <message>
        <source>weighing</source>
        <translation>計量</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>計量</translation>
    </message>
    <message>
        <source>water per dry mass, as bagged</source>
        <translation>乾燥質量に対する水</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>水分</translation>
    </message>
    <message>
        <source>Litre weight, &amp;dry</source>
        <translation>容積重、乾燥(&amp;D)</translation>
    </message>
    <message>
        <source>measured on this lot</source>
        <translation>このロットの実測値</translation>
    </message>
    <message>
        <source>litre weight</source>
        <translation>容積重</translation>
    </message>
    <message>
        <source>Grain densit&amp;y</source>
        <translation>粒子密度(&amp;Y)</translation>
    </message>
    <message>
        <source>grain density</source>
        <translation>粒子密度</translation>
    </message>
    <message>
        <source>Price of one &amp;bag</source>
        <translation>1 袋の価格(&amp;B)</translation>
    </message>
    <message>
        <source>in your money</source>
        <translation>お使いの通貨で</translation>
    </message>
    <message>
        <source>price</source>
        <translation>価格</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>通貨</translation>
    </message>
    <message>
        <source>your word for it; after the price</source>
        <translation>価格の後の語</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>通貨</translation>
    </message>
    <message>
        <source>Received on</source>
        <translation>受け入れ日</translation>
    </message>
    <message>
        <source>day</source>
        <translation>日付</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>メモ</translation>
    </message>
    <message>
        <source>anything worth knowing next year</source>
        <translation>来年知っておきたいこと</translation>
    </message>
    <message>
        <source>note</source>
        <translation>メモ</translation>
    </message>
    <message>
        <source>bag %1</source>
        <translation>袋 %1</translation>
    </message>
    <message>
        <source>Received bag %1</source>
        <translation>袋 %1 を受け入れた</translation>
    </message>
    <message>
        <source>bag %1 removed</source>
        <translation>袋 %1 を削除</translation>
    </message>
    <message>
        <source>bag %1 taken into stock</source>
        <translation>袋 %1 を在庫に入れた</translation>
    </message>
    <message>
        <source>Bags and fractions</source>
        <translation>袋と区分</translation>
    </message>
    <message>
        <source>Bins and tubs</source>
        <translation>保管容器とトロ舟</translation>
    </message>
    <message>
        <source>Taken back from</source>
        <translation>回収元の木</translation>
    </message>
    <message>
        <source>It stood in</source>
        <translation>植わっていた配合</translation>
    </message>
    <message>
        <source>the mix it was, like MX-01/1</source>
        <translation>元の配合、例：MX-01/1</translation>
    </message>
    <message>
        <source>Taken back on</source>
        <translation>回収日</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>木</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>配合</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>回収</translation>
    </message>
    <message>
        <source>No bag has these words.</source>
        <translation>この語のある袋はありません。</translation>
    </message>
    <message>
        <source>%1 of dry grain came; take it into stock to follow what is left.</source>
        <translation>乾燥粒 %1 が入りました。残りを追うには在庫に入れてください。</translation>
    </message>
    <message>
        <source>Type the mass of a bag, or its litres and the litre weight, to take it into stock.</source>
        <translation>在庫に入れるには、1 袋の重さ、または容量と容積重を入力してください。</translation>
    </message>
    <message>
        <source>Grade thi&amp;s bag</source>
        <translation>この袋の粒度を測る(&amp;S)</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>水分</translation>
    </message>
    <message>
        <source>The stock counts dry grain: type the moisture, or choose oven-dry for how the bag was weighed, to take it into stock.</source>
        <translation>在庫は乾いた用土で数えます。在庫に入れるには、水分を入力するか、袋を量ったときの状態として炉乾を選んでください。</translation>
    </message>
    <message>
        <source>Bag %1 stays: tests, mixes or the stock name it. Count 0 left where it is used up.</source>
        <translation>袋 %1 は残します。試験、配合または在庫が参照しています。使い切ったら、残りを 0 と数えてください。</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>重さ</translation>
    </message>
    <message>
        <source>%1, and what came into stock with it</source>
        <translation>%1と、それとともに在庫に入ったもの</translation>
    </message>
    <message>
        <source>Fractions on the shelf</source>
        <translation>在庫の区分</translation>
    </message>
    <message>
        <source>a tree, like TR-06; empty if bought</source>
        <translation>木（例 TR-06）。購入なら空欄</translation>
    </message>
    <message>
        <source>&amp;Material to receive</source>
        <translation>受け入れる資材(&amp;M)</translation>
    </message>
    <message>
        <source>What is in the bag</source>
        <translation>袋の中身</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>資材</translation>
    </message>
    <message>
        <source>Bag %1 keeps its material, as a mix, a fraction or a bin has grain of it: receive the bag anew, and count 0 left of this one.</source>
        <translation>袋 %1 の資材は変えられません。用土、区分か保管容器にこの袋の粒が入っています。袋を新しく受け入れ、この袋の残りを 0 と数えてください。</translation>
    </message>
    <message>
        <source>Bag %1 is %2 now, on its sieve tests and on the bench too.</source>
        <translation>袋 %1 は %2 になりました。ふるい試験と作業台もそれに従います。</translation>
    </message>
    <message>
        <source>Bag %1 is in stock already.</source>
        <translation>袋 %1 はもう在庫にあります。</translation>
    </message>
    <message>
        <source>In stock now: %1 of bag %2.</source>
        <translation>在庫に入りました：袋 %2、%1。</translation>
    </message>
    <message>
        <source>No bag has these words, but fractions below have.</source>
        <translation>この語を含む袋はありませんが、下の区分にはあります。</translation>
    </message>
    <message>
        <source>Fraction %1 is marked: choose the bag in its list to remove it.</source>
        <translation>区分 %1 が選ばれています。袋を外すには一覧で袋を選んでください。</translation>
    </message>
    <message>
        <source>a day like %1</source>
        <translation>%1 のような日付</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::BandRow</name>
    <message>
        <source>Wanted grain, from</source>
        <translation>希望粒径、下限</translation>
    </message>
    <message>
        <source>finest size wanted</source>
        <translation>希望する最も細かい粒径</translation>
    </message>
    <message>
        <source>to</source>
        <translation>上限</translation>
    </message>
    <message>
        <source>coarsest size wanted</source>
        <translation>希望する最も粗い粒径</translation>
    </message>
    <message>
        <source>wanted grain</source>
        <translation>希望粒径</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::BinsTab</name>
    <message>
        <source>%1 (since %2)</source>
        <translation>%1（%2 から）</translation>
    </message>
    <message>
        <source>Nothing is noted to lie in it now.</source>
        <translation>今入っているものの記録はありません。</translation>
    </message>
    <message>
        <source>It holds %1.</source>
        <translation>内容：%1。</translation>
    </message>
    <message>
        <source>What is taken out may contain each of: %1.</source>
        <translation>取り出すものは、次のどれも含む可能性があります：%1。</translation>
    </message>
    <message>
        <source>%1 of bin %2</source>
        <translation>保管容器 %2 の%1</translation>
    </message>
    <message>
        <source>Bins and leftover tubs</source>
        <translation>保管容器と残りのトロ舟</translation>
    </message>
    <message>
        <source>bin by number, name or material</source>
        <translation>番号、名前、資材</translation>
    </message>
    <message>
        <source>No bins yet. A bin or leftover tub holds several lots; what is taken out of it may contain each of them.</source>
        <translation>保管容器はまだありません。保管容器や残りのトロ舟には複数のロットが入り、取り出すものはそのどれも含む可能性があります。</translation>
    </message>
    <message>
        <source>left</source>
        <translation>残り</translation>
    </message>
    <message>
        <source>Add a &amp;bin or tub</source>
        <translation>保管容器・トロ舟を追加(&amp;B)</translation>
    </message>
    <message>
        <source>What was tipped into it</source>
        <translation>投入したもの</translation>
    </message>
    <message>
        <source>&amp;Put into the mix</source>
        <translation>配合に入れる(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>名前(&amp;N)</translation>
    </message>
    <message>
        <source>as it stands on the lid</source>
        <translation>ふたの表示どおり</translation>
    </message>
    <message>
        <source>name</source>
        <translation>名前</translation>
    </message>
    <message>
        <source>Material of the bin</source>
        <translation>保管容器の資材</translation>
    </message>
    <message>
        <source>of several materials</source>
        <translation>複数の資材</translation>
    </message>
    <message>
        <source>material</source>
        <translation>資材</translation>
    </message>
    <message>
        <source>&amp;Material</source>
        <translation>資材(&amp;M)</translation>
    </message>
    <message>
        <source>&amp;Litre weight, dry</source>
        <translation>容積重、乾燥(&amp;L)</translation>
    </message>
    <message>
        <source>measured on what lies in it</source>
        <translation>中身の実測値</translation>
    </message>
    <message>
        <source>litre weight</source>
        <translation>容積重</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>メモ</translation>
    </message>
    <message>
        <source>anything worth knowing next year</source>
        <translation>来年知っておきたいこと</translation>
    </message>
    <message>
        <source>note</source>
        <translation>メモ</translation>
    </message>
    <message>
        <source>Tip in</source>
        <translation>投入</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>量</translation>
    </message>
    <message>
        <source>On</source>
        <translation>日付</translation>
    </message>
    <message>
        <source>It is empty</source>
        <translation>空になった</translation>
    </message>
    <message>
        <source>leftovers</source>
        <translation>残り</translation>
    </message>
    <message>
        <source>bin %1</source>
        <translation>保管容器 %1</translation>
    </message>
    <message>
        <source>Put up bin %1</source>
        <translation>保管容器 %1 を置いた</translation>
    </message>
    <message>
        <source>bin %1 removed</source>
        <translation>保管容器 %1 を削除</translation>
    </message>
    <message>
        <source>Type the number of what is tipped in.</source>
        <translation>投入するものの番号を入力してください。</translation>
    </message>
    <message>
        <source>%1 tipped into bin %2</source>
        <translation>%1 を保管容器 %2 に投入</translation>
    </message>
    <message>
        <source>Tipped %1 into bin %2</source>
        <translation>%1 を保管容器 %2 に投入した</translation>
    </message>
    <message>
        <source>bin %1 emptied</source>
        <translation>保管容器 %1 を空にする</translation>
    </message>
    <message>
        <source>Bin %1 is empty</source>
        <translation>保管容器 %1 が空になった</translation>
    </message>
    <message>
        <source>what</source>
        <translation>項目</translation>
    </message>
    <message>
        <source>title</source>
        <translation>名称</translation>
    </message>
    <message>
        <source>tipped in</source>
        <translation>投入</translation>
    </message>
    <message>
        <source>until</source>
        <translation>終わり</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>乾燥</translation>
    </message>
    <message>
        <source>still in it</source>
        <translation>まだ中にある</translation>
    </message>
    <message>
        <source>G&amp;rade this bin</source>
        <translation>この保管容器の粒度を測る(&amp;R)</translation>
    </message>
    <message>
        <source>Bin %1 stays: tests, batches or the stock name it. Write down that it is empty instead.</source>
        <translation>保管容器 %1 は残します。試験、バッチまたは在庫が参照しています。代わりに空になったと書いてください。</translation>
    </message>
    <message>
        <source>A bin can&apos;t be tipped into itself: name another.</source>
        <translation>保管容器をそれ自身に投入することはできません。別のものを書いてください。</translation>
    </message>
    <message>
        <source>no.</source>
        <translation>番号</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>配合</translation>
    </message>
    <message>
        <source>since</source>
        <translation>から</translation>
    </message>
    <message>
        <source>Mix left over on the shelf</source>
        <translation>在庫に残った配合</translation>
    </message>
    <message>
        <source>Put this tub into the mix</source>
        <translation>このトロ舟を配合に入れる</translation>
    </message>
    <message>
        <source>like %1</source>
        <translation>例：%1</translation>
    </message>
    <message>
        <source>bag, lot, batch or bin</source>
        <translation>袋、ロット、バッチ、保管容器</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::CautionBar</name>
    <message>
        <source>Got it</source>
        <translation>了解</translation>
    </message>
    <message>
        <source>Put away the caution: %1</source>
        <translation>注意を閉じる：%1</translation>
    </message>
    <message>
        <source>All of it</source>
        <translation>全文</translation>
    </message>
    <message>
        <source>All of the caution: %1</source>
        <translation>注意の全文：%1</translation>
    </message>
    <message>
        <source>Less of it</source>
        <translation>短く</translation>
    </message>
    <message>
        <source>Less of the caution: %1</source>
        <translation>注意を短く：%1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ComparisonView</name>
    <message>
        <source>Mixes side by side</source>
        <translation>配合を並べて比較</translation>
    </message>
    <message>
        <source>air %1, water %2</source>
        <translation>空気 %1、水 %2</translation>
    </message>
    <message>
        <source>Mixes compared</source>
        <translation>比較した配合</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>中止</translation>
    </message>
    <message>
        <source>Stop comparing</source>
        <translation>比較を中止</translation>
    </message>
    <message>
        <source>on the bench</source>
        <translation>作業台</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1（%2）</translation>
    </message>
    <message>
        <source>%1; by pot test %2</source>
        <translation>%1；鉢試験 %2 による</translation>
    </message>
    <message>
        <source>%1; leaning on pot test %2</source>
        <translation>%1；鉢試験 %2 に一部基づく</translation>
    </message>
    <message>
        <source>water</source>
        <translation>水</translation>
    </message>
    <message>
        <source>air</source>
        <translation>空気</translation>
    </message>
    <message>
        <source>grain and trapped air</source>
        <translation>粒と封入空気</translation>
    </message>
    <message>
        <source>wanted grain</source>
        <translation>希望の粒度</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::DayPage</name>
    <message>
        <source>Dust and lifting.</source>
        <translation>粉じんと持ち上げ。</translation>
    </message>
    <message>
        <source>Screen damp, outdoors, with a mask; from 16 kg lift with two or use a trolley, less at arm&apos;s length. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation>湿らせて屋外でマスクを着けてふるう。16 kg からは二人で持つか台車を使い、腕を伸ばすときはもっと軽く。一般的な情報です。安全データシート、地域の規則、専門家の助言が優先します。</translation>
    </message>
    <message>
        <source>No repotting day yet. Make one, then put trees on it: their litres, what to screen, buy and mix, and what is heavy follow by themselves. The season tells which trees are due.</source>
        <translation>植え替え日はまだありません。作って木を載せてください。必要量、ふるい・購入・混合するもの、重いものは自動で出ます。どの木の時期かはシーズンでわかります。</translation>
    </message>
    <message>
        <source>Trees of the day in working order</source>
        <translation>作業順のその日の木</translation>
    </message>
    <message>
        <source>Space ticks a tree off; plan, litres, buds, helper and note are written into the table.</source>
        <translation>スペースで木を済みにします。計画、L、芽、手伝い、メモは表に書き込みます。</translation>
    </message>
    <message>
        <source>What the day takes</source>
        <translation>その日に必要なもの</translation>
    </message>
    <message>
        <source>Litres</source>
        <translation>リットル</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation>バッチ</translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation>重量物</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>この日</translation>
    </message>
    <message>
        <source>Tree</source>
        <translation>木</translation>
    </message>
    <message>
        <source>Screen and buy</source>
        <translation>ふるい・購入</translation>
    </message>
    <message>
        <source>Lists</source>
        <translation>リスト</translation>
    </message>
    <message>
        <source>Left over</source>
        <translation>残り</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>シーズン</translation>
    </message>
    <message>
        <source>Repotting day</source>
        <translation>植え替え日</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>日付(&amp;D)</translation>
    </message>
    <message>
        <source>New day</source>
        <translation>新しい日</translation>
    </message>
    <message>
        <source>Make a new repotting day</source>
        <translation>新しい植え替え日を作る</translation>
    </message>
    <message>
        <source>Tree to put on the day</source>
        <translation>その日に載せる木</translation>
    </message>
    <message>
        <source>&amp;Tree</source>
        <translation>木(&amp;T)</translation>
    </message>
    <message>
        <source>Put on the day</source>
        <translation>日に載せる</translation>
    </message>
    <message>
        <source>Put this tree on the day</source>
        <translation>この木を日に載せる</translation>
    </message>
    <message>
        <source>Order of work</source>
        <translation>作業順</translation>
    </message>
    <message>
        <source>buds</source>
        <translation>芽</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>配合</translation>
    </message>
    <message>
        <source>helper</source>
        <translation>手伝い</translation>
    </message>
    <message>
        <source>name</source>
        <translation>名前</translation>
    </message>
    <message>
        <source>&amp;Work by</source>
        <translation>作業順(&amp;W)</translation>
    </message>
    <message>
        <source>How so?</source>
        <translation>算出根拠</translation>
    </message>
    <message>
        <source>How the figures of the day come about</source>
        <translation>その日の値の算出根拠</translation>
    </message>
    <message>
        <source>Tick off what has litres</source>
        <translation>L を記入した木を済みに</translation>
    </message>
    <message>
        <source>Tick off every tree whose litres were written</source>
        <translation>L を記入した木をすべて済みにする</translation>
    </message>
    <message>
        <source>Day sheet...</source>
        <translation>作業表...</translation>
    </message>
    <message>
        <source>Batch cards...</source>
        <translation>バッチカード...</translation>
    </message>
    <message>
        <source>Pot labels...</source>
        <translation>鉢ラベル...</translation>
    </message>
    <message>
        <source>Write as PDF: %1</source>
        <translation>PDF に書き出す：%1</translation>
    </message>
    <message>
        <source>On</source>
        <translation>日付</translation>
    </message>
    <message>
        <source>day</source>
        <translation>日付</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>名前</translation>
    </message>
    <message>
        <source>stands on the sheets</source>
        <translation>印刷シートに載る</translation>
    </message>
    <message>
        <source>Tub</source>
        <translation>トロ舟</translation>
    </message>
    <message>
        <source>no batch is larger</source>
        <translation>バッチの最大量</translation>
    </message>
    <message>
        <source>tub</source>
        <translation>トロ舟</translation>
    </message>
    <message>
        <source>Scoop</source>
        <translation>土入れ</translation>
    </message>
    <message>
        <source>struck off level</source>
        <translation>すり切り</translation>
    </message>
    <message>
        <source>scoop</source>
        <translation>土入れ</translation>
    </message>
    <message>
        <source>Settling</source>
        <translation>締まり</translation>
    </message>
    <message>
        <source>settling</source>
        <translation>締まり</translation>
    </message>
    <message>
        <source>Spill</source>
        <translation>こぼれ</translation>
    </message>
    <message>
        <source>spill</source>
        <translation>こぼれ</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>メモ</translation>
    </message>
    <message>
        <source>weather, helpers, what to do better</source>
        <translation>天気、手伝い、改善点</translation>
    </message>
    <message>
        <source>note</source>
        <translation>メモ</translation>
    </message>
    <message>
        <source>Take the plan from the record</source>
        <translation>記録の計画を使う</translation>
    </message>
    <message>
        <source>Take pot litres from the tree&apos;s newest root-mass plan</source>
        <translation>木の最新の根鉢計画から必要量を取る</translation>
    </message>
    <message>
        <source>Take off the day</source>
        <translation>日から外す</translation>
    </message>
    <message>
        <source>Take this tree off the day</source>
        <translation>この木を日から外す</translation>
    </message>
    <message>
        <source>Mix of this tree</source>
        <translation>この木の配合</translation>
    </message>
    <message>
        <source>Pot of this tree</source>
        <translation>この木の鉢</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>鉢</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>配合</translation>
    </message>
    <message>
        <source>Pot</source>
        <translation>鉢</translation>
    </message>
    <message>
        <source>New mix in the pot</source>
        <translation>鉢の新しい用土</translation>
    </message>
    <message>
        <source>as it lies; empty: all the pot holds</source>
        <translation>締まった量。空欄：鉢いっぱい</translation>
    </message>
    <message>
        <source>fill</source>
        <translation>充填量</translation>
    </message>
    <message>
        <source>If it goes worse</source>
        <translation>悪い場合</translation>
    </message>
    <message>
        <source>new mix of the worst fall-back</source>
        <translation>最悪の代替案での新しい用土</translation>
    </message>
    <message>
        <source>fall-back</source>
        <translation>代替案</translation>
    </message>
    <message>
        <source>Kept root mass</source>
        <translation>残す根鉢</translation>
    </message>
    <message>
        <source>weighed with what clings to it; kg can be typed</source>
        <translation>付いている土ごと計量。kg も入力可</translation>
    </message>
    <message>
        <source>kept root mass</source>
        <translation>残す根鉢</translation>
    </message>
    <message>
        <source>Find a recipe from what is on the shelf</source>
        <translation>棚にあるものでレシピを探す</translation>
    </message>
    <message>
        <source>The evening before</source>
        <translation>前日の夕方</translation>
    </message>
    <message>
        <source>In the morning</source>
        <translation>当日の朝</translation>
    </message>
    <message>
        <source>What follows from the figures</source>
        <translation>値から出る作業</translation>
    </message>
    <message>
        <source>Space ticks, F2 changes a line, Delete takes it away.</source>
        <translation>スペースで印、F2 で行を編集、Delete で削除。</translation>
    </message>
    <message>
        <source>one more line, then Enter</source>
        <translation>もう一行、そして Enter</translation>
    </message>
    <message>
        <source>One more line: %1</source>
        <translation>もう一行：%1</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>追加</translation>
    </message>
    <message>
        <source>list</source>
        <translation>リスト</translation>
    </message>
    <message>
        <source>Mix that is left over</source>
        <translation>残った配合</translation>
    </message>
    <message>
        <source>Made in all</source>
        <translation>作った合計</translation>
    </message>
    <message>
        <source>Return to stock</source>
        <translation>在庫に戻す</translation>
    </message>
    <message>
        <source>Trees due by</source>
        <translation>この日までに時期の木</translation>
    </message>
    <message>
        <source>Season sheet...</source>
        <translation>シーズン表...</translation>
    </message>
    <message>
        <source>Write the season as PDF</source>
        <translation>シーズンを PDF に書き出す</translation>
    </message>
    <message>
        <source>%1 of repotting day %2</source>
        <translation>植え替え日 %2 の%1</translation>
    </message>
    <message>
        <source>%1 of tree %2</source>
        <translation>木 %2 の%1</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>計画</translation>
    </message>
    <message>
        <source>litres</source>
        <translation>L 数</translation>
    </message>
    <message>
        <source>repotting day</source>
        <translation>植え替え日</translation>
    </message>
    <message>
        <source>Label the old pots</source>
        <translation>古い鉢に札を付ける</translation>
    </message>
    <message>
        <source>repotting day %1</source>
        <translation>植え替え日 %1</translation>
    </message>
    <message>
        <source>repotting day %1 removed</source>
        <translation>植え替え日 %1 を削除</translation>
    </message>
    <message>
        <source>tree %1</source>
        <translation>木 %1</translation>
    </message>
    <message>
        <source>Tree %1 is done; take its tick back first.</source>
        <translation>木 %1 は済みです。先に済みを取り消してください。</translation>
    </message>
    <message>
        <source>tree %1 taken off</source>
        <translation>木 %1 を外した</translation>
    </message>
    <message>
        <source>Tree %1 can&apos;t be ticked off yet: see its note.</source>
        <translation>木 %1 はまだ済みにできません。メモを見てください。</translation>
    </message>
    <message>
        <source>Done: %1. Undo gives all back.</source>
        <translation>済み：%1。「元に戻す」で全部戻ります。</translation>
    </message>
    <message>
        <source>Done: %1. By the record %2 is below nothing: count it.</source>
        <translation>済み：%1。帳簿上 %2 が 0 を下回ります。数えてください。</translation>
    </message>
    <message>
        <source>Write what was made and what is left first.</source>
        <translation>先に作った量と残った量を記入してください。</translation>
    </message>
    <message>
        <source>In stock: %1.</source>
        <translation>在庫：%1。</translation>
    </message>
    <message>
        <source>no trees yet</source>
        <translation>木はまだありません</translation>
    </message>
    <message>
        <source>all are on it</source>
        <translation>すべて載っています</translation>
    </message>
    <message>
        <source>Put trees on the day first.</source>
        <translation>先に木を載せてください。</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>購入するもの</translation>
    </message>
    <message>
        <source>For each tree</source>
        <translation>木ごと</translation>
    </message>
    <message>
        <source>%1 by what was used: %2, the median of the last %3</source>
        <translation>%1（使用実績から）：%2、直近 %3 件の中央値</translation>
    </message>
    <message>
        <source>Heaviest: %1, %2</source>
        <translation>最も重い：%1、%2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>By the record %1 is below nothing: count it</source>
        <translation>帳簿上 %1 が 0 を下回ります。数えてください</translation>
    </message>
    <message>
        <source>%1 of %2 trees done, sheet revision %3</source>
        <translation>%2 本中 %1 本済み、シート改訂 %3</translation>
    </message>
    <message>
        <source>No tree chosen</source>
        <translation>木が選ばれていません</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>まだなし</translation>
    </message>
    <message>
        <source>No tree is due by then, as far as the record knows.</source>
        <translation>記録の限りでは、それまでに時期の来る木はありません。</translation>
    </message>
    <message>
        <source>Trees that are due and can&apos;t be added up yet</source>
        <translation>時期の来た木で、まだ合計できないもの</translation>
    </message>
    <message>
        <source>How the day adds up</source>
        <translation>その日の合計のしかた</translation>
    </message>
    <message>
        <source>day sheet</source>
        <translation>作業表</translation>
    </message>
    <message>
        <source>batch cards</source>
        <translation>バッチカード</translation>
    </message>
    <message>
        <source>pot labels</source>
        <translation>鉢ラベル</translation>
    </message>
    <message>
        <source>season</source>
        <translation>シーズン</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>%1 に保存しました。</translation>
    </message>
    <message>
        <source>There is nothing to print yet: put trees with mix and pot on the day.</source>
        <translation>印刷するものがまだありません。配合と鉢のある木を載せてください。</translation>
    </message>
    <message>
        <source>Root-mass plans</source>
        <translation>根鉢計画</translation>
    </message>
    <message>
        <source>order of work</source>
        <translation>作業順</translation>
    </message>
    <message>
        <source>sheet of repotting day %1 printed</source>
        <translation>植え替え日 %1 のシートを印刷</translation>
    </message>
    <message>
        <source>empty: of the mix, else as learnt, else 0 %</source>
        <translation>空欄：配合の値、なければこれまでの実績、なければ 0 %</translation>
    </message>
    <message>
        <source>Sphagnum of the shoulder</source>
        <translation>肩盛りのミズゴケ</translation>
    </message>
    <message>
        <source>as it lies; from the plan, where there is a shoulder</source>
        <translation>締まった量。肩盛りがあれば計画から</translation>
    </message>
    <message>
        <source>sphagnum</source>
        <translation>ミズゴケ</translation>
    </message>
    <message>
        <source>Top dressing of</source>
        <translation>化粧土に使うもの</translation>
    </message>
    <message>
        <source>a bag like K-07, a fraction or a material; its thickness stands at the pot</source>
        <translation>K-07 のような袋、区分または資材。厚さは鉢に記入</translation>
    </message>
    <message>
        <source>top dressing</source>
        <translation>化粧土</translation>
    </message>
    <message>
        <source>Corrected: tree %1, with its history and the stock. Undo gives all back.</source>
        <translation>訂正：木 %1、履歴と在庫も。「元に戻す」で全部戻ります。</translation>
    </message>
    <message>
        <source>What was made and what is left of a mix: the leftover becomes a tub in stock, and what was spilt teaches the next day.</source>
        <translation>作った量と残った量：残りは在庫のトロ舟になり、こぼれた量は次の植え替え日に生かされます。</translation>
    </message>
    <message>
        <source>Return the leftover to stock</source>
        <translation>残りを在庫に戻す</translation>
    </message>
    <message>
        <source>This day stays: trees were ticked off on it. Take their ticks back first.</source>
        <translation>この日は残します。済みの木があります。先に済みの印を戻してください。</translation>
    </message>
    <message>
        <source>There is no further tree to put on the day: add one on the Trees tab first.</source>
        <translation>この日に載せられる木はもうありません。先に「木」タブで加えてください。</translation>
    </message>
    <message>
        <source>No open tree has its litres yet: write them under “poured in” first.</source>
        <translation>L が記入された未済の木がまだありません。先に「注いだ量」に記入してください。</translation>
    </message>
    <message>
        <source>More can&apos;t be left over than was made: correct one of them.</source>
        <translation>残りは作った量を超えられません。どちらかを直してください。</translation>
    </message>
    <message>
        <source>%1, removed</source>
        <translation>%1（削除済み）</translation>
    </message>
    <message>
        <source>No tree of the day has a root-mass plan in the record: plan its root mass first.</source>
        <translation>この日の木には、記録に根鉢計画がありません。先に根鉢を計画してください。</translation>
    </message>
    <message>
        <source>The history of tree %1 has no cuts, as its root-mass plan can&apos;t be worked out: mend the plan, then tick the tree again.</source>
        <translation>木 %1 の履歴に切断がありません。根鉢計画が計算できないためです。計画を直してから、もう一度済みにしてください。</translation>
    </message>
    <message>
        <source>planned: %1, Enter takes it</source>
        <translation>計画：%1（Enter で採用）</translation>
    </message>
    <message>
        <source>likely: %1, Enter takes it</source>
        <translation>見込み：%1（Enter で採用）</translation>
    </message>
    <message>
        <source>Root-mass plans...</source>
        <translation>根鉢計画...</translation>
    </message>
    <message>
        <source>Find parts from the shelf</source>
        <translation>在庫から配合比を探す</translation>
    </message>
    <message>
        <source>root-mass plans</source>
        <translation>根鉢計画</translation>
    </message>
    <message>
        <source>Short of grain, see “Screen and buy”: %1</source>
        <translation>粒が不足（「ふるい・購入」を参照）：%1</translation>
    </message>
    <message>
        <source>To mix</source>
        <translation>混合量</translation>
    </message>
    <message>
        <source>empty: of the mix, else as learnt, else 7 %</source>
        <translation>空欄：配合の値、なければこれまでの実績、なければ 7 %</translation>
    </message>
    <message>
        <source>Done: %1. Undo ticks it off again.</source>
        <translation>済み：%1。「元に戻す」で再び済みになります。</translation>
    </message>
    <message>
        <source>By its date the day is still to come: correct the date if the work is done.</source>
        <translation>日付ではこの日はまだ先です。作業が済んでいるなら日付を直してください。</translation>
    </message>
    <message>
        <source>%1 %2, %3 of %4 done</source>
        <comment>a day, its name, trees done, all its trees</comment>
        <translation>%1 %2、%4 本中 %3 本済み</translation>
    </message>
    <message>
        <source>a day like %1</source>
        <translation>%1 のような日付</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::DayRoom</name>
    <message>
        <source>Repotting da&amp;y</source>
        <translation>植え替え日(&amp;Y)</translation>
    </message>
    <message>
        <source>&amp;New day</source>
        <translation>新しい日</translation>
    </message>
    <message>
        <source>Ctrl+Alt+N</source>
        <translation>Ctrl+Alt+N</translation>
    </message>
    <message>
        <source>&amp;Put the tree on the day</source>
        <translation>木を日に載せる(&amp;P)</translation>
    </message>
    <message>
        <source>Ctrl+Alt+A</source>
        <translation>Ctrl+Alt+A</translation>
    </message>
    <message>
        <source>Take the tree o&amp;ff the day</source>
        <translation>木を日から外す(&amp;O)</translation>
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
        <translation>木を済みにする/戻す(&amp;T)</translation>
    </message>
    <message>
        <source>Ctrl+Alt+K</source>
        <translation>Ctrl+Alt+K</translation>
    </message>
    <message>
        <source>Tick off &amp;what has litres</source>
        <translation>L を記入した木を済みに(&amp;W)</translation>
    </message>
    <message>
        <source>Ctrl+Alt+E</source>
        <translation>Ctrl+Alt+E</translation>
    </message>
    <message>
        <source>&amp;Season</source>
        <translation>シーズン(&amp;S)</translation>
    </message>
    <message>
        <source>Ctrl+Alt+S</source>
        <translation>Ctrl+Alt+S</translation>
    </message>
    <message>
        <source>&amp;Remove the day</source>
        <translation>日を削除(&amp;R)</translation>
    </message>
    <message>
        <source>Ctrl+Alt+Shift+Delete</source>
        <translation>Ctrl+Alt+Shift+Delete</translation>
    </message>
    <message>
        <source>&amp;Day sheet as PDF...</source>
        <translation>作業表を PDF に(&amp;D)...</translation>
    </message>
    <message>
        <source>Ctrl+Alt+D</source>
        <translation>Ctrl+Alt+D</translation>
    </message>
    <message>
        <source>&amp;Batch cards as PDF...</source>
        <translation>バッチカードを PDF に(&amp;B)...</translation>
    </message>
    <message>
        <source>Ctrl+Alt+B</source>
        <translation>Ctrl+Alt+B</translation>
    </message>
    <message>
        <source>Pot &amp;labels as PDF...</source>
        <translation>鉢ラベルを PDF に(&amp;L)...</translation>
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
        <translation>記録の計画を使う(&amp;C)</translation>
    </message>
    <message>
        <source>R&amp;oot-mass plans as PDF...</source>
        <translation>根鉢計画を PDF に(&amp;N)...</translation>
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
        <translation>済み</translation>
    </message>
    <message>
        <source>to do</source>
        <translation>未済</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1、%2：%3</translation>
    </message>
    <message>
        <source>ticking a tree off takes its grain from the stock and writes its history and the log</source>
        <translation>木を済みにすると、在庫から粒を引き、履歴と日誌に書き込みます</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>木</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>配合</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>鉢</translation>
    </message>
    <message>
        <source>the plan to follow; after the work, the one that was followed</source>
        <translation>従う計画。作業後は実際に従った計画</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>計画</translation>
    </message>
    <message>
        <source>main mix as it lies in the pot</source>
        <translation>鉢の中での主な用土の量</translation>
    </message>
    <message>
        <source>in the pot</source>
        <translation>鉢の中</translation>
    </message>
    <message>
        <source>before settling and spill</source>
        <translation>締まりとこぼれの前</translation>
    </message>
    <message>
        <source>to pour</source>
        <translation>注ぐ量</translation>
    </message>
    <message>
        <source>scoops</source>
        <translation>土入れ</translation>
    </message>
    <message>
        <source>litres that were poured in; they teach settling and spill</source>
        <translation>実際に注いだ L。締まりとこぼれの実績になります</translation>
    </message>
    <message>
        <source>poured in</source>
        <translation>注いだ量</translation>
    </message>
    <message>
        <source>buds</source>
        <translation>芽</translation>
    </message>
    <message>
        <source>helper</source>
        <translation>手伝い</translation>
    </message>
    <message>
        <source>note</source>
        <translation>メモ</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ExplanationPopup</name>
    <message>
        <source>Read on: %1</source>
        <translation>続きを読む：%1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::FieldForm</name>
    <message>
        <source>%1 in %2</source>
        <translation>%1（%2）</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::FigurePanel</name>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>%1: not computed, %2</source>
        <translation>%1：計算していません、%2</translation>
    </message>
    <message>
        <source>nothing is known of its range</source>
        <translation>範囲は不明です</translation>
    </message>
    <message>
        <source>%1: no range</source>
        <translation>%1：範囲なし</translation>
    </message>
    <message>
        <source>%1, in 90 of 100 cases: %2</source>
        <translation>%1、100 例中 90 例：%2</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::FindPanel</name>
    <message>
        <source>More</source>
        <translation>詳細</translation>
    </message>
    <message>
        <source>More: wishes, limits and the grain to choose from</source>
        <translation>詳細：希望条件、限界、選べる粒</translation>
    </message>
    <message>
        <source>Group of trees</source>
        <translation>樹種グループ</translation>
    </message>
    <message>
        <source>Pot</source>
        <translation>鉢</translation>
    </message>
    <message>
        <source>Wishes</source>
        <translation>希望条件</translation>
    </message>
    <message>
        <source>Dust is finer than</source>
        <translation>微塵の上限粒径</translation>
    </message>
    <message>
        <source>size of dust</source>
        <translation>微塵の粒径</translation>
    </message>
    <message>
        <source>1 mm, less in very small pots</source>
        <translation>1 mm、ごく小さい鉢ではもっと小さく</translation>
    </message>
    <message>
        <source>Mixed litres needed</source>
        <translation>必要な混合量</translation>
    </message>
    <message>
        <source>litres needed</source>
        <translation>必要量</translation>
    </message>
    <message>
        <source>one filling: %1</source>
        <translation>一鉢分：%1</translation>
    </message>
    <message>
        <source>one filling of the pot</source>
        <translation>一鉢分</translation>
    </message>
    <message>
        <source>Components, at most</source>
        <translation>配合材の数、上限</translation>
    </message>
    <message>
        <source>components of a recipe</source>
        <translation>レシピの配合材数</translation>
    </message>
    <message>
        <source>1 to 6</source>
        <translation>1～6</translation>
    </message>
    <message>
        <source>whole parts to scoop</source>
        <translation>土入れで量る整数比</translation>
    </message>
    <message>
        <source>free shares</source>
        <translation>自由な割合</translation>
    </message>
    <message>
        <source>Recipes in</source>
        <translation>レシピの形</translation>
    </message>
    <message>
        <source>whole parts</source>
        <translation>整数比</translation>
    </message>
    <message>
        <source>Parts in all, at most</source>
        <translation>配合比の合計、上限</translation>
    </message>
    <message>
        <source>parts of a recipe</source>
        <translation>レシピの配合比</translation>
    </message>
    <message>
        <source>1 to 20</source>
        <translation>1～20</translation>
    </message>
    <message>
        <source>Grain to choose from</source>
        <translation>選べる粒</translation>
    </message>
    <message>
        <source>take</source>
        <translation>使う</translation>
    </message>
    <message>
        <source>stock, L</source>
        <translation>在庫、L</translation>
    </message>
    <message>
        <source>price/L</source>
        <translation>価格/L</translation>
    </message>
    <message>
        <source>least %</source>
        <translation>下限 %</translation>
    </message>
    <message>
        <source>most %</source>
        <translation>上限 %</translation>
    </message>
    <message>
        <source>Keep for this group</source>
        <translation>このグループ用に保存</translation>
    </message>
    <message>
        <source>Start this group with these wishes from now on</source>
        <translation>今後このグループはこの希望条件から始める</translation>
    </message>
    <message>
        <source>group of trees</source>
        <translation>樹種グループ</translation>
    </message>
    <message>
        <source>wishes for %1</source>
        <translation>%1 の希望条件</translation>
    </message>
    <message>
        <source>pot %1</source>
        <translation>鉢 %1</translation>
    </message>
    <message>
        <source>wish: %1</source>
        <translation>希望条件：%1</translation>
    </message>
    <message>
        <source>%1 as a candidate</source>
        <translation>%1 を候補に</translation>
    </message>
    <message>
        <source>choose a group</source>
        <translation>グループを選ぶ</translation>
    </message>
    <message>
        <source>as typed under Pot</source>
        <translation>「鉢」に入力したとおり</translation>
    </message>
    <message>
        <source>choose a pot, or type its lengths</source>
        <translation>鉢を選ぶか寸法を入力</translation>
    </message>
    <message>
        <source>%1 deep to the fill line, %2; wanted grain and litres below are for this pot.</source>
        <translation>充填線までの深さ %1、%2。下の希望粒径と L はこの鉢のものです。</translation>
    </message>
    <message>
        <source>stock, %1</source>
        <translation>在庫、%1</translation>
    </message>
    <message>
        <source>%1 (not sieved)</source>
        <translation>%1（未ふるい）</translation>
    </message>
    <message>
        <source>%1 of it are reserved for a mix</source>
        <translation>うち %1 は配合用に取り置き済み</translation>
    </message>
    <message>
        <source>See the marked fields under “More”.</source>
        <translation>「詳細」の印の付いた欄を見てください。</translation>
    </message>
    <message>
        <source>the share of a candidate</source>
        <translation>候補の割合</translation>
    </message>
    <message>
        <source>Choose a group first</source>
        <translation>先にグループを選んでください</translation>
    </message>
    <message>
        <source>Type its lengths under “By hand”, or choose one of the record.</source>
        <translation>「手動」で寸法を入力するか、記録の鉢を選んでください。</translation>
    </message>
    <message>
        <source>one filling of each pot: %1</source>
        <translation>各鉢の一鉢分：%1</translation>
    </message>
    <message>
        <source>Pots the mix should be good in too</source>
        <translation>配合がほかにも良いことを求める鉢</translation>
    </message>
    <message>
        <source>good in these pots too</source>
        <translation>これらの鉢でも良いこと</translation>
    </message>
    <message>
        <source>filling, L</source>
        <translation>充填量、L</translation>
    </message>
    <message>
        <source>All groups...</source>
        <translation>すべてのグループ...</translation>
    </message>
    <message>
        <source>See, change and add groups of trees</source>
        <translation>樹種グループを見る・変更・追加する</translation>
    </message>
    <message>
        <source>further pot %1</source>
        <translation>別の鉢 %1</translation>
    </message>
    <message>
        <source>filling, %1</source>
        <translation>充填量、%1</translation>
    </message>
    <message>
        <source>%1, %2 reserved</source>
        <translation>%1、取り置き %2</translation>
    </message>
    <message>
        <source>“%1” cannot be had: nothing on the shelf comes near it, and so no mix does. Loosen it, or add grain.</source>
        <translation>「%1」は実現できません。棚に近いものがなく、どの配合でも届きません。条件を緩めるか、粒を加えてください。</translation>
    </message>
    <message>
        <source>Not known how much of it there is: type it, or leave it open.</source>
        <translation>どれだけ残っているかわかりません。入力するか、空けておいてください。</translation>
    </message>
    <message>
        <source>Its bag has no price or no litres: write them down there, or type what a litre costs.</source>
        <translation>その袋に価格または容量がありません。袋に書き込むか、1 リットルの値段を入力してください。</translation>
    </message>
    <message>
        <source>Only bags have a price: type what a litre of this is worth, or leave it open.</source>
        <translation>価格があるのは袋だけです。1 リットルの値打ちを入力するか、空けておいてください。</translation>
    </message>
    <message>
        <source>The wanted grain is now %1 to %2, as the group asks; undo brings back what was typed.</source>
        <translation>希望粒径はグループに合わせて %1～%2 になりました。元に戻すと入力した値に戻ります。</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::GoneNotice</name>
    <message>
        <source>Bring it back with what I typed</source>
        <translation>入力した内容とともに復活させる</translation>
    </message>
    <message>
        <source>Let it go</source>
        <translation>復活させない</translation>
    </message>
    <message>
        <source>What was typed into %1 and not saved: %2</source>
        <translation>%1 に入力して保存しなかった内容：%2</translation>
    </message>
    <message>
        <source>%1 brought back</source>
        <translation>%1 の復活</translation>
    </message>
    <message>
        <source>%1 is not in the record any more: it was removed or undone meanwhile, perhaps in another window. What you typed stands here and is not saved yet.</source>
        <translation>%1 はもう記録にありません。その間に、おそらく別のウィンドウで、削除されたか元に戻されました。入力した内容はここにあり、まだ保存されていません。</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::GradingChart</name>
    <message>
        <source>Grading chart</source>
        <translation>粒度曲線</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>%1: %2 passes</source>
        <translation>%1：通過 %2</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::GrainForm</name>
    <message>
        <source>none: own figures only</source>
        <translation>なし：自分の値だけ</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>資材</translation>
    </message>
    <message>
        <source>&amp;Material</source>
        <translation>資材(&amp;M)</translation>
    </message>
    <message>
        <source>material</source>
        <translation>資材</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>不明</translation>
    </message>
    <message>
        <source>%1 (typical)</source>
        <translation>%1（代表値）</translation>
    </message>
    <message>
        <source>&amp;Litre weight, dry</source>
        <translation>容積重、乾燥(&amp;L)</translation>
    </message>
    <message>
        <source>litre weight</source>
        <translation>容積重</translation>
    </message>
    <message>
        <source>weigh a litre</source>
        <translation>1 L を量る</translation>
    </message>
    <message>
        <source>Gr&amp;ain density</source>
        <translation>粒子密度(&amp;A)</translation>
    </message>
    <message>
        <source>grain density</source>
        <translation>粒子密度</translation>
    </message>
    <message>
        <source>dry mass of the grain with its inner pores</source>
        <translation>内部の孔隙を含む粒の乾燥質量</translation>
    </message>
    <message>
        <source>Soli&amp;d density</source>
        <translation>真密度(&amp;D)</translation>
    </message>
    <message>
        <source>solid density</source>
        <translation>真密度</translation>
    </message>
    <message>
        <source>dry mass of the solid without pores</source>
        <translation>孔隙を除いた固体の乾燥質量</translation>
    </message>
    <message>
        <source>&amp;Water after 24 h</source>
        <translation>24 時間後の水(&amp;W)</translation>
    </message>
    <message>
        <source>water absorption</source>
        <translation>吸水率</translation>
    </message>
    <message>
        <source>water in the soaked, surface-dry grain, of its dry mass</source>
        <translation>表乾状態の吸水粒の水、乾燥質量比</translation>
    </message>
    <message>
        <source>%1 Typical figures stand in for what is not measured.</source>
        <translation>%1 未測定の値には代表値を使います。</translation>
    </message>
    <message>
        <source>Without a material the litre weight must be weighed before the component can go into the mix.</source>
        <translation>資材がない場合、配合に入れる前に容積重を量る必要があります。</translation>
    </message>
    <message>
        <source>of one litre, loosely poured</source>
        <translation>ゆるく入れた 1 リットルの</translation>
    </message>
    <message>
        <source>Sieve, across</source>
        <translation>ふるいの内径</translation>
    </message>
    <message>
        <source>width of the sieves</source>
        <translation>ふるいの内径</translation>
    </message>
    <message>
        <source>inside its frame; shows an overloaded sieve</source>
        <translation>枠の内側。のせすぎがわかります</translation>
    </message>
    <message>
        <source>Water in the sample</source>
        <translation>試料の水分</translation>
    </message>
    <message>
        <source>moisture of the sample</source>
        <translation>試料の含水比</translation>
    </message>
    <message>
        <source>as sieved, of its dry mass; empty if dry</source>
        <translation>ふるったとき、乾燥質量に対して。乾いていれば空欄</translation>
    </message>
    <message>
        <source>Washed, dry</source>
        <translation>水洗い後、乾燥</translation>
    </message>
    <message>
        <source>washed mass of the sample</source>
        <translation>試料の水洗い後の質量</translation>
    </message>
    <message>
        <source>of the sample, if its dust was washed out</source>
        <translation>微塵を洗い流した場合の試料</translation>
    </message>
    <message>
        <source>The sample that was sieved</source>
        <translation>ふるった試料</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::GroupsPage</name>
    <message>
        <source>Groups of trees</source>
        <translation>樹種グループ</translation>
    </message>
    <message>
        <source>group</source>
        <translation>グループ</translation>
    </message>
    <message>
        <source>whose</source>
        <translation>由来</translation>
    </message>
    <message>
        <source>&amp;New, like this one</source>
        <translation>これを元に新規(&amp;N)</translation>
    </message>
    <message>
        <source>Add a group of your own that starts with the wishes of the chosen one</source>
        <translation>選んだグループの希望条件から始まる自分のグループを追加</translation>
    </message>
    <message>
        <source>&amp;Leave out</source>
        <translation>除外(&amp;L)</translation>
    </message>
    <message>
        <source>Do not offer this group any more; a group of your own goes</source>
        <translation>このグループを今後出さない。自分のグループは削除</translation>
    </message>
    <message>
        <source>Re&amp;store</source>
        <translation>元に戻す(&amp;S)</translation>
    </message>
    <message>
        <source>Back to common practice, or offered again</source>
        <translation>一般的な目安に戻す、または再び出す</translation>
    </message>
    <message>
        <source>Find &amp;parts for it</source>
        <translation>配合比を探す(&amp;P)</translation>
    </message>
    <message>
        <source>Find parts for this group</source>
        <translation>このグループの配合比を探す</translation>
    </message>
    <message>
        <source>Wishes of this group</source>
        <translation>このグループの希望条件</translation>
    </message>
    <message>
        <source>Na&amp;me</source>
        <translation>名前(&amp;M)</translation>
    </message>
    <message>
        <source>as you call these trees</source>
        <translation>この木々の呼び名</translation>
    </message>
    <message>
        <source>name</source>
        <translation>名前</translation>
    </message>
    <message>
        <source>Trees it is for</source>
        <translation>対象の木</translation>
    </message>
    <message>
        <source>any</source>
        <translation>すべて</translation>
    </message>
    <message>
        <source>trees it is for</source>
        <translation>対象の木</translation>
    </message>
    <message>
        <source>Wanted grain from</source>
        <translation>希望粒径、下限</translation>
    </message>
    <message>
        <source>the finest grain that is wanted</source>
        <translation>希望する最も細かい粒</translation>
    </message>
    <message>
        <source>wanted grain</source>
        <translation>希望粒径</translation>
    </message>
    <message>
        <source>Wanted grain to</source>
        <translation>希望粒径、上限</translation>
    </message>
    <message>
        <source>the coarsest grain that is wanted</source>
        <translation>希望する最も粗い粒</translation>
    </message>
    <message>
        <source>Dust is finer than</source>
        <translation>微塵の上限粒径</translation>
    </message>
    <message>
        <source>what clogs a pot of these trees</source>
        <translation>この木々の鉢を目詰まりさせるもの</translation>
    </message>
    <message>
        <source>size of dust</source>
        <translation>微塵の粒径</translation>
    </message>
    <message>
        <source>Mi&amp;x to start from</source>
        <translation>出発点の配合(&amp;X)</translation>
    </message>
    <message>
        <source>parts and names: 5 akadama : 3 pumice</source>
        <translation>配合比と名前：5 akadama : 3 pumice</translation>
    </message>
    <message>
        <source>mix to start from</source>
        <translation>出発点の配合</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>メモ</translation>
    </message>
    <message>
        <source>what else you go by</source>
        <translation>ほかに目安にすること</translation>
    </message>
    <message>
        <source>note</source>
        <translation>メモ</translation>
    </message>
    <message>
        <source>%1 of the group %2</source>
        <translation>グループ %2 の%1</translation>
    </message>
    <message>
        <source>wishes</source>
        <translation>希望条件</translation>
    </message>
    <message>
        <source>my %1</source>
        <translation>自分の %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>name of a group, number</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>group %1</source>
        <translation>グループ %1</translation>
    </message>
    <message>
        <source>group %1 removed</source>
        <translation>グループ %1 を削除</translation>
    </message>
    <message>
        <source>offer</source>
        <translation>出す</translation>
    </message>
    <message>
        <source>%1 is not offered any more; “Restore” brings it back.</source>
        <translation>%1 は今後出ません。「元に戻す」で戻ります。</translation>
    </message>
    <message>
        <source>group %1 restored</source>
        <translation>グループ %1 を元に戻す</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>Remo&amp;ve</source>
        <translation>削除(&amp;L)</translation>
    </message>
    <message>
        <source>What a mix for these trees should be like, and so what a search for parts starts with. What a tree&apos;s roots bear goes by the group on its own page. It is common practice, never the only way: your climate, your water and your hands know better.</source>
        <translation>これらの木の配合がどうあるべきか、つまり配合比を探すときの出発点です。根が耐えられることは、木のページにあるグループで決まります。一般的な慣行であって唯一の方法ではありません。気候、水、ご自分の手のほうがよく知っています。</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::HowButton</name>
    <message>
        <source>How so? Formula, numbers and source</source>
        <translation>算出根拠：式、数値、出典</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>How so: %1</source>
        <translation>算出根拠：%1</translation>
    </message>
    <message>
        <source>How so: %1, %2</source>
        <translation>算出根拠：%1、%2</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ImportPage</name>
    <message>
        <source>Where a record here differs, the file&apos;s takes its place</source>
        <translation>ここの記録と違う場合、ファイルの方に置き換える</translation>
    </message>
    <message>
        <source>Take them in</source>
        <translation>取り込む</translation>
    </message>
    <message>
        <source>Read the file again</source>
        <translation>ファイルを読み直す</translation>
    </message>
    <message>
        <source>Records from a file</source>
        <translation>ファイルから記録を取り込む</translation>
    </message>
    <message>
        <source>Another file...</source>
        <translation>別のファイル...</translation>
    </message>
    <message>
        <source>The &amp;list holds</source>
        <translation>一覧の種類(&amp;L)</translation>
    </message>
    <message>
        <source>What the list holds</source>
        <translation>一覧の種類</translation>
    </message>
    <message>
        <source>what its columns say</source>
        <translation>列から判断</translation>
    </message>
    <message>
        <source>bags</source>
        <translation>袋</translation>
    </message>
    <message>
        <source>sieve tests</source>
        <translation>ふるい試験</translation>
    </message>
    <message>
        <source>trees</source>
        <translation>木</translation>
    </message>
    <message>
        <source>What is wrong in the file, by row</source>
        <translation>ファイルの誤り（行ごと）</translation>
    </message>
    <message>
        <source>Records of the file and what becomes of them</source>
        <translation>ファイルの記録とその扱い</translation>
    </message>
    <message>
        <source>One moment...</source>
        <translation>お待ちください...</translation>
    </message>
    <message>
        <source>Lists and records (*.csv *.json);;All files (*)</source>
        <translation>一覧と記録 (*.csv *.json);;すべてのファイル (*)</translation>
    </message>
    <message>
        <source>No file is chosen yet.</source>
        <translation>ファイルが選ばれていません。</translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) to take in</source>
        <translation>
            <numerusform>取り込む記録 %n 件</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n here already</source>
        <translation>
            <numerusform>すでにあるもの %n 件</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fault(s): mend them in the file and read it again; until then nothing is taken in</source>
        <translation>
            <numerusform>誤り %n 件：ファイルを直して読み直してください。それまで何も取り込みません</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) taken in; one undo takes them back.</source>
        <translation>
            <numerusform>記録 %n 件を取り込みました。一度の「元に戻す」で全部戻ります。</numerusform>
        </translation>
    </message>
    <message>
        <source>A list of bags, sieve tests, pots or trees as a spreadsheet saves it (CSV), or records, one or all, as JSON. Nothing is taken in before you say so, taking the same file in twice adds nothing twice, and one undo takes all of it back.</source>
        <translation>表計算で保存した袋・ふるい試験・鉢・木の一覧（CSV）、または一件もしくは全部の記録の JSON です。指示するまで何も取り込まず、同じファイルを二度取り込んでも重複せず、一度の「元に戻す」で全部戻せます。</translation>
    </message>
    <message>
        <source>pots</source>
        <translation>鉢</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>閉じる</translation>
    </message>
    <message>
        <source>%1 (taken in all the same)</source>
        <translation>%1（それでも取り込みました）</translation>
    </message>
    <message>
        <source>line %1, character %2</source>
        <translation>%1 行 %2 文字目</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>%1 行</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ImportTableModel</name>
    <message>
        <source>the next free</source>
        <translation>次の空き番号</translation>
    </message>
    <message>
        <source>no.</source>
        <translation>番号</translation>
    </message>
    <message>
        <source>what</source>
        <translation>項目</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>種類</translation>
    </message>
    <message>
        <source>what becomes of it</source>
        <translation>扱い</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::JumpBox</name>
    <message>
        <source>Go to</source>
        <translation>移動</translation>
    </message>
    <message>
        <source>Bag, mix, tree or what to do</source>
        <translation>袋、配合、木、操作</translation>
    </message>
    <message>
        <source>like K-07, or pumice</source>
        <translation>例：K-07、akadama</translation>
    </message>
    <message>
        <source>What fits</source>
        <translation>一致するもの</translation>
    </message>
    <message>
        <source>nothing fits</source>
        <translation>一致なし</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::LogPage</name>
    <message>
        <source>Log, newest first</source>
        <translation>日誌（新しい順）</translation>
    </message>
    <message>
        <source>F&amp;ind</source>
        <translation>検索(&amp;I)</translation>
    </message>
    <message>
        <source>any word of the log</source>
        <translation>日誌の語</translation>
    </message>
    <message>
        <source>&amp;About</source>
        <translation>対象(&amp;A)</translation>
    </message>
    <message>
        <source>From</source>
        <translation>開始</translation>
    </message>
    <message>
        <source>to</source>
        <translation>終了</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>日付(&amp;D)</translation>
    </message>
    <message>
        <source>&amp;Write down</source>
        <translation>書き込む(&amp;W)</translation>
    </message>
    <message>
        <source>what you saw or did; with About above it is kept there too</source>
        <translation>見たこと、したこと。上の「対象」があればそこにも残ります</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>保存(&amp;K)</translation>
    </message>
    <message>
        <source>Keep this line in the log</source>
        <translation>この行を日誌に保存</translation>
    </message>
    <message>
        <source>What it is linked to</source>
        <translation>つながり</translation>
    </message>
    <message>
        <source>Linked to %1</source>
        <translation>%1 とのつながり</translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translation>まだなし</translation>
    </message>
    <message>
        <source>line in the log</source>
        <translation>日誌の行</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>日誌</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>出来事</translation>
    </message>
    <message>
        <source>Where grain went</source>
        <translation>粒の行き先</translation>
    </message>
    <message>
        <source>Sick trees</source>
        <translation>弱った木</translation>
    </message>
    <message>
        <source>A small change is a field that was typed into: a note, a mass, a name. Everything else that happened stands here anyway.</source>
        <translation>小さな変更とは、メモ、重さ、名前などの欄への入力です。それ以外の出来事はいつもここに表示されます。</translation>
    </message>
    <message>
        <source>&amp;Small changes too</source>
        <translation>小さな変更も(&amp;S)</translation>
    </message>
    <message>
        <source>&amp;Small changes too (%1)</source>
        <translation>小さな変更も(&amp;S)（%1）</translation>
    </message>
    <message>
        <source>Show small changes too</source>
        <translation>小さな変更も表示</translation>
    </message>
    <message>
        <source>Show small changes too, %1 are left out</source>
        <translation>小さな変更も表示、%1 件を省略中</translation>
    </message>
    <message>
        <source>Nothing fits Find, About and the days together; empty one of them to see more.</source>
        <translation>検索、対象、日付のすべてに合うものがありません。どれかを空にすると多く見られます。</translation>
    </message>
    <message>
        <source>&amp;Keep with %1</source>
        <translation>%1 とともに保存(&amp;K)</translation>
    </message>
    <message>
        <source>Keep this line in the log and with %1</source>
        <translation>この行を記録に、%1 とともに残す</translation>
    </message>
    <message>
        <source>like %1</source>
        <translation>例：%1</translation>
    </message>
    <message>
        <source>%1 is no day like %2.</source>
        <translation>%1 は %2 のような日付ではありません。</translation>
    </message>
    <message>
        <source>a bag, its lot, a mix or a tree, like K-07</source>
        <translation>袋、ロット、配合、木（例：K-07）</translation>
    </message>
    <message>
        <source>The whole log is shown.</source>
        <translation>日誌をすべて表示します。</translation>
    </message>
    <message>
        <source>Type a bag, its lot, a mix or a tree into About to see what it is linked to; where its grain went in the end stands on the next tab.</source>
        <translation>「対象」に袋、ロット、配合、木を入力すると、つながりがわかります。粒の最後の行き先は次のタブにあります。</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::LotChart</name>
    <message>
        <source>No lots to compare: type the wanted grain, and grade bags of one material.</source>
        <translation>比べるロットがありません。希望粒径を入力し、同じ資材の袋の粒度を測ってください。</translation>
    </message>
    <message numerus="yes">
        <source>%n lot(s), oldest first; the last, %1: %2.</source>
        <translation>
            <numerusform>%n ロット（古い順）。最後の %1：%2。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A usual range needs %n earlier lot(s).</source>
        <translation>
            <numerusform>通常範囲を出すには以前のロットが %n 件必要です。</numerusform>
        </translation>
    </message>
    <message>
        <source>All within what is usual.</source>
        <translation>すべて通常の範囲です。</translation>
    </message>
    <message>
        <source>Outside what is usual: %1.</source>
        <translation>通常の範囲外：%1。</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>袋</translation>
    </message>
    <message>
        <source>day</source>
        <translation>日付</translation>
    </message>
    <message>
        <source>usual</source>
        <translation>通常</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1～%2</translation>
    </message>
    <message>
        <source>Dust, size, yield and air from lot to lot</source>
        <translation>ロットごとの微塵・粒径・歩留まり・空気</translation>
    </message>
    <message>
        <source>unusual</source>
        <translation>異例</translation>
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
        <translation>袋</translation>
    </message>
    <message>
        <source>Sieving</source>
        <translation>ふるい</translation>
    </message>
    <message>
        <source>Mixes</source>
        <translation>配合</translation>
    </message>
    <message>
        <source>Pots and trees</source>
        <translation>鉢と木</translation>
    </message>
    <message>
        <source>Repotting day</source>
        <translation>植え替え日</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>日誌</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>ファイル(&amp;F)</translation>
    </message>
    <message>
        <source>bench cleared</source>
        <translation>作業台を空にする</translation>
    </message>
    <message>
        <source>&amp;Open sieve tests...</source>
        <translation>ふるい試験を開く(&amp;O)...</translation>
    </message>
    <message>
        <source>Ctrl+Shift+O</source>
        <translation>Ctrl+Shift+O</translation>
    </message>
    <message>
        <source>&amp;Demonstration</source>
        <translation>デモ(&amp;D)</translation>
    </message>
    <message>
        <source>Ctrl+Shift+D</source>
        <translation>Ctrl+Shift+D</translation>
    </message>
    <message>
        <source>Save the &amp;picture or its data...</source>
        <translation>図またはデータを保存(&amp;P)...</translation>
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
        <translation>設定(&amp;S)</translation>
    </message>
    <message>
        <source>Ctrl+,</source>
        <translation>Ctrl+,</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>終了(&amp;Q)</translation>
    </message>
    <message>
        <source>Ctrl+Q</source>
        <translation>Ctrl+Q</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>編集(&amp;E)</translation>
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
        <translation>セルをコピー(&amp;C)</translation>
    </message>
    <message>
        <source>&amp;Paste into the stack</source>
        <translation>ふるいの表に貼り付け(&amp;P)</translation>
    </message>
    <message>
        <source>C&amp;lear cells</source>
        <translation>セルを消去(&amp;L)</translation>
    </message>
    <message>
        <source>&amp;New sieve above</source>
        <translation>上にふるいを追加(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Remove sieve</source>
        <translation>ふるいを削除(&amp;R)</translation>
    </message>
    <message>
        <source>Ctrl+Delete</source>
        <translation>Ctrl+Delete</translation>
    </message>
    <message>
        <source>&amp;Component</source>
        <translation>配合材(&amp;C)</translation>
    </message>
    <message>
        <source>&amp;Next component</source>
        <translation>次の配合材(&amp;N)</translation>
    </message>
    <message>
        <source>Ctrl+PgDown</source>
        <translation>Ctrl+PgDown</translation>
    </message>
    <message>
        <source>&amp;Previous component</source>
        <translation>前の配合材(&amp;P)</translation>
    </message>
    <message>
        <source>Ctrl+PgUp</source>
        <translation>Ctrl+PgUp</translation>
    </message>
    <message>
        <source>&amp;Add a component</source>
        <translation>配合材を追加(&amp;A)</translation>
    </message>
    <message>
        <source>Ctrl+Shift+N</source>
        <translation>Ctrl+Shift+N</translation>
    </message>
    <message>
        <source>&amp;Remove this component</source>
        <translation>この配合材を削除(&amp;R)</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Delete</source>
        <translation>Ctrl+Shift+Delete</translation>
    </message>
    <message>
        <source>&amp;Further sample of this bag</source>
        <translation>この袋の試料を追加(&amp;F)</translation>
    </message>
    <message>
        <source>Ctrl+Shift+F</source>
        <translation>Ctrl+Shift+F</translation>
    </message>
    <message>
        <source>Remove the &amp;last sample</source>
        <translation>最後の試料を削除(&amp;L)</translation>
    </message>
    <message>
        <source>Ctrl+Alt+F</source>
        <translation>Ctrl+Alt+F</translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation>移動(&amp;G)</translation>
    </message>
    <message>
        <source>&amp;Any bag, mix or action...</source>
        <translation>袋・配合・操作を指定(&amp;A)...</translation>
    </message>
    <message>
        <source>Ctrl+K</source>
        <translation>Ctrl+K</translation>
    </message>
    <message>
        <source>&amp;Sieve test</source>
        <translation>ふるい試験(&amp;S)</translation>
    </message>
    <message>
        <source>Ctrl+Shift+1</source>
        <translation>Ctrl+Shift+1</translation>
    </message>
    <message>
        <source>&amp;Grain</source>
        <translation>粒(&amp;G)</translation>
    </message>
    <message>
        <source>Ctrl+Shift+2</source>
        <translation>Ctrl+Shift+2</translation>
    </message>
    <message>
        <source>C&amp;urve of this test</source>
        <translation>この試験の曲線(&amp;U)</translation>
    </message>
    <message>
        <source>Ctrl+Shift+3</source>
        <translation>Ctrl+Shift+3</translation>
    </message>
    <message>
        <source>&amp;Lot to lot</source>
        <translation>ロットごと(&amp;L)</translation>
    </message>
    <message>
        <source>Ctrl+Shift+4</source>
        <translation>Ctrl+Shift+4</translation>
    </message>
    <message>
        <source>&amp;Verdict on the bag</source>
        <translation>袋の判定(&amp;V)</translation>
    </message>
    <message>
        <source>Ctrl+Shift+5</source>
        <translation>Ctrl+Shift+5</translation>
    </message>
    <message>
        <source>S&amp;creen this bag</source>
        <translation>この袋をふるい分ける(&amp;C)</translation>
    </message>
    <message>
        <source>Ctrl+Shift+6</source>
        <translation>Ctrl+Shift+6</translation>
    </message>
    <message>
        <source>&amp;Pot</source>
        <translation>鉢(&amp;P)</translation>
    </message>
    <message>
        <source>Ctrl+Alt+4</source>
        <translation>Ctrl+Alt+4</translation>
    </message>
    <message>
        <source>Curves of the &amp;mix</source>
        <translation>配合の曲線(&amp;M)</translation>
    </message>
    <message>
        <source>Ctrl+Alt+5</source>
        <translation>Ctrl+Alt+5</translation>
    </message>
    <message>
        <source>Pot in s&amp;ection</source>
        <translation>鉢の断面(&amp;E)</translation>
    </message>
    <message>
        <source>Ctrl+Alt+6</source>
        <translation>Ctrl+Alt+6</translation>
    </message>
    <message>
        <source>Litres &amp;in and out</source>
        <translation>投入量とできあがり(&amp;I)</translation>
    </message>
    <message>
        <source>Ctrl+Alt+7</source>
        <translation>Ctrl+Alt+7</translation>
    </message>
    <message>
        <source>Mi&amp;xes side by side</source>
        <translation>配合を並べて比較(&amp;X)</translation>
    </message>
    <message>
        <source>Ctrl+Alt+8</source>
        <translation>Ctrl+Alt+8</translation>
    </message>
    <message>
        <source>Find par&amp;ts</source>
        <translation>配合比を探す(&amp;T)</translation>
    </message>
    <message>
        <source>Ctrl+Shift+7</source>
        <translation>Ctrl+Shift+7</translation>
    </message>
    <message>
        <source>&amp;Recipes found</source>
        <translation>見つかったレシピ</translation>
    </message>
    <message>
        <source>Ctrl+Shift+8</source>
        <translation>Ctrl+Shift+8</translation>
    </message>
    <message>
        <source>Trade-&amp;offs of the recipes</source>
        <translation>レシピの兼ね合い(&amp;O)</translation>
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
        <translation>希望粒径(&amp;W)</translation>
    </message>
    <message>
        <source>Ctrl+B</source>
        <translation>Ctrl+B</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>表示(&amp;V)</translation>
    </message>
    <message>
        <source>Pictures as &amp;tables</source>
        <translation>図を表で表示(&amp;T)</translation>
    </message>
    <message>
        <source>Ctrl+T</source>
        <translation>Ctrl+T</translation>
    </message>
    <message>
        <source>&amp;Whole curve again</source>
        <translation>曲線全体を表示(&amp;W)</translation>
    </message>
    <message>
        <source>Ctrl+9</source>
        <translation>Ctrl+9</translation>
    </message>
    <message>
        <source>&amp;US units</source>
        <translation>米国単位(&amp;U)</translation>
    </message>
    <message>
        <source>Ctrl+Alt+M</source>
        <translation>Ctrl+Alt+M</translation>
    </message>
    <message>
        <source>Colours of the s&amp;ystem</source>
        <translation>システムの配色(&amp;Y)</translation>
    </message>
    <message>
        <source>Ctrl+Alt+0</source>
        <translation>Ctrl+Alt+0</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>ライト(&amp;L)</translation>
    </message>
    <message>
        <source>Ctrl+Alt+1</source>
        <translation>Ctrl+Alt+1</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>ダーク(&amp;D)</translation>
    </message>
    <message>
        <source>Ctrl+Alt+2</source>
        <translation>Ctrl+Alt+2</translation>
    </message>
    <message>
        <source>&amp;High contrast</source>
        <translation>ハイコントラスト(&amp;H)</translation>
    </message>
    <message>
        <source>Ctrl+Alt+3</source>
        <translation>Ctrl+Alt+3</translation>
    </message>
    <message>
        <source>Larger te&amp;xt</source>
        <translation>文字を大きく(&amp;X)</translation>
    </message>
    <message>
        <source>S&amp;maller text</source>
        <translation>文字を小さく(&amp;M)</translation>
    </message>
    <message>
        <source>&amp;Normal text</source>
        <translation>標準の文字(&amp;N)</translation>
    </message>
    <message>
        <source>Ctrl+0</source>
        <translation>Ctrl+0</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>ヘルプ(&amp;H)</translation>
    </message>
    <message>
        <source>&amp;Manual: this page</source>
        <translation>手引き：このページ(&amp;M)</translation>
    </message>
    <message>
        <source>F1</source>
        <translation>F1</translation>
    </message>
    <message>
        <source>C&amp;ontents of the manual</source>
        <translation>手引きの目次(&amp;O)</translation>
    </message>
    <message>
        <source>Ctrl+Shift+F1</source>
        <translation>Ctrl+Shift+F1</translation>
    </message>
    <message>
        <source>The &amp;three doors</source>
        <translation>三つの入口(&amp;T)</translation>
    </message>
    <message>
        <source>Alt+Shift+F1</source>
        <translation>Alt+Shift+F1</translation>
    </message>
    <message>
        <source>Show &amp;cautions again</source>
        <translation>注意を再び表示(&amp;C)</translation>
    </message>
    <message>
        <source>Shift+F1</source>
        <translation>Shift+F1</translation>
    </message>
    <message>
        <source>&amp;About Gritwright</source>
        <translation>Gritwright について(&amp;A)</translation>
    </message>
    <message>
        <source>Ctrl+F1</source>
        <translation>Ctrl+F1</translation>
    </message>
    <message>
        <source>About Gritwright</source>
        <translation>Gritwright について</translation>
    </message>
    <message>
        <source>Gritwright %1: grading, mixes and pots for trees in shallow containers.

Free software under the GNU General Public License, version 3 or later, without any warranty.
Estimates are general information; where a figure matters, measure it in a pot test.</source>
        <translation>Gritwright %1：浅い鉢で育てる木のための粒度・配合・鉢。

GNU 一般公衆利用許諾書バージョン 3 以降による自由ソフトウェアです。いかなる保証もありません。
推定値は一般的な情報です。大切な値は鉢試験で測ってください。</translation>
    </message>
    <message>
        <source>Save “%1”</source>
        <translation>「%1」を保存</translation>
    </message>
    <message>
        <source>Picture (*.png);;Drawing (*.svg);;PDF (*.pdf);;Its data (*.csv)</source>
        <translation>画像 (*.png);;図面 (*.svg);;PDF (*.pdf);;データ (*.csv)</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>%1 に保存しました。</translation>
    </message>
    <message>
        <source>Test sheet as PDF</source>
        <translation>試験票を PDF に</translation>
    </message>
    <message>
        <source>sieve test.pdf</source>
        <translation>ふるい試験.pdf</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Gritwright – demonstration, an invented nursery</source>
        <translation>Gritwright – デモ（架空の樹木園）</translation>
    </message>
    <message>
        <source>Demonstration: everything here is invented and goes when this window is closed.</source>
        <translation>デモ：ここの内容はすべて架空で、このウィンドウを閉じると消えます。</translation>
    </message>
    <message>
        <source>The demonstration can&apos;t be opened</source>
        <translation>デモを開けません</translation>
    </message>
    <message>
        <source>demonstration opened</source>
        <translation>デモを開く</translation>
    </message>
    <message>
        <source>Open sieve tests</source>
        <translation>ふるい試験を開く</translation>
    </message>
    <message>
        <source>Sieve tests (*.csv *.json);;All files (*)</source>
        <translation>ふるい試験 (*.csv *.json);;すべてのファイル (*)</translation>
    </message>
    <message>
        <source>%1 was not opened</source>
        <translation>%1 は開きませんでした</translation>
    </message>
    <message>
        <source>A mix here has up to %1 components; remove one first.</source>
        <translation>配合材は %1 個までです。先に一つ削除してください。</translation>
    </message>
    <message>
        <source>%1 opened</source>
        <translation>%1 を開く</translation>
    </message>
    <message>
        <source>&amp;Years to come</source>
        <translation>先の年(&amp;Y)</translation>
    </message>
    <message>
        <source>Ctrl+Alt+Y</source>
        <translation>Ctrl+Alt+Y</translation>
    </message>
    <message>
        <source>The record could not be opened, so this page is empty; what lies on the bench is kept all the same.</source>
        <translation>記録を開けなかったため、このページは空です。作業台の内容は保たれています。</translation>
    </message>
    <message>
        <source>What can be done...</source>
        <translation>できること...</translation>
    </message>
    <message>
        <source>Records from a f&amp;ile...</source>
        <translation>ファイルから記録を取り込む(&amp;I)...</translation>
    </message>
    <message>
        <source>Ctrl+I</source>
        <translation>Ctrl+I</translation>
    </message>
    <message>
        <source>Open &amp;another record...</source>
        <translation>別の記録を開く(&amp;A)...</translation>
    </message>
    <message>
        <source>Ctrl+Alt+W</source>
        <translation>Ctrl+Alt+W</translation>
    </message>
    <message>
        <source>&amp;Back to the usual record</source>
        <translation>いつもの記録に戻る(&amp;B)</translation>
    </message>
    <message>
        <source>Ctrl+Alt+H</source>
        <translation>Ctrl+Alt+H</translation>
    </message>
    <message>
        <source>Bac&amp;kups of the record</source>
        <translation>記録のバックアップ(&amp;K)</translation>
    </message>
    <message>
        <source>Ctrl+Alt+U</source>
        <translation>Ctrl+Alt+U</translation>
    </message>
    <message>
        <source>Open another record</source>
        <translation>別の記録を開く</translation>
    </message>
    <message>
        <source>Gritwright records (*.gritwright);;All files (*)</source>
        <translation>Gritwright の記録 (*.gritwright);;すべてのファイル (*)</translation>
    </message>
    <message>
        <source>Restore a backup</source>
        <translation>バックアップを復元</translation>
    </message>
    <message>
        <source>Put %1 in the place of the record?</source>
        <translation>記録を %1 に置き換えますか？</translation>
    </message>
    <message>
        <source>What was written down since then is no longer in the record. The record as it is now stays beside it under a name of its own, so nothing is lost.</source>
        <translation>それ以後に書き込んだ内容は記録からなくなります。今の記録は別の名前で隣に残るため、何も失われません。</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>復元</translation>
    </message>
    <message>
        <source>Gritwright – %1, reading only</source>
        <translation>Gritwright – %1（読み取り専用）</translation>
    </message>
    <message>
        <source>Gritwright – %1</source>
        <translation>Gritwright – %1</translation>
    </message>
    <message>
        <source>%1 is open for reading only: nothing here can be changed.</source>
        <translation>%1 は読み取り専用で開いています。ここでは何も変更できません。</translation>
    </message>
    <message>
        <source>This is %1, not the usual record.</source>
        <translation>これは %1 で、いつもの記録ではありません。</translation>
    </message>
    <message>
        <source>Open po&amp;t...</source>
        <translation>鉢を開く(&amp;T)...</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>元に戻す(&amp;U)：%1</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>元に戻す(&amp;U)</translation>
    </message>
    <message>
        <source>Re&amp;do: %1</source>
        <translation>やり直す(&amp;D)：%1</translation>
    </message>
    <message>
        <source>Re&amp;do</source>
        <translation>やり直す(&amp;D)</translation>
    </message>
    <message>
        <source>Pot tests against the pre&amp;dictions</source>
        <translation>鉢試験と予測の比較(&amp;D)</translation>
    </message>
    <message>
        <source>Open pot</source>
        <translation>鉢を開く</translation>
    </message>
    <message>
        <source>Pots (*.json);;All files (*)</source>
        <translation>鉢 (*.json);;すべてのファイル (*)</translation>
    </message>
    <message>
        <source>pot opened</source>
        <translation>鉢を開く</translation>
    </message>
    <message>
        <source>Bottom layer and top dressing of the pot are not on this form and were left out.</source>
        <translation>鉢の鉢底土と化粧土はこの入力欄にないため、省きました。</translation>
    </message>
    <message>
        <source>%1 could not be written: end its name in png, svg, pdf or csv, and choose a folder you may write to.</source>
        <translation>%1 を書き込めませんでした。名前の末尾を png、svg、pdf、csv のどれかにし、書き込めるフォルダーを選んでください。</translation>
    </message>
    <message>
        <source>%1 could not be written: choose a folder you may write to.</source>
        <translation>%1 を書き込めませんでした。書き込めるフォルダーを選んでください。</translation>
    </message>
    <message>
        <source>Cl&amp;ear the bench</source>
        <translation>作業台を空にする(&amp;N)</translation>
    </message>
    <message>
        <source>There is no picture on this page to save.</source>
        <translation>このページには保存できる図がありません。</translation>
    </message>
    <message>
        <source>P&amp;rint the sheet...</source>
        <translation>シートを印刷(&amp;R)...</translation>
    </message>
    <message>
        <source>S&amp;heet as PDF...</source>
        <translation>シートを PDF に(&amp;H)...</translation>
    </message>
    <message>
        <source>Nothing here goes on paper. Sieving and Mixes (Ctrl+2) have the sheet of a test, Pots and trees that of a plan, Repotting day its lists.</source>
        <translation>この画面に印刷するものはありません。「ふるい」と「配合」(Ctrl+2)には試験票、「鉢と木」には計画のシート、「植え替え日」にはリストがあります。</translation>
    </message>
    <message>
        <source>Text at %1 %.</source>
        <translation>文字 %1 %。</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ManualPage</name>
    <message>
        <source>Search the manual</source>
        <translation>手引きを検索</translation>
    </message>
    <message>
        <source>one word or several</source>
        <translation>一語または複数の語</translation>
    </message>
    <message>
        <source>Page before</source>
        <translation>前のページ</translation>
    </message>
    <message>
        <source>To the work (Esc)</source>
        <translation>作業に戻る (Esc)</translation>
    </message>
    <message>
        <source>Chapters</source>
        <translation>章</translation>
    </message>
    <message>
        <source>Text of the chapter</source>
        <translation>章の本文</translation>
    </message>
    <message>
        <source>in no chapter</source>
        <translation>該当する章なし</translation>
    </message>
    <message numerus="yes">
        <source>in %n chapter(s)</source>
        <translation>
            <numerusform>%n 章に該当</numerusform>
        </translation>
    </message>
    <message>
        <source>The manual is written in English.</source>
        <translation>手引きは英語で書かれています。</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::MeasurePage</name>
    <message>
        <source>Measurement</source>
        <translation>測定</translation>
    </message>
    <message>
        <source>&amp;Measure</source>
        <translation>測定(&amp;M)</translation>
    </message>
    <message>
        <source>What is measured</source>
        <translation>測るもの</translation>
    </message>
    <message>
        <source>Pot of the test</source>
        <translation>試験の鉢</translation>
    </message>
    <message>
        <source>In the &amp;pot</source>
        <translation>鉢(&amp;P)</translation>
    </message>
    <message>
        <source>Dust, heat and weight:</source>
        <translation>粉じん、熱、重さ：</translation>
    </message>
    <message>
        <source>dry dusty grain outdoors with a mask; let hot dishes cool; lift wet pots with both hands. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation>埃っぽい粒は屋外でマスクを着けて乾かす。熱い皿は冷ます。濡れた鉢は両手で持ち上げる。一般的な情報です。安全データシート、地域の規則、専門家の助言が優先します。</translation>
    </message>
    <message>
        <source>&amp;Keep what was measured</source>
        <translation>測定値を保存(&amp;K)</translation>
    </message>
    <message>
        <source>Keep what was measured</source>
        <translation>測定値を保存</translation>
    </message>
    <message>
        <source>Mi&amp;x</source>
        <translation>配合(&amp;X)</translation>
    </message>
    <message>
        <source>&amp;Bag or mix</source>
        <translation>袋または配合(&amp;B)</translation>
    </message>
    <message>
        <source>&amp;Bag</source>
        <translation>袋</translation>
    </message>
    <message>
        <source>Complete: keep it, and the estimates use it from now on.</source>
        <translation>そろいました。保存すると、以後の推定に使われます。</translation>
    </message>
    <message>
        <source>Is that right?</source>
        <translation>これで合っていますか？</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>保存しました：%1</translation>
    </message>
    <message>
        <source>straight walls</source>
        <translation>まっすぐな壁</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::MixPage</name>
    <message>
        <source>Mix</source>
        <translation>配合</translation>
    </message>
    <message>
        <source>name of the mix</source>
        <translation>配合の名前</translation>
    </message>
    <message>
        <source>what it is for</source>
        <translation>用途</translation>
    </message>
    <message>
        <source>&amp;Keep this mix</source>
        <translation>この配合を保存</translation>
    </message>
    <message>
        <source>Keep this mix in the record</source>
        <translation>この配合を記録に保存</translation>
    </message>
    <message>
        <source>Ways to a mix</source>
        <translation>配合の決め方</translation>
    </message>
    <message>
        <source>By hand</source>
        <translation>手動</translation>
    </message>
    <message>
        <source>Find parts</source>
        <translation>配合比を探す</translation>
    </message>
    <message>
        <source>Dust and moss:</source>
        <translation>粉じんとコケ：</translation>
    </message>
    <message>
        <source>wet the grain before mixing it, and keep long-fibred moss off your skin and out of your lungs. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation>混ぜる前に粒を湿らせ、長い繊維のミズゴケは肌に触れさせず吸い込まない。一般的な情報です。安全データシート、地域の規則、専門家の助言が優先します。</translation>
    </message>
    <message>
        <source>Pot</source>
        <translation>鉢</translation>
    </message>
    <message>
        <source>Pot test: measure air and water of a kept mix</source>
        <translation>鉢試験：保存した配合の空気と水を測る</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>曲線</translation>
    </message>
    <message>
        <source>Pot in section</source>
        <translation>鉢の断面</translation>
    </message>
    <message>
        <source>Litres</source>
        <translation>リットル</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>比較</translation>
    </message>
    <message>
        <source>Trade-offs</source>
        <translation>兼ね合い</translation>
    </message>
    <message>
        <source>Pot tests</source>
        <translation>鉢試験</translation>
    </message>
    <message>
        <source>Pictures of the mix</source>
        <translation>配合の図</translation>
    </message>
    <message>
        <source>What would narrow it most?</source>
        <translation>範囲を最も狭める測定は？</translation>
    </message>
    <message>
        <source>Worked out as soon as the mix stands still.</source>
        <translation>配合の変更が止まるとすぐ計算します。</translation>
    </message>
    <message>
        <source>Mind: %1</source>
        <translation>注意：%1</translation>
    </message>
    <message>
        <source>Years</source>
        <translation>年数</translation>
    </message>
    <message>
        <source>Pot test...</source>
        <translation>鉢試験...</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::Navigation</name>
    <message>
        <source>Pages</source>
        <translation>ページ</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::NewPotForm</name>
    <message>
        <source>&amp;Keep this pot</source>
        <translation>この鉢を保存(&amp;K)</translation>
    </message>
    <message>
        <source>A new pot</source>
        <translation>新しい鉢</translation>
    </message>
    <message>
        <source>Measure its inside at the rim, and its depth. Nothing is worked out before.</source>
        <translation>縁での内寸と深さを測ってください。それまでは何も計算しません。</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>名前(&amp;N)</translation>
    </message>
    <message>
        <source>as you call it</source>
        <translation>呼び名</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>形</translation>
    </message>
    <message>
        <source>&amp;Shape</source>
        <translation>形(&amp;S)</translation>
    </message>
    <message>
        <source>Rim, length</source>
        <translation>縁、長さ</translation>
    </message>
    <message>
        <source>Rim, across flats</source>
        <translation>縁、対辺</translation>
    </message>
    <message>
        <source>Rim, diameter</source>
        <translation>縁、直径</translation>
    </message>
    <message>
        <source>inside, at the rim</source>
        <translation>内寸、縁で</translation>
    </message>
    <message>
        <source>Rim, width</source>
        <translation>縁、幅</translation>
    </message>
    <message>
        <source>Middle, diameter</source>
        <translation>中央、直径</translation>
    </message>
    <message>
        <source>inside, at half the depth</source>
        <translation>内寸、深さの半分で</translation>
    </message>
    <message>
        <source>&amp;Depth inside</source>
        <translation>内側の深さ(&amp;D)</translation>
    </message>
    <message>
        <source>floor to rim</source>
        <translation>底から縁まで</translation>
    </message>
    <message>
        <source>Keep this pot</source>
        <translation>この鉢を保存</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>今はしない</translation>
    </message>
    <message>
        <source>Not now; what is typed waits</source>
        <translation>今はしない。入力した内容は残ります</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>鉢</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PartsBar</name>
    <message>
        <source>No mix yet: finish the sieve tests and give them parts.</source>
        <translation>配合はまだありません。ふるい試験を終えて配合比を入れてください。</translation>
    </message>
    <message>
        <source>voids between grains</source>
        <translation>粒間孔隙</translation>
    </message>
    <message>
        <source>voids in grains</source>
        <translation>粒内孔隙</translation>
    </message>
    <message>
        <source>solid grain</source>
        <translation>固体</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%2 %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>In go %1; out come %2 mixed, of which %3 once settled.</source>
        <translation>投入 %1。できあがり %2、締まった後の内訳 %3。</translation>
    </message>
    <message>
        <source>what</source>
        <translation>項目</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>量</translation>
    </message>
    <message>
        <source>%1, loose</source>
        <translation>%1、ふんわり</translation>
    </message>
    <message>
        <source>mixed, poured</source>
        <translation>混合、注いだまま</translation>
    </message>
    <message>
        <source>%1, settled</source>
        <translation>%1、締まった後</translation>
    </message>
    <message>
        <source>Litres in and litres out</source>
        <translation>投入量とできあがり量</translation>
    </message>
    <message>
        <source>In: %1 loose, each by itself</source>
        <translation>投入：ふんわり %1、それぞれ単独で</translation>
    </message>
    <message>
        <source>Out: %1 mixed; what fills it once settled</source>
        <translation>できあがり：混合 %1、締まった後の中身</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1（%2）</translation>
    </message>
    <message>
        <source>90 of 100 cases</source>
        <translation>100 例中 90 例</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PartsPanel</name>
    <message>
        <source>Components, in parts of loose litres</source>
        <translation>配合材、ふんわり容積の比</translation>
    </message>
    <message>
        <source>parts of %1</source>
        <translation>%1 の配合比</translation>
    </message>
    <message>
        <source>component %1</source>
        <translation>配合材 %1</translation>
    </message>
    <message>
        <source>Parts of %1, slider</source>
        <translation>%1 の配合比、スライダー</translation>
    </message>
    <message>
        <source>Parts of %1</source>
        <translation>%1 の配合比</translation>
    </message>
    <message>
        <source>Component %1</source>
        <translation>配合材 %1</translation>
    </message>
    <message>
        <source>new component</source>
        <translation>新しい配合材</translation>
    </message>
    <message>
        <source>%1 removed</source>
        <translation>%1 を削除</translation>
    </message>
    <message>
        <source>A mix here has up to %1 components; remove one first.</source>
        <translation>配合材は %1 個までです。先に一つ外してください。</translation>
    </message>
    <message>
        <source>Show %1</source>
        <translation>%1 を表示</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PictureTabs</name>
    <message>
        <source>As a table</source>
        <translation>表で表示</translation>
    </message>
    <message>
        <source>Pictures as tables</source>
        <translation>図を表で表示</translation>
    </message>
    <message>
        <source>%1, as a table</source>
        <translation>%1、表で表示</translation>
    </message>
    <message>
        <source>As a picture</source>
        <translation>図で表示</translation>
    </message>
    <message>
        <source>How so: %1</source>
        <translation>算出根拠：%1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PotDrawing</name>
    <message>
        <source>rim</source>
        <translation>縁</translation>
    </message>
    <message>
        <source>fill line</source>
        <translation>充填線</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>底</translation>
    </message>
    <message>
        <source>The pot to scale, from the front and from above</source>
        <translation>鉢の縮尺図（正面と上面）</translation>
    </message>
    <message>
        <source>Inside %1 by %2 at the rim, %3 by %4 at the floor, %5 deep, filled %6.</source>
        <translation>内寸：縁 %1 × %2、底 %3 × %4、深さ %5、充填 %6。</translation>
    </message>
    <message>
        <source>No pot yet.</source>
        <translation>鉢はまだありません。</translation>
    </message>
    <message>
        <source>where</source>
        <translation>場所</translation>
    </message>
    <message>
        <source>height</source>
        <translation>高さ</translation>
    </message>
    <message>
        <source>length</source>
        <translation>長さ</translation>
    </message>
    <message>
        <source>width</source>
        <translation>幅</translation>
    </message>
    <message>
        <source>rim %1</source>
        <translation>縁 %1</translation>
    </message>
    <message>
        <source>floor %1, depth %2</source>
        <translation>底 %1、深さ %2</translation>
    </message>
    <message>
        <source>from above, %1 wide</source>
        <translation>上面、幅 %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PotForm</name>
    <message>
        <source>Shape</source>
        <translation>形</translation>
    </message>
    <message>
        <source>rectangle</source>
        <translation>長方形</translation>
    </message>
    <message>
        <source>oval</source>
        <translation>楕円</translation>
    </message>
    <message>
        <source>round</source>
        <translation>丸</translation>
    </message>
    <message>
        <source>hexagon</source>
        <translation>六角</translation>
    </message>
    <message>
        <source>octagon</source>
        <translation>八角</translation>
    </message>
    <message>
        <source>drum, lip turned in</source>
        <translation>胴張り、縁は内すぼまり</translation>
    </message>
    <message>
        <source>soft rectangle</source>
        <translation>隅丸の長方形</translation>
    </message>
    <message>
        <source>bowl</source>
        <translation>椀形</translation>
    </message>
    <message>
        <source>Sha&amp;pe</source>
        <translation>形(&amp;P)</translation>
    </message>
    <message>
        <source>shape of the pot</source>
        <translation>鉢の形</translation>
    </message>
    <message>
        <source>Rim, length</source>
        <translation>縁、長さ</translation>
    </message>
    <message>
        <source>rim of the pot</source>
        <translation>鉢の縁</translation>
    </message>
    <message>
        <source>inside, at the rim</source>
        <translation>内寸、縁で</translation>
    </message>
    <message>
        <source>Rim, diameter</source>
        <translation>縁、直径</translation>
    </message>
    <message>
        <source>Rim, across flats</source>
        <translation>縁、対辺</translation>
    </message>
    <message>
        <source>Rim, &amp;width</source>
        <translation>縁、幅(&amp;W)</translation>
    </message>
    <message>
        <source>rim width of the pot</source>
        <translation>鉢の縁の幅</translation>
    </message>
    <message>
        <source>&amp;Middle, diameter</source>
        <translation>中央、直径(&amp;M)</translation>
    </message>
    <message>
        <source>middle of the pot</source>
        <translation>鉢の中央</translation>
    </message>
    <message>
        <source>inside, at half the depth</source>
        <translation>内寸、深さの半分で</translation>
    </message>
    <message>
        <source>as the rim: straight walls</source>
        <translation>縁と同じ：まっすぐな壁</translation>
    </message>
    <message>
        <source>Corner e&amp;xponent</source>
        <translation>隅の指数(&amp;X)</translation>
    </message>
    <message>
        <source>corner exponent of the pot</source>
        <translation>鉢の隅の指数</translation>
    </message>
    <message>
        <source>2 an ellipse, 4 soft corners, 6 nearly square</source>
        <translation>2 楕円、4 隅丸、6 ほぼ四角</translation>
    </message>
    <message>
        <source>Dep&amp;th inside</source>
        <translation>内側の深さ</translation>
    </message>
    <message>
        <source>depth of the pot</source>
        <translation>鉢の深さ</translation>
    </message>
    <message>
        <source>floor to rim</source>
        <translation>底から縁まで</translation>
    </message>
    <message>
        <source>F&amp;ill line below rim</source>
        <translation>縁から充填線まで(&amp;I)</translation>
    </message>
    <message>
        <source>fill line of the pot</source>
        <translation>鉢の充填線</translation>
    </message>
    <message>
        <source>common practice: 0.3 to 1 cm</source>
        <translation>一般的な目安：0.3～1 cm</translation>
    </message>
    <message>
        <source>W&amp;ater fill</source>
        <translation>水で測った容積(&amp;A)</translation>
    </message>
    <message>
        <source>water fill of the pot</source>
        <translation>鉢の水容積</translation>
    </message>
    <message>
        <source>measured; overrides the lengths</source>
        <translation>実測値。寸法より優先</translation>
    </message>
    <message>
        <source>Mou&amp;nd above it</source>
        <translation>盛り上げ(&amp;N)</translation>
    </message>
    <message>
        <source>mound of the pot</source>
        <translation>鉢の盛り上げ</translation>
    </message>
    <message>
        <source>rise in the middle; none if empty</source>
        <translation>中央の高さ。空欄：なし</translation>
    </message>
    <message>
        <source>Sa&amp;ucer water</source>
        <translation>受け皿の水(&amp;U)</translation>
    </message>
    <message>
        <source>saucer of the pot</source>
        <translation>鉢の受け皿</translation>
    </message>
    <message>
        <source>standing water above the floor</source>
        <translation>底より上の溜まり水</translation>
    </message>
    <message>
        <source>wick of the pot</source>
        <translation>鉢の灯芯</translation>
    </message>
    <message>
        <source>length below the floor</source>
        <translation>底より下の長さ</translation>
    </message>
    <message>
        <source>tilt of the pot</source>
        <translation>鉢の傾き</translation>
    </message>
    <message>
        <source>about the length; level if empty</source>
        <translation>長手方向。空欄：水平</translation>
    </message>
    <message>
        <source>settling</source>
        <translation>締まり</translation>
    </message>
    <message>
        <source>&amp;Spill</source>
        <translation>こぼれ(&amp;S)</translation>
    </message>
    <message>
        <source>spill</source>
        <translation>こぼれ</translation>
    </message>
    <message>
        <source>mix that misses the pot, 5 to 10</source>
        <translation>鉢に入らない用土、5～10</translation>
    </message>
    <message>
        <source>lost volume: 0 poured, about 8 worked in; empty: by jug tests of the bags, else as usual</source>
        <translation>失われる容積：注いだまま 0、突き込みで約 8。空欄：ジョッキ試験、なければ通常値</translation>
    </message>
    <message>
        <source>empty: %1, by a jug of this mix</source>
        <translation>空欄：%1（この配合のジョッキ）</translation>
    </message>
    <message>
        <source>empty: %1, by your jug tests</source>
        <translation>空欄：%1（ジョッキ試験）</translation>
    </message>
    <message>
        <source>empty: %1, worked in; 0 if poured</source>
        <translation>空欄：%1（突き込み）。注ぐだけなら 0</translation>
    </message>
    <message>
        <source>One of your pots</source>
        <translation>手持ちの鉢の一つ</translation>
    </message>
    <message>
        <source>&amp;Your pots</source>
        <translation>手持ちの鉢(&amp;Y)</translation>
    </message>
    <message>
        <source>Wick or ground</source>
        <translation>灯芯または地面</translation>
    </message>
    <message>
        <source>none is kept yet</source>
        <translation>まだ保存した鉢はありません</translation>
    </message>
    <message>
        <source>Floor, length</source>
        <translation>底、長さ</translation>
    </message>
    <message>
        <source>floor of the pot</source>
        <translation>鉢の底</translation>
    </message>
    <message>
        <source>Floor, diameter</source>
        <translation>底、直径</translation>
    </message>
    <message>
        <source>Floor, across flats</source>
        <translation>底、対辺</translation>
    </message>
    <message>
        <source>Floor, width</source>
        <translation>底、幅</translation>
    </message>
    <message>
        <source>floor width of the pot</source>
        <translation>鉢底の幅</translation>
    </message>
    <message>
        <source>Tilt, deg&amp;rees</source>
        <translation>傾き、度(&amp;R)</translation>
    </message>
    <message>
        <source>Sett&amp;ling</source>
        <translation>沈み(&amp;L)</translation>
    </message>
    <message>
        <source>as typed</source>
        <translation>入力どおり</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PotSectionView</name>
    <message>
        <source>No pot yet: type its shape and inside lengths.</source>
        <translation>鉢はまだありません。形と内寸を入力してください。</translation>
    </message>
    <message>
        <source>Pot in section, filled %1 deep; no mix yet, so no water.</source>
        <translation>鉢の断面、充填の深さ %1。配合がまだないため水はありません。</translation>
    </message>
    <message>
        <source>Pot in section, filled %1 deep: the lowest %2 stay wet; water %3 at the floor and %4 at the fill line.</source>
        <translation>鉢の断面、充填の深さ %1：下 %2 は濡れたまま。水は底で %3、充填線で %4。</translation>
    </message>
    <message>
        <source>Pot in section; up and down change its depth</source>
        <translation>鉢の断面。↑↓キーで深さを変更</translation>
    </message>
    <message>
        <source>Drag the rim, or press Up and Down, to try another depth</source>
        <translation>縁をドラッグするか↑↓キーで別の深さを試せます</translation>
    </message>
    <message>
        <source>wet zone %1</source>
        <translation>滞水層 %1</translation>
    </message>
    <message>
        <source>filled %1</source>
        <translation>充填 %1</translation>
    </message>
    <message>
        <source>depth inside %1</source>
        <translation>内側の深さ %1</translation>
    </message>
    <message>
        <source>depth of the pot</source>
        <translation>鉢の深さ</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::PotsTab</name>
    <message>
        <source>%1 of pot %2</source>
        <translation>鉢 %2 の%1</translation>
    </message>
    <message>
        <source>Pots</source>
        <translation>鉢</translation>
    </message>
    <message>
        <source>pot by number or name</source>
        <translation>番号または名前</translation>
    </message>
    <message>
        <source>No pots yet. Add one and measure its inside: length and width at the rim and at the floor, and the depth.</source>
        <translation>鉢はまだありません。追加して内側を測ってください：縁と底の長さと幅、深さ。</translation>
    </message>
    <message>
        <source>free or taken</source>
        <translation>空きか使用中か</translation>
    </message>
    <message>
        <source>Add a &amp;pot</source>
        <translation>鉢を追加(&amp;P)</translation>
    </message>
    <message>
        <source>taken: %1</source>
        <translation>使用中：%1</translation>
    </message>
    <message>
        <source>given away</source>
        <translation>手放した</translation>
    </message>
    <message>
        <source>free</source>
        <translation>空き</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>名前(&amp;N)</translation>
    </message>
    <message>
        <source>as you call it</source>
        <translation>呼び名</translation>
    </message>
    <message>
        <source>name</source>
        <translation>名前</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>形</translation>
    </message>
    <message>
        <source>table of areas</source>
        <translation>断面積の表</translation>
    </message>
    <message>
        <source>&amp;Shape</source>
        <translation>形(&amp;S)</translation>
    </message>
    <message>
        <source>broken, sold or given away</source>
        <translation>割れた、売った、譲った</translation>
    </message>
    <message>
        <source>whereabouts</source>
        <translation>所在</translation>
    </message>
    <message>
        <source>Rim, length</source>
        <translation>縁、長さ</translation>
    </message>
    <message>
        <source>inside, at the rim</source>
        <translation>内寸、縁で</translation>
    </message>
    <message>
        <source>rim</source>
        <translation>縁</translation>
    </message>
    <message>
        <source>Rim, diameter</source>
        <translation>縁、直径</translation>
    </message>
    <message>
        <source>Rim, across flats</source>
        <translation>縁、対辺</translation>
    </message>
    <message>
        <source>Rim, width</source>
        <translation>縁、幅</translation>
    </message>
    <message>
        <source>rim width</source>
        <translation>縁の幅</translation>
    </message>
    <message>
        <source>Middle, diameter</source>
        <translation>中央、直径</translation>
    </message>
    <message>
        <source>inside, at half the depth</source>
        <translation>内寸、深さの半分で</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>中央</translation>
    </message>
    <message>
        <source>Floor, length</source>
        <translation>底、長さ</translation>
    </message>
    <message>
        <source>as the rim: straight walls</source>
        <translation>縁と同じ：まっすぐな壁</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>底</translation>
    </message>
    <message>
        <source>Floor, diameter</source>
        <translation>底、直径</translation>
    </message>
    <message>
        <source>Floor, across flats</source>
        <translation>底、対辺</translation>
    </message>
    <message>
        <source>Floor, width</source>
        <translation>底、幅</translation>
    </message>
    <message>
        <source>floor width</source>
        <translation>底の幅</translation>
    </message>
    <message>
        <source>Corner exponent</source>
        <translation>隅の指数</translation>
    </message>
    <message>
        <source>2 an ellipse, 4 soft corners, 6 nearly square</source>
        <translation>2 楕円、4 隅丸、6 ほぼ四角</translation>
    </message>
    <message>
        <source>corner exponent</source>
        <translation>隅の指数</translation>
    </message>
    <message>
        <source>Heights and areas</source>
        <translation>高さと断面積</translation>
    </message>
    <message>
        <source>cm and cm2 from the floor: 0 450; 4 520; 8 600</source>
        <translation>底からの cm と cm2：0 450; 4 520; 8 600</translation>
    </message>
    <message>
        <source>&amp;Depth inside</source>
        <translation>内側の深さ(&amp;D)</translation>
    </message>
    <message>
        <source>floor to rim</source>
        <translation>底から縁まで</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>深さ</translation>
    </message>
    <message>
        <source>Corner radius</source>
        <translation>隅の半径</translation>
    </message>
    <message>
        <source>sharp corners if empty</source>
        <translation>空欄：角は直角</translation>
    </message>
    <message>
        <source>corner radius</source>
        <translation>隅の半径</translation>
    </message>
    <message>
        <source>Rounding at the floor</source>
        <translation>底の丸み</translation>
    </message>
    <message>
        <source>radius between floor and wall</source>
        <translation>底と壁の間の半径</translation>
    </message>
    <message>
        <source>rounding at the floor</source>
        <translation>底の丸み</translation>
    </message>
    <message>
        <source>Fill line below rim</source>
        <translation>縁から充填線まで</translation>
    </message>
    <message>
        <source>common practice: 0.3 to 1 cm</source>
        <translation>一般的な目安：0.3～1 cm</translation>
    </message>
    <message>
        <source>fill line</source>
        <translation>充填線</translation>
    </message>
    <message>
        <source>&amp;Water fill</source>
        <translation>水で測った容積(&amp;W)</translation>
    </message>
    <message>
        <source>water fill</source>
        <translation>水容積</translation>
    </message>
    <message>
        <source>Bottom layer</source>
        <translation>鉢底土</translation>
    </message>
    <message>
        <source>coarse grain on the floor; none if empty</source>
        <translation>底の粗い粒。空欄：なし</translation>
    </message>
    <message>
        <source>bottom layer</source>
        <translation>鉢底土</translation>
    </message>
    <message>
        <source>Top dressing</source>
        <translation>化粧土</translation>
    </message>
    <message>
        <source>top dressing</source>
        <translation>化粧土</translation>
    </message>
    <message>
        <source>Own &amp;mass</source>
        <translation>鉢の重さ(&amp;M)</translation>
    </message>
    <message>
        <source>empty and dry; for lifting</source>
        <translation>空で乾いた状態。持ち上げ用</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>重さ</translation>
    </message>
    <message>
        <source>Drain holes</source>
        <translation>排水穴</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>個数</translation>
    </message>
    <message>
        <source>drain holes</source>
        <translation>排水穴</translation>
    </message>
    <message>
        <source>Feet</source>
        <translation>足</translation>
    </message>
    <message>
        <source>height under the pot</source>
        <translation>鉢の下の高さ</translation>
    </message>
    <message>
        <source>feet</source>
        <translation>足</translation>
    </message>
    <message>
        <source>No&amp;te</source>
        <translation>メモ(&amp;T)</translation>
    </message>
    <message>
        <source>glaze, chips, where it stands</source>
        <translation>釉薬、欠け、置き場所</translation>
    </message>
    <message>
        <source>note</source>
        <translation>メモ</translation>
    </message>
    <message>
        <source>Picture of the pot</source>
        <translation>鉢の図</translation>
    </message>
    <message>
        <source>The pot to scale</source>
        <translation>鉢の縮尺図</translation>
    </message>
    <message>
        <source>shape</source>
        <translation>形</translation>
    </message>
    <message>
        <source>pot added</source>
        <translation>鉢を追加</translation>
    </message>
    <message>
        <source>Pot %1 stays: a tree&apos;s history or a day names it. Mark it as given away instead.</source>
        <translation>鉢 %1 は残します。木の履歴か植え替え日が参照しています。代わりに「手放した」にしてください。</translation>
    </message>
    <message>
        <source>pot %1 removed</source>
        <translation>鉢 %1 を削除</translation>
    </message>
    <message>
        <source>Pot %1: %2</source>
        <translation>鉢 %1：%2</translation>
    </message>
    <message>
        <source>What it holds</source>
        <translation>容積</translation>
    </message>
    <message>
        <source>to the fill line</source>
        <translation>充填線まで</translation>
    </message>
    <message>
        <source>by its lengths alone</source>
        <translation>寸法だけから</translation>
    </message>
    <message>
        <source>water fill against lengths</source>
        <translation>水容積と寸法の差</translation>
    </message>
    <message>
        <source>no water fill was measured</source>
        <translation>水容積が未測定です</translation>
    </message>
    <message>
        <source>main mix, without layers</source>
        <translation>主な用土（層を除く）</translation>
    </message>
    <message>
        <source>Mound above it</source>
        <translation>盛り上げ</translation>
    </message>
    <message>
        <source>rise in the middle; none if empty</source>
        <translation>中央の高さ。空欄：なし</translation>
    </message>
    <message>
        <source>mound</source>
        <translation>盛り上げ</translation>
    </message>
    <message>
        <source>measured; overrides the lengths</source>
        <translation>実測値。寸法より優先</translation>
    </message>
    <message>
        <source>usual 0.3 to 0.5; none if empty</source>
        <translation>通常 0.3～0.5。空欄ならなし</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ProtocolDrawing</name>
    <message>
        <source>How it is done: %1</source>
        <translation>やり方：%1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecipesPanel</name>
    <message>
        <source>Recipes, best first</source>
        <translation>レシピ（良い順）</translation>
    </message>
    <message>
        <source>How far the search has come</source>
        <translation>検索の進み具合</translation>
    </message>
    <message>
        <source>Enough</source>
        <translation>十分</translation>
    </message>
    <message>
        <source>Stop searching and show what was found so far</source>
        <translation>検索を止めて、ここまでの結果を表示</translation>
    </message>
    <message>
        <source>recipes %p %</source>
        <translation>レシピ %p %</translation>
    </message>
    <message>
        <source>the nearest recipe %p %</source>
        <translation>最も近いレシピ %p %</translation>
    </message>
    <message>
        <source>contradictions %p %</source>
        <translation>矛盾 %p %</translation>
    </message>
    <message>
        <source>Keep as a mix</source>
        <translation>配合として保存</translation>
    </message>
    <message>
        <source>Keep the chosen recipe as a mix, and lay it on the bench</source>
        <translation>選んだレシピを配合として保存し、作業台に載せる</translation>
    </message>
    <message>
        <source>Keep and reserve</source>
        <translation>保存して取り置く</translation>
    </message>
    <message>
        <source>Keep the chosen recipe as a mix, and reserve its grain</source>
        <translation>選んだレシピを配合として保存し、粒を取り置く</translation>
    </message>
    <message>
        <source>Search on</source>
        <translation>検索を続ける</translation>
    </message>
    <message>
        <source>Search again to the end</source>
        <translation>最後まで検索し直す</translation>
    </message>
    <message>
        <source>Still wanted: %1.</source>
        <translation>未入力：%1。</translation>
    </message>
    <message>
        <source>A marked field on the left has to be put right first.</source>
        <translation>先に左の印の付いた欄を直してください。</translation>
    </message>
    <message>
        <source>The inputs changed: what is shown in grey answers the question before.</source>
        <translation>入力が変わりました。灰色の表示は前の条件に対する答えです。</translation>
    </message>
    <message>
        <source>Searching the shelf.</source>
        <translation>棚を検索しています。</translation>
    </message>
    <message>
        <source>No recipe holds every wish that must hold; the nearest is shown.</source>
        <translation>必須の条件をすべて満たすレシピはありません。最も近いものを示します。</translation>
    </message>
    <message numerus="yes">
        <source>%n recipe(s), best first.</source>
        <translation>
            <numerusform>レシピ %n 件（良い順）。</numerusform>
        </translation>
    </message>
    <message>
        <source>its grain is kept for this mix in later searches</source>
        <translation>以後の検索では、粒はこの配合用に取り置かれます</translation>
    </message>
    <message>
        <source>type the litres needed first</source>
        <translation>まず必要な L を入力してください</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordBook</name>
    <message>
        <source>Undone: %1</source>
        <translation>元に戻しました：%1</translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation>やり直しました：%1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordForm</name>
    <message>
        <source>%1 in %2</source>
        <translation>%1（%2）</translation>
    </message>
    <message>
        <source>Emptied elsewhere meanwhile, so what you typed is not saved yet. Enter saves yours, Escape empties the field.</source>
        <translation>その間に別の場所で空にされたため、入力はまだ保存されていません。Enter でこちらを保存、Escape で欄を空にします。</translation>
    </message>
    <message>
        <source>Changed elsewhere meanwhile to “%1”, so what you typed is not saved yet. Enter saves yours, Escape takes the other.</source>
        <translation>その間に別の場所で「%1」に変更されたため、入力はまだ保存されていません。Enter でこちらを保存、Escape で向こうを使います。</translation>
    </message>
    <message>
        <source>Typed before and not saved yet. Enter saves it, Escape takes back what was there.</source>
        <translation>前に入力してまだ保存していません。Enter で保存、Escape で元に戻ります。</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordImport</name>
    <message>
        <source>new</source>
        <translation>新規</translation>
    </message>
    <message>
        <source>here already, left alone</source>
        <translation>すでにあるため、そのまま</translation>
    </message>
    <message>
        <source>comes back</source>
        <translation>復活</translation>
    </message>
    <message>
        <source>replaces the one here</source>
        <translation>ここのものと置き換え</translation>
    </message>
    <message>
        <source>differs from the one here</source>
        <translation>ここのものと相違</translation>
    </message>
    <message>
        <source>import of %1</source>
        <translation>%1 の取り込み</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordListModel</name>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1、%2：%3</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>まだなし</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>袋</translation>
    </message>
    <message>
        <source>fraction</source>
        <translation>区分</translation>
    </message>
    <message>
        <source>no.</source>
        <translation>番号</translation>
    </message>
    <message>
        <source>what happened</source>
        <translation>出来事</translation>
    </message>
    <message>
        <source>what</source>
        <translation>項目</translation>
    </message>
    <message>
        <source>received</source>
        <translation>受け入れ</translation>
    </message>
    <message>
        <source>day</source>
        <translation>日付</translation>
    </message>
    <message>
        <source>%1 dry</source>
        <translation>乾燥 %1</translation>
    </message>
    <message>
        <source>tests</source>
        <translation>試験</translation>
    </message>
    <message>
        <source>left</source>
        <translation>残り</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordListSide</name>
    <message>
        <source>F&amp;ind</source>
        <translation>検索(&amp;I)</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordPages</name>
    <message>
        <source>Rec&amp;ord</source>
        <translation>記録(&amp;O)</translation>
    </message>
    <message>
        <source>&amp;Receive bags</source>
        <translation>袋を受け入れる(&amp;R)</translation>
    </message>
    <message>
        <source>Ctrl+R</source>
        <translation>Ctrl+R</translation>
    </message>
    <message>
        <source>&amp;Grade this bag</source>
        <translation>この袋の粒度を測る(&amp;G)</translation>
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
        <translation>在庫に入れる(&amp;T)</translation>
    </message>
    <message>
        <source>Ctrl+Shift+T</source>
        <translation>Ctrl+Shift+T</translation>
    </message>
    <message>
        <source>Measur&amp;e this bag</source>
        <translation>この袋を測定(&amp;E)</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Ctrl+D</translation>
    </message>
    <message>
        <source>&amp;Pot test of a mix</source>
        <translation>配合の鉢試験</translation>
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
        <translation>木を追加(&amp;A)</translation>
    </message>
    <message>
        <source>Alt+Shift+T</source>
        <translation>Alt+Shift+T</translation>
    </message>
    <message>
        <source>Add a p&amp;ot</source>
        <translation>鉢を追加(&amp;O)</translation>
    </message>
    <message>
        <source>Ctrl+Alt+P</source>
        <translation>Ctrl+Alt+P</translation>
    </message>
    <message>
        <source>Plan the root mass of this tree</source>
        <translation>この木の根鉢を計画する</translation>
    </message>
    <message>
        <source>Ctrl+Alt+J</source>
        <translation>Ctrl+Alt+J</translation>
    </message>
    <message>
        <source>Remove this tree, pot or plan</source>
        <translation>この木・鉢・計画を削除</translation>
    </message>
    <message>
        <source>Alt+Shift+Delete</source>
        <translation>Alt+Shift+Delete</translation>
    </message>
    <message>
        <source>&amp;Keep the sieve test with its bag</source>
        <translation>ふるい試験を袋に保存(&amp;K)</translation>
    </message>
    <message>
        <source>Ctrl+S</source>
        <translation>Ctrl+S</translation>
    </message>
    <message>
        <source>Keep the &amp;fractions of the screening</source>
        <translation>ふるい分けの区分を保存(&amp;F)</translation>
    </message>
    <message>
        <source>Ctrl+Shift+K</source>
        <translation>Ctrl+Shift+K</translation>
    </message>
    <message>
        <source>Keep the mi&amp;x</source>
        <translation>配合を保存(&amp;X)</translation>
    </message>
    <message>
        <source>Ctrl+Shift+M</source>
        <translation>Ctrl+Shift+M</translation>
    </message>
    <message>
        <source>&amp;Write down in the log</source>
        <translation>日誌に書き込む(&amp;W)</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation>Ctrl+L</translation>
    </message>
    <message>
        <source>F&amp;ind on this page</source>
        <translation>このページを検索(&amp;I)</translation>
    </message>
    <message>
        <source>Ctrl+F</source>
        <translation>Ctrl+F</translation>
    </message>
    <message>
        <source>&amp;Undo in the record</source>
        <translation>記録を元に戻す(&amp;U)</translation>
    </message>
    <message>
        <source>Ctrl+Alt+Z</source>
        <translation>Ctrl+Alt+Z</translation>
    </message>
    <message>
        <source>Re&amp;do in the record</source>
        <translation>記録をやり直す(&amp;D)</translation>
    </message>
    <message>
        <source>Ctrl+Alt+Shift+Z</source>
        <translation>Ctrl+Alt+Shift+Z</translation>
    </message>
    <message>
        <source>Save a &amp;copy of the record...</source>
        <translation>記録のコピーを保存(&amp;C)...</translation>
    </message>
    <message>
        <source>Ctrl+Shift+S</source>
        <translation>Ctrl+Shift+S</translation>
    </message>
    <message>
        <source>grain of %1 as measured</source>
        <translation>%1 の粒の実測値</translation>
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
        <translation>記録を元に戻す(&amp;U)：%1</translation>
    </message>
    <message>
        <source>Re&amp;do in the record: %1</source>
        <translation>記録をやり直す(&amp;D)：%1</translation>
    </message>
    <message>
        <source>wishes for %1</source>
        <translation>%1 の希望条件</translation>
    </message>
    <message>
        <source>A search for %1 starts with these wishes from now on.</source>
        <translation>今後 %1 の検索はこの希望条件から始まります。</translation>
    </message>
    <message>
        <source>sieves of %1</source>
        <translation>%1 のふるい</translation>
    </message>
    <message>
        <source>Choose the material on the Grain tab first: a bag is of some material.</source>
        <translation>先に「粒」タブで資材を選んでください。袋には資材が必要です。</translation>
    </message>
    <message>
        <source>bag %1</source>
        <translation>袋 %1</translation>
    </message>
    <message>
        <source>sieve test of bag %1</source>
        <translation>袋 %1 のふるい試験</translation>
    </message>
    <message>
        <source>Graded bag %1</source>
        <translation>袋 %1 の粒度を測った</translation>
    </message>
    <message>
        <source>The sieve test is kept with its bag once the pan is typed and no fault is left; until then it stays on the bench.</source>
        <translation>受皿が入力され誤りがなくなると、ふるい試験は袋に保存されます。それまでは作業台に残ります。</translation>
    </message>
    <message>
        <source>Bag %1 has this sieve test already.</source>
        <translation>袋 %1 にはこのふるい試験がすでにあります。</translation>
    </message>
    <message>
        <source>bag of %1</source>
        <translation>%1 の袋</translation>
    </message>
    <message numerus="yes">
        <source>Kept %n sieve test(s) with bag %1.</source>
        <translation>
            <numerusform>ふるい試験 %n 件を袋 %1 に保存しました。</numerusform>
        </translation>
    </message>
    <message>
        <source>Weigh every fraction first, then they can be kept.</source>
        <translation>先にすべての区分を量ってください。その後保存できます。</translation>
    </message>
    <message>
        <source>Keep the sieve test with its bag first: fractions come from a bag.</source>
        <translation>先にふるい試験を袋に保存してください。区分は袋から取れます。</translation>
    </message>
    <message>
        <source>screening of bag %1</source>
        <translation>袋 %1 のふるい分け</translation>
    </message>
    <message>
        <source>Screened bag %1. %2</source>
        <translation>袋 %1 をふるい分けた。%2</translation>
    </message>
    <message>
        <source>screening kept of %1</source>
        <translation>%1 のふるい分けを保存</translation>
    </message>
    <message>
        <source>The fractions of bag %1 are in stock.</source>
        <translation>袋 %1 の区分は在庫にあります。</translation>
    </message>
    <message>
        <source>There is no mix to keep yet: finish the sieve tests and give them parts.</source>
        <translation>保存する配合がまだありません。ふるい試験を終えて配合比を入れてください。</translation>
    </message>
    <message>
        <source>Give the mix a name first.</source>
        <translation>先に配合に名前を付けてください。</translation>
    </message>
    <message>
        <source>This mix is kept already, as %1.</source>
        <translation>この配合はすでに %1 として保存されています。</translation>
    </message>
    <message>
        <source>mix %1</source>
        <translation>配合 %1</translation>
    </message>
    <message>
        <source>Kept mix %1, %2</source>
        <translation>配合 %1、%2 を保存</translation>
    </message>
    <message>
        <source>Kept as %1.</source>
        <translation>%1 として保存しました。</translation>
    </message>
    <message>
        <source>found mix</source>
        <translation>見つけた配合</translation>
    </message>
    <message>
        <source>Found mix %1, %2, and reserved its grain</source>
        <translation>配合 %1、%2 を見つけ、粒を取り置いた</translation>
    </message>
    <message>
        <source>Found mix %1, %2</source>
        <translation>配合 %1、%2 を見つけた</translation>
    </message>
    <message>
        <source>Kept as %1 and laid on the bench.</source>
        <translation>%1 として保存し、作業台に載せました。</translation>
    </message>
    <message>
        <source>mix %1 opened</source>
        <translation>配合 %1 を開く</translation>
    </message>
    <message>
        <source>Save a copy of the record</source>
        <translation>記録のコピーを保存</translation>
    </message>
    <message>
        <source>Gritwright records (*.gritwright)</source>
        <translation>Gritwright の記録 (*.gritwright)</translation>
    </message>
    <message>
        <source>A checked copy lies in %1.</source>
        <translation>確認済みのコピーを %1 に置きました。</translation>
    </message>
    <message>
        <source>Take &amp;back grain from a tree</source>
        <translation>木から粒を回収(&amp;B)</translation>
    </message>
    <message>
        <source>Ctrl+Alt+I</source>
        <translation>Ctrl+Alt+I</translation>
    </message>
    <message>
        <source>Add a bin or tub</source>
        <translation>保管容器・トロ舟を追加</translation>
    </message>
    <message>
        <source>Ctrl+Alt+X</source>
        <translation>Ctrl+Alt+X</translation>
    </message>
    <message>
        <source>Re&amp;move this bag or bin</source>
        <translation>この袋・保管容器を削除(&amp;M)</translation>
    </message>
    <message>
        <source>W&amp;here this grain went</source>
        <translation>この粒の行き先(&amp;H)</translation>
    </message>
    <message>
        <source>Ctrl+Shift+W</source>
        <translation>Ctrl+Shift+W</translation>
    </message>
    <message>
        <source>What do the sick trees share?</source>
        <translation>弱った木の共通点は？</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Y</source>
        <translation>Ctrl+Shift+Y</translation>
    </message>
    <message>
        <source>Save the list of trees...</source>
        <translation>木の一覧を保存...</translation>
    </message>
    <message>
        <source>Ctrl+Shift+L</source>
        <translation>Ctrl+Shift+L</translation>
    </message>
    <message>
        <source>The bench holds %1 components: the others of mix %2 were left out.</source>
        <translation>作業台の配合材は %1 個までです。配合 %2 の残りは省きました。</translation>
    </message>
    <message>
        <source>Write records to a fi&amp;le...</source>
        <translation>記録をファイルに書き出す(&amp;L)...</translation>
    </message>
    <message>
        <source>Ctrl+Shift+E</source>
        <translation>Ctrl+Shift+E</translation>
    </message>
    <message>
        <source>The whole record (*.json)</source>
        <translation>記録全体 (*.json)</translation>
    </message>
    <message>
        <source>List of bags (*.csv)</source>
        <translation>袋の一覧 (*.csv)</translation>
    </message>
    <message>
        <source>List of sieve tests (*.csv)</source>
        <translation>ふるい試験の一覧 (*.csv)</translation>
    </message>
    <message>
        <source>List of trees (*.csv)</source>
        <translation>木の一覧 (*.csv)</translation>
    </message>
    <message>
        <source>List of fractions (*.csv)</source>
        <translation>区分の一覧 (*.csv)</translation>
    </message>
    <message>
        <source>List of the stock&apos;s entries (*.csv)</source>
        <translation>在庫の記入の一覧 (*.csv)</translation>
    </message>
    <message>
        <source>The log (*.csv)</source>
        <translation>日誌 (*.csv)</translation>
    </message>
    <message>
        <source>Write records to a file</source>
        <translation>記録をファイルに書き出す</translation>
    </message>
    <message>
        <source>Written to %1.</source>
        <translation>%1 に書き出しました。</translation>
    </message>
    <message>
        <source>Group&amp;s of trees and their wishes</source>
        <translation>樹種グループと希望条件(&amp;S)</translation>
    </message>
    <message>
        <source>Ctrl+Shift+G</source>
        <translation>Ctrl+Shift+G</translation>
    </message>
    <message>
        <source>Kept as %1 and laid on the bench; its grain for %2 is kept from other searches until it is mixed.</source>
        <translation>%1 として保存し、作業台に載せました。%2 分の粒は、混ぜるまで他の検索では使いません。</translation>
    </message>
    <message>
        <source>Put this grai&amp;n into the mix</source>
        <translation>この粒を配合に入れる(&amp;N)</translation>
    </message>
    <message>
        <source>pot %1</source>
        <translation>鉢 %1</translation>
    </message>
    <message>
        <source>List of pots (*.csv)</source>
        <translation>鉢の一覧 (*.csv)</translation>
    </message>
    <message>
        <source>The sieve test of %1 is not kept and left the bench: undo brings it back.</source>
        <translation>%1 のふるい試験は保存されておらず、作業台から外れました。元に戻すと戻ります。</translation>
    </message>
    <message>
        <source>No bag stands behind %1: type its sieve test.</source>
        <translation>%1 の元になる袋がありません。ふるい試験を入力してください。</translation>
    </message>
    <message>
        <source>Written to %1, but not all of it. %2.</source>
        <translation>%1 に書き出しましたが、全部ではありません。%2。</translation>
    </message>
    <message>
        <source>litre weight of %1</source>
        <translation>%1 のリットル重量</translation>
    </message>
    <message>
        <source>material of %1</source>
        <translation>%1 の資材</translation>
    </message>
    <message>
        <source>fraction %1</source>
        <translation>区分 %1</translation>
    </message>
    <message>
        <source>bin %1</source>
        <translation>保管容器 %1</translation>
    </message>
    <message>
        <source>ground of %1</source>
        <translation>%1 の古土</translation>
    </message>
    <message>
        <source>tub %1</source>
        <translation>トロ舟 %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RecordSession</name>
    <message>
        <source>bag and pot numbers of the record before</source>
        <translation>前の記録の袋と鉢の番号</translation>
    </message>
    <message>
        <source>Nothing was restored: %1</source>
        <translation>何も復元していません：%1</translation>
    </message>
    <message>
        <source>Restored. The record as it was is kept as %1.</source>
        <translation>復元しました。元の記録は %1 として残しました。</translation>
    </message>
    <message>
        <source>Restored.</source>
        <translation>復元しました。</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RootPlanDesk</name>
    <message>
        <source>%1 of root-mass plan %2</source>
        <translation>根鉢計画 %2 の%1</translation>
    </message>
    <message>
        <source>root-mass plan of tree %1</source>
        <translation>木 %1 の根鉢計画</translation>
    </message>
    <message>
        <source>place of the tree</source>
        <translation>木の位置</translation>
    </message>
    <message>
        <source>mix of root-mass plan %1</source>
        <translation>根鉢計画 %1 の配合</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RootPlanTab</name>
    <message>
        <source>Tree to plan for</source>
        <translation>計画する木</translation>
    </message>
    <message>
        <source>&amp;Begin a plan</source>
        <translation>計画を始める(&amp;B)</translation>
    </message>
    <message>
        <source>Begin a plan for this tree</source>
        <translation>この木の計画を始める</translation>
    </message>
    <message>
        <source>Root-mass plans</source>
        <translation>根鉢計画</translation>
    </message>
    <message>
        <source>plan by number or name</source>
        <translation>番号または名前</translation>
    </message>
    <message>
        <source>No plans yet. Choose a tree above and begin one.</source>
        <translation>計画はまだありません。上で木を選んで始めてください。</translation>
    </message>
    <message>
        <source>for tree</source>
        <translation>対象の木</translation>
    </message>
    <message>
        <source>Parts of the plan</source>
        <translation>計画の項目</translation>
    </message>
    <message>
        <source>Root mass</source>
        <translation>根鉢</translation>
    </message>
    <message>
        <source>Stand</source>
        <translation>据え方</translation>
    </message>
    <message>
        <source>May come off</source>
        <translation>落とせる量</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>作業</translation>
    </message>
    <message>
        <source>Species group</source>
        <translation>樹種グループ</translation>
    </message>
    <message>
        <source>group</source>
        <translation>グループ</translation>
    </message>
    <message>
        <source>Pot it goes into</source>
        <translation>植え替え先の鉢</translation>
    </message>
    <message>
        <source>Into &amp;pot</source>
        <translation>植え替え先(&amp;P)</translation>
    </message>
    <message>
        <source>Form of the root mass</source>
        <translation>根鉢の形</translation>
    </message>
    <message>
        <source>as its present pot</source>
        <translation>今の鉢のとおり</translation>
    </message>
    <message>
        <source>box</source>
        <translation>箱形</translation>
    </message>
    <message>
        <source>upright elliptic</source>
        <translation>楕円柱</translation>
    </message>
    <message>
        <source>rounded</source>
        <translation>丸み形</translation>
    </message>
    <message>
        <source>&amp;Root mass</source>
        <translation>根鉢(&amp;R)</translation>
    </message>
    <message>
        <source>Present pot</source>
        <translation>今の鉢</translation>
    </message>
    <message>
        <source>present pot</source>
        <translation>今の鉢</translation>
    </message>
    <message>
        <source>Root mass, length</source>
        <translation>根鉢、長さ</translation>
    </message>
    <message>
        <source>left to right, from the old front</source>
        <translation>左右方向、元の正面から見て</translation>
    </message>
    <message>
        <source>Root mass, width</source>
        <translation>根鉢、幅</translation>
    </message>
    <message>
        <source>front to back</source>
        <translation>前後方向</translation>
    </message>
    <message>
        <source>Root mass, height</source>
        <translation>根鉢、高さ</translation>
    </message>
    <message>
        <source>underside to surface</source>
        <translation>下面から表土まで</translation>
    </message>
    <message>
        <source>Roundness</source>
        <translation>丸みの指数</translation>
    </message>
    <message>
        <source>2 an ellipsoid, 4 a box with soft edges</source>
        <translation>2 楕円体、4 角の丸い箱</translation>
    </message>
    <message>
        <source>Trunk base, right</source>
        <translation>株元、右</translation>
    </message>
    <message>
        <source>of the root mass&apos;s middle; empty: middle of its top</source>
        <translation>根鉢の中心から。空欄：上面の中央</translation>
    </message>
    <message>
        <source>Trunk base, back</source>
        <translation>株元、後ろ</translation>
    </message>
    <message>
        <source>behind its middle</source>
        <translation>中心より後ろへ</translation>
    </message>
    <message>
        <source>Trunk base, up</source>
        <translation>株元、高さ</translation>
    </message>
    <message>
        <source>over its underside</source>
        <translation>下面から</translation>
    </message>
    <message>
        <source>New mix at the side</source>
        <translation>側面の新しい用土</translation>
    </message>
    <message>
        <source>wanted; empty: 5 % of the length, 0.5 to 2 cm</source>
        <translation>希望値。空欄：長さの 5 %、0.5～2 cm</translation>
    </message>
    <message>
        <source>New mix below</source>
        <translation>下の新しい用土</translation>
    </message>
    <message>
        <source>wanted; empty: 15 % of the depth, 0.5 to 1.5 cm</source>
        <translation>希望値。空欄：深さの 15 %、0.5～1.5 cm</translation>
    </message>
    <message>
        <source>Turn, degrees</source>
        <translation>回転、度</translation>
    </message>
    <message>
        <source>the new front; from right toward back</source>
        <translation>新しい正面。右から後ろへ</translation>
    </message>
    <message>
        <source>may be turned by</source>
        <translation>回せる範囲</translation>
    </message>
    <message>
        <source>degrees either way, to fit</source>
        <translation>収めるため左右に何度まで</translation>
    </message>
    <message>
        <source>Tip, degrees</source>
        <translation>倒し、度</translation>
    </message>
    <message>
        <source>0 to 90</source>
        <translation>0～90</translation>
    </message>
    <message>
        <source>Tip toward, degrees</source>
        <translation>倒す向き、度</translation>
    </message>
    <message>
        <source>0 right, 90 back, 180 left</source>
        <translation>0 右、90 後ろ、180 左</translation>
    </message>
    <message>
        <source>Tip at least, degrees</source>
        <translation>最小の倒し、度</translation>
    </message>
    <message>
        <source>empty: it may be set upright</source>
        <translation>空欄：まっすぐに立ててよい</translation>
    </message>
    <message>
        <source>Trunk base stands right</source>
        <translation>株元の位置、右</translation>
    </message>
    <message>
        <source>of the pot&apos;s middle; empty: root mass in the middle</source>
        <translation>鉢の中心から。空欄：根鉢を中央に</translation>
    </message>
    <message>
        <source>Trunk base stands back</source>
        <translation>株元の位置、後ろ</translation>
    </message>
    <message>
        <source>of the pot&apos;s middle</source>
        <translation>鉢の中心から</translation>
    </message>
    <message>
        <source>Trunk base over floor</source>
        <translation>株元の底からの高さ</translation>
    </message>
    <message>
        <source>empty: at its least height over the soil</source>
        <translation>空欄：土面からの最小の高さ</translation>
    </message>
    <message>
        <source>Trunk base over soil</source>
        <translation>株元の土面からの高さ</translation>
    </message>
    <message>
        <source>at least; the trunk is never buried</source>
        <translation>最小値。幹は決して埋めません</translation>
    </message>
    <message>
        <source>How it is cut</source>
        <translation>切り方</translation>
    </message>
    <message>
        <source>along the pot&apos;s wall</source>
        <translation>鉢の壁に沿って</translation>
    </message>
    <message>
        <source>straight, as a saw goes</source>
        <translation>まっすぐ、のこぎりで</translation>
    </message>
    <message>
        <source>cut style</source>
        <translation>切り方</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>切断</translation>
    </message>
    <message>
        <source>%1, at most</source>
        <translation>%1、上限</translation>
    </message>
    <message>
        <source>0: nothing, a structural root; empty: not known</source>
        <translation>0：なし（主要な根）、空欄：不明</translation>
    </message>
    <message>
        <source>%1, combed</source>
        <translation>%1、ほぐし</translation>
    </message>
    <message>
        <source>depth without a cut; empty: not combed</source>
        <translation>切らずにほぐす深さ。空欄：ほぐさない</translation>
    </message>
    <message>
        <source>of the root mass; empty: the group&apos;s</source>
        <translation>根鉢に対して。空欄：グループの値</translation>
    </message>
    <message>
        <source>Untouched, at least</source>
        <translation>残す核、下限</translation>
    </message>
    <message>
        <source>Taken off, at most</source>
        <translation>落とす量、上限</translation>
    </message>
    <message>
        <source>Free pots of the record</source>
        <translation>空いている鉢</translation>
    </message>
    <message>
        <source>leave them out</source>
        <translation>使わない</translation>
    </message>
    <message>
        <source>try them where this pot is too small</source>
        <translation>この鉢が小さければ試す</translation>
    </message>
    <message>
        <source>free pots</source>
        <translation>空いている鉢</translation>
    </message>
    <message>
        <source>Free pots</source>
        <translation>空いている鉢</translation>
    </message>
    <message>
        <source>Where the cut stopped</source>
        <translation>切断が止まった所</translation>
    </message>
    <message>
        <source>Cut stopped, from</source>
        <translation>止まった切断、向き</translation>
    </message>
    <message>
        <source>It stopped at</source>
        <translation>止まった深さ</translation>
    </message>
    <message>
        <source>depth from the farthest point, like 3 cm</source>
        <translation>最も外側からの深さ、例：3 cm</translation>
    </message>
    <message>
        <source>Stopped there: plan the rest</source>
        <translation>ここで止まった：残りを計画</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>消去</translation>
    </message>
    <message>
        <source>Clear what was stopped</source>
        <translation>止まった切断を消去</translation>
    </message>
    <message>
        <source>stopped cuts</source>
        <translation>止まった切断</translation>
    </message>
    <message>
        <source>Pictures of the plan</source>
        <translation>計画の図</translation>
    </message>
    <message>
        <source>From the side and above</source>
        <translation>横と上から</translation>
    </message>
    <message>
        <source>Plan shown</source>
        <translation>表示中の計画</translation>
    </message>
    <message>
        <source>Done: write this plan into the tree&apos;s history</source>
        <translation>済み：この計画を木の履歴に書き込む</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Lifting, blades, moss.</source>
        <translation>重さ、刃物、コケ。</translation>
    </message>
    <message>
        <source>Two people or a trolley for a heavy pot; cut away from the hand; gloves for sphagnum. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation>重い鉢は二人か台車で。刃は手から遠ざける向きに。ミズゴケには手袋を。一般的な情報です。安全データシート、地域の規則、専門家の助言が優先します。</translation>
    </message>
    <message>
        <source>If the upper surface stops</source>
        <translation>上面の切断が止まったら</translation>
    </message>
    <message>
        <source>upper cut stops at</source>
        <translation>上の切断が止まる深さ</translation>
    </message>
    <message>
        <source>take below</source>
        <translation>下で落とす</translation>
    </message>
    <message>
        <source>trunk base</source>
        <translation>株元</translation>
    </message>
    <message>
        <source>untouched</source>
        <translation>残す核</translation>
    </message>
    <message>
        <source>new mix</source>
        <translation>新しい用土</translation>
    </message>
    <message>
        <source>root mass</source>
        <translation>根鉢</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>鉢</translation>
    </message>
    <message>
        <source>stopped cut</source>
        <translation>止まった切断</translation>
    </message>
    <message>
        <source>Saved %1</source>
        <translation>%1 を保存しました</translation>
    </message>
    <message>
        <source>repotting of tree %1 by plan %2</source>
        <translation>計画 %2 による木 %1 の植え替え</translation>
    </message>
    <message>
        <source>Written into the history of tree %1; the mix is added on the Trees tab.</source>
        <translation>木 %1 の履歴に書き込みました。配合は「木」タブで追加します。</translation>
    </message>
    <message>
        <source>There is no tree yet: add it on the Trees tab.</source>
        <translation>木はまだありません。「木」タブで追加してください。</translation>
    </message>
    <message>
        <source>Tree %1 has no species group, so what it bears is not known: choose its group on the Trees tab.</source>
        <translation>木 %1 に樹種グループがないため、どこまで耐えるか不明です。「木」タブで選んでください。</translation>
    </message>
    <message>
        <source>root-mass plan %1 removed</source>
        <translation>根鉢計画 %1 を削除</translation>
    </message>
    <message>
        <source>%1, as it was</source>
        <translation>%1（当時のまま）</translation>
    </message>
    <message>
        <source>%1: stopped at %2</source>
        <translation>%1：%2 で止まった</translation>
    </message>
    <message>
        <source>Plan %1: %2.</source>
        <translation>計画 %1：%2。</translation>
    </message>
    <message>
        <source>fits as it is</source>
        <translation>そのまま収まる</translation>
    </message>
    <message>
        <source>Caution:</source>
        <translation>注意：</translation>
    </message>
    <message>
        <source>Note:</source>
        <translation>備考：</translation>
    </message>
    <message>
        <source>plan %1</source>
        <translation>計画 %1</translation>
    </message>
    <message>
        <source>plan %1, in stages</source>
        <translation>計画 %1、段階的に</translation>
    </message>
    <message>
        <source>corners %1 of the root mass</source>
        <translation>根鉢の隅を%1</translation>
    </message>
    <message>
        <source>Nothing limits the fit.</source>
        <translation>収まりを妨げるものはありません。</translation>
    </message>
    <message>
        <source>What limits the fit: %1.</source>
        <translation>収まりを妨げるもの：%1。</translation>
    </message>
    <message>
        <source>%1 longer</source>
        <translation>長さ +%1</translation>
    </message>
    <message>
        <source>%1 wider</source>
        <translation>幅 +%1</translation>
    </message>
    <message>
        <source>%1 deeper</source>
        <translation>深さ +%1</translation>
    </message>
    <message>
        <source>Smallest change of the pot that would fit: %1.</source>
        <translation>収まるための鉢の最小の変更：%1。</translation>
    </message>
    <message>
        <source>Plan %1 in figures</source>
        <translation>計画 %1 の数値</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation>落とす</translation>
    </message>
    <message>
        <source>stays untouched</source>
        <translation>手を付けずに残る</translation>
    </message>
    <message>
        <source>new mix, as it lies</source>
        <translation>新しい用土（締まった量）</translation>
    </message>
    <message>
        <source>soil line over the floor</source>
        <translation>底から土面までの高さ</translation>
    </message>
    <message>
        <source>new mix, of the pot</source>
        <translation>新しい用土、鉢に対して</translation>
    </message>
    <message>
        <source>shoulder over the soil</source>
        <translation>土面からの肩盛り</translation>
    </message>
    <message>
        <source>not in one go</source>
        <translation>一度にはできない</translation>
    </message>
    <message>
        <source>Mix that fills the rest</source>
        <translation>残りを満たす配合</translation>
    </message>
    <message>
        <source>&amp;Mix</source>
        <translation>配合(&amp;M)</translation>
    </message>
    <message>
        <source>Trunk and stones</source>
        <translation>幹と石</translation>
    </message>
    <message>
        <source>under the soil; they take the place of mix</source>
        <translation>土面下。用土の場所を占める</translation>
    </message>
    <message>
        <source>Cut in this order</source>
        <translation>この順に切る</translation>
    </message>
    <message>
        <source>like: up, right; empty: largest first</source>
        <translation>例：up, right。空欄：大きい順</translation>
    </message>
    <message>
        <source>no</source>
        <translation>いいえ</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>はい</translation>
    </message>
    <message>
        <source>All soil off on purpose: bare-rooted</source>
        <translation>意図して土を全部落とす：裸根</translation>
    </message>
    <message>
        <source>Bare-root it</source>
        <translation>裸根にする</translation>
    </message>
    <message>
        <source>bare-rooting</source>
        <translation>裸根</translation>
    </message>
    <message>
        <source>It was bare-rooted last time</source>
        <translation>前回は裸根にした</translation>
    </message>
    <message>
        <source>Bare-rooted last time</source>
        <translation>前回は裸根</translation>
    </message>
    <message>
        <source>last bare-rooting</source>
        <translation>前回の裸根</translation>
    </message>
    <message>
        <source>Disturbed beside a cut</source>
        <translation>切断の脇で傷む部分</translation>
    </message>
    <message>
        <source>to this depth; empty: 3 % of the length, 0.3 to 2 cm</source>
        <translation>この深さまで。空欄：長さの 3 %、0.3～2 cm</translation>
    </message>
    <message>
        <source>In stages: years between</source>
        <translation>段階的に：間の年数</translation>
    </message>
    <message>
        <source>whole years; empty: the group&apos;s least interval</source>
        <translation>整数。空欄：グループの最短間隔</translation>
    </message>
    <message>
        <source>Air and water</source>
        <translation>空気と水</translation>
    </message>
    <message>
        <source>Written into the history of tree %1; a repotting day also takes the grain from the stock.</source>
        <translation>木 %1 の履歴に書き込みました。植え替え日を使うと、粒も在庫から引かれます。</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>まだなし</translation>
    </message>
    <message>
        <source>untouched last time and again</source>
        <translation>前回も今回も残す核</translation>
    </message>
    <message>
        <source>worked last time and again</source>
        <translation>前回も今回も手を付ける部分</translation>
    </message>
    <message>
        <source>Write into histor&amp;y</source>
        <translation>履歴に書き込む(&amp;Y)</translation>
    </message>
    <message>
        <source>Pri&amp;nt...</source>
        <translation>印刷(&amp;N)...</translation>
    </message>
    <message>
        <source>P&amp;DF...</source>
        <translation>PDF(&amp;D)...</translation>
    </message>
    <message>
        <source>The printer could not be reached: is it on? The PDF can be printed later.</source>
        <translation>プリンターに接続できませんでした。電源は入っていますか？ PDF は後で印刷できます。</translation>
    </message>
    <message>
        <source>No pot is free: add the pot it shall go into on the Pots tab.</source>
        <translation>空いている鉢がありません。植える鉢を「鉢」タブで追加してください。</translation>
    </message>
    <message>
        <source>Measure the root mass and type its length, width and height, or choose the pot it stands in. Nothing is worked out before.</source>
        <translation>根鉢を測って長さ・幅・高さを入力するか、今植わっている鉢を選んでください。それまでは何も計算しません。</translation>
    </message>
    <message>
        <source>sphagnum of the shoulder, about</source>
        <translation>肩盛りのミズゴケ、約</translation>
    </message>
    <message>
        <source>Plan %1 stays: a tree&apos;s history or a day names it. Begin a new plan instead.</source>
        <translation>計画 %1 は残します。木の履歴か植え替え日が参照しています。代わりに新しい計画を始めてください。</translation>
    </message>
    <message>
        <source>Species gro&amp;up</source>
        <translation>樹種グループ(&amp;U)</translation>
    </message>
    <message>
        <source>New plan for &amp;tree</source>
        <translation>新しく計画する木(&amp;T)</translation>
    </message>
    <message>
        <source>Print the root-mass plan</source>
        <translation>根鉢計画を印刷</translation>
    </message>
    <message>
        <source>Save the root-mass plan as PDF</source>
        <translation>根鉢計画を PDF に保存</translation>
    </message>
    <message>
        <source>Root-mass plan as PDF</source>
        <translation>根鉢計画を PDF に</translation>
    </message>
    <message>
        <source>root-mass plan %1.pdf</source>
        <translation>根鉢計画 %1.pdf</translation>
    </message>
    <message>
        <source>%1: %2 (%3)</source>
        <translation>%1：%2（%3）</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation>%1 以上</translation>
    </message>
    <message>
        <source>Caution: after everything that may be done the root mass still sticks out, %1; take a larger pot</source>
        <translation>注意：できることをすべてしても、根鉢がまだはみ出します（%1）。より大きい鉢にしてください</translation>
    </message>
    <message>
        <source>No plan is worked out here yet. Begin one and enter its root mass and pot: then its sheet can go on paper.</source>
        <translation>ここにはまだ計算された計画がありません。計画を始めて根鉢と鉢を入力すると、シートを印刷できます。</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RootPlanView</name>
    <message>
        <source>taken off</source>
        <translation>落とす</translation>
    </message>
    <message>
        <source>kept root mass</source>
        <translation>残す根鉢</translation>
    </message>
    <message>
        <source>untouched</source>
        <translation>残す核</translation>
    </message>
    <message>
        <source>bottom layer, dressing</source>
        <translation>鉢底土、化粧土</translation>
    </message>
    <message>
        <source>shoulder</source>
        <translation>肩盛り</translation>
    </message>
    <message>
        <source>soil surface</source>
        <translation>土面</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>鉢</translation>
    </message>
    <message>
        <source>right</source>
        <translation>右</translation>
    </message>
    <message>
        <source>left</source>
        <translation>左</translation>
    </message>
    <message>
        <source>back</source>
        <translation>後ろ</translation>
    </message>
    <message>
        <source>front</source>
        <translation>前</translation>
    </message>
    <message>
        <source>up</source>
        <translation>上</translation>
    </message>
    <message>
        <source>down</source>
        <translation>下</translation>
    </message>
    <message>
        <source>old right</source>
        <translation>元の右</translation>
    </message>
    <message>
        <source>old left</source>
        <translation>元の左</translation>
    </message>
    <message>
        <source>old back</source>
        <translation>元の後ろ</translation>
    </message>
    <message>
        <source>old front</source>
        <translation>元の前</translation>
    </message>
    <message>
        <source>old top</source>
        <translation>元の上面</translation>
    </message>
    <message>
        <source>old bottom</source>
        <translation>元の下面</translation>
    </message>
    <message>
        <source>move the tree</source>
        <translation>木をずらす</translation>
    </message>
    <message>
        <source>turn it</source>
        <translation>回す</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>切断</translation>
    </message>
    <message>
        <source>tip it less</source>
        <translation>倒しを減らす</translation>
    </message>
    <message>
        <source>sink it</source>
        <translation>下げる</translation>
    </message>
    <message>
        <source>raise it to the soil</source>
        <translation>土面まで上げる</translation>
    </message>
    <message>
        <source>build a shoulder</source>
        <translation>肩盛りをする</translation>
    </message>
    <message>
        <source>take another pot</source>
        <translation>別の鉢にする</translation>
    </message>
    <message>
        <source>in stages</source>
        <translation>段階的に</translation>
    </message>
    <message>
        <source>No plan yet: choose a tree and begin one.</source>
        <translation>計画はまだありません。木を選んで始めてください。</translation>
    </message>
    <message>
        <source>Plan %1: %2 is taken off, %3 stays untouched, the trunk base stands %4 over the floor and the soil line lies at %5.</source>
        <translation>計画 %1：%2 を落とし、%3 は手を付けません。株元は底から %4、土面は %5 です。</translation>
    </message>
    <message>
        <source>what</source>
        <translation>項目</translation>
    </message>
    <message>
        <source>where</source>
        <translation>場所</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>量</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1（%2）</translation>
    </message>
    <message>
        <source>combed</source>
        <translation>ほぐし</translation>
    </message>
    <message>
        <source>of the root mass</source>
        <translation>根鉢に対して</translation>
    </message>
    <message>
        <source>trunk base</source>
        <translation>株元</translation>
    </message>
    <message>
        <source>right of the middle</source>
        <translation>中心から右</translation>
    </message>
    <message>
        <source>behind the middle</source>
        <translation>中心から後ろ</translation>
    </message>
    <message>
        <source>over the floor</source>
        <translation>底から</translation>
    </message>
    <message>
        <source>at the trunk, over the floor</source>
        <translation>幹の所、底から</translation>
    </message>
    <message>
        <source>over the soil</source>
        <translation>土面から</translation>
    </message>
    <message>
        <source>untouched last time</source>
        <translation>前回残した核</translation>
    </message>
    <message>
        <source>The plan from the side and from above; arrow keys move the tree, Page Up and Page Down raise and sink it, Shift with left and right turns it, Shift with up and down tips it</source>
        <translation>横と上から見た計画。矢印キーで木を動かし、Page Up・Page Down で上げ下げ、Shift＋左右で回し、Shift＋上下で倒します</translation>
    </message>
    <message>
        <source>Plan %1 goes in stages: %2 comes off now and the tree goes back into its old pot, as drawn here.</source>
        <translation>計画 %1 は段階的です：今回 %2 を落とし、図のように木は元の鉢に戻ります。</translation>
    </message>
    <message>
        <source>Drag the tree in either picture, or use the arrow keys, Page Up and Page Down; the ring at the old front turns it, the ring on the trunk tips it, as do the arrow keys with Shift</source>
        <translation>どちらかの図で木をドラッグするか、矢印キーと Page Up・Page Down を使います。元の正面の輪で回し、幹の輪で倒します（Shift＋矢印キーでも可）</translation>
    </message>
    <message>
        <source>trunk</source>
        <translation>幹</translation>
    </message>
    <message>
        <source>round off corners</source>
        <translation>隅を丸める</translation>
    </message>
    <message>
        <source>rounded off</source>
        <translation>隅を丸めた</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::RootSectionView</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1～%2</translation>
    </message>
    <message>
        <source>air %1, water held %2</source>
        <translation>空気 %1、保水 %2</translation>
    </message>
    <message>
        <source>The pot in section with the new mix around the root mass</source>
        <translation>根鉢のまわりに新しい用土を入れた鉢の断面</translation>
    </message>
    <message>
        <source>%1 (%2): %3; the lowest %4 stay wet.</source>
        <translation>%1（%2）：%3。下 %4 は濡れたまま。</translation>
    </message>
    <message>
        <source>What the kept root mass holds is not known.</source>
        <translation>残す根鉢が保つ水は不明です。</translation>
    </message>
    <message>
        <source>Plan %1 goes in stages, back into the old pot: its section is not known.</source>
        <translation>計画 %1 は段階的で元の鉢に戻すため、断面は不明です。</translation>
    </message>
    <message>
        <source>No mix yet: choose on “Root mass” what fills the rest of the pot.</source>
        <translation>配合がまだありません。「根鉢」で鉢の残りを満たすものを選んでください。</translation>
    </message>
    <message>
        <source>kept root mass: not known</source>
        <translation>残す根鉢：不明</translation>
    </message>
    <message>
        <source>wet zone %1</source>
        <translation>滞水層 %1</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>不明</translation>
    </message>
    <message>
        <source>filled %1</source>
        <translation>充填 %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>%1 has a component without a grain density, so its water is not known: measure it.</source>
        <translation>%1 には粒子密度のない配合材があり、水は不明です。測ってください。</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ScoreView</name>
    <message numerus="yes">
        <source>predicted %1 points too low on average, %2 points root mean square, %n test(s)</source>
        <translation>
            <numerusform>予測は平均 %1 ポイント低すぎ、二乗平均平方根 %2 ポイント、%n 件</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>predicted %1 points too high on average, %2 points root mean square, %n test(s)</source>
        <translation>
            <numerusform>予測は平均 %1 ポイント高すぎ、二乗平均平方根 %2 ポイント、%n 件</numerusform>
        </translation>
    </message>
    <message>
        <source>No pot test to compare yet. A pot test of a kept mix shows how far off the estimate of its air was.</source>
        <translation>比べる鉢試験がまだありません。保存した配合の鉢試験で、空気の推定のずれがわかります。</translation>
    </message>
    <message>
        <source>Fine, up to %1: %2.</source>
        <translation>細粒（%1 まで）：%2。</translation>
    </message>
    <message>
        <source>Coarse: %1.</source>
        <translation>粗粒：%1。</translation>
    </message>
    <message>
        <source>pot test</source>
        <translation>鉢試験</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>配合</translation>
    </message>
    <message>
        <source>grain</source>
        <translation>粒</translation>
    </message>
    <message>
        <source>predicted air</source>
        <translation>予測した空気</translation>
    </message>
    <message>
        <source>measured air</source>
        <translation>実測した空気</translation>
    </message>
    <message>
        <source>points off</source>
        <translation>ずれ（ポイント）</translation>
    </message>
    <message>
        <source>coarse</source>
        <translation>粗粒</translation>
    </message>
    <message>
        <source>fine</source>
        <translation>細粒</translation>
    </message>
    <message>
        <source>Pot tests: predicted against measured air</source>
        <translation>鉢試験：空気の予測と実測</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>fine grain</source>
        <translation>細粒</translation>
    </message>
    <message>
        <source>coarse grain</source>
        <translation>粗粒</translation>
    </message>
    <message>
        <source>Air that drains free: %1.</source>
        <translation>排水後の気相率：%1。</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::ScreeningPanel</name>
    <message>
        <source>&amp;Keep these fractions</source>
        <translation>この区分を保存(&amp;K)</translation>
    </message>
    <message>
        <source>Screen at, mm</source>
        <translation>ふるい分ける目開き、mm</translation>
    </message>
    <message>
        <source>openings to screen at</source>
        <translation>ふるい分ける目開き</translation>
    </message>
    <message>
        <source>as the verdict says; or type 6.3 2</source>
        <translation>判定どおり。または 6.3 2 のように入力</translation>
    </message>
    <message>
        <source>Dry grain screened</source>
        <translation>ふるい分けた乾燥粒</translation>
    </message>
    <message>
        <source>grain screened</source>
        <translation>ふるい分けた粒</translation>
    </message>
    <message>
        <source>all that is left of the bag; kg can be typed</source>
        <translation>袋の残り全部。kg も入力可</translation>
    </message>
    <message>
        <source>Fractions, predicted and measured</source>
        <translation>区分の予測と実測</translation>
    </message>
    <message>
        <source>Type what each fraction weighed, and its litres, into the last two columns.</source>
        <translation>各区分の重さと L を、右の 2 列に入力してください。</translation>
    </message>
    <message>
        <source>Keep these fractions</source>
        <translation>この区分を保存</translation>
    </message>
    <message>
        <source>Lifting:</source>
        <translation>持ち上げ：</translation>
    </message>
    <message>
        <source>a full bag is heavy; lift from the knees, or screen it in two halves. General information; qualified advice prevails.</source>
        <translation>満杯の袋は重い。膝を使って持ち上げるか、半分ずつふるう。一般的な情報です。専門家の助言が優先します。</translation>
    </message>
    <message>
        <source>mass of the fraction %1</source>
        <translation>区分 %1 の質量</translation>
    </message>
    <message>
        <source>litres of the fraction %1</source>
        <translation>区分 %1 の L</translation>
    </message>
    <message>
        <source>fraction</source>
        <translation>区分</translation>
    </message>
    <message>
        <source>share</source>
        <translation>割合</translation>
    </message>
    <message>
        <source>predicted</source>
        <translation>予測</translation>
    </message>
    <message>
        <source>litres</source>
        <translation>L 数</translation>
    </message>
    <message>
        <source>weighed, %1</source>
        <translation>計量、%1</translation>
    </message>
    <message>
        <source>measured, %1</source>
        <translation>実測、%1</translation>
    </message>
    <message>
        <source>Weigh every fraction first</source>
        <translation>先にすべての区分を量ってください</translation>
    </message>
    <message>
        <source>Screened on</source>
        <translation>ふるい分けた日</translation>
    </message>
    <message>
        <source>day of the screening</source>
        <translation>ふるい分けの日</translation>
    </message>
    <message>
        <source>What is predicted</source>
        <translation>予測された値</translation>
    </message>
    <message>
        <source>today; or a day like %1</source>
        <translation>今日。または %1 のような日</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SectionView</name>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1、%2：%3</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>設定</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>as the system</source>
        <translation>システムに合わせる</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>言語</translation>
    </message>
    <message>
        <source>A change holds from the next start. Every translation is a draft, not yet read by a native grower.</source>
        <translation>変更は次回の起動から有効。翻訳はすべて草稿で、その言語を母語とする栽培家の確認はまだです。</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>単位</translation>
    </message>
    <message>
        <source>metric: litres, millimetres, grams</source>
        <translation>メートル法：リットル、ミリ、グラム</translation>
    </message>
    <message>
        <source>US: quarts, inches, ounces</source>
        <translation>米国：クォート、インチ、オンス</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>配色</translation>
    </message>
    <message>
        <source>light</source>
        <translation>ライト</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>ダーク</translation>
    </message>
    <message>
        <source>high contrast</source>
        <translation>ハイコントラスト</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>文字サイズ</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>用紙</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>レター</translation>
    </message>
    <message>
        <source>Show laboratory figures beside the verdict</source>
        <translation>判定の横に試験室の値を表示</translation>
    </message>
    <message>
        <source>Backups folder</source>
        <translation>バックアップの場所</translation>
    </message>
    <message>
        <source>beside the record; a change holds from the next start</source>
        <translation>記録と同じ場所。変更は次回の起動から有効</translation>
    </message>
    <message>
        <source>Choose...</source>
        <translation>選択...</translation>
    </message>
    <message>
        <source>Choose the backups folder</source>
        <translation>バックアップの場所を選ぶ</translation>
    </message>
    <message>
        <source>Sieves you own</source>
        <translation>手持ちのふるい</translation>
    </message>
    <message>
        <source>Sets of sieves you own</source>
        <translation>手持ちのふるいの組</translation>
    </message>
    <message>
        <source>name</source>
        <translation>名前</translation>
    </message>
    <message>
        <source>openings</source>
        <translation>目開き</translation>
    </message>
    <message>
        <source>Add a set</source>
        <translation>組を追加</translation>
    </message>
    <message>
        <source>Add a set of sieves</source>
        <translation>ふるいの組を追加</translation>
    </message>
    <message>
        <source>my sieves</source>
        <translation>自分のふるい</translation>
    </message>
    <message>
        <source>set of sieves %1</source>
        <translation>ふるいの組 %1</translation>
    </message>
    <message>
        <source>Your record</source>
        <translation>あなたの記録</translation>
    </message>
    <message>
        <source>It lies in %1.</source>
        <translation>場所は %1 です。</translation>
    </message>
    <message>
        <source>It is open for reading only.</source>
        <translation>読み取り専用で開いています。</translation>
    </message>
    <message>
        <source>That is a network folder: saving takes longer there, and only one person should work in it at a time.</source>
        <translation>ネットワークフォルダーです。保存に時間がかかり、同時に使うのは一人だけにしてください。</translation>
    </message>
    <message>
        <source>Another program copies that folder elsewhere: let it finish before the record is opened on another machine, or two half records may come of it.</source>
        <translation>別のプログラムがこのフォルダーをよそへコピーします。終わるのを待ってから別のコンピューターで開いてください。さもないと半端な記録が二つできるおそれがあります。</translation>
    </message>
    <message>
        <source>One set a line, its openings in mm or by name, apart by blanks: 8 5.6 4 2.8 2 1.4 1; how wide they are inside the frame shows an overloaded sieve. They are offered on the Sieving page, and “which openings?” chooses among them.</source>
        <translation>1 行に 1 組、目開きを mm か名前で、空白で区切る：8 5.6 4 2.8 2 1.4 1。枠の内径を書くと、のせすぎがわかります。「ふるい」ページで選べ、「どの目開き？」もこの中から選びます。</translation>
    </message>
    <message>
        <source>across, %1</source>
        <translation>内径 %1</translation>
    </message>
    <message>
        <source>%1 is no longer among your sieves; undo brings it back.</source>
        <translation>%1 は手持ちのふるいから外れました。元に戻すと戻ります。</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SheetEditor</name>
    <message>
        <source>&amp;Name</source>
        <translation>名前(&amp;N)</translation>
    </message>
    <message>
        <source>name</source>
        <translation>名前</translation>
    </message>
    <message>
        <source>bag, lot or material</source>
        <translation>袋、ロット、資材</translation>
    </message>
    <message>
        <source>&amp;Sample, dry</source>
        <translation>試料、乾燥(&amp;S)</translation>
    </message>
    <message>
        <source>sample mass of %1</source>
        <translation>%1 の試料の質量</translation>
    </message>
    <message>
        <source>weighed before sieving; shows the loss</source>
        <translation>ふるう前に計量。損失がわかります</translation>
    </message>
    <message>
        <source>Sample %1, dry</source>
        <translation>試料 %1、乾燥</translation>
    </message>
    <message>
        <source>mass of sample %1 of %2</source>
        <translation>%2 の試料 %1 の質量</translation>
    </message>
    <message>
        <source>a further sample of the same bag</source>
        <translation>同じ袋の別の試料</translation>
    </message>
    <message>
        <source>by mass, net</source>
        <translation>質量、正味</translation>
    </message>
    <message>
        <source>by gross and tare</source>
        <translation>総重量と風袋</translation>
    </message>
    <message>
        <source>by litres, a bag by bucket</source>
        <translation>リットル（袋をバケツで）</translation>
    </message>
    <message>
        <source>How the fractions are measured</source>
        <translation>区分の測り方</translation>
    </message>
    <message>
        <source>&amp;Measured</source>
        <translation>測り方(&amp;M)</translation>
    </message>
    <message>
        <source>way of measuring %1</source>
        <translation>%1 の測り方</translation>
    </message>
    <message>
        <source>Sample 1: %1</source>
        <translation>試料 1：%1</translation>
    </message>
    <message>
        <source>Sample %1: sum %2, loss %3</source>
        <translation>試料 %1：合計 %2、損失 %3</translation>
    </message>
    <message>
        <source>Sample %1: sum %2</source>
        <translation>試料 %1：合計 %2</translation>
    </message>
    <message>
        <source>Sum %1</source>
        <translation>合計 %1</translation>
    </message>
    <message>
        <source>Nothing weighed yet: the curve grows as you type.</source>
        <translation>まだ計量がありません。入力するにつれて曲線が伸びます。</translation>
    </message>
    <message>
        <source>Sum and loss: – (see the marked cells)</source>
        <translation>合計と損失：–（印の付いたセルを見てください）</translation>
    </message>
    <message>
        <source>%1; type the sample mass or the pan to see the curve.</source>
        <translation>%1。試料の質量か受皿を入力すると曲線が出ます。</translation>
    </message>
    <message>
        <source>%1, still in the stack %2</source>
        <translation>%1、まだふるいの中 %2</translation>
    </message>
    <message>
        <source>%1, loss – (no sample mass)</source>
        <translation>%1、損失 –（試料の質量なし）</translation>
    </message>
    <message>
        <source>%1, gain %2</source>
        <translation>%1、増加 %2</translation>
    </message>
    <message>
        <source>%1, loss %2</source>
        <translation>%1、損失 %2</translation>
    </message>
    <message>
        <source>%1; type the pan to see the curve.</source>
        <translation>%1。受皿を入力すると曲線が出ます。</translation>
    </message>
    <message>
        <source>%1. Fractions lie looser than the whole bag did: litres tell no loss.</source>
        <translation>%1。画分は袋全体より緩く詰まるため、リットルからは損失は分かりません。</translation>
    </message>
    <message>
        <source>Sample %1</source>
        <translation>試料 %1</translation>
    </message>
    <message>
        <source>Checks of the sieve test</source>
        <translation>ふるい試験の確認</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SickTreesTab</name>
    <message>
        <source>Trees, the sick ones first; Space ticks those to compare</source>
        <translation>木（弱った木が先）。スペースで比べる木に印</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>木</translation>
    </message>
    <message>
        <source>condition</source>
        <translation>状態</translation>
    </message>
    <message>
        <source>since</source>
        <translation>いつから</translation>
    </message>
    <message>
        <source>note</source>
        <translation>メモ</translation>
    </message>
    <message>
        <source>name</source>
        <translation>名前</translation>
    </message>
    <message>
        <source>potted</source>
        <translation>植え付け</translation>
    </message>
    <message>
        <source>Tick the sick ones</source>
        <translation>弱った木に印</translation>
    </message>
    <message>
        <source>Tick the sick trees again and no other</source>
        <translation>弱った木だけに印を付け直す</translation>
    </message>
    <message>
        <source>What do these trees share?</source>
        <translation>これらの木の共通点は？</translation>
    </message>
    <message>
        <source>Look first at</source>
        <translation>まず見るもの</translation>
    </message>
    <message>
        <source>What these trees share, beside all others</source>
        <translation>これらの木の共通点と他の木</translation>
    </message>
    <message>
        <source>Save the comparison...</source>
        <translation>比較を保存...</translation>
    </message>
    <message>
        <source>Save what these trees share as text, CSV or JSON</source>
        <translation>共通点をテキスト、CSV、JSON で保存</translation>
    </message>
    <message>
        <source>compare %1, %2</source>
        <translation>%1、%2 を比較</translation>
    </message>
    <message>
        <source>No trees yet. What is written down about them on Pots and trees stands here, the sick ones first.</source>
        <translation>木はまだありません。「鉢と木」で書いたことがここに出ます（弱った木が先）。</translation>
    </message>
    <message>
        <source>%1; tick those to compare with all others.</source>
        <translation>%1。他のすべてと比べる木に印を付けてください。</translation>
    </message>
    <message>
        <source>No tree is sick</source>
        <translation>弱った木はありません</translation>
    </message>
    <message numerus="yes">
        <source>%n tree(s) sick</source>
        <translation>
            <numerusform>弱った木 %n 本</numerusform>
        </translation>
    </message>
    <message>
        <source>No tree is ticked.</source>
        <translation>印の付いた木はありません。</translation>
    </message>
    <message>
        <source>Compared: %1</source>
        <translation>比較：%1</translation>
    </message>
    <message>
        <source>Tick one tree to see what is known of its soil, or several to see what they share.</source>
        <translation>1 本に印を付けると用土について、複数なら共通点がわかります。</translation>
    </message>
    <message>
        <source>They share nothing that was written down.</source>
        <translation>記録にある共通点はありません。</translation>
    </message>
    <message>
        <source>Tick the trees to compare first.</source>
        <translation>先に比べる木に印を付けてください。</translation>
    </message>
    <message>
        <source>Save what these trees share</source>
        <translation>これらの木の共通点を保存</translation>
    </message>
    <message>
        <source>shared by the trees</source>
        <translation>木の共通点</translation>
    </message>
    <message>
        <source>Text to print (*.txt);;For a spreadsheet (*.csv);;For programs (*.json)</source>
        <translation>印刷用テキスト (*.txt);;表計算用 (*.csv);;プログラム用 (*.json)</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>%1 に保存しました。</translation>
    </message>
    <message>
        <source>%1 could not be written: choose a folder you may write to.</source>
        <translation>%1 を書き込めませんでした。書き込めるフォルダーを選んでください。</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SieveTable</name>
    <message>
        <source>Sieve stack</source>
        <translation>ふるいの段</translation>
    </message>
    <message>
        <source>One sieve a row, coarse to fine, the pan last. Type what stayed on; Enter goes to the next pan.</source>
        <translation>1 行に 1 つのふるい、粗い順、最後が受皿。残留を入力し、Enter で次へ。</translation>
    </message>
    <message>
        <source>This is worked out: type what stayed on the sieve.</source>
        <translation>これは計算値です。ふるいに残った量を入力してください。</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SieveTableModel</name>
    <message>
        <source>pan</source>
        <translation>受皿</translation>
    </message>
    <message>
        <source>sieve %1</source>
        <translation>ふるい %1</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1、%2：%3</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>空</translation>
    </message>
    <message>
        <source>sieve, mm</source>
        <translation>ふるい、mm</translation>
    </message>
    <message>
        <source>gross, %1</source>
        <translation>総重量、%1</translation>
    </message>
    <message>
        <source>stayed on, %1</source>
        <translation>残留、%1</translation>
    </message>
    <message>
        <source>tare, %1</source>
        <translation>風袋、%1</translation>
    </message>
    <message>
        <source>net</source>
        <translation>正味</translation>
    </message>
    <message>
        <source>sample 2, %1</source>
        <translation>試料 2、%1</translation>
    </message>
    <message>
        <source>sample 3, %1</source>
        <translation>試料 3、%1</translation>
    </message>
    <message>
        <source>passing</source>
        <translation>通過百分率</translation>
    </message>
    <message>
        <source>check</source>
        <translation>点検</translation>
    </message>
    <message>
        <source>sieve %1 of %2</source>
        <translation>%2 のふるい %1</translation>
    </message>
    <message>
        <source>sample %1 on %2 of %3</source>
        <translation>%3 の %2 の試料 %1</translation>
    </message>
    <message>
        <source>pan mass of %1</source>
        <translation>%1 の受皿の質量</translation>
    </message>
    <message>
        <source>mass on %1 of %2</source>
        <translation>%2 の %1 の質量</translation>
    </message>
    <message>
        <source>paste into %1</source>
        <translation>%1 に貼り付け</translation>
    </message>
    <message numerus="yes">
        <source>Pasted %n row(s).</source>
        <translation>
            <numerusform>%n 行を貼り付けました。</numerusform>
        </translation>
    </message>
    <message>
        <source>further sample of %1</source>
        <translation>%1 の別の試料</translation>
    </message>
    <message>
        <source>sample %1 of %2 removed</source>
        <translation>%2 の試料 %1 を削除</translation>
    </message>
    <message>
        <source>new sieve of %1</source>
        <translation>%1 の新しいふるい</translation>
    </message>
    <message>
        <source>sieve %1 of %2 removed</source>
        <translation>%2 のふるい %1 を削除</translation>
    </message>
    <message>
        <source>gross %1, %2</source>
        <translation>総重量 %1、%2</translation>
    </message>
    <message>
        <source>There is nothing to paste: copy rows of numbers first.</source>
        <translation>貼り付けるものがありません。先に数値の行をコピーしてください。</translation>
    </message>
    <message>
        <source>predicted, %1</source>
        <translation>予測、%1</translation>
    </message>
    <message>
        <source>%1 Left out below the pan: %2</source>
        <translation>%1 受皿より下は除きました：%2</translation>
    </message>
    <message>
        <source>%1 They came from fine to coarse and were turned round.</source>
        <translation>%1 細かい順だったので逆にしました。</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::SievingPage</name>
    <message>
        <source>Bag</source>
        <translation>袋</translation>
    </message>
    <message>
        <source>Sieves</source>
        <translation>ふるい</translation>
    </message>
    <message>
        <source>Dust:</source>
        <translation>粉じん：</translation>
    </message>
    <message>
        <source>sieve dry grain outdoors, wind behind you, with a mask (P2 or N95 at least, P3 or P100 for grit and sand); clean with a damp cloth, not a broom. General information; safety sheets, local codes and qualified advice prevail.</source>
        <translation>乾いた粒は屋外で風を背にし、マスク（P2 または N95 以上、細かい砂利や砂には P3 または P100）を着けてふるう。掃除はほうきでなく濡れた布で。一般的な情報です。安全データシート、地域の規則、専門家の助言が優先します。</translation>
    </message>
    <message>
        <source>What is typed</source>
        <translation>入力</translation>
    </message>
    <message>
        <source>Sieve test</source>
        <translation>ふるい試験</translation>
    </message>
    <message>
        <source>Grain</source>
        <translation>粒</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>曲線</translation>
    </message>
    <message>
        <source>Lot to lot</source>
        <translation>ロットごと</translation>
    </message>
    <message>
        <source>Pictures of the sieve test</source>
        <translation>ふるい試験の図</translation>
    </message>
    <message>
        <source>What follows for the bag</source>
        <translation>袋についての判定</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>判定</translation>
    </message>
    <message>
        <source>Screen this bag</source>
        <translation>この袋をふるい分ける</translation>
    </message>
    <message>
        <source>none, or choose one to grade</source>
        <translation>なし、または測る袋を選ぶ</translation>
    </message>
    <message>
        <source>as typed</source>
        <translation>入力どおり</translation>
    </message>
    <message>
        <source>Component</source>
        <translation>成分</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::StockLine</name>
    <message>
        <source>What happened to the grain</source>
        <translation>粒に起きたこと</translation>
    </message>
    <message>
        <source>counted, left</source>
        <translation>数えた残り</translation>
    </message>
    <message>
        <source>used</source>
        <translation>使用</translation>
    </message>
    <message>
        <source>spilt</source>
        <translation>こぼれ</translation>
    </message>
    <message>
        <source>thrown out</source>
        <translation>廃棄</translation>
    </message>
    <message>
        <source>put back</source>
        <translation>戻し</translation>
    </message>
    <message>
        <source>How much, dry</source>
        <translation>量、乾燥</translation>
    </message>
    <message>
        <source>900 g or 2 L, dry</source>
        <translation>900 g か 2 L、乾燥</translation>
    </message>
    <message>
        <source>Book it</source>
        <translation>記帳</translation>
    </message>
    <message>
        <source>Book it in the stock</source>
        <translation>在庫に記帳</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>量</translation>
    </message>
    <message>
        <source>Of %1</source>
        <translation>%1 の</translation>
    </message>
    <message>
        <source>Nothing of it is in stock yet: take it into stock, or count what is left.</source>
        <translation>まだ在庫に入っていません。在庫に入れるか、残りを数えてください。</translation>
    </message>
    <message>
        <source>Counted %1: %2 left</source>
        <translation>%1 を数えた：残り %2</translation>
    </message>
    <message>
        <source>Spilt %2 of %1</source>
        <translation>%1 を %2 こぼした</translation>
    </message>
    <message>
        <source>Threw out %2 of %1</source>
        <translation>%1 を %2 廃棄した</translation>
    </message>
    <message>
        <source>Put %2 back to %1</source>
        <translation>%1 に %2 戻した</translation>
    </message>
    <message>
        <source>Used %2 of %1</source>
        <translation>%1 を %2 使った</translation>
    </message>
    <message>
        <source>%1, at its own litre weight of %2.</source>
        <translation>%1。自身の容積重 %2 で換算。</translation>
    </message>
    <message>
        <source>%1, at the typical litre weight of %2: measure its own.</source>
        <translation>%1。代表的な容積重 %2 で換算：実物を測ってください。</translation>
    </message>
    <message>
        <source>32 oz or 2 qt, dry</source>
        <translation>乾いた 32 oz または 2 qt</translation>
    </message>
    <message>
        <source>%1, at a litre weight of %2 by that of its bag: measure its own.</source>
        <translation>%1。リットル重量は袋のものから %2：自身のものを測ってください。</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TraceTab</name>
    <message>
        <source>Save the list...</source>
        <translation>一覧を保存...</translation>
    </message>
    <message>
        <source>&amp;Trace</source>
        <translation>追跡(&amp;T)</translation>
    </message>
    <message>
        <source>a bag, fraction, bin, batch or mix, to see which trees stand in it; or a tree, to see what it stands in</source>
        <translation>袋・区分・保管容器・バッチ・配合なら植わっている木、木なら植わっている用土がわかります</translation>
    </message>
    <message>
        <source>Trace</source>
        <translation>追跡</translation>
    </message>
    <message>
        <source>Save the list of trees as text, CSV or JSON</source>
        <translation>木の一覧をテキスト、CSV、JSON で保存</translation>
    </message>
    <message>
        <source>Trees, or what a tree stands in</source>
        <translation>木、または木の植わっている用土</translation>
    </message>
    <message>
        <source>Where the rest of it went or lies</source>
        <translation>残りの行き先・所在</translation>
    </message>
    <message>
        <source>Type the number of a bag to see which trees stand in its grain, or of a tree to see what it stands in.</source>
        <translation>袋の番号を入力するとその粒に植わる木が、木の番号なら植わっている用土がわかります。</translation>
    </message>
    <message>
        <source>Trace a bag, fraction, bin, batch or mix first: its list of trees can be saved.</source>
        <translation>先に袋・区分・保管容器・バッチ・配合を追跡してください。木の一覧を保存できます。</translation>
    </message>
    <message>
        <source>Save the list of trees</source>
        <translation>木の一覧を保存</translation>
    </message>
    <message>
        <source>%1 trees</source>
        <translation>%1 の木</translation>
    </message>
    <message>
        <source>Text to print (*.txt);;For a spreadsheet (*.csv);;For programs (*.json)</source>
        <translation>印刷用テキスト (*.txt);;表計算用 (*.csv);;プログラム用 (*.json)</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>%1 に保存しました。</translation>
    </message>
    <message>
        <source>%1 could not be written: choose a folder you may write to.</source>
        <translation>%1 を書き込めませんでした。書き込めるフォルダーを選んでください。</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TracedTable</name>
    <message>
        <source>Enter goes on to the record of the row.</source>
        <translation>Enter でその行の記録に移ります。</translation>
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
        <translation>空気と水、適合と価格の兼ね合い</translation>
    </message>
    <message>
        <source>Water held</source>
        <translation>保水率</translation>
    </message>
    <message>
        <source>air that drains free</source>
        <translation>排水後の気相率</translation>
    </message>
    <message>
        <source>Score, lower fits better</source>
        <translation>評点（低いほど適合）</translation>
    </message>
    <message>
        <source>price of a mixed litre</source>
        <translation>混合 1 L の価格</translation>
    </message>
    <message>
        <source>price of a mixed litre, %1</source>
        <translation>混合 1 L の価格、%1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TreesPage</name>
    <message>
        <source>Pots and trees</source>
        <translation>鉢と木</translation>
    </message>
    <message>
        <source>Trees</source>
        <translation>木</translation>
    </message>
    <message>
        <source>Pots</source>
        <translation>鉢</translation>
    </message>
    <message>
        <source>Root-mass plans</source>
        <translation>根鉢計画</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TreesTab</name>
    <message>
        <source>top</source>
        <translation>上</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>下</translation>
    </message>
    <message>
        <source>left</source>
        <translation>左</translation>
    </message>
    <message>
        <source>right</source>
        <translation>右</translation>
    </message>
    <message>
        <source>front</source>
        <translation>前</translation>
    </message>
    <message>
        <source>back</source>
        <translation>後ろ</translation>
    </message>
    <message>
        <source>conifer</source>
        <translation>針葉樹</translation>
    </message>
    <message>
        <source>deciduous conifer</source>
        <translation>落葉針葉樹</translation>
    </message>
    <message>
        <source>deciduous, developing</source>
        <translation>落葉樹、養成中</translation>
    </message>
    <message>
        <source>deciduous, refined</source>
        <translation>落葉樹、仕上げ</translation>
    </message>
    <message>
        <source>broadleaf evergreen</source>
        <translation>常緑広葉樹</translation>
    </message>
    <message>
        <source>acid lover</source>
        <translation>酸性土を好む樹種</translation>
    </message>
    <message>
        <source>tropical</source>
        <translation>熱帯樹</translation>
    </message>
    <message>
        <source>sick tree</source>
        <translation>弱った木</translation>
    </message>
    <message>
        <source>freshly collected</source>
        <translation>採取直後</translation>
    </message>
    <message>
        <source>imported</source>
        <translation>輸入樹</translation>
    </message>
    <message>
        <source>%1 of tree %2</source>
        <translation>木 %2 の%1</translation>
    </message>
    <message>
        <source>Trees</source>
        <translation>木</translation>
    </message>
    <message>
        <source>tree by number, name or species</source>
        <translation>番号、名前、樹種</translation>
    </message>
    <message>
        <source>No trees yet. Add the first: its species and group, then what it was last repotted into.</source>
        <translation>木はまだありません。最初の木を追加してください：樹種とグループ、前回何に植え替えたか。</translation>
    </message>
    <message>
        <source>Add a t&amp;ree</source>
        <translation>木を追加(&amp;R)</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>時期 %1</translation>
    </message>
    <message>
        <source>Root-mass p&amp;lan of this tree</source>
        <translation>この木の根鉢計画(&amp;L)</translation>
    </message>
    <message>
        <source>Root-mass plan of this tree</source>
        <translation>この木の根鉢計画</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>名前(&amp;N)</translation>
    </message>
    <message>
        <source>as you call it</source>
        <translation>呼び名</translation>
    </message>
    <message>
        <source>name</source>
        <translation>名前</translation>
    </message>
    <message>
        <source>&amp;Species</source>
        <translation>樹種(&amp;S)</translation>
    </message>
    <message>
        <source>as far as you know it</source>
        <translation>わかる範囲で</translation>
    </message>
    <message>
        <source>species</source>
        <translation>樹種</translation>
    </message>
    <message>
        <source>Species group</source>
        <translation>樹種グループ</translation>
    </message>
    <message>
        <source>not chosen yet</source>
        <translation>未選択</translation>
    </message>
    <message>
        <source>group</source>
        <translation>グループ</translation>
    </message>
    <message>
        <source>Since the year</source>
        <translation>育て始めた年</translation>
    </message>
    <message>
        <source>sown, struck or collected</source>
        <translation>実生・挿し木・採取</translation>
    </message>
    <message>
        <source>year</source>
        <translation>年</translation>
    </message>
    <message>
        <source>Trunk &amp;width</source>
        <translation>幹の太さ(&amp;W)</translation>
    </message>
    <message>
        <source>at the base, over the roots</source>
        <translation>株元で、根の上</translation>
    </message>
    <message>
        <source>trunk width</source>
        <translation>幹の太さ</translation>
    </message>
    <message>
        <source>trunk base</source>
        <translation>株元</translation>
    </message>
    <message>
        <source>Trunk base, right</source>
        <translation>株元、右</translation>
    </message>
    <message>
        <source>Trunk base, back</source>
        <translation>株元、後ろ</translation>
    </message>
    <message>
        <source>behind its middle</source>
        <translation>中心より後ろへ</translation>
    </message>
    <message>
        <source>Trunk base, up</source>
        <translation>株元、高さ</translation>
    </message>
    <message>
        <source>over the root mass&apos;s underside</source>
        <translation>根鉢の下面から</translation>
    </message>
    <message>
        <source>&amp;Mass</source>
        <translation>重さ(&amp;M)</translation>
    </message>
    <message>
        <source>without soil and pot; for lifting</source>
        <translation>土と鉢を除く。持ち上げ用</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>重さ</translation>
    </message>
    <message>
        <source>Ready when</source>
        <translation>適期のしるし</translation>
    </message>
    <message>
        <source>as buds swell</source>
        <translation>芽が膨らむころ</translation>
    </message>
    <message>
        <source>window</source>
        <translation>適期</translation>
    </message>
    <message>
        <source>Window opens</source>
        <translation>適期の始め</translation>
    </message>
    <message>
        <source>month and day, like 03-01</source>
        <translation>月と日、例：03-01</translation>
    </message>
    <message>
        <source>Window closes</source>
        <translation>適期の終わり</translation>
    </message>
    <message>
        <source>month and day, like 04-20</source>
        <translation>月と日、例：04-20</translation>
    </message>
    <message>
        <source>Next repotting</source>
        <translation>次の植え替え</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>写真</translation>
    </message>
    <message>
        <source>files by reference, apart by ;</source>
        <translation>ファイル、; で区切る</translation>
    </message>
    <message>
        <source>photos</source>
        <translation>写真</translation>
    </message>
    <message>
        <source>Add a photo...</source>
        <translation>写真を追加...</translation>
    </message>
    <message>
        <source>Add a photo by its file</source>
        <translation>ファイルで写真を追加</translation>
    </message>
    <message>
        <source>No&amp;te</source>
        <translation>メモ(&amp;T)</translation>
    </message>
    <message>
        <source>anything worth knowing</source>
        <translation>覚えておきたいこと</translation>
    </message>
    <message>
        <source>note</source>
        <translation>メモ</translation>
    </message>
    <message>
        <source>day</source>
        <translation>日付</translation>
    </message>
    <message>
        <source>Day it was seen</source>
        <translation>見た日</translation>
    </message>
    <message>
        <source>looked at for repotting</source>
        <translation>植え替え前の点検</translation>
    </message>
    <message>
        <source>Da&amp;y</source>
        <translation>日付(&amp;Y)</translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation>見たこと</translation>
    </message>
    <message>
        <source>colour, buds, water that stands, roots at the hole</source>
        <translation>葉色、芽、水たまり、穴から出た根</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>書き込む</translation>
    </message>
    <message>
        <source>Write down what was seen</source>
        <translation>見たことを書き込む</translation>
    </message>
    <message>
        <source>Repottings</source>
        <translation>植え替え</translation>
    </message>
    <message>
        <source>Repottings, newest first</source>
        <translation>植え替え（新しい順）</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>鉢</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>配合</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>計画</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>切断</translation>
    </message>
    <message>
        <source>combed</source>
        <translation>ほぐし</translation>
    </message>
    <message>
        <source>bare-rooted</source>
        <translation>裸根</translation>
    </message>
    <message>
        <source>untouched</source>
        <translation>残す核</translation>
    </message>
    <message>
        <source>Day of the repotting</source>
        <translation>植え替えた日</translation>
    </message>
    <message>
        <source>Pot it went into</source>
        <translation>植え付けた鉢</translation>
    </message>
    <message>
        <source>Mix it stands in</source>
        <translation>植わっている配合</translation>
    </message>
    <message>
        <source>Note on the repotting</source>
        <translation>植え替えのメモ</translation>
    </message>
    <message>
        <source>what was cut, what was found</source>
        <translation>切ったもの、見つけたもの</translation>
    </message>
    <message>
        <source>Write down a repotting</source>
        <translation>植え替えを書き込む</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>日付</translation>
    </message>
    <message>
        <source>inspection</source>
        <translation>点検</translation>
    </message>
    <message>
        <source>condition</source>
        <translation>状態</translation>
    </message>
    <message>
        <source>repotting</source>
        <translation>植え替え</translation>
    </message>
    <message>
        <source>Add photos</source>
        <translation>写真を追加</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.webp *.heic);;All files (*)</source>
        <translation>画像 (*.jpg *.jpeg *.png *.webp *.heic);;すべてのファイル (*)</translation>
    </message>
    <message>
        <source>new tree</source>
        <translation>新しい木</translation>
    </message>
    <message>
        <source>tree added</source>
        <translation>木を追加</translation>
    </message>
    <message>
        <source>Tree %1 stays: plans, days or the log name it. Write down that it is dead instead.</source>
        <translation>木 %1 は残します。計画、植え替え日または日誌が参照しています。代わりに枯死と書き込んでください。</translation>
    </message>
    <message>
        <source>tree %1 removed</source>
        <translation>木 %1 を削除</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>不明</translation>
    </message>
    <message>
        <source>Tree %1, %2 years</source>
        <translation>木 %1、%2 年</translation>
    </message>
    <message>
        <source>Tree %1</source>
        <translation>木 %1</translation>
    </message>
    <message>
        <source>Next repotting: %1, as you set it.</source>
        <translation>次の植え替え：%1（ご自身の設定）。</translation>
    </message>
    <message>
        <source>Next repotting by the group&apos;s interval: from %1, by %2 at the latest (common practice; look at it first).</source>
        <translation>グループの間隔による次の植え替え：%1 から、遅くとも %2 まで（一般的な目安。先に木を見てください）。</translation>
    </message>
    <message>
        <source>Next repotting: – (it has no last repotting, or its group has no interval)</source>
        <translation>次の植え替え：–（前回の植え替えがないか、グループに間隔がありません）</translation>
    </message>
    <message>
        <source>Next repotting: – (choose its group and write down the last repotting)</source>
        <translation>次の植え替え：–（グループを選び、前回の植え替えを書き込んでください）</translation>
    </message>
    <message>
        <source>looked at</source>
        <translation>点検</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>はい</translation>
    </message>
    <message>
        <source>no</source>
        <translation>いいえ</translation>
    </message>
    <message>
        <source>%1 corners</source>
        <translation>隅 %1</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>行ったこと</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation>落とす</translation>
    </message>
    <message>
        <source>What its roots bear when it is repotted goes by this group. What its mix should be like is chosen for a mix, under Groups of trees.</source>
        <translation>植え替えで根が耐えられることは、このグループで決まります。配合がどうあるべきかは、配合のときに「樹種グループ」で選びます。</translation>
    </message>
    <message>
        <source>Species gro&amp;up</source>
        <translation>樹種グループ(&amp;U)</translation>
    </message>
    <message>
        <source>of the root mass&apos;s middle</source>
        <translation>根鉢の中心から</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>状態</translation>
    </message>
    <message>
        <source>The tree&apos;s condition, newest first</source>
        <translation>木の状態、新しい順</translation>
    </message>
    <message>
        <source>Begun for tree %1, and waits there: %2</source>
        <translation>樹木 %1 のために書きかけ、そこで待っています：%2</translation>
    </message>
    <message>
        <source>like %1</source>
        <translation>例：%1</translation>
    </message>
    <message>
        <source>a day like %1; by interval if empty</source>
        <translation>%1。空欄：間隔で</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::TroublePage</name>
    <message>
        <source>The record could not be opened</source>
        <translation>記録を開けませんでした</translation>
    </message>
    <message>
        <source>The file was not changed, and what lies on the bench is kept. A backup that is restored takes the file&apos;s place; the file itself stays beside it under a name of its own, so nothing is overwritten.</source>
        <translation>ファイルは変更されず、作業台の内容も保たれています。復元したバックアップがファイルの場所に入り、元のファイルは別の名前で隣に残るため、何も上書きされません。</translation>
    </message>
    <message>
        <source>Open it for reading only</source>
        <translation>読み取り専用で開く</translation>
    </message>
    <message>
        <source>Open another record...</source>
        <translation>別の記録を開く...</translation>
    </message>
    <message>
        <source>Try this one again</source>
        <translation>もう一度試す</translation>
    </message>
    <message>
        <source>Restore the newest intact backup: %1</source>
        <translation>最新の正常なバックアップを復元：%1</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1：%2。</translation>
    </message>
    <message>
        <source>Without a backup the command line can still read what is whole and write it into a file: %1</source>
        <translation>バックアップがなくても、コマンドラインで無事な記録を読み、ファイルに書き出せます: %1</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::VerdictPanel</name>
    <message>
        <source>What screening there gives</source>
        <translation>そこでふるい分けた結果</translation>
    </message>
    <message>
        <source>Which openings? From the sieves of this test</source>
        <translation>どの目開き？（この試験のふるいから）</translation>
    </message>
    <message>
        <source>Which openings? From the sieves you own</source>
        <translation>どの目開き？（手持ちのふるいから）</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::WelcomePage</name>
    <message>
        <source>From a weighed sieve sample to a mix in a pot</source>
        <translation>ふるって量った試料から、鉢の用土まで</translation>
    </message>
    <message>
        <source>Look at the demonstration</source>
        <translation>デモを見る</translation>
    </message>
    <message>
        <source>An invented nursery in a window of its own: bags, sieve tests, a mix for pines. Closing it throws it away.</source>
        <translation>別ウィンドウの架空の樹木園：袋、ふるい試験、松の配合。閉じると消えます。</translation>
    </message>
    <message>
        <source>Record a sieving</source>
        <translation>ふるいを記録する</translation>
    </message>
    <message>
        <source>An empty stack of sieves, ready to type into.</source>
        <translation>空のふるいの段。すぐ入力できます。</translation>
    </message>
    <message>
        <source>Shape and inside lengths: its volume at once, air and water when there is a mix.</source>
        <translation>形と内寸：容積がすぐにわかり、配合があれば空気と水も。</translation>
    </message>
    <message>
        <source>Type what stayed on each sieve, blend the bags, set the pot: read how much air and water the mix holds in it, and how many litres of each to measure out.</source>
        <translation>各ふるいに残った量を入力し、袋を配合し、鉢を決める。すると、用土が鉢の中で持つ空気と水、そしてそれぞれ何 L 量るかがわかります。</translation>
    </message>
    <message>
        <source>Describe a pot</source>
        <translation>鉢を入力する</translation>
    </message>
</context>
<context>
    <name>gritwright::desktop::WishTable</name>
    <message>
        <source>share of the mass inside the wanted grain</source>
        <translation>希望粒径に入る質量の割合</translation>
    </message>
    <message>
        <source>share of the mass that is dust, finer than the size below</source>
        <translation>微塵（下の粒径より細かい粒）の質量の割合</translation>
    </message>
    <message>
        <source>share of the pot that drains free after a flood</source>
        <translation>湛水後に排水される鉢容積の割合</translation>
    </message>
    <message>
        <source>share of the pot that holds water after draining</source>
        <translation>排水後に水を保つ鉢容積の割合</translation>
    </message>
    <message>
        <source>share of the pot whose water plants can take</source>
        <translation>植物が吸える水の鉢容積の割合</translation>
    </message>
    <message>
        <source>mass of a litre, drained</source>
        <translation>排水後 1 L の質量</translation>
    </message>
    <message>
        <source>of a mixed litre, in your own currency</source>
        <translation>混合 1 L、お使いの通貨で</translation>
    </message>
    <message>
        <source>percent passing between limits at sizes you give</source>
        <translation>指定した粒径での通過百分率の範囲</translation>
    </message>
    <message>
        <source>percent passing to come near to at sizes you give</source>
        <translation>指定した粒径での目標の通過百分率</translation>
    </message>
    <message>
        <source>%1 to %2, %</source>
        <translation>%1～%2、%</translation>
    </message>
    <message>
        <source>wanted grain, %</source>
        <translation>希望粒径、%</translation>
    </message>
    <message>
        <source>dust, %</source>
        <translation>微塵、%</translation>
    </message>
    <message>
        <source>air in pot, %</source>
        <translation>鉢の空気、%</translation>
    </message>
    <message>
        <source>water in pot, %</source>
        <translation>鉢の水、%</translation>
    </message>
    <message>
        <source>exchange, meq/L</source>
        <translation>交換容量、meq/L</translation>
    </message>
    <message>
        <source>price of a litre</source>
        <translation>1 L の価格</translation>
    </message>
    <message>
        <source>curve within</source>
        <translation>曲線の範囲</translation>
    </message>
    <message>
        <source>curve near</source>
        <translation>近い曲線</translation>
    </message>
    <message>
        <source>wish</source>
        <translation>希望条件</translation>
    </message>
    <message>
        <source>least</source>
        <translation>下限</translation>
    </message>
    <message>
        <source>most</source>
        <translation>上限</translation>
    </message>
    <message>
        <source>must</source>
        <translation>必須</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>重み</translation>
    </message>
    <message>
        <source>%1 must hold</source>
        <translation>%1 は必須</translation>
    </message>
    <message>
        <source>sizes in mm with percent passing: 4.75 90-100; 2.36 34-50</source>
        <translation>粒径 mm と通過百分率：4.75 90-100; 2.36 34-50</translation>
    </message>
    <message>
        <source>sizes in mm with percent passing: 4.75 95; 2.36 42</source>
        <translation>粒径 mm と通過百分率：4.75 95; 2.36 42</translation>
    </message>
    <message>
        <source>exchange capacity of a litre</source>
        <translation>1 リットルの陽イオン交換容量</translation>
    </message>
    <message>
        <source>plants can take, %</source>
        <translation>有効水分、%</translation>
    </message>
    <message>
        <source>wet litre, %1</source>
        <translation>湿潤時、%1</translation>
    </message>
</context>
<context>
    <name>materials</name>
    <message>
        <source>akadama</source>
        <translation>赤玉土</translation>
    </message>
    <message>
        <source>Granular volcanic subsoil clay, dug and dried, sold by grain band and hardness. Breaks down in wet frost.</source>
        <translation>火山灰土の下層から採って乾かした粒状の粘土質の土。粒径と硬さ別に売られる。湿って凍ると崩れる。</translation>
    </message>
    <message>
        <source>biochar</source>
        <translation>バイオ炭</translation>
    </message>
    <message>
        <source>Charred wood or husk; differs widely by feedstock and may shed water while fresh.</source>
        <translation>木や殻を炭化したもの。原料で大きく異なり、新しいうちは水をはじくことがある。</translation>
    </message>
    <message>
        <source>calcined clay</source>
        <translation>焼成粘土</translation>
    </message>
    <message>
        <source>Clay granules fired hard. Lasts years if fired hot: soak and freeze a pinch to see.</source>
        <translation>粘土粒を硬く焼いたもの。高温で焼いてあれば何年ももつ。一つまみを浸して凍らせると確かめられる。</translation>
    </message>
    <message>
        <source>calcined diatomite</source>
        <translation>焼成珪藻土</translation>
    </message>
    <message>
        <source>Fired diatomaceous earth, light and very absorbent. Its dust must not be breathed.</source>
        <translation>珪藻土を焼いたもの。軽く、吸水が大きい。粉じんを吸い込まないこと。</translation>
    </message>
    <message>
        <source>coir</source>
        <translation>ヤシ殻繊維</translation>
    </message>
    <message>
        <source>Coconut husk pith and fibre. Without a grain density: shares and grading only.</source>
        <translation>ココヤシの殻の髄と繊維。粒子密度がないため、割合と粒度だけを扱う。</translation>
    </message>
    <message>
        <source>crushed expanded clay</source>
        <translation>発泡煉石（破砕）</translation>
    </message>
    <message>
        <source>Fired clay pellets broken to 4-8 mm: rough, with opened pores.</source>
        <translation>焼いた粘土球を 4～8 mm に砕いたもの。粗く、孔隙が開いている。</translation>
    </message>
    <message>
        <source>decomposed granite</source>
        <translation>真砂土</translation>
    </message>
    <message>
        <source>Granite weathered in place: coarse, sandy, with some fines.</source>
        <translation>その場で風化した花崗岩。粗い砂状で、微塵をいくらか含む。</translation>
    </message>
    <message>
        <source>expanded clay</source>
        <translation>発泡煉石</translation>
    </message>
    <message>
        <source>Rounded fired clay pellets, 4-10 mm, with a sealed skin; much of the pore space is closed.</source>
        <translation>丸い焼成粘土球、4～10 mm。表面が閉じ、孔隙の多くは閉じている。</translation>
    </message>
    <message>
        <source>expanded shale</source>
        <translation>膨張頁岩</translation>
    </message>
    <message>
        <source>Kiln-expanded shale, hard and angular.</source>
        <translation>窯で膨張させた頁岩。硬く角張る。</translation>
    </message>
    <message>
        <source>granite grit</source>
        <translation>花崗岩砕砂</translation>
    </message>
    <message>
        <source>Crushed granite: solid, angular, heavy; drains and weighs down.</source>
        <translation>砕いた花崗岩。緻密で角張り、重い。排水を良くし、重しになる。</translation>
    </message>
    <message>
        <source>kanuma</source>
        <translation>鹿沼土</translation>
    </message>
    <message>
        <source>Soft, acid, weathered pumice subsoil for acid-loving species. Crushes easily.</source>
        <translation>軟らかく酸性の、風化した軽石の下層土。酸性土を好む樹種向き。つぶれやすい。</translation>
    </message>
    <message>
        <source>kiryu</source>
        <translation>桐生砂</translation>
    </message>
    <message>
        <source>Weathered river grit with rusty, slightly porous grain.</source>
        <translation>風化した川砂利。さび色で、わずかに多孔質の粒。</translation>
    </message>
    <message>
        <source>peat</source>
        <translation>ピートモス</translation>
    </message>
    <message>
        <source>Sphagnum peat. Without a grain density: shares and grading only.</source>
        <translation>ミズゴケの泥炭。粒子密度がないため、割合と粒度だけを扱う。</translation>
    </message>
    <message>
        <source>perlite</source>
        <translation>パーライト</translation>
    </message>
    <message>
        <source>Expanded volcanic glass; holds water at its surface, most inner pores are closed. Dusty: wet it before pouring.</source>
        <translation>発泡させた火山ガラス。水は表面に保ち、内部の孔隙はほとんど閉じている。粉じんが出るので、注ぐ前に濡らす。</translation>
    </message>
    <message>
        <source>pine bark</source>
        <translation>松バーク</translation>
    </message>
    <message>
        <source>Aged and screened pine bark. Rots down and shrinks.</source>
        <translation>熟成させてふるった松の樹皮。腐って目減りする。</translation>
    </message>
    <message>
        <source>pumice</source>
        <translation>軽石</translation>
    </message>
    <message>
        <source>Foamed volcanic glass; light or dense by deposit. A dense grain goes with a heavy jug: use these figures as a set.</source>
        <translation>発泡した火山ガラス。産地により軽いものと重いものがある。粒が重ければジョッキも重くなるため、これらの値は組で使う。</translation>
    </message>
    <message>
        <source>quartz sand</source>
        <translation>珪砂</translation>
    </message>
    <message>
        <source>Washed silica sand: solid grain without inner pores.</source>
        <translation>洗った珪砂。内部に孔隙のない緻密な粒。</translation>
    </message>
    <message>
        <source>scoria</source>
        <translation>スコリア</translation>
    </message>
    <message>
        <source>Vesicular basaltic cinder, rough and heavy; some of its pores are closed.</source>
        <translation>多孔質の玄武岩質の噴石。粗くて重く、孔隙の一部は閉じている。</translation>
    </message>
    <message>
        <source>sphagnum</source>
        <translation>ミズゴケ</translation>
    </message>
    <message>
        <source>Long-fibre sphagnum moss. Without a grain density: shares and grading only. Wear gloves: moss may carry a skin fungus.</source>
        <translation>長い繊維のミズゴケ。粒子密度がないため、割合と粒度だけを扱う。手袋を着ける（皮膚の感染菌がいることがある）。</translation>
    </message>
    <message>
        <source>vermiculite</source>
        <translation>バーミキュライト</translation>
    </message>
    <message>
        <source>Exfoliated mica; its layers collapse under load and with wear. Very old stock of unknown origin may hold asbestos: leave it shut.</source>
        <translation>膨張させた雲母。荷重と使用で層がつぶれる。出所不明の古いものはアスベストを含むことがあるため、開けないこと。</translation>
    </message>
    <message>
        <source>zeolite</source>
        <translation>ゼオライト</translation>
    </message>
    <message>
        <source>Crushed clinoptilolite rock: heavy, with a very high exchange capacity.</source>
        <translation>砕いた斜プチロル沸石。重く、交換容量がきわめて大きい。</translation>
    </message>
</context>
<context>
    <name>profiles</name>
    <message>
        <source>very small trees</source>
        <translation>ごく小さい木</translation>
    </message>
    <message>
        <source>small trees</source>
        <translation>小さい木</translation>
    </message>
    <message>
        <source>conifers</source>
        <translation>針葉樹</translation>
    </message>
    <message>
        <source>conifers, large or collected</source>
        <translation>針葉樹、大型または採取</translation>
    </message>
    <message>
        <source>deciduous, developing</source>
        <translation>落葉樹、養成中</translation>
    </message>
    <message>
        <source>deciduous, refined</source>
        <translation>落葉樹、仕上げ</translation>
    </message>
    <message>
        <source>deciduous conifers</source>
        <translation>落葉針葉樹</translation>
    </message>
    <message>
        <source>evergreen broadleaf</source>
        <translation>常緑広葉樹</translation>
    </message>
    <message>
        <source>acid lovers</source>
        <translation>酸性土を好む樹種</translation>
    </message>
    <message>
        <source>tropicals</source>
        <translation>熱帯樹</translation>
    </message>
</context>
<context>
    <name>report</name>
    <message>
        <source>the grain would hold {held_percent} % of its volume in water and has {pores_percent} % of pores: was it dabbed dry on the outside, and is the density right?</source>
        <translation>粒は体積の {held_percent} % の水を含む計算ですが、孔隙は {pores_percent} % です。表面の水を拭きましたか、密度は正しいですか？</translation>
    </message>
    <message>
        <source>the grain took up {percent} % of its dry mass; few kinds of grain do: was it dabbed dry on the outside?</source>
        <translation>粒は乾燥質量の {percent} % を吸水しました。これほど吸う粒はまれです。表面の水を拭きましたか？</translation>
    </message>
    <message>
        <source>likely below {percent} % air in season {season} if the crumbs stay among the grain: a hint for the next repotting, an estimate</source>
        <translation>崩れた細粒が粒の間に残る場合、{season} シーズン目に空気が {percent} % を下回る見込みです。次の植え替えの目安となる推定です</translation>
    </message>
    <message>
        <source>likely below {percent} % air in season {season} if the crumbs wash down to the floor: a hint for the next repotting, an estimate</source>
        <translation>崩れた細粒が底へ流れる場合、{season} シーズン目に空気が {percent} % を下回る見込みです。次の植え替えの目安となる推定です</translation>
    </message>
    <message>
        <source>the years to come are an estimate: frost, watering and repotting habits differ, and roots lower the air further</source>
        <translation>先の年は推定です。霜、潅水、植え替えの習慣は違い、根がさらに空気を減らします</translation>
    </message>
    <message>
        <source>how long this grain lasts is not known; it is taken as not breaking. A crumble test would tell</source>
        <translation>この粒の持ちは不明で、崩れないものとしています。崩れ試験をすればわかります</translation>
    </message>
    <message>
        <source>tilt and bottom layer are left out of the years to come</source>
        <translation>先の年の推定には、傾きと鉢底土を含めていません</translation>
    </message>
    <message>
        <source>the test and the usual values are far apart, so neither is trusted as far as it claims: the range is {factor} times as wide; repeat the test</source>
        <translation>試験と通常の値が大きく離れているため、どちらも額面どおりには信用せず、範囲を {factor} 倍にしました。試験をやり直してください</translation>
    </message>
    <message>
        <source>only {percent} % of the voids between grains filled when flooded; was it flooded slowly from below, after a day&apos;s soak?</source>
        <translation>湛水で満ちたのは粒間孔隙の {percent} % だけです。一日浸した後、下からゆっくり湛水しましたか？</translation>
    </message>
    <message>
        <source>without the mix only what was measured is told; give &quot;mix&quot; or --mix to learn from it</source>
        <translation>配合がないと測定値だけを示します。生かすには &quot;mix&quot; または --mix を与えてください</translation>
    </message>
    <message>
        <source>without the pot&apos;s shape or depth there is nothing to compare with; give &quot;container&quot;, &quot;depth_cm&quot; or --pot</source>
        <translation>鉢の形か深さがないと比べられません。&quot;container&quot;、&quot;depth_cm&quot; または --pot を与えてください</translation>
    </message>
    <message>
        <source>the grain came out coarser than it went in: was it the same handful, and was nothing lost?</source>
        <translation>粒が入れたときより粗くなっています。同じ粒でしたか、こぼれませんでしたか？</translation>
    </message>
    <message>
        <source>the grain displaces no water; look at the three masses</source>
        <translation>粒が水を押しのけていません。三つの重さを確かめてください</translation>
    </message>
    <message>
        <source>the soaked grain is lighter than water ({density_g_l} g/L): hold it under with a sieve, or its volume comes out too small</source>
        <translation>吸水した粒が水より軽い（{density_g_l} g/L）ため、ふるいで沈めてください。沈めないと体積が小さく出ます</translation>
    </message>
    <message>
        <source>a fraction needs the opening it stayed on, the one it fell through, or both</source>
        <translation>区分には、残った目開きか通った目開き、または両方が必要です</translation>
    </message>
    <message>
        <source>{density_g_l} g/L is unusual for grain; look at the masses and at the volume of the jug</source>
        <translation>{density_g_l} g/L は粒として異例です。重さとジョッキの容積を確かめてください</translation>
    </message>
    <message>
        <source>the grain lost {percent} % of its volume when worked in; 5 to 13 % is usual: was it filled loosely?</source>
        <translation>突き込みで体積が {percent} % 減りました。通常は 5～13 % です。ふんわり入れましたか？</translation>
    </message>
    <message>
        <source>the pot tests were made with another mix than this one; what they teach holds for this one only as far as the grain is alike</source>
        <translation>鉢試験は別の配合で行いました。粒が似ている範囲でだけ、この配合にも当てはまります</translation>
    </message>
    <message>
        <source>no rigid grain: the packing model is less certain for it</source>
        <translation>硬い粒ではないため、充填モデルの確かさは下がります</translation>
    </message>
    <message>
        <source>all components have 0 parts; give one of them a part</source>
        <translation>すべての配合比が 0 です。どれかに配合比を入れてください</translation>
    </message>
    <message>
        <source>a settling of {share} can&apos;t be; expected 0 to below 1, the share of the volume lost</source>
        <translation>締まり {share} はありえません。0 以上 1 未満（失われる容積の割合）にしてください</translation>
    </message>
    <message>
        <source>a spill of {share} can&apos;t be; expected 0 to below 1, the share of the mix that misses the pot</source>
        <translation>こぼれ {share} はありえません。0 以上 1 未満（鉢に入らない用土の割合）にしてください</translation>
    </message>
    <message>
        <source>the mix swells by {percent} %: it takes more room than its components apart</source>
        <translation>用土が {percent} % 膨らみます。配合材を別々に置くより場所を取ります</translation>
    </message>
    <message>
        <source>weigh a litre of the {component}: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>{component} の 1 L を量る：{figure}の範囲が ±{now_points} から ±{then_points} ポイントに</translation>
    </message>
    <message>
        <source>sieve the {component} three times more: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>{component} をあと 3 回ふるう：{figure}の範囲が ±{now_points} から ±{then_points} ポイントに</translation>
    </message>
    <message>
        <source>range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>{figure}の範囲が ±{now_points} から ±{then_points} ポイントに</translation>
    </message>
    <message>
        <source>fill the pot with water and weigh it: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>鉢に水を満たして量る：{figure}の範囲が ±{now_points} から ±{then_points} ポイントに</translation>
    </message>
    <message>
        <source>make a pot test of the mix: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>配合の鉢試験をする：{figure}の範囲が ±{now_points} から ±{then_points} ポイントに</translation>
    </message>
    <message>
        <source>see in a jug how far the mix settles: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>用土がどれだけ締まるかジョッキで見る：{figure}の範囲が ±{now_points} から ±{then_points} ポイントに</translation>
    </message>
    <message>
        <source>soak the {component} for a day and weigh it surface-dry: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>{component} を一日浸し、表乾状態で量る：{figure}の範囲が ±{now_points} から ±{then_points} ポイントに</translation>
    </message>
    <message>
        <source>{percent} % of air is unusual; was it drained level for half an hour, and is the volume right?</source>
        <translation>空気 {percent} % は異例です。水平で 30 分排水しましたか、容積は正しいですか？</translation>
    </message>
    <message>
        <source>{percent} % of water after draining is unusual; look at the masses and the volume</source>
        <translation>排水後の水 {percent} % は異例です。重さと容積を確かめてください</translation>
    </message>
    <message>
        <source>{caught_ml} mL ran out of {poured_ml} mL poured in; count all the water from the dry mix on</source>
        <translation>注いだ {poured_ml} mL のうち {caught_ml} mL が流れ出ました。乾いた用土からの水をすべて数えてください</translation>
    </message>
    <message>
        <source>a depth of {depth_cm} cm can&apos;t be; expected more than 0</source>
        <translation>深さ {depth_cm} cm はありえません。0 より大きくしてください</translation>
    </message>
    <message>
        <source>the volume of the mix is not known; give volume_ml, a container in the file, or --pot</source>
        <translation>用土の容積が不明です。volume_ml、ファイル内の container、または --pot を与えてください</translation>
    </message>
    <message>
        <source>neither a flooded nor a drained mass is given; expected one of flooded_g and drained_g</source>
        <translation>湛水時の質量も排水後の質量もありません。flooded_g と drained_g のどちらかが必要です</translation>
    </message>
    <message>
        <source>there are no tests; expected one or more</source>
        <translation>試験がありません。一つ以上必要です</translation>
    </message>
    <message>
        <source>{percent} % filled when flooded is unusual; look at the masses and the volume</source>
        <translation>湛水時に {percent} % 満ちたのは異例です。重さと容積を確かめてください</translation>
    </message>
    <message>
        <source>the pot is given twice; expected one of container and depth_cm</source>
        <translation>鉢が二度与えられています。container と depth_cm のどちらか一つにしてください</translation>
    </message>
    <message>
        <source>a volume of {volume_ml} mL can&apos;t be; expected more than 0</source>
        <translation>容積 {volume_ml} mL はありえません。0 より大きくしてください</translation>
    </message>
    <message>
        <source>masses and poured water are mixed; expected one or the other for each test</source>
        <translation>質量と注いだ水が混在しています。試験ごとにどちらか一方にしてください</translation>
    </message>
    <message>
        <source>{higher_g} g is not above {lower_g} g; expected tare, dry, drained, flooded in rising order</source>
        <translation>{higher_g} g が {lower_g} g より大きくありません。風袋、乾燥、排水後、湛水の順に大きくなるはずです</translation>
    </message>
    <message>
        <source>{percent} % is 1-2 mm: good for very small pots and for top dressing</source>
        <translation>{percent} % が 1～2 mm です。ごく小さい鉢と化粧土に向きます</translation>
    </message>
    <message>
        <source>above 2 mm ({size_mm} mm here) the estimate is good to 3.5 points at best; a pot test makes it better</source>
        <translation>2 mm を超えると（ここでは {size_mm} mm）推定の精度は良くても 3.5 ポイントです。鉢試験で良くなります</translation>
    </message>
    <message>
        <source>the figures describe the new mix after soaking and draining; watering a dry pot from above reaches less (about half the rise), and roots and breakdown lower the air with time</source>
        <translation>値は、新しい用土を浸して排水した後のものです。乾いた鉢に上から潅水すると少なく（上昇の約半分）、根と崩れで空気は時とともに減ります</translation>
    </message>
    <message>
        <source>grain of {size_mm} mm holds a wet zone of about one grain or less</source>
        <translation>{size_mm} mm の粒の滞水層は、一粒分程度かそれ以下です</translation>
    </message>
    <message>
        <source>{value} can&apos;t be; expected {low} to {high}</source>
        <translation>{value} はありえません。{low}～{high} にしてください</translation>
    </message>
    <message>
        <source>a table of areas has no outline; tilted, a round one is assumed</source>
        <translation>断面積の表には輪郭がありません。傾ける場合は丸とみなします</translation>
    </message>
    <message>
        <source>the unit is {unit}; expected {expected}</source>
        <translation>単位が {unit} です。{expected} にしてください</translation>
    </message>
    <message>
        <source>the absorption fills {water_percent} % of the grain, which has {pores_percent} % pores; look at the absorption and both grain densities</source>
        <translation>吸水は粒の {water_percent} % を満たしますが、孔隙は {pores_percent} % です。吸水率と二つの密度を確かめてください</translation>
    </message>
    <message>
        <source>an absorption of {ratio} can&apos;t be; expected 0 or more, kg of water per kg of dry grain</source>
        <translation>吸水率 {ratio} はありえません。0 以上（乾燥粒 1 kg あたりの水 kg）にしてください</translation>
    </message>
    <message>
        <source>an exchange capacity of {cec_meq_100g} meq/100 g can&apos;t be; expected 0 or more</source>
        <translation>交換容量 {cec_meq_100g} meq/100 g はありえません。0 以上にしてください</translation>
    </message>
    <message>
        <source>grain of one size has no pan and no top class; leave this out or give a grading</source>
        <translation>単一粒径の粒に受皿や最上級はありません。省くか、粒度を与えてください</translation>
    </message>
    <message>
        <source>a density of {density_g_l} g/L can&apos;t be; expected more than 0</source>
        <translation>密度 {density_g_l} g/L はありえません。0 より大きくしてください</translation>
    </message>
    <message>
        <source>{percent} % moisture can&apos;t be; expected 0 or more, water per dry mass</source>
        <translation>水分 {percent} % はありえません。0 以上（乾燥質量に対する水）にしてください</translation>
    </message>
    <message>
        <source>the sieve test {file} can&apos;t be read from here; give the grading itself</source>
        <translation>ふるい試験 {file} はここから読めません。粒度そのものを与えてください</translation>
    </message>
    <message>
        <source>the grain sizes are missing; give grading, class_mm or sieve_test</source>
        <translation>粒径がありません。grading、class_mm または sieve_test を与えてください</translation>
    </message>
    <message>
        <source>an open share of {share} can&apos;t be; expected 0 to 1</source>
        <translation>開いた割合 {share} はありえません。0～1 にしてください</translation>
    </message>
    <message>
        <source>{parts} parts can&apos;t be; expected 0 or more</source>
        <translation>配合比 {parts} はありえません。0 以上にしてください</translation>
    </message>
    <message>
        <source>a grain size of {size_mm} mm can&apos;t be; expected more than 0</source>
        <translation>粒径 {size_mm} mm はありえません。0 より大きくしてください</translation>
    </message>
    <message>
        <source>the grain sizes are given in more than one way; give one of grading, class_mm and sieve_test</source>
        <translation>粒径が複数の方法で与えられています。grading、class_mm、sieve_test のどれか一つにしてください</translation>
    </message>
    <message>
        <source>the area is {area_cm2} cm2; it must be above 0 (only the floor may be a point)</source>
        <translation>断面積が {area_cm2} cm2 です。0 より大きくしてください（点でよいのは底だけです）</translation>
    </message>
    <message>
        <source>the area is {area_cm2} cm2; expected at most a square of ten metres</source>
        <translation>断面積が {area_cm2} cm2 です。10 m 四方以下にしてください</translation>
    </message>
    <message>
        <source>the exponent is {exponent}; expected at most {limit}</source>
        <translation>指数が {exponent} です。{limit} 以下にしてください</translation>
    </message>
    <message>
        <source>the exponent is {exponent}; it must be 1 or more</source>
        <translation>指数が {exponent} です。1 以上にしてください</translation>
    </message>
    <message>
        <source>{count} drain holes can&apos;t be; expected 0 or more</source>
        <translation>排水穴 {count} 個はありえません。0 以上にしてください</translation>
    </message>
    <message>
        <source>the length is {length_cm} cm; it must be above 0</source>
        <translation>長さが {length_cm} cm です。0 より大きくしてください</translation>
    </message>
    <message>
        <source>the length is {length_cm} cm; expected at most {limit_cm} cm</source>
        <translation>長さが {length_cm} cm です。{limit_cm} cm 以下にしてください</translation>
    </message>
    <message>
        <source>the length is {length_cm} cm; expected at least {limit_cm} cm</source>
        <translation>長さが {length_cm} cm です。{limit_cm} cm 以上にしてください</translation>
    </message>
    <message>
        <source>a drum needs its diameter at half the depth</source>
        <translation>胴張りの鉢には深さの半分での直径が必要です</translation>
    </message>
    <message>
        <source>the profile has no areas; give height_cm and area_cm2 from the floor to the rim</source>
        <translation>断面の表に面積がありません。底から縁まで height_cm と area_cm2 を与えてください</translation>
    </message>
    <message>
        <source>the table of areas has {rows} rows; at least two are needed, floor and rim</source>
        <translation>断面積の表が {rows} 行です。底と縁の少なくとも 2 行が必要です</translation>
    </message>
    <message>
        <source>the tilt is {tilt_deg} degrees; expected 0 to 60</source>
        <translation>傾きが {tilt_deg} 度です。0～60 にしてください</translation>
    </message>
    <message>
        <source>{form} is no form of a mound; expected paraboloid, cone or ellipsoid</source>
        <translation>{form} は盛り上げの形ではありません。paraboloid、cone、ellipsoid のどれかにしてください</translation>
    </message>
    <message>
        <source>{shape} is no shape; expected rectangular, oval, round, hexagonal, octagonal, drum, superellipse, bowl or profile</source>
        <translation>{shape} は形ではありません。rectangular、oval、round、hexagonal、octagonal、drum、superellipse、bowl、profile のどれかにしてください</translation>
    </message>
    <message>
        <source>{axis} is no axis to tilt about; expected length or width</source>
        <translation>{axis} は傾ける軸ではありません。length か width にしてください</translation>
    </message>
    <message>
        <source>the volume is {volume_ml} mL; it must be above 0</source>
        <translation>容積が {volume_ml} mL です。0 より大きくしてください</translation>
    </message>
    <message>
        <source>with {diameter_cm} cm at half the depth the walls would meet; check the three diameters</source>
        <translation>深さの半分で {diameter_cm} cm では壁がぶつかります。三つの直径を確かめてください</translation>
    </message>
    <message>
        <source>the header has no column {column}; expected aperture_mm with retained_g, with gross_g and tare_g, or with retained_l</source>
        <translation>見出しに列 {column} がありません。aperture_mm と、retained_g、gross_g と tare_g、または retained_l が必要です</translation>
    </message>
    <message>
        <source>there is no header line; expected aperture_mm,retained_g</source>
        <translation>見出し行がありません。aperture_mm,retained_g が必要です</translation>
    </message>
    <message>
        <source>{text} is not a day; expected one like 2026-03-14</source>
        <translation>{text} は日付ではありません。2026-03-14 のような日付にしてください</translation>
    </message>
    <message>
        <source>the file is no longer where it was opened; save a copy of what is open</source>
        <translation>ファイルが開いた場所にもうありません。開いている内容のコピーを保存してください</translation>
    </message>
    <message>
        <source>this is a folder; name a file</source>
        <translation>これはフォルダーです。ファイルを指定してください</translation>
    </message>
    <message>
        <source>the format is {found}; expected {expected}</source>
        <translation>形式が {found} です。{expected} にしてください</translation>
    </message>
    <message>
        <source>an opening of {aperture_mm} mm can&apos;t be; give the free opening of the sieve in mm</source>
        <translation>目開き {aperture_mm} mm はありえません。ふるいの内法を mm で与えてください</translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm after {before_mm} mm is out of order; write a grading coarse to fine</source>
        <translation>目開き {aperture_mm} mm が {before_mm} mm の後で、順序が違います。粒度は粗い順に書いてください</translation>
    </message>
    <message>
        <source>the pan size {size_mm} mm has to lie above 0 and not above the finest sieve, {finest_mm} mm</source>
        <translation>受皿の粒径 {size_mm} mm は 0 より大きく、最も細かいふるい {finest_mm} mm 以下にしてください</translation>
    </message>
    <message>
        <source>the top size {size_mm} mm has to lie above the coarsest sieve, {coarsest_mm} mm</source>
        <translation>最大粒径 {size_mm} mm は、最も粗いふるい {coarsest_mm} mm より大きくしてください</translation>
    </message>
    <message>
        <source>the key {key} stands twice; give it once</source>
        <translation>キー {key} が二度あります。一度だけにしてください</translation>
    </message>
    <message>
        <source>the two results lie {percent} % apart, {usual_percent} % is usual; measure a third time</source>
        <translation>二つの結果が {percent} % 離れています。通常は {usual_percent} % です。もう一度測ってください</translation>
    </message>
    <message>
        <source>{text} has a decimal comma; write a point, or separate the columns by ; or tab</source>
        <translation>{text} に小数点のカンマがあります。ピリオドにするか、列を ; かタブで区切ってください</translation>
    </message>
    <message>
        <source>{unit} is no unit known here; leave it out or write one that fits the field</source>
        <translation>{unit} はここで使える単位ではありません。省くか、欄に合う単位を書いてください</translation>
    </message>
    <message>
        <source>at least {least} are needed here</source>
        <translation>ここには {least} 以上必要です</translation>
    </message>
    <message>
        <source>expected {expected} here</source>
        <translation>ここには {expected} が必要です</translation>
    </message>
    <message>
        <source>name at least one opening to screen at</source>
        <translation>ふるい分ける目開きを一つ以上示してください</translation>
    </message>
    <message>
        <source>{aperture_mm} mm is below the finest sieve of the test, {finest_mm} mm, and {percent} % is finer than that: test with a finer sieve</source>
        <translation>{aperture_mm} mm は試験の最も細かいふるい {finest_mm} mm より下で、それより細かい粒が {percent} % あります。より細かいふるいで試験してください</translation>
    </message>
    <message>
        <source>an opening of {aperture_mm} mm can&apos;t be; expected more than 0</source>
        <translation>目開き {aperture_mm} mm はありえません。0 より大きくしてください</translation>
    </message>
    <message>
        <source>a sharpness of {sharpness} can&apos;t be; expected more than 0</source>
        <translation>切れの鋭さ {sharpness} はありえません。0 より大きくしてください</translation>
    </message>
    <message>
        <source>{percent} % crumbs can&apos;t be; expected 0 to 100</source>
        <translation>崩れ {percent} % はありえません。0～100 にしてください</translation>
    </message>
    <message>
        <source>a sieve of {diameter_mm} mm has no sieving area; give the diameter of the frame in mm</source>
        <translation>直径 {diameter_mm} mm のふるいには網面がありません。枠の直径を mm で与えてください</translation>
    </message>
    <message>
        <source>{percent} % of the sample was lost while sieving, more than 1 %: look for a spilled or forgotten pan</source>
        <translation>ふるいで試料の {percent} % を失いました。1 % を超えています。こぼした、または量り忘れた皿がないか確かめてください</translation>
    </message>
    <message>
        <source>a mass of {mass_g} g can&apos;t be; expected 0 or more</source>
        <translation>質量 {mass_g} g はありえません。0 以上にしてください</translation>
    </message>
    <message>
        <source>the same fraction is given in more than one way; give its mass, its gross and tare, or its litres</source>
        <translation>同じ区分が複数の方法で与えられています。質量、総重量と風袋、または L のどれかにしてください</translation>
    </message>
    <message>
        <source>masses and litres are mixed; measure all fractions in one way</source>
        <translation>質量と L が混在しています。すべての区分を一つの方法で測ってください</translation>
    </message>
    <message>
        <source>the pan is missing; the last row holds what fell through the finest sieve, 0 if nothing did</source>
        <translation>受皿がありません。最後の行は最も細かいふるいを通った量で、なければ 0 です</translation>
    </message>
    <message>
        <source>there is no sieve; expected at least one row above the pan</source>
        <translation>ふるいがありません。受皿の上に 1 行以上必要です</translation>
    </message>
    <message>
        <source>{percent} % is finer than the finest sieve, {aperture_mm} mm; a finer sieve would show where the dust begins</source>
        <translation>最も細かいふるい {aperture_mm} mm より細かい粒が {percent} % あります。より細かいふるいで微塵の始まりがわかります</translation>
    </message>
    <message>
        <source>{count} can&apos;t be the number of a test; expected 1 or more</source>
        <translation>{count} は試験の番号になりません。1 以上にしてください</translation>
    </message>
    <message>
        <source>a resolution of {mass_g} g can&apos;t be; expected 0 or more</source>
        <translation>目量 {mass_g} g はありえません。0 以上にしてください</translation>
    </message>
    <message>
        <source>a sample of {mass_g} g can&apos;t be; expected more than 0</source>
        <translation>試料 {mass_g} g はありえません。0 より大きくしてください</translation>
    </message>
    <message>
        <source>{mass_g} g is a small sample for grain of {size_mm} mm; take {least_g} g or more</source>
        <translation>{size_mm} mm の粒に試料 {mass_g} g は少なすぎます。{least_g} g 以上取ってください</translation>
    </message>
    <message>
        <source>{text} is no basis; expected original or recovered</source>
        <translation>{text} は基準ではありません。original か recovered にしてください</translation>
    </message>
    <message>
        <source>a volume of {volume_l} L can&apos;t be; expected 0 or more</source>
        <translation>容積 {volume_l} L はありえません。0 以上にしてください</translation>
    </message>
    <message>
        <source>a test was measured in litres, so each counts the same</source>
        <translation>リットルで測った試験があるため、どれも同じ重みで数えます</translation>
    </message>
    <message>
        <source>{percent} % of the sample still fell through in one more minute, 0.5 % is the limit: shake on, unless the grain is soft and breaks</source>
        <translation>追加 1 分でまだ試料の {percent} % が落ちました。限度は 0.5 % です。粒が軟らかく崩れるのでなければ、ふるい続けてください</translation>
    </message>
    <message>
        <source>this byte is not UTF-8; save the file as UTF-8</source>
        <translation>このバイトは UTF-8 ではありません。ファイルを UTF-8 で保存してください</translation>
    </message>
    <message>
        <source>{count} bags can&apos;t be; expected 1 or more</source>
        <translation>{count} 袋はありえません。1 以上にしてください</translation>
    </message>
    <message>
        <source>in whole scoops a batch is up to {percent} points off the recipe; a smaller scoop or a larger tub keeps it closer</source>
        <translation>土入れの整数回では、バッチがレシピから最大 {percent} ポイントずれます。小さい土入れか大きいトロ舟で近づきます</translation>
    </message>
    <message>
        <source>{volume_ml} mL can&apos;t be filled in; expected 0 or more</source>
        <translation>{volume_ml} mL は充填できません。0 以上にしてください</translation>
    </message>
    <message>
        <source>about {mass_kg} kg when full and wet: lift it by two or use a trolley (general information; safety sheets, local codes and qualified advice prevail)</source>
        <translation>満たして濡れると約 {mass_kg} kg です。二人で持つか台車を使ってください（一般的な情報です。安全データシート、地域の規則、専門家の助言が優先します）</translation>
    </message>
    <message>
        <source>at least {mass_kg} kg when full and wet, not all of it weighed: lift it by two or use a trolley (general information; safety sheets, local codes and qualified advice prevail)</source>
        <translation>満たして濡れると少なくとも {mass_kg} kg です（全部は量っていません）。二人で持つか台車を使ってください（一般的な情報です。安全データシート、地域の規則、専門家の助言が優先します）</translation>
    </message>
    <message>
        <source>an interval of {years} years can&apos;t be; expected 1 or more</source>
        <translation>間隔 {years} 年はありえません。1 以上にしてください</translation>
    </message>
    <message>
        <source>{volume_l} L of a layer are not counted as any grain; name its grain</source>
        <translation>層の {volume_l} L がどの粒にも数えられていません。粒を指定してください</translation>
    </message>
    <message>
        <source>a mass of {mass_kg} kg can&apos;t be; expected 0 or more</source>
        <translation>質量 {mass_kg} kg はありえません。0 以上にしてください</translation>
    </message>
    <message>
        <source>no settling is given; litres are as poured, and worked in they lie about 8 % lower</source>
        <translation>締まりが与えられていません。L は注いだままの量で、突き込むと約 8 % 下がります</translation>
    </message>
    <message>
        <source>no spill is given; 5 to 10 % beside the pot is common</source>
        <translation>こぼれが与えられていません。鉢の外に 5～10 % こぼれるのが普通です</translation>
    </message>
    <message>
        <source>{text} is no month and day; expected the like of 03-15</source>
        <translation>{text} は月と日ではありません。03-15 のようにしてください</translation>
    </message>
    <message>
        <source>expected a whole number, found {value}</source>
        <translation>整数が必要ですが、{value} です</translation>
    </message>
    <message>
        <source>settling {percent} %, the median of the last {count} trees filled</source>
        <translation>締まり {percent} %（直近 {count} 本の中央値）</translation>
    </message>
    <message>
        <source>spill {percent} %, the median of the last {count} batches</source>
        <translation>こぼれ {percent} %（直近 {count} バッチの中央値）</translation>
    </message>
    <message>
        <source>{volume_l} L on the shelf can&apos;t be; expected 0 or more</source>
        <translation>棚の {volume_l} L はありえません。0 以上にしてください</translation>
    </message>
    <message>
        <source>the work can&apos;t be ordered by {text}; expected bud, mix, helper or name</source>
        <translation>作業を {text} の順にはできません。bud、mix、helper、name のどれかにしてください</translation>
    </message>
    <message>
        <source>{text} is no time of the day; expected evening or morning</source>
        <translation>{text} は時間帯ではありません。evening か morning にしてください</translation>
    </message>
    <message>
        <source>screened grain has no yield; leave one of the two out</source>
        <translation>ふるい分けた粒に歩留まりはありません。どちらかを省いてください</translation>
    </message>
    <message>
        <source>a yield of {share} can&apos;t be; expected more than 0 and at most 1.2, litres for each litre screened</source>
        <translation>歩留まり {share} はありえません。0 より大きく 1.2 以下（ふるった 1 L あたりの L）にしてください</translation>
    </message>
    <message>
        <source>the band runs from {from_mm} to {to_mm} mm; expected the finer size first</source>
        <translation>範囲が {from_mm}～{to_mm} mm です。細かい方を先にしてください</translation>
    </message>
    <message>
        <source>recipes of {value} components can&apos;t be searched; expected 1 to {most}</source>
        <translation>配合材 {value} 個のレシピは検索できません。1～{most} にしてください</translation>
    </message>
    <message>
        <source>the wish names more than one figure; make a wish of each</source>
        <translation>希望条件が複数の値を含みます。値ごとに分けてください</translation>
    </message>
    <message>
        <source>{value} can&apos;t be; expected 0 or more</source>
        <translation>{value} はありえません。0 以上にしてください</translation>
    </message>
    <message>
        <source>{value} can&apos;t be reached; expected {low} to {high}</source>
        <translation>{value} には届きません。{low}～{high} にしてください</translation>
    </message>
    <message>
        <source>{value} L are needed; expected more than 0</source>
        <translation>必要量が {value} L です。0 より大きくしてください</translation>
    </message>
    <message>
        <source>there is nothing to mix; expected 1 to 40 candidates</source>
        <translation>混ぜるものがありません。候補は 1～40 個にしてください</translation>
    </message>
    <message>
        <source>the wish names nothing; give one of limits, nearest, band, finer_than_mm, air_filled_porosity, container_capacity, available_in_pot, wet_mass_g_l, cec_meq_l, price_per_l, share</source>
        <translation>希望条件に何も指定がありません。limits、nearest、band、finer_than_mm、air_filled_porosity、container_capacity、available_in_pot、wet_mass_g_l、cec_meq_l、price_per_l、share のどれかを与えてください</translation>
    </message>
    <message>
        <source>nothing is asked for; give a lower limit, an upper limit or both</source>
        <translation>何も求めていません。下限、上限、または両方を与えてください</translation>
    </message>
    <message>
        <source>{key} is false; leave the wish out or write true</source>
        <translation>{key} が false です。希望条件を省くか true にしてください</translation>
    </message>
    <message>
        <source>{text} can&apos;t be read; expected a size in mm and percent passing, such as 4.75 90-100, with ; between points</source>
        <translation>{text} は読めません。4.75 90-100 のように粒径 mm と通過百分率を書き、点は ; で区切ってください</translation>
    </message>
    <message>
        <source>a price of {value} can&apos;t be; expected 0 or more</source>
        <translation>価格 {value} はありえません。0 以上にしてください</translation>
    </message>
    <message>
        <source>a price of 0 as upper limit leaves no scale to measure a miss by; expected more than 0</source>
        <translation>価格の上限が 0 では外れを測れません。0 より大きくしてください</translation>
    </message>
    <message>
        <source>none of the {recipes} recipes scores less; of those that score the same a cheaper or simpler one may exist</source>
        <translation>レシピ {recipes} 件にこれより低い評点はありません。同じ評点でもっと安い、または簡単なものはあるかもしれません</translation>
    </message>
    <message>
        <source>a stock of {value} L can&apos;t be; expected 0 or more</source>
        <translation>在庫 {value} L はありえません。0 以上にしてください</translation>
    </message>
    <message>
        <source>a total of {value} parts can&apos;t be searched; expected 1 to {most}</source>
        <translation>配合比の合計 {value} は検索できません。1～{most} にしてください</translation>
    </message>
    <message>
        <source>a weight of {weight} can&apos;t be; expected 0 or more</source>
        <translation>重み {weight} はありえません。0 以上にしてください</translation>
    </message>
    <message>
        <source>this must be above 0; leave it out if it is not known</source>
        <translation>0 より大きくしてください。不明なら省いてください</translation>
    </message>
    <message>
        <source>{text} holds no grain; expected a bag, a bin, a fraction or a batch</source>
        <translation>{text} に粒はありません。袋、保管容器、区分、バッチのどれかにしてください</translation>
    </message>
    <message>
        <source>the sizes run from {from_mm} mm down to {to_mm} mm; expected the finer first</source>
        <translation>粒径が {from_mm} mm から {to_mm} mm へ逆になっています。細かい方を先にしてください</translation>
    </message>
    <message>
        <source>{text} is not known here; expected one of {expected}</source>
        <translation>{text} はここでは使えません。{expected} のどれかにしてください</translation>
    </message>
    <message>
        <source>an angle of {angle_deg} degrees can&apos;t be; expected {low_deg} to {high_deg}</source>
        <translation>角度 {angle_deg} 度はありえません。{low_deg}～{high_deg} にしてください</translation>
    </message>
    <message>
        <source>deciduous conifers stand between: bare-rooted with care, an older tree keeps a core</source>
        <translation>落葉針葉樹は中間です。裸根は慎重に、古い木は核を残します</translation>
    </message>
    <message>
        <source>refined trees lose fine twigs when bare-rooted: work edges and base, a sector at most</source>
        <translation>仕上げの木は裸根にすると小枝を失います。縁と底を整え、扇形は一つまでにします</translation>
    </message>
    <message>
        <source>this group is not bare-rooted: keep the core</source>
        <translation>このグループは裸根にしません。核を残してください</translation>
    </message>
    <message>
        <source>bare-root tropicals only while they grow</source>
        <translation>熱帯樹の裸根は生育中だけです</translation>
    </message>
    <message>
        <source>freshly collected: trim torn ends only, then leave it for 2-3 years</source>
        <translation>採取直後：裂けた先だけ整え、2～3 年そのままにします</translation>
    </message>
    <message>
        <source>conifers: bottom and one half, never all sides; the other half a year or two later</source>
        <translation>針葉樹：底と片側半分まで、全周は決してしません。残り半分は 1～2 年後に</translation>
    </message>
    <message>
        <source>a conifer is never bare-rooted; comb one half and the bottom, the other half in a later year</source>
        <translation>針葉樹は決して裸根にしません。片側半分と底をほぐし、残り半分は後の年に</translation>
    </message>
    <message>
        <source>an exponent of {exponent} can&apos;t be; expected 1 to 100 (2 is an ellipsoid, 4 a box with soft edges)</source>
        <translation>指数 {exponent} はありえません。1～100 にしてください（2 は楕円体、4 は角の丸い箱）</translation>
    </message>
    <message>
        <source>what lies behind this face is not known; the plan takes {depth_cm} cm off it, the next plan is for when that proves impossible</source>
        <translation>この面の奥は不明です。計画では {depth_cm} cm 落とします。無理とわかった場合は次の計画を使います</translation>
    </message>
    <message>
        <source>imported: leave it until it grows strongly, then go by its own group</source>
        <translation>輸入樹：力強く伸びるまでそのままにし、その後は本来のグループに従います</translation>
    </message>
    <message>
        <source>{years} years can&apos;t be; expected 1 to 100</source>
        <translation>{years} 年はありえません。1～100 にしてください</translation>
    </message>
    <message>
        <source>the pot chosen is too small; it fits the free pot {pot}</source>
        <translation>選んだ鉢は小さすぎます。空いている鉢 {pot} に収まります</translation>
    </message>
    <message>
        <source>a share of {share} can&apos;t be; expected 0 to 1</source>
        <translation>割合 {share} はありえません。0～1 にしてください</translation>
    </message>
    <message>
        <source>the root mass stands {rise_cm} cm over the soil: build it up with sphagnum</source>
        <translation>根鉢が土面から {rise_cm} cm 出ます。ミズゴケで盛って覆ってください</translation>
    </message>
    <message>
        <source>sick: dead and rotten roots come off, no healthy one; clean tools, throw the old soil away</source>
        <translation>弱った木：枯れた根と腐った根だけを除き、健全な根は切りません。道具を清潔にし、古い土は捨てます</translation>
    </message>
    <message>
        <source>not in one go: these cuts and back into the old pot, the rest when the tree has recovered</source>
        <translation>一度にはできません。この切断だけで元の鉢に戻し、残りは木が回復してから</translation>
    </message>
    <message>
        <source>a table of areas has no outline; a round one is assumed</source>
        <translation>断面積の表には輪郭がありません。丸とみなします</translation>
    </message>
    <message>
        <source>a tip of {angle_deg} degrees lays the tree down; look at what becomes the new surface</source>
        <translation>{angle_deg} 度倒すと木が横になります。何が新しい表面になるか確かめてください</translation>
    </message>
    <message>
        <source>the trunk base can&apos;t be at {length_cm} cm; expected {low_cm} cm to {high_cm} cm</source>
        <translation>株元を {length_cm} cm に置くことはできません。{low_cm}～{high_cm} cm にしてください</translation>
    </message>
    <message>
        <source>the trunk base would be buried where it was placed; it was raised to the soil</source>
        <translation>その位置では株元が埋まるため、土面まで上げました</translation>
    </message>
    <message>
        <source>there is no group {group}; expected one of {expected}</source>
        <translation>グループ {group} はありません。{expected} のどれかにしてください</translation>
    </message>
    <message>
        <source>the record has {mass_g} g; count what is there</source>
        <translation>帳簿では {mass_g} g です。実物を数えてください</translation>
    </message>
    <message>
        <source>give grams or litres of {id}</source>
        <translation>{id} の g か L を与えてください</translation>
    </message>
    <message>
        <source>no tree is marked sick; name the trees to compare</source>
        <translation>弱った印の付いた木がありません。比べる木を指定してください</translation>
    </message>
    <message>
        <source>{text} is no month and day; expected 03-14</source>
        <translation>{text} は月と日ではありません。03-14 のようにしてください</translation>
    </message>
    <message>
        <source>the share is {share}; expected 0 to 1</source>
        <translation>割合が {share} です。0～1 にしてください</translation>
    </message>
    <message>
        <source>today&apos;s backup could not be made ({reason}); what you write is saved all the same</source>
        <translation>今日のバックアップができませんでした（{reason}）。書いた内容は保存されます</translation>
    </message>
    <message>
        <source>stopped; nothing was written</source>
        <translation>止めました。何も書き込んでいません</translation>
    </message>
    <message>
        <source>there is nothing to redo</source>
        <translation>やり直すものがありません</translation>
    </message>
    <message>
        <source>there is nothing to undo</source>
        <translation>元に戻すものがありません</translation>
    </message>
    <message>
        <source>air</source>
        <translation>空気</translation>
    </message>
    <message>
        <source>water</source>
        <translation>水</translation>
    </message>
    <message>
        <source>(flooded - dry) / volume</source>
        <translation>(湛水 - 乾燥) / 容積</translation>
    </message>
    <message>
        <source>(flooded - drained) / volume: what drained; trapped air is not in it</source>
        <translation>(湛水 - 排水後) / 容積：流れ出た分。封入空気は含まない</translation>
    </message>
    <message>
        <source>(drained - dry) / volume</source>
        <translation>(排水後 - 乾燥) / 容積</translation>
    </message>
    <message>
        <source>(fill + reserve) / ((1 - settling)(1 - spill)); reserve = the two largest differences to a worse plan</source>
        <translation>(充填量 + 予備) / ((1 - 締まり)(1 - こぼれ))；予備 = 悪い計画との差の大きい二つ</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>配合</translation>
    </message>
    <message>
        <source>fill</source>
        <translation>充填量</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>予備</translation>
    </message>
    <message>
        <source>settling</source>
        <translation>締まり</translation>
    </message>
    <message>
        <source>spill</source>
        <translation>こぼれ</translation>
    </message>
    <message>
        <source>needed x loose share / (1 - shrinkage)</source>
        <translation>必要量 x ふんわり容積の割合 / (1 - 目減り)</translation>
    </message>
    <message>
        <source>component</source>
        <translation>配合材</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>必要量</translation>
    </message>
    <message>
        <source>shrinkage</source>
        <translation>目減り</translation>
    </message>
    <message>
        <source>gives</source>
        <translation>できる量</translation>
    </message>
    <message>
        <source>ready / yield</source>
        <translation>用意済み / 歩留まり</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>袋</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>用意済み</translation>
    </message>
    <message>
        <source>yield</source>
        <translation>歩留まり</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>一般的な目安、出典なし</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>実測</translation>
    </message>
    <message>
        <source>raw litres / litres of a bag, rounded up; raw = short / yield</source>
        <translation>原粒 L / 1 袋の L、切り上げ；原粒 = 不足 / 歩留まり</translation>
    </message>
    <message>
        <source>material</source>
        <translation>資材</translation>
    </message>
    <message>
        <source>short</source>
        <translation>不足</translation>
    </message>
    <message>
        <source>a part not weighed</source>
        <translation>量っていない部分</translation>
    </message>
    <message>
        <source>left out, and the mass is said as at least</source>
        <translation>省いたため、重さは「少なくとも」と示す</translation>
    </message>
    <message>
        <source>tub of {mix}</source>
        <translation>{mix} のトロ舟</translation>
    </message>
    <message>
        <source>at least {mass}</source>
        <translation>少なくとも {mass}</translation>
    </message>
    <message>
        <source>1 bag</source>
        <translation>1 袋</translation>
    </message>
    <message>
        <source>{count} bags</source>
        <translation>{count} 袋</translation>
    </message>
    <message>
        <source>Repotting day</source>
        <translation>植え替え日</translation>
    </message>
    <message>
        <source>{title}, sheet revision {revision}</source>
        <translation>{title}、シート改訂 {revision}</translation>
    </message>
    <message>
        <source>{title}, {day}, sheet revision {revision}</source>
        <translation>{title}、{day}、シート改訂 {revision}</translation>
    </message>
    <message>
        <source>{mix} version {version}</source>
        <translation>{mix} 版 {version}</translation>
    </message>
    <message>
        <source>{from} to {to}</source>
        <translation>{from}～{to}</translation>
    </message>
    <message>
        <source>{figure} typical</source>
        <translation>{figure}（代表値）</translation>
    </message>
    <message>
        <source>Set out {raw} of {bag} for {component}</source>
        <translation>{component} 用に {bag} の {raw} を用意する</translation>
    </message>
    <message>
        <source>Screen {raw} of {bag} at {band} for {component}, gives {ready} ({yield})</source>
        <translation>{component} 用に {bag} の {raw} を {band} でふるう。できる量 {ready}（{yield}）</translation>
    </message>
    <message>
        <source>Screen {raw} of {bag} for {component}, gives {ready} ({yield})</source>
        <translation>{component} 用に {bag} の {raw} をふるう。できる量 {ready}（{yield}）</translation>
    </message>
    <message>
        <source>{yield}, typical: measure</source>
        <translation>{yield}、代表値：要測定</translation>
    </message>
    <message>
        <source>Buy {bags} of {material}, short of {short} ready</source>
        <translation>{material} を {bags} 購入（用意済みが {short} 不足）</translation>
    </message>
    <message>
        <source>Buy {bags} of {material} of {volume} (typical), short of {short} ready</source>
        <translation>{material} {volume}（代表値）を {bags} 購入（用意済みが {short} 不足）</translation>
    </message>
    <message>
        <source>Buy {bags} of {material} of {volume}, short of {short} ready</source>
        <translation>{material} {volume} を {bags} 購入（用意済みが {short} 不足）</translation>
    </message>
    <message>
        <source>{line}, price {price}</source>
        <translation>{line}、価格 {price}</translation>
    </message>
    <message>
        <source>Grain</source>
        <translation>粒</translation>
    </message>
    <message>
        <source>Mixes</source>
        <translation>配合</translation>
    </message>
    <message>
        <source>The reserve covers the two trees of each mix that would take most if they go worse. Left over mix goes back to stock as a tub of its own.</source>
        <translation>予備は、配合ごとに、悪い場合に最も多く要る 2 本分です。残った用土は別のトロ舟として在庫に戻します。</translation>
    </message>
    <message>
        <source>From the shelf</source>
        <translation>棚から</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>購入するもの</translation>
    </message>
    <message>
        <source>due</source>
        <translation>時期</translation>
    </message>
    <message>
        <source>may be: look at it</source>
        <translation>要確認：木を見る</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>まだなし</translation>
    </message>
    <message>
        <source>Trees due by {day}</source>
        <translation>{day} までに時期の木</translation>
    </message>
    <message>
        <source>no day yet</source>
        <translation>日は未定</translation>
    </message>
    <message>
        <source>Bags that several days want</source>
        <translation>複数の日が使う袋</translation>
    </message>
    <message>
        <source>{lift}: two people or a trolley</source>
        <translation>{lift}：二人か台車</translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation>重量物</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>備考</translation>
    </message>
    <message>
        <source>Dust: dry grain can hold respirable silica. Screen batches damp, outdoors with the wind behind, with a mask (P3 or P100 for silica, P2 or N95 at least); clean with a wet cloth or an H-class vacuum, never a broom.</source>
        <translation>粉じん：乾いた粒には吸入性シリカが含まれることがあります。湿らせ、屋外で風を背に、マスク（シリカには P3 または P100、少なくとも P2 または N95）を着けてふるいます。掃除は濡れた布か H クラスの掃除機で。ほうきは使いません。</translation>
    </message>
    <message>
        <source>Lifting: from about 16 kg use two people or a trolley, less at arm&apos;s length. &quot;At least&quot; means that not all of it was weighed.</source>
        <translation>持ち上げ：約 16 kg からは二人か台車で、腕を伸ばすときはもっと軽く。「少なくとも」は全部は量っていないという意味です。</translation>
    </message>
    <message>
        <source>Moss: sphagnum can carry a skin infection (sporotrichosis); gloves protect.</source>
        <translation>コケ：ミズゴケから皮膚の感染症（スポロトリコーシス）がうつることがあります。手袋で防げます。</translation>
    </message>
    <message>
        <source>Bark and potting media can carry Legionella: wet gently without spray, mask and gloves, open the bag away from the face, wash hands.</source>
        <translation>バークや培養土にはレジオネラ菌がいることがあります：霧にせず静かに湿らせ、マスクと手袋を着け、袋は顔から離して開け、手を洗います。</translation>
    </message>
    <message>
        <source>Vermiculite from old or unknown bags: some held asbestos. Leave it closed, do not sieve it.</source>
        <translation>古い、または出所不明の袋のバーミキュライト：アスベストを含むものがありました。開けず、ふるいません。</translation>
    </message>
    <message>
        <source>Perlite: wet it before pouring.</source>
        <translation>パーライト：注ぐ前に濡らします。</translation>
    </message>
    <message>
        <source>General information; the products&apos; safety sheets, local codes and qualified advice prevail.</source>
        <translation>一般的な情報です。製品の安全データシート、地域の規則、専門家の助言が優先します。</translation>
    </message>
    <message>
        <source>pot of {tree}</source>
        <translation>{tree} の鉢</translation>
    </message>
    <message>
        <source>Wet the grain, so that it is damp and makes no dust</source>
        <translation>粒を湿らせ、粉じんが立たないようにする</translation>
    </message>
    <message>
        <source>Cut mesh and wire for 1 pot</source>
        <translation>1 鉢分の鉢底網と針金を切る</translation>
    </message>
    <message>
        <source>Cut mesh and wire for {count} pots</source>
        <translation>{count} 鉢分の鉢底網と針金を切る</translation>
    </message>
    <message>
        <source>Set out cutters, hooks, sticks, sealing paste, disinfectant</source>
        <translation>はさみ、根かき、箸、癒合剤、消毒液を用意する</translation>
    </message>
    <message>
        <source>Mix {batches} of {mix}, {litres} in all</source>
        <translation>{mix} を {batches} 混ぜる、計 {litres}</translation>
    </message>
    <message>
        <source>1 batch</source>
        <translation>1 バッチ</translation>
    </message>
    <message>
        <source>{count} batches</source>
        <translation>{count} バッチ</translation>
    </message>
    <message>
        <source>Mesh over the holes, wire for the tie-down, bottom layer</source>
        <translation>穴に鉢底網、固定用の針金、鉢底土</translation>
    </message>
    <message>
        <source>Tie the tree down, work the mix in, leave no hollows</source>
        <translation>木を固定し、用土を突き込み、隙間を残さない</translation>
    </message>
    <message>
        <source>Water until the outflow runs clear</source>
        <translation>流れ出る水が澄むまで潅水する</translation>
    </message>
    <message>
        <source>Disinfect the tools before the next tree</source>
        <translation>次の木の前に道具を消毒する</translation>
    </message>
    <message>
        <source>Afterwards: shade, no frost, no fertiliser for 3 to 6 weeks</source>
        <translation>その後：日陰、霜よけ、3～6 週間は施肥しない</translation>
    </message>
    <message>
        <source>1 tree</source>
        <translation>1 本</translation>
    </message>
    <message>
        <source>{count} trees</source>
        <translation>{count} 本</translation>
    </message>
    <message>
        <source>The evening before</source>
        <translation>前日の夕方</translation>
    </message>
    <message>
        <source>In the morning</source>
        <translation>当日の朝</translation>
    </message>
    <message>
        <source>Trees in working order</source>
        <translation>作業順の木</translation>
    </message>
    <message>
        <source>For each tree</source>
        <translation>木ごと</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>注意</translation>
    </message>
    <message>
        <source>The season</source>
        <translation>シーズン</translation>
    </message>
    <message>
        <source>{trees} due by {day}</source>
        <translation>{day} までに {trees}</translation>
    </message>
    <message>
        <source>Batch cards</source>
        <translation>バッチカード</translation>
    </message>
    <message>
        <source>{count} scoops</source>
        <translation>土入れ {count} 杯</translation>
    </message>
    <message>
        <source>{mix}, batch {number} of {count}</source>
        <translation>{mix}、バッチ {number} / {count}</translation>
    </message>
    <message>
        <source>Gives {litres} of mix</source>
        <translation>できあがり {litres}</translation>
    </message>
    <message>
        <source>One scoop is {litres}, struck off level.</source>
        <translation>土入れ 1 杯は {litres}（すり切り）。</translation>
    </message>
    <message>
        <source>For {trees}</source>
        <translation>対象：{trees}</translation>
    </message>
    <message>
        <source>mixed, at</source>
        <translation>混合時刻</translation>
    </message>
    <message>
        <source>made ________, left over ________</source>
        <translation>作った量 ________、残り ________</translation>
    </message>
    <message>
        <source>plan {plan}</source>
        <translation>計画 {plan}</translation>
    </message>
    <message>
        <source>score, price (unpriced last), fewer components, names, smaller total, larger parts in the order of the names; a recipe is listed if some component differs by 10 points of loose volume from every better one listed</source>
        <translation>評点、価格（価格なしは最後）、配合材の少なさ、名前、合計の小ささ、名前順の配合比の大きさ；どれかの配合材が、示したより良いレシピすべてと 10 ポイント（ふんわり容積）違えば一覧に出す</translation>
    </message>
    <message>
        <source>100 (start - washed out - recovered) / start</source>
        <translation>100 (最初 - 洗い流し - 回収) / 最初</translation>
    </message>
    <message>
        <source>recovered</source>
        <translation>回収</translation>
    </message>
    <message>
        <source>ASTM C136-19: more than 0.3 % is not for acceptance</source>
        <translation>ASTM C136-19：0.3 % 超は受け入れ判定に使えない</translation>
    </message>
    <message>
        <source>sum of what came off the sieves and the pan / (1 + moisture)</source>
        <translation>ふるいと受皿の合計 / (1 + 水分)</translation>
    </message>
    <message>
        <source>ASTM C566, the form, from memory</source>
        <translation>ASTM C566、式の形、記憶による</translation>
    </message>
    <message>
        <source>the starting mass, before washing, or what was recovered and washed out; crumbs taken off; dry</source>
        <translation>洗う前の最初の質量、または回収分と洗い流した分；崩れた分を除く；乾燥</translation>
    </message>
    <message>
        <source>base</source>
        <translation>基準</translation>
    </message>
    <message>
        <source>ASTM C136-19; crumbs: Folk, Petrology of Sedimentary Rocks, p. 32</source>
        <translation>ASTM C136-19；崩れた分：Folk, Petrology of Sedimentary Rocks, p. 32</translation>
    </message>
    <message>
        <source>pan</source>
        <translation>受皿</translation>
    </message>
    <message>
        <source>ASTM C136-19: the base is the original dry mass, before washing, unless the test says recovered</source>
        <translation>ASTM C136-19：基準は洗う前の元の乾燥質量（試験が recovered とする場合を除く）</translation>
    </message>
    <message>
        <source>size at a percent passing, linear in log10(size) between the two sieves around it; never extrapolated</source>
        <translation>通過百分率に対する粒径。前後二つのふるいの間で log10(粒径) に線形。外挿しない</translation>
    </message>
    <message>
        <source>share that stays on an opening a: G = 1 - exp(-ln 2 (x/a)^s), integrated over each class on log size; two cuts in series multiply; the pan passes</source>
        <translation>目開き a に残る割合：G = 1 - exp(-ln 2 (x/a)^s)、各級で log 粒径について積分；続けて二度ふるうと積になる；受皿は通過</translation>
    </message>
    <message>
        <source>100 x mass of the fraction that is finer than each sieve / mass of the fraction</source>
        <translation>100 x 各ふるいより細かい区分の質量 / 区分の質量</translation>
    </message>
    <message>
        <source>(mass share / packing density of the fraction) / (1 / packing density of the bag)</source>
        <translation>(質量比 / 区分の充填率) / (1 / 袋の充填率)</translation>
    </message>
    <message>
        <source>size at a percent passing, linear in log10(size) between the two sieves around it; never extrapolated; the curve of a mix is the sum of its components&apos; curves by mass share</source>
        <translation>通過百分率に対する粒径。前後二つのふるいの間で log10(粒径) に線形。外挿しない；配合の曲線は配合材の曲線の質量比による和</translation>
    </message>
    <message>
        <source>openings</source>
        <translation>目開き</translation>
    </message>
    <message>
        <source>none</source>
        <translation>なし</translation>
    </message>
    <message>
        <source>kept, by mass</source>
        <translation>残る量、質量比</translation>
    </message>
    <message>
        <source>take: in_band and finer within their limits; take after screening: usable within its limit; else other use or complain</source>
        <translation>そのまま使う：範囲内と微塵が限度内；ふるって使う：使える量が限度内；それ以外は別の用途か苦情</translation>
    </message>
    <message>
        <source>least wanted, by mass</source>
        <translation>範囲内、下限</translation>
    </message>
    <message>
        <source>most finer</source>
        <translation>微塵、上限</translation>
    </message>
    <message>
        <source>least usable</source>
        <translation>使える量、下限</translation>
    </message>
    <message>
        <source>docs/science/grading.md; the limits are our assumption</source>
        <translation>docs/science/grading.md；限度は私たちの仮定</translation>
    </message>
    <message>
        <source>loose litres of the fraction that is kept, per loose litre of bag; by mass share where packing is unknown</source>
        <translation>袋のふんわり 1 L あたりの、残る区分のふんわり L；充填が不明なら質量比</translation>
    </message>
    <message>
        <source>price / (litres x usable litres of a litre)</source>
        <translation>価格 / (L x 1 L 中の使える L)</translation>
    </message>
    <message>
        <source>price</source>
        <translation>価格</translation>
    </message>
    <message>
        <source>litres</source>
        <translation>L 数</translation>
    </message>
    <message>
        <source>usable of a litre</source>
        <translation>1 L 中の使える量</translation>
    </message>
    <message>
        <source>100 (passing at the coarse end - passing at the fine end), read linear in log10(size) between sieves</source>
        <translation>100 (上限の通過 - 下限の通過)、ふるいの間で log10(粒径) に線形</translation>
    </message>
    <message>
        <source>share</source>
        <translation>割合</translation>
    </message>
    <message>
        <source>(f16 + f50 + f84) / 3, phi = -log2(d/mm), percentiles counted from the coarse end</source>
        <translation>(f16 + f50 + f84) / 3、phi = -log2(d/mm)、百分位は粗い側から</translation>
    </message>
    <message>
        <source>docs/science/calibration.md, bulk density by jug</source>
        <translation>docs/science/calibration.md、ジョッキによるかさ密度</translation>
    </message>
    <message>
        <source>docs/science/calibration.md, grain density by displacement; the form of ASTM C127, from memory</source>
        <translation>docs/science/calibration.md、水置換による粒子密度；ASTM C127 の形、記憶による</translation>
    </message>
    <message>
        <source>docs/science/ageing.md, crumble test</source>
        <translation>docs/science/ageing.md、崩れ試験</translation>
    </message>
    <message>
        <source>jug</source>
        <translation>ジョッキ</translation>
    </message>
    <message>
        <source>with grain</source>
        <translation>粒を入れて</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>水分</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>容積</translation>
    </message>
    <message>
        <source>(with grain - jug) / (1 + moisture) / volume</source>
        <translation>(粒を入れて - ジョッキ) / (1 + 水分) / 容積</translation>
    </message>
    <message>
        <source>worked in</source>
        <translation>突き込み後</translation>
    </message>
    <message>
        <source>(with grain - jug) / (1 + moisture) / volume worked in</source>
        <translation>(粒を入れて - ジョッキ) / (1 + 水分) / 突き込み後の容積</translation>
    </message>
    <message>
        <source>1 - volume worked in / loose volume</source>
        <translation>1 - 突き込み後の容積 / ふんわり容積</translation>
    </message>
    <message>
        <source>loose</source>
        <translation>ふんわり</translation>
    </message>
    <message>
        <source>soaked, dabbed dry</source>
        <translation>吸水、表面を拭いた</translation>
    </message>
    <message>
        <source>jug with water</source>
        <translation>ジョッキと水</translation>
    </message>
    <message>
        <source>jug with water and grain</source>
        <translation>ジョッキと水と粒</translation>
    </message>
    <message>
        <source>soaked / displaced water, displaced = jug with water + soaked - jug with both, 1 g is 1 mL</source>
        <translation>吸水 / 押しのけた水、押しのけた水 = ジョッキと水 + 吸水 - 両方入り、1 g は 1 mL</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>乾燥</translation>
    </message>
    <message>
        <source>dry / displaced water, displaced = jug with water + soaked - jug with both, 1 g is 1 mL</source>
        <translation>乾燥 / 押しのけた水、押しのけた水 = ジョッキと水 + 吸水 - 両方入り、1 g は 1 mL</translation>
    </message>
    <message>
        <source>(soaked and dabbed dry - dry) / dry</source>
        <translation>(吸水して表面を拭いた - 乾燥) / 乾燥</translation>
    </message>
    <message>
        <source>docs/science/calibration.md, absorption; the form of ASTM C127, from memory</source>
        <translation>docs/science/calibration.md、吸水率；ASTM C127 の形、記憶による</translation>
    </message>
    <message>
        <source>rounds</source>
        <translation>回数</translation>
    </message>
    <message>
        <source>share of the mass that left its class: 1 - e^-breakages</source>
        <translation>自分の級から外れた質量の割合：1 - e^-破砕数</translation>
    </message>
    <message>
        <source>least squares of passing after, by Poisson&apos;s law of breakages and fragments (x/L)^modulus</source>
        <translation>試験後の通過の最小二乗。破砕はポアソン分布、破片は (x/L)^指数</translation>
    </message>
    <message>
        <source>miss</source>
        <translation>ずれ</translation>
    </message>
    <message>
        <source>of the fragments: finer than x is (x/L)^modulus; the smaller, the dustier</source>
        <translation>破片について：x より細かいのは (x/L)^指数；小さいほど微塵が多い</translation>
    </message>
    <message>
        <source>breakages per round x rounds in a season</source>
        <translation>1 回の破砕数 x 1 シーズンの回数</translation>
    </message>
    <message>
        <source>rounds in a season</source>
        <translation>1 シーズンの回数</translation>
    </message>
    <message>
        <source>what fell through in one more minute / sample; thorough below 0.5 %</source>
        <translation>追加 1 分で落ちた量 / 試料；0.5 % 未満で十分</translation>
    </message>
    <message>
        <source>fell through</source>
        <translation>落ちた量</translation>
    </message>
    <message>
        <source>sample</source>
        <translation>試料</translation>
    </message>
    <message>
        <source>sum of the dry masses / volume of the settled mix</source>
        <translation>乾燥質量の和 / 締まった用土の容積</translation>
    </message>
    <message>
        <source>voids between grains</source>
        <translation>粒間孔隙</translation>
    </message>
    <message>
        <source>voids between grains + voids in grains</source>
        <translation>粒間孔隙 + 粒内孔隙</translation>
    </message>
    <message>
        <source>between</source>
        <translation>粒間</translation>
    </message>
    <message>
        <source>(1 - voids between grains) x sum of the water the grains hold: by the water absorption where it is known, else w of the open grain pores</source>
        <translation>(1 - 粒間孔隙) x 粒が保つ水の和：吸水率が既知ならそれ、なければ開いた粒内孔隙の w</translation>
    </message>
    <message>
        <source>m_k = v_k rho_b,k; the grading of the mix is blended by these shares</source>
        <translation>m_k = v_k rho_b,k；配合の粒度はこの割合で混ぜる</translation>
    </message>
    <message>
        <source>parts / sum of parts</source>
        <translation>配合比 / 配合比の和</translation>
    </message>
    <message>
        <source>sum over components of mass share x passing, each curve read linear in log10(size) on its own sieves</source>
        <translation>配合材について 質量比 x 通過 の和。各曲線は自身のふるいの間で log10(粒径) に線形</translation>
    </message>
    <message>
        <source>E_k / sum E, E_k = mass / grain density</source>
        <translation>E_k / E の和、E_k = 質量 / 粒子密度</translation>
    </message>
    <message>
        <source>as passing, by envelope share</source>
        <translation>通過と同じく、外形体積の割合による</translation>
    </message>
    <message>
        <source>1/phi = max over i of U_i (linear dominant class with wedging), each component with the one class beta that gives back its own packing density</source>
        <translation>1/phi = i についての U_i の最大（くさび効果を含む線形の支配級）、各配合材は自身の充填率を再現する級の beta を使う</translation>
    </message>
    <message>
        <source>Yu, Zou &amp; Standish 1996; Kwan, Chan &amp; Wong 2013 (from memory); ±1.5 points of voids</source>
        <translation>Yu, Zou &amp; Standish 1996；Kwan, Chan &amp; Wong 2013（記憶による）；孔隙 ±1.5 ポイント</translation>
    </message>
    <message>
        <source>1 - V/sum v, with V = sum E/phi</source>
        <translation>1 - V/v の和、V = E/phi の和</translation>
    </message>
    <message>
        <source>1 - phi/(1 - settling)</source>
        <translation>1 - phi/(1 - 締まり)</translation>
    </message>
    <message>
        <source>sum m / sum (m / grain density)</source>
        <translation>m の和 / (m / 粒子密度) の和</translation>
    </message>
    <message>
        <source>filled depth</source>
        <translation>充填深さ</translation>
    </message>
    <message>
        <source>mean of theta(z) over the pot, theta(h) = theta_r + (f phi_v - theta_r) mean_j [1 + (h d&apos;_j/k)^n]^-(1-1/n) + water in grains</source>
        <translation>鉢全体の theta(z) の平均、theta(h) = theta_r + (f phi_v - theta_r) 平均_j [1 + (h d&apos;_j/k)^n]^-(1-1/n) + 粒内の水</translation>
    </message>
    <message>
        <source>docs/science/water.md; constants fitted to 29 clean sands of UNSODA 2.0; above 2 mm ±.035 at best, wants a pot test</source>
        <translation>docs/science/water.md；定数は UNSODA 2.0 のきれいな砂 29 種に当てはめたもの；2 mm 超では良くて ±.035、鉢試験が必要</translation>
    </message>
    <message>
        <source>water in grains</source>
        <translation>粒内の水</translation>
    </message>
    <message>
        <source>theta at no suction: f of the voids between grains + water in grains</source>
        <translation>吸引なしの theta：粒間孔隙の f + 粒内の水</translation>
    </message>
    <message>
        <source>theta at a suction of 10 cm of water</source>
        <translation>水柱 10 cm の吸引での theta</translation>
    </message>
    <message>
        <source>theta at a suction of 50 cm of water</source>
        <translation>水柱 50 cm の吸引での theta</translation>
    </message>
    <message>
        <source>De Boodt &amp; Verdonck 1972, from memory; docs/science/water.md</source>
        <translation>De Boodt &amp; Verdonck 1972、記憶による；docs/science/water.md</translation>
    </message>
    <message>
        <source>open voids - theta(0): gas a flood does not reach, and grain pores it does not fill</source>
        <translation>開いた孔隙 - theta(0)：湛水が届かない気体と、満たさない粒内孔隙</translation>
    </message>
    <message>
        <source>integral of A(z) from the floor to the fill line</source>
        <translation>底から充填線までの A(z) の積分</translation>
    </message>
    <message>
        <source>area at the floor</source>
        <translation>底の面積</translation>
    </message>
    <message>
        <source>area at the fill line</source>
        <translation>充填線の面積</translation>
    </message>
    <message>
        <source>A(z) of the shape at eleven equal heights from the floor to the fill line</source>
        <translation>底から充填線までを等分した 11 の高さでの形の A(z)</translation>
    </message>
    <message>
        <source>area halfway up</source>
        <translation>半分の高さの面積</translation>
    </message>
    <message>
        <source>the water fill overrides the lengths; A(z) is scaled by their ratio</source>
        <translation>水容積を寸法より優先。A(z) はその比で伸縮</translation>
    </message>
    <message>
        <source>water fill</source>
        <translation>水容積</translation>
    </message>
    <message>
        <source>by the lengths</source>
        <translation>寸法による</translation>
    </message>
    <message>
        <source>component = mixed litres x share / (1 - shrinkage), mixed litres = fill / ((1 - settling)(1 - spill)), fill = volume + mound - bottom layer - top dressing</source>
        <translation>配合材 = 混合 L x 割合 / (1 - 目減り)、混合 L = 充填量 / ((1 - 締まり)(1 - こぼれ))、充填量 = 容積 + 盛り上げ - 鉢底土 - 化粧土</translation>
    </message>
    <message>
        <source>mound</source>
        <translation>盛り上げ</translation>
    </message>
    <message>
        <source>bottom layer</source>
        <translation>鉢底土</translation>
    </message>
    <message>
        <source>top dressing</source>
        <translation>化粧土</translation>
    </message>
    <message>
        <source>floor to fill line</source>
        <translation>底から充填線まで</translation>
    </message>
    <message>
        <source>water poured or weighed to the fill line; the area at every height is scaled to it</source>
        <translation>充填線まで注ぐか量った水；各高さの面積をこれに合わせて伸縮</translation>
    </message>
    <message>
        <source>integral of the inside area from the floor to the fill line</source>
        <translation>底から充填線までの内側断面積の積分</translation>
    </message>
    <message>
        <source>water fill / volume by the lengths - 1</source>
        <translation>水容積 / 寸法による容積 - 1</translation>
    </message>
    <message>
        <source>volume + mound - bottom layer - top dressing</source>
        <translation>容積 + 盛り上げ - 鉢底土 - 化粧土</translation>
    </message>
    <message>
        <source>Plan {plan}, from the front</source>
        <translation>計画 {plan}、正面から</translation>
    </message>
    <message>
        <source>Plan {plan}, from above</source>
        <translation>計画 {plan}、上から</translation>
    </message>
    <message>
        <source>soil line</source>
        <translation>土面</translation>
    </message>
    <message>
        <source>farthest any point of the posed root mass passes the allowed space in a direction, at that point&apos;s height</source>
        <translation>据えた根鉢の点が、その高さで、ある向きに許された空間を最も越える量</translation>
    </message>
    <message>
        <source>share of the root mass still outside after the straight cuts</source>
        <translation>まっすぐ切った後もはみ出す根鉢の割合</translation>
    </message>
    <message>
        <source>1 - kept/root mass</source>
        <translation>1 - 残す分/根鉢</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>残る量</translation>
    </message>
    <message>
        <source>root mass</source>
        <translation>根鉢</translation>
    </message>
    <message>
        <source>kept points farther than the working depth from all that is removed, deeper than combed, connected to the trunk base</source>
        <translation>残す点のうち、落とした部分から作業の深さより遠く、ほぐしより深く、株元につながるもの</translation>
    </message>
    <message>
        <source>root mass - kept</source>
        <translation>根鉢 - 残す分</translation>
    </message>
    <message>
        <source>fill line + mound at the trunk</source>
        <translation>充填線 + 幹の所の盛り上げ</translation>
    </message>
    <message>
        <source>fill line</source>
        <translation>充填線</translation>
    </message>
    <message>
        <source>pot to the fill line + mound - layers - kept root mass under the soil - trunk and stones</source>
        <translation>充填線までの鉢 + 盛り上げ - 層 - 土面下に残す根鉢 - 幹と石</translation>
    </message>
    <message>
        <source>pot, mound, less layers</source>
        <translation>鉢と盛り上げ、層を除く</translation>
    </message>
    <message>
        <source>kept under the soil</source>
        <translation>土面下に残す分</translation>
    </message>
    <message>
        <source>trunk and stones</source>
        <translation>幹と石</translation>
    </message>
    <message>
        <source>rise over the soil &lt;= level run to the inner rim x tan 35 degrees</source>
        <translation>土面からの高さ &lt;= 内縁までの水平距離 x tan 35 度</translation>
    </message>
    <message>
        <source>rise</source>
        <translation>高さ</translation>
    </message>
    <message>
        <source>right</source>
        <translation>右</translation>
    </message>
    <message>
        <source>left</source>
        <translation>左</translation>
    </message>
    <message>
        <source>back</source>
        <translation>後ろ</translation>
    </message>
    <message>
        <source>front</source>
        <translation>前</translation>
    </message>
    <message>
        <source>up</source>
        <translation>上</translation>
    </message>
    <message>
        <source>down</source>
        <translation>下</translation>
    </message>
    <message>
        <source>old right</source>
        <translation>元の右</translation>
    </message>
    <message>
        <source>old left</source>
        <translation>元の左</translation>
    </message>
    <message>
        <source>old back</source>
        <translation>元の後ろ</translation>
    </message>
    <message>
        <source>old front</source>
        <translation>元の前</translation>
    </message>
    <message>
        <source>old top</source>
        <translation>元の上面</translation>
    </message>
    <message>
        <source>old bottom</source>
        <translation>元の下面</translation>
    </message>
    <message>
        <source>What limits the fit</source>
        <translation>収まりを妨げるもの</translation>
    </message>
    <message>
        <source>Nothing: the root mass fits as it is posed.</source>
        <translation>なし：根鉢は据えたまま収まります。</translation>
    </message>
    <message>
        <source>After straight cuts {share} of the root mass still stick out at corners.</source>
        <translation>まっすぐ切った後も、根鉢の {share} が隅ではみ出します。</translation>
    </message>
    <message>
        <source>{length} to the right</source>
        <translation>右へ {length}</translation>
    </message>
    <message>
        <source>{length} to the left</source>
        <translation>左へ {length}</translation>
    </message>
    <message>
        <source>{length} to the back</source>
        <translation>後ろへ {length}</translation>
    </message>
    <message>
        <source>{length} to the front</source>
        <translation>前へ {length}</translation>
    </message>
    <message>
        <source>in the middle</source>
        <translation>中央</translation>
    </message>
    <message>
        <source>{one} of the middle</source>
        <translation>中心から{one}</translation>
    </message>
    <message>
        <source>{one} and {other} of the middle</source>
        <translation>中心から{one}、{other}</translation>
    </message>
    <message>
        <source>Comb the {face} {depth} deep</source>
        <translation>{face}を {depth} の深さまでほぐす</translation>
    </message>
    <message>
        <source>Take {depth} off the {face}, which points {direction}</source>
        <translation>{face}（今は{direction}向き）を {depth} 落とす</translation>
    </message>
    <message>
        <source>Put the tree back into its old pot; the rest after 1 year</source>
        <translation>木を元の鉢に戻す。残りは 1 年後</translation>
    </message>
    <message>
        <source>Put the tree back into its old pot; the rest after {count} years</source>
        <translation>木を元の鉢に戻す。残りは {count} 年後</translation>
    </message>
    <message>
        <source>Put the tree back into its old pot</source>
        <translation>木を元の鉢に戻す</translation>
    </message>
    <message>
        <source>Trunk base {place}, {height} over the floor</source>
        <translation>株元は{place}、底から {height}</translation>
    </message>
    <message>
        <source>{stand}, turned {angle}</source>
        <translation>{stand}、回転 {angle}</translation>
    </message>
    <message>
        <source>{stand}, tipped {angle} toward {toward} (from the pot&apos;s right to its back)</source>
        <translation>{stand}、{toward} の向きに {angle} 倒す（鉢の右から後ろへ測る）</translation>
    </message>
    <message>
        <source>Plan {plan}</source>
        <translation>計画 {plan}</translation>
    </message>
    <message>
        <source>Into another free pot: {pot}</source>
        <translation>別の空いた鉢へ：{pot}</translation>
    </message>
    <message>
        <source>{stop}, then it does not fit: stage it</source>
        <translation>{stop}、収まらないので段階的に</translation>
    </message>
    <message>
        <source>If the cut from above comes to an end</source>
        <translation>上からの切断が止まったら</translation>
    </message>
    <message>
        <source>Root-mass plan</source>
        <translation>根鉢計画</translation>
    </message>
    <message>
        <source>Root-mass plan, into its pot</source>
        <translation>根鉢計画、自分の鉢へ</translation>
    </message>
    <message>
        <source>Root-mass plan, into {pot}</source>
        <translation>根鉢計画、{pot} へ</translation>
    </message>
    <message>
        <source>{title}, root-mass plan</source>
        <translation>{title}、根鉢計画</translation>
    </message>
    <message>
        <source>To scale: hatched comes off, grey stays</source>
        <translation>縮尺図：斜線は落とす部分、灰色は残す部分</translation>
    </message>
    <message>
        <source>Clean tools for each tree. Some part of the root mass stays untouched; what is combed through is disturbed even where soil clings to it.</source>
        <translation>木ごとに道具を清潔に。根鉢の一部は手を付けずに残します。ほぐした所は、土が付いていても傷んでいます。</translation>
    </message>
    <message>
        <source>Common practice, general information; qualified advice prevails.</source>
        <translation>一般的な目安と情報です。専門家の助言が優先します。</translation>
    </message>
    <message>
        <source>bin</source>
        <translation>保管容器</translation>
    </message>
    <message>
        <source>fraction</source>
        <translation>区分</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>木</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>バッチ</translation>
    </message>
    <message>
        <source>top</source>
        <translation>上</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>下</translation>
    </message>
    <message>
        <source>the empty pot</source>
        <translation>空の鉢</translation>
    </message>
    <message>
        <source>the dry pot</source>
        <translation>乾燥した鉢</translation>
    </message>
    <message>
        <source>the drained pot</source>
        <translation>排水後の鉢</translation>
    </message>
    <message>
        <source>the mix settles by {percent} % as the jug tests of {bags} say; a jug of the mix itself would say it better</source>
        <translation>{bags} のジョッキ試験によると用土は {percent} % 締まります。この配合自身のジョッキならもっと確かです</translation>
    </message>
    <message>
        <source>the mix settles by {percent} %, by your own jug of mix {mix}</source>
        <translation>配合 {mix} のご自身のジョッキによると、用土は {percent} % 締まります</translation>
    </message>
    <message>
        <source>the file lies outside the folder of the file that names it; put it there, or into a folder sieve_tests beside it</source>
        <translation>ファイルが、それを参照するファイルのフォルダーの外にあります。そこに置くか、隣の sieve_tests フォルダーに入れてください</translation>
    </message>
    <message>
        <source>what this list holds can&apos;t be told from its columns; say which kind of record it lists (on the command line with --kind)</source>
        <translation>列からは一覧の種類がわかりません。何の記録の一覧か指定してください（コマンドラインでは --kind）</translation>
    </message>
    <message>
        <source>{left_l} L can&apos;t be left over; expected 0 to what was made</source>
        <translation>残り {left_l} L はありえません。0 から作った量までにしてください</translation>
    </message>
    <message>
        <source>{percent} % of what was left untouched last time stays so again; most of it lies before this face: work that half now, as far as the tree bears it</source>
        <translation>前回残した核の {percent} % が今回も残ります。大半はこの面の手前です。木が耐える範囲で、今回はその半分に手を付けてください</translation>
    </message>
    <message>
        <source>{percent} % of the soil that was worked last time is worked again; it is to rest, and the other half comes now: most of it lies before this face (common practice)</source>
        <translation>前回手を付けた土の {percent} % に再び手を付けます。そこは休ませ、今回は残り半分の番です。大半はこの面の手前です（一般的な目安）</translation>
    </message>
    <message>
        <source>a tip of {angle_deg} degrees can&apos;t be; expected 0 to 90</source>
        <translation>倒し {angle_deg} 度はありえません。0～90 にしてください</translation>
    </message>
    <message>
        <source>Plan {plan}, this year, in its old pot, from the front</source>
        <translation>計画 {plan}、今年、元の鉢で、正面から</translation>
    </message>
    <message>
        <source>Plan {plan}, this year, in its old pot, from above</source>
        <translation>計画 {plan}、今年、元の鉢で、上から</translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <translation>{low}～{high}</translation>
    </message>
    <message>
        <source>new mix only, {share} of the pot</source>
        <translation>新しい用土だけ、鉢の {share}</translation>
    </message>
    <message>
        <source>Pot in section: {what}</source>
        <translation>鉢の断面：{what}</translation>
    </message>
    <message>
        <source>filled {height}</source>
        <translation>充填 {height}</translation>
    </message>
    <message>
        <source>wet zone {height}</source>
        <translation>滞水層 {height}</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>不明</translation>
    </message>
    <message>
        <source>New mix only</source>
        <translation>新しい用土だけ</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>気相</translation>
    </message>
    <message>
        <source>Water held</source>
        <translation>保水率</translation>
    </message>
    <message>
        <source>Wet zone</source>
        <translation>滞水層</translation>
    </message>
    <message>
        <source>Air and water: {what}</source>
        <translation>気相と水：{what}</translation>
    </message>
    <message>
        <source>What the kept root mass (hatched) holds is not known; the figures say nothing about it.</source>
        <translation>残した根鉢（斜線部）が保つ水は分かりません。数値には含まれていません。</translation>
    </message>
    <message>
        <source>{text} can&apos;t be read; expected parts and a name, such as 5 akadama, with : between them</source>
        <translation>{text} は読めません。5 akadama のように配合比と名前を書き、間は : で区切ってください</translation>
    </message>
    <message>
        <source>{tree} in {pot}</source>
        <translation>{pot} の {tree}</translation>
    </message>
    <message>
        <source>the two sievings have no two sieves in common; sieve both with the same set</source>
        <translation>二つのふるい試験に共通のふるいが二つありません。同じふるい一式で両方をふるってください</translation>
    </message>
    <message>
        <source>the dry grain outweighs the soaked grain; look at both masses</source>
        <translation>乾いた粒が吸水した粒より重くなっています。両方の重さを確かめてください</translation>
    </message>
    <message>
        <source>the filled jug weighs no more than the empty one; look at both masses</source>
        <translation>入れたジョッキが空のジョッキより重くありません。両方の重さを確かめてください</translation>
    </message>
    <message>
        <source>the grain fills more after working in than before; look at both volumes</source>
        <translation>突き込み後の体積が前より大きくなっています。両方の体積を確かめてください</translation>
    </message>
    <message>
        <source>there is no column called {column}; known here: {known}</source>
        <translation>{column} という列はありません。使えるのは {known} です</translation>
    </message>
    <message>
        <source>the disk is full; nothing of this change was written. Make room and try again</source>
        <translation>ディスクがいっぱいです。この変更は書き込まれていません。空きを作ってやり直してください</translation>
    </message>
    <message>
        <source>the file is empty; look whether it was saved</source>
        <translation>ファイルが空です。保存されたか確かめてください</translation>
    </message>
    <message>
        <source>another program holds the record; try again in a moment</source>
        <translation>別のプログラムが記録を使っています。少し待ってやり直してください</translation>
    </message>
    <message>
        <source>the record was written by a newer Gritwright (version {version}, known here: {known}); open it for reading only, or update</source>
        <translation>記録は新しい Gritwright（バージョン {version}、ここで使えるのは {known}）で書かれています。読み取り専用で開くか、更新してください</translation>
    </message>
    <message>
        <source>this is no Gritwright record; choose a file that ends in .gritwright</source>
        <translation>これは Gritwright の記録ではありません。.gritwright で終わるファイルを選んでください</translation>
    </message>
    <message>
        <source>the file or its folder can&apos;t be written to; look whose they are, or choose another folder</source>
        <translation>ファイルまたはフォルダーに書き込めません。所有者を確かめるか、別のフォルダーを選んでください</translation>
    </message>
    <message>
        <source>the file made trouble ({text}); try again, and if it stays so restore the newest intact backup</source>
        <translation>ファイルに問題が起きました（{text}）。やり直し、直らなければ最新の正常なバックアップを復元してください</translation>
    </message>
    <message>
        <source>reading stopped half-way; nothing was done with the file. Try again, or copy it to this machine first</source>
        <translation>読み込みが途中で止まりました。ファイルには何もしていません。やり直すか、先にこのコンピューターへコピーしてください</translation>
    </message>
    <message>
        <source>writing failed; nothing of this change was kept. Look whether the disk is there and has room, and try again</source>
        <translation>書き込みに失敗しました。この変更は保存されていません。ディスクがあり、空きがあるか確かめて、やり直してください</translation>
    </message>
    <message>
        <source>there is no key called {key}; look at its spelling, or leave it out</source>
        <translation>{key} というキーはありません。つづりを確かめるか、省いてください</translation>
    </message>
    <message>
        <source>sieve set</source>
        <translation>ふるいの組</translation>
    </message>
    <message>
        <source>sieve test</source>
        <translation>ふるい試験</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>鉢</translation>
    </message>
    <message>
        <source>root-mass plan</source>
        <translation>根鉢計画</translation>
    </message>
    <message>
        <source>repotting day</source>
        <translation>植え替え日</translation>
    </message>
    <message>
        <source>pot test</source>
        <translation>鉢試験</translation>
    </message>
    <message>
        <source>stock entry</source>
        <translation>在庫の記入</translation>
    </message>
    <message>
        <source>log entry</source>
        <translation>日誌の記入</translation>
    </message>
    <message>
        <source>group of trees</source>
        <translation>樹種グループ</translation>
    </message>
    <message>
        <source>{text} is no group of trees; look at its spelling</source>
        <translation>{text} という樹種グループはありません。つづりを確かめてください</translation>
    </message>
    <message>
        <source>expected at least one opening</source>
        <translation>目開きが一つ以上必要です</translation>
    </message>
    <message>
        <source>names {text}, which is not in the record; add it there, or take the name out</source>
        <translation>{text} を参照していますが、記録にありません。記録に追加するか、その名前を外してください</translation>
    </message>
    <message>
        <source>the entry says nothing; write what happened</source>
        <translation>記入内容がありません。何があったかを書いてください</translation>
    </message>
    <message>
        <source>not in one go: this year these cuts and back into the old pot, the rest later (years between: {years})</source>
        <translation>一度にはできません。今年はこの切断だけで元の鉢に戻し、残りは後で（間の年数：{years}）</translation>
    </message>
    <message>
        <source>this is the record itself; choose another name</source>
        <translation>これは記録そのものです。別の名前にしてください</translation>
    </message>
    <message>
        <source>the record lies in a network folder: it is saved more slowly there, and only one person should work in it at a time</source>
        <translation>記録がネットワークフォルダーにあります。保存が遅くなり、同時に使うのは一人だけにしてください</translation>
    </message>
    <message>
        <source>the record lies in a folder that another program copies elsewhere: let the copying finish before it is opened on another machine</source>
        <translation>記録が、別のプログラムがよそへコピーするフォルダーにあります。別のコンピューターで開く前に、コピーが終わるのを待ってください</translation>
    </message>
    <message>
        <source>the record was brought to version {version}; a backup was made before</source>
        <translation>記録をバージョン {version} にしました。その前にバックアップを作りました</translation>
    </message>
    <message>
        <source>the record was not there and a new one was made, but there are backups of one of that name; restore the newest if it went missing</source>
        <translation>記録がなかったため新しく作りましたが、同じ名前のバックアップがあります。なくなったのなら最新のものを復元してください</translation>
    </message>
    <message>
        <source>the record is of an older version, and the backup before it is brought forward could not be written to {file}; nothing was changed. Choose another backups folder or make room, or open it for reading only</source>
        <translation>記録は古いバージョンで、更新前のバックアップを {file} に書けませんでした。何も変更していません。別のバックアップ先を選ぶか空きを作るか、読み取り専用で開いてください</translation>
    </message>
    <message>
        <source>the record is open for reading only; save a copy of it to write in</source>
        <translation>記録は読み取り専用で開いています。書き込むにはコピーを保存してください</translation>
    </message>
    <message>
        <source>Build the shoulder with about {litres} of sphagnum, {height} over the soil</source>
        <translation>約 {litres} のミズゴケで肩盛りをする、土面から {height}</translation>
    </message>
    <message>
        <source>dormant</source>
        <translation>休眠</translation>
    </message>
    <message>
        <source>swelling</source>
        <translation>膨らみ始め</translation>
    </message>
    <message>
        <source>green tips</source>
        <translation>芽先が緑</translation>
    </message>
    <message>
        <source>opening</source>
        <translation>開き始め</translation>
    </message>
    <message>
        <source>in leaf</source>
        <translation>葉が出た</translation>
    </message>
    <message>
        <source>the mix has no components; put one in</source>
        <translation>配合に用土がありません。一つ入れてください</translation>
    </message>
    <message>
        <source>a price of {amount} can&apos;t be; expected 0 or more</source>
        <translation>価格 {amount} はありえません。0 以上にしてください</translation>
    </message>
    <message>
        <source>the day has no trees; name at least one</source>
        <translation>この日には木がありません。少なくとも一本を挙げてください</translation>
    </message>
    <message>
        <source>another {kind} {id} is here already, so nothing was taken in; give this one another number, or let it take the place of the one here</source>
        <translation>別の {kind} {id} がすでにあるため、何も取り込みませんでした。こちらの番号を変えるか、今あるものと置き換えてください</translation>
    </message>
    <message>
        <source>another group is called {name} already; choose another name</source>
        <translation>{name} という別のグループがすでにあります。別の名前にしてください</translation>
    </message>
    <message>
        <source>{text} names no record; expected kind and number like bag:K-07</source>
        <translation>{text} に当たる記録がありません。bag:K-07 のように種類と番号で書いてください</translation>
    </message>
    <message>
        <source>the {kind} {id} exists or existed, and a number is never used again; choose another</source>
        <translation>{kind} {id} は今あるか以前あった番号で、番号は二度と使いません。別の番号にしてください</translation>
    </message>
    <message>
        <source>{face} (now {direction}) up to {depth} deep</source>
        <translation>{face}（今は{direction}）、深さ {depth} まで</translation>
    </message>
    <message>
        <source>Round off the corners along the wall, {share} of the root mass: {where}</source>
        <translation>隅を壁に沿って丸める、根鉢の {share}：{where}</translation>
    </message>
    <message>
        <source>the new mix already has less than {percent} % air in this pot; a coarser mix or a deeper pot has more</source>
        <translation>新しい用土の時点で、この鉢の空気は {percent} % 未満です。より粗い用土か深い鉢なら増えます</translation>
    </message>
    <message>
        <source>the flooded mass asks for {percent} % of the voids between grains; look at the volume, the grain density and the dry mass</source>
        <translation>湛水時の重さには粒間孔隙の {percent} % が必要です。容積、粒子密度、乾燥質量を確かめてください</translation>
    </message>
    <message>
        <source>the measured litre weight leaves {voids_percent} % of voids between grains, which grain does not do; the predicted voids were used instead: look at the masses and the volume</source>
        <translation>実測の容積重では粒間孔隙が {voids_percent} % となり、粒としてありえません。予測の孔隙を使いました。重さと容積を確かめてください</translation>
    </message>
    <message>
        <source>the crumbled grading is {points} points off any even breaking, so the figures are rough; repeat the test for better ones</source>
        <translation>崩れた後の粒度は、一様な崩れ方から {points} ポイント外れており、値はおおよそです。試験をやり直せば良くなります</translation>
    </message>
    <message>
        <source>the number of rounds is missing or not above 0; type how often it was shaken or frozen</source>
        <translation>回数がないか、0 より大きくありません。振った回数、または凍らせた回数を入力してください</translation>
    </message>
    <message>
        <source>a grain density of {density_g_l} g/L is above that of its solid, {solid_g_l} g/L; look at the masses and at the mark on the jug</source>
        <translation>粒子密度 {density_g_l} g/L が真密度 {solid_g_l} g/L を超えています。重さとジョッキの標線を確かめてください</translation>
    </message>
    <message>
        <source>a grain density of {density_g_l} g/L is unusual; look at the masses, and was all air let out from between the grains?</source>
        <translation>粒子密度 {density_g_l} g/L は異例です。重さを確かめ、粒の間の空気を抜いたか確認してください</translation>
    </message>
    <message>
        <source>a mass is missing or not above 0; weigh it and type it here</source>
        <translation>質量がないか、0 より大きくありません。量ってここに入力してください</translation>
    </message>
    <message>
        <source>the jug would hold {voids_percent} % of voids between grains of {density_g_l} g/L, which loose grain hardly does; look at the volume and at the grain density</source>
        <translation>粒子密度 {density_g_l} g/L の粒でジョッキの粒間孔隙が {voids_percent} % となり、ふんわり入れた粒ではまずありえません。容積と粒子密度を確かめてください</translation>
    </message>
    <message>
        <source>the volume is missing or not above 0; weigh the jug full of water, 1 g is 1 mL</source>
        <translation>容積がないか、0 より大きくありません。水を満たしたジョッキを量ってください（1 g は 1 mL）</translation>
    </message>
    <message>
        <source>the grain density is not known: the mix has mass shares and grading only; measure it by displacement for volumes and porosities</source>
        <translation>粒子密度が不明です。配合は質量比と粒度だけです。容積と孔隙率には、水置換で測ってください</translation>
    </message>
    <message>
        <source>the grain density implies a solid of {density_g_l} g/L, outside {low} to {high}: look at it again, or give the solid density</source>
        <translation>粒子密度から真密度 {density_g_l} g/L となり、{low}～{high} の範囲外です。確かめるか、真密度を与えてください</translation>
    </message>
    <message>
        <source>the parts add up to {sum}: if they were meant as percent, look for one that is missing or counted twice</source>
        <translation>配合比の合計は {sum} です。百分率のつもりなら、抜けか重複を探してください</translation>
    </message>
    <message>
        <source>a settling of {percent} % leaves no voids; expected less than {most_percent} %, which is all the grain allows</source>
        <translation>締まり {percent} % では孔隙がなくなります。粒が許すのは {most_percent} % までなので、それ未満にしてください</translation>
    </message>
    <message>
        <source>the solid density of {density_g_l} g/L is outside {low} to {high}: look at it again</source>
        <translation>真密度 {density_g_l} g/L が {low}～{high} の範囲外です。確かめてください</translation>
    </message>
    <message>
        <source>{sources} sources stand beside {components} components; give each component one, or none of them</source>
        <translation>配合材 {components} 個に対し出典が {sources} 件あります。全部に一つずつか、なしにしてください</translation>
    </message>
    <message>
        <source>measure the grain density of the {component} by displacement: range of {figure} from ±{now_points} to ±{then_points} points</source>
        <translation>{component} の粒子密度を水置換で測る：{figure}の範囲が ±{now_points} から ±{then_points} ポイントに</translation>
    </message>
    <message>
        <source>a litre weight of {density_g_l} g/L in the pot is unusual; look at the tare and the volume</source>
        <translation>鉢の中の容積重 {density_g_l} g/L は異例です。風袋と容積を確かめてください</translation>
    </message>
    <message>
        <source>{mass_g} g can&apos;t be: {what} weighed {least_g} g; weigh both again</source>
        <translation>{mass_g} g はありえません。{what} が {least_g} g です。両方を量り直してください</translation>
    </message>
    <message>
        <source>{caught_ml} mL were caught but only {poured_ml} mL poured; count all the water from the dry mix on</source>
        <translation>受けた水が {caught_ml} mL ですが、注いだのは {poured_ml} mL だけです。乾いた用土からの水をすべて数えてください</translation>
    </message>
    <message>
        <source>a volume of {volume_ml} mL can&apos;t be; expected 0 or more</source>
        <translation>容積 {volume_ml} mL はありえません。0 以上にしてください</translation>
    </message>
    <message>
        <source>no verdict on {from_mm}-{to_mm} mm: the sieves of the test don&apos;t reach both ends; add a sieve at the end that is missing</source>
        <translation>{from_mm}～{to_mm} mm の判定なし：試験のふるいが両端に届きません。足りない端にふるいを加えてください</translation>
    </message>
    <message>
        <source>grain of {size_mm} mm is coarser than the 15 mm the model was made for; make a pot test to know</source>
        <translation>{size_mm} mm の粒は、モデルの対象 15 mm より粗い粒です。鉢試験で確かめてください</translation>
    </message>
    <message>
        <source>a tenth of the mix is {size_mm} mm or finer; dusty mixes are out of the model&apos;s range: screen the dust out, or make a pot test</source>
        <translation>配合の 1 割が {size_mm} mm 以下です。微塵の多い配合はモデルの範囲外です。微塵をふるい落とすか、鉢試験をしてください</translation>
    </message>
    <message>
        <source>{fines_percent} % is finer than the last sieve; fines wash down and clog, so the air shown is too high: screen them out</source>
        <translation>{fines_percent} % が最後のふるいより細かい粒です。微塵は流れて目詰まりするため、示した空気は高すぎます。ふるい落としてください</translation>
    </message>
    <message>
        <source>the sizes leave a gap and the fine part is {fines_percent} %; fine grain fills the voids of the coarse, so the air shown is too high: screen it out, or make a pot test</source>
        <translation>粒径に切れ目があり、細かい側が {fines_percent} % です。細粒が粗粒の隙間を埋めるため、示した空気は高すぎます。ふるい落とすか、鉢試験をしてください</translation>
    </message>
    <message>
        <source>organic, fibrous or soft grain is out of the model&apos;s range; make a pot test to know</source>
        <translation>有機質、繊維質、軟らかい粒はモデルの範囲外です。鉢試験で確かめてください</translation>
    </message>
    <message>
        <source>the wet zone would reach {perched_cm} cm, above the fill line at {depth_cm} cm: the whole pot stays wet; take a coarser mix or a deeper pot</source>
        <translation>滞水層が {perched_cm} cm に達し、充填線 {depth_cm} cm を超えます。鉢全体が濡れたままになります。より粗い用土か深い鉢にしてください</translation>
    </message>
    <message>
        <source>the band ends at {to_mm} mm, which is not above {from_mm} mm where it starts; give the finer size first</source>
        <translation>範囲の上限 {to_mm} mm が下限 {from_mm} mm を超えていません。細かい方を先にしてください</translation>
    </message>
    <message>
        <source>the name {name} is used twice; give one of them another</source>
        <translation>名前 {name} が二度使われています。一方を別の名前にしてください</translation>
    </message>
    <message>
        <source>{low} is negative; a catalogue figure is 0 or more</source>
        <translation>{low} は負です。目録の値は 0 以上にしてください</translation>
    </message>
    <message>
        <source>the material has no name; give it one</source>
        <translation>資材に名前がありません。名前を付けてください</translation>
    </message>
    <message>
        <source>the figure names no source; name one that stands in references.json</source>
        <translation>値に出典がありません。references.json にある出典を書いてください</translation>
    </message>
    <message>
        <source>the range runs from {low} down to {high}; write the lower figure first</source>
        <translation>範囲が {low} から {high} へ逆になっています。小さい方を先にしてください</translation>
    </message>
    <message>
        <source>the share {high} is above 1; write 40 % as 0.4</source>
        <translation>割合 {high} が 1 を超えています。40 % は 0.4 と書いてください</translation>
    </message>
    <message>
        <source>references.json lists no source called {source}; add it there, or look at its spelling</source>
        <translation>references.json に {source} という出典がありません。追加するか、つづりを確かめてください</translation>
    </message>
    <message>
        <source>{text} is not known for {key}; look at its spelling, or in schema.json</source>
        <translation>{key} に {text} は使えません。つづりを確かめるか、schema.json を見てください</translation>
    </message>
    <message>
        <source>no figure uses the source {source}; take it out of references.json, or name it beside its figure</source>
        <translation>出典 {source} はどの値にも使われていません。references.json から外すか、値に書き添えてください</translation>
    </message>
    <message>
        <source>{value} lies outside its own range {low} to {high}; correct the one that is wrong</source>
        <translation>{value} が自身の範囲 {low}～{high} の外です。誤っている方を直してください</translation>
    </message>
    <message>
        <source>the litre weight {bulk_g_l} g/L, dry, is not below the grain density {particle_g_l} g/L, but loose grain has voids; weigh a litre again, or correct the grain density</source>
        <translation>乾燥の容積重 {bulk_g_l} g/L が粒子密度 {particle_g_l} g/L より小さくありません。ふんわり入れた粒には隙間があります。1 L を量り直すか、粒子密度を直してください</translation>
    </message>
    <message>
        <source>the litre weight {bulk_g_l} g/L, dry, is not below the solid density {skeletal_g_l} g/L, but loose grain has voids; weigh a litre again, or correct the solid density</source>
        <translation>乾燥の容積重 {bulk_g_l} g/L が真密度 {skeletal_g_l} g/L より小さくありません。ふんわり入れた粒には隙間があります。1 L を量り直すか、真密度を直してください</translation>
    </message>
    <message>
        <source>the grain density {particle_g_l} g/L is above the solid density {skeletal_g_l} g/L, but a grain is no denser than its solid; correct the one that is wrong</source>
        <translation>粒子密度 {particle_g_l} g/L が真密度 {skeletal_g_l} g/L を超えています。粒はその固体より密になりません。誤っている方を直してください</translation>
    </message>
    <message>
        <source>there is no material called {name} in the catalogue; write it as one of the nearest: {nearest}</source>
        <translation>目録に {name} という資材はありません。近いものから選んで書いてください：{nearest}</translation>
    </message>
    <message>
        <source>the corner radius {radius_cm} cm is more than half of the shorter side; expected at most {limit_cm} cm</source>
        <translation>隅の半径 {radius_cm} cm が短辺の半分を超えています。{limit_cm} cm 以下にしてください</translation>
    </message>
    <message>
        <source>a corner radius belongs to a rectangular pot; leave it out here</source>
        <translation>隅の半径は長方形の鉢だけのものです。ここでは省いてください</translation>
    </message>
    <message>
        <source>the exponent {exponent} differs from {other}; give a pot one exponent</source>
        <translation>指数 {exponent} が {other} と違います。鉢の指数は一つにしてください</translation>
    </message>
    <message>
        <source>the fill line lies {freeboard_cm} cm below the rim, but the pot is only {depth_cm} cm deep; measure both again</source>
        <translation>充填線が縁から {freeboard_cm} cm 下ですが、鉢の深さは {depth_cm} cm しかありません。両方を測り直してください</translation>
    </message>
    <message>
        <source>bottom layer and top dressing together take {layers_cm} cm of the {filled_cm} cm filled; make them thinner, so that room is left for the mix</source>
        <translation>鉢底土と化粧土で充填 {filled_cm} cm のうち {layers_cm} cm を占めます。薄くして用土の分を残してください</translation>
    </message>
    <message>
        <source>the length is {length_cm} cm; expected 0 or more</source>
        <translation>長さが {length_cm} cm です。0 以上にしてください</translation>
    </message>
    <message>
        <source>the mass is {mass_kg} kg; expected 0 or more</source>
        <translation>質量が {mass_kg} kg です。0 以上にしてください</translation>
    </message>
    <message>
        <source>the table of areas ends at {height_cm} cm, below the rim at {depth_cm} cm; add a row for the rim</source>
        <translation>断面積の表が {height_cm} cm で終わり、縁の {depth_cm} cm に届きません。縁の行を加えてください</translation>
    </message>
    <message>
        <source>the table of areas starts at {height_cm} cm; put a row for the floor, at 0, first</source>
        <translation>断面積の表が {height_cm} cm から始まっています。底（0）の行を最初に置いてください</translation>
    </message>
    <message>
        <source>the height {height_cm} cm follows {before_cm} cm; write the heights from the floor up</source>
        <translation>高さ {height_cm} cm が {before_cm} cm の次にあります。高さは底から上へ書いてください</translation>
    </message>
    <message>
        <source>the volume is {volume_ml} mL, which no pot holds; look at its unit</source>
        <translation>容積が {volume_ml} mL です。そのような鉢はありません。単位を確かめてください</translation>
    </message>
    <message>
        <source>the water fill of {volume_ml} mL is {percent} % of the {lengths_ml} mL that the lengths hold; look at its unit and at the lengths</source>
        <translation>水容積 {volume_ml} mL は、寸法から求めた {lengths_ml} mL の {percent} % です。単位と寸法を確かめてください</translation>
    </message>
    <message>
        <source>the column {column} stands twice in the header; take one out</source>
        <translation>見出しに列 {column} が二度あります。一つを除いてください</translation>
    </message>
    <message>
        <source>a quote opened here and is never closed; close it, or take it out</source>
        <translation>ここで始まった引用符が閉じられていません。閉じるか、除いてください</translation>
    </message>
    <message>
        <source>a row follows the pan (line {pan_line}); write the pan as the last row</source>
        <translation>受皿（{pan_line} 行目）の後に行があります。受皿を最後の行にしてください</translation>
    </message>
    <message>
        <source>{found} cells stand here, the header has {expected} columns; take out what is too much, or put a text that holds the separator into quotes</source>
        <translation>ここにはセルが {found} 個、見出しは {expected} 列です。余分を除くか、区切り文字を含む文を引用符で囲んでください</translation>
    </message>
    <message>
        <source>the name of the file is empty; give one</source>
        <translation>ファイル名が空です。名前を指定してください</translation>
    </message>
    <message>
        <source>the file is larger than {limit_mb} MB, where a sieve test or a mix is a few kilobytes; look whether it is the one you meant</source>
        <translation>ファイルが {limit_mb} MB を超えています。ふるい試験や配合は数キロバイトです。正しいファイルか確かめてください</translation>
    </message>
    <message>
        <source>the grading has no points; give openings with what passes them</source>
        <translation>粒度に点がありません。目開きと通過を与えてください</translation>
    </message>
    <message>
        <source>{coarser_percent} % passes {coarser_mm} mm but {finer_percent} % the finer {finer_mm} mm; correct one of them, passing never falls as the opening grows</source>
        <translation>{coarser_mm} mm の通過が {coarser_percent} %、より細かい {finer_mm} mm の通過が {finer_percent} % です。目開きが大きくなって通過が減ることはありません。どちらかを直してください</translation>
    </message>
    <message>
        <source>{percent} % passing can&apos;t be; expected 0 to 100</source>
        <translation>通過 {percent} % はありえません。0～100 にしてください</translation>
    </message>
    <message>
        <source>the file ends before its JSON does; close the last bracket or quote, or save the file again</source>
        <translation>JSON が終わる前にファイルが終わっています。最後の括弧や引用符を閉じるか、ファイルを保存し直してください</translation>
    </message>
    <message>
        <source>brackets are nested deeper than {limit} levels; look whether this is the file you meant</source>
        <translation>括弧が {limit} 段より深く入れ子になっています。正しいファイルか確かめてください</translation>
    </message>
    <message>
        <source>the file holds more than {limit} values; look whether this is the file you meant</source>
        <translation>ファイルに値が {limit} 個を超えてあります。正しいファイルか確かめてください</translation>
    </message>
    <message>
        <source>the key {key} is missing; add it</source>
        <translation>キー {key} がありません。加えてください</translation>
    </message>
    <message>
        <source>a number is missing here; write it</source>
        <translation>ここに数値がありません。入力してください</translation>
    </message>
    <message>
        <source>{text} is not a number; write it in figures</source>
        <translation>{text} は数値ではありません。数字で入力してください</translation>
    </message>
    <message>
        <source>{text} is too large to be a measured value; look at its decimal point and its unit</source>
        <translation>{text} は測定値として大きすぎます。小数点と単位を確かめてください</translation>
    </message>
    <message>
        <source>{text} is too small to be a measured value; look at its decimal point and its unit</source>
        <translation>{text} は測定値として小さすぎます。小数点と単位を確かめてください</translation>
    </message>
    <message>
        <source>the schema refers to itself without end; mend the reference</source>
        <translation>スキーマが際限なく自分を参照しています。参照を直してください</translation>
    </message>
    <message>
        <source>there is no schema called {schema}; look at its spelling, or put it beside the others</source>
        <translation>{schema} というスキーマはありません。つづりを確かめるか、他と同じ場所に置いてください</translation>
    </message>
    <message>
        <source>this fits none of the allowed forms; look in the schema for them</source>
        <translation>許される形のどれにも合いません。スキーマを見てください</translation>
    </message>
    <message>
        <source>{text} is not one of the allowed values; look in the schema for them</source>
        <translation>{text} は許される値ではありません。スキーマを見てください</translation>
    </message>
    <message>
        <source>{value} is beyond the limit {limit}; write a value within it</source>
        <translation>{value} が限界 {limit} を超えています。範囲内の値にしてください</translation>
    </message>
    <message>
        <source>this fits more than one of the allowed forms; leave out what belongs to the others</source>
        <translation>許される形の複数に合っています。他の形に属するものを除いてください</translation>
    </message>
    <message>
        <source>the schema uses {keyword}, which is not checked here; say it in another way</source>
        <translation>スキーマが使う {keyword} は、ここでは検査しません。別の書き方にしてください</translation>
    </message>
    <message>
        <source>{aperture_mm} mm is above the coarsest sieve of the test, {coarsest_mm} mm; how the grain above that is spread is assumed: test with a coarser sieve</source>
        <translation>{aperture_mm} mm は試験の最も粗いふるい {coarsest_mm} mm より上です。それより上の粒の分布は仮定です。より粗いふるいで試験してください</translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm is named twice; name it once</source>
        <translation>目開き {aperture_mm} mm が二度あります。一度だけにしてください</translation>
    </message>
    <message>
        <source>the set has no sieve; type at least one opening</source>
        <translation>組にふるいがありません。目開きを一つ以上入力してください</translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm follows {before_mm} mm; write the sieves from coarse to fine</source>
        <translation>目開き {aperture_mm} mm が {before_mm} mm の次にあります。ふるいは粗い順に書いてください</translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm follows {above_mm} mm; write the sieves from coarse to fine</source>
        <translation>目開き {aperture_mm} mm が {above_mm} mm の次にあります。ふるいは粗い順に書いてください</translation>
    </message>
    <message>
        <source>the opening {aperture_mm} mm stands twice; correct one of them, or take it out</source>
        <translation>目開き {aperture_mm} mm が二度あります。一方を直すか、除いてください</translation>
    </message>
    <message>
        <source>the litre weight {bulk_g_l} g/L is above the grain density {particle_g_l} g/L; weigh a litre again, or correct the grain density</source>
        <translation>容積重 {bulk_g_l} g/L が粒子密度 {particle_g_l} g/L を超えています。1 L を量り直すか、粒子密度を直してください</translation>
    </message>
    <message>
        <source>nothing was left on the sieves or in the pan; type what each of them held</source>
        <translation>ふるいにも受皿にも何も残っていません。それぞれに残った量を入力してください</translation>
    </message>
    <message>
        <source>the fractions add up to {sum_g} g, the sample is {sample_g} g; the balance explains only {explained_g} g: weigh them again, or correct the sample&apos;s mass</source>
        <translation>区分の合計は {sum_g} g、試料は {sample_g} g です。はかりで説明できるのは {explained_g} g だけです。量り直すか、試料の質量を直してください</translation>
    </message>
    <message>
        <source>the tare of {tare_g} g is above the gross mass of {gross_g} g; weigh the empty pan again, or swap the two</source>
        <translation>風袋 {tare_g} g が総重量 {gross_g} g を超えています。空の皿を量り直すか、二つを入れ替えてください</translation>
    </message>
    <message>
        <source>there are more than {limit} rows; write one row for each sieve and one for the pan</source>
        <translation>{limit} 行を超えています。ふるいごとに一行、受皿に一行だけ書いてください</translation>
    </message>
    <message>
        <source>{washed_g} g after washing is more than the {dry_g} g before it; dry and weigh it again, or swap the two</source>
        <translation>洗った後の {washed_g} g が、洗う前の {dry_g} g を超えています。乾かして量り直すか、二つを入れ替えてください</translation>
    </message>
    <message>
        <source>the mass after washing needs the dry mass before washing; give it too</source>
        <translation>洗った後の質量には、洗う前の乾燥質量が必要です。それも与えてください</translation>
    </message>
    <message>
        <source>at {aperture_mm} mm the tests run from {least_percent} to {most_percent} % passing; careful repeats stay within {limit_points} points nineteen times of twenty: the samples differ, mix the bag well and sieve another</source>
        <translation>{aperture_mm} mm で試験の通過が {least_percent}～{most_percent} % にばらついています。丁寧な繰り返しなら 20 回中 19 回は {limit_points} ポイント以内です。試料が違うので、袋をよく混ぜてもう一つふるってください</translation>
    </message>
    <message>
        <source>the tests share no range of sieves, so they can&apos;t be pooled; sieve them with the same set</source>
        <translation>試験に共通のふるいの範囲がないため、まとめられません。同じ組でふるってください</translation>
    </message>
    <message>
        <source>there is no sieve test to pool; give at least one</source>
        <translation>まとめるふるい試験がありません。一つ以上与えてください</translation>
    </message>
    <message>
        <source>there is a NUL byte here; choose a text file, this is none</source>
        <translation>ここに NUL バイトがあります。テキストファイルを選んでください</translation>
    </message>
    <message>
        <source>in whole scoops, batches without {grain}: {without} of {batches}; mix them with the others before use, or take a smaller scoop or a larger tub</source>
        <translation>土入れの整数回では、{batches} バッチのうち {without} バッチに {grain} が入りません。使う前にほかのバッチと混ぜるか、小さい土入れか大きいトロ舟を使ってください</translation>
    </message>
    <message>
        <source>the mix {text} is named twice; name it once</source>
        <translation>配合 {text} が二度あります。一度だけにしてください</translation>
    </message>
    <message>
        <source>{left_l} L are left of {made_l} L made, so nothing was used; correct one of them</source>
        <translation>作った {made_l} L のうち {left_l} L 残り、何も使われていません。どちらかを直してください</translation>
    </message>
    <message>
        <source>no bag size is known, so bags can&apos;t be counted; {raw_l} L of raw grain are needed: type the litres of a bag</source>
        <translation>袋の大きさが不明なため袋数を出せません。原粒 {raw_l} L が必要です。1 袋の L を入力してください</translation>
    </message>
    <message>
        <source>neither fill_ml nor a pot says how much mix the tree takes; give one of them</source>
        <translation>fill_ml も鉢もなく、木に要る用土の量がわかりません。どちらかを与えてください</translation>
    </message>
    <message>
        <source>{day} lies outside the tree&apos;s window, {opens} to {closes}; choose a day within it, or go by the buds</source>
        <translation>{day} は木の適期 {opens}～{closes} の外です。適期の日を選ぶか、芽の様子で決めてください</translation>
    </message>
    <message>
        <source>{reserved_l} L of it are promised to other days, so that {short_l} L are short here; screen or buy them</source>
        <translation>うち {reserved_l} L は他の植え替え日に割り当て済みで、ここでは {short_l} L 足りません。ふるうか、買ってください</translation>
    </message>
    <message>
        <source>the scoop of {scoop_l} L is larger than the tub of {tub_l} L; take a smaller scoop or a larger tub</source>
        <translation>土入れ {scoop_l} L がトロ舟 {tub_l} L より大きくなっています。小さい土入れか大きいトロ舟にしてください</translation>
    </message>
    <message>
        <source>{short_l} L of ready grain are short; screen or buy {raw_l} L of raw grain</source>
        <translation>用意済みの粒が {short_l} L 足りません。原粒 {raw_l} L をふるうか、買ってください</translation>
    </message>
    <message>
        <source>how much of it is left is not known; enough was assumed: count it</source>
        <translation>残りの量が不明です。足りるものとしました。数えてください</translation>
    </message>
    <message>
        <source>the tree {text} stands twice in the day; take it out once</source>
        <translation>その日に木 {text} が二度あります。一つを外してください</translation>
    </message>
    <message>
        <source>the day has no mix called {text}; look at its spelling, or add it</source>
        <translation>その日に {text} という配合はありません。つづりを確かめるか、加えてください</translation>
    </message>
    <message>
        <source>the day has no pot called {text}; look at its spelling, or add it</source>
        <translation>その日に {text} という鉢はありません。つづりを確かめるか、加えてください</translation>
    </message>
    <message>
        <source>version {version} can&apos;t be; expected 1 or more</source>
        <translation>版 {version} はありえません。1 以上にしてください</translation>
    </message>
    <message>
        <source>the limits run from {low} down to {high}; write the lower one first</source>
        <translation>範囲が {low} から {high} へ逆になっています。小さい方を先にしてください</translation>
    </message>
    <message>
        <source>{value} is no whole number; write one without decimals</source>
        <translation>{value} は整数ではありません。小数のない数にしてください</translation>
    </message>
    <message>
        <source>the stock of every candidate is 0, so all are excluded; give the stock of one, or leave it out</source>
        <translation>すべての候補の在庫が 0 のため、全部除外されます。一つの在庫を与えるか、省いてください</translation>
    </message>
    <message>
        <source>no recipe of whole parts is within the stock; ask for fewer litres, or add stock</source>
        <translation>在庫の範囲で作れる整数比のレシピがありません。L を減らすか、在庫を足してください</translation>
    </message>
    <message>
        <source>no candidate was tested at {aperture_mm} mm, and the curves are not extrapolated; sieve one of them there</source>
        <translation>{aperture_mm} mm で試験した候補がありません。曲線は外挿しません。一つをその目開きでふるってください</translation>
    </message>
    <message>
        <source>has no grain density, so the litres it takes are not known; recipes with it count as beyond the stock: measure its grain density</source>
        <translation>粒子密度がなく、必要な L が不明です。これを使うレシピは在庫超過として扱います。粒子密度を測ってください</translation>
    </message>
    <message>
        <source>there are {count} candidates; leave some out, at most {most} are searched</source>
        <translation>候補が {count} 個あります。検索は {most} 個までなので、減らしてください</translation>
    </message>
    <message>
        <source>there are {count} wishes; leave some out, at most {most} are weighed</source>
        <translation>希望条件が {count} 件あります。{most} 件までなので、減らしてください</translation>
    </message>
    <message>
        <source>there is no pot called {pot} among the pots; look at its spelling, or add it</source>
        <translation>{pot} という鉢はありません。つづりを確かめるか、加えてください</translation>
    </message>
    <message>
        <source>no candidate has the name or family {name}; look at its spelling, or add one</source>
        <translation>名前または族が {name} の候補はありません。つづりを確かめるか、加えてください</translation>
    </message>
    <message>
        <source>wish number {wish} cannot hold: every candidate lies beyond its limits on the same side, and so does every mix of them; loosen it, or add another candidate</source>
        <translation>希望条件 {wish} は成り立ちません。すべての候補が同じ側で範囲を外れ、どう混ぜても外れます。条件を緩めるか、候補を加えてください</translation>
    </message>
    <message>
        <source>the {kind} {id} stands twice in this file; give one of them another number, or take it out</source>
        <translation>{kind} {id} がこのファイルに二度あります。一方の番号を変えるか、除いてください</translation>
    </message>
    <message>
        <source>a name is missing here; type one</source>
        <translation>ここに名前がありません。入力してください</translation>
    </message>
    <message>
        <source>the root-mass plan is empty; fill it in, or leave it out</source>
        <translation>根鉢計画が空です。記入するか、省いてください</translation>
    </message>
    <message>
        <source>{number} is no whole number; write one without decimals</source>
        <translation>{number} は整数ではありません。小数のない数にしてください</translation>
    </message>
    <message>
        <source>{text} is no kind of record; look at its spelling, expected the like of bag, mix or tree</source>
        <translation>{text} は記録の種類ではありません。bag、mix、tree などのつづりを確かめてください</translation>
    </message>
    <message>
        <source>the tree {text} stands twice on this day; take it off once</source>
        <translation>この日に木 {text} が二度あります。一つを外してください</translation>
    </message>
    <message>
        <source>acid lovers bear one of base, sides or surface at a repotting; this plan works more than one: leave the others for another year</source>
        <translation>酸性土を好む樹種が一度に耐えるのは、底・側面・表面のどれか一つです。この計画は複数に手を付けます。残りは別の年にしてください</translation>
    </message>
    <message>
        <source>the tree was bare-rooted last time, which it does not bear at every repotting; keep a core this time</source>
        <translation>前回は裸根にしました。毎回の植え替えには耐えません。今回は核を残してください</translation>
    </message>
    <message>
        <source>{clearance_cm} cm of new mix there leave no room; the pot allows less than {limit_cm} cm</source>
        <translation>そこの新しい用土が {clearance_cm} cm では余地がありません。この鉢では {limit_cm} cm 未満です</translation>
    </message>
    <message>
        <source>combing {depth_cm} cm deep goes past the middle; comb at most half of it, {limit_cm} cm</source>
        <translation>{depth_cm} cm のほぐしは中心を越えます。ほぐすのは根鉢の半分 {limit_cm} cm までにしてください</translation>
    </message>
    <message>
        <source>the direction {direction} stands twice; take one out</source>
        <translation>向き {direction} が二度あります。一つを除いてください</translation>
    </message>
    <message>
        <source>only a rounded root mass has an exponent; leave it out</source>
        <translation>指数があるのは丸み形の根鉢だけです。省いてください</translation>
    </message>
    <message>
        <source>the old face {face} stands twice; take one out</source>
        <translation>元の面 {face} が二度あります。一つを除いてください</translation>
    </message>
    <message>
        <source>it would fit, but more would come off, or less stay untouched, than the group bears; take a larger pot</source>
        <translation>収まりますが、グループが耐える以上に落とすか、残す核が足りなくなります。より大きい鉢にしてください</translation>
    </message>
    <message>
        <source>between the lowest level {lowest_cm} cm and the fill line {highest_cm} cm is no room for a root mass; make the bottom layer or the new mix below thinner, or fill higher</source>
        <translation>最低の高さ {lowest_cm} cm と充填線 {highest_cm} cm の間に根鉢の余地がありません。鉢底土か下の新しい用土を薄くするか、充填線を上げてください</translation>
    </message>
    <message>
        <source>{percent} % comes off; the group bears {limit_percent} %: take less off, or take a larger pot</source>
        <translation>{percent} % 落とします。グループが耐えるのは {limit_percent} % です。減らすか、より大きい鉢にしてください</translation>
    </message>
    <message>
        <source>{percent} % comes off; more than 70 % is never advised: take less off, or take a larger pot</source>
        <translation>{percent} % 落とします。70 % を超えることは勧めません。減らすか、より大きい鉢にしてください</translation>
    </message>
    <message>
        <source>the least tip {angle_deg} degrees is above the tip {tip_deg} degrees; make it smaller</source>
        <translation>最小の倒し {angle_deg} 度が倒し {tip_deg} 度を超えています。小さくしてください</translation>
    </message>
    <message>
        <source>{percent} % stays untouched; the group wants {limit_percent} %: cut and comb less, or take a larger pot</source>
        <translation>手を付けないのは {percent} % です。グループには {limit_percent} % が必要です。切る量とほぐす量を減らすか、より大きい鉢にしてください</translation>
    </message>
    <message>
        <source>neither a due day nor a last repotting with an interval says when it is due, so it is not counted; write one of them down</source>
        <translation>予定日も、間隔のある前回の植え替えもなく、時期が不明なため数えていません。どちらかを記入してください</translation>
    </message>
    <message>
        <source>a count needs what was found; type it, 0 if nothing is left</source>
        <translation>棚卸しには実際の量が必要です。入力してください。残っていなければ 0 です</translation>
    </message>
    <message>
        <source>litres need the litre weight they were turned into grams with; give it too</source>
        <translation>L には、g に直した容積重が必要です。それも与えてください</translation>
    </message>
    <message>
        <source>litres of {id} can&apos;t be turned into grams: its litre weight is not known; weigh it, or measure its litre weight</source>
        <translation>{id} のリットルをグラムに直せません。容積重が分かりません。量るか、容積重を測ってください</translation>
    </message>
    <message>
        <source>{change_g} g does not suit the reason; write what goes away as negative, what comes as positive</source>
        <translation>{change_g} g は理由に合いません。出ていく量は負、入る量は正で書いてください</translation>
    </message>
    <message>
        <source>{text} stands behind {before}; write the repottings from the oldest to the newest</source>
        <translation>{text} が {before} の後にあります。植え替えは古い順に書いてください</translation>
    </message>
    <message>
        <source>box {box} of the untouched part ends before it begins; swap its ends</source>
        <translation>残す核の箱 {box} は、終わりが始まりより前です。両端を入れ替えてください</translation>
    </message>
    <message>
        <source>the boxes have {count} numbers; write six for each</source>
        <translation>箱の数値が {count} 個あります。一つの箱に六つ書いてください</translation>
    </message>
    <message>
        <source>the clock of this machine stands before the last entry ({time}); set it right, entries keep their order all the same</source>
        <translation>このコンピューターの時計が最後の記入（{time}）より前です。時計を合わせてください。記入の順序は保たれます</translation>
    </message>
    <message>
        <source>there is no {kind} {id}; look at its number</source>
        <translation>{kind} {id} はありません。番号を確かめてください</translation>
    </message>
    <message>
        <source>the file or its folder can&apos;t be written to; the record is open for reading only: save a copy of it to write in</source>
        <translation>ファイルまたはフォルダーに書き込めません。記録は読み取り専用で開いています。書き込むには写しを保存してください</translation>
    </message>
    <message>
        <source>another window was quicker; the last step is now: {label}. Look at it, and undo again if you mean that</source>
        <translation>別のウィンドウが先に変更しました。最後の操作は今：{label}。確かめて、それでよければもう一度元に戻してください</translation>
    </message>
    <message>
        <source>Cut straight across the corners, {share} of the root mass: {where}</source>
        <translation>隅をまっすぐ切り落とす、根鉢の {share}：{where}</translation>
    </message>
    <message>
        <source>{tree} {reason}</source>
        <translation>{tree} {reason}</translation>
    </message>
    <message>
        <source>tree {tree} has no root-mass plan that can be worked out; plan its root mass first</source>
        <translation>木 {tree} には計算できる根鉢計画がありません。先に根鉢を計画してください</translation>
    </message>
    <message>
        <source>tree {tree} has no plan {text}; its root-mass plan has {plans}</source>
        <translation>木 {tree} に計画 {text} はありません。根鉢計画にあるのは {plans} です</translation>
    </message>
    <message>
        <source>tree {tree} can&apos;t be corrected: its repotting of that day is no longer in its history; take its tick back and tick it again</source>
        <translation>木 {tree} は訂正できません。その日の植え替えが履歴にもうありません。済みを取り消してから、もう一度済みにしてください</translation>
    </message>
    <message>
        <source>, </source>
        <translation>、</translation>
    </message>
    <message>
        <source>; </source>
        <translation>；</translation>
    </message>
    <message>
        <source>: </source>
        <translation>：</translation>
    </message>
    <message>
        <source>height over the floor of the pot up to which the pores stay nine tenths full</source>
        <translation>鉢底からの高さで、そこまでは孔隙の九割が満たされているもの</translation>
    </message>
    <message>
        <source>the k that holds the water measured; the water in the grains is known</source>
        <translation>実測の水を保つ k。粒内の水は既知</translation>
    </message>
    <message>
        <source>least (water held - measured)^2/0.02^2 + (ln(k/k0)/0.24)^2 + ((w - w0)/0.15)^2 over k and w</source>
        <translation>k と w について (保水率 - 実測)^2/0.02^2 + (ln(k/k0)/0.24)^2 + ((w - w0)/0.15)^2 を最小に</translation>
    </message>
    <message>
        <source>k and w that hold the water measured at two depths</source>
        <translation>二つの深さで測った水を保つ k と w</translation>
    </message>
    <message>
        <source>wet mix + kept root mass + tree + pot + layers; wet mix = fill x (litre weight + 1000 g/L x water held)</source>
        <translation>湿った用土 + 残す根鉢 + 木 + 鉢 + 層；湿った用土 = 充填量 x (容積重 + 1000 g/L x 保水率)</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>計画</translation>
    </message>
    <message>
        <source>buds</source>
        <translation>芽</translation>
    </message>
    <message>
        <source>helper</source>
        <translation>手伝い</translation>
    </message>
    <message>
        <source>pour</source>
        <translation>注ぐ量</translation>
    </message>
    <message>
        <source>scoops</source>
        <translation>土入れ</translation>
    </message>
    <message>
        <source>layers</source>
        <translation>層</translation>
    </message>
    <message>
        <source>done: plan, litres, note</source>
        <translation>済み：計画、L、メモ</translation>
    </message>
    <message>
        <source>grain</source>
        <translation>粒</translation>
    </message>
    <message>
        <source>quarts</source>
        <translation>クォート</translation>
    </message>
    <message>
        <source>in the pots</source>
        <translation>鉢の中</translation>
    </message>
    <message>
        <source>to mix</source>
        <translation>混合量</translation>
    </message>
    <message>
        <source>batches</source>
        <translation>バッチ</translation>
    </message>
    <message>
        <source>made</source>
        <translation>作った量</translation>
    </message>
    <message>
        <source>left over</source>
        <translation>残り</translation>
    </message>
    <message>
        <source>to have ready</source>
        <translation>用意するもの</translation>
    </message>
    <message>
        <source>for</source>
        <translation>用途</translation>
    </message>
    <message>
        <source>raw</source>
        <translation>原粒</translation>
    </message>
    <message>
        <source>usable</source>
        <translation>使える</translation>
    </message>
    <message>
        <source>short of</source>
        <translation>不足</translation>
    </message>
    <message>
        <source>one bag</source>
        <translation>1 袋</translation>
    </message>
    <message>
        <source>buy</source>
        <translation>購入</translation>
    </message>
    <message>
        <source>from</source>
        <translation>開始</translation>
    </message>
    <message>
        <source>day</source>
        <translation>日付</translation>
    </message>
    <message>
        <source>wants</source>
        <translation>希望</translation>
    </message>
    <message>
        <source>gets</source>
        <translation>割り当て</translation>
    </message>
    <message>
        <source>full and wet</source>
        <translation>満たして濡れたとき</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>重さ</translation>
    </message>
    <message>
        <source>sum of weight (points missed)^2 over the wishes that need not hold; points: percent of the mass, 100 x shares, 20 g/L, 5 meq/L, 5 % of a price limit; limits and gradings by root mean square over their openings</source>
        <translation>必須でない希望条件について 重み (外れポイント)^2 の和；ポイント：質量の百分率、100 x 割合、20 g/L、5 meq/L、価格上限の 5 %；範囲と粒度は目開きについての二乗平均平方根</translation>
    </message>
    <message>
        <source>examined + excluded = all recipes; a recipe is excluded only if a lower bound of its score, or a wish that must hold, puts it behind the list</source>
        <translation>調べた + 除外した = 全レシピ；除外するのは、評点の下限または必須の条件により一覧より後になる場合だけ</translation>
    </message>
    <message>
        <source>no mix of this grading keeps the measured {capacity_percent} % of water; look at the masses, the volume and the grading</source>
        <translation>この粒度の配合では、実測の水 {capacity_percent} % を保てません。質量、容積、粒度を確かめてください</translation>
    </message>
    <message>
        <source>the two depths contradict each other more than tests of one mix do, so both were weighed against the usual values; repeat one of the tests</source>
        <translation>二つの深さの食い違いが同じ配合の試験として大きすぎるため、両方を通常の値と重み付けしました。どちらかの試験をやり直してください</translation>
    </message>
    <message>
        <source>the fineness modulus reads {aperture_mm} mm off the curve, that sieve was not used; a sieve of {aperture_mm} mm would give it</source>
        <translation>粗粒率の {aperture_mm} mm は曲線から読んだ値です（そのふるいは使っていません）。{aperture_mm} mm のふるいがあれば測れます</translation>
    </message>
    <message>
        <source>the fineness modulus is not defined: {percent} % is finer than the finest sieve, {finest_mm} mm, and it asks for {aperture_mm} mm; a sieve of {aperture_mm} mm would give it</source>
        <translation>粗粒率は定義できません。最も細かいふるい {finest_mm} mm より細かい粒が {percent} % あり、{aperture_mm} mm が必要です。{aperture_mm} mm のふるいがあれば測れます</translation>
    </message>
    <message>
        <source>{percent} % stayed on the coarsest sieve, {aperture_mm} mm; the fineness modulus counts none of it on coarser ones; a coarser sieve would tell</source>
        <translation>最も粗いふるい {aperture_mm} mm に {percent} % 残りました。粗粒率ではより粗いふるいの分として数えません。より粗いふるいでわかります</translation>
    </message>
    <message>
        <source>a laboratory figure without a value needs a size outside the sieves used; sieve with a wider set</source>
        <translation>値のない試験室の値には、使ったふるいの範囲外の粒径が必要です。より範囲の広い組でふるってください</translation>
    </message>
    <message>
        <source>by {count} of your pot tests</source>
        <translation>ご自身の鉢試験 {count} 件による</translation>
    </message>
    <message>
        <source>air and water are by {count} of your own pot tests of mix {mix}, the last is {test}</source>
        <translation>空気と水は配合 {mix} のご自身の鉢試験 {count} 件による値です。最後は {test} です</translation>
    </message>
    <message>
        <source>by {count} of your pot tests ({dates})</source>
        <translation>ご自身の鉢試験 {count} 件（{dates}）による</translation>
    </message>
    <message>
        <source>the exchange capacity of a component is not known, so the mix&apos;s is not either; give it if you need it</source>
        <translation>交換容量の不明な配合材があるため、配合の値も出せません。必要なら与えてください</translation>
    </message>
    <message>
        <source>the solid density is not known: total porosity counts only the pores that take up water; give the solid density for all of them</source>
        <translation>真密度が不明です。全孔隙率には水を吸う孔隙だけを数えています。すべて数えるには真密度を与えてください</translation>
    </message>
    <message>
        <source>{percent} % is finer than {aperture_mm} mm and taken as grain of {size_mm} mm; a finer sieve would tell</source>
        <translation>{percent} % が {aperture_mm} mm より細かく、{size_mm} mm の粒とみなしています。より細かいふるいでわかります</translation>
    </message>
    <message>
        <source>this mix has no pot test of its own: air and water lean by {percent} % on pot tests {tests} of mixes {mixes} with {materials}</source>
        <translation>この配合自身の鉢試験はありません。空気と水は、{materials} を含む配合 {mixes} の鉢試験 {tests} に {percent} % 基づきます</translation>
    </message>
    <message>
        <source>{percent} % is coarser than {aperture_mm} mm and taken to end at {top_mm} mm; a coarser sieve would tell</source>
        <translation>{percent} % が {aperture_mm} mm より粗く、{top_mm} mm までとみなしています。より粗いふるいでわかります</translation>
    </message>
    <message>
        <source>figures that were not given are typical values of the catalogue; measure your own to be sure</source>
        <translation>与えられていない値は目録の代表値です。確実にするには実物を測ってください</translation>
    </message>
    <message>
        <source>litres are taken in proportion to mass; screened grain lies looser, so they come out a little low; weigh a litre and measure the grain density</source>
        <translation>L は質量に比例するものとしています。ふるった粒はふんわりするため、やや少なめに出ます。1 L を量り、粒子密度を測ってください</translation>
    </message>
    <message>
        <source>what the screening keeps is {percent} % wanted grain, {finer_percent} % finer</source>
        <translation>ふるい分けで残るものは希望粒径 {percent} %、微塵 {finer_percent} % です</translation>
    </message>
    <message>
        <source>the bottom layer&apos;s grain is not known, so the water is computed as if the mix reached the floor; name its grain</source>
        <translation>鉢底土の粒が不明なため、用土が底まであるものとして水を計算しています。粒を指定してください</translation>
    </message>
    <message>
        <source>100 x mass that stayed on / base</source>
        <translation>100 x 残留質量 / 基準</translation>
    </message>
    <message>
        <source>100 (1 - cumulative mass that stayed on / base); cumulative masses are divided, rounded shares never added</source>
        <translation>100 (1 - 累積残留質量 / 基準)；累積質量を割り、丸めた割合は足さない</translation>
    </message>
    <message>
        <source>wanted grain</source>
        <translation>希望粒径</translation>
    </message>
    <message>
        <source>passing at the coarse end of the wanted grain - passing at its fine end, by mass</source>
        <translation>希望粒径の上限の通過 - 下限の通過、質量比</translation>
    </message>
    <message>
        <source>passing at the fine end of the wanted grain, by mass</source>
        <translation>希望粒径の下限の通過、質量比</translation>
    </message>
    <message>
        <source>wanted grain, its ends at the sieves of the test</source>
        <translation>希望粒径、両端は試験のふるい</translation>
    </message>
    <message>
        <source>passing at the fine end of the wanted grain less what was lost, by mass</source>
        <translation>希望粒径の下限の通過から失われた分を引いたもの、質量比</translation>
    </message>
    <message>
        <source>1 - passing at the coarse end of the wanted grain, by mass</source>
        <translation>1 - 希望粒径の上限の通過、質量比</translation>
    </message>
    <message>
        <source>sum of cumulative percent that stayed on 0.150, 0.300, 0.600, 1.18, 2.36, 4.75, 9.5, 19.0, 37.5, 75, 150 mm / 100</source>
        <translation>0.150, 0.300, 0.600, 1.18, 2.36, 4.75, 9.5, 19.0, 37.5, 75, 150 mm の累積残留百分率の和 / 100</translation>
    </message>
    <message>
        <source>a rectangle with soft corners needs its exponent (2 is an ellipse, 4 a rectangle with soft corners)</source>
        <translation>隅丸の長方形には指数が必要です（2 は楕円、4 は隅丸の長方形）</translation>
    </message>
    <message>
        <source>a rounding of {radius_cm} cm at the floor leaves no floor; at most {limit_cm} cm fits here</source>
        <translation>底の丸み {radius_cm} cm では底がなくなります。ここでは {limit_cm} cm までです</translation>
    </message>
    <message>
        <source>this shape has no edge between floor and wall to round; leave the rounding out, a bowl and a table of areas already hold the curve</source>
        <translation>この形には底と壁の間に丸める角がありません。丸みは省いてください。椀形と断面積の表は曲線をすでに含みます</translation>
    </message>
    <message>
        <source>the file is damaged; restore the newest intact backup: what was written after it is only in the damaged file, which is kept</source>
        <translation>ファイルが壊れています。最新の正常なバックアップを復元してください。その後に書いた内容は壊れたファイルにだけあり、そのファイルは残します</translation>
    </message>
    <message>
        <source>the file is not there; look at its name</source>
        <translation>ファイルがありません。名前を確かめてください</translation>
    </message>
    <message>
        <source>the file can&apos;t be read; look whose it is, and whether it is a file</source>
        <translation>ファイルを読めません。所有者と、ファイルかどうかを確かめてください</translation>
    </message>
    <message>
        <source>the reference materials were not found; install Gritwright again, or set GRITWRIGHT_DATA to the folder that holds materials/</source>
        <translation>基準資材が見つかりません。Gritwright を入れ直すか、GRITWRIGHT_DATA に materials/ のあるフォルダーを設定してください</translation>
    </message>
    <message>
        <source>passing ran from {low_percent} to {high_percent} % and was rescaled to 0-100 %; look whether the curve was read off rightly</source>
        <translation>通過が {low_percent}～{high_percent} % だったため、0～100 % に直しました。曲線を正しく読み取ったか確かめてください</translation>
    </message>
    <message>
        <source>what follows is not JSON; mend it, or save the file again ({text})</source>
        <translation>ここから先は JSON ではありません。直すか、ファイルを保存し直してください（{text}）</translation>
    </message>
    <message>
        <source>litre weight and grain density are not both known: litres rest on a packing density of {packing_density} for one size of grain; weigh a litre and measure the grain density for litres of this bag</source>
        <translation>容積重と粒子密度がそろっていません。L は単一粒径の充填率 {packing_density} によります。この袋の L を知るには、1 L を量り、粒子密度を測ってください</translation>
    </message>
    <message>
        <source>no starting mass was given, so the percentages are of the {mass_g} g recovered and a loss would not show; weigh the sample before sieving</source>
        <translation>最初の質量がないため、百分率は回収した {mass_g} g に対するもので、損失はわかりません。ふるう前に試料を量ってください</translation>
    </message>
    <message>
        <source>measured in litres: shares of loose volume stand for shares of mass, as if every fraction lay equally dense; weigh the fractions to be sure</source>
        <translation>リットルで測定：質量比の代わりに、どの区分も同じ密度とみなしたふんわり容積比を使います。確実にするには区分を量ってください</translation>
    </message>
    <message>
        <source>the fractions outweigh the sample by {percent} %, no more than the balance&apos;s resolution explains; nothing needs doing</source>
        <translation>区分の合計が試料より {percent} % 重くなっていますが、はかりの目量で説明できる範囲です。何もする必要はありません</translation>
    </message>
    <message>
        <source>{percent} % of the sample was lost while sieving; look under the sieves, or weigh the sample again: above 0.3 % a laboratory repeats the test</source>
        <translation>ふるいで試料の {percent} % を失いました。ふるいの下を見るか、試料を量り直してください。0.3 % を超えると試験室ではやり直します</translation>
    </message>
    <message>
        <source>not defined: {list}; {percent} % passes the coarsest sieve, {aperture_mm} mm; a coarser sieve would define them</source>
        <translation>定義できません：{list}。最も粗いふるい {aperture_mm} mm の通過が {percent} % です。より粗いふるいがあれば定義できます</translation>
    </message>
    <message>
        <source>not defined: {list}; {percent} % is finer than the finest sieve, {aperture_mm} mm; a finer sieve would define them</source>
        <translation>定義できません：{list}。最も細かいふるい {aperture_mm} mm より細かい粒が {percent} % です。より細かいふるいがあれば定義できます</translation>
    </message>
    <message>
        <source>{mass_g} g is a small sample for grain of {size_mm} mm if it is stone; take {least_g} g or more, or type the grain density if it is lighter</source>
        <translation>{size_mm} mm の粒が石なら、試料 {mass_g} g は少なすぎます。{least_g} g 以上取るか、軽い粒なら粒子密度を入力してください</translation>
    </message>
    <message>
        <source>{percent} % stayed on the coarsest sieve, {aperture_mm} mm, and is taken to end at {top_mm} mm; a coarser sieve would tell</source>
        <translation>最も粗いふるい {aperture_mm} mm に {percent} % 残り、{top_mm} mm までとみなしています。より粗いふるいでわかります</translation>
    </message>
    <message>
        <source>(1 - voids between grains) x mean porosity of the grains, 1 - grain density/solid density</source>
        <translation>(1 - 粒間孔隙) x 粒の平均孔隙率、1 - 粒子密度/真密度</translation>
    </message>
    <message>
        <source>sum over components of mass share x exchange capacity in meq/100 g x 10 x litre weight in kg/L</source>
        <translation>配合材について 質量比 x 陽イオン交換容量 (meq/100 g) x 10 x 容積重 (kg/L) の和</translation>
    </message>
    <message>
        <source>litre weight</source>
        <translation>容積重</translation>
    </message>
    <message>
        <source>the packing density all classes of a component share for which the model gives back the component&apos;s own phi = dry litre weight / grain density: V = min over i of (1/phi - G_i)/(1 - F_i - G_i), beta = 1/V</source>
        <translation>配合材の全級に共通の充填率で、モデルが配合材自身の phi = 乾燥容積重 / 粒子密度 を再現する値：V = i についての (1/phi - G_i)/(1 - F_i - G_i) の最小、beta = 1/V</translation>
    </message>
    <message>
        <source>V = sum E/phi of the parts taken as litres, E = loose litres x dry litre weight / grain density</source>
        <translation>V = 配合比を L とした E/phi の和、E = ふんわり L x 乾燥容積重 / 粒子密度</translation>
    </message>
    <message>
        <source>sum m / sum (m / solid density)</source>
        <translation>m の和 / (m / 真密度) の和</translation>
    </message>
    <message>
        <source>height of the fill line over the floor: depth - fill line below rim</source>
        <translation>底から充填線までの高さ：深さ - 縁から充填線まで</translation>
    </message>
    <message>
        <source>theta(0) - water held: the share that drains</source>
        <translation>theta(0) - 保水率：排水される割合</translation>
    </message>
    <message>
        <source>water held</source>
        <translation>保水率</translation>
    </message>
    <message>
        <source>all open voids, between and in grains, - water held</source>
        <translation>開いた孔隙すべて（粒間と粒内） - 保水率</translation>
    </message>
    <message>
        <source>water held - theta(50)</source>
        <translation>保水率 - theta(50)</translation>
    </message>
    <message>
        <source>volume of the mix x (litre weight + 1000 g/L x water held)</source>
        <translation>用土の容積 x (容積重 + 1000 g/L x 保水率)</translation>
    </message>
    <message>
        <source>the crumble test&apos;s figures can&apos;t be (breakages 0 or more; modulus and rounds in a season above 0); make the test again</source>
        <translation>崩れ試験の値がありえません（破砕数は 0 以上、指数と 1 シーズンの回数は 0 より大）。試験をやり直してください</translation>
    </message>
    <message>
        <source>the mix was removed after the day was planned; the day keeps it as it was then, until another is chosen at its trees</source>
        <translation>配合は計画後に削除されました。植え替え日の木で別の配合を選ぶまで、当時の内容が残ります</translation>
    </message>
    <message>
        <source>the mix was changed after the day was planned; the day keeps version {version}, the newest is {newest}: choose it at its trees to take that</source>
        <translation>配合は計画後に変更されました。植え替え日は版 {version} のままで、最新は {newest} です。最新を使うには、その日の木で選び直してください</translation>
    </message>
    <message>
        <source>a bag of {bag_l} L was assumed, as is usual for the material; type the litres of a bag</source>
        <translation>この資材で通常の {bag_l} L の袋としました。1 袋の L を入力してください</translation>
    </message>
    <message>
        <source>no yield was measured, so {percent} % usable was assumed; sieve the bag</source>
        <translation>歩留まりが未測定のため、使える割合を {percent} % としました。袋をふるってください</translation>
    </message>
    <message>
        <source>without a root-mass plan all the pot holds was counted, {volume_l} L; plan the root mass, or type the litres</source>
        <translation>根鉢計画がないため、鉢の全容積 {volume_l} L を数えました。根鉢を計画するか、L を入力してください</translation>
    </message>
    <message>
        <source>the search for wishes that exclude each other was stopped after {seconds} s; those shown do, there may be more</source>
        <translation>両立しない希望条件の検索を {seconds} 秒で止めました。示したものは両立しません。ほかにもあるかもしれません</translation>
    </message>
    <message>
        <source>only wishes about grading and shares were looked through for such that exclude each other, three at a time; wishes about air, water or price may do so too</source>
        <translation>両立しないかを調べたのは、粒度と割合の希望条件を三つずつだけです。空気、水、価格の希望条件にもあるかもしれません</translation>
    </message>
    <message>
        <source>free shares are improved from fixed starts, so a better recipe may exist; search in whole parts for a proof</source>
        <translation>自由な割合は決まった出発点から改良するため、もっと良いレシピがあるかもしれません。証明するには整数比で検索してください</translation>
    </message>
    <message>
        <source>there are {recipes} recipes, too many to try all; the best score may be lower by up to {gap}: allow fewer components or parts for a proof</source>
        <translation>レシピは {recipes} 件あり、すべて試すには多すぎます。最良の評点は最大 {gap} 低い可能性があります。証明するには配合材か配合比の数を減らしてください</translation>
    </message>
    <message>
        <source>was not tested at {aperture_mm} mm, which a wish reads; its pan or its coarsest class stands in for what is not known: sieve it there</source>
        <translation>希望条件が使う {aperture_mm} mm では試験していません。受皿または最も粗い級で代用します。その目開きでふるってください</translation>
    </message>
    <message>
        <source>the {kind} {id} can&apos;t be read from the file and was left out; take it in from a backup, or write it anew</source>
        <translation>{kind} {id} はファイルから読めないため除きました。バックアップから取り込むか、書き直してください</translation>
    </message>
    <message>
        <source>this {kind} was corrected since the file was written; it stays as it is here: look which of the two is right</source>
        <translation>この{kind}はファイルが書かれた後に直されています。ここのままにします。どちらが正しいか確かめてください</translation>
    </message>
    <message>
        <source>as many more lines were corrected since and stay as they are here: {count}</source>
        <translation>ほかにも後から直された行はここのままにします。その数: {count}</translation>
    </message>
    <message>
        <source>there is no material called {name} in the catalogue, so it is taken as your own; nearest there: {nearest}</source>
        <translation>カタログに {name} という資材はないため、ご自分の資材とします。最も近いもの: {nearest}</translation>
    </message>
    <message>
        <source>comes in as {to}, the next free number: {id} here is another line</source>
        <translation>次の空き番号 {to} として取り込みます。ここの {id} は別の行です</translation>
    </message>
    <message>
        <source>as many more lines come in under the next free numbers: {count}</source>
        <translation>ほかにも次の空き番号で取り込む行の数: {count}</translation>
    </message>
    <message>
        <source>how much room the bare roots take is not known, so the fill is for the whole pot; what is left goes back to stock</source>
        <translation>裸根が占める容積が不明なため、充填量は鉢全体の分です。残りは在庫に戻ります</translation>
    </message>
    <message>
        <source>a corner would have to be rounded off where nothing may come off; take a larger pot, or turn the tree</source>
        <translation>何も落とせない所の隅を丸めることになります。より大きい鉢にするか、木を回してください</translation>
    </message>
    <message>
        <source>to fit, {percent} % would have to come off in all; more than 70 % is never advised, not in stages either: take a larger pot</source>
        <translation>収めるには合計 {percent} % を落とすことになります。段階的でも 70 % を超えることは勧めません。より大きい鉢にしてください</translation>
    </message>
    <message>
        <source>nothing is left to fill: root mass, trunk and stones take up all the pot; look at their lengths</source>
        <translation>充填する余地がありません。根鉢、幹、石が鉢をすべて占めています。寸法を確かめてください</translation>
    </message>
    <message>
        <source>a shoulder would be steeper than 35 degrees between rim and root mass; sink the tree, or take a wider pot</source>
        <translation>縁と根鉢の間の肩盛りが 35 度より急になります。木を下げるか、より広い鉢にしてください</translation>
    </message>
    <message>
        <source>after everything that may be done the root mass still sticks out {excess_cm} cm; take a larger pot</source>
        <translation>できることをすべてしても、根鉢がまだ {excess_cm} cm はみ出します。より大きい鉢にしてください</translation>
    </message>
    <message>
        <source>the wall turns in: roots fill the belly, and later the tree comes out only by cutting; take a pot that opens upward if you can</source>
        <translation>壁が内すぼまりです。根が胴にふくらみ、後で切らないと抜けなくなります。できれば上に開いた鉢にしてください</translation>
    </message>
    <message>
        <source>no tree is due by {until}; choose a later day to see the next</source>
        <translation>{until} までに時期の来る木はありません。次の木を見るには、もっと後の日を選んでください</translation>
    </message>
    <message>
        <source>the record was changed elsewhere meanwhile; look at it and type yours again</source>
        <translation>その間に記録が別の場所で変更されました。見直して、自分の分を入力し直してください</translation>
    </message>
    <message>
        <source>the record&apos;s file is damaged; restore the newest intact backup: what was written after it is only in the damaged file, which is kept</source>
        <translation>記録のファイルが壊れています。最新の正常なバックアップを復元してください。その後に書いた内容は壊れたファイルにだけあり、そのファイルは残します</translation>
    </message>
    <message>
        <source>{id} may be {text}; write the kind in front, like bag:K-07</source>
        <translation>{id} は {text} かもしれません。bag:K-07 のように前に種類を書いてください</translation>
    </message>
    <message>
        <source>the lists disagree with the {kind} {id} itself, which is whole: draw them anew with gritwright log check --mend, nothing is lost</source>
        <translation>一覧が {kind} {id} と食い違っていますが、記録自体は無事です。gritwright log check --mend で作り直してください。何も失われません</translation>
    </message>
    <message>
        <source>another window has this record open and saves it in another way ({mode}); close that window and open the record again</source>
        <translation>別のウィンドウがこの記録を開いていて、別の保存方式（{mode}）を使っています。そのウィンドウを閉じてから、記録を開き直してください</translation>
    </message>
    <message>
        <source>there is no record yet; write the first line with gritwright log add, or open the window</source>
        <translation>記録がまだありません。gritwright log add で最初の行を書くか、ウィンドウを開いてください</translation>
    </message>
    <message>
        <source>would be refused today: {fault}</source>
        <translation>今なら受け付けられません: {fault}</translation>
    </message>
    <message>
        <source>the {kind} {id} can&apos;t be read from the file; take it in from a backup, or write it anew</source>
        <translation>{kind} {id} はファイルから読めません。バックアップから取り込むか、書き直してください</translation>
    </message>
    <message>
        <source>the {kind} {id} was changed elsewhere meanwhile; look at it and type yours again</source>
        <translation>その間に {kind} {id} が別の場所で変更されました。見直して、自分の分を入力し直してください</translation>
    </message>
    <message>
        <source>toward</source>
        <translation>向き</translation>
    </message>
    <message>
        <source>sticks out</source>
        <translation>はみ出し</translation>
    </message>
    <message>
        <source>untouched</source>
        <translation>残す核</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation>落とす</translation>
    </message>
    <message>
        <source>mix in the pot</source>
        <translation>鉢の用土</translation>
    </message>
    <message>
        <source>the upper cut stops at</source>
        <translation>上の切断が止まる深さ</translation>
    </message>
    <message>
        <source>then below</source>
        <translation>その場合の下</translation>
    </message>
    <message>
        <source>trunk base</source>
        <translation>株元</translation>
    </message>
    <message>
        <source>{stop} or more</source>
        <translation>{stop} 以上</translation>
    </message>
    <message>
        <source>{volume_l} L is too little to mix or measure with; expected {least_l} L or more</source>
        <translation>{volume_l} L は混ぜるにも量るにも少なすぎます。{least_l} L 以上にしてください</translation>
    </message>
    <message>
        <source>What lies on the shelf is counted by its dry mass and its litre weight, so that a bag can give more or fewer litres than are printed on it.</source>
        <translation>棚にあるものは乾燥質量とリットル重量で数えます。そのため袋から取れるリットル数は、印刷された値より多いことも少ないこともあります。</translation>
    </message>
    <message>
        <source>one and the same pot is planned for {trees}; choose another for all but one, unless you have several of it</source>
        <translation>同じ鉢が {trees} に予定されています。同じ鉢がいくつもあるのでなければ、一本を除いて別の鉢を選んでください</translation>
    </message>
    <message>
        <source>the cut passes {depth_cm} cm under the base of the trunk, which would stand bare; take it from below, or enter how far the old top may be taken</source>
        <translation>切断面が株元の {depth_cm} cm 下を通り、株元がむき出しになります。下側から取るか、元の上面をどこまで取ってよいかを入力してください</translation>
    </message>
    <message>
        <source>new mix for what comes off</source>
        <translation>取り除く分の新しい用土</translation>
    </message>
    <message>
        <source>sum over components of share x price of a loose litre / (1 - shrinkage)</source>
        <translation>配合材ごとの割合 x ばら 1 L の価格の和 / (1 - 目減り)</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>損失</translation>
    </message>
    <message>
        <source>dry mass</source>
        <translation>乾燥質量</translation>
    </message>
    <message>
        <source>mean porosity of the grains</source>
        <translation>粒の平均孔隙率</translation>
    </message>
    <message>
        <source>water the grains hold</source>
        <translation>粒が保つ水</translation>
    </message>
    <message>
        <source>open voids</source>
        <translation>開いた孔隙</translation>
    </message>
    <message>
        <source>volume of the mix</source>
        <translation>配合の体積</translation>
    </message>
    <message>
        <source>start</source>
        <translation>開始質量</translation>
    </message>
    <message>
        <source>washed out</source>
        <translation>洗い流し</translation>
    </message>
    <message>
        <source>the rest</source>
        <translation>残り</translation>
    </message>
    <message>
        <source>Plitt 1971, the form of the partition curve; s is a setting, no published value for sieving by hand was found</source>
        <translation>Plitt 1971、分配曲線の形。s は設定値で、手ふるいについて公表された値は見つかりませんでした</translation>
    </message>
    <message>
        <source>docs/science/packing.md, one class beta for the bag and its fractions</source>
        <translation>docs/science/packing.md、袋とその区分に一つの階級ベータ</translation>
    </message>
    <message>
        <source>dry grain</source>
        <translation>乾いた粒</translation>
    </message>
    <message>
        <source>dry mass = share x dry grain; litres = loose litres per loose litre x dry grain / litre weight</source>
        <translation>乾燥質量 = 割合 × 乾いた粒。リットル = ばら 1 L あたりのばら L × 乾いた粒 / リットル重量</translation>
    </message>
    <message>
        <source>every pair of openings and every single one; kept: the share between them; usable: what of the bag is kept and wanted; finer in it: what of the kept is finer than wanted; good enough: kept grain within the limits of the verdict</source>
        <translation>すべての目開きの組と単独の目開き。残る量：その間の割合。使える：袋のうち残して希望の粒度のもの。細かい分：残したもののうち希望より細かいもの。十分か：残した粒が判定の限度内</translation>
    </message>
    <message>
        <source>passing at the coarse end of the wanted grain less what was lost, by mass</source>
        <translation>希望粒径の上限の通過から損失を引いたもの、質量比</translation>
    </message>
    <message>
        <source>saucer</source>
        <translation>受け皿</translation>
    </message>
    <message>
        <source>wick</source>
        <translation>灯芯</translation>
    </message>
    <message>
        <source>tilt</source>
        <translation>傾き</translation>
    </message>
    <message>
        <source>docs/science/water.md; constants by pot tests, or as the mix gives them</source>
        <translation>docs/science/water.md。定数は鉢試験による、または配合が示すもの</translation>
    </message>
    <message>
        <source>flooded</source>
        <translation>湛水</translation>
    </message>
    <message>
        <source>drained</source>
        <translation>排水後</translation>
    </message>
    <message>
        <source>dry, with the pot</source>
        <translation>乾燥、鉢とも</translation>
    </message>
    <message>
        <source>empty pot</source>
        <translation>空の鉢</translation>
    </message>
    <message>
        <source>poured</source>
        <translation>注いだ水</translation>
    </message>
    <message>
        <source>caught</source>
        <translation>受けた水</translation>
    </message>
    <message>
        <source>water held, measured</source>
        <translation>保水率、実測</translation>
    </message>
    <message>
        <source>dry mass / volume</source>
        <translation>乾燥質量 / 体積</translation>
    </message>
    <message>
        <source>a grain breaks lambda times a season by Poisson&apos;s law; what breaks off grain that stayed on L is finer than x with the share (x/L)^m; each season the mix is graded, packed and dosed anew, and its air is theta(0) - water held: the middle, 5 and 95 % of the cases drawn</source>
        <translation>粒はポアソン則により 1 シーズンに平均 lambda 回割れる；目開き L に残った粒から割れ出たものは (x/L)^m の割合で x より細かい；シーズンごとに用土の粒度・充填・配分を計算し直し、空気は theta(0) - 保水量：抽出した事例の中央、5 % と 95 %</translation>
    </message>
    <message>
        <source>docs/science/ageing.md; an estimate</source>
        <translation>docs/science/ageing.md；推定</translation>
    </message>
    <message>
        <source>taken not to break</source>
        <translation>割れないものとする</translation>
    </message>
    <message>
        <source>limit of the hint</source>
        <translation>目安の限度</translation>
    </message>
    <message>
        <source>mean of predicted - measured air over the tests, and the root of its mean square; predicted by the usual constants, so that no test foretells itself</source>
        <translation>全試験での空気の予測 - 実測の平均と、その二乗平均の平方根；試験が自分自身を予測しないよう、通常の定数で予測</translation>
    </message>
    <message>
        <source>bags before, oldest first</source>
        <translation>以前の袋、古い順</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>平均</translation>
    </message>
    <message>
        <source>mean step</source>
        <translation>差の平均</translation>
    </message>
    <message>
        <source>usual from</source>
        <translation>通常の下限</translation>
    </message>
    <message>
        <source>usual to</source>
        <translation>通常の上限</translation>
    </message>
    <message>
        <source>NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2; docs/science/grading.md</source>
        <translation>NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2；docs/science/grading.md</translation>
    </message>
    <message>
        <source>air of the material alone, straight walls so deep; earlier bags in the grain of this one, so that only their gradings differ</source>
        <translation>資材だけの空気、まっすぐな壁でこの深さ；粒度だけを比べるため、以前の袋もこの袋の粒として計算</translation>
    </message>
    <message>
        <source>new mix, of the pot</source>
        <translation>新しい用土、鉢に対して</translation>
    </message>
    <message>
        <source>5 and 95 % of its lambda, as factors</source>
        <translation>lambda の 5 % と 95 %、倍率で</translation>
    </message>
    <message>
        <source>seasons</source>
        <translation>シーズン数</translation>
    </message>
    <message>
        <source>the same, with what crumbled off finer than 1 mm at the floor: packed with .55 it clogs the share c of the mix, which then drains nothing; air is (1 - c) x the air of what stands above, as on a wick</source>
        <translation>同様に、1 mm より細かく崩れたものが底にたまる場合：充填率 0.55 で用土の割合 c を詰まらせ、そこは排水しない；空気は (1 - c) x その上の部分の空気（灯芯の上にあるものとして）</translation>
    </message>
    <message>
        <source>(theta_0 - water in the grains) / voids between grains, not over 1; of several tests their mean</source>
        <translation>(theta_0 - 粒内の水) / 粒間孔隙、1 以下；複数の試験ではその平均</translation>
    </message>
    <message>
        <source>passing of all samples: their mean by dry mass, equally where one was measured in litres; read linear in log10(size) where one lacked a sieve</source>
        <translation>全試料の通過率：乾燥質量による平均、リットルで測った試料があれば等分；ふるいが欠けた所は log10(粒径) に線形で読む</translation>
    </message>
    <message>
        <source>usual: mean of the bags before, to either side 2.66 x the mean step from one to the next, not below 0; a jump: a step beyond 3.267 x the mean step</source>
        <translation>通常の範囲：以前の袋の平均から両側に、隣どうしの差の平均の 2.66 倍、0 未満にはしない；急な変化：差の平均の 3.267 倍を超える差</translation>
    </message>
    <message>
        <source>figure</source>
        <translation>値</translation>
    </message>
    <message>
        <source>largest usual step</source>
        <translation>通常の差の最大</translation>
    </message>
    <message>
        <source>finer than wanted</source>
        <translation>希望より細かい</translation>
    </message>
    <message>
        <source>air, 6 cm deep</source>
        <translation>空気、深さ 6 cm</translation>
    </message>
    <message>
        <source>new mix only: the pot&apos;s area at each height less that of the kept root mass</source>
        <translation>新しい用土だけ：各高さの鉢の面積から残す根鉢の面積を引く</translation>
    </message>
    <message>
        <source>theta(0) - water held, by the usual constants, so that no test foretells itself</source>
        <translation>theta(0) - 保水量、通常の定数による（試験が自分自身を予測しないため）</translation>
    </message>
    <message>
        <source>packing density of the bag</source>
        <translation>袋の充填率</translation>
    </message>
    <message>
        <source>packing density of what is kept</source>
        <translation>残す分の充填率</translation>
    </message>
    <message>
        <source>{mass_g} g lay on the {aperture_mm} mm sieve, which sieves well up to {limit_g} g; sieve in {goes} goes</source>
        <translation>{aperture_mm} mm のふるいに {mass_g} g 載りました。よくふるえるのは {limit_g} g までです。{goes} 回に分けてふるってください</translation>
    </message>
</context>
</TS>
