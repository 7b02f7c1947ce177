import { firmTightness, labelTightness } from '../planning/fabric.ts';
import type { Amounts } from './amounts.ts';
import type { Words } from './words.ts';

export const glossary = ({ decimal }: Amounts): Words['glossary'] => ({
  bed: {
    names: 'Nadelbett, Bett',
    means:
      'Die lange Reihe von Nadeln, an der das Gestrick hängt. Gezählt wird von der Mitte nach außen: L1, L2 … nach links, R1, R2 … nach rechts.',
  },
  left: {
    names: 'links und rechts, links, rechts, Seite',
    means: 'Links und rechts gelten immer für dich, mit Blick auf das Nadelbett.',
  },
  needle: {
    names: 'Nadel, Nadelhaken, Zunge, Nadelzunge',
    means:
      'Ein Haken im Nadelbett, mit einer Zunge, die sich über dem Garn schließt. Eine Nadel hält eine Masche. Eine Nadel 0 gibt es nicht.',
  },
  'in-work': {
    names: 'in Arbeit, Arbeitsstellung, in Arbeitsstellung, arbeitende Nadel',
    means:
      'Eine Nadel in Arbeit strickt beim nächsten Schlittengang mit. Ist sie leer, legt der Schlittengang eine neue Masche darauf.',
  },
  'out-of-work': {
    names: 'außer Arbeit, Nadel außer Arbeit, Nichtarbeitsstellung',
    means: 'Eine Nadel außer Arbeit ist ganz zurückgeschoben: der Schlitten geht an ihr vorbei.',
  },
  holding: {
    names: 'Haltestellung, Ruhestellung, in Ruhestellung',
    means:
      'Eine Nadel in Haltestellung behält ihre Masche und strickt nicht. Dieser Beutel braucht keine; manche Maschinen bezeichnen sie mit einem Buchstaben.',
  },
  carriage: {
    names: 'Schlitten',
    means:
      'Das Teil, das über das Nadelbett gleitet und die Nadeln stricken lässt. Beweg den Schlitten nie mit leerem Fadenführer: alle Maschen würden fallen.',
  },
  pass: {
    names: 'Schlittengang, Gang',
    means: 'Der Schlitten geht einmal über das Nadelbett. Strickt er dabei, ist das eine Reihe.',
  },
  row: {
    names: 'Reihe, Maschenreihe',
    means: 'Die Maschen, die ein Schlittengang strickt, von Rand zu Rand.',
  },
  feeder: {
    names: 'Fadenführer, einfädeln',
    means: 'Dort läuft das Garn in den Schlitten. Ein Garn einfädeln heißt: es dort einlegen.',
  },
  mast: {
    names: 'Fadenspanner, Mast, Arm',
    means:
      'Der Ständer, über den das Garn läuft. Jedes Garn hat einen eigenen federnden Arm, der es straff hält.',
  },
  park: {
    names: 'abgelegtes Garn, abgelegt, ablegen, Garnklammer, Klammer',
    means:
      'Ein Garn, das weder im Fadenführer noch abgeschnitten ist, ist abgelegt. Es wartet in einer Klammer auf der Seite des Schlittens. Jedes Garn hat eine eigene Klammer und einen eigenen Arm, damit sich zwei nicht verdrehen.',
  },
  margin: {
    names: 'freier Rand',
    means:
      'Nadeln, die an beiden Enden des Nadelbetts frei bleiben, damit der Schlitten ganz über das Gestrick hinausfahren kann.',
  },
  loop: {
    names: 'Schlaufe, Schlinge',
    means:
      'Der Garnbogen, der auf einer Nadel hängt. Der nächste Schlittengang zieht einen neuen hindurch: eine Masche.',
  },
  open: {
    names: 'offene Masche, offene Schlaufe',
    means:
      'Eine Masche, die weder eine Nadel noch eine weitere Reihe hält: sie könnte laufen. Hilfsgarnreihen sichern offene Maschen.',
  },
  stitch: {
    names: 'Masche',
    means:
      'Eine Schlaufe, durch die darunter gezogen. Die Zahl der Maschen, eine für jede Nadel, macht die Tiefe des Beutels.',
  },
  'cast-on': {
    names: 'Anschlag, anschlagen, Maschenanschlag',
    means: 'So beginnt das Stricken: die ersten Maschen, eine auf jeder Nadel.',
  },
  'bind-off': {
    names: 'abketten, Abketten',
    means:
      'Die letzten Maschen mit einer Kette schließen. Der Beutel selbst hat keinen solchen Rand: seine letzten Maschen werden mit den ersten verbunden. Ein Saum hat einen.',
  },
  'e-wrap': {
    names: 'Wickelanschlag, umwickeln',
    means:
      'Ein Anschlag von Hand: wickle das Garn einmal um jede Nadel, eine nach der anderen, wie eine Zeile kleiner e.',
  },
  comb: {
    names: 'Anschlagkamm, Kamm',
    means:
      'Eine Leiste mit Zähnen, in die ersten Maschen gehängt, damit sie alle gleichmäßig nach unten zieht.',
  },
  'claw-weight': {
    names: 'Krallengewicht, Gewicht',
    means:
      'Ein kleines Gewicht mit Haken, an jedem Rand eingehängt, damit er nach unten zieht. Es wird alle 10 Reihen höher gehängt und bleibt unter den Nadeln, die arbeiten.',
  },
  'waste-yarn': {
    names: 'Hilfsgarn, Hilfsgarnreihe, Hilfsreihe',
    means:
      'Garn zum Wegwerfen. Ein paar Reihen davon halten die offenen Maschen und werden später aufgetrennt.',
  },
  'ravel-cord': {
    names: 'Trennreihe, Trennfaden',
    means:
      'Die Reihe zwischen Hilfsgarn und Gestrick: die letzte Hilfsgarnreihe, an einer Schlinge in der Klammer zu finden, oder eine Reihe aus glattem Faden. Später herausgezogen, gibt sie das Hilfsgarn frei.',
  },
  'edge-stitches': {
    names: 'Randmaschen, Seitenmasche',
    means:
      'Die Maschen, die an einem Rand zusammen umgehängt werden: so viele, wie der Decker Ösen hat, meist 2.',
  },
  'transfer-tool': {
    names: 'Decker, Umhängewerkzeug, Deckernadel, umhängen, Werkzeug',
    means:
      'Ein Griff mit einer oder mehreren Ösen. Er hebt Maschen von ihren Nadeln und setzt sie auf andere.',
  },
  increase: {
    names: 'Zunahme, eine hinaus, zunehmen',
    means:
      'Eine Nadel hinaus: der Rand wächst um eine Nadel. Die äußersten Maschen rücken eine Nadel nach außen; die Nadel, die frei wird, bleibt leer in Arbeit.',
  },
  decrease: {
    names: 'Abnahme, eine hinein, abnehmen',
    means:
      'Eine Nadel hinein: der Rand wird eine Nadel kürzer. Die äußersten Maschen rücken eine Nadel nach innen, eine Nadel hält dann zwei, und die leere kommt außer Arbeit.',
  },
  'shaping-move': {
    names: 'Formschritt',
    means:
      'Eine Zunahme am Zunahmerand und eine Abnahme am Abnahmerand. Die Maschenzahl bleibt gleich, und das Gestrick wandert eine Nadel weiter.',
  },
  crawl: {
    names: 'wandern, Wanderrichtung',
    means:
      'Durch die Formschritte wandert das Gestrick über das Nadelbett, nach links oder nach rechts. Davon wird die Bahn schräg, und die Streifen winden sich um den Beutel.',
  },
  'leading-edge': {
    names: 'Zunahmerand, vorderer Rand, Öffnung, Beutelöffnung',
    means:
      'Der Rand, auf den das Gestrick zuwandert. Er bekommt die Lochmaschen und wird zur Öffnung des Beutels.',
  },
  'trailing-edge': {
    names: 'Abnahmerand, hinterer Rand, Boden',
    means: 'Der Rand, von dem das Gestrick wegwandert. Er wird zusammengenäht und so zum Boden des Beutels.',
  },
  'home-side': {
    names: 'Ausgangsseite',
    means:
      'Die Seite, auf der der Schlitten zwischen den Streifen wartet. Liegt sie am Abnahmerand, verschwinden die Fäden zwischen den Streifen in der Bodennaht.',
  },
  rehang: {
    names: 'neu aufnadeln, Neuaufnadeln, aufnadeln, umsetzen, wieder einhängen',
    means:
      'Ist das Nadelbett zu Ende, kommt das Gestrick mit Hilfsgarnreihen von den Nadeln und wird dort neu aufgenadelt, wo es begann: so hat es wieder Platz.',
  },
  drop: {
    names: 'gefallene Masche, Laufmasche, Fallmasche, Zungennadel',
    means:
      'Eine Masche, die von der Nadel gerutscht ist und läuft; zurück bleibt eine Leiter aus blanken Fäden. Mit der Zungennadel, einem Haken mit Griff, holst du sie wieder hoch.',
  },
  lifeline: {
    names: 'Rettungsfaden, Sicherungsfaden',
    means:
      'Ein Faden durch alle Maschen einer Reihe, an dem das Auftrennen endet. Hilfsgarnreihen und Trennreihe tun das für die ersten und die letzten Maschen.',
  },
  rip: {
    names: 'auftrennen, aufziehen, ribbeln, aufribbeln',
    means:
      'Reihen wieder herausnehmen, eine nach der anderen, und jede Masche auffangen. Der Befehl rip führt dich hindurch.',
  },
  'row-counter': {
    names: 'Reihenzähler, Zähler',
    means:
      'Der Zähler am Nadelbett, den der Schlitten im Vorbeifahren um eins weiterdreht. Stell ihn nach der Trennreihe auf 0. Beim Auftrennen drehst du ihn von Hand zurück.',
  },
  'foot-switch': {
    names: 'Fußschalter, Pedal, Schalter',
    means:
      'Ein Schalter für den Fuß, der eine Taste tippt: so bestätigst du Schritte auch mit vollen Händen. Tippe pedal confirm, um einen zu belegen.',
  },
  swatch: {
    names: 'Maschenprobe, Probe, Probestück',
    means:
      'Ein glatt gestricktes Probestück, mit Garn und Maschenweite des Beutels. Lass es ruhen, zähle dann Maschen und Reihen und miss es: daraus kommt jede Größe.',
  },
  'stitch-size': {
    names: 'Maschenweite, Maschengröße, Spannung, Einstellknopf',
    means:
      'Was der Knopf am Schlitten zeigt: er bestimmt die Länge einer Masche. Strick den Beutel mit der Maschenweite seiner Maschenprobe.',
  },
  gauge: {
    names: 'Maschendichte',
    means: 'Wie viele Maschen und wie viele Reihen auf 10 cm der geruhten Maschenprobe kommen.',
  },
  plain: {
    names: 'glatt gestrickt, glatt, glatt rechts',
    means: 'Jede Nadel in Arbeit strickt in jeder Reihe, ohne Muster.',
  },
  'knit-side': {
    names: 'rechte Seite, linke Seite, glatte Seite, rechte Seite außen',
    means:
      'Die rechte Seite zeigt glatte Maschen: sie ist das Äußere des Beutels. Die linke Seite zeigt Querrippen. Am Bett hast du die linke Seite vor dir.',
  },
  pitch: {
    names: 'Nadelabstand, Teilung',
    means:
      'Wie weit die Nadeln auseinander stehen, von Mitte zu Mitte, in mm. Miss von der ersten Nadel bis zur elften und teile durch zehn.',
  },
  relaxed: {
    names: 'relaxiert, Zustand, trocken relaxiert, nass relaxiert, voll relaxiert, entspannt, Ruhezustand',
    means:
      'Wie die Maschenprobe vor dem Messen geruht hat. Trocken: wie sie von den Nadeln kam. Nass: eingeweicht und flach getrocknet. Voll: gewaschen und im Trockner.',
  },
  'loop-length': {
    names: 'Maschenlänge, Garn in einer Masche',
    means:
      'Wie viel Garn in einer Masche steckt. Zieh eine Reihe der Maschenprobe auf, miss ihr Garn und teile durch ihre Maschen.',
  },
  tightness: {
    names: 'Dichtefaktor',
    means: `Wie dicht gestrickt ist: die Wurzel aus dem tex des Garns, geteilt durch die Maschenlänge in mm. Handstrickgarne haben bei der Maschendichte ihrer Banderole ${decimal(labelTightness.least)} bis ${decimal(labelTightness.most)}; ein Beutel, der die Form hält, braucht ${decimal(firmTightness.least)} bis ${decimal(firmTightness.most)}.`,
  },
  tex: {
    names: 'tex',
    means:
      'Wie schwer ein Garn ist: was 1000 m davon wiegen, in Gramm. Ein Garn mit 200 m auf 100 g hat 500 tex.',
  },
  metres: {
    names: 'Meter auf 100 g, Meter, Lauflänge',
    means:
      'Wie lang 100 g des Garns sind. Das steht auf der Banderole; steht es dort für 50 g, nimm es doppelt.',
  },
  class: {
    names: 'Garnklasse, Garnstärke, Klasse, Sockenwolle, 4-fach, DK, Aran, Lace, Jumbo, Fingering, Sport',
    means:
      'Wie dick ein Garn ist, von 0 (Lace) bis 7 (Jumbo), danach, wie viele Maschen es auf 4 Zoll gibt. Vierfache Sockenwolle ist meist 1, DK 3, Aran 4 (Faustregel).',
  },
  stripe: {
    names: 'Streifen',
    means: 'Ein paar Reihen aus einem Garn. Bei gerader Reihenzahl warten beide Garne auf der Ausgangsseite.',
  },
  repeat: {
    names: 'Rapport, Streifenrapport',
    means:
      'Die Streifen der Reihe nach, bis der erste wiederkommt. Ein Beutel hat ganze Rapporte, damit die Farben an der Verbindung zusammenpassen.',
  },
  scraps: {
    names: 'Garnreste, Restgarn',
    means:
      'Übrige Garne. Wieg jedes, und der Plan bringt sie in eine Folge, in der nie zwei gleiche zusammentreffen.',
  },
  ease: {
    names: 'Mehrweite, Zugabe',
    means:
      'Luft zwischen dem Beutel und dem, was hineinkommt: 10 %, wenn du nichts anderes sagst (Faustregel).',
  },
  girth: {
    names: 'Umfang',
    means: 'Einmal um das herum, was in den Beutel kommt. Leg ein Maßband darum, wo es am dicksten ist.',
  },
  reserve: {
    names: 'Reserve, Vorrat',
    means: 'Garn über die Summe hinaus, damit es nicht ausgeht: 10 % (Faustregel).',
  },
  brief: {
    names: 'Vorgabe, Vorgabedatei',
    means:
      'Die Datei, in der steht, was du willst: dein Nadelbett, deine Maschenprobe, die Größe, die Garne und die Streifen.',
  },
  plan: {
    names: 'Plan, Planseite',
    means:
      'Was das Programm aus der Vorgabe macht: Maschen, Reihen, Nadeln, Garn und Fadenenden. Tippe plan, um ihn zu lesen.',
  },
  log: {
    names: 'Protokoll',
    means:
      'Die Datei, in der jeder bestätigte Schritt sofort festgehalten wird. Sie lässt sich wieder abspielen.',
  },
  'closing-row': {
    names: 'Schlussreihe, letzte Reihe',
    means:
      'Die letzte gestrickte Reihe. Die Verbindung ist die zweite Reihe ihres Streifens; so wird er so hoch wie die anderen.',
  },
  hem: {
    names: 'Saum',
    means:
      'Glatte Reihen, an den Öffnungsrand gestrickt und nach innen umgeschlagen, damit er sich nicht rollt. Er entsteht nach der Schlussreihe, solange die Bahn offen liegt; nicht jeder Beutel hat einen.',
  },
  'pick-up': {
    names: 'auffassen',
    means:
      'Die äußersten Maschen eines Randes auf Nadeln ziehen, linke Seite zu dir, um Reihen an ihn zu stricken.',
  },
  graft: {
    names: 'im Maschenstich verbinden, Maschenstich, Verbindung, verbinden',
    means:
      'Offene Maschen so aneinandernähen, wie der Faden einer gestrickten Reihe läuft. Die Naht ist dann selbst eine Reihe und fällt nicht auf.',
  },
  movement: {
    names: 'Bewegung, Nadelbewegung',
    means:
      'Was die stumpfe Nadel an einer Kante beim Verbinden tut: durch eine Masche hinab und durch die nächste herauf, auf die Größe einer Masche angezogen.',
  },
  edges: {
    names: 'Kanten A und B, Kante A, Kante B',
    means:
      'Die zwei Reihen offener Maschen, die verbunden werden. An Kante A hängt das Fadenende, Kante B ist der Anfang. Gezählt wird vom Fadenende: A1 liegt B1 gegenüber.',
  },
  'mattress-seam': {
    names: 'Matratzenstich, Naht, Bodennaht',
    means:
      'Rand an Rand nähen, unter den Querfäden eine Masche weiter innen: einer von hier, einer von drüben, abwechselnd. So schließt sich der Boden des Beutels.',
  },
  bar: {
    names: 'Querfaden, Quersteg, Steg',
    means:
      'Der kurze Faden zwischen zwei Maschen nebeneinander. Jede Reihe hat einen, eine Masche vom Rand entfernt.',
  },
  'draw-up': {
    names: 'zusammenziehen, anziehen',
    means: 'Den Nähfaden ziehen, bis die Ränder aneinanderliegen, alle 6 bis 8 Querfäden, und nicht fester.',
  },
  eyelet: {
    names: 'Lochmasche, Loch',
    means:
      'Das kleine Loch, wo eine Zunahme eine Nadel leer in Arbeit gelassen hat. Durch die Lochmaschen unter der Öffnung läuft die Kordel.',
  },
  cord: {
    names: 'Kordel, Schlauchkordel, Strickkordel, I-Cord, Zugband',
    means:
      'Ein schmaler Schlauch, auf wenigen Nadeln gestrickt: in der einen Richtung im Freilauf, in der anderen gestrickt. Sie zieht den Beutel zu.',
  },
  slip: {
    names: 'Freilauf, leer fahren, Leergang',
    means:
      'Der Schlitten geht über die Nadeln und strickt nicht; das Garn läuft auf der linken Seite an ihnen vorbei.',
  },
  round: {
    names: 'Runde, Reihen rundum, Umlauf',
    means:
      'Bei der Kordel: zwei Schlittengänge, einer im Freilauf, einer gestrickt; sie wird eine Reihe länger. Beim Beutel: die Reihen einmal um den Schlauch.',
  },
  tie: {
    names: 'Schleife, Bindeende',
    means: 'Das Stück Kordel, das an jedem Ende heraushängt, um eine Schleife zu binden.',
  },
  tail: {
    names: 'Fadenende, Endfaden, vernähen',
    means:
      'Das Ende, das hängen bleibt, wo ein Garn beginnt oder abgeschnitten wird. Manche sind mit Absicht lang, zum Verbinden und Nähen.',
  },
});
