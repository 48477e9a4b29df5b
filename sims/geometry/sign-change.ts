/**
 * Where a function changes sign between `a` and `b`, by Chandrupatla's method: inverse quadratic interpolation where it
 * may be trusted, halving elsewhere, so that a jump through zero is found as well.
 *
 * @param fa value at a, of the other sign than fb or 0
 * @param tolerance width of the last bracket, in the unit of a and b
 * @returns the end of the last bracket on b's side
 */
export function signChange(
  f: (t: number) => number,
  a: number,
  fa: number,
  b: number,
  fb: number,
  tolerance: number,
): number {
  let near = b;
  let atNear = fb;
  let far = a;
  let atFar = fa;
  let share = fb / (fb - fa);
  for (let i = 0; i < 100 && Math.abs(far - near) > tolerance; i++) {
    const least = Math.min(0.5, tolerance / 2 / Math.abs(far - near));
    if (!(share > least)) share = least;
    else if (share > 1 - least) share = 1 - least;
    const t = near + share * (far - near);
    const ft = f(t);
    let old = far;
    let atOld = atFar;
    if (ft > 0 === atNear > 0) {
      old = near;
      atOld = atNear;
    } else {
      far = near;
      atFar = atNear;
    }
    near = t;
    atNear = ft;
    const xi = (near - far) / (old - far);
    const phi = (atNear - atFar) / (atOld - atFar);
    const isTame = phi * phi < xi && (1 - phi) ** 2 < 1 - xi;
    share = isTame
      ? (atNear / (atFar - atNear)) * (atOld / (atFar - atOld)) +
        (((old - near) / (far - near)) * (atNear / (atOld - atNear)) * atFar) / (atOld - atFar)
      : 0.5;
  }
  return near > far === b > a ? near : far;
}
