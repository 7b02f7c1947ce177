/** Keys that need no quotes to be read in a path. */
const plainKey = /^[\p{L}\p{N}_-]+$/u;

/** A field as the maker finds it in the file: `stripes[1].rows`, `yarns."deep plum".grams`; '' is the brief itself. */
export const formatField = (path: readonly (string | number)[]): string =>
  path.reduce<string>((field, key) => {
    if (typeof key === 'number') return `${field}[${key}]`;
    const name = plainKey.test(key) ? key : JSON.stringify(key);
    return field ? `${field}.${name}` : name;
  }, '');
