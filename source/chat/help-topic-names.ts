/** What help can be asked about, besides the commands. */
export const helpTopicNames = [
  'keys',
  'switches',
  'finding',
  'ripping',
  'replanning',
  'yarn',
  'log',
  'replay',
  'language',
  'screen',
] as const;

export type HelpTopicName = (typeof helpTopicNames)[number];
