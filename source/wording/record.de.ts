import type { Amounts } from './amounts.ts';
import { counted } from './counted.de.ts';
import { yarnName } from './forms.de.ts';
import type { RecordWords } from './record.en.ts';

export const record = ({ list, mass, massNeeded }: Amounts): RecordWords => ({
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
  another: (forShell) =>
    `Noch einer mit dieser Vorgabe, ihren Änderungen und diesen Notizen: slantwise work --like ${forShell}`,
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
