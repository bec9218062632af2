import { encode } from 'uqr';

/** Light modules around the code, without which readers do not find it (ISO/IEC 18004: four). */
const QUIET = 4;

/** The QR code of an address (error correction M: 15 % of it may be lost to stains and copying). */
export function qrSvg(address: string): string {
  const { data, size } = encode(address, { ecc: 'M', border: QUIET });
  const path = data.flatMap((row, y) => row.flatMap((dark, x) => (dark ? [`M${x} ${y}h1v1h-1z`] : []))).join('');
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size} ${size}" width="${size}" height="${size}" shape-rendering="crispEdges"><path fill="#000" d="${path}"/></svg>`;
}
