/** The greatest number up to `most` that holds, where every smaller one holds too; −1 where none does. */
export function lastOf(most: number, holds: (number: number) => boolean): number {
  let [low, high] = [-1, most];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (holds(middle)) low = middle;
    else high = middle - 1;
  }
  return low;
}
