/** Colours turned round in the JSON of a brief: its stripes, its hem and its cord in other yarns. */
type Json = Readonly<Record<string, unknown>>;

export interface Coloured {
  readonly yarns: Readonly<Record<string, Json>>;
  readonly stripes: readonly { readonly yarn: string; readonly rows: number }[];
  readonly hem?: Json;
  readonly cord?: Json;
}

export const colouredOf = (json: Json): Coloured => json as unknown as Coloured;

/** Each yarn once, in the order in which the stripes first have it. */
export const stripeYarns = ({ stripes }: Pick<Coloured, 'stripes'>): readonly string[] => [
  ...new Set(stripes.map(({ yarn }) => yarn)),
];

/** The brief with each yarn of its stripes, its hem and its cord as `nameOf` has it. */
export function inYarns(json: Json, nameOf: (yarn: string) => string): Json {
  const { stripes, hem, cord } = colouredOf(json);
  const other = (key: string, made: Json | undefined): Json =>
    typeof made?.yarn === 'string' ? { [key]: { ...made, yarn: nameOf(made.yarn) } } : {};
  return {
    ...json,
    stripes: stripes.map((stripe) => ({ ...stripe, yarn: nameOf(stripe.yarn) })),
    ...other('hem', hem),
    ...other('cord', cord),
  };
}

/** Each yarn takes the place of the one so many places on; a bag of scraps has no places, and stays. */
export function turnColours(json: Json, places: number): Json {
  if (!Array.isArray(json.stripes)) return json;
  const names = stripeYarns(colouredOf(json));
  return inYarns(json, (yarn) => {
    const at = names.indexOf(yarn);
    return at < 0 ? yarn : (names[(at + places) % names.length] ?? yarn);
  });
}
