/** SVG read by a library, and its polygons measured. */
import { XMLParser, XMLValidator } from 'fast-xml-parser';

export interface SvgNode {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly SvgNode[];
  readonly text: string;
}

type Parsed = Record<string, unknown>;

/** The root element; throws when the text is not well-formed XML. */
export function readSvg(svg: string): SvgNode {
  const verdict = XMLValidator.validate(svg);
  if (verdict !== true) throw new Error(`not XML: ${verdict.err.msg} in line ${verdict.err.line}`);
  const parser = new XMLParser({
    preserveOrder: true,
    ignoreAttributes: false,
    attributeNamePrefix: '',
    trimValues: false,
    parseTagValue: false,
    processEntities: { enabled: true, maxTotalExpansions: 1_000_000, maxExpandedLength: 10_000_000 },
  });
  const roots = (parser.parse(svg) as Parsed[]).map(toNode).filter((node) => node.name === 'svg');
  const [root] = roots;
  if (!root) throw new Error('no svg element');
  return root;
}

function toNode(parsed: Parsed): SvgNode {
  const name = Object.keys(parsed).find((key) => key !== ':@') ?? '';
  const inside = parsed[name];
  const attributes = (parsed[':@'] ?? {}) as Record<string, string>;
  if (!Array.isArray(inside)) return { name, attributes, children: [], text: String(inside) };
  const children = (inside as Parsed[]).map(toNode);
  return { name, attributes, children, text: children.map((child) => child.text).join('') };
}

export const allNodes = (node: SvgNode): readonly SvgNode[] => [node, ...node.children.flatMap(allNodes)];

export const withClass = (node: SvgNode, wanted: string): readonly SvgNode[] =>
  allNodes(node).filter(({ attributes }) => (attributes.class ?? '').split(' ').includes(wanted));

export const pointsOf = ({ attributes }: SvgNode): readonly (readonly [number, number])[] =>
  (attributes.points ?? '')
    .split(' ')
    .filter((pair) => pair !== '')
    .map((pair) => pair.split(',').map(Number) as [number, number]);
