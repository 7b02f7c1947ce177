/**
 * German. The trade's words as machine knitters say them: needle bed Nadelbett, carriage Schlitten, feeder Fadenführer,
 * stitch Masche, row Reihe, pass Schlittengang, swatch Maschenprobe, gain and loss Zunahme and Abnahme, cast-on Anschlag,
 * graft im Maschenstich verbinden, eyelet Lochmasche, cord Kordel. Ours: brief Vorgabe, log Protokoll, mark Marke, note
 * Notiz, rehang Umsetzen, foot switch Fußschalter, strip Bahn, mouth Öffnung, bottom Boden, leading and trailing edge
 * Zunahmerand and Abnahmerand, grafted edges A and B Kante, home side Ausgangsseite, to crawl wandern, bite Stich, to
 * hang einhängen, to park ablegen, to slip leer, to rip back auftrennen, mend Ausbesserung, slip of the hand Versehen,
 * lesson Lektion, stripe repeat Rapport, ease Mehrweite, gauge Maschendichte, tightness Dichtefaktor, the work Gestrick,
 * transfer tool Decker, row counter Zählwerk, offer Vorschlag, large letters große Schrift, to speak vorlesen, a sound log
 * in Ordnung, left arrow Pfeil links. After a colon a sentence begins small. The maker is addressed as du.
 */
import type { Catalog } from '../shared/say.ts';

/** `left` and `right` as they come in values: nach links, am linken Rand. */
const sideStem = (side: string): string => (side === 'left' ? 'link' : 'recht');
const sideWord = (side: string): string => `${sideStem(side)}s`;
const stateWords: Readonly<Record<string, string>> = {
  'dry-relaxed': 'trocken ausgeruht',
  'wet-relaxed': 'nass ausgeruht',
  'fully-relaxed': 'ganz ausgeruht',
};
const stateWord = (state: string): string => stateWords[state] ?? state;
const placeWords: Readonly<Record<string, string>> = {
  step: 'Einen Schritt',
  stripe: 'Einen Streifen',
  row: 'Eine Reihe',
  move: 'Einen Formschritt',
  stitch: 'Eine Masche',
  bar: 'Einen Quersteg',
  round: 'Eine Runde',
};
const yarnClassWords: Readonly<Record<string, string>> = {
  lace: 'Spitzengarn',
  'super fine': 'sehr fein',
  fine: 'fein',
  light: 'leicht',
  medium: 'mittel',
  bulky: 'dick',
  'super bulky': 'sehr dick',
  jumbo: 'extra dick',
};
const timesWord = (times: string): string => (times === '1' ? 'einmal' : `${times}-mal`);
/** The yarns that have names of ours, as what something is done with. */
const yarnObject = (yarn: string): string => {
  if (yarn === 'Hilfsgarn') return 'das Hilfsgarn';
  return yarn === 'Trennfaden' ? 'den Trennfaden' : yarn;
};
/** By a weight, such as `1 g` or `2,5 g`. */
const lacks = (weight: string): string => (/^1(?: |$)/.test(weight) ? 'fehlt' : 'fehlen');
/** What was typed comes in English quotes. */
const quoted = (typed: string): string => typed.replace(/^"(.*)"$/, '„$1“');
/** `mouth` and `bottom` as they come in values. */
const atEnd = (end: string): string => (end === 'mouth' ? 'an der Öffnung' : 'am Boden');

export const german: Catalog = {
  decimalMark: ',',
  nouns: {
    row: ['Reihe', 'Reihen'],
    stitch: ['Masche', 'Maschen'],
    needle: ['Nadel', 'Nadeln'],
    loop: ['Masche', 'Maschen'],
    stripe: ['Streifen', 'Streifen'],
    step: ['Schritt', 'Schritte'],
    move: ['Formschritt', 'Formschritte'],
    'waste row': ['Hilfsgarnreihe', 'Hilfsgarnreihen'],
    time: ['Mal', 'Mal'],
    bar: ['Quersteg', 'Querstege'],
    round: ['Runde', 'Runden'],
    eyelet: ['Lochmasche', 'Lochmaschen'],
    character: ['Zeichen', 'Zeichen'],
    event: ['Ereignis', 'Ereignisse'],
    pass: ['Schlittengang', 'Schlittengänge'],
    'more step': ['weiterer Schritt', 'weitere Schritte'],
    repeat: ['Rapport', 'Rapporte'],
    sitting: ['Sitzung', 'Sitzungen'],
    line: ['Zeile', 'Zeilen'],
    'shaping move': ['Formschritt', 'Formschritte'],
  },
  typed: {
    und: 'and',
    unsicher: 'unsure',
    schlitten: 'carriage',
    links: 'left',
    linke: 'left',
    linker: 'left',
    linken: 'left',
    rechts: 'right',
    rechte: 'right',
    rechter: 'right',
    rechten: 'right',
    fadenführer: 'feeder',
    fadenfuehrer: 'feeder',
    leer: 'empty',
    nichts: 'nothing',
    reihe: 'row',
    reihen: 'rows',
    zählwerk: 'counter',
    zaehlwerk: 'counter',
    reihenzähler: 'counter',
    reihenzaehler: 'counter',
    streifen: 'stripe',
    masche: 'stitch',
    maschen: 'stitches',
    hilfsgarn: 'waste',
    hilfsgarnreihe: 'waste',
    hilfsgarnreihen: 'waste',
    trennfaden: 'ravel cord',
    lose: 'loose',
    fest: 'firm',
    formschritt: 'move',
    runde: 'round',
    seit: 'since',
    gestrickt: 'knitted',
    ich: 'i',
    habe: 'have',
    sehe: 'see',
    es: 'it',
    glaube: 'think',
    jetzt: 'now',
    bei: 'at',
    bett: 'bed',
    arbeit: 'work',
    liegt: 'is',
    boden: 'floor',
    mir: 'my',
    eine: 'a',
    nadel: 'needle',
    tiefer: 'down',
    runter: 'down',
    quersteg: 'bar',
    loch: 'hole',
    diesem: 'this',
    diesen: 'this',
    zeigt: 'shows',
    steht: 'stands',
    nadeln: 'needles',
    keine: 'no',
    abgefallen: 'fell',
    gefallen: 'fell',
    alles: 'everything',
    schritt: 'step',
    marke: 'mark',
    anschlag: 'cast-on',
    schlussreihe: 'closing-row',
    verbinden: 'graft',
    naht: 'seam',
    kordel: 'cord',
    kürzer: 'shorter',
    kuerzer: 'shorter',
    länger: 'longer',
    laenger: 'longer',
    gewogen: 'weighed',
    farbe: 'colour',
    zu: 'to',
    am: 'on',
    auf: 'on',
    an: 'on',
    im: 'in',
    ist: 'is',
    sind: 'are',
    mit: 'with',
    der: 'the',
    die: 'the',
    das: 'the',
    den: 'the',
    dem: 'the',
    rand: 'edge',
    ränder: 'edges',
    letzte: 'last',
    seite: 'side',
    von: 'from',
    bis: 'to',
  },
  sentences: {
    '{0} is not a whole number from {1} to {2}.': '{0} ist keine ganze Zahl von {1} bis {2}.',
    'To go there type choose {0}, or go step {1}.': 'Um dorthin zu gehen, tippe choose {0} oder go step {1}.',
    'rows of that colour': 'Reihen dieser Farbe',
    'counter and the count': 'counter und die Zahl',
    'the count in this stripe': 'die Zahl in diesem Streifen',
    'One thing may be read wrong. It would fit:': 'Eines kann falsch gelesen sein. Es würde passen:',
    '  without {0}: step {1} comes next': '  ohne {0}: als Nächstes Schritt {1}',
    'Type choose to be guided back. Enter confirms each step, Left takes it back.':
      'Tippe choose, um zurückgeführt zu werden. Enter bestätigt jeden Schritt, Pfeil links nimmt ihn zurück.',
    'How many rows of the newest colour hang there, the one on the needles too?':
      'Wie viele Reihen der neuesten Farbe hängen da, die auf den Nadeln mitgezählt?',
    'Turn the row counter back to {0}.': 'Stell das Zählwerk zurück auf {0}.',
    'back [how many]': 'back [wie viele]',
    // General words
    or: 'oder',

    // Steps
    'cast-on': 'Anschlag',
    stripes: 'Streifen',
    'closing row': 'Schlussreihe',
    graft: 'Verbinden',
    seam: 'Naht',
    cord: 'Kordel',
    'Thread {0} into the feeder.': (yarn) => `Fädle ${yarnObject(yarn)} in den Fadenführer ein.`,
    'Knit one row to the {0}.': (to) => `Strick eine Reihe nach ${sideWord(to)}.`,
    'too soon, look first': 'zu früh, schau erst hin',
    'no pass is due': 'jetzt ist kein Schlittengang dran',
    'the bag is finished': 'der Beutel ist fertig',
    needles: 'Nadeln',
    'ravel cord': 'Trennfaden',
    'Back, {0} of {1}: {2}': 'Zurück, {0} von {1}: {2}',
    'Mend, {0} of {1}: {2}': 'Ausbessern, {0} von {1}: {2}',
    now: 'jetzt',
    'in {0}': 'in {0}',
    '{0} out to {1}': (side, outer) => `${sideWord(side)} raus auf ${outer}`,
    '{0} in, {1} out of work': (side, emptied) => `${sideWord(side)} ${emptied} in Ruhe`,
    '{0}, move {1} of {2}: {3}, {4}': '{0}, Formschritt {1}/{2}: {3}, {4}',
    'Needle hooks and latches are sharp: keep fingers clear while the carriage moves.':
      'Nadelhaken und Zungen sind scharf: Finger weg, solange der Schlitten läuft.',
    'Weights fall: hang them with a hand under them, feet clear.':
      'Gewichte fallen: halte beim Einhängen eine Hand darunter und die Füße weg.',
    'Take the weights off before any stitch is released; feet clear.':
      'Nimm die Gewichte ab, bevor eine Masche frei wird; Füße weg.',
    'If you steam the bag: steam scalds, and it flattens man-made fibre.':
      'Falls du den Beutel dämpfst: Dampf verbrüht und drückt Kunstfasern platt.',
    'Look twice: hands cannot take this back.': 'Schau zweimal hin: das lässt sich nicht rückgängig machen.',
    'the bag is finished.': 'der Beutel ist fertig.',
    'step {0} of {1} comes next, {2}, {3} of {4} knitted.':
      'als Nächstes Schritt {0} von {1}, {2}, {3} von {4} gestrickt.',
    '{0} again.': 'Weiter mit {0}.',
    '{0}: {1} stitches, {2} rows round, {3} wide and {4} deep.':
      '{0}: {1} Maschen, {2} Reihen rundum, {3} breit und {4} tief.',
    'Left and right are yours, facing the bed. Type plan for the whole plan, help for all that can be typed.':
      'Links und rechts gelten für dich, mit Blick auf das Nadelbett. Tippe plan für den ganzen Plan und help für alles, was du tippen kannst.',
    'The bag is finished.': 'Der Beutel ist fertig.',
    'Step {0} of {1}, {2}: {3}': 'Schritt {0} von {1}, {2}: {3}',
    'Caution: {0}': 'Vorsicht: {0}',
    'You are here: {0}': 'Du bist hier: {0}',
    'The bed is empty.': 'Das Nadelbett ist leer.',
    'Carriage on the {0}.': (at) => `Schlitten ${sideWord(at)}.`,
    'No loops on the bed. {0}': 'Keine Maschen auf dem Nadelbett. {0}',
    '{0} of {1} shaping moves done.': '{0} von {1} Formschritten gemacht.',
    'Edges {0} and {1}, {2} with loops. {3} {4}': 'Ränder {0} und {1}, {2} mit Maschen. {3} {4}',
    '{0} at the {1} end': (yarn, end) => `${yarn} am ${sideStem(end)}en Ende`,
    'Nothing in the feeder.': 'Der Fadenführer ist leer.',
    'In the feeder: {0}.': 'Im Fadenführer: {0}.',
    'Parked: {0}.': 'Abgelegt: {0}.',
    'No notes yet. Type note and a remark.': 'Noch keine Notizen. Tippe note und eine Bemerkung.',
    'After step {0}: {1}': 'Nach Schritt {0}: {1}',
    '{0} stands alone, so nothing is done: type it without "{1}".':
      '{0} steht allein, deshalb geschieht nichts: tipp es ohne "{1}".',
    'No marks yet. Type mark and a name.': 'Noch keine Marken. Tippe mark und einen Namen.',
    '{0}: step {1} comes next there': '{0}: dort kommt als Nächstes Schritt {1}',

    // Faults
    // Warnings
    '{0} is left over: too little for a stripe, or no stripe is left for it.':
      '{0} bleibt übrig: zu wenig für einen Streifen, oder es ist kein Streifen mehr frei.',
    '{0} are left over: too little for a stripe, or no stripe is left for it.':
      '{0} bleiben übrig: zu wenig für einen Streifen, oder es ist kein Streifen mehr frei.',
    '{0} yarns are in use at once, and a mast has four arms at the most: cut a yarn that has to wait long, and tie it on again.':
      '{0} Garne sind zugleich in Arbeit, und ein Fadenspanner hat höchstens vier Arme: schneide ab, was lange wartet, und knüpf es später wieder an.',
    'Whole stripe repeats make it {0} wide where {1} was asked: a shorter repeat comes nearer.':
      'Mit ganzen Streifenrapporten wird er {0} breit, gewünscht waren {1}: ein kürzerer Rapport kommt näher heran.',
    'Whole stitches make it {0} deep where {1} was asked.':
      'Mit ganzen Maschen wird er {0} tief, gewünscht waren {1}.',
    'There are too few eyelets for a cord with both ends outside: choose more rows.':
      'Es gibt zu wenige Lochmaschen für eine Kordel mit beiden Enden außen: nimm mehr Reihen.',
    'The bed is too short to crawl all the way: hang the work again {0}.':
      'Das Nadelbett ist zu kurz, um den ganzen Weg zu wandern: setz das Gestrick um, {0}.',
    'after row {0}': 'nach Reihe {0}',
    'after rows {0}': 'nach den Reihen {0}',
    '{0}, the first time after row {1}': '{0}, zum ersten Mal nach Reihe {1}',
    'A stitch {0} times as wide as high is not usual for plain knitting (about 1.3): measure the swatch again.':
      'Eine Masche, die {0}-mal so breit wie hoch ist, ist für glatt rechts unüblich (etwa 1,3): miss die Maschenprobe noch einmal.',
    'The measured loop of {0} is far from the {1} that the gauge suggests: measure it again, all yarn figures hang on it.':
      'Die gemessene Maschenlänge von {0} liegt weit von den {1}, die zur Maschenprobe passen: miss noch einmal, alle Garnmengen hängen davon ab.',
    'The yarn is finer than a pitch of {0} mm usually knits ({1}; rule of thumb): check the swatch, or use a finer bed.':
      'Das Garn ist feiner, als es bei {0} mm Nadelabstand üblich ist ({1}; Faustregel): prüf die Maschenprobe, oder nimm ein feineres Nadelbett.',
    'The yarn is thicker than a pitch of {0} mm usually knits ({1}; rule of thumb): check the swatch, or use a coarser bed.':
      'Das Garn ist dicker, als es bei {0} mm Nadelabstand üblich ist ({1}; Faustregel): prüf die Maschenprobe, oder nimm ein gröberes Nadelbett.',
    'Stripes {0} and {1} meet in the same colour, {2}, and read as one wide stripe.':
      'Die Streifen {0} und {1} treffen sich in derselben Farbe, {2}, und wirken wie ein breiter Streifen.',
    '{0} ({1})': (name, number) => `${yarnClassWords[name] ?? name} (${number})`,
    // The bed
    'Needle {0} still holds a loop: move the loop before you push the needle out of work.':
      'Auf Nadel {0} hängt noch eine Masche: häng sie um, bevor du die Nadel in Ruhestellung schiebst.',
    'Needle {0} has no loop to lift: look again where the edge of the work is.':
      'Auf Nadel {0} hängt keine Masche zum Umhängen: schau noch einmal, wo der Rand ist.',
    'Needle {0} rests but holds a loop: bring it into work before the pass.':
      'Nadel {0} ist in Ruhestellung, trägt aber eine Masche: bring sie vor dem Schlittengang in Arbeitsstellung.',
    'The feeder is empty, so a pass to the {0} would drop every stitch: thread a yarn first.': (to) =>
      `Der Fadenführer ist leer, ein Schlittengang nach ${sideWord(to)} würde alle Maschen abwerfen: fädle erst ein Garn ein.`,
    'The feeder holds {0}: take {1} out before you thread {2}.':
      'Im Fadenführer ist {0}: nimm {1} heraus, bevor du {2} einfädelst.',
    'The feeder is empty, so {0} cannot be parked from it: thread {1} first.':
      'Der Fadenführer ist leer, {0} lässt sich nicht daraus ablegen: fädle erst {1} ein.',
    'The feeder holds {0}, not {1}: park {2} instead.':
      'Im Fadenführer ist {0}, nicht {1}: leg stattdessen {2} ab.',
    'There is no {0} to cut, in the feeder or parked: thread {1} first.':
      '{0} ist weder im Fadenführer noch abgelegt: fädle {1} ein, bevor du abschneidest.',
    'The carriage is already on the {0}: make this pass to the {1}.': (at, to) =>
      `Der Schlitten steht schon ${sideWord(at)}: fahr diesen Schlittengang nach ${sideWord(to)}.`,
    'No needle is working: bring the needles you want to knit on into work first.':
      'Keine Nadel ist in Arbeitsstellung: bring erst die Nadeln, auf denen du stricken willst, in Arbeitsstellung.',
    'A transfer from {0} cannot go to {1}: name as many to set down on as to lift from.':
      'Umhängen geht nicht: {0} abgehoben, {1} als Ziel. Nenn gleich viele Nadeln.',
    'The bed holds no loops, so there is nothing to take off: go on to the next step.':
      'Auf dem Nadelbett hängen keine Maschen, es gibt nichts abzunehmen: geh zum nächsten Schritt.',
    'The bed still holds {0}: take the work off first.':
      'Auf dem Nadelbett hängt noch etwas ({0}): nimm erst das Gestrick ab.',
    '{0} came off but {1} would take them: choose as many needles as loops.':
      'Abgenommen: {0}, vorgesehen: {1}. Nimm so viele Nadeln wie Maschen.',
    // The plan
    'bag.stitches is {0}: two edges that move need at least {1}.':
      'bag.stitches ist {0}: zwei wandernde Ränder brauchen mindestens {1}.',
    '{0} is {1} g too little for the cord alone: name a longer yarn in cord.yarn, or shorten cord.tieCm.': (
      yarn,
      grams,
    ) =>
      `Von ${yarn} ${lacks(grams)} schon für die Kordel allein ${grams} g: nenn in cord.yarn ein längeres Garn, oder verkürz cord.tieCm.`,
    'None of {0} is enough for the last stripe, which also grafts and sews: add a longer leftover.':
      'Keines reicht für den letzten Streifen, der auch verbindet und näht ({0}): nimm einen längeren Rest dazu.',
    'No yarn of the brief has been weighed: give its grams, or leave out --from-yarn.':
      'Kein Garn der Vorgabe ist gewogen: gib grams an, oder lass --from-yarn weg.',
    '{0} is {1} g short even for the smallest bag of this shape, {2}: weigh it again, or take another yarn.':
      (yarn, grams, smallest) =>
        `Von ${yarn} ${lacks(grams)} ${grams} g selbst für den kleinsten Beutel dieser Form, ${smallest}: wieg noch einmal, oder nimm ein anderes Garn.`,
    'take {0}': 'nimm {0}',
    'bag.rows is {0}, too few for a single shaping move: {1}.':
      'bag.rows ist {0}, zu wenig für einen einzigen Formschritt: {1}.',
    'bag.rows is {0}, but whole stripe repeats and shaping moves come out every {1}: {2}.':
      'bag.rows ist {0}, aber ganze Streifenrapporte und Formschritte gehen nur alle {1} auf: {2}.',
    'The bag is {0} deep, but the bed has {1} within its margins':
      'Der Beutel ist {0} tief, aber zwischen den freien Rändern hat das Nadelbett {1}',
    '{0}: the nearest that can crawl is {1}, {2}.':
      '{0}: am nächsten kommt, was noch wandern kann, mit {1}, {2}.',
    '{0}, too few for any bag: take a longer bed, or narrower margins.':
      '{0}, zu wenige für jeden Beutel: nimm ein längeres Nadelbett oder schmalere Ränder.',
    '{0} wide and {1} deep': '{0} breit und {1} tief',
    '{0}; no yarn can knit more than every other stripe':
      '{0}; kein Garn kann mehr als jeden zweiten Streifen stricken',
    'the largest they make is {0}, with bag.stitches {1} and bag.rows {2}; or add a yarn':
      'der größte daraus ist {0}, mit bag.stitches {1} und bag.rows {2}; oder nimm ein Garn dazu',
    'add a yarn, or make the bag smaller': 'nimm ein Garn dazu, oder mach den Beutel kleiner',
    'The bag has {0} stripes of {1}, and the scraps knit {2} of them ({3}): {4}.':
      'Der Beutel hat {0} Streifen zu je {1}, und die Reste reichen für {2} davon ({3}): {4}.',
    // The session
    'The bag is finished: there is no step left to confirm.':
      'Der Beutel ist fertig: es ist kein Schritt mehr zu bestätigen.',
    'Only the last step is left, so {0} cannot be confirmed at once: confirm 1.':
      'Nur der letzte Schritt ist übrig, {0} auf einmal gehen nicht: bestätige 1.',
    '{0} steps cannot be confirmed: {1} are left, so give a whole number from 1 to {2}.':
      '{0} Schritte lassen sich nicht bestätigen: {1} sind übrig, gib also eine ganze Zahl von 1 bis {2} an.',
    'There is nothing to take back: this is where the work began.':
      'Es gibt nichts zurückzunehmen: hier hat die Arbeit begonnen.',
    'There is nothing to do again: nothing was taken back since the last step.':
      'Es gibt nichts zu wiederholen: seit dem letzten Schritt wurde nichts zurückgenommen.',
    'There is no step {0}: this bag has steps 1 to {1}.':
      'Einen Schritt {0} gibt es nicht: dieser Beutel hat die Schritte 1 bis {1}.',
    'You are there already: no step confirmed so far.':
      'Du bist schon dort: bisher ist kein Schritt bestätigt.',
    'You are there already: {0} confirmed so far.': 'Du bist schon dort: bisher {0} bestätigt.',
    'The note is empty: type what you want to remember after the word note.':
      'Die Notiz ist leer: tippe nach dem Wort note, was du dir merken willst.',
    'The mark has no name: type a name for this place after the word mark.':
      'Die Marke hat keinen Namen: tippe nach dem Wort mark einen Namen für diese Stelle.',
    'There is no needle {0}: the bed runs from {1} to L1 and from R1 to {2}.':
      'Eine Nadel {0} gibt es nicht: das Nadelbett reicht von {1} bis L1 und von R1 bis {2}.',
    // The brief
    'The brief is empty: write down at least a name, bed, swatch, bag, yarns and stripes.':
      'Die Vorgabe ist leer: schreib mindestens name, bed, swatch, bag, yarns und stripes hinein.',
    'The file has {0} characters, and a brief at most {1}: look whether it is the right file.':
      'Die Datei hat {0} Zeichen, eine Vorgabe höchstens {1}: schau, ob es die richtige Datei ist.',
    'The brief cannot be read at line {0}, column {1}: {2}':
      'Die Vorgabe ist in Zeile {0}, Spalte {1} nicht zu lesen: {2}',
    '{0} is {1}: give a whole number.': '{0} ist {1}: gib eine ganze Zahl an.',
    '{0} is {1}: give an even number, so that the yarn ends on the home side.':
      '{0} ist {1}: gib eine gerade Zahl an, damit das Garn auf der Ausgangsseite endet.',
    '{0} is {1}: give at least {2}.': '{0} ist {1}: gib mindestens {2} an.',
    '{0} is {1}: give at most {2}.': '{0} ist {1}: gib höchstens {2} an.',
    '{0} is too long: {1} at most.': '{0} ist zu lang: höchstens {1}.',
    '{0} is {1}: choose {2}.': '{0} ist {1}: wähle {2}.',
    '{0} is {1}: write # and six digits of 0-9 and a-f, such as "#6b2d5c".':
      '{0} ist {1}: schreib # und sechs Zeichen aus 0-9 und a-f, etwa "#6b2d5c".',
    '{0} is {1}: write a name on one line, with no spaces at its ends.':
      '{0} ist {1}: schreib einen Namen auf eine Zeile, ohne Leerzeichen an den Enden.',
    'bag is empty: give {0}.': 'bag ist leer: ergänze {0}.',
    'bag has {0}, which do not go together: keep {1}.': 'bag hat {0}, was nicht zusammenpasst: behalte {1}.',
    'yarns is empty: give {0}.': 'yarns ist leer: ergänze {0}.',
    'No yarn can be called {0}, a name that is kept for other use: give it another name.':
      'Kein Garn kann {0} heißen, der Name ist schon vergeben: gib ihm einen anderen.',
    'waste.yarn is {0}, a yarn of the bag: give the waste yarn a name of its own.':
      'waste.yarn ist {0}, ein Garn des Beutels: gib dem Hilfsgarn einen eigenen Namen.',
    'stripes and scraps are both given: keep stripes for a repeat, or scraps for leftovers.':
      'stripes und scraps sind beide da: behalte stripes für einen Rapport oder scraps für Reste.',
    'The yarn {0} has no grams: weigh each scrap, so that no stripe runs short.':
      'Das Garn {0} hat keine grams: wieg jeden Rest, damit kein Streifen zu kurz kommt.',
    '{0} and {1} are both given: keep one of them.': '{0} und {1} sind beide da: behalte eines davon.',
    'swatch.loopLengthMm and swatch.rowYarnCm are both given: keep one of them.':
      'swatch.loopLengthMm und swatch.rowYarnCm sind beide da: behalte eines davon.',
    'A brief has no {0}: did you mean {1}?': 'In einer Vorgabe gibt es kein {0}: meinst du {1}?',
    'A brief has no {0}: take it out, or use {1}.':
      'In einer Vorgabe gibt es kein {0}: nimm es heraus, oder nimm {1}.',
    '{0} is missing: add {1}.': '{0} fehlt: ergänze {1}.',
    it: 'es',
    'A yarn has no name: write one before the colon.':
      'Ein Garn hat keinen Namen: schreib einen vor den Doppelpunkt.',
    '{0} is empty: write {1}.': '{0} ist leer: ergänze {1}.',
    'a name': 'einen Namen',
    'a number': 'eine Zahl',
    'text in double quotes': 'Text in doppelten Anführungszeichen',
    'a group in braces { }': 'eine Gruppe in geschweiften Klammern { }',
    'a list in brackets [ ]': 'eine Liste in eckigen Klammern [ ]',
    'The brief': 'Die Vorgabe',
    'the text {0}': 'der Text {0}',
    '{0} is {1}: take the quotes off, it must be a number.':
      '{0} ist {1}: nimm die Anführungszeichen weg, es muss eine Zahl sein.',
    '{0} is {1}: it must be {2}.': '{0} ist {1}: es muss {2} sein.',
    'did you mean {0}?': 'meinst du {0}?',
    'choose {0}.': 'wähle {0}.',
    '{0} is {1}, which is none of the yarns: {2}': '{0} ist {1}, das ist keines der Garne: {2}',
    another: 'ein anderes',
    'The swatch makes a stitch {0} mm wide, outside 0.2 to 60 mm: check its width and its stitches.':
      'Die Maschenprobe ergibt eine Masche von {0} mm Breite, nicht 0,2 bis 60 mm: prüf Breite und Maschenzahl.',
    'The swatch makes a row {0} mm high, outside 0.2 to 60 mm: check its height and its rows.':
      'Die Maschenprobe ergibt eine Reihe von {0} mm Höhe, nicht 0,2 bis 60 mm: prüf Höhe und Reihenzahl.',
    'a number too large to hold': 'eine zu große Zahl',
    'a list': 'eine Liste',
    'a group': 'eine Gruppe',
    'what the bag is called': 'den Namen des Beutels',
    'needles and pitchMm of your bed': 'needles und pitchMm deines Nadelbetts',
    'how many needles the bed has': 'die Zahl der Nadeln des Nadelbetts',
    'the distance from needle to needle in mm': 'den Abstand von Nadel zu Nadel in mm',
    'its stitches, rows, widthCm and heightCm': 'stitches, rows, widthCm und heightCm',
    'how many stitches': 'die Zahl der Maschen',
    'how many rows': 'die Zahl der Reihen',
    'the width in cm': 'die Breite in cm',
    'the height in cm': 'die Höhe in cm',
    'widthCm and depthCm, or contents, or stitches and rows':
      'widthCm und depthCm, oder contents, oder stitches und rows',
    'the depth in cm': 'die Tiefe in cm',
    'the girth of what goes in, in cm': 'den Umfang des Inhalts in cm',
    'each yarn by name, with its colour and metresPer100g':
      'jedes Garn mit seinem Namen, mit colour und metresPer100g',
    'a colour such as "#6b2d5c"': 'eine Farbe wie "#6b2d5c"',
    'how many metres weigh 100 g': 'die Meter auf 100 g',
    'one repeat, each stripe with its yarn and rows': 'einen Rapport, jeden Streifen mit yarn und rows',
    'the name of one of the yarns': 'den Namen eines der Garne',
    'the file ends too soon; close every { with } and every [ with ].':
      'die Datei endet zu früh; schließ jede { mit } und jede [ mit ].',
    'take the comment out, JSON has none.': 'nimm den Kommentar heraus, in JSON gibt es keine.',
    'use straight double quotes instead of {0}.': 'nimm gerade doppelte Anführungszeichen statt {0}.',
    'close this text with a double quote on the same line.':
      'schließ diesen Text in derselben Zeile mit einem doppelten Anführungszeichen.',
    'write \\\\ for a backslash and \\t for a tab inside a text.':
      'schreib in einem Text \\\\ für einen Rückwärtsstrich und \\t für einen Tabulator.',
    'write numbers in plain digits, with a point for decimals and no unit, such as 0.5.':
      'schreib Zahlen in Ziffern, mit Dezimalpunkt und ohne Einheit, etwa 0.5.',
    'write decimals with a point, such as 19.2.': 'schreib Dezimalzahlen hier mit Punkt, etwa 19.2.',
    'take out the comma before {0}.': 'nimm das Komma vor {0} heraus.',
    'put a comma before {0}.': 'setz ein Komma vor {0}.',
    'put a colon between the key and its value.': 'setz einen Doppelpunkt zwischen Schlüssel und Wert.',
    'put the key {0} in double quotes.': 'setz den Schlüssel {0} in doppelte Anführungszeichen.',
    'the key {0} is here a second time; keep one, or rename it.':
      'der Schlüssel {0} steht hier zum zweiten Mal; behalte einen, oder benenn ihn um.',
    'put {0} in double quotes, or write a number.':
      'setz {0} in doppelte Anführungszeichen, oder schreib eine Zahl.',
    'write a value before {0}.': 'schreib einen Wert vor {0}.',
    'this {0} does not match; close { with } and [ with ], the last opened first.':
      'dieses {0} passt nicht; schließ { mit } und [ mit ], das zuletzt geöffnete zuerst.',
    'the brief is closed before this; take out {0} and what follows.':
      'die Vorgabe ist davor schon geschlossen; nimm {0} und alles danach heraus.',
    'take out {0}, or write what is missing before it.': 'nimm {0} heraus, oder schreib, was davor fehlt.',
    'this comma': 'dieses Komma',
    'this colon': 'diesen Doppelpunkt',
    // What is typed
    'There is no command {0}. Did you mean {1}?': 'Einen Befehl {0} gibt es nicht. Meinst du {1}?',
    'There is no command {0}. Type help to see them all.':
      'Einen Befehl {0} gibt es nicht. Tippe help, um alle zu sehen.',
    '{0} could be {1}: type one more letter.': '{0} kann {1} sein: tippe einen Buchstaben mehr.',
    '{0} is not a whole number above 0. For example: {1}.':
      '{0} ist keine ganze Zahl über 0. Zum Beispiel: {1}.',
    'Something is missing: choose {0}.': 'Es fehlt noch etwas: wähle {0}.',
    '{0} is not one of {1}.': '{0} geht hier nicht: wähle {1}.',
    'Something is missing. For example: {0}.': 'Es fehlt noch etwas. Zum Beispiel: {0}.',
    '{0} is not a place to go to. For example: {1}; type help {2} for more.':
      '{0} ist keine Stelle, zu der es geht. Zum Beispiel: {1}; mehr mit help {2}.',
    'There is no mark {0}. Marks: {1}.': 'Eine Marke {0} gibt es nicht. Marken: {1}.',
    'No marks have been made yet. Type mark and a name.':
      'Es gibt noch keine Marken. Tippe mark und einen Namen.',
    'There is no {0} {1}: this bag has {2}.': (what, number, most) =>
      `${placeWords[what] ?? what} ${number} gibt es nicht: dieser Beutel hat ${most}.`,
    'Say carriage {0}, or {1} and the needle at that edge: {2} {3}.':
      'Schreib carriage {0}, oder {1} und die Nadel an diesem Rand: {2} {3}.',
    'Is {0} the left edge or the right? Type left {1}, or right {2}, or give both edges.':
      'Ist {0} der linke Rand oder der rechte? Tippe left {1} oder right {2}, oder nenn beide Ränder.',
    '{0} are more than two edges: give the outermost needles that hold loops.':
      '{0} sind mehr als zwei Ränder: nenn die äußersten Nadeln mit Maschen.',
    '{0} of what? For example: row {1}, stripes {2}, {3} stitches.':
      '{0} wovon? Zum Beispiel: row {1}, stripes {2}, {3} stitches.',
    '{0} is not understood here. For example: {1}; type help replan for more.':
      '{0} ist hier nicht zu verstehen. Zum Beispiel: {1}; mehr mit help replan.',
    'Nothing was said of this place yet: type find and what you see, without the word and.':
      'Zu dieser Stelle ist noch nichts gesagt: tippe find und was du siehst, ohne das Wort and.',
    'Nothing is on offer here: type find, rip or replan first.':
      'Hier gibt es keinen Vorschlag: tippe erst find, rip oder replan.',
    'There is one offer: type choose.': 'Es gibt einen Vorschlag: tippe choose.',
    'Which one? Type choose and a number from 1 to {0}.':
      'Welcher? Tippe choose und eine Zahl von 1 bis {0}.',
    // Files and logs
    'the disk is full': 'die Platte ist voll',
    'the disk can only be read': 'die Platte lässt sich nur lesen',
    'there is no permission': 'die Berechtigung fehlt',
    'the file or its folder is gone': 'die Datei oder ihr Ordner ist weg',
    'another Slantwise has the log open': 'ein anderes Slantwise hat das Protokoll offen',
    'the file was changed by something else': 'etwas anderes hat die Datei geändert',
    'the disk does not answer': 'die Platte antwortet nicht',
    'the disk reports an error': 'die Platte meldet einen Fehler',
    '{0} does not exist. Check the name.': '{0} gibt es nicht. Prüf den Namen.',
    'The folder of {0} does not exist. Make it, or choose another.':
      'Den Ordner von {0} gibt es nicht. Leg ihn an, oder wähle einen anderen.',
    '{0} is a folder. Name a file in it.': '{0} ist ein Ordner. Nenn eine Datei darin.',
    '{0} exists already and is left as it is. Choose another name.':
      '{0} gibt es schon und bleibt, wie es ist. Wähle einen anderen Namen.',
    '{0} is larger than {1} KiB, which no brief and no log is. Check the name.':
      '{0} ist größer als {1} KiB, so groß ist weder eine Vorgabe noch ein Protokoll. Prüf den Namen.',
    '{0} is not text in UTF-8. Save it again as UTF-8.':
      '{0} ist kein Text in UTF-8. Speichere es als UTF-8.',
    '{0} is open in another Slantwise (process {1} on {2}): leave that one, or only look. If there is none, copy the log and go on in the copy: slantwise --log COPY':
      '{0} ist in einem anderen Slantwise offen (Prozess {1} auf {2}): beende das andere, oder schau nur zu. Gibt es keines, kopier das Protokoll und mach in der Kopie weiter: slantwise --log COPY',
    '{0} is open in another Slantwise (process {1}): leave that one, or only look. If there is none, copy the log and go on in the copy: slantwise --log COPY':
      '{0} ist in einem anderen Slantwise offen (Prozess {1}): beende das andere, oder schau nur zu. Gibt es keines, kopier das Protokoll und mach in der Kopie weiter: slantwise --log COPY',
    'Not saved: {0}. The work goes on in memory and {1} to be written; saving is tried every few seconds.':
      'Nicht gespeichert: {0}. Die Arbeit geht im Speicher weiter, {1} noch; alle paar Sekunden wird es wieder versucht.',
    '1 line waits': '1 Zeile wartet',
    '{0} lines wait': '{0} Zeilen warten',
    'Type save and a file elsewhere, such as save ../bag.jsonl, or leave again without it.':
      'Tippe save und eine Datei anderswo, etwa save ../bag.jsonl, oder beende noch einmal, ohne zu speichern.',
    'Left without saving. {0}': 'Ohne Speichern beendet. {0}',
    'The log is not on disk: {0}.': 'Das Protokoll ist nicht auf der Platte: {0}.',
    '1 line of the log is not on disk: {0}.': '1 Zeile des Protokolls ist nicht auf der Platte: {0}.',
    '{0} lines of the log are not on disk: {1}.': '{0} Zeilen des Protokolls sind nicht auf der Platte: {1}.',
    'The whole log is in {0}, and the work goes on there. Next time: slantwise --log {1}':
      'Das ganze Protokoll ist in {0}, und dort geht es weiter. Nächstes Mal: slantwise --log {1}',
    'Needle {0} is out of work: bring it into work before a loop goes on it.':
      'Nadel {0} ist außer Arbeit: bring sie in Arbeit, bevor eine Masche darauf kommt.',
    'The feeder holds {0}, so the carriage would knit: take {1} out before the work is dropped.':
      'Im Fadenführer ist {0}, also würde der Schlitten stricken: nimm {1} heraus, bevor das Gestrick abgeworfen wird.',
    'This bed has no row counter: the rows are counted on the screen.':
      'Dieses Bett hat keinen Reihenzähler: die Reihen zählt der Bildschirm.',
    'Row counter to {0}.': 'Reihenzähler auf {0}.',
    'Hold the work and pass the carriage once to the {0} with nothing in the feeder: the work drops.': (to) =>
      `Halt das Gestrick und fahr den Schlitten mit leerem Fadenführer einmal nach ${sideWord(to)}: es fällt ab.`,
    'Pull out {0} rows of {1} one by one, catching every loop: in the end {2}. Bring the carriage back to the {3} without knitting.':
      (rows, yarn, caught, back) =>
        `Zieh ${rows} Reihen ${yarn} einzeln heraus und fang jede Masche: am Ende ${caught}. Bring den Schlitten zurück nach ${sideWord(back)}, ohne zu stricken.`,
    'Draw the thread out from under the last {0} bars on each side.':
      'Zieh den Faden auf jeder Seite unter den letzten {0} Querfäden heraus.',
    'measured WIDTH DEPTH': 'measured BREITE TIEFE',
    'keep the size of the finished bag, dry and flat, beside the plan':
      'die Größe des fertigen Beutels festhalten, trocken und flach, neben dem Plan',
    "keep the bag's own size": 'Größe des Beutels festhalten',
    '{0} is not a width and a depth. For example: {1}.':
      'Nicht verstanden: {0}. Nenn eine Breite und eine Tiefe. Zum Beispiel: {1}.',
    'SIZE, MEASURED': 'GRÖSSE, GEMESSEN',
    'weigh YARN GRAMS': 'weigh GARN GRAMM',
    'keep what is left of a yarn by the scales; at the end it tells what the bag took':
      'festhalten, was von einem Garn noch da ist; am Ende zeigt das, was der Beutel gebraucht hat',
    'what is left of a yarn': 'was vom Garn übrig ist',
    '{0} is not a yarn and a weight of 0 or more. For example: {1}.':
      'Nicht verstanden: {0}. Nenn ein Garn und sein Gewicht ab 0. Zum Beispiel: {1}.',
    '{0} of {1} cannot be weighed: give 0 or more.': '{0} {1} lassen sich nicht wiegen: gib 0 oder mehr an.',
    'There were {0} of {1} before the work, so {2} cannot be left: weigh it once more.':
      'Vor der Arbeit waren es {0} {1}, also können keine {2} übrig sein: wieg noch einmal.',
    'Weighed {0}: {1}.': '{0} gewogen: {1}.',
    'planned {0}': 'geplant {0}',
    'weighed after step {0}': 'gewogen nach Schritt {0}',
    '{0} left': '{0} übrig',
    '{0} used, {1} of {2} left': '{0} gebraucht, {1} von {2} übrig',
    'YARN, WEIGHED': 'GARN, GEWOGEN',
    'Last time {0} of {1} were left: this bag is planned with that.':
      'Letztes Mal blieben {0} {1} übrig: damit ist dieser Beutel geplant.',
    'Last time {0} of {1} were used and {2} left: this bag is planned with what is left.':
      'Letztes Mal wurden {0} {1} gebraucht, und {2} blieben übrig: mit dem Rest ist dieser Beutel geplant.',
    'The disk may hold this terminal until it answers. The window can be closed; nothing more is lost by it.':
      'Die Platte hält dieses Terminal vielleicht fest, bis sie antwortet. Das Fenster darf geschlossen werden; dadurch geht nichts weiter verloren.',
    'The disk is slow: it took {0} ms to save a press. Each press waits for it, but not longer than a second.':
      'Die Platte ist langsam: ein Tastendruck brauchte {0} ms zum Speichern. Jeder wartet darauf, aber höchstens eine Sekunde.',
    'holds bytes that are not text': 'enthält Bytes, die kein Text sind',
    'is not JSON': 'ist kein JSON',
    'has lost its checksum': 'hat ihre Prüfsumme verloren',
    'does not fit its checksum: it was changed, or a line before it is missing':
      'passt nicht zu ihrer Prüfsumme: sie wurde geändert, oder davor fehlt eine Zeile',
    'does not have the fields it should': 'hat nicht die Felder, die sie haben soll',
    'calls the bag finished where it is not': 'nennt den Beutel fertig, obwohl er es nicht ist',
    'Line {0} {1}.': 'Zeile {0} {1}.',
    'This file is not a Slantwise log. Name a file that Slantwise wrote.':
      'Diese Datei ist kein Protokoll von Slantwise. Nenn eine, die Slantwise geschrieben hat.',
    'This log was cut off before anything was recorded in it. Start the bag from its brief, in a new log.':
      'Dieses Protokoll brach ab, bevor etwas darin stand. Beginn den Beutel aus seiner Vorgabe, in einem neuen Protokoll.',
    'This log is written in format {0} and this program reads up to {1}: open it with a newer Slantwise.':
      'Dieses Protokoll hat Format {0}, dieses Programm liest bis {1}: öffne es mit einem neueren Slantwise.',
    'Line {0} says {1} were done where {2} come out. {3}':
      'Zeile {0} führt {1} als gemacht, es ergeben sich aber {2}. {3}',
    'Line {0} records something that cannot be done there ({1}). {2}':
      'Zeile {0} hält etwas fest, das dort nicht geht ({1}). {2}',
    'Line {0} records "{1}", which this program does not know: open the log with a newer Slantwise.':
      'Zeile {0} enthält „{1}“, was dieses Programm nicht kennt: öffne das Protokoll mit einem neueren Slantwise.',
    'This program cannot plan the brief in this log ({0}): open it with Slantwise {1}, which began it.':
      'Dieses Programm kann die Vorgabe in diesem Protokoll nicht planen ({0}): öffne es mit Slantwise {1}, das es begonnen hat.',
    'This program plans the bag otherwise ({0}: {1}, in the log {2}): open it with Slantwise {3}, which began it.':
      'Dieses Programm plant den Beutel anders ({0}: {1}, im Protokoll {2}): öffne es mit Slantwise {3}, das es begonnen hat.',
    'Nothing after it can be used.': 'Nichts danach ist zu gebrauchen.',
    'Line 1 is sound.': 'Zeile 1 ist in Ordnung.',
    'Lines 1 to {0} are sound.': 'Die Zeilen 1 bis {0} sind in Ordnung.',
    'Later lines say that {0} had been done.': 'Spätere Zeilen führen {0} als gemacht.',
    'Line {0}, the last, was cut off and belongs to no confirmed step. All before it is sound: open the log to go on from there.':
      'Zeile {0}, die letzte, ist abgeschnitten und gehört zu keinem bestätigten Schritt. Alles davor ist heil: Öffne das Protokoll, um dort weiterzumachen.',
    'The last line of the log was cut off, by a crash perhaps. It is kept in {0}; all before it is sound.':
      'Die letzte Zeile des Protokolls brach ab, vielleicht durch einen Absturz. Sie liegt in {0}; alles davor ist in Ordnung.',
    'There is no event {0}: the log has {1}.': 'Ein Ereignis {0} gibt es nicht: das Protokoll hat {1}.',

    // Finding
    waste: 'Hilfsgarn',
    'It is here: {0}.': 'Deine Arbeit ist hier: {0}.',
    'step {0} comes next': 'als Nächstes kommt Schritt {0}',
    '{0} knitted': '{0} gestrickt',
    '{0} below': '{0} darunter',
    'no loops on the bed': 'keine Maschen auf dem Nadelbett',
    'edges {0} and {1}': 'Ränder {0} und {1}',
    'carriage on the {0}': (at) => `Schlitten ${sideWord(at)}`,
    'nothing in the feeder': 'nichts im Fadenführer',
    '{0} in the feeder': '{0} im Fadenführer',
    'Which side does the carriage stand on?': 'Auf welcher Seite steht der Schlitten?',
    'Which yarn are the loops on the needles made of?': 'Aus welchem Garn sind die Maschen auf den Nadeln?',
    'Which yarn is in the feeder, if any?': 'Welches Garn ist im Fadenführer, falls eines darin ist?',
    'Which needle is the outermost on the left that holds a loop?':
      'Welche Nadel ist links die äußerste mit einer Masche?',
    'Which needle is the outermost on the right that holds a loop?':
      'Welche Nadel ist rechts die äußerste mit einer Masche?',
    'How many needles hold a loop?': 'Wie viele Nadeln tragen eine Masche?',
    'How many waste rows hang below the needles?': 'Wie viele Hilfsgarnreihen hängen unter den Nadeln?',
    'How many stripes can be counted on the work, the one on the needles too?':
      'Wie viele Streifen zählst du am Gestrick, den auf den Nadeln mitgezählt?',
    'What does the row counter show?': 'Was zeigt das Zählwerk?',
    'There is no needle {0} on a bed of {1}: read its name again.':
      'Auf einem Nadelbett mit {1} Nadeln gibt es {0} nicht: lies den Namen noch einmal ab.',
    '{0} is not a yarn of this bag: it has {1}.': '{0} ist kein Garn dieses Beutels: er hat {1}.',
    '{0} cannot be counted: give a whole number, 0 or more.':
      '{0} lässt sich nicht zählen: nenn eine ganze Zahl ab 0.',
    'It fits when left and right change places: {0}. Read the needle names again.':
      'Es passt, wenn links und rechts tauschen: {0}. Lies die Namen der Nadeln noch einmal ab.',
    '{0} back, to {1} on the counter.': '{0} zurück, bis das Zählwerk {1} zeigt.',
    '{0} of them cannot be undone just as they were done.': (howMany) =>
      howMany === '1'
        ? '1 davon lässt sich nicht einfach rückgängig machen.'
        : `${howMany} davon lassen sich nicht einfach rückgängig machen.`,
    'A cut stays a cut: join {0} at the edge and hide both ends later.': (yarn) =>
      `Geschnitten bleibt geschnitten: knüpf ${yarnObject(yarn)} am Rand an und vernäh später beide Enden.`,
    'The work is off the needles: hang each loop again from its waste rows, weights off until all hang.':
      'Das Gestrick ist von den Nadeln: häng jede Masche aus den Hilfsgarnreihen wieder ein, ohne Gewichte, bis alle hängen.',
    'The {0} is out: catch every open loop on a spare strand before anything else.': (what) =>
      `${what === 'waste' ? 'Das Hilfsgarn' : 'Der Trennfaden'} ist heraus: fang zuallererst jede offene Masche auf einem losen Faden auf.`,
    'The cord is closed off: it cannot go back on the needles; knit it anew with {0} if it is too short.':
      'Die Kordel ist geschlossen und kann nicht zurück auf die Nadeln: ist sie zu kurz, strick sie neu aus {0}.',
    'There is no place after {0} steps: the bag has {1}.':
      'Nach {0} Schritten gibt es keine Stelle: der Beutel hat {1}.',
    'Ripping back goes backwards: choose a place before step {0}.':
      'Auftrennen geht rückwärts: wähle eine Stelle vor Schritt {0}.',
    'Bring {0} into work.': 'Bring {0} in Arbeitsstellung.',
    'Push {0} out of work.': 'Schieb {0} in Ruhestellung.',
    'Put the carriage on the {0}.': (at) => `Stell den Schlitten nach ${sideWord(at)}.`,
    'Cast on with {0}.': 'Schlag mit {0} an.',
    'Take {0} out of the feeder and park it at the {1} end.': (yarn, end) =>
      `Nimm ${yarn} aus dem Fadenführer und leg es am ${sideStem(end)}en Ende ab.`,
    'Cut {0}, leaving {1} cm.': (yarn, cm) => `Schneide ${yarnObject(yarn)} ab und lass ${cm} cm hängen.`,
    'Set the carriage to slip and bring it across to the {0}: nothing knits.': (to) =>
      `Stell den Schlitten auf leer und führ ihn nach ${sideWord(to)}: nichts wird gestrickt.`,
    'With the tool, lift the loops of {0} and set them on {1}.':
      'Häng die Maschen von {0} mit dem Decker auf {1} um.',
    'Take the work off the needles.': 'Nimm das Gestrick von den Nadeln.',
    'Hang the loops from {0} to {1}.': 'Häng die Maschen von {0} bis {1} ein.',
    'Push {0} back out of work.': 'Schieb {0} zurück in Ruhestellung.',
    'Bring {0} back into work.': 'Bring {0} zurück in Arbeitsstellung.',
    'The carriage stood on the {0}.': (at) => `Der Schlitten stand ${sideWord(at)}.`,
    'Bring the carriage back to the {0} without knitting.': (to) =>
      `Führ den Schlitten leer nach ${sideWord(to)} zurück.`,
    'Take the cast-on loops off the needles.': 'Nimm die Anschlagmaschen von den Nadeln.',
    'Take {0} out of the feeder.': (yarn) => `Nimm ${yarnObject(yarn)} aus dem Fadenführer.`,
    'Take {0} out of the feeder, back to its place at the {1} end.': (yarn, end) =>
      `Nimm ${yarnObject(yarn)} aus dem Fadenführer, zurück an seinen Platz am ${sideStem(end)}en Ende.`,
    'Put {0} back into the feeder.': (yarn) => `Fädle ${yarnObject(yarn)} wieder in den Fadenführer ein.`,
    'Join {0} again, leaving {1} cm to hide; {2}.': (yarn, cm, place) =>
      `Knüpf ${yarnObject(yarn)} wieder an, mit ${cm} cm zum Vernähen; ${place}.`,
    'it goes back into the feeder': 'der Faden kommt wieder in den Fadenführer',
    'it waits at the {0} end': (end) => `der Faden wartet am ${sideStem(end)}en Ende`,
    'Hang the loops again from the waste rows: {0}.':
      'Häng die Maschen aus den Hilfsgarnreihen wieder ein: {0}.',
    'one on each needle from {0} to {1}': 'eine auf jede Nadel von {0} bis {1}',
    'Take the loops from {0} to {1} off again, a strand run through them.':
      'Zieh einen Faden durch die Maschen von {0} bis {1} und nimm sie wieder ab.',
    'Drop the loose loop off {0} and push the needle out of work.':
      'Wirf die lose Masche von {0} ab und schieb die Nadel in Ruhestellung.',
    'each from {0} to {1}': '{0} bis {1}',
    'none on {0}, which stays in work': 'keine auf {0} (leer in Arbeitsstellung)',
    '{0} together on {1}': (loops, where) =>
      `${where.includes(' bis ') ? 'je ' : ''}${loops} zusammen auf ${where}`,
    'one loop on each needle from {0} to {1}': 'eine auf jeder Nadel von {0} bis {1}',
    'Pull out the row of {0} gently, catching every loop: {1}. Bring the carriage back to the {2} without knitting.':
      (yarn, caught, back) =>
        `Zieh die Reihe aus ${yarn} sachte heraus und fang jede Masche auf: ${caught}. Führ den Schlitten leer nach ${sideWord(back)} zurück.`,
    'Set the loops of {0} out again on {1}, parting the stitches that share {2}.':
      'Häng die Maschen von {0} wieder nach außen auf {1} und trenn dabei die Maschen, die zusammen auf {2} hängen.',
    'Set the loops of {0} back on {1}. Push {2} out of work.':
      'Häng die Maschen von {0} zurück auf {1}. Schieb {2} in Ruhestellung.',
    'Draw the thread out from under the last bar on the {0}.': (at) =>
      `Zieh den Faden ${at === 'front' ? 'vorn' : 'hinten'} unter dem letzten Quersteg heraus.`,
    'Draw the thread out from under the last {0} bars on the {1}.': (howMany, at) =>
      `Zieh den Faden ${at === 'front' ? 'vorn' : 'hinten'} unter den letzten ${howMany} Querstegen heraus.`,
    'Ease the drawn-up thread.': 'Lockere den angezogenen Faden.',
    'Undo the fastening.': 'Lös den vernähten Faden.',
    'Draw the cord back out of eyelet {0}.': 'Zieh die Kordel wieder aus Lochmasche {0}.',
    'The waste rows are out and not put back: hold the open loops on a spare strand.':
      'Die Hilfsgarnreihen sind heraus und bleiben es: halte die offenen Maschen auf einem losen Faden.',
    'The ravel cord is out and not put back: hold the open loops on a spare strand.':
      'Der Trennfaden ist heraus und bleibt es: halte die offenen Maschen auf einem losen Faden.',
    'Measure {0} cm again.': 'Miss {0} cm noch einmal ab.',
    'That is where you are: {0}': 'Genau dort bist du: {0}',
    'Where you are looks like that too: {0}': 'So sieht es auch aus, wo du bist: {0}',
    '{0} places look like that.': '{0} Stellen sehen so aus.',
    'Apart they are told by {0}.': 'Zu unterscheiden sind sie an: {0}.',
    'step {0} next': 'als Nächstes Schritt {0}',
    '{0} places look like that; choose and a number goes to one:':
      '{0} Stellen sehen so aus; mit choose und einer Nummer geht es zu einer:',
    carriage: 'Schlitten',
    'last row': 'letzte Reihe',
    'left edge': 'linker Rand',
    'right edge': 'rechter Rand',
    'needles with loops': 'Nadeln mit Maschen',
    'row counter': 'Zählwerk',
    'carriage left': 'Schlitten links',
    'the yarn': 'das Garn',
    'feeder and the yarn': 'Fadenführer und das Garn',
    'left and the needle': 'links und die Nadel',
    'right and the needle': 'rechts und die Nadel',
    'stitches and the count': 'Maschen und die Zahl',
    'waste and the count': 'Hilfsgarn und die Zahl',
    'stripes and the count': 'Streifen und die Zahl',
    '{0} Type find and {1}; or find unsure.': '{0} Tippe find und {1}; oder find unsicher.',
    'No place in this bag looks like that, and no one slip explains it.':
      'Keine Stelle dieses Beutels sieht so aus, und kein einzelnes Versehen erklärt es.',
    'Read it again, and leave out what you are least sure of.':
      'Lies noch einmal ab und lass weg, was am unsichersten ist.',
    'and {0}.': 'und {0}.',
    'To be guided through it, type choose {0}.': 'Schritt für Schritt führt dich choose {0}.',
    'To be guided through one of them, type choose and its number.':
      'Schritt für Schritt führt dich take mit einer der Nummern.',
    'One step at a time: Enter confirms, Left takes back, stop leaves it.':
      'Ein Schritt nach dem anderen: Enter bestätigt, Pfeil links nimmt zurück, stop hört damit auf.',
    'Left off. Nothing more is taken back or mended; type where to see the place.':
      'Aufgehört. Es wird nichts weiter aufgetrennt oder ausgebessert; where zeigt die Stelle.',
    'As planned it cannot be finished.': 'Wie geplant lässt er sich nicht fertigstricken.',
    'As planned, {0}.': 'Wie geplant {0}.',
    'There is no other length to choose.': 'Eine andere Länge steht nicht zur Wahl.',
    'To go on like that type choose.': 'Um so weiterzustricken, tippe choose.',
    'To go on like one of them type choose and its number.':
      'Um so weiterzustricken, tippe choose und die Nummer.',
    'The weighed yarn lasts for none: bring in another with replan colour, or rip back.':
      'Das gewogene Garn reicht für keine davon: nimm mit replan colour ein anderes dazu, oder trenn auf.',
    '{0} rows, number {1}': '{0} Reihen, Nummer {1}',
    'Nearest to {0} wide with the yarn there is: {1}.':
      'Mit dem Garn, das da ist, am nächsten an {0} Breite: {1}.',
    '{0} is {1} short': (yarn, mass) => `von ${yarn} ${lacks(mass)} ${mass}`,
    '{0} rows': '{0} Reihen',
    '{0} wide, {1} deep, {2} to go': '{0} breit, {1} tief, noch {2}',
    ', but {0}': ', aber {0}',
    '{0} more': '{0} mehr',
    '{0} fewer': '{0} weniger',
    '{0} rows are not whole stripe repeats: choose a multiple of {1}, from {2} up.':
      '{0} Reihen sind keine ganzen Streifenrapporte: wähle ein Vielfaches von {1}, mindestens {2}.',
    '{0} rows are fewer than the work needs from here: choose {1} or more.':
      '{0} Reihen sind weniger, als das Gestrick von hier an braucht: wähle mindestens {1}.',
    '{0} rows are more than a bag may have: choose {1} at the most.':
      '{0} Reihen sind mehr, als ein Beutel haben darf: wähle höchstens {1}.',
    '{0} is not a yarn of this bag ({1}): give its colour and metres per 100 g too.':
      '{0} ist kein Garn dieses Beutels ({1}): nenn auch seine Farbe und die Meter je 100 g.',
    '{0} knits no stripe from here on: name a yarn that is still to come.':
      '{0} strickt von hier an keinen Streifen mehr: nenn ein Garn, das noch drankommt.',
    'Stripes {0} and {1} would meet in {2} and read as one: choose another yarn.':
      'Die Streifen {0} und {1} lägen beide in {2} aneinander und sähen aus wie einer: wähle ein anderes Garn.',
    'A stitch or row of {0} mm cannot be: measure the piece again.':
      'Eine Masche oder Reihe von {0} mm kann nicht sein: miss das Stück noch einmal.',
    'The closing row is begun, so the size is settled: rip back to before it to change the plan.':
      'Die Schlussreihe ist begonnen, damit steht die Größe fest: trenn bis davor auf, um den Plan zu ändern.',
    '{0} rows round, {1} wide and {2} deep': '{0} Reihen rundum, {1} breit und {2} tief',
    'Step {0} counts as done again.': 'Schritt {0} zählt wieder als gemacht.',
    'Step {0} counts as not done again.': 'Schritt {0} zählt wieder als nicht gemacht.',
    'Steps {0} to {1} count as done again.': 'Die Schritte {0} bis {1} zählen wieder als gemacht.',
    'Steps {0} to {1} count as not done again.': 'Die Schritte {0} bis {1} zählen wieder als nicht gemacht.',
    'The plan is now: {0}.': 'Der Plan ist jetzt: {0}.',
    'The mend is off the record.': 'Die Ausbesserung steht nicht mehr im Protokoll.',
    'The mend is on the record again.': 'Die Ausbesserung steht wieder im Protokoll.',
    'If step {0} was done: {1}': 'Falls Schritt {0} schon gemacht war: {1}',
    'So with {0} before that.': 'Ebenso {0} davor.',
    'replan rows {0}': 'replan rows {0}',
    left: 'links',
    right: 'rechts',

    // The plan page
    SIZE: 'GRÖSSE',
    STRIPES: 'STREIFEN',
    YARN: 'GARN',
    BED: 'NADELBETT',
    'BY HAND': 'VON HAND',
    FABRIC: 'GESTRICK',
    'BEFORE YOU START': 'BEVOR DU ANFÄNGST',
    bag: 'Beutel',
    asked: 'Wunsch',
    inside: 'innen',
    knit: 'Stricken',
    shaping: 'Formen',
    write: 'Schreibe',
    smaller: 'kleiner',
    larger: 'größer',
    '{0} deep below the cord; the mouth is {1} round':
      '{0} tief unter der Kordel; die Öffnung misst {1} rundum',
    '{0}, {1} round: {2} are knitted, the graft is the last':
      '{0}, {1} rundum: {2} werden gestrickt, die Verbindung ist die letzte',
    '{0}, one after every {1}, {2} at each edge': '{0}, einer nach je {1}, {2} an jedem Rand',
    '{0}; stripes slant {1} degrees from the bottom': '{0}; die Streifen steigen mit {1} Grad vom Boden auf',
    '"bag": {"stitches": {0}, "rows": {1}} into the brief to knit it':
      '"bag": {"stitches": {0}, "rows": {1}} in die Vorgabe, um ihn zu stricken',
    '{0} and {1}': '{0} und {1}',
    'the largest of its shape that the weighed yarn allows':
      'der größte dieser Form, für den das gewogene Garn reicht',
    '{0}; one repeat more would take more {1} than there is':
      '{0}; ein Rapport mehr bräuchte mehr {1}, als da ist',
    '{0}; the scraps give no sequence for more': '{0}; für mehr ergeben die Garnreste keine Folge',
    '{0}; one repeat more would not fit the {1} within the margins':
      '{0}; ein Rapport mehr passt nicht auf die {1} zwischen den freien Rändern',
    '{0}, and no wider than {1}': '{0}, und nicht breiter als {1}',
    '{0} throughout, no colour changes; the closing row, graft and seam take it too':
      '{0} durchgehend, ohne Farbwechsel; auch Schlussreihe, Verbindung und Naht',
    '{0} stripes, listed below': '{0} Streifen, unten aufgeführt',
    '{0} of {1}, listed below': '{0} zu {1}, unten aufgeführt',
    '{0} a repeat of {1} stripes, listed below': '{0} ein Rapport von {1} Streifen, unten aufgeführt',
    '{0} {1} rows': '{0} {1} Reihen',
    '{0} to {1}': '{0} bis {1}',
    '{0} by {1}': '{0} mal {1}',
    '{0} of {1} stitches': '{0} zu {1} Maschen',
    '{0}, with {1}': '{0}, mit {1}',
    '{0}, with {1}, which this bed is too short for': '{0}, mit {1}; dafür ist dieses Nadelbett zu kurz',
    length: 'Länge',
    weight: 'Gewicht',
    'you have': 'du hast',
    '{0} (waste)': '{0} (Hilfsgarn)',
    'not weighed': 'nicht gewogen',
    enough: 'reicht',
    'short by {0}': '{0} zu wenig',
    crawl: 'Wandern',
    hang: 'Einhängen',
    '{0} with a pitch of {1} mm, {2} of them within the margins; the work crawls over {3}':
      '{0} im Abstand von {1} mm, {2} davon zwischen den freien Rändern; das Gestrick wandert über {3} Nadeln',
    'to the {0}; the carriage waits on the {1} between stripes': (to, at) =>
      `nach ${sideWord(to)}; zwischen den Streifen wartet der Schlitten ${sideWord(at)}`,
    'on {0}; the work ends on {1}': 'auf {0}; das Gestrick endet auf {1}',
    'rows {0} to {1}': 'Reihen {0} bis {1}',
    'on {0}': 'auf {0}',
    'ending on {0}': 'endet auf {0}',
    'and {0} more, each from the same needles': 'und noch {0}, immer von denselben Nadeln aus',
    eyelets: 'Löcher',
    care: 'Vorsicht',
    ', {0} to graft and {1} to go on and sew the bottom':
      ', {0} zum Verbinden und {1}, um damit den Boden zu nähen',
    'with the tail of the graft': 'mit dem Faden vom Verbinden',
    'with {0} of {1}': 'mit {0} {1}',
    '{0}, {1} from each side, {2}: twice the seam and {3} to hold (rule of thumb)':
      '{0}, {1} von jeder Seite, {2}: zweimal die Naht und {3} zum Festhalten (Faustregel)',
    'a round taken to be as high as a row (rule of thumb)':
      'eine Runde so hoch gerechnet wie eine Reihe (Faustregel)',
    'by your count of {0} rounds to 10 cm': 'nach deiner Zählung von {0} Runden auf 10 cm',
    '{0}, {1} apart': '{0}, je {1} auseinander',
    '{0}; too few for a cord with both ends outside': '{0}; zu wenige für eine Kordel mit beiden Enden außen',
    'the cord uses all': 'die Kordel läuft durch alle',
    'the cord uses {0} and passes by number {1}, counted from the graft':
      'die Kordel läuft durch {0} und lässt Nummer {1} aus, gezählt von der Verbindung',
    '{0} at the graft': '{0} an der Verbindung',
    '{0} there, then {1}': '{0} dort, danach {1}',
    '{0}; {1}. The widest gap is {2}.': '{0}; {1}. Der weiteste Abstand ist {2}.',
    swatch: 'Probe',
    gauge: 'Dichte',
    loop: 'Garnlänge',
    tightness: 'Faktor',
    yarn: 'Garn',
    '{0} stitches and {1} rows on {2}, {3}': (stitches, rows, size, state) =>
      `${stitches} ${stitches === '1' ? 'Masche' : 'Maschen'} und ${rows} ${rows === '1' ? 'Reihe' : 'Reihen'} auf ${size}, ${stateWord(state)}`,
    '{0} stitches and {1} rows to {2}; a stitch is {3} wide and {4} high':
      '{0} Maschen und {1} Reihen auf {2}; eine Masche ist {3} breit und {4} hoch',
    '{0} (root of tex / loop in mm), {1}': '{0} (Dichtefaktor: Wurzel aus tex / Maschenlänge in mm), {1}',
    piece: 'Stück',
    '{0}, as the piece measures': '{0}, am Stück gemessen',
    '{0}, as the swatch measures it': '{0}, nach der Maschenprobe',
    'by the gauge of {0} plain knitting (Munden 1959, for wool)': (state) =>
      `nach der Maschendichte glatter Maschenware, ${stateWord(state)} (Munden 1959, für Wolle)`,
    '{0} of yarn in a stitch, measured; {1} {2}': '{0} Garn in einer Masche, gemessen; {1} {2}',
    '{0} of yarn in a stitch, {1}': '{0} Garn in einer Masche, {1}',
    'between {0} and {1}': 'zwischen {0} und {1}',
    'finer than lace (0)': 'feiner als Lace (0)',
    'yarn finer than lace (0)': 'Garn feiner als Lace (0)',
    '{0} by its gauge (Craft Yarn Council); a pitch of {1} mm usually knits {2} (rule of thumb)':
      '{0} nach der Maschendichte (Craft Yarn Council); bei {1} mm Nadelabstand strickt man meist {2} (Faustregel)',
    '{0} g to the square metre': '{0} g je Quadratmeter',
    '{0} oz to the square yard': '{0} oz je Quadratyard',

    // The log and the player
    '{0}: the log is sound.': '{0}: das Protokoll ist in Ordnung.',
    '{0} in {1}, {2} recorded, rests included.': '{0} in {1}, {2} aufgezeichnet, Pausen mitgezählt.',
    '{0} of {1} steps confirmed.': '{0} von {1} Schritten bestätigt.',
    'cannot be read': 'nicht lesbar',
    finished: 'fertig',
    'step {0} of {1} next': 'als Nächstes Schritt {0} von {1}',
    'No bags in the folder of logs yet.': 'Im Ordner der Protokolle liegt noch kein Beutel.',
    'and {0} more: slantwise bags lists them all.': 'und noch {0}: slantwise bags zeigt alle.',
    'To make another like one of them, leave and type slantwise work --like and its file.':
      'Noch einen nach einem davon: quit, dann slantwise work --like und seine Datei.',
    'Give --like or a brief, not both: the brief comes from the log.':
      'Nimm --like oder eine Vorgabe, nicht beides: die Vorgabe kommt aus dem Protokoll.',
    '{0} already holds the log of {1}, made from another brief: name another file, or leave the brief out to go on with it.':
      'In {0} steht schon das Protokoll von {1} nach einer anderen Vorgabe: nenn eine andere Datei, oder lass die Vorgabe weg, um damit weiterzumachen.',
    'To go on from step {0}: slantwise --log {1}': 'Weiter geht es ab Schritt {0} mit: slantwise --log {1}',
    'Line {0} is not understood: {1}. For example: 33 say Watch the left edge. After the step comes say, note, mark or pause.':
      (number, line) =>
        `Zeile ${number} ist nicht zu verstehen: ${quoted(line)}. Zum Beispiel: 33 say Achte auf den linken Rand. Nach dem Schritt kommt say, note, mark oder pause.`,
    'Line {0} names step {1}, which the log never comes to: it goes from step 1 to {2}.':
      'Zeile {0} nennt Schritt {1}, zu dem das Protokoll nie kommt: es geht von Schritt 1 bis {2}.',
    'There is no line to add. For example: 33 say Watch the left edge.':
      'Es ist keine Zeile zum Hinzufügen da. Zum Beispiel: 33 say Achte auf den linken Rand.',
    '{0} added; the lesson is in {1}. Play it: slantwise replay {2}':
      '{0} hinzugefügt; die Lektion ist in {1}. Abspielen: slantwise replay {2}',
    TIME: 'ZEIT',
    'BY PHASE': 'NACH ABSCHNITTEN',
    'BY STRIPE': 'NACH STREIFEN',
    'SLOW PLACES': 'LANGSAME STELLEN',
    'YARN, BY THE PLAN': 'GARN, NACH DEM PLAN',
    NOTES: 'NOTIZEN ZU SCHRITTEN',
    'begun {0}': 'begonnen {0}',
    'finished {0}': 'fertig {0}',
    'last worked on {0}, {1} of {2} steps done': 'zuletzt in Arbeit {0}, {1} von {2} Schritten gemacht',
    '{0} in {1}': '{0} in {1}',
    ', and rests of {0}': ', dazu {0} Pause',
    bench: 'Arbeit',
    'a row': 'je Reihe',
    '{0}, shaping moves included': '{0}, Formschritte mitgezählt',
    '{0} something was taken back': '{0} etwas zurückgenommen',
    'step {0}, row {1}': 'Schritt {0}, Reihe {1}',
    'usually {0}': 'sonst {0}',
    'step {0}': 'Nr. {0}',
    'To make another, with this brief, its changes and these notes: slantwise work --like {0}':
      'Noch einer mit dieser Vorgabe, ihren Änderungen und diesen Notizen: slantwise work --like {0}',
    '{0}, begun {1}': '{0}, begonnen {1}',
    'The log ends here; the bag is not finished.': 'Das Protokoll endet hier; der Beutel ist nicht fertig.',
    'Back at the bench, {0}': 'Wieder an der Maschine, {0}',
    'A place to pause': 'Zeit für eine Pause',
    'Taken back: {0}': 'Zurückgenommen: {0}',
    'Done again: {0}': 'Wieder gemacht: {0}',
    'Jumped: {0}': 'Gesprungen: {0}',
    'Noted: {0}': 'Notiert: {0}',
    'Ripped back: {0}': 'Aufgetrennt: {0}',
    'Set right: {0}': 'Ausgebessert: {0}',
    'Planned anew: {0}.': 'Neu geplant: {0}.',
    'Now {0}': 'Jetzt: {0}',
    'Marked this place as {0}.': 'Diese Stelle trägt jetzt die Marke {0}.',
    '{0} to {1}: {2} steps confirmed': '{0} bis {1}: {2} Schritte bestätigt',
    'back ': 'zurück ',

    // Chat and settings
    bed: 'Bett',
    feeder: 'Fadenführer',
    empty: 'leer',
    'carriage {0}': (side) => `Schlitten ${sideWord(side)}`,
    '{0} does not end in .html, .svg or .md, which say what kind of sheet to write: add one of them.':
      '{0} endet nicht auf .html, .svg oder .md, und die Art des Blatts hängt davon ab: häng eines davon an.',
    'The sheet is written: {0}': 'Das Blatt ist geschrieben: {0}',
    'Also: {0}.': 'Auch: {0}.',
    'For example: {0}.': 'Zum Beispiel: {0}.',
    '{0} on, or {1} off': '{0} on oder {1} off',
    'next [how many]': 'next [wie viele]',
    'confirm the step on the screen, or several at once':
      'den gezeigten Schritt bestätigen, oder mehrere auf einmal',
    'take back the last step, jump, mend or change of plan':
      'das Letzte zurücknehmen: Schritt, Sprung, Ausbesserung oder neuen Plan',
    'do again what was taken back': 'wieder tun, was zurückgenommen wurde',
    'go PHASE, or go stripe / row / move / step / stitch / round / mark and its number or name':
      'go PHASE, oder go stripe / row / move / step / stitch / round / mark und Nummer oder Name',
    'jump to a place: it comes next': 'an eine Stelle springen: sie kommt als Nächstes',
    'find EDGES YARN, carriage SIDE, feeder YARN, row / stripes / stitches NUMBER; find and MORE':
      'find RÄNDER GARN, carriage left / right, feeder GARN, row / stripes / stitches ZAHL; find and MEHR',
    'say what you see, as little as you know: where it is, or what went wrong':
      'sagen, was du siehst, und sei es wenig; du hörst, wo es ist oder was schiefging',
    'rip row / stripe / move / step / mark and its number or name':
      'rip row / stripe / move / step / mark und Nummer oder Name',
    'the way back with the hands, so that this place comes next again':
      'der Rückweg mit den Händen, bis diese Stelle wieder als Nächstes kommt',
    'replan shorter / longer / rows NUMBER; replan NUMBER stitches SIZE NUMBER rows SIZE; weighed YARN GRAMS; colour YARN to YARN':
      'replan shorter / longer / rows ZAHL; replan ZAHL stitches LÄNGE ZAHL rows LÄNGE; weighed GARN GRAMM; colour GARN to GARN',
    'plan on from here: other length, measured piece, weighed yarn, new colour':
      'von hier aus neu planen: andere Länge, gemessenes Stück, gewogenes Garn, neue Farbe',
    'choose [NUMBER]': 'choose [ZAHL]',
    'accept what find, rip or replan offers': 'annehmen, was find, rip oder replan anbietet',
    'leave a way back or a mend that is being guided': 'einen Rückweg oder eine Ausbesserung abbrechen',
    'where you are, and what the bed should look like': 'wo du bist, und wie das Nadelbett aussehen soll',
    'the whole plan: size, yarn, needles, tails': 'der ganze Plan: Größe, Garn, Nadeln, Fadenenden',
    'keep a remark at this step': 'eine Notiz zu diesem Schritt behalten',
    'the remarks kept so far': 'die Notizen bisher',
    'name this place, to go back to it': 'diese Stelle benennen, um zu ihr zurückzukehren',
    'the places named so far': 'die benannten Stellen bisher',
    'say the instruction once more': 'die Anweisung noch einmal sagen',
    'what is on the go and finished': 'was angefangen und was fertig ist',
    'draw strip / bag / fold / bed, or draw off': 'draw strip / bag / fold / bed, oder draw off',
    'a drawing in place of the counters; it grows with the work':
      'eine Zeichnung statt der Zähler; sie wächst mit dem Gestrick',
    'sheet FILE.html, or .svg, or .md': 'sheet DATEI.html, oder .svg, oder .md',
    'write the plan as a sheet to print': 'den Plan als Blatt zum Drucken schreiben',
    'write the whole log to another file and go on there, when its disk makes trouble':
      'das ganze Protokoll in eine andere Datei schreiben und dort weitermachen, wenn die Platte Ärger macht',
    'pedal confirm / back / again / pass, pedal off, or pedal gap MILLISECONDS':
      'pedal confirm / back / again / pass, pedal off oder pedal gap MILLISEKUNDEN',
    'give a foot switch something to do: type it, then press the switch; gap: presses closer together count as one':
      'einen Fußschalter belegen: erst tippen, dann drücken; gap: was dichter aufeinander folgt, zählt als einmal',
    'big letters, to be read from across the bed': 'große Schrift, auch von weitem zu lesen',
    'ring once for a step, twice for a shaping move, three times for a colour':
      'einmal läuten für einen Schritt, zweimal für einen Formschritt, dreimal für eine Farbe',
    'speak each instruction aloud': 'jede Anweisung laut vorlesen',
    'pause short / usual / long': 'pause short / usual / long',
    'how long to look before a new yarn, a rehang or the closing row':
      'wie lange du vor neuem Garn, Umsetzen und Schlussreihe hinsehen willst',
    'units cm, or units in': 'units cm, oder units in',
    'centimetres, grams and metres, or inches, ounces and yards':
      'Zentimeter, Gramm und Meter, oder Zoll, Unzen und Yards',
    'language {0}': 'language {0}',
    'the language of all sentences; auto follows the system':
      'die Sprache aller Sätze; auto folgt dem System',
    'what can be typed, and the keys': 'was du tippen kannst, und die Tasten',
    'leave; everything is saved, and you come back to this step':
      'beenden; alles ist gespeichert, und du kommst zu diesem Schritt zurück',

    // The sheet
    'Stripes of {0} and {1} lie side by side and look much alike: choose one lighter or darker to tell them apart.':
      'Streifen in {0} und {1} liegen nebeneinander und sehen fast gleich aus: wähle eine der Farben heller oder dunkler.',
    'Stripes of {0} and {1} lie side by side and look much alike to people with {2} colour vision: choose one lighter or darker to tell them apart.':
      'Streifen in {0} und {1} liegen nebeneinander und sehen für manche Augen ({2}) fast gleich aus: wähle eine der Farben heller oder dunkler.',
    'Steam scalds, and it flattens man-made fibre.': 'Dampf verbrüht und drückt Kunstfasern platt.',
    'waste rows': 'Hilfsgarnreihen',

    // Drawings
    '{0} wide, {1} below the cord, stripes at {2}': '{0} breit, {1} unter der Kordel, Streifen mit {2}',
    'and {0} more, hung on the same needles': (more) =>
      `und noch ${timesWord(more)}, auf dieselben Nadeln eingehängt`,
    'rows {0} to {1}: hung {2} to {3}, crawling to {4} to {5}':
      'Reihen {0} bis {1}: {2} bis {3}, wandert nach {4} bis {5}',
    'strip on the left: growing edge up, fold at the dotted lines':
      'Bahn links: Zunahmerand oben, an den Punktlinien falten',
    'bag on the right: last edge A meets first edge B': 'Beutel rechts: letzte Kante A trifft erste Kante B',
    'The strip leans to the {0} as it grows: {1}, {2} rows, the last one grafted.': (
      towards,
      stripes,
      rows,
    ) =>
      `Die Bahn neigt sich beim Wachsen nach ${sideWord(towards)}: ${stripes}, ${rows} Reihen, die letzte im Maschenstich.`,
    '{0} of {1} rows are knitted, {2} of {3} whole.': '{0} von {1} Reihen sind gestrickt, {2} von {3} ganz.',
    'The strip is whole.': 'Die Bahn ist fertig.',
    'Being knitted: stripe {0}, {1}, rows {2} to {3}.': 'In Arbeit: Streifen {0}, {1}, Reihen {2} bis {3}.',
    'Next: stripe {0}, {1}, rows {2} to {3}.': 'Als Nächstes: Streifen {0}, {1}, Reihen {2} bis {3}.',
    'The finished bag is {0} wide and {1} deep, {2} of that below the cord.':
      'Der fertige Beutel ist {0} breit und {1} tief, davon {2} unter der Kordel.',
    'Its stripes ({0}) climb to the {1} at {2} to the bottom, seen with the knit side out.': (
      yarns,
      towards,
      angle,
    ) =>
      `Seine Streifen (${yarns}) steigen nach ${sideWord(towards)} an, im Winkel von ${angle} zum Boden, die glatte Seite außen.`,
    'The cord runs through {0} of {1}; both its ends come out at the graft, on the {2}.': (
      used,
      made,
      face,
    ) =>
      `Die Kordel läuft durch ${used} von ${made}; beide Enden kommen an der Verbindung heraus, ${face === 'front' ? 'vorn' : 'hinten'}.`,
    'The bottom is sewn.': 'Der Boden ist genäht.',
    'Turn the strip so that its growing edge is up: that edge becomes the mouth, the other the bottom.':
      'Dreh die Bahn so, dass der Zunahmerand oben liegt: er wird zur Öffnung, der andere zum Boden.',
    'Fold it every {0} along the mouth, half behind half.':
      'Falte sie entlang der Öffnung alle {0}, eine Hälfte hinter die andere.',
    'The last edge, A, comes to lie along the first edge, B. Loop 1 of both is at the {0}, loop {1} at the {2}; graft them there.':
      (start, loops, end) =>
        `Die letzte Kante, A, kommt an die erste Kante, B, zu liegen. Masche 1 liegt bei beiden ${atEnd(start)}, Masche ${loops} ${atEnd(end)}; verbinde sie dort im Maschenstich.`,
    'At row {0} the work hangs from {1} to {2}.': 'Bei Reihe {0} hängt das Gestrick auf {1} bis {2}.',
    'The bed has {0} needles; the work crawls to the {1}.': (needles, towards) =>
      `Das Nadelbett hat ${needles} Nadeln; das Gestrick wandert nach ${sideWord(towards)}.`,
    'Rows {0} to {1}: hung from {2} to {3}, crawling to {4} to {5}.':
      'Reihen {0} bis {1}: eingehängt auf {2} bis {3}, wandert auf {4} bis {5}.',

    // Words and reasons
    'bed, needle bed': 'Nadelbett, Bett',
    'left and right, left, right, side': 'links und rechts, links, rechts, Seite',
    'Left and right are always yours, as you face the bed.':
      'Links und rechts gelten immer für dich, mit Blick auf das Nadelbett.',
    'needle, needle hook, latch': 'Nadel, Nadelhaken, Zunge, Nadelzunge',
    'A hook in the bed, with a latch that closes over the yarn. It holds one loop. There is no needle 0.':
      'Ein Haken im Nadelbett, mit einer Zunge, die sich über dem Garn schließt. Eine Nadel hält eine Masche. Eine Nadel 0 gibt es nicht.',
    'working, working needle, needle in work': 'Arbeitsstellung, in Arbeitsstellung, arbeitende Nadel',
    'A working needle takes part in the next pass. If it is empty, the pass lays a new loop on it.':
      'Eine Nadel in Arbeitsstellung strickt beim nächsten Schlittengang mit. Ist sie leer, legt der Schlittengang eine neue Masche darauf.',
    'resting, resting needle': 'Ruhestellung, in Ruhestellung, ruhende Nadel',
    'A resting needle is pushed back out of the way: the carriage passes it by.':
      'Eine Nadel in Ruhestellung ist aus dem Weg geschoben: der Schlitten geht an ihr vorbei.',
    'carriage, knitting carriage': 'Schlitten',
    'The part that slides along the bed and makes the needles knit. Never move it with nothing in the feeder: every stitch would drop.':
      'Das Teil, das über das Nadelbett gleitet und die Nadeln stricken lässt. Beweg den Schlitten nie mit leerem Fadenführer: alle Maschen würden fallen.',
    'pass, pass of the carriage': 'Schlittengang, Gang',
    'The carriage crosses the bed once. A pass that knits makes one row.':
      'Der Schlitten geht einmal über das Nadelbett. Strickt er dabei, ist das eine Reihe.',
    'row, course': 'Reihe, Maschenreihe',
    'The stitches that one pass knits, from edge to edge.':
      'Die Maschen, die ein Schlittengang strickt, von Rand zu Rand.',
    'feeder, thread, yarn feeder': 'Fadenführer, einfädeln',
    'Where the yarn enters the carriage. To thread a yarn is to put it in there.':
      'Dort läuft das Garn in den Schlitten. Ein Garn einfädeln heißt: es dort einlegen.',
    'mast, tension mast, arm': 'Fadenspanner, Mast, Arm',
    'The stand that the yarn runs over, with one springy arm for each yarn to keep it taut.':
      'Der Ständer, über den das Garn läuft, mit einem federnden Arm für jedes Garn, der es straff hält.',
    'A yarn that is neither in the feeder nor cut is parked. It waits at its own end of the bed, so that two yarns do not twist round each other.':
      'Ein Garn, das weder im Fadenführer noch abgeschnitten ist, ist abgelegt. Es wartet an seinem Ende des Nadelbetts, damit sich zwei Garne nicht verdrehen.',
    'margin, needle margin': 'freier Rand',
    'Needles left free at both ends of the bed, so that the carriage can move clear of the work.':
      'Nadeln, die an beiden Enden des Nadelbetts frei bleiben, damit der Schlitten ganz über das Gestrick hinausfahren kann.',
    'The bend of yarn that hangs on a needle. The next pass draws a new loop through it: a stitch.':
      'Der Garnbogen, der auf einer Nadel hängt. Der nächste Schlittengang zieht einen neuen hindurch: eine Masche.',
    'open loop': 'offene Masche, offene Schlaufe',
    'A loop that no needle and no later row holds: it could run down. Waste rows keep open loops safe.':
      'Eine Masche, die weder eine Nadel noch eine weitere Reihe hält: sie könnte laufen. Hilfsgarnreihen sichern offene Maschen.',
    'A loop drawn through the one below it. The number of stitches, one for each needle, makes the depth of the bag.':
      'Eine Schlaufe, durch die darunter gezogen. Die Zahl der Maschen, eine für jede Nadel, macht die Tiefe des Beutels.',
    'cast-on, cast on, casting on': 'Anschlag, anschlagen, Maschenanschlag',
    'How knitting begins: the first loops, one on each needle.':
      'So beginnt das Stricken: die ersten Maschen, eine auf jeder Nadel.',
    'e-wrap, e-wrap cast-on': 'Wickelanschlag, umwickeln',
    'A cast-on by hand: wind the yarn once round each needle, one after the other, like a row of small letters e.':
      'Ein Anschlag von Hand: wickle das Garn einmal um jede Nadel, eine nach der anderen, wie eine Zeile kleiner e.',
    'comb, cast-on comb': 'Anschlagkamm, Kamm',
    'A bar with teeth, hung on the first loops so that it draws them all down evenly.':
      'Eine Leiste mit Zähnen, in die ersten Maschen gehängt, damit sie alle gleichmäßig nach unten zieht.',
    'claw weight, weight': 'Krallengewicht, Gewicht',
    'A small weight with hooks, hung at each edge to draw it down. It is moved up every 10 to 20 rows, and stays under the needles being worked.':
      'Ein kleines Gewicht mit Haken, an jedem Rand eingehängt, damit er nach unten zieht. Es wird alle 10 bis 20 Reihen höher gehängt und bleibt unter den Nadeln, die arbeiten.',
    'waste yarn, waste, waste row': 'Hilfsgarn, Hilfsgarnreihe, Hilfsreihe',
    'Yarn to throw away. A few rows of it hold the open loops, and are unpicked later.':
      'Garn zum Wegwerfen. Ein paar Reihen davon halten die offenen Maschen und werden später aufgetrennt.',
    'ravel cord, ravel row, ravelling cord': 'Trennfaden',
    'A strand knitted for one row between the waste and the work. Pulled out later, it lets the waste come away.':
      'Ein Faden, eine Reihe lang zwischen Hilfsgarn und Gestrick gearbeitet. Später herausgezogen, gibt er das Hilfsgarn frei.',
    'edge stitches, edge stitch': 'Randmaschen, Seitenmasche',
    'The stitches that move together at an edge: as many as the transfer tool has prongs, usually 2.':
      'Die Maschen, die an einem Rand zusammen umgehängt werden: so viele, wie der Decker Spitzen hat, meist 2.',
    'transfer tool, tool, prong, transfer': 'Decker, Umhängewerkzeug, Deckernadel, umhängen, Werkzeug',
    'A handle with one prong or more. It lifts loops off their needles and sets them on others.':
      'Ein Griff mit einer oder mehreren Spitzen. Er hebt Maschen von ihren Nadeln und setzt sie auf andere.',
    'increase, one out, one needle out, gain': 'Zunahme, eine hinaus, zunehmen',
    'One out: the edge grows by a needle. The outermost loops move one needle out, and the needle they uncover stays in work and empty.':
      'Eine nach außen: der Rand wächst um eine Nadel. Die äußersten Maschen rücken eine Nadel nach außen; die Nadel, die frei wird, bleibt leer in Arbeitsstellung.',
    'decrease, one in, one needle in, loss': 'Abnahme, eine hinein, abnehmen',
    'One in: the edge shrinks by a needle. The outermost loops move one needle in, one needle then holds two, and the emptied one goes out of work.':
      'Eine nach innen: der Rand wird eine Nadel kürzer. Die äußersten Maschen rücken eine Nadel nach innen, eine Nadel hält dann zwei, und die leere kommt in Ruhestellung.',
    'shaping move, shaping, move': 'Formschritt',
    'An increase at the leading edge and a decrease at the trailing edge. The number of stitches stays the same, and the work crawls on by one needle.':
      'Eine nach außen am Zunahmerand, eine nach innen am Abnahmerand. Die Maschenzahl bleibt gleich, und das Gestrick wandert eine Nadel weiter.',
    'crawl, crawling': 'wandern, Wanderrichtung',
    'Shaping moves make the work wander along the bed, to the left or to the right. That is what slants the strip, and lets the stripes wind round the bag.':
      'Durch die Formschritte wandert das Gestrick über das Nadelbett, nach links oder nach rechts. Davon wird die Bahn schräg, und die Streifen winden sich um den Beutel.',
    'leading edge, mouth': 'Zunahmerand, vorderer Rand, Öffnung, Beutelöffnung',
    'The edge that the work crawls towards. It gets the eyelets and becomes the mouth of the bag.':
      'Der Rand, auf den das Gestrick zuwandert. Er bekommt die Lochmaschen und wird zur Öffnung des Beutels.',
    'trailing edge, bottom': 'Abnahmerand, hinterer Rand, Boden',
    'The edge that the work crawls away from. It is sewn together and becomes the bottom of the bag.':
      'Der Rand, von dem das Gestrick wegwandert. Er wird zusammengenäht und so zum Boden des Beutels.',
    'home side, home': 'Ausgangsseite',
    'The side on which the carriage waits between stripes. With home on the trailing side, the strands between stripes end up hidden in the bottom seam.':
      'Die Seite, auf der der Schlitten zwischen den Streifen wartet. Liegt sie am Abnahmerand, verschwinden die Fäden zwischen den Streifen in der Bodennaht.',
    'rehang, hanging, scrap off, hang again': 'Umsetzen, neu einhängen, wieder einhängen',
    'dropped stitch, drop, ladder, latch tool': 'gefallene Masche, Laufmasche, Fallmasche, Zungennadel',
    'A stitch that has slipped off its needle and runs down, leaving a ladder of bare strands. A latch tool, a hook with a handle, catches it up again.':
      'Eine Masche, die von der Nadel gerutscht ist und läuft; zurück bleibt eine Leiter aus blanken Fäden. Mit der Zungennadel, einem Haken mit Griff, holst du sie wieder hoch.',
    'rip back, rip, unravel': 'auftrennen, zurückstricken, aufziehen',
    'To take rows out again, one at a time, catching every loop. The command rip guides you through it.':
      'Reihen wieder herausnehmen, eine nach der anderen, und jede Masche auffangen. Der Befehl rip führt dich hindurch.',
    'row counter, counter': 'Zählwerk, Reihenzähler',
    'The dial at the bed that a passing carriage turns on by one. Ripping back, you turn it back by hand.':
      'Der Zähler am Nadelbett, den der Schlitten im Vorbeifahren um eins weiterdreht. Beim Auftrennen drehst du ihn von Hand zurück.',
    'foot switch, pedal, switch': 'Fußschalter, Pedal, Schalter',
    'A switch for the foot that types a key, so that you confirm steps with both hands full. Type pedal confirm to assign one.':
      'Ein Schalter für den Fuß, der eine Taste tippt: so bestätigst du Schritte auch mit vollen Händen. Tippe pedal confirm, um einen zu belegen.',
    'swatch, test piece, sample': 'Maschenprobe, Probe, Probestück',
    'A test piece of plain knitting, with the yarn and the setting of the bag. Let it rest, then count stitches and rows and measure it: every size comes from that.':
      'Ein glatt gestricktes Probestück, mit Garn und Einstellung des Beutels. Lass es ruhen, zähle dann Maschen und Reihen und miss es: daraus kommt jede Größe.',
    'gauge, stitch gauge': 'Maschendichte',
    'How many stitches and how many rows go to 10 cm of the rested swatch.':
      'Wie viele Maschen und wie viele Reihen auf 10 cm der ausgeruhten Maschenprobe kommen.',
    'plain knitting, plain': 'glatt gestrickt, glatt',
    'Every working needle knits in every row, without a pattern.':
      'Jede Nadel in Arbeitsstellung strickt in jeder Reihe, ohne Muster.',
    'pitch, needle pitch': 'Nadelabstand, Teilung',
    'How far apart the needles are, from middle to middle, in mm. Measure from the first needle to the eleventh and divide by ten.':
      'Wie weit die Nadeln auseinander stehen, von Mitte zu Mitte, in mm. Miss von der ersten Nadel bis zur elften und teile durch zehn.',
    'relaxed state, relaxed, state, dry-relaxed, wet-relaxed, fully-relaxed':
      'ausgeruht, Zustand, trocken ausgeruht, nass ausgeruht, ganz ausgeruht, Ruhezustand',
    'How the swatch rested before it was measured. Dry-relaxed: as it came off. Wet-relaxed: soaked and dried flat. Fully relaxed: washed and tumbled.':
      'Wie die Maschenprobe vor dem Messen geruht hat. Trocken: wie sie von den Nadeln kam. Nass: eingeweicht und flach getrocknet. Ganz: gewaschen und im Trockner.',
    'loop length, yarn in a stitch': 'Maschenlänge, Garn in einer Masche',
    'How much yarn is in one stitch. Unravel one row of the swatch, measure its yarn and divide by its stitches.':
      'Wie viel Garn in einer Masche steckt. Zieh eine Reihe der Maschenprobe auf, miss ihr Garn und teile durch ihre Maschen.',
    'tightness, tightness factor': 'Dichtefaktor, Dichtefaktor',
    'tex, tex number': 'tex',
    'How heavy a yarn is: what 1000 m of it weigh, in grams. A yarn with 200 m to 100 g has 500 tex.':
      'Wie schwer ein Garn ist: was 1000 m davon wiegen, in Gramm. Ein Garn mit 200 m auf 100 g hat 500 tex.',
    'metres per 100 g, metres, yardage': 'Meter auf 100 g, Meter, Lauflänge',
    "How long 100 g of the yarn are. The yarn's label says so; for 50 g, take it twice.":
      'Wie lang 100 g des Garns sind. Das steht auf der Banderole; steht es dort für 50 g, nimm es doppelt.',
    'yarn class, weight class, class, lace, jumbo, bulky': 'Garnklasse, Garnstärke, Klasse',
    'How thick a yarn is, from 0 (lace) to 7 (jumbo), by how many stitches it gives to 4 inches (Craft Yarn Council).':
      'Wie dick ein Garn ist, von 0 (Lace) bis 7 (Jumbo), danach, wie viele Maschen es auf 4 Zoll gibt (Craft Yarn Council).',
    'A few rows of one yarn. An even number of rows lets both yarns wait on the home side.':
      'Ein paar Reihen aus einem Garn. Bei gerader Reihenzahl warten beide Garne auf der Ausgangsseite.',
    'repeat, stripe repeat': 'Rapport, Streifenrapport',
    'The stripes in order, until the first comes again. A bag has whole repeats, so that the colours meet at the graft.':
      'Die Streifen der Reihe nach, bis der erste wiederkommt. Ein Beutel hat ganze Rapporte, damit die Farben an der Verbindung zusammenpassen.',
    'scraps, leftovers': 'Garnreste, Restgarn',
    'Leftover yarns. Weigh each, and the plan puts them in an order in which no two alike meet.':
      'Übrige Garne. Wieg jedes, und der Plan bringt sie in eine Folge, in der nie zwei gleiche zusammentreffen.',
    'ease, room': 'Mehrweite, Zugabe',
    'Room between the bag and what goes into it: 10 % if you do not say otherwise (rule of thumb).':
      'Luft zwischen dem Beutel und dem, was hineinkommt: 10 %, wenn du nichts anderes sagst (Faustregel).',
    'girth, way round': 'Umfang',
    'The way round what goes into the bag. Lay a tape round it where it is thickest.':
      'Einmal um das herum, was in den Beutel kommt. Leg ein Maßband darum, wo es am dicksten ist.',
    'reserve, spare yarn': 'Reserve, Vorrat',
    'Yarn beyond what the sum says, so that it does not run out: 10 % (rule of thumb).':
      'Garn über die Summe hinaus, damit es nicht ausgeht: 10 % (Faustregel).',
    'brief, brief file': 'Vorgabe, Vorgabedatei',
    'The file that says what you want: your bed, your swatch, the size, the yarns and the stripes.':
      'Die Datei, in der steht, was du willst: dein Nadelbett, deine Maschenprobe, die Größe, die Garne und die Streifen.',
    'plan, plan page': 'Plan, Planseite',
    'What the program makes of the brief: stitches, rows, needles, yarn and tails. Type plan to read it.':
      'Was das Programm aus der Vorgabe macht: Maschen, Reihen, Nadeln, Garn und Fadenenden. Tippe plan, um ihn zu lesen.',
    'log, log file': 'Protokoll',
    'The file in which every step you confirm is kept as you confirm it. It can be played again.':
      'Die Datei, in der jeder bestätigte Schritt sofort festgehalten wird. Sie lässt sich wieder abspielen.',
    'The last row that is knitted. The graft makes the second row of its stripe, so the stripe comes out as high as the others.':
      'Die letzte gestrickte Reihe. Die Verbindung ist die zweite Reihe ihres Streifens; so wird er so hoch wie die anderen.',
    'To sew open loops to open loops along the path that a knitted row would take. The seam is then a row of knitting, and does not show.':
      'Offene Maschen so aneinandernähen, wie der Faden einer gestrickten Reihe läuft. Die Naht ist dann selbst eine Reihe und fällt nicht auf.',
    'The two rows of open loops that are grafted. Edge A is where the tail hangs, edge B is the start. On both, the loops count from the tail: A1 is across from B1.':
      'Die zwei Reihen offener Maschen, die verbunden werden. An Kante A hängt das Fadenende, Kante B ist der Anfang. Gezählt wird vom Fadenende: A1 liegt B1 gegenüber.',
    'mattress seam, seam, mattress': 'Matratzenstich, Naht, Bodennaht',
    'To sew edge to edge under the bars one stitch in: one from this side, one from the other, in turn. It closes the bottom of the bag.':
      'Rand an Rand nähen, unter den Querstegen eine Masche weiter innen: einer von hier, einer von drüben, abwechselnd. So schließt sich der Boden des Beutels.',
    'bar, seam bar': 'Quersteg, Steg',
    'The short strand between two stitches that lie side by side. Each row has one, one stitch in from the edge.':
      'Der kurze Faden zwischen zwei Maschen nebeneinander. Jede Reihe hat einen, eine Masche vom Rand entfernt.',
    'draw up': 'zusammenziehen, anziehen',
    "To pull the seam's thread until the two edges meet, after every 6 to 8 bars, and no tighter.":
      'Den Nähfaden ziehen, bis die Ränder aneinanderliegen, alle 6 bis 8 Querstege, und nicht fester.',
    'eyelet, hole': 'Lochmasche, Loch',
    'The small hole where an increase has left a working needle empty. The cord runs through the eyelets below the mouth.':
      'Das kleine Loch, wo eine Zunahme eine Nadel leer in Arbeitsstellung gelassen hat. Durch die Lochmaschen unter der Öffnung läuft die Kordel.',
    'cord, tubular cord': 'Kordel, Schlauchkordel, Strickkordel',
    'A narrow tube, knitted on a few needles by slipping one way and knitting the other. It draws the bag shut.':
      'Ein schmaler Schlauch, auf wenigen Nadeln gestrickt: in der einen Richtung leer, in der anderen gestrickt. Sie zieht den Beutel zu.',
    'slip, slipping': 'leer fahren, Leergang',
    'The carriage passes over the needles and knits nothing; the yarn lies behind them.':
      'Der Schlitten geht über die Nadeln und strickt nicht; das Garn liegt dahinter.',
    'round, rows round': 'Runde, Reihen rundum, Umlauf',
    'For the cord: two passes, slip one way and knit the other, which make it one row longer. For the bag: the rows once round the tube.':
      'Bei der Kordel: zwei Schlittengänge, einer leer, einer gestrickt; sie wird eine Reihe länger. Beim Beutel: die Reihen einmal um den Schlauch.',
    'tie, bow': 'Schleife, Bindeende',
    'The length of cord that hangs out at each end, to tie a bow with.':
      'Das Stück Kordel, das an jedem Ende heraushängt, um eine Schleife zu binden.',
    'tail, yarn end': 'Fadenende, Endfaden',
    'The end of yarn left hanging where a yarn begins or is cut. Some are cut long on purpose, to graft and to sew with.':
      'Das Ende, das hängen bleibt, wo ein Garn beginnt oder abgeschnitten wird. Manche sind mit Absicht lang, zum Verbinden und Nähen.',
    'loop, loop of yarn': 'Schlaufe, Schlinge',
    'stitch, knit stitch': 'Masche',
    'stripe, colour stripe': 'Streifen',
    'closing row, last row': 'Schlussreihe, letzte Reihe',
    'graft, grafting seam': 'im Maschenstich verbinden, Maschenstich, Verbindung, verbinden',
    'confirm this step': 'diesen Schritt bestätigen',
    'take the last one back': 'den letzten zurücknehmen',
    'do what was taken back': 'Zurückgenommenes wieder tun',
    'jump to a place': 'an eine Stelle springen',
    'say what you see': 'sagen, was du siehst',
    'the way back by hand': 'mit den Händen zurück',
    'plan on from here': 'ab hier neu planen',
    'accept an offer': 'einen Vorschlag annehmen',
    'leave a way back': 'einen Rückweg abbrechen',
    'where you are': 'wo du bist',
    'the whole plan': 'der ganze Plan',
    'what a word means': 'was ein Wort bedeutet',
    'why it is so': 'warum es so ist',
    'all cautions': 'alle Vorsichtshinweise',
    'keep a remark': 'eine Notiz festhalten',
    'read the remarks': 'die Notizen lesen',
    'name this place': 'diese Stelle benennen',
    'the named places': 'die benannten Stellen',
    'repeat the instruction': 'die Anweisung wiederholen',
    'on the go, and finished': 'angefangene und fertige',
    'a drawing of the work': 'eine Zeichnung vom Gestrick',
    'the log to another file': 'Protokoll in andere Datei',
    'assign a foot switch': 'einen Fußschalter belegen',
    'big letters': 'große Schrift',
    'ring at each step': 'bei jedem Schritt läuten',
    'speak each step': 'jeden Schritt vorlesen',
    'how long to look twice': 'wie lange genau hinsehen',
    'centimetres or inches': 'Zentimeter oder Zoll',
    'the language of sentences': 'die Sprache der Sätze',
    'what fits now, and topics': 'was jetzt passt, und Themen',
    'leave, and come back later': 'beenden, später weiter',
    'words, or words and a word; or ask what is a swatch?':
      'words, oder words und ein Wort; oder frag: was ist eine Maschenprobe?',
    'the words of the trade, and what each means': 'die Wörter des Handwerks und was jedes bedeutet',
    'why, or why and what you wonder about': 'why, oder why und was du wissen willst',
    'the craft and the formulas, with the numbers of this bag':
      'das Handwerk und die Formeln, mit den Zahlen dieses Beutels',
    'all cautions, and the step at which each comes':
      'alle Vorsichtshinweise und bei welchem Schritt sie kommen',
    'help, help all, or help and a command or topic': 'help, help all, oder help und ein Befehl oder Thema',
    'When you assign a foot switch': 'Beim Belegen eines Fußschalters',
    'After half an hour of work': 'Nach einer halben Stunde Arbeit',
    'At step {0}': 'Bei Schritt {0}',
    'At steps {0} …, {1} in all': 'Bei den Schritten {0} …, insgesamt {1}',
    'At steps {0}': 'Bei den Schritten {0}',
    'Ask what any of these means, such as: what is a swatch?':
      'Frag, was eines davon bedeutet, zum Beispiel: was ist eine Maschenprobe?',
    '{0} is not among the words here. Type words to see them all.':
      '{0} ist nicht unter den Wörtern hier. Tippe words, um sie alle zu sehen.',
    '{0} is not among the words here. Did you mean {1}?':
      '{0} ist nicht unter den Wörtern hier. Meinst du {1}?',
    'Ask why of any of these, such as: why 3 times the width?':
      'Frag warum, zum Beispiel: warum 3 mal die Breite? Themen:',
    'Why it is so is not said here. Ask why of: {0}':
      'Warum das so ist, steht hier nicht. Du kannst fragen nach: {0}',
    'That is not among the reasons here. Ask why of: {0}':
      'Dazu steht hier nichts. Du kannst fragen nach: {0}',
    'This bag: {0}.': 'Dieser Beutel: {0}.',
    'Source: {0}.': 'Quelle: {0}.',
    'more of this': 'mehr dazu',
    'confirm {0} at once': '{0} auf einmal bestätigen',
    'a little tighter here': 'hier etwas fester',
    'before the break': 'vor der Pause',
    'Saving makes trouble. You can knit on: nothing is lost while this is open.':
      'Das Speichern macht Ärger. Du kannst weiterstricken: solange das hier offen ist, geht nichts verloren.',
    'You are being guided outside the plan, one step of the hands at a time.':
      'Du wirst außerhalb des Plans geführt, einen Handgriff nach dem anderen.',
    'There is something on offer. Nothing changes until you take it.':
      'Es liegt ein Vorschlag vor. Nichts ändert sich, bis du ihn annimmst.',
    'You are at the start: needles, the first loops, waste rows and the ravel cord.':
      'Du bist am Anfang: Nadeln, die ersten Maschen, Hilfsgarnreihen und der Trennfaden.',
    'You are knitting stripes.': 'Du strickst Streifen.',
    'You are at a shaping move: an increase at one edge, a decrease at the other.':
      'Du bist bei einem Formschritt: eine nach außen am einen Rand, eine nach innen am anderen.',
    'You are at a rehang: the work comes off on waste rows and is hung again.':
      'Du bist beim Umsetzen: das Gestrick kommt mit Hilfsgarnreihen von den Nadeln und wird neu eingehängt.',
    'You are closing: one row, the tail, waste rows, and the work comes off.':
      'Du bist beim Abschließen: eine Reihe, das Fadenende, Hilfsgarnreihen, dann kommt das Gestrick von den Nadeln.',
    'You are sewing the bottom, bar by bar.': 'Du nähst den Boden, Quersteg für Quersteg.',
    'You are making the cord.': 'Du machst die Kordel.',
    'You are threading the cord through the eyelets.': 'Du fädelst die Kordel durch die Lochmaschen.',
    'keys, key': 'Tasten, Taste',
    'With nothing typed, Enter or Space confirms the step, and Left arrow takes the last one back.':
      'Ist nichts getippt, bestätigt Enter oder Leertaste den Schritt, und Pfeil links nimmt den letzten zurück.',
    'Up and Down bring back what you typed, Tab completes a word, Escape clears the line.':
      'Pfeil auf und ab holen Getipptes zurück, Tab ergänzt ein Wort, Escape leert die Zeile.',
    'F2 shows large letters. Ctrl-C leaves; everything is saved.':
      'F2 zeigt große Schrift. Strg-C beendet; alles ist gespeichert.',
    'switches, foot switch, row trip': 'Schalter, Fußschalter, Reihenauslöser',
    'A foot switch or a row trip types a key. Type pedal and what it is to do, then press it.':
      'Ein Fußschalter oder Reihenauslöser tippt eine Taste. Tippe pedal und was er tun soll, und drücke ihn dann.',
    'Presses closer together than the pedal gap count as one, for a switch that bounces.':
      'Prellt ein Schalter, stell pedal gap höher: was in dieser Zeit mehrmals kommt, zählt als einmal.',
    'With a longer pause, a risky step stays on the screen longer before a press counts.':
      'Mit pause long steht ein heikler Schritt länger da, bevor ein Tastendruck zählt.',
    'finding, lost count, lost': 'Stelle finden, finden, verzählt',
    'Say what you see on the bed, as little as you know: you hear where that is, or what went wrong.':
      'Sag, was du auf dem Nadelbett siehst, und sei es wenig: du hörst, wo das ist oder was schiefging.',
    'The edges are the outermost needles that hold loops. Say more with find and.':
      'Die Ränder sind die äußersten Nadeln mit Maschen. Mehr sagst du mit find and.',
    'With choose you accept what is offered. Mending is guided step by step, and stop leaves it.':
      'Mit take nimmst du einen Vorschlag an. Beim Ausbessern wirst du Schritt für Schritt geführt; stop hört damit auf.',
    'ripping, undoing rows': 'auftrennen, zurückstricken',
    'The way back is guided: each row out with every loop caught, each needle and the row counter set back.':
      'Du wirst zurückgeführt: jede Reihe heraus und jede Masche aufgefangen, jede Nadel und das Zählwerk zurückgestellt.',
    'What hands cannot undo, such as a cut, is said before you come to it.':
      'Was Hände nicht rückgängig machen können, ein Schnitt etwa, wird vorher gesagt.',
    'To set the count right and leave the work as it is, use go. One step back is back.':
      'Um nur die Zählung zu richten und das Gestrick zu lassen, nimm go. Ein Schritt zurück ist back.',
    'replanning, longer, shorter, wrong size': 'neu planen, länger, kürzer, falsche Größe',
    'What is knitted stays. The rest can be longer or shorter, in whole repeats, or in another colour.':
      'Was gestrickt ist, bleibt. Der Rest kann länger oder kürzer werden, in ganzen Rapporten, oder eine andere Farbe haben.',
    'If the piece measures otherwise than the swatch, say what you measured. You see the new plan first.':
      'Misst das Stück anders als die Maschenprobe, sag, was du gemessen hast. Zuerst siehst du den neuen Plan.',
    'yarn, yarn runs short': 'Garn, Garn reicht nicht',
    'The plan shows what each yarn needs, with a reserve, and whether what you weighed is enough.':
      'Der Plan zeigt, was jedes Garn braucht, mit Reserve, und ob das Gewogene reicht.',
    'Weigh what is left of a yarn: weigh keeps it, and with replan the bag becomes one that the yarn allows.':
      'Wieg, was von einem Garn übrig ist: weigh merkt es sich, und mit replan wird der Beutel so, wie das Garn es erlaubt.',
    'log, saving, saved': 'Protokoll, speichern, gespeichert',
    'Each confirmed step is on disk before it is shown. You can leave at any step, and come back to it.':
      'Jeder bestätigte Schritt ist gespeichert, bevor du ihn siehst. Du kannst bei jedem gehen und zu ihm zurückkommen.',
    'If the disk makes trouble, save writes the whole log to another file, and the work goes on there.':
      'Macht die Platte Ärger, schreibt save das ganze Protokoll in eine andere Datei, und dort geht es weiter.',
    'Notes and named places are kept in the log too.':
      'Auch Notizen und benannte Stellen stehen im Protokoll.',
    'replay, lesson, teacher': 'abspielen, Lektion, wiedergeben',
    'A log can be played again, at the pace at which it was worked or faster: leave, and type slantwise replay and its file.':
      'Ein Protokoll lässt sich abspielen, so schnell wie gearbeitet oder schneller: tippe quit, dann slantwise replay und seine Datei.',
    'A teacher can put lines into a copy of a log with slantwise lesson. The logs are listed by bags.':
      'Wer unterrichtet, setzt mit slantwise lesson Zeilen in die Kopie eines Protokolls. Alle Protokolle zeigt bags.',
    'language, units, inches': 'Sprache, Einheiten, Zoll',
    'All sentences are in English or in German. Commands and needle names are the same in both.':
      'Alle Sätze gibt es auf Englisch oder Deutsch. Befehle und Nadelnamen sind in beiden gleich.',
    'Lengths are in centimetres or in inches.': 'Längen stehen in Zentimetern oder in Zoll.',
    'screen, drawing, large letters, sound': 'Bildschirm, Zeichnung, große Schrift, Ton',
    'A drawing can stand in place of the counters: the strip, the bag, the folded seam or the bed.':
      'Anstelle der Zähler kann eine Zeichnung stehen: die Bahn, der Beutel, die gefaltete Naht oder das Nadelbett.',
    'From across the room, large letters or speech tell the step, and a bell tells one step from another.':
      'Von weitem zeigt dir große Schrift den Schritt, oder er wird vorgelesen; an der Glocke hörst du, welcher es ist.',
    'There is no help on {0}.': 'Zu {0} gibt es keine Hilfe.',
    'Help and a command says more, such as help go.':
      'Mehr sagt help mit einem Befehl, zum Beispiel help go.',
    'swatch, gauge, stitch width, row height, let it rest':
      'Maschenprobe, Maschendichte, Maschenbreite, Reihenhöhe, ruhen',
    'On the needles the work is stretched. Only a piece that has rested tells how wide a stitch and how high a row will be.':
      'Auf den Nadeln ist das Gestrick gedehnt. Erst ein ausgeruhtes Stück zeigt, wie breit eine Masche und wie hoch eine Reihe wird.',
    'stitch width = width / stitches; row height = height / rows':
      'Maschenbreite = Breite / Maschen; Reihenhöhe = Höhe / Reihen',
    'rehang, hanging, hang again, needles, bed too short, margin':
      'Umsetzen, neu einhängen, Nadeln, Bett zu kurz, freier Rand',
    'The work needs a needle more with each move. Where the bed is too short for that, it is taken off and hung again where it began. The margin lets the carriage clear the work.':
      'Mit jedem Formschritt braucht das Gestrick eine Nadel mehr. Reicht das Nadelbett nicht, kommt es ab und wird am Anfang neu eingehängt. Am freien Rand fährt der Schlitten ganz über das Gestrick hinaus.',
    'needles = stitches + moves; times on the bed ≥ moves / (usable needles − stitches)':
      'Nadeln = Maschen + Formschritte; Male auf dem Nadelbett ≥ Formschritte / (nutzbare Nadeln − Maschen)',
    '{0}, and {1} are within the margins: no rehang':
      '{0}, und {1} liegen innerhalb der freien Ränder: kein Umsetzen',
    '{0}, and {1} are within the margins: hung {2} times':
      '{0}, und {1} liegen innerhalb der freien Ränder: {2}-mal eingehängt',
    'two rows, even rows, second row, every second row, every two rows, even number of rows':
      'zwei Reihen, gerade Reihenzahl, alle zwei Reihen, jede zweite Reihe, zweite Reihe',
    'After an even number of rows the carriage is home again: its needles are free for the tool, and each yarn waits on the side where it is needed next.':
      'Nach einer geraden Zahl von Reihen ist der Schlitten wieder auf der Ausgangsseite: die Nadeln sind frei für den Decker, und jedes Garn wartet dort, wo es gebraucht wird.',
    'a shaping move after every {0}': 'ein Formschritt nach je {0}',
    'home side, home, trailing side': 'Ausgangsseite, Heimseite',
    'Between stripes the yarn is carried up along the side where the carriage waits. Home on the trailing side puts these strands into the bottom seam, which hides them.':
      'Zwischen den Streifen läuft das Garn an der Seite hoch, an der der Schlitten wartet. Liegt sie am Abnahmerand, verschwinden diese Fäden in der Bodennaht.',
    'the work crawls to the left, home is on the right':
      'das Gestrick wandert nach links, die Ausgangsseite ist rechts',
    'the work crawls to the left and home is on the left: the strands lie along the mouth':
      'das Gestrick wandert nach links, und die Ausgangsseite ist links: die Fäden liegen an der Öffnung',
    'the work crawls to the right, home is on the left':
      'das Gestrick wandert nach rechts, die Ausgangsseite ist links',
    'the work crawls to the right and home is on the right: the strands lie along the mouth':
      'das Gestrick wandert nach rechts, und die Ausgangsseite ist rechts: die Fäden liegen an der Öffnung',
    'parked yarn, park, own end': 'abgelegtes Garn, ablegen, eigenes Ende',
    'Each waiting yarn has its own end of the bed, so that the two do not twist round each other.':
      'Jedes wartende Garn hat sein eigenes Ende des Nadelbetts, damit sich die Garne nicht verdrehen.',
    'resting, push out of work, one in, decrease, loss':
      'Ruhestellung, in Ruhestellung, eine nach innen, Abnahme, abnehmen',
    'The needle that a decrease has emptied goes out of work. Left working, the next pass would begin a stray stitch on it.':
      'Die Nadel, die bei der Abnahme leer wird, kommt in Ruhestellung. Sonst beginnt der nächste Schlittengang dort eine Masche, die nicht hingehört.',
    'edge stitches, prongs, two edge stitches, transfer tool':
      'Randmaschen, Spitzen, zwei Randmaschen, Decker, Umhängewerkzeug',
    'The tool moves as many stitches as it has prongs. They make a firm edge above the eyelets: the hole comes on the needle behind them.':
      'Der Decker hängt so viele Maschen um, wie er Spitzen hat. Sie geben über den Lochmaschen einen festen Rand: das Loch kommt auf die Nadel dahinter.',
    'eyelet = needle number (edge stitches + 1) from the new edge':
      'Lochmasche = Nadel Nummer (Randmaschen + 1) vom neuen Rand',
    'feeder, empty feeder, nothing in the feeder': 'Fadenführer, leerer Fadenführer',
    'A pass with nothing in the feeder lets every stitch go: the old loops slip off and no new ones come.':
      'Ein Schlittengang mit leerem Fadenführer lässt alle Maschen los: die alten gleiten ab, und neue kommen nicht.',
    'weights, claw weights, comb, move the weights':
      'Gewichte, Krallengewichte, Anschlagkamm, Gewichte höher hängen',
    'Loops knit off well only where something draws them down. The work grows away from its weights, and fastest at the growing edge: so they are moved up every 10 to 20 rows.':
      'Maschen stricken nur gut ab, wo etwas nach unten zieht. Das Gestrick wächst von seinen Gewichten weg, am Zunahmerand am schnellsten: darum kommen sie alle 10 bis 20 Reihen höher.',
    'waste yarn, waste, waste rows, ravel cord': 'Hilfsgarn, Hilfsgarnreihen, Trennfaden',
    'Start and end are grafted to each other, so both must stay open. Waste rows hold the loops until then, and the ravel cord lets go of the whole start with one pull.':
      'Anfang und Ende werden miteinander verbunden, also müssen beide offen bleiben. Hilfsgarnreihen halten die Maschen so lange, und der Trennfaden gibt mit einem Zug den ganzen Anfang frei.',
    '{0} before the start, {1} after the closing row': '{0} vor dem Anfang, {1} nach der Schlussreihe',
    'closing row, one row less, last row': 'Schlussreihe, eine Reihe weniger, letzte Reihe',
    'The graft is a row itself, the second of the last stripe. So that stripe is knitted one row short. Knitted in full, the join would show a stripe too high.':
      'Die Verbindung ist selbst eine Reihe, die zweite des letzten Streifens. Darum wird er um eine Reihe kürzer gestrickt. Ganz gestrickt wäre er an der Verbindung zu hoch.',
    'rows knitted = rows round − 1': 'gestrickte Reihen = Reihen rundum − 1',
    'stripes, colours, colour of the last stripe': 'Streifen, Farben, Farbe des letzten Streifens',
    'Neighbours differ in colour, the last stripe and the first too: they meet at the graft, and alike they would read as one wide stripe.':
      'Nachbarn haben verschiedene Farben, auch der letzte Streifen und der erste: an der Verbindung liegen sie nebeneinander und sähen bei gleicher Farbe wie ein breiter aus.',
    'the first is {0}, the last {1}': 'der erste ist {0}, der letzte {1}',
    'steam, iron, press': 'Dampf, dämpfen, bügeln',
    'children, child, toys, EN 71, small children, cautions, danger':
      'Kinder, Spielzeug, EN 71, kleine Kinder, Gefahr',
    'A cord can catch round a neck. This bag is no toy; where it is sold or given to a child, local rules decide.':
      'Eine Kordel kann sich um einen Hals legen. Dieser Beutel ist kein Spielzeug; wo er verkauft oder einem Kind gegeben wird, gelten die örtlichen Regeln.',
    'a rest for the hands, rest my hands, rest your hands, hands, pause, half hour':
      'eine Pause für die Hände, Pause, Hände, halbe Stunde',
    'The same few moves for an hour tire hands and shoulders. A rest every half hour or so keeps them well.':
      'Dieselben Handgriffe eine Stunde lang ermüden Hände und Schultern. Etwa jede halbe Stunde eine Pause hält sie frisch.',
    'graft tail, tail, 3 times the width, three times the width, 3 times, three times, long tail':
      'Fadenende zum Verbinden, Fadenende, 3 mal die Breite, dreimal die Breite, 3 mal, dreimal, dreifache Breite, langes Fadenende',
    "The graft's thread runs through a whole row of loops. Three times the width as it lies on the needles is the rule; the yarn of one row and 10 % is the model. The larger counts, and some to hold.":
      'Der Faden läuft beim Verbinden durch eine ganze Reihe Maschen. Dreimal die Breite auf den Nadeln ist die Regel, das Garn einer Reihe und 10 % das Modell. Das Größere zählt, und etwas zum Festhalten.',
    'tail = the larger of 3 × stitches × pitch and 1.1 × stitches × loop length, + {0} cm':
      'Fadenende = das Größere von 3 × Maschen × Nadelabstand und 1,1 × Maschen × Maschenlänge, + {0} cm',
    'seam, seam tail, mattress seam, bars, bottom, draw up':
      'Naht, Nahtfaden, Matratzenstich, Querstege, Boden, zusammenziehen',
    'Half of the rows face the other half, one bar to a row. The thread goes there and back between the edges: twice the seam, and some to hold. Drawn up every 6 to 8 bars it lies even.':
      'Die Hälfte der Reihen liegt der anderen gegenüber, ein Quersteg je Reihe. Der Faden geht zwischen den Rändern hin und her: zweimal die Naht, und etwas zum Festhalten. Alle 6 bis 8 Querstege zusammengezogen liegt sie gleichmäßig.',
    'bars = rows round / 2; tail = 2 × width + {0} cm':
      'Querstege = Reihen rundum / 2; Fadenende = 2 × Breite + {0} cm',
    'eyelets, holes, even number of holes, leave empty, in work and empty, one out, increase, gain':
      'Lochmaschen, Löcher, gerade Zahl von Löchern, leer lassen, eine nach außen, Zunahme, zunehmen',
    'Each increase leaves a working needle empty, and the next pass lays a loop on it: a hole for the cord. In and out through an even number of holes, both cord ends come out on the outside.':
      'Jede Zunahme lässt eine Nadel leer in Arbeitsstellung, und der nächste Schlittengang legt eine Masche darauf: ein Loch für die Kordel. Nach einer geraden Zahl von Löchern kommen beide Kordelenden außen heraus.',
    'eyelets = moves; the cord uses an even number of them':
      'Lochmaschen = Formschritte; die Kordel nutzt eine gerade Zahl davon',
    '{0}, and the cord uses {1}': '{0}, und die Kordel nutzt {1}',
    '{0}, the cord uses {1} and passes by number {2}, across from the graft':
      '{0}, die Kordel nutzt {1} und lässt Nummer {2} aus, der Verbindung gegenüber',
    'wider gap, widest gap, spacing, gap': 'größere Lücke, Lücke, Abstand',
    'From eyelet to eyelet it is one stitch across and the rows of one move up. At the graft no move was made, so the gap there is wider.':
      'Von Lochmasche zu Lochmasche ist es eine Masche quer und die Reihen eines Formschritts hoch. An der Verbindung gab es keinen Formschritt, darum ist die Lücke dort größer.',
    'spacing = √(stitch width² + (rows between moves × row height)²)':
      'Abstand = √(Maschenbreite² + (Reihen je Formschritt × Reihenhöhe)²)',
    '{0}, and {1} at the graft': '{0}, und {1} an der Verbindung',
    'cord, cord length, rounds, ties': 'Kordel, Kordellänge, Runden, Schleife',
    'width, wide, mouth, circumference, size': 'Breite, breit, Öffnung, Umfang, Größe',
    'Once round the tube, the edges crawl one way while the rows climb the other: the mouth is as long as the slant between. The bag lies flat, so it is half as wide.':
      'Einmal um den Schlauch wandern die Ränder zur Seite, während die Reihen steigen: die Öffnung ist so lang wie die Schräge dazwischen. Flach liegt der Beutel halb so breit.',
    'depth, deep, height': 'Tiefe, tief, Höhe',
    "The strip's area, spread along the mouth, gives the depth. The bottom seam is sewn one stitch in, which takes one stitch away.":
      'Die Fläche der Bahn, auf die Öffnung verteilt, gibt die Tiefe. Die Bodennaht liegt eine Masche weiter innen und nimmt eine Masche weg.',
    'each stitch is {0} of depth: {1} × {2} = {3}': 'jede Masche gibt {0} Tiefe: {1} × {2} = {3}',
    'depth below the cord, below the cord, inside': 'Tiefe unter der Kordel, unter der Kordel, innen',
    'The eyelets lie half a stitch below the edge stitches. What is above the cord does not count as room.':
      'Die Lochmaschen liegen eine halbe Masche unter den Randmaschen. Was über der Kordel ist, zählt nicht als Platz.',
    'depth below the cord = depth − (edge stitches + ½) × depth of a stitch':
      'Tiefe unter der Kordel = Tiefe − (Randmaschen + ½) × Tiefe einer Masche',
    'angle, slant, degrees, bias': 'Winkel, Schräge, Grad, schräg',
    'The stripes climb with the rows while the edges crawl sideways. More moves for the same rows make them flatter.':
      'Die Streifen steigen mit den Reihen, während die Ränder zur Seite wandern. Mehr Formschritte bei gleicher Reihenzahl machen sie flacher.',
    'arctan({0} / ({1})) = {2} degrees': 'arctan({0} / ({1})) = {2} Grad',
    'whole repeats, repeat, rows, not as wide as asked, smaller, larger':
      'ganze Rapporte, Rapport, Reihen, kleiner, nicht so breit wie gewünscht',
    'The last row meets the first at the graft. The colours meet there only after whole repeats of the stripes, so the width goes up in steps.':
      'Die letzte Reihe trifft an der Verbindung auf die erste. Die Farben passen dort nur nach ganzen Rapporten, darum wächst die Breite in Stufen.',
    'rows round = a whole number of repeats, and of rows between moves':
      'Reihen rundum = eine ganze Zahl von Rapporten und von Reihen je Formschritt',
    'shaping moves, moves, number of moves, crawl, shaping': 'Formschritte, Zahl der Formschritte, wandern',
    'One stitch out at one edge and one in at the other keep the count the same and slant the strip. After the last row no move is due: it is grafted.':
      'Eine nach außen am einen Rand und eine nach innen am anderen halten die Maschenzahl gleich und machen die Bahn schräg. Nach der letzten Reihe kommt kein Formschritt: sie wird verbunden.',
    'moves = rows round / rows between moves − 1': 'Formschritte = Reihen rundum / Reihen je Formschritt − 1',
    'ease, room, girth, contents': 'Mehrweite, Zugabe, Inhalt',
    '{0} / 2 and {1} %: at least {2} wide': '{0} / 2 und {1} %: mindestens {2} breit',
    'no girth was asked for': 'kein Umfang angegeben',
    'yarn, how much yarn, grams, metres, weight of the yarn, tex':
      'Garn, wie viel Garn, Gramm, Meter, Gewicht des Garns, tex, Garnmenge',
    'Each yarn: its stitches times the loop length, its strand up past other stripes, {0} cm at each end, and the graft, the seam and the cord where it makes them.':
      'Jedes Garn: seine Maschen mal die Maschenlänge, sein Faden an anderen Streifen hoch, {0} cm an jedem Ende, und Verbindung, Naht und Kordel, wo sie aus ihm sind.',
    'grams = metres × tex / 1000; tex = 100 000 / (metres to 100 g)':
      'Gramm = Meter × tex / 1000; tex = 100 000 / (Meter auf 100 g)',
    'the definition of tex; tails are common practice':
      'die Definition von tex; Fadenenden nach allgemeinem Brauch',
    'loop length, yarn in a stitch, loop, ks, constants, relaxed':
      'Maschenlänge, Garn in einer Masche, ks, Konstanten, ausgeruht',
    'In plain knitting the size of a stitch follows from the yarn in it, by how it has rested. A measured loop counts more than the model: unravel one swatch row and divide by its stitches.':
      'Glatt gestrickt folgt die Größe einer Masche aus dem Garn in ihr, je nachdem, wie sie geruht hat. Gemessen gilt mehr als das Modell: zieh eine Reihe der Maschenprobe auf und teile durch ihre Maschen.',
    'loop = √(ks × stitch width × row height); ks {0} dry-relaxed, {1} wet-relaxed, {2} fully-relaxed':
      'Maschenlänge = √(ks × Maschenbreite × Reihenhöhe); ks {0} trocken, {1} nass, {2} ganz ausgeruht',
    '{0}; measured, and used: {1}': '{0}; gemessen und verwendet: {1}',
    'tightness, tightness factor, limp, jam': 'Dichtefaktor, Dichtefaktor, lappig, klemmt',
    'fabric weight, square metre, weight of the fabric, heavy, fabric':
      'Gewicht des Gestricks, Quadratmeter, schwer, Gestrick',
    'All loops of a square metre, times the yarn in each, times what the yarn weighs.':
      'Alle Maschen eines Quadratmeters, mal das Garn in jeder, mal was das Garn wiegt.',
    'grams to the square metre = loops to the square metre × loop length in m × tex / 1000':
      'Gramm je Quadratmeter = Maschen je Quadratmeter × Maschenlänge in m × tex / 1000',
    'Texcoms Textile Technical Handbook 2023, p. 147': 'Texcoms Textile Technical Handbook 2023, S. 147',
    'yarn class, class, weight class, light, medium, bulky': 'Garnklasse, Garnstärke, Klasse',
    'Craft Yarn Council, Standard Yarn Weight System': 'Craft Yarn Council, Standard Yarn Weight System',
    'Rest your hands and shoulders for a few minutes (rule of thumb).':
      'Gönn Händen und Schultern ein paar Minuten Pause (Faustregel).',
    'That was half an hour of work.': 'Das war eine halbe Stunde Arbeit.',
    'half an hour, rest your hands': 'halbe Stunde, gönn den Händen Pause',
    'common practice, no source': 'allgemeiner Brauch, nicht belegt',
    'rule of thumb': 'Faustregel',
    'plane geometry': 'ebene Geometrie',
    'The long row of needles that the knitting hangs on. The needles count outward from the middle: L1, L2 … to the left, R1, R2 … to the right.':
      'Die lange Reihe von Nadeln, an der das Gestrick hängt. Gezählt wird von der Mitte nach außen: L1, L2 … nach links, R1, R2 … nach rechts.',
    'parked yarn, parked, park': 'abgelegtes Garn, abgelegt, ablegen',
    'When the bed runs out, the work is taken off on waste rows and hung again at the end where it began, with room to crawl on.':
      'Ist das Nadelbett zu Ende, kommt das Gestrick mit Hilfsgarnreihen von den Nadeln und wird dort neu eingehängt, wo es begann: so hat es wieder Platz.',
    'edges A and B, edge A, edge B': 'Kanten A und B, Kante A, Kante B',
    'the plan on a sheet': 'der Plan auf einem Blatt',
    'Type help and a topic: {0}; or help all.': 'Tippe help und ein Thema: {0}; oder help all.',

    // Help
    'Last time, at the end: {0}': 'Letztes Mal, am Ende: {0}',
    'Last time, at step {0}: {1}': 'Letztes Mal, bei Schritt {0}: {1}',

    // The first run
    'question {0} of {1}': 'Frage {0} von {1}',
    '{0}, or {1}': '{0}, oder {1}',
    'keeps {0}': 'lässt es bei: {0}',
    'takes {0}': 'nimmt: {0}',
    '? explains; back, change, answers, practice, help, quit':
      '? erklärt; back, change, answers, practice, help, quit',
    'the plan': 'der Plan',
    'Is this the bag you want?': 'Soll es dieser Beutel sein?',
    'It cannot be made like this: change one of your answers.':
      'So lässt er sich nicht stricken: ändere eine deiner Antworten.',
    'keeps the brief and begins': 'speichert die Vorgabe und beginnt',
    'change size': 'change größe',
    'change size, or another answer; answers, practice, help, quit':
      'change größe oder eine andere Antwort; answers, practice, help, quit',
    'For example: {0}': 'Zum Beispiel: {0}',
    'An empty line {0}.': 'Eine leere Zeile {0}.',
    'My bag': 'Mein Beutel',
    plum: 'pflaume',
    mint: 'minze',
    'Say which number is which, as in: {0}.': 'Sag dazu, welche Zahl was ist, so wie: {0}.',
    'The yarn needs a name of its own, first in the line.':
      'Das Garn braucht einen eigenen Namen, am Anfang der Zeile.',
    'Both yarns are called {0}: give one of them another name.': (yarn) =>
      `Beide Garne heißen ${quoted(yarn)}: gib einem davon einen anderen Namen.`,
    'There is no answer {0} to change: choose {1}, or its number.': (word, choices) =>
      `Eine Antwort ${quoted(word)} gibt es nicht: wähle ${choices} oder die Nummer.`,
    'This is the first question.': 'Das ist die erste Frage.',
    'Type units cm, or units in.': 'Tippe units cm oder units in.',
    '{0} does nothing here: press Enter to begin, or type change and what to change.': (word) =>
      `${quoted(word)} bewirkt hier nichts: Enter beginnt, change und ein Wort ändert eine Antwort.`,
    'That is too little: at least {0}.': 'Das ist zu wenig: mindestens {0}.',
    'That is too much: at most {0}.': 'Das ist zu viel: höchstens {0}.',
    'Give a whole number, without a fraction.': 'Gib eine ganze Zahl an, ohne Komma.',
    'Give an even number of rows, so that both yarns wait on the home side.':
      'Gib eine gerade Reihenzahl an, damit beide Garne auf der Ausgangsseite warten.',
    'A colour is # and six of the figures 0-9 and letters a-f, such as #6b2d5c.':
      'Eine Farbe ist # mit sechs Zeichen aus 0-9 und a-f, zum Beispiel #6b2d5c.',
    'The name is empty.': 'Der Name ist leer.',
    'The name is too long: at most {0}.': 'Der Name ist zu lang: höchstens {0}.',
    'That cannot be a name: it has signs in it that cannot be seen.':
      'Das geht nicht als Name: es sind unsichtbare Zeichen darin.',
    'That cannot be used here: give another.': 'Das geht hier nicht: gib etwas anderes an.',
    'I do not know what {0} means here: answer as in {1}.': (word, example) =>
      `Was ${quoted(word)} hier heißt, weiß ich nicht: antworte so wie ${quoted(example)}.`,
    'Give two lengths, as in {0}.': (example) => `Gib zwei Längen an, so wie ${quoted(example)}.`,
    'Give the number of needles and how far apart they are, as in {0}.': (example) =>
      `Gib die Zahl der Nadeln und ihren Abstand an, so wie ${quoted(example)}.`,
    'Give stitches and rows, and the width and height they measure, as in {0}.': (example) =>
      `Gib Maschen und Reihen an, und wie breit und hoch sie messen, so wie ${quoted(example)}.`,
    '2 balls of 50 g, 120 m each': '2 Knäuel zu 50 g, je 120 m',
    'Is the yarn called {0}? Then answer with that in quotes; balls and lengths as in {1}.':
      'Heißt das Garn {0}? Dann schreib den Namen in Anführungszeichen; Knäuel und Längen wie in {1}.',
    'Give one number of rows, or two.': 'Gib eine Reihenzahl an, oder zwei.',
    'Answer as in {0}.': (example) => `Antworte so wie ${quoted(example)}.`,
    'To knit: {0}, {1} round and {2}. They take {3} needles; the bed has {4}.':
      'Zu stricken: {0}, {1} rundum und {2}. Das braucht {3} Nadeln, das Nadelbett hat {4}.',
    'Have ready too: some waste yarn of another colour, and a smooth strand as ravel cord.':
      'Leg auch bereit: etwas Hilfsgarn in anderer Farbe und einen glatten Faden als Trennfaden.',
    'Cord, waste yarn, edges and crawl are the usual ones. They stand in the brief file, to be changed there.':
      'Kordel, Hilfsgarn, Ränder und Wanderrichtung sind wie üblich. Sie stehen in der Vorgabedatei und lassen sich dort ändern.',
    '{0}: {1}, sewn and lying flat, {2}.': '{0}: {1}, genäht und flach gelegt, {2}.',
    '{0}: {1}, sewn and lying flat. Asked: {2}.': '{0}: {1}, genäht und flach gelegt. Gewünscht: {2}.',
    'Yarn, with a reserve of {0} %: {1}.': 'Garn, mit {0} % Reserve: {1}.',
    '{0} {1}, enough (you have {2})': '{0} {1}, reicht (du hast {2})',
    '{0} {1}, too little (you have {2})': '{0} {1}, reicht nicht (du hast {2})',
    'The swatch is a guess, so the bag may come out larger or smaller. Knit one first, then type change swatch.':
      'Die Maschenprobe ist geschätzt, der Beutel kann größer oder kleiner werden. Strick erst eine, dann tippe change probe.',
    'Where you gave no length, yarn is taken as {0} to 100 g, a rule of thumb: the label knows better.':
      'Für Garn ohne Lauflänge gelten {0} auf 100 g, eine Faustregel: die Banderole weiß es besser.',
    name: 'Name',
    'What is the bag to be called?': 'Wie soll der Beutel heißen?',
    'Dice bag': 'Würfelbeutel',
    size: 'Größe',
    'How wide and how deep is it to be, sewn and lying flat? Or how far round and how high is what goes in?':
      'Wie breit und wie tief soll er sein, genäht und flach gelegt? Oder: welchen Umfang und welche Höhe hat, was hineinkommt?',
    '14 by 18 cm': '14 mal 18 cm',
    '5.5 by 7 in': '5,5 mal 7 Zoll',
    '26 round 12 high': 'Umfang 26 Höhe 12',
    'Which needle bed do you have: how many needles, and how far apart?':
      'Welches Nadelbett hast du: wie viele Nadeln, in welchem Abstand?',
    '120 needles 6 mm': '120 Nadeln 6 mm',
    'fine 200': 'fein 200',
    'mid 120': 'mittel 120',
    'bulky 90': 'grob 90',
    '{0}, {1} mm apart': '{0} im Abstand von {1} mm',
    'What does your swatch measure: how many stitches over its width, how many rows over its height?':
      'Was misst deine Maschenprobe: wie viele Maschen auf die Breite, wie viele Reihen auf die Höhe?',
    '40 stitches 19.2 cm, 60 rows 21.6 cm': '40 Maschen 19,2 cm, 60 Reihen 21,6 cm',
    '40 stitches 7.5 in, 60 rows 8.5 in': '40 Maschen 7,5 Zoll, 60 Reihen 8,5 Zoll',
    'a guess from your bed: {0} (rule of thumb)': 'nach deinem Nadelbett geschätzt: {0} (Faustregel)',
    'first yarn': 'erstes Garn',
    'What is the first yarn called? Behind its name goes what you know of it: colour, length of 100 g, grams you have.':
      'Wie heißt das erste Garn? Dahinter kommt, was du weißt: Farbe, Lauflänge auf 100 g, wie viel du hast.',
    'plum #6b2d5c 190 m per 100 g 60 g': 'pflaume #6b2d5c 190 m auf 100 g 60 g',
    'plum #6b2d5c 210 yd per 100 g 2 oz': 'pflaume #6b2d5c 210 yd auf 100 g 2 oz',
    'second yarn': 'zweites Garn',
    'And the second yarn, for the stripes between? The word none knits all in {0}.':
      'Und das zweite Garn, für die Streifen dazwischen? Mit keins wird alles in {0} gestrickt.',
    'mint #9fd8c2 190 m per 100 g 45 g': 'minze #9fd8c2 190 m auf 100 g 45 g',
    'mint #9fd8c2 210 yd per 100 g 1.5 oz': 'minze #9fd8c2 210 yd auf 100 g 1,5 oz',
    'none, all in {0}': 'keins, alles in {0}',
    'How many rows high are the stripes? One even number, or one for {0} and one for {1}.':
      'Wie viele Reihen hoch sind die Streifen? Eine gerade Zahl, oder eine für {0} und eine für {1}.',
    '4 and 2': '4 und 2',
    'for what is {0} round and {1} high': 'für etwas mit {0} Umfang und {1} Höhe',
    '{0} over {1}, {2} over {3}': '{0} auf {1}, {2} auf {3}',
    '{0} to 100 g (rule of thumb)': '{0} auf 100 g (Faustregel)',
    '{0} to 100 g': '{0} auf 100 g',
    '{0} each': 'je {0}',
    'not asked yet': 'noch nicht gefragt',
    'A few questions, and the bag begins. Enter takes what is offered, ? explains, practice begins the practice bag instead.':
      'Ein paar Fragen, und der Beutel beginnt. Enter nimmt, was dasteht, ? erklärt, practice beginnt stattdessen den Übungsbeutel.',
    'Your answers from last time are still here; change goes to one of them.':
      'Deine Antworten vom letzten Mal sind noch da; change führt zu einer davon.',
    'Answer as in the example, or press Enter to take what is offered.':
      'Antworte wie im Beispiel, oder nimm mit Enter, was dasteht.',
    'back goes one question back; answers lists what you answered, and change size, or change 2, goes to one of them.':
      'back geht eine Frage zurück; answers zeigt deine Antworten, und change größe oder change 2 führt zu einer davon.',
    '? swatch explains a word; units in asks in inches; practice begins the practice bag.':
      '? Maschenprobe erklärt ein Wort; units in fragt in Zoll; practice beginnt den Übungsbeutel.',
    'After the last question you see the plan. Enter begins; save my-bag.json begins too, and keeps the brief in that file.':
      'Nach der letzten Frage siehst du den Plan. Enter beginnt; save beutel.json auch, und speichert die Vorgabe in dieser Datei.',
    'quit leaves. Your answers are kept: slantwise new goes on with them.':
      'quit beendet. Deine Antworten bleiben: slantwise new macht damit weiter.',
    'This is the practice bag; the word new plans a bag of your own.':
      'Das ist der Übungsbeutel; mit new planst du deinen eigenen.',
    '{0} is saved, and waits in {1}': '{0} ist gespeichert und wartet in {1}',
    'Your answers are kept: slantwise new goes on with them.':
      'Deine Antworten bleiben: slantwise new macht damit weiter.',
    'The answers cannot be kept for another day: {0} Go on all the same.':
      'Die Antworten lassen sich nicht für später speichern: {0} Mach trotzdem weiter.',
    'The brief is kept in {0}': 'Die Vorgabe ist gespeichert in {0}',
    'The brief has no file of its own: {0} The log holds it too.':
      'Die Vorgabe hat keine eigene Datei: {0} Im Protokoll steht sie auch.',
    '{0} cannot be read. If your bag is in it, type quit, and then slantwise check with its name.':
      '{0} lässt sich nicht lesen. Ist dein Beutel darin, tippe quit und dann slantwise check mit dem Namen.',
    ask: 'Frage',
    'as in': 'wie',
    Enter: 'Enter',
    'plan a bag of your own; this one is saved, and waits':
      'einen eigenen Beutel planen; dieser ist gespeichert und wartet',
    'plan a bag of your own': 'einen eigenen Beutel planen',
    'Keep cords from small children: free ends of {0} cm, tied a loop of {1} cm. EN 71-1:2005+A8:2009 let toys for the very young have {2} and {3} cm; see the edition in force. Local rules decide.':
      'Halte Kordeln von kleinen Kindern fern: freie Enden {0} cm, gebunden eine Schlinge von {1} cm. EN 71-1:2005+A8:2009 erlaubte für Spielzeug der Kleinsten {2} und {3} cm; sieh in die geltende Ausgabe. Es gelten die Regeln am Ort.',
    '{0} stitches and {1} rows on {2}, {3}, stitch size {4}': (stitches, rows, size, state, dial) =>
      `${stitches} Maschen und ${rows} Reihen auf ${size}, ${stateWord(state)}, Maschenweite ${dial}`,
    aim: 'Ziel',
    'before a swatch: ten stitches of this yarn should measure {0} and ten rows {1} at rest, for a tightness of {2} (rule of thumb)':
      'vor der Maschenprobe: zehn Maschen aus diesem Garn sollen ausgeruht {0} messen und zehn Reihen {1}, bei einem Dichtefaktor von {2} (Faustregel)',
    'by the gauge of {0} plain knitting (Knapton and others 1968)': (state) =>
      `nach der Maschendichte von glattem Gestrick, ${stateWord(state)} (Knapton und andere 1968)`,
    'hand yarns at the gauge of their labels have {0} to {1}, a bag that keeps its shape {2} to {3} (rule of thumb)':
      'Handstrickgarne haben bei der Maschendichte ihrer Banderole {0} bis {1}, ein Beutel, der die Form hält, {2} bis {3} (Faustregel)',
    'limp and see-through: {0}': 'schlaff und durchsichtig: {0}',
    'soft: {0}': 'weich: {0}',
    'so tight that loops jam: {0}': 'so fest, dass die Maschen klemmen: {0}',
    'stiff: {0}': 'steif: {0}',
    'firm: {0}': 'fest: {0}',
    start: 'Anfang',
    'a ravel cord of {0}: the yarn of a row and 10 %, and {1} at each end':
      'ein Trennfaden von {0}: das Garn einer Reihe und 10 %, und {1} an jedem Ende',
    '{0} of {1}, {2} long: the mouth, {3} for its way in and out (rule of thumb), and two ties of {4}. {5}, {6}, {7} of yarn, {8}.':
      '{0} aus {1}, {2} lang: die Öffnung, {3} für den Weg hinein und hinaus (Faustregel) und zwei Enden von {4}. {5}, {6}, {7} Garn, {8}.',
    'keep cords from small children: EN 71-1:2005+A8:2009 let toys for the very young have a free cord of {0} mm and a noose {1} mm round, pulled with 25 N; see the edition in force. This bag is no toy; local rules decide.':
      'halte Kordeln von kleinen Kindern fern: EN 71-1:2005+A8:2009 erlaubte für Spielzeug der Kleinsten eine freie Kordel von {0} mm und eine Schlinge von {1} mm Umfang, mit 25 N gezogen; sieh in die geltende Ausgabe. Dieser Beutel ist kein Spielzeug; es gelten die Regeln am Ort.',
    '{0} ± {1} wide and {2} ± {3} deep, flat and sewn, {4} (19 of 20 bags lie within)': (
      width,
      plus,
      depth,
      more,
      state,
    ) =>
      `${width} ± ${plus} breit und ${depth} ± ${more} tief, flach und genäht, ${stateWord(state)} (19 von 20 Beuteln liegen darin)`,
    '{0} and ± {1}': '{0} und ± {1}',
    surer: 'sicherer',
    'a swatch of {0} stitches and {1} rows: ± {2}': 'eine Maschenprobe von {0} Maschen und {1} Reihen: ± {2}',
    "look how far the swatch's top edge stands aside, and write it as asideCm (0.1 where it is straight): ± {0}":
      'sieh nach, wie weit die Oberkante der Maschenprobe seitlich steht, und schreib es als asideCm (0,1, wo sie gerade ist): ± {0}',
    'as knit': 'gestrickt',
    '{0} wide and {1} deep, {2} as the swatch was': (width, depth, state) =>
      `${width} breit und ${depth} tief, ${stateWord(state)} wie die Maschenprobe`,
    'at least {0} wide and {1} deep below the cord, for what is {2} round, {3} high and {4} thick, with {5} % ease both ways (rule of thumb); it stands on the bottom seam, and the bag closes over it':
      'mindestens {0} breit und unter der Kordel {1} tief, für {2} Umfang, {3} Höhe und {4} Dicke, mit {5} % Mehrweite in beiden Richtungen (Faustregel); es steht auf der Bodennaht, und der Beutel schließt sich darüber',
    'toys for the very young: no free cord over {0} mm, no noose over {1} mm round, stretched by 25 N':
      'Spielzeug der Kleinsten: keine freie Kordel über {0} mm, keine Schlinge über {1} mm Umfang, mit 25 N gedehnt',
    'free end {0}, tied loop {1} round': 'freies Ende {0}, gebundene Schlinge {1} Umfang',
    'EN 71-1:2005+A8:2009, 5.4 b and c; the edition in force decides':
      'EN 71-1:2005+A8:2009, 5.4 b und c; es gilt die aktuelle Ausgabe',
    'mouth = √(a² + b² + 2·a·b·sin lean), a = moves × stitch width, b = rows round × row height; width = half of it':
      'Öffnung = √(a² + b² + 2·a·b·sin Schräge), a = Formschritte × Maschenbreite, b = Reihen rundum × Reihenhöhe; Breite = die Hälfte',
    '√(({0})² + ({1})²{2}){3} = {4}; half is {5}': '√(({0})² + ({1})²{2}){3} = {4}; die Hälfte ist {5}',
    'depth = (stitches − 1) × stitch width × rows round × row height × cos lean / mouth':
      'Tiefe = (Maschen − 1) × Maschenbreite × Reihen rundum × Reihenhöhe × cos Schräge / Öffnung',
    'angle = arctan(b × cos lean / (a + b × sin lean)), from the bottom edge':
      'Winkel = arctan(b × cos Schräge / (a + b × sin Schräge)), vom Bodenrand aus',
    'arctan({0} × {1} / ({2} + {3} × {4})) = {5} degrees': 'arctan({0} × {1} / ({2} + {3} × {4})) = {5} Grad',
    'The bag must go round what is put in, and close above it: from the flat bottom over half its thickness, up, and over half again. So the width is half the girth, and some more.':
      'Der Beutel muss um das herumreichen, was hineinkommt, und sich darüber schließen: vom flachen Boden über die halbe Dicke, hinauf und wieder über die halbe. Darum ist die Breite der halbe Umfang und etwas mehr.',
    'width = girth / 2 × (1 + ease); depth below the cord = height × (1 + ease) + thickness':
      'Breite = Umfang / 2 × (1 + Mehrweite); Tiefe unter der Kordel = Höhe × (1 + Mehrweite) + Dicke',
    'reserve, 10 %, 15 %, ten percent, more yarn': 'Reserve, 10 %, 15 %, zehn Prozent, mehr Garn',
    'A bag that runs out of yarn in its last row is no bag. So 10 % is added before your scales are asked, or 15 % where the loop was not measured.':
      'Ein Beutel, dem in der letzten Reihe das Garn ausgeht, ist kein Beutel. Darum kommen 10 % dazu, bevor deine Waage gefragt wird, oder 15 %, wo die Masche nicht gemessen ist.',
    'grams with reserve = 1.1 × grams with a measured loop, 1.15 × grams without':
      'Gramm mit Reserve = 1,1 × Gramm mit gemessener Masche, 1,15 × Gramm ohne',
    'Munden 1959, Journal of the Textile Institute 50, T448, for wool; fully-relaxed by Knapton and others 1968 (from memory)':
      'Munden 1959, Journal of the Textile Institute 50, T448, für Wolle; ganz ausgeruht nach Knapton und anderen 1968 (aus dem Gedächtnis)',
    'Thick yarn in short loops is tight, thin yarn in long loops is loose. Too loose and the fabric is limp; too tight and the loops jam, and the carriage with them.':
      'Dickes Garn in kurzen Maschen ist fest, dünnes in langen locker. Zu locker wird das Gestrick schlaff; zu fest klemmen die Maschen und mit ihnen der Schlitten.',
    'tightness = √tex / loop length in mm; hand yarns {0} to {1}, a bag that keeps its shape {2} to {3}':
      'Dichtefaktor = √tex / Maschenlänge in mm; Handstrickgarne {0} bis {1}, ein Beutel, der die Form hält, {2} bis {3}',
    'bands: rule of thumb, from usual labels; jamming: Texcoms Textile Technical Handbook 2023, p. 147':
      'Bereiche: Faustregel, nach üblichen Banderolen; Klemmen: Texcoms Textile Technical Handbook 2023, S. 147',
    "A yarn's class is read from how many whole stitches it gives to 10 cm, which the table also calls 4 inches. The ranges leave gaps and overlap, so a yarn can lie between two.":
      'Die Klasse eines Garns folgt daraus, wie viele ganze Maschen es auf 10 cm gibt, was die Tabelle auch 4 Zoll nennt. Die Bereiche haben Lücken und überlappen, darum kann ein Garn zwischen zweien liegen.',
    'stitches to 10 cm = 100 mm / stitch width, to the nearest whole stitch':
      'Maschen auf 10 cm = 100 mm / Maschenbreite, auf ganze Maschen gerundet',
    '{0} is {1} short, with a reserve of {2} % counted in: find more, or make a smaller bag.': (
      yarn,
      weight,
      reserve,
    ) =>
      `Von ${yarn} ${lacks(weight)} ${weight}, eine Reserve von ${reserve} % eingerechnet: finde mehr oder strick einen kleineren Beutel.`,
    'The swatch was measured dry, and the bag will be used {0}: its size in that state is worked out, but a swatch that was washed like the bag tells more.':
      (state) =>
        `Die Maschenprobe wurde trocken gemessen, und der Beutel wird ${stateWord(state)} gebraucht: seine Größe in diesem Zustand ist ausgerechnet, aber eine wie der Beutel gewaschene Maschenprobe sagt mehr.`,
    'Rows come out higher than stitches are wide: the swatch may have been measured the wrong way round.':
      'Die Reihen sind höher, als die Maschen breit sind: vielleicht ist die Maschenprobe falsch herum gemessen.',
    'Tightness {0} is low (hand yarns have {1} to {2} by their labels): the fabric will be limp and see-through.':
      'Der Dichtefaktor {0} ist klein (Handstrickgarne haben nach ihrer Banderole {1} bis {2}): das Gestrick wird schlaff und durchsichtig.',
    'Tightness {0} is high (loops of wool jam near {1}): the carriage may jam; take a thinner yarn or a larger stitch size.':
      'Der Dichtefaktor {0} ist groß (Maschen aus Wolle klemmen um {1}): der Schlitten kann klemmen; nimm ein dünneres Garn oder eine größere Maschenweite.',
    'A stitch of {0} mm is wider than the needle pitch of {1} mm: measure the swatch again, or use a bed of a coarser gauge.':
      'Eine Masche von {0} mm ist breiter als der Nadelabstand von {1} mm: miss die Maschenprobe noch einmal, oder nimm ein gröberes Nadelbett.',
    "How close the knitting is: the square root of the yarn's tex, divided by the loop length in mm. Hand yarns at the gauge of their labels are {0} to {1}; a bag that keeps its shape wants {2} to {3}.":
      'Wie dicht gestrickt ist: die Wurzel aus dem tex des Garns, geteilt durch die Maschenlänge in mm. Handstrickgarne haben bei der Maschendichte ihrer Banderole {0} bis {1}; ein Beutel, der die Form hält, braucht {2} bis {3}.',
    'with {0} %': 'mit {0} %',
    'The {0} % is a reserve (rule of thumb); nobody asked what waste yarn weighs.':
      '{0} % sind Reserve (Faustregel); was Hilfsgarn wiegt, ist nicht gefragt.',
    'with reserve': 'mit Reserve',
    'YARN FOR ALL {0} BAGS': 'GARN FÜR ALLE {0} BEUTEL',
    'length = mouth + way in and out + 2 × tie; rounds = length / height of a round, rounded up':
      'Länge = Öffnung + Weg hinein und hinaus + 2 × Ende; Runden = Länge / Höhe einer Runde, aufgerundet',
    '{0} + {1} + 2 × {2} = {3}; {4}': '{0} + {1} + 2 × {2} = {3}; {4}',
    'The cord goes once round the mouth, in and out of the holes, and hangs out at both ends, to tie. Each round makes it longer by one row; measure it, and knit more if it is short.':
      'Die Kordel geht einmal um die Öffnung, durch die Löcher hinein und hinaus, und hängt an beiden Enden heraus, zum Binden. Jede Runde macht sie um eine Reihe länger; miss sie, und strick weiter, wenn sie zu kurz ist.',
    '{0}: draw the thread back out{1}{2}.': '{0}: zieh den Faden wieder heraus{1}{2}.',
    'up through': 'herauf durch',
    'down through': 'hinab durch',
    'What has been washed stays so.': 'Was gewaschen ist, bleibt es.',
    'You are grafting: on each edge in turn the needle goes down one loop and up the next.':
      'Du verbindest: an beiden Kanten abwechselnd geht die Nadel durch eine Masche hinab und durch die nächste herauf.',
    'Enter confirms, Left arrow takes back, Tab completes; or ask: what is a bar?':
      'Enter bestätigt, Pfeil links nimmt zurück, Tab ergänzt; oder frag: what is a bar?',
    '{0} entries of the needle; cut a tail of {1} of {2}{3}. For the graft: the larger of 3 times the width on the needles, {4} (rule of thumb), and the yarn of a row and 10 %, {5}; and {6} to hold.':
      '{0} Einstiche der Nadel; schneide ein Fadenende von {1} {2}{3}. Zum Verbinden: das Größere von 3-mal der Breite auf den Nadeln, {4} (Faustregel), und dem Garn einer Reihe mit 10 %, {5}; und {6} zum Halten.',
    'graft, entries, movements, number of movements': 'Verbinden, Einstiche, Bewegungen, Zahl der Bewegungen',
    'A graft follows the path of a knitted row, so no seam shows. The needle enters each loop twice; only the first loop of edge B and the last of edge A are entered once.':
      'Der Faden nimmt den Weg einer gestrickten Reihe, darum sieht man keine Naht. Die Nadel sticht in jede Masche zweimal; nur in die erste Masche von Kante B und die letzte von Kante A einmal.',
    'pairs of entries = 2 × stitches − 1': 'Paare von Einstichen = 2 × Maschen − 1',
    'movement, needle movement': 'Bewegung, Nadelbewegung',
    'What the blunt needle does on one edge of the graft: down through one loop and up through the next, drawn to the size of a stitch.':
      'Was die stumpfe Nadel an einer Kante beim Verbinden tut: durch eine Masche hinab und durch die nächste herauf, auf die Größe einer Masche angezogen.',
    'The carriage is on the {0}: wrap the needles towards it, so that the yarn ends there and not at {1}.': (
      side,
      needle,
    ) =>
      `Der Schlitten steht ${sideWord(side)}: wickle zu ihm hin, damit das Garn dort endet und nicht bei ${needle}.`,
    'Set the loops of {0} back on {1}.': 'Häng die Maschen von {0} zurück auf {1}.',
  },
};
