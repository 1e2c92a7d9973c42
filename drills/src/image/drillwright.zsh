#compdef drillwright
# The completion of bash, in zsh's own way of using it.
autoload -U +X bashcompinit && bashcompinit
source /usr/share/bash-completion/completions/drillwright
_bash_complete -o default -F _complete_drillwright
