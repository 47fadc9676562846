import { href, route } from '../route.ts';
import { words } from '../words/words.ts';
import './bar.css';

/** The way between the parts of the app; the court screen has none. */
export function Bar() {
  const t = words.value.bar;
  const [here = ''] = route.value;
  const places = [
    ['', t.today],
    ['players', t.players],
    ['week', t.week],
    ['settings', t.settings],
  ] as const;
  return (
    <nav class="bar" aria-label={t.label}>
      {places.map(([place, name]) => (
        <a key={place} href={href(place)} aria-current={here === place ? 'page' : undefined}>
          {name}
        </a>
      ))}
    </nav>
  );
}
