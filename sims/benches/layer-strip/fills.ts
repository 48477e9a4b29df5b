import type { MaterialName } from '../../mechanics/index.ts';

const patterns: Readonly<Record<MaterialName, string>> = {
  polyethylene: 'plastic',
  'bone cement': 'cement',
  'cobalt-chromium': 'metal',
  'titanium alloy': 'metal-turned',
  'cancellous bone': 'bone',
  'cortical bone': 'cortex',
};

/** The fill of a material, among those of `MaterialFills` with this id. */
export function fillOf(id: string, name: MaterialName): string {
  return `url(#${id}-${patterns[name]})`;
}
