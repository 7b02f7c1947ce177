import type { ColourDepth } from '../shared/shown-colour.ts';

/** Colours that the terminal has, by what its environment says of it. */
export function colourDepth({ NO_COLOR, COLORTERM, TERM }: NodeJS.ProcessEnv): ColourDepth {
  if (NO_COLOR || TERM === 'dumb') return 'none';
  if (COLORTERM === 'truecolor' || COLORTERM === '24bit') return 'true';
  return TERM?.includes('256') ? '256' : '16';
}
