# bash completion for gritwright: verbs and options are asked of the program, so that they can't fall behind it.
_gritwright() {
  local current=${COMP_WORDS[COMP_CWORD]} words
  if [ "$COMP_CWORD" -eq 1 ]; then
    words=$("${COMP_WORDS[0]}" --help 2>/dev/null | sed -n '/^Subcommands:/,$ s/^  \([a-z][a-z]*\) .*/\1/p')
  elif [ "${current#-}" != "$current" ]; then
    words=$("${COMP_WORDS[0]}" "${COMP_WORDS[1]}" --help 2>/dev/null | grep -o -- '--[a-z-]*')
  else
    mapfile -t COMPREPLY < <(compgen -f -- "$current")
    return
  fi
  mapfile -t COMPREPLY < <(compgen -W "$words" -- "$current")
}
complete -o filenames -F _gritwright gritwright
