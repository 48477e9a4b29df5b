/**
 * The element of a kind that a selector finds.
 *
 * @throws Error naming the selector, where there is none of that kind
 */
export function find<Kind extends Element>(
  root: ParentNode,
  selector: string,
  kind: abstract new () => Kind,
): Kind {
  const found = root.querySelector(selector);
  if (found instanceof kind) return found;
  throw new Error(`The page lacks ${selector}.`);
}
