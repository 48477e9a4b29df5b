/** For the tools that do not read pages. `astro check` does, and checks what each page takes. */
declare module '*.astro' {
  import type { AstroComponentFactory } from 'astro/runtime/server/index.js';
  const component: AstroComponentFactory;
  export default component;
}
