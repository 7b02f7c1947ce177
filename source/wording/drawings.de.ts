import type { Side } from '../bed/side.ts';
import type { Amounts } from './amounts.ts';
import type { DrawingsWords } from './drawings.en.ts';

const at = (side: Side): string => (side === 'left' ? 'links' : 'rechts');

export const drawings = ({ length }: Amounts): DrawingsWords => ({
  bagPart: (depthCm, isPale) =>
    `oben links, im Ganzen ${length(depthCm)} tief${isPale ? '; blass: kommt noch' : ''}`,
  mouth: 'Öffnung',
  bottom: 'Boden',
  stripPart: (from, through, of) => `Reihen ${from} bis ${through} von ${of} gezeigt`,
  tooFine: 'zu fein, um jeden Streifen zu zeigen',
  graft: (mouth) => `rechte Seite oben, A oberhalb, B unterhalb, die Öffnung ${at(mouth)}`,
  graftDown: 'hinein: von der rechten Seite nach hinten',
  graftUp: 'heraus: von hinten zur rechten Seite',
  graftPath: 'hinter den Schenkeln, über den Kopf jeder Masche, so groß wie eine Masche',
  graftTurns: 'B in eine hinein, aus der nächsten heraus; dann A ebenso',
  seamFold: 'rechte Seite außen, der nachlaufende Rand Hälfte auf Hälfte gefaltet',
  seamBars: 'unter jedem Steg durch, eine Masche vom Rand, eine Seite und dann die andere',
  seamDraw: 'alle 6 bis 8 Stege den Faden anziehen, bis die Ränder sich treffen',
  cordSlip: (to) => `nach ${at(to)}: der Schlitten gleitet, nichts strickt`,
  cordKnit: (to) => `nach ${at(to)}: er strickt, und der Faden dahinter zieht den Schlauch zu`,
  cordRound: 'zwei Fahrten sind eine Runde, eine Reihe hoch',
});
