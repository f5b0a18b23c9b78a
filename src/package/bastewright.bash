# Completion of bastewright's commands, options and files for bash.
_bastewright() {
  local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD - 1]} command=${COMP_WORDS[1]}
  COMPREPLY=()
  case $before in
    --json) mapfile -t COMPREPLY < <(compgen -f -- "$word"); return ;;
    --out) mapfile -t COMPREPLY < <(compgen -d -- "$word"); return ;;
    --paper) mapfile -t COMPREPLY < <(compgen -W 'a4 letter' -- "$word"); return ;;
    --with) mapfile -t COMPREPLY < <(compgen -W 'passes ribbons cards labels record why all' -- "$word"); return ;;
    --language) mapfile -t COMPREPLY < <(compgen -W 'en en-GB de' -- "$word"); return ;;
    --limit | --day) return ;;
  esac
  local options=''
  case $command in
    plan) options='--json --limit --all --help' ;;
    sheets) options='--out --paper --gray --with --language --help' ;;
    export) options='--out --day --help' ;;
    check) options='--help' ;;
  esac
  if [ "$COMP_CWORD" -eq 1 ]; then
    mapfile -t COMPREPLY < <(compgen -W 'plan sheets export check --self-test --version --help' -- "$word")
    options=''
  fi
  case $word in
    -*) mapfile -t -O ${#COMPREPLY[@]} COMPREPLY < <(compgen -W "$options" -- "$word") ;;
    *) mapfile -t -O ${#COMPREPLY[@]} COMPREPLY < <(compgen -f -X '!*.json' -- "$word"; compgen -d -- "$word") ;;
  esac
}
complete -o filenames -F _bastewright bastewright
