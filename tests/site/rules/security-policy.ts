import { attribute, type BuiltPage, type BuiltSite } from '../built-site.ts';

const wanted = ["default-src 'self'", "object-src 'none'", "base-uri 'none'", "form-action 'none'"];

/** Every page carries the content security policy, and it lets in no script by anything but file or hash. */
export function securityPolicy(site: BuiltSite): readonly string[] {
  return site.pages.flatMap((page) => {
    const directives = policyOf(page)
      .split(';')
      .map((directive) => directive.trim());
    const missing = wanted.filter((directive) => !directives.includes(directive));
    const scripts = directives.find((directive) => directive.startsWith('script-src ')) ?? '';
    const loose = ["'unsafe-inline'", "'unsafe-eval'", 'http:', 'https:', '*', 'data:', 'blob:'];
    return [
      ...missing.map((directive) => `${page.route}: policy lacks ${directive}`),
      ...(scripts === '' ? [`${page.route}: policy lacks script-src`] : []),
      ...loose
        .filter((source) => scripts.split(/\s+/).includes(source))
        .map((source) => `${page.route}: scripts may come from ${source}`),
    ];
  });
}

function policyOf(page: BuiltPage): string {
  const meta = page.elements.find(
    (element) => attribute(element, 'http-equiv')?.toLowerCase() === 'content-security-policy',
  );
  return (meta && attribute(meta, 'content')) ?? '';
}
