import { expect, test } from 'vitest';
import { leanSvg } from '../../src/report/lean-svg.ts';

test.each([
  [
    'names and nests of groups',
    '<svg class="marks"><g><g class="mark-rule role-x"><g fill="red"><path d="M0,0"/></g></g></g></svg>',
    '<svg><g fill="red"><path d="M0,0"/></g></svg>',
  ],
  ['empty groups', '<g/><g fill="none"/><g><text>a</text></g>', '<text>a</text>'],
  ['full opacity, not less', '<line opacity="1" stroke-opacity="0.1"/>', '<line stroke-opacity="0.1"/>'],
  ['strokes of no width', '<path d="M1,1" stroke="#4c78a8" stroke-width="0"/>', '<path d="M1,1"/>'],
  [
    'dashes without gaps only',
    '<line stroke-dasharray="1,0"/><line stroke-dasharray="7,3"/>',
    '<line/><line stroke-dasharray="7,3"/>',
  ],
  ['moves by nothing', '<g transform="translate(0,0)"><text>a</text></g>', '<text>a</text>'],
])('drops %s', (_, svg, lean) => {
  expect(leanSvg(svg)).toBe(lean);
});

test('writes discs and steps the short way, at the same places', () => {
  expect(
    leanSvg('<path transform="translate(24,-23.5)" d="M3.2,0A3.2,3.2,0,1,1,-3.2,0A3.2,3.2,0,1,1,3.2,0" fill="red"/>'),
  ).toBe('<circle cx="24" cy="-23.5" r="3.2" fill="red"/>');
  expect(leanSvg('<path d="M0,9L4,9L4,9L4,2.5L8,1" stroke="red"/>')).toBe('<path d="M0,9H4V2.5L8,1" stroke="red"/>');
});

test('leaves an ellipse, a curve and closed shapes alone', () => {
  for (const d of ['M3,0A3,2,0,1,1,-3,0', 'M0,0C1,1,2,2,3,3', 'M-3,-3h6v6h-6Z', 'M0,0L1,1Z']) {
    expect(leanSvg(`<path d="${d}"/>`)).toBe(`<path d="${d}"/>`);
  }
});

test('touches no word', () => {
  const text = '<text>opacity="1" class="marks" &lt;g&gt;</text>';
  expect(leanSvg(text)).toBe(text);
});
