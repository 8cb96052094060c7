# bash completion for gritwright: verbs, actions, options and their choices are asked of the program, so that they can't fall behind it.
_gritwright() {
  local current=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD - 1]} help words=
  if [ "$COMP_CWORD" -eq 1 ]; then
    words=$("${COMP_WORDS[0]}" --help 2>/dev/null | sed -n '/^Subcommands:/,$ s/^  \([a-z][a-z]*\) .*/\1/p')
  else
    help=$("${COMP_WORDS[0]}" "${COMP_WORDS[1]}" --help 2>/dev/null)
    if [ "${current#-}" != "$current" ]; then
      words=$(sed -n 's/^  \(-[a-z],\)\{0,1\}\(--[a-z-]*\).*/\2/p' <<<"$help")
    elif [[ $before =~ ^--[a-z-]+$ ]]; then
      words=$(sed -n "s/^  $before [A-Z]*:{\([^}]*\)}.*/\1/p" <<<"$help")
    elif [ "$COMP_CWORD" -eq 2 ]; then
      words=$(sed -n 's/^  ACTION [A-Z]*:{\([^}]*\)}.*/\1/p' <<<"$help")
    fi
  fi
  if [ -n "$words" ]; then
    compopt +o filenames 2>/dev/null
    mapfile -t COMPREPLY < <(compgen -W "${words//,/ }" -- "$current")
  else
    mapfile -t COMPREPLY < <(compgen -f -- "$current")
  fi
}
complete -o filenames -F _gritwright gritwright
