export const zones = {
  heights: 'Heights are above the datum of the house, as the levels of the grid: {{levels}}.',
  facing: 'only the face to line {{line}}',
  problem: {
    'unknown-line': '{{field}}: the grid has no line “{{said}}” in these lines.',
    'unknown-corner':
      'The grid has no crossing “{{said}}”. Write crossings with a space between them, e.g. い一 ろ三.',
    'no-width': 'It has no width: it begins and ends on the same line.',
    'no-height': 'It has no height: the top must be above the bottom.',
    'too-few-corners': 'Name two opposite corners, or all of them, with a space between.',
    'not-convex': 'Its corners turn inwards. Make two zones of it.',
  },
} as const;
