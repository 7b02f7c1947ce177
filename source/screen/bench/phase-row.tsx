import { Text } from 'ink';
import type { BenchView } from '../../chat/view.ts';
import { sayPhase } from '../../chat/wording/steps.ts';
import { phases } from '../../steps/step.ts';

/** The bag's name and the six phases, the present one in brackets. */
export function PhaseRow({ view, wide }: { readonly view: BenchView; readonly wide: boolean }) {
  const at = phases.indexOf(view.phase);
  return (
    <Text wrap="truncate-end">
      {wide ? <Text bold>{`${view.name}   `}</Text> : null}
      {phases.map((phase, i) => (
        <Text key={phase} bold={i === at && !view.finished} dimColor={i < at || view.finished}>
          {i === at && !view.finished ? `[${sayPhase(phase)}]` : ` ${sayPhase(phase)} `}
        </Text>
      ))}
    </Text>
  );
}
