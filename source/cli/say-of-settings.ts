import { formatFileFault } from '../chat/wording/file-faults.ts';
import { sayNoSuchLanguage, saySettingsRefused, saySettingsSetAside } from '../chat/wording/settings.ts';
import type { LoadedSettings } from '../files/settings-file.ts';
import { languageChoices } from '../languages/languages.ts';

/** What is wrong with the settings, and what is done instead. */
export const sayOfSettings = ({
  settings,
  setAsideAs,
  fault,
  refused,
}: LoadedSettings): readonly string[] => [
  ...(setAsideAs === null ? [] : [saySettingsSetAside(setAsideAs)]),
  ...(fault ? [formatFileFault(fault)] : []),
  ...(refused.length > 0 ? [saySettingsRefused(refused)] : []),
  ...(languageChoices.includes(settings.language) ? [] : [sayNoSuchLanguage(settings.language)]),
];
