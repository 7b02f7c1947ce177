import type { Amounts } from './amounts.ts';
import type { MeasuredWords, SwatchGuideWords } from './measured.en.ts';
import { counted } from './plurals.de.ts';

const sides = { width: 'Breite', depth: 'Tiefe' };

export const measured = ({ length, lengthNeeded }: Amounts): MeasuredWords => ({
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

export const swatchGuide = ({ units }: Amounts): SwatchGuideWords => ({
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
