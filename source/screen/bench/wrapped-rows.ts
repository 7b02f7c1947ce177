/** Rows that `text` takes at most when it is wrapped at `width`: each word counts with the space behind it. */
export function wrappedRows(text: string, width: number): number {
  let rows = 1;
  let used = 0;
  for (const word of text.split(' ')) {
    const taken = word.length + 1;
    if (used > 0 && used + taken > width) {
      rows++;
      used = 0;
    }
    // A word longer than a row is broken.
    used += taken;
    rows += Math.max(0, Math.ceil(used / width) - 1);
    if (used > width) used %= width;
  }
  return rows;
}
