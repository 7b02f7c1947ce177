/** Zuerst, was jetzt zu tun ist, dann, wie das Programm hilft. */
import { endTailCm } from '../planning/tails.ts';
import type { Amounts } from './amounts.ts';
import type { TroubleTopic } from './trouble.en.ts';

const ripTo = (row: number): string => (row > 0 ? `rip row ${row}` : 'rip step 1');

export const trouble = ({ tail }: Amounts): TroubleTopic => ({
  'dropped-stitch': {
    title: 'gefallene Masche',
    says: [
      'masche gefallen',
      'masche verloren',
      'masche fallen gelassen',
      'laufmasche',
      'masche runtergefallen',
      'masche heruntergefallen',
      'dropped stitch',
    ],
    now: () =>
      'Halt vor dem nächsten Schlittengang an. Fang die Masche mit der Zungennadel, häkle sie Querfaden für Querfaden bis zur hängenden Reihe hoch und setz sie auf ihre Nadel zurück.',
    help: () =>
      'Zähl die Nadeln mit Maschen und tippe find damit, etwa find 45 Maschen: so zeigt sich, was wo fehlt.',
  },
  yarn: {
    title: 'gerissenes oder verknotetes Garn',
    says: [
      'garn gerissen',
      'faden gerissen',
      'garn riss',
      'garn reißt',
      'knoten',
      'garn verknotet',
      'garn ausgegangen',
      'broken yarn',
    ],
    now: () =>
      `Geh an den nächsten Rand zurück und fang dort neu an, ${tail(endTailCm)} von beiden Enden bleiben; knote nie innerhalb einer Reihe. Kommt ein Knoten dem Fadenführer nahe: anhalten, herausschneiden, am Rand neu beginnen.`,
    help: ({ row }) =>
      `${ripTo(row)} führt dich Masche für Masche an den Rand zurück. Wird das Garn knapp, zeigt replan weigh mit seinem Gewicht, was reicht.`,
  },
  jam: {
    title: 'Schlitten klemmt',
    says: [
      'klemmt',
      'geklemmt',
      'verklemmt',
      'schlitten blockiert',
      'schlitten fest',
      'schlitten steckt',
      'jam',
    ],
    now: () =>
      'Wende keine Gewalt an. Such eine Nadel, die halb heraussteht, eine Masche außerhalb ihres Hakens, Garn um die Bürste. Löse es so, wie es die Anleitung deiner Maschine sagt.',
    help: () =>
      'Schau dann die Reihe entlang: tippe find und die Ränder, das Garn und die Seite des Schlittens; rip nimmt eine verdorbene Reihe heraus.',
  },
  'fallen-work': {
    title: 'Gestrick abgefallen',
    says: [
      'gestrick gefallen',
      'gestrick abgefallen',
      'alles gefallen',
      'alles abgefallen',
      'alles runter',
      'fadenführer leer',
      'work fallen',
    ],
    now: ({ edges }) =>
      `Gewichte ab, eine Hand unter das Gestrick, nicht ziehen. Die offenen Maschen sind die der letzten Reihe: häng sie einzeln wieder ein${edges ? `, auf ${edges[0]} bis ${edges[1]}` : ''}, linke Seite zu dir, dann die Gewichte.`,
    help: () => 'Tippe dann find und was dort hängt: Ränder, Garn, Schlitten, wie viele Maschen.',
  },
  'split-loop': {
    title: 'gespaltene Masche',
    says: ['gespaltene masche', 'masche gespalten', 'garn gespalten', 'gespalten', 'split loop'],
    now: () =>
      'Vor dem nächsten Schlittengang: heb die Masche mit der Zungennadel ab, lass diese eine um eine Reihe fallen und häkle sie wieder hoch, alle Fäden im Haken.',
    help: () =>
      'Reihen später bemerkt: rip row und ihre Nummer führt zurück; oder lass sie und tippe note, damit du sie beim Vernähen findest.',
  },
  'doubled-stitch': {
    title: 'doppelte Masche nicht abgestrickt',
    says: ['nicht abgestrickt', 'doppelte masche', 'zwei maschen auf', 'alte maschen', 'doubled stitch'],
    now: () =>
      'Zieh die alten Maschen von Hand über die neue, beide, mit dem Decker oder der Zungennadel, vor dem nächsten Schlittengang.',
    help: () =>
      'Es ist eine Nadel, auf der eine Abnahme zwei Maschen gelassen hat. Kommt es wieder vor, häng das Gewicht an diesem Rand näher heran.',
  },
  'fallen-weight': {
    title: 'Gewicht gefallen',
    says: [
      'gewicht gefallen',
      'gewicht abgefallen',
      'gewicht runtergefallen',
      'gewicht heruntergefallen',
      'kamm gefallen',
      'kamm abgefallen',
      'weight fallen',
    ],
    now: ({ edges }) =>
      `Erst Hände und Füße weg. Schau dann nach den Maschen darüber, ob eine langgezogen oder gefallen ist, und häng es wieder ein, eine Hand darunter${edges ? `: unter ${edges[0]} oder unter ${edges[1]}` : ''}.`,
    help: () =>
      'Fehlt eine Masche: tippe trouble gefallene Masche. Ist die Reihe davor locker: rip und ihre Reihe.',
  },
  'knitted-on': {
    title: 'über einen Halt hinaus gestrickt',
    says: [
      'hinaus gestrickt',
      'zu weit gestrickt',
      'weiter gestrickt',
      'weitergestrickt',
      'reihen zu viel',
      'reihe zu viel',
      'nicht angehalten',
      'vergessen anzuhalten',
      'formschritt vergessen',
      'wechsel vergessen',
      'knitted on',
    ],
    now: () =>
      'Halt an und lass die Ränder, wie sie sind. Zähl die Reihen dieser Farbe, die da hängen, und schau auf die Seite des Schlittens und den Reihenzähler.',
    help: ({ row }) =>
      `Tippe find damit, etwa find Reihe ${row + 2} Schlitten rechts: so zeigt sich, wie viele Reihen zu viel sind, und der Weg zurück.`,
  },
  list: (titles) => `Tippe trouble und eines davon, oder was geschehen ist: ${titles.join('; ')}.`,
});
