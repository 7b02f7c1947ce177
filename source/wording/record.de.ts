import { forShell } from '../shared/plain-text.ts';
import { exhaustive } from '../shared/result.ts';
import type { Amounts } from './amounts.ts';
import { counted, phaseWords, yarnName } from './forms.de.ts';
import type { CannotPlay } from './record.en.ts';
import type { Words } from './words.ts';

export const record = ({ list, mass, massNeeded }: Amounts): Words['record'] => ({
  titles: {
    time: 'ZEIT',
    byPhase: 'NACH ABSCHNITTEN',
    byStripe: 'NACH STREIFEN',
    slowPlaces: 'LANGSAME STELLEN',
    size: 'GRÖSSE',
    sizeMeasured: 'GRÖSSE, GEMESSEN',
    stripes: 'STREIFEN',
    yarnByPlan: 'GARN, NACH DEM PLAN',
    yarnWeighed: 'GARN, GEWOGEN',
    bed: 'NADELBETT',
    notes: 'NOTIZEN ZU SCHRITTEN',
  },
  begun: (day) => `begonnen ${day}`,
  finishedOn: (day) => `fertig ${day}`,
  lastWorkedOn: (day, done, stepCount) =>
    `zuletzt in Arbeit ${day}, ${done} von ${stepCount} Schritten gemacht`,
  inSittings: (duration, sittings) => `${duration} in ${counted.sitting(sittings)}`,
  rests: (duration) => `, dazu ${duration} Pause`,
  bench: 'Arbeit',
  row: 'je Reihe',
  withMoves: (duration) => `${duration}, Formschritte mitgezählt`,
  backLabel: 'zurück ',
  takenBack: (times) => `${counted.time(times)} etwas zurückgenommen`,
  stepAndRow: (step, row) => `Schritt ${step}, Reihe ${row}`,
  usually: (duration) => `sonst ${duration}`,
  step: (step) => `Nr. ${step}`,
  another: (path) =>
    `Noch einer mit dieser Vorgabe, ihren Änderungen und diesen Notizen: slantwise work --like ${forShell(path)}`,
  leftLastTime: (left, yarn) => `Letztes Mal blieben ${left} ${yarn} übrig: damit ist dieser Beutel geplant.`,
  usedLastTime: (usedGrams, yarn, left) =>
    `Letztes Mal wurden ${mass(usedGrams)} ${yarn} gebraucht, und ${left} blieben übrig: mit dem Rest ist dieser Beutel geplant.`,
  noteAtEnd: (text) => `Letztes Mal, am Ende: ${text}`,
  noteAtStep: (step, text) => `Letztes Mal, bei Schritt ${step}: ${text}`,
  weighed: (yarn, used) => `${yarnName(yarn)} gewogen: ${used}.`,
  planned: (planned) => `geplant ${massNeeded(planned)}`,
  weighedAfterStep: (done) => `gewogen nach Schritt ${done}`,
  left: (left) => `${left} übrig`,
  usedOfLeft: (usedGrams, left, haveGrams) =>
    `${mass(usedGrams)} gebraucht, ${left} von ${mass(haveGrams)} übrig`,
  noSuchYarn: (yarn, known) => `${yarn} ist kein Garn dieses Beutels: er hat ${list(known.map(yarnName))}.`,
  notAWeight: (weight, yarn) => `${weight} ${yarnName(yarn)} lassen sich nicht wiegen: gib 0 oder mehr an.`,
  moreThanBefore: (before, yarn, left) =>
    `Vor der Arbeit waren es ${before} ${yarnName(yarn)}, also können keine ${left} übrig sein: wieg noch einmal.`,
  bagBegun: (name, day) => `${name}, begonnen ${day}`,
  bagFinished: 'Der Beutel ist fertig.',
  logEnds: 'Das Protokoll endet hier; der Beutel ist nicht fertig.',
  backAtBench: (day) => `Wieder an der Maschine, ${day}`,
  placeToPause: 'Zeit für eine Pause',
});

const andRests = (rests: string | null): string => (rests === null ? '' : `, dazu ${rests} Pausen`);

export const bagEnd = ({ length, list, massNeeded }: Amounts): Words['bagEnd'] => ({
  finished: (name, bench, sittings, rests) =>
    `${name} ist fertig: ${bench} an der Maschine in ${counted.sitting(sittings)}${andRests(rests)}.`,
  soFar: (name, bench, sittings, rests) =>
    `${name} bis jetzt: ${bench} an der Maschine in ${counted.sitting(sittings)}${andRests(rests)}.`,
  planned: (widthCm, depthCm) => `Geplant: ${length(widthCm)} breit, ${length(depthCm)} tief.`,
  measureIt: (planned) =>
    `${planned} Miss ihn genäht und flach gelegt, und tippe measured, Breite und Tiefe: der nächste Beutel lernt daraus.`,
  weighIt: (open) =>
    `Nach dem Plan brauchte er ${list(open.map(({ yarn, grams }) => `${massNeeded(grams)} ${yarn}`))}. Wieg, was übrig ist, und tippe zum Beispiel: weigh ${open[0]?.yarn} 22`,
  next: [
    'draw bag zeigt ihn wieder, record diese Seite; tag DATEI.html schreibt einen Anhänger.',
    'another macht einen dazu passenden; another größer, another getauscht oder another in sand und minze ändert ihn.',
  ],
  another: (name, before, wish, widthCm, depthCm) => {
    const how = {
      same: 'noch einmal derselbe',
      turned: 'mit vertauschten Farben',
      yarns: 'in anderen Farben',
      larger: 'eine Nummer größer, ein Fünftel breiter und tiefer (Faustregel)',
      smaller: 'eine Nummer kleiner (Faustregel)',
      size: 'in anderer Größe',
    }[wish];
    return `${name}, passend zu ${before}: ${how}, nach dem Plan ${length(widthCm)} breit und ${length(depthCm)} tief.`;
  },
  cannotMatch: (why) => `So lässt sich kein Beutel stricken: ${why}`,
});

const fault = (why: CannotPlay, decimal: Amounts['decimal']): string => {
  switch (why.code) {
    case 'player/at-start':
      return 'Das ist der Anfang des Protokolls.';
    case 'player/at-end':
      return 'Das ist das Ende des Protokolls.';
    case 'player/no-more-marks':
      return 'Weiter hinten gibt es keine Marke.';
    case 'player/fastest':
      return `Schneller als ${decimal(why.speed)}-fach geht es nicht.`;
    case 'player/slowest':
      return `Langsamer als ${decimal(why.speed)}-fach geht es nicht.`;
    case 'player/phase-not-reached':
      return `Das Protokoll kommt nie zu diesem Teil der Arbeit: ${phaseWords[why.phase]}.`;
    case 'player/stripe-not-reached':
      return `Das Protokoll kommt nie zu Streifen ${why.stripe}.`;
    case 'player/cannot-go-there':
      return 'Beim Abspielen geht es zu einem Abschnitt oder zu einem Streifen. Zum Beispiel: go graft, oder go stripe 3.';
    default:
      return exhaustive(why);
  }
};

export const player = ({ decimal }: Amounts): Words['player'] => ({
  note: 'Notiz',
  lesson: 'Tipp',
  play: 'Lauf',
  fault: (why) => fault(why, decimal),
  time: (elapsed, total) => `${elapsed} von ${total}`,
  speed: (times) => `${decimal(times)}x`,
  state: ({ playing, ended, last }) => {
    if (playing) return 'läuft';
    if (ended) return 'zu Ende';
    if (last?.event.do === 'mark') return `Marke: ${last.event.name}`;
    return last?.event.do === 'pause' ? 'hält für eine Pause' : 'angehalten';
  },
  keys: [
    'Leertaste: Halt  ← →: Schritt  + -: Tempo  N: nächste Marke  E: Ende  Q: Schluss',
    'Leertaste Halt  ← → Schritt  + - Tempo  N Marke  E Ende  Q Schluss',
    'Leertaste, ← →, + -, N, E, Q: Schluss',
    'Q: Schluss',
  ],
  howToLook: (path) => `Zum Zuschauen: slantwise replay ${path}`,
  onlyLooking: ({ pid, host }) =>
    `Ein anderes Slantwise (Prozess ${pid}${host === null ? '' : ` auf ${host}`}) hat diesen Beutel offen: hier schaust du nur zu, so weit er gekommen ist. Gibt es keines, kopier das Protokoll und mach in der Kopie weiter: slantwise --log COPY`,
});

const sides = { width: 'Breite', depth: 'Tiefe' };

export const measured = ({ length, lengthNeeded }: Amounts): Words['measured'] => ({
  got: (widthCm, depthCm) => `Gemessen: ${length(widthCm)} breit, ${length(depthCm)} tief.`,
  asPlanned: (side) => `${sides[side]} wie geplant.`,
  beside: (side, offCm, doubtCm) =>
    `${sides[side]} ${length(Math.abs(offCm))} ${offCm > 0 ? 'mehr' : 'weniger'} als geplant, ${
      Math.abs(offCm) > doubtCm ? 'außerhalb' : 'innerhalb'
    } der ± ${length(doubtCm)} des Plans.`,
  impossible: (widthCm, depthCm) =>
    `Kein Beutel misst ${length(widthCm)} mal ${length(depthCm)}: tippe seine Breite und dann seine Tiefe, etwa measured 13,6 18.`,
  cord: {
    planned: (rounds, left, lengthCm) =>
      left === 0
        ? `Das reicht für ${lengthNeeded(lengthCm)} Kordel.`
        : `${rounds} Runden ergeben ${lengthNeeded(lengthCm)}: noch ${left} zu stricken.`,
    ofSecond: ' Die zweite Kordel braucht ebenso viele.',
    notAsked: 'Die Kordel wird bei dem Schritt gemessen, der danach fragt, wenn 20 Runden gestrickt sind.',
    impossible: (lengthCm) =>
      `Runden einer Kordel sind nicht ${length(lengthCm)} lang: gib ihre Länge ein, etwa cord 7.4.`,
    notALength: (text, usage) => `${text} ist keine Länge. Zum Beispiel: ${usage}.`,
  },
});

export const swatchGuide = ({ units }: Amounts): Words['swatchGuide'] => ({
  offer: 'stricken, dann wirst du durch eine geführt',
  place: (at, of) => `die Maschenprobe, Schritt ${at} von ${of}`,
  dial: 'Stell die Maschenweite ein, die du für dieses Garn nähmst. Was zeigt der Knopf?',
  castOn: (stitches, first, last, comb) =>
    `Schlitten rechts. Bring ${counted.needle(stitches)} in Arbeit, ${first} bis ${last}; Nadelhaken sind scharf. Wickle Hilfsgarn einmal um jede, von ${first} bis ${last}, und strick 6 Reihen${comb ? '; häng nach zweien den Anschlagkamm ein' : ''}.`,
  thread: 'Schneid das Hilfsgarn ab und fädle das Garn des Beutels ein. Reihenzähler auf 0.',
  rows: (from, through, of) => `Strick die Reihen ${from} bis ${through} von ${of}.`,
  'take-off':
    'Fädle Hilfsgarn ein und strick 6 Reihen. Gewichte ab, eine Hand darunter, Füße weg; schneid das Garn ab und führ den Schlitten einmal mit leerem Fadenführer darüber, das Gestrick in der Hand: es fällt ab.',
  rest: 'Lass sie ruhen, wie der Beutel gebraucht wird: einweichen, ausdrücken, flach trocknen, ohne zu ziehen. Das kann einen Tag dauern: quit merkt sich die Stelle.',
  width: (stitches) => `Leg sie flach. Wie breit sind die ${counted.stitch(stitches)}, ohne das Hilfsgarn?`,
  height: (rows) => `Und wie hoch sind die ${counted.row(rows)}?`,
  aside:
    'Rechte Seite oben: wie weit steht der obere Rand neben dem unteren? Nach links ist es unter 0; gerade ist 0.',
  'row-yarn': (stitches) =>
    `Trenn eine Reihe von ${counted.stitch(stitches)} auf und zieh den Faden gerade: wie lang ist er? Alle Garnmengen werden damit besser.`,
  asIn:
    units.length === 'cm'
      ? { dial: '6', width: '19,2', height: '21,6', aside: '0,5', 'row-yarn': '68' }
      : { dial: '6', width: '7 1/2', height: '8 1/2', aside: '0,2', 'row-yarn': '27' },
  confirms: 'bestätigt, dass es getan ist',
  passesBy: 'geht daran vorbei',
  also: 'back, stop verlässt die Probe; answers, quit',
  enterWhenDone: 'Drück Enter, wenn es getan ist; back geht einen Schritt zurück, stop verlässt die Probe.',
  notAMeasure: {
    width: 'Tippe, wie breit sie ist, so wie 19,2 cm.',
    height: 'Tippe, wie hoch sie ist, so wie 21,6 cm.',
    aside: 'Tippe, wie weit, so wie 0,5 oder -0,5, oder 0, wenn sie gerade ist; Enter geht daran vorbei.',
    'row-yarn': 'Tippe, wie lang der Faden ist, so wie 68 cm; Enter geht daran vorbei.',
  },
});
