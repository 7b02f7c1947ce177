import type { Amounts } from './amounts.ts';
import { counted, sideWord, stateWord } from './forms.de.ts';
import type { Words } from './words.ts';

export const page = ({
  decimal,
  length,
  lengthNeeded,
  list,
  massNeeded,
  small,
  tail,
  yarnNeeded,
}: Amounts): Words['page'] => ({
  titles: {
    size: 'GRÖSSE',
    stripes: 'STREIFEN',
    yarn: 'GARN',
    bed: 'NADELBETT',
    byHand: 'VON HAND',
    fabric: 'GESTRICK',
    beforeYouStart: 'BEVOR DU ANFÄNGST',
    yarnForAll: (bags) => `GARN FÜR ALLE ${bags} BEUTEL`,
  },
  needles: 'Nadeln',
  bed: (needles, pitchMm, usableNeedles, needlesUsed) =>
    `${needles} im Abstand von ${decimal(pitchMm)} mm, ${usableNeedles} davon zwischen den freien Rändern; das Gestrick wandert über ${needlesUsed} Nadeln`,
  crawl: 'Wandern',
  crawlTo: (crawl, homeSide) =>
    `nach ${sideWord(crawl)}; zwischen den Streifen wartet der Schlitten ${sideWord(homeSide)}`,
  hang: 'Einhängen',
  hungOnce: (hung, ends) => `auf ${hung}; das Gestrick endet auf ${ends}`,
  rows: (first, last) => `Reihen ${first} bis ${last}`,
  hungOn: (hung) => `auf ${hung}`,
  endingOn: (ends) => `endet auf ${ends}`,
  moreHangings: (more) => `und noch ${counted.time(more)}, immer von denselben Nadeln aus`,
  fromTo: (first, last) => `${first} bis ${last}`,
  by: (widthMm, heightMm) => `${length(widthMm)} mal ${length(heightMm)}`,
  labels: {
    piece: 'Stück',
    swatch: 'Probe',
    gauge: 'Dichte',
    loop: 'Garnlänge',
    tightness: 'Faktor',
    aim: 'Ziel',
    weight: 'Gewicht',
    yarn: 'Garn',
    start: 'Anfang',
    graft: 'Verbinden',
    seam: 'Naht',
    cord: 'Kordel',
    eyelets: 'Löcher',
    care: 'Vorsicht',
    bag: 'Beutel',
    asked: 'Wunsch',
    inside: 'innen',
    base: 'Boden',
    corners: 'Ecken',
    hem: 'Saum',
    lining: 'Futter',
    run: 'Farben',
    knit: 'Stricken',
    shaping: 'Formen',
    stripes: 'Streifen',
    surer: 'sicherer',
    asKnit: 'gestrickt',
    write: 'Schreibe',
  },
  swatchOn: (stitches, rows, size, state) =>
    `${stitches} ${stitches === 1 ? 'Masche' : 'Maschen'} und ${rows} ${rows === 1 ? 'Reihe' : 'Reihen'} auf ${size}, ${stateWord(state)}`,
  swatchGuessed: (stitches, rows, size) =>
    `nach dem Nadelbett geschätzt (Faustregel): ${stitches} Maschen und ${rows} Reihen auf ${size}`,
  swatchOnDial: (stitches, rows, size, state, stitchSize) =>
    `${stitches} Maschen und ${rows} Reihen auf ${size}, ${stateWord(state)}, Maschenweite ${stitchSize}`,
  gaugeTo: (stitches, rows, over, stitchMm, rowMm) =>
    `${stitches} Maschen und ${rows} Reihen auf ${over}; eine Masche ist ${small(stitchMm)} breit und ${small(rowMm)} hoch`,
  tightnessIs: (tightness, verdict) =>
    `${tightness} (Dichtefaktor: Wurzel aus tex / Maschenlänge in mm), ${verdict}`,
  aim: (tenStitchesMm, tenRowsMm, tightness) =>
    `vor der Maschenprobe: zehn Maschen aus diesem Garn sollen in Ruhe ${small(tenStitchesMm)} messen und zehn Reihen ${small(tenRowsMm)}, bei einem Dichtefaktor von ${decimal(tightness)} (Faustregel)`,
  massOfPiece: (mass) => `${mass}, am Stück gemessen`,
  massOfGuess: (mass) => `${mass}, nach der geschätzten Maschenprobe`,
  massOfSwatch: (mass) => `${mass}, nach der Maschenprobe`,
  sourceOfModel: (state) =>
    `nach der Maschendichte von glattem Gestrick, ${stateWord(state)} (veröffentlichte Konstanten; why loop nennt die Quelle)`,
  sourceForWool: (state) =>
    `nach der Maschendichte glatter Maschenware, ${stateWord(state)} (veröffentlichte Konstanten, für Wolle; why loop nennt die Quelle)`,
  loopMeasured: (loopLengthMm, model, source) =>
    `${small(loopLengthMm)} Garn in einer Masche, gemessen; ${model} ${source}`,
  loopByModel: (model, source) => `${model} Garn in einer Masche, ${source}`,
  usualTightness: (least, most, keepsLeast, keepsMost) =>
    `Handstrickgarne haben bei der Maschendichte ihrer Banderole ${least} bis ${most}, ein Beutel, der die Form hält, ${keepsLeast} bis ${keepsMost} (Faustregel)`,
  limp: (usual) => `schlaff und durchsichtig: ${usual}`,
  soft: (usual) => `weich: ${usual}`,
  jams: (usual) => `so fest, dass die Maschen klemmen: ${usual}`,
  stiff: (usual) => `steif: ${usual}`,
  firm: (usual) => `fest: ${usual}`,
  between: (first, second) => `zwischen ${first} und ${second}`,
  finerThanLace: 'feiner als Lace (0)',
  yarnFinerThanLace: 'Garn feiner als Lace (0)',
  classByGauge: (name, pitchMm, bed) =>
    `${name} nach der Maschendichte (übliche Klassen 0 bis 7); bei ${decimal(pitchMm)} mm Nadelabstand strickt man meist ${bed} (Faustregel)`,
  ravelCord: (ravelCordCm, ravelEndCm) =>
    `ein Trennfaden von ${lengthNeeded(ravelCordCm)}: das Garn einer Reihe und 10 %, und ${lengthNeeded(ravelEndCm)} an jedem Ende`,
  graftAndSeam: (graft, seam) => `, ${graft} zum Verbinden und ${seam}, um damit den Boden zu nähen`,
  graftAndTail: (entries, closingTailCm, yarn, parts, byWidth, byRow, toHold) =>
    `${entries} Einstiche der Nadel; schneide ein Fadenende von ${tail(closingTailCm)} ${yarn}${parts}. Zum Verbinden: das Größere von 3-mal der Breite auf den Nadeln, ${byWidth} (Faustregel), und dem Garn einer Reihe mit 10 %, ${byRow}; und ${toHold} zum Halten.`,
  seamWithGraft: 'mit dem Faden vom Verbinden',
  seamWithOwn: (tailCm, yarn) => `mit ${tail(tailCm)} ${yarn}`,
  seam: (lengthCm, barsPerSide, tailText, endTailCm) =>
    `${length(lengthCm)}, ${counted.bar(barsPerSide)} von jeder Seite, ${tailText}: zweimal die Naht und ${lengthNeeded(endTailCm)} zum Festhalten (Faustregel)`,
  roundsByRows: 'eine Runde so hoch gerechnet wie eine Reihe (Faustregel)',
  roundsByCount: (roundsPer10Cm) => `nach deiner Zählung von ${decimal(roundsPer10Cm)} Runden auf 10 cm`,
  cord: (draws, stitches, yarn, lengthCm, takeUpCm, tieCm, rounds, passes, metres, height) =>
    `${draws === 2 ? 'zwei, die zu beiden Seiten ziehen, jede aus ' : ''}${counted.stitch(stitches)} aus ${yarn}, ${lengthNeeded(lengthCm)} lang: die Öffnung, ${lengthNeeded(takeUpCm)} für den Weg hinein und hinaus (Faustregel) und zwei Enden von ${length(tieCm)}. ${counted.round(rounds)}, ${counted.pass(passes)}, ${yarnNeeded(metres)} Garn, ${height}.`,
  eyeletsApart: (made, spacingCm) => `${made}, je ${length(spacingCm)} auseinander`,
  eyeletsTooFew: (apart) => `${apart}; zu wenige für eine Kordel mit beiden Enden außen`,
  cordUsesAll: 'die Kordel läuft durch alle',
  cordUsesSome: (used, passedBy) =>
    `die Kordel läuft durch ${used} und lässt Nummer ${list(passedBy)} aus, gezählt von der Verbindung`,
  gapAtGraft: (graftGapCm) => `${length(graftGapCm)} an der Verbindung`,
  widestThen: (widestGapCm, atGraft) => `${length(widestGapCm)} dort, danach ${atGraft}`,
  eyelets: (apart, uses, gap) => `${apart}; ${uses}. Der weiteste Abstand ist ${gap}.`,
  secondFrom: (eyelet) =>
    ` Die zweite Kordel geht zuerst durch Lochmasche ${eyelet} hinein, der Verbindung gegenüber, wo die erste herauskommt.`,
  keepCords: (freeCordCm, loopCm) =>
    `halte Kordeln von kleinen Kindern fern: EN 71-1:2005+A8:2009 erlaubte für Spielzeug der Kleinsten eine freie Kordel von ${freeCordCm} mm und eine Schlinge von ${loopCm} mm Umfang, mit 25 N gezogen; sieh in die geltende Ausgabe. Dieser Beutel ist kein Spielzeug; es gelten die Regeln am Ort.`,
  sizeIs: (width, widthMore, depth, depthMore, finishState) =>
    `${width} ± ${widthMore} breit und ${depth} ± ${depthMore} tief, flach und genäht, ${stateWord(finishState)} (19 von 20 Beuteln liegen darin)`,
  base: (baseWidthCm, baseDepthCm, sideCm, sideBelowCordCm) =>
    `mit abgenähten Ecken ${length(baseWidthCm)} mal ${length(baseDepthCm)}, die Seiten ${length(sideCm)} hoch, ${length(sideBelowCordCm)} davon unter der Kordel; die Größe oben hat der Beutel vor dem Abnähen`,
  corners: (acrossCm, fromTipCm, tailCm, yarn) =>
    `2 Ecken, jede mit ${tail(tailCm)} ${yarn} quer abgenäht: ${length(acrossCm)}, rechtwinklig zur Bodennaht, ${length(fromTipCm)} von der Spitze`,
  hem: ({ yarn, rows, stitches, sections, passes, heightCm, foldToCordCm, metres }, knittedRows) =>
    `fass vor dem Verbinden ${stitches} Maschen des Öffnungsrands aus seinen ${knittedRows} Reihen auf${sections.length === 1 ? '' : `, in Abschnitten von ${list(sections.map(String))}, da das Bett nicht mehr fasst`}, und strick ${passes} Reihen aus ${yarn}: ${rows}, eine lockere für den Umbruch, ${rows}, und eine lockere, die ihn schließt. ${length(heightCm)} der Tiefe sind Saum; von seinem Umbruch bis zur Kordel sind es ${length(foldToCordCm)}. ${yarnNeeded(metres)} Garn.`,
  run: (yarn, runMetres, rowMetres) =>
    `${yarn} macht von selbst Streifen: seine Farben beginnen nach ${yarnNeeded(runMetres)} von vorn, eine Reihe braucht ${length(rowMetres * 100)}, sie liegen also etwa hier`,
  bands: (bands, more) =>
    `${bands.map(({ colour, fromRow, throughRow }) => `${colour} ${fromRow === throughRow ? `Reihe ${fromRow}` : `Reihen ${fromRow} bis ${throughRow}`}`).join(', ')}${more > 0 ? `, und ${more} weitere` : ''}`,
  runAtGraft: ({ offMetres, offRows, better }, rows) => {
    const off = `an der Verbindung liegt es ${length(Math.abs(offMetres) * 100)} oder ${decimal(Math.abs(offRows))} Reihen ${offMetres < 0 ? 'vor' : 'hinter'} der Stelle, an der seine Farben ohne Bruch weitergingen`;
    return better
      ? `${off}; mit ${better.rows} statt ${rows} Reihen wären es ${length(Math.abs(better.offMetres) * 100)}`
      : off;
  },
  ifYouLineIt: 'falls du eins willst:',
  lining: ({ widthCm, depthCm, seamCm }, isBoxed) => [
    `Schneide zwei Stücke zu, ${lengthNeeded(widthCm)} breit und ${lengthNeeded(depthCm)} tief: ringsum ${length(seamCm)} Nahtzugabe (übliche Praxis).`,
    `Näh sie am Boden und an beiden Seiten zusammen, die rechten Seiten innen${isBoxed ? ', und näh die Ecken so tief ab wie beim Beutel' : ''}; falte den oberen Rand ${length(seamCm)} nach außen.`,
    'Steck es hinein, die Nähte zur linken Seite, und näh die Falte dicht unter den Lochmaschen an, locker, damit sich die Öffnung noch zuziehen lässt.',
  ],
  inside: (depth, mouth) => `${depth} tief unter der Kordel; die Öffnung misst ${mouth} rundum`,
  knit: (stitches, rows, knittedRows) =>
    `${counted.stitch(stitches)}, ${counted.row(rows)} rundum: ${knittedRows} werden gestrickt, die Verbindung ist die letzte`,
  shaping: (shapings, shapeEveryRows, edgeStitches) =>
    `${counted.move(shapings)}, einer nach je ${counted.row(shapeEveryRows)}, ${counted.stitch(edgeStitches)} an jedem Rand`,
  stripesSlant: (stripes, degrees) => `${stripes}; die Streifen steigen mit ${degrees} Grad vom Boden auf`,
  plusMinus: (widthCm, depthCm) => `${length(widthCm)} und ± ${length(depthCm)}`,
  largerSwatch: (stitches, rows, left) =>
    `eine Maschenprobe von ${stitches} Maschen und ${rows} Reihen: ± ${left}`,
  lookAside: (left) =>
    `sieh nach, wie weit die Oberkante der Maschenprobe seitlich steht, und schreib es als asideCm (0,1, wo sie gerade ist): ± ${left}`,
  asKnit: (widthCm, depthCm, state) =>
    `${length(widthCm)} breit und ${length(depthCm)} tief, ${stateWord(state)} wie die Maschenprobe`,
  writeSize: (stitches, rows, boxedCm) =>
    `"bag": {"stitches": ${stitches}, "rows": ${rows}${boxedCm === 0 ? '' : `, "boxedCm": ${boxedCm.toFixed(1)}`}} in die Vorgabe, um ihn zu stricken`,
  smaller: 'kleiner',
  larger: 'größer',
  wideAndDeep: (width, depth) => `${width} breit und ${depth} tief`,
  counts: (stitches, rows) => `${counted.stitch(stitches)} und ${counted.row(rows)}`,
  contentsNeed: (width, depth, girth, height, thick, easePercent, isBoxed) =>
    `mindestens ${width} breit und unter der Kordel ${depth} tief, für ${girth} Umfang, ${height} Höhe und ${thick} Dicke, mit ${decimal(easePercent)} % Mehrweite in beiden Richtungen (Faustregel); es steht auf ${isBoxed ? 'dem Boden' : 'der Bodennaht'}, und der Beutel schließt sich darüber`,
  largest: 'der größte dieser Form, für den das gewogene Garn reicht',
  limitedByYarn: (largest, yarn) => `${largest}; ein Rapport mehr bräuchte mehr ${yarn}, als da ist`,
  limitedByScraps: (largest) => `${largest}; für mehr ergeben die Garnreste keine Folge`,
  limitedByBed: (largest, usable) =>
    `${largest}; ein Rapport mehr passt nicht auf die ${counted.needle(usable)} zwischen den freien Rändern`,
  limitedByWidth: (largest, mostCm) => `${largest}, und nicht breiter als ${length(mostCm)}`,
  oneYarn: (yarn) => `${yarn} durchgehend, ohne Farbwechsel; auch Schlussreihe, Verbindung und Naht`,
  listedStripes: (stripes, rows) => `${stripes} zu ${counted.row(rows)}, unten aufgeführt`,
  unevenStripes: (stripes) => `${stripes} Streifen, unten aufgeführt`,
  repeatOf: (times, stripes) => `${times} ein Rapport von ${stripes} Streifen, unten aufgeführt`,
  repeat: (times, rows) => `${times} ${rows} Reihen`,
  to: (first, last) => `${first} bis ${last}`,
  stripesOf: (rows, stitches) => `${counted.row(rows)} zu ${stitches} Maschen`,
  shapeWith: (size, counts) => `${size}, mit ${counts}`,
  shapeTooLong: (size, counts) => `${size}, mit ${counts}; dafür ist dieses Nadelbett zu kurz`,
  withPercent: (reserve) => `mit ${reserve} %`,
  reserveIs: (reserve) => `${reserve} % sind Reserve (Faustregel); was Hilfsgarn wiegt, ist nicht gefragt.`,
  withReserve: 'mit Reserve',
  length: 'Länge',
  weight: 'Gewicht',
  youHave: 'du hast',
  waste: (yarn) => `${yarn} (Hilfsgarn)`,
  notWeighed: 'nicht gewogen',
  enough: 'reicht',
  shortBy: (shortGrams) => `${massNeeded(shortGrams)} zu wenig`,
});
