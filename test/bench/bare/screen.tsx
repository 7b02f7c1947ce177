/** Ink and nothing else: as many rows as the bench has, one of which changes with a key. What a press is measured against. */
import { fdatasyncSync, openSync, writeSync } from 'node:fs';
import { Box, render, Text, useInput } from 'ink';
import { useState } from 'react';

const rows = Number(process.argv[2]);
const backKeys = process.argv[3] ?? '';
/** Where a line is written and flushed at each key; none without. */
const log = process.argv[4] === undefined ? null : openSync(process.argv[4], 'a');
const line = `${'x'.repeat(110)}\n`;

function flushLine(): void {
  if (log === null) return;
  writeSync(log, line);
  fdatasyncSync(log);
}

function Screen() {
  const [step, setStep] = useState(1);
  useInput((input, key) => {
    flushLine();
    setStep((now) => now + (key.leftArrow || backKeys.includes(input || ' ') ? -1 : 1));
  });
  return (
    <Box flexDirection="column">
      {Array.from({ length: rows - 1 }, (_, row) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: rows have no identity but their place
        <Text key={row}>{`row ${row} of a screen that shows the same until the program ends`}</Text>
      ))}
      <Text>{`count  step ${step} of`}</Text>
    </Box>
  );
}

render(<Screen />, { patchConsole: false, maxFps: 1000 });
