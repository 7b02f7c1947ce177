import { Text } from 'ink';
import { inkOn } from '../../shared/colour.ts';

/** A yarn's name on its own colour; the name alone tells it where there is no colour. */
export function YarnChip({ yarn, colour }: { readonly yarn: string; readonly colour: string | undefined }) {
  if (!colour) return <Text>{yarn}</Text>;
  return (
    <Text backgroundColor={colour} color={inkOn(colour)}>
      {` ${yarn} `}
    </Text>
  );
}
