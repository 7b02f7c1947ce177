/** Put at the end of a `switch`: the compiler proves that no case is forgotten. Throws only on our own bug. */
export function exhaustive(value: never): never {
  throw new Error(`unhandled case: ${JSON.stringify(value)}`);
}
