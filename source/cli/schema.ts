/**
 * The JSON Schema of a brief, with a line on each field: in English, as all JSON is; the manual has them in the maker's
 * language. Checks between fields are not in it.
 */

import { toJsonSchema } from '@valibot/to-json-schema';
import { briefSchema } from '../planning/brief-schema.ts';
import type { JsonGroup } from '../shared/result.ts';
import { englishWords, type Words } from '../wording/words.ts';
import { printDone } from './outcome.ts';

export const printSchema = (): number =>
  printDone(JSON.stringify({ title: 'Slantwise brief', ...describedSchema(englishWords) }, null, 2));

type Describe = (path: string) => string | undefined;

export const describedSchema = ({ fields }: Words): JsonGroup =>
  described(toJsonSchema(briefSchema, { errorMode: 'ignore' }) as JsonGroup, '', (path) =>
    path === '' ? fields.brief : fields[path as keyof typeof fields],
  );

/** Paths are as `bed.needles`, `yarns.NAME.grams` and `stripes[].rows`. */
function described(schema: JsonGroup, path: string, describe: Describe): JsonGroup {
  const { properties, items, additionalProperties, anyOf } = schema as Readonly<Record<string, JsonGroup>>;
  const inside = (key: string): string => (path === '' ? key : `${path}.${key}`);
  return {
    description: describe(path),
    ...schema,
    ...(properties && {
      properties: Object.fromEntries(
        Object.entries(properties).map(([key, field]) => [
          key,
          described(field as JsonGroup, inside(key), describe),
        ]),
      ),
    }),
    ...(items && { items: described(items, `${path}[]`, describe) }),
    ...(typeof additionalProperties === 'object' && {
      additionalProperties: described(additionalProperties, inside('NAME'), describe),
    }),
    // Each way of saying the same thing.
    ...(Array.isArray(anyOf) && { anyOf: anyOf.map((one: JsonGroup) => described(one, path, describe)) }),
  };
}
