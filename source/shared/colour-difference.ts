import type { Lab } from './colour.ts';

const degrees = (radians: number): number => (radians * 180) / Math.PI;
const radians = (angle: number): number => (angle * Math.PI) / 180;

/**
 * CIEDE2000 with all weights 1: how far apart two colours look. Formula and names after G. Sharma, W. Wu and E. N. Dalal,
 * "The CIEDE2000 color-difference formula", Color Research and Application 30 (2005), 21–30.
 */
export function colourDifference([l1, a1, b1]: Lab, [l2, a2, b2]: Lab): number {
  const meanC = (Math.hypot(a1, b1) + Math.hypot(a2, b2)) / 2;
  const g = 0.5 * (1 - chromaRoot(meanC));
  const [red1, red2] = [(1 + g) * a1, (1 + g) * a2];
  const [c1, c2] = [Math.hypot(red1, b1), Math.hypot(red2, b2)];
  const [h1, h2] = [hue(red1, b1), hue(red2, b2)];

  const deltaL = l2 - l1;
  const deltaC = c2 - c1;
  const deltaH = 2 * Math.sqrt(c1 * c2) * Math.sin(radians(c1 * c2 === 0 ? 0 : hueStep(h1, h2)) / 2);

  const l = (l1 + l2) / 2;
  const c = (c1 + c2) / 2;
  const h = c1 * c2 === 0 ? h1 + h2 : meanHue(h1, h2);
  const t =
    1 -
    0.17 * Math.cos(radians(h - 30)) +
    0.24 * Math.cos(radians(2 * h)) +
    0.32 * Math.cos(radians(3 * h + 6)) -
    0.2 * Math.cos(radians(4 * h - 63));
  const lWeight = 1 + (0.015 * (l - 50) ** 2) / Math.sqrt(20 + (l - 50) ** 2);
  const cWeight = 1 + 0.045 * c;
  const hWeight = 1 + 0.015 * c * t;
  const turn = -Math.sin(radians(60 * Math.exp(-(((h - 275) / 25) ** 2)))) * 2 * chromaRoot(c);

  const [dl, dc, dh] = [deltaL / lWeight, deltaC / cWeight, deltaH / hWeight];
  return Math.sqrt(dl ** 2 + dc ** 2 + dh ** 2 + turn * dc * dh);
}

const chromaRoot = (c: number): number => Math.sqrt(c ** 7 / (c ** 7 + 25 ** 7));

const hue = (a: number, b: number): number =>
  a === 0 && b === 0 ? 0 : (degrees(Math.atan2(b, a)) + 360) % 360;

function hueStep(h1: number, h2: number): number {
  const step = h2 - h1;
  if (Math.abs(step) <= 180) return step;
  return step > 180 ? step - 360 : step + 360;
}

function meanHue(h1: number, h2: number): number {
  if (Math.abs(h1 - h2) <= 180) return (h1 + h2) / 2;
  return h1 + h2 < 360 ? (h1 + h2 + 360) / 2 : (h1 + h2 - 360) / 2;
}
