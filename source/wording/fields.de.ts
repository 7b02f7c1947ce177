import type { Amounts } from './amounts.ts';
import type { FieldsWords } from './fields.en.ts';

export const fields = (_: Amounts): FieldsWords => ({
  brief:
    'Ein Beutel, wie du ihn willst. Speichere die Datei als my-bag.json; slantwise plan my-bag.json druckt dann den Plan.',
  name: 'Wie der Beutel heißt. Der Name steht über dem Plan und dem Blatt.',
  bed: 'Dein Nadelbett.',
  'bed.needles': 'Wie viele Nadeln das Bett hat.',
  'bed.pitchMm':
    'Wie weit die Nadeln auseinander liegen, von Mitte zu Mitte: fein 3.6, normal 4.5, mittel 6.5, grob 9.',
  'bed.marginNeedles':
    'Nadeln, die an jedem Ende frei bleiben, damit der Schlitten am Gestrick vorbeikommt. Meist 2.',
  'bed.place': 'Wo das Gestrick hängt: um die Mitte des Betts (centre, üblich) oder vom Ende an (end).',
  'bed.park':
    'Wo ein Garn wartet: auf der Seite des Schlittens (home, üblich), oder die beiden Garne an je einem Ende (ends).',
  'bed.without':
    'Was deinem Bett fehlt: Anschlagkamm (comb), Freilauf (slip), Reihenzähler (counter). Meist nichts.',
  'bed.without[]': 'Ein Ding, das ihm fehlt.',
  swatch: 'Deine Maschenprobe, glatt gestrickt und in Ruhe gemessen. Aus ihr wird jede Größe berechnet.',
  'swatch.stitches': 'Maschen, über ihre Breite gezählt.',
  'swatch.rows': 'Reihen, über ihre Höhe gezählt.',
  'swatch.widthCm': 'Wie breit diese Maschen sind, in cm.',
  'swatch.heightCm': 'Wie hoch diese Reihen sind, in cm.',
  'swatch.widthIn': 'Wie breit diese Maschen sind, in Zoll, anstelle von widthCm.',
  'swatch.heightIn': 'Wie hoch diese Reihen sind, in Zoll, anstelle von heightCm.',
  'swatch.state':
    'Wie sie geruht hat: wie abgenommen (dry-relaxed), eingeweicht und flach getrocknet (wet-relaxed, üblich), oder gewaschen und im Trockner (fully-relaxed).',
  'swatch.loopLengthMm':
    'Garn in einer Masche: trenn eine Reihe auf, miss sie, teil durch ihre Maschen. Meist aus der Maschendichte berechnet.',
  'swatch.rowYarnCm': 'Garn in einer ganzen Reihe der Probe, anstelle von loopLengthMm.',
  'swatch.asideCm':
    'Wie weit die obere Kante rechts von der unteren steht, rechte Seite zu dir; nach links unter 0. Meist 0.',
  'swatch.stitchSize': 'Was der Knopf am Schlitten zeigte, etwa "6".',
  'swatch.guess': 'Ob niemand sie gemessen hat und sie nach dem Nadelbett geschätzt ist. Üblich nicht.',
  finishState: 'Der Zustand, in dem der Beutel benutzt wird und seine Größe haben soll. Meist der der Probe.',
  bag: 'Wie groß er sein soll, auf eine von drei Arten: widthCm und depthCm, oder contents, oder stitches und rows.',
  'bag.widthCm': 'Seine Breite, genäht und flach liegend.',
  'bag.depthCm': 'Seine Tiefe, genäht und flach liegend.',
  'bag.boxedCm': 'Wie tief sein Boden ist, wenn die Ecken abgenäht sind. Meist 0, ein flacher Beutel.',
  'bag.contents': 'Was hineinkommt. Der Beutel wird der kleinste, in den es passt.',
  'bag.contents.girthCm': 'Einmal rundherum, an der dicksten Stelle.',
  'bag.contents.heightCm': 'Wie hoch es ist.',
  'bag.contents.thicknessCm': 'Wie dick es ist, von vorn nach hinten. Meist wie bei etwas Rundem.',
  'bag.contents.easePercent': 'Luft ringsum, in Prozent. Meist 10.',
  'bag.stitches': 'Maschen auf den Nadeln.',
  'bag.rows': 'Reihen rund um den Beutel, die im Maschenstich mitgezählt.',
  crawl: 'Die Seite, nach der das Gestrick auf dem Bett wandert. Meist links (left).',
  homeSide:
    'Die Seite, auf der der Schlitten zwischen den Streifen wartet. Meist die, von der das Gestrick weg wandert.',
  edgeStitches: 'Wie viele Maschen an jedem Rand umgehängt werden: die Ösen deines Deckers. Meist 2.',
  shapeEveryRows: 'Reihen von einem Formschritt zum nächsten. Meist 2; mehr machen die Streifen flacher.',
  yarns: 'Deine Garne, jedes unter einem Namen von dir.',
  'yarns.NAME': 'Ein Garn.',
  'yarns.NAME.colour': 'Seine Farbe auf dem Bildschirm und auf Papier, etwa "#6b2d5c".',
  'yarns.NAME.metresPer100g':
    'Wie viele Meter 100 g davon sind. Das steht auf der Banderole; bei 50 g nimm es doppelt.',
  'yarns.NAME.grams': 'Wie viel du davon hast, nach der Waage. Fehlt es, weiß der Plan nicht, ob es reicht.',
  'yarns.NAME.pricePer100g': 'Was 100 g davon kosten.',
  stripes: 'Ein Rapport der Streifen, in der Reihenfolge des Strickens.',
  'stripes[]': 'Ein Streifen.',
  'stripes[].yarn': 'Der Name seines Garns.',
  'stripes[].rows': 'Wie viele Reihen er hoch ist: eine gerade Zahl.',
  scraps: 'Anstelle von stripes: die Garne sind Reste, und der Plan bringt sie in eine Reihenfolge.',
  'scraps.rows': 'Wie viele Reihen jeder Streifen hoch ist. Meist 2.',
  waste: 'Das Hilfsgarn.',
  'waste.yarn': 'Wie du es nennst. Meist waste.',
  'waste.rows': 'Reihen davon am Anfang. Meist 8.',
  'waste.ravel':
    'Was den Anfang am Ende löst: die letzte Hilfsgarnreihe, an einer Schlinge zu finden (loop, üblich), oder ein glatter Faden (cord).',
  cord: 'Die Kordel, die den Beutel zuzieht.',
  'cord.stitches': 'Wie viele Maschen sie hat. Meist 3.',
  'cord.yarn': 'Der Name ihres Garns. Meist das des ersten Streifens.',
  'cord.tieCm': 'Wie lang jedes Ende heraushängt, zum Binden. Meist 25.',
  'cord.draws': 'Kordeln: 1, oder 2, die von beiden Seiten ziehen. Meist 1.',
  'cord.roundsPer10Cm':
    'Runden, die du in 10 cm einer solchen Kordel gezählt hast. Meist aus der Reihenhöhe.',
  cost: 'Was du für einen Beutel rechnest; fehlt es, nennt der Plan keine Kosten.',
  'cost.perHour': 'Was eine Stunde deiner Arbeit wert ist.',
  'cost.currency': 'Wie du das Geld schreibst, etwa "EUR".',
  learned: 'Was fertige Beutel dieser Probe gezeigt haben. Das schreibt das Programm selbst.',
  'learned.bags': 'Beutel, die zählen.',
  'learned.setAside': 'Beutel, die nicht zählen, weil sie weit daneben lagen.',
  'learned.widthFactor': 'Breite, wie sie herauskam, durch die geplante.',
  'learned.depthFactor': 'Tiefe, wie sie herauskam, durch die geplante.',
  'learned.spread': 'Wie sehr sich die Beutel unterscheiden, als Anteil.',
});
