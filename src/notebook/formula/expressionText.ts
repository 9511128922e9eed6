import { type Expression, operators } from './expression.ts';

/** An expression as a coach would write it; brackets only where an operation stands in another. */
export function expressionText(expression: Expression): string {
  switch (expression.kind) {
    case 'number':
    case 'truth':
      return String(expression.value);
    case 'text':
      return JSON.stringify(expression.value);
    case 'name':
      return expression.name;
    case 'operation':
      return operationText(expression.operator, expression.args.map(inner));
    case 'call':
      return `${expression.name}(${expression.args.map(expressionText).join(', ')})`;
    case 'choice': {
      const [condition, yes, no] = expression.args.map(inner);
      return `${condition} ? ${yes} : ${no}`;
    }
    case 'list':
      return `[${expression.args.map(expressionText).join(', ')}]`;
    case 'range':
      return expression.args.map(inner).join(' : ');
  }
}

/** A part within an operation. A number and its unit need no brackets: "110 deg". */
function inner(expression: Expression): string {
  const text = expressionText(expression);
  const isPlain =
    !['operation', 'choice', 'range'].includes(expression.kind) || isQuantity(expression);
  return isPlain ? text : `(${text})`;
}

function isQuantity(expression: Expression): boolean {
  if (expression.kind !== 'operation' || expression.operator !== 'multiply') return false;
  const [size, unit] = expression.args;
  return size?.kind === 'number' && unit?.kind === 'name';
}

function operationText(operator: keyof typeof operators, args: readonly string[]): string {
  const [first = '', second] = args;
  if (second === undefined) return `${operators[operator]}${operator === 'not' ? ' ' : ''}${first}`;
  const isUnit = operator === 'multiply' && /^[\d.]+$/.test(first) && /^[a-z]\w*$/i.test(second);
  return isUnit ? `${first} ${second}` : `${first} ${operators[operator]} ${second}`;
}
