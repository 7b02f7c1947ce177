import { exhaustive } from '../shared/result.ts';
import type { Phase } from '../steps/step.ts';
import type { Amounts } from './amounts.ts';
import type { CannotPlay, PlayerWords } from './player.en.ts';

const phaseWords: Readonly<Record<Phase, string>> = {
  'cast-on': 'Anschlag',
  stripes: 'Streifen',
  'closing-row': 'Schlussreihe',
  graft: 'Verbinden',
  seam: 'Naht',
  cord: 'Kordel',
};

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

export const player = ({ decimal }: Amounts): PlayerWords => ({
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
