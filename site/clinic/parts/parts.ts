import Balance from './Balance.astro';
import But from './But.astro';
import Card from './Card.astro';
import Good from './Good.astro';
import Nothing from './Nothing.astro';
import Questions from './Questions.astro';
import Sheet from './Sheet.astro';
import SheetSketch from './SheetSketch.astro';

const common = { Balance, But, Good, Questions, SheetSketch };

/** What a `clinic.mdx` may use without importing it, on the page of cards. */
export const cardParts = { ...common, Card, Sheet: Nothing };

/** The same for the sheet to take home. */
export const sheetParts = { ...common, Card: Nothing, Sheet };
