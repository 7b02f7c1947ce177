/** The least that Ink can do: what a start is measured against. */
import { render, Text } from 'ink';

render(<Text>hello</Text>, { patchConsole: false, maxFps: 1000 });
// Stays until it is ended, as ours does.
setTimeout(() => undefined, 60_000);
