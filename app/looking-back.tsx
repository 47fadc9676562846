import { EveningScreen } from './evening/evening-screen.tsx';
import { NowhereScreen } from './nowhere-screen.tsx';
import { lazyScreen } from './parts/lazy.tsx';
import { route } from './route.ts';

/*
 * The screens on which a coach looks back. They come together in one way to them, so that the app's
 * first load knows of one place only; the evening comes with it, the others when they are looked at.
 */
const Review = lazyScreen(() =>
  import('./review/review-screen.tsx').then((file) => file.ReviewScreen),
);
const Glance = lazyScreen(() =>
  import('./glance/glance-screen.tsx').then((file) => file.GlanceScreen),
);
const Line = lazyScreen(() => import('./glance/line-screen.tsx').then((file) => file.LineScreen));
const Neglected = lazyScreen(() =>
  import('./coverage/neglected-screen.tsx').then((file) => file.NeglectedScreen),
);
const Together = lazyScreen(() =>
  import('./together/together-screen.tsx').then((file) => file.TogetherScreen),
);
const Quality = lazyScreen(() =>
  import('./quality/quality-screen.tsx').then((file) => file.QualityScreen),
);
const Effort = lazyScreen(() =>
  import('./quality/effort-screen.tsx').then((file) => file.EffortScreen),
);
const Sizes = lazyScreen(() => import('./sizes/sizes-screen.tsx').then((file) => file.SizesScreen));

const Season = lazyScreen(() =>
  import('./season/season-screen.tsx').then((file) => file.SeasonScreen),
);

/** The screen of an address that looks back, and of one that leads nowhere. */
export function LookingBack() {
  const [place, which, kind, target] = route.value;
  switch (place) {
    case 'review':
      return which === undefined ? <EveningScreen /> : <Review player={which} />;
    case 'numbers':
      return <Review />;
    case 'glance':
      return <Glance />;
    case 'line':
      return <Line player={which ?? ''} kind={kind} target={target} />;
    case 'neglected':
      return <Neglected />;
    case 'together':
      return <Together />;
    case 'quality':
      return <Quality player={which} />;
    case 'effort':
      return <Effort />;
    case 'sizes':
      return <Sizes />;
    case 'season':
      return <Season player={which} />;
    default:
      return <NowhereScreen />;
  }
}
