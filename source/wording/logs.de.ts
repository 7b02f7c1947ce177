import { forShell } from '../shared/for-shell.ts';
import type { Amounts } from './amounts.ts';
import type { LogsWords } from './logs.en.ts';

export const logs = (_: Amounts): LogsWords => ({
  openUsage: 'open NUMMER, oder open und ein Name',
  openSummary:
    'mit einem anderen Beutel weitermachen, nach seiner Nummer in bags oder seinem Namen; dieser wartet',
  openGist: 'einen anderen Beutel öffnen',
  practiceSummary: 'zum Übungsbeutel gehen; dieser ist gespeichert und wartet',
  practiceGist: 'zum Übungsbeutel',
  nothingToCancel: 'Es gibt keinen Beutel, zu dem es zurückginge: quit beendet und behält deine Antworten.',
  openHint: 'Mit einem anderen weiter geht es mit open und seiner Nummer oder seinem Namen.',
  noSuchBag: (bag, known) =>
    known === 0
      ? 'Es gibt noch keine anderen Beutel: mit new planst du einen.'
      : `Kein Beutel hier ist ${bag}: tippe bags und öffne einen nach seiner Nummer, 1 bis ${known}, oder seinem Namen.`,
  severalBags: (bag, names) =>
    `${bag} kann ${names.join('; ')} sein: tippe bags und öffne einen nach seiner Nummer.`,
  openAlready: (name) => `${name} ist der Beutel, der hier offen ist.`,
  cannotOpen: (path) => `Das Protokoll ${path} ist beschädigt: slantwise check und die Datei sagt, wo.`,
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
