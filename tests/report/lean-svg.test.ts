import { expect, test } from 'vitest';
import { leanSvg } from '../../src/report/lean-svg.ts';

test.each([
  [
    'names and nests of groups',
    '<svg class="marks"><g><g class="mark-rule role-x"><g fill="red"><path d="M0,0C1,1,2,2,3,3"/></g></g></g></svg>',
    '<svg><g fill="red"><path d="M0,0C1,1,2,2,3,3"/></g></svg>',
  ],
  ['empty groups', '<g/><g fill="none"/><g><text>a</text></g>', '<text>a</text>'],
  ['full opacity, not less', '<g opacity="1" stroke-opacity="0.1"><text>a</text></g>', '<g stroke-opacity="0.1"><text>a</text></g>'], // prettier-ignore
  ['strokes of no width', '<path d="M0,0C1,1,2,2,3,3" fill="red" stroke="#4c78a8" stroke-width="0"/>', '<path fill="red" d="M0,0C1,1,2,2,3,3"/>'], // prettier-ignore
  [
    'ink of words',
    '<text fill="currentColor">a</text><text fill="red">b</text>',
    '<text>a</text><text fill="red">b</text>',
  ],
  [
    'corners as SVG has them',
    '<g stroke-miterlimit="4" fill="none"><text>a</text></g>',
    '<g fill="none"><text>a</text></g>',
  ],
  ['moves by nothing', '<g transform="translate(0,0)"><text>a</text></g>', '<text>a</text>'],
  [
    'what the page says',
    '<svg font-family="\'A B\', c" xmlns="http://www.w3.org/2000/svg" width="9">',
    '<svg width="9">',
  ],
])('drops %s', (_, svg, lean) => {
  expect(leanSvg(svg)).toBe(lean);
});

test('lines that look alike are one path, at the same places with one decimal', () => {
  expect(
    leanSvg(
      '<line transform="translate(73.93,225.4)" x2="24.64" y2="0" stroke="red" stroke-width="1"/>' +
        '<line transform="translate(9,8)" x2="0" y2="-4" stroke="red" stroke-width="1" stroke-dasharray="1,0"/>' +
        '<line x2="3" y2="4" stroke="red" stroke-dasharray="7,3"/>',
    ),
  ).toBe('<path stroke="red" d="M73.9,225.4H98.6M9,8V4"/><path stroke="red" stroke-dasharray="7,3" d="M0,0L3,4"/>');
});

test('pale lines are one path only where they run one way, so that no crossing turns paler', () => {
  const pale = (to: string) => `<line ${to} stroke="red" stroke-opacity="0.1"/>`;
  const look = 'stroke="red" stroke-opacity="0.1"';
  expect(leanSvg(pale('x2="5" y2="0"') + pale('x2="6" y2="0"'))).toBe(`<path ${look} d="M0,0H5M0,0H6"/>`);
  expect(leanSvg(pale('x2="5" y2="0"') + pale('x2="0" y2="6"'))).toBe(
    `<g ${look}><path d="M0,0H5"/><path d="M0,0V6"/></g>`,
  );
});

test('marks of one colour become dots of a round pen or filled squares, as wide as they were; others keep their edge', () => {
  const disc = (look: string) =>
    `<path transform="translate(24,-23.5)" d="M3.2,0A3.2,3.2,0,1,1,-3.2,0A3.2,3.2,0,1,1,3.2,0" ${look}/>`;
  const square = (look: string) => `<path transform="translate(5,6)" d="M-3,-3h6v6h-6Z" ${look}/>`;
  const bare = 'fill="red" stroke="blue" stroke-width="0"';
  expect(leanSvg(disc(bare) + disc(bare))).toBe(
    '<path stroke="red" stroke-width="6.4" stroke-linecap="round" d="M24,-23.5h0M24,-23.5h0"/>',
  );
  expect(leanSvg(square('fill="red" stroke="red" stroke-width="2"'))).toBe('<path fill="red" d="M1,2h8v8h-8Z"/>');
  expect(leanSvg(disc('fill="white" stroke="red"') + square('fill="white" stroke="red"'))).toBe(
    '<g fill="white" stroke="red"><circle cx="24" cy="-23.5" r="3.2"/><path d="M2,3h6v6h-6Z"/></g>',
  );
});

test('what only looks alike at a distance is not joined: the order of painting stays', () => {
  const line = (colour: string) => `<line x2="5" y2="0" stroke="${colour}"/>`;
  expect(leanSvg(line('red') + line('blue') + line('red'))).toBe(
    '<path stroke="red" d="M0,0H5"/><path stroke="blue" d="M0,0H5"/><path stroke="red" d="M0,0H5"/>',
  );
});

test('steps are written the short way', () => {
  expect(leanSvg('<path d="M0,9L4,9L4,9L4,2.5L8,1" stroke="red"/>')).toBe('<path stroke="red" d="M0,9H4V2.5L8,1"/>');
  expect(leanSvg('<path d="M0,9L4,9L6,9L6,2L6,1L7,1" stroke="red"/>')).toBe('<path stroke="red" d="M0,9H6V1H7"/>');
  expect(leanSvg('<path d="M0,9L6,9L4,9L4,2L4,5" stroke="red"/>')).toBe('<path stroke="red" d="M0,9H6H4V2V5"/>');
});

test('an ellipse, a curve and closed shapes keep their course', () => {
  for (const d of ['M3,0A3,2,0,1,1,-3,0', 'M0,0C1,1,2,2,3,3', 'M-3,-3h6v7h-6Z', 'M0,0L1,1Z']) {
    expect(leanSvg(`<path d="${d}"/>`)).toBe(`<path d="${d}"/>`);
  }
});

test('words that look alike share a group; what they say is not touched', () => {
  const text = (place: string, words: string) =>
    `<text text-anchor="start" transform="translate(${place})" font-size="13px">${words}</text>`;
  const words = 'opacity="1" class="marks" &lt;g&gt; 1.234';
  expect(leanSvg(text('0,4.25', words) + text('-1,0', 'b'))).toBe(
    `<g font-size="13"><text y="4.3">${words}</text><text x="-1">b</text></g>`,
  );
  expect(leanSvg('<text transform="rotate(-90)">a</text>')).toBe('<text transform="rotate(-90)">a</text>');
});
