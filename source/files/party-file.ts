/** The party that is on: its briefs, kept whole or not at all. */
import type { FileFault } from '../journal/fault.ts';
import type { BriefFile } from '../planning/brief.ts';
import { readBrief } from '../planning/parse-brief.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { writeDraftFile } from './drafts.ts';
import { readBytes } from './read-file.ts';

const mostBytes = 4 * 1024 * 1024;

export type PartyFault = FileFault | { readonly code: 'party/damaged'; readonly path: string };

/** None where none is planned. */
export function loadParty(path: string): Result<readonly BriefFile[], PartyFault> {
  const bytes = readBytes(path, mostBytes);
  if (!bytes.ok) return bytes.fault.code === 'files/missing' ? succeed([]) : bytes;
  const briefs = parse(bytes.value);
  return briefs ? succeed(briefs) : fail({ code: 'party/damaged', path });
}

function parse(bytes: Uint8Array): readonly BriefFile[] | null {
  try {
    const stored: unknown = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
    if (!Array.isArray(stored)) return null;
    const briefs = stored.flatMap((json) => {
      const brief = readBrief(json);
      return brief.ok ? [{ json, brief: brief.value }] : [];
    });
    return briefs.length === stored.length ? briefs : null;
  } catch {
    return null;
  }
}

export const saveParty = (path: string, bags: readonly BriefFile[]): Result<null, FileFault> =>
  writeDraftFile(
    path,
    `${JSON.stringify(
      bags.map(({ json }) => json),
      null,
      2,
    )}\n`,
  );
