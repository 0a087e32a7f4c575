#!/usr/bin/env bash
# Rates the campaigns below a folder as an array of Slurm's: each task takes its share.
#
#   sbatch --wait slurm-array.sh programme reports
#   simmerline collect reports --out reports
#
# A task that was stopped and is given again goes on where it was.
#SBATCH --job-name=simmerline
#SBATCH --array=0-15
#SBATCH --cpus-per-task=2
#SBATCH --mem=4G
set -euo pipefail

tree=${1:?name the folder that holds the campaigns}
out=${2:?name the folder for the reports}

simmerline units "$tree" --folders |
  awk -v task="$((SLURM_ARRAY_TASK_ID - SLURM_ARRAY_TASK_MIN))" \
    -v tasks="$SLURM_ARRAY_TASK_COUNT" 'NR % tasks == task' |
  xargs --no-run-if-empty --delimiter='\n' --max-args=500 \
    simmerline report --root "$tree" --out "$out" --format "${FORMAT:-pdf,parquet}" \
    --jobs "${SLURM_CPUS_PER_TASK:-1}" --quiet
