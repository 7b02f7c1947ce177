/** Bad input is a value, not an exception: a function that can refuse returns one of these. */
export type Result<T, F> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly fault: F };

export const succeed = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value });

export const fail = <F>(fault: F): { readonly ok: false; readonly fault: F } => ({ ok: false, fault });

/** A fault of one family, by what stands before the stroke in its code. */
export const isOf = <F extends { readonly code: string }, Family extends string>(
  fault: F,
  family: Family,
): fault is Extract<F, { readonly code: `${Family}/${string}` }> => fault.code.startsWith(`${family}/`);

/** A group of a JSON text, not yet checked. */
export type JsonGroup = Readonly<Record<string, unknown>>;

export const isGroup = (value: unknown): value is JsonGroup =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** What a JSON text holds, given as UTF-8 too; undefined where it is none. */
export function jsonIn(text: string | Uint8Array): unknown {
  try {
    return JSON.parse(
      typeof text === 'string' ? text : new TextDecoder('utf-8', { fatal: true }).decode(text),
    );
  } catch {
    return undefined;
  }
}

/** Put at the end of a `switch`: the compiler proves that no case is forgotten. Throws only on our own bug. */
export function exhaustive(value: never): never {
  throw new Error(`unhandled case: ${JSON.stringify(value)}`);
}
