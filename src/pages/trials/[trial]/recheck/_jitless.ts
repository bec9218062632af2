import * as z from 'zod';

// Before any schema is made: the policy of the page allows no code that is made on the way.
z.config({ jitless: true });
