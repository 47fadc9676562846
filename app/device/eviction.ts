import { computed } from '@preact/signals';
import { installed } from './install.ts';
import { persisted } from './persist.ts';

/**
 * Whether this phone may clear what the page keeps after some days without a visit, whatever room
 * there is: the browsers of iPhone and iPad do, and they alone have `standalone`; they leave an app
 * on the home screen alone.
 */
export const mayBeEvicted = computed(
  () => 'standalone' in navigator && !installed.value && persisted.value !== true,
);
