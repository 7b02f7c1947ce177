import type { Amounts } from './amounts.ts';
import type { BagEndWords } from './bag-end.en.ts';
import { counted } from './counted.de.ts';

const andRests = (rests: string | null): string => (rests === null ? '' : `, dazu ${rests} Pausen`);

export const bagEnd = ({ length, list, massNeeded }: Amounts): BagEndWords => ({
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
