import type { Amounts } from './amounts.ts';
import { toTheYarn, yarnName } from './forms.de.ts';
import { counted } from './plurals.de.ts';
import type { ReplanWords } from './replan.en.ts';

export const replan = ({ decimal, length, list, massNeeded }: Amounts): ReplanWords => ({
  asPlannedItCannot: 'Wie geplant lässt er sich nicht fertigstricken.',
  asPlanned: (choice) => `Wie geplant ${choice}.`,
  noOther: 'Eine andere Länge steht nicht zur Wahl.',
  toTakeIt: 'Um so weiterzustricken, tippe choose.',
  toTakeOne: 'Um so weiterzustricken, tippe choose und die Nummer.',
  lastsForNone:
    'Das gewogene Garn reicht für keinen solchen Beutel: nimm mit replan colour ein anderes dazu, für die Kordel mit replan cord, oder trenn auf.',
  lastsFor: (aimCm, named) => `Mit dem Garn, das da ist, am nächsten an ${length(aimCm)} Breite: ${named}.`,
  planIsNearest: (aimCm) => `Der Plan selbst kommt ${length(aimCm)} Breite am nächsten.`,
  choiceNumber: (rows, number) => `${rows} Reihen, Nummer ${number}`,
  choiceTyped: (rows) => `replan rows ${rows}`,
  isShort: (yarn, shortGrams, parts) =>
    `${massNeeded(shortGrams)} ${yarnName(yarn)} zu wenig${parts.length === 0 ? '' : ` bei ${list(parts)}`}`,
  forStripes: (grams) => `${massNeeded(grams)} für Streifen`,
  forTails: (grams) => `${massNeeded(grams)} für Maschenstich und Naht`,
  forCord: (grams) => `${massNeeded(grams)} für die Kordel`,
  rows: (rows) => `${rows} Reihen`,
  more: (howMany) => `${howMany} mehr`,
  fewer: (howMany) => `${howMany} weniger`,
  size: (widthCm, depthCm, rowsLeft) =>
    `${length(widthCm)} breit, ${length(depthCm)} tief, noch ${counted.row(rowsLeft)}`,
  rehangsMore: (times) => `${counted.time(times)} öfter umgehängt`,
  rehangsFewer: (times) => `${counted.time(times)} weniger umgehängt`,
  cordIn: (yarn, neededGrams) =>
    `mit der Kordel in ${toTheYarn(yarn)}, alles zusammen braucht davon ${massNeeded(neededGrams)}`,
  but: (short) => `, aber ${list(short)}`,
  notWholeRepeats: (rows, rowMultiple, least) =>
    `${rows} Reihen sind keine ganzen Streifenrapporte: wähle ein Vielfaches von ${rowMultiple}, mindestens ${least}.`,
  tooFew: (rows, least) =>
    `${rows} Reihen sind weniger, als das Gestrick von hier an braucht: wähle mindestens ${least}.`,
  tooMany: (rows, most) => `${rows} Reihen sind mehr, als ein Beutel haben darf: wähle höchstens ${most}.`,
  notAYarn: (yarn, known) =>
    `${yarn} ist kein Garn dieses Beutels (${list(known)}): nenn auch seine Farbe und die Meter je 100 g, wie in ${yarn} #c2a878 210.`,
  notToCome: (yarn) => `${yarn} strickt von hier an keinen Streifen mehr: nenn ein Garn, das noch drankommt.`,
  coloursMeet: (first, second, yarn) =>
    `Die Streifen ${first} und ${second} lägen beide in ${yarn} aneinander und sähen aus wie einer: wähle ein anderes Garn.`,
  impossible: (sizeMm) =>
    `Eine Masche oder Reihe von ${decimal(sizeMm)} mm kann nicht sein: miss das Stück noch einmal.`,
  whichUnit: (size, sizeMm, dueMm, again) =>
    `Bei ${size} wäre eine ${decimal(sizeMm)} mm groß, im Plan sind es ${decimal(dueMm)} mm. Sag die Einheit dazu: ${again.join(' oder ')}.`,
  boxedTooDeep: (boxedCm, belowCm) =>
    `Ein ${length(boxedCm)} tiefer Boden braucht einen größeren Beutel, bei so vielen Reihen muss er unter ${length(belowCm)} bleiben: wähle mehr Reihen.`,
  tooLate:
    'Die Schlussreihe ist begonnen, damit steht die Größe fest: trenn bis davor auf, um den Plan zu ändern.',
  cordBegun:
    'Die Kordel ist begonnen, damit steht ihr Garn fest: trenn bis vor ihren Anschlag auf, um es zu ändern.',
});
