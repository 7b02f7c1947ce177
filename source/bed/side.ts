/** Left and right are always the maker's, facing the bed. */
export type Side = 'left' | 'right';

export const opposite = (side: Side): Side => (side === 'left' ? 'right' : 'left');
