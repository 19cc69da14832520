/** Polynomials of low degree, coefficients from the constant up, held in a slice of a flat array. */

/** c[at] + c[at+1] s + … + c[at+degree] s^degree. */
export function evaluate(c: Float64Array, at: number, degree: number, s: number): number {
  let value = c[at + degree] as number;
  for (let i = degree - 1; i >= 0; i--) value = value * s + (c[at + i] as number);
  return value;
}

/** Bisection halves an interval of doubles to neighbouring numbers in at most this many steps when it starts near 1. */
const MOST_HALVINGS = 200;

/** The root between lo and hi, where the polynomial has opposite signs; Newton steps kept inside a shrinking bracket. */
function bracketedRoot(c: Float64Array, degree: number, lo: number, hi: number): number {
  let [a, b] = [lo, hi];
  const rising = evaluate(c, 0, degree, b) > 0;
  let x = (a + b) / 2;
  for (let step = 0; step < MOST_HALVINGS; step++) {
    let [value, slope] = [0, 0];
    for (let i = degree; i >= 0; i--) {
      slope = slope * x + value;
      value = value * x + (c[i] as number);
    }
    if (value === 0) return x;
    if (value > 0 === rising) b = x;
    else a = x;
    const newton = x - value / slope;
    const next = newton > a && newton < b ? newton : (a + b) / 2;
    if (next === x || next <= a || next >= b) return next;
    x = next;
  }
  return x;
}

/** Simple roots of a s² + b s + c inside (lo, hi), without the cancellation of the school formula. */
function quadraticRoots(a: number, b: number, c: number, lo: number, hi: number): number[] {
  const discriminant = b * b - 4 * a * c;
  if (!(discriminant > 0)) return [];
  const q = -(b + (b >= 0 ? 1 : -1) * Math.sqrt(discriminant)) / 2;
  const [first, second] = q / a < c / q ? [q / a, c / q] : [c / q, q / a];
  return [first, second].filter((s) => s > lo && s < hi);
}

/**
 * Real roots of c[0] + c[1] s + … strictly inside (lo, hi), ascending, where the sign changes.
 * Between neighbouring roots of the derivative a polynomial is monotone, so each change of sign brackets one root;
 * the recursion runs over the degree only.
 */
export function signChanges(c: Float64Array, lo: number, hi: number): number[] {
  let degree = c.length - 1;
  while (degree > 0 && c[degree] === 0) degree--;
  if (degree <= 0) return [];
  if (degree === 1) {
    const root = -(c[0] as number) / (c[1] as number);
    return root > lo && root < hi ? [root] : [];
  }
  if (degree === 2) return quadraticRoots(c[2] as number, c[1] as number, c[0] as number, lo, hi);
  const derivative = new Float64Array(degree);
  for (let i = 1; i <= degree; i++) derivative[i - 1] = i * (c[i] as number);
  const roots: number[] = [];
  let left = lo;
  let leftValue = evaluate(c, 0, degree, lo);
  for (const right of [...signChanges(derivative, lo, hi), hi]) {
    const rightValue = evaluate(c, 0, degree, right);
    if ((leftValue < 0 && rightValue > 0) || (leftValue > 0 && rightValue < 0)) {
      roots.push(bracketedRoot(c, degree, left, right));
    } else if (rightValue === 0 && right < hi) {
      roots.push(right);
    }
    left = right;
    leftValue = rightValue;
  }
  return roots;
}
