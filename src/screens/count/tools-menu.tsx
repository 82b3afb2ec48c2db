import './tools-menu.css';
import { Icon } from '../../ui/icon/icon.tsx';
import { say } from '../../words/say.ts';
import { hrefToTool, toolNames, tools, toolTitles } from './tools.ts';

/** Everything about count and place, one link each. Needs the catalogue 'count'. */
export function ToolsMenu({ make }: { readonly make: string }) {
  return (
    <ul class="count-menu">
      {toolNames.map((tool) => (
        <li key={tool}>
          <a class="card card-press count-link" href={hrefToTool(make, tool)}>
            <Icon name={tools[tool]} />
            <span>
              <strong>{say(toolTitles[tool])}</strong>
              <small>{say(`count.${tool}Hint`)}</small>
            </span>
          </a>
        </li>
      ))}
    </ul>
  );
}
