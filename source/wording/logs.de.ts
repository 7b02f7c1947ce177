import { forShell } from '../shared/for-shell.ts';
import type { Amounts } from './amounts.ts';
import type { LogsWords } from './logs.en.ts';

export const logs = (_: Amounts): LogsWords => ({
  needsBrief:
    'Zusammen mit seiner Vorgabe, also slantwise BRIEF --log LOG, ist zu gebrauchen, was danach aufgezeichnet wurde.',
  foreign: {
    'byte-order-mark':
      'Vor das Protokoll kam unterwegs eine Bytereihenfolge-Marke, durch Mail oder einen Editor: das schadet nicht.',
    'windows-line-ends':
      'Die Zeilenenden des Protokolls wurden unterwegs die von Windows, durch Mail oder einen Editor: das schadet nicht.',
  },
  notAFolder: (path) =>
    `Wo der Ordner von ${path} sein sollte, liegt eine Datei. Schieb sie weg, oder wähle einen anderen Ordner.`,
  goesOnIn: (path) => `Du machst mit dem brauchbaren Teil weiter, in ${path}.`,
  takenOver: (from, path) =>
    `Etwas anderes hat in ${from} geschrieben; das bleibt, wie es ist. Deine ganze Arbeit steht in ${path} und geht dort weiter. Nächstes Mal: slantwise --log ${forShell(path)}`,
  soundPart: (path) => `Der brauchbare Teil ist gespeichert als ${path}.`,
});
