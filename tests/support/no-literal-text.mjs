/** Attributes whose value a person reads or hears. */
const SPOKEN = new Set([
  'alt',
  'aria-description',
  'aria-label',
  'aria-placeholder',
  'aria-roledescription',
  'aria-valuetext',
  'description',
  'errorMessage',
  'label',
  'placeholder',
  'title',
]);
const LETTER = /\p{L}/u;

/** ESLint rule: every text in JSX comes from the catalogs, or one of the two languages misses it. */
export const noLiteralText = {
  meta: {
    type: 'problem',
    schema: [],
    messages: { literal: 'Text in a component: put “{{text}}” into the catalogs under client/i18n.' },
  },
  create(context) {
    const report = (node, text) =>
      context.report({ node, messageId: 'literal', data: { text: text.trim() } });
    return {
      JSXText: (node) => LETTER.test(node.value) && report(node, node.value),
      JSXAttribute(node) {
        if (node.value && SPOKEN.has(attributeName(node.name))) reportTexts(node.value, report);
      },
      JSXExpressionContainer(node) {
        if (node.parent.type !== 'JSXAttribute') reportTexts(node.expression, report);
      },
    };
  },
};

function attributeName(name) {
  return name.type === 'JSXNamespacedName' ? `${name.namespace.name}:${name.name.name}` : name.name;
}

/** Follows the ways by which a literal becomes the value of an expression. */
function reportTexts(node, report) {
  const parts = {
    JSXExpressionContainer: () => [node.expression],
    ConditionalExpression: () => [node.consequent, node.alternate],
    LogicalExpression: () => [node.left, node.right],
    BinaryExpression: () => (node.operator === '+' ? [node.left, node.right] : []),
    TSAsExpression: () => [node.expression],
  }[node.type]?.();
  if (parts) parts.forEach((part) => reportTexts(part, report));
  else if (node.type === 'Literal' && typeof node.value === 'string' && LETTER.test(node.value))
    report(node, node.value);
  else if (node.type === 'TemplateLiteral')
    for (const quasi of node.quasis) if (LETTER.test(quasi.value.raw)) report(node, quasi.value.raw);
}
