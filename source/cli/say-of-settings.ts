import type { LoadedSettings } from '../files/settings-file.ts';
import { languageChoices } from '../settings/settings.ts';
import { formatFileFault } from '../wording/file-faults.ts';
import type { Words } from '../wording/words.ts';

/** What is wrong with the settings, and what is done instead. */
export function sayOfSettings(
  { settings, setAsideAs, fault, refused }: LoadedSettings,
  words: Words,
): readonly string[] {
  const { settings: say } = words;
  return [
    ...(setAsideAs === null ? [] : [say.setAside(setAsideAs)]),
    ...(fault ? [formatFileFault(fault, words)] : []),
    ...(refused.length > 0 ? [say.refused(refused)] : []),
    ...(languageChoices.includes(settings.language)
      ? []
      : [say.noSuchLanguage(settings.language, languageChoices)]),
  ];
}
