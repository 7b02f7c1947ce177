import type { SlipQuestion } from '../session/diagnose/question.ts';
import type { Care, Trace } from '../session/mend/mend.ts';
import { exhaustive } from '../shared/result.ts';
import type { Amounts } from './amounts.ts';
import { yarnName } from './forms.de.ts';
import type { SlipTold } from './slips.en.ts';
import type { Words } from './words.ts';

const moveOf = (told: SlipTold, move: number): string =>
  told.orBefore ? `Formschritt ${move} oder eines früheren` : `Formschritt ${move} nach Reihe ${told.row}`;

const rowsWord = (rows: number): string =>
  rows === 1 ? 'Eine Reihe' : `${rows === 2 ? 'Zwei' : rows} Reihen`;
const is = (rows: number): string => (rows === 1 ? 'ist' : 'sind');
const lacks = (rows: number): string => (rows === 1 ? 'fehlt' : 'fehlen');
const aside = (by: number): string => (by > 0 ? 'rechts' : 'links');

const held = (yarn: string | null): string => (yarn === null ? 'nichts' : yarnName(yarn));

function slipSentence(told: SlipTold): string {
  const { slip } = told;
  switch (slip.is) {
    case 'increase-missing':
      return `Die Zunahme von ${moveOf(told, slip.move)} fehlt: der Zunahmerand liegt eine Nadel zurück.`;
    case 'decrease-missing':
      return `Die Abnahme von ${moveOf(told, slip.move)} fehlt: der Abnahmerand liegt eine Nadel zu weit außen.`;
    case 'increase-doubled':
      return `Die Zunahme von ${moveOf(told, slip.move)} ist doppelt: der Zunahmerand liegt eine Nadel zu weit außen.`;
    case 'decrease-doubled':
      return `Die Abnahme von ${moveOf(told, slip.move)} ist doppelt: der Abnahmerand liegt eine Nadel zu weit innen.`;
    case 'move-missing':
      return `Beide Ränder von ${moveOf(told, slip.move)} fehlen: sie liegen eine Nadel zurück.`;
    case 'move-doubled':
      return `Beide Ränder von ${moveOf(told, slip.move)} sind doppelt: sie liegen eine Nadel zu weit vorn.`;
    case 'move-mirrored':
      return `Beide Ränder von ${moveOf(told, slip.move)} gingen andersherum, links statt rechts: das Gestrick rückte eine Nadel zurück.`;
    case 'needle-left-working':
      return `Die Nadel, die bei der Abnahme von ${moveOf(told, slip.move)} leer wurde, blieb in Arbeit und nahm eine eigene Masche auf.`;
    case 'needle-left-out-of-work':
      return `Die Nadel, die bei der Zunahme von ${moveOf(told, slip.move)} frei wurde, ist außer Arbeit: für das Loch gehört sie in Arbeit.`;
    case 'rows-too-many':
      return told.isNow && !told.orBefore
        ? `${rowsWord(slip.rows)} zu viel ${is(slip.rows)} in diesem Streifen.`
        : `${rowsWord(slip.rows)} zu viel ${is(slip.rows)} in Streifen ${told.stripe}${told.orBefore ? ' oder einem früheren' : ''}.`;
    case 'rows-too-few':
      return told.isNow && !told.orBefore
        ? `${rowsWord(slip.rows)} von diesem Streifen ${lacks(slip.rows)}.`
        : `${rowsWord(slip.rows)} von Streifen ${told.stripe}${told.orBefore ? ' oder einem früheren' : ''} ${lacks(slip.rows)}.`;
    case 'stripe-in-other-yarn':
      return `Streifen ${slip.stripe} ist in ${yarnName(slip.used)}; dran war ${held(told.due)}.`;
    case 'yarns-swapped':
      return `Ab Streifen ${slip.stripe} sind ${held(told.due)} und ${yarnName(slip.used)} vertauscht.`;
    case 'row-in-other-yarn':
      return `Reihe ${told.row} ist in ${yarnName(slip.used)}; dran war ${held(told.due)}.`;
    case 'rehang-missing':
      return `Nach Reihe ${slip.row} wurde nicht neu aufgenadelt: die Arbeit geht weiter, wo sie war.`;
    case 'rehang-shifted':
      return `Nach Reihe ${slip.row} wurde ${Math.abs(slip.by) === 1 ? 'eine Nadel' : `${Math.abs(slip.by)} Nadeln`} zu weit ${aside(slip.by)} aufgenadelt.`;
    case 'work-dropped':
      return `In den Streifen kann das Bett nicht leer sein: die Arbeit ist abgefallen. Gewichte ab, eine Hand darunter. ${openLoops(told)}`;
    case 'stitch-dropped':
      return 'Eine Nadel zwischen den Rändern hat ihre Masche verloren: such entlang der Reihe nach einer Laufmasche und fang sie mit der Zungennadel, bevor der Schlitten wieder fährt.';
    case 'carriage-wrong-side':
      return `Der Schlitten fuhr hinüber, ohne zu stricken: nach Reihe ${told.row} gehört er nach ${told.carriage === 'left' ? 'links' : 'rechts'}.`;
    case 'wrong-yarn-in-feeder':
      return `In den Fadenführer gehört ${held(told.due)}; darin ist ${held(slip.held)}.`;
    default:
      return exhaustive(slip);
  }
}

function openLoops({ hangs, row }: SlipTold): string {
  const across = (name: string): number =>
    name.startsWith('L') ? -Number(name.slice(1)) : Number(name.slice(1)) - 1;
  const loops = hangs.reduce((sum, run) => sum + run.loops * (across(run.last) - across(run.first) + 1), 0);
  const odd = hangs.flatMap(({ first, last, loops: each }) => {
    const where = first === last ? first : `je ${first} bis ${last}`;
    if (each === 1) return [];
    return each === 0 ? [`${where} leer für das Loch`] : [`${each === 2 ? 'zwei' : each} auf ${where}`];
  });
  const span = `von ${hangs[0]?.first ?? ''} bis ${hangs.at(-1)?.last ?? ''}`;
  return `Die ${loops} offenen Maschen sind aus Reihe ${row}, ${[span, ...odd].join(', ')}: fang mit der Zungennadel, was läuft, und häng eine nach der anderen ein.`;
}

const traces: Readonly<Record<Trace, string>> = {
  'eyelet-out-of-line': 'ein Loch außer der Reihe',
  'eyelet-missing': 'ein Loch zu wenig: zähl beim Einziehen ab der Lücke',
  'extra-eyelet': 'ein Loch zu viel: lass es beim Einziehen aus',
  'wide-hole': 'ein Loch, zwei Nadeln breit',
  'step-in-leading-edge': 'eine kleine Stufe am Öffnungsrand',
  'step-in-trailing-edge': 'eine kleine Stufe am Bodenrand, in der Naht',
  'hole-at-trailing-edge': 'ein Loch nahe am Bodenrand',
  'three-in-one': 'drei Maschen in einer',
  'loop-at-edge': 'eine Schlinge am Bodenrand, die an nichts hängt, in der Naht',
  ladder: 'eine Laufmasche, wo eine Nadel außer Arbeit war',
  'stripe-too-high': 'ein Streifen, der zu hoch ist',
  'stripe-too-low': 'ein Streifen, der zu niedrig ist',
  'strand-across': 'ein Faden quer über die Innenseite, von Rand zu Rand',
  'wrong-colour': 'ein Streifen oder eine Reihe in der anderen Farbe',
};

const questions: Readonly<Record<SlipQuestion, string>> = {
  loose:
    'Ist die äußerste Masche am Abnahmerand lose, mit nichts darunter? Tippe find und lose; oder find und fest.',
  rehung:
    'Kam die Arbeit dort herunter und wurde neu aufgenadelt, oder hängt sie noch, wo sie war? Tippe find und neu aufgenadelt; oder find und nicht aufgenadelt.',
  'which-edge':
    'Welcher Rand hat bei dem Formschritt, den du zuerst genannt hast, die Stufe: der Zunahmerand oder der Abnahmerand? Tippe find und Zunahmerand; oder find und Abnahmerand.',
  'before-move':
    'Kamen sie vor dem Formschritt dort oder danach? Sieh nach, wo die Ränder eine Stufe haben: tippe find und vor dem Formschritt, wenn sie unter der Stufe liegen; oder find und nach dem Formschritt.',
  stray:
    'Folge dem Abnahmerand bis dorthin: beginnt dort eine Maschensäule über nichts, mit einer losen Masche? Tippe find und lose; oder find und fest.',
  move: 'Folge diesem Rand nach unten bis zur Stufe: bei welchem Formschritt ist sie? Zähl die Löcher ab den Nadeln. Tippe find und Formschritt 4, oder find und 14 Reihen tiefer; oder find unsicher.',
  'move-or-rehang':
    'Folge den Rändern nach unten. Wo sie eine Stufe haben, zähl die Löcher bis dorthin: tippe find und Formschritt 4. Wo sie gerade bis zum Neuaufnadeln laufen: find und seit Reihe 12. Oder find unsicher.',
  stripe:
    'Sieh am Gestrick hinab: welcher Streifen ist es? Tippe find und in Streifen 3; oder find unsicher.',
  row: 'Nach welcher Reihe war es? Tippe find und seit Reihe 12; oder find unsicher.',
};

const ofTwo = { first: 'Nimm erst eines von beiden.', other: 'Nun das andere von beiden.' } as const;

function careSentence(care: Care): string {
  switch (care.is) {
    case 'weights-off':
      return care.comb
        ? 'Nimm den Kamm ab, eine Hand darunter: nichts darf an Maschen ziehen, die frei werden.'
        : 'Nimm die Krallengewichte ab, eine Hand unter jedem: sie hängen in Reihen, die herauskommen.';
    case 'weights-on':
      return care.comb
        ? 'Häng den Kamm wieder ein.'
        : `Häng die Krallengewichte wieder ein, unter ${care.left} und ${care.right}.`;
    case 'hold-on-strand':
      return `Gewichte ab. Zieh einen Faden durch die ${care.loops} Maschen und halte sie darauf.`;
    case 'cord-aside':
      return care.finished
        ? 'Leg die fertige Kordel beiseite: sie wird wieder gebraucht.'
        : 'Nimm die Kordel auf einen Faden und leg sie beiseite: sie kann später weitergehen.';
    default:
      return exhaustive(care);
  }
}

export const slips = ({ list }: Amounts): Words['slips'] => ({
  slip: slipSentence,
  both: (sentences) => `Zwei Dinge auf einmal. ${sentences.join(' ')}`,
  or: (sentence) => `Oder: ${sentence}`,
  heading: (how, step, isOnly) => {
    if (how === 'now') return 'Das lässt sich jetzt korrigieren und hinterlässt keine Spur:';
    if (how === 'rip') return `Auftrennen und ab Schritt ${step} neu:`;
    return isOnly ? 'Behalten und ausgleichen:' : 'Oder behalten und ausgleichen:';
  },
  shows: (shows) => `Zu sehen sein wird: ${list(shows.map((trace) => traces[trace]))}.`,
  question: (asked, which) => (which === 'only' ? questions[asked] : `${ofTwo[which]} ${questions[asked]}`),
  care: careSentence,
  counter: (row) => `Stell den Reihenzähler auf ${row}.`,
  unpick: 'Trenn die Hilfsgarnreihen auf.',
  yarnWhere: (yarn) =>
    `Hängt ${yarn} in der neuesten Reihe, oder ist es nur im Fadenführer? Tippe find und neueste Reihe ${yarn}, oder find und Fadenführer ${yarn}.`,
  leftOut: (words) => `Ausgelassen habe ich: ${list(words)}.`,
  rowOfWhat: (row) =>
    `Reihe ${row} am Reihenzähler oder in diesem Streifen? Tippe find und Reihenzähler ${row}, oder find und ${row} in diesem Streifen.`,
  onlyTheCount:
    'So kommt Gestricktes heraus. Ist nur die Zählung einen Schritt zu weit, tippe stattdessen back.',
  ladder:
    'Eine gefallene Masche: merk dir die Stelle, fang sie mit der Zungennadel, bevor der Schlitten wieder fährt, und hol sie Querfaden für Querfaden hoch.',
  standsForMany: (from, through, part, draw, round) =>
    part === 'cord'
      ? `Irgendwo in den Runden der ${draw === 'only' ? '' : draw === 'first' ? 'ersten ' : 'zweiten '}Kordel, Schritt ${from} bis ${through}: miss sie, oder zähl: go round ${round}${draw === 'second' ? ' ist ihre 40.' : '.'}`
      : `Irgendwo zwischen Schritt ${from} und ${through}, die Arbeit auf dem Schoß. Zähl: go stitch 23 beim Verbinden, go bar 5 in der Naht, go hole 5 beim Einziehen.`,
  nothingSeen: (words, yarns) =>
    `${list(words)} sagt nichts vom Bett. Die Garne hier sind ${list(yarns)}. Zum Beispiel: find left R10, carriage right.`,
  onTheWay: (back, at, of) =>
    back
      ? `Du bist beim Auftrennen, ${at} von ${of}: next geht weiter, stop beendet es.`
      : `Du bist mitten in einer Korrektur, ${at} von ${of}: next geht weiter, stop beendet sie.`,
  leaveWay: (back, at, of, staysOnIt) =>
    `Du bist bei Handgriff ${at} von ${of} ${back ? 'beim Auftrennen' : 'der Korrektur'}${staysOnIt ? '; wenn du die Tasche wieder öffnest, geht es dort weiter. Die Tasche jetzt verlassen?' : '; dort abbrechen?'} Tippe j oder n.`,
  nothingAsked: 'Es ist nichts gefragt, worauf j oder n antwortet.',
  notOnOne: 'Gerade wird nichts aufgetrennt oder korrigiert.',
  noSuchMend: 'Das passt nicht mehr zur Arbeit: tippe find und was du siehst.',
  betweenPlaces:
    'Das Bett ist zwischen zwei Stellen des Plans. back macht weiter, wo du abgebrochen hast; find und was du siehst zeigt einen anderen Weg; go und eine Stelle sagt, wo die Arbeit ist.',
  leftBetween:
    'Abgebrochen. So passt das Bett zu keinem Schritt des Plans: back geht damit weiter; oder tippe find und was du siehst.',
  further: (why, row) =>
    why === 'kept'
      ? `Dort liegt ein Fehler, der bleiben sollte: aufgetrennt wird bis davor, zu Reihe ${row}.`
      : `Die Hilfsgarnreihen dort sind heraus: aufgetrennt wird bis davor, zu Reihe ${row}.`,
});
