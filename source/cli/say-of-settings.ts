import { formatFileFault } from '../chat/wording/file-faults.ts';
import type { LoadedSettings } from '../files/settings-file.ts';
import { languageChoices } from '../languages/languages.ts';
import { currentWords } from '../wording/current.ts';

/** What is wrong with the settings, and what is done instead. */
export function sayOfSettings({ settings, setAsideAs, fault, refused }: LoadedSettings): readonly string[] {
  const { settings: say } = currentWords();
  return [
    ...(setAsideAs === null ? [] : [say.setAside(setAsideAs)]),
    ...(fault ? [formatFileFault(fault)] : []),
    ...(refused.length > 0 ? [say.refused(refused)] : []),
    ...(languageChoices.includes(settings.language)
      ? []
      : [say.noSuchLanguage(settings.language, languageChoices)]),
  ];
}
